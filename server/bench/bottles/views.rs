//! Bottles set up by a steward.

use askama::Template;
use serde::Deserialize;

use crate::web::desk::RetiredRow;
use crate::web::fields::Problems;
use crate::web::shell::Shell;

/// A bottle on its list.
#[derive(Debug, Clone)]
pub struct BottleRow {
    /// Its id, for `/bench/bottles/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What it holds, with its unit.
    pub holds: String,
    /// `1 L of Plain print developer 1+9`, or that nothing is recorded.
    pub stands: String,
}

/// A bottle as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct BottleForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// What it holds, in litres or the unit typed.
    pub holds: String,
}

/// The bottles. A new one posts to `/bench/bottles`.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/bottles.html")]
pub struct BottlesPage {
    /// The frame.
    pub shell: Shell,
    /// Those in use.
    pub bottles: Vec<BottleRow>,
    /// Those that are not.
    pub retired: Vec<RetiredRow>,
    /// As typed.
    pub form: BottleForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader change them?
    pub may_change: bool,
}

/// One bottle: posts to `/bench/bottles/{id}`; `/bench/bottles/{id}/retire` asks first.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/bottle.html")]
pub struct BottlePage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// As typed.
    pub form: BottleForm,
    /// What to mend.
    pub problems: Problems,
}
