//! What people write of the air.

use serde::Serialize;
use uuid::Uuid;

use super::standing::air_now;
use super::store;
use super::{
    Air, AirNow, AirSet, Aired, AiringBegan, AiringEnded, ExhaustRule, ExhaustWaiverSet,
    FlowMeasured, FlowOf, FlowTakenBack, Place,
};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::actions::happened;
use crate::problem::Problem;
use crate::rights::{KeepAir, NoteAiring, TakeBack};
use crate::rooms;

/// What a steward knows of a place's air.
#[derive(Clone, Debug, Serialize)]
pub struct NewAir {
    /// Which place.
    pub place_id: Uuid,
    /// What is known.
    pub air: Air,
}

/// A flow that somebody measured.
#[derive(Clone, Debug, Serialize)]
pub struct NewMeasurement {
    /// In which place.
    pub place_id: Uuid,
    /// Which flow.
    pub of: FlowOf,
    /// How much, in microlitres a second.
    pub ul_per_s: i64,
    /// On which day, as `2026-11-25`.
    pub measured_on: String,
    /// Who measured, where that was not whoever writes it down.
    pub measured_by: String,
    /// With what, and where.
    pub how: String,
}

/// A measurement to take back.
#[derive(Clone, Debug, Serialize)]
pub struct UndoMeasurement {
    /// Which.
    pub flow_measurement_id: Uuid,
    /// Why.
    pub reason: String,
}

/// Whether baths start without measured exhaust.
#[derive(Clone, Debug, Serialize)]
pub struct NewWaiver {
    /// In which place.
    pub place_id: Uuid,
    /// The competent person who agreed; nobody where exhaust is needed again.
    pub agreed_by: Option<String>,
}

/// A place that is aired, or was.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewAiring {
    /// Which place.
    pub aired_place_id: Uuid,
    /// For how long, where it is over, in seconds.
    pub seconds: Option<i64>,
    /// When it began, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// The end of an airing.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct AiringOver {
    /// Which.
    pub ended_airing_id: Uuid,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// A place of the room as it is now.
async fn here(book: &mut Book<'_>, id: Uuid) -> Result<AirNow> {
    let now = book.now();
    let mut places = air_now(book.tx(), now).await?.into_iter();
    let found = places.find(|each| each.place.id == id);
    found.ok_or(Error::NotFound)
}

async fn place(book: &mut Book<'_>, id: Uuid) -> Result<Place> {
    Ok(here(book, id).await?.place)
}

/// Sets what is known of a place.
///
/// # Errors
/// No place of that id; a rule of one's own without figure or basis, and a figure
/// without that rule.
pub async fn set_air(app: &App, permit: &Permit<KeepAir>, key: Key, new: NewAir) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_air(book, new).await })
        })
        .await
}

async fn write_air(book: &mut Book<'_>, new: NewAir) -> Result<()> {
    let place = place(book, new.place_id).await?;
    let is_own = new.air.rule == ExhaustRule::Own;
    match (is_own, new.air.own_ul_per_s) {
        (true, None) => return Err(Error::field("own", Problem::Missing)),
        (false, Some(_)) => return Err(Error::field("own", Problem::NotByThisRule)),
        _ => {}
    }
    if is_own && new.air.basis.is_empty() {
        return Err(Error::field("basis", Problem::Missing));
    }
    let entry = AirSet {
        space_id: place.space_id,
        air: new.air,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Records a flow that was measured.
///
/// # Errors
/// No place of that id; a day that has not come.
pub async fn measure(
    app: &App,
    permit: &Permit<KeepAir>,
    key: Key,
    new: NewMeasurement,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_measurement(book, new).await })
        })
        .await
}

async fn write_measurement(book: &mut Book<'_>, new: NewMeasurement) -> Result<()> {
    let here = here(book, new.place_id).await?;
    if new.of == FlowOf::Exhaust && !here.has_fan() {
        return Err(Error::field("of", Problem::NoFan));
    }
    let (now, zone) = (book.now(), rooms::settings(book.tx()).await?.time_zone()?);
    // Days as they are kept compare as they follow one another.
    if new.measured_on > zone.date_value(now) {
        return Err(Error::field("measured_on", Problem::InTheFuture));
    }
    let entry = FlowMeasured {
        flow_measurement_id: book.new_id(),
        space_id: here.place.space_id,
        of: new.of,
        ul_per_s: new.ul_per_s,
        measured_on: new.measured_on,
        measured_by: new.measured_by,
        how: new.how,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Takes a measurement back: it was mistaken. The one before it counts again.
///
/// # Errors
/// None of that id; taken back before; no reason.
pub async fn take_back(
    app: &App,
    permit: &Permit<TakeBack>,
    key: Key,
    undo: UndoMeasurement,
) -> Result<Done> {
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_taking_back(book, undo).await })
        })
        .await
}

