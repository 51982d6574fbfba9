//! Papers, products, the book, notices: invented data.

use askama::Template;
use wetside::book::figures::Figure;
use wetside::book::views::{
    AboutShown, BookFilter, BookPage, BookRow, CheckpointRow, CheckpointsPage, EntryContent,
    EntryPage, LastVerified,
};
use wetside::notices::views::{NoticeRow, NoticesPage};
use wetside::papers::views::{ClassRow, PapersForm, PapersPage, SizeRow};
use wetside::web::desk::RetiredRow;
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("papers", papers),
    ("book", book),
    ("book-none", book_none),
    ("entry", entry),
    ("entry-not-shown", entry_not_shown),
    ("checkpoints", checkpoints),
    ("notices", notices),
    ("notices-none", notices_none),
];

pub(crate) fn retired_row(name: &str, restore: &str) -> RetiredRow {
    RetiredRow {
        name: name.to_owned(),
        restore: restore.to_owned(),
    }
}

fn papers(shell: Shell) -> String {
    let size = |id: &str, name: &str, sides: &str, equivalent: &str| SizeRow {
        id: id.to_owned(),
        name: name.to_owned(),
        sides: sides.to_owned(),
        equivalent: equivalent.to_owned(),
    };
    let page = PapersPage {
        shell: Shell {
            place: Some(Place::Papers),
            ..shell
        },
        sizes: vec![
            size("s1", "5×7 in", "177.8 × 127 mm", "0.44"),
            size("s2", "8×10 in", "254 × 203.2 mm", "1"),
            size("s3", "11×14 in", "355.6 × 279.4 mm", "1.93"),
        ],
        classes: vec![
            ClassRow {
                id: "c1".to_owned(),
                name: "RC".to_owned(),
                silver: "1.2 g/m² (0.5 to 1.6)".to_owned(),
                basis: "set by a steward".to_owned(),
                carry_over: "40 ml/m²".to_owned(),
            },
            ClassRow {
                id: "c2".to_owned(),
                name: "FB".to_owned(),
                silver: "not on file".to_owned(),
                basis: String::new(),
                carry_over: "not on file".to_owned(),
            },
        ],
        retired: vec![retired_row("9×12 cm", "/papers/sizes/s9/restore")],
        form: PapersForm::default(),
        problems: Problems::none(),
        unit: "mm".to_owned(),
        may_change: true,
    };
    page.render().unwrap()
}

fn shown(seq: i64, at: &str, sentence: &str, reversed_by: Option<i64>) -> BookRow {
    BookRow::Shown {
        seq,
        at: moment(at),
        who: Some("Ines Vatry".to_owned()),
        sentence: sentence.to_owned(),
        reversed_by,
    }
}

fn book_page(shell: Shell, rows: Vec<BookRow>) -> String {
    let page = BookPage {
        shell: Shell {
            place: Some(Place::Book),
            ..shell
        },
        filter: BookFilter::default(),
        problems: Problems::none(),
        kinds: vec![
            Choice::new("", "All kinds"),
            Choice::new("pass", "Sheets noted"),
        ],
        people: vec![Choice::new("", "Everyone"), Choice::new("1", "Ines Vatry")],
        nouns: vec![Choice::new("", "Anything"), Choice::new("tray", "A tray")],
        older: (!rows.is_empty()).then(|| "?before=398".to_owned()),
        rows,
        last_seq: 419,
        csv_query: String::new(),
    };
    page.render().unwrap()
}

fn book(shell: Shell) -> String {
    book_page(
        shell,
        vec![
            shown(
                419,
                "17:02",
                "Noted 6 sheets of 8×10 in, RC, on Long bench.",
                None,
            ),
            BookRow::NotShown { seq: 418 },
            shown(417, "16:24", "Took back the note of entry 415.", None),
            shown(
                415,
                "15:05",
                "Noted 60 sheets of 8×10 in, RC, on Long bench.",
                Some(417),
            ),
            shown(
                412,
                "13:10",
                "Mixed 1 L of Larch print developer 1+9 into Developer.",
                None,
            ),
            shown(
                398,
                "Wed 25 Nov, 21:40",
                "Discarded 1 L from Developer into container D-2.",
                None,
            ),
        ],
    )
}

