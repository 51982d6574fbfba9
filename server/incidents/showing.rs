//! Incidents as pages show them.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Details;
use super::store::Incident;
use super::views::{Fact, IncidentRow};
use crate::bench::Line;
use crate::clock::moment;
use crate::products::Product;
use crate::web::dates::Zone;
use crate::web::messages::incidents as words;

/// An incident in a list: whose it is and how it stands, nothing of what happened.
pub(super) fn row(incident: &Incident, zone: &Zone, now: OffsetDateTime) -> IncidentRow {
    let at = zone.words(incident.reported_at, now).words;
    let (is_finished, is_erased) = (
        incident.finished_seq.is_some(),
        incident.erased_seq.is_some(),
    );
    IncidentRow {
        id: incident.id.to_string(),
        number: incident.number,
        person: incident.person.clone(),
        said: words::state(&at, is_finished, is_erased),
    }
}

/// What is known of it, a line each.
pub(super) fn facts(
    incident: &Incident,
    details: Option<&Details>,
    (lines, products): (&[Line], &[Product]),
    zone: &Zone,
    now: OffsetDateTime,
) -> Vec<Fact> {
    let at = zone.words(incident.reported_at, now).words;
    let reported = words::reported(incident.reported_by.as_deref(), &at);
    let mut facts = vec![
        (words::PERSON, incident.person.clone()),
        (words::REPORTED, reported),
    ];
    let Some(details) = details else {
        return facts;
    };
    let line = |id: Uuid| lines.iter().find(|line| line.id == id);
    let line = details.line_id.and_then(line);
    let product = |id: Uuid| products.iter().find(|product| product.id == id);
    let product = details.product_id.and_then(product);
    let happened = zone.words(moment(details.happened_at_us), now).words;
    facts.push((words::WHAT, words::what(details.what).to_owned()));
    facts.push((words::WHEN, happened));
    facts.extend(line.map(|line| (words::WHERE, line.name.clone())));
    facts.extend(product.map(|product| (words::PRODUCT, product.name.clone())));
    let part = details.part.map(words::part);
    facts.extend(part.map(|part| (words::PART, part.to_owned())));
    let first: Vec<&str> = details
        .first
        .iter()
        .map(|deed| words::deed(*deed))
        .collect();
    if !first.is_empty() {
        facts.push((words::FIRST, first.join("; ")));
    }
    facts
}
