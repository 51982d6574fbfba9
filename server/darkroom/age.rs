//! Age: how much of its life a mix has used. The used fraction grows by Δt/τ, τ
//! the life for the present storage; a change of storage is an event that keeps
//! the fraction and changes τ. Topping up makes it younger by mixing, as a·V/(V+v).
//!
//! That life passes evenly, and that mixing averages it, is common practice, no source.
//!
//! Whole numbers throughout: parts per billion, rounded down. Between two events
//! the fraction never falls, and `Age::reaches` gives the first microsecond at
//! which `Age::used_at` has arrived.

use serde::{Deserialize, Serialize};

use super::quantities::{
    Area, Microlitres, Moment, Ppb, QuantityError, Seconds, TenthsMm, divide_down, divide_half_up,
};

/// Why an age cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum AgeError {
    /// A life is longer than nothing.
    #[error("a life is longer than nothing")]
    NoLife,
    /// A tray without area, or a mix without volume.
    #[error("a mix has a volume, and a tray an area")]
    NoVolume,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// The used fraction of life at an instant, and the life it goes on with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "AgeFigures", into = "AgeFigures")]
pub struct Age {
    used: Ppb,
    at: Moment,
    life: Seconds,
}

/// The figures of an [`Age`] as they are stored.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct AgeFigures {
    used_ppb: Ppb,
    at_us: Moment,
    life_seconds: Seconds,
}

impl TryFrom<AgeFigures> for Age {
    type Error = AgeError;

    fn try_from(figures: AgeFigures) -> Result<Self, AgeError> {
        Self::new(figures.used_ppb, figures.at_us, figures.life_seconds)
    }
}

impl From<Age> for AgeFigures {
    fn from(age: Age) -> Self {
        Self {
            used_ppb: age.used,
            at_us: age.at,
            life_seconds: age.life,
        }
    }
}

impl Age {
    /// From the used fraction at an instant and the life in seconds, above 0.
    ///
    /// # Errors
    /// [`AgeError::NoLife`] for a life of nothing.
    pub fn new(used: Ppb, at: Moment, life: Seconds) -> Result<Self, AgeError> {
        if life == Seconds::ZERO {
            Err(AgeError::NoLife)
        } else {
            Ok(Self { used, at, life })
        }
    }

    /// A mix made at this instant.
    ///
    /// # Errors
    /// [`AgeError::NoLife`] for a life of nothing.
    pub fn fresh(at: Moment, life: Seconds) -> Result<Self, AgeError> {
        Self::new(Ppb::ZERO, at, life)
    }

    /// The instant of the last event.
    #[must_use]
    pub const fn at(self) -> Moment {
        self.at
    }

    /// The used fraction of life at the last event.
    #[must_use]
    pub const fn used(self) -> Ppb {
        self.used
    }

    /// The life for the present storage, in seconds.
    #[must_use]
    pub const fn life(self) -> Seconds {
        self.life
    }

    /// The used fraction of life at an instant, rounded down; before the last
    /// event it is what it was at that event. It may pass 1.
    ///
    /// # Errors
    /// [`AgeError::Quantity`] beyond 64 bits.
    pub fn used_at(self, now: Moment) -> Result<Ppb, AgeError> {
        // Δt[µs]/(τ[s]·10⁶)·10⁹ = Δt·1000/τ.
        let grown = now.microseconds_since(self.at) * 1_000;
        let grown = Ppb::new(divide_down(grown, i128::from(self.life.get()))?)?;
        Ok(self.used.plus(grown)?)
    }

    /// The first instant at which the used fraction is at least this; the last
    /// event's where it already was; none beyond the last instant there is.
    #[must_use]
    pub fn reaches(self, fraction: Ppb) -> Option<Moment> {
        let missing = i128::from(fraction.get()) - i128::from(self.used.get());
        if missing <= 0 {
            return Some(self.at);
        }
        let scaled = missing * i128::from(self.life.get());
        let span = scaled.div_euclid(1_000) + i128::from(scaled.rem_euclid(1_000) > 0);
        let instant = i128::from(self.at.get()) + span;
        i64::try_from(instant).ok().map(Moment::new)
    }

