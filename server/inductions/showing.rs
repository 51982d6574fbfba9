//! Inductions as pages show them.

use std::collections::BTreeMap;

use uuid::Uuid;

use super::in_force::InForce;
use super::scans::Scan;
use super::scans::views::ScanShown;
use super::store::Induction;
use super::supplements::Supplement;
use super::views::{CoveredRow, PersonRow, RecordShown, StandingRow, SupplementRow};
use crate::members::Member;
use crate::topics::Topic;
use crate::web::dates::Zone;
use crate::web::messages::{inductions as words, scans as scan_words};
use crate::web::numbers::Numbers;

/// Somebody in the overview.
pub(super) fn person_row(member: &Member, in_force: &InForce, waiting: &[Uuid]) -> PersonRow {
    let standings = in_force.of(member.person);
    let required = standings.iter();
    let required: Vec<_> = required
        .filter(|(topic, _)| in_force.is_required(topic))
        .collect();
    let missing = required.iter().filter(|(_, standing)| !standing.holds());
    let missing: Vec<String> = missing.map(|(topic, _)| topic.title.clone()).collect();
    let ends = standings.iter().filter_map(|(topic, standing)| {
        let last = in_force.ends_soon(standing)?;
        Some(words::ends_soon(&topic.title, last))
    });
    let waits = waiting.iter().filter(|person| **person == member.person);
    PersonRow {
        id: member.person.to_string(),
        number: member.member_number,
        name: member.name.clone(),
        in_force: words::in_force(required.len() - missing.len(), required.len()),
        ends: ends.collect(),
        waiting: waits.count(),
        missing,
    }
}

/// The topics in use, and what somebody's records say of each.
pub(super) fn standing_rows(in_force: &InForce, person: Uuid) -> Vec<StandingRow> {
    let rows = in_force.of(person).into_iter();
    let rows = rows.map(|(topic, standing)| StandingRow {
        topic: topic.id.to_string(),
        title: topic.title.clone(),
        is_required: in_force.is_required(topic),
        standing: words::standing(&standing),
        holds: standing.holds(),
        ends_soon: in_force.ends_soon(&standing).is_some(),
    });
    rows.collect()
}

/// The supplements, product by product.
pub(super) fn supplement_rows(due: &[Supplement]) -> Vec<SupplementRow> {
    let row = |of: &[Supplement]| {
        of.first().map(|first| SupplementRow {
            id: first.product_id.to_string(),
            product: first.product.clone(),
            sentences: of.iter().map(words::supplement).collect(),
        })
    };
    due.chunk_by(|one, next| one.product_id == next.product_id)
        .filter_map(row)
        .collect()
}

/// Titles of topics, retired ones too.
pub(super) type Titles = BTreeMap<Uuid, String>;

pub(super) fn titles(topics: &[Topic]) -> Titles {
    let titles = topics.iter();
    titles
        .map(|topic| (topic.id, topic.title.clone()))
        .collect()
}

/// A record.
pub(super) fn record_shown(record: &Induction, titles: &Titles, zone: &Zone) -> RecordShown {
    let confirmed = match record.confirmed {
        Some((at, means)) => words::confirmed(means, &zone.minute_in_full(at).words),
        None => words::WAITS.to_owned(),
    };
    let withdrawn = record.withdrawn.as_ref();
    RecordShown {
        id: record.id.to_string(),
        seq: record.seq,
        person_id: record.person_id.to_string(),
        person: record.person.clone(),
        basis: words::basis(record.basis, record.inducer.as_deref(), &record.given_on),
        confirmed,
        withdrawn: withdrawn.map(|(_, reason)| words::withdrawn(reason)),
        topics: covered_rows(record, titles),
        remark: record.remark.clone(),
        renews: record.renews_id.map(|id| id.to_string()),
    }
}

/// A scan in a record.
pub(super) fn scan_shown(scan: &Scan, zone: &Zone, numbers: Numbers) -> ScanShown {
    let added = zone.minute_in_full(scan.scanned_at).words;
    ScanShown {
        id: scan.id.to_string(),
        words: scan_words::shown(scan, &added, numbers),
        is_there: !scan.is_removed,
    }
}

/// What a record covers, by title.
fn covered_rows(record: &Induction, titles: &Titles) -> Vec<CoveredRow> {
    let mut rows: Vec<CoveredRow> = record
        .topics
        .iter()
        .map(|covered| {
            let title = titles.get(&covered.topic_id).map_or("", String::as_str);
            CoveredRow {
                topic: covered.topic_id.to_string(),
                version: covered.version,
                words: words::covered(title, covered.version, covered.good_until.as_deref()),
            }
        })
        .collect();
    rows.sort_by(|one, other| one.words.cmp(&other.words));
    rows
}
