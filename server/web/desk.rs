//! What the pages of the steward's desk share: a question before something is
//! retired, the list of what is retired, and the names of fields.

use axum::response::Response;
use serde::Deserialize;

use super::forms::{new_key, page};
use super::shell::Shell;
use super::views::ConfirmPage;
use crate::error::Result;
use crate::problem::Problems;

/// A form that holds nothing but its key.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(default)]
pub struct KeyForm {
    /// Idempotency key.
    pub key: String,
}

/// Something retired, and where to bring it back.
#[derive(Clone, Debug)]
pub struct RetiredRow {
    /// Its name.
    pub name: String,
    /// Below the room: a form with a key posts there.
    pub restore: String,
}

/// What is asked before something is done.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Question {
    /// The question itself.
    pub question: String,
    /// What will happen, and how it can be reversed.
    pub consequence: String,
    /// The button.
    pub verb: String,
}

/// Asks; both paths are below the room.
///
/// # Errors
/// A machine without randomness; a fault of the template.
pub fn ask(shell: Shell, asked: Question, action: &str, back: &str) -> Result<Response> {
    page(&ConfirmPage {
        action: shell.at(action),
        back: shell.at(back),
        shell,
        question: asked.question,
        consequence: asked.consequence,
        verb: asked.verb,
        key: new_key()?,
    })
}

/// The shell of a form's page, which lies below the room at `path` however it
/// was reached: there the display switcher returns to.
#[must_use]
pub fn lying_at(mut shell: Shell, path: &str) -> Shell {
    if let Some(room) = &shell.room {
        shell.here = format!("/rooms/{}{path}", room.slug);
    }
    shell
}

/// The problems under the names that the form's fields have.
#[must_use]
pub fn renamed(problems: &Problems, names: &[(&str, &str)]) -> Problems {
    let mut renamed = Problems::default();
    for (field, problem) in problems.iter() {
        let name = names.iter().find(|(from, _)| *from == field);
        renamed.add(name.map_or(field, |(_, to)| *to), problem.clone());
    }
    renamed
}
