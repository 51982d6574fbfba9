//! The page to cover, uncover, bottle or pour back a mix.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::outlook::{self, Outlook, bath, by_field, depth, kept, or_why_not, path_of};
use super::views::{Barred, KeepForm, KeepPage};
use crate::app::App;
use crate::bench::bottles::bottles;
use crate::bench::{self, Line};
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Ground, Move, NewMove, Vessel, keep, stored};
use crate::mixes::{Storage, cautions};
use crate::problem::{Problem, Problems};
use crate::rights::KeepMix;
use crate::rooms::Settings;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::keeping as words;
use crate::web::shell::Place;

const KEEP: &str = "/rooms/{room}/mixes/{mix}/keep";

pub(super) fn pages() -> Pages {
    Pages::new().get(KEEP, form).post(KEEP, send)
}

/// The mix, and what would come of each move.
struct Seen {
    ground: Ground,
    judgement: Judgement,
    cover: Option<String>,
    vessels: Vec<Choice>,
    barred: Vec<Barred>,
}

/// A vessel to move into: how it is asked for, and what people call it.
type Way = (Move, Vessel, String);

async fn see(app: &App, permit: &Permit<KeepMix>, id: Uuid) -> Result<Seen> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::seen(tx, id).await?;
                let found = Outlook::of(tx, ground.mix.clone(), &ground.settings, now).await?;
                let mut seen = Seen {
                    cover: covering(tx, &ground, now).await?,
                    judgement: found.judgement,
                    ground,
                    vessels: Vec::new(),
                    barred: Vec::new(),
                };
                for way in ways(tx, &seen.ground).await? {
                    seen.add(tx, way, now).await?;
                }
                Ok(seen)
            })
        })
        .await
}

/// What comes of covering a mix, or of taking its cover off.
async fn covering(tx: &mut RoomTx, ground: &Ground, now: OffsetDateTime) -> Result<Option<String>> {
    let to = match ground.mix.storage {
        Storage::OpenTray => Move::Cover,
        Storage::CoveredTray => Move::Uncover,
        Storage::FullBottle | Storage::PartBottle => return Ok(None),
    };
    let outlook = moved(tx, ground, to, now).await?;
    outlook.words(&ground.settings, now).map(Some)
}

/// The mix as it would be after a move.
async fn moved(tx: &mut RoomTx, ground: &Ground, to: Move, now: OffsetDateTime) -> Result<Outlook> {
    let entry = stored(tx, ground, to).await?;
    let mut mix = ground.mix.clone();
    mix.keep(&entry, now)?;
    Outlook::of(tx, mix, &ground.settings, now).await
}

/// Every bottle for what stands in a tray; every tray for what stands in a bottle.
async fn ways(tx: &mut RoomTx, ground: &Ground) -> Result<Vec<Way>> {
    if let Vessel::Tray(_) = ground.vessel {
        let bottles = bottles(tx).await?.into_iter();
        let in_use = bottles.filter(|bottle| !bottle.is_retired);
        return Ok(in_use
            .map(|bottle| {
                let name = bottle.name.clone();
                (Move::Bottle(bottle.id), Vessel::Bottle(bottle), name)
            })
            .collect());
    }
    let lines = bench::lines(tx).await?;
    let trays = bench::trays(tx).await?.into_iter();
    Ok(trays
        .filter(|tray| !tray.is_retired)
        .filter_map(|tray| {
            let on = |line: &&Line| line.id == tray.line_id && !line.is_retired;
            let line = lines.iter().find(on)?;
            let name = words::tray_of_line(&tray.name, &line.name);
            Some((Move::Return(tray.id), Vessel::Tray(tray), name))
        })
        .collect())
}

