//! Noting sheets and mixing, with invented data.

use askama::Template;
use wetside::mixes::views::{Cylinder, MixForm, MixPage, MixedPage, Worksheet};
use wetside::sheets::views::{
    NoteSheetsForm, NoteSheetsPage, SheetsNotedPage, UndoForm, UndoNotePage,
};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::bench_pages::{ALLERGY, life, moment, step};

pub(crate) const PAGES: &[Page] = &[
    ("note-sheets", note_sheets),
    ("note-sheets-wrong", note_sheets_wrong),
    ("sheets-noted", sheets_noted),
    ("sheets-undone", sheets_undone),
    ("undo-note", undo_note),
    ("mix", mix),
    ("mix-reckoned", mix_reckoned),
    ("mix-wrong", mix_wrong),
    ("mixed", mixed),
];

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
        asks_reason: true,
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
        cautions: vec![ALLERGY.to_owned()],
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
        mix_id: "m1".to_owned(),
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
