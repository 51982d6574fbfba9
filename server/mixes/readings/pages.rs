//! The pages to record a check, to flag a mix, to extend it, and to take a
//! reading back.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use uuid::Uuid;

use super::form::{
    NAMES, contaminants, figure, kinds, outcomes, read_check, read_extension, read_flag,
    read_take_back,
};
use super::ground::{Ground, home};
use super::views::{
    CheckForm, CheckPage, ExtendForm, ExtendPage, FlagForm, FlagPage, TakeBackForm, TakeBackPage,
};
use super::{Kept, extend, look, store, take_back};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::Vessel;
use crate::mixes::{self, ReadingKind};
use crate::problem::Problems;
use crate::rights::{ExtendMix, Right, TakeBack, TestMix};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{lying_at, renamed};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{readings, testing as words};
use crate::web::shell::{Place, Shell};

const CHECK: &str = "/rooms/{room}/mixes/{mix}/check";
const FLAG: &str = "/rooms/{room}/mixes/{mix}/flag";
const EXTEND: &str = "/rooms/{room}/mixes/{mix}/extend";
const TAKE_BACK: &str = "/rooms/{room}/readings/{reading}/take-back";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(CHECK, check_form)
        .post(CHECK, check_send)
        .get(FLAG, flag_form)
        .post(FLAG, flag_send)
        .get(EXTEND, extend_form)
        .post(EXTEND, extend_send)
        .get(TAKE_BACK, take_back_form)
        .post(TAKE_BACK, take_back_send)
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Board)), path)
}

/// Which check the address asks for.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Asked {
    kind: String,
}

async fn check_form(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(asked): Query<Asked>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, ReadingKind::parse(&asked.kind)).await?;
    let form = CheckForm {
        key: new_key()?,
        kind: ground.kind.as_str().to_owned(),
        sample: ground.samples.first().cloned().unwrap_or_default(),
        when: "now".to_owned(),
        ..CheckForm::default()
    };
    let none = Problems::default();
    page(&check_page(&app, &permit, &frame, &ground, form, &none)?)
}

async fn check_send(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<CheckForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, ReadingKind::parse(&form.kind)).await?;
    let outcome = match read_check(&form, &ground) {
        Ok(new) => look(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &ground.home()));
    };
    let problems = renamed(&to_mend(error)?, NAMES);
    mend(&check_page(
        &app, &permit, &frame, &ground, form, &problems,
    )?)
}

fn check_page(
    app: &App,
    permit: &Permit<TestMix>,
    frame: &Frame,
    ground: &Ground,
    form: CheckForm,
    problems: &Problems,
) -> Result<CheckPage> {
    let kind = ground.kind;
    let zone = ground.settings.time_zone()?;
    let path = format!("/mixes/{}/check?kind={}", ground.mix.id, kind.as_str());
    Ok(CheckPage {
        shell: shell(permit, frame, &path),
        of: ground.of(),
        kinds: kinds(ground),
        name: readings::kind(kind).to_owned(),
        how: words::how(kind).to_owned(),
        outcomes: outcomes(kind),
        figure: figure(kind, &form),
        sample_label: words::sample(kind),
        sample_hint: words::samples(&ground.samples),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        days: late::days(&zone, ground.settings.late_note_minutes, app.clock().now()),
    })
}

async fn flag_form(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, None).await?;
    let form = FlagForm {
        key: new_key()?,
        ..FlagForm::default()
    };
    let none = Problems::default();
    page(&flag_page(&permit, &frame, &ground, form, &none)?)
}

async fn flag_send(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<FlagForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, None).await?;
    let outcome = match read_flag(&form, id) {
        Ok(new) => look(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &ground.home()));
    };
    let problems = to_mend(error)?;
    mend(&flag_page(&permit, &frame, &ground, form, &problems)?)
}

fn flag_page(
    permit: &Permit<TestMix>,
    frame: &Frame,
    ground: &Ground,
    form: FlagForm,
    problems: &Problems,
) -> Result<FlagPage> {
    Ok(FlagPage {
        shell: shell(permit, frame, &format!("/mixes/{}/flag", ground.mix.id)),
        of: ground.of(),
        groups: contaminants()?,
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn extend_form(
    State(app): State<App>,
    permit: Permit<ExtendMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, None).await?;
    let form = ExtendForm {
        key: new_key()?,
        hours: "1".to_owned(),
        ..ExtendForm::default()
    };
    let none = Problems::default();
    page(&extend_page(&permit, &frame, &ground, form, &none))
}

async fn extend_send(
    State(app): State<App>,
    permit: Permit<ExtendMix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ExtendForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id, None).await?;
    let outcome = match read_extension(&form, id, ground.settings.numbers()) {
        Ok(new) => extend(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &ground.home()));
    };
    let problems = to_mend(error)?;
    mend(&extend_page(&permit, &frame, &ground, form, &problems))
}

fn extend_page(
    permit: &Permit<ExtendMix>,
    frame: &Frame,
    ground: &Ground,
    form: ExtendForm,
    problems: &Problems,
) -> ExtendPage {
    ExtendPage {
        shell: shell(permit, frame, &format!("/mixes/{}/extend", ground.mix.id)),
        of: ground.of(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

/// A reading, and the page of what it was about, below the room: where its mix
/// stands, or its entry where the mix is gone.
async fn kept(app: &App, permit: &Permit<TakeBack>, id: Uuid) -> Result<(Settings, Kept, String)> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let kept = store::one(tx, id).await?.ok_or(Error::NotFound)?;
                let mix = mixes::mix(tx, kept.mix_id).await?;
                let mix = mix.ok_or(Error::NotFound)?;
                let path = match mix.vessel_id() {
                    Some(_) => home(&Vessel::of(tx, &mix).await?),
                    None => format!("/book/{}", kept.seq),
                };
                Ok((rooms::settings(tx).await?, kept, path))
            })
        })
        .await
}

async fn take_back_form(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let form = TakeBackForm {
        key: new_key()?,
        ..TakeBackForm::default()
    };
    let none = Problems::default();
    page(&take_back_page(&app, &permit, &frame, kept, form, &none)?)
}

async fn take_back_send(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<TakeBackForm>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let outcome = match read_take_back(&form, id) {
        Ok(undo) => take_back(&app, &permit, read_key(&form.key)?, undo).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &kept.2));
    };
    let problems = to_mend(error)?;
    mend(&take_back_page(
        &app, &permit, &frame, kept, form, &problems,
    )?)
}

fn take_back_page(
    app: &App,
    permit: &Permit<TakeBack>,
    frame: &Frame,
    (settings, kept, path): (Settings, Kept, String),
    form: TakeBackForm,
    problems: &Problems,
) -> Result<TakeBackPage> {
    let numbers = settings.numbers();
    let now = app.clock().now();
    Ok(TakeBackPage {
        shell: shell(permit, frame, &format!("/readings/{}/take-back", kept.id)),
        id: kept.id.to_string(),
        found: readings::found(&kept, numbers),
        at: settings.time_zone()?.words(kept.happened_at, now),
        path,
        form,
        problems: in_words(problems, numbers),
    })
}
