//! Incidents and near misses: seen by the person they happened to and by stewards, who
//! are named in the book when they look; and what somebody wants to avoid, which nobody
//! else ever sees.
//!
//! The book holds whose incident it is, its number and a salted hash. What happened lies
//! beside the entry and is erased on request.

pub mod actions;
mod avoid_pages;
mod avoiding;
mod contacts;
mod details;
mod entries;
mod form;
pub mod input;
mod pages;
mod report_pages;
mod showing;
mod steward_pages;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use avoiding::{AvoidNote, warnings};
pub use contacts::{CONTACT_DAYS, CONTACTS};
pub use details::{BodyPart, Details, FirstDeed, What};
pub use entries::{IncidentErased, IncidentFinished, IncidentLookedAt, IncidentReported};
pub use store::{Incident, unfinished};

use crate::router::Pages;

/// The routes of all its pages.
#[must_use]
pub fn pages() -> Pages {
    pages::pages()
        .and(report_pages::pages())
        .and(steward_pages::pages())
        .and(avoid_pages::pages())
}
