//! The feeds of the boards that somebody follows: one for each room at this instance.
//!
//! A feed wakes when the room's book goes on here, when the look at the heads finds that
//! it went on elsewhere, and when a board is over by itself. Then the room is read once,
//! each variant that has readers is drawn once, and what changed goes to all its readers
//! as one and the same bytes. A reader is whoever holds a [`Following`]; the feed knows
//! nobody.

use std::collections::{HashMap, VecDeque};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use axum::body::Bytes;
use time::OffsetDateTime;
use tokio::sync::{Notify, broadcast};
use tokio::time::MissedTickBehavior;
use tokio_util::sync::CancellationToken;
use uuid::Uuid;

use super::draw::{Drawn, Ground, Variant, board, event_id};
use super::events::{self, Position};
use super::parts::Shown;
use crate::app::App;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::logbook::{self, Head};

/// While a board is true, its readers hear so.
const BEAT: Duration = Duration::from_secs(5);
/// Entries that follow each other so closely are shown together.
const PACE: Duration = Duration::from_millis(50);
/// Whoever is so many events behind gets the page anew.
const BEHIND: usize = 32;
/// So many earlier boards are remembered for those who come back.
const REMEMBERED: usize = 16;
/// Whoever is so many entries behind gets the page anew.
const FAR: i64 = 500;
/// A board that nobody follows any more is kept up to date so long for those who come back.
const LINGER: Duration = Duration::from_secs(30);

/// The feeds of an instance.
#[derive(Clone, Debug, Default)]
pub(super) struct Feeds {
    rooms: Arc<Mutex<HashMap<Uuid, Arc<Feed>>>>,
    closing: CancellationToken,
}

/// What a reader is sent.
#[derive(Clone, Debug)]
pub(super) struct Told {
    /// The event.
    pub(super) event: Bytes,
    /// Did the room's book go on?
    pub(super) has_moved: bool,
}

/// A reader's place at a feed.
#[derive(Debug)]
pub(super) struct Following {
    /// What brings them up to date.
    pub(super) opening: Bytes,
    /// What comes after that.
    pub(super) told: broadcast::Receiver<Told>,
    /// For who could not keep up.
    pub(super) resync: Bytes,
    /// Cancelled when the program stops.
    pub(super) closing: CancellationToken,
}

#[derive(Debug)]
struct Feed {
    room: Uuid,
    wake: Notify,
    channels: Mutex<HashMap<Variant, Channel>>,
}

#[derive(Debug)]
struct Channel {
    sender: broadcast::Sender<Told>,
    now: Option<Arc<Drawn>>,
    /// The last one is that of `now`.
    shown: VecDeque<Shown>,
    left_at: Option<Instant>,
}

fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Feeds {
    /// Follows a board from a position on; without one, from nothing.
    pub(super) async fn follow(
        &self,
        app: &App,
        variant: &Variant,
        from: Option<Position>,
    ) -> Result<Following> {
        let (feed, _held) = self.enter(app, variant)?;
        let is_current = |drawn: &Arc<Drawn>| app.boards().is_current(drawn, variant.room);
        let now = feed.channel(variant, |channel| channel.now.clone())?;
        if !now.as_ref().is_some_and(is_current) {
            let drawn = board(app, variant).await?;
            feed.channel(variant, |channel| channel.show(drawn))??;
        }
        let wants_proof = feed.channel(variant, |channel| channel.wants_proof(from.as_ref()))?;
        let is_in_book = match (&from, wants_proof) {
            (Some(position), true) => is_in_book(app, variant.room, position.clone()).await?,
            _ => false,
        };
        let now = app.clock().now();
        feed.channel(variant, |channel| {
            let (opening, resync) = channel.opening(from.as_ref(), is_in_book, now)?;
            Ok(Following {
                opening,
                told: channel.sender.subscribe(),
                resync,
                closing: self.closing.clone(),
            })
        })?
    }

    /// The room's feed with a channel of the variant, which stays while its receiver does.
    fn enter(
        &self,
        app: &App,
        variant: &Variant,
    ) -> Result<(Arc<Feed>, broadcast::Receiver<Told>)> {
        if self.closing.is_cancelled() {
            return Err(Error::Unavailable("the program stops"));
        }
        let mut rooms = lock(&self.rooms);
        let feed = rooms.entry(variant.room).or_insert_with(|| {
            let feed = Arc::new(Feed::of(variant.room));
            tokio::spawn(keep(app.clone(), self.clone(), feed.clone()));
            feed
        });
        let mut channels = lock(&feed.channels);
        let channel = channels.entry(variant.clone());
        let receiver = channel.or_insert_with(Channel::new).sender.subscribe();
        drop(channels);
        Ok((feed.clone(), receiver))
    }

    /// The rooms with a feed.
    pub(super) fn rooms(&self) -> Vec<Uuid> {
        lock(&self.rooms).keys().copied().collect()
    }

    /// Somebody wrote in the room's book here.
    pub(super) fn wake(&self, room: Uuid) {
        if let Some(feed) = lock(&self.rooms).get(&room) {
            feed.wake.notify_one();
        }
    }

    /// The room's book ends here now, wherever that was written.
    pub(super) fn wake_behind(&self, room: Uuid, seq: i64) {
        let feed = lock(&self.rooms).get(&room).cloned();
        if let Some(feed) = feed {
            feed.wake_where(|drawn| drawn.head.seq < seq);
        }
    }

    /// It is so late now.
    pub(super) fn wake_due(&self, now: OffsetDateTime) {
        let feeds: Vec<Arc<Feed>> = lock(&self.rooms).values().cloned().collect();
        for feed in feeds {
            feed.wake_where(|drawn| drawn.good_until <= now);
        }
    }

    /// Ends every feed and begins none any more.
    pub(super) fn close(&self) {
        self.closing.cancel();
    }

    /// Lets go of the boards that nobody has followed for a while; answers whether the
    /// feed is over.
    fn sweep(&self, feed: &Feed) -> bool {
        let mut rooms = lock(&self.rooms);
        let mut channels = lock(&feed.channels);
        channels.retain(|_, channel| !channel.is_left());
        let is_over = channels.is_empty();
        if is_over {
            rooms.remove(&feed.room);
        }
        is_over
    }
}

