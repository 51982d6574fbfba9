//! Board, tray, notes and mixing, with invented data.

use askama::Template;
use wetside::board::views::{BoardPage, LineOnBoard, MixOnBoard, TrayOnBoard};
use wetside::mixes::views::{
    Cylinder, DiscardForm, DiscardPage, MixForm, MixPage, MixedPage, Worksheet,
};
use wetside::sheets::views::{
    NoteSheetsForm, NoteSheetsPage, SheetsNotedPage, UndoForm, UndoNotePage,
};
use wetside::trays::views::{MixInTray, Step, TrayEvent, TrayPage};
use wetside::web::dates::Moment;
use wetside::web::drawing::{Measured, Rule, Standing, TrayDrawing, TrayShape, VerdictWord};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;

pub(crate) const PAGES: &[Page] = &[
    ("board", board),
    ("board-one", board_one),
    ("board-bare", board_bare),
    ("tray", tray),
    ("tray-used-up", tray_used_up),
    ("tray-empty", tray_empty),
    ("note-sheets", note_sheets),
    ("note-sheets-wrong", note_sheets_wrong),
    ("sheets-noted", sheets_noted),
    ("sheets-undone", sheets_undone),
    ("undo-note", undo_note),
    ("mix", mix),
    ("mix-reckoned", mix_reckoned),
    ("mix-wrong", mix_wrong),
    ("mixed", mixed),
    ("discard", discard),
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

fn life(left: u8, words: &str, until: &str) -> Rule {
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
        notices,
        lines,
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
        name: "Window bench".to_owned(),
        trays: Vec::new(),
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

fn step(what: &str, how: &str, figure: &str) -> Step {
    Step {
        what: what.to_owned(),
        how: how.to_owned(),
        figure: figure.to_owned(),
    }
}

fn mix_in_tray(left: (u8, u8)) -> MixInTray {
    MixInTray {
        id: "m1".to_owned(),
        product_id: "p1".to_owned(),
        product: "Larch print developer".to_owned(),
        dilution: "1+9".to_owned(),
        litres: "1\u{a0}L".to_owned(),
        depth: "13.3\u{a0}mm".to_owned(),
        mixed: moment("13:10"),
        mixed_by: Some("Ines Vatry".to_owned()),
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
        cautions: vec![ALLERGY.to_owned()],
    }
}

const ALLERGY: &str =
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
        line_id: "line-a".to_owned(),
        line: "Long bench".to_owned(),
        inside: "300 × 250 mm, 65 mm deep; least depth 10 mm".to_owned(),
        word: VerdictWord { standing },
        drawing: TrayDrawing::new(shape(), standing, Some(1_000_000), "1\u{a0}L"),
        reason: said.0.to_owned(),
        change: said.1.map(str::to_owned),
        mix: Some(mix_in_tray(left)),
        events: tray_events(),
        older: Some("?before=398".to_owned()),
        may_mix: true,
        may_note: true,
        may_discard: true,
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
    page.drawing = TrayDrawing::new(shape(), Standing::NothingRecorded, None, "");
    page.events = Vec::new();
    page.older = None;
    page.render().unwrap()
}

fn note_page(shell: Shell, form: NoteSheetsForm, problems: Problems) -> String {
    let page = NoteSheetsPage {
        shell: Shell {
            place: Some(Place::NoteSheets),
            ..shell
        },
        form,
        problems,
        lines: vec![
            Choice::new("a", "Long bench"),
            Choice::new("b", "Window bench"),
        ],
        paper_classes: vec![
            Choice::new("rc", "RC"),
            Choice::new("fb", "FB"),
            Choice::new("cool", "RC, cool tone"),
        ],
        sheet_sizes: vec![
            Choice::new("5x7", "5×7 in"),
            Choice::new("8x10", "8×10 in"),
            Choice::new("9x12", "9.5×12 in"),
            Choice::new("11x14", "11×14 in"),
            Choice::new("16x20", "16×20 in"),
        ],
        days: vec![
            Choice::new("2026-11-26", "Today, Thu 26 Nov"),
            Choice::new("2026-11-25", "Wed 25 Nov"),
            Choice::new("2026-11-24", "Tue 24 Nov"),
        ],
    };
    page.render().unwrap()
}

fn note_form() -> NoteSheetsForm {
    NoteSheetsForm {
        key: "00112233445566778899aabbccddeeff".to_owned(),
        line: "a".to_owned(),
        paper_class: "rc".to_owned(),
        sheet_size: "8x10".to_owned(),
        sheets: "6".to_owned(),
        when: "now".to_owned(),
        day: "2026-11-26".to_owned(),
        time: String::new(),
    }
}

fn note_sheets(shell: Shell) -> String {
    note_page(shell, note_form(), Problems::none())
}

fn note_sheets_wrong(shell: Shell) -> String {
    let mut problems = Problems::one("sheets", "Enter how many sheets, from 1 to 500.");
    problems.add("time", "Enter the time as 18:05.");
    let form = NoteSheetsForm {
        sheets: "six".to_owned(),
        when: "earlier".to_owned(),
        time: "25:00".to_owned(),
        ..note_form()
    };
    note_page(shell, form, problems)
}

fn noted(shell: Shell, is_undone: bool) -> String {
    let page = SheetsNotedPage {
        shell,
        seq: 419,
        sheets: "6".to_owned(),
        paper: "8×10 in, RC".to_owned(),
        line: "Long bench".to_owned(),
        line_id: "a".to_owned(),
        at: moment("17:02"),
        effects: vec!["Developer: 30\u{a0}% → 36\u{a0}% of its capacity used. Ready.".to_owned()],
        time_note: None,
        undo_until: (!is_undone).then(|| moment("17:12")),
        may_correct: false,
        is_undone,
    };
    page.render().unwrap()
}

fn sheets_noted(shell: Shell) -> String {
    noted(shell, false)
}

fn sheets_undone(shell: Shell) -> String {
    noted(shell, true)
}

fn undo_note(shell: Shell) -> String {
    let page = UndoNotePage {
        shell,
        seq: 419,
        form: UndoForm::default(),
        problems: Problems::none(),
        asks_reason: false,
        note: "6 sheets of 8×10 in, RC, on Long bench".to_owned(),
        at: moment("17:02"),
        effects: vec![
            "Developer: back from 36\u{a0}% to 30\u{a0}% of its capacity used.".to_owned(),
        ],
    };
    page.render().unwrap()
}

fn mix_page(shell: Shell) -> MixPage {
    MixPage {
        shell: Shell {
            place: Some(Place::Board),
            ..shell
        },
        tray_id: "t1".to_owned(),
        tray: "Developer".to_owned(),
        form: MixForm {
            key: "k".to_owned(),
            dilution: "d9".to_owned(),
            volume: "1".to_owned(),
            step: String::new(),
        },
        problems: Problems::none(),
        dilutions: vec![
            Choice::new("d9", "Larch print developer 1+9")
                .explained("100 RC or 50 FB sheets of 8×10 in per litre, 8 h in the tray"),
            Choice::new("d14", "Larch print developer 1+14")
                .explained("70 RC or 40 FB sheets of 8×10 in per litre, 7 h in the tray"),
        ],
        volume_hint:
            "At least 750 ml covers the least depth of 10 mm; the tray holds 4.87 L to the rim."
                .to_owned(),
        worksheet: None,
        cautions: vec![
            "May cause an allergic skin reaction (H317, as supplied): gloves and tongs every time."
                .to_owned(),
        ],
    }
}

fn mix(shell: Shell) -> String {
    mix_page(shell).render().unwrap()
}

fn mix_reckoned(shell: Shell) -> String {
    let sheet = Worksheet {
        title: "Larch print developer 1+9".to_owned(),
        concentrate: "100\u{a0}ml".to_owned(),
        water: "900\u{a0}ml".to_owned(),
        total: "1\u{a0}L".to_owned(),
        cylinder: Cylinder::of_dilution(9_000),
        steps: vec![
            step("1 part concentrate and 9 parts water", "1 + 9", "10 parts"),
            step("Concentrate", "1\u{a0}L ÷ 10", "100\u{a0}ml"),
            step("Water", "1\u{a0}L − 100\u{a0}ml", "900\u{a0}ml"),
            step(
                "Depth in the tray",
                "1\u{a0}L ÷ (300 × 250\u{a0}mm)",
                "13.3\u{a0}mm",
            ),
        ],
        takes: vec![
            "100 sheets of 8×10 in, RC".to_owned(),
            "or 50 sheets of 8×10 in, FB".to_owned(),
        ],
        keeps: "In the open tray 8 h: good until Thu 26 Nov, 21:10 if nobody prints.".to_owned(),
        basis: "Capacity and life are common practice, no source; a steward may change them."
            .to_owned(),
    };
    MixPage {
        worksheet: Some(sheet),
        ..mix_page(shell)
    }
    .render()
    .unwrap()
}

fn mix_wrong(shell: Shell) -> String {
    let mut page = mix_page(shell);
    page.form.volume = "0,5".to_owned();
    page.problems = Problems::one("volume", "Write the volume with a point, such as 0.5.");
    page.render().unwrap()
}

fn mixed(shell: Shell) -> String {
    let page = MixedPage {
        shell,
        seq: 412,
        tray_id: "t1".to_owned(),
        tray: "Developer".to_owned(),
        title: "Larch print developer 1+9".to_owned(),
        total: "1\u{a0}L".to_owned(),
        life: life(100, "good until 21:10", "21:10 Thu"),
        is_not_from_stock: true,
    };
    page.render().unwrap()
}

fn discard(shell: Shell) -> String {
    let page = DiscardPage {
        shell,
        mix_id: "m1".to_owned(),
        title: "Larch print developer 1+9".to_owned(),
        tray_id: "t1".to_owned(),
        tray: "Developer".to_owned(),
        litres: "1\u{a0}L".to_owned(),
        mixed: moment("13:10"),
        form: DiscardForm {
            volume: "1".to_owned(),
            ..DiscardForm::default()
        },
        problems: Problems::none(),
        cautions: vec!["Not into a container that holds an acid or a stop bath.".to_owned()],
    };
    page.render().unwrap()
}