    /// The same mix from this instant on in other storage, with another life.
    /// An instant before the last event takes effect at that event.
    ///
    /// # Errors
    /// [`AgeError::NoLife`] for a life of nothing.
    pub fn stored(self, now: Moment, life: Seconds) -> Result<Self, AgeError> {
        Self::new(self.used_at(now)?, self.at.max(now), life)
    }

    /// After v microlitres of fresh solution joined V of this: a ← a·V/(V+v), rounded half up.
    ///
    /// # Errors
    /// [`AgeError::NoVolume`] where both are nothing.
    pub fn topped_up(
        self,
        now: Moment,
        volume: Microlitres,
        fresh: Microlitres,
    ) -> Result<Self, AgeError> {
        let aged = self.stored(now, self.life)?;
        let whole = i128::from(volume.get()) + i128::from(fresh.get());
        if whole == 0 {
            return Err(AgeError::NoVolume);
        }
        let scaled = i128::from(aged.used.get()) * i128::from(volume.get());
        Ok(Self {
            used: Ppb::new(divide_half_up(scaled, whole)?)?,
            ..aged
        })
    }

    /// Two mixes poured together: the fractions are averaged by volume, rounded
    /// half up; the life goes on as that of the mix poured into.
    ///
    /// # Errors
    /// [`AgeError::NoVolume`] where both are nothing.
    pub fn poured_together(
        self,
        now: Moment,
        volume: Microlitres,
        other: Self,
        other_volume: Microlitres,
    ) -> Result<Self, AgeError> {
        let aged = self.stored(now, self.life)?;
        let whole = i128::from(volume.get()) + i128::from(other_volume.get());
        if whole == 0 {
            return Err(AgeError::NoVolume);
        }
        let joined = other.used_at(now)?;
        let scaled = i128::from(aged.used.get()) * i128::from(volume.get())
            + i128::from(joined.get()) * i128::from(other_volume.get());
        Ok(Self {
            used: Ppb::new(divide_half_up(scaled, whole)?)?,
            ..aged
        })
    }
}

/// The depth a tray life is stated for where its sheet says nothing: 8 mm.
/// Common practice, no source.
pub const REFERENCE_DEPTH: TenthsMm = TenthsMm::of(80);

/// The life of a product that oxidises, in an open tray, in seconds:
/// τ_ref · clamp(d/d_ref, 0.25, 1) with the depth d = volume/area, rounded half
/// up, at least 1. Deeper earns nothing extra; the floor is from memory.
///
/// # Errors
/// [`AgeError::NoVolume`] for no area or no reference depth.
pub fn oxidising_life(
    reference_life: Seconds,
    volume: Microlitres,
    tray: Area,
    reference_depth: TenthsMm,
) -> Result<Seconds, AgeError> {
    // 1 µl over 1/100 mm² stands 100 mm = 1000 tenths of a millimetre high.
    let depth = i128::from(volume.get()) * 1_000;
    let reference = i128::from(reference_depth.get()) * i128::from(tray.get());
    if reference == 0 {
        return Err(AgeError::NoVolume);
    }
    let life = i128::from(reference_life.get());
    let shortened = if depth >= reference {
        reference_life.get()
    } else if depth * 4 <= reference {
        divide_half_up(life, 4)?
    } else {
        let scaled = life.checked_mul(depth).ok_or(QuantityError::TooLarge)?;
        divide_half_up(scaled, reference)?
    };
    Ok(Seconds::new(shortened.max(1))?)
}

/// How deep a volume stands in a tray, in tenths of a millimetre, rounded half up.
///
/// # Errors
/// [`AgeError::NoVolume`] for no area.
pub fn depth(volume: Microlitres, tray: Area) -> Result<TenthsMm, AgeError> {
    if tray == Area::ZERO {
        return Err(AgeError::NoVolume);
    }
    let scaled = i128::from(volume.get()) * 1_000;
    Ok(TenthsMm::new(divide_half_up(
        scaled,
        i128::from(tray.get()),
    )?)?)
}
