//! A label, and the page that shows it before it is printed.

use askama::Template;
use askama::filters::HtmlSafe;

use super::{QrCode, Signal};
use crate::web::dates::Moment;
use crate::web::shell::Shell;

/// The paper a label is printed on; sizes in millimetres stand in `static/print.css`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    /// A label printer's tape, 62 mm wide.
    Strip,
    /// 74 × 105 mm.
    A7,
    /// 105 × 148 mm.
    A6,
    /// 148 × 210 mm.
    A5,
}

impl Size {
    /// Every size, smallest first.
    pub const ALL: [Self; 4] = [Self::Strip, Self::A7, Self::A6, Self::A5];

    /// The size as the address and the style sheets name it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Strip => "strip",
            Self::A7 => "a7",
            Self::A6 => "a6",
            Self::A5 => "a5",
        }
    }

    /// Reads what [`Size::name`] writes.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|size| size.name() == name)
    }

    /// Is there room for the texts of so many hazard codes?
    #[must_use]
    pub fn has_room_for(self, texts: usize) -> bool {
        match self {
            Self::Strip | Self::A7 => false,
            Self::A6 => texts <= 3,
            Self::A5 => texts <= 7,
        }
    }
}

/// A hazard of the product as supplied.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Hazard {
    /// `H317`.
    pub code: String,
    /// Its text; empty where the label is too small for it.
    pub text: String,
}

/// A label.
#[derive(Debug, Clone, Template)]
#[template(path = "labels/label.html")]
pub struct Label {
    /// Its size.
    pub size: Size,
    /// Is there much to say, so that it is set smaller?
    pub is_dense: bool,
    /// The room.
    pub room: String,
    /// Is it a room of invented people?
    pub is_demo: bool,
    /// What it is stuck to: the tray or the bottle.
    pub vessel: String,
    /// Where that stands; may be empty.
    pub place: String,
    /// The product.
    pub product: String,
    /// `1+9`; none for liquid that nobody can name.
    pub dilution: Option<String>,
    /// `1 L`.
    pub volume: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// By whom; none where that is not told.
    pub mixed_by: Option<String>,
    /// Until when it keeps as it stands; none where nobody knows.
    pub use_by: Option<Moment>,
    /// The signal word of the product as supplied.
    pub signal: Signal,
    /// Its hazards as supplied; empty where none are on file.
    pub hazards: Vec<Hazard>,
    /// Leads to the vessel's page.
    pub code: QrCode,
}

impl HtmlSafe for Label {}

/// A label before it is printed.
#[derive(Debug, Clone, Template)]
#[template(path = "labels/page.html")]
pub struct LabelPage {
    /// The frame.
    pub shell: Shell,
    /// The page of what it is stuck to: a whole link.
    pub back: String,
    /// This page without its size: a whole link.
    pub here: String,
    /// May it be used as the board judges it now?
    pub is_replace: bool,
    /// The label.
    pub label: Label,
}

/// The sheet that hangs at the door.
#[derive(Debug, Clone, Template)]
#[template(path = "labels/door_sheet.html")]
pub struct DoorSheetPage {
    /// The frame.
    pub shell: Shell,
    /// The room's name.
    pub room: String,
    /// The whole address of the page to arrive.
    pub leads_to: String,
    /// The same as a code.
    pub code: QrCode,
}
