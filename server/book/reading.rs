//! Reading the book as somebody in the room: newest first, from a number on, or
//! one entry in full.

use super::filter::{Filter, Reader};
use super::names::Names;
use super::store::{self, Line, Sealed};
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::reading;
use crate::rights::ReadBook;
use uuid::Uuid;

/// Entries on a page.
pub const PAGE: i64 = 50;
/// Entries of one answer of the feed, at most.
pub const FEED: i64 = 500;

/// A page of the book, newest first.
#[derive(Clone, Debug)]
pub struct Page {
    /// The entries.
    pub lines: Vec<Line>,
    /// Names for the ids in them.
    pub names: Names,
    /// Of the shown ones that were reversed or reverse: both numbers.
    pub reversals: Vec<(i64, i64)>,
    /// Older ones are before this number, where there are any.
    pub older: Option<i64>,
    /// How many entries the book has.
    pub last: i64,
}

/// A page of the book.
///
/// # Errors
/// [`Error::Forbidden`] for who looks for somebody else and is no steward.
pub async fn page(
    app: &App,
    permit: &Permit<ReadBook>,
    filter: Filter,
    before: Option<i64>,
) -> Result<Page> {
    let reader = Reader::of(permit);
    page_for(app, permit.scope(), reader, filter, before).await
}

/// A page of the book for a reader.
///
/// # Errors
/// As [`page`].
pub async fn page_for(
    app: &App,
    scope: Scope,
    reader: Reader,
    filter: Filter,
    before: Option<i64>,
) -> Result<Page> {
    reader.check(&filter)?;
    app.database()
        .reading(scope, move |tx| {
            Box::pin(async move { read_page(tx, &reader, &filter, before, PAGE).await })
        })
        .await
}

pub(super) async fn read_page(
    tx: &mut RoomTx,
    reader: &Reader,
    filter: &Filter,
    before: Option<i64>,
    most: i64,
) -> Result<Page> {
    let before = before.unwrap_or(i64::MAX);
    let mut lines = store::before(tx, reader, filter, before, most + 1).await?;
    let more = i64::try_from(lines.len()).is_ok_and(|found| found > most);
    if more {
        lines.pop();
    }
    let seqs: Vec<i64> = lines.iter().map(|line| line.seq).collect();
    Ok(Page {
        names: Names::of(tx, &lines).await?,
        reversals: store::reversals(tx, &seqs).await?,
        older: lines.last().filter(|_| more).map(|line| line.seq),
        last: reading::head(tx).await?.seq,
        lines,
    })
}

/// Entries after a number.
#[derive(Clone, Debug)]
pub struct Feed {
    /// The entries, oldest first, none left out.
    pub lines: Vec<Line>,
    /// What they are about: number, noun, id; of shown ones only.
    pub about: Vec<(i64, String, Uuid)>,
    /// The last entry of the book.
    pub last: i64,
}

/// What was written after an entry, at most [`FEED`] entries.
///
/// # Errors
/// That the database is away.
pub async fn feed(app: &App, permit: &Permit<ReadBook>, after: i64, most: i64) -> Result<Feed> {
    let reader = Reader::of(permit);
    feed_for(app, permit.scope(), reader, after, most).await
}

/// What was written after an entry, for a reader.
///
/// # Errors
/// As [`feed`].
pub async fn feed_for(
    app: &App,
    scope: Scope,
    reader: Reader,
    after: i64,
    most: i64,
) -> Result<Feed> {
    let most = most.clamp(1, FEED);
    app.database()
        .reading(scope, move |tx| {
            Box::pin(async move {
                let lines = store::after(tx, &reader, after, most).await?;
                let shown = lines.iter().filter(|line| line.shown.is_some());
                let seqs: Vec<i64> = shown.map(|line| line.seq).collect();
                Ok(Feed {
                    about: store::about(tx, &seqs).await?,
                    last: reading::head(tx).await?.seq,
                    lines,
                })
            })
        })
        .await
}

/// One entry in full.
#[derive(Clone, Debug)]
pub struct Whole {
    /// Number and content.
    pub line: Line,
    /// What the chain keeps of it, where it is shown.
    pub sealed: Option<Sealed>,
    /// What it is about, where it is shown.
    pub about: Vec<(String, Uuid)>,
    /// Names for the ids in it.
    pub names: Names,
    /// The entry it reverses.
    pub reverses: Option<i64>,
    /// The entry that reversed it.
    pub reversed_by: Option<i64>,
    /// The last entry of the book.
    pub last: i64,
}

/// One entry; of one that is not shown, that there is one.
///
/// # Errors
/// [`Error::NotFound`] for a number the book has not reached.
pub async fn entry(app: &App, permit: &Permit<ReadBook>, seq: i64) -> Result<Whole> {
    entry_for(app, permit.scope(), Reader::of(permit), seq).await
}

/// One entry, for a reader.
///
/// # Errors
/// As [`entry`].
pub async fn entry_for(app: &App, scope: Scope, reader: Reader, seq: i64) -> Result<Whole> {
    app.database()
        .reading(scope, move |tx| {
            Box::pin(async move { read_entry(tx, &reader, seq).await })
        })
        .await
}

async fn read_entry(tx: &mut RoomTx, reader: &Reader, seq: i64) -> Result<Whole> {
    let found = store::after(tx, reader, seq.saturating_sub(1), 1).await?;
    let line = found.into_iter().find(|line| line.seq == seq);
    let line = line.ok_or(Error::NotFound)?;
    let last = reading::head(tx).await?.seq;
    if line.shown.is_none() {
        return Ok(Whole {
            line,
            sealed: None,
            about: Vec::new(),
            names: Names::default(),
            reverses: None,
            reversed_by: None,
            last,
        });
    }
    let reversals = store::reversals(tx, &[seq]).await?;
    let about = store::about(tx, &[seq]).await?;
    Ok(Whole {
        names: Names::of(tx, std::slice::from_ref(&line)).await?,
        sealed: store::sealed(tx, seq).await?,
        about: about.into_iter().map(|(_, noun, id)| (noun, id)).collect(),
        reverses: reversals
            .iter()
            .find(|pair| pair.1 == seq)
            .map(|pair| pair.0),
        reversed_by: reversals
            .iter()
            .find(|pair| pair.0 == seq)
            .map(|pair| pair.1),
        line,
        last,
    })
}

/// The people a reader may filter by: everyone of the room for a steward.
///
/// # Errors
/// That the database is away.
pub async fn people(app: &App, permit: &Permit<ReadBook>) -> Result<Vec<(Uuid, String)>> {
    if !Reader::of(permit).sees_all {
        let person = permit.person();
        return Ok(vec![(person.id, person.name.clone())]);
    }
    app.database()
        .reading(permit.scope(), |tx| Box::pin(store::people(tx)))
        .await
}
