//! Noting sheets, with invented data.

use askama::Template;
use wetside::sheets::views::{
    NoteSheetsForm, NoteSheetsPage, SheetsNotedPage, UndoForm, UndoNotePage,
};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("note-sheets", note_sheets),
    ("note-sheets-wrong", note_sheets_wrong),
    ("sheets-noted", sheets_noted),
    ("sheets-undone", sheets_undone),
    ("undo-note", undo_note),
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
        whom: vec![
            Choice::new("w1", "For the workshop: First prints"),
            Choice::new("", "For yourself"),
        ],
        zone: "Europe/Berlin".to_owned(),
        offers_unknown_tray: false,
        toned_hint: None,
        takes_film: true,
        may_enter_paper: true,
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
        uncounted: String::new(),
        toned: String::new(),
        unknown_tray: String::new(),
        workshop: "w1".to_owned(),
        when: "now".to_owned(),
        day: "2026-11-26".to_owned(),
        time: String::new(),
        person: "0199c2a0-0000-7000-8000-000000000003".to_owned(),
        noted_at: String::new(),
        sent_at: String::new(),
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
        count: "6".to_owned(),
        noun: "sheets",
        is_film: false,
        person: None,
        written_by: None,
        not_counted: None,
        replaced: None,
        end: None,
        may_set_right: false,
        paper: "8×10 in, RC".to_owned(),
        line: "Long bench".to_owned(),
        workshop: Some(("w1".to_owned(), "First prints".to_owned())),
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
