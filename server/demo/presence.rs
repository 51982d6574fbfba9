//! Who is in the demo's room: everyone comes in and leaves here, on every evening.

use time::Duration;

use super::people::{OTTILIE, Who};
use super::stage::Stage;
use crate::arrivals::actions::{NewStay, NewSupervised, arrive, leave, stay, supervise};
use crate::arrivals::{over_at, present};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::notices::mark_read;
use crate::problem::Problem;
use crate::rooms;

/// The most people in the room at once, as its settings say.
pub(super) const PEOPLE: usize = 14;

/// The longest that somebody alone says they stay.
const LONGEST: Duration = Duration::hours(3);

/// Those inside.
#[derive(Debug, Default)]
pub(super) struct Inside(Vec<Who>);

impl Inside {
    /// Whether somebody is inside.
    pub(super) fn has(&self, who: Who) -> bool {
        self.0.contains(&who)
    }

    /// Somebody comes in, unless the room is full, and reads what there is to know. Who is
    /// not inducted is refused, and let in under a steward's eyes.
    pub(super) async fn comes(&mut self, stage: &mut Stage, who: Who) -> Result<()> {
        if self.has(who) || self.0.len() >= PEOPLE {
            return Ok(());
        }
        self.0.push(who);
        let until_us = until(stage).await?;
        match stage.act(who, arrive, until_us).await {
            Ok(_) => {}
            Err(Error::Refused(Problem::NotInducted { .. })) => {
                let new = NewSupervised {
                    person_id: stage.id(who),
                    until_us,
                };
                stage.act(OTTILIE, supervise, new).await?;
            }
            Err(cause) => return Err(cause),
        }
        mark_read(&stage.app, &stage.permit(who).await?).await
    }

    /// Somebody who came alone says that they stay longer.
    pub(super) async fn stays(&self, stage: &mut Stage, who: Who) -> Result<()> {
        let now = stage.now();
        let present = stage.reads(move |tx| Box::pin(present(tx, now))).await?;
        let mine = present.iter().find(|each| each.person_id == stage.id(who));
        // Who stayed past closing was taken for gone by then.
        let Some(mine) = mine else { return Ok(()) };
        let new = NewStay {
            presence_id: Some(mine.id),
            until_us: micros(mine.over_at.min(now + LONGEST)),
        };
        stage.act(who, stay, new).await.map(drop)
    }

    /// Somebody leaves; who is no member any more is let out without a word.
    pub(super) async fn goes(&mut self, stage: &mut Stage, who: Who) -> Result<()> {
        let was_inside = self.has(who);
        self.0.retain(|each| *each != who);
        if was_inside && stage.of(who).role.is_some() {
            let left = stage.act(who, leave, None).await;
            // Who stayed past closing was taken for gone by then.
            return match left {
                Ok(_) | Err(Error::Refused(Problem::NotHere)) => Ok(()),
                Err(cause) => Err(cause),
            };
        }
        Ok(())
    }
}

/// Whoever comes into an empty room says until when they stay.
async fn until(stage: &Stage) -> Result<Option<i64>> {
    let now = stage.now();
    let present = stage.reads(move |tx| Box::pin(present(tx, now))).await?;
    if !present.is_empty() {
        return Ok(None);
    }
    let settings = stage.reads(|tx| Box::pin(rooms::settings(tx))).await?;
    Ok(Some(micros(over_at(&settings, now)?.min(now + LONGEST))))
}
