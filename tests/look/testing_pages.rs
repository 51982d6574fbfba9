//! Checks, contamination, extensions and taking back, with invented data.

use askama::Template;
use wetside::mixes::readings::views::{
    CheckForm, CheckPage, ExtendForm, ExtendPage, Figure, FlagForm, FlagPage, KindLink, OfMix,
    TakeBackForm, TakeBackPage,
};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::Shell;

use super::bench_pages::moment;
use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("check-by-eye", check_by_eye),
    ("check-timed", check_timed),
    ("flag", flag),
    ("extend", extend),
    ("take-back", take_back),
];

fn of() -> OfMix {
    OfMix {
        id: "m1".to_owned(),
        title: "Larch print developer 1+9".to_owned(),
        vessel: "Developer".to_owned(),
        path: "/trays/t1".to_owned(),
    }
}

fn check(shell: Shell, chosen: &str) -> CheckPage {
    let kinds = ["Test print", "Emergence time", "Temperature", "pH"];
    CheckPage {
        shell,
        of: of(),
        kinds: kinds
            .iter()
            .map(|label| KindLink {
                value: label.to_lowercase().replace(' ', "_"),
                label: (*label).to_owned(),
                is_chosen: *label == chosen,
            })
            .collect(),
        name: chosen.to_owned(),
        how: "Count from the moment the paper goes in until the image first shows.".to_owned(),
        outcomes: Vec::new(),
        figure: None,
        sample_label: None,
        sample_hint: String::new(),
        form: CheckForm {
            when: "now".to_owned(),
            ..CheckForm::default()
        },
        problems: Problems::none(),
        days: vec![Choice::new("2026-11-26", "Thu 26 Nov 2026")],
    }
}

fn check_by_eye(shell: Shell) -> String {
    CheckPage {
        outcomes: vec![
            Choice::new("good", "Good, as when fresh"),
            Choice::new("bad", "Not good"),
        ],
        ..check(shell, "Test print")
    }
    .render()
    .unwrap()
}

fn check_timed(shell: Shell) -> String {
    CheckPage {
        figure: Some(Figure {
            name: "seconds",
            label: "Until the image showed",
            unit: "s",
            value: "quick".to_owned(),
        }),
        sample_label: Some("Paper"),
        sample_hint: "Fresh times were taken with: Plain RC, glossy.".to_owned(),
        problems: Problems::one("seconds", "Enter a number."),
        ..check(shell, "Emergence time")
    }
    .render()
    .unwrap()
}

fn flag(shell: Shell) -> String {
    FlagPage {
        shell,
        of: of(),
        groups: vec![
            Choice::new("acid", "An acid").explained("Any: acetic, citric, an acid fixer."),
            Choice::new("fixer", "Fixer"),
        ],
        form: FlagForm {
            groups: strings(&["fixer"]),
            ..FlagForm::default()
        },
        problems: Problems::none(),
    }
    .render()
    .unwrap()
}

fn extend(shell: Shell) -> String {
    ExtendPage {
        shell,
        of: of(),
        form: ExtendForm {
            hours: "30".to_owned(),
            ..ExtendForm::default()
        },
        problems: Problems::one("hours", "Give more than nothing and at most 24 hours."),
    }
    .render()
    .unwrap()
}

fn take_back(shell: Shell) -> String {
    TakeBackPage {
        shell,
        id: "r1".to_owned(),
        found: "Contamination: fixer came into it.".to_owned(),
        at: moment("16:10"),
        path: "/trays/t1".to_owned(),
        form: TakeBackForm::default(),
        problems: Problems::none(),
    }
    .render()
    .unwrap()
}
