//! One's own incidents, and the one that is asked for.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::showing::{facts, row};
use super::store::{self, Counted, Incident, Look};
use super::views::{AvoidForm, AvoidRow, ClosedPage, IncidentPage, IncidentsPage, PeriodForm};
use super::{AvoidNote, Details};
use crate::app::App;
use crate::bench::{self, Line};
use crate::emergency;
use crate::emergency::views::RoomHelp;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::beside::beside;
use crate::problem::Problems;
use crate::products::{self, Product};
use crate::rights::{OpenIncident, Right, Role, SeeIncidents};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::lying_at;
use crate::web::fields::Choice;
use crate::web::forms::{in_words, mend, new_key, page};
use crate::web::frame::Frame;
use crate::web::messages::incidents as words;
use crate::web::shell::{Place, Shell};

/// So many a list shows.
const MOST: i64 = 200;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/incidents", list)
        .get("/rooms/{room}/incidents/{incident}", one)
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Incidents)), path)
}

/// What the list stands on: nothing of what happened to anybody.
pub(super) struct Listed {
    settings: Settings,
    zone: Zone,
    incidents: Vec<Incident>,
    products: Vec<Product>,
    avoids: Vec<AvoidNote>,
    period: PeriodForm,
    counted: Option<Counted>,
    problems: Problems,
    now: OffsetDateTime,
}

impl Listed {
    pub(super) async fn read<R: Right>(
        app: &App,
        permit: &Permit<R>,
        period: PeriodForm,
    ) -> Result<Self> {
        let (now, person) = (app.clock().now(), permit.person().id);
        let whose = (permit.role() != Role::Steward).then_some(person);
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let settings = rooms::settings(tx).await?;
                    let zone = settings.time_zone()?;
                    let period = period.or_the_last_year(&zone, now);
                    let (counted, problems) = match (period.read(&zone), whose) {
                        (Ok(period), None) => (Some(store::counted(tx, period).await?), None),
                        (read, _) => (None, read.err()),
                    };
                    Ok(Self {
                        zone,
                        settings,
                        period,
                        counted,
                        problems: problems.unwrap_or_default(),
                        incidents: store::incidents(tx, (None, whose), MOST).await?,
                        products: products::products(tx).await?,
                        avoids: store::avoid_notes(tx).await?,
                        now,
                    })
                })
            })
            .await
    }

    pub(super) fn page<R: Right>(
        &self,
        permit: &Permit<R>,
        frame: &Frame,
        (form, problems): (AvoidForm, &Problems),
    ) -> IncidentsPage {
        let person = permit.person().id;
        let (own, others): (Vec<&Incident>, Vec<&Incident>) = self
            .incidents
            .iter()
            .partition(|each| each.person_id == person);
        let rows = |incidents: Vec<&Incident>| {
            let rows = incidents.into_iter();
            rows.map(|each| row(each, &self.zone, self.now)).collect()
        };
        let avoids = self.avoids.iter();
        let counted = self.counted.as_ref();
        IncidentsPage {
            shell: shell(permit, frame, "/incidents"),
            own: rows(own),
            others: rows(others),
            is_steward: permit.role() == Role::Steward,
            counted: counted.map(|each| words::counted(each.reported, each.unfinished)),
            period: self.period.clone(),
            avoids: avoids
                .map(|note| AvoidRow {
                    id: note.id.to_string(),
                    words: words::avoided(note.product.as_deref(), &note.words),
                })
                .collect(),
            products: product_choices(&self.products),
            form,
            problems: in_words(problems, self.settings.numbers()),
        }
    }
}

/// The products in use, and none.
pub(super) fn product_choices(products: &[Product]) -> Vec<Choice> {
    let in_use = products.iter().filter(|product| !product.is_retired);
    let named = in_use.map(|product| Choice::new(product.id.to_string(), product.name.clone()));
    std::iter::once(Choice::new("", words::NO_PRODUCT))
        .chain(named)
        .collect()
}