/// Whether the room's book has the entry that a position names.
async fn is_in_book(app: &App, room: Uuid, position: Position) -> Result<bool> {
    let scope = Scope { room, person: None };
    app.database()
        .reading(scope, move |tx| {
            Box::pin(async move {
                let seq = position.seq;
                let hash = logbook::hash_at(tx, seq).await?;
                Ok(hash.is_some_and(|hash| is_of(seq, hash, &position)))
            })
        })
        .await
}

fn is_of(seq: i64, hash: [u8; 32], position: &Position) -> bool {
    let head = Head {
        seq,
        hash,
        recorded_at: OffsetDateTime::UNIX_EPOCH,
    };
    event_id(&head) == position.id()
}

/// A feed's task ends the feed, however it ends itself: readers then come anew.
struct Ending {
    feeds: Feeds,
    feed: Arc<Feed>,
}

impl Drop for Ending {
    fn drop(&mut self) {
        let mut rooms = lock(&self.feeds.rooms);
        let is_ours = |of: &Arc<Feed>| Arc::ptr_eq(of, &self.feed);
        if rooms.get(&self.feed.room).is_some_and(is_ours) {
            rooms.remove(&self.feed.room);
        }
    }
}

/// Keeps a room's boards up to date for as long as somebody follows them.
async fn keep(app: App, feeds: Feeds, feed: Arc<Feed>) {
    let closing = feeds.closing.clone();
    let ending = Ending { feeds, feed };
    let feed = &ending.feed;
    let mut beat = tokio::time::interval(BEAT);
    beat.set_missed_tick_behavior(MissedTickBehavior::Delay);
    // A board that could not be drawn is not said to be true.
    let mut is_true = true;
    loop {
        tokio::select! {
            () = closing.cancelled() => return,
            () = feed.wake.notified() => {
                is_true = feed.draw(&app).await.inspect_err(log).is_ok();
                tokio::time::sleep(PACE).await;
            }
            _ = beat.tick() => {
                if ending.feeds.sweep(feed) {
                    return;
                }
                if is_true && let Err(cause) = feed.beat(app.clock().now()) {
                    log(&cause);
                }
            }
        }
    }
}

fn log(cause: &Error) {
    tracing::warn!(%cause, "a board that is followed could not be drawn");
}

impl Feed {
    fn of(room: Uuid) -> Self {
        Self {
            room,
            wake: Notify::new(),
            channels: Mutex::default(),
        }
    }

    fn channel<T>(&self, variant: &Variant, work: impl FnOnce(&mut Channel) -> T) -> Result<T> {
        let mut channels = lock(&self.channels);
        let channel = channels.get_mut(variant);
        channel
            .map(work)
            .ok_or_else(|| Error::fault("a board that is followed has no channel"))
    }

    fn wake_where(&self, is_over: impl Fn(&Drawn) -> bool) {
        let channels = lock(&self.channels);
        let mut drawn = channels.values().filter_map(|channel| channel.now.as_ref());
        if drawn.any(|drawn| is_over(drawn)) {
            self.wake.notify_one();
        }
    }

