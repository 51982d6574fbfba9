//! Sheet sizes and paper classes.

use askama::Template;
use serde::Deserialize;

use crate::web::fields::Problems;
use crate::web::shell::Shell;

/// A sheet size of the list.
#[derive(Debug, Clone)]
pub struct SizeRow {
    /// Its id, for `/papers/sizes/{id}/retire`.
    pub id: String,
    /// `8×10 in`.
    pub name: String,
    /// `203.2 × 254 mm`.
    pub sides: String,
    /// In sheets of 8×10 in: `1`.
    pub equivalent: String,
}

/// A paper class of the list.
#[derive(Debug, Clone)]
pub struct ClassRow {
    /// Its id, for `/papers/classes/{id}/retire`.
    pub id: String,
    /// `RC`.
    pub name: String,
}

/// A new size or class as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PapersForm {
    /// Idempotency key.
    pub key: String,
    /// The size's name.
    pub size_name: String,
    /// Its long side.
    pub long: String,
    /// Its short side.
    pub short: String,
    /// The class's name.
    pub class_name: String,
}

/// The papers of a room. A size posts to `/papers/sizes` (`size_name`, `long`, `short`), a
/// class to `/papers/classes` (`class_name`).
#[derive(Debug, Clone, Template)]
#[template(path = "papers/papers.html")]
pub struct PapersPage {
    /// The frame.
    pub shell: Shell,
    /// The sizes.
    pub sizes: Vec<SizeRow>,
    /// The classes.
    pub classes: Vec<ClassRow>,
    /// As typed.
    pub form: PapersForm,
    /// What to mend.
    pub problems: Problems,
    /// `mm` or `in`: what bare numbers are.
    pub unit: String,
    /// May this reader change them?
    pub may_change: bool,
}
