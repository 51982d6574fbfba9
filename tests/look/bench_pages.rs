//! Board and tray, with invented data.

use askama::Template;
use wetside::board::views::{BoardPage, LineOnBoard, MixOnBoard, TrayOnBoard};
use wetside::trays::views::{
    Deed, Deeds, Development, Fact, Finding, MixInTray, Next, Press, Step, TrayEvent, TrayPage,
    WashPage,
};
use wetside::web::dates::Moment;
use wetside::web::drawing::{Measured, Rule, Standing, TrayDrawing, TrayShape, VerdictWord};
use wetside::web::fields::Problems;
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::arrival_pages::{bottle, here};

pub(crate) const PAGES: &[Page] = &[
    ("board", board),
    ("board-one", board_one),
    ("board-bare", board_bare),
    ("tray", tray),
    ("tray-used-up", tray_used_up),
    ("tray-empty", tray_empty),
    ("tray-contaminated", tray_contaminated),
    ("tray-wash", tray_wash),
];

pub(crate) fn moment(words: &str) -> Moment {
    Moment {
        machine: "2026-11-26T20:10:00Z".to_owned(),
        words: words.to_owned(),
    }
}

pub(crate) fn shape() -> TrayShape {
    TrayShape {
        long_tenths_mm: 3_000,
        short_tenths_mm: 2_500,
        depth_tenths_mm: 650,
        least_depth_tenths_mm: 100,
    }
}

fn capacity(left: u8, words: &str) -> Rule {
    Rule {
        measured: Measured::Capacity,
        left_percent: left,
        test_from_percent: Some(80),
        words: words.to_owned(),
        from: "fresh".to_owned(),
        until: "used up".to_owned(),
        parts: 10,
    }
}

pub(crate) fn life(left: u8, words: &str, until: &str) -> Rule {
    Rule {
        measured: Measured::Life,
        left_percent: left,
        test_from_percent: Some(80),
        words: words.to_owned(),
        from: "mixed 13:10".to_owned(),
        until: until.to_owned(),
        parts: 8,
    }
}

fn on_board(product: &str, dilution: &str, litres: &str, gauges: (Rule, Rule)) -> MixOnBoard {
    MixOnBoard {
        product: product.to_owned(),
        dilution: dilution.to_owned(),
        mixed: moment("13:10 Thu"),
        litres: litres.to_owned(),
        depth: "13.3\u{a0}mm".to_owned(),
        capacity: gauges.0,
        life: gauges.1,
    }
}

fn board_tray(
    id: &str,
    name: &str,
    standing: Standing,
    said: (&str, Option<&str>),
    mix: Option<MixOnBoard>,
) -> TrayOnBoard {
    let litres = mix.as_ref().map(|mix| mix.litres.clone());
    TrayOnBoard {
        id: id.to_owned(),
        name: name.to_owned(),
        is_wash: false,
        word: VerdictWord { standing },
        drawing: TrayDrawing::new(
            shape(),
            standing,
            Some(1_000_000),
            litres.unwrap_or_default(),
        ),
        reason: said.0.to_owned(),
        change: said.1.map(str::to_owned),
        mix,
    }
}

fn mixes_on_board() -> [MixOnBoard; 3] {
    let product = "Larch print developer";
    let until = "good until 20:00 Thu";
    [
        on_board(
            product,
            "1+9",
            "1\u{a0}L",
            (
                capacity(64, "about 64 sheets of 8×10 in, RC"),
                life(60, "good until 21:10 Thu", "21:10 Thu"),
            ),
        ),
        on_board(
            product,
            "1+14",
            "1.5\u{a0}L",
            (
                capacity(16, "about 16 sheets of 8×10 in, RC"),
                life(35, until, "20:00 Thu"),
            ),
        ),
        on_board(
            product,
            "1+9",
            "500\u{a0}ml",
            (capacity(0, "nothing"), life(48, until, "20:00 Thu")),
        ),
    ]
}

fn full_line() -> LineOnBoard {
    let [ready, test, used] = mixes_on_board();
    let ready_said = (
        "36\u{a0}% of its capacity used, 40\u{a0}% of its life.",
        Some("Test first from 19:34 Thu if nobody prints."),
    );
    let test_said = (
        "84\u{a0}% of its capacity used, 65\u{a0}% of its life.",
        Some("Replace from 20:00 Thu if nobody prints."),
    );
    let unknown_said = "Liquid of unknown origin: do not use or pour away, call a steward.";
    let nothing = Standing::NothingRecorded;
    LineOnBoard {
        space: Some("Cellar".to_owned()),
        id: "line-a".to_owned(),
        name: "Long bench".to_owned(),
        trays: vec![
            board_tray("t1", "Developer", Standing::Ready, ready_said, Some(ready)),
            board_tray(
                "t2",
                "Soft developer",
                Standing::TestFirst,
                test_said,
                Some(test),
            ),
            board_tray(
                "t3",
                "Second developer",
                Standing::Replace,
                ("All of its capacity used.", None),
                Some(used),
            ),
            board_tray(
                "t4",
                "Stop",
                nothing,
                ("No mix is recorded here.", None),
                None,
            ),
            board_tray(
                "t5",
                "Odd tray",
                Standing::Unknown,
                (unknown_said, None),
                None,
            ),
        ],
    }
}

