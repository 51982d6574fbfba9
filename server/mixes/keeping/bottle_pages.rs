//! The page of a bottle, and the question whether a tray or bottle was rinsed.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::outlook::{depth, kept, path};
use super::store::last_discarded;
use super::views::{BottlePage, MixInBottle};
use crate::app::App;
use crate::bench::bottles::Bottle;
use crate::board;
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{NewRinse, Vessel, VesselId, may_undo, rinse};
use crate::mixes::{Findings, Mix, cautions, judge, store};
use crate::rights::{self, Discard, KeepMix, LookAtBoard, Right, TakeBack};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::trays::{self, views::TrayEvent};
use crate::web::desk::{KeyForm, Question, ask, lying_at};
use crate::web::drawing::VerdictWord;
use crate::web::forms::{Form, on_to, page, read_key};
use crate::web::frame::Frame;
use crate::web::messages::{keeping as words, verdicts};
use crate::web::shell::Place;

const BOTTLE: &str = "/rooms/{room}/bottles/{bottle}";

pub(super) fn pages() -> Pages {
    Pages::new()
        .get(BOTTLE, bottle)
        .get("/rooms/{room}/bottles/{bottle}/rinse", ask_bottle)
        .post("/rooms/{room}/bottles/{bottle}/rinse", rinse_bottle)
        .get("/rooms/{room}/trays/{tray}/rinse", ask_tray)
        .post("/rooms/{room}/trays/{tray}/rinse", rinse_tray)
}

/// From which entry back the bottle's history is shown.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct History {
    before: Option<i64>,
}

/// A bottle, what stands in it, and how good that is.
struct Seen {
    settings: Settings,
    bottle: Bottle,
    mix: Option<Mix>,
    judgement: Judgement,
    waits_for_rinse: bool,
    undoable: Option<Mix>,
    events: Vec<TrayEvent>,
    older: Option<String>,
}

async fn see(
    app: &App,
    permit: &Permit<LookAtBoard>,
    id: Uuid,
    before: Option<i64>,
) -> Result<Seen> {
    let now = app.clock().now();
    let seen = app.database().reading(permit.scope(), move |tx| {
        Box::pin(async move {
            let settings = rooms::settings(tx).await?;
            let Vessel::Bottle(bottle) = Vessel::find(tx, VesselId::Bottle(id)).await? else {
                return Err(Error::NotFound);
            };
            let mix = store::in_vessel(tx, id).await?;
            let findings = Findings::of(tx, mix.as_slice()).await?;
            Ok(Seen {
                judgement: judge(mix.as_ref(), &findings, &settings, now)?,
                waits_for_rinse: store::waits_for_rinse(tx, id).await?,
                undoable: undoable(tx, id).await?,
                settings,
                bottle,
                mix,
                events: Vec::new(),
                older: None,
            })
        })
    });
    let mut seen = seen.await?;
    let of = ("bottle", seen.bottle.id);
    let told = trays::history(app, permit, of, before, &seen.settings, now).await?;
    (seen.events, seen.older) = told;
    Ok(seen)
}

/// The mix whose discard from a tray or bottle may be taken back now.
///
/// # Errors
/// The database's.
pub async fn undoable(tx: &mut RoomTx, vessel: Uuid) -> Result<Option<Mix>> {
    let Some(last) = last_discarded(tx, vessel).await? else {
        return Ok(None);
    };
    match may_undo(tx, last).await {
        Ok(undoing) if undoing.vessel.id() == vessel => Ok(Some(undoing.mix)),
        Ok(_) | Err(Error::Refused(_)) => Ok(None),
        Err(other) => Err(other),
    }
}

async fn bottle(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(query): Query<History>,
) -> Result<Response> {
    let seen = see(&app, &permit, id, query.before).await?;
    page(&shown(&permit, &frame, seen, app.clock().now())?)
}

