//! The workshops, and one workshop with its guests and its notes.

use std::collections::BTreeMap;

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::showing::{guests_shown, notes_shown, shown};
use super::store::{self, Guest, Workshop};
use super::views::{MayDo, WorkshopPage, WorkshopShown, WorkshopsPage};
use super::{Standing, guests, lead_pages, plan_pages};
use crate::app::App;
use crate::arrivals::{self, Presence};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::rights::{LeadWorkshop, NoteSheets, PlanWorkshop, Right, SeeWorkshops};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::sheets::{self, Pass};
use crate::web::dates::Zone;
use crate::web::desk::lying_at;
use crate::web::forms::{new_key, page};
use crate::web::frame::Frame;
use crate::web::messages::workshops as words;
use crate::web::shell::{Place, Shell};

const WORKSHOPS: &str = "/rooms/{room}/workshops";
const WORKSHOP: &str = "/rooms/{room}/workshops/{workshop}";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(WORKSHOPS, list)
        .and(plan_pages::pages())
        .get(WORKSHOP, one)
        .and(lead_pages::pages())
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Workshops)), path)
}

fn may<R: Right, S: Right>(permit: &Permit<S>) -> bool {
    R::ROW.roles.contains(&permit.role())
}

async fn list(
    State(app): State<App>,
    permit: Permit<SeeWorkshops>,
    frame: Frame,
) -> Result<Response> {
    let now = app.clock().now();
    let (settings, all) = app
        .database()
        .reading(permit.scope(), |tx| {
            Box::pin(async move { Ok((rooms::settings(tx).await?, store::workshops(tx).await?)) })
        })
        .await?;
    page(&list_page(&permit, &frame, (&settings, &all), now)?)
}

fn list_page(
    permit: &Permit<SeeWorkshops>,
    frame: &Frame,
    (settings, all): (&Settings, &[Workshop]),
    now: OffsetDateTime,
) -> Result<WorkshopsPage> {
    let zone = settings.time_zone()?;
    let is_coming = |each: &&Workshop| {
        let standing = each.standing(now);
        matches!(standing, Standing::Planned | Standing::Open)
    };
    let (mut coming, past): (Vec<&Workshop>, Vec<&Workshop>) = all.iter().partition(is_coming);
    coming.reverse();
    let rows = |all: Vec<&Workshop>| -> Vec<WorkshopShown> {
        let all = all.into_iter();
        all.map(|each| shown(each, &zone, now)).collect()
    };
    Ok(WorkshopsPage {
        shell: shell(permit, frame, "/workshops"),
        coming: rows(coming),
        past: rows(past),
        may_plan: may::<PlanWorkshop, _>(permit),
    })
}

/// Everything the pages of one workshop stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) zone: Zone,
    pub(super) now: OffsetDateTime,
    pub(super) workshop: Workshop,
    guests: Vec<Guest>,
    names: BTreeMap<Uuid, String>,
    passes: Vec<Pass>,
    present: Vec<Presence>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| Box::pin(Self::of(tx, now, id)))
            .await
    }

    async fn of(tx: &mut RoomTx, now: OffsetDateTime, id: Uuid) -> Result<Self> {
        let workshop = store::workshop(tx, id).await?.ok_or(Error::NotFound)?;
        let settings = rooms::settings(tx).await?;
        let guests = store::guests(tx, id).await?;
        Ok(Self {
            zone: settings.time_zone()?,
            names: guests::names(tx, &guests).await?,
            passes: sheets::passes_for(tx, id).await?,
            present: arrivals::present(tx, now).await?,
            settings,
            now,
            workshop,
            guests,
        })
    }

    pub(super) fn shown(&self) -> WorkshopShown {
        shown(&self.workshop, &self.zone, self.now)
    }

    pub(super) fn is_open(&self) -> bool {
        self.workshop.standing(self.now) == Standing::Open
    }

    /// The guests who are there.
    pub(super) fn there(&self) -> i64 {
        let there = self.guests.iter().filter(|guest| guest.left_at.is_none());
        i64::try_from(there.count()).unwrap_or(i64::MAX)
    }

    /// The sheets that were noted for it.
    pub(super) fn noted(&self) -> Option<String> {
        let (notes, sheets) = notes_shown(&self.passes, &self.zone, self.now);
        (!notes.is_empty()).then(|| words::noted_in_all(sheets))
    }

    /// Whether this person leads it.
    pub(super) fn is_led_by(&self, person: Uuid) -> bool {
        self.workshop.leader_id == person
    }

    fn is_present(&self, person: Uuid) -> bool {
        self.present.iter().any(|each| each.person_id == person)
    }

    fn names_guests<R: Right>(&self, permit: &Permit<R>) -> bool {
        let reader = (permit.person().id, permit.role());
        guests::are_named_to(reader, &self.workshop, &self.present, self.now)
    }

    fn may<R: Right>(&self, permit: &Permit<R>) -> MayDo {
        let (reader, standing) = (permit.person().id, self.workshop.standing(self.now));
        let leads = self.is_led_by(reader);
        let keeps = may::<PlanWorkshop, R>(permit);
        let is_planned = standing == Standing::Planned;
        let day = |at| self.zone.date_value(at);
        let is_today = day(self.workshop.begins_at) == day(self.now);
        let works_here = may::<LeadWorkshop, R>(permit);
        MayDo {
            plan: keeps && is_planned,
            open: is_planned && is_today && (leads || keeps) && works_here,
            lead: self.is_open() && (leads || keeps) && works_here,
            note: self.is_open() && leads && may::<NoteSheets, R>(permit),
            take_over: self.is_open() && !leads && works_here && self.is_present(reader),
        }
    }
}

async fn one(
    State(app): State<App>,
    permit: Permit<SeeWorkshops>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    page(&workshop_page(&permit, &frame, &ground)?)
}

fn workshop_page(
    permit: &Permit<SeeWorkshops>,
    frame: &Frame,
    ground: &Ground,
) -> Result<WorkshopPage> {
    let (workshop, zone, now) = (&ground.workshop, &ground.zone, ground.now);
    let is_named = ground.names_guests(permit);
    let of = (workshop, &ground.guests[..]);
    let (there, left) = match is_named {
        true => guests_shown(of, &ground.names, zone, now),
        false => (Vec::new(), Vec::new()),
    };
    let (notes, _) = notes_shown(&ground.passes, zone, now);
    let count = match ground.is_open() {
        true => words::there_now(ground.there()),
        false => words::came(ground.guests.len()),
    };
    Ok(WorkshopPage {
        shell: shell(permit, frame, &format!("/workshops/{}", workshop.id)),
        workshop: ground.shown(),
        called_off: workshop.called_off_reason.clone(),
        opened_seq: workshop.opened_seq,
        paid_by: words::paid_by(workshop.paid_by.as_deref()),
        count: workshop.opened_seq.map(|_| count),
        there,
        left,
        is_named,
        kept_days: ground.settings.guest_days,
        notes,
        noted: ground.noted().unwrap_or_default(),
        may: ground.may(permit),
        key: new_key()?,
    })
}
