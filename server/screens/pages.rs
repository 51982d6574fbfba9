//! Where stewards keep the room's screens.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{self, NewName, NewScreen};
use super::store::{self, Screen};
use super::views::{NameForm, PairForm, ScreenPage, ScreenRow, ScreensPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::identity::devices::DeviceKind;
use crate::problem::Problems;
use crate::rights::{KeepScreens, Right, SeeScreens};
use crate::rooms;
use crate::router::Pages as Routes;
use crate::web::dates::Zone;
use crate::web::desk::{KeyForm, ask, lying_at};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::screens as words;
use crate::web::numbers::Numbers;
use crate::web::shell::{Display, Place, Shell};

const SCREENS: &str = "/rooms/{room}/screens";
const SCREEN: &str = "/rooms/{room}/screens/{screen}";
const END: &str = "/rooms/{room}/screens/{screen}/end";

/// The routes of these pages.
pub(super) fn pages() -> Routes {
    Routes::new()
        .get(SCREENS, screens)
        .post(SCREENS, pair)
        .get(SCREEN, screen)
        .post(SCREEN, rename)
        .get(END, end_asked)
        .post(END, end)
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Screens)), path)
}

fn row(screen: &Screen, zone: &Zone, now: OffsetDateTime) -> ScreenRow {
    let paired = zone.words(screen.paired_at, now).words;
    let seen = screen.last_seen_at.map(|at| zone.words(at, now).words);
    ScreenRow {
        id: screen.id.to_string(),
        name: screen.name.clone(),
        is_door: screen.kind == DeviceKind::Door,
        paired: words::paired(&paired, screen.paired_by.as_deref()),
        last_seen: words::last_seen(seen.as_deref()),
    }
}

async fn screens(
    State(app): State<App>,
    permit: Permit<SeeScreens>,
    frame: Frame,
) -> Result<Response> {
    let form = PairForm {
        key: new_key()?,
        kind: DeviceKind::Board.as_str().to_owned(),
        display: Display::Safelight.name().to_owned(),
        ..PairForm::default()
    };
    page(&screens_page(&app, &permit, &frame, form, &Problems::default()).await?)
}

async fn screens_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    form: PairForm,
    problems: &Problems,
) -> Result<ScreensPage> {
    let now = app.clock().now();
    let (settings, paired) = app
        .database()
        .reading(permit.scope(), |tx| {
            Box::pin(async move { Ok((rooms::settings(tx).await?, store::paired(tx).await?)) })
        })
        .await?;
    let zone = settings.time_zone()?;
    Ok(ScreensPage {
        shell: shell(permit, frame, "/screens"),
        screens: paired
            .iter()
            .map(|screen| row(screen, &zone, now))
            .collect(),
        address: app.address().absolute("/screen"),
        form,
        problems: in_words(problems, Numbers::default()),
    })
}

async fn pair(
    State(app): State<App>,
    permit: Permit<KeepScreens>,
    frame: Frame,
    Form(form): Form<PairForm>,
) -> Result<Response> {
    let (key, new) = (read_key(&form.key)?, as_typed(&form));
    match actions::pair(&app, &permit, key, new).await {
        Ok(_) => Ok(on_to(&app, &permit, "/screens")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&screens_page(&app, &permit, &frame, form, &problems).await?)
        }
    }
}

fn as_typed(form: &PairForm) -> NewScreen {
    NewScreen {
        code: form.code.clone(),
        kind: form.kind.clone(),
        name: form.name.clone(),
        display: form.display.clone(),
    }
}

async fn screen(
    State(app): State<App>,
    permit: Permit<SeeScreens>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    page(&screen_page(&app, &permit, &frame, id, None).await?)
}

async fn read_screen<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Screen> {
    let found = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(store::screen(tx, id)));
    found.await?.ok_or(Error::NotFound)
}

async fn screen_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    id: Uuid,
    typed: Option<(NameForm, Problems)>,
) -> Result<ScreenPage> {
    let screen = read_screen(app, permit, id).await?;
    let settings = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?;
    let (form, problems) = match typed {
        Some(typed) => typed,
        None => {
            let form = NameForm {
                key: new_key()?,
                name: screen.name.clone(),
            };
            (form, Problems::default())
        }
    };
    Ok(ScreenPage {
        shell: shell(permit, frame, &format!("/screens/{id}")),
        is_paired: screen.ended_at.is_none(),
        screen: row(&screen, &settings.time_zone()?, app.clock().now()),
        form,
        problems: in_words(&problems, Numbers::default()),
    })
}

async fn rename(
    State(app): State<App>,
    permit: Permit<KeepScreens>,
    frame: Frame,
    Path((_, screen_id)): Path<(String, Uuid)>,
    Form(form): Form<NameForm>,
) -> Result<Response> {
    let (key, name) = (read_key(&form.key)?, form.name.clone());
    match actions::rename(&app, &permit, key, NewName { screen_id, name }).await {
        Ok(_) => Ok(on_to(&app, &permit, "/screens")),
        Err(error) => {
            let typed = (form, to_mend(error)?);
            mend(&screen_page(&app, &permit, &frame, screen_id, Some(typed)).await?)
        }
    }
}

async fn end_asked(
    State(app): State<App>,
    permit: Permit<KeepScreens>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let screen = read_screen(&app, &permit, id).await?;
    let path = format!("/screens/{id}/end");
    let shell = shell(&permit, &frame, &path);
    ask(shell, words::end_question(&screen.name), &path, "/screens")
}

async fn end(
    State(app): State<App>,
    permit: Permit<KeepScreens>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    actions::end(&app, &permit, read_key(&form.key)?, id).await?;
    Ok(on_to(&app, &permit, "/screens"))
}
