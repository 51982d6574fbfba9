//! The page of a tray.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::sums;
use super::views::{MixInTray, TrayEvent, TrayPage};
use super::wear::{MOST_NOTES, over_time};
use crate::app::App;
use crate::bench::{self, Line, Tray};
use crate::board::{self, TrayNow};
use crate::book::filter::{Filter, Reader};
use crate::book::reading;
use crate::error::{Error, Result};
use crate::identity::{self, Permit};
use crate::mixes::{self, WornAt};
use crate::rights::{self, LookAtBoard, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::sheets::{self, WornByClass};
use crate::web::chart::WearChart;
use crate::web::dates::Zone;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::bench as words;
use crate::web::messages::entries::{self, Telling};
use crate::web::messages::verdicts;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The tray's route.
#[must_use]
pub fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/trays/{tray}", tray)
}

/// Everything the page stands on.
struct Ground {
    settings: Settings,
    line: Line,
    now: TrayNow,
    worn: Vec<WornByClass>,
    notes: Vec<WornAt>,
    mixed_by: Option<String>,
    events: Vec<TrayEvent>,
    older: Option<String>,
}

/// From which entry back the tray's history is shown.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct History {
    before: Option<i64>,
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
                let now = board::tray_now(tx, tray, &settings, now).await?;
                let (mut worn, mut notes, mut mixed_by) = (Vec::new(), Vec::new(), None);
                if let Some(mix) = &now.mix {
                    worn = sheets::worn_by_class(tx, mix.id, mix.place()).await?;
                    notes = mixes::wear_history(tx, mix.id, MOST_NOTES).await?;
                    if let Some(person) = mix.mixed_by {
                        mixed_by = identity::person_name(tx, person).await?;
                    }
                }
                Ok(Ground {
                    now,
                    line: line.ok_or(Error::NotFound)?,
                    settings,
                    worn,
                    notes,
                    mixed_by,
                    events: Vec::new(),
                    older: None,
                })
            })
        })
        .await
}

/// What happened to the tray, newest first, as far as the book shows it.
async fn history(
    app: &App,
    permit: &Permit<LookAtBoard>,
    ground: &mut Ground,
    before: Option<i64>,
    now: OffsetDateTime,
) -> Result<()> {
    let reader = Reader::new(permit.person().id, permit.role());
    let filter = Filter {
        noun: Some("tray".to_owned()),
        id: Some(ground.now.tray.id),
        ..Filter::default()
    };
    let page = reading::page_for(app, permit.scope(), reader, filter, before).await?;
    let zone = ground.settings.time_zone()?;
    let telling = Telling {
        names: &page.names,
        numbers: ground.settings.numbers(),
    };
    let reversed = |seq: i64| page.reversals.iter().any(|(of, _)| *of == seq);
    ground.events = page
        .lines
        .iter()
        .filter_map(|line| {
            let shown = line.shown.as_ref()?;
            Some(TrayEvent {
                seq: line.seq,
                at: zone.words(shown.happened_at, now),
                sentence: entries::sentence(&shown.kind, &shown.payload, telling),
                is_undone: reversed(line.seq),
            })
        })
        .collect();
    ground.older = page.older.map(|before| format!("?before={before}"));
    Ok(())
}

async fn tray(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(query): Query<History>,
) -> Result<Response> {
    let now = app.clock().now();
    let mut ground = ground(&app, &permit, id, now).await?;
    history(&app, &permit, &mut ground, query.before, now).await?;
    page(&tray_page(&permit, &frame, &ground, now)?)
}

fn tray_page(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    ground: &Ground,
    now: OffsetDateTime,
) -> Result<TrayPage> {
    let zone = ground.settings.time_zone()?;
    let tray = &ground.now.tray;
    let role = permit.role();
    let may = |row: rights::Row| row.roles.contains(&role);
    let figures = board::figures(&ground.now, &ground.settings, &zone, now);
    let is_full = ground.now.mix.is_some();
    Ok(TrayPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        id: tray.id.to_string(),
        name: tray.name.clone(),
        line_id: ground.line.id.to_string(),
        line: ground.line.name.clone(),
        inside: inside(tray, ground.settings.numbers()),
        word: figures.word.clone(),
        drawing: figures.drawing.clone(),
        reason: figures.reason.clone(),
        change: figures.change.clone(),
        mix: mix_in_tray(ground, &figures, &zone, now)?,
        events: ground.events.clone(),
        older: ground.older.clone(),
        may_mix: !is_full && !tray.is_retired && may(rights::Mix::ROW),
        may_note: may(rights::NoteSheets::ROW),
        may_discard: is_full && may(rights::Discard::ROW),
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

fn mix_in_tray(
    ground: &Ground,
    figures: &board::Figures,
    zone: &Zone,
    now: OffsetDateTime,
) -> Result<Option<MixInTray>> {
    let settings = &ground.settings;
    let numbers = settings.numbers();
    let Some((mix, rules)) = ground.now.mix.as_ref().zip(figures.rules.clone()) else {
        return Ok(None);
    };
    let (capacity, life) = rules;
    let wear = over_time(mix, &ground.notes, settings, now);
    Ok(Some(MixInTray {
        id: mix.id.to_string(),
        product_id: mix.product_id.map(|id| id.to_string()),
        product: verdicts::mix_name(mix.product_name.as_deref()),
        dilution: numbers.dilution(mix.parts_thousandths),
        litres: numbers.volume(mix.charged_ul),
        depth: figures.depth.clone(),
        mixed: zone.words(mix.mixed_at, now),
        mixed_by: ground.mixed_by.clone(),
        capacity,
        life,
        capacity_sum: sums::capacity(mix, &ground.worn, numbers),
        life_sum: sums::life(mix, zone, now),
        wear: WearChart::draw(wear, zone).map_err(Error::fault)?,
        cautions: mixes::cautions(&mix.hazard_codes),
    }))
}
