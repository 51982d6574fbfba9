//! What is said of scans of papers.

use super::entries::{Sentence, Telling, say};
use crate::inductions::scans::{InductionScanRemoved, InductionScanned, Media, Scan};
use crate::logbook::Entry;
use crate::problem::Problem;
use crate::web::desk::Question;
use crate::web::numbers::Numbers;

/// Problems of scans.
pub(super) fn about_scans(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::NoFile => "Choose a file: the paper as a PDF, or photographed.",
        Problem::FileTooLarge => "The file is larger than 5 MB. Scan it in fewer dots or shades.",
        Problem::NotAScan => {
            "That is neither a PDF nor a JPEG nor a PNG. Scan or photograph it so."
        }
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// What a file is.
const fn media(media: Media) -> &'static str {
    match media {
        Media::Pdf => "PDF",
        Media::Jpeg => "JPEG",
        Media::Png => "PNG",
    }
}

/// A scan in a record.
#[must_use]
pub fn shown(scan: &Scan, added: &str, numbers: Numbers) -> String {
    let what = media(scan.media);
    if scan.is_removed {
        return format!("A scan ({what}) of {added} was erased.");
    }
    format!("Scan, {what}, {}, added {added}", size(scan.bytes, numbers))
}

/// A file's size, in decimal units of bytes.
fn size(bytes: i64, numbers: Numbers) -> String {
    match bytes {
        ..100_000 => format!("{}\u{a0}kB", numbers.decimal((bytes + 99) / 100, 1)),
        _ => format!("{}\u{a0}MB", numbers.decimal((bytes + 50_000) / 100_000, 1)),
    }
}

/// Before a scan is erased.
#[must_use]
pub fn remove_question() -> Question {
    Question {
        question: "Erase this scan?".to_owned(),
        consequence: "The file is gone for good: nobody can bring it back. The record stays, and \
            the book keeps that there was a scan of it."
            .to_owned(),
        verb: "Erase it".to_owned(),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (InductionScanned::KIND, |text, telling| {
        say(text, telling, scanned)
    }),
    (InductionScanRemoved::KIND, |text, telling| {
        say(text, telling, removed)
    }),
];

fn scanned(entry: &InductionScanned, telling: Telling<'_>) -> String {
    format!(
        "The paper of an induction of {} was scanned.",
        telling.name(entry.person_id)
    )
}

fn removed(entry: &InductionScanRemoved, telling: Telling<'_>) -> String {
    format!(
        "The scan of entry {}, of an induction of {}, was erased.",
        entry.erases_beside_seq,
        telling.name(entry.person_id)
    )
}
