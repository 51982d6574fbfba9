//! Products and dilutions: invented data.

use askama::Template;
use wetside::mixes::stock::views::StockRow;
use wetside::products::Place as Stands;
use wetside::products::ingredients::views::{IngredientCells, IngredientRow, IngredientsPage};
use wetside::products::views::{
    CapacityField, CodeShown, DilutionForm, DilutionFormPage, DilutionShown, FigureGroup,
    FigureShown, PlaceFields, ProductForm, ProductFormPage, ProductPage, ProductRow, ProductsPage,
};
use wetside::web::fields::{Cell, Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::bench_pages::moment;
use super::desk_pages::retired_row;
use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("products", products),
    ("product", product),
    ("product-form", product_form),
    ("dilution-form", dilution_form),
    ("ingredients", ingredients),
];

fn products(shell: Shell) -> String {
    let page = ProductsPage {
        shell: Shell {
            place: Some(Place::Products),
            ..shell
        },
        products: vec![
            ProductRow {
                id: "p1".to_owned(),
                name: "Larch print developer".to_owned(),
                kind: "Developer".to_owned(),
                dilutions: "1+9, 1+14".to_owned(),
                lacks_safety_data: false,
            },
            ProductRow {
                id: "p2".to_owned(),
                name: "Heron stop".to_owned(),
                kind: "Stop bath".to_owned(),
                dilutions: "1+19".to_owned(),
                lacks_safety_data: true,
            },
        ],
        retired: vec![retired_row("Old larch", "/products/p9/restore")],
        key: "k".to_owned(),
        may_change: true,
    };
    page.render().unwrap()
}

fn figure(what: &str, figure: &str) -> FigureShown {
    FigureShown {
        what: what.to_owned(),
        figure: figure.to_owned(),
        basis: "common practice, no source".to_owned(),
    }
}

fn dilution_shown(id: &str, name: &str, takes: (&str, &str)) -> DilutionShown {
    DilutionShown {
        id: id.to_owned(),
        name: name.to_owned(),
        groups: vec![
            FigureGroup {
                title: Some("A single bath".to_owned()),
                figures: vec![
                    figure("A litre, RC", takes.0),
                    figure("A litre, FB", takes.1),
                ],
            },
            FigureGroup {
                title: Some("In any place".to_owned()),
                figures: vec![
                    figure("In the open tray", "8 h"),
                    figure("In a stoppered bottle", "24 h"),
                ],
            },
        ],
    }
}

fn product(shell: Shell) -> String {
    let code = |code: &str, text: &str| CodeShown {
        code: code.to_owned(),
        text: text.to_owned(),
    };
    let page = ProductPage {
        shell: Shell {
            place: Some(Place::Products),
            ..shell
        },
        id: "p1".to_owned(),
        name: "Larch print developer".to_owned(),
        kind: "Developer".to_owned(),
        is_retired: false,
        version: 2,
        made_of: "One liquid concentrate.".to_owned(),
        figures: vec![figure("It works at", "18 °C to 22 °C")],
        dilutions: vec![
            dilution_shown("d1", "1+9", ("100 sheets", "50 sheets")),
            dilution_shown("d2", "1+14", ("70 sheets", "40 sheets")),
        ],
        concerns: "At any content: treat it as a sensitiser (an allergy builds up over many small splashes) and something that damages eyes for good. Nobody has said that its list of ingredients is complete, so treat it as hazardous in every other way too. The supplier’s data sheet decides.".to_owned(),
        ingredients: vec![
            IngredientRow {
                name: "Hydroquinone".to_owned(),
                cas: Some("123-31-9".to_owned()),
                content: "1\u{a0}% to 5\u{a0}%".to_owned(),
                hazards: vec![
                    code("H317", "May cause an allergic skin reaction."),
                    code("H318", "Causes serious eye damage."),
                ],
            },
            IngredientRow {
                name: "A wetting agent".to_owned(),
                cas: None,
                content: "up to 0.1\u{a0}%".to_owned(),
                hazards: Vec::new(),
            },
        ],
        composition_is_known: false,
        hazards: vec![
            code("H317", "May cause an allergic skin reaction."),
            code("H319", "Causes serious eye irritation."),
        ],
        precautions: vec![code("P280", "Wear protective gloves and eye protection.")],
        groups: strings(&["a sulfite", "a sensitiser"]),
        data_sheet_on: Some(moment("Sun 1 Mar 2026")),
        is_steward_only: false,
        oxidises: Some("at 8 mm depth".to_owned()),
        may_change: true,
        is_powder: true,
        may_make: true,
        supplements: vec!["Lith developer: tell Alwin Corrie, Sunniva Braithe.".to_owned()],
        stocks: vec![StockRow {
            id: "s1".to_owned(),
            made: moment("Sun 1 Nov 2026"),
            left: "800\u{a0}ml left, use by Tue 1 Dec 2026".to_owned(),
        }],
    };
    page.render().unwrap()
}

