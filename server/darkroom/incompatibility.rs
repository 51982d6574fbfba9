//! What must not be poured into what. Judged on deliberate pouring and on
//! containers; never on a print's own carry-over, nor on the parts of one product
//! mixed as its sheet says.
//!
//! The judgement is the same whichever liquid is poured into the other. What a
//! person has not stated is unknown, and the unknown is compatible with nothing.
//! `Pour::Allowed` means that no rule here forbids it; it never means harmless:
//! the supplier's safety data sheet and local rules come first.
//!
//! Sources: hypochlorite with acid CLP Annex II 1.2.2 (EUH031) and the ATSDR
//! medical management guideline; hypochlorite with ammonium ATSDR; sulfite with
//! acid ICSC 1134; concentrated acid with alkali EPA-600/2-80-076 (group 10 with
//! 1 to 3: heat); ammonium with strong alkali the pKa of 9.24; sulfide with acid
//! 40 CFR 265 App. V, from memory; acid with thiosulfate, with developer (which
//! carries sulfite) and with ferricyanide, and bleaches with reducers from memory.

use serde::{Deserialize, Serialize};

/// A class a liquid belongs to, as its steward recorded it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Group {
    /// Any acid, a stop bath or an acid fixer among them.
    Acid,
    /// An alkali of any strength.
    Alkali,
    /// An alkali of pH 11.5 or more.
    StrongAlkali,
    /// Household bleach and its like.
    Hypochlorite,
    /// Ammonia or an ammonium salt, rapid fixers among them.
    Ammonium,
    /// A sulfite, bisulfite or metabisulfite.
    Sulfite,
    /// A thiosulfate.
    Thiosulfate,
    /// A fixing bath.
    Fixer,
    /// A stop bath.
    StopBath,
    /// A sulfide or polysulfide toner.
    Sulfide,
    /// A developer.
    Developer,
    /// A ferricyanide or ferrocyanide.
    Ferricyanide,
    /// A permanganate, dichromate, persulfate or peroxide bleach.
    OxidisingBleach,
    /// Any other organic substance: solvents, wetting agents, dyes.
    Organic,
    /// Can cause an allergy; says nothing about pouring.
    Sensitiser,
}

impl Group {
    /// Every group.
    pub const ALL: [Self; 15] = [
        Self::Acid,
        Self::Alkali,
        Self::StrongAlkali,
        Self::Hypochlorite,
        Self::Ammonium,
        Self::Sulfite,
        Self::Thiosulfate,
        Self::Fixer,
        Self::StopBath,
        Self::Sulfide,
        Self::Developer,
        Self::Ferricyanide,
        Self::OxidisingBleach,
        Self::Organic,
        Self::Sensitiser,
    ];
}

/// The groups of one liquid.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(from = "Vec<Group>", into = "Vec<Group>")]
pub struct Groups(u32);

impl Groups {
    /// The same with one more group.
    #[must_use]
    pub const fn with(self, group: Group) -> Self {
        Self(self.0 | 1 << group as u32)
    }

    /// Both together: what a container holds after both went in.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    /// Whether this group is among them.
    #[must_use]
    pub const fn has(self, group: Group) -> bool {
        self.0 & (1 << group as u32) != 0
    }

    fn has_any(self, groups: &[Group]) -> bool {
        groups.iter().any(|group| self.has(*group))
    }
}

impl From<Vec<Group>> for Groups {
    fn from(groups: Vec<Group>) -> Self {
        groups.into_iter().fold(Self::default(), Self::with)
    }
}

impl From<Groups> for Vec<Group> {
    fn from(groups: Groups) -> Self {
        Group::ALL
            .into_iter()
            .filter(|group| groups.has(*group))
            .collect()
    }
}

/// A liquid that is poured, or what a vessel holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Liquid {
    /// Nothing but water.
    Water,
    /// Nobody recorded what it is.
    Unknown,
    /// A solution as it is used.
    Solution(Groups),
    /// A concentrate or stock solution as bought or made up.
    Concentrate(Groups),
}

impl Liquid {
    fn groups(self) -> Option<Groups> {
        match self {
            Self::Water => Some(Groups::default()),
            Self::Unknown => None,
            Self::Solution(groups) | Self::Concentrate(groups) => Some(groups),
        }
    }

    const fn is_concentrate(self) -> bool {
        matches!(self, Self::Concentrate(_))
    }
}

/// Two that must not meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Clash {
    /// Gives chlorine.
    HypochloriteWithAcid,
    /// Gives chloramines.
    HypochloriteWithAmmonium,
    /// Hypochlorite meets anything but water.
    HypochloriteWithAnything,
    /// Gives hydrogen sulfide.
    SulfideWithAcid,
    /// Gives hydrogen cyanide with strong acid.
    FerricyanideWithAcid,
    /// An oxidising bleach meets developer, sulfite, thiosulfate or organics.
    BleachWithReducer,
    /// Gives ammonia.
    AmmoniumWithStrongAlkali,
    /// Heat and spatter.
    ConcentratedAcidWithAlkali,
    /// Gives sulfur dioxide, and sulfur with thiosulfate.
    AcidWithFixer,
    /// Gives sulfur dioxide.
    AcidWithSulfite,
    /// An acid, or a stop bath, meets a developer.
    AcidWithDeveloper,
}

