//! Emergency, errors and the pages of no noun, with invented data.

use askama::Template;
use wetside::emergency::views::{EmergencyPage, Precaution, RoomHelp};
use wetside::rooms::views::ClosedRoomPage;
use wetside::web::shell::Shell;
use wetside::web::views::{ConfirmPage, ErrorPage, SafelightPage, Trouble};

use super::bench_pages::moment;
use super::{Page, outside};

pub(crate) const PAGES: &[Page] = &[
    ("emergency", emergency),
    ("emergency-no-room", emergency_no_room),
    ("error-404", error_404),
    ("error-401", error_401),
    ("error-500", error_500),
    ("error-503", error_503),
    ("safelight", safelight),
    ("confirm", confirm),
    ("closed", closed),
];

fn emergency(shell: Shell) -> String {
    let page = EmergencyPage {
        shell,
        room: Some(RoomHelp {
            emergency_number: "112".to_owned(),
            poison_centre: String::new(),
            address: "Quay 4, back yard, second door\nRing at the caretaker’s".to_owned(),
            contacts: "Ines Vatry, steward\nTomasz Orlen, steward".to_owned(),
            eyewash: "Left of the sink, green cap".to_owned(),
            data_sheets: "Folder on the shelf above the dryer".to_owned(),
        }),
        precautions: vec![Precaution {
            product: "Larch print developer".to_owned(),
            code: "P302+P352".to_owned(),
            text: "If on skin: wash with plenty of water.".to_owned(),
        }],
    };
    page.render().unwrap()
}

fn emergency_no_room(shell: Shell) -> String {
    let page = EmergencyPage {
        shell: outside(shell),
        room: None,
        precautions: Vec::new(),
    };
    page.render().unwrap()
}

fn error(shell: Shell, trouble: Trouble) -> String {
    let page = ErrorPage {
        shell,
        trouble,
        sentence: None,
        request_id: Some("0197c2aa-5b7e-7c31".to_owned()),
        retry_after_s: (trouble == Trouble::Busy).then_some(5),
    };
    page.render().unwrap()
}

fn error_404(shell: Shell) -> String {
    error(shell, Trouble::NotFound)
}

fn error_401(shell: Shell) -> String {
    error(outside(shell), Trouble::NotLoggedIn)
}

fn error_500(shell: Shell) -> String {
    error(shell, Trouble::Broken)
}

fn error_503(shell: Shell) -> String {
    error(outside(shell), Trouble::Busy)
}

fn safelight(shell: Shell) -> String {
    SafelightPage { shell }.render().unwrap()
}

fn confirm(shell: Shell) -> String {
    let page = ConfirmPage {
        question: "End Mirea Dunst’s access?".to_owned(),
        consequence: "Pages of this room that are open elsewhere stop at once. What was written stays in the book. Only a new invitation brings the person back.".to_owned(),
        verb: "End the access".to_owned(),
        action: shell.at("/members/m/end"),
        back: shell.at("/members/m"),
        key: "k".to_owned(),
        shell,
    };
    page.render().unwrap()
}

fn closed(shell: Shell) -> String {
    let page = ClosedRoomPage {
        shell,
        since: moment("Mon 23 Nov, 09:00"),
        sentence: None,
    };
    page.render().unwrap()
}
