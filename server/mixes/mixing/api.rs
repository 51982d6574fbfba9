//! Mixing, topping up and entering what stood there already, as JSON.

use serde::Deserialize;
use utoipa::ToSchema;
use uuid::Uuid;

use super::form::makes;
use crate::api::{Input, Made, Route, Writing};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::{moment, note};
use crate::mixes::actions::{self, NewMix, NewOpening, NewTopUp, NewUnknown, VesselId};
use crate::mixes::input;
use crate::problem::{Problem, Problems};
use crate::products;
use crate::rights::{Mix, OpenBench, TestMix};

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    let mut routes = vec![
        Route::act(
            "/rooms/{room}/trays/{id}/mix",
            "Mix a working solution in an empty tray.",
            mix_in_tray,
        ),
        Route::act(
            "/rooms/{room}/bottles/{id}/mix",
            "Mix a working solution in an empty bottle.",
            mix_in_bottle,
        ),
        Route::act(
            "/rooms/{room}/mixes/{id}/top-up",
            "Top a mix up with fresh solution of its own dilution.",
            top_up,
        ),
        Route::act(
            "/rooms/{room}/trays/{id}/open",
            "Enter a mix that stood in a tray already.",
            open_tray,
        ),
        Route::act(
            "/rooms/{room}/bottles/{id}/open",
            "Enter a mix that stood in a bottle already.",
            open_bottle,
        ),
        Route::act(
            "/rooms/{room}/trays/{id}/unknown",
            "Report liquid in a tray that nobody can name.",
            unknown_in_tray,
        ),
        Route::act(
            "/rooms/{room}/bottles/{id}/unknown",
            "Report liquid in a bottle that nobody can name.",
            unknown_in_bottle,
        ),
    ];
    routes.extend(super::questions::api());
    routes
}

/// A working solution to mix: all of it, or the concentrate that there is.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MixIntoIn {
    /// The product's dilution.
    pub dilution_id: Uuid,
    /// All of it, in microlitres; or give the concentrate.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub volume_ul: Option<i64>,
    /// The concentrate there is, in microlitres: the volume follows from it.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub concentrate_ul: Option<i64>,
    /// The stock solution it is drawn from; nothing where it is not from stock.
    pub stock_id: Option<Uuid>,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for MixIntoIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("dilution", "dilution_id"),
        ("volume", "volume_ul"),
        ("concentrate", "concentrate_ul"),
        ("stock", "stock_id"),
    ];
}

async fn mix_in_tray(by: Writing<Mix>, id: Uuid, mix: MixIntoIn) -> Result<Made> {
    mix_into(by, VesselId::Tray(id), mix).await
}

async fn mix_in_bottle(by: Writing<Mix>, id: Uuid, mix: MixIntoIn) -> Result<Made> {
    mix_into(by, VesselId::Bottle(id), mix).await
}

async fn mix_into(by: Writing<Mix>, vessel: VesselId, mix: MixIntoIn) -> Result<Made> {
    let mut problems = Problems::default();
    let volume = match (mix.volume_ul, mix.concentrate_ul) {
        (Some(volume), None) => problems.take("volume", input::mixed(volume)),
        (None, Some(there)) => {
            let volume = volume_from(&by, mix.dilution_id, there).await?;
            problems.take("concentrate", volume)
        }
        (Some(_), Some(_)) => problems.take("concentrate", Err(Problem::Twice)),
        (None, None) => problems.take("volume", Err(Problem::Missing)),
    };
    let at = when(mix.happened_at.as_deref(), &mut problems);
    let (Some(volume_ul), Some(happened_at_us)) = (volume, at) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewMix {
        vessel,
        dilution_id: mix.dilution_id,
        volume_ul,
        stock_id: mix.stock_id,
        happened_at_us,
    };
    let done = actions::mix(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}

/// The volume that a concentrate makes at a dilution.
async fn volume_from(
    by: &Writing<Mix>,
    dilution: Uuid,
    concentrate_ul: i64,
) -> Result<Result<i64, Problem>> {
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(products::products(tx)));
    let all = all.await?;
    let mut figures = all.iter().flat_map(|product| &product.dilutions);
    let figures = figures.find(|figures| figures.id == dilution);
    let figures = figures.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))?;
    let there = input::mixed(concentrate_ul);
    let volume = there.and_then(|there| makes(figures.parts_thousandths, there));
    Ok(volume.and_then(input::mixed))
}