/// What a clash gives off or does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Danger {
    /// Chlorine.
    Chlorine,
    /// Chloramines.
    Chloramines,
    /// Hydrogen sulfide.
    HydrogenSulfide,
    /// Hydrogen cyanide.
    HydrogenCyanide,
    /// Ammonia.
    Ammonia,
    /// Sulfur dioxide.
    SulfurDioxide,
    /// Gas of some kind.
    Gas,
    /// Heat, and liquid spattering.
    Heat,
}

impl Clash {
    /// What it gives off or does. Sources: see the module.
    #[must_use]
    pub const fn gives(self) -> &'static [Danger] {
        match self {
            Self::HypochloriteWithAcid => &[Danger::Chlorine],
            Self::HypochloriteWithAmmonium => &[Danger::Chloramines],
            Self::HypochloriteWithAnything | Self::BleachWithReducer => {
                &[Danger::Heat, Danger::Gas]
            }
            Self::SulfideWithAcid => &[Danger::HydrogenSulfide],
            Self::FerricyanideWithAcid => &[Danger::HydrogenCyanide],
            Self::AmmoniumWithStrongAlkali => &[Danger::Ammonia],
            Self::ConcentratedAcidWithAlkali => &[Danger::Heat],
            Self::AcidWithFixer | Self::AcidWithSulfite => &[Danger::SulfurDioxide],
            Self::AcidWithDeveloper => &[Danger::SulfurDioxide, Danger::Heat],
        }
    }
}

/// May one liquid be poured into another?
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Pour {
    /// Never, and nobody can override it.
    Never(Clash),
    /// Not in one container, unless the contractor's written acceptance is on file.
    NotInOneContainer(Clash),
    /// One of them is unknown: compatible with nothing.
    Unknown,
    /// No rule here forbids it. That does not make it harmless.
    Allowed,
}

const ACIDS: &[Group] = &[Group::Acid, Group::StopBath];
const REDUCERS: &[Group] = &[
    Group::Developer,
    Group::Sulfite,
    Group::Thiosulfate,
    Group::Fixer,
    Group::Organic,
];

/// Judges one liquid poured into another; the same either way round.
#[must_use]
pub fn judge_pour(one: Liquid, other: Liquid) -> Pour {
    let (Some(a), Some(b)) = (one.groups(), other.groups()) else {
        let known = one.groups().or(other.groups()).unwrap_or_default();
        return if known.has(Group::Hypochlorite) {
            Pour::Never(Clash::HypochloriteWithAnything)
        } else {
            Pour::Unknown
        };
    };
    if one == Liquid::Water || other == Liquid::Water {
        return Pour::Allowed;
    }
    if let Some(clash) = never(a, b) {
        return Pour::Never(clash);
    }
    let concentrates = one.is_concentrate() && other.is_concentrate();
    let alkalis = &[Group::Alkali, Group::StrongAlkali];
    if concentrates && meet(a, b, ACIDS, alkalis) {
        return Pour::Never(Clash::ConcentratedAcidWithAlkali);
    }
    apart(a, b).map_or(Pour::Allowed, Pour::NotInOneContainer)
}

/// Judges two portions of one product, or its parts mixed as its sheet says.
#[must_use]
pub fn judge_pour_of_one_product(liquid: Liquid) -> Pour {
    match liquid.groups() {
        None => Pour::Unknown,
        Some(groups) if groups.has(Group::Hypochlorite) => {
            Pour::Never(Clash::HypochloriteWithAnything)
        }
        Some(_) => Pour::Allowed,
    }
}

/// Whether the one has one of these and the other one of those, either way round.
fn meet(a: Groups, b: Groups, these: &[Group], those: &[Group]) -> bool {
    (a.has_any(these) && b.has_any(those)) || (b.has_any(these) && a.has_any(those))
}

fn never(a: Groups, b: Groups) -> Option<Clash> {
    let hypochlorite = &[Group::Hypochlorite];
    let rules: [(Clash, &[Group], &[Group]); 6] = [
        (Clash::HypochloriteWithAcid, hypochlorite, ACIDS),
        (
            Clash::HypochloriteWithAmmonium,
            hypochlorite,
            &[Group::Ammonium],
        ),
        (Clash::SulfideWithAcid, &[Group::Sulfide], ACIDS),
        (Clash::FerricyanideWithAcid, &[Group::Ferricyanide], ACIDS),
        (
            Clash::BleachWithReducer,
            &[Group::OxidisingBleach],
            REDUCERS,
        ),
        (
            Clash::AmmoniumWithStrongAlkali,
            &[Group::Ammonium],
            &[Group::StrongAlkali],
        ),
    ];
    let clash = rules
        .into_iter()
        .find(|(_, these, those)| meet(a, b, these, those));
    clash.map(|(clash, _, _)| clash).or_else(|| {
        a.and(b)
            .has(Group::Hypochlorite)
            .then_some(Clash::HypochloriteWithAnything)
    })
}

fn apart(a: Groups, b: Groups) -> Option<Clash> {
    let rules: [(Clash, &[Group]); 3] = [
        (Clash::AcidWithFixer, &[Group::Fixer, Group::Thiosulfate]),
        (Clash::AcidWithSulfite, &[Group::Sulfite]),
        (Clash::AcidWithDeveloper, &[Group::Developer]),
    ];
    let clash = rules
        .into_iter()
        .find(|(_, those)| meet(a, b, ACIDS, those));
    clash.map(|(clash, _)| clash)
}
