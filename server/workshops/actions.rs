//! What a steward does: planning a workshop, changing it, calling it off.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::store::{self, Workshop};
use super::{Standing, WorkshopCalledOff, WorkshopSet};
use crate::app::App;
use crate::bench::{self, Line, spaces};
use crate::clock::moment;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::logbook::{Book, Done, Key};
use crate::members;
use crate::problem::Problem;
use crate::rights::{LeadWorkshop, PlanWorkshop, Right};
use crate::rooms;

/// A workshop as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewWorkshop {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What it is called.
    pub title: String,
    /// Who leads it.
    pub leader_id: Uuid,
    /// Where; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// When it begins, in microseconds since 1970.
    pub begins_at_us: i64,
    /// When it ends, in microseconds since 1970.
    pub ends_at_us: i64,
    /// The most guests at once.
    pub most_guests: i32,
    /// The lines it prints on.
    pub line_ids: Vec<Uuid>,
    /// The member who pays; nobody where the room does.
    pub paid_by_id: Option<Uuid>,
}

/// A workshop that does not take place.
#[derive(Clone, Debug, Serialize)]
pub struct CallOff {
    /// Which.
    pub workshop_id: Uuid,
    /// Why.
    pub reason: String,
}

/// Plans a workshop, or changes one that was not opened yet.
///
/// # Errors
/// A leader who is no member or is not inducted on what is asked for on that day, with what
/// is missing; times that have passed or are not of one day of the room; more guests than
/// the room has places beside the leader's; a space, line or member that is none.
pub async fn set_workshop(
    app: &App,
    permit: &Permit<PlanWorkshop>,
    key: Key,
    new: NewWorkshop,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_plan(book, new).await })
        })
        .await
}

async fn write_plan(book: &mut Book<'_>, new: NewWorkshop) -> Result<()> {
    let old = match new.id {
        Some(id) => Some(planned(book, id).await?),
        None => None,
    };
    let settings = rooms::settings(book.tx()).await?;
    let zone = settings.time_zone()?;
    let (begins, ends) = (moment(new.begins_at_us), moment(new.ends_at_us));
    let local_date = zone.date_value(begins);
    in_order((begins, ends), book.now())?;
    if zone.date_value(ends) != local_date {
        return Err(Error::field("ends", Problem::NotOnOneDay));
    }
    // The leader takes a place as well.
    if new.most_guests >= settings.people_limit {
        let problem = Problem::OutOfRange {
            least: "1".to_owned(),
            most: (settings.people_limit - 1).to_string(),
        };
        return Err(Error::field("most", problem));
    }
    may_lead(book.tx(), new.leader_id, &local_date).await?;
    things_are_there(book.tx(), &new, old.as_ref()).await?;
    let set = WorkshopSet {
        workshop_id: new.id.unwrap_or_else(|| book.new_id()),
        title: new.title,
        leader_id: new.leader_id,
        space_id: new.space_id,
        local_date,
        begins_at_us: new.begins_at_us,
        ends_at_us: new.ends_at_us,
        most_guests: new.most_guests,
        line_ids: new.line_ids,
        paid_by_id: new.paid_by_id,
    };
    book.append(&set).await?;
    Ok(())
}

fn in_order((begins, ends): (OffsetDateTime, OffsetDateTime), now: OffsetDateTime) -> Result<()> {
    if ends <= begins {
        return Err(Error::field("ends", Problem::EndsBeforeBeginning));
    }
    match ends <= now {
        true => Err(Error::field("ends", Problem::HasPassed)),
        false => Ok(()),
    }
}

/// Whoever leads works at the bench, and is inducted on that day.
async fn may_lead(tx: &mut RoomTx, leader: Uuid, on: &str) -> Result<()> {
    let members = members::everyone(tx).await?;
    let leader = members.iter().find(|member| member.person == leader);
    let works_here = |role| LeadWorkshop::ROW.roles.contains(&role);
    let leader = leader.filter(|member| member.is_active() && works_here(member.role));
    let leader = leader.ok_or_else(|| Error::field("leader", Problem::NotAChoice))?;
    let lacks = inductions::lacks(tx, leader.person, on).await?;
    if lacks.is_empty() {
        return Ok(());
    }
    let missing = lacks.into_iter().map(|lack| lack.title).collect();
    Err(Error::field("leader", Problem::LeaderLacks { missing }))
}

async fn things_are_there(
    tx: &mut RoomTx,
    new: &NewWorkshop,
    old: Option<&Workshop>,
) -> Result<()> {
    let kept_space = old.and_then(|old| old.space_id);
    if new.space_id.is_some() && new.space_id != kept_space {
        let mut spaces = spaces::spaces(tx).await?.into_iter();
        let is_it = |space: &spaces::Space| Some(space.id) == new.space_id && !space.is_retired;
        if !spaces.any(|space| is_it(&space)) {
            return Err(Error::field("space", Problem::NotAChoice));
        }
    }
    let lines = bench::lines(tx).await?;
    let kept_lines = old.map_or(&[][..], |old| &old.line_ids);
    let is_line = |id: &Uuid| {
        let is_it = |line: &Line| line.id == *id && !line.is_retired;
        kept_lines.contains(id) || lines.iter().any(is_it)
    };
    if !new.line_ids.iter().all(is_line) {
        return Err(Error::field("lines", Problem::NotAChoice));
    }
    if let Some(paid_by) = new.paid_by_id {
        let members = members::everyone(tx).await?;
        let mut active = members.iter().filter(|member| member.is_active());
        if !active.any(|member| member.person == paid_by) {
            return Err(Error::field("paid_by", Problem::NotAChoice));
        }
    }
    Ok(())
}

/// Calls a workshop off that was not opened yet.
///
/// # Errors
/// None of that id; one that was opened, called off, or has passed; no reason.
pub async fn call_off(
    app: &App,
    permit: &Permit<PlanWorkshop>,
    key: Key,
    off: CallOff,
) -> Result<Done> {
    permit
        .write(app, key, &off.clone(), move |book| {
            Box::pin(async move { write_call_off(book, off).await })
        })
        .await
}

async fn write_call_off(book: &mut Book<'_>, off: CallOff) -> Result<()> {
    if off.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let workshop = planned(book, off.workshop_id).await?;
    let entry = WorkshopCalledOff {
        workshop_id: workshop.id,
        reason: off.reason,
    };
    book.append(&entry).await?;
    Ok(())
}

/// A workshop that is to come.
pub(super) async fn planned(book: &mut Book<'_>, id: Uuid) -> Result<Workshop> {
    let now = book.now();
    let workshop = store::workshop(book.tx(), id).await?;
    let workshop = workshop.ok_or(Error::NotFound)?;
    match workshop.standing(now) {
        Standing::Planned => Ok(workshop),
        _ => Err(Error::Refused(Problem::WorkshopNotPlanned)),
    }
}
