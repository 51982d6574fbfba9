//! Lamps, screens and their fog tests, with invented data.

use askama::Template;
use wetside::lamps::views::{
    FogTestForm, FogTestPage, LampForm, LampFormPage, LampPage, LampShown, LampsPage, PaperShown,
    TestRow,
};
use wetside::web::desk::RetiredRow;
use wetside::web::fields::{Choice, Problems};
use wetside::web::messages::lamps::TAKE_BACK;
use wetside::web::shell::{Place, Shell};
use wetside::web::views::{ReasonForm, TakeBackPage};

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("lamps", lamps),
    ("lamps-none", lamps_none),
    ("lamp", lamp),
    ("lamp-change", lamp_change),
    ("fog-test", fog_test),
    ("fog-test-back", fog_test_back),
];

fn placed(shell: Shell) -> Shell {
    Shell {
        place: Some(Place::Lamps),
        ..shell
    }
}

fn paper(name: &str, word: &'static str, time: Option<&str>, said: &str) -> PaperShown {
    PaperShown {
        name: name.to_owned(),
        word,
        time: time.map(str::to_owned),
        said: said.to_owned(),
    }
}

fn sink() -> LampShown {
    LampShown {
        id: "1".to_owned(),
        name: "Red lamp over the sink".to_owned(),
        about: "Safelight: 15 W behind a red filter. 1200 mm from the nearest paper.".to_owned(),
        papers: vec![
            paper(
                "Resin-coated",
                "Tested safe time",
                Some("2\u{a0}min 49\u{a0}s"),
                "Tested Tue 3 Nov 2026, again by Wed 3 Nov 2027.",
            ),
            paper(
                "Fibre-based",
                "Test overdue",
                None,
                "It was tested Sun 26 Oct 2025 and gave 4 min. The next test is overdue since Mon 26 Oct 2026: until then treat it as unsafe.",
            ),
        ],
    }
}

fn screen() -> LampShown {
    LampShown {
        id: "2".to_owned(),
        name: "Wall screen".to_owned(),
        about: "Screen: lowest brightness. 450 mm from the nearest paper.".to_owned(),
        papers: vec![
            paper(
                "Resin-coated",
                "Moved since its test",
                None,
                "It was tested Tue 3 Nov 2026, at 700 mm. Until it is tested as it hangs now, treat it as unsafe.",
            ),
            paper(
                "Fibre-based",
                "Never tested",
                None,
                "Treat it as unsafe for this paper.",
            ),
        ],
    }
}

fn lamps(shell: Shell) -> String {
    let page = LampsPage {
        shell: placed(shell),
        lamps: vec![sink(), screen()],
        retired: vec![RetiredRow {
            name: "Old green lamp".to_owned(),
            restore: "/lamps/3/restore".to_owned(),
        }],
        key: "k".to_owned(),
        may_test: true,
        may_keep: true,
    };
    page.render().unwrap()
}

fn lamps_none(shell: Shell) -> String {
    let page = LampsPage {
        shell: placed(shell),
        lamps: Vec::new(),
        retired: Vec::new(),
        key: "k".to_owned(),
        may_test: true,
        may_keep: true,
    };
    page.render().unwrap()
}

fn lamp(shell: Shell) -> String {
    let row = |seq: i64, undone_by: Option<i64>| TestRow {
        seq,
        id: seq.to_string(),
        at: moment("Tue 3 Nov 2026, 18:05"),
        found: "Resin-coated: clean up to 4 min, fogged from 8 min on. Safe time 2 min 49 s."
            .to_owned(),
        more:
            "Tested by Tomasz Orlen at 1200 mm (15 W behind a red filter); again by Wed 3 Nov 2027."
                .to_owned(),
        undone_by,
    };
    let page = LampPage {
        shell: placed(shell),
        lamp: sink(),
        is_retired: false,
        tests: vec![row(412, None), row(398, Some(400))],
        older: Some("?before=398".to_owned()),
        may_test: true,
        may_keep: true,
        may_take_back: true,
    };
    page.render().unwrap()
}

fn lamp_change(shell: Shell) -> String {
    let page = LampFormPage {
        shell: placed(shell),
        id: Some("1".to_owned()),
        kinds: vec![
            Choice::new("safelight", "Safelight").explained("A lamp to work with paper by"),
            Choice::new("screen", "Screen").explained("On the wall, on the bench or in a hand"),
        ],
        spaces: vec![
            Choice::new("", "The room itself"),
            Choice::new("c", "Cellar"),
        ],
        unit: "mm",
        form: LampForm {
            key: "k".to_owned(),
            name: "Red lamp over the sink".to_owned(),
            kind: "safelight".to_owned(),
            light: "15 W behind a red filter".to_owned(),
            distance: "12".to_owned(),
            space: "c".to_owned(),
            months: "12".to_owned(),
        },
        problems: Problems::one("distance", "Give something from 50 mm to 10 m."),
    };
    page.render().unwrap()
}

fn fog_test(shell: Shell) -> String {
    let page = FogTestPage {
        shell: placed(shell),
        id: "1".to_owned(),
        name: "Red lamp over the sink".to_owned(),
        about: sink().about,
        classes: vec![
            Choice::new("rc", "Resin-coated"),
            Choice::new("fb", "Fibre-based"),
        ],
        days: vec![Choice::new("2026-11-26", "Thu 26 Nov 2026")],
        form: FogTestForm {
            key: "k".to_owned(),
            paper_class: "rc".to_owned(),
            clean: "8".to_owned(),
            fogged: "4:30".to_owned(),
            when: "now".to_owned(),
            ..FogTestForm::default()
        },
        problems: Problems::one(
            "fogged",
            "Light fogs more the longer it shines. Look at the strips again.",
        ),
        may_keep: true,
    };
    page.render().unwrap()
}

fn fog_test_back(shell: Shell) -> String {
    let page = TakeBackPage {
        words: TAKE_BACK,
        action: shell.at("/fog-tests/1/take-back"),
        back: shell.at("/lamps/1"),
        shell: placed(shell),
        back_name: "Red lamp over the sink".to_owned(),
        found: "Resin-coated: nothing fogged up to 8 min. Safe time 4 min, a lower figure."
            .to_owned(),
        at: moment("Tue 3 Nov 2026, 18:05"),
        is_undone: false,
        form: ReasonForm {
            key: "k".to_owned(),
            reason: String::new(),
        },
        problems: Problems::one("reason", "Fill this in."),
    };
    page.render().unwrap()
}
