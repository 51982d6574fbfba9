//! Workshops, their guests and their notes, as pages show them.

use std::collections::BTreeMap;

use time::OffsetDateTime;
use uuid::Uuid;

use super::store::{Guest, Workshop};
use super::views::{GuestShown, NoteForIt, WorkshopShown};
use crate::sheets::Pass;
use crate::web::dates::Zone;
use crate::web::messages::workshops as words;

/// A workshop in words.
pub(super) fn shown(workshop: &Workshop, zone: &Zone, now: OffsetDateTime) -> WorkshopShown {
    let clock = |at| zone.clock(at).words;
    let place = workshop.space.as_ref().map(|space| format!("in {space}"));
    let parts = [
        Some(format!("Led by {}", workshop.leader)),
        Some(format!(
            "up to {}",
            words::guests(workshop.most_guests.into())
        )),
        place,
        words::lines_of(&workshop.lines),
    ];
    WorkshopShown {
        id: workshop.id.to_string(),
        title: workshop.title.clone(),
        word: words::word(workshop.standing(now)),
        day: zone.day(workshop.begins_at).words,
        hours: words::hours(&clock(workshop.begins_at), &clock(workshop.ends_at)),
        about: parts.into_iter().flatten().collect::<Vec<_>>().join(", "),
    }
}

/// Guests of a workshop: who is there, and who has left.
pub(super) fn guests_shown(
    (workshop, guests): (&Workshop, &[Guest]),
    names: &BTreeMap<Uuid, String>,
    zone: &Zone,
    now: OffsetDateTime,
) -> (Vec<GuestShown>, Vec<GuestShown>) {
    let shown = |guest: &Guest| {
        let left_at = guest.left_at.or(workshop.over_at.filter(|at| *at <= now));
        GuestShown {
            id: guest.id.to_string(),
            name: words::guest_name(names.get(&guest.id).map(String::as_str)),
            since: zone.clock(guest.signed_in_at),
            until: left_at.map(|at| words::until(&zone.clock(at).words, guest.is_confirmed)),
        }
    };
    guests
        .iter()
        .map(shown)
        .partition(|guest| guest.until.is_none())
}

/// What was noted for a workshop and stands, and all of that.
pub(super) fn notes_shown(
    passes: &[Pass],
    zone: &Zone,
    now: OffsetDateTime,
) -> (Vec<NoteForIt>, i64) {
    let standing = passes.iter().filter(|pass| pass.reversed_by.is_none());
    let sheets = standing.clone().map(|pass| i64::from(pass.sheets)).sum();
    let note = |pass: &Pass| {
        let paper = pass.sheet_size.as_deref().unwrap_or_default();
        let class = pass.paper_class.as_deref().unwrap_or_default();
        NoteForIt {
            seq: pass.seq,
            said: words::noted(
                pass.sheets.into(),
                &format!("{paper}, {class}"),
                &pass.line_name,
            ),
            at: zone.words(pass.happened_at, now),
        }
    };
    (standing.map(note).collect(), sheets)
}
