//! Pages that belong to no noun.

use askama::Template;
use serde::Deserialize;

use super::dates::Moment;
use super::fields::Problems;
use super::shell::Shell;

/// What went wrong, as the page says it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Trouble {
    /// 401: log in first.
    NotLoggedIn,
    /// 403: seen, but not allowed.
    NotAllowed,
    /// 404: nothing here for this reader.
    NotFound,
    /// 405: asked in a way that the address does not answer to.
    OtherMethod,
    /// 409: it changed meanwhile.
    Changed,
    /// 413: more than a form holds.
    TooLarge,
    /// 421: another address.
    WrongAddress,
    /// 422: sent twice with other content, or not readable.
    NotReadable,
    /// 429: too many tries.
    TooMany,
    /// 500: our fault.
    Broken,
    /// 503: not now.
    Busy,
}

impl Trouble {
    /// The status it is answered with.
    #[must_use]
    pub fn status(self) -> u16 {
        match self {
            Self::NotLoggedIn => 401,
            Self::NotAllowed => 403,
            Self::NotFound => 404,
            Self::OtherMethod => 405,
            Self::Changed => 409,
            Self::TooLarge => 413,
            Self::WrongAddress => 421,
            Self::NotReadable => 422,
            Self::TooMany => 429,
            Self::Broken => 500,
            Self::Busy => 503,
        }
    }
}

/// An error page, in the look of every other page.
#[derive(Debug, Clone, Template)]
#[template(path = "errors/error.html")]
pub struct ErrorPage {
    /// The frame.
    pub shell: Shell,
    /// What went wrong.
    pub trouble: Trouble,
    /// A sentence that says more, where there is one.
    pub sentence: Option<String>,
    /// To quote when asking for help.
    pub request_id: Option<String>,
    /// Seconds until a further try, where they are known.
    pub retry_after_s: Option<u64>,
}

/// What a phone shows where it reaches nobody and kept no copy.
#[derive(Debug, Clone, Template)]
#[template(path = "offline.html")]
pub struct OfflinePage {
    /// The frame.
    pub shell: Shell,
}

/// Said the first time a device chooses Safelight; the choice is made by then.
#[derive(Debug, Clone, Template)]
#[template(path = "safelight.html")]
pub struct SafelightPage {
    /// The frame, its display already Safelight.
    pub shell: Shell,
    /// A whole link to what the room has tested, where it was chosen on a page of a room.
    pub record: Option<String>,
}

/// Asks before something that cannot simply be taken back; the words come from the
/// message file. Posts `key` to `action`.
#[derive(Debug, Clone, Template)]
#[template(path = "confirm.html")]
pub struct ConfirmPage {
    /// The frame.
    pub shell: Shell,
    /// `End Mirea Dunst’s access?`
    pub question: String,
    /// What will happen, and how it can be reversed.
    pub consequence: String,
    /// The button, a verb: `End the access`.
    pub verb: String,
    /// Where the form goes: a whole link, made by `Shell::at`.
    pub action: String,
    /// Where *Keep it* leads: a whole link.
    pub back: String,
    /// Idempotency key.
    pub key: String,
}

/// Why something is taken back, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ReasonForm {
    /// Idempotency key.
    pub key: String,
    /// Why.
    pub reason: String,
}

/// What a page that takes something back says of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TakeBackWords {
    /// `Take a fog test back`.
    pub title: &'static str,
    /// `Take this test back?`
    pub question: &'static str,
    /// What holds then.
    pub consequence: &'static str,
}

/// Asks why something that was found is taken back, and keeps it in the book. Posts
/// [`ReasonForm`] to `action`.
#[derive(Debug, Clone, Template)]
#[template(path = "take_back.html")]
pub struct TakeBackPage {
    /// The frame.
    pub shell: Shell,
    /// What the page says.
    pub words: TakeBackWords,
    /// Where the form goes: a whole link, made by `Shell::at`.
    pub action: String,
    /// What it belongs to: a whole link.
    pub back: String,
    /// By name.
    pub back_name: String,
    /// What was found.
    pub found: String,
    /// When.
    pub at: Moment,
    /// Whether it was taken back before.
    pub is_undone: bool,
    /// As typed.
    pub form: ReasonForm,
    /// What to mend.
    pub problems: Problems,
}