fn book_none(shell: Shell) -> String {
    book_page(shell, Vec::new())
}

fn entry(shell: Shell) -> String {
    let content = EntryContent {
        sentence: "Noted 60 sheets of 8×10 in, RC, on Long bench.".to_owned(),
        kind: "pass".to_owned(),
        who: Some("Mirea Dunst".to_owned()),
        happened: moment("Thursday 26 November 2026, 15:05:00"),
        recorded: moment("Thursday 26 November 2026, 15:06:12"),
        about: vec![
            AboutShown {
                noun: "line".to_owned(),
                name: "Long bench".to_owned(),
                link: None,
            },
            AboutShown {
                noun: "tray".to_owned(),
                name: "Developer".to_owned(),
                link: Some("./rooms/north-quay/trays/t1".to_owned()),
            },
        ],
        figures: vec![Figure {
            label: "sheets".to_owned(),
            value: "60".to_owned(),
        }],
        reverses: None,
        reversed_by: Some(417),
        version: 1,
        hash: "9b".repeat(32),
        prev: "4e".repeat(32),
        key: Some("c1".repeat(16)),
        fingerprint: "07".repeat(32),
        payload:
            "{\"line\":\"0197\",\"sheets\":60,\"wear\":[{\"mix\":\"0198\",\"spent_nl\":600000000}]}"
                .to_owned(),
    };
    let page = EntryPage {
        shell,
        seq: 415,
        content: Some(content),
        has_next: true,
    };
    page.render().unwrap()
}

fn entry_not_shown(shell: Shell) -> String {
    let page = EntryPage {
        shell,
        seq: 418,
        content: None,
        has_next: true,
    };
    page.render().unwrap()
}

fn checkpoints(shell: Shell) -> String {
    let row = |seq, at: &str| CheckpointRow {
        seq,
        hash: "9b".repeat(32),
        at: moment(at),
        file: format!("north-quay-{seq}.json"),
    };
    let page = CheckpointsPage {
        shell: Shell {
            place: Some(Place::Checkpoints),
            ..shell
        },
        checkpoints: vec![row(412, "04:00"), row(398, "Wed 25 Nov, 04:00")],
        refused: 1,
        verified: Some(LastVerified {
            at: moment("03:10"),
            entries: 412,
            findings: 0,
        }),
        public_key: "5d".repeat(32),
        may_make: true,
    };
    page.render().unwrap()
}

fn notices_page(shell: Shell, notices: Vec<NoticeRow>) -> String {
    let page = NoticesPage {
        shell: Shell {
            place: Some(Place::Notices),
            ..shell
        },
        notices,
        older: None,
    };
    page.render().unwrap()
}

fn notices(shell: Shell) -> String {
    let notice = |at: &str, sentence: &str, link: Option<&str>, is_new| NoticeRow {
        notes: if is_new { vec![418, 421] } else { Vec::new() },
        at: moment(at),
        sentence: sentence.to_owned(),
        link: link.map(str::to_owned),
        is_new,
    };
    notices_page(
        shell,
        vec![
            notice(
                "17:00",
                "An invitation as Member ended unused.",
                Some("./rooms/north-quay/members"),
                true,
            ),
            notice(
                "04:00",
                "The book was checked: all 398 entries fit.",
                None,
                true,
            ),
            notice(
                "Wed 25 Nov, 04:00",
                "The book was checked: all 377 entries fit.",
                None,
                false,
            ),
        ],
    )
}

fn notices_none(shell: Shell) -> String {
    notices_page(shell, Vec::new())
}
