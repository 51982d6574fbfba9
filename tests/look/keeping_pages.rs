//! Keeping, joining, moving up and discarding, with invented data.

use askama::Template;
use wetside::mixes::keeping::views::{
    Barred, Bath, BottlePage, Containers, DiscardForm, DiscardPage, KeepForm, KeepPage,
    MixInBottle, PourForm, PourPage, ShiftForm, ShiftPage, ShiftPlan, UndoDiscardForm,
    UndoDiscardPage, UndoPlan,
};
use wetside::trays::views::TrayEvent;
use wetside::web::drawing::{Measured, Rule, Standing, VerdictWord};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::Shell;

use super::Page;
use super::bench_pages::{ALLERGY, life, moment};

pub(crate) const PAGES: &[Page] = &[
    ("keep", keep),
    ("keep-return", keep_return),
    ("pour", pour),
    ("pour-none", pour_none),
    ("shift", shift),
    ("shift-not", shift_not),
    ("discard", discard),
    ("discard-left-alone", discard_left_alone),
    ("undo-discard", undo_discard),
    ("bottle-full", bottle_full),
    ("bottle-empty", bottle_empty),
];

const TITLE: &str = "Larch print developer 1+9";
const OUTLOOK: &str = "A fresh one lives 24\u{a0}h there: this one is good until 13:10 Fri. Then \
    Ready: 36\u{a0}% of its capacity used, 40\u{a0}% of its life.";

fn bath(vessel: &str, standing: Standing) -> Bath {
    Bath {
        mix_id: "m1".to_owned(),
        title: TITLE.to_owned(),
        vessel: vessel.to_owned(),
        path: "/trays/t1".to_owned(),
        stands: "1\u{a0}L of 4.9\u{a0}L, 13.3\u{a0}mm deep, open to the air".to_owned(),
        mixed: moment("13:10"),
        word: VerdictWord { standing },
        reason: "36\u{a0}% of its capacity used, 40\u{a0}% of its life.".to_owned(),
    }
}

fn days() -> Vec<Choice> {
    vec![
        Choice::new("2026-11-26", "Thu 26 Nov 2026"),
        Choice::new("2026-11-25", "Wed 25 Nov 2026"),
    ]
}

fn barred(name: &str, why: &str) -> Barred {
    Barred {
        name: name.to_owned(),
        why: why.to_owned(),
    }
}

fn cautions() -> Vec<String> {
    vec![ALLERGY.to_owned()]
}

fn keep_page(shell: Shell) -> KeepPage {
    let full = format!("1\u{a0}L of 1\u{a0}L, a full bottle. {OUTLOOK}");
    let part = format!("1\u{a0}L of 2.5\u{a0}L, a part bottle with air above it. {OUTLOOK}");
    KeepPage {
        shell,
        bath: bath("Developer", Standing::Ready),
        cover: Some(OUTLOOK.to_owned()),
        is_covered: false,
        is_bottled: false,
        vessels: vec![
            Choice::new("b1", "Brown 1").explained(full),
            Choice::new("b2", "Accordion").explained(part),
        ],
        barred: vec![
            barred("Brown 2", "Something stands in it."),
            barred("Small", "There is room for 0.5\u{a0}L only."),
        ],
        form: KeepForm::default(),
        days: days(),
        problems: Problems::none(),
        cautions: cautions(),
    }
}

fn keep(shell: Shell) -> String {
    keep_page(shell).render().unwrap()
}

fn keep_return(shell: Shell) -> String {
    let mut page = keep_page(shell);
    page.cover = None;
    page.is_bottled = true;
    page.vessels = Vec::new();
    page.problems = Problems::one("", "Something stands in there. Discard it first.");
    page.form.when = "earlier".to_owned();
    page.render().unwrap()
}

fn pour_page(shell: Shell) -> PourPage {
    let sum = "1\u{a0}L there and 0.5\u{a0}L poured in make 1.5\u{a0}L of 4.9\u{a0}L.";
    let into = format!("{TITLE} in Developer");
    PourPage {
        shell,
        bath: bath("Brown 1", Standing::Ready),
        choices: vec![Choice::new("m2", into).explained(format!("{sum} {OUTLOOK}"))],
        barred: vec![barred(
            "Pale stop bath 1+19 in Stop bath",
            "Keep these apart: an acid and a sulfite can give sulfur dioxide, a toxic gas.",
        )],
        form: PourForm::default(),
        days: days(),
        problems: Problems::none(),
        cautions: cautions(),
    }
}

fn pour(shell: Shell) -> String {
    pour_page(shell).render().unwrap()
}

fn pour_none(shell: Shell) -> String {
    let mut page = pour_page(shell);
    page.choices = Vec::new();
    page.problems = Problems::one("into", "Choose one of those offered.");
    page.render().unwrap()
}

