//! Who sees which entry, in every place that shows entries.

use std::collections::BTreeSet;

use futures_util::{Stream, StreamExt};
use uuid::Uuid;
use wetside::book::files;
use wetside::book::filter::{Filter, Reader};
use wetside::book::reading::{Page, entry_for, feed_for, page_for};
use wetside::error::{Error, Result};
use wetside::kinds::KINDS;
use wetside::logbook::SeenBy;
use wetside::rights::Role;
use wetside::web::messages::entries::{Telling, sentence, sentences};
use wetside::web::numbers::Numbers;

use super::bench::ENTRIES;
use super::helpers::{Library, run};

/// The entry by which the steward joined: shown to stewards and to the steward.
const STEWARD_JOINED: i64 = 2;
/// What is not shown to the member: that the steward came in, before the handovers'
/// four entries; the four of screens, before PINs and presences; what the steward
/// declared to know; that one joined.
const HIDDEN: [i64; 7] = [108, 100, 99, 98, 97, 93, STEWARD_JOINED];
/// The entry by which the member joined.
const MEMBER_JOINED: i64 = 3;

fn point() -> Numbers {
    Numbers::with_mark(".")
}

impl Library {
    pub(super) fn as_member(&self) -> Reader {
        Reader::new(self.member, Role::Member)
    }

    pub(super) fn as_steward(&self) -> Reader {
        Reader::new(self.steward, Role::Steward)
    }

    async fn page(&self, reader: Reader, filter: Filter, before: Option<i64>) -> Result<Page> {
        let scope = self.scope(reader.person);
        page_for(&self.app, scope, reader, filter, before).await
    }
}

fn numbers_of(page: &Page) -> Vec<i64> {
    page.lines.iter().map(|line| line.seq).collect()
}

/// Every line a reader finds through a filter, page after page.
async fn whole(library: &Library, reader: impl Fn() -> Reader, filter: Filter) -> Page {
    let mut whole = library.page(reader(), filter.clone(), None).await.unwrap();
    while let Some(before) = whole.older {
        let next = library.page(reader(), filter.clone(), Some(before)).await;
        let next = next.unwrap();
        whole.lines.extend(next.lines);
        whole.older = next.older;
    }
    whole
}

fn kinds_of(page: &Page) -> Vec<&str> {
    let shown = page.lines.iter().filter_map(|line| line.shown.as_ref());
    shown.map(|shown| shown.kind.as_str()).collect()
}

fn hidden_in(page: &Page) -> Vec<i64> {
    let hidden = page.lines.iter().filter(|line| line.shown.is_none());
    hidden.map(|line| line.seq).collect()
}

pub(super) async fn all_of(stream: impl Stream<Item = Result<axum::body::Bytes>>) -> String {
    let parts: Vec<_> = stream.collect().await;
    let bytes: Vec<u8> = parts.into_iter().flat_map(|part| part.unwrap()).collect();
    String::from_utf8(bytes).unwrap()
}

#[test]
fn every_kind_is_shown_to_whom_it_says() {
    let me = Uuid::from_u128(1);
    for kind in KINDS {
        for role in Role::ALL {
            let reader = Reader::new(me, role);
            let always = reader.open.iter().any(|name| name == kind.name);
            let mine = reader.own.iter().any(|name| name == kind.name);
            let expected = match (kind.seen_by, role) {
                (SeenBy::Everyone, _) | (_, Role::Steward) => (true, false),
                (SeenBy::SubjectAndStewards, _) => (false, true),
                (SeenBy::TreasurerAndStewards, Role::Treasurer) => (true, false),
                (SeenBy::TreasurerAndStewards, _) => (false, false),
            };
            assert_eq!((always, mine), expected, "{} for {role:?}", kind.name);
        }
    }
}

#[test]
fn every_kind_has_a_sentence_and_no_sentence_is_left_over() {
    let kinds: BTreeSet<&str> = KINDS.iter().map(|kind| kind.name).collect();
    let said: BTreeSet<&str> = sentences().map(|(kind, _)| *kind).collect();
    assert_eq!(kinds, said);
}

