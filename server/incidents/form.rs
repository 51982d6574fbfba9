//! The form of an incident, read.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::actions::NewIncident;
use super::input;
use super::views::{IncidentForm, PeriodForm};
use super::{BodyPart, Details, FirstDeed, What};
use crate::clock::micros;
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::dates::Zone;
use crate::web::forms::read_id;
use crate::web::{days, late};

/// An id that may stay empty.
pub(super) fn read_one(text: &str) -> Result<Option<Uuid>, Problem> {
    match text {
        "" => Ok(None),
        text => read_id(text).map(Some),
    }
}

fn part(form: &IncidentForm, what: Option<What>) -> Result<Option<BodyPart>, Problem> {
    match what {
        Some(What::SkinContact) => BodyPart::parse(&form.part)
            .map(Some)
            .ok_or(Problem::NotAChoice),
        _ => Ok(None),
    }
}

fn deeds(form: &IncidentForm) -> Result<Vec<FirstDeed>, Problem> {
    let deeds = form.first.iter().map(|deed| FirstDeed::parse(deed));
    deeds.collect::<Option<Vec<_>>>().ok_or(Problem::NotAChoice)
}

impl PeriodForm {
    /// The last year, where nothing is asked for.
    pub(super) fn or_the_last_year(self, zone: &Zone, now: OffsetDateTime) -> Self {
        if !self.from.is_empty() || !self.until.is_empty() {
            return self;
        }
        Self {
            from: zone.date_value(now - Duration::days(364)),
            until: zone.date_value(now),
        }
    }

    /// From when and until before when.
    pub(super) fn read(&self, zone: &Zone) -> Result<(OffsetDateTime, OffsetDateTime), Problems> {
        let start = zone.instant(&format!("{}T00:00", self.from));
        let start = start.map(|(at, _)| at).map_err(|_| Problem::NotADate);
        let end = days::ends(zone, &self.until).map_err(|_| Problem::NotADate);
        let mut problems = Problems::default();
        let start = problems.take("from", start);
        let end = problems.take("until", end);
        start.zip(end).ok_or(problems)
    }
}

/// An incident as typed, read; where nobody is named it is the reader's own.
pub(super) fn read(
    form: &IncidentForm,
    reader: Uuid,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<NewIncident, Problems> {
    let mut problems = Problems::default();
    let person = problems.take("person", read_one(&form.person));
    let what = problems.take("what", What::parse(&form.what).ok_or(Problem::NotAChoice));
    let line = problems.take("line", read_one(&form.line));
    let product = problems.take("product", read_one(&form.product));
    let part = problems.take("part", part(form, what));
    let first = problems.take("first", deeds(form));
    let words = problems.take("words", input::words(&form.words));
    let zone = settings.time_zone().map_err(|_| Problem::NotATime);
    let at = zone.and_then(|zone| late::read(&zone, &form.when, &form.day, &form.time));
    let at = problems.take("time", at);
    match (person, what, line, product, part, first, words, at) {
        (
            Some(person),
            Some(what),
            Some(line_id),
            Some(product_id),
            Some(part),
            Some(first),
            Some(words),
            Some(at),
        ) => Ok(NewIncident {
            person_id: person.unwrap_or(reader),
            details: Details {
                what,
                happened_at_us: at.unwrap_or(micros(now)),
                line_id,
                product_id,
                part,
                first,
                words,
            },
        }),
        _ => Err(problems),
    }
}