async fn list(
    State(app): State<App>,
    permit: Permit<SeeIncidents>,
    frame: Frame,
    Query(period): Query<PeriodForm>,
) -> Result<Response> {
    let listed = Listed::read(&app, &permit, period).await?;
    let shown = listed.page(&permit, &frame, (AvoidForm::default(), &listed.problems));
    match listed.problems.is_empty() {
        true => page(&shown),
        false => mend(&shown),
    }
}

/// An incident with what lies beside the book.
pub(super) struct Opened {
    pub(super) incident: Incident,
    details: Option<Details>,
    looks: Vec<Look>,
    lines: Vec<Line>,
    products: Vec<Product>,
    settings: Settings,
    help: RoomHelp,
    now: OffsetDateTime,
}

impl Opened {
    pub(super) async fn read<R: Right>(
        app: &App,
        permit: &Permit<R>,
        incident: Incident,
    ) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let seq = incident.reported_seq;
                    let text = beside(tx, &[seq]).await?.remove(&seq);
                    let (settings, help, _) = emergency::on_file(tx).await?;
                    Ok(Self {
                        details: text.as_deref().map(Details::of_text).transpose()?,
                        looks: store::looks(tx, incident.id).await?,
                        lines: bench::lines(tx).await?,
                        products: products::products(tx).await?,
                        settings,
                        help,
                        incident,
                        now,
                    })
                })
            })
            .await
    }

    pub(super) fn page<R: Right>(&self, permit: &Permit<R>, frame: &Frame) -> Result<IncidentPage> {
        let (incident, zone) = (&self.incident, self.settings.time_zone()?);
        let details = self.details.as_ref();
        let is_own = incident.person_id == permit.person().id;
        let named = (&self.lines[..], &self.products[..]);
        let looks = self.looks.iter();
        Ok(IncidentPage {
            shell: shell(permit, frame, &format!("/incidents/{}", incident.id)),
            id: incident.id.to_string(),
            number: incident.number,
            room: Some(self.help.clone()),
            leads_with_help: is_own && details.is_some_and(|each| each.what.wants_water()),
            facts: facts(incident, details, named, &zone, self.now),
            words: details.map(|each| each.words.clone()).unwrap_or_default(),
            looks: looks
                .map(|look| {
                    let at = zone.words(look.looked_at, self.now).words;
                    words::looked(look.person.as_deref(), &at)
                })
                .collect(),
            is_finished: incident.finished_seq.is_some(),
            is_erased: incident.erased_seq.is_some(),
            may_finish: OpenIncident::ROW.roles.contains(&permit.role()),
            key: new_key()?,
        })
    }
}

/// An incident that the reader may know of: their own, or as a steward.
pub(super) async fn known<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Incident> {
    let database = app.database();
    let found = database.reading(permit.scope(), move |tx| Box::pin(store::incident(tx, id)));
    let incident = found.await?.ok_or(Error::NotFound)?;
    let is_own = incident.person_id == permit.person().id;
    match is_own || permit.role() == Role::Steward {
        true => Ok(incident),
        false => Err(Error::NotFound),
    }
}

async fn one(
    State(app): State<App>,
    permit: Permit<SeeIncidents>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let incident = known(&app, &permit, id).await?;
    if incident.person_id != permit.person().id {
        return closed(&app, &permit, &frame, &incident).await;
    }
    let opened = Opened::read(&app, &permit, incident).await?;
    page(&opened.page(&permit, &frame)?)
}

/// What a steward sees of somebody's incident without opening it.
async fn closed(
    app: &App,
    permit: &Permit<SeeIncidents>,
    frame: &Frame,
    incident: &Incident,
) -> Result<Response> {
    let database = app.database();
    let settings = database.reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)));
    let (zone, now) = (settings.await?.time_zone()?, app.clock().now());
    page(&ClosedPage {
        shell: shell(permit, frame, &format!("/incidents/{}", incident.id)),
        row: row(incident, &zone, now),
        key: new_key()?,
    })
}
