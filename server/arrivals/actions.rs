//! Arriving, leaving, and what becomes of those who forget to leave.

use serde::Serialize;
use time::Duration;
use uuid::Uuid;

use super::alone::{expected, within};
use super::rule::over_at;
use super::store::{self, Presence};
use super::{Arrived, LeavingExpected, Left, NotConfirmedLeft};
use crate::app::App;
use crate::clock::micros;
use crate::database::Scope;
use crate::error::{Error, OnConstraint, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::logbook::{Asked, Author, Book, Done, Key, fingerprint};
use crate::members;
use crate::problem::Problem;
use crate::rights::{Arrive, ClosePresence, Supervise};
use crate::rooms;
use crate::workshops;

/// Somebody to let in under one's eyes.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewSupervised {
    /// Who.
    pub person_id: Uuid,
    /// Until when they stay, in microseconds since 1970; asked for where nobody else is
    /// in the room.
    pub until_us: Option<i64>,
}

/// Until when somebody stays.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewStay {
    /// Their presence, or the one that they have.
    pub presence_id: Option<Uuid>,
    /// Until when, in microseconds since 1970.
    pub until_us: i64,
}

/// Somebody comes in, who was inducted on all that is asked for now, and says until when
/// they stay, in microseconds since 1970: whoever comes into an empty room must.
///
/// # Errors
/// Who is there already; who is not inducted; a room whose places are all taken; no time
/// from somebody alone, or one that has passed or that no presence lasts until.
pub async fn arrive(
    app: &App,
    permit: &Permit<Arrive>,
    key: Key,
    until_us: Option<i64>,
) -> Result<Done> {
    // What ran out of theirs is written first, and holds nobody up.
    close_forgotten(app, permit.room()).await?;
    permit
        .write(app, key, &("arrive", until_us), move |book| {
            Box::pin(async move {
                let person = actor(book)?;
                write_arrival(book, (person, until_us), None).await
            })
        })
        .await
        .on_constraint("presence_open_key", || Error::Refused(Problem::HereAlready))
}

/// A steward lets somebody in who may not be inducted yet, and answers for them.
///
/// # Errors
/// Who is there already; who is no member, or the steward themself; a room whose places
/// are all taken; the time until when they stay, as [`arrive`] says.
pub async fn supervise(
    app: &App,
    permit: &Permit<Supervise>,
    key: Key,
    new: NewSupervised,
) -> Result<Done> {
    close_forgotten(app, permit.room()).await?;
    permit
        .write(app, key, &("supervise", new), move |book| {
            Box::pin(async move {
                let supervisor = actor(book)?;
                supervised(book, new.person_id, supervisor).await?;
                let who = (new.person_id, new.until_us);
                write_arrival(book, who, Some(supervisor)).await
            })
        })
        .await
        .on_constraint("presence_open_key", || Error::Refused(Problem::HereAlready))
}

/// Whoever is supervised may enter the room, and is somebody else.
async fn supervised(book: &mut Book<'_>, person: Uuid, supervisor: Uuid) -> Result<()> {
    let members = members::everyone(book.tx()).await?;
    let mut active = members.iter().filter(|member| member.is_active());
    match active.any(|member| member.person == person) && person != supervisor {
        true => Ok(()),
        false => Err(Error::field("person", Problem::NotAChoice)),
    }
}

async fn write_arrival(
    book: &mut Book<'_>,
    (person_id, until_us): (Uuid, Option<i64>),
    supervisor_id: Option<Uuid>,
) -> Result<()> {
    let now = book.now();
    let settings = rooms::settings(book.tx()).await?;
    let zone = settings.time_zone()?;
    let local_date = zone.date_value(now);
    if store::open_of(book.tx(), person_id).await?.is_some() {
        return Err(Error::Refused(Problem::HereAlready));
    }
    if supervisor_id.is_none() {
        inductions::check(book.tx(), person_id, &local_date).await?;
    }
    let places = usize::try_from(settings.people_limit).unwrap_or(0);
    if store::people_in(book.tx(), now).await? >= places {
        return Err(Error::Refused(Problem::RoomFull { places }));
    }
    // A guest is no company: nobody inducted them.
    let is_alone = store::present(book.tx(), now).await?.is_empty();
    let over_at = over_at(&settings, now)?;
    let arrived = Arrived {
        presence_id: book.new_id(),
        person_id,
        local_date,
        over_at_us: micros(over_at),
        supervisor_id,
        expected: expected(until_us, is_alone, (now, over_at), &zone)?,
    };
    book.append(&arrived).await?;
    Ok(())
}

/// Somebody says until when they stay, or that they stay longer.
///
/// # Errors
/// Somebody else's presence; who is not there; a time that has passed or that the presence
/// does not last until.
pub async fn stay(app: &App, permit: &Permit<Arrive>, key: Key, new: NewStay) -> Result<Done> {
    permit
        .write(app, key, &("stay", new), move |book| {
            Box::pin(async move { write_stay(book, new).await })
        })
        .await
}