#[tokio::test]
async fn every_entry_says_what_happened_with_the_names_of_things() {
    let library = Library::open().await;
    let (mut said, mut before) = (Vec::new(), None);
    loop {
        let page = library
            .page(library.as_steward(), Filter::default(), before)
            .await
            .unwrap();
        let telling = Telling {
            names: &page.names,
            numbers: point(),
        };
        let shown = page.lines.iter().filter_map(|line| line.shown.as_ref());
        said.extend(shown.map(|shown| sentence(&shown.kind, &shown.payload, telling)));
        before = page.older;
        if before.is_none() {
            break;
        }
    }
    assert_eq!(said.len(), usize::try_from(ENTRIES).unwrap());
    for sentence in &said {
        assert!(!sentence.contains("of the kind"), "{sentence}");
        assert!(!sentence.contains("without a name"), "{sentence}");
    }
    let some = [
        "2\u{a0}L was poured off from Tray 2 into Grey drum.",
        "The note of entry 28 by Member was taken back: Counted twice.",
        "6 sheets of 8×10 in, RC, down Line, noted for Member.",
        "2\u{a0}L of Neutral paper developer at 1+9 was mixed in Tray 1.",
        "Member joined as member, number 2.",
        "The room Ours was opened.",
    ];
    for sentence in some {
        assert!(
            said.iter().any(|one| one == sentence),
            "{sentence}: {said:#?}"
        );
    }
}

#[tokio::test]
async fn what_is_not_shown_keeps_its_number_and_nothing_else() {
    let library = Library::open().await;
    let everything: Vec<i64> = (1..=ENTRIES).rev().collect();
    let page = whole(&library, || library.as_member(), Filter::default()).await;
    assert_eq!(numbers_of(&page), everything);
    assert_eq!(hidden_in(&page), HIDDEN);
    assert_eq!(page.last, ENTRIES);
    let page = whole(&library, || library.as_steward(), Filter::default()).await;
    assert!(hidden_in(&page).is_empty());

    let scope = library.scope(library.member);
    let feed = feed_for(&library.app, scope, library.as_member(), 0, 500)
        .await
        .unwrap();
    let hidden: Vec<i64> = feed
        .lines
        .iter()
        .rev()
        .filter(|line| line.shown.is_none())
        .map(|line| line.seq)
        .collect();
    assert_eq!(hidden, HIDDEN);
    assert!(feed.about.iter().all(|(seq, _, _)| *seq != STEWARD_JOINED));

    let one = entry_for(&library.app, scope, library.as_member(), STEWARD_JOINED)
        .await
        .unwrap();
    assert!(one.line.shown.is_none() && one.sealed.is_none() && one.about.is_empty());
    let own = entry_for(&library.app, scope, library.as_member(), MEMBER_JOINED)
        .await
        .unwrap();
    assert!(own.line.shown.is_some() && own.sealed.is_some());
    for seq in [0, -1, ENTRIES + 1, i64::MIN, i64::MAX] {
        let none = entry_for(&library.app, scope, library.as_member(), seq).await;
        assert!(matches!(none, Err(Error::NotFound)), "entry {seq}");
    }
}

#[tokio::test]
async fn a_filter_never_tells_what_is_not_shown() {
    let library = Library::open().await;
    let joined = Filter {
        kind: Some("joined".to_owned()),
        ..Filter::default()
    };
    let happened = Filter {
        happened_from: Some(super::helpers::START),
        ..Filter::default()
    };
    let persons = Filter {
        noun: Some("person".to_owned()),
        ..Filter::default()
    };
    for filter in [&joined, &happened, &persons] {
        let page = whole(&library, || library.as_member(), filter.clone()).await;
        let numbers = numbers_of(&page);
        assert!(
            !numbers.contains(&STEWARD_JOINED),
            "{filter:?}: {numbers:?}"
        );
        assert!(numbers.contains(&MEMBER_JOINED), "{filter:?}: {numbers:?}");
    }
    let page = library
        .page(library.as_steward(), joined, None)
        .await
        .unwrap();
    assert_eq!(numbers_of(&page), [MEMBER_JOINED, STEWARD_JOINED]);
    // By the time of writing the number may stay: its neighbours tell as much.
    let recorded = Filter {
        recorded_from: Some(super::helpers::START),
        ..Filter::default()
    };
    let page = whole(&library, || library.as_member(), recorded).await;
    assert_eq!(hidden_in(&page), HIDDEN);
}

