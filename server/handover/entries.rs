//! Entries about handing a room over. Shown to the two it is between, and to
//! stewards.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A part of the list: what it is about, and what there is of it.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
pub struct Part {
    /// What it is about.
    pub heading: String,
    /// One thing each; none where there is nothing of it.
    pub lines: Vec<String>,
}

fn between(handover: Uuid, from: Uuid, to: Uuid) -> Vec<About> {
    vec![
        About::new("handover", handover),
        About::new("person", from),
        About::new("person", to),
    ]
}

/// A steward hands the room over, and says what is open in it.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct HandoverOpened {
    /// Which handover.
    pub handover_id: Uuid,
    /// Who hands over.
    pub from_person_id: Uuid,
    /// Who is to take over.
    pub to_person_id: Uuid,
    /// What is open in the room, as both are shown it.
    pub parts: Vec<Part>,
}

impl Entry for HandoverOpened {
    const KIND: &'static str = "handover_opened";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        between(self.handover_id, self.from_person_id, self.to_person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::open(tx, each).await?;
        }
        Ok(())
    }
}

/// The one who takes over has seen the list and confirms it.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct HandedOver {
    /// Which handover.
    pub handover_id: Uuid,
    /// Who handed over.
    pub from_person_id: Uuid,
    /// Who took over.
    pub to_person_id: Uuid,
    /// SHA-256 of the list that was confirmed, as the entry that opened the
    /// handover has it.
    pub parts_sha256: String,
}

impl Entry for HandedOver {
    const KIND: &'static str = "handed_over";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        between(self.handover_id, self.from_person_id, self.to_person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::confirm(tx, each).await?;
        }
        Ok(())
    }
}

/// A handover was taken back before it was confirmed.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct HandoverWithdrawn {
    /// Which handover.
    pub handover_id: Uuid,
    /// Who wanted to hand over.
    pub from_person_id: Uuid,
    /// Who was to take over.
    pub to_person_id: Uuid,
}

impl Entry for HandoverWithdrawn {
    const KIND: &'static str = "handover_withdrawn";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        between(self.handover_id, self.from_person_id, self.to_person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::withdraw(tx, each).await?;
        }
        Ok(())
    }
}
