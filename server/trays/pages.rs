//! The page of a tray.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::course::{Turn, turns};
use super::history::history;
use super::next::Reader;
use super::times::{Emergence, development, last_compared};
use super::views::{Finding, MixInTray, TrayEvent, TrayPage, WashPage};
use super::wear::over_time;
use super::{facts, sums};
use crate::app::App;
use crate::bench::{self, Line, Step, Tray};
use crate::board::{self, TrayNow};
use crate::darkroom::incompatibility::Clash;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::{self, Permit};
use crate::mixes::readings::{self, Kept, LatestExtension};
use crate::mixes::{self, Findings, Mix};
use crate::products::{self, Product};
use crate::rights::{self, LookAtBoard, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::sheets::{self, WornByClass};
use crate::web::chart::WearChart;
use crate::web::dates::Zone;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::bench as words;
use crate::web::messages::{self, trays, verdicts};
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// So many findings of a mix are shown; the book has the others.
const FINDINGS: i64 = 30;

/// The tray's route.
#[must_use]
pub fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/trays/{tray}", tray)
}

/// Everything the page stands on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) line: Line,
    pub(super) now: TrayNow,
    pub(super) product: Option<Product>,
    pub(super) findings: Vec<Kept>,
    pub(super) emergence: Option<Emergence>,
    pub(super) waits_for_rinse: bool,
    /// The mix that was discarded from here by mistake, perhaps.
    pub(super) undoable: Option<Mix>,
    extension: Option<(LatestExtension, Option<String>)>,
    clash: Option<Clash>,
    last_fixer: Option<Uuid>,
    worn: Vec<WornByClass>,
    turns: Vec<Turn>,
    mixed_by: Option<String>,
    events: Vec<TrayEvent>,
    older: Option<String>,
}

/// What the address asks for: from which entry back the history is shown, and a
/// temperature to develop at.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Asked {
    before: Option<i64>,
    celsius: String,
}

async fn ground(
    app: &App,
    permit: &Permit<LookAtBoard>,
    id: Uuid,
    now: OffsetDateTime,
) -> Result<Ground> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let tray = bench::tray(tx, id).await?.ok_or(Error::NotFound)?;
                let line = bench::line(tx, tray.line_id).await?;
                let last_fixer = match tray.step {
                    Step::Wash => last_fixer(tx, tray.line_id).await?,
                    _ => None,
                };
                let mut ground = Ground {
                    undoable: mixes::keeping::undoable(tx, id).await?,
                    waits_for_rinse: mixes::waits_for_rinse(tx, id).await?,
                    now: board::tray_now(tx, tray, &settings, now).await?,
                    line: line.ok_or(Error::NotFound)?,
                    settings,
                    product: None,
                    findings: Vec::new(),
                    emergence: None,
                    extension: None,
                    clash: None,
                    last_fixer,
                    worn: Vec::new(),
                    turns: Vec::new(),
                    mixed_by: None,
                    events: Vec::new(),
                    older: None,
                };
                if let Some(mix) = ground.now.mix.clone() {
                    ground.look_at(tx, &mix).await?;
                }
                Ok(ground)
            })
        })
        .await
}

/// What stands in the last fixing bath of a line: there washed prints are tested.
async fn last_fixer(tx: &mut RoomTx, line: Uuid) -> Result<Option<Uuid>> {
    let standing = mixes::standing(tx).await?;
    let trays = bench::trays(tx).await?;
    let is_last = |mix: &&Mix| {
        let tray = trays.iter().find(|tray| Some(tray.id) == mix.stand.tray_id);
        tray.is_some_and(|tray| {
            tray.line_id == line && matches!(tray.step, Step::Fixer | Step::SecondFixer)
        })
    };
    Ok(standing.iter().find(is_last).map(|mix| mix.id))
}

impl Ground {
    /// Reads everything about the mix in the tray.
    async fn look_at(&mut self, tx: &mut RoomTx, mix: &Mix) -> Result<()> {
        self.worn = sheets::worn_by_class(tx, mix.id, mix.place()).await?;
        if let Some(person) = mix.mixed_by {
            self.mixed_by = identity::person_name(tx, person).await?;
        }
        if let Some(product) = mix.product_id {
            self.product = products::product(tx, product).await?;
        }
        self.findings = readings::of_mix(tx, mix.id, FINDINGS).await?;
        if let Some(compared) = last_compared(&self.findings).cloned() {
            let fresh = readings::fresh(tx, mix.id, compared.kind, &compared.sample).await?;
            self.emergence = fresh.map(|fresh| Emergence {
                now: compared,
                fresh,
            });
        }
        let of_mix = Findings::of(tx, std::slice::from_ref(mix)).await?;
        if let Some(given) = of_mix.extension(mix.id).cloned() {
            let by = match given.person_id {
                Some(person) => identity::person_name(tx, person).await?,
                None => None,
            };
            self.extension = Some((given, by));
        }
        let standing = self.findings.iter().filter(|kept| kept.undone_by.is_none());
        let names: Vec<String> = standing
            .flat_map(|kept| kept.contaminants.clone())
            .collect();
        self.clash = mixes::actions::came_into(mix, &names)?;
        Ok(())
    }
}

