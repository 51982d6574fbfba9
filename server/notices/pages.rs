//! The page of a person's notices.

use axum::extract::{Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;

use super::views::{NoticeRow, NoticesPage};
use super::{Kept, PAGE, list, mark_read};
use crate::app::App;
use crate::clock::{micros, moment};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::problem::Problem;
use crate::rights::ReadNotices;
use crate::rooms;
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::forms::{page, see_other};
use crate::web::frame::Frame;
use crate::web::messages::notices as words;
use crate::web::shell::{Place, Shell};

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/notices", notices)
        .post("/rooms/{room}/notices/read", read)
}

/// Which part is asked for: those told before, in microseconds since 1970.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Part {
    before: String,
}

impl Part {
    fn read(&self) -> Result<Option<i64>> {
        match self.before.as_str() {
            "" => Ok(None),
            text => text
                .parse()
                .map(Some)
                .map_err(|_| Error::field("before", Problem::NotANumber)),
        }
    }
}

async fn notices(
    State(app): State<App>,
    permit: Permit<ReadNotices>,
    frame: Frame,
    Query(part): Query<Part>,
) -> Result<Response> {
    let before = part.read()?.map(moment);
    let kept = list(&app, &permit, before).await?;
    let settings = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?;
    let shell = frame.shell_in(&permit, Some(Place::Notices));
    let (zone, now) = (settings.time_zone()?, app.clock().now());
    page(&notices_page(shell, &kept, &zone, now))
}

fn notices_page(shell: Shell, kept: &[Kept], zone: &Zone, now: OffsetDateTime) -> NoticesPage {
    let row = |one: &Kept| NoticeRow {
        at: zone.words(one.made_at, now),
        sentence: words::sentence(&one.told),
        link: words::link(&one.told).map(|path| shell.at(&path)),
        notes: words::notes(&one.told).to_vec(),
        is_new: one.read_at.is_none(),
    };
    NoticesPage {
        notices: kept.iter().map(row).collect(),
        older: older(kept),
        shell,
    }
}

fn older(kept: &[Kept]) -> Option<String> {
    let is_full = i64::try_from(kept.len()).is_ok_and(|count| count >= PAGE);
    let last = kept.last().filter(|_| is_full)?;
    Some(format!("?before={}", micros(last.made_at)))
}

async fn read(State(app): State<App>, permit: Permit<ReadNotices>) -> Result<Response> {
    mark_read(&app, &permit).await?;
    let slug = &permit.membership().slug;
    Ok(see_other(&app, &format!("/rooms/{slug}/notices")))
}
