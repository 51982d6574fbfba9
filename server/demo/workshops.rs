//! The demo's workshops: one whose guests' names are erased since, one that was called off,
//! one to which nobody came, and one that is to come. The guests are invented.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::bench::Row;
use super::papers::EIGHT_BY_TEN;
use super::people::{CASIMIR, DAGNY, MIREA, OTTILIE, TOMAS, Who};
use super::presence::PEOPLE;
use super::printing::Prints;
use super::stage::Stage;
use super::{Cellar, missing};
use crate::arrivals::people_in;
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::inductions::lacks;
use crate::rooms;
use crate::sheets::NewNote;
use crate::sheets::actions::note_sheets;
use crate::workshops::actions::{CallOff, NewWorkshop, call_off, set_workshop};
use crate::workshops::leading::{
    GuestsOut, NewGuests, Opening, end, open, sign_in, sign_out, take_over,
};
use crate::workshops::{cautions, close_forgotten, erase_names, guests};

const GUESTS: [&str; 3] = ["Ilka Brandt", "Jonas Reh", "Mette Lauring"];

/// One that begins then, led by somebody on the long bench.
fn plan(
    stage: &Stage,
    cellar: &Cellar,
    (title, leader): (&str, Who),
    (begins, length): (OffsetDateTime, Duration),
) -> Result<NewWorkshop> {
    Ok(NewWorkshop {
        id: None,
        title: title.to_owned(),
        leader_id: stage.id(leader),
        space_id: None,
        begins_at_us: micros(begins),
        ends_at_us: micros(begins + length),
        most_guests: 8,
        line_ids: vec![cellar.bench.line(Row::Long)?],
        paid_by_id: None,
    })
}

async fn planned(stage: &mut Stage, new: NewWorkshop) -> Result<Uuid> {
    stage.act(OTTILIE, set_workshop, new).await?.id("workshop")
}

async fn opens(stage: &mut Stage, id: Uuid) -> Result<()> {
    let read = stage.reads(|tx| Box::pin(cautions(tx))).await?.read;
    let opening = Opening {
        opened_workshop_id: id,
        read: read.digest()?,
    };
    stage.act(OTTILIE, open, opening).await.map(drop)
}

/// Three guests look in for half an hour: one steward begins, and a member who mixes
/// takes over. Nobody comes to another, and one is called off.
pub(super) async fn held(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let now = stage.now();
    let half_an_hour = (now, Duration::minutes(30));
    let new = plan(
        stage,
        cellar,
        ("A first look at the trays", OTTILIE),
        half_an_hour,
    )?;
    let id = planned(stage, new).await?;
    opens(stage, id).await?;
    come(stage, id).await?;
    stage.act(MIREA, take_over, id).await?;
    stage.passes(Duration::minutes(8));
    let note = NewNote {
        workshop_id: Some(id),
        ..prints().note(cellar, None)?
    };
    stage.act(MIREA, note_sheets, note).await?;
    let all = stage.reads(move |tx| Box::pin(guests(tx, id))).await?;
    let first = all.first().ok_or_else(|| missing("guests"))?;
    let out = GuestsOut {
        workshop_id: id,
        guest_ids: vec![first.id],
    };
    stage.act(MIREA, sign_out, out).await?;
    stage.act(MIREA, end, id).await?;
    let new = plan(stage, cellar, ("Open tray", OTTILIE), half_an_hour)?;
    let nobody_came = planned(stage, new).await?;
    opens(stage, nobody_came).await?;
    let next_week = (now + Duration::weeks(1), Duration::minutes(30));
    let new = plan(
        stage,
        cellar,
        ("A second look at the trays", OTTILIE),
        next_week,
    )?;
    let off = CallOff {
        workshop_id: planned(stage, new).await?,
        reason: "Two of three cannot come".to_owned(),
    };
    stage.act(OTTILIE, call_off, off).await?;
    Ok(())
}

/// As many of the guests as there are places.
async fn come(stage: &mut Stage, workshop_id: Uuid) -> Result<()> {
    let now = stage.now();
    let inside = stage.reads(move |tx| Box::pin(people_in(tx, now))).await?;
    let places = PEOPLE.saturating_sub(inside);
    let names = GUESTS.iter().take(places);
    let new = NewGuests {
        workshop_id,
        names: names.map(|&name| name.to_owned()).collect(),
    };
    stage.act(OTTILIE, sign_in, new).await.map(drop)
}

const fn prints() -> Prints {
    Prints {
        row: Row::Long,
        class: 0,
        size: EIGHT_BY_TEN,
        sheets: Some(4),
        is_toned: false,
    }
}

/// What nobody ended is written down, and the names are erased.
pub(super) async fn tidied(stage: &Stage) -> Result<()> {
    close_forgotten(&stage.app, stage.room).await?;
    erase_names(&stage.app, stage.room).await
}

/// One is planned for the day after tomorrow, led by whoever lacks nothing.
pub(super) async fn plans(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let settings = stage.reads(|tx| Box::pin(rooms::settings(tx))).await?;
    let zone = settings.time_zone()?;
    let day = zone.date_value(stage.now() + Duration::days(2));
    let (begins, _) = zone.instant_on(&day, "14:00").map_err(Error::fault)?;
    let mut leader = None;
    for who in [MIREA, CASIMIR, OTTILIE, DAGNY, TOMAS] {
        let (id, day) = (stage.id(who), day.clone());
        let lacks = stage.reads(move |tx| Box::pin(async move { lacks(tx, id, &day).await }));
        if leader.is_none() && lacks.await?.is_empty() {
            leader = Some(who);
        }
    }
    let leader = leader.ok_or_else(|| missing("leader"))?;
    let hours = (begins, Duration::hours(3));
    let new = plan(stage, cellar, ("First prints, for six", leader), hours)?;
    let new = NewWorkshop {
        most_guests: 6,
        paid_by_id: Some(stage.id(TOMAS)),
        ..new
    };
    planned(stage, new).await.map(drop)
}
