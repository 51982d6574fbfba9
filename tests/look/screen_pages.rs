//! Screens that are nobody's, and where a steward keeps them, with invented data.

use askama::Template;
use wetside::screens::rows::{WallLine, in_rows};
use wetside::screens::views::{
    CodePage, ComeOrGoPage, DonePage, DoorForm, DoorPage, FlagAtDoorPage, FlagTrayForm,
    FlagTrayPage, NameForm, NoteAtDoorForm, NoteAtDoorPage, PairForm, PinPage, ScreenPage,
    ScreenRow, ScreensPage, TrayAtDoor, WallPage,
};
use wetside::web::drawing::{Standing, VerdictWord};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::Shell;

use super::arrival_pages::{asks, here};
use super::bench_pages::{full_line, moment};
use super::{Page, outside};

pub(crate) const PAGES: &[Page] = &[
    ("screen-code", code),
    ("screen-no-code", no_code),
    ("wall", wall),
    ("wall-two-lines", wall_two_lines),
    ("wall-three-rows", wall_three_rows),
    ("wall-bare", wall_bare),
    ("door", door),
    ("door-arrive", door_arrive),
    ("door-leave", door_leave),
    ("door-note", door_note),
    ("door-note-wrong", door_note_wrong),
    ("door-flag", door_flag),
    ("door-flag-tray", door_flag_tray),
    ("door-report", door_report),
    ("door-done", door_done),
    ("screens", screens),
    ("screen", screen),
    ("pin", pin),
];

/// The frame of a screen's page: a room, and nobody.
fn of_screen(shell: Shell) -> Shell {
    let room = shell.room.clone();
    Shell {
        room,
        here: "/screen".to_owned(),
        ..outside(shell)
    }
}

fn coded(shell: Shell, code: Option<(String, String, i64)>) -> String {
    let shell = outside(shell);
    CodePage { shell, code }.render().unwrap()
}

fn code(shell: Shell) -> String {
    coded(shell, Some(("ACDE".to_owned(), "3FHJ".to_owned(), 600)))
}

fn no_code(shell: Shell) -> String {
    coded(shell, None)
}

fn wall_of(shell: Shell, lines: usize, notices: &[&str]) -> String {
    let mut all = Vec::new();
    for number in 0..lines {
        let mut line = full_line();
        line.trays.truncate(4);
        line.id = format!("line-{number}");
        for tray in &mut line.trays {
            tray.id = format!("{}-{number}", tray.id);
        }
        all.push(line);
    }
    let page = WallPage {
        shell: of_screen(shell),
        zone: "Europe/Berlin".to_owned(),
        as_of: moment("17:02 Thu"),
        notices: notices.iter().map(|one| (*one).to_owned()).collect(),
        rows: in_rows(&all),
        here: here(),
    };
    page.render().unwrap()
}

fn wall(shell: Shell) -> String {
    wall_of(
        shell,
        1,
        &["Long bench: do not print through the second developer."],
    )
}

fn wall_two_lines(shell: Shell) -> String {
    wall_of(shell, 2, &[])
}

fn wall_three_rows(shell: Shell) -> String {
    wall_of(
        shell,
        3,
        &["Long bench: do not print through the second developer."],
    )
}

fn wall_bare(shell: Shell) -> String {
    wall_of(shell, 0, &[])
}

fn door(shell: Shell) -> String {
    let tray = |name: &str, standing, is_wash| TrayAtDoor {
        line: "Long bench".to_owned(),
        name: name.to_owned(),
        is_wash,
        word: VerdictWord { standing },
    };
    let page = DoorPage {
        shell: of_screen(shell),
        zone: "Europe/Berlin".to_owned(),
        taken: 3,
        places: 10,
        trays: vec![
            tray("Developer", Standing::Ready, false),
            tray("Stop bath", Standing::TestFirst, false),
            tray("Fixer", Standing::Replace, false),
            tray("Wash", Standing::NothingRecorded, true),
        ],
    };
    page.render().unwrap()
}

fn come_or_go(shell: Shell, is_leaving: bool, problems: Problems) -> String {
    let page = ComeOrGoPage {
        shell: of_screen(shell),
        is_leaving,
        form: DoorForm {
            key: "k".to_owned(),
            ..DoorForm::default()
        },
        problems,
        asks: (!is_leaving).then(asks),
        open: vec!["Long bench, Developer".to_owned()],
    };
    page.render().unwrap()
}

fn door_arrive(shell: Shell) -> String {
    come_or_go(shell, false, Problems::none())
}

fn door_leave(shell: Shell) -> String {
    come_or_go(
        shell,
        true,
        Problems::one("", "Number and PIN do not go together."),
    )
}

