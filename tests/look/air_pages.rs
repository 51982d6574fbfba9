//! Room air, with invented data.

use askama::Template;
use wetside::air::views::{
    AirForm, AirFormPage, AirPage, AirShown, AiredPage, AiringEndPage, AiringForm, AiringShown,
    MeasureForm, MeasurePage, PastRow, PlacePage, TakeBackPage, WaiverPage, WordsForm,
};
use wetside::trays::views::Step;
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::Page;

pub(crate) const PAGES: &[Page] = &[
    ("air", air),
    ("air-place", place),
    ("air-place-unmeasured", place_unmeasured),
    ("air-change", change),
    ("air-measure", measure),
    ("air-waiver", waiver),
    ("air-aired", aired),
    ("air-end", end),
    ("air-take-back", take_back),
];

fn placed(shell: Shell) -> Shell {
    Shell {
        place: Some(Place::Air),
        ..shell
    }
}

fn step(what: &str, how: &str, figure: &str) -> Step {
    Step {
        what: what.to_owned(),
        how: how.to_owned(),
        figure: figure.to_owned(),
    }
}

fn cellar() -> AirShown {
    AirShown {
        id: "1".to_owned(),
        name: "Cellar".to_owned(),
        word: "Short",
        said: "80\u{a0}L/s were measured Fri 20 Nov 2026. It is 21.6\u{a0}L/s less than is wanted.".to_owned(),
        steps: vec![
            step("Volume", "20\u{a0}m² × 2.6\u{a0}m", "52\u{a0}m³"),
            step("Measured exhaust", "Fri 20 Nov 2026. By Tomasz Orlen: vane anemometer at the grille, four points.", "80\u{a0}L/s"),
            step("Air changes", "80\u{a0}L/s for an hour ÷ 52\u{a0}m³", "5.54 an hour"),
            step("Wanted exhaust", "20\u{a0}m² of floor × 5.08 L/s for each m² (IMC 2018, Table 403.3.1.1)", "101.6\u{a0}L/s"),
            step("Short by", "101.6\u{a0}L/s − 80\u{a0}L/s", "21.6\u{a0}L/s"),
        ],
        clearing: vec![
            step("90 % has gone", "2.303 ÷ 5.54 an hour × 3", "1\u{a0}h 15\u{a0}min"),
            step("99 % has gone", "4.605 ÷ 5.54 an hour × 3", "2\u{a0}h 30\u{a0}min"),
            step("99.9 % has gone", "6.908 ÷ 5.54 an hour × 3", "3\u{a0}h 45\u{a0}min"),
        ],
        clearing_said: "Counted from the moment the trays are covered or emptied (CDC 2003, Table B.1). Air hardly ever mixes perfectly: the mixing factor here is 3, of 1 to 10.".to_owned(),
        starts: "Toner, glacial acid and ammonia may start here while the fan runs: its exhaust was measured.".to_owned(),
        airing: AiringShown {
            reminder: None,
            now: None,
            last: "Nobody noted any airing within the last hour.".to_owned(),
            average: None,
        },
    }
}

fn film_corner() -> AirShown {
    AirShown {
        id: "2".to_owned(),
        name: "Finishing room".to_owned(),
        word: "Unmeasured",
        said: "No fan takes air out here. Treat the air as standing still.".to_owned(),
        steps: vec![
            step("Volume", "9\u{a0}m² × 2.4\u{a0}m", "21.6\u{a0}m³"),
            step("Measured exhaust", "", "unmeasured"),
        ],
        clearing: Vec::new(),
        clearing_said: "None: it takes measured exhaust, and the floor and the height of the space.".to_owned(),
        starts: "Toner, glacial acid and ammonia may not start here: no exhaust was measured.".to_owned(),
        airing: AiringShown {
            reminder: Some("Without a fan, air for a couple of minutes about every fifteen (common practice, no source). It never counts as exhaust."),
            now: Some(("9".to_owned(), "It is being aired since 18:41. Said by Tomasz Orlen.".to_owned())),
            last: "Nobody noted any airing within the last hour.".to_owned(),
            average: Some("Aired for 6\u{a0}min of the last hour: 1.2 air changes an hour on average. That is no exhaust.".to_owned()),
        },
    }
}

fn air(shell: Shell) -> String {
    let page = AirPage {
        shell: placed(shell),
        places: vec![cellar(), film_corner()],
        key: "k".to_owned(),
        may_air: true,
    };
    page.render().unwrap()
}

fn row(seq: i64, said: &str, more: &str, undone_by: Option<i64>) -> PastRow {
    PastRow {
        seq,
        at: "Fri 20 Nov 2026".to_owned(),
        said: said.to_owned(),
        more: more.to_owned(),
        id: Some(seq.to_string()),
        undone_by,
    }
}