impl Seen {
    async fn add(
        &mut self,
        tx: &mut RoomTx,
        (to, vessel, name): Way,
        now: OffsetDateTime,
    ) -> Result<()> {
        let asked = moved(tx, &self.ground, to, now).await;
        match or_why_not(asked, self.ground.settings.numbers())? {
            Ok(outlook) => {
                let hint = hint(&outlook, &vessel, &self.ground.settings, now)?;
                let choice = Choice::new(vessel.id(), name).explained(hint);
                self.vessels.push(choice);
            }
            Err(why) => self.barred.push(Barred { name, why }),
        }
        Ok(())
    }
}

/// What a vessel makes of the mix: level, storage, life, and whether it covers a print.
fn hint(
    outlook: &Outlook,
    vessel: &Vessel,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<String> {
    let numbers = settings.numbers();
    let level_ul = outlook.mix.level_ul();
    let stands = words::stands(
        kept(outlook.mix.storage),
        &numbers.volume(level_ul),
        &numbers.volume(vessel.holds_ul()),
        &depth(vessel, level_ul, numbers),
    );
    let mut said = format!("{stands}. {}", outlook.words(settings, now)?);
    if level_ul < vessel.least_ul() {
        let least = numbers.volume(vessel.least_ul());
        said = format!("{said} {}", words::too_shallow(&least));
    }
    Ok(said)
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let seen = see(&app, &permit, id).await?;
    let form = KeepForm {
        key: new_key()?,
        ..KeepForm::default()
    };
    let now = app.clock().now();
    page(&shown(
        &permit,
        &frame,
        seen,
        form,
        &Problems::default(),
        now,
    )?)
}

async fn send(
    State(app): State<App>,
    permit: Permit<KeepMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeepForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, id, &form).await {
        Ok(()) => Ok(on_to(&app, &permit, &path_of(&app, &permit, id).await?)),
        Err(error) => {
            let (problems, seen) = (to_mend(error)?, see(&app, &permit, id).await?);
            let problems = by_field(&problems, &[("to", "vessel")]);
            let now = app.clock().now();
            mend(&shown(&permit, &frame, seen, form, &problems, now)?)
        }
    }
}

async fn as_typed(
    app: &App,
    permit: &Permit<KeepMix>,
    mix_id: Uuid,
    form: &KeepForm,
) -> Result<()> {
    let zone = outlook::settings(app, permit).await?.time_zone()?;
    let mut problems = Problems::default();
    let to = problems.take("vessel", read_move(form));
    let at = late::read(&zone, &form.when, &form.day, &form.time);
    let (Some(to), Some(happened_at_us)) = (to, problems.take("time", at)) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewMove {
        mix_id,
        to,
        happened_at_us,
    };
    keep(app, permit, read_key(&form.key)?, new).await?;
    Ok(())
}

fn read_move(form: &KeepForm) -> Result<Move, Problem> {
    match form.to.as_str() {
        "cover" => Ok(Move::Cover),
        "uncover" => Ok(Move::Uncover),
        "bottle" => read_id(&form.vessel).map(Move::Bottle),
        "return" => read_id(&form.vessel).map(Move::Return),
        _ => Err(Problem::NotAChoice),
    }
}

fn shown(
    permit: &Permit<KeepMix>,
    frame: &Frame,
    seen: Seen,
    form: KeepForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<KeepPage> {
    let settings = &seen.ground.settings;
    let mix = &seen.ground.mix;
    let shell = frame.shell_in(permit, Some(Place::Board));
    Ok(KeepPage {
        shell: lying_at(shell, &format!("/mixes/{}/keep", mix.id)),
        bath: bath(&seen.ground, &seen.judgement, now)?,
        is_covered: mix.storage == Storage::CoveredTray,
        is_bottled: matches!(seen.ground.vessel, Vessel::Bottle(_)),
        days: late::days(&settings.time_zone()?, settings.late_note_minutes, now),
        problems: in_words(problems, settings.numbers()),
        cautions: cautions(&mix.hazard_codes),
        cover: seen.cover,
        vessels: seen.vessels,
        barred: seen.barred,
        form,
    })
}
