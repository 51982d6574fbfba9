//! The board's events, for a person who is logged in.

use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use axum::extract::{Query, State};
use axum::http::HeaderMap;
use axum::response::Response;
use futures_util::FutureExt;
use serde::Deserialize;
use tokio::sync::Semaphore;

use super::draw::Variant;
use super::events::{self, Position};
use super::stream::{self, Coming, Onlooker};
use crate::app::App;
use crate::database::Scope;
use crate::error::Result;
use crate::identity::{Lasting, Permit};
use crate::notices;
use crate::rights::LookAtBoard;
use crate::router::Pages;
use crate::web::shell::Display;

/// So many count their notices at the same time; the others wait, for after an entry
/// everyone wants to know.
static COUNTING: Semaphore = Semaphore::const_new(2);

/// The stream's route.
#[must_use]
pub(super) fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/board/stream", follow)
}

/// From where somebody follows.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct From {
    /// The id of the last event, or that of the page.
    after: Option<String>,
    /// When their board was drawn.
    drawn: Option<i64>,
    /// Which of their pages it is.
    tab: Option<String>,
}

async fn follow(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    display: Display,
    Query(from): Query<From>,
    headers: HeaderMap,
) -> Result<Response> {
    let person = Member::of(&app, &permit, &headers)?;
    let holder = permit.person().session.unwrap_or(permit.person().id);
    let variant = Variant::of(permit.membership(), display);
    let position = from.position(&headers);
    let boards = app.boards();
    let seat = boards.seats().take(holder, from.tab)?;
    let following = boards.feeds().follow(&app, &variant, position).await?;
    Ok(stream::answer(app, person, seat, following))
}

impl From {
    /// A browser that comes back by itself says which event was the last.
    fn position(&self, headers: &HeaderMap) -> Option<Position> {
        let last = headers.get("last-event-id");
        if let Some(last) = last {
            return Some(Position::read(last.to_str().unwrap_or_default(), None));
        }
        let after = self.after.as_deref()?;
        Some(Position::read(after, self.drawn))
    }
}

/// A person who follows a board of their room.
struct Member {
    lasting: Lasting,
    scope: Scope,
    unread: Arc<AtomicI64>,
}

impl Member {
    fn of(app: &App, permit: &Permit<LookAtBoard>, headers: &HeaderMap) -> Result<Self> {
        Ok(Self {
            lasting: Lasting::of(app, permit, headers)?,
            scope: permit.scope(),
            // No count is less than none, so that the first is told.
            unread: Arc::new(AtomicI64::new(-1)),
        })
    }
}

impl Onlooker for Member {
    async fn may_look(&mut self, app: &App) -> bool {
        self.lasting.holds(app).await
    }

    fn own(&mut self, app: &App) -> Coming {
        let (app, scope, told) = (app.clone(), self.scope, self.unread.clone());
        async move {
            let _turn = COUNTING.acquire().await.ok()?;
            let unread = notices::unread_for(&app, scope).await.ok()?;
            let before = told.swap(unread.into(), Ordering::Relaxed);
            (before != i64::from(unread)).then(|| events::notices(unread).ok())?
        }
        .boxed()
    }
}