async fn write_taking_back(book: &mut Book<'_>, undo: UndoMeasurement) -> Result<()> {
    if undo.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let measured = store::measurement(book.tx(), undo.flow_measurement_id).await?;
    let measured = measured.ok_or(Error::NotFound)?;
    if measured.undone_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    let entry = FlowTakenBack {
        flow_measurement_id: measured.id,
        flow_measurement_seq: measured.seq,
        space_id: (measured.place_id != book.room()).then_some(measured.place_id),
        reason: undo.reason,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Lets baths start in a place without measured exhaust, as a competent person agreed;
/// or no more.
///
/// # Errors
/// No place of that id; what is so already.
pub async fn set_waiver(
    app: &App,
    permit: &Permit<KeepAir>,
    key: Key,
    new: NewWaiver,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_waiver(book, new).await })
        })
        .await
}

async fn write_waiver(book: &mut Book<'_>, new: NewWaiver) -> Result<()> {
    let place = place(book, new.place_id).await?;
    let waivers = store::waivers(book.tx()).await?;
    let given = waivers.iter().find(|each| each.place_id == place.id);
    if given.map(|given| &given.agreed_by) == new.agreed_by.as_ref() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    let entry = ExhaustWaiverSet {
        space_id: place.space_id,
        agreed_by: new.agreed_by,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Says that a place is aired from now on, or was for so long.
///
/// # Errors
/// No place of that id; a time too far off; what is aired already; an end that has not
/// come.
pub async fn air(app: &App, permit: &Permit<NoteAiring>, key: Key, new: NewAiring) -> Result<Done> {
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_airing(book, new).await })
        })
        .await
}

async fn write_airing(book: &mut Book<'_>, new: NewAiring) -> Result<()> {
    let here = here(book, new.aired_place_id).await?;
    let (now, settings) = (book.now(), rooms::settings(book.tx()).await?);
    let at = happened(now, new.happened_at_us, &settings)?;
    let (airing_id, space_id) = (book.new_id(), here.place.space_id);
    let Some(seconds) = new.seconds else {
        if here.aired_now.is_some() {
            return Err(Error::Refused(Problem::AiredAlready));
        }
        let entry = AiringBegan {
            airing_id,
            space_id,
        };
        book.append_at(at, &entry).await?;
        return Ok(());
    };
    // Said just now, it was over just now.
    let at = at.unwrap_or(now - time::Duration::seconds(seconds));
    if at + time::Duration::seconds(seconds) > now {
        return Err(Error::field("seconds", Problem::InTheFuture));
    }
    let entry = Aired {
        airing_id,
        space_id,
        seconds,
    };
    book.append_at(Some(at), &entry).await?;
    Ok(())
}

/// Says that an airing is over.
///
/// # Errors
/// None of that id; a time too far off, or before it began; what is over already.
pub async fn end_airing(
    app: &App,
    permit: &Permit<NoteAiring>,
    key: Key,
    over: AiringOver,
) -> Result<Done> {
    permit
        .write(app, key, &over, move |book| {
            Box::pin(async move { write_end(book, over).await })
        })
        .await
}

async fn write_end(book: &mut Book<'_>, over: AiringOver) -> Result<()> {
    let airing = store::airing(book.tx(), over.ended_airing_id).await?;
    let airing = airing.ok_or(Error::NotFound)?;
    if airing.ended_at.is_some() {
        return Err(Error::Refused(Problem::OnAgainAlready));
    }
    let (now, settings) = (book.now(), rooms::settings(book.tx()).await?);
    let at = happened(now, over.happened_at_us, &settings)?;
    if at.unwrap_or(now) < airing.began_at {
        return Err(Error::field("happened_at", Problem::BeforeAiringBegan));
    }
    let entry = AiringEnded {
        airing_id: airing.id,
        space_id: (airing.place_id != book.room()).then_some(airing.place_id),
    };
    book.append_at(at, &entry).await?;
    Ok(())
}
