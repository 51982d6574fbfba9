//! What the records of a person say of a topic on a day: pure.

use super::store::Held;
use crate::topics::Topic;

/// What a person's records say of a topic on a day, the worst first.
#[derive(Clone, Debug, Eq, Ord, PartialEq, PartialOrd)]
pub enum Standing {
    /// There is none.
    Never,
    /// Those there are on a text that counts no more.
    Outdated,
    /// The last one held until this day.
    Ended(String),
    /// The person has still to confirm it.
    Waits,
    /// It holds until this day.
    Until(String),
    /// It holds without end.
    WithoutEnd,
}

impl Standing {
    /// Of a topic, by what somebody holds, on a day as `2026-11-26`.
    pub(super) fn of<'h>(
        topic: &Topic,
        held: impl IntoIterator<Item = &'h Held>,
        today: &str,
    ) -> Self {
        let held = held.into_iter().filter(|each| each.topic_id == topic.id);
        let standing = |each: &Held| match &each.good_until {
            _ if each.version < topic.counts_from_version => Self::Outdated,
            Some(last) if last.as_str() < today => Self::Ended(last.clone()),
            _ if !each.is_confirmed => Self::Waits,
            Some(last) => Self::Until(last.clone()),
            None => Self::WithoutEnd,
        };
        held.map(standing).max().unwrap_or(Self::Never)
    }

    /// Whether it is in force.
    #[must_use]
    pub const fn holds(&self) -> bool {
        matches!(self, Self::Until(_) | Self::WithoutEnd)
    }

    /// Whether it was never in force by what counts now: something new to be told.
    pub(super) const fn is_new(&self) -> bool {
        matches!(self, Self::Never | Self::Outdated)
    }
}

#[cfg(test)]
mod tests {
    use uuid::Uuid;

    use super::*;
    use crate::topics::Required;

    fn topic() -> Topic {
        Topic {
            id: Uuid::nil(),
            version: 3,
            counts_from_version: 2,
            title: "Spills".to_owned(),
            body: "Say it aloud.".to_owned(),
            required: Required::Always,
            good_months: Some(24),
            is_retired: false,
        }
    }

    fn held(version: i32, good_until: Option<&str>, is_confirmed: bool) -> Held {
        Held {
            person_id: Uuid::nil(),
            topic_id: Uuid::nil(),
            version,
            good_until: good_until.map(str::to_owned),
            is_confirmed,
        }
    }

    fn standing(all: &[Held]) -> Standing {
        Standing::of(&topic(), all, "2026-11-26")
    }

    #[test]
    fn it_holds_to_the_end_of_its_last_day_and_no_longer() {
        let last = |day: &str| standing(&[held(3, Some(day), true)]);
        assert_eq!(last("2026-11-26"), Standing::Until("2026-11-26".to_owned()));
        assert_eq!(last("2026-11-25"), Standing::Ended("2026-11-25".to_owned()));
        assert!(last("2026-11-26").holds() && !last("2026-11-25").holds());
    }

    #[test]
    fn the_best_of_several_counts() {
        let old = held(1, None, true);
        let ended = held(2, Some("2026-01-31"), true);
        let waits = held(3, Some("2028-11-26"), false);
        let soon = held(2, Some("2026-12-01"), true);
        let late = held(3, Some("2028-01-01"), true);
        assert_eq!(standing(&[]), Standing::Never);
        assert_eq!(standing(std::slice::from_ref(&old)), Standing::Outdated);
        let ended_on = Standing::Ended("2026-01-31".to_owned());
        assert_eq!(standing(&[ended.clone(), old.clone()]), ended_on);
        assert_eq!(standing(&[waits.clone(), ended.clone()]), Standing::Waits);
        let until = |day: &str| Standing::Until(day.to_owned());
        assert_eq!(standing(&[soon.clone(), waits]), until("2026-12-01"));
        assert_eq!(standing(&[late, soon, ended]), until("2028-01-01"));
        assert_eq!(standing(&[held(2, None, true), old]), Standing::WithoutEnd);
    }

    #[test]
    fn another_topics_record_says_nothing() {
        let other = Held {
            topic_id: Uuid::max(),
            ..held(3, None, true)
        };
        assert_eq!(standing(&[other]), Standing::Never);
    }
}
