//! The pages of screens: what they show, and where a steward keeps them.

use askama::Template;
use serde::Deserialize;

use super::rows::WallLine;
use crate::arrivals::views::{AsksUntil, UntilForm, WhoIsHere};
use crate::web::dates::Moment;
use crate::web::drawing::VerdictWord;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A browser that nobody has paired: it shows a code, or can. Posts to
/// `/screen/code`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/code.html")]
pub struct CodePage {
    /// The frame, of no room.
    pub shell: Shell,
    /// The halves of the code, and for how many seconds it is good.
    pub code: Option<(String, String, i64)>,
}

/// The board on the wall: kept, and shown to whoever looks up.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/wall.html")]
pub struct WallPage {
    /// The frame, without person and places.
    pub shell: Shell,
    /// The room's IANA zone, for the script's clock.
    pub zone: String,
    /// When it was drawn.
    pub as_of: Moment,
    /// What everyone in the room should know, one sentence each.
    pub notices: Vec<String>,
    /// The lines in the room's order, row by row.
    pub rows: Vec<Vec<WallLine>>,
    /// Who is there.
    pub here: WhoIsHere,
}

impl WallPage {
    /// How the height of the wall is shared: by one, two or three rows; more are
    /// longer than the wall.
    fn share(&self) -> usize {
        self.rows.len().clamp(1, 4)
    }
}

/// How a tray is, at the door.
#[derive(Debug, Clone)]
pub struct TrayAtDoor {
    /// The line.
    pub line: String,
    /// The tray.
    pub name: String,
    /// Do prints wash in it?
    pub is_wash: bool,
    /// The verdict.
    pub word: VerdictWord,
}

/// The door's first page: kept, and the same for everyone.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/door.html")]
pub struct DoorPage {
    /// The frame, without person and places.
    pub shell: Shell,
    /// The room's IANA zone, for the script's clock.
    pub zone: String,
    /// How many places are taken.
    pub taken: usize,
    /// How many there are.
    pub places: usize,
    /// The trays.
    pub trays: Vec<TrayAtDoor>,
}

/// Number and PIN as typed; the PIN is never sent back to the page.
#[derive(Clone, Default, Deserialize)]
#[serde(default)]
pub struct DoorForm {
    /// Idempotency key.
    pub key: String,
    /// The member number.
    pub number: String,
    /// The PIN.
    pub pin: String,
    /// Until when, for who comes into an empty room.
    #[serde(flatten)]
    pub stay: UntilForm,
}

impl std::fmt::Debug for DoorForm {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("DoorForm").finish_non_exhaustive()
    }
}

/// Arriving or leaving at the door. Posts to `/screen/arrive` or `/screen/leave`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/come_or_go.html")]
pub struct ComeOrGoPage {
    /// The frame.
    pub shell: Shell,
    /// Is it for leaving?
    pub is_leaving: bool,
    /// As typed.
    pub form: DoorForm,
    /// What to mend.
    pub problems: Problems,
    /// Asks until when they stay who come into an empty room.
    pub asks: Option<AsksUntil>,
    /// The trays that stand open, for those who leave.
    pub open: Vec<String>,
}

/// Sheets as typed at the door.
#[derive(Clone, Default, Deserialize)]
#[serde(default)]
pub struct NoteAtDoorForm {
    /// Idempotency key.
    pub key: String,
    /// The member number.
    pub number: String,
    /// The PIN.
    pub pin: String,
    /// The line's id.
    pub line: String,
    /// The paper class's id.
    pub paper_class: String,
    /// The sheet size's id.
    pub sheet_size: String,
    /// How many sheets.
    pub sheets: String,
}

impl std::fmt::Debug for NoteAtDoorForm {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("NoteAtDoorForm").finish_non_exhaustive()
    }
}

/// Noting sheets at the door. Posts to `/screen/note`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/note.html")]
pub struct NoteAtDoorPage {
    /// The frame.
    pub shell: Shell,
    /// As typed.
    pub form: NoteAtDoorForm,
    /// What to mend.
    pub problems: Problems,
    /// The lines; with one the question is not asked.
    pub lines: Vec<Choice>,
    /// The paper classes.
    pub paper_classes: Vec<Choice>,
    /// The sheet sizes.
    pub sheet_sizes: Vec<Choice>,
}

