//! Notes that waited on a phone before they could be sent.
//!
//! The phone says when by its own clock a note was made, and what that clock says at
//! the moment of sending. Their difference is how long ago it was, however wrong the
//! clock may be; the room's rule for late notes is held against that.

use time::{Duration, OffsetDateTime};

use super::NewNote;
use super::views::NoteSheetsForm;
use crate::clock::micros;
use crate::problem::Problem;
use crate::web::late::EARLIER;

/// What took no longer than this from the tap to the book is of just now.
const JUST_NOW: Duration = Duration::minutes(1);

/// How long a note waited.
#[derive(Clone, Copy, Debug)]
pub(super) struct Waited {
    /// When it was made, by the phone's clock: microseconds since 1970.
    pub(super) said_us: i64,
    ago: Duration,
}

impl Waited {
    /// Reads it; nothing where the phone kept nothing, or the person said when.
    ///
    /// # Errors
    /// [`Problem::NotATime`].
    pub(super) fn read(form: &NoteSheetsForm) -> Result<Option<Self>, Problem> {
        if form.noted_at.is_empty() || form.when == EARLIER {
            return Ok(None);
        }
        let noted_ms = milliseconds(&form.noted_at)?;
        let sent_ms = milliseconds(&form.sent_at)?;
        Ok(Some(Self {
            said_us: noted_ms * 1_000,
            // A clock that was set back meanwhile tells nothing: then it is of just now.
            ago: Duration::milliseconds((sent_ms - noted_ms).max(0)),
        }))
    }

    /// The note, put to the time at which it was made.
    pub(super) fn placed(self, new: NewNote, now: OffsetDateTime) -> NewNote {
        let happened_at_us = (self.ago > JUST_NOW).then(|| micros(now - self.ago));
        NewNote {
            happened_at_us,
            ..new
        }
    }
}

/// Milliseconds since 1970 that no calendar refuses: up to the year 2200.
fn milliseconds(text: &str) -> Result<i64, Problem> {
    let latest = 230 * 366 * 86_400 * 1_000;
    let read = text.trim().parse::<i64>().ok();
    read.filter(|ms| (0..=latest).contains(ms))
        .ok_or(Problem::NotATime)
}
