//! Entries about incidents: whose, which, and no more.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

fn about(person: Uuid, incident: Uuid) -> Vec<About> {
    vec![
        About::new("person", person),
        About::new("incident", incident),
    ]
}

/// Something happened to somebody. What it was lies beside the entry.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct IncidentReported {
    /// Which.
    pub incident_id: Uuid,
    /// Its number in the room.
    pub number: i64,
    /// To whom.
    pub person_id: Uuid,
    /// The salted SHA-256 of what lies beside the entry.
    pub beside_sha256: String,
}

impl Entry for IncidentReported {
    const KIND: &'static str = "incident_reported";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.person_id, self.incident_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert(tx, each).await?;
        }
        Ok(())
    }
}

/// A steward opened somebody's incident.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct IncidentLookedAt {
    /// Which.
    pub incident_id: Uuid,
    /// Whose.
    pub person_id: Uuid,
}

impl Entry for IncidentLookedAt {
    const KIND: &'static str = "incident_looked_at";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.person_id, self.incident_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert_look(tx, each).await?;
        }
        Ok(())
    }
}

/// What followed from it is done.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct IncidentFinished {
    /// Which.
    pub incident_id: Uuid,
    /// Whose.
    pub person_id: Uuid,
}

impl Entry for IncidentFinished {
    const KIND: &'static str = "incident_finished";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.person_id, self.incident_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::finish(tx, each.entry.incident_id, each.seq).await?;
        }
        Ok(())
    }
}

/// What lay beside it was erased, salt and all.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct IncidentErased {
    /// Which.
    pub incident_id: Uuid,
    /// Whose.
    pub person_id: Uuid,
    /// The number of the entry that it lay beside.
    pub erases_beside_seq: i64,
}

impl Entry for IncidentErased {
    const KIND: &'static str = "incident_erased";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.person_id, self.incident_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::erase(tx, each.entry.incident_id, each.seq).await?;
        }
        Ok(())
    }
}
