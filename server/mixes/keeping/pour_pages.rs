//! The page to pour one mix into another.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::outlook::{self, Outlook, bath, by_field, or_why_not, path_of};
use super::views::{Barred, PourForm, PourPage};
use crate::app::App;
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Ground, NewJoin, Vessel, joined, pour_together};
use crate::mixes::{Mix, cautions, store};
use crate::problem::Problems;
use crate::rights;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::keeping as words;
use crate::web::shell::Place;

const POUR: &str = "/rooms/{room}/mixes/{mix}/pour";

pub(super) fn pages() -> Pages {
    Pages::new().get(POUR, form).post(POUR, send)
}

/// A mix that another would be poured into: what would come of it, or why it may not be.
pub(super) struct Partner {
    pub(super) mix_id: Uuid,
    pub(super) name: String,
    pub(super) asked: Result<String, String>,
}

/// The mix that is poured, and every other.
struct Seen {
    ground: Ground,
    judgement: Judgement,
    partners: Vec<Partner>,
}

async fn see(app: &App, permit: &Permit<rights::Mix>, id: Uuid) -> Result<Seen> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::seen(tx, id).await?;
                let found = Outlook::of(tx, ground.mix.clone(), &ground.settings, now).await?;
                Ok(Seen {
                    partners: partners(tx, &ground, now).await?,
                    judgement: found.judgement,
                    ground,
                })
            })
        })
        .await
}

/// Every other mix that stands, asked whether this one may join it.
pub(super) async fn partners(
    tx: &mut RoomTx,
    poured: &Ground,
    now: OffsetDateTime,
) -> Result<Vec<Partner>> {
    let numbers = poured.settings.numbers();
    let mut partners = Vec::new();
    let standing = store::standing(tx).await?.into_iter();
    for mix in standing.filter(|mix| mix.id != poured.mix.id) {
        let into = Ground {
            vessel: Vessel::of(tx, &mix).await?,
            settings: poured.settings.clone(),
            mix,
            at: None,
        };
        let asked = together(tx, &into, poured, now).await;
        partners.push(Partner {
            mix_id: into.mix.id,
            name: words::mix_in(&into.mix.title(numbers), into.vessel.name()),
            asked: or_why_not(asked, numbers)?,
        });
    }
    Ok(partners)
}

/// What two mixes come to, by the rules that the book folds them by.
async fn together(
    tx: &mut RoomTx,
    into: &Ground,
    poured: &Ground,
    now: OffsetDateTime,
) -> Result<String> {
    let entry = joined(tx, into, poured, now).await?;
    let mut mix: Mix = into.mix.clone();
    mix.join(&poured.mix, &entry, now)?;
    let outlook = Outlook::of(tx, mix, &into.settings, now).await?;
    let volume = |microlitres| into.settings.numbers().volume(microlitres);
    let sum = words::sum(
        &volume(poured.mix.level_ul()),
        &volume(into.mix.level_ul()),
        &volume(outlook.mix.level_ul()),
        &volume(into.vessel.holds_ul()),
    );
    Ok(format!("{sum} {}", outlook.words(&into.settings, now)?))
}

async fn form(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let seen = see(&app, &permit, id).await?;
    let form = PourForm {
        key: new_key()?,
        ..PourForm::default()
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
    Form(form): Form<PourForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, id, &form).await {
        Ok(into) => Ok(on_to(&app, &permit, &path_of(&app, &permit, into).await?)),
        Err(error) => {
            let (problems, seen) = (to_mend(error)?, see(&app, &permit, id).await?);
            let problems = by_field(&problems, &[]);
            let now = app.clock().now();
            mend(&shown(&permit, &frame, seen, form, &problems, now)?)
        }
    }
}

async fn as_typed(
    app: &App,
    permit: &Permit<rights::Mix>,
    poured_mix_id: Uuid,
    form: &PourForm,
) -> Result<Uuid> {
    let zone = outlook::settings(app, permit).await?.time_zone()?;
    let mut problems = Problems::default();
    let into = problems.take("into", read_id(&form.into));
    let at = late::read(&zone, &form.when, &form.day, &form.time);
    let (Some(into_mix_id), Some(happened_at_us)) = (into, problems.take("time", at)) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewJoin {
        poured_mix_id,
        into_mix_id,
        happened_at_us,
    };
    pour_together(app, permit, read_key(&form.key)?, new).await?;
    Ok(into_mix_id)
}

fn shown(
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    seen: Seen,
    form: PourForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<PourPage> {
    let settings = &seen.ground.settings;
    let shell = frame.shell_in(permit, Some(Place::Board));
    let (mut choices, mut barred) = (Vec::new(), Vec::new());
    for partner in seen.partners {
        match partner.asked {
            Ok(hint) => {
                choices.push(Choice::new(partner.mix_id, partner.name).explained(hint));
            }
            Err(why) => barred.push(Barred {
                name: partner.name,
                why,
            }),
        }
    }
    Ok(PourPage {
        shell: lying_at(shell, &format!("/mixes/{}/pour", seen.ground.mix.id)),
        bath: bath(&seen.ground, &seen.judgement, now)?,
        days: late::days(&settings.time_zone()?, settings.late_note_minutes, now),
        problems: in_words(problems, settings.numbers()),
        cautions: cautions(&seen.ground.mix.hazard_codes),
        choices,
        barred,
        form,
    })
}
