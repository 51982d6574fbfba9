//! What each notice says, in one sentence.

use crate::notices::{Notice, Told};

/// What a notice says.
#[must_use]
pub fn sentence(told: &Told) -> String {
    match told {
        Told::Known(notice) => known(notice),
        Told::Unknown(kind) => format!("A notice of the kind {}.", kind.replace('_', " ")),
    }
}

fn known(notice: &Notice) -> String {
    match notice {
        Notice::PrintsInDoubt { notes, .. } => prints_in_doubt(notes.len()),
        Notice::DoubtLifted { notes, .. } => format!(
            "The failed spot test was a mistake and was taken back: {} in doubt no more.",
            match notes.len() {
                1 => "the prints of your note are",
                _ => "the prints of your notes are",
            }
        ),
        Notice::BookDisagrees { findings, first } => book_disagrees(*findings, *first),
        Notice::HandoverWaits { from, .. } => {
            format!("{from} hands this room over to you. Read the list, then confirm it.")
        }
        Notice::HandoverConfirmed { to, .. } => {
            format!("{to} has confirmed the list: the room is handed over.")
        }
        Notice::HandoverWithdrawn { by, .. } => {
            format!("{by} has taken back a handover of this room that you were part of.")
        }
        Notice::FogTestDue { name, again_by, .. } => super::lamps::told(name, again_by),
        Notice::InductionWaits { by } => super::inductions::asked_to_confirm(by),
        Notice::InductionEnds { topics, first } => super::inductions::own_ends(topics, first),
        Notice::InductionOfEnds {
            name,
            topics,
            first,
            ..
        } => super::inductions::ends_of(name, topics, first),
        Notice::SupplementDue {
            name,
            topic,
            people,
            ..
        } => super::inductions::supplement_due(name, topic, *people),
        Notice::RoomCheckDue { name, due_on, .. } => super::checks::told_overdue(name, due_on),
        Notice::RoomCheckFailed { name, remark, .. } => super::checks::told_failed(name, remark),
        Notice::IncidentOfYours { number, by, .. } => super::incidents::of_yours(*number, by),
        Notice::SeeADoctor {} => super::incidents::SEE_A_DOCTOR.to_owned(),
        Notice::OfferOtherTask { name } => super::incidents::other_task(name),
        Notice::StillThere { expected } => super::arrivals::still_there(expected),
        Notice::NothingHeardOf { name, expected } => {
            super::arrivals::nothing_heard_of(name, expected)
        }
        Notice::NoteCorrected {
            note, by, reason, ..
        } => super::sheets::told(&format!("{by} set your note of entry {note} right"), reason),
        Notice::NoteTakenBack { note, by, reason } => {
            super::sheets::told(&format!("{by} took back your note of entry {note}"), reason)
        }
    }
}

fn prints_in_doubt(notes: usize) -> String {
    let which = match notes {
        1 => "A note of yours".to_owned(),
        count => format!("{count} of your notes"),
    };
    format!(
        "{which} went through a fixer that has failed a spot test since. Fix those prints again in \
         a fresh bath and wash them again, or they may not last."
    )
}

fn book_disagrees(findings: i64, first: Option<i64>) -> String {
    let place = first.map_or_else(String::new, |seq| format!(", the first at entry {seq}"));
    let count = match findings {
        1 => "1 thing that does not agree".to_owned(),
        count => format!("{count} things that do not agree"),
    };
    format!(
        "Verifying the book found {count}{place}. Ask whoever runs the machine for the report of \
         wetside verify."
    )
}

/// Where something can be done about it: a path below the room.
#[must_use]
pub fn link(told: &Told) -> Option<String> {
    match told {
        Told::Known(Notice::BookDisagrees { first, .. }) => Some(match first {
            Some(seq) => format!("/book/{seq}"),
            None => "/checkpoints".to_owned(),
        }),
        Told::Known(
            Notice::PrintsInDoubt { reading, .. } | Notice::DoubtLifted { reading, .. },
        ) => Some(format!("/book/{reading}")),
        Told::Known(
            Notice::HandoverWaits { handover, .. }
            | Notice::HandoverConfirmed { handover, .. }
            | Notice::HandoverWithdrawn { handover, .. },
        ) => Some(format!("/handovers/{handover}")),
        Told::Known(Notice::FogTestDue { lamp, .. }) => Some(format!("/lamps/{lamp}")),
        Told::Known(Notice::InductionWaits { .. } | Notice::InductionEnds { .. }) => {
            Some("/inductions/own".to_owned())
        }
        Told::Known(Notice::InductionOfEnds { person, .. }) => {
            Some(format!("/inductions/people/{person}"))
        }
        Told::Known(Notice::SupplementDue { product, .. }) => Some(format!("/products/{product}")),
        Told::Known(Notice::RoomCheckDue { check, .. } | Notice::RoomCheckFailed { check, .. }) => {
            Some(format!("/checks/{check}"))
        }
        Told::Known(Notice::StillThere { .. }) => Some("/arrive".to_owned()),
        Told::Known(Notice::NothingHeardOf { .. }) => Some("/present".to_owned()),
        Told::Known(Notice::NoteCorrected { corrected, .. }) => {
            Some(format!("/sheets/{corrected}"))
        }
        Told::Known(Notice::NoteTakenBack { note, .. }) => Some(format!("/sheets/{note}")),
        Told::Known(Notice::IncidentOfYours { incident, .. }) => {
            Some(format!("/incidents/{incident}"))
        }
        Told::Known(Notice::SeeADoctor {} | Notice::OfferOtherTask { .. }) | Told::Unknown(_) => {
            None
        }
    }
}

/// The notes of the reader that it speaks of.
#[must_use]
pub fn notes(told: &Told) -> &[i64] {
    match told {
        Told::Known(Notice::PrintsInDoubt { notes, .. } | Notice::DoubtLifted { notes, .. }) => {
            notes
        }
        Told::Known(_) | Told::Unknown(_) => &[],
    }
}
