//! What the stewards of the demo settle: the room's figures, and who keeps it.

use time::Duration;

use super::calendar;
use super::people::{CASIMIR, OTTILIE};
use super::presence::PEOPLE;
use super::stage::Stage;
use crate::error::Result;
use crate::handover::actions::{NewHandover, confirm, open, withdraw};
use crate::rooms;
use crate::rooms::actions::change_settings;
use crate::rooms::{Emergency, Settings};

/// Settings of the invented room; the numbers to call are no numbers.
pub(super) fn starting() -> Settings {
    Settings {
        hours: calendar::hours(),
        people_limit: i32::try_from(PEOPLE).unwrap_or(i32::MAX),
        guest_days: 10,
        emergency: Emergency {
            number: "Demo: write your own emergency number here".to_owned(),
            poison_centre: "Demo: write your poison centre here".to_owned(),
            address: "Larchfold Cellar, an invented place".to_owned(),
            contacts: "Ottilie Brandvik, steward of this demo".to_owned(),
            eyewash: "On the wall left of the sink".to_owned(),
            data_sheets: "In the red folder by the door".to_owned(),
        },
        ..Settings::starting(
            "Larchfold Cellar".to_owned(),
            calendar::ZONE.to_owned(),
            "EUR".to_owned(),
        )
    }
}

/// The steward enters what a developer's alkali and a roll's silver come to.
pub(super) async fn settings(stage: &mut Stage) -> Result<()> {
    let now = stage.reads(|tx| Box::pin(rooms::settings(tx))).await?;
    let new = Settings {
        alkali_meq_per_litre: Some(60),
        silver_mg_per_roll: Some(110),
        film_kept_ppb: Some(300_000_000),
        ..now
    };
    stage.act(OTTILIE, change_settings, new).await?;
    Ok(())
}

/// Before a journey: Ottilie hands the room over, and Casimir confirms the list.
pub(super) async fn hands_over(stage: &mut Stage) -> Result<()> {
    let new = NewHandover {
        to_person_id: stage.id(CASIMIR),
    };
    let handover = stage.act(OTTILIE, open, new).await?.id("handover")?;
    stage.passes(Duration::minutes(15));
    stage.act(CASIMIR, confirm, handover).await?;
    Ok(())
}

/// Afterwards: Casimir opens one too early and takes it back, then hands over.
pub(super) async fn hands_back(stage: &mut Stage) -> Result<()> {
    let new = NewHandover {
        to_person_id: stage.id(OTTILIE),
    };
    let early = stage.act(CASIMIR, open, new).await?.id("handover")?;
    stage.act(CASIMIR, withdraw, early).await?;
    stage.passes(Duration::minutes(12));
    let handover = stage.act(CASIMIR, open, new).await?.id("handover")?;
    stage.passes(Duration::minutes(6));
    stage.act(OTTILIE, confirm, handover).await?;
    Ok(())
}
