//! The time, injected, so that tests and the demo can say what time it is.

use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use time::OffsetDateTime;

/// Where the time comes from.
#[derive(Clone, Debug, Default)]
pub enum Clock {
    /// The machine's clock.
    #[default]
    System,
    /// A clock that stands until it is set: microseconds since 1970.
    Set(Arc<AtomicI64>),
}

impl Clock {
    /// A clock that stands at `moment`.
    #[must_use]
    pub fn standing_at(moment: OffsetDateTime) -> Self {
        Self::Set(Arc::new(AtomicI64::new(micros(moment))))
    }

    /// Moves a standing clock; the machine's clock is left alone.
    pub fn set(&self, moment: OffsetDateTime) {
        if let Self::Set(at) = self {
            at.store(micros(moment), Ordering::Relaxed);
        }
    }

    /// Now, in whole microseconds, as the database keeps it.
    #[must_use]
    pub fn now(&self) -> OffsetDateTime {
        match self {
            Self::System => moment(micros(OffsetDateTime::now_utc())),
            Self::Set(at) => moment(at.load(Ordering::Relaxed)),
        }
    }
}

/// Microseconds since 1970, rounded down.
#[must_use]
pub fn micros(moment: OffsetDateTime) -> i64 {
    let whole = moment.unix_timestamp_nanos().div_euclid(1_000);
    i64::try_from(whole).unwrap_or(i64::MAX)
}

/// The moment of so many microseconds since 1970. Every moment the database can
/// keep fits; one beyond the calendar's end is the calendar's end.
#[must_use]
pub fn moment(micros: i64) -> OffsetDateTime {
    OffsetDateTime::from_unix_timestamp_nanos(i128::from(micros) * 1_000)
        .unwrap_or(time::PrimitiveDateTime::MAX.assume_utc())
}
