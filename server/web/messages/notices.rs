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
        Notice::PrintsInDoubt { notes, .. } => {
            let which = match notes.len() {
                1 => "A note of yours".to_owned(),
                count => format!("{count} of your notes"),
            };
            format!(
                "{which} went through a fixer that has failed a spot test since. Fix those \
                 prints again in a fresh bath and wash them again, or they may not last."
            )
        }
        Notice::BookDisagrees { findings, first } => {
            let place = first.map_or_else(String::new, |seq| format!(", the first at entry {seq}"));
            let count = match findings {
                1 => "1 thing that does not agree".to_owned(),
                count => format!("{count} things that do not agree"),
            };
            format!(
                "Verifying the book found {count}{place}. Ask whoever runs the machine for \
                 the report of wetside verify."
            )
        }
    }
}

/// Where something can be done about it: a path below the room.
#[must_use]
pub fn link(told: &Told) -> Option<String> {
    match told {
        Told::Known(Notice::BookDisagrees { first, .. }) => Some(match first {
            Some(seq) => format!("/book/{seq}"),
            None => "/checkpoints".to_owned(),
        }),
        Told::Known(Notice::PrintsInDoubt { reading, .. }) => Some(format!("/book/{reading}")),
        Told::Unknown(_) => None,
    }
}
