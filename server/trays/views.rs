//! The page of one tray.

use askama::Template;

use crate::web::chart::WearChart;
use crate::web::dates::Moment;
use crate::web::drawing::{Rule, TrayDrawing, VerdictWord};
use crate::web::fields::Problems;
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
    /// What came into the mix and can do harm with it.
    pub alarm: Option<String>,
    /// What is to be done next.
    pub next: Next,
    /// What else may be done, in groups.
    pub others: Vec<Deeds>,
    /// The mix that stands here.
    pub mix: Option<MixInTray>,
    /// How long to develop; of a developer.
    pub development: Option<Development>,
    /// What people found of the mix, newest first.
    pub findings: Vec<Finding>,
    /// What happened here, newest first.
    pub events: Vec<TrayEvent>,
    /// Leads to older events, where there are any: a query such as `?before=412`.
    pub older: Option<String>,
}

/// A tray in which prints wash.
#[derive(Debug, Clone, Template)]
#[template(path = "trays/wash.html")]
pub struct WashPage {
    /// The frame.
    pub shell: Shell,
    /// Its name.
    pub name: String,
    /// The line it stands on.
    pub line_id: String,
    /// The line's name.
    pub line: String,
    /// `300 × 250 mm, 65 mm deep; least depth 10 mm`.
    pub inside: String,
    /// What the page is for.
    pub said: String,
    /// Where washed prints are tested: the last fixer's checks, below the room.
    pub tests: Option<String>,
}

/// A form with nothing but a button.
#[derive(Debug, Clone, Eq, PartialEq)]
pub struct Press {
    /// Idempotency key.
    pub key: String,
    /// What it is done to.
    pub to: &'static str,
}

/// Something that may be done: a link, or a button to press.
#[derive(Debug, Clone, Eq, PartialEq)]
pub struct Deed {
    /// What people read.
    pub label: String,
    /// Where it leads, below the room.
    pub path: String,
    /// Of a button to press.
    pub press: Option<Press>,
}

impl Deed {
    /// A link.
    #[must_use]
    pub fn to(label: &str, path: String) -> Self {
        Self {
            label: label.to_owned(),
            path,
            press: None,
        }
    }

    /// A button.
    #[must_use]
    pub fn pressed(label: &str, path: String, press: Press) -> Self {
        Self {
            press: Some(press),
            ..Self::to(label, path)
        }
    }
}

/// Deeds of one sort.
#[derive(Debug, Clone)]
pub struct Deeds {
    /// Which sort.
    pub title: String,
    /// The deeds.
    pub deeds: Vec<Deed>,
}

/// What is to be done next.
#[derive(Debug, Clone)]
pub struct Next {
    /// In a sentence.
    pub sentence: String,
    /// What leads there, the first first.
    pub deeds: Vec<Deed>,
}

impl Next {
    /// A sentence and what leads on.
    #[must_use]
    pub fn new(sentence: &str, deeds: Vec<Deed>) -> Self {
        Self {
            sentence: sentence.to_owned(),
            deeds,
        }
    }
}

/// A figure of the mix with its name.
#[derive(Debug, Clone)]
pub struct Fact {
    /// What it is.
    pub what: String,
    /// The figure.
    pub figure: String,
}

/// How long to develop.
#[derive(Debug, Clone)]
pub struct Development {
    /// The temperature as typed.
    pub typed: String,
    /// What is wrong with it.
    pub problems: Problems,
    /// `1 min 15 s at 21.5 °C`; none where none can be reckoned.
    pub time: Option<String>,
    /// Where the time comes from, or why there is none.
    pub said: String,
    /// Development by the factor, once the bath has slowed.
    pub by_factor: Option<String>,
}

/// What somebody found of the mix.
#[derive(Debug, Clone)]
pub struct Finding {
    /// Its entry's number.
    pub seq: i64,
    /// When.
    pub at: Moment,
    /// What.
    pub sentence: String,
    /// Was it taken back?
    pub is_undone: bool,
    /// Takes it back, below the room; nothing for whoever may not.
    pub take_back: Option<String>,
}

/// The mix in the tray with its figures.
#[derive(Debug, Clone)]
pub struct MixInTray {
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
    /// What else is known of it.
    pub facts: Vec<Fact>,
    /// A steward's extension while it lasts.
    pub extended: Option<String>,
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
