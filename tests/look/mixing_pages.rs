//! Mixing, topping up, opening entries and stock solution, with invented data.

use askama::Template;
use wetside::mixes::mixing::views::{
    Aside, Cylinder, MixForm, MixPage, MixedPage, OpenForm, OpenPage, Pour, TopUpForm, TopUpPage,
    UnknownForm, UnknownPage, Wanted, Worksheet,
};
use wetside::mixes::stock::views::{MakeStockPage, StockForm, StockPage};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::bench_pages::{ALLERGY, life, moment, step};
use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("mix", mix),
    ("mix-reckoned", mix_reckoned),
    ("mix-wrong", mix_wrong),
    ("mix-full", mix_full),
    ("mixed", mixed),
    ("top-up", top_up),
    ("top-up-barred", top_up_barred),
    ("open", open),
    ("unknown", unknown),
    ("make-stock", make_stock),
    ("stock", stock),
];

fn days() -> Vec<Choice> {
    vec![
        Choice::new("2026-11-26", "Today, Thu 26 Nov"),
        Choice::new("2026-11-25", "Wed 25 Nov"),
    ]
}

fn dilutions() -> Vec<Choice> {
    vec![
        Choice::new("d9", "Larch print developer 1+9"),
        Choice::new("d14", "Larch print developer 1+14"),
    ]
}

fn stocks() -> Vec<Choice> {
    vec![
        Choice::new("recorded", "What is recorded, opened first")
            .explained("Of a powder only; without any recorded it is not from stock."),
        Choice::new("s1", "Alder powder developer, made Sun 1 Nov 2026")
            .explained("800\u{a0}ml left, use by Tue 1 Dec 2026"),
        Choice::new("none", "Not from stock"),
    ]
}

const HINT: &str = "750\u{a0}ml covers a print here; the tray holds 4.87\u{a0}L to the rim.";

fn mix_page(shell: Shell) -> MixPage {
    MixPage {
        shell: Shell {
            place: Some(Place::Board),
            ..shell
        },
        vessel_path: "/trays/t1".to_owned(),
        vessel: "Developer".to_owned(),
        full_of: None,
        top_up_path: None,
        form: MixForm {
            key: "k".to_owned(),
            dilution: "d9".to_owned(),
            volume: "1".to_owned(),
            stock: "recorded".to_owned(),
            when: "now".to_owned(),
            ..MixForm::default()
        },
        problems: Problems::none(),
        dilutions: dilutions(),
        volume_hint: HINT.to_owned(),
        stocks: stocks(),
        days: days(),
        worksheet: None,
        cautions: vec![ALLERGY.to_owned()],
    }
}

fn mix(shell: Shell) -> String {
    mix_page(shell).render().unwrap()
}

fn pour(amount: &str, what: &str, is_water: bool) -> Pour {
    Pour {
        amount: amount.to_owned(),
        what: what.to_owned(),
        is_water,
    }
}

fn aside(heading: &str, lines: &[&str]) -> Aside {
    Aside {
        heading: heading.to_owned(),
        lines: strings(lines),
    }
}

fn sheet() -> Worksheet {
    Worksheet {
        title: "Larch print developer 1+9".to_owned(),
        pours: vec![
            pour("900\u{a0}ml", "water first", true),
            pour("100\u{a0}ml", "concentrate into it", false),
        ],
        total: "1\u{a0}L".to_owned(),
        place: "in the tray".to_owned(),
        cylinder: Some(Cylinder::of_dilution(9_000)),
        steps: vec![
            step("1 part concentrate and 9 parts water", "1 + 9", "10 parts"),
            step("Concentrate", "1\u{a0}L ÷ 10", "100\u{a0}ml"),
            step("Water", "1\u{a0}L − 100\u{a0}ml", "900\u{a0}ml"),
        ],
        asides: vec![
            aside(
                "Temperature",
                &[
                    "Draw water at 20.6\u{a0}°C: 18\u{a0}% from the hot tap, 163\u{a0}ml, and \
                   737\u{a0}ml from the cold one.",
                ],
            ),
            aside(
                "With this cylinder",
                &["To the nearest mark: 100\u{a0}ml and 900\u{a0}ml of water. That is 1+9."],
            ),
        ],
        takes: strings(&["100 sheets of 8×10 in, RC", "or 50 sheets of 8×10 in, FB"]),
        keeps: "Open in this tray 8 h: good until Thu 26 Nov, 21:10 if nobody prints.".to_owned(),
        basis: "Where these figures come from: common practice, no source.".to_owned(),
        said: "900\u{a0}ml water first, 100\u{a0}ml concentrate into it.".to_owned(),
        verb: "It stands in the tray".to_owned(),
    }
}

fn mix_reckoned(shell: Shell) -> String {
    let mut page = mix_page(shell);
    page.worksheet = Some(sheet());
    page.form.wanted = Wanted {
        mix_temperature: "20".to_owned(),
        concentrate_temperature: "15".to_owned(),
        hot_tap: "55".to_owned(),
        cold_tap: "13".to_owned(),
        graduation: "5".to_owned(),
    };
    page.render().unwrap()
}

fn mix_wrong(shell: Shell) -> String {
    let mut page = mix_page(shell);
    page.form.volume = "0,5".to_owned();
    page.problems = Problems::one("volume", "Write the volume with a point, such as 0.5.");
    page.render().unwrap()
}

