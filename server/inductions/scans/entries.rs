//! Entries about scans: shown to the person and to stewards.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{Media, store};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// The paper of a record was scanned. The file lies beside the entry.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct InductionScanned {
    /// Which scan.
    pub scan_id: Uuid,
    /// The record.
    pub induction_id: Uuid,
    /// Whose record.
    pub person_id: Uuid,
    /// What the file is.
    pub media: Media,
    /// How large.
    pub bytes: i64,
    /// The salted SHA-256 of the file.
    pub beside_sha256: String,
}

impl Entry for InductionScanned {
    const KIND: &'static str = "induction_scanned";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.scan_id, self.induction_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert(tx, each).await?;
        }
        Ok(())
    }
}

fn about(scan: Uuid, induction: Uuid, person: Uuid) -> Vec<About> {
    vec![
        About::new("scan", scan),
        About::new("induction", induction),
        About::new("person", person),
    ]
}

/// A scan was erased.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct InductionScanRemoved {
    /// Which scan.
    pub scan_id: Uuid,
    /// The record it belonged to.
    pub induction_id: Uuid,
    /// Whose record.
    pub person_id: Uuid,
    /// The number of the entry that the file lay beside.
    pub erases_beside_seq: i64,
}

impl Entry for InductionScanRemoved {
    const KIND: &'static str = "induction_scan_removed";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        about(self.scan_id, self.induction_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::remove(tx, each).await?;
        }
        Ok(())
    }
}
