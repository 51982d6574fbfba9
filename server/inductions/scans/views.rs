//! The pages of scans.

use askama::Template;

use crate::inductions::views::RecordShown;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A scan in a record.
#[derive(Debug, Clone)]
pub struct ScanShown {
    /// Which.
    pub id: String,
    /// What it is, how large and when it was added; or that it was erased.
    pub words: String,
    /// Whether it can be taken away and erased.
    pub is_there: bool,
}

/// As typed, but for the file, which no browser keeps.
#[derive(Clone, Debug, Default)]
pub struct ScanForm {
    /// Idempotency key.
    pub key: String,
    /// Other records that stand on the same paper.
    pub also: Vec<String>,
}

/// The form that adds a scan to a record.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/scan.html")]
pub struct ScanPage {
    /// The frame.
    pub shell: Shell,
    /// The record.
    pub record: RecordShown,
    /// Other papers of the same day that have no scan yet.
    pub others: Vec<Choice>,
    /// As typed.
    pub form: ScanForm,
    /// What to mend.
    pub problems: Problems,
}