fn when(typed: Option<&str>, problems: &mut Problems) -> Option<Option<i64>> {
    let at = typed.map(moment).transpose();
    Some(problems.take("happened_at", at)?.map(micros))
}

/// Fresh solution for a mix.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TopUpIn {
    /// How much fresh working solution, in microlitres.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub volume_ul: i64,
    /// The stock solution it is drawn from; nothing where it is not from stock.
    pub stock_id: Option<Uuid>,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for TopUpIn {
    const NAMES: &'static [(&'static str, &'static str)] =
        &[("volume", "volume_ul"), ("stock", "stock_id")];
}

async fn top_up(by: Writing<Mix>, mix_id: Uuid, top_up: TopUpIn) -> Result<Made> {
    let mut problems = Problems::default();
    let volume = problems.take("volume", input::mixed(top_up.volume_ul));
    let at = when(top_up.happened_at.as_deref(), &mut problems);
    let (Some(volume_ul), Some(happened_at_us)) = (volume, at) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewTopUp {
        mix_id,
        volume_ul,
        stock_id: top_up.stock_id,
        happened_at_us,
    };
    let done = actions::top_up(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}

/// A mix that stood there on the first day, its age and use by guess.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OpenIn {
    /// The product's dilution.
    pub dilution_id: Uuid,
    /// About how much, in microlitres.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub volume_ul: i64,
    /// The used part of its capacity by guess, in parts per billion.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub capacity_used_ppb: i64,
    /// The used part of its life by guess, in parts per billion.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub life_used_ppb: i64,
}

impl Input for OpenIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("dilution", "dilution_id"),
        ("volume", "volume_ul"),
        ("capacity_used", "capacity_used_ppb"),
        ("life_used", "life_used_ppb"),
    ];
}

async fn open_tray(by: Writing<OpenBench>, id: Uuid, opening: OpenIn) -> Result<Made> {
    open(by, VesselId::Tray(id), opening).await
}

async fn open_bottle(by: Writing<OpenBench>, id: Uuid, opening: OpenIn) -> Result<Made> {
    open(by, VesselId::Bottle(id), opening).await
}

async fn open(by: Writing<OpenBench>, vessel: VesselId, opening: OpenIn) -> Result<Made> {
    let mut problems = Problems::default();
    let volume = problems.take("volume", input::mixed(opening.volume_ul));
    let used = problems.take("capacity_used", input::guess(opening.capacity_used_ppb));
    let age = problems.take("life_used", input::guess(opening.life_used_ppb));
    let (Some(volume_ul), Some(used_ppb), Some(age_ppb)) = (volume, used, age) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewOpening {
        mix: NewMix {
            vessel,
            dilution_id: opening.dilution_id,
            volume_ul,
            stock_id: None,
            happened_at_us: None,
        },
        used_ppb,
        age_ppb,
    };
    let done = actions::open(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}

/// Liquid that nobody can name.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UnknownIn {
    /// About how much, in microlitres.
    #[schema(minimum = 1_000, maximum = 1_000_000_000)]
    pub volume_ul: i64,
    /// What the finder saw.
    #[schema(max_length = 200)]
    #[serde(default)]
    pub remark: String,
}

impl Input for UnknownIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("volume", "volume_ul")];
}

async fn unknown_in_tray(by: Writing<TestMix>, id: Uuid, found: UnknownIn) -> Result<Made> {
    unknown(by, VesselId::Tray(id), found).await
}

async fn unknown_in_bottle(by: Writing<TestMix>, id: Uuid, found: UnknownIn) -> Result<Made> {
    unknown(by, VesselId::Bottle(id), found).await
}

async fn unknown(by: Writing<TestMix>, vessel: VesselId, found: UnknownIn) -> Result<Made> {
    let mut problems = Problems::default();
    let volume = problems.take("volume", input::mixed(found.volume_ul));
    let remark = problems.take("remark", note(&found.remark));
    let (Some(volume_ul), Some(remark)) = (volume, remark) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewUnknown {
        vessel,
        volume_ul,
        remark,
    };
    let done = actions::report_unknown(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}
