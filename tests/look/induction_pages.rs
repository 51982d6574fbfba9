//! Topics and inductions, with invented people.

use askama::Template;
use wetside::inductions::scans::views::{ScanForm, ScanPage, ScanShown};
use wetside::inductions::views::{
    BesideForm, CoveredRow, InForcePage, InForceRow, InductionForm, InductionFormPage,
    InductionsPage, PersonPage, PersonRow, RecordPage, RecordShown, StandingRow, SupplementRow,
    WithdrawForm, WithdrawPage,
};
use wetside::topics::views::{
    TopicForm, TopicFormPage, TopicPage, TopicRow, TopicsPage, VersionRow,
};
use wetside::web::desk::RetiredRow;
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::bench_pages::moment;
use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("topics", topics),
    ("topics-none", topics_none),
    ("topic", topic),
    ("topic-old", topic_old),
    ("topic-change", topic_change),
    ("inductions", inductions),
    ("inductions-none", inductions_none),
    ("induction-own", own),
    ("induction-person", person),
    ("induction-record", record_page),
    ("induction-in-force", in_force),
    ("induction-new", induction_new),
    ("induction-withdraw", induction_withdraw),
    ("induction-scan", scan_new),
];

fn placed(shell: Shell, place: Place) -> Shell {
    Shell {
        place: Some(place),
        ..shell
    }
}

fn topics_page(shell: Shell, topics: Vec<TopicRow>, starters: usize) -> String {
    let page = TopicsPage {
        shell: placed(shell, Place::Topics),
        topics,
        retired: vec![RetiredRow {
            name: "Old enlarger lamps".to_owned(),
            restore: "/topics/9/restore".to_owned(),
        }],
        starters,
        key: "k".to_owned(),
        may_keep: true,
    };
    page.render().unwrap()
}

fn topics(shell: Shell) -> String {
    let row = |id: &str, title: &str, required: &str| TopicRow {
        id: id.to_owned(),
        title: title.to_owned(),
        required: required.to_owned(),
        about: "Version 2, good for 24 months.".to_owned(),
    };
    let rows = vec![
        row("1", "Eyewash", "Required of everyone who comes in."),
        row(
            "2",
            "Sensitisers and long exposure",
            "Required while a sensitiser is in a tray or stands here as concentrate.",
        ),
    ];
    topics_page(shell, rows, 2)
}

fn topics_none(shell: Shell) -> String {
    topics_page(shell, Vec::new(), 11)
}

fn topic_page(shell: Shell, version: i32) -> String {
    let row = |version: i32, title: &str| VersionRow {
        version,
        title: title.to_owned(),
        at: moment("Tue 3 Nov 2026, 18:05"),
        seq: 400 + i64::from(version),
    };
    let page = TopicPage {
        shell: placed(shell, Place::Topics),
        id: "1".to_owned(),
        title: "Eyewash".to_owned(),
        paragraphs: strings(&[
            "Know where it is and go there once with closed eyes, before you need it.",
            "Go on to a doctor even where it has stopped hurting.",
        ]),
        version,
        is_last: version == 2,
        required: "Required of everyone who comes in.".to_owned(),
        about: "Version 2, good for 24 months.".to_owned(),
        is_retired: false,
        versions: vec![row(2, "Eyewash"), row(1, "Where the eyewash is")],
        may_keep: true,
    };
    page.render().unwrap()
}

fn topic(shell: Shell) -> String {
    topic_page(shell, 2)
}

fn topic_old(shell: Shell) -> String {
    topic_page(shell, 1)
}

fn topic_change(shell: Shell) -> String {
    let page = TopicFormPage {
        shell: placed(shell, Place::Topics),
        id: Some("1".to_owned()),
        when: vec![
            Choice::new("always", "Everyone, always"),
            Choice::new("by_trait", "By what is here").explained("While it is here"),
            Choice::new("by_product", "By product"),
            Choice::new("offered", "Nobody"),
        ],
        traits: vec![
            Choice::new("sensitiser", "A sensitiser").explained("H317 on its sheet"),
            Choice::new("toner", "A toner"),
        ],
        products: vec![Choice::new("p", "Larch print developer")],
        again: vec![
            Choice::new("anew", "Everyone anew"),
            Choice::new("on_renewal", "Only on renewal"),
        ],
        form: TopicForm {
            key: "k".to_owned(),
            title: "Eyewash".to_owned(),
            body: "Know where it is.\n\nGo there once.".to_owned(),
            required: "by_trait".to_owned(),
            traits: Vec::new(),
            products: Vec::new(),
            months: "24".to_owned(),
            again: "on_renewal".to_owned(),
        },
        problems: Problems::one("traits", "Fill this in."),
    };
    page.render().unwrap()
}

fn beside() -> BesideForm {
    BesideForm {
        key: "k".to_owned(),
        number: "12".to_owned(),
        pin: String::new(),
    }
}

