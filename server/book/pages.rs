//! The pages of the book and of its entries.

use axum::body::Body;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use data_encoding::HEXLOWER;
use time::OffsetDateTime;
use uuid::Uuid;

use super::ask::NOUNS;
use super::figures::{Wording, figures};
use super::filter::Reader;
use super::reading::{self, Page, Whole};
use super::store::{Line, Sealed, Shown};
use super::views::{AboutShown, BookFilter, BookPage, BookRow, EntryContent, EntryPage};
use super::{checkpoint_pages, files};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::rights::{ReadBook, Right, SealBook};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::attached::attached;
use crate::web::dates::Zone;
use crate::web::fields::Choice;
use crate::web::forms::{in_words, mend, page};
use crate::web::frame::Frame;
use crate::web::messages::entries as words;
use crate::web::shell::{Place, Shell};

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/book", book)
        .get("/rooms/{room}/book.csv", book_table)
        .get("/rooms/{room}/book.jsonl", whole_book)
        .get("/rooms/{room}/book/{seq}", entry)
        .and(checkpoint_pages::pages())
}

/// The room's settings, for whoever holds a right there.
pub(super) async fn settings<R: Right>(app: &App, permit: &Permit<R>) -> Result<Settings> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await
}

async fn book(
    State(app): State<App>,
    permit: Permit<ReadBook>,
    frame: Frame,
    Query(typed): Query<BookFilter>,
) -> Result<Response> {
    let settings = settings(&app, &permit).await?;
    let shell = frame.shell_in(&permit, Some(Place::Book));
    let question = Question::of(&app, &permit, typed).await?;
    let zone = settings.time_zone()?;
    match question.typed.read(&question.reader, &zone) {
        Ok((filter, before)) => {
            let found = reading::page(&app, &permit, filter, before).await?;
            let now = app.clock().now();
            page(&book_page(shell, question, &found, &settings, now)?)
        }
        Err(problems) => mend(&BookPage {
            problems: in_words(&problems, settings.numbers()),
            ..empty_page(shell, question)
        }),
    }
}

/// What the page asks, and of whom.
struct Question {
    typed: BookFilter,
    reader: Reader,
    people: Vec<(Uuid, String)>,
}

impl Question {
    async fn of(app: &App, permit: &Permit<ReadBook>, typed: BookFilter) -> Result<Self> {
        Ok(Self {
            typed,
            reader: Reader::of(permit),
            people: reading::people(app, permit).await?,
        })
    }
}

