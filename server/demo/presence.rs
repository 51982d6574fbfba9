//! Who is in the demo's room: everyone comes in and leaves here, on every evening.

use super::people::{OTTILIE, Who};
use super::stage::Stage;
use crate::app::App;
use crate::arrivals::actions::{arrive, leave, supervise};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::notices::mark_read;
use crate::problem::Problem;
use crate::rights::Arrive;

/// The most people in the room at once, as its settings say.
pub(super) const PEOPLE: usize = 14;

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
        let arrives =
            async |app: &App, permit: &Permit<Arrive>, key, ()| arrive(app, permit, key).await;
        match stage.act(who, arrives, ()).await {
            Ok(_) => {}
            Err(Error::Refused(Problem::NotInducted { .. })) => {
                let person = stage.id(who);
                stage.act(OTTILIE, supervise, person).await?;
            }
            Err(cause) => return Err(cause),
        }
        mark_read(&stage.app, &stage.permit(who).await?).await
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
