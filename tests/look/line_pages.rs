//! The bench being set up and a line's own page: invented data.

use askama::Template;
use wetside::bench::bottles::views::{BottleForm, BottlePage, BottleRow, BottlesPage};
use wetside::bench::finishing::views::{
    FinishingForm, FinishingPage, JoinButton, LineShownPage, StepRow, Times, TimesRow, WashShown,
};
use wetside::bench::spaces::views::{SpaceForm, SpacePage, SpaceRow, SpacesPage};
use wetside::bench::views::{
    BenchLine, BenchPage, BenchTray, LineForm, LinePage, TrayForm, TrayFormPage,
};
use wetside::web::drawing::{Standing, TrayDrawing};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::bench_pages::{moment, shape};
use super::desk_pages::retired_row;

pub(crate) const PAGES: &[Page] = &[
    ("bench", bench),
    ("bench-bare", bench_bare),
    ("line", line),
    ("line-page", line_page),
    ("line-page-bare", line_page_bare),
    ("finishing", finishing),
    ("tray-form", tray_form),
    ("bottles", bottles),
    ("bottles-none", bottles_none),
    ("bottle", bottle),
    ("spaces", spaces),
    ("space", space),
];

fn bench_tray(id: &str, name: &str) -> BenchTray {
    BenchTray {
        id: id.to_owned(),
        name: name.to_owned(),
        step: name.to_owned(),
        inside: "300 × 250 mm, 65 mm deep; least depth 10 mm".to_owned(),
        least_volume: "750 ml covers a print, 4.88 L fills it to the rim".to_owned(),
        drawing: TrayDrawing::new(shape(), Standing::NothingRecorded, None, ""),
    }
}

fn bench_page(shell: Shell, lines: Vec<BenchLine>) -> String {
    let page = BenchPage {
        shell: Shell {
            place: Some(Place::Bench),
            ..shell
        },
        lines,
        spaces: Vec::new(),
        has_spaces: false,
        retired: vec![retired_row("Old bench", "/bench/lines/b/restore")],
        form: LineForm::default(),
        problems: Problems::none(),
        may_change: true,
    };
    page.render().unwrap()
}

fn bench(shell: Shell) -> String {
    let line = BenchLine {
        id: "a".to_owned(),
        name: "Long bench".to_owned(),
        space: None,
        trays: vec![
            bench_tray("t1", "Developer"),
            bench_tray("t2", "Stop"),
            bench_tray("t3", "Fixer"),
        ],
    };
    bench_page(shell, vec![line])
}

fn bench_bare(shell: Shell) -> String {
    bench_page(shell, Vec::new())
}