fn board_of(shell: Shell, notices: Vec<String>, lines: Vec<LineOnBoard>) -> String {
    let shell = Shell {
        person: None,
        unread: None,
        place: Some(Place::Board),
        ..shell
    };
    let page = BoardPage {
        shell,
        as_of: moment("17:02 Thu"),
        at: "418.09f2c4aa".to_owned(),
        drawn_us: 1_795_708_920_000_000,
        notices,
        bottles: vec![bottle()],
        lines,
        here: here(),
        may_note: true,
        may_mix: true,
        may_set_up: true,
    };
    page.render().unwrap()
}

fn board(shell: Shell) -> String {
    let notices = vec!["The second developer is used up: do not print through it.".to_owned()];
    let empty = LineOnBoard {
        id: "line-b".to_owned(),
        trays: Vec::new(),
        ..full_line()
    };
    board_of(shell, notices, vec![full_line(), empty])
}

fn board_one(shell: Shell) -> String {
    let mut line = full_line();
    line.trays.truncate(1);
    board_of(shell, Vec::new(), vec![line])
}

fn board_bare(shell: Shell) -> String {
    board_of(shell, Vec::new(), Vec::new())
}

pub(crate) fn step(what: &str, how: &str, figure: &str) -> Step {
    Step {
        what: what.to_owned(),
        how: how.to_owned(),
        figure: figure.to_owned(),
    }
}

fn mix_in_tray(left: (u8, u8)) -> MixInTray {
    MixInTray {
        product_id: Some("p1".to_owned()),
        product: "Larch print developer".to_owned(),
        dilution: "1+9".to_owned(),
        litres: "1\u{a0}L".to_owned(),
        depth: "13.3\u{a0}mm".to_owned(),
        mixed: moment("13:10"),
        mixed_by: Some("Ines Vatry".to_owned()),
        facts: vec![
            fact("Kept", "in the open tray"),
            fact(
                "Level",
                "980\u{a0}ml by reckoning: prints carried 20\u{a0}ml out",
            ),
            fact("Carried in", "15\u{a0}ml with prints from the tray before"),
        ],
        extended: None,
        capacity: capacity(left.0, "about 64 sheets of 8×10 in, RC"),
        life: life(left.1, "good until Thu 26 Nov, 21:10", "21:10 Thu"),
        capacity_sum: vec![
            step("Charged with fresh solution", "", "1\u{a0}L"),
            step(
                "RC",
                "24 sheets of 8×10 in ÷ 100 sheets per litre",
                "0.24\u{a0}L",
            ),
            step(
                "FB",
                "6 sheets of 8×10 in ÷ 50 sheets per litre",
                "0.12\u{a0}L",
            ),
            step(
                "Used of its capacity",
                "0.36\u{a0}L ÷ 1\u{a0}L",
                "36\u{a0}%",
            ),
        ],
        life_sum: vec![
            step(
                "Tray life at this depth",
                "common practice, no source",
                "8\u{a0}h",
            ),
            step("In this tray since 13:10", "", "3\u{a0}h 12\u{a0}min"),
            step(
                "Used of its life",
                "3\u{a0}h 12\u{a0}min ÷ 8\u{a0}h",
                "40\u{a0}%",
            ),
        ],
        wear: super::print_pages::wear(),
        cautions: vec![ALLERGY.to_owned()],
    }
}

pub(crate) const ALLERGY: &str =
    "May cause an allergic skin reaction (H317, as supplied): gloves and tongs every time.";

fn tray_events() -> Vec<TrayEvent> {
    let event = |seq, at: &str, sentence: &str, is_undone| TrayEvent {
        seq,
        at: moment(at),
        sentence: sentence.to_owned(),
        is_undone,
    };
    vec![
        event(
            418,
            "16:20",
            "Tomasz Orlen noted 6 sheets of 8×10 in, FB.",
            false,
        ),
        event(
            415,
            "15:05",
            "Mirea Dunst noted 60 sheets of 8×10 in, RC.",
            true,
        ),
        event(
            412,
            "13:10",
            "Ines Vatry mixed 1 L of Larch print developer 1+9.",
            false,
        ),
        event(
            398,
            "Wed 25 Nov, 21:40",
            "Ines Vatry discarded 1 L into container D-2.",
            false,
        ),
    ]
}

fn fact(what: &str, figure: &str) -> Fact {
    Fact {
        what: what.to_owned(),
        figure: figure.to_owned(),
    }
}

fn link(label: &str) -> Deed {
    Deed::to(label, "/trays/t1".to_owned())
}

