//! What a mix's chart is drawn from: its course, and what happened to it.

use time::OffsetDateTime;

use super::course::{Turn, course};
use crate::board::life_ends;
use crate::error::Result;
use crate::mixes::Mix;
use crate::rooms::Settings;
use crate::web::chart::{Event, WearOverTime};

/// A mix since it was mixed.
///
/// # Errors
/// A fault: figures that no arithmetic holds.
pub(super) fn over_time(
    mix: &Mix,
    turns: &[Turn],
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<WearOverTime> {
    let course = course(mix, turns, now)?;
    let events = turns.iter().map(|turn| Event {
        at: turn.happened_at,
        what: turn.sentence.clone(),
    });
    Ok(WearOverTime {
        began: mix.mixed_at,
        now,
        capacity: course.capacity,
        life: course.life,
        life_ends: life_ends(mix),
        test_first_ppb: settings.test_first_ppb,
        events: events.collect(),
    })
}
