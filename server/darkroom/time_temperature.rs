//! Time and temperature, and development by emergence. Rates are approximate, so
//! the coefficient is a floating-point number; times are whole seconds. Source: the
//! definition of Q; development by emergence after public-domain handbooks of the 1900s.

use serde::{Deserialize, Serialize};

use super::quantities::{QuantityError, Seconds, TenthsCelsius, Thousandths, divide_half_up};

/// From this ratio of emergence on the factorial time is shown, in thousandths: 1.25, from memory.
pub const FACTORIAL_FROM: Thousandths = Thousandths::of(1_250);
/// The lowest temperature of the starter developer: 18 °C, from memory.
pub const STARTER_LOWEST: TenthsCelsius = TenthsCelsius::degrees(18);
/// The highest temperature of the starter developer: 22 °C, from memory.
pub const STARTER_HIGHEST: TenthsCelsius = TenthsCelsius::degrees(22);

/// Why there is no time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TimeError {
    /// A time of nothing.
    #[error("a time is longer than nothing")]
    NoTime,
    /// The two points lie less than 2 °C apart.
    #[error("the two points of the sheet must be 2 °C or more apart")]
    PointsTooClose,
    /// Warmer is not quicker in these points.
    #[error("a warmer bath must be the quicker one")]
    NotQuicker,
    /// Outside the product's own range: no time, a warning.
    #[error("this temperature is outside the product's range")]
    OutsideRange,
    /// Readings at two temperatures and no coefficient to correct them.
    #[error("readings at different temperatures need the product's two points to compare")]
    NotComparable,
    /// No agents to average, or none with parts.
    #[error("a developer has at least one agent with parts")]
    NoAgents,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// One point of a product's sheet, or one reading: a time at a temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Timed {
    /// In seconds.
    #[serde(rename = "time_seconds")]
    pub time: Seconds,
    /// In tenths of a degree Celsius.
    #[serde(rename = "tenths_celsius")]
    pub temperature: TenthsCelsius,
}

/// Q: how many times quicker 10 °C warmer is; above 1.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Coefficient(f64);

impl Coefficient {
    /// Q from two points of a product's sheet: `(t₁/t₂)^(10/(T₂ − T₁))`.
    ///
    /// # Errors
    /// [`TimeError::NoTime`], [`TimeError::PointsTooClose`] under 2 °C,
    /// [`TimeError::NotQuicker`] unless Q > 1.
    pub fn from_points(one: Timed, other: Timed) -> Result<Self, TimeError> {
        if one.time == Seconds::ZERO || other.time == Seconds::ZERO {
            return Err(TimeError::NoTime);
        }
        if (one.temperature.get() - other.temperature.get()).abs() < 20 {
            return Err(TimeError::PointsTooClose);
        }
        let degrees = other.temperature.celsius() - one.temperature.celsius();
        let q = (seconds(one.time) / seconds(other.time)).powf(10.0 / degrees);
        if q > 1.0 && q.is_finite() {
            Ok(Self(q))
        } else {
            Err(TimeError::NotQuicker)
        }
    }

    /// The number.
    #[must_use]
    pub const fn get(self) -> f64 {
        self.0
    }

    /// What a time at one temperature becomes at another, unrounded.
    fn carry(self, timed: Timed, to: TenthsCelsius) -> f64 {
        let colder = timed.temperature.celsius() - to.celsius();
        seconds(timed.time) * self.0.powf(colder / 10.0)
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "a time at a bench is far below 2^53 seconds"
)]
fn seconds(time: Seconds) -> f64 {
    time.get() as f64
}

fn whole_seconds(time: f64) -> Result<Seconds, TimeError> {
    let rounded = time.round();
    if (0.0..1e15).contains(&rounded) {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "its range was just checked"
        )]
        Ok(Seconds::new(rounded as i64)?)
    } else {
        Err(QuantityError::TooLarge.into())
    }
}

/// The temperatures a product works at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkingRange {
    /// The lowest.
    #[serde(rename = "lowest_tenths_celsius")]
    pub lowest: TenthsCelsius,
    /// The highest.
    #[serde(rename = "highest_tenths_celsius")]
    pub highest: TenthsCelsius,
}