fn overview(shell: Shell, required: &[&str], supplements: Vec<SupplementRow>) -> String {
    let row = |id: &str, name: &str, missing: &[&str], ends: &[&str], waiting| PersonRow {
        id: id.to_owned(),
        number: 12,
        name: name.to_owned(),
        in_force: "9 of 11 topics in force".to_owned(),
        missing: strings(missing),
        ends: strings(ends),
        waiting,
    };
    let page = InductionsPage {
        shell: placed(shell, Place::Inductions),
        people: vec![
            row("p1", "Ines Vatry", &[], &["Spills: ends Thu 3 Dec 2026"], 0),
            row("p2", "Ottmar Quill", &["Eyewash", "Spills"], &[], 1),
        ],
        required: strings(required),
        supplements,
        form: beside(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn inductions(shell: Shell) -> String {
    let due = SupplementRow {
        id: "p".to_owned(),
        product: "Larch lith developer".to_owned(),
        sentences: strings(&["Lith developer: tell Ottmar Quill, Sunniva Braithe."]),
    };
    overview(shell, &["Eyewash", "Spills"], vec![due])
}

fn inductions_none(shell: Shell) -> String {
    overview(shell, &[], Vec::new())
}

fn record(withdrawn: Option<&str>) -> RecordShown {
    RecordShown {
        id: "i1".to_owned(),
        seq: 412,
        person_id: "p2".to_owned(),
        person: "Ottmar Quill".to_owned(),
        basis: "Inducted Thu 26 Nov 2026 by Ines Vatry.".to_owned(),
        confirmed: "Confirmed from their own account, Thu 26 Nov 2026, 18:05.".to_owned(),
        withdrawn: withdrawn.map(str::to_owned),
        topics: vec![CoveredRow {
            topic: "1".to_owned(),
            version: 2,
            words: "Eyewash, version 2, good until Sun 26 Nov 2028".to_owned(),
        }],
        remark: "Signed sheet in the grey binder".to_owned(),
        renews: Some("i0".to_owned()),
    }
}

fn person_page(shell: Shell, is_own: bool) -> String {
    let standing = |title: &str, said: &str, holds, ends_soon| StandingRow {
        topic: "1".to_owned(),
        title: title.to_owned(),
        is_required: true,
        standing: said.to_owned(),
        holds,
        ends_soon,
    };
    let page = PersonPage {
        shell: placed(shell, Place::OwnInductions),
        id: "p2".to_owned(),
        name: "Ottmar Quill".to_owned(),
        is_own,
        standings: vec![
            standing("Eyewash", "In force until Thu 3 Dec 2026", true, true),
            standing("Spills", "Waits for confirmation", false, false),
        ],
        records: vec![record(None), record(Some("Withdrawn: the wrong evening."))]
            .into_iter()
            .zip(412..)
            .map(|(record, seq)| RecordShown { seq, ..record })
            .collect(),
        waiting: 1,
        form: beside(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn own(shell: Shell) -> String {
    person_page(shell, true)
}

fn person(shell: Shell) -> String {
    person_page(shell, false)
}

fn record_page(shell: Shell) -> String {
    let page = RecordPage {
        shell: placed(shell, Place::OwnInductions),
        record: record(None),
        as_of: moment("Thu 26 Nov 2026, 18:05"),
        scans: vec![
            scan("Scan, PDF, 1.2\u{a0}MB, added Thu 26 Nov 2026, 18:04", true),
            scan("A scan (JPEG) of Thu 26 Nov 2026, 18:02 was erased.", false),
        ],
        may_keep: true,
    };
    page.render().unwrap()
}

fn scan(words: &str, is_there: bool) -> ScanShown {
    ScanShown {
        id: "s1".to_owned(),
        words: words.to_owned(),
        is_there,
    }
}

fn scan_new(shell: Shell) -> String {
    let page = ScanPage {
        shell: placed(shell, Place::Inductions),
        record: record(None),
        others: vec![Choice::new("i2", "Ines Vatry")],
        form: ScanForm {
            key: "k".to_owned(),
            also: strings(&["i2"]),
        },
        problems: Problems::one(
            "scan",
            "Choose a file: the paper as a PDF, or photographed.",
        ),
    };
    page.render().unwrap()
}

fn in_force(shell: Shell) -> String {
    let page = InForcePage {
        shell: placed(shell, Place::Inductions),
        as_of: moment("Thu 26 Nov 2026, 18:05"),
        people: vec![InForceRow {
            number: 12,
            name: "Ottmar Quill".to_owned(),
            topics: strings(&["Eyewash, until Sun 26 Nov 2028", "Spills"]),
        }],
    };
    page.render().unwrap()
}

fn induction_new(shell: Shell) -> String {
    let page = InductionFormPage {
        shell: placed(shell, Place::Inductions),
        people: vec![
            Choice::new("p1", "Ines Vatry"),
            Choice::new("p2", "Ottmar Quill"),
        ],
        topics: vec![
            Choice::new("1", "Eyewash").explained("Version 2, good for 24 months."),
            Choice::new("2", "Spills").explained("Version 1, good without end."),
        ],
        bases: vec![
            Choice::new("given", "Told in person").explained("They confirm it afterwards"),
            Choice::new("on_paper", "A signed paper"),
        ],
        form: InductionForm {
            key: "k".to_owned(),
            people: strings(&["p2"]),
            topics: strings(&["1"]),
            on: "2026-11-27".to_owned(),
            basis: "given".to_owned(),
            remark: String::new(),
            renews: "i0".to_owned(),
        },
        problems: Problems::one("on", "This lies in the future."),
    };
    page.render().unwrap()
}

fn induction_withdraw(shell: Shell) -> String {
    let page = WithdrawPage {
        shell: placed(shell, Place::Inductions),
        record: record(None),
        form: WithdrawForm {
            key: "k".to_owned(),
            reason: String::new(),
        },
        problems: Problems::one("reason", "Fill this in."),
    };
    page.render().unwrap()
}
