//! The page of one tray.

use askama::Template;

use crate::web::chart::WearChart;
use crate::web::dates::Moment;
use crate::web::drawing::{Rule, TrayDrawing, VerdictWord};
use crate::web::shell::Shell;

/// One tray: what stands in it, why the verdict, what happened.
#[derive(Debug, Clone, Template)]
#[template(path = "trays/tray.html")]
pub struct TrayPage {
    /// The frame.
    pub shell: Shell,
    /// The tray's id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The line it stands on.
    pub line_id: String,
    /// The line's name.
    pub line: String,
    /// `300 × 250 mm, 65 mm deep; least depth 10 mm`.
    pub inside: String,
    /// The verdict, large.
    pub word: VerdictWord,
    /// The tray from above.
    pub drawing: TrayDrawing,
    /// The reason in numbers.
    pub reason: String,
    /// When the verdict changes if nobody prints.
    pub change: Option<String>,
    /// The mix that stands here.
    pub mix: Option<MixInTray>,
    /// What happened here, newest first.
    pub events: Vec<TrayEvent>,
    /// Leads to older events, where there are any: a query such as `?before=412`.
    pub older: Option<String>,
    /// May this reader mix into the tray?
    pub may_mix: bool,
    /// May this reader note sheets?
    pub may_note: bool,
    /// May this reader discard what stands here?
    pub may_discard: bool,
}

/// The mix in the tray with its figures.
#[derive(Debug, Clone)]
pub struct MixInTray {
    /// Its id, for links.
    pub id: String,
    /// The product's id; none for liquid that nobody can name.
    pub product_id: Option<String>,
    /// The product.
    pub product: String,
    /// `1+9`.
    pub dilution: String,
    /// `1 L`.
    pub litres: String,
    /// `13.3 mm`.
    pub depth: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// By whom; none where that is not told.
    pub mixed_by: Option<String>,
    /// What is left of its capacity.
    pub capacity: Rule,
    /// What is left of its life.
    pub life: Rule,
    /// How the used share of capacity was reckoned, step by step; the last is the result.
    pub capacity_sum: Vec<Step>,
    /// The same of its life.
    pub life_sum: Vec<Step>,
    /// How it wore since it was mixed.
    pub wear: WearChart,
    /// The product's own cautions, one sentence each.
    pub cautions: Vec<String>,
}

/// One line of a sum.
#[derive(Debug, Clone)]
pub struct Step {
    /// What it is: `Charged with fresh solution`.
    pub what: String,
    /// How it came about: `24 sheets ÷ 100 sheets per litre`; may be empty.
    pub how: String,
    /// The figure with its unit.
    pub figure: String,
}

/// One thing that happened to the tray.
#[derive(Debug, Clone)]
pub struct TrayEvent {
    /// The entry's number in the book.
    pub seq: i64,
    /// When it happened.
    pub at: Moment,
    /// What happened, one sentence.
    pub sentence: String,
    /// Was it undone later?
    pub is_undone: bool,
}
