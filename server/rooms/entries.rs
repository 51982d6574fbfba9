//! Entries about a room itself.

use serde::{Deserialize, Serialize};

use super::settings::Settings;
use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::chain::DEMO_KIND;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// Entry 1 of a room.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomOpened {
    /// Its short name in addresses.
    pub slug: String,
    /// Its settings.
    pub settings: Settings,
}

/// Entry 1 of a demo room.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Demo {
    /// Its short name in addresses.
    pub slug: String,
    /// Its settings.
    pub settings: Settings,
    /// What its history is drawn from.
    pub seed: i64,
}

/// The settings from here on, all of them.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomSettingsChanged {
    /// The settings.
    pub settings: Settings,
}

/// The room takes no more entries but the one that opens it again.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomClosed {}

/// The room takes entries again.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomReopened {}

impl Entry for RoomOpened {
    const KIND: &'static str = "room_opened";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        Vec::new()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            set(tx, &each.entry.settings, each.seq).await?;
        }
        Ok(())
    }
}

impl Entry for Demo {
    const KIND: &'static str = DEMO_KIND;
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        Vec::new()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            set(tx, &each.entry.settings, each.seq).await?;
        }
        Ok(())
    }
}

impl Entry for RoomSettingsChanged {
    const KIND: &'static str = "room_settings_changed";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        Vec::new()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            set(tx, &each.entry.settings, each.seq).await?;
        }
        Ok(())
    }
}

impl Entry for RoomClosed {
    const KIND: &'static str = "room_closed";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        Vec::new()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_closed(tx, Some(each.recorded_at)).await?;
        }
        Ok(())
    }
}

impl Entry for RoomReopened {
    const KIND: &'static str = "room_reopened";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        Vec::new()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for _ in placed {
            store::set_closed(tx, None).await?;
        }
        Ok(())
    }
}

/// The settings, and the room's name where installation pages read it.
async fn set(tx: &mut RoomTx, settings: &Settings, seq: i64) -> Result<()> {
    store::set_settings(tx, settings, seq).await?;
    store::set_name(tx, &settings.name).await
}
