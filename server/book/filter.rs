//! What of the book somebody asks for, and what of it they may see.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::kinds::KINDS;
use crate::logbook::SeenBy;
use crate::rights::{ReadBook, Role};

/// Which entries are asked for; each part that is given narrows it.
#[derive(Clone, Debug, Default, Eq, PartialEq)]
pub struct Filter {
    /// Of this kind.
    pub kind: Option<String>,
    /// About things of this sort.
    pub noun: Option<String>,
    /// About this one.
    pub id: Option<Uuid>,
    /// Written by or about this person.
    pub person: Option<Uuid>,
    /// Happened then or later.
    pub happened_from: Option<OffsetDateTime>,
    /// Happened before.
    pub happened_before: Option<OffsetDateTime>,
    /// Recorded then or later.
    pub recorded_from: Option<OffsetDateTime>,
    /// Recorded before.
    pub recorded_before: Option<OffsetDateTime>,
}

impl Filter {
    /// Whether it asks about what entries say. One that is not shown then does
    /// not appear either: that it matched would say something about it. By the
    /// time of recording its neighbours tell as much.
    #[must_use]
    pub fn asks_about_content(&self) -> bool {
        self.kind.is_some()
            || self.noun.is_some()
            || self.id.is_some()
            || self.person.is_some()
            || self.happened_from.is_some()
            || self.happened_before.is_some()
    }
}

/// Somebody who reads the book, and what is shown to them.
#[derive(Clone, Debug)]
pub struct Reader {
    /// Who.
    pub person: Uuid,
    /// Whether every kind is shown, known or not.
    pub sees_all: bool,
    /// Kinds shown whoever they are about.
    pub open: Vec<String>,
    /// Kinds shown where they are about the reader.
    pub own: Vec<String>,
}

impl Reader {
    /// The holder of a permit.
    #[must_use]
    pub fn of(permit: &Permit<ReadBook>) -> Self {
        Self::new(permit.person().id, permit.role())
    }

    /// A person in a role.
    #[must_use]
    pub fn new(person: Uuid, role: Role) -> Self {
        let (mut open, mut own) = (Vec::new(), Vec::new());
        for kind in KINDS {
            let shown = match (kind.seen_by, role) {
                (_, Role::Steward)
                | (SeenBy::Everyone, _)
                | (SeenBy::TreasurerAndStewards, Role::Treasurer) => Some(&mut open),
                (SeenBy::SubjectAndStewards, _) => Some(&mut own),
                (SeenBy::TreasurerAndStewards, _) => None,
            };
            if let Some(list) = shown {
                list.push(kind.name.to_owned());
            }
        }
        Self {
            person,
            sees_all: role == Role::Steward,
            open,
            own,
        }
    }

    /// Refuses to look for somebody else: only stewards do.
    ///
    /// # Errors
    /// [`Error::Forbidden`].
    pub fn check(&self, filter: &Filter) -> Result<()> {
        let for_other = |person: Option<Uuid>| person.is_some_and(|person| person != self.person);
        // An id of no named sort may be a person's.
        let may_be_person = filter.noun.as_deref().is_none_or(|noun| noun == "person");
        if self.sees_all || !(for_other(filter.person) || may_be_person && for_other(filter.id)) {
            Ok(())
        } else {
            Err(Error::Forbidden)
        }
    }

    /// The kinds this reader may ask for.
    #[must_use]
    pub fn kinds(&self) -> Vec<&str> {
        let both = self.open.iter().chain(&self.own);
        both.map(String::as_str).collect()
    }
}
