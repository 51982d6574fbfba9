//! Everybody and what they know, and one person's records as a steward reads them.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::confirming::confirm_beside;
use super::in_force::InForce;
use super::showing::{Titles, person_row, record_shown, standing_rows, supplement_rows, titles};
use super::store::{self, Asked, Induction};
use super::supplements::{Supplement, supplements};
use super::views::{BesideForm, InductionsPage, PersonPage};
use super::{log_pages, own_pages, record_pages, scans};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::{Permit, pins};
use crate::members;
use crate::problem::Problems;
use crate::rights::{Induct, Right, SeeInductions};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::topics;
use crate::web::dates::Zone;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::shell::{Place, Shell};

const INDUCTIONS: &str = "/rooms/{room}/inductions";

/// So many records are read at once at most.
pub(super) const MOST: i64 = 1_000;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    let at = |path: &str| format!("{INDUCTIONS}{path}");
    Pages::new()
        .get(INDUCTIONS, overview)
        .post(&at("/confirm"), confirm)
        .get(&at("/people/{person}"), of_person)
        .and(own_pages::pages())
        .and(record_pages::pages())
        .and(scans::pages::pages())
        .and(log_pages::pages())
}

/// What all these pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) zone: Zone,
    pub(super) now: OffsetDateTime,
    pub(super) in_force: InForce,
    pub(super) titles: Titles,
}

impl Ground {
    pub(super) async fn read(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Self> {
        let settings = rooms::settings(tx).await?;
        let zone = settings.time_zone()?;
        Ok(Self {
            in_force: InForce::read(tx, &zone.date_value(now)).await?,
            titles: titles(&topics::topics(tx).await?),
            settings,
            zone,
            now,
        })
    }
}

pub(super) fn shell<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    (place, path): (Place, &str),
) -> Shell {
    lying_at(frame.shell_in(permit, Some(place)), path)
}

async fn overview(
    State(app): State<App>,
    permit: Permit<SeeInductions>,
    frame: Frame,
) -> Result<Response> {
    let form = BesideForm {
        key: new_key()?,
        ..BesideForm::default()
    };
    page(&overview_page(&app, &permit, &frame, (form, &Problems::default())).await?)
}

/// The ground, who has something to confirm, a name for each record, and the supplements.
async fn overview_ground<R: Right>(
    app: &App,
    permit: &Permit<R>,
) -> Result<(Ground, Vec<Uuid>, Vec<Supplement>)> {
    let now = app.clock().now();
    let asked = Asked {
        waiting: true,
        ..Asked::default()
    };
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::read(tx, now).await?;
                let waiting = store::inductions(tx, asked, MOST).await?;
                let waiting = waiting.iter().map(|record| record.person_id).collect();
                let due = supplements(tx, &ground.in_force.today).await?;
                Ok((ground, waiting, due))
            })
        })
        .await
}

async fn overview_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    (form, problems): (BesideForm, &Problems),
) -> Result<InductionsPage> {
    let (ground, waiting, due) = overview_ground(app, permit).await?;
    let in_force = &ground.in_force;
    let required = in_force.topics.iter();
    let required = required.filter(|topic| in_force.is_required(topic));
    Ok(InductionsPage {
        shell: shell(permit, frame, (Place::Inductions, "/inductions")),
        people: in_force
            .members
            .iter()
            .map(|member| person_row(member, in_force, &waiting))
            .collect(),
        required: required.map(|topic| topic.title.clone()).collect(),
        supplements: supplement_rows(&due),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn confirm(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Form(form): Form<BesideForm>,
) -> Result<Response> {
    let typed = pins::Typed {
        number: form.number.clone(),
        pin: form.pin.clone(),
    };
    match confirm_beside(&app, &permit, read_key(&form.key)?, typed).await {
        Ok((_, person)) => Ok(on_to(
            &app,
            &permit,
            &format!("/inductions/people/{person}"),
        )),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&overview_page(&app, &permit, &frame, shown).await?)
        }
    }
}

/// One person's page, for whoever holds the permit.
pub(super) struct OfPerson {
    pub(super) id: Uuid,
    pub(super) name: String,
    pub(super) is_own: bool,
    ground: Ground,
    records: Vec<Induction>,
}

impl OfPerson {
    /// Reads what there is of a member, former ones too.
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Self> {
        let (now, own) = (app.clock().now(), permit.person().id);
        let asked = Asked {
            person: Some(id),
            ..Asked::default()
        };
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let members = members::everyone(tx).await?.into_iter();
                    let mut members = members.filter(|member| member.person == id);
                    let member = members.next().ok_or(Error::NotFound)?;
                    Ok(Self {
                        id,
                        name: member.name,
                        is_own: id == own,
                        ground: Ground::read(tx, now).await?,
                        records: store::inductions(tx, asked, MOST).await?,
                    })
                })
            })
            .await
    }

    /// The page in a shell.
    pub(super) fn page(&self, shell: Shell, key: String, problems: &Problems) -> PersonPage {
        let ground = &self.ground;
        let records = self.records.iter();
        PersonPage {
            shell,
            id: self.id.to_string(),
            name: self.name.clone(),
            is_own: self.is_own,
            standings: standing_rows(&ground.in_force, self.id),
            waiting: records.clone().filter(|record| record.waits()).count(),
            records: records
                .map(|record| record_shown(record, &ground.titles, &ground.zone))
                .collect(),
            form: BesideForm {
                key,
                ..BesideForm::default()
            },
            problems: in_words(problems, ground.settings.numbers()),
        }
    }
}

async fn of_person(
    State(app): State<App>,
    permit: Permit<SeeInductions>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let person = OfPerson::read(&app, &permit, id).await?;
    let path = format!("/inductions/people/{id}");
    let shell = shell(&permit, &frame, (Place::Inductions, &path));
    page(&person.page(shell, new_key()?, &Problems::default()))
}
