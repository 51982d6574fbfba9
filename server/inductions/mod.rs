//! Inductions: who was told what, in which version, by whom, and until when that holds.
//!
//! A record counts once both sides have confirmed it: whoever inducts by writing it, the
//! person from their own account or by number and PIN beside a steward. What is required
//! of somebody who comes in follows from what is here (`gate`), never from what a
//! working solution computes to.

pub mod actions;
pub mod api;
pub mod confirming;
mod due;
mod entries;
mod form;
mod gate;
mod in_force;
mod log_pages;
mod own_pages;
mod pages;
mod record_pages;
/// Scans of signed papers.
pub mod scans;
mod showing;
mod standing;
mod store;
mod supplements;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use due::tell_due;
pub use entries::{Basis, Covered, Inducted, InductionConfirmed, InductionWithdrawn, Means};
pub use gate::{Lack, check, lacks, lacks_of_all, must_know, stewards};
pub use pages::pages;
pub use scans::{InductionScanRemoved, InductionScanned};
pub use standing::Standing;
pub use store::Induction;
pub use supplements::{Supplement, supplements, supplements_of, tell_supplements};
