//! Entries about workshops. No entry holds a guest's name.

use serde::{Deserialize, Serialize};
use time::OffsetDateTime;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

fn of(workshop: Uuid) -> Vec<About> {
    vec![About::new("workshop", workshop)]
}

/// A workshop as it is planned from now on.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopSet {
    /// Which.
    pub workshop_id: Uuid,
    /// What it is called.
    pub title: String,
    /// Who leads it.
    pub leader_id: Uuid,
    /// Where; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// The room's own date of it.
    pub local_date: String,
    /// When it begins, in microseconds since 1970.
    pub begins_at_us: i64,
    /// When it ends, in microseconds since 1970.
    pub ends_at_us: i64,
    /// The most guests at once.
    pub most_guests: i32,
    /// The lines it prints on.
    pub line_ids: Vec<Uuid>,
    /// The member who pays; nobody where the room does.
    pub paid_by_id: Option<Uuid>,
}

impl Entry for WorkshopSet {
    const KIND: &'static str = "workshop_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let mut about = of(self.workshop_id);
        about.push(About::new("person", self.leader_id));
        about.extend(self.space_id.map(|id| About::new("space", id)));
        about.extend(self.line_ids.iter().map(|id| About::new("line", *id)));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_workshop(tx, each).await?;
        }
        Ok(())
    }
}

/// It does not take place.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopCalledOff {
    /// Which.
    pub workshop_id: Uuid,
    /// Why.
    pub reason: String,
}

impl Entry for WorkshopCalledOff {
    const KIND: &'static str = "workshop_called_off";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::call_off(tx, each).await?;
        }
        Ok(())
    }
}

/// A product whose cautions were read out.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ProductRead {
    /// Which.
    pub product_id: Uuid,
    /// As it was then.
    pub version: i32,
}

/// A topic whose text was read out.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct TopicRead {
    /// Which.
    pub topic_id: Uuid,
    /// Its text's version.
    pub version: i32,
}

/// It began, and the cautions were read to the group.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopOpened {
    /// Which.
    pub workshop_id: Uuid,
    /// Who leads it.
    pub leader_id: Uuid,
    /// When it is over by itself, in microseconds since 1970.
    pub over_at_us: i64,
    /// The products in the trays and those in use.
    pub products: Vec<ProductRead>,
    /// The topics that whoever comes in must know.
    pub topics: Vec<TopicRead>,
    /// Whether liquid nobody can name stood in a tray.
    pub is_unknown_there: bool,
}

impl Entry for WorkshopOpened {
    const KIND: &'static str = "workshop_opened";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let mut about = of(self.workshop_id);
        about.push(About::new("person", self.leader_id));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::open(tx, each).await?;
        }
        Ok(())
    }
}

/// Another member leads it from now on.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopTakenOver {
    /// Which.
    pub workshop_id: Uuid,
    /// Who leads it.
    pub leader_id: Uuid,
    /// Who led it until now.
    pub from_person_id: Uuid,
    /// When it is over by itself, in microseconds since 1970.
    pub over_at_us: i64,
}

impl Entry for WorkshopTakenOver {
    const KIND: &'static str = "workshop_taken_over";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let mut about = of(self.workshop_id);
        about.push(About::new("person", self.leader_id));
        about.push(About::new("person", self.from_person_id));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::take_over(tx, &each.entry).await?;
        }
        Ok(())
    }
}

/// Guests came in; their names lie beside, as a list in this order.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct GuestsSignedIn {
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// Each of them.
    pub guest_ids: Vec<Uuid>,
    /// What the entry holds of the names.
    pub beside_sha256: String,
}

impl Entry for GuestsSignedIn {
    const KIND: &'static str = "guests_signed_in";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::sign_in(tx, each).await?;
        }
        Ok(())
    }
}

/// Guests left.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct GuestsSignedOut {
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// Each of them.
    pub guest_ids: Vec<Uuid>,
}

impl Entry for GuestsSignedOut {
    const KIND: &'static str = "guests_signed_out";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let end = (each.happened_at, each.seq, true);
            store::sign_out(tx, &each.entry.guest_ids, end).await?;
        }
        Ok(())
    }
}

/// It is over, and whoever was there still was signed out.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopEnded {
    /// Which.
    pub workshop_id: Uuid,
    /// The guests signed out with it.
    pub guest_ids: Vec<Uuid>,
}

impl Entry for WorkshopEnded {
    const KIND: &'static str = "workshop_ended";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let end = (each.happened_at, each.seq, true);
            over(tx, (each.entry.workshop_id, &each.entry.guest_ids), end).await?;
        }
        Ok(())
    }
}

/// Nobody said that it is over: it ran out, with the presence of whoever led it. Who was
/// there still did not confirm that they left.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WorkshopNotEnded {
    /// Which.
    pub workshop_id: Uuid,
    /// The guests who were there still.
    pub guest_ids: Vec<Uuid>,
    /// The room's own date when it ran out.
    pub local_date: String,
}

impl Entry for WorkshopNotEnded {
    const KIND: &'static str = "workshop_not_ended";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let end = (each.happened_at, each.seq, false);
            over(tx, (each.entry.workshop_id, &each.entry.guest_ids), end).await?;
        }
        Ok(())
    }
}

/// It is over, for the guests too: when, by which entry, and whether anybody said so.
async fn over(
    tx: &mut RoomTx,
    (workshop, guests): (Uuid, &[Uuid]),
    end: (OffsetDateTime, i64, bool),
) -> Result<()> {
    store::sign_out(tx, guests, end).await?;
    store::end(tx, workshop, end).await
}

/// The names of guests were erased.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct GuestNamesErased {
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// The number of the entry beside which they lay.
    pub erases_beside_seq: i64,
}

impl Entry for GuestNamesErased {
    const KIND: &'static str = "guest_names_erased";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        of(self.workshop_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::forget_names(tx, each.entry.erases_beside_seq, each.seq).await?;
        }
        Ok(())
    }
}
