//! What mixing would come to, asked through the API: the reckoning of the page.

use serde::{Deserialize, Serialize};
use utoipa::{IntoParams, ToSchema};
use uuid::Uuid;

use super::form::makes;
use super::ground::Ground;
use super::sheet::{Made, measured};
use super::warmth::{Planned, Warmth, Water, plan};
use crate::api::{By, Question, Route};
use crate::darkroom::measuring::Measured;
use crate::darkroom::quantities::TenthsCelsius;
use crate::error::{Error, Result};
use crate::mixes::actions::{VesselId, may_mix_in, recipe};
use crate::mixes::input;
use crate::mixes::stock::input::packets_of;
use crate::problem::{Problem, Problems};
use crate::products::Form;
use crate::rights::LookAtBoard;

/// The routes.
pub(super) fn api() -> Vec<Route> {
    vec![
        Route::ask(
            "/rooms/{room}/trays/{id}/worksheet",
            "What mixing into a tray comes to; nothing is written.",
            in_tray,
        ),
        Route::ask(
            "/rooms/{room}/bottles/{id}/worksheet",
            "What mixing into a bottle comes to; nothing is written.",
            in_bottle,
        ),
    ]
}

/// A mix to reckon: all of it, or the concentrate that there is.
#[derive(Clone, Copy, Debug, Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub struct WorksheetQuery {
    /// The product's dilution.
    pub dilution_id: Option<Uuid>,
    /// All of it, in microlitres; or give the concentrate.
    pub volume_ul: Option<i64>,
    /// The concentrate there is, in microlitres.
    pub concentrate_ul: Option<i64>,
    /// The temperature the mix should have, in tenths of a degree Celsius.
    pub mix_tenths_celsius: Option<i64>,
    /// The temperature of the concentrate.
    pub concentrate_tenths_celsius: Option<i64>,
    /// The temperature of the hot tap; both taps or none.
    pub hot_tenths_celsius: Option<i64>,
    /// The temperature of the cold tap.
    pub cold_tenths_celsius: Option<i64>,
    /// The graduation of the cylinder, in microlitres.
    pub graduation_ul: Option<i64>,
}

impl Question for WorksheetQuery {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("dilution", "dilution_id"),
        ("volume", "volume_ul"),
        ("concentrate", "concentrate_ul"),
        ("mix_temperature", "mix_tenths_celsius"),
        ("concentrate_temperature", "concentrate_tenths_celsius"),
        ("hot_tap", "hot_tenths_celsius"),
        ("cold_tap", "cold_tenths_celsius"),
        ("graduation", "graduation_ul"),
    ];
}

/// What mixing comes to.
#[derive(Debug, Serialize, ToSchema)]
pub struct WorksheetOut {
    /// All of it, in microlitres.
    pub volume_ul: i64,
    /// The concentrate; of a kit, all its parts together.
    pub concentrate_ul: i64,
    /// A kit's parts in their order.
    pub parts_ul: Vec<i64>,
    /// The water.
    pub water_ul: i64,
    /// How deep it stands in a tray, in tenths of a millimetre.
    pub depth_tenths_mm: Option<i64>,
    /// How long it lives there, in seconds.
    pub life_s: i64,
    /// The packets of a powder for its stock solution, in thousandths.
    pub packets_thousandths: Option<i64>,
    /// How the water is drawn, where a temperature was asked for.
    pub water: Option<WaterOut>,
    /// What the cylinder makes of it, where a graduation was given.
    pub measured: Option<MeasuredOut>,
}

/// How water is drawn. Equal density and heat capacity are assumed, the heat of
/// dissolving is not computed.
#[derive(Debug, Serialize, ToSchema)]
pub struct WaterOut {
    /// The water's temperature, in tenths of a degree; nothing where no water
    /// changes anything.
    pub water_tenths_celsius: Option<i32>,
    /// From the hot tap, in microlitres.
    pub hot_ul: Option<i64>,
    /// From the cold tap.
    pub cold_ul: Option<i64>,
    /// The share from the hot tap, in parts per billion.
    pub hot_ppb: Option<i64>,
    /// The temperature the mix will have.
    pub mix_tenths_celsius: i32,
}

impl From<Planned> for WaterOut {
    fn from(planned: Planned) -> Self {
        Self {
            water_tenths_celsius: planned.water.map(TenthsCelsius::get),
            hot_ul: planned.drawn.map(|drawn| drawn.hot.get()),
            cold_ul: planned.drawn.map(|drawn| drawn.cold.get()),
            hot_ppb: planned.drawn.map(|drawn| drawn.hot_ppb.get()),
            mix_tenths_celsius: planned.results.get(),
        }
    }
}

/// What a cylinder makes of a dilution.
#[derive(Debug, Serialize, ToSchema)]
pub struct MeasuredOut {
    /// The concentrate at the nearest mark, in microlitres.
    pub concentrate_ul: i64,
    /// The water for the rest.
    pub water_ul: i64,
    /// N of the 1+N that results, in thousandths.
    pub parts_thousandths: i64,
    /// How much stronger, or below 0 weaker, in thousandths of the strength asked for.
    pub strength_change_thousandths: i64,
}

