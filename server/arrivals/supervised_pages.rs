//! The page by which a steward lets somebody in who is not inducted, and answers for
//! them.

use axum::extract::{Query, State};
use axum::response::Response;
use serde::Deserialize;

use super::actions::{NewSupervised, supervise};
use super::pages::shell;
use super::store;
use super::until::{asks_of_who_comes, until_typed};
use super::views::{SupervisedForm, SupervisedPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions::{self, Lack};
use crate::logbook::Done;
use crate::members::{self, Member};
use crate::problem::Problems;
use crate::rights::Supervise;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::inductions as words;

const SUPERVISED: &str = "/rooms/{room}/present/supervised";

/// The routes of this page.
pub(super) fn pages() -> Pages {
    Pages::new().get(SUPERVISED, form).post(SUPERVISED, send)
}

/// Who may be let in: members who are not there, each with what they lack.
struct Outside {
    settings: Settings,
    people: Vec<(Member, Vec<Lack>)>,
    is_empty: bool,
}

async fn outside(app: &App, permit: &Permit<Supervise>) -> Result<Outside> {
    let (now, steward) = (app.clock().now(), permit.person().id);
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let today = settings.time_zone()?.date_value(now);
                let present = store::present(tx, now).await?;
                let is_out = |member: &Member| {
                    let is_in = present.iter().any(|each| each.person_id == member.person);
                    member.is_active() && !is_in && member.person != steward
                };
                let mut lacks = inductions::lacks_of_all(tx, &today).await?;
                let people = members::everyone(tx).await?.into_iter().filter(is_out);
                let people = people.map(|member| {
                    let lacks = lacks.remove(&member.person).unwrap_or_default();
                    (member, lacks)
                });
                Ok(Outside {
                    settings,
                    people: people.collect(),
                    is_empty: present.is_empty(),
                })
            })
        })
        .await
}

async fn supervised_page(
    app: &App,
    permit: &Permit<Supervise>,
    frame: &Frame,
    (form, problems): (SupervisedForm, &Problems),
) -> Result<SupervisedPage> {
    let outside = outside(app, permit).await?;
    let now = app.clock().now();
    let asks = || asks_of_who_comes(form.stay.clone(), &outside.settings, now);
    let choice = |(member, lacks): &(Member, Vec<Lack>)| {
        let label = words::lacks(&member.name, lacks.len());
        Choice::new(member.person.to_string(), label)
    };
    Ok(SupervisedPage {
        shell: shell(permit, frame, "/present/supervised"),
        people: outside.people.iter().map(choice).collect(),
        asks: outside.is_empty.then(asks).transpose()?,
        form,
        problems: in_words(problems, outside.settings.numbers()),
    })
}

/// Whom the form names at first.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Named {
    person: String,
}

async fn form(
    State(app): State<App>,
    permit: Permit<Supervise>,
    frame: Frame,
    Query(Named { person }): Query<Named>,
) -> Result<Response> {
    let key = new_key()?;
    let form = SupervisedForm {
        key,
        person,
        ..SupervisedForm::default()
    };
    let shown = (form, &Problems::default());
    page(&supervised_page(&app, &permit, &frame, shown).await?)
}

async fn send(
    State(app): State<App>,
    permit: Permit<Supervise>,
    frame: Frame,
    Form(form): Form<SupervisedForm>,
) -> Result<Response> {
    match as_chosen(&app, &permit, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, "/present")),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&supervised_page(&app, &permit, &frame, shown).await?)
        }
    }
}

async fn as_chosen(app: &App, permit: &Permit<Supervise>, form: &SupervisedForm) -> Result<Done> {
    let new = NewSupervised {
        person_id: read_id(&form.person).map_err(|no| Error::field("person", no))?,
        until_us: until_typed(app, permit.scope(), &form.stay).await?,
    };
    supervise(app, permit, read_key(&form.key)?, new).await
}
