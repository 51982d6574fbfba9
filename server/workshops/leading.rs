//! What whoever leads a workshop does on its day: opening it, signing guests in and out,
//! ending it; and how another member takes it over.

use serde::Serialize;
use uuid::Uuid;

use super::actions::planned;
use super::cautions::cautions;
use super::forgetting::{close_forgotten, still_there};
use super::store::{self, Workshop};
use super::{
    GuestsSignedIn, GuestsSignedOut, Standing, WorkshopEnded, WorkshopOpened, WorkshopTakenOver,
};
use crate::app::App;
use crate::arrivals::{self, Presence};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::{LeadWorkshop, Role};
use crate::rooms;

/// A workshop that begins.
#[derive(Clone, Debug, Serialize)]
pub struct Opening {
    /// Which.
    pub opened_workshop_id: Uuid,
    /// What was read to the group, by its digest.
    pub read: String,
}

/// Guests who come in.
#[derive(Clone, Debug)]
pub struct NewGuests {
    /// To which workshop.
    pub workshop_id: Uuid,
    /// By name.
    pub names: Vec<String>,
}

/// Guests who leave.
#[derive(Clone, Debug, Serialize)]
pub struct GuestsOut {
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// Who; all who are there where nobody is named.
    pub guest_ids: Vec<Uuid>,
}

/// Opens a workshop on its day, once its leader has read the cautions to the group.
///
/// # Errors
/// Somebody else's, unless a steward opens it; one that is not of today, was opened or
/// called off; a leader who is not in the room or lacks an induction; cautions that have
/// changed since they were read.
pub async fn open(
    app: &App,
    permit: &Permit<LeadWorkshop>,
    key: Key,
    opening: Opening,
) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &opening.clone(), move |book| {
            Box::pin(async move { write_opening(book, role, opening).await })
        })
        .await
}

async fn write_opening(book: &mut Book<'_>, role: Role, opening: Opening) -> Result<()> {
    let workshop = planned(book, opening.opened_workshop_id).await?;
    is_led(book, role, &workshop)?;
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    let today = zone.date_value(book.now());
    if zone.date_value(workshop.begins_at) != today {
        return Err(Error::Refused(Problem::WorkshopNotToday));
    }
    let presence = leader_here(book, &workshop).await?;
    let lacks = inductions::lacks(book.tx(), workshop.leader_id, &today).await?;
    if !lacks.is_empty() {
        let missing = lacks.into_iter().map(|lack| lack.title).collect();
        return Err(Error::Refused(Problem::LeaderLacks { missing }));
    }
    let read = cautions(book.tx()).await?.read;
    if read.digest()? != opening.read {
        return Err(Error::Refused(Problem::CautionsChanged));
    }
    let opened = WorkshopOpened {
        workshop_id: workshop.id,
        leader_id: workshop.leader_id,
        over_at_us: micros(presence.over_at),
        products: read.products,
        topics: read.topics,
        is_unknown_there: read.is_unknown_there,
    };
    book.append(&opened).await?;
    Ok(())
}

/// Signs guests in, all of a list or nobody. Their names are in no fingerprint, for that
/// has no salt.
///
/// # Errors
/// Somebody else's workshop, unless a steward signs in; one that is not open; a leader who
/// is not in the room; more of them than there are places in the workshop or the room.
pub async fn sign_in(
    app: &App,
    permit: &Permit<LeadWorkshop>,
    key: Key,
    new: NewGuests,
) -> Result<Done> {
    // What ran out of theirs is written first, and holds nobody up.
    close_forgotten(app, permit.room()).await?;
    arrivals::close_forgotten(app, permit.room()).await?;
    let role = permit.role();
    let asked = ("sign_in", new.workshop_id, new.names.len());
    permit
        .write(app, key, &asked, move |book| {
            Box::pin(async move { write_sign_in(book, role, new).await })
        })
        .await
}

async fn write_sign_in(book: &mut Book<'_>, role: Role, new: NewGuests) -> Result<()> {
    let workshop = led(book, role, new.workshop_id).await?;
    leader_here(book, &workshop).await?;
    let places = places_left(book, &workshop).await?;
    if new.names.len() > places {
        return Err(Error::field("names", Problem::TooManyGuests { places }));
    }
    let text = book.lay_aside(serde_json::to_string(&new.names)?)?;
    let signed_in = GuestsSignedIn {
        workshop_id: workshop.id,
        guest_ids: new.names.iter().map(|_| book.new_id()).collect(),
        beside_sha256: text.sha256(),
    };
    let seq = book.append(&signed_in).await?;
    text.lay(book.tx(), seq).await
}

/// How many guests may still come in: by the workshop's most, and by the room's places.
async fn places_left(book: &mut Book<'_>, workshop: &Workshop) -> Result<usize> {
    let now = book.now();
    let limit = rooms::settings(book.tx()).await?.people_limit;
    let people = arrivals::people_in(book.tx(), now).await?;
    let of_workshop = still_there(book, workshop.id).await?.len();
    let left = |most: i32, taken: usize| usize::try_from(most).unwrap_or(0).saturating_sub(taken);
    Ok(left(limit, people).min(left(workshop.most_guests, of_workshop)))
}

