//! What about a product asks for a topic: judged on the concentrate, as supplied.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::darkroom::incompatibility::Group;
use crate::products::{Concern, Kind, Product};

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

    /// What about the product itself or an ingredient of it, at any content, stands for
    /// it. What nobody listed may be a sensitiser.
    const fn concerns(self) -> &'static [Concern] {
        match self {
            Self::Sensitiser => &[Concern::Sensitiser, Concern::UnknownComposition],
            Self::AcidOrAlkali => &[Concern::Corrosive],
            Self::Toner => &[],
            Self::Oxidiser => &[Concern::Oxidising],
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

/// What about a product asks for a topic: its concerns, its groups, its kind. Without
/// safety data its composition counts as unknown.
#[must_use]
pub fn traits_of(product: &Product) -> BTreeSet<Trait> {
    let concerns = product.concerns();
    let has = |each: &Trait| {
        let by_concern = each.concerns().iter().any(|one| concerns.contains(one));
        let mut groups = each.groups().iter();
        by_concern || groups.any(|group| product.groups.contains(group))
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
