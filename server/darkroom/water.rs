//! How warm the water must be so that the mix is, and how to draw it from the taps.
//!
//! Water at `T_w = (V·T − c·T_c)/(V − c)` brings the mix to T. Equal density and
//! heat capacity are assumed and the heat of dissolving is not computed: pages
//! say both. Concentrate is never heated directly. Source: heat balance.

use serde::{Deserialize, Serialize};

use super::quantities::{Microlitres, Ppb, QuantityError, TenthsCelsius, divide_half_up};

/// The warmest water a product is mixed with where its sheet says nothing: 40 °C.
/// Common practice, no source.
pub const WARMEST_WATER: TenthsCelsius = TenthsCelsius::degrees(40);

/// Why no water is planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum WaterError {
    /// No volume, or more concentrate than volume.
    #[error("a mix has a volume, and no more concentrate than that")]
    Volume,
    /// The hot tap runs colder than the cold one.
    #[error("the hot tap is not colder than the cold one")]
    TapsSwapped,
    /// Even the cold tap is warmer than the product may be mixed with.
    #[error("even the cold tap is too warm for this product")]
    ColdTooWarm,
    /// A temperature beyond what water and taps have.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// What is to be mixed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WantedMix {
    /// The whole volume V, in microlitres.
    #[serde(rename = "volume_microlitres")]
    pub volume: Microlitres,
    /// The concentrate c in it, in microlitres.
    #[serde(rename = "concentrate_microlitres")]
    pub concentrate: Microlitres,
    /// The temperature T the mix should have.
    #[serde(rename = "wanted_tenths_celsius")]
    pub wanted: TenthsCelsius,
    /// The temperature of the concentrate as it stands.
    #[serde(rename = "concentrate_tenths_celsius")]
    pub concentrate_temperature: TenthsCelsius,
}

/// What the taps give and the product bears.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Taps {
    /// The hot tap.
    #[serde(rename = "hot_tenths_celsius")]
    pub hot: TenthsCelsius,
    /// The cold tap.
    #[serde(rename = "cold_tenths_celsius")]
    pub cold: TenthsCelsius,
    /// The warmest water the product may be mixed with.
    #[serde(rename = "warmest_tenths_celsius")]
    pub warmest: TenthsCelsius,
}

/// How to draw the water.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum WaterPlan {
    /// This water brings the mix to the wanted temperature.
    Reached(Drawn),
    /// This water comes nearest; the mix then has the second temperature: stand
    /// the tray in warm or cold water.
    Nearest(Drawn, TenthsCelsius),
    /// There is no water, or the taps are equally warm: the mix has this temperature.
    AsItIs(TenthsCelsius),
}

/// Water from both taps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Drawn {
    /// Its temperature, rounded half up to a tenth of a degree.
    #[serde(rename = "water_tenths_celsius")]
    pub temperature: TenthsCelsius,
    /// The share from the hot tap, (`T_w` − cold)/(hot − cold).
    pub hot_ppb: Ppb,
    /// From the hot tap, in microlitres, rounded half up.
    #[serde(rename = "hot_microlitres")]
    pub hot: Microlitres,
    /// From the cold tap, in microlitres: the remainder.
    #[serde(rename = "cold_microlitres")]
    pub cold: Microlitres,
}

/// Tenths of a degree times microlitres, divided by microlitres, half up, below 0 too.
fn mean(heat: i128, volume: i128) -> i128 {
    (2 * heat + volume).div_euclid(2 * volume)
}

fn tenths(value: i128) -> Result<TenthsCelsius, QuantityError> {
    TenthsCelsius::new(i64::try_from(value).map_err(|_| QuantityError::TooLarge)?)
}

fn heat(volume: Microlitres, temperature: TenthsCelsius) -> i128 {
    i128::from(volume.get()) * i128::from(temperature.get())
}

/// The temperature the water must have, in tenths of a degree, rounded half up;
/// it may be one no water has. None where there is no water.
///
/// # Errors
/// [`WaterError::Volume`] for no volume or more concentrate than that.
pub fn water_temperature(mix: WantedMix) -> Result<Option<i64>, WaterError> {
    let water = mix
        .volume
        .minus(mix.concentrate)
        .map_err(|_| WaterError::Volume)?;
    if mix.volume == Microlitres::ZERO {
        return Err(WaterError::Volume);
    }
    if water == Microlitres::ZERO {
        return Ok(None);
    }
    let missing = heat(mix.volume, mix.wanted) - heat(mix.concentrate, mix.concentrate_temperature);
    let exact = mean(missing, i128::from(water.get()));
    Ok(Some(
        i64::try_from(exact).map_err(|_| QuantityError::TooLarge)?,
    ))
}

/// The temperature a mix has with water of this temperature, rounded half up.
///
/// # Errors
/// [`WaterError::Volume`] for no volume or more concentrate than that.
pub fn mix_temperature(mix: WantedMix, water: TenthsCelsius) -> Result<TenthsCelsius, WaterError> {
    let rest = mix
        .volume
        .minus(mix.concentrate)
        .map_err(|_| WaterError::Volume)?;
    if mix.volume == Microlitres::ZERO {
        return Err(WaterError::Volume);
    }
    let all = heat(mix.concentrate, mix.concentrate_temperature) + heat(rest, water);
    Ok(tenths(mean(all, i128::from(mix.volume.get())))?)
}

/// Plans the water of a mix from two taps: between the cold one and the lower of
/// the hot one and what the product bears.
///
/// # Errors
/// [`WaterError`] where the figures make no sense or the cold tap is too warm.
pub fn plan_water(mix: WantedMix, taps: Taps) -> Result<WaterPlan, WaterError> {
    if taps.hot < taps.cold {
        return Err(WaterError::TapsSwapped);
    }
    let Some(ideal) = water_temperature(mix)? else {
        return Ok(WaterPlan::AsItIs(mix.concentrate_temperature));
    };
    let highest = taps.hot.min(taps.warmest);
    if highest < taps.cold {
        return Err(WaterError::ColdTooWarm);
    }
    if taps.hot == taps.cold {
        return Ok(WaterPlan::AsItIs(mix_temperature(mix, taps.cold)?));
    }
    let (low, high) = (i64::from(taps.cold), i64::from(highest));
    let temperature = TenthsCelsius::new(ideal.clamp(low, high))?;
    let water = mix.volume.minus(mix.concentrate)?;
    let drawn = draw(water, temperature, taps)?;
    if i64::from(temperature) == ideal {
        Ok(WaterPlan::Reached(drawn))
    } else {
        Ok(WaterPlan::Nearest(
            drawn,
            mix_temperature(mix, temperature)?,
        ))
    }
}

fn draw(water: Microlitres, at: TenthsCelsius, taps: Taps) -> Result<Drawn, WaterError> {
    let above = i128::from(at.get() - taps.cold.get());
    let span = i128::from(taps.hot.get() - taps.cold.get());
    let hot = Microlitres::new(divide_half_up(i128::from(water.get()) * above, span)?)?;
    Ok(Drawn {
        temperature: at,
        hot_ppb: Ppb::of_whole(above, span)?,
        hot,
        cold: water.minus(hot)?,
    })
}
