//! What each entry of the book says, in one sentence.
//!
//! A noun adds its kinds to [`SENTENCES`]; a kind that is not there is named by
//! its own name, so that a newer program's entries can still be read about.

use serde::de::DeserializeOwned;
use uuid::Uuid;

use crate::bench::{LineSet, TraySet};
use crate::book::names::Names;
use crate::logbook::Entry;
use crate::mixes::{Discarded, Mixed};
use crate::papers::{PaperClassSet, SheetSizeSet};
use crate::products::ProductSet;
use crate::sheets::{NoteUndone, Noted};
use crate::web::numbers::Numbers;

/// What a sentence is made with beside the entry itself.
#[derive(Clone, Copy, Debug)]
pub struct Telling<'n> {
    /// What people call the things and persons in it.
    pub names: &'n Names,
    /// How the room writes numbers.
    pub numbers: Numbers,
}

impl Telling<'_> {
    fn name(&self, id: Uuid) -> &str {
        self.names.find(id).unwrap_or("something without a name")
    }
}

/// Says what an entry with this text says; nothing where the text is not of its kind.
pub type Sentence = fn(&[u8], Telling<'_>) -> Option<String>;

/// The sentences, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (SheetSizeSet::KIND, |text, telling| {
        say(text, telling, sheet_size_set)
    }),
    (PaperClassSet::KIND, |text, telling| {
        say(text, telling, paper_class_set)
    }),
    (ProductSet::KIND, |text, telling| {
        say(text, telling, product_set)
    }),
    (LineSet::KIND, |text, telling| say(text, telling, line_set)),
    (TraySet::KIND, |text, telling| say(text, telling, tray_set)),
    (Mixed::KIND, |text, telling| say(text, telling, mixed)),
    (Discarded::KIND, |text, telling| {
        say(text, telling, discarded)
    }),
    (Noted::KIND, |text, telling| say(text, telling, noted)),
    (NoteUndone::KIND, |text, telling| {
        say(text, telling, note_undone)
    }),
];

/// What an entry says.
#[must_use]
pub fn sentence(kind: &str, text: &[u8], telling: Telling<'_>) -> String {
    let found = SENTENCES.iter().find(|(name, _)| *name == kind);
    found
        .and_then(|(_, say)| say(text, telling))
        .unwrap_or_else(|| format!("An entry of the kind {}.", kind_name(kind)))
}

/// A kind's name as people read it.
#[must_use]
pub fn kind_name(kind: &str) -> String {
    kind.replace('_', " ")
}

/// What stands for an entry that is not shown.
#[must_use]
pub fn not_shown(seq: i64) -> String {
    format!("entry {seq}, not shown to you")
}

fn say<E: DeserializeOwned>(
    text: &[u8],
    telling: Telling<'_>,
    words: fn(&E, Telling<'_>) -> String,
) -> Option<String> {
    let entry = serde_json::from_slice::<E>(text).ok()?;
    Some(words(&entry, telling))
}

fn set(what: &str, name: &str, is_retired: bool) -> String {
    if is_retired {
        format!("{what} {name} was retired.")
    } else {
        format!("{what} {name} was set.")
    }
}

fn sheet_size_set(entry: &SheetSizeSet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Sheet size", &entry.name, true);
    }
    format!(
        "Sheet size {} was set to {} by {}.",
        entry.name,
        telling.numbers.millimetres(entry.long_tenths_mm.into()),
        telling.numbers.millimetres(entry.short_tenths_mm.into())
    )
}

fn paper_class_set(entry: &PaperClassSet, _: Telling<'_>) -> String {
    set("Paper class", &entry.name, entry.is_retired)
}

fn product_set(entry: &ProductSet, _: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Product", &entry.name, true);
    }
    format!("Product {} was set, version {}.", entry.name, entry.version)
}

fn line_set(entry: &LineSet, _: Telling<'_>) -> String {
    set("Line", &entry.name, entry.is_retired)
}

fn tray_set(entry: &TraySet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Tray", &entry.name, true);
    }
    format!(
        "Tray {} was set to {} by {} by {} inside.",
        entry.name,
        telling
            .numbers
            .millimetres(entry.inside_long_tenths_mm.into()),
        telling
            .numbers
            .millimetres(entry.inside_short_tenths_mm.into()),
        telling
            .numbers
            .millimetres(entry.inside_depth_tenths_mm.into())
    )
}

fn mixed(entry: &Mixed, telling: Telling<'_>) -> String {
    format!(
        "{} of {} at {} was mixed in {}.",
        telling.numbers.litres(entry.charged_ul),
        telling.name(entry.product_id),
        telling.numbers.dilution(entry.parts_thousandths),
        telling.name(entry.tray_id)
    )
}

fn discarded(entry: &Discarded, telling: Telling<'_>) -> String {
    format!(
        "{} was poured off from {} into {}.",
        telling.numbers.litres(entry.volume_ul),
        telling.name(entry.tray_id),
        entry.container
    )
}

fn sheets(count: u32) -> String {
    match count {
        1 => "1 sheet".to_owned(),
        count => format!("{count} sheets"),
    }
}

fn noted(entry: &Noted, telling: Telling<'_>) -> String {
    format!(
        "{} of {} {} in {}, noted for {}.",
        sheets(entry.sheets),
        telling.name(entry.sheet_size_id),
        telling.name(entry.paper_class_id),
        telling.name(entry.line_id),
        telling.name(entry.person_id)
    )
}

fn note_undone(entry: &NoteUndone, telling: Telling<'_>) -> String {
    let undone = format!(
        "The note of entry {} by {} was taken back",
        entry.pass_seq,
        telling.name(entry.person_id)
    );
    match entry.reason.trim() {
        "" => format!("{undone}."),
        reason => format!("{undone}: {}.", reason.trim_end_matches('.')),
    }
}
