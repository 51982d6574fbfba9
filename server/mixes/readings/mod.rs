//! What people find of mixes: checks, temperatures, contamination, extensions.

mod actions;
pub mod api;
mod form;
mod ground;
pub mod input;
pub mod pages;
pub(super) mod store;
/// Its pages, as templates want them.
pub mod views;

pub(crate) use actions::record;
pub use actions::{NewExtension, NewReading, Taken, UndoReading, extend, look, take_back};
pub(crate) use form::{contaminants, read_flag};

pub use store::{fresh, of_mix};

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Outcome, ReadingKind};
use crate::products::{Kind, Place};

/// The checks that tell something of a bath: by its kind and, of fixers, by its
/// place; the first is the one to make before printing. Prints are tested for
/// what the last fixer left in them.
#[must_use]
pub const fn checks(kind: Kind, place: Place) -> &'static [ReadingKind] {
    use ReadingKind as R;
    match (kind, place) {
        (Kind::Developer, _) => &[R::TestPrint, R::Emergence, R::Temperature, R::Ph],
        (Kind::StopBath, _) => &[R::IndicatorColour, R::Ph, R::Temperature],
        (Kind::Fixer, Place::First) => &[R::Clearing, R::Silver, R::Temperature],
        (Kind::Fixer, Place::Single | Place::Second) => &[
            R::Clearing,
            R::Silver,
            R::ResidualThiosulfate,
            R::ResidualSilver,
            R::Temperature,
        ],
        (Kind::HoldingWater | Kind::WashAid | Kind::Toner, _) => &[R::Temperature, R::Ph],
    }
}

/// A reading as it was kept.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Kept {
    /// The number of its entry.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// The mix.
    pub mix_id: Uuid,
    /// Who looked.
    pub person_id: Option<Uuid>,
    /// At what.
    pub kind: ReadingKind,
    /// What came of it.
    pub outcome: Outcome,
    /// The figure, in the kind's own unit.
    pub value: Option<i64>,
    /// The bath's temperature then, in tenths of a degree.
    pub tenths_celsius: Option<i32>,
    /// The paper or film it was made with.
    pub sample: String,
    /// Whether later readings are held against it.
    pub is_fresh: bool,
    /// Against the fresh reading, in thousandths.
    pub ratio_thousandths: Option<i64>,
    /// What came into the mix, by group.
    pub contaminants: Vec<String>,
    /// In the finder's words.
    pub remark: String,
    /// When.
    pub happened_at: OffsetDateTime,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

/// The last reading of one kind and outcome.
#[derive(Clone, Copy, Debug)]
pub struct Latest {
    pub(super) seq: i64,
    pub(super) mix_id: Uuid,
    pub(super) kind: ReadingKind,
    pub(super) outcome: Outcome,
    pub(super) value: Option<i64>,
    pub(super) ratio_thousandths: Option<i64>,
    pub(super) spent_nl: i64,
    pub(super) happened_at: OffsetDateTime,
}

/// The last extension of a mix.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct LatestExtension {
    /// The mix.
    pub mix_id: Uuid,
    /// Who gave it.
    pub person_id: Option<Uuid>,
    /// From when.
    pub given_at: OffsetDateTime,
    /// To when.
    pub until_at: OffsetDateTime,
    /// The clearing ratio it was given on, in thousandths.
    pub clearing_thousandths: Option<i64>,
    /// The emergence ratio it was given on, in thousandths.
    pub emergence_thousandths: Option<i64>,
    /// Why.
    pub reason: String,
}
