//! Sheet sizes and paper classes.

use askama::Template;
use serde::Deserialize;

use crate::web::desk::RetiredRow;
use crate::web::fields::Problems;
use crate::web::shell::Shell;

/// A sheet size of the list.
#[derive(Debug, Clone)]
pub struct SizeRow {
    /// Its id, for `/papers/sizes/{id}`.
    pub id: String,
    /// `8×10 in`.
    pub name: String,
    /// `254 × 203.2 mm`.
    pub sides: String,
    /// In sheets of 8×10 in: `1`.
    pub equivalent: String,
}

/// A paper class of the list.
#[derive(Debug, Clone)]
pub struct ClassRow {
    /// Its id, for `/papers/classes/{id}`.
    pub id: String,
    /// `RC`.
    pub name: String,
    /// `1.2 g/m² (0.5 to 1.6)`, or that nothing is on file.
    pub silver: String,
    /// Where that comes from.
    pub basis: String,
    /// `40 ml/m²`, or that nothing is on file.
    pub carry_over: String,
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

/// A class as typed, with what is known of its silver.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ClassForm {
    /// Idempotency key.
    pub key: String,
    /// The class's name.
    pub class_name: String,
    /// The lightest coating, in g/m².
    pub silver_least: String,
    /// The usual one.
    pub silver_usual: String,
    /// The heaviest.
    pub silver_most: String,
    /// The least share kept in the image, in per cent.
    pub kept_least: String,
    /// The usual share.
    pub kept_usual: String,
    /// The largest.
    pub kept_most: String,
    /// Where they come from.
    pub silver_basis: String,
    /// What a square metre carries over, in ml.
    pub carry_over: String,
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
    /// What is retired, sizes first; each posts to its `/restore`.
    pub retired: Vec<RetiredRow>,
    /// As typed.
    pub form: PapersForm,
    /// What to mend.
    pub problems: Problems,
    /// `mm` or `in`: what bare numbers are.
    pub unit: String,
    /// May this reader change them?
    pub may_change: bool,
}

/// Changes a size: posts to `/papers/sizes/{id}`; `/papers/sizes/{id}/retire` asks first.
#[derive(Debug, Clone, Template)]
#[template(path = "papers/size.html")]
pub struct SizePage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// As typed.
    pub form: PapersForm,
    /// What to mend.
    pub problems: Problems,
    /// `mm` or `in`: what bare numbers are.
    pub unit: String,
}

/// Changes a class: posts to `/papers/classes/{id}`; `/papers/classes/{id}/retire` asks
/// first.
#[derive(Debug, Clone, Template)]
#[template(path = "papers/class.html")]
pub struct ClassPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// As typed.
    pub form: ClassForm,
    /// What to mend.
    pub problems: Problems,
}
