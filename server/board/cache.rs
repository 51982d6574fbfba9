//! Boards kept in memory: one for each room, role and display.
//!
//! A commit of this instance drops the room's boards before its writer hears of
//! it. Commits of other instances are noticed by looking at the heads of the
//! rooms that are being looked at, several times a second.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use time::OffsetDateTime;
use tokio_util::sync::CancellationToken;
use uuid::Uuid;

use super::draw::{Drawn, Variant};
use super::feed::Feeds;
use super::seats::Seats;
use crate::app::App;
use crate::error::Result;
use crate::logbook::{self, Head};

/// The boards this instance keeps.
#[derive(Debug, Default)]
pub struct Boards {
    kept: Mutex<HashMap<Variant, Arc<Drawn>>>,
    heads: Mutex<HashMap<Uuid, i64>>,
    feeds: Feeds,
    seats: Seats,
}

/// More rooms than this are not remembered; a board is cheap to draw again.
const MOST: usize = 2_000;

impl Boards {
    /// The board, where it is still true.
    pub(super) fn find(&self, variant: &Variant, now: OffsetDateTime) -> Option<Arc<Drawn>> {
        let kept = lock(&self.kept);
        kept.get(variant)
            .filter(|drawn| now < drawn.good_until)
            .cloned()
    }

    /// Keeps a board, unless the room's book has gone on since it was read.
    pub(super) fn keep(&self, variant: &Variant, drawn: Arc<Drawn>) {
        let heads = lock(&self.heads);
        let head = heads.get(&variant.room);
        if head.is_some_and(|seq| *seq > drawn.head.seq) {
            return;
        }
        let mut kept = lock(&self.kept);
        if kept.len() >= MOST {
            kept.clear();
        }
        kept.insert(variant.clone(), drawn);
    }

    /// Whether a board shows all that this instance knows of the room's book.
    pub(super) fn is_current(&self, drawn: &Drawn, room: Uuid) -> bool {
        let heads = lock(&self.heads);
        heads.get(&room).is_none_or(|seq| drawn.head.seq >= *seq)
    }

    /// Somebody wrote in the room's book here: what shows less is dropped, and those who
    /// follow the room's boards hear of it.
    pub fn changed(&self, room: Uuid, head: &Head) {
        self.drop_older(room, head.seq);
        self.feeds.wake(room);
    }

    fn drop_older(&self, room: Uuid, seq: i64) {
        let mut heads = lock(&self.heads);
        if heads.len() >= MOST {
            heads.clear();
        }
        heads.insert(room, seq);
        lock(&self.kept).retain(|of, drawn| of.room != room || drawn.head.seq >= seq);
    }

    /// The feeds of the boards that somebody follows.
    pub(super) fn feeds(&self) -> &Feeds {
        &self.feeds
    }

    /// Who follows.
    pub(super) fn seats(&self) -> &Seats {
        &self.seats
    }

    fn rooms(&self) -> Vec<Uuid> {
        let mut rooms: Vec<Uuid> = lock(&self.kept).keys().map(|of| of.room).collect();
        rooms.extend(self.feeds.rooms());
        rooms.sort_unstable();
        rooms.dedup();
        rooms
    }
}

fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Looks whether another instance has written in rooms whose boards are kept or followed,
/// and whether a board that is followed is over by itself.
///
/// # Errors
/// That the database is away.
pub async fn look(app: &App) -> Result<()> {
    let boards = app.boards();
    let rooms = boards.rooms();
    if rooms.is_empty() {
        return Ok(());
    }
    let heads = app
        .database()
        .installation(move |tx| Box::pin(async move { logbook::heads(tx, &rooms).await }))
        .await?;
    for (room, head) in heads {
        boards.drop_older(room, head.seq);
        boards.feeds.wake_behind(room, head.seq);
    }
    boards.feeds.wake_due(app.clock().now());
    Ok(())
}

/// Keeps looking until told to stop, then ends what is sent to those who follow.
pub async fn watch(app: App, stop: CancellationToken) {
    let mut pace = tokio::time::interval(Duration::from_millis(300));
    pace.set_missed_tick_behavior(tokio::time::MissedTickBehavior::Delay);
    loop {
        tokio::select! {
            () = stop.cancelled() => break,
            _ = pace.tick() => {}
        }
        if let Err(cause) = look(&app).await {
            tracing::warn!(%cause, "the heads of the rooms could not be read");
        }
    }
    app.boards().feeds.close();
}