async fn write_stay(book: &mut Book<'_>, new: NewStay) -> Result<()> {
    let now = book.now();
    let presence = own(book, new.presence_id).await?;
    if !presence.is_there(now) {
        return Err(Error::Refused(Problem::NotHere));
    }
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    let stays = LeavingExpected {
        presence_id: presence.id,
        person_id: presence.person_id,
        expected: within(new.until_us, (now, presence.over_at), &zone)?,
    };
    book.append(&stays).await?;
    Ok(())
}

/// Somebody leaves: the presence named, or the one that they have.
///
/// # Errors
/// Somebody else's; who is not there, or left before; who leads guests that are there.
pub async fn leave(
    app: &App,
    permit: &Permit<Arrive>,
    key: Key,
    presence: Option<Uuid>,
) -> Result<Done> {
    permit
        .write(app, key, &("leave", presence), move |book| {
            Box::pin(async move { write_leaving(book, presence).await })
        })
        .await
}

async fn write_leaving(book: &mut Book<'_>, named: Option<Uuid>) -> Result<()> {
    let (now, presence) = (book.now(), own(book, named).await?);
    workshops::check_leaving(book.tx(), presence.person_id, now).await?;
    let left = Left {
        presence_id: presence.id,
        person_id: presence.person_id,
    };
    book.append(&left).await?;
    Ok(())
}

/// The writer's presence that has not ended: the one named, or the one that they have.
async fn own(book: &mut Book<'_>, named: Option<Uuid>) -> Result<Presence> {
    let person = actor(book)?;
    let presence = match named {
        Some(id) => open(book, id).await?,
        None => store::open_of(book.tx(), person)
            .await?
            .ok_or(Error::Refused(Problem::NotHere))?,
    };
    match presence.person_id == person {
        true => Ok(presence),
        false => Err(Error::Forbidden),
    }
}

/// Ends somebody's presence for them: it reads as not confirmed.
///
/// # Errors
/// None of that id; one that ended before; somebody who leads guests that are there.
pub async fn close(app: &App, permit: &Permit<ClosePresence>, key: Key, id: Uuid) -> Result<Done> {
    permit
        .write(app, key, &id, move |book| {
            Box::pin(async move {
                let (now, presence) = (book.now(), open(book, id).await?);
                workshops::check_leaving(book.tx(), presence.person_id, now).await?;
                write_close(book, &presence, false).await
            })
        })
        .await
}

/// Writes down what has run out in a room, if anything has.
///
/// # Errors
/// The database's.
pub async fn close_forgotten(app: &App, room: Uuid) -> Result<()> {
    let now = app.clock().now();
    let scope = Scope { room, person: None };
    let run_out = app
        .database()
        .reading(scope, move |tx| Box::pin(store::run_out(tx, now)))
        .await?;
    if run_out.is_empty() {
        return Ok(());
    }
    let asked = Asked {
        actor: None,
        key: None,
        fingerprint: fingerprint("close_forgotten", &room)?,
    };
    let written = app
        .scribes()
        .write(room, Author::Unchecked, asked, |book| {
            Box::pin(write_run_out(book))
        })
        .await;
    match written {
        // Another instance was quicker.
        Err(Error::Refused(Problem::Unchanged)) => Ok(()),
        other => other.map(drop),
    }
}

async fn write_run_out(book: &mut Book<'_>) -> Result<()> {
    let now = book.now();
    let run_out = store::run_out(book.tx(), now).await?;
    if run_out.is_empty() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    for presence in &run_out {
        write_close(book, presence, true).await?;
    }
    Ok(())
}

/// Writes that somebody did not say that they left, as of now or of when it ran out.
async fn write_close(book: &mut Book<'_>, presence: &Presence, ran_out: bool) -> Result<()> {
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    let at = ran_out.then_some(presence.over_at);
    // What ends at midnight ends the day that was.
    let last = at.map_or(book.now(), |at| at - Duration::microseconds(1));
    let closed = NotConfirmedLeft {
        presence_id: presence.id,
        person_id: presence.person_id,
        local_date: zone.date_value(last),
    };
    book.append_at(at, &closed).await?;
    Ok(())
}

/// A presence that has not ended.
async fn open(book: &mut Book<'_>, id: Uuid) -> Result<Presence> {
    let presence = store::presence(book.tx(), id).await?;
    let presence = presence.ok_or(Error::NotFound)?;
    match presence.ended_at {
        Some(_) => Err(Error::Refused(Problem::LeftAlready)),
        None => Ok(presence),
    }
}

fn actor(book: &Book<'_>) -> Result<Uuid> {
    book.actor().ok_or(Error::Unauthenticated)
}
