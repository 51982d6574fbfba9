//! Entries about screens and PINs. Screens are shown to stewards; that somebody's
//! PIN was set or taken away also to that person. No entry holds a secret.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A screen was paired.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ScreenPaired {
    /// Which.
    pub screen_id: Uuid,
    /// `board` or `door`.
    pub kind: String,
    /// What people call it.
    pub name: String,
    /// The display it begins with.
    pub display: String,
}

impl Entry for ScreenPaired {
    const KIND: &'static str = "screen_paired";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        vec![About::new("screen", self.screen_id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::pair(tx, each).await?;
        }
        Ok(())
    }
}

/// A screen is called something else from here on.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ScreenRenamed {
    /// Which.
    pub screen_id: Uuid,
    /// What people call it.
    pub name: String,
}

impl Entry for ScreenRenamed {
    const KIND: &'static str = "screen_renamed";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        vec![About::new("screen", self.screen_id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::rename(tx, each.entry.screen_id, &each.entry.name).await?;
        }
        Ok(())
    }
}

/// A screen's pairing ended.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ScreenEnded {
    /// Which.
    pub screen_id: Uuid,
}

impl Entry for ScreenEnded {
    const KIND: &'static str = "screen_ended";
    const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

    fn about(&self) -> Vec<About> {
        vec![About::new("screen", self.screen_id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::end(tx, each.entry.screen_id, (each.recorded_at, each.seq)).await?;
        }
        Ok(())
    }
}

macro_rules! of_pins {
    ($( #[doc = $what:literal] $entry:ident $kind:literal; )+) => {
        $(
            #[doc = $what]
            #[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
            pub struct $entry {
                /// Whose.
                pub person_id: Uuid,
            }

            impl Entry for $entry {
                const KIND: &'static str = $kind;
                const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

                fn about(&self) -> Vec<About> {
                    vec![About::new("person", self.person_id)]
                }

                /// A PIN is a secret: its row is written by the action, not from
                /// the book.
                async fn project(_: &mut RoomTx, _: &[Placed<Self>]) -> Result<()> {
                    Ok(())
                }
            }
        )+
    };
}

of_pins! {
    /// Somebody set a PIN for the door, or another one.
    PinSet "pin_set";
    /// Somebody's PIN for the door was taken away.
    PinRemoved "pin_removed";
}
