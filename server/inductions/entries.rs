//! Entries about inductions: shown to the person and to stewards.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// What a record stands on.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// A steward inducted the person; who must confirm it.
    Given,
    /// A signed paper from before, entered later: confirmed on paper.
    OnPaper,
    /// The only steward of the room declared it of themself.
    SelfDeclared,
}

impl Basis {
    /// Every basis.
    pub const ALL: [Self; 3] = [Self::Given, Self::OnPaper, Self::SelfDeclared];

    /// As the database and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Given => "given",
            Self::OnPaper => "on_paper",
            Self::SelfDeclared => "self_declared",
        }
    }

    /// Reads what [`Basis::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }

    /// The means by which it is confirmed as it is written, where it is.
    pub(super) const fn confirms(self) -> Option<Means> {
        match self {
            Self::Given => None,
            Self::OnPaper => Some(Means::Paper),
            Self::SelfDeclared => Some(Means::Oneself),
        }
    }
}

/// By what the inducted person confirmed.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Means {
    /// From their own account.
    OwnAccount,
    /// By number and PIN, beside a steward.
    NumberAndPin,
    /// On the paper that the record was entered from.
    Paper,
    /// As the one who declared it.
    Oneself,
}

impl Means {
    /// Every means.
    pub const ALL: [Self; 4] = [
        Self::OwnAccount,
        Self::NumberAndPin,
        Self::Paper,
        Self::Oneself,
    ];

    /// As the database and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::OwnAccount => "own_account",
            Self::NumberAndPin => "number_and_pin",
            Self::Paper => "paper",
            Self::Oneself => "oneself",
        }
    }

    /// Reads what [`Means::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }
}

/// A topic that an induction covers.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
pub struct Covered {
    /// Which.
    pub topic_id: Uuid,
    /// In which version of its text.
    pub version: i32,
    /// The last day it holds, as `2028-11-26`; nothing for one without end.
    #[schema(format = Date)]
    pub good_until: Option<String>,
}

/// Somebody was inducted. Who wrote it inducted them.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Inducted {
    /// Which record.
    pub induction_id: Uuid,
    /// Who was told.
    pub person_id: Uuid,
    /// What, in which version.
    pub topics: Vec<Covered>,
    /// What the record stands on.
    pub basis: Basis,
    /// The day it was given, as `2026-11-26`.
    pub given_on: String,
    /// Where the paper lies, or anything else; may be empty.
    pub remark: String,
    /// The record it renews.
    pub renews_id: Option<Uuid>,
}

impl Entry for Inducted {
    const KIND: &'static str = "inducted";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        let topics = self.topics.iter();
        let topics = topics.map(|covered| About::new("topic", covered.topic_id));
        of(self.induction_id, self.person_id)
            .into_iter()
            .chain(topics)
            .collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert(tx, each).await?;
        }
        Ok(())
    }
}

fn of(induction: Uuid, person: Uuid) -> Vec<About> {
    vec![
        About::new("induction", induction),
        About::new("person", person),
    ]
}

/// The person confirmed what a steward recorded.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct InductionConfirmed {
    /// Which record.
    pub induction_id: Uuid,
    /// The number of its entry.
    pub induction_seq: i64,
    /// Who confirmed.
    pub person_id: Uuid,
    /// By what.
    pub means: Means,
}

impl Entry for InductionConfirmed {
    const KIND: &'static str = "induction_confirmed";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        of(self.induction_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::confirm(tx, each).await?;
        }
        Ok(())
    }
}

/// A record counts no more.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct InductionWithdrawn {
    /// Which.
    pub induction_id: Uuid,
    /// The number of its entry.
    pub induction_seq: i64,
    /// Whose it is.
    pub person_id: Uuid,
    /// Why.
    pub reason: String,
}

impl Entry for InductionWithdrawn {
    const KIND: &'static str = "induction_withdrawn";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        of(self.induction_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::withdraw(tx, each).await?;
        }
        Ok(())
    }
}
