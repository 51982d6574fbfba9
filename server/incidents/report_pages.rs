//! The form to report what happened.

use axum::extract::State;
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::report;
use super::form::read;
use super::pages::{product_choices, shell};
use super::store;
use super::views::{IncidentForm, ReportPage};
use super::{BodyPart, FirstDeed, What};
use crate::app::App;
use crate::bench::{self, Line};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::products::{self, Product};
use crate::rights::{ReportIncident, Role};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::incidents as words;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/incidents/new", report_form)
        .post("/rooms/{room}/incidents", report_send)
}

/// What the form stands on.
struct Ground {
    settings: Settings,
    people: Vec<(Uuid, String)>,
    lines: Vec<Line>,
    products: Vec<Product>,
    now: OffsetDateTime,
}

impl Ground {
    async fn read(app: &App, permit: &Permit<ReportIncident>) -> Result<Self> {
        let (now, is_steward) = (app.clock().now(), permit.role() == Role::Steward);
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        people: match is_steward {
                            true => store::people(tx).await?,
                            false => Vec::new(),
                        },
                        lines: bench::lines(tx).await?,
                        products: products::products(tx).await?,
                        now,
                    })
                })
            })
            .await
    }
}

async fn report_form(
    State(app): State<App>,
    permit: Permit<ReportIncident>,
    frame: Frame,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = IncidentForm {
        key: new_key()?,
        when: late::NOW.to_owned(),
        day: ground.settings.time_zone()?.date_value(ground.now),
        ..IncidentForm::default()
    };
    let shown = (form, &Problems::default());
    page(&report_page(&permit, &frame, &ground, shown)?)
}

fn report_page(
    permit: &Permit<ReportIncident>,
    frame: &Frame,
    ground: &Ground,
    (form, problems): (IncidentForm, &Problems),
) -> Result<ReportPage> {
    let settings = &ground.settings;
    let whats = What::ALL.into_iter();
    let parts = BodyPart::ALL.into_iter();
    let deeds = FirstDeed::ALL.into_iter();
    Ok(ReportPage {
        shell: shell(permit, frame, "/incidents/new"),
        people: people(ground, permit.person().id),
        whats: whats
            .map(|what| Choice::new(what.as_str(), words::what(what)))
            .collect(),
        lines: lines(&ground.lines),
        products: product_choices(&ground.products),
        parts: parts
            .map(|part| Choice::new(part.as_str(), words::part(part)))
            .collect(),
        deeds: deeds
            .map(|deed| Choice::new(deed.as_str(), words::deed(deed)))
            .collect(),
        form,
        problems: in_words(problems, settings.numbers()),
    })
}

/// Oneself first, then everyone else: for a steward alone.
fn people(ground: &Ground, reader: Uuid) -> Vec<Choice> {
    if ground.people.is_empty() {
        return Vec::new();
    }
    let others = ground.people.iter().filter(|(id, _)| *id != reader);
    std::iter::once(Choice::new("", words::TO_ME))
        .chain(others.map(|(id, name)| Choice::new(id.to_string(), name.clone())))
        .collect()
}

fn lines(lines: &[Line]) -> Vec<Choice> {
    let in_use = lines.iter().filter(|line| !line.is_retired);
    std::iter::once(Choice::new("", words::NO_LINE))
        .chain(in_use.map(|line| Choice::new(line.id.to_string(), line.name.clone())))
        .collect()
}

async fn report_send(
    State(app): State<App>,
    permit: Permit<ReportIncident>,
    frame: Frame,
    Form(form): Form<IncidentForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match report_as_typed(&app, &permit, &ground, &form).await {
        Ok(done) => {
            let id = done.id("incident")?;
            Ok(on_to(&app, &permit, &format!("/incidents/{id}")))
        }
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&report_page(&permit, &frame, &ground, shown)?)
        }
    }
}

async fn report_as_typed(
    app: &App,
    permit: &Permit<ReportIncident>,
    ground: &Ground,
    form: &IncidentForm,
) -> Result<Done> {
    let reader = permit.person().id;
    let new = read(form, reader, &ground.settings, ground.now).map_err(Error::Invalid)?;
    report(app, permit, read_key(&form.key)?, new).await
}