fn others() -> Vec<Deeds> {
    let group = |title: &str, labels: &[&str]| Deeds {
        title: title.to_owned(),
        deeds: labels.iter().map(|label| link(label)).collect(),
    };
    let mut groups = vec![
        group("Look at it", &["Record a check", "Something came into it"]),
        group(
            "Look after it",
            &["Pour it into a bottle", "Pour it into another"],
        ),
        group("Its end", &["Discard"]),
    ];
    let press = Press {
        key: "key".to_owned(),
        to: "cover",
    };
    let cover = Deed::pressed("Cover it", "/mixes/m1/keep".to_owned(), press);
    groups[1].deeds.insert(0, cover);
    groups
}

fn development() -> Development {
    Development {
        typed: String::new(),
        problems: Problems::none(),
        time: Some("1\u{a0}min 18\u{a0}s at 21.5\u{a0}°C".to_owned()),
        said: "Reckoned from its data sheet: 90 s at 20 °C and 60 s at 24 °C.".to_owned(),
        by_factor: Some("The image takes 1.3 times as long to show as when fresh.".to_owned()),
    }
}

fn findings() -> Vec<Finding> {
    let finding = |seq, at: &str, sentence: &str, is_undone, take_back: Option<&str>| Finding {
        seq,
        at: moment(at),
        sentence: sentence.to_owned(),
        is_undone,
        take_back: take_back.map(str::to_owned),
    };
    let path = Some("/readings/r1/take-back");
    vec![
        finding(417, "16:10", "Temperature: 21.5\u{a0}°C.", false, path),
        finding(414, "14:40", "Test print: failed.", true, None),
        finding(
            413,
            "13:20",
            "Emergence time: 11\u{a0}s, taken fresh.",
            false,
            path,
        ),
    ]
}

fn tray_page(
    shell: Shell,
    standing: Standing,
    said: (&str, Option<&str>),
    left: (u8, u8),
) -> TrayPage {
    TrayPage {
        shell: Shell {
            place: Some(Place::Board),
            ..shell
        },
        id: "t1".to_owned(),
        name: "Developer".to_owned(),
        line: "Long bench".to_owned(),
        inside: "300 × 250 mm, 65 mm deep; least depth 10 mm".to_owned(),
        word: VerdictWord { standing },
        drawing: TrayDrawing::new(shape(), standing, Some(1_000_000), "1\u{a0}L"),
        reason: said.0.to_owned(),
        change: said.1.map(str::to_owned),
        alarm: None,
        next: Next::new(
            "Print. Note your sheets when you have a dry hand.",
            vec![link("Note sheets")],
        ),
        others: others(),
        mix: Some(mix_in_tray(left)),
        development: Some(development()),
        findings: findings(),
        events: tray_events(),
        older: Some("?before=398".to_owned()),
    }
}

fn tray(shell: Shell) -> String {
    let said = (
        "36\u{a0}% of its capacity used, 40\u{a0}% of its life.",
        Some("Test first from 19:34 if nobody prints."),
    );
    tray_page(shell, Standing::Ready, said, (64, 60))
        .render()
        .unwrap()
}

fn tray_used_up(shell: Shell) -> String {
    tray_page(
        shell,
        Standing::Replace,
        ("All of its capacity used.", None),
        (0, 42),
    )
    .render()
    .unwrap()
}

fn tray_empty(shell: Shell) -> String {
    let mut page = tray_page(
        shell,
        Standing::NothingRecorded,
        ("No mix is recorded here.", None),
        (0, 0),
    );
    page.mix = None;
    page.next = Next::new("Look before you pour.", vec![link("Mix into this tray")]);
    page.others = vec![Deeds {
        title: "If it is otherwise".to_owned(),
        deeds: vec![
            link("It was rinsed"),
            link("The last discard was a mistake"),
        ],
    }];
    page.findings = Vec::new();
    page.development = None;
    page.drawing = TrayDrawing::new(shape(), Standing::NothingRecorded, None, "");
    page.events = Vec::new();
    page.older = None;
    page.render().unwrap()
}

fn tray_contaminated(shell: Shell) -> String {
    let said = ("Contamination was reported at 16:12 Thu.", None);
    let mut page = tray_page(shell, Standing::Replace, said, (64, 60));
    page.alarm = Some("Stop and look: an acid and a sulfite can give off a toxic gas.".to_owned());
    page.next = Next::new("Do not print through it.", vec![link("Discard")]);
    page.development = None;
    page.render().unwrap()
}

fn tray_wash(shell: Shell) -> String {
    WashPage {
        shell,
        name: "Wash".to_owned(),
        line_id: "line-a".to_owned(),
        line: "Long bench".to_owned(),
        inside: "300 × 250 mm, 65 mm deep; least depth 10 mm".to_owned(),
        said: "Prints wash here, so no mix stands in it.".to_owned(),
        tests: Some("/mixes/m2/check".to_owned()),
    }
    .render()
    .unwrap()
}