impl From<Measured> for MeasuredOut {
    fn from(measured: Measured) -> Self {
        Self {
            concentrate_ul: measured.parts.concentrate.get(),
            water_ul: measured.parts.water.get(),
            parts_thousandths: measured.dilution.parts_of_water_thousandths(),
            strength_change_thousandths: measured.strength_change_thousandths,
        }
    }
}

async fn in_tray(by: By<LookAtBoard>, id: Uuid, asked: WorksheetQuery) -> Result<WorksheetOut> {
    reckon(&by, VesselId::Tray(id), asked).await
}

async fn in_bottle(by: By<LookAtBoard>, id: Uuid, asked: WorksheetQuery) -> Result<WorksheetOut> {
    reckon(&by, VesselId::Bottle(id), asked).await
}

async fn reckon(
    by: &By<LookAtBoard>,
    vessel: VesselId,
    asked: WorksheetQuery,
) -> Result<WorksheetOut> {
    let ground = Ground::at(&by.app, &by.permit, vessel).await?;
    let missing = || Error::field("dilution", Problem::Missing);
    let (product, figures) = ground.dilution(asked.dilution_id.ok_or_else(missing)?)?;
    may_mix_in(product, by.permit.role(), figures.id, &ground.vessel)?;
    ground.may_start(product)?;
    let volume_ul = volume(asked, figures.parts_thousandths)?;
    let recipe = recipe(&ground.vessel, product, figures, volume_ul)?;
    let made = Made {
        product,
        parts_thousandths: figures.parts_thousandths,
        volume_ul,
        recipe: &recipe,
    };
    let measured = match asked.graduation_ul {
        Some(graduation) => {
            let held = input::graduation(graduation);
            let held = held.map_err(|no| Error::field("graduation", no))?;
            measured(&made, held)?
        }
        None => None,
    };
    let water = Water {
        volume_ul,
        concentrate_ul: recipe.concentrate_ul,
    };
    let planned = warmth(asked)?.map(|warmth| plan(warmth, &water, product));
    let packets = match product.form {
        Form::Powder => packets_of(product, recipe.concentrate_ul).ok(),
        _ => None,
    };
    Ok(WorksheetOut {
        volume_ul,
        concentrate_ul: recipe.concentrate_ul,
        water_ul: recipe.water_ul,
        depth_tenths_mm: recipe.depth_tenths_mm,
        life_s: recipe.life_s,
        packets_thousandths: packets.map(|packets| packets.packets_thousandths),
        water: planned.transpose()?.map(WaterOut::from),
        measured: measured.map(MeasuredOut::from),
        parts_ul: recipe.parts_ul,
    })
}

fn volume(asked: WorksheetQuery, parts_thousandths: i64) -> Result<i64> {
    let (field, volume) = match (asked.volume_ul, asked.concentrate_ul) {
        (Some(_), Some(_)) => ("concentrate", Err(Problem::Twice)),
        (Some(volume), None) => ("volume", input::mixed(volume)),
        (None, Some(there)) => {
            let there = input::mixed(there);
            let volume = there.and_then(|there| makes(parts_thousandths, there));
            ("concentrate", volume.and_then(input::mixed))
        }
        (None, None) => ("volume", Err(Problem::Missing)),
    };
    volume.map_err(|problem| Error::field(field, problem))
}

fn warmth(asked: WorksheetQuery) -> Result<Option<Warmth>> {
    let mut problems = Problems::default();
    let mut degrees = |field: &'static str, tenths: Option<i64>| {
        let held = tenths.map(input::celsius).transpose();
        let held = problems.take(field, held).flatten();
        held.and_then(|tenths| TenthsCelsius::new(tenths).ok())
    };
    let mix = degrees("mix_temperature", asked.mix_tenths_celsius);
    let concentrate = degrees("concentrate_temperature", asked.concentrate_tenths_celsius);
    let hot = degrees("hot_tap", asked.hot_tenths_celsius);
    let cold = degrees("cold_tap", asked.cold_tenths_celsius);
    let is_any = mix.or(concentrate).or(hot).or(cold).is_some();
    for (field, is_missing) in [
        (
            "mix_temperature",
            is_any && asked.mix_tenths_celsius.is_none(),
        ),
        (
            "concentrate_temperature",
            is_any && asked.concentrate_tenths_celsius.is_none(),
        ),
        (
            "hot_tap",
            cold.is_some() && asked.hot_tenths_celsius.is_none(),
        ),
        (
            "cold_tap",
            hot.is_some() && asked.cold_tenths_celsius.is_none(),
        ),
    ] {
        if is_missing {
            problems.add(field, Problem::Missing);
        }
    }
    if !problems.is_empty() {
        return Err(Error::Invalid(problems));
    }
    Ok(mix.zip(concentrate).map(|(wanted, concentrate)| Warmth {
        wanted,
        concentrate,
        taps: hot.zip(cold),
    }))
}
