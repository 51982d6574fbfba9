//! When a note of sheets is taken, and when the silence of a busy room is told.
//! The three spans are defaults from memory, no source.

use super::quantities::{Moment, Seconds};

/// How far ahead of the clock a note may be: 2 min, for clocks that differ.
pub const AHEAD: Seconds = Seconds::from_minutes(2);
/// How late a note may be unless the room says otherwise: 7 days.
pub const LATE: Seconds = Seconds::from_hours(7 * 24);
/// From this long without a note the board says so while people are present: 60 min.
pub const SILENCE: Seconds = Seconds::from_minutes(60);

/// Why a note is not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NoteRefused {
    /// It happened more than 2 min from now.
    #[error("this time lies in the future")]
    Future,
    /// It happened longer ago than the room allows.
    #[error("this is longer ago than the room takes notes for")]
    TooLate,
}

/// Whether a note of this time is taken now, given the room's window for late notes.
///
/// # Errors
/// [`NoteRefused`] says why not.
pub fn may_note(happened: Moment, now: Moment, window: Seconds) -> Result<(), NoteRefused> {
    if happened > now.after(AHEAD) {
        Err(NoteRefused::Future)
    } else if now > happened.after(window) {
        Err(NoteRefused::TooLate)
    } else {
        Ok(())
    }
}

/// Since when nothing was noted although people are present: the later of the
/// last note and the arrival of the first of them, once that is 60 min ago.
#[must_use]
pub fn silent_since(
    present_since: Option<Moment>,
    last_note: Option<Moment>,
    now: Moment,
) -> Option<Moment> {
    let arrived = present_since?;
    let since = last_note.map_or(arrived, |note| note.max(arrived));
    (now >= since.after(SILENCE)).then_some(since)
}
