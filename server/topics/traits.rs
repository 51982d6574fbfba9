//! What about a product asks for a topic: judged on the concentrate, as supplied.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::darkroom::incompatibility::Group;
use crate::products::{Kind, Product};

/// What about a product asks for a topic of its own.
#[derive(
    Clone, Copy, Debug, Deserialize, Eq, Hash, Ord, PartialEq, PartialOrd, Serialize, ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Trait {
    /// It can cause an allergy, or nobody knows what it holds.
    Sensitiser,
    /// It is an acid or an alkali, or corrosive.
    AcidOrAlkali,
    /// It tones.
    Toner,
    /// It oxidises other things.
    Oxidiser,
}

impl Trait {
    /// Every trait, in the order pages list them.
    pub const ALL: [Self; 4] = [
        Self::Sensitiser,
        Self::AcidOrAlkali,
        Self::Toner,
        Self::Oxidiser,
    ];

    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Sensitiser => "sensitiser",
            Self::AcidOrAlkali => "acid_or_alkali",
            Self::Toner => "toner",
            Self::Oxidiser => "oxidiser",
        }
    }

    /// Reads what [`Trait::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }

    /// The hazard statements of CLP Annex III that stand for it; the supplementary ones
    /// name a sensitiser in a mixture below the limit of its class.
    const fn codes(self) -> &'static [&'static str] {
        match self {
            Self::Sensitiser => &["H317", "H334", "EUH203", "EUH204", "EUH205", "EUH208"],
            Self::AcidOrAlkali => &["H290", "H314"],
            Self::Toner => &[],
            Self::Oxidiser => &["H270", "H271", "H272"],
        }
    }

    const fn groups(self) -> &'static [Group] {
        match self {
            Self::Sensitiser => &[Group::Sensitiser],
            Self::AcidOrAlkali => &[Group::Acid, Group::Alkali, Group::StrongAlkali],
            Self::Toner => &[],
            Self::Oxidiser => &[Group::OxidisingBleach],
        }
    }
}

/// What is to be expected of liquid that nobody can name.
pub const UNKNOWN: Trait = Trait::Sensitiser;

/// What about a product asks for a topic. Without safety data its composition counts as
/// unknown. Whatever else is known of what it holds belongs in here.
#[must_use]
pub fn traits_of(product: &Product) -> BTreeSet<Trait> {
    let is_listed = |code: &str| {
        let mut parts = product.hazard_codes.iter().flat_map(|each| each.split('+'));
        parts.any(|part| part.starts_with(code))
    };
    let has = |each: &Trait| {
        let by_code = each.codes().iter().any(|code| is_listed(code));
        by_code
            || each
                .groups()
                .iter()
                .any(|group| product.groups.contains(group))
    };
    let mut traits: BTreeSet<Trait> = Trait::ALL.into_iter().filter(has).collect();
    if product.kind == Kind::Toner {
        traits.insert(Trait::Toner);
    }
    if product.data_sheet_on.is_none() {
        traits.insert(UNKNOWN);
    }
    traits
}