async fn tray(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(asked): Query<Asked>,
) -> Result<Response> {
    let now = app.clock().now();
    let mut ground = ground(&app, &permit, id, now).await?;
    if ground.now.tray.step == Step::Wash {
        return page(&wash_page(&permit, &frame, &ground));
    }
    let of = ("tray", ground.now.tray.id);
    let told = history(&app, &permit, of, asked.before, &ground.settings, now).await?;
    (ground.events, ground.older) = told;
    if let Some(mix) = ground.now.mix.as_ref().map(|mix| mix.id) {
        let numbers = ground.settings.numbers();
        ground.turns = turns(&app, &permit, mix, numbers).await?;
    }
    page(&tray_page(&permit, &frame, &ground, &asked.celsius, now)?)
}

fn wash_page(permit: &Permit<LookAtBoard>, frame: &Frame, ground: &Ground) -> WashPage {
    let tray = &ground.now.tray;
    let may_test = rights::TestMix::ROW.roles.contains(&permit.role());
    let tests = ground.last_fixer.filter(|_| may_test);
    WashPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        name: tray.name.clone(),
        line_id: ground.line.id.to_string(),
        line: ground.line.name.clone(),
        inside: inside(tray, ground.settings.numbers()),
        said: trays::WASH.to_owned(),
        tests: tests.map(|mix| format!("/mixes/{mix}/check?kind=residual_thiosulfate")),
    }
}

fn tray_page(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    ground: &Ground,
    celsius: &str,
    now: OffsetDateTime,
) -> Result<TrayPage> {
    let zone = ground.settings.time_zone()?;
    let tray = &ground.now.tray;
    let role = permit.role();
    let figures = board::figures(&ground.now, &ground.settings, &zone, now);
    let reader = Reader { ground, role };
    let mix = ground.now.mix.as_ref();
    Ok(TrayPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        id: tray.id.to_string(),
        name: tray.name.clone(),
        line: ground.line.name.clone(),
        inside: inside(tray, ground.settings.numbers()),
        word: figures.word.clone(),
        drawing: figures.drawing.clone(),
        reason: figures.reason.clone(),
        change: figures.change.clone(),
        alarm: ground
            .clash
            .map(|clash| trays::alarm(&messages::clash(clash))),
        next: reader.next(),
        others: reader.others()?,
        development: mix.and_then(|mix| development(ground, mix, celsius)),
        mix: mix_in_tray(ground, &figures, &zone, now)?,
        findings: findings(ground, &zone, now, role),
        events: ground.events.clone(),
        older: ground.older.clone(),
    })
}

fn inside(tray: &Tray, numbers: Numbers) -> String {
    let mm = |tenths: i32| numbers.millimetres(tenths.into());
    words::inside(
        &mm(tray.inside_long_tenths_mm),
        &mm(tray.inside_short_tenths_mm),
        &mm(tray.inside_depth_tenths_mm),
        &mm(tray.least_depth_tenths_mm),
    )
}

/// What people found of the mix, newest first.
fn findings(ground: &Ground, zone: &Zone, now: OffsetDateTime, role: rights::Role) -> Vec<Finding> {
    let numbers = ground.settings.numbers();
    let may_take_back = rights::TakeBack::ROW.roles.contains(&role);
    let finding = |kept: &Kept| Finding {
        seq: kept.seq,
        at: zone.words(kept.happened_at, now),
        sentence: messages::readings::found(kept, numbers),
        is_undone: kept.undone_by.is_some(),
        take_back: (may_take_back && kept.undone_by.is_none())
            .then(|| format!("/readings/{}/take-back", kept.id)),
    };
    ground.findings.iter().map(finding).collect()
}

fn mix_in_tray(
    ground: &Ground,
    figures: &board::Figures,
    zone: &Zone,
    now: OffsetDateTime,
) -> Result<Option<MixInTray>> {
    let numbers = ground.settings.numbers();
    let Some((mix, (capacity, life))) = ground.now.mix.as_ref().zip(figures.rules.clone()) else {
        return Ok(None);
    };
    let wear = over_time(mix, &ground.turns, &ground.settings, now)?;
    let standing = ground.extension.as_ref();
    let extended = standing.filter(|(given, _)| now < given.until_at);
    Ok(Some(MixInTray {
        product_id: mix.product_id.map(|id| id.to_string()),
        product: verdicts::mix_name(mix.product_name.as_deref()),
        dilution: mix
            .product_id
            .map_or_else(String::new, |_| numbers.dilution(mix.parts_thousandths)),
        litres: numbers.volume(mix.charged_ul),
        depth: figures.depth.clone(),
        mixed: zone.words(mix.mixed_at, now),
        mixed_by: ground.mixed_by.clone(),
        facts: facts::facts(ground, mix, zone)?,
        extended: extended.map(|(given, by)| {
            let until = zone.clock_and_weekday(given.until_at).words;
            trays::extended(&until, by.as_deref(), &given.reason)
        }),
        capacity,
        life,
        capacity_sum: sums::capacity(mix, &ground.worn, numbers),
        life_sum: sums::life(mix, zone, now),
        wear: WearChart::draw(wear, zone).map_err(Error::fault)?,
        cautions: mixes::cautions(&mix.hazard_codes),
    }))
}
