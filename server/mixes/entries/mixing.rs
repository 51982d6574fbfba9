//! A mix begins, and is kept.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{Stand, Storage, subjects};
use crate::darkroom::state::Origin;
use crate::darkroom::stop_bath::StopAcid;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};
use crate::mixes::fold;
use crate::products::{Place, TimePoint};

/// A working solution was mixed; or it stood there already on the first day,
/// with its fractions guessed.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Mixed {
    /// The rules it is folded by.
    pub rules: u16,
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// What it was mixed from.
    pub product_id: Uuid,
    /// Which version of it.
    pub product_version: i32,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// All of it, in microlitres.
    pub charged_ul: i64,
    /// The concentrate in it, in microlitres; the rest is water.
    pub concentrate_ul: i64,
    /// How long it lives where it stands, in seconds.
    pub life_s: i64,
    /// How much paper a litre of it takes.
    pub capacities: Vec<FrozenCapacity>,
    /// Mixed now, or an opening entry with guessed fractions.
    #[serde(default)]
    pub origin: Origin,
    /// How it is kept.
    #[serde(default)]
    pub storage: Storage,
    /// Of an opening entry: what of it is spent by guess, in nanolitres.
    #[serde(default)]
    pub guessed_spent_nl: i64,
    /// Of an opening entry: the part of its life used by guess, in parts per billion.
    #[serde(default)]
    pub guessed_age_ppb: i64,
    /// How often the pair it joins moved up before.
    #[serde(default)]
    pub shifts: i32,
    /// The stock solution its concentrate was drawn from.
    #[serde(default)]
    pub stock_id: Option<Uuid>,
    /// What else later folds need; entries from before there was more have none.
    #[serde(default)]
    pub figures: Option<Figures>,
}

/// How much of one paper class a litre takes, as it was when the mix was made.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FrozenCapacity {
    /// The class.
    pub paper_class_id: Uuid,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// In which place among fixing baths.
    #[serde(default)]
    pub place: Place,
}

/// What a mix keeps of its product, whatever becomes of the product.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Figures {
    /// How long it keeps in an open tray at the reference depth, in seconds.
    pub open_life_s: i64,
    /// In a covered tray.
    pub covered_life_s: i64,
    /// In a full bottle.
    pub full_bottle_life_s: i64,
    /// In a bottle with air above it.
    pub part_bottle_life_s: i64,
    /// The longest it keeps in all, which no topping up moves.
    pub longest_life_s: Option<i64>,
    /// Whether air uses it up, so that a shallow tray dies faster.
    pub oxidises: bool,
    /// The depth the life in an open tray holds for, in tenths of a millimetre.
    pub depth_reference_tenths_mm: i32,
    /// The coldest it works at, in tenths of a degree.
    pub coldest_tenths_celsius: Option<i32>,
    /// The warmest.
    pub warmest_tenths_celsius: Option<i32>,
    /// Two development times at two temperatures, or none.
    pub time_points: Vec<TimePoint>,
    /// Where its silver has a limit.
    pub silver_limits: SilverLimits,
    /// Rolls of film a litre takes, in thousandths; none for paper only.
    pub film_rolls_per_litre_thousandths: Option<i64>,
    /// Of a stop bath whose acid is on file.
    pub stop: Option<StopFigures>,
    /// Where its bromide has a limit, in milligrams a litre.
    pub bromide_limit_mg_per_litre: Option<i64>,
}

/// Silver in milligrams a litre from which a bath is used up, by its place.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize)]
pub struct SilverLimits {
    /// As the only fixing bath.
    pub single: Option<i64>,
    /// As the first of two.
    pub first: Option<i64>,
    /// As the second.
    pub second: Option<i64>,
}

impl SilverLimits {
    /// The limit in a place.
    #[must_use]
    pub const fn at(self, place: Place) -> Option<i64> {
        match place {
            Place::Single => self.single,
            Place::First => self.first,
            Place::Second => self.second,
        }
    }
}

/// The acid of a stop bath.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct StopFigures {
    /// Which acid.
    pub acid: StopAcid,
    /// How much of it in the working solution.
    pub acid_mmol_per_litre: i64,
    /// The pH from which it is used up, in thousandths.
    pub limit_ph_thousandths: i64,
}

impl Entry for Mixed {
    const KIND: &'static str = "mixed";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("mix", self.mix_id),
            About::new("product", self.product_id),
        ];
        let stock = self.stock_id.map(|id| About::new("stock_solution", id));
        subjects(of.into_iter().chain(stock).chain(self.stand.about()))
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::mixed(tx, each).await?;
        }
        Ok(())
    }
}

/// Liquid stood somewhere that nobody can name.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct UnknownFound {
    /// The rules it is folded by.
    pub rules: u16,
    /// It is kept as a mix of unknown origin.
    pub mix_id: Uuid,
    /// Where it stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// How it is kept.
    pub storage: Storage,
    /// About how much, in microlitres.
    pub charged_ul: i64,
    /// What the finder saw.
    pub remark: String,
}

impl Entry for UnknownFound {
    const KIND: &'static str = "unknown_found";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        subjects(
            [About::new("mix", self.mix_id)]
                .into_iter()
                .chain(self.stand.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::unknown_found(tx, each).await?;
        }
        Ok(())
    }
}

/// A mix was covered, uncovered, bottled or poured back.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Stored {
    /// The rules it is folded by.
    pub rules: u16,
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stood.
    pub from: Stand,
    /// Where it stands now.
    pub to: Stand,
    /// How it is kept now.
    pub storage: Storage,
    /// How long it lives there, in seconds; its used part of life stays.
    pub life_s: i64,
}

impl Entry for Stored {
    const KIND: &'static str = "stored";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [About::new("mix", self.mix_id)];
        subjects(
            of.into_iter()
                .chain(self.from.about())
                .chain(self.to.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::stored(tx, each).await?;
        }
        Ok(())
    }
}
