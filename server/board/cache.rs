//! Boards kept in memory: one for each room, role and display.
//!
//! A commit of this instance drops the room's boards before its writer hears of
//! it. Commits of other instances are noticed by looking at the heads of the
//! rooms that are being looked at, several times a second.

use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use axum::body::Bytes;
use time::OffsetDateTime;
use uuid::Uuid;

use crate::app::App;
use crate::error::Result;
use crate::logbook::{self, Head};
use crate::rights::Role;
use crate::web::shell::Display;

/// Which board: the room, and what the page depends on besides it.
pub type Variant = (Uuid, Role, Display);

/// A board as it is sent.
#[derive(Clone, Debug)]
pub struct Kept {
    /// The page.
    pub body: Bytes,
    /// Names the build, the entry, the variant and the next change.
    pub etag: String,
    /// The number of the last entry it shows.
    pub seq: i64,
    /// When something on it changes by itself.
    pub good_until: OffsetDateTime,
}

/// The boards this instance keeps.
#[derive(Debug, Default)]
pub struct Boards {
    kept: Mutex<HashMap<Variant, Kept>>,
    heads: Mutex<HashMap<Uuid, i64>>,
}

/// More rooms than this are not remembered; a board is cheap to draw again.
const MOST: usize = 2_000;

impl Boards {
    /// The board, where it is still true.
    #[must_use]
    pub fn find(&self, variant: Variant, now: OffsetDateTime) -> Option<Kept> {
        let kept = lock(&self.kept);
        kept.get(&variant)
            .filter(|kept| now < kept.good_until)
            .cloned()
    }

    /// Keeps a board, unless the room's book has gone on since it was read.
    pub fn keep(&self, variant: Variant, board: Kept) {
        let heads = lock(&self.heads);
        if heads.get(&variant.0).is_some_and(|seq| *seq > board.seq) {
            return;
        }
        let mut kept = lock(&self.kept);
        if kept.len() >= MOST {
            kept.clear();
        }
        kept.insert(variant, board);
    }

    /// The room's book ends here now: what shows less is dropped.
    pub fn changed(&self, room: Uuid, head: &Head) {
        let mut heads = lock(&self.heads);
        if heads.len() >= MOST {
            heads.clear();
        }
        heads.insert(room, head.seq);
        lock(&self.kept).retain(|(of, _, _), board| *of != room || board.seq >= head.seq);
    }

    fn rooms(&self) -> Vec<Uuid> {
        let mut rooms: Vec<Uuid> = lock(&self.kept).keys().map(|(room, _, _)| *room).collect();
        rooms.sort_unstable();
        rooms.dedup();
        rooms
    }
}

fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Drops the boards of rooms that another instance has written in.
///
/// # Errors
/// That the database is away.
pub async fn look(app: &App) -> Result<()> {
    let rooms = app.boards().rooms();
    if rooms.is_empty() {
        return Ok(());
    }
    let heads = app
        .database()
        .installation(move |tx| Box::pin(async move { logbook::heads(tx, &rooms).await }))
        .await?;
    for (room, head) in heads {
        app.boards().changed(room, &head);
    }
    Ok(())
}

/// Keeps looking, as long as the program runs.
pub async fn watch(app: App) {
    let mut pace = tokio::time::interval(Duration::from_millis(300));
    pace.set_missed_tick_behavior(tokio::time::MissedTickBehavior::Delay);
    loop {
        pace.tick().await;
        if let Err(cause) = look(&app).await {
            tracing::warn!(%cause, "the heads of the rooms could not be read");
        }
    }
}