#[tokio::test]
async fn only_stewards_look_for_somebody_else() {
    let library = Library::open().await;
    let by = |person| Filter {
        person: Some(person),
        ..Filter::default()
    };
    let about = |person| Filter {
        noun: Some("person".to_owned()),
        id: Some(person),
        ..Filter::default()
    };
    let of_no_sort = Filter {
        id: Some(library.steward),
        ..Filter::default()
    };
    for filter in [by(library.steward), about(library.steward), of_no_sort] {
        let refused = library.page(library.as_member(), filter, None).await;
        assert!(matches!(refused, Err(Error::Forbidden)));
    }
    let own = library
        .page(library.as_member(), by(library.member), None)
        .await
        .unwrap();
    // From the last: a workshop, handovers, times of being there, a PIN, inductions,
    // incidents, notes.
    let wanted = "workshop_taken_over handed_over handover_opened handover_withdrawn \
        handover_opened not_confirmed_left arrived left leaving_expected arrived pin_removed \
        pin_set induction_scan_removed induction_scanned induction_scanned \
        induction_withdrawn inducted induction_confirmed inducted incident_erased \
        incident_reported incident_finished incident_looked_at incident_reported film_noted \
        note_undone noted \
        noted joined";
    assert_eq!(kinds_of(&own).join(" "), wanted);
    let asked = library
        .page(library.as_steward(), by(library.member), None)
        .await
        .unwrap();
    assert_eq!(numbers_of(&asked), numbers_of(&own));
}

#[tokio::test]
async fn each_part_of_a_filter_narrows_it() {
    let library = Library::open().await;
    let reader = || library.as_steward();
    let all = whole(&library, reader, Filter::default()).await;
    // The first of them: the last of the lines.
    let tray = all.lines.iter().rev().find_map(|line| {
        let shown = line.shown.as_ref()?;
        let value: serde_json::Value = serde_json::from_slice(&shown.payload).ok()?;
        (shown.kind == "discarded").then(|| Uuid::parse_str(value["tray_id"].as_str()?).ok())?
    });
    let about_tray = Filter {
        noun: Some("tray".to_owned()),
        id: tray,
        ..Filter::default()
    };
    let page = library
        .page(reader(), about_tray.clone(), None)
        .await
        .unwrap();
    // A note is about the trays it wore.
    let wanted = "stored discard_undone discarded note_undone noted noted mixed tray_set";
    assert_eq!(kinds_of(&page).join(" "), wanted);
    let mixed = Filter {
        kind: Some("mixed".to_owned()),
        ..about_tray
    };
    let page = library.page(reader(), mixed, None).await.unwrap();
    assert_eq!(page.lines.len(), 1);
    let later = Filter {
        recorded_from: Some(super::helpers::START + time::Duration::seconds(1)),
        ..Filter::default()
    };
    let earlier = Filter {
        happened_before: Some(super::helpers::START),
        ..Filter::default()
    };
    for filter in [later, earlier] {
        let page = library.page(reader(), filter, None).await.unwrap();
        assert!(page.lines.is_empty());
    }
}

#[tokio::test]
async fn paging_shows_every_number_once_while_the_book_grows() {
    let library = Library::open().await;
    for _ in 0..90 {
        library.write_more().await;
    }
    let last = ENTRIES + 90;
    let (mut before, mut seen) = (None, Vec::new());
    loop {
        let page = library
            .page(library.as_member(), Filter::default(), before)
            .await
            .unwrap();
        assert!(page.lines.len() <= 50);
        seen.extend(numbers_of(&page));
        // Something is written between two pages; it shifts nothing.
        library.write_more().await;
        before = page.older;
        if before.is_none() {
            break;
        }
    }
    assert_eq!(seen, (1..=last).rev().collect::<Vec<_>>());
}

