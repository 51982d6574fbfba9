//! A board's events on their way to one reader.

use std::convert::Infallible;
use std::future::pending;
use std::time::Duration;

use axum::body::{Body, Bytes};
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use futures_util::FutureExt;
use futures_util::future::BoxFuture;
use tokio::sync::broadcast::error::RecvError;
use tokio::time::{Instant, Interval, MissedTickBehavior};

use super::feed::{Following, Told};
use super::seats::Seat;
use crate::app::App;

/// Between two looks whether somebody may still look on.
const LOOK: Duration = Duration::from_millis(300);
/// What is a reader's own is not asked for more often than this.
const OWN: Duration = Duration::from_secs(2);

/// An event that is on its way, if there is one.
pub(super) type Coming = BoxFuture<'static, Option<Bytes>>;

/// Whoever follows a board: a person by their log-in, or anything else that is let in.
pub(super) trait Onlooker: Send + 'static {
    /// May they look on still?
    fn may_look(&mut self, app: &App) -> impl Future<Output = bool> + Send;

    /// What is new of their own, beside the board: asked at the beginning and after the
    /// room's book went on. It takes its time beside the board's events.
    fn own(&mut self, app: &App) -> Coming;
}

/// Answers with the events, for as long as the onlooker may look.
pub(super) fn answer<O: Onlooker>(
    app: App,
    onlooker: O,
    seat: Seat,
    following: Following,
) -> Response {
    let mut look = tokio::time::interval(LOOK);
    look.set_missed_tick_behavior(MissedTickBehavior::Delay);
    let reader = Reader {
        app,
        onlooker,
        seat,
        following,
        look,
        is_open: false,
        wants_own: true,
        asked_at: None,
        own: pending().boxed(),
    };
    let events = futures_util::stream::unfold(reader, |mut reader| async move {
        let event = reader.next().await?;
        Some((Ok::<_, Infallible>(event), reader))
    });
    let headers = [
        (CONTENT_TYPE.as_str(), "text/event-stream"),
        (CACHE_CONTROL.as_str(), "no-store, no-transform"),
        // A proxy hands on what it gets, at once.
        ("x-accel-buffering", "no"),
    ];
    (headers, Body::from_stream(events)).into_response()
}

struct Reader<O> {
    app: App,
    onlooker: O,
    seat: Seat,
    following: Following,
    look: Interval,
    is_open: bool,
    wants_own: bool,
    asked_at: Option<Instant>,
    own: Coming,
}

/// What a reader waited for.
enum Heard {
    Told(Told),
    /// More was told than is remembered.
    Behind,
    Own(Option<Bytes>),
    Nothing,
}

impl<O: Onlooker> Reader<O> {
    /// The next event; none where it is over.
    async fn next(&mut self) -> Option<Bytes> {
        if !std::mem::replace(&mut self.is_open, true) {
            return Some(self.following.opening.clone());
        }
        loop {
            let heard = self.hear().await?;
            if !self.onlooker.may_look(&self.app).await {
                return None;
            }
            let event = match heard {
                Heard::Told(told) => {
                    self.wants_own |= told.has_moved;
                    Some(told.event)
                }
                Heard::Behind => Some(self.following.resync.clone()),
                Heard::Own(own) => {
                    self.own = pending().boxed();
                    own
                }
                Heard::Nothing => None,
            };
            self.ask_for_own();
            if event.is_some() {
                return event;
            }
        }
    }

    /// What comes first; none where the stream is over.
    async fn hear(&mut self) -> Option<Heard> {
        tokio::select! {
            biased;
            () = self.following.closing.cancelled() => None,
            () = self.seat.taken_over() => None,
            told = self.following.told.recv() => match told {
                Ok(told) => Some(Heard::Told(told)),
                Err(RecvError::Lagged(_)) => Some(Heard::Behind),
                Err(RecvError::Closed) => None,
            },
            own = &mut self.own => Some(Heard::Own(own)),
            _ = self.look.tick() => Some(Heard::Nothing),
        }
    }

    fn ask_for_own(&mut self) {
        let is_early = self.asked_at.is_some_and(|at| at.elapsed() < OWN);
        if self.wants_own && !is_early {
            self.wants_own = false;
            self.asked_at = Some(Instant::now());
            self.own = self.onlooker.own(&self.app);
        }
    }
}