fn shown(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    seen: Seen,
    now: OffsetDateTime,
) -> Result<BottlePage> {
    let (numbers, zone) = (seen.settings.numbers(), seen.settings.time_zone()?);
    let role = permit.role();
    let may = |row: rights::Row| row.roles.contains(&role);
    let is_named = seen
        .mix
        .as_ref()
        .is_some_and(|mix| mix.product_id.is_some());
    let undoable = seen.undoable.as_ref().filter(|_| may(TakeBack::ROW));
    let is_empty = seen.mix.is_none() && !seen.bottle.is_retired;
    let takes_some = is_empty && !seen.waits_for_rinse;
    Ok(BottlePage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        id: seen.bottle.id.to_string(),
        name: seen.bottle.name.clone(),
        holds: numbers.volume(seen.bottle.holds_ul),
        word: VerdictWord {
            standing: verdicts::standing(seen.judgement.verdict),
        },
        reason: verdicts::reason(&seen.judgement, numbers, &zone),
        change: verdicts::change(&seen.judgement, &zone),
        mix: seen
            .mix
            .as_ref()
            .map(|mix| in_bottle(mix, &seen, now))
            .transpose()?,
        waits_for_rinse: seen.waits_for_rinse,
        undoable: undoable.map(|mix| (mix.id.to_string(), mix.title(numbers))),
        may_keep: is_named && may(KeepMix::ROW),
        may_pour: is_named && may(rights::Mix::ROW),
        may_discard: may(Discard::ROW),
        may_mix: takes_some && may(rights::Mix::ROW),
        may_open: takes_some && may(rights::OpenBench::ROW),
        may_report: is_empty && may(rights::TestMix::ROW),
        events: seen.events,
        older: seen.older,
    })
}

fn in_bottle(mix: &Mix, seen: &Seen, now: OffsetDateTime) -> Result<MixInBottle> {
    let (numbers, zone) = (seen.settings.numbers(), seen.settings.time_zone()?);
    let vessel = Vessel::Bottle(seen.bottle.clone());
    let (capacity, life) = board::rules(mix, &seen.settings, &zone, now);
    Ok(MixInBottle {
        id: mix.id.to_string(),
        product_id: mix.product_id.map(|id| id.to_string()),
        title: mix.title(numbers),
        stands: words::stands(
            kept(mix.storage),
            &numbers.volume(mix.level_ul()),
            &numbers.volume(seen.bottle.holds_ul),
            &depth(&vessel, mix.level_ul(), numbers),
        ),
        mixed: zone.words(mix.mixed_at, now),
        capacity,
        life,
        cautions: cautions(&mix.hazard_codes),
    })
}

async fn ask_bottle(
    State(app): State<App>,
    permit: Permit<Discard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    question(&app, &permit, &frame, VesselId::Bottle(id)).await
}

async fn ask_tray(
    State(app): State<App>,
    permit: Permit<Discard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    question(&app, &permit, &frame, VesselId::Tray(id)).await
}

async fn question(
    app: &App,
    permit: &Permit<Discard>,
    frame: &Frame,
    id: VesselId,
) -> Result<Response> {
    let vessel = find(app, permit, id).await?;
    let question = Question {
        question: words::rinse_question(vessel.name()),
        consequence: words::RINSE_CONSEQUENCE.to_owned(),
        verb: words::RINSED.to_owned(),
    };
    let back = path(&vessel);
    let action = format!("{back}/rinse");
    let shell = frame.shell_in(permit, Some(Place::Board));
    ask(lying_at(shell, &action), question, &action, &back)
}

async fn find(app: &App, permit: &Permit<Discard>, id: VesselId) -> Result<Vessel> {
    let database = app.database();
    let found = database.reading(permit.scope(), move |tx| Box::pin(Vessel::find(tx, id)));
    found.await
}

async fn rinse_bottle(
    State(app): State<App>,
    permit: Permit<Discard>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    record(&app, &permit, &form, VesselId::Bottle(id)).await
}

async fn rinse_tray(
    State(app): State<App>,
    permit: Permit<Discard>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    record(&app, &permit, &form, VesselId::Tray(id)).await
}

async fn record(
    app: &App,
    permit: &Permit<Discard>,
    form: &KeyForm,
    rinsed: VesselId,
) -> Result<Response> {
    rinse(app, permit, read_key(&form.key)?, NewRinse { rinsed }).await?;
    let vessel = find(app, permit, rinsed).await?;
    Ok(on_to(app, permit, &path(&vessel)))
}
