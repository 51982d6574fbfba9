//! Recording an induction, one record to read or print, and withdrawing it.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use uuid::Uuid;

use super::actions::{induct, withdraw};
use super::form::{of_new, of_renewal, read_induction, read_withdrawal};
use super::pages::{Ground, shell};
use super::scans::{self, views::ScanShown};
use super::showing::{record_shown, scan_shown};
use super::store::{self, Induction};
use super::views::{InductionForm, InductionFormPage, RecordPage, WithdrawForm, WithdrawPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::{Induct, Right, Role, SeeOwnInductions};
use crate::router::Pages;
use crate::topics::Topic;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{inductions as words, topics as topic_words};
use crate::web::shell::Place;

const INDUCTIONS: &str = "/rooms/{room}/inductions";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{INDUCTIONS}{path}");
    Pages::new()
        .get(&at("/new"), form)
        .post(INDUCTIONS, send)
        .get(&at("/records/{induction}"), record)
        .get(&at("/records/{induction}/withdraw"), withdraw_form)
        .post(&at("/records/{induction}/withdraw"), withdraw_send)
}

/// For whom the form is, or which record it renews.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[serde(default)]
struct Wanted {
    person: Option<Uuid>,
    renews: Option<Uuid>,
}

/// The ground and the record that is renewed.
async fn ground<R: Right>(
    app: &App,
    permit: &Permit<R>,
    record: Option<Uuid>,
) -> Result<(Ground, Option<Induction>)> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let record = match record {
                    Some(id) => Some(store::induction(tx, id).await?.ok_or(Error::NotFound)?),
                    None => None,
                };
                Ok((Ground::read(tx, now).await?, record))
            })
        })
        .await
}

/// Somebody is offered what they lack of what is asked for now; nobody, all of that.
fn offered(ground: &Ground, person: Option<Uuid>) -> Vec<String> {
    let in_force = &ground.in_force;
    let holds = |id: Uuid| {
        let standings = person.map(|person| in_force.of(person)).unwrap_or_default();
        standings
            .iter()
            .any(|(topic, standing)| topic.id == id && standing.holds())
    };
    let wanted = in_force.required.iter().filter(|id| !holds(**id));
    wanted.map(ToString::to_string).collect()
}

fn form_page(
    permit: &Permit<Induct>,
    frame: &Frame,
    ground: &Ground,
    (form, problems): (InductionForm, &Problems),
) -> InductionFormPage {
    let in_force = &ground.in_force;
    let topic = |topic: &Topic| {
        let about = topic_words::about(topic.version, topic.counts_from_version, topic.good_months);
        Choice::new(topic.id.to_string(), topic.title.clone()).explained(about)
    };
    InductionFormPage {
        shell: shell(permit, frame, (Place::Inductions, "/inductions/new")),
        people: in_force
            .members
            .iter()
            .map(|member| Choice::new(member.person.to_string(), member.name.clone()))
            .collect(),
        topics: in_force.topics.iter().map(topic).collect(),
        bases: words::bases(),
        problems: in_words(problems, ground.settings.numbers()),
        form,
    }
}

async fn form(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Query(wanted): Query<Wanted>,
) -> Result<Response> {
    let (ground, renewed) = ground(&app, &permit, wanted.renews).await?;
    let (key, today) = (new_key()?, &ground.in_force.today);
    let form = match &renewed {
        Some(old) => of_renewal(key, today, old),
        None => of_new(key, today, wanted.person, offered(&ground, wanted.person)),
    };
    page(&form_page(
        &permit,
        &frame,
        &ground,
        (form, &Problems::default()),
    ))
}

async fn send(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Form(form): Form<InductionForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &after(&form))),
        Err(error) => {
            let problems = to_mend(error)?;
            let (ground, _) = ground(&app, &permit, None).await?;
            mend(&form_page(&permit, &frame, &ground, (form, &problems)))
        }
    }
}

/// One person's page, where they may confirm at once; of several, everybody's.
fn after(form: &InductionForm) -> String {
    match form.people.as_slice() {
        [one] => format!("/inductions/people/{one}"),
        _ => "/inductions".to_owned(),
    }
}

async fn as_typed(app: &App, permit: &Permit<Induct>, form: &InductionForm) -> Result<Done> {
    let new = read_induction(form).map_err(Error::Invalid)?;
    induct(app, permit, read_key(&form.key)?, new).await
}

/// A record with its ground, where whoever asks may read it: their own, or as a steward.
pub(super) async fn readable<R: Right>(
    app: &App,
    permit: &Permit<R>,
    id: Uuid,
) -> Result<(Ground, Induction)> {
    let (ground, record) = ground(app, permit, Some(id)).await?;
    let record = record.ok_or(Error::NotFound)?;
    let is_own = record.person_id == permit.person().id;
    match is_own || permit.role() == Role::Steward {
        true => Ok((ground, record)),
        false => Err(Error::NotFound),
    }
}

async fn record(
    State(app): State<App>,
    permit: Permit<SeeOwnInductions>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let (ground, record) = readable(&app, &permit, id).await?;
    let path = format!("/inductions/records/{id}");
    page(&RecordPage {
        shell: shell(&permit, &frame, (Place::OwnInductions, &path)),
        record: record_shown(&record, &ground.titles, &ground.zone),
        as_of: ground.zone.on_paper(ground.now),
        scans: scans_shown(&app, &permit, &ground, id).await?,
        may_keep: permit.role() == Role::Steward,
    })
}

async fn scans_shown<R: Right>(
    app: &App,
    permit: &Permit<R>,
    ground: &Ground,
    record: Uuid,
) -> Result<Vec<ScanShown>> {
    let scans = app.database().reading(permit.scope(), move |tx| {
        Box::pin(scans::store::of_record(tx, record))
    });
    let numbers = ground.settings.numbers();
    let scans = scans.await?.into_iter();
    Ok(scans
        .map(|scan| scan_shown(&scan, &ground.zone, numbers))
        .collect())
}

fn withdraw_page(
    permit: &Permit<Induct>,
    frame: &Frame,
    (ground, record): &(Ground, Induction),
    (form, problems): (WithdrawForm, &Problems),
) -> WithdrawPage {
    let path = format!("/inductions/records/{}/withdraw", record.id);
    WithdrawPage {
        shell: shell(permit, frame, (Place::Inductions, &path)),
        record: record_shown(record, &ground.titles, &ground.zone),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn withdraw_form(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = readable(&app, &permit, id).await?;
    let form = WithdrawForm {
        key: new_key()?,
        ..WithdrawForm::default()
    };
    page(&withdraw_page(
        &permit,
        &frame,
        &kept,
        (form, &Problems::default()),
    ))
}

async fn withdraw_send(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<WithdrawForm>,
) -> Result<Response> {
    let kept = readable(&app, &permit, id).await?;
    let outcome = match read_withdrawal(&form, id) {
        Ok(wanted) => withdraw(&app, &permit, read_key(&form.key)?, wanted).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &format!("/inductions/records/{id}")));
    };
    let problems = to_mend(error)?;
    mend(&withdraw_page(&permit, &frame, &kept, (form, &problems)))
}
