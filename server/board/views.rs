//! The board's page. It is kept and shown to everyone of the same role and display, so
//! its shell carries no person, no count and no flash, and its times are absolute.

use askama::Template;

use crate::arrivals::views::WhoIsHere;
use crate::web::dates::Moment;
use crate::web::drawing::{Rule, TrayDrawing, VerdictWord};
use crate::web::shell::Shell;

/// What stands over a line: its name, and where to note sheets.
#[derive(Debug, Template)]
#[template(path = "board/line_head.html")]
pub(super) struct LineHead<'a> {
    /// The page's frame, for links.
    pub(super) shell: &'a Shell,
    /// The line.
    pub(super) line: &'a LineOnBoard,
    /// May this role note sheets?
    pub(super) may_note: bool,
}

/// A tray on its line.
#[derive(Debug, Template)]
#[template(path = "board/station.html")]
pub(super) struct Station<'a> {
    /// The page's frame, for links.
    pub(super) shell: &'a Shell,
    /// Its line.
    pub(super) line: &'a LineOnBoard,
    /// The tray.
    pub(super) tray: &'a TrayOnBoard,
    /// Its place on the line, from 1.
    pub(super) number: usize,
    /// May this role mix?
    pub(super) may_mix: bool,
}

/// The whole board.
#[derive(Debug, Clone, Template)]
#[template(path = "board/board.html", blocks = ["off", "glance", "notices", "bench", "bottles", "present"])]
pub struct BoardPage {
    /// The frame, without person, unread and flash.
    pub shell: Shell,
    /// When the board was drawn.
    pub as_of: Moment,
    /// Names the last entry it shows, for whoever follows it from here.
    pub at: String,
    /// When the board was drawn, in microseconds since 1970.
    pub drawn_us: i64,
    /// What everyone in the room should know, one sentence each.
    pub notices: Vec<String>,
    /// The lines in the room's order.
    pub lines: Vec<LineOnBoard>,
    /// The bottles that hold something, by name.
    pub bottles: Vec<BottleOnBoard>,
    /// Who is there.
    pub here: WhoIsHere,
    /// May this role note sheets?
    pub may_note: bool,
    /// May this role mix?
    pub may_mix: bool,
    /// May this role set up the bench?
    pub may_set_up: bool,
}

impl BoardPage {
    /// Whether there is more than one tray to see.
    fn has_a_glance(&self) -> bool {
        self.lines
            .iter()
            .map(|line| line.trays.len())
            .sum::<usize>()
            > 1
    }
}

/// A bottle that holds something.
#[derive(Debug, Clone)]
pub struct BottleOnBoard {
    /// Its id, for links.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The verdict.
    pub word: VerdictWord,
    /// `Plain print developer 1+9`.
    pub mix: String,
    /// `1 L`.
    pub litres: String,
    /// `good until 21:10 Thu`; none where nobody knows how long it lives.
    pub ends: Option<String>,
}

/// One line with its trays in the order prints travel.
#[derive(Debug, Clone)]
pub struct LineOnBoard {
    /// The space it stands in; nothing where the room has one only.
    pub space: Option<String>,
    /// Its id, for links.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Its trays.
    pub trays: Vec<TrayOnBoard>,
}

/// One tray on the board.
#[derive(Debug, Clone)]
pub struct TrayOnBoard {
    /// Its id, for links.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Do prints wash in it? Then it has neither mix nor verdict.
    pub is_wash: bool,
    /// The verdict, large.
    pub word: VerdictWord,
    /// The tray from above.
    pub drawing: TrayDrawing,
    /// The reason in numbers.
    pub reason: String,
    /// When the verdict changes if nobody prints: `Test first from 19:34 Thu if nobody prints.`
    pub change: Option<String>,
    /// What stands here; none where nothing is recorded.
    pub mix: Option<MixOnBoard>,
}

/// The mix in a tray.
#[derive(Debug, Clone)]
pub struct MixOnBoard {
    /// The product.
    pub product: String,
    /// `1+9`.
    pub dilution: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// `1 L`.
    pub litres: String,
    /// `13.3 mm`.
    pub depth: String,
    /// What is left of its capacity.
    pub capacity: Rule,
    /// What is left of its life.
    pub life: Rule,
}
