//! What a product asks of whoever handles it, from its own codes and from those of its
//! ingredients at any content: the classes of a working solution vanish just where people
//! work, the substances do not.

use serde::Serialize;
use utoipa::ToSchema;

use super::ProductSet;

/// A trait of a product that gloves, goggles, places or topics follow from. A product that
/// shows none is not thereby harmless.
#[derive(Clone, Copy, Debug, Eq, Hash, Ord, PartialEq, PartialOrd, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Concern {
    /// Can cause an allergy, by skin or breath.
    Sensitiser,
    /// Burns skin, or eats metal.
    Corrosive,
    /// Damages eyes for good.
    EyeDamage,
    /// Poisons at once, swallowed, on the skin or breathed in, of any category.
    AcutelyToxic,
    /// Suspected or known to cause cancer, to change genes or to harm the unborn.
    CancerGenesUnborn,
    /// Feeds a fire.
    Oxidising,
    /// Nobody said that its list of ingredients is complete.
    UnknownComposition,
}

/// Which codes show a concern, by the three digits they begin with. Classes and codes: CLP
/// (Regulation (EC) 1272/2008) Annexes I and III, GHS Annex 3. Seen in an authority's pages
/// of hydroquinone, acetic acid and hypochlorite: H302, H314, H317, H318, H341 and H351;
/// the others are from memory.
const SHOWN_BY: &[(Concern, &[&str])] = &[
    // Skin sens. 1; resp. sens. 1; what is told of chromium, isocyanates and epoxy, and of
    // a sensitiser below the limit of the class (EUH203 to EUH205, EUH208).
    (
        Concern::Sensitiser,
        &["H317", "H334", "EUH203", "EUH204", "EUH205", "EUH208"],
    ),
    // Skin corr. 1; met. corr. 1; corrosive to the respiratory tract (EUH071).
    (Concern::Corrosive, &["H314", "H290", "EUH071"]),
    // Eye dam. 1; skin corr. 1, whose statement says eye damage too.
    (Concern::EyeDamage, &["H318", "H314"]),
    // Acute tox. 1 to 4: oral, dermal, inhaled; toxic by eye contact (EUH070).
    (
        Concern::AcutelyToxic,
        &[
            "H300", "H301", "H302", "H310", "H311", "H312", "H330", "H331", "H332", "EUH070",
        ],
    ),
    // Muta. 1 and 2; carc. 1 and 2; repr. 1 and 2, with all their letters; lactation.
    (
        Concern::CancerGenesUnborn,
        &["H340", "H341", "H350", "H351", "H360", "H361", "H362"],
    ),
    // Ox. gas 1; ox. liq. and ox. sol. 1; the same 2 and 3.
    (Concern::Oxidising, &["H270", "H271", "H272"]),
];

/// Whether a code as sheets write it, such as `H360FD` or `H300+H310`, shows a concern.
fn shows(code: &str, bases: &[&str]) -> bool {
    code.split('+')
        .any(|part| bases.iter().any(|base| part.starts_with(base)))
}

impl ProductSet {
    /// What it asks of whoever handles it: from its own codes and from those of every
    /// ingredient listed, at any content, each once. Without any, nothing is known to ask
    /// for more than the usual; that is no statement that it is harmless.
    #[must_use]
    pub fn concerns(&self) -> Vec<Concern> {
        let of_ingredients = self.ingredients.iter().map(|each| &each.hazard_codes);
        let codes: Vec<&String> = of_ingredients
            .chain([&self.hazard_codes])
            .flatten()
            .collect();
        let shown = SHOWN_BY.iter();
        let shown = shown.filter(|(_, bases)| codes.iter().any(|code| shows(code, bases)));
        let unknown = (!self.composition_is_known).then_some(Concern::UnknownComposition);
        shown.map(|(concern, _)| *concern).chain(unknown).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::super::Ingredient;
    use super::super::actions::NewProduct;
    use super::super::{Kind, Product};
    use super::*;

    fn product(codes: &[&str], ingredients: &[&[&str]]) -> Product {
        let texts = |codes: &[&str]| codes.iter().map(|code| (*code).to_owned()).collect();
        let listed = ingredients.iter().map(|codes| Ingredient {
            name: "a substance".to_owned(),
            cas: None,
            least_millionths: None,
            most_millionths: Some(1),
            hazard_codes: texts(codes),
        });
        let product = NewProduct::named("Larch".to_owned(), Kind::Developer);
        Product {
            hazard_codes: texts(codes),
            ingredients: listed.collect(),
            composition_is_known: true,
            ..product.settled(uuid::Uuid::nil(), 1, Vec::new())
        }
    }

    #[test]
    fn every_code_shows_its_concern_in_a_product_and_in_an_ingredient_alike() {
        for (concern, bases) in SHOWN_BY {
            for code in bases.iter().copied() {
                assert!(product(&[code], &[]).concerns().contains(concern));
                assert!(
                    product(&[], &[&["H412"], &[code]])
                        .concerns()
                        .contains(concern)
                );
            }
        }
    }

    #[test]
    fn a_code_may_carry_letters_and_stand_with_others() {
        let found = product(&["H360FD"], &[&["H300+H310"]]).concerns();
        assert_eq!(found, [Concern::AcutelyToxic, Concern::CancerGenesUnborn]);
        let burns = product(&["H314"], &[]).concerns();
        assert_eq!(burns, [Concern::Corrosive, Concern::EyeDamage]);
        assert!(
            product(&["H319", "H335", "H304"], &[])
                .concerns()
                .is_empty()
        );
    }

    #[test]
    fn what_nobody_listed_is_unknown() {
        let unsaid = Product {
            composition_is_known: false,
            ..product(&["H317"], &[])
        };
        assert_eq!(
            unsaid.concerns(),
            [Concern::Sensitiser, Concern::UnknownComposition]
        );
    }
}
