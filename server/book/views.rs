//! The book's pages.

use askama::Template;
use serde::Deserialize;

use super::figures::Figure;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// What of the book to show, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct BookFilter {
    /// A kind of entry; empty: all.
    pub kind: String,
    /// A person's id; empty: all.
    pub person: String,
    /// A noun; empty: all.
    pub noun: String,
    /// One of that noun, by a link; empty: all.
    pub id: String,
    /// From that day on, `2026-11-25`.
    pub from: String,
    /// Up to and including that day.
    pub until: String,
    /// Only entries before that number.
    pub before: String,
}

/// One line of the book.
#[derive(Debug, Clone)]
pub enum BookRow {
    /// An entry this reader may see.
    Shown {
        /// Its number.
        seq: i64,
        /// When it happened.
        at: Moment,
        /// Who, where that is told.
        who: Option<String>,
        /// What, one sentence.
        sentence: String,
        /// The number of the entry that reversed it.
        reversed_by: Option<i64>,
    },
    /// An entry this reader may not see; the number stays.
    NotShown {
        /// Its number.
        seq: i64,
    },
}

/// The book, newest first.
#[derive(Debug, Clone, Template)]
#[template(path = "book/book.html")]
pub struct BookPage {
    /// The frame.
    pub shell: Shell,
    /// As typed.
    pub filter: BookFilter,
    /// What to mend in the filter.
    pub problems: Problems,
    /// The kinds, *all* first.
    pub kinds: Vec<Choice>,
    /// The people this reader may filter by, *all* first; empty: the question is not asked.
    pub people: Vec<Choice>,
    /// The nouns, *all* first.
    pub nouns: Vec<Choice>,
    /// The entries.
    pub rows: Vec<BookRow>,
    /// How many entries the book has.
    pub last_seq: i64,
    /// Leads to older entries: a query such as `?kind=&before=412`.
    pub older: Option<String>,
    /// The query of the same filter for the CSV; may be empty.
    pub csv_query: String,
}

/// What an entry is about, with a link where there is a page.
#[derive(Debug, Clone)]
pub struct AboutShown {
    /// The noun in words: `tray`.
    pub noun: String,
    /// Its name or id.
    pub name: String,
    /// A whole link, where there is a page.
    pub link: Option<String>,
}

/// One entry in full.
#[derive(Debug, Clone, Template)]
#[template(path = "book/entry.html")]
pub struct EntryPage {
    /// The frame.
    pub shell: Shell,
    /// Its number.
    pub seq: i64,
    /// What happened; none where this reader may not see it.
    pub content: Option<EntryContent>,
    /// Is there a next entry?
    pub has_next: bool,
}

/// All that an entry holds.
#[derive(Debug, Clone)]
pub struct EntryContent {
    /// What happened, one sentence.
    pub sentence: String,
    /// Its kind as written.
    pub kind: String,
    /// Who did it.
    pub who: Option<String>,
    /// When, as the person says.
    pub happened: Moment,
    /// When, by the clock.
    pub recorded: Moment,
    /// What it is about.
    pub about: Vec<AboutShown>,
    /// What it says, as a table.
    pub figures: Vec<Figure>,
    /// The entry it reverses.
    pub reverses: Option<i64>,
    /// The entry that reversed it.
    pub reversed_by: Option<i64>,
    /// The version of its format.
    pub version: i16,
    /// Its hash, hex.
    pub hash: String,
    /// The hash of the entry before, hex.
    pub prev: String,
    /// The key, hex.
    pub key: Option<String>,
    /// The fingerprint of what was sent, hex.
    pub fingerprint: String,
    /// The payload, as first written.
    pub payload: String,
}

/// A checkpoint of the list.
#[derive(Debug, Clone)]
pub struct CheckpointRow {
    /// Sealed up to that entry.
    pub seq: i64,
    /// That entry's hash, hex.
    pub hash: String,
    /// When.
    pub at: Moment,
    /// The file's name, for `/checkpoints/{file}`.
    pub file: String,
}

/// What the last nightly look at the book found.
#[derive(Debug, Clone)]
pub struct LastVerified {
    /// When.
    pub at: Moment,
    /// How many entries there were.
    pub entries: i64,
    /// How much did not agree.
    pub findings: i64,
}

/// The checkpoints; `POST /checkpoints` makes one.
#[derive(Debug, Clone, Template)]
#[template(path = "book/checkpoints.html")]
pub struct CheckpointsPage {
    /// The frame.
    pub shell: Shell,
    /// Newest first.
    pub checkpoints: Vec<CheckpointRow>,
    /// So many lines of the file do not count.
    pub refused: usize,
    /// What the last nightly look at the book found.
    pub verified: Option<LastVerified>,
    /// The public key that signs them, hex.
    pub public_key: String,
    /// May this reader make one?
    pub may_make: bool,
}