fn containers() -> Containers {
    let hint = "Holds Larch print developer (4 mixes). Last used 19:10 Wed. No rule here keeps \
        this bath out of it. Read its label and the safety data sheets all the same.";
    Containers {
        choices: vec![
            Choice::new("Drum A", "Drum A").explained(hint),
            Choice::new("another", "Another container")
                .explained("An empty one, named and labelled; never a drink bottle."),
        ],
        barred: vec![barred(
            "Drum B",
            "Holds Pale stop bath. Last used 19:10 Wed. Keep these apart: an acid and a developer \
             can give sulfur dioxide, a toxic gas and heat and spattering liquid.",
        )],
    }
}

fn shift_page(shell: Shell) -> ShiftPage {
    ShiftPage {
        shell,
        bath: bath("First fixer", Standing::Replace),
        plan: Some(ShiftPlan {
            second: "Quick fixer 1+4".to_owned(),
            from: "Second fixer".to_owned(),
            stands: "1\u{a0}L of 4.9\u{a0}L, 13.3\u{a0}mm deep, open to the air".to_owned(),
            outlook: OUTLOOK.to_owned(),
            number: "This is move 2 of the 3 that this room allows a pair of baths.".to_owned(),
        }),
        why_not: String::new(),
        containers: containers(),
        form: ShiftForm::default(),
        days: days(),
        problems: Problems::none(),
        cautions: cautions(),
    }
}

fn shift(shell: Shell) -> String {
    shift_page(shell).render().unwrap()
}

fn shift_not(shell: Shell) -> String {
    let mut page = shift_page(shell);
    page.plan = None;
    page.why_not = "The second bath is used up. Discard both and mix two fresh ones.".to_owned();
    page.render().unwrap()
}

fn discard_page(shell: Shell) -> DiscardPage {
    DiscardPage {
        shell,
        bath: bath("Developer", Standing::Replace),
        is_left_alone: false,
        containers: containers(),
        form: DiscardForm {
            volume: "1".to_owned(),
            why: "spent".to_owned(),
            ..DiscardForm::default()
        },
        days: days(),
        problems: Problems::one("collected", "Missing."),
        cautions: cautions(),
    }
}

fn discard(shell: Shell) -> String {
    discard_page(shell).render().unwrap()
}

fn discard_left_alone(shell: Shell) -> String {
    let mut page = discard_page(shell);
    page.is_left_alone = true;
    page.problems = Problems::none();
    page.bath.title = "Unknown liquid".to_owned();
    page.bath.word = VerdictWord {
        standing: Standing::Unknown,
    };
    page.render().unwrap()
}

fn undo_discard(shell: Shell) -> String {
    let page = UndoDiscardPage {
        shell,
        mix_id: "m1".to_owned(),
        title: TITLE.to_owned(),
        plan: Some(UndoPlan {
            vessel: "Developer".to_owned(),
            path: "/trays/t1".to_owned(),
            container: "Drum A".to_owned(),
            discarded: moment("18:05"),
            outlook: OUTLOOK.to_owned(),
        }),
        why_not: String::new(),
        form: UndoDiscardForm::default(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn bottle_page(shell: Shell) -> BottlePage {
    let capacity = Rule {
        measured: Measured::Capacity,
        left_percent: 64,
        test_from_percent: Some(80),
        words: "0.64\u{a0}L of 1\u{a0}L not used up".to_owned(),
        from: "fresh".to_owned(),
        until: "used up".to_owned(),
        parts: 10,
    };
    BottlePage {
        shell,
        id: "b1".to_owned(),
        name: "Brown 1".to_owned(),
        holds: "1\u{a0}L".to_owned(),
        word: VerdictWord {
            standing: Standing::Ready,
        },
        reason: "36\u{a0}% of its capacity used, 40\u{a0}% of its life.".to_owned(),
        change: Some("Test first from 09:34 Fri if nobody prints.".to_owned()),
        mix: Some(MixInBottle {
            id: "m1".to_owned(),
            product_id: Some("p1".to_owned()),
            title: TITLE.to_owned(),
            stands: "1\u{a0}L of 1\u{a0}L, a full bottle".to_owned(),
            mixed: moment("13:10"),
            capacity,
            life: life(60, "good until 13:10 Fri", "13:10 Fri"),
            cautions: cautions(),
        }),
        waits_for_rinse: false,
        undoable: None,
        may_keep: true,
        may_pour: true,
        may_discard: true,
        may_mix: false,
        may_open: false,
        may_report: true,
        events: vec![TrayEvent {
            seq: 412,
            at: moment("21:40"),
            sentence: "The mix in Developer was poured into Brown 1, full.".to_owned(),
            is_undone: false,
        }],
        older: None,
    }
}

fn bottle_full(shell: Shell) -> String {
    bottle_page(shell).render().unwrap()
}

fn bottle_empty(shell: Shell) -> String {
    let page = BottlePage {
        mix: None,
        word: VerdictWord {
            standing: Standing::NothingRecorded,
        },
        reason: "No mix is recorded here: look before you pour.".to_owned(),
        change: None,
        waits_for_rinse: true,
        undoable: Some(("m0".to_owned(), TITLE.to_owned())),
        events: Vec::new(),
        ..bottle_page(shell)
    };
    page.render().unwrap()
}
