//! Who is here, arriving and leaving, with invented people.

use askama::Template;
use wetside::arrivals::views::{
    ArrivePage, LackShown, LeavePage, NotConfirmed, NotYet, OpenTray, PersonHere, RollPage,
    SupervisedForm, SupervisedPage, WhoIsHere,
};
use wetside::board::views::BottleOnBoard;
use wetside::web::drawing::{Standing, VerdictWord};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::Shell;

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("arrive", arrive),
    ("arrive-full", arrive_full),
    ("arrive-not-yet", arrive_not_yet),
    ("arrive-alone", arrive_alone),
    ("supervised", supervised),
    ("here", here_already),
    ("leave", leave),
    ("leave-not-here", leave_not_here),
    ("roll", roll),
    ("roll-empty", roll_empty),
];

/// A bottle that stands beside the trays.
pub(crate) fn bottle() -> BottleOnBoard {
    BottleOnBoard {
        id: "b1".to_owned(),
        name: "Brown 1".to_owned(),
        word: VerdictWord {
            standing: Standing::TestFirst,
        },
        mix: "Larch print developer 1+9".to_owned(),
        litres: "1\u{a0}L".to_owned(),
        ends: Some("good until 13:10 Fri".to_owned()),
    }
}

/// Three people in a room of ten.
pub(crate) fn here() -> WhoIsHere {
    let people = [
        ("p1", "Ines Vatry", "16:20"),
        ("p2", "Ottmar Quill", "16:48"),
        ("p3", "Sunniva Braithe", "17:01"),
    ];
    WhoIsHere {
        people: people
            .iter()
            .map(|(id, name, since)| PersonHere {
                id: (*id).to_owned(),
                name: (*name).to_owned(),
                since: moment(since),
                supervised_by: (*id == "p3").then(|| "Ines Vatry".to_owned()),
            })
            .collect(),
        places: 10,
    }
}

fn arriving(shell: Shell, here: WhoIsHere, is_here: bool) -> String {
    arrive_page(shell, here, is_here, None)
}

fn arrive_not_yet(shell: Shell) -> String {
    let lack = |title: &str, why: &str| LackShown {
        topic: "t".to_owned(),
        title: title.to_owned(),
        why: why.to_owned(),
    };
    let not_yet = NotYet {
        lacks: vec![
            lack("Gloves and tongs", "Never inducted"),
            lack("Spills", "Waits for confirmation"),
        ],
        stewards: vec!["Ines Vatry".to_owned(), "Alwin Corrie".to_owned()],
        waits: true,
        alone: None,
    };
    arrive_page(shell, here(), false, Some(not_yet))
}

fn arrive_alone(shell: Shell) -> String {
    let not_yet = NotYet {
        lacks: Vec::new(),
        stewards: vec!["Ines Vatry".to_owned()],
        waits: false,
        alone: Some("p1".to_owned()),
    };
    arrive_page(shell, here(), false, Some(not_yet))
}

fn arrive_page(shell: Shell, here: WhoIsHere, is_here: bool, not_yet: Option<NotYet>) -> String {
    let page = ArrivePage {
        shell,
        key: "key".to_owned(),
        problems: Problems::none(),
        here,
        not_yet,
        since: is_here.then(|| (moment("16:20"), moment("23:00"))),
        avoid: vec![
            "You wanted to avoid this: Larch print developer stands in a tray now.".to_owned(),
        ],
        cautions: vec![
            "Larch print developer, concentrate as supplied: H317, H319. Read the supplier’s \
             safety data sheet before you pour."
                .to_owned(),
        ],
        may_note: true,
    };
    page.render().unwrap()
}

fn arrive(shell: Shell) -> String {
    arriving(shell, here(), false)
}

fn arrive_full(shell: Shell) -> String {
    let full = WhoIsHere {
        places: 3,
        ..here()
    };
    arriving(shell, full, false)
}

fn here_already(shell: Shell) -> String {
    arriving(shell, here(), true)
}

fn leaving(shell: Shell, is_here: bool) -> String {
    let page = LeavePage {
        shell,
        key: "key".to_owned(),
        problems: Problems::none(),
        is_here,
        are_others: false,
        answers_for: vec!["Sunniva Braithe".to_owned()],
        open: vec![OpenTray {
            name: "Long bench, Developer".to_owned(),
            mix: "Larch print developer 1+9".to_owned(),
            mix_id: "m1".to_owned(),
        }],
        may_note: true,
    };
    page.render().unwrap()
}

fn leave(shell: Shell) -> String {
    leaving(shell, true)
}

fn leave_not_here(shell: Shell) -> String {
    leaving(shell, false)
}

fn rolled(shell: Shell, here: WhoIsHere, not_confirmed: Vec<NotConfirmed>) -> String {
    let page = RollPage {
        shell,
        as_of: moment("Thu 26 Nov 2026, 17:02"),
        here,
        not_confirmed,
        may_arrive: true,
        may_close: true,
        may_supervise: true,
    };
    page.render().unwrap()
}

fn roll(shell: Shell) -> String {
    let gone = NotConfirmed {
        name: "Alwin Corrie".to_owned(),
        from: moment("Wed 25 Nov, 19:30"),
        until: moment("Wed 25 Nov, 23:00"),
    };
    rolled(shell, here(), vec![gone])
}

fn supervised(shell: Shell) -> String {
    let page = SupervisedPage {
        shell,
        people: vec![
            Choice::new("p4", "Alwin Corrie: lacks 3 topics"),
            Choice::new("p5", "Ottmar Quill: inducted"),
        ],
        form: SupervisedForm {
            key: "k".to_owned(),
            person: "p4".to_owned(),
        },
        problems: Problems::one("person", "Choose one of those offered."),
    };
    page.render().unwrap()
}

fn roll_empty(shell: Shell) -> String {
    let nobody = WhoIsHere {
        people: Vec::new(),
        places: 10,
    };
    rolled(shell, nobody, Vec::new())
}
