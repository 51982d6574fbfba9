//! What a sheet that was entered has become.

use axum::extract::{Path, State};
use axum::response::Response;

use super::store;
use super::views::{EnteredPage, EnteredRow};
use crate::app::App;
use crate::book::filter::{Filter, Reader};
use crate::book::reading;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Entry;
use crate::rights::EnterBenchSheet;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::sheets::Noted;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::entries::{self, Telling};
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/bench-sheet/entered/{seq}", entered)
}

/// The page of the sheet whose first entry that is, below the room.
pub(super) fn path(seq: i64) -> String {
    format!("/bench-sheet/entered/{seq}")
}

async fn entered(
    State(app): State<App>,
    permit: Permit<EnterBenchSheet>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
) -> Result<Response> {
    let (settings, last) = ground(&app, &permit, seq).await?;
    let rows = rows(&app, &permit, &settings, (seq, last)).await?;
    let shell = frame.shell_in(&permit, Some(Place::NoteSheets));
    page(&EnteredPage { shell, rows })
}

async fn ground(app: &App, permit: &Permit<EnterBenchSheet>, seq: i64) -> Result<(Settings, i64)> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let last = store::last_of_sheet(tx, seq).await?;
                let last = last.ok_or(Error::NotFound)?;
                Ok((rooms::settings(tx).await?, last))
            })
        })
        .await
}

async fn rows(
    app: &App,
    permit: &Permit<EnterBenchSheet>,
    settings: &Settings,
    (first, last): (i64, i64),
) -> Result<Vec<EnteredRow>> {
    let reader = Reader::new(permit.person().id, permit.role());
    let before = Some(last + 1);
    let page = reading::page_for(app, permit.scope(), reader, Filter::default(), before).await?;
    let (zone, now) = (settings.time_zone()?, app.clock().now());
    let telling = Telling {
        names: &page.names,
        numbers: settings.numbers(),
    };
    let lines = page.lines.iter().rev().filter(|line| line.seq >= first);
    let row = |line: &crate::book::Line| {
        let shown = line.shown.as_ref()?;
        Some(EnteredRow {
            seq: line.seq,
            path: match shown.kind == Noted::KIND {
                true => format!("/sheets/{}", line.seq),
                false => format!("/book/{}", line.seq),
            },
            at: zone.words(shown.happened_at, now),
            sentence: entries::sentence(&shown.kind, &shown.payload, telling),
        })
    };
    Ok(lines.filter_map(row).collect())
}
