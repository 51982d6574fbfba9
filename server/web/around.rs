//! What every page of a room says beside its own matter: how many notices its
//! reader has not read, and what is off.
//!
//! A page that is looked at reads this anew. A form that was sent reads it only
//! where this person was never seen here: most are answered by sending the browser
//! on, many come at once, and the few that are shown again say what the page said
//! from which they were sent.

use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, PoisonError};

use axum::http::Method;
use uuid::Uuid;

use crate::app::App;
use crate::database::Scope;
use crate::error::Result;
use crate::outages::{self, Outage};
use crate::web::dates::Zone;
use crate::web::messages::outages as words;
use crate::web::shell::Off;
use crate::{notices, rooms};

/// More readers than this are not remembered.
const MOST: usize = 20_000;

/// What a page of a room says of what is around it.
#[derive(Clone, Debug, Default)]
pub struct Around {
    /// Notices not yet read.
    pub unread: u32,
    /// What is off.
    pub off: Vec<Off>,
}

/// What was said last, by room and reader.
#[derive(Debug, Default)]
pub struct Memory {
    last: Mutex<HashMap<(Uuid, Option<Uuid>), Around>>,
}

impl Memory {
    fn open(&self) -> MutexGuard<'_, HashMap<(Uuid, Option<Uuid>), Around>> {
        self.last.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// What a page says to whoever asks by this scope.
pub(super) async fn around(app: &App, scope: Scope, method: &Method) -> Around {
    let reader = (scope.room, scope.person);
    let known = app.around().open().get(&reader).cloned();
    if let Some(known) = known.filter(|_| !method.is_safe()) {
        return known;
    }
    let around = match read(app, scope).await {
        Ok(around) => around,
        Err(cause) => {
            tracing::warn!(%cause, "a page was shown without its count of notices");
            return Around::default();
        }
    };
    let mut last = app.around().open();
    if last.len() >= MOST {
        last.clear();
    }
    last.insert(reader, around.clone());
    around
}

async fn read(app: &App, scope: Scope) -> Result<Around> {
    app.database()
        .reading(scope, |tx| {
            Box::pin(async move {
                let unread = notices::count(tx).await?;
                let open = outages::open(tx).await?;
                // Mostly nothing is off, and the room's zone is not asked for.
                let off = match open.is_empty() {
                    true => Vec::new(),
                    false => off(&open, &rooms::settings(tx).await?.time_zone()?),
                };
                Ok(Around { unread, off })
            })
        })
        .await
}

/// What is off, in words whose times hold on any day.
#[must_use]
pub fn off(open: &[Outage], zone: &Zone) -> Vec<Off> {
    let words = |outage: &Outage| Off {
        head: words::off_since(outage.what, &zone.clock_and_weekday(outage.began_at).words),
        advice: words::ADVICE.to_owned(),
    };
    open.iter().map(words).collect()
}
