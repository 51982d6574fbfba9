//! Incidents, with invented data.

use askama::Template;
use wetside::emergency::views::RoomHelp;
use wetside::incidents::views::{
    AvoidForm, AvoidRow, ClosedPage, IncidentForm, IncidentPage, IncidentRow, IncidentsPage,
    PeriodForm, ReportPage,
};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("incidents", incidents),
    ("incident", incident),
    ("incident-closed", closed),
    ("incident-new", new),
];

fn placed(shell: Shell) -> Shell {
    Shell {
        place: Some(Place::Incidents),
        ..shell
    }
}

fn row(number: i64, said: &str) -> IncidentRow {
    IncidentRow {
        id: number.to_string(),
        number,
        person: "Tomasz Orlen".to_owned(),
        said: said.to_owned(),
    }
}

fn products() -> Vec<Choice> {
    vec![
        Choice::new("", "None, or not known"),
        Choice::new("d", "Larch print developer"),
    ]
}

fn incidents(shell: Shell) -> String {
    let page = IncidentsPage {
        shell: placed(shell),
        own: vec![row(3, "Reported 18:05, open")],
        others: vec![row(2, "Reported Tue 3 Nov 2026, dealt with, erased")],
        is_steward: true,
        counted: Some("2 incidents were reported; not dealt with: 1.".to_owned()),
        period: PeriodForm {
            from: "2025-11-27".to_owned(),
            until: "2026-11-25".to_owned(),
        },
        avoids: vec![AvoidRow {
            id: "1".to_owned(),
            words: "Larch print developer: itches".to_owned(),
        }],
        products: products(),
        form: AvoidForm::default(),
        problems: Problems::one("words", "Fill this in."),
    };
    page.render().unwrap()
}

fn incident(shell: Shell) -> String {
    let page = IncidentPage {
        shell: placed(shell),
        id: "3".to_owned(),
        number: 3,
        room: Some(RoomHelp {
            emergency_number: "112".to_owned(),
            poison_centre: String::new(),
            address: "Quay 4, back yard".to_owned(),
            contacts: "Ines Vatry, steward".to_owned(),
            eyewash: "Left of the sink".to_owned(),
            data_sheets: "Folder on the shelf".to_owned(),
        }),
        leads_with_help: true,
        facts: vec![
            ("It happened to", "Tomasz Orlen".to_owned()),
            ("Reported", "18:05, by Tomasz Orlen".to_owned()),
            ("What", "Chemistry on the skin".to_owned()),
            ("Part of the body", "Hands and fingers".to_owned()),
        ],
        words: "The tongs slipped. It itches a little.".to_owned(),
        looks: vec!["Ines Vatry looked at it 18:40.".to_owned()],
        is_finished: false,
        is_erased: false,
        may_finish: true,
        key: "k".to_owned(),
    };
    page.render().unwrap()
}

fn closed(shell: Shell) -> String {
    let page = ClosedPage {
        shell: placed(shell),
        row: row(3, "Reported 18:05, open"),
        key: "k".to_owned(),
    };
    page.render().unwrap()
}

fn new(shell: Shell) -> String {
    let page = ReportPage {
        shell: placed(shell),
        people: vec![Choice::new("", "To me"), Choice::new("t", "Tomasz Orlen")],
        whats: vec![
            Choice::new("skin_contact", "Chemistry on the skin"),
            Choice::new("near_miss", "It nearly happened"),
        ],
        lines: vec![Choice::new("", "Elsewhere in the room")],
        products: products(),
        parts: vec![Choice::new("hands", "Hands and fingers")],
        deeds: vec![Choice::new(
            "long_flush",
            "Running water, at least 15 minutes",
        )],
        form: IncidentForm {
            key: "k".to_owned(),
            what: "skin_contact".to_owned(),
            first: strings(&["long_flush"]),
            when: "now".to_owned(),
            ..IncidentForm::default()
        },
        problems: Problems::one("part", "Choose one of those offered."),
    };
    page.render().unwrap()
}
