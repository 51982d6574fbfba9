//! Spaces set up by a steward.

use askama::Template;
use serde::Deserialize;
use uuid::Uuid;

use super::Space;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::messages::lines::NO_SPACE;
use crate::web::shell::Shell;

/// A space on its list.
#[derive(Debug, Clone)]
pub struct SpaceRow {
    /// Its id, for `/bench/spaces/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The lines in it, by name; may be empty.
    pub lines: String,
}

/// A space as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct SpaceForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
}

/// The spaces. A new one posts to `/bench/spaces`.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/spaces.html")]
pub struct SpacesPage {
    /// The frame.
    pub shell: Shell,
    /// Those in use.
    pub spaces: Vec<SpaceRow>,
    /// Those that are not.
    pub retired: Vec<RetiredRow>,
    /// As typed.
    pub form: SpaceForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader change them?
    pub may_change: bool,
}

/// One space: posts to `/bench/spaces/{id}`; `/bench/spaces/{id}/retire` asks first.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/space.html")]
pub struct SpacePage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// As typed.
    pub form: SpaceForm,
    /// What to mend.
    pub problems: Problems,
}

/// What something may be put in: nothing where the room is one space. Where it is now,
/// `there`, is offered whether it is used or not.
#[must_use]
pub fn choices(spaces: &[Space], there: Option<Uuid>) -> Vec<Choice> {
    let offered = spaces.iter();
    let offered = offered.filter(|space| !space.is_retired || Some(space.id) == there);
    let mut choices: Vec<Choice> = offered
        .map(|space| Choice::new(space.id.to_string(), space.name.clone()))
        .collect();
    if !choices.is_empty() {
        choices.insert(0, Choice::new("", NO_SPACE));
    }
    choices
}
