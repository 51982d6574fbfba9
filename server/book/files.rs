//! The book as files: a table of what the reader may see, and the whole book
//! for whoever verifies it outside.
//!
//! Both are made page by page while they are sent, each page in a transaction
//! of its own: an entry never changes, so the pages fit together, and a slow
//! reader holds no connection.

use std::collections::BTreeSet;

use axum::body::Bytes;
use futures_util::stream::{self, Stream};

use super::checkpoints;
use super::filter::{Filter, Reader};
use super::reading::{Page, read_page};
use super::store::{self, Line};
use crate::app::App;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::reading;
use crate::rights::{ReadBook, SealBook};
use crate::web::dates::machine;
use crate::web::messages::entries::{Telling, not_shown, sentence};
use crate::web::numbers::Numbers;
use crate::web::table::harmless;

/// Entries of one page of a file.
const PAGE: i64 = 500;
/// The columns of the table.
const COLUMNS: [&str; 6] = ["entry", "recorded_at", "happened_at", "kind", "who", "what"];

/// The entries a reader asks for as CSV, newest first, times in UTC.
///
/// # Errors
/// [`Error::Forbidden`] for who looks for somebody else and is no steward.
pub fn table(
    app: &App,
    permit: &Permit<ReadBook>,
    filter: Filter,
    numbers: Numbers,
) -> Result<impl Stream<Item = Result<Bytes>> + Send + 'static> {
    table_for(app, permit.scope(), Reader::of(permit), filter, numbers)
}

/// The entries a reader asks for as CSV.
///
/// # Errors
/// As [`table`].
pub fn table_for(
    app: &App,
    scope: Scope,
    reader: Reader,
    filter: Filter,
    numbers: Numbers,
) -> Result<impl Stream<Item = Result<Bytes>> + Send + 'static> {
    reader.check(&filter)?;
    let app = app.clone();
    let start = Some(Progress::Start);
    Ok(stream::try_unfold(start, move |progress| {
        let (app, reader, filter) = (app.clone(), reader.clone(), filter.clone());
        async move {
            let Some(progress) = progress else {
                return Ok(None);
            };
            let before = progress.number();
            let page = app
                .database()
                .reading(scope, move |tx| {
                    Box::pin(async move { read_page(tx, &reader, &filter, before, PAGE).await })
                })
                .await?;
            let bytes = rows(&page, numbers, before.is_none())?;
            Ok(Some((bytes, page.older.map(Progress::At))))
        }
    }))
}

/// How far a file has come.
enum Progress {
    Start,
    At(i64),
}

impl Progress {
    fn number(&self) -> Option<i64> {
        match self {
            Self::Start => None,
            Self::At(number) => Some(*number),
        }
    }
}

fn rows(page: &Page, numbers: Numbers, is_first: bool) -> Result<Bytes> {
    let mut table = csv::Writer::from_writer(Vec::new());
    if is_first {
        table.write_record(COLUMNS).map_err(fault)?;
    }
    let telling = Telling {
        names: &page.names,
        numbers,
    };
    for line in &page.lines {
        let cells = cells(line, telling);
        table
            .write_record(cells.map(|cell| harmless(&cell)))
            .map_err(fault)?;
    }
    let bytes = table
        .into_inner()
        .map_err(|cause| fault(cause.into_error()))?;
    Ok(Bytes::from(bytes))
}

fn cells(line: &Line, telling: Telling<'_>) -> [String; 6] {
    let seq = line.seq.to_string();
    match &line.shown {
        None => {
            let nothing = String::new;
            [
                seq,
                nothing(),
                nothing(),
                nothing(),
                nothing(),
                not_shown(line.seq),
            ]
        }
        Some(shown) => [
            seq,
            machine(shown.recorded_at),
            machine(shown.happened_at),
            shown.kind.clone(),
            shown
                .actor
                .map(|id| telling.names.find(id).unwrap_or_default().to_owned())
                .unwrap_or_default(),
            sentence(&shown.kind, &shown.payload, telling),
        ],
    }
}

fn fault(cause: impl std::error::Error + Send + Sync + 'static) -> Error {
    Error::Internal(cause.into())
}

/// The whole book with its checkpoints as JSON lines; of what is not shown to the
/// holder, its place in the chain.
///
/// # Errors
/// A key or a folder that cannot be used.
pub async fn whole(
    app: &App,
    permit: &Permit<SealBook>,
) -> Result<impl Stream<Item = Result<Bytes>> + Send + 'static> {
    let reader = Reader::new(permit.person().id, permit.role());
    whole_for(app, permit.scope(), reader).await
}

/// The whole book, for a reader.
///
/// # Errors
/// As [`whole`].
pub async fn whole_for(
    app: &App,
    scope: Scope,
    reader: Reader,
) -> Result<impl Stream<Item = Result<Bytes>> + Send + 'static> {
    // Read first: every entry they seal is then in what is read after.
    let shelf = checkpoints::shelf(app, scope.room).await?;
    let app = app.clone();
    let start = Some((Progress::Start, shelf.checkpoints));
    Ok(stream::try_unfold(start, move |state| {
        let (app, reader) = (app.clone(), reader.clone());
        async move {
            let Some((progress, checkpoints)) = state else {
                return Ok(None);
            };
            let (mut bytes, next) = whole_page(&app, scope, reader, progress.number()).await?;
            if next.is_none() {
                reading::write_checkpoints(&mut bytes, &checkpoints)?;
            }
            let next = next.map(|last| (Progress::At(last), checkpoints));
            Ok(Some((Bytes::from(bytes), next)))
        }
    }))
}

/// The next entries, and the number of the last of them; nothing behind the end.
async fn whole_page(
    app: &App,
    scope: Scope,
    reader: Reader,
    after: Option<i64>,
) -> Result<(Vec<u8>, Option<i64>)> {
    app.database()
        .reading(scope, move |tx| {
            Box::pin(async move {
                let mut bytes = Vec::new();
                if after.is_none() {
                    reading::write_header(tx, &mut bytes).await?;
                }
                let after = after.unwrap_or(0);
                let lines = store::after(tx, &reader, after, reading::PAGE).await?;
                let shown = lines.iter().filter(|line| line.shown.is_some());
                let shown: BTreeSet<i64> = shown.map(|line| line.seq).collect();
                let is_shown = |seq: i64| shown.contains(&seq);
                let written = reading::write_page(tx, &mut bytes, after, &is_shown).await?;
                Ok((bytes, written.map(|(last, _)| last)))
            })
        })
        .await
}
