//! The bench sheet.

use askama::Template;

use crate::emergency::views::{Precaution, RoomHelp};
use crate::web::dates::Moment;
use crate::web::drawing::VerdictWords;
use crate::web::shell::Shell;

/// The bench on two sides of A4.
#[derive(Debug, Clone, Template)]
#[template(path = "bench_sheet/sheet.html")]
pub struct BenchSheetPage {
    /// The frame.
    pub shell: Shell,
    /// When it was drawn.
    pub as_of: Moment,
    /// Lines with their trays, in the order of the board.
    pub lines: Vec<LineOnSheet>,
    /// The room's paper classes, for whoever writes by hand.
    pub paper_classes: Vec<String>,
    /// Its sheet sizes.
    pub sheet_sizes: Vec<String>,
    /// May this reader enter a sheet that was kept by hand?
    pub may_enter: bool,
    /// The products' own cautions, one sentence each.
    pub cautions: Vec<String>,
    /// What the room has on file for Emergency.
    pub room: Option<RoomHelp>,
    /// The suppliers' statements for what stands here; empty: the generic ones.
    pub precautions: Vec<Precaution>,
}

/// Lines of text that one side holds at the sheet's type, found by printing it.
const LINES_A_SIDE: usize = 72;

/// How many lines a text takes in a column of so many letters.
fn lines(text: &str, letters: usize) -> usize {
    text.chars().count().div_ceil(letters)
}

impl BenchSheetPage {
    /// Do the trays fill the first side, so that Emergency stands on the second?
    #[must_use]
    pub fn is_long(&self) -> bool {
        let tray = |tray: &TrayOnSheet| match &tray.mix {
            Some(mix) => {
                let what = lines(&mix.title, 22) + lines(&mix.codes, 16);
                what.max(1 + lines(&tray.reason, 32)).max(2)
            }
            None => lines(&tray.reason, 28),
        };
        // A line's name and the head of its table take four.
        let bench: usize = self
            .lines
            .iter()
            .map(|line| 4 + line.trays.iter().map(tray).sum::<usize>())
            .sum();
        let cautions: usize = self.cautions.iter().map(|it| lines(it, 52)).sum();
        let statements = self.precautions.len().max(5).div_ceil(3) * 5;
        // The page's own head, the general cautions, what to do first and whom to call.
        let always = 6 + 8 + 16;
        always + bench + cautions.div_ceil(2) + statements > LINES_A_SIDE
    }

    /// Blank rows to note sheets in.
    #[must_use]
    pub fn rows_of_sheets(&self) -> std::ops::Range<u8> {
        if self.is_long() { 0..8 } else { 0..16 }
    }

    /// Blank rows for checks, and as many for temperatures.
    #[must_use]
    pub fn rows_of_readings(&self) -> std::ops::Range<u8> {
        if self.is_long() { 0..3 } else { 0..5 }
    }
}

/// A line of the bench.
#[derive(Debug, Clone)]
pub struct LineOnSheet {
    /// Its name.
    pub name: String,
    /// Its trays in the order prints travel.
    pub trays: Vec<TrayOnSheet>,
}

/// A tray.
#[derive(Debug, Clone)]
pub struct TrayOnSheet {
    /// Its name.
    pub name: String,
    /// The verdict when the sheet was drawn.
    pub verdict: VerdictWords,
    /// The reason in numbers.
    pub reason: String,
    /// What stands in it.
    pub mix: Option<MixOnSheet>,
}

/// What stands in a tray.
#[derive(Debug, Clone)]
pub struct MixOnSheet {
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `1 L`.
    pub litres: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// Until when it keeps as it stands; none where nobody knows.
    pub use_by: Option<Moment>,
    /// H codes of the product as supplied; empty where none are on file.
    pub codes: String,
}
