//! Room checks, with invented data.

use askama::Template;
use wetside::checks::views::{
    CheckForm, CheckFormPage, CheckPage, CheckShown, ChecksPage, FogTestLine, RecordPage,
    ResultForm, ResultRow,
};
use wetside::web::desk::RetiredRow;
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("checks", checks),
    ("checks-none", checks_none),
    ("check", check),
    ("check-change", check_change),
    ("check-record", check_record),
];

fn placed(shell: Shell) -> Shell {
    Shell {
        place: Some(Place::Checks),
        ..shell
    }
}

fn eyewash() -> CheckShown {
    CheckShown {
        id: "1".to_owned(),
        name: "Eyewash".to_owned(),
        space: Some("Cellar".to_owned()),
        loud: Some("Failed"),
        due: "Due by Thu 3 Dec 2026.".to_owned(),
        last: "Last on Thu 26 Nov 2026. Failed: the left stream only drips.".to_owned(),
        to_do: Some("Nobody pours concentrate until it runs again.".to_owned()),
        every: "Every week".to_owned(),
    }
}

fn spill_kit() -> CheckShown {
    CheckShown {
        id: "2".to_owned(),
        name: "Spill kit".to_owned(),
        space: None,
        loud: None,
        due: "Due by Wed 9 Dec 2026.".to_owned(),
        last: "Last on Mon 9 Nov 2026. Passed.".to_owned(),
        to_do: None,
        every: "Every 30 days".to_owned(),
    }
}

fn checks(shell: Shell) -> String {
    let gloves = CheckShown {
        id: "3".to_owned(),
        name: "Gloves, goggles and tongs".to_owned(),
        due: "Due today.".to_owned(),
        last: "Never done here.".to_owned(),
        ..spill_kit()
    };
    let page = ChecksPage {
        shell: placed(shell),
        to_do: vec![eyewash(), gloves],
        later: vec![spill_kit()],
        fog_tests: vec![FogTestLine {
            lamp: "1".to_owned(),
            name: "Red lamp over the sink".to_owned(),
            said: "Red lamp over the sink: fog test again by Wed 3 Nov 2027.".to_owned(),
        }],
        retired: vec![RetiredRow {
            name: "Old fan".to_owned(),
            restore: "/checks/4/restore".to_owned(),
        }],
        offers_starters: true,
        key: "k".to_owned(),
        may_record: true,
        may_keep: true,
    };
    page.render().unwrap()
}

fn checks_none(shell: Shell) -> String {
    let page = ChecksPage {
        shell: placed(shell),
        to_do: Vec::new(),
        later: Vec::new(),
        fog_tests: Vec::new(),
        retired: Vec::new(),
        offers_starters: true,
        key: "k".to_owned(),
        may_record: true,
        may_keep: true,
    };
    page.render().unwrap()
}

fn check(shell: Shell) -> String {
    let row = |seq: i64, found: &str, undone_by: Option<i64>| ResultRow {
        seq,
        id: seq.to_string(),
        at: moment("Thu 26 Nov 2026, 18:05"),
        found: found.to_owned(),
        more: "By Tomasz Orlen; due again by Thu 3 Dec 2026.".to_owned(),
        undone_by,
    };
    let page = CheckPage {
        shell: placed(shell),
        check: eyewash(),
        how: "Let both streams run until the water is clear.".to_owned(),
        on_failure: "Nobody pours concentrate until it runs again.".to_owned(),
        limit: Some("1.5\u{a0}L/min or more passes.".to_owned()),
        basis: "activated weekly: ANSI/ISEA Z358.1".to_owned(),
        is_on_board: true,
        is_retired: false,
        results: vec![
            row(412, "Failed: the left stream only drips.", None),
            row(398, "Passed, 1.8\u{a0}L/min.", Some(400)),
        ],
        older: Some("?before=398".to_owned()),
        may_record: true,
        may_keep: true,
        may_take_back: true,
    };
    page.render().unwrap()
}

fn check_change(shell: Shell) -> String {
    let page = CheckFormPage {
        shell: placed(shell),
        id: Some("1".to_owned()),
        spaces: vec![
            Choice::new("", "The room itself"),
            Choice::new("c", "Cellar"),
        ],
        form: CheckForm {
            key: "k".to_owned(),
            name: "Eyewash".to_owned(),
            how: "Let both streams run until the water is clear.".to_owned(),
            days: "0".to_owned(),
            basis: "activated weekly: ANSI/ISEA Z358.1".to_owned(),
            on_failure: "Nobody pours concentrate until it runs again.".to_owned(),
            is_on_board: "yes".to_owned(),
            space: "c".to_owned(),
            unit: "L/min".to_owned(),
            least: "1.5".to_owned(),
            most: String::new(),
        },
        problems: Problems::one("days", "Give something from 1 to 1830."),
    };
    page.render().unwrap()
}

fn check_record(shell: Shell) -> String {
    let page = RecordPage {
        shell: placed(shell),
        id: "1".to_owned(),
        name: "Eyewash".to_owned(),
        how: "Let both streams run until the water is clear.".to_owned(),
        on_failure: "Nobody pours concentrate until it runs again.".to_owned(),
        unit: Some("L/min".to_owned()),
        limit: "1.5\u{a0}L/min or more passes.".to_owned(),
        outcomes: vec![
            Choice::new("passed", "All is well").explained("Everything is as it says above"),
            Choice::new("failed", "It failed").explained("Anything is not; say what below"),
        ],
        days: vec![Choice::new("2026-11-26", "Thu 26 Nov 2026")],
        form: ResultForm {
            key: "k".to_owned(),
            outcome: "failed".to_owned(),
            measured: "0.4".to_owned(),
            when: "now".to_owned(),
            ..ResultForm::default()
        },
        problems: Problems::one("remark", "Fill this in."),
    };
    page.render().unwrap()
}
