//! What a reader typed into the filter, read, and written into links again.

use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};
use time::OffsetDateTime;

use super::filter::{Filter, Reader};
use super::views::BookFilter;
use crate::problem::{Problem, Problems};
use crate::web::dates::Zone;
use crate::web::forms::read_id;

/// The sorts of things that entries are about and a reader may ask for.
pub(super) const NOUNS: &[&str] = &[
    "tray",
    "mix",
    "line",
    "space",
    "bottle",
    "pass",
    "stock_solution",
    "product",
    "sheet_size",
    "paper_class",
    "person",
    "outage",
    "lamp",
    "fog_test",
    "topic",
    "induction",
    "scan",
    "room_check",
    "room_check_result",
    "flow_measurement",
    "airing",
    "incident",
    "handover",
    "presence",
    "workshop",
    "screen",
];

impl BookFilter {
    /// The filter, and before which entry.
    ///
    /// # Errors
    /// Everything that cannot be read, all at once.
    pub(super) fn read(
        &self,
        reader: &Reader,
        zone: &Zone,
    ) -> Result<(Filter, Option<i64>), Problems> {
        let mut problems = Problems::default();
        let kind = problems.take("kind", given(&self.kind, |kind| kind_of(kind, reader)));
        let noun = problems.take("noun", given(&self.noun, noun_of));
        let id = problems.take("noun", given(&self.id, read_id));
        let person = problems.take("person", given(&self.person, read_id));
        let from = problems.take("from", given(&self.from, |day| start_of(day, zone)));
        let until = problems.take("until", given(&self.until, |day| end_of(day, zone)));
        let before = problems.take("before", given(&self.before, number));
        match (kind, noun, id, person, from, until, before) {
            (
                Some(kind),
                Some(noun),
                Some(id),
                Some(person),
                Some(from),
                Some(until),
                Some(before),
            ) => {
                let filter = Filter {
                    kind,
                    noun,
                    id,
                    person,
                    happened_from: from,
                    happened_before: until,
                    ..Filter::default()
                };
                Ok((filter, before))
            }
            _ => Err(problems),
        }
    }

    /// The same question as a query; of the entries before a number.
    pub(super) fn query(&self, before: Option<i64>) -> String {
        let before = before.map(|seq| seq.to_string()).unwrap_or_default();
        let fields = [
            ("kind", &self.kind),
            ("noun", &self.noun),
            ("id", &self.id),
            ("person", &self.person),
            ("from", &self.from),
            ("until", &self.until),
            ("before", &before),
        ];
        let given: Vec<String> = fields
            .iter()
            .filter(|(_, value)| !value.is_empty())
            .map(|(name, value)| format!("{name}={}", utf8_percent_encode(value, NON_ALPHANUMERIC)))
            .collect();
        if given.is_empty() {
            String::new()
        } else {
            format!("?{}", given.join("&"))
        }
    }
}

fn given<T>(
    typed: &str,
    read: impl FnOnce(&str) -> Result<T, Problem>,
) -> Result<Option<T>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => read(typed).map(Some),
    }
}

/// A steward may ask for a kind that only a newer program knows.
fn kind_of(kind: &str, reader: &Reader) -> Result<String, Problem> {
    if reader.sees_all || reader.kinds().contains(&kind) {
        Ok(kind.to_owned())
    } else {
        Err(Problem::NotAChoice)
    }
}

fn noun_of(noun: &str) -> Result<String, Problem> {
    let found = NOUNS.iter().find(|known| **known == noun);
    found
        .map(|noun| (*noun).to_owned())
        .ok_or(Problem::NotAChoice)
}

fn start_of(day: &str, zone: &Zone) -> Result<OffsetDateTime, Problem> {
    let read = zone.instant(&format!("{day}T00:00"));
    read.map(|(at, _)| at).map_err(|_| Problem::NotADate)
}

/// The first instant after a local day.
fn end_of(day: &str, zone: &Zone) -> Result<OffsetDateTime, Problem> {
    let start = start_of(day, zone)?;
    let day = zone.day_of(start);
    day.map(|(_, end)| end).map_err(|_| Problem::NotADate)
}

fn number(typed: &str) -> Result<i64, Problem> {
    typed.parse().map_err(|_| Problem::NotANumber)
}

#[cfg(test)]
mod tests {
    use time::macros::datetime;
    use uuid::Uuid;

    use super::*;
    use crate::rights::Role;

    fn read(filter: &BookFilter, role: Role) -> Result<(Filter, Option<i64>), Problems> {
        let zone = Zone::named("Europe/Berlin").unwrap();
        filter.read(&Reader::new(Uuid::nil(), role), &zone)
    }

    #[test]
    fn days_are_the_rooms_own_and_the_last_one_counts() {
        let typed = BookFilter {
            from: "2026-03-29".to_owned(),
            until: "2026-03-29".to_owned(),
            before: "412".to_owned(),
            ..BookFilter::default()
        };
        let (filter, before) = read(&typed, Role::Member).unwrap();
        // The clocks go forward that night (IANA time zone database, file europe).
        assert_eq!(filter.happened_from, Some(datetime!(2026-03-28 23:00 UTC)));
        assert_eq!(
            filter.happened_before,
            Some(datetime!(2026-03-29 22:00 UTC))
        );
        assert_eq!(before, Some(412));
    }

    #[test]
    fn everything_wrong_is_named_at_once() {
        let typed = BookFilter {
            kind: "nothing_of_the_sort".to_owned(),
            person: "me".to_owned(),
            from: "yesterday".to_owned(),
            ..BookFilter::default()
        };
        let problems = read(&typed, Role::Member).unwrap_err();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field).collect();
        assert_eq!(fields, ["kind", "person", "from"]);
    }

    #[test]
    fn a_link_asks_the_same_again() {
        let typed = BookFilter {
            kind: "noted".to_owned(),
            person: "a&b".to_owned(),
            before: "9".to_owned(),
            ..BookFilter::default()
        };
        assert_eq!(typed.query(None), "?kind=noted&person=a%26b");
        assert_eq!(typed.query(Some(7)), "?kind=noted&person=a%26b&before=7");
        assert_eq!(BookFilter::default().query(None), "");
    }
}