fn place(shell: Shell) -> String {
    let how = "By Tomasz Orlen: vane anemometer at the grille, four points.";
    let page = PlacePage {
        shell: placed(shell),
        place: cellar(),
        measured: vec![
            row(412, "Exhaust: 80\u{a0}L/s.", how, None),
            row(398, "Exhaust: 800\u{a0}L/s.", how, Some(400)),
        ],
        aired: Vec::new(),
        older: Some("?before=398".to_owned()),
        key: "k".to_owned(),
        may_air: true,
        may_keep: true,
        may_take_back: true,
    };
    page.render().unwrap()
}

fn place_unmeasured(shell: Shell) -> String {
    let page = PlacePage {
        shell: placed(shell),
        place: film_corner(),
        measured: Vec::new(),
        aired: vec![PastRow {
            id: None,
            ..row(
                411,
                "Aired from 17:02 until 17:08. Said by Ines Vatry.",
                "",
                None,
            )
        }],
        older: None,
        key: "k".to_owned(),
        may_air: true,
        may_keep: false,
        may_take_back: false,
    };
    page.render().unwrap()
}

fn change(shell: Shell) -> String {
    let page = AirFormPage {
        shell: placed(shell),
        id: "1".to_owned(),
        name: "Cellar".to_owned(),
        rules: vec![
            Choice::new("imc_2018", "International Mechanical Code 2018").explained(
                "Table 403.3.1.1, darkrooms: 1.0 cfm for each ft² of floor, 5.08 L/s for each m²",
            ),
            Choice::new("ashrae_62_1", "ASHRAE 62.1")
                .explained("5.0 L/s for each m² of floor, from memory"),
            Choice::new("own", "A figure of your own")
                .explained("What your local rule or a competent person asks for"),
        ],
        area_unit: "m²",
        height_unit: "m",
        flow_unit: "L/s",
        form: AirForm {
            key: "k".to_owned(),
            floor: "20".to_owned(),
            height: "60".to_owned(),
            mixing: "3".to_owned(),
            fan: "yes".to_owned(),
            rule: "imc_2018".to_owned(),
            ..AirForm::default()
        },
        problems: Problems::one("height", "Give something from 1 m to 30 m."),
    };
    page.render().unwrap()
}

fn measure(shell: Shell) -> String {
    let page = MeasurePage {
        shell: placed(shell),
        id: "1".to_owned(),
        name: "Cellar".to_owned(),
        flows: vec![
            Choice::new("exhaust", "Exhaust").explained("What the fan takes out of the space"),
            Choice::new("airing", "Airing")
                .explained("What moves while doors and windows stand open: never exhaust"),
        ],
        flow_unit: "L/s",
        form: MeasureForm {
            key: "k".to_owned(),
            of: "exhaust".to_owned(),
            flow: "80".to_owned(),
            measured_on: "2026-11-26".to_owned(),
            ..MeasureForm::default()
        },
        problems: Problems::one("how", "Fill this in."),
    };
    page.render().unwrap()
}

fn words(words: &str) -> WordsForm {
    WordsForm {
        key: "k".to_owned(),
        words: words.to_owned(),
    }
}

fn waiver(shell: Shell) -> String {
    let page = WaiverPage {
        shell: placed(shell),
        id: "2".to_owned(),
        name: "Finishing room".to_owned(),
        starts: "Toner, glacial acid and ammonia may start here without measured exhaust: the district safety engineer agreed to it, written down Fri 20 Nov 2026.".to_owned(),
        is_given: true,
        form: words(""),
        problems: Problems::one("words", "Fill this in."),
    };
    page.render().unwrap()
}

fn airing_form() -> AiringForm {
    AiringForm {
        key: "k".to_owned(),
        when: "earlier".to_owned(),
        day: "2026-11-26".to_owned(),
        ..AiringForm::default()
    }
}

fn days() -> Vec<Choice> {
    vec![Choice::new("2026-11-26", "Thu 26 Nov 2026")]
}

fn aired(shell: Shell) -> String {
    let page = AiredPage {
        shell: placed(shell),
        id: "2".to_owned(),
        name: "Finishing room".to_owned(),
        days: days(),
        form: airing_form(),
        problems: Problems::one("minutes", "Fill this in."),
    };
    page.render().unwrap()
}

fn end(shell: Shell) -> String {
    let page = AiringEndPage {
        shell: placed(shell),
        id: "9".to_owned(),
        back: "/air/2".to_owned(),
        name: "Finishing room".to_owned(),
        sentence: "Aired since 18:41. Said by Tomasz Orlen.".to_owned(),
        is_over: false,
        days: days(),
        form: airing_form(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn take_back(shell: Shell) -> String {
    let page = TakeBackPage {
        shell: placed(shell),
        id: "412".to_owned(),
        back: "/air/1".to_owned(),
        name: "Cellar".to_owned(),
        found:
            "Exhaust: 80\u{a0}L/s. Fri 20 Nov 2026. By Tomasz Orlen: vane anemometer at the grille."
                .to_owned(),
        is_undone: false,
        form: words(""),
        problems: Problems::one("words", "Fill this in."),
    };
    page.render().unwrap()
}
