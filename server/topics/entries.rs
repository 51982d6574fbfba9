//! The entry about topics.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::Trait;
use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// Of whom a topic is required.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Required {
    /// Of everyone who comes in.
    Always,
    /// While something with one of these traits is in a tray or stands there.
    ByTrait(Vec<Trait>),
    /// While one of these products is in a tray.
    ByProduct(Vec<Uuid>),
    /// Of nobody: it is there to be asked for.
    Offered,
}

impl Required {
    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(&self) -> &'static str {
        match self {
            Self::Always => "always",
            Self::ByTrait(_) => "by_trait",
            Self::ByProduct(_) => "by_product",
            Self::Offered => "offered",
        }
    }
}

/// A topic as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct TopicSet {
    /// Which.
    pub id: Uuid,
    /// Counts the changes of its text.
    pub version: i32,
    /// Inductions on an earlier version count no more.
    pub counts_from_version: i32,
    /// What it is about.
    pub title: String,
    /// What is to be known: paragraphs, with empty lines between them.
    pub body: String,
    /// Of whom it is required.
    pub required: Required,
    /// So many months an induction on it is good; nothing for one without end.
    pub good_months: Option<i32>,
    /// Whether nobody is inducted on it any more.
    pub is_retired: bool,
}

impl Entry for TopicSet {
    const KIND: &'static str = "topic_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("topic", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_topic(tx, each).await?;
        }
        Ok(())
    }
}