fn mix_full(shell: Shell) -> String {
    let mut page = mix_page(shell);
    page.full_of = Some("1\u{a0}L of Larch print developer 1+9".to_owned());
    page.top_up_path = Some("/mixes/m1/top-up".to_owned());
    page.render().unwrap()
}

fn mixed(shell: Shell) -> String {
    let page = MixedPage {
        shell,
        mix_id: "m1".to_owned(),
        seq: 412,
        vessel_path: "/trays/t1".to_owned(),
        vessel: "Developer".to_owned(),
        title: "Larch print developer 1+9".to_owned(),
        total: "1\u{a0}L".to_owned(),
        life: life(100, "good until 21:10", "21:10 Thu"),
        drawn: "It was not drawn from stock, so it carries no price.".to_owned(),
    };
    page.render().unwrap()
}

fn top_up_page(shell: Shell) -> TopUpPage {
    TopUpPage {
        shell,
        mix_id: "m1".to_owned(),
        vessel_path: "/trays/t1".to_owned(),
        vessel: "Developer".to_owned(),
        title: "Larch print developer 1+9".to_owned(),
        there: "980\u{a0}ml".to_owned(),
        barred: None,
        form: TopUpForm {
            key: "k".to_owned(),
            volume: "0.5".to_owned(),
            stock: "recorded".to_owned(),
            when: "now".to_owned(),
            ..TopUpForm::default()
        },
        problems: Problems::none(),
        volume_hint: "There is room for 3.89\u{a0}L.".to_owned(),
        stocks: stocks(),
        days: days(),
        worksheet: Some(Worksheet {
            place: "fresh, into the tray".to_owned(),
            asides: vec![aside(
                "What that does",
                &["Used of its capacity: 60\u{a0}% before, 40\u{a0}% after."],
            )],
            takes: Vec::new(),
            keeps: String::new(),
            basis: String::new(),
            verb: "It is topped up".to_owned(),
            ..sheet()
        }),
        weaker: strings(&["980\u{a0}ml at 1+9 and 490\u{a0}ml of water make 1.47\u{a0}L at 1+14."]),
        cautions: vec![ALLERGY.to_owned()],
    }
}

fn top_up(shell: Shell) -> String {
    top_up_page(shell).render().unwrap()
}

fn top_up_barred(shell: Shell) -> String {
    let mut page = top_up_page(shell);
    page.barred = Some("The mix you would add to is used up. Discard it.".to_owned());
    page.render().unwrap()
}

fn open(shell: Shell) -> String {
    let page = OpenPage {
        shell,
        vessel_path: "/bottles/b1".to_owned(),
        vessel: "Brown, two litres".to_owned(),
        barred: None,
        form: OpenForm {
            key: "k".to_owned(),
            dilution: "d9".to_owned(),
            ..OpenForm::default()
        },
        problems: Problems::one("life_used", "Fill this in."),
        dilutions: dilutions(),
        volume_hint: "The bottle holds 2\u{a0}L up to the stopper.".to_owned(),
        cautions: Vec::new(),
    };
    page.render().unwrap()
}

fn unknown(shell: Shell) -> String {
    let page = UnknownPage {
        shell,
        vessel_path: "/trays/t1".to_owned(),
        vessel: "Spare tray".to_owned(),
        barred: None,
        form: UnknownForm::default(),
        problems: Problems::none(),
        volume_hint: HINT.to_owned(),
        cautions: Vec::new(),
    };
    page.render().unwrap()
}

fn make_stock(shell: Shell) -> String {
    let page = MakeStockPage {
        shell,
        product_id: "p1".to_owned(),
        product: "Alder powder developer".to_owned(),
        barred: None,
        form: StockForm {
            key: "k".to_owned(),
            wanted: "1.5".to_owned(),
            when: "now".to_owned(),
            ..StockForm::default()
        },
        problems: Problems::none(),
        wanted_hint: "A packet makes 1\u{a0}L. Packets are taken whole.".to_owned(),
        days: days(),
        worksheet: Some(Worksheet {
            title: "Stock solution of Alder powder developer".to_owned(),
            pours: vec![pour("2 packets", "the powder into the water", false)],
            total: "2\u{a0}L".to_owned(),
            place: "of stock solution, filled up with water".to_owned(),
            cylinder: None,
            steps: vec![step("Stock solution", "2 × 1\u{a0}L", "2\u{a0}L")],
            asides: vec![aside(
                "How long it keeps",
                &["The stock solution keeps 30 days."],
            )],
            takes: Vec::new(),
            keeps: String::new(),
            basis: String::new(),
            verb: "It is made".to_owned(),
            ..sheet()
        }),
        cautions: vec![ALLERGY.to_owned()],
    };
    page.render().unwrap()
}

fn stock(shell: Shell) -> String {
    let page = StockPage {
        shell,
        seq: 431,
        product_id: "p1".to_owned(),
        product: "Alder powder developer".to_owned(),
        packets: "2 packets".to_owned(),
        volume: "2\u{a0}L".to_owned(),
        made: moment("Sun 1 Nov 2026, 18:05"),
        made_by: Some("Tomas Ferrel".to_owned()),
        left: "1.8\u{a0}L".to_owned(),
        opened: Some(moment("Mon 2 Nov 2026, 19:00")),
        use_by: Some(moment("Tue 1 Dec 2026, 18:05")),
        is_past: false,
        cautions: vec![ALLERGY.to_owned()],
    };
    page.render().unwrap()
}
