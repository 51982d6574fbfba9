//! What the data sheets of the demo's products list. Products and contents are invented;
//! numbers are those of the substances, and their codes from memory: CLP Annex VI where it
//! has the substance, otherwise as suppliers usually classify it.

use crate::products::ingredients::actions::NewIngredients;
use crate::products::{Ingredient, Kind, Product};

/// Name, CAS number, content from and to in tenths of a per cent, codes.
type Line = (
    &'static str,
    &'static str,
    Option<i32>,
    Option<i32>,
    &'static str,
);

const DEVELOPER: &[Line] = &[
    (
        "Potassium carbonate",
        "584-08-7",
        Some(50),
        Some(100),
        "H315 H319 H335",
    ),
    ("Potassium sulfite", "10117-38-1", Some(50), Some(100), ""),
    (
        "Hydroquinone",
        "123-31-9",
        Some(10),
        Some(50),
        "H302 H317 H318 H341 H351 H400",
    ),
    (
        "1-Phenyl-3-pyrazolidinone",
        "92-43-3",
        Some(1),
        Some(10),
        "H302 H411",
    ),
    ("Sodium hydroxide", "1310-73-2", None, Some(5), "H290 H314"),
];

const POWDER: &[Line] = &[
    ("Sodium sulfite", "7757-83-7", Some(300), Some(500), ""),
    ("Sodium carbonate", "497-19-8", Some(200), Some(300), "H319"),
    (
        "Hydroquinone",
        "123-31-9",
        Some(50),
        Some(100),
        "H302 H317 H318 H341 H351 H400",
    ),
    (
        "Metol, bis(4-hydroxy-N-methylanilinium) sulfate",
        "55-55-0",
        Some(10),
        Some(50),
        "H302 H317 H373 H400 H410",
    ),
];

const ACETIC: &[Line] = &[("Acetic acid", "64-19-7", Some(500), Some(600), "H226 H314")];

const CITRIC: &[Line] = &[("Citric acid", "77-92-9", Some(200), Some(300), "H319 H335")];

const FIXER: &[Line] = &[
    (
        "Ammonium thiosulfate",
        "7783-18-8",
        Some(500),
        Some(600),
        "",
    ),
    ("Sodium sulfite", "7757-83-7", Some(10), Some(50), ""),
    (
        "Sodium hydrogensulfite",
        "7631-90-5",
        Some(10),
        Some(50),
        "H302 EUH031",
    ),
    ("Acetic acid", "64-19-7", None, Some(30), "H226 H314"),
];

const WASH_AID: &[Line] = &[
    ("Sodium sulfite", "7757-83-7", Some(100), Some(200), ""),
    (
        "Sodium metabisulfite",
        "7681-57-4",
        None,
        Some(10),
        "H302 H318 EUH031",
    ),
];

const TONER: &[Line] = &[
    (
        "Ammonium thiosulfate",
        "7783-18-8",
        Some(100),
        Some(250),
        "",
    ),
    (
        "Sodium selenite",
        "10102-18-8",
        Some(10),
        Some(25),
        "H300 H317 H331 H411 EUH031",
    ),
];

/// What a product's sheet lists, and whether the steward has all of it: the kit's second
/// sheet is still missing, and nobody asked for one of water.
pub(super) fn of(product: &Product) -> Option<NewIngredients> {
    let is_named = |name: &str| product.name.contains(name);
    let (lines, composition_is_known) = match product.kind {
        Kind::Developer if is_named("two-part") => (&DEVELOPER[..3], false),
        Kind::Developer if is_named("powder") => (POWDER, true),
        Kind::Developer => (DEVELOPER, true),
        Kind::StopBath if is_named("Acetic") => (ACETIC, true),
        Kind::StopBath => (CITRIC, true),
        Kind::Fixer => (FIXER, true),
        Kind::WashAid => (WASH_AID, true),
        Kind::Toner => (TONER, true),
        Kind::HoldingWater => return None,
    };
    Some(NewIngredients {
        product_id: product.id,
        ingredients: lines.iter().map(ingredient).collect(),
        composition_is_known,
    })
}

fn ingredient((name, cas, least, most, codes): &Line) -> Ingredient {
    let millionths = |tenths: Option<i32>| tenths.map(|tenths| tenths * 1_000);
    Ingredient {
        name: (*name).to_owned(),
        cas: Some((*cas).to_owned()),
        least_millionths: millionths(*least),
        most_millionths: millionths(*most),
        hazard_codes: codes.split_whitespace().map(str::to_owned).collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::darkroom::cas::CasNumber;
    use crate::products::input::hazard_codes;

    #[test]
    fn every_line_could_have_been_typed() {
        let sheets = [DEVELOPER, POWDER, ACETIC, CITRIC, FIXER, WASH_AID, TONER];
        for line in sheets.concat() {
            let listed = ingredient(&line);
            let cas = CasNumber::parse(line.1).unwrap().to_string();
            assert_eq!(listed.cas, Some(cas));
            hazard_codes(line.4.split_whitespace()).unwrap();
        }
    }
}
