//! When a wash ends.

use time::OffsetDateTime;

use super::Wash;
use crate::clock::{micros, moment};
use crate::darkroom::finishing::wash_ends;
use crate::darkroom::quantities::{Moment, Seconds};
use crate::error::{Error, Result};

impl Wash {
    /// When everything in it is washed: the last print that joined restarted it
    /// for all.
    ///
    /// # Errors
    /// A row that the table does not take.
    pub fn ends_at(&self) -> Result<OffsetDateTime> {
        let joined = [self.first_joined_at, self.last_joined_at];
        let joined = joined.map(|at| Moment::new(micros(at)));
        let long = Seconds::new(self.wash_s).map_err(|cause| Error::fault(cause.to_string()))?;
        let ends = wash_ends(&joined, long).ok_or_else(|| Error::fault("a wash of nothing"))?;
        Ok(moment(ends.get()))
    }

    /// Whether a print joined while others were in it.
    #[must_use]
    pub fn is_restarted(&self) -> bool {
        self.last_joined_at > self.first_joined_at
    }
}
