//! How a workshop stands at a moment.

use serde::Serialize;
use time::OffsetDateTime;
use utoipa::ToSchema;

use super::Workshop;

/// How a workshop stands.
#[derive(Clone, Copy, Debug, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// It is to come.
    Planned,
    /// It was called off.
    CalledOff,
    /// It is going on.
    Open,
    /// It is over.
    Over,
    /// Its time has passed and nobody opened it.
    NotHeld,
}

impl Workshop {
    /// How it stands now.
    #[must_use]
    pub fn standing(&self, now: OffsetDateTime) -> Standing {
        match (self.called_off_seq, self.over_at) {
            (Some(_), _) => Standing::CalledOff,
            (None, Some(over_at)) if self.ended_at.is_some() || over_at <= now => Standing::Over,
            (None, Some(_)) => Standing::Open,
            (None, None) if self.ends_at <= now => Standing::NotHeld,
            (None, None) => Standing::Planned,
        }
    }

    /// Whether it was going on then, as far as is known now.
    #[must_use]
    pub fn was_open(&self, at: OffsetDateTime) -> bool {
        let until = self.ended_at.or(self.over_at);
        let lasted = self.opened_at.zip(until);
        lasted.is_some_and(|(from, until)| from <= at && at <= until)
    }
}
