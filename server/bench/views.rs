//! Lines and trays set up by a steward.

use askama::Template;
use serde::Deserialize;

use crate::web::desk::RetiredRow;
use crate::web::drawing::TrayDrawing;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A tray on the bench page.
#[derive(Debug, Clone)]
pub struct BenchTray {
    /// Its id, for `/bench/trays/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What prints do in it; empty where nobody said.
    pub step: String,
    /// `300 × 250 mm, 65 mm deep; least depth 10 mm`.
    pub inside: String,
    /// What covers a print and what it holds: `750 ml covers a print, 4.88 L fills it to the rim`.
    pub least_volume: String,
    /// The empty tray.
    pub drawing: TrayDrawing,
}

/// A line on the bench page.
#[derive(Debug, Clone)]
pub struct BenchLine {
    /// Its id, for `/bench/lines/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The space it stands in, where the room has several.
    pub space: Option<String>,
    /// Its trays in the order prints travel.
    pub trays: Vec<BenchTray>,
}

/// A line as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct LineForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// The space it stands in; empty for the room itself.
    pub space: String,
}

/// The bench. A new line posts to `/bench/lines`; `POST /bench/trays/{id}/move` carries
/// `key` and `to` (`earlier` or `later`).
#[derive(Debug, Clone, Template)]
#[template(path = "bench/bench.html")]
pub struct BenchPage {
    /// The frame.
    pub shell: Shell,
    /// The lines.
    pub lines: Vec<BenchLine>,
    /// What is retired, lines first; each posts to its `/restore`.
    pub retired: Vec<RetiredRow>,
    /// The spaces a new line may stand in; none where the room is one space.
    pub spaces: Vec<Choice>,
    /// Whether the room has or had spaces.
    pub has_spaces: bool,
    /// As typed; its key serves the moves too.
    pub form: LineForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader change the bench?
    pub may_change: bool,
}

/// Renames a line: posts to `/bench/lines/{id}`; `/bench/lines/{id}/retire` asks first.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/line.html")]
pub struct LinePage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// The spaces it may stand in; none where the room is one space.
    pub spaces: Vec<Choice>,
    /// As typed.
    pub form: LineForm,
    /// What to mend.
    pub problems: Problems,
}

/// A tray as typed, lengths in the room's unit.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct TrayForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// What prints do in it, as a [`Step`](crate::bench::Step) is written.
    pub step: String,
    /// The long inside edge.
    pub inside_long: String,
    /// The short inside edge.
    pub inside_short: String,
    /// From floor to rim.
    pub inside_depth: String,
    /// The least depth a print needs.
    pub least_depth: String,
}

/// A new tray (posts to `/bench/lines/{line}/trays`) or one that stands (posts to
/// `/bench/trays/{id}`; `/bench/trays/{id}/retire` asks first).
#[derive(Debug, Clone, Template)]
#[template(path = "bench/tray.html")]
pub struct TrayFormPage {
    /// The frame.
    pub shell: Shell,
    /// The tray's id; none for a new one.
    pub id: Option<String>,
    /// The line's id.
    pub line_id: String,
    /// The line's name.
    pub line: String,
    /// What prints may do in it.
    pub steps: Vec<Choice>,
    /// As typed.
    pub form: TrayForm,
    /// What to mend.
    pub problems: Problems,
    /// `mm` or `in`: what bare numbers are.
    pub unit: String,
}
