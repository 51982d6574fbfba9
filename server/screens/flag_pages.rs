//! Flagging a tray at the door: that something came into a mix, or that liquid
//! nobody can name stands where nothing is recorded.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::door_pages::{by_pin, mended, on_to_done, shell};
use super::views::{FlagAtDoorPage, FlagTrayForm, FlagTrayPage};
use crate::app::App;
use crate::bench::{self, Step};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::devices::{Device, Door};
use crate::logbook::Key;
use crate::mixes::actions::{NewUnknown, VesselId, report_unknown};
use crate::mixes::readings::views::FlagForm;
use crate::mixes::readings::{NewReading, contaminants, look, read_flag};
use crate::mixes::{self, Mix, input};
use crate::problem::{Problem, Problems};
use crate::rights::TestMix;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key};
use crate::web::frame::Frame;
use crate::web::messages::{arrivals, screens as words};

const FLAG: &str = "/screen/flag/{tray}";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .open_get("/screen/flag", choose)
        .open_get(FLAG, flag_form)
        .open_post(FLAG, flag_send)
}

/// A tray that can be flagged: a known mix stands in it, or nothing is recorded.
struct Flagged {
    id: Uuid,
    name: String,
    mix: Option<Mix>,
}

async fn trays(tx: &mut RoomTx) -> Result<Vec<Flagged>> {
    let lines = bench::lines(tx).await?;
    let mut mixes = mixes::standing(tx).await?;
    let mut found = Vec::new();
    for line in lines.iter().filter(|line| !line.is_retired) {
        for tray in bench::trays(tx).await? {
            if tray.line_id != line.id || tray.is_retired || tray.step == Step::Wash {
                continue;
            }
            let place = mixes
                .iter()
                .position(|mix| mix.stand.tray_id == Some(tray.id));
            let mix = place.map(|place| mixes.swap_remove(place));
            // What nobody can name is reported already.
            if mix.as_ref().is_none_or(|mix| mix.product_id.is_some()) {
                found.push(Flagged {
                    id: tray.id,
                    name: arrivals::tray(&line.name, &tray.name),
                    mix,
                });
            }
        }
    }
    Ok(found)
}

async fn choose(State(app): State<App>, Door(device): Door, frame: Frame) -> Result<Response> {
    let found = app
        .database()
        .reading(device.scope(), |tx| Box::pin(trays(tx)))
        .await?;
    let choice = |tray: &Flagged| {
        let what = match tray.mix {
            Some(_) => words::CAME_INTO_IT,
            None => words::NOT_RECORDED,
        };
        Choice::new(tray.id, &tray.name).explained(what)
    };
    page(&FlagAtDoorPage {
        shell: shell(&app, &device, &frame),
        trays: found.iter().map(choice).collect(),
    })
}

/// The tray, and what the form needs of its room.
struct Ground {
    settings: Settings,
    tray: Flagged,
}

impl Ground {
    async fn read(app: &App, device: &Device, id: Uuid) -> Result<Self> {
        let (settings, all) = app
            .database()
            .reading(device.scope(), |tx| {
                Box::pin(async move { Ok((rooms::settings(tx).await?, trays(tx).await?)) })
            })
            .await?;
        let tray = all.into_iter().find(|tray| tray.id == id);
        Ok(Self {
            settings,
            tray: tray.ok_or(Error::NotFound)?,
        })
    }

    fn page(
        &self,
        (app, device, frame): (&App, &Device, &Frame),
        form: FlagTrayForm,
        problems: &Problems,
    ) -> Result<FlagTrayPage> {
        let numbers = self.settings.numbers();
        Ok(FlagTrayPage {
            shell: shell(app, device, frame),
            id: self.tray.id.to_string(),
            tray: self.tray.name.clone(),
            mix: self.tray.mix.as_ref().map(|mix| mix.title(numbers)),
            form,
            problems: in_words(problems, numbers),
            groups: contaminants()?,
        })
    }
}

async fn flag_form(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Path(tray): Path<Uuid>,
) -> Result<Response> {
    let ground = Ground::read(&app, &device, tray).await?;
    let form = FlagTrayForm {
        key: new_key()?,
        ..FlagTrayForm::default()
    };
    page(&ground.page((&app, &device, &frame), form, &Problems::default())?)
}

async fn flag_send(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Path(tray): Path<Uuid>,
    Form(form): Form<FlagTrayForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &device, tray).await?;
    match flags(&app, &device, &ground, &form).await {
        Ok(what) => Ok(on_to_done(&app, what)),
        Err(error) => {
            let problems = mended(error)?;
            mend(&ground.page((&app, &device, &frame), form, &problems)?)
        }
    }
}

/// What is written about a tray.
enum Flag {
    Contaminated(NewReading),
    Unknown(NewUnknown),
}

async fn flags(
    app: &App,
    device: &Device,
    ground: &Ground,
    form: &FlagTrayForm,
) -> Result<&'static str> {
    let key: Key = read_key(&form.key)?;
    let flag = read(ground, form).map_err(Error::Invalid)?;
    let permit = by_pin::<TestMix>(app, device, &form.number, &form.pin).await?;
    match flag {
        Flag::Contaminated(new) => {
            look(app, &permit, key, new).await?;
            Ok("flagged")
        }
        Flag::Unknown(new) => {
            report_unknown(app, &permit, key, new).await?;
            Ok("reported")
        }
    }
}

fn read(ground: &Ground, form: &FlagTrayForm) -> Result<Flag, Problems> {
    if let Some(mix) = &ground.tray.mix {
        let flag = FlagForm {
            groups: form.groups.clone(),
            unknown: form.unknown.clone(),
            remark: form.remark.clone(),
            ..FlagForm::default()
        };
        return read_flag(&flag, mix.id).map(Flag::Contaminated);
    }
    let mut problems = Problems::default();
    let volume = ground.settings.numbers().read_litres(&form.volume);
    let volume = volume.map_err(Problem::Number).and_then(input::mixed);
    let volume = problems.take("volume", volume);
    let remark = problems.take("remark", crate::input::note(&form.remark));
    match (volume, remark) {
        (Some(volume_ul), Some(remark)) => Ok(Flag::Unknown(NewUnknown {
            vessel: VesselId::Tray(ground.tray.id),
            volume_ul,
            remark,
        })),
        _ => Err(problems),
    }
}
