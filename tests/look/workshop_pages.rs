//! Workshops, with invented people.

use askama::Template;
use wetside::arrivals::views::OpenTray;
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};
use wetside::workshops::views::{
    CallOffForm, CallOffPage, EndPage, GuestShown, GuestsForm, GuestsPage, MayDo, NoteForIt,
    OpenPage, PlanForm, PlanPage, TopicToRead, WorkshopPage, WorkshopShown, WorkshopsPage,
};

use super::Page;
use super::bench_pages::moment;

pub(crate) const PAGES: &[Page] = &[
    ("workshops", workshops),
    ("workshops-none", workshops_none),
    ("workshop", workshop),
    ("workshop-over", workshop_over),
    ("workshop-planned", workshop_planned),
    ("workshop-plan", plan),
    ("workshop-call-off", call_off),
    ("workshop-open", open),
    ("workshop-guests", guests),
    ("workshop-end", end),
];

fn placed(shell: Shell) -> Shell {
    Shell {
        place: Some(Place::Workshops),
        ..shell
    }
}

fn shown(word: &'static str) -> WorkshopShown {
    WorkshopShown {
        id: "w1".to_owned(),
        title: "First prints".to_owned(),
        word,
        day: "Sat 28 Nov 2026".to_owned(),
        hours: "14:00–17:00".to_owned(),
        about: "Led by Ines Vatry, up to 8 guests, at Long bench".to_owned(),
    }
}

fn workshops(shell: Shell) -> String {
    let page = WorkshopsPage {
        shell: placed(shell),
        coming: vec![shown("Going on"), shown("Planned")],
        past: vec![shown("Over"), shown("Called off")],
        may_plan: true,
    };
    page.render().unwrap()
}

fn workshops_none(shell: Shell) -> String {
    let page = WorkshopsPage {
        shell: placed(shell),
        coming: Vec::new(),
        past: Vec::new(),
        may_plan: false,
    };
    page.render().unwrap()
}

fn guest(id: &str, name: &str, until: Option<&str>) -> GuestShown {
    GuestShown {
        id: id.to_owned(),
        name: name.to_owned(),
        since: moment("14:05"),
        until: until.map(str::to_owned),
    }
}

fn view(shell: Shell, word: &'static str) -> WorkshopPage {
    WorkshopPage {
        shell: placed(shell),
        workshop: shown(word),
        called_off: None,
        opened_seq: Some(420),
        paid_by: "the room pays".to_owned(),
        count: Some("2 guests are here now.".to_owned()),
        there: vec![
            guest("g1", "Ilka Brandt", None),
            guest("g2", "Bartholomäus Overgaard-Lindqvist", None),
        ],
        left: vec![guest("g3", "Mette Lauring", Some("15:10"))],
        is_named: true,
        kept_days: 30,
        notes: vec![NoteForIt {
            seq: 431,
            said: "12 sheets, 8×10 in, RC, Long bench".to_owned(),
            at: moment("15:30"),
        }],
        noted: "In all 12 sheets.".to_owned(),
        may: MayDo {
            lead: true,
            note: true,
            ..MayDo::default()
        },
        key: "k".to_owned(),
    }
}

fn workshop(shell: Shell) -> String {
    view(shell, "Going on").render().unwrap()
}

fn workshop_over(shell: Shell) -> String {
    let page = WorkshopPage {
        count: Some("3 guests came.".to_owned()),
        there: Vec::new(),
        left: Vec::new(),
        is_named: false,
        notes: Vec::new(),
        may: MayDo {
            take_over: true,
            ..MayDo::default()
        },
        ..view(shell, "Over")
    };
    page.render().unwrap()
}

fn workshop_planned(shell: Shell) -> String {
    let page = WorkshopPage {
        called_off: Some("The fan is away.".to_owned()),
        count: None,
        opened_seq: None,
        may: MayDo {
            plan: true,
            open: true,
            ..MayDo::default()
        },
        ..view(shell, "Planned")
    };
    page.render().unwrap()
}

fn plan(shell: Shell) -> String {
    let wrong = "Whoever leads a workshop is inducted on all that is asked for on that day. This \
                 is missing: Acids and water.";
    let mut problems = Problems::one("leader", wrong);
    problems.add("ends", "The end is not after the beginning.");
    let page = PlanPage {
        shell: placed(shell),
        id: None,
        leaders: vec![
            Choice::new("p1", "Ines Vatry"),
            Choice::new("p2", "Ottmar Quill"),
        ],
        spaces: vec![
            Choice::new("", "No space of its own"),
            Choice::new("s", "Cellar"),
        ],
        lines: vec![
            Choice::new("a", "Long bench"),
            Choice::new("b", "Window bench"),
        ],
        payers: vec![Choice::new("", "The room"), Choice::new("p1", "Ines Vatry")],
        form: PlanForm {
            key: "k".to_owned(),
            title: "First prints".to_owned(),
            leader: "p2".to_owned(),
            day: "2026-11-28".to_owned(),
            begins: "14:00".to_owned(),
            ends: "13:00".to_owned(),
            most: "8".to_owned(),
            lines: vec!["a".to_owned()],
            ..PlanForm::default()
        },
        problems,
    };
    page.render().unwrap()
}

fn call_off(shell: Shell) -> String {
    let page = CallOffPage {
        shell: placed(shell),
        workshop: shown("Planned"),
        form: CallOffForm {
            key: "k".to_owned(),
            ..CallOffForm::default()
        },
        problems: Problems::one("reason", "Fill this in."),
    };
    page.render().unwrap()
}

fn open(shell: Shell) -> String {
    let page = OpenPage {
        shell: placed(shell),
        workshop: shown("Planned"),
        in_trays: vec![
            "Larch print developer, concentrate as supplied: H317, H319. Read the supplier’s \
             safety data sheet before you pour."
                .to_owned(),
        ],
        concentrates: vec![
            "Larch stop bath: no hazard codes are on file. That says nothing about it: read the \
             supplier’s safety data sheet."
                .to_owned(),
        ],
        topics: vec![TopicToRead {
            title: "Gloves and tongs".to_owned(),
            paragraphs: vec!["Nobody reaches into a tray with a bare hand.".to_owned()],
        }],
        key: "k".to_owned(),
        read: "00".to_owned(),
        problems: Problems::one("was_read", "Confirm this first."),
    };
    page.render().unwrap()
}

fn guests(shell: Shell) -> String {
    let wrong = "There is 1 place left, by the workshop’s most or the room’s. Nobody of this list \
                 was signed in.";
    let page = GuestsPage {
        shell: placed(shell),
        workshop: shown("Going on"),
        kept_days: 30,
        form: GuestsForm {
            key: "k".to_owned(),
            names: "Ilka Brandt\nJonas Reh".to_owned(),
        },
        problems: Problems::one("names", wrong),
    };
    page.render().unwrap()
}

fn end(shell: Shell) -> String {
    let page = EndPage {
        shell: placed(shell),
        workshop: shown("Going on"),
        there: "2 guests are here still and are signed out with it.".to_owned(),
        noted: Some("In all 12 sheets.".to_owned()),
        open: vec![OpenTray {
            name: "Long bench, Developer".to_owned(),
            mix: "Larch print developer 1+9".to_owned(),
            mix_id: "m1".to_owned(),
        }],
        may_note: true,
        key: "k".to_owned(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}