/// Which tray is flagged.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/flag.html")]
pub struct FlagAtDoorPage {
    /// The frame.
    pub shell: Shell,
    /// The trays: id, and what people call each.
    pub trays: Vec<Choice>,
}

/// A flag as typed at the door: what came into a mix, or how much of what nobody
/// can name.
#[derive(Clone, Default, Deserialize)]
#[serde(default)]
pub struct FlagTrayForm {
    /// Idempotency key.
    pub key: String,
    /// The member number.
    pub number: String,
    /// The PIN.
    pub pin: String,
    /// What came into it, by group.
    pub groups: Vec<String>,
    /// `yes` where nobody can say.
    pub unknown: String,
    /// About how much of it there is, where nothing is recorded.
    pub volume: String,
    /// What was seen.
    pub remark: String,
}

impl std::fmt::Debug for FlagTrayForm {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("FlagTrayForm").finish_non_exhaustive()
    }
}

/// Flagging one tray at the door. Posts to `/screen/flag/{tray}`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/flag_tray.html")]
pub struct FlagTrayPage {
    /// The frame.
    pub shell: Shell,
    /// The tray's id.
    pub id: String,
    /// The line and the tray.
    pub tray: String,
    /// What stands in it; nothing where nothing is recorded.
    pub mix: Option<String>,
    /// As typed.
    pub form: FlagTrayForm,
    /// What to mend.
    pub problems: Problems,
    /// What may have come into it.
    pub groups: Vec<Choice>,
}

/// What was done at the door; it names nobody.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/done.html")]
pub struct DonePage {
    /// The frame.
    pub shell: Shell,
    /// What was done.
    pub said: &'static str,
    /// What to mind now.
    pub advice: Vec<String>,
}

/// A screen in the steward's list.
#[derive(Debug, Clone)]
pub struct ScreenRow {
    /// Its id, for links.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Is it a door?
    pub is_door: bool,
    /// When it was paired, and by whom.
    pub paired: String,
    /// When it was last seen.
    pub last_seen: String,
}

/// A screen to pair, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PairForm {
    /// Idempotency key.
    pub key: String,
    /// The code that it shows.
    pub code: String,
    /// `board` or `door`.
    pub kind: String,
    /// Its name.
    pub name: String,
    /// The display it begins with.
    pub display: String,
}

/// The room's screens, and the form to pair one. Posts to `/screens`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/screens.html")]
pub struct ScreensPage {
    /// The frame.
    pub shell: Shell,
    /// The screens by name.
    pub screens: Vec<ScreenRow>,
    /// The address to open on a screen.
    pub address: String,
    /// As typed.
    pub form: PairForm,
    /// What to mend.
    pub problems: Problems,
}

/// A screen's new name, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct NameForm {
    /// Idempotency key.
    pub key: String,
    /// The name.
    pub name: String,
}

/// One screen. Posts to `/screens/{id}`; `GET /screens/{id}/end` asks first.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/screen.html")]
pub struct ScreenPage {
    /// The frame.
    pub shell: Shell,
    /// The screen.
    pub screen: ScreenRow,
    /// Is it paired still?
    pub is_paired: bool,
    /// As typed, or the name it has.
    pub form: NameForm,
    /// What to mend.
    pub problems: Problems,
}

/// A PIN as typed.
#[derive(Clone, Default, Deserialize)]
#[serde(default)]
pub struct PinForm {
    /// Idempotency key.
    pub key: String,
    /// The PIN.
    pub pin: String,
    /// The password now.
    pub current_password: String,
}

impl std::fmt::Debug for PinForm {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("PinForm").finish_non_exhaustive()
    }
}

/// One's own number and PIN. Posts to `/pin` and `/pin/remove`.
#[derive(Debug, Clone, Template)]
#[template(path = "screens/pin.html")]
pub struct PinPage {
    /// The frame.
    pub shell: Shell,
    /// The member number.
    pub number: i32,
    /// Since when there is a PIN.
    pub set: Option<Moment>,
    /// Idempotency key.
    pub key: String,
    /// What to mend.
    pub problems: Problems,
}