fn book_page(
    shell: Shell,
    question: Question,
    found: &Page,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<BookPage> {
    let zone = settings.time_zone()?;
    let telling = words::Telling {
        names: &found.names,
        numbers: settings.numbers(),
    };
    let row = |line: &Line| match &line.shown {
        None => BookRow::NotShown { seq: line.seq },
        Some(shown) => BookRow::Shown {
            seq: line.seq,
            at: zone.words(shown.happened_at, now),
            who: who(shown, telling),
            sentence: words::sentence(&shown.kind, &shown.payload, telling),
            reversed_by: of(&found.reversals, line.seq),
        },
    };
    Ok(BookPage {
        rows: found.lines.iter().map(row).collect(),
        last_seq: found.last,
        older: found.older.map(|before| question.typed.query(Some(before))),
        ..empty_page(shell, question)
    })
}

fn of(reversals: &[(i64, i64)], seq: i64) -> Option<i64> {
    let found = reversals.iter().find(|(reversed, _)| *reversed == seq);
    found.map(|(_, by)| *by)
}

fn who(shown: &Shown, telling: words::Telling<'_>) -> Option<String> {
    let name = telling.names.find(shown.actor?)?;
    Some(name.to_owned())
}

/// The page with its questions and no entries.
fn empty_page(shell: Shell, question: Question) -> BookPage {
    let Question {
        typed,
        reader,
        people,
    } = question;
    let all = |label: &str| vec![Choice::new("", label)];
    let kind = |kind: &&str| Choice::new(*kind, words::kind_name(kind));
    let noun = |noun: &&str| Choice::new(*noun, words::noun_name(noun));
    let person = |(id, name): (Uuid, String)| Choice::new(id.to_string(), name);
    BookPage {
        shell,
        problems: crate::web::fields::Problems::none(),
        kinds: [
            all(words::ALL_KINDS),
            reader.kinds().iter().map(kind).collect(),
        ]
        .concat(),
        people: [
            all(words::EVERYBODY),
            people.into_iter().map(person).collect(),
        ]
        .concat(),
        nouns: [all(words::EVERYTHING), NOUNS.iter().map(noun).collect()].concat(),
        rows: Vec::new(),
        last_seq: 0,
        older: None,
        csv_query: typed.query(None),
        filter: typed,
    }
}

async fn book_table(
    State(app): State<App>,
    permit: Permit<ReadBook>,
    Query(typed): Query<BookFilter>,
) -> Result<Response> {
    let settings = settings(&app, &permit).await?;
    let read = typed.read(&Reader::of(&permit), &settings.time_zone()?);
    let (filter, _) = read.map_err(Error::Invalid)?;
    let table = files::table(&app, &permit, filter, settings.numbers())?;
    let name = format!("book-{}.csv", permit.membership().slug);
    Ok(attached(
        "text/csv; charset=utf-8",
        &name,
        Body::from_stream(table),
    ))
}

async fn whole_book(State(app): State<App>, permit: Permit<SealBook>) -> Result<Response> {
    let whole = files::whole(&app, &permit).await?;
    let name = format!("book-{}.jsonl", permit.membership().slug);
    Ok(attached(
        "application/jsonl",
        &name,
        Body::from_stream(whole),
    ))
}

async fn entry(
    State(app): State<App>,
    permit: Permit<ReadBook>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
) -> Result<Response> {
    let whole = reading::entry(&app, &permit, seq).await?;
    let settings = settings(&app, &permit).await?;
    let shell = frame.shell_in(&permit, Some(Place::Book));
    page(&entry_page(shell, &Reader::of(&permit), &whole, &settings)?)
}

fn entry_page(
    shell: Shell,
    reader: &Reader,
    whole: &Whole,
    settings: &Settings,
) -> Result<EntryPage> {
    let zone = settings.time_zone()?;
    let content = match (&whole.line.shown, &whole.sealed) {
        (Some(shown), Some(sealed)) => {
            let about = about(&shell, reader, whole);
            Some(content(shown, sealed, whole, about, settings, &zone))
        }
        _ => None,
    };
    Ok(EntryPage {
        shell,
        seq: whole.line.seq,
        content,
        has_next: whole.line.seq < whole.last,
    })
}

fn content(
    shown: &Shown,
    sealed: &Sealed,
    whole: &Whole,
    about: Vec<AboutShown>,
    settings: &Settings,
    zone: &Zone,
) -> EntryContent {
    let (names, numbers) = (&whole.names, settings.numbers());
    let telling = words::Telling { names, numbers };
    let wording = Wording {
        names,
        numbers,
        zone,
    };
    EntryContent {
        sentence: words::sentence(&shown.kind, &shown.payload, telling),
        kind: shown.kind.clone(),
        who: who(shown, telling),
        happened: zone.in_full(shown.happened_at),
        recorded: zone.in_full(shown.recorded_at),
        about,
        figures: figures(&shown.payload, wording),
        reverses: whole.reverses,
        reversed_by: whole.reversed_by,
        version: sealed.version,
        hash: HEXLOWER.encode(&sealed.hash),
        prev: HEXLOWER.encode(&sealed.prev),
        key: sealed.key.as_deref().map(|key| HEXLOWER.encode(key)),
        fingerprint: HEXLOWER.encode(&sealed.fingerprint),
        payload: String::from_utf8_lossy(&shown.payload).into_owned(),
    }
}

/// What the entry is about: a tray leads to its page, everything else to the
/// entries about it, as far as the reader may look for them.
fn about(shell: &Shell, reader: &Reader, whole: &Whole) -> Vec<AboutShown> {
    let one = |(noun, id): &(String, Uuid)| {
        let link = match noun.as_str() {
            "tray" => Some(format!("/trays/{id}")),
            "person" if !reader.sees_all && *id != reader.person => None,
            noun if NOUNS.contains(&noun) => Some(format!("/book?noun={noun}&id={id}")),
            _ => None,
        };
        AboutShown {
            noun: words::noun_name(noun),
            name: whole
                .names
                .find(*id)
                .map_or_else(|| id.to_string(), str::to_owned),
            link: link.map(|path| shell.at(&path)),
        }
    };
    whole.about.iter().map(one).collect()
}
