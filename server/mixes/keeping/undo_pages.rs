//! The page to take a discard back that was logged by mistake.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::outlook::{Outlook, or_why_not, path, path_of};
use super::views::{UndoDiscardForm, UndoDiscardPage, UndoPlan};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::needed_note;
use crate::mixes::actions::{UndoDiscard, may_undo, undo_discard};
use crate::mixes::{Mix, store};
use crate::problem::Problems;
use crate::rights::TakeBack;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::shell::Place;

const UNDO: &str = "/rooms/{room}/mixes/{mix}/undo-discard";

pub(super) fn pages() -> Pages {
    Pages::new().get(UNDO, form).post(UNDO, send)
}

/// The mix, and what would come of bringing it back.
struct Seen {
    settings: Settings,
    mix: Mix,
    asked: Result<UndoPlan, String>,
}

async fn see(app: &App, permit: &Permit<TakeBack>, id: Uuid) -> Result<Seen> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let asked = plan(tx, id, &settings, now).await;
                Ok(Seen {
                    mix: store::mix(tx, id).await?.ok_or(Error::NotFound)?,
                    asked: or_why_not(asked, settings.numbers())?,
                    settings,
                })
            })
        })
        .await
}

/// The discard, and the mix as if it had never been discarded.
async fn plan(
    tx: &mut RoomTx,
    id: Uuid,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<UndoPlan> {
    let undoing = may_undo(tx, id).await?;
    let discarded = undoing.mix.discarded_at.unwrap_or(now);
    let mix = Mix {
        stand: undoing.discarded.stand,
        ..undoing.mix
    };
    let outlook = Outlook::of(tx, mix, settings, now).await?;
    Ok(UndoPlan {
        vessel: undoing.vessel.name().to_owned(),
        path: path(&undoing.vessel),
        container: undoing.discarded.container,
        discarded: settings.time_zone()?.words(discarded, now),
        outlook: outlook.words(settings, now)?,
    })
}

async fn form(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let seen = see(&app, &permit, id).await?;
    let form = UndoDiscardForm {
        key: new_key()?,
        ..UndoDiscardForm::default()
    };
    page(&shown(&permit, &frame, seen, form, &Problems::default()))
}

async fn send(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<UndoDiscardForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, id, &form).await {
        Ok(()) => Ok(on_to(&app, &permit, &path_of(&app, &permit, id).await?)),
        Err(error) => {
            let (problems, seen) = (to_mend(error)?, see(&app, &permit, id).await?);
            mend(&shown(&permit, &frame, seen, form, &problems))
        }
    }
}

async fn as_typed(
    app: &App,
    permit: &Permit<TakeBack>,
    mix_id: Uuid,
    form: &UndoDiscardForm,
) -> Result<()> {
    let reason = needed_note(&form.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoDiscard { mix_id, reason };
    undo_discard(app, permit, read_key(&form.key)?, undo).await?;
    Ok(())
}

fn shown(
    permit: &Permit<TakeBack>,
    frame: &Frame,
    seen: Seen,
    form: UndoDiscardForm,
    problems: &Problems,
) -> UndoDiscardPage {
    let numbers = seen.settings.numbers();
    let shell = frame.shell_in(permit, Some(Place::Board));
    let (plan, why_not) = match seen.asked {
        Ok(plan) => (Some(plan), String::new()),
        Err(why) => (None, why),
    };
    UndoDiscardPage {
        shell: lying_at(shell, &format!("/mixes/{}/undo-discard", seen.mix.id)),
        mix_id: seen.mix.id.to_string(),
        title: seen.mix.title(numbers),
        problems: in_words(problems, numbers),
        plan,
        why_not,
        form,
    }
}
