//! Stock solutions: powder made up, from which working solutions are mixed.
//!
//! The making is an entry. What is mixed or topped up from it draws what remains;
//! nobody draws what is not there, nor what is past its use-by.

/// What people do with them.
pub mod actions;
/// The same as JSON.
pub mod api;
mod entries;
/// What may be asked of them.
pub mod input;
mod pages;
pub(super) mod store;
/// Their pages, as templates want them.
pub mod views;

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use crate::clock::{micros, moment};
use crate::darkroom::kit::{BottleLife, use_by};
use crate::darkroom::quantities::{Moment, Seconds};

pub use api::api;
pub use entries::StockMade;
pub use pages::pages;
pub(crate) use pages::rows;
pub use store::{stock, stocks};

/// A stock solution as the book has made it so far.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Stock {
    /// Which.
    pub id: Uuid,
    /// What it was made of.
    pub product_id: Uuid,
    /// The product's name.
    pub product_name: String,
    /// How many packets went into it, in thousandths.
    pub packets_thousandths: i64,
    /// What they made, in microlitres.
    pub volume_ul: i64,
    /// What was drawn of it so far, in microlitres.
    pub drawn_ul: i64,
    /// How long a full bottle keeps, in seconds; nothing where nobody knows.
    pub full_life_s: Option<i64>,
    /// The same from the first draw on.
    pub part_life_s: Option<i64>,
    /// When it was made.
    pub made_at: OffsetDateTime,
    /// Who made it.
    pub made_by: Option<Uuid>,
    /// The number of its entry.
    pub made_seq: i64,
    /// When something was first drawn from it.
    pub opened_at: Option<OffsetDateTime>,
}

impl Stock {
    /// What remains, in microlitres.
    #[must_use]
    pub fn left_ul(&self) -> i64 {
        self.volume_ul - self.drawn_ul
    }

    /// Until when it may be used; nothing where nobody knows how long it keeps. A
    /// product without a life of its part-filled bottle keeps as a full one.
    #[must_use]
    pub fn use_by(&self) -> Option<OffsetDateTime> {
        let full = Seconds::new(self.full_life_s?).ok()?;
        let part = self.part_life_s.and_then(|life| Seconds::new(life).ok());
        let life = BottleLife {
            full,
            part: part.unwrap_or(full),
        };
        let at = |moment| Moment::new(micros(moment));
        let until = use_by(at(self.made_at), self.opened_at.map(at), life);
        Some(moment(until.get()))
    }

    /// Whether its use-by has passed then.
    #[must_use]
    pub fn is_past(&self, at: OffsetDateTime) -> bool {
        self.use_by().is_some_and(|until| at >= until)
    }

    /// Whether something may be drawn from it then.
    #[must_use]
    pub fn may_be_drawn(&self, at: OffsetDateTime) -> bool {
        self.left_ul() > 0 && !self.is_past(at) && at + Duration::minutes(1) >= self.made_at
    }
}
