//! Rules for values that both skins read: one definition each, over plain values.
//! What a noun's values may be stands in its own `input` module.

use time::OffsetDateTime;

use crate::clock::{micros, moment as moment_of};
use crate::darkroom::noting::{NoteRefused, may_note};
use crate::darkroom::quantities::{Moment, Seconds};
use crate::identity::names::text as line;
use crate::problem::Problem;

/// Where a figure comes from when nobody said.
pub const SET_BY_STEWARD: &str = "set by a steward";

/// The longest name.
pub const NAME_LENGTH: usize = 80;
/// The longest line of free text.
pub const NOTE_LENGTH: usize = 200;
/// The longest words of a few lines.
pub const REMARK_LENGTH: usize = 300;

/// A name: one line, without spaces around it.
///
/// # Errors
/// None at all, or too long.
pub fn name(text: &str) -> Result<String, Problem> {
    let name = line(text, NAME_LENGTH)?;
    match name.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(name),
    }
}

/// A line of free text, which may be empty.
///
/// # Errors
/// Too long.
pub fn note(text: &str) -> Result<String, Problem> {
    line(text, NOTE_LENGTH)
}

/// A line of free text that must be there.
///
/// # Errors
/// None at all, or too long.
pub fn needed_note(text: &str) -> Result<String, Problem> {
    let note = note(text)?;
    match note.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(note),
    }
}

/// Words of a few lines, trimmed; may be empty.
///
/// # Errors
/// Too long.
pub fn remark(text: &str) -> Result<String, Problem> {
    let remark = text.trim();
    match remark.chars().count() <= REMARK_LENGTH {
        true => Ok(remark.to_owned()),
        false => Err(Problem::TooLong(REMARK_LENGTH)),
    }
}

/// Words of a few lines that must be there.
///
/// # Errors
/// None at all, or too long.
pub fn needed_remark(text: &str) -> Result<String, Problem> {
    let remark = remark(text)?;
    match remark.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(remark),
    }
}

/// Bounds of a number, and how people read them.
#[derive(Clone, Copy, Debug)]
pub struct Bounds {
    /// Least, in the unit kept.
    pub least: i64,
    /// Most, in the unit kept.
    pub most: i64,
    /// Both with the unit people use.
    pub words: (&'static str, &'static str),
}

impl Bounds {
    /// The number, where it is within them.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`].
    pub fn hold(self, value: i64) -> Result<i64, Problem> {
        match (self.least..=self.most).contains(&value) {
            true => Ok(value),
            false => Err(self.problem()),
        }
    }

    /// The number as a smaller type that the bounds fit.
    ///
    /// # Errors
    /// [`Problem::OutOfRange`].
    pub fn hold_as<T: TryFrom<i64>>(self, value: i64) -> Result<T, Problem> {
        T::try_from(self.hold(value)?).map_err(|_| self.problem())
    }

    /// What is said of a number outside them.
    #[must_use]
    pub fn problem(self) -> Problem {
        Problem::OutOfRange {
            least: self.words.0.to_owned(),
            most: self.words.1.to_owned(),
        }
    }
}

/// Places in a list that a steward orders by hand.
const PLACES: Bounds = Bounds {
    least: 1,
    most: 1_000,
    words: ("1", "1000"),
};

/// A place in a list.
///
/// # Errors
/// A number outside 1 to 1000.
pub fn place(value: i64) -> Result<i32, Problem> {
    PLACES.hold_as(value)
}

/// A moment as RFC 3339 writes it, with its offset.
///
/// # Errors
/// Anything else.
pub fn moment(text: &str) -> Result<OffsetDateTime, Problem> {
    let read: jiff::Timestamp = text.trim().parse().map_err(|_| Problem::NotATime)?;
    Ok(moment_of(read.as_microsecond()))
}

/// When something happened: hardly in the future, and no longer ago than the room
/// takes notes for.
///
/// # Errors
/// [`Problem::InTheFuture`], [`Problem::TooLate`].
pub fn happened(at: OffsetDateTime, now: OffsetDateTime, late_minutes: i32) -> Result<(), Problem> {
    let too_late = Problem::TooLate {
        minutes: late_minutes,
    };
    let window = Seconds::new(i64::from(late_minutes) * 60).unwrap_or(Seconds::ZERO);
    let [at, now] = [at, now].map(|moment| Moment::new(micros(moment)));
    may_note(at, now, window).map_err(|refused| match refused {
        NoteRefused::Future => Problem::InTheFuture,
        NoteRefused::TooLate => too_late,
    })
}

/// A date as `2026-11-25`, as it is kept.
///
/// # Errors
/// Anything else, and years before 1950 or after 2100.
pub fn date(text: &str) -> Result<String, Problem> {
    let text = text.trim();
    let read: jiff::civil::Date = text.parse().map_err(|_| Problem::NotADate)?;
    match text.len() == 10 && (1950..=2100).contains(&read.year()) {
        true => Ok(read.to_string()),
        false => Err(Problem::NotADate),
    }
}