fn product_form(shell: Shell) -> String {
    let page = ProductFormPage {
        shell,
        id: None,
        name: String::new(),
        groups: ["sulfite", "sensitiser"]
            .map(|group| Choice::new(group, group).explained("What it is recognised by."))
            .to_vec(),
        form: ProductForm {
            key: "k".to_owned(),
            kind: "developer".to_owned(),
            groups: strings(&["sulfite", "sensitiser"]),
            oxidises: "yes".to_owned(),
            depth_reference: "8".to_owned(),
            hazard_codes: "H317 H319".to_owned(),
            ..ProductForm::default()
        },
        problems: Problems::one("name", "Enter the name as it stands on the bottle."),
    };
    page.render().unwrap()
}

fn dilution_form(shell: Shell) -> String {
    let field = |index: usize, place: Stands, name: &str, capacity: &str| CapacityField {
        index,
        paper_class: format!("c{}", index % 2 + 1),
        place,
        name: name.to_owned(),
        capacity: capacity.to_owned(),
        basis: "common practice, no source".to_owned(),
    };
    let page = DilutionFormPage {
        shell,
        product_id: "p1".to_owned(),
        product: "Larch print developer".to_owned(),
        id: Some("d1".to_owned()),
        name: "1+9".to_owned(),
        form: DilutionForm {
            key: "k".to_owned(),
            parts: "9".to_owned(),
            tray_life: "8".to_owned(),
            bottle_life: "24".to_owned(),
            life_basis: "common practice, no source".to_owned(),
            ..DilutionForm::default()
        },
        parts_of: "concentrate".to_owned(),
        is_ready_to_use: false,
        is_fixer: true,
        acid: None,
        places: vec![
            PlaceFields {
                title: "A single bath".to_owned(),
                is_open: true,
                is_plain: true,
                fields: vec![
                    field(0, Stands::Single, "RC", "100"),
                    field(1, Stands::Single, "FB", "fifty"),
                ],
            },
            PlaceFields {
                title: "The first of two baths".to_owned(),
                is_open: true,
                is_plain: false,
                fields: vec![
                    field(2, Stands::First, "RC", "80"),
                    field(3, Stands::First, "FB", "40"),
                ],
            },
        ],
        problems: Problems::one(
            "capacity-1",
            "Enter the sheets per litre of FB as a number.",
        ),
    };
    page.render().unwrap()
}

fn ingredients(shell: Shell) -> String {
    let problems = Problems::one(
        "row-2-cas",
        "The last digit of this CAS number does not go with the others. Copy it again.",
    );
    let row = |number: usize, values: [&str; 5]| {
        let fields = ["name", "cas", "least", "most", "codes"];
        let cell = |at: usize| {
            Cell::new(
                format!("row-{number}-{}", fields[at]),
                values[at],
                &problems,
            )
        };
        IngredientCells {
            number,
            name: cell(0),
            cas: cell(1),
            least: cell(2),
            most: cell(3),
            hazard_codes: cell(4),
        }
    };
    let page = IngredientsPage {
        shell,
        product_id: "p1".to_owned(),
        product: "Larch print developer".to_owned(),
        rows: vec![
            row(1, ["Hydroquinone", "123-31-9", "1", "5", "H317, H318"]),
            row(2, ["Sodium hydroxide", "1310-73-3", "", "0.5", "H314"]),
            row(3, [""; 5]),
        ],
        key: "k".to_owned(),
        is_complete: "yes".to_owned(),
        problems,
    };
    page.render().unwrap()
}