/// The time at another temperature: `t(T) = t₀·Q^((T₀ − T)/10)`, rounded to the
/// second. Source: the definition of Q.
///
/// # Errors
/// [`TimeError::OutsideRange`] outside the product's range; [`TimeError::NoTime`].
pub fn time_at(
    known: Timed,
    coefficient: Coefficient,
    temperature: TenthsCelsius,
    range: WorkingRange,
) -> Result<Seconds, TimeError> {
    if known.time == Seconds::ZERO {
        return Err(TimeError::NoTime);
    }
    if temperature < range.lowest || temperature > range.highest {
        return Err(TimeError::OutsideRange);
    }
    whole_seconds(coefficient.carry(known, temperature))
}

/// The factor of factorial development: time / emergence when fresh, in
/// thousandths, rounded half up.
///
/// # Errors
/// [`TimeError::NoTime`] where either is nothing.
pub fn factor(development: Seconds, emergence: Seconds) -> Result<Thousandths, TimeError> {
    if development == Seconds::ZERO || emergence == Seconds::ZERO {
        return Err(TimeError::NoTime);
    }
    let scaled = i128::from(development.get()) * 1_000;
    Ok(Thousandths::new(divide_half_up(
        scaled,
        i128::from(emergence.get()),
    )?)?)
}

/// Development time by factor: emergence × factor, rounded half up to a second.
///
/// # Errors
/// [`TimeError::NoTime`] where either is nothing.
pub fn factorial_time(emergence: Seconds, factor: Thousandths) -> Result<Seconds, TimeError> {
    if emergence == Seconds::ZERO || factor == Thousandths::ZERO {
        return Err(TimeError::NoTime);
    }
    let scaled = i128::from(emergence.get()) * i128::from(factor.get());
    Ok(Seconds::new(divide_half_up(scaled, 1_000)?)?)
}

/// A developing agent's factor and its parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Agent {
    /// Its factor, in thousandths.
    #[serde(rename = "factor_thousandths")]
    pub factor: Thousandths,
    /// Its parts, in thousandths.
    pub parts_thousandths: u32,
}

/// The factor of mixed agents: the mean weighted by parts, rounded half up.
/// Source: a cyclopedia of photography of 1911, public domain.
///
/// # Errors
/// [`TimeError::NoAgents`] without any parts.
pub fn factor_of_agents(agents: &[Agent]) -> Result<Thousandths, TimeError> {
    let parts: i128 = agents
        .iter()
        .map(|agent| i128::from(agent.parts_thousandths))
        .sum();
    if parts == 0 {
        return Err(TimeError::NoAgents);
    }
    let weighted = agents.iter().try_fold(0_i128, |sum, agent| {
        let term = i128::from(agent.factor.get()) * i128::from(agent.parts_thousandths);
        sum.checked_add(term).ok_or(QuantityError::TooLarge)
    })?;
    Ok(Thousandths::new(divide_half_up(weighted, parts)?)?)
}

/// Emergence now against fresh, of the same paper, in thousandths, rounded: the
/// fresh time is first carried to the temperature of now.
///
/// # Errors
/// [`TimeError::NotComparable`] at another temperature without a coefficient; [`TimeError::NoTime`].
pub fn emergence_ratio(
    fresh: Timed,
    now: Timed,
    coefficient: Option<Coefficient>,
) -> Result<Thousandths, TimeError> {
    if fresh.time == Seconds::ZERO || now.time == Seconds::ZERO {
        return Err(TimeError::NoTime);
    }
    if fresh.temperature == now.temperature {
        return factor(now.time, fresh.time);
    }
    let coefficient = coefficient.ok_or(TimeError::NotComparable)?;
    let expected = coefficient.carry(fresh, now.temperature);
    let thousandths = whole_seconds(seconds(now.time) / expected * 1_000.0)?;
    Ok(Thousandths::new(thousandths.get())?)
}

/// What a slower emergence asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum EmergenceAdvice {
    /// Develop as usual.
    AsUsual,
    /// Develop by the factor; the factorial time is shown.
    ByFactor,
    /// The developer is to be replaced.
    Replace,
}

/// Below 1.25 as usual, from 1.25 by factor, from 1.5 replace. From memory.
#[must_use]
pub fn emergence_advice(ratio: Thousandths) -> EmergenceAdvice {
    if ratio >= super::verdict::EMERGENCE_LIMIT {
        EmergenceAdvice::Replace
    } else if ratio >= FACTORIAL_FROM {
        EmergenceAdvice::ByFactor
    } else {
        EmergenceAdvice::AsUsual
    }
}
