//! The demo's incidents: one that is open, one that a steward dealt with, one that was
//! erased. What happened is invented.

use uuid::Uuid;

use super::people::{DAGNY, OTTILIE, TOMAS, Who};
use super::stage::Stage;
use crate::clock::micros;
use crate::error::Result;
use crate::incidents::actions::{NewIncident, erase, finish, open, report};
use crate::incidents::{BodyPart, Details, FirstDeed, What};

/// A few weeks before now: one is dealt with, one is erased.
pub(super) async fn earlier(stage: &mut Stage) -> Result<()> {
    let spill = happens(
        stage,
        TOMAS,
        What::Spill,
        "A full tray tipped while it was carried.",
    )
    .await?;
    stage.act(OTTILIE, open, spill).await?;
    stage.act(OTTILIE, finish, spill).await?;
    let eye = happens(
        stage,
        DAGNY,
        What::EyeSplash,
        "A splash of stop bath; it burnt for an hour.",
    )
    .await?;
    stage.act(DAGNY, erase, eye).await?;
    Ok(())
}

/// Tonight: nobody has looked at it yet.
pub(super) async fn tonight(stage: &mut Stage) -> Result<()> {
    let words = "Developer ran into the glove. A red patch on the thumb, gone by the morning.";
    happens(stage, DAGNY, What::SkinContact, words).await?;
    Ok(())
}

async fn happens(stage: &mut Stage, who: Who, what: What, words: &str) -> Result<Uuid> {
    let is_wet = what.wants_water();
    let new = NewIncident {
        person_id: stage.id(who),
        details: Details {
            what,
            happened_at_us: micros(stage.now()),
            line_id: None,
            product_id: None,
            part: (what == What::SkinContact).then_some(BodyPart::Hands),
            first: is_wet.then_some(FirstDeed::LongFlush).into_iter().collect(),
            words: words.to_owned(),
        },
    };
    stage.act(who, report, new).await?.id("incident")
}
