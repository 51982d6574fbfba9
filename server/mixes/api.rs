//! Mixes as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewMix, VesselId};
use super::{
    FrozenCapacity, Mix, Storage, all_capacities, input, keeping, mix, mixing, standing, stock,
};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::error::{Error, Result};
use crate::products::Place;
use crate::rights::{self, LookAtBoard};

const MIXES: &str = "/rooms/{room}/mixes";
const MIX: &str = "/rooms/{room}/mixes/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    let mut all = vec![
        Route::list(MIXES, "Mixes that stand in a tray now, oldest first.", list),
        Route::one(MIX, "One mix, also one that is gone.", one),
        Route::add(MIXES, "Mix a working solution in an empty tray.", add),
    ];
    all.extend(keeping::api());
    all.extend(mixing::api());
    all.extend(stock::api());
    all
}

/// A mix as it now is.
#[derive(Debug, Serialize, ToSchema)]
pub struct MixOut {
    /// Which.
    pub id: Uuid,
    /// What it was mixed from; nothing for liquid that nobody can name.
    pub product_id: Option<Uuid>,
    /// The product's name.
    pub product_name: Option<String>,
    /// Where it stands; nothing once it is gone.
    pub tray_id: Option<Uuid>,
    /// The bottle it is kept in.
    pub bottle_id: Option<Uuid>,
    /// The stock solution it was mixed from; nothing where it was not from stock.
    pub stock_id: Option<Uuid>,
    /// How it is kept.
    pub storage: Storage,
    /// The mix it was poured into.
    pub poured_into: Option<Uuid>,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// All that was poured in, in microlitres.
    pub charged_ul: i64,
    /// The concentrate in it, in microlitres.
    pub concentrate_ul: i64,
    /// What paper has used up of it, in nanolitres.
    pub spent_nl: i64,
    /// The part of its life used at `age_at`, in parts per billion.
    pub age_ppb: i64,
    /// When that was.
    #[schema(format = DateTime)]
    pub age_at: String,
    /// How long it lives where it stands, in seconds.
    pub life_s: i64,
    /// When somebody last noted sheets of unknown number.
    #[schema(format = DateTime)]
    pub unknown_sheets_at: Option<String>,
    /// When it was mixed.
    #[schema(format = DateTime)]
    pub mixed_at: String,
    /// Who mixed it.
    pub mixed_by: Option<Uuid>,
    /// When it was discarded.
    #[schema(format = DateTime)]
    pub discarded_at: Option<String>,
}

impl MixOut {
    fn of(mix: Mix) -> Result<Self> {
        Ok(Self {
            id: mix.id,
            product_id: mix.product_id,
            product_name: mix.product_name,
            tray_id: mix.stand.tray_id,
            bottle_id: mix.stand.bottle_id,
            stock_id: mix.stock_id,
            storage: mix.storage,
            poured_into: mix.poured_into,
            parts_thousandths: mix.parts_thousandths,
            charged_ul: mix.charged_ul,
            concentrate_ul: mix.concentrate_ul,
            spent_nl: mix.spent_nl,
            age_ppb: mix.age_ppb,
            age_at: moment_text(mix.age_at)?,
            life_s: mix.life_s,
            unknown_sheets_at: mix.unknown_sheets_at.map(moment_text).transpose()?,
            mixed_at: moment_text(mix.mixed_at)?,
            mixed_by: mix.mixed_by,
            discarded_at: mix.discarded_at.map(moment_text).transpose()?,
        })
    }
}

/// A mix with what a litre of it takes.
#[derive(Debug, Serialize, ToSchema)]
pub struct MixInFullOut {
    /// The mix.
    #[serde(flatten)]
    pub mix: MixOut,
    /// How much paper a litre takes, as it was when the mix was made.
    pub capacities: Vec<FrozenCapacityOut>,
}

/// How much of one paper class a litre of a mix takes.
#[derive(Debug, Serialize, ToSchema)]
pub struct FrozenCapacityOut {
    /// The class.
    pub paper_class_id: Uuid,
    /// In which place among fixing baths.
    pub place: Place,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
}

async fn list(by: By<LookAtBoard>, paging: Paging) -> Result<Page<MixOut>> {
    let database = by.app.database();
    let mixes = database.reading(by.permit.scope(), |tx| Box::pin(standing(tx)));
    let page = paging.cut(mixes.await?, |mix| mix.id.to_string())?;
    page.map(MixOut::of)
}

async fn one(by: By<LookAtBoard>, id: Uuid) -> Result<MixInFullOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(async move { Ok((mix(tx, id).await?, all_capacities(tx, id).await?)) })
    });
    let (mix, capacities) = found.await?;
    let frozen = |each: FrozenCapacity| FrozenCapacityOut {
        paper_class_id: each.paper_class_id,
        place: each.place,
        sheets_per_litre_thousandths: each.sheets_per_litre_thousandths,
    };
    Ok(MixInFullOut {
        mix: MixOut::of(mix.ok_or(Error::NotFound)?)?,
        capacities: capacities.into_iter().map(frozen).collect(),
    })
}

/// A working solution to mix.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MixIn {
    /// The tray it goes into.
    pub tray_id: Uuid,
    /// The product's dilution.
    pub dilution_id: Uuid,
    /// All of it, in microlitres.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub volume_ul: i64,
}

impl Input for MixIn {
    const NAMES: &'static [(&'static str, &'static str)] =
        &[("dilution", "dilution_id"), ("volume", "volume_ul")];
}

async fn add(by: Writing<rights::Mix>, mix: MixIn) -> Result<Made> {
    let new = NewMix {
        vessel: VesselId::Tray(mix.tray_id),
        dilution_id: mix.dilution_id,
        volume_ul: input::mixed(mix.volume_ul).map_err(|no| Error::field("volume", no))?,
        stock_id: None,
        happened_at_us: None,
    };
    let done = actions::mix(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}
