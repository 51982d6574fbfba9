//! Moments as RFC 3339 writes them.

use time::OffsetDateTime;

use crate::clock::micros;
use crate::error::{Error, Result};

/// A moment in UTC, like `2026-11-25T13:10:00Z`.
///
/// # Errors
/// A fault for a moment beyond the calendar.
pub fn moment_text(moment: OffsetDateTime) -> Result<String> {
    let read = jiff::Timestamp::from_microsecond(micros(moment));
    read.map(|moment| moment.to_string())
        .map_err(|cause| Error::fault(cause.to_string()))
}