fn line(shell: Shell) -> String {
    let page = LinePage {
        shell,
        id: "a".to_owned(),
        form: LineForm {
            key: "k".to_owned(),
            name: "Long bench".to_owned(),
            space: String::new(),
        },
        spaces: Vec::new(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn tray_form(shell: Shell) -> String {
    let page = TrayFormPage {
        shell,
        unit: "mm".to_owned(),
        id: Some("t1".to_owned()),
        line_id: "a".to_owned(),
        line: "Long bench".to_owned(),
        steps: vec![
            Choice::new("any", "Not said"),
            Choice::new("developer", "Developer"),
        ],
        form: TrayForm {
            key: "k".to_owned(),
            name: "Developer".to_owned(),
            step: "developer".to_owned(),
            inside_long: "300".to_owned(),
            inside_short: "25O".to_owned(),
            inside_depth: "65".to_owned(),
            least_depth: "10".to_owned(),
        },
        problems: Problems::one(
            "inside_short",
            "Enter the short edge as a number, such as 250.",
        ),
    };
    page.render().unwrap()
}

fn line_page(shell: Shell) -> String {
    let step = |id: &str, name: &str, step: &str| StepRow {
        id: id.to_owned(),
        name: name.to_owned(),
        step: step.to_owned(),
    };
    let times = Times {
        fix: "1 min".to_owned(),
        longest_fix: "2 min".to_owned(),
        rinse: "30 s".to_owned(),
        wash_aid: "10 min".to_owned(),
        wash_with_aid: "20 min".to_owned(),
        wash_without_aid: "1 h".to_owned(),
        basis: "invented for the gallery".to_owned(),
    };
    let page = LineShownPage {
        shell,
        id: "a".to_owned(),
        name: "Long bench".to_owned(),
        space: Some("Cellar".to_owned()),
        is_retired: false,
        steps: vec![
            step("t1", "Developer", "Developer"),
            step("t2", "Stop", "Stop bath"),
            step("t3", "Fix 1", "First fixer of two"),
            step("t4", "Fix 2", "Second fixer of two"),
            step("t5", "Grey tray", ""),
            step("t6", "Wash", "Wash"),
        ],
        times: vec![times_row("FB", Some(times)), times_row("Postcards", None)],
        wash: WashShown::Until {
            ends: moment("19:40"),
            why: "Restarted 19:20 by a print that joined. FB needs the longest: 20 min.".to_owned(),
        },
        joins: vec![
            join("FB, after the wash aid", "washes 20 min"),
            join("FB, no wash aid", "washes 1 h"),
        ],
        key: "k".to_owned(),
        problems: Problems::none(),
        may_note: true,
        may_change: true,
    };
    page.render().unwrap()
}

fn join(label: &str, time: &str) -> JoinButton {
    JoinButton {
        key: "k".to_owned(),
        class_id: "c2".to_owned(),
        had_wash_aid: "yes",
        label: label.to_owned(),
        time: time.to_owned(),
    }
}

fn times_row(class: &str, times: Option<Times>) -> TimesRow {
    TimesRow {
        class_id: "c2".to_owned(),
        class: class.to_owned(),
        times,
    }
}

fn line_page_bare(shell: Shell) -> String {
    let page = LineShownPage {
        shell,
        id: "a".to_owned(),
        name: "Long bench".to_owned(),
        space: None,
        is_retired: false,
        steps: Vec::new(),
        times: Vec::new(),
        wash: WashShown::Empty,
        joins: Vec::new(),
        key: "k".to_owned(),
        problems: Problems::one("", "Nothing is noted in this wash."),
        may_note: true,
        may_change: true,
    };
    page.render().unwrap()
}

fn finishing(shell: Shell) -> String {
    let page = FinishingPage {
        shell,
        line_id: "a".to_owned(),
        line: "Long bench".to_owned(),
        class_id: "c2".to_owned(),
        class: "FB".to_owned(),
        form: FinishingForm {
            fix: "3".to_owned(),
            longest_fix: "2".to_owned(),
            ..FinishingForm::default()
        },
        problems: Problems::one("longest_fix", "Give a longer time here."),
    };
    page.render().unwrap()
}

fn bottles_page(shell: Shell, bottles: Vec<BottleRow>) -> String {
    let page = BottlesPage {
        shell,
        bottles,
        retired: vec![retired_row("Cracked", "/bench/bottles/b9/restore")],
        form: BottleForm::default(),
        problems: Problems::none(),
        may_change: true,
    };
    page.render().unwrap()
}

fn bottles(shell: Shell) -> String {
    let bottle = |id: &str, name: &str, holds: &str| BottleRow {
        id: id.to_owned(),
        name: name.to_owned(),
        holds: holds.to_owned(),
        stands: "Nothing recorded".to_owned(),
    };
    let bottles = vec![
        bottle("b1", "Brown 1", "1 L"),
        bottle("b2", "Accordion", "2.5 L"),
    ];
    bottles_page(shell, bottles)
}

fn bottles_none(shell: Shell) -> String {
    bottles_page(shell, Vec::new())
}

fn bottle(shell: Shell) -> String {
    let page = BottlePage {
        shell,
        id: "b1".to_owned(),
        form: BottleForm {
            key: "k".to_owned(),
            name: "Brown 1".to_owned(),
            holds: "a lot".to_owned(),
        },
        problems: Problems::one("holds", "Write this as a number."),
    };
    page.render().unwrap()
}

fn spaces(shell: Shell) -> String {
    let space = |id: &str, name: &str, lines: &str| SpaceRow {
        id: id.to_owned(),
        name: name.to_owned(),
        lines: lines.to_owned(),
    };
    let page = SpacesPage {
        shell,
        spaces: vec![space("s1", "Cellar", "Long bench"), space("s2", "Loft", "")],
        retired: Vec::new(),
        form: SpaceForm::default(),
        problems: Problems::none(),
        may_change: true,
    };
    page.render().unwrap()
}

fn space(shell: Shell) -> String {
    let page = SpacePage {
        shell,
        id: "s1".to_owned(),
        form: SpaceForm {
            key: "k".to_owned(),
            name: "Cellar".to_owned(),
        },
        problems: Problems::none(),
    };
    page.render().unwrap()
}
