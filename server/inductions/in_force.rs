//! Everybody's standing in every topic on a day: what the overview, the notices and the
//! supplements are made from.

use uuid::Uuid;

use super::gate::{active, must_know};
use super::standing::Standing;
use super::store::{self, Held};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::members::Member;
use crate::topics::{self, Topic};
use crate::web::days;

/// So many days before the end people are told.
pub(super) const AHEAD_DAYS: i32 = 30;

/// Everybody who may enter, every topic in use, and who holds what.
#[derive(Debug)]
pub(super) struct InForce {
    /// The day it is true of, as `2026-11-26`.
    pub(super) today: String,
    /// The last day of which people are told now.
    pub(super) ahead: String,
    /// Everybody who may enter, by number.
    pub(super) members: Vec<Member>,
    /// The topics in use, by title.
    pub(super) topics: Vec<Topic>,
    /// The ids of those that are asked for now.
    pub(super) required: Vec<Uuid>,
    held: Vec<Held>,
}

impl InForce {
    /// Reads it.
    pub(super) async fn read(tx: &mut RoomTx, today: &str) -> Result<Self> {
        let mut topics = topics::topics(tx).await?;
        topics.retain(|topic| !topic.is_retired);
        let required = must_know(tx).await?;
        Ok(Self {
            today: today.to_owned(),
            ahead: days::later(today, AHEAD_DAYS).map_err(Error::fault)?,
            members: active(tx).await?,
            topics,
            required: required.iter().map(|topic| topic.id).collect(),
            held: store::held(tx, None).await?,
        })
    }

    /// A person's standing in every topic in use.
    pub(super) fn of(&self, person: Uuid) -> Vec<(&Topic, Standing)> {
        let held: Vec<&Held> = self
            .held
            .iter()
            .filter(|each| each.person_id == person)
            .collect();
        let standing = |topic| {
            (
                topic,
                Standing::of(topic, held.iter().copied(), &self.today),
            )
        };
        self.topics.iter().map(standing).collect()
    }

    /// Whether a topic is asked for now.
    pub(super) fn is_required(&self, topic: &Topic) -> bool {
        self.required.contains(&topic.id)
    }

    /// The last day of what ends soon.
    pub(super) fn ends_soon<'s>(&self, standing: &'s Standing) -> Option<&'s str> {
        match standing {
            Standing::Until(last) if last.as_str() <= self.ahead.as_str() => Some(last),
            _ => None,
        }
    }
}
