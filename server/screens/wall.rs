//! What a screen shows while nobody touches it: the board on the wall, or the
//! door's first page. Both are drawn once for each room, kind and display, and kept
//! until the next entry or the next moment at which something on them changes.
//!
//! A screen asks every few seconds, and its pairing is looked up each time anyway:
//! the end of the book is read with it, so that what is kept is never older than
//! that, whichever instance wrote.

use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, PoisonError};

use askama::Template;
use axum::body::Bytes;
use time::OffsetDateTime;
use uuid::Uuid;

use super::rows::in_rows;
use super::views::{DoorPage, TrayAtDoor, WallPage};
use crate::app::App;
use crate::bench::Step;
use crate::board::{self, Ground};
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::identity::devices::{DeviceKind, DeviceRoom};
use crate::logbook;
use crate::web::around;
use crate::web::dates::Zone;
use crate::web::drawing::VerdictWord;
use crate::web::frame::BUILD;
use crate::web::messages::verdicts;
use crate::web::shell::{Display, RoomName, Shell};

type Variant = (Uuid, DeviceKind, Display);

/// More than this are not remembered.
const MOST: usize = 1_000;

/// A screen's page as it was drawn.
#[derive(Clone, Debug)]
pub struct Kept {
    /// The page as it is sent.
    pub body: Bytes,
    /// Names the build, the entry, the kind, the display and the next change.
    pub etag: String,
    seq: i64,
    good_until: OffsetDateTime,
}

/// What this instance keeps for screens.
#[derive(Debug, Default)]
pub struct Walls {
    kept: Mutex<HashMap<Variant, Kept>>,
}

impl Walls {
    fn open(&self) -> MutexGuard<'_, HashMap<Variant, Kept>> {
        self.kept.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn find(&self, variant: Variant, seq: i64, now: OffsetDateTime) -> Option<Kept> {
        let kept = self.open().get(&variant).cloned();
        kept.filter(|kept| kept.seq == seq && now < kept.good_until)
    }

    fn keep(&self, variant: Variant, page: Kept) {
        let mut kept = self.open();
        if kept.len() >= MOST {
            kept.clear();
        }
        kept.insert(variant, page);
    }
}

/// What a screen of this kind and display shows of a room.
///
/// # Errors
/// The database's; a fault of a template.
pub async fn kept(
    app: &App,
    room: &DeviceRoom,
    kind: DeviceKind,
    display: Display,
) -> Result<Kept> {
    let (variant, now) = ((room.id, kind, display), app.clock().now());
    let scope = Scope {
        room: room.id,
        person: None,
    };
    let head = app
        .database()
        .reading(scope, |tx| Box::pin(logbook::head(tx)))
        .await?;
    if let Some(kept) = app.walls().find(variant, head.seq, now) {
        return Ok(kept);
    }
    let ground = Ground::read(app, room.id).await?;
    let page = draw(&ground, shell(app, room, display, &ground)?, kind)?;
    let good_until = ground.good_until();
    let kept = Kept {
        body: Bytes::from(page),
        etag: board::etag(&ground.head, kind.as_str(), display, good_until),
        seq: ground.head.seq,
        good_until,
    };
    app.walls().keep(variant, kept.clone());
    Ok(kept)
}

/// The frame of a screen's page: its room, and nobody.
fn shell(app: &App, room: &DeviceRoom, display: Display, ground: &Ground) -> Result<Shell> {
    Ok(Shell {
        off: around::off(&ground.off, &ground.settings.time_zone()?),
        ..of_room(app, room, display)
    })
}

/// The frame of a screen's page, without what is around it.
#[must_use]
pub(super) fn of_room(app: &App, room: &DeviceRoom, display: Display) -> Shell {
    Shell {
        base: app.address().base().to_owned(),
        here: "/screen".to_owned(),
        display,
        room: Some(RoomName {
            slug: room.slug.clone(),
            name: room.name.clone(),
        }),
        demo: room.is_demo,
        build: BUILD.to_owned(),
        ..Shell::default()
    }
}

fn draw(ground: &Ground, shell: Shell, kind: DeviceKind) -> Result<String> {
    let zone = ground.settings.time_zone()?;
    let page = match kind {
        DeviceKind::Board => wall(ground, shell, &zone).render(),
        DeviceKind::Door => door(ground, shell, &zone).render(),
    };
    page.map_err(|cause| Error::Internal(cause.into()))
}

fn wall(ground: &Ground, shell: Shell, zone: &Zone) -> WallPage {
    WallPage {
        shell,
        zone: ground.settings.zone.clone(),
        as_of: zone.clock_and_weekday(ground.now),
        notices: ground.notices(),
        rows: in_rows(&ground.lines(zone)),
        here: ground.here(zone),
    }
}

/// The door lists nobody: it says how many places are taken.
fn door(ground: &Ground, shell: Shell, zone: &Zone) -> DoorPage {
    let here = ground.here(zone);
    let trays = ground.bench.lines.iter().flat_map(|line| {
        line.trays.iter().map(|each| TrayAtDoor {
            line: line.line.name.clone(),
            name: each.tray.name.clone(),
            is_wash: each.tray.step == Step::Wash,
            word: VerdictWord {
                standing: verdicts::standing(each.judgement.verdict),
            },
        })
    });
    DoorPage {
        shell,
        zone: ground.settings.zone.clone(),
        taken: here.taken(),
        places: here.places,
        trays: trays.collect(),
    }
}