#[tokio::test]
async fn the_table_holds_what_the_pages_show_and_no_formula() {
    let library = Library::open().await;
    let mut db = library.db().await;
    run(
        &mut db,
        "update person set name = '=1+1' where log_in_name = 'steward'",
    )
    .await;
    for _ in 0..600 {
        library.write_more().await;
    }
    let scope = library.scope(library.member);
    let table = |filter| {
        files::table_for(&library.app, scope, library.as_member(), filter, point()).unwrap()
    };
    let text = all_of(table(Filter::default())).await;
    let mut read = csv::Reader::from_reader(text.as_bytes());
    let rows: Vec<csv::StringRecord> = read.records().map(|row| row.unwrap()).collect();
    let numbers: Vec<i64> = rows.iter().map(|row| row[0].parse().unwrap()).collect();
    assert_eq!(numbers, (1..=ENTRIES + 600).rev().collect::<Vec<_>>());
    let hidden = &rows[rows.len() - usize::try_from(STEWARD_JOINED).unwrap()];
    assert_eq!(
        hidden.iter().collect::<Vec<_>>(),
        ["2", "", "", "", "", "entry 2, not shown to you"]
    );
    assert_eq!(&rows[0][4], "'=1+1");
    let dangerous = ['=', '+', '-', '@'];
    assert!(
        rows.iter()
            .all(|row| row.iter().all(|cell| !cell.starts_with(dangerous)))
    );

    let other = Filter {
        person: Some(library.steward),
        ..Filter::default()
    };
    let refused = files::table_for(&library.app, scope, library.as_member(), other, point());
    assert!(matches!(refused.err(), Some(Error::Forbidden)));
}

#[tokio::test]
async fn the_pages_show_each_what_they_may_see() {
    let library = Library::open().await;
    let member = library.log_in(library.member).await;
    let steward = library.log_in(library.steward).await;
    let stranger = library.log_in(library.stranger().await).await;
    let (status, text) = library
        .ask(&member, "GET", "/rooms/ours/book?before=20")
        .await;
    assert_eq!(status, 200, "{text}");
    assert!(text.contains("entry 2, not shown to you"), "{text}");
    assert!(!text.contains("Steward joined"), "{text}");
    let (_, text) = library
        .ask(&steward, "GET", "/rooms/ours/book?before=20")
        .await;
    assert!(
        text.contains("Steward joined as steward, number 1."),
        "{text}"
    );
    let (status, text) = library.ask(&member, "GET", "/rooms/ours/book/2").await;
    assert_eq!(status, 200, "{text}");
    assert!(
        text.contains("not shown to you") && !text.contains("joined"),
        "{text}"
    );
    let (status, text) = library.ask(&member, "GET", "/rooms/ours/book/18").await;
    assert_eq!(status, 200, "{text}");
    for path in [
        "/book",
        "/book/1",
        "/book.csv",
        "/book.jsonl",
        "/checkpoints",
        "/notices",
    ] {
        let (status, _) = library
            .ask(&stranger, "GET", &format!("/rooms/ours{path}"))
            .await;
        assert_eq!(status, 404, "a stranger asks for {path}");
    }
    let (status, _) = library.ask(&member, "GET", "/rooms/ours/book.jsonl").await;
    assert_eq!(status, 403, "the whole book is not a member's");
    let (status, _) = library
        .ask(&member, "POST", "/rooms/ours/checkpoints")
        .await;
    assert_eq!(status, 403);
    let (status, _) = library
        .ask(
            &member,
            "GET",
            &format!("/rooms/ours/book?person={}", library.steward),
        )
        .await;
    assert_eq!(status, 403);
    let (status, text) = library
        .ask(&member, "GET", "/rooms/ours/book?from=soon")
        .await;
    assert_eq!(status, 422);
    assert!(text.contains("This is no date."), "{text}");
}

#[tokio::test]
async fn a_steward_seals_the_book_and_takes_the_checkpoint_away() {
    let library = Library::open().await;
    let steward = library.log_in(library.steward).await;
    let (status, text) = library
        .ask(&steward, "GET", "/rooms/ours/checkpoints")
        .await;
    assert_eq!(status, 200);
    assert!(
        text.contains("There is none before the first checkpoint."),
        "{text}"
    );
    let (status, _) = library
        .ask(&steward, "POST", "/rooms/ours/checkpoints")
        .await;
    assert_eq!(status, 303);
    let (_, text) = library
        .ask(&steward, "GET", "/rooms/ours/checkpoints")
        .await;
    let page = scraper::Html::parse_document(&text);
    let link = scraper::Selector::parse("a[href*='/checkpoints/checkpoint-']").unwrap();
    let href = page.select(&link).next().unwrap().attr("href").unwrap();
    let (status, line) = library.ask(&steward, "GET", href).await;
    assert_eq!(status, 200);
    let value: serde_json::Value = serde_json::from_str(&line).unwrap();
    assert_eq!(value["seq"], ENTRIES);
    let none = "/rooms/ours/checkpoints/checkpoint-1-1.json";
    let (status, _) = library.ask(&steward, "GET", none).await;
    assert_eq!(status, 404);
}
