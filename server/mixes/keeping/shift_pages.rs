//! The page to move the second of two fixing baths up.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::containers::{self, Offered, offered};
use super::outlook::{self, Outlook, bath, by_field, depth, kept, or_why_not, path_of};
use super::views::{ShiftForm, ShiftPage, ShiftPlan};
use crate::app::App;
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Ground, NewShift, Vessel, moved_up, second_to_move, shift};
use crate::mixes::{cautions, input};
use crate::problem::{Problem, Problems};
use crate::rights;
use crate::rooms::Settings;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{bench as bench_words, keeping as words};
use crate::web::shell::Place;

const SHIFT: &str = "/rooms/{room}/mixes/{mix}/shift";

pub(super) fn pages() -> Pages {
    Pages::new().get(SHIFT, form).post(SHIFT, send)
}

/// The first bath, and what would come of moving the second up.
struct Seen {
    ground: Ground,
    judgement: Judgement,
    asked: Result<ShiftPlan, String>,
    offered: Vec<Offered>,
}

async fn see(app: &App, permit: &Permit<rights::Mix>, id: Uuid) -> Result<Seen> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::seen(tx, id).await?;
                let found = Outlook::of(tx, ground.mix.clone(), &ground.settings, now).await?;
                let asked = plan(tx, &ground, now).await;
                Ok(Seen {
                    asked: or_why_not(asked, ground.settings.numbers())?,
                    offered: offered(tx, &ground.mix, &ground.settings).await?,
                    judgement: found.judgement,
                    ground,
                })
            })
        })
        .await
}

impl Seen {
    /// All that stands in the first tray, as the form has it.
    fn whole_volume(&self) -> String {
        let numbers = self.ground.settings.numbers();
        numbers.decimal(self.ground.mix.level_ul(), 6)
    }
}

/// What a shift would come to.
async fn plan(tx: &mut RoomTx, first: &Ground, now: OffsetDateTime) -> Result<ShiftPlan> {
    let settings = &first.settings;
    let numbers = settings.numbers();
    let mut second = second_to_move(tx, first, now).await?;
    let from = Vessel::of(tx, &second).await?;
    let entry = moved_up(first, &second, 0, String::new())?;
    second.move_up(&entry, now)?;
    let outlook = Outlook::of(tx, second, settings, now).await?;
    let level_ul = outlook.mix.level_ul();
    Ok(ShiftPlan {
        second: outlook.mix.title(numbers),
        from: from.name().to_owned(),
        stands: words::stands(
            kept(outlook.mix.storage),
            &numbers.volume(level_ul),
            &numbers.volume(first.vessel.holds_ul()),
            &depth(&first.vessel, level_ul, numbers),
        ),
        outlook: outlook.words(settings, now)?,
        number: words::shift_number(entry.shifts, settings.fixer_shifts),
    })
}

async fn form(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let seen = see(&app, &permit, id).await?;
    let form = ShiftForm {
        key: new_key()?,
        volume: seen.whole_volume(),
        ..ShiftForm::default()
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
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ShiftForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, id, &form).await {
        Ok(second) => Ok(on_to(&app, &permit, &path_of(&app, &permit, second).await?)),
        Err(error) => {
            let (problems, seen) = (to_mend(error)?, see(&app, &permit, id).await?);
            let beside = containers::beside(&problems, &form.collected);
            let (problems, now) = (by_field(&problems, beside), app.clock().now());
            mend(&shown(&permit, &frame, seen, form, &problems, now)?)
        }
    }
}

/// Shifts, and answers the bath that moved up.
async fn as_typed(
    app: &App,
    permit: &Permit<rights::Mix>,
    first: Uuid,
    form: &ShiftForm,
) -> Result<Uuid> {
    let settings = outlook::settings(app, permit).await?;
    let new = read(form, first, &settings)?.map_err(Error::Invalid)?;
    let done = shift(app, permit, read_key(&form.key)?, new).await?;
    done.other_id("mix", first)
}

fn read(
    form: &ShiftForm,
    first_mix_id: Uuid,
    settings: &Settings,
) -> Result<Result<NewShift, Problems>> {
    let zone = settings.time_zone()?;
    let mut problems = Problems::default();
    let container = containers::read(&form.collected, &form.container);
    let container = problems.take("container", container);
    let volume = settings.numbers().read_litres(&form.volume);
    let volume = volume.map_err(Problem::Number).and_then(input::poured_off);
    let volume = problems.take("volume", volume);
    let at = late::read(&zone, &form.when, &form.day, &form.time);
    let at = problems.take("time", at);
    if form.confirmed != "yes" {
        problems.add("confirmed", Problem::NotConfirmed);
    }
    Ok(match (container, volume, at) {
        (Some(container), Some(volume_ul), Some(happened_at_us)) if problems.is_empty() => {
            Ok(NewShift {
                first_mix_id,
                volume_ul,
                container,
                happened_at_us,
            })
        }
        _ => Err(problems),
    })
}

fn shown(
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    seen: Seen,
    form: ShiftForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<ShiftPage> {
    let settings = &seen.ground.settings;
    let mix = &seen.ground.mix;
    let shell = frame.shell_in(permit, Some(Place::Board));
    let mut cautions = cautions(&mix.hazard_codes);
    cautions.push(bench_words::CONTAINERS.to_owned());
    let (plan, why_not) = match seen.asked {
        Ok(plan) => (Some(plan), String::new()),
        Err(why) => (None, why),
    };
    Ok(ShiftPage {
        shell: lying_at(shell, &format!("/mixes/{}/shift", mix.id)),
        bath: bath(&seen.ground, &seen.judgement, now)?,
        days: late::days(&settings.time_zone()?, settings.late_note_minutes, now),
        problems: in_words(problems, settings.numbers()),
        containers: containers::choices(&seen.offered),
        plan,
        why_not,
        cautions,
        form,
    })
}
