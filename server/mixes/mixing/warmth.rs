//! How warm the water of a mix must be, in words.

use crate::darkroom::quantities::{Microlitres, TenthsCelsius};
use crate::darkroom::water::{
    Drawn, Taps, WantedMix, WaterError, WaterPlan, mix_temperature, plan_water, water_temperature,
};
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::products::{Product, WATER_WARMEST_TENTHS_CELSIUS};
use crate::web::messages::mixing as words;
use crate::web::numbers::Numbers;

/// What the mix should have, and what there is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Warmth {
    pub(super) wanted: TenthsCelsius,
    pub(super) concentrate: TenthsCelsius,
    /// The hot tap and the cold one.
    pub(super) taps: Option<(TenthsCelsius, TenthsCelsius)>,
}

/// What of water is reckoned.
pub(super) struct Water {
    pub(super) volume_ul: i64,
    pub(super) concentrate_ul: i64,
}

/// How the water is drawn, and what the mix has then.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) struct Planned {
    /// The water's temperature; none where no water changes anything.
    pub(super) water: Option<TenthsCelsius>,
    /// The same from two taps.
    pub(super) drawn: Option<Drawn>,
    /// The temperature of the mix.
    pub(super) results: TenthsCelsius,
}

/// Plans the water of a mix.
///
/// # Errors
/// Taps that are swapped; a cold tap that is too warm for the product.
pub(super) fn plan(warmth: Warmth, water: &Water, product: &Product) -> Result<Planned> {
    let warmest = product
        .water_warmest_tenths_celsius
        .unwrap_or(WATER_WARMEST_TENTHS_CELSIUS);
    let warmest = TenthsCelsius::new(warmest.into()).map_err(Error::fault)?;
    let mix = WantedMix {
        volume: Microlitres::new(water.volume_ul).map_err(Error::fault)?,
        concentrate: Microlitres::new(water.concentrate_ul).map_err(Error::fault)?,
        wanted: warmth.wanted,
        concentrate_temperature: warmth.concentrate,
    };
    match warmth.taps {
        Some((hot, cold)) => from_taps(mix, Taps { hot, cold, warmest }),
        None => without_taps(mix, warmest),
    }
}

fn from_taps(mix: WantedMix, taps: Taps) -> Result<Planned> {
    let planned = plan_water(mix, taps).map_err(|cause| match cause {
        WaterError::TapsSwapped => Error::field("hot_tap", Problem::TapsSwapped),
        WaterError::ColdTooWarm => Error::field("cold_tap", Problem::ColdTooWarm),
        cause => Error::fault(cause),
    })?;
    let drawn = |drawn: Drawn, results| Planned {
        water: Some(drawn.temperature),
        drawn: Some(drawn),
        results,
    };
    Ok(match planned {
        WaterPlan::Reached(water) => drawn(water, mix.wanted),
        WaterPlan::Nearest(water, results) => drawn(water, results),
        WaterPlan::AsItIs(results) => Planned {
            water: None,
            drawn: None,
            results,
        },
    })
}

fn without_taps(mix: WantedMix, warmest: TenthsCelsius) -> Result<Planned> {
    let Some(ideal) = water_temperature(mix).map_err(Error::fault)? else {
        return Ok(Planned {
            water: None,
            drawn: None,
            results: mix.concentrate_temperature,
        });
    };
    // Colder than ice water there is none.
    let possible = ideal.clamp(0, warmest.into());
    let water = TenthsCelsius::new(possible).map_err(Error::fault)?;
    let results = match possible == ideal {
        true => mix.wanted,
        false => mix_temperature(mix, water).map_err(Error::fault)?,
    };
    Ok(Planned {
        water: Some(water),
        drawn: None,
        results,
    })
}

/// The lines that say how to draw the water.
///
/// # Errors
/// As [`plan`].
pub(super) fn lines(
    warmth: Warmth,
    water: &Water,
    product: &Product,
    numbers: Numbers,
) -> Result<Vec<String>> {
    let planned = plan(warmth, water, product)?;
    let results = degrees(planned.results, numbers);
    let mut lines = vec![match (planned.drawn, planned.water) {
        (Some(drawn), _) => drawn_words(&drawn, numbers),
        (None, Some(water)) => words::water_at(&degrees(water, numbers)),
        (None, None) => words::as_it_is(&results),
    }];
    if planned.results != warmth.wanted {
        lines.push(words::nearest(&results, planned.results < warmth.wanted));
    }
    if let Some(outside) = outside(warmth.wanted, product, numbers) {
        lines.push(outside);
    }
    lines.push(words::WARMTH_ASSUMES.to_owned());
    Ok(lines)
}

fn degrees(temperature: TenthsCelsius, numbers: Numbers) -> String {
    numbers.celsius(temperature.get().into())
}

fn drawn_words(drawn: &Drawn, numbers: Numbers) -> String {
    words::drawn(
        &degrees(drawn.temperature, numbers),
        &numbers.rounded(drawn.hot_ppb.get(), 7, 0),
        &numbers.volume(drawn.hot.get()),
        &numbers.volume(drawn.cold.get()),
    )
}

/// A wanted temperature that the product does not work at.
fn outside(wanted: TenthsCelsius, product: &Product, numbers: Numbers) -> Option<String> {
    let (coldest, warmest) = (
        product.coldest_tenths_celsius,
        product.warmest_tenths_celsius,
    );
    let is_below = coldest.is_some_and(|coldest| wanted.get() < coldest);
    let is_above = warmest.is_some_and(|warmest| wanted.get() > warmest);
    let degrees = |tenths: i32| numbers.celsius(tenths.into());
    (is_below || is_above).then(|| {
        let range =
            crate::web::messages::products::range(coldest.map(degrees), warmest.map(degrees));
        words::outside(&range)
    })
}
