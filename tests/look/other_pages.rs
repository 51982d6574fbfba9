//! Settings, Emergency, errors and the pages of no noun, with invented data.

use askama::Template;
use wetside::emergency::views::{EmergencyPage, Precaution, RoomHelp};
use wetside::handover::Part;
use wetside::handover::views::{HandoverPage, Stands};
use wetside::outages::views::{OffRow, OutageForm, OutagesPage};
use wetside::rooms::views::{ClosedRoomPage, SettingsForm, SettingsPage};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Off, Place, Shell};
use wetside::web::views::{ConfirmPage, ErrorPage, SafelightPage, Trouble};

use super::bench_pages::moment;
use super::{Page, outside, strings};

pub(crate) const PAGES: &[Page] = &[
    ("settings", settings),
    ("emergency", emergency),
    ("emergency-no-room", emergency_no_room),
    ("outages", outages),
    ("handover", handover),
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

fn outages(shell: Shell) -> String {
    let page = OutagesPage {
        shell: Shell {
            place: Some(Place::Outages),
            ..shell
        },
        off: vec![OffRow {
            id: "7".to_owned(),
            sentence: "The fan has been off since 18:05.".to_owned(),
            name: "fan",
            said_by: "Said by Ines Vatry.".to_owned(),
        }],
        advice: "Leave the room, let air in, and come back when it is over.",
        past: Vec::new(),
        older: None,
        whats: vec![
            Choice::new("power", "The power").explained("Lamps and pumps"),
            Choice::new("fan", "The fan"),
        ],
        days: vec![Choice::new("2026-11-26", "Thu 26 Nov 2026")],
        form: OutageForm {
            when: "earlier".to_owned(),
            ..OutageForm::default()
        },
        problems: Problems::one("time", "That is in the future. Give the time it happened."),
        may_note: true,
    };
    page.render().unwrap()
}

fn handover(shell: Shell) -> String {
    let part = |heading: &str, lines: &[&str]| Part {
        heading: heading.to_owned(),
        lines: strings(lines),
    };
    let page = HandoverPage {
        shell: Shell {
            place: Some(Place::Handover),
            off: vec![Off {
                head: "The fan has been off since 18:05 Thu.".to_owned(),
                advice: "Leave the room and let air in.".to_owned(),
            }],
            ..shell
        },
        id: "7".to_owned(),
        sentence: "Ines Vatry hands over to Tomasz Orlen, who has not confirmed it yet.".to_owned(),
        stands: Stands::ForYou,
        opened: moment("Thu 26 Nov 2026, 18:05"),
        opened_seq: 412,
        confirmed_seq: None,
        parts: vec![
            part(
                "Off now",
                &["The fan has been off since Thu 26 Nov 2026, 18:05."],
            ),
            part("Not to be used", &[]),
        ],
        come: vec![part("Not to be used", &["First line, Developer: Replace."])],
        gone: Vec::new(),
        own_page: "#".to_owned(),
        key: "key".to_owned(),
        problems: Problems::none(),
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
    let record = Some(shell.at("/lamps"));
    SafelightPage { shell, record }.render().unwrap()
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

fn settings(shell: Shell) -> String {
    let mut problems = Problems::one("currency", "Enter three letters, such as EUR.");
    problems.add("hours-3", "Thursday closes before it opens.");
    let page = SettingsPage {
        shell: Shell {
            place: Some(Place::Settings),
            ..shell
        },
        form: SettingsForm {
            key: "k".to_owned(),
            name: "North Quay Darkroom".to_owned(),
            zone: "Europe/Berlin".to_owned(),
            currency: "Euro".to_owned(),
            units: "metric".to_owned(),
            decimal_mark: ".".to_owned(),
            opens: strings(&["", "18:00", "18:00", "22:00", "18:00", "10:00", ""]),
            closes: strings(&["", "22:00", "22:00", "18:00", "23:30", "20:00", ""]),
            people_limit: "8".to_owned(),
            test_first: "80".to_owned(),
            late_note_hours: "168".to_owned(),
            hazard_rules: "clp".to_owned(),
            emergency_number: "112".to_owned(),
            ..SettingsForm::default()
        },
        problems,
        zones: vec![
            Choice::new("America/St_Johns", "America/St_Johns"),
            Choice::new("Europe/Berlin", "Europe/Berlin"),
        ],
        currency_is_fixed: false,
        changed_seq: 301,
    };
    page.render().unwrap()
}
