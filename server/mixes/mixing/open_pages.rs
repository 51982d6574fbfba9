//! The pages for what stood somewhere already: a known mix of unknown age, and
//! liquid that nobody can name.

use axum::extract::State;
use axum::response::Response;

use super::ground::{Ground, Where, path_of, without_fields};
use super::mix_pages::volume_hint;
use super::views::{OpenForm, OpenPage, UnknownForm, UnknownPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::note;
use crate::logbook::Done;
use crate::mixes::actions::{NewMix, NewOpening, NewUnknown, VesselId, open, report_unknown};
use crate::mixes::{cautions, input};
use crate::problem::{Problem, Problems};
use crate::rights::{OpenBench, Right, TestMix};
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages;
use crate::web::shell::{Place, Shell};

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/trays/{tray}/open", open_form)
        .post("/rooms/{room}/trays/{tray}/open", open_send)
        .get("/rooms/{room}/bottles/{bottle}/open", open_form)
        .post("/rooms/{room}/bottles/{bottle}/open", open_send)
        .get("/rooms/{room}/trays/{tray}/unknown", unknown_form)
        .post("/rooms/{room}/trays/{tray}/unknown", unknown_send)
        .get("/rooms/{room}/bottles/{bottle}/unknown", unknown_form)
        .post("/rooms/{room}/bottles/{bottle}/unknown", unknown_send)
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, ground: &Ground, what: &str) -> Shell {
    let path = format!("{}/{what}", path_of(&ground.vessel));
    lying_at(frame.shell_in(permit, Some(Place::Board)), &path)
}

/// Why nothing can be entered where the book knows of something.
fn barred(ground: &Ground) -> Option<String> {
    ground.standing.as_ref()?;
    Some(messages::problem(&Problem::KnownMixThere, ground.numbers()))
}

async fn open_form(
    State(app): State<App>,
    permit: Permit<OpenBench>,
    frame: Frame,
    Where(vessel): Where,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    let form = OpenForm {
        key: new_key()?,
        dilution: ground.first(permit.role()),
        ..OpenForm::default()
    };
    let none = Problems::default();
    page(&open_page(&permit, &frame, &ground, form, &none))
}

async fn open_send(
    State(app): State<App>,
    permit: Permit<OpenBench>,
    frame: Frame,
    Where(vessel): Where,
    Form(form): Form<OpenForm>,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    match open_as_typed(&app, &permit, &ground, vessel, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &path_of(&ground.vessel))),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&open_page(&permit, &frame, &ground, form, &problems))
        }
    }
}

async fn open_as_typed(
    app: &App,
    permit: &Permit<OpenBench>,
    ground: &Ground,
    vessel: VesselId,
    form: &OpenForm,
) -> Result<Done> {
    let new = read_opening(form, ground, vessel).map_err(Error::Invalid)?;
    open(app, permit, read_key(&form.key)?, new).await
}

fn read_opening(
    form: &OpenForm,
    ground: &Ground,
    vessel: VesselId,
) -> Result<NewOpening, Problems> {
    let numbers = ground.numbers();
    let mut problems = Problems::default();
    let dilution = problems.take("dilution", read_id(&form.dilution));
    let volume = numbers.read_litres(&form.volume).map_err(Problem::Number);
    let volume = problems.take("volume", volume.and_then(input::mixed));
    let guess = |typed: &str| {
        let ppb = numbers.read_percent(typed).map_err(Problem::Number)?;
        input::guess(ppb)
    };
    let used = problems.take("capacity_used", guess(&form.capacity_used));
    let age = problems.take("life_used", guess(&form.life_used));
    match (dilution, volume, used, age) {
        (Some(dilution_id), Some(volume_ul), Some(used_ppb), Some(age_ppb)) => Ok(NewOpening {
            mix: NewMix {
                vessel,
                dilution_id,
                volume_ul,
                stock_id: None,
                happened_at_us: None,
            },
            used_ppb,
            age_ppb,
        }),
        _ => Err(problems),
    }
}

fn open_page(
    permit: &Permit<OpenBench>,
    frame: &Frame,
    ground: &Ground,
    form: OpenForm,
    problems: &Problems,
) -> OpenPage {
    let dilutions = ground.choices(permit.role());
    let problems = match (barred(ground), dilutions.is_empty()) {
        (Some(_), _) => without_fields(problems, Problem::KnownMixThere),
        (None, true) => without_fields(problems, Problem::NotAChoice),
        (None, false) => problems.clone(),
    };
    OpenPage {
        shell: shell(permit, frame, ground, "open"),
        vessel_path: path_of(&ground.vessel),
        vessel: ground.vessel.name().to_owned(),
        barred: barred(ground),
        form,
        problems: in_words(&problems, ground.numbers()),
        dilutions,
        volume_hint: volume_hint(ground),
        cautions: cautions(&[]),
    }
}

async fn unknown_form(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Where(vessel): Where,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    let form = UnknownForm {
        key: new_key()?,
        ..UnknownForm::default()
    };
    let none = Problems::default();
    page(&unknown_page(&permit, &frame, &ground, form, &none))
}

async fn unknown_send(
    State(app): State<App>,
    permit: Permit<TestMix>,
    frame: Frame,
    Where(vessel): Where,
    Form(form): Form<UnknownForm>,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    match report_as_typed(&app, &permit, &ground, vessel, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &path_of(&ground.vessel))),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&unknown_page(&permit, &frame, &ground, form, &problems))
        }
    }
}

async fn report_as_typed(
    app: &App,
    permit: &Permit<TestMix>,
    ground: &Ground,
    vessel: VesselId,
    form: &UnknownForm,
) -> Result<Done> {
    let mut problems = Problems::default();
    let volume = ground.numbers().read_litres(&form.volume);
    let volume = volume.map_err(Problem::Number).and_then(input::mixed);
    let volume = problems.take("volume", volume);
    let remark = problems.take("remark", note(&form.remark));
    let (Some(volume_ul), Some(remark)) = (volume, remark) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewUnknown {
        vessel,
        volume_ul,
        remark,
    };
    report_unknown(app, permit, read_key(&form.key)?, new).await
}

fn unknown_page(
    permit: &Permit<TestMix>,
    frame: &Frame,
    ground: &Ground,
    form: UnknownForm,
    problems: &Problems,
) -> UnknownPage {
    let problems = match barred(ground) {
        Some(_) => without_fields(problems, Problem::KnownMixThere),
        None => problems.clone(),
    };
    UnknownPage {
        shell: shell(permit, frame, ground, "unknown"),
        vessel_path: path_of(&ground.vessel),
        vessel: ground.vessel.name().to_owned(),
        barred: barred(ground),
        form,
        problems: in_words(&problems, ground.numbers()),
        volume_hint: volume_hint(ground),
        cautions: Vec::new(),
    }
}
