//! What people do with incidents.
//!
//! Nothing of what happened goes into a fingerprint: a hash without salt would say it
//! to whoever guesses.

use uuid::Uuid;

use super::contacts::are_many;
use super::input::LATE_MINUTES;
use super::store::{self, Incident};
use super::{Details, IncidentErased, IncidentFinished, IncidentLookedAt, IncidentReported};
use crate::app::App;
use crate::bench;
use crate::clock::moment;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input;
use crate::logbook::beside::{beside, erase_beside};
use crate::logbook::{Book, Done, Key};
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::products::{self, Product};
use crate::rights::{EraseIncident, OpenIncident, ReportIncident, Role};

/// An incident as somebody reports it.
#[derive(Clone, Debug)]
pub struct NewIncident {
    /// To whom it happened.
    pub person_id: Uuid,
    /// What happened.
    pub details: Details,
}

/// Reports what happened to oneself; a steward, to anybody.
///
/// # Errors
/// Somebody else's, by no steward; a person, a line or a product that is none; a moment
/// that has not come.
pub async fn report(
    app: &App,
    permit: &Permit<ReportIncident>,
    key: Key,
    new: NewIncident,
) -> Result<Done> {
    let is_own = new.person_id == permit.person().id;
    if !is_own && permit.role() != Role::Steward {
        return Err(Error::Forbidden);
    }
    permit
        .write(app, key, &(), move |book| {
            let new = new.clone();
            Box::pin(async move { write_report(book, new).await })
        })
        .await
}

async fn write_report(book: &mut Book<'_>, new: NewIncident) -> Result<()> {
    let products = products::products(book.tx()).await?;
    let now = book.now();
    must_be_known(book.tx(), &new, &products).await?;
    let happened_at = moment(new.details.happened_at_us);
    input::happened(happened_at, now, LATE_MINUTES)
        .map_err(|problem| Error::field("time", problem))?;
    let text = book.lay_aside(new.details.to_text()?)?;
    let entry = IncidentReported {
        incident_id: book.new_id(),
        number: store::next_number(book.tx()).await?,
        person_id: new.person_id,
        beside_sha256: text.sha256(),
    };
    let seq = book.append(&entry).await?;
    text.lay(book.tx(), seq).await?;
    if book.actor() != Some(new.person_id) {
        tell_of_it(book, &entry).await?;
    }
    let all = details_of(book.tx(), new.person_id).await?;
    if are_many(&new.details, &all, &products) {
        advise(book, new.person_id).await?;
    }
    Ok(())
}

/// Tells somebody that a steward reported something of theirs.
async fn tell_of_it(book: &mut Book<'_>, entry: &IncidentReported) -> Result<()> {
    let by = match book.actor() {
        Some(actor) => store::name_of(book.tx(), actor).await?,
        None => None,
    };
    let notice = Notice::IncidentOfYours {
        incident: entry.incident_id,
        number: entry.number,
        by: by.ok_or(Error::NotFound)?,
    };
    let now = book.now();
    notices::tell(book.tx(), now, entry.person_id, &notice).await
}

async fn must_be_known(tx: &mut RoomTx, new: &NewIncident, products: &[Product]) -> Result<()> {
    let choice = |field: &'static str| Error::field(field, Problem::NotAChoice);
    if store::name_of(tx, new.person_id).await?.is_none() {
        return Err(choice("person"));
    }
    if let Some(line) = new.details.line_id
        && bench::line(tx, line).await?.is_none()
    {
        return Err(choice("line"));
    }
    match new.details.product_id {
        Some(id) if products.iter().all(|product| product.id != id) => Err(choice("product")),
        _ => Ok(()),
    }
}

/// What is kept of all incidents of a person.
async fn details_of(tx: &mut RoomTx, person: Uuid) -> Result<Vec<Details>> {
    let incidents = store::incidents(tx, (None, Some(person)), 1_000).await?;
    let seqs: Vec<i64> = incidents.iter().map(|each| each.reported_seq).collect();
    let texts = beside(tx, &seqs).await?;
    texts.values().map(|text| Details::of_text(text)).collect()
}

/// Tells the person to see a doctor, and stewards to offer another task: nothing else.
async fn advise(book: &mut Book<'_>, person: Uuid) -> Result<()> {
    let now = book.now();
    notices::tell(book.tx(), now, person, &Notice::SeeADoctor {}).await?;
    let name = store::name_of(book.tx(), person).await?;
    let name = name.ok_or(Error::NotFound)?;
    notices::tell_stewards(book.tx(), now, &Notice::OfferOtherTask { name }).await
}

async fn found(book: &mut Book<'_>, id: Uuid) -> Result<Incident> {
    let found = store::incident(book.tx(), id).await?;
    found.ok_or(Error::NotFound)
}

/// Opens somebody's incident: the book says who looked.
///
/// # Errors
/// None of that id.
pub async fn open(app: &App, permit: &Permit<OpenIncident>, key: Key, id: Uuid) -> Result<Done> {
    permit
        .write(app, key, &("open", id), move |book| {
            Box::pin(async move {
                let person_id = found(book, id).await?.person_id;
                let entry = IncidentLookedAt {
                    incident_id: id,
                    person_id,
                };
                book.append(&entry).await?;
                Ok(())
            })
        })
        .await
}

/// Says that what followed from it is done.
///
/// # Errors
/// None of that id; one that was dealt with before.
pub async fn finish(app: &App, permit: &Permit<OpenIncident>, key: Key, id: Uuid) -> Result<Done> {
    permit
        .write(app, key, &("finish", id), move |book| {
            Box::pin(async move {
                let incident = found(book, id).await?;
                if incident.finished_seq.is_some() {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                let entry = IncidentFinished {
                    incident_id: id,
                    person_id: incident.person_id,
                };
                book.append(&entry).await?;
                Ok(())
            })
        })
        .await
}

/// Erases what is known of it: by the person it happened to, or a steward whom they
/// asked.
///
/// # Errors
/// None of that id that the holder may know of; one that was erased before.
pub async fn erase(app: &App, permit: &Permit<EraseIncident>, key: Key, id: Uuid) -> Result<Done> {
    let (person, role) = (permit.person().id, permit.role());
    permit
        .write(app, key, &id, move |book| {
            Box::pin(async move {
                let incident = found(book, id).await?;
                if incident.person_id != person && role != Role::Steward {
                    return Err(Error::NotFound);
                }
                if incident.erased_seq.is_some() {
                    return Err(Error::Refused(Problem::AlreadyErased));
                }
                let entry = IncidentErased {
                    incident_id: id,
                    person_id: incident.person_id,
                    erases_beside_seq: incident.reported_seq,
                };
                let seq = book.append(&entry).await?;
                erase_beside(book.tx(), incident.reported_seq, seq).await
            })
        })
        .await
}