fn noting(shell: Shell, problems: Problems) -> String {
    let page = NoteAtDoorPage {
        shell: of_screen(shell),
        form: NoteAtDoorForm {
            key: "k".to_owned(),
            line: "a".to_owned(),
            paper_class: "rc".to_owned(),
            sheet_size: "8x10".to_owned(),
            sheets: "6".to_owned(),
            ..NoteAtDoorForm::default()
        },
        problems,
        lines: vec![
            Choice::new("a", "Long bench"),
            Choice::new("b", "Window bench"),
        ],
        paper_classes: vec![Choice::new("rc", "RC"), Choice::new("fb", "FB")],
        sheet_sizes: vec![
            Choice::new("5x7", "5×7 in"),
            Choice::new("8x10", "8×10 in"),
            Choice::new("11x14", "11×14 in"),
        ],
    };
    page.render().unwrap()
}

fn door_note(shell: Shell) -> String {
    noting(shell, Problems::none())
}

fn door_note_wrong(shell: Shell) -> String {
    noting(shell, Problems::one("sheets", "Enter how many sheets."))
}

fn door_flag(shell: Shell) -> String {
    let page = FlagAtDoorPage {
        shell: of_screen(shell),
        trays: vec![
            Choice::new("t1", "Long bench, Developer").explained("Something came into it"),
            Choice::new("t2", "Long bench, Stop bath").explained("Nothing is recorded here"),
        ],
    };
    page.render().unwrap()
}

fn flagging(shell: Shell, mix: Option<&str>) -> String {
    let page = FlagTrayPage {
        shell: of_screen(shell),
        id: "t1".to_owned(),
        tray: "Long bench, Developer".to_owned(),
        mix: mix.map(str::to_owned),
        form: FlagTrayForm {
            key: "k".to_owned(),
            ..FlagTrayForm::default()
        },
        problems: Problems::none(),
        groups: vec![Choice::new("acid", "An acid").explained("Stop bath, fixer")],
    };
    page.render().unwrap()
}

fn door_flag_tray(shell: Shell) -> String {
    flagging(shell, Some("Larch print developer 1+9"))
}

fn door_report(shell: Shell) -> String {
    flagging(shell, None)
}

fn door_done(shell: Shell) -> String {
    let page = DonePage {
        shell: of_screen(shell),
        said: "You are here.",
        advice: vec!["Larch print developer, concentrate as supplied: H317.".to_owned()],
    };
    page.render().unwrap()
}

fn row() -> ScreenRow {
    ScreenRow {
        id: "s1".to_owned(),
        name: "Wall over the sink".to_owned(),
        is_door: false,
        paired: "Paired Mon 2 Nov, 17:02 by Ines Vatry".to_owned(),
        last_seen: "Last seen 17:01".to_owned(),
    }
}

fn screens(shell: Shell) -> String {
    let page = ScreensPage {
        shell,
        screens: vec![row()],
        address: "darkroom.example/screen".to_owned(),
        form: PairForm {
            key: "k".to_owned(),
            kind: "board".to_owned(),
            display: "safelight".to_owned(),
            ..PairForm::default()
        },
        problems: Problems::one("code", "No screen shows this code now."),
    };
    page.render().unwrap()
}

fn screen(shell: Shell) -> String {
    let page = ScreenPage {
        shell,
        screen: row(),
        is_paired: true,
        form: NameForm::default(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn pin(shell: Shell) -> String {
    let page = PinPage {
        shell,
        number: 7,
        set: Some(moment("Mon 2 Nov, 17:02")),
        key: "k".to_owned(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

#[test]
fn lines_share_a_row_of_no_more_than_four_trays() {
    // How many trays of each line stand in each row.
    let rows = |counts: &[usize]| {
        let line = |count: &usize| {
            let mut line = full_line();
            line.trays = line.trays.into_iter().cycle().take(*count).collect();
            line
        };
        let lines: Vec<_> = counts.iter().map(line).collect();
        let of_row = |row: Vec<WallLine>| row.iter().map(|part| part.line.trays.len()).collect();
        in_rows(&lines)
            .into_iter()
            .map(of_row)
            .collect::<Vec<Vec<_>>>()
    };
    assert_eq!(rows(&[]), Vec::<Vec<usize>>::new());
    assert_eq!(rows(&[3, 1, 2]), [vec![3, 1], vec![2]]);
    assert_eq!(rows(&[2, 3, 1]), [vec![2], vec![3, 1]]);
    assert_eq!(rows(&[0, 3, 1]), [vec![0, 3], vec![1]]);
    // A line that is longer than a row goes on in the next one.
    assert_eq!(rows(&[5, 1]), [vec![4], vec![1, 1]]);
    assert_eq!(rows(&[6, 3]), [vec![4], vec![2], vec![3]]);
    // Twelve trays have room, however they are shared out.
    assert_eq!(rows(&[6, 6]), [vec![4], vec![2, 2], vec![4]]);
    assert_eq!(rows(&[3, 3, 3, 3]), [vec![3, 1], vec![2, 2], vec![1, 3]]);
    assert_eq!(rows(&[12]), [vec![4], vec![4], vec![4]]);
    assert_eq!(rows(&[4, 4, 4, 1]).len(), 4);
}