    /// Reads the room once and draws each board that is followed once.
    async fn draw(&self, app: &App) -> Result<()> {
        let ground = Ground::read(app, self.room).await?;
        let variants: Vec<Variant> = lock(&self.channels).keys().cloned().collect();
        for variant in variants {
            let drawn = Arc::new(ground.draw(app, &variant)?);
            app.boards().keep(&variant, drawn.clone());
            self.channel(&variant, |channel| channel.show(drawn))??;
        }
        Ok(())
    }

    fn beat(&self, now: OffsetDateTime) -> Result<()> {
        for channel in lock(&self.channels).values() {
            if let Some(drawn) = &channel.now {
                let event = events::beat(&drawn.zone.clock_and_weekday(now))?;
                channel.tell(event, false);
            }
        }
        Ok(())
    }
}

impl Channel {
    fn new() -> Self {
        Self {
            sender: broadcast::Sender::new(BEHIND),
            now: None,
            shown: VecDeque::new(),
            left_at: None,
        }
    }

    /// Says it to everyone who follows; to nobody is no fault.
    fn tell(&self, event: Bytes, has_moved: bool) {
        drop(self.sender.send(Told { event, has_moved }));
    }

    /// Shows a board, and tells what is otherwise on it.
    fn show(&mut self, drawn: Arc<Drawn>) -> Result<()> {
        let before = self.shown.back();
        let shown = Shown::of(&drawn, before)?;
        if let Some(before) = before {
            if (shown.seq, shown.drawn_us) <= (before.seq, before.drawn_us) {
                return Ok(());
            }
            let parts = shown.since(before, &drawn)?;
            let has_moved = shown.seq != before.seq;
            if has_moved || !parts.is_empty() {
                let change = events::change(before.seq, &shown, &drawn, &parts)?;
                self.tell(change, has_moved);
            }
        }
        if self.shown.len() >= REMEMBERED {
            self.shown.pop_front();
        }
        self.shown.push_back(shown);
        self.now = Some(drawn);
        Ok(())
    }

    /// The board that was shown at a position. An event's id alone names the board it came
    /// with; what came later by the clock alone is told once more.
    fn shown_at(&self, position: &Position) -> Option<&Shown> {
        let is_it = |shown: &&Shown| shown.id == position.id();
        match position.drawn_us {
            Some(drawn_us) => {
                let mut of_entry = self.shown.iter().filter(is_it);
                of_entry.find(|shown| shown.drawn_us == drawn_us)
            }
            // The first that is remembered may have been drawn later than the one they saw.
            None => {
                let place = self.shown.iter().position(|shown| is_it(&shown))?;
                self.shown.get(place).filter(|_| place > 0)
            }
        }
    }

    fn is_far(&self, position: &Position) -> bool {
        let last = self.shown.back();
        last.is_none_or(|last| last.seq - position.seq > FAR)
    }

    /// Whether only the book can tell if a position is one of its own.
    fn wants_proof(&self, from: Option<&Position>) -> bool {
        let Some(position) = from else { return false };
        let is_shown = self.shown.iter().any(|shown| shown.id == position.id());
        !is_shown && !self.is_far(position)
    }

    /// What brings a reader up to date, and what tells them later that they fell behind.
    fn opening(
        &self,
        from: Option<&Position>,
        is_in_book: bool,
        now: OffsetDateTime,
    ) -> Result<(Bytes, Bytes)> {
        let both = self.now.as_ref().zip(self.shown.back());
        let (drawn, last) = both.ok_or_else(|| Error::fault("a board was not drawn"))?;
        let resync = events::resync(last)?;
        let beat = events::beat(&drawn.zone.clock_and_weekday(now))?;
        let missed = match from {
            None => Some(events::change(0, last, drawn, &last.whole(drawn)?)?),
            Some(position) => self.missed(position, is_in_book, (drawn, last))?,
        };
        let opening = match missed {
            Some(missed) => events::opening(&[missed, beat]),
            None => events::opening(&[beat]),
        };
        Ok((opening, resync))
    }

    fn missed(
        &self,
        position: &Position,
        is_in_book: bool,
        (drawn, last): (&Drawn, &Shown),
    ) -> Result<Option<Bytes>> {
        let is_known = is_in_book || self.shown.iter().any(|shown| shown.id == position.id());
        if self.is_far(position) || !is_known {
            return events::resync(last).map(Some);
        }
        let parts = match self.shown_at(position) {
            Some(before) => last.since(before, drawn)?,
            None => last.whole(drawn)?,
        };
        if parts.is_empty() && position.seq == last.seq {
            return Ok(None);
        }
        events::change(position.seq, last, drawn, &parts).map(Some)
    }

    /// Nobody has followed it for a while.
    fn is_left(&mut self) -> bool {
        if self.sender.receiver_count() > 0 {
            self.left_at = None;
            return false;
        }
        self.left_at.get_or_insert_with(Instant::now).elapsed() >= LINGER
    }
}