/// Signs guests out who are there.
///
/// # Errors
/// Somebody else's workshop, unless a steward signs out; one that is not open; somebody
/// who is not there.
pub async fn sign_out(
    app: &App,
    permit: &Permit<LeadWorkshop>,
    key: Key,
    out: GuestsOut,
) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &out.clone(), move |book| {
            Box::pin(async move { write_sign_out(book, role, out).await })
        })
        .await
}

async fn write_sign_out(book: &mut Book<'_>, role: Role, out: GuestsOut) -> Result<()> {
    let workshop = led(book, role, out.workshop_id).await?;
    let there = still_there(book, workshop.id).await?;
    let guest_ids = match out.guest_ids.is_empty() {
        true => there.clone(),
        false => out.guest_ids,
    };
    if guest_ids.is_empty() || !guest_ids.iter().all(|id| there.contains(id)) {
        return Err(Error::Refused(Problem::LeftAlready));
    }
    let signed_out = GuestsSignedOut {
        workshop_id: workshop.id,
        guest_ids,
    };
    book.append(&signed_out).await?;
    Ok(())
}

/// Ends a workshop, and signs out whoever is there still.
///
/// # Errors
/// Somebody else's workshop, unless a steward ends it; one that is not open.
pub async fn end(app: &App, permit: &Permit<LeadWorkshop>, key: Key, id: Uuid) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &("end", id), move |book| {
            Box::pin(async move { write_end(book, role, id).await })
        })
        .await
}

async fn write_end(book: &mut Book<'_>, role: Role, id: Uuid) -> Result<()> {
    let workshop = led(book, role, id).await?;
    let ended = WorkshopEnded {
        workshop_id: workshop.id,
        guest_ids: still_there(book, workshop.id).await?,
    };
    book.append(&ended).await?;
    Ok(())
}

/// Leads a workshop from now on that somebody else led.
///
/// # Errors
/// One that is not open, or that they lead already; who is not in the room, or lacks an
/// induction.
pub async fn take_over(
    app: &App,
    permit: &Permit<LeadWorkshop>,
    key: Key,
    id: Uuid,
) -> Result<Done> {
    permit
        .write(app, key, &("take_over", id), move |book| {
            Box::pin(async move { write_taking_over(book, id).await })
        })
        .await
}

async fn write_taking_over(book: &mut Book<'_>, id: Uuid) -> Result<()> {
    let workshop = going_on(book, id).await?;
    let person = book.actor().ok_or(Error::Unauthenticated)?;
    if workshop.leader_id == person {
        return Err(Error::Refused(Problem::Unchanged));
    }
    let presence = presence_of(book, person).await?;
    let presence = presence.ok_or(Error::Refused(Problem::NotHere))?;
    let now = book.now();
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    inductions::check(book.tx(), person, &zone.date_value(now)).await?;
    let taken = WorkshopTakenOver {
        workshop_id: workshop.id,
        leader_id: person,
        from_person_id: workshop.leader_id,
        over_at_us: micros(presence.over_at),
    };
    book.append(&taken).await?;
    Ok(())
}

/// A workshop that is going on.
async fn going_on(book: &mut Book<'_>, id: Uuid) -> Result<Workshop> {
    let now = book.now();
    let workshop = store::workshop(book.tx(), id).await?;
    let workshop = workshop.ok_or(Error::NotFound)?;
    match workshop.standing(now) {
        Standing::Open => Ok(workshop),
        _ => Err(Error::Refused(Problem::WorkshopNotOpen)),
    }
}

/// A workshop that is going on and that the writer leads, or keeps the room of.
async fn led(book: &mut Book<'_>, role: Role, id: Uuid) -> Result<Workshop> {
    let workshop = going_on(book, id).await?;
    is_led(book, role, &workshop)?;
    Ok(workshop)
}

fn is_led(book: &Book<'_>, role: Role, workshop: &Workshop) -> Result<()> {
    let leads = book.actor() == Some(workshop.leader_id);
    match leads || role == Role::Steward {
        true => Ok(()),
        false => Err(Error::Forbidden),
    }
}

async fn leader_here(book: &mut Book<'_>, workshop: &Workshop) -> Result<Presence> {
    let presence = presence_of(book, workshop.leader_id).await?;
    presence.ok_or_else(|| {
        Error::Refused(Problem::LeaderNotHere {
            leader: workshop.leader.clone(),
        })
    })
}

async fn presence_of(book: &mut Book<'_>, person: Uuid) -> Result<Option<Presence>> {
    let now = book.now();
    let present = arrivals::present(book.tx(), now).await?.into_iter();
    let mut theirs = present.filter(|presence| presence.person_id == person);
    Ok(theirs.next())
}
