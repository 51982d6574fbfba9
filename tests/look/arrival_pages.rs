//! Who is here, arriving and leaving, with invented people.

use askama::Template;
use wetside::arrivals::views::{
    ArrivePage, AsksUntil, GroupOnRoll, GuestOnRoll, GuestsHere, LackShown, LeavePage,
    NotConfirmed, NotYet, OpenTray, PersonHere, RollPage, StayShown, SupervisedForm,
    SupervisedPage, WhoIsHere,
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
    ("arrive-empty-room", arrive_empty_room),
    ("supervised", supervised),
    ("here", here_already),
    ("here-alone", here_alone),
    ("here-overdue", here_overdue),
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
                stays: (*id == "p1")
                    .then(|| "expected to have left at 17:00, not confirmed".to_owned()),
            })
            .collect(),
        guests: vec![GuestsHere {
            count: 2,
            said: "2 guests of Ines Vatry’s workshop".to_owned(),
        }],
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

/// Until when, with the usual time chosen.
pub(crate) fn asks() -> AsksUntil {
    AsksUntil {
        choices: vec![
            Choice::new("1", "18:02, in 1 h"),
            Choice::new("2", "19:02, in 2 h"),
            Choice::new("3", "20:02, in 3 h"),
            Choice::new("typed", "Another time"),
        ],
        until: "2".to_owned(),
        time: String::new(),
    }
}

fn arrive_empty_room(shell: Shell) -> String {
    let nobody = WhoIsHere {
        people: Vec::new(),
        guests: Vec::new(),
        places: 10,
    };
    let wrong = "Choose a time that is still to come, no later than you would be taken for gone.";
    let page = ArrivePage {
        problems: Problems::one("until", wrong),
        asks: Some(AsksUntil {
            until: "typed".to_owned(),
            time: "16:50".to_owned(),
            ..asks()
        }),
        ..arrive_view(shell, nobody, false, None)
    };
    page.render().unwrap()
}

fn staying(shell: Shell, expected: Option<&str>, is_overdue: bool) -> String {
    let mut alone = here();
    alone.people.truncate(1);
    let page = ArrivePage {
        stay: Some(StayShown {
            is_alone: true,
            has_guests: is_overdue,
            expected: expected.map(moment),
            is_overdue,
            asks: asks(),
        }),
        told: Vec::new(),
        ..arrive_view(shell, alone, true, None)
    };
    page.render().unwrap()
}

fn here_alone(shell: Shell) -> String {
    staying(shell, None, false)
}

fn here_overdue(shell: Shell) -> String {
    staying(shell, Some("17:00"), true)
}

fn arrive_page(shell: Shell, here: WhoIsHere, is_here: bool, not_yet: Option<NotYet>) -> String {
    arrive_view(shell, here, is_here, not_yet).render().unwrap()
}

fn arrive_view(
    shell: Shell,
    here: WhoIsHere,
    is_here: bool,
    not_yet: Option<NotYet>,
) -> ArrivePage {
    ArrivePage {
        shell,
        key: "key".to_owned(),
        problems: Problems::none(),
        here,
        not_yet,
        asks: None,
        stay: None,
        told: vec!["Ines Vatry".to_owned(), "Alwin Corrie".to_owned()],
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
    }
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
        leads: Some((
            "w1".to_owned(),
            "2 guests of your workshop are still here.".to_owned(),
        )),
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
        groups: here.guests.iter().map(group).collect(),
        here,
        not_confirmed,
        may_arrive: true,
        may_close: true,
        may_supervise: true,
    };
    page.render().unwrap()
}

fn group(here: &GuestsHere) -> GroupOnRoll {
    let guest = |name: &str| GuestOnRoll {
        name: name.to_owned(),
        since: moment("16:30"),
    };
    GroupOnRoll {
        workshop: "w1".to_owned(),
        said: here.said.clone(),
        guests: vec![guest("Ilka Brandt"), guest("Jonas Reh")],
    }
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
            ..SupervisedForm::default()
        },
        asks: Some(asks()),
        problems: Problems::one("person", "Choose one of those offered."),
    };
    page.render().unwrap()
}

fn roll_empty(shell: Shell) -> String {
    let nobody = WhoIsHere {
        people: Vec::new(),
        guests: Vec::new(),
        places: 10,
    };
    rolled(shell, nobody, Vec::new())
}
