//! Entries about who is in the room. Who came and went is shown to the person and
//! to stewards; who is there now stands on the board.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::clock::moment;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

fn of(presence: Uuid, person: Uuid) -> Vec<About> {
    vec![
        About::new("presence", presence),
        About::new("person", person),
    ]
}

/// When somebody is expected to leave.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Expected {
    /// The moment, in microseconds since 1970.
    pub at_us: i64,
    /// By the clock of the room, as `21:30`.
    pub clock: String,
}

/// Somebody came in.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Arrived {
    /// This time of being there.
    pub presence_id: Uuid,
    /// Who.
    pub person_id: Uuid,
    /// The room's own date then.
    pub local_date: String,
    /// When they are taken for gone if they do not say so, in microseconds since
    /// 1970.
    pub over_at_us: i64,
    /// The steward who answers for them, where they are not inducted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub supervisor_id: Option<Uuid>,
    /// Until when they stay, where they came in alone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub expected: Option<Expected>,
}

impl Entry for Arrived {
    const KIND: &'static str = "arrived";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        let supervisor = self.supervisor_id.map(|id| About::new("person", id));
        of(self.presence_id, self.person_id)
            .into_iter()
            .chain(supervisor)
            .collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::begin(tx, each).await?;
        }
        Ok(())
    }
}

/// They said until when they stay, or that they stay longer.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct LeavingExpected {
    /// Which time of being there.
    pub presence_id: Uuid,
    /// Who.
    pub person_id: Uuid,
    /// Until when.
    pub expected: Expected,
}

impl Entry for LeavingExpected {
    const KIND: &'static str = "leaving_expected";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        of(self.presence_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let at = moment(each.entry.expected.at_us);
            store::expect(tx, each.entry.presence_id, at).await?;
        }
        Ok(())
    }
}

/// They left, and said so.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Left {
    /// Which time of being there.
    pub presence_id: Uuid,
    /// Who.
    pub person_id: Uuid,
}

impl Entry for Left {
    const KIND: &'static str = "left";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        of(self.presence_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let end = (each.happened_at, each.seq);
            store::end(tx, each.entry.presence_id, end, true).await?;
        }
        Ok(())
    }
}

/// They did not say that they left: a steward ended it, or nobody did and it ran
/// out. Written by nobody, it happened when it ran out.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct NotConfirmedLeft {
    /// Which time of being there.
    pub presence_id: Uuid,
    /// Who.
    pub person_id: Uuid,
    /// The room's own date when it ended.
    pub local_date: String,
}

impl Entry for NotConfirmedLeft {
    const KIND: &'static str = "not_confirmed_left";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        of(self.presence_id, self.person_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let end = (each.happened_at, each.seq);
            store::end(tx, each.entry.presence_id, end, false).await?;
        }
        Ok(())
    }
}
