//! Quantities as whole numbers in one unit each, so that the book's sums are
//! exact and no unit is ever guessed. Fields are private; arithmetic is
//! checked; none but `Moment` can be negative.
//!
//! Exact conversions follow the definitions of the units (SI; 1 in = 25.4 mm).
//! As JSON each is its bare integer. Reading and writing "0.5 l" is not done here.

use serde::{Deserialize, Serialize};

/// Why a number is no quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum QuantityError {
    /// Below zero where less than nothing has no meaning.
    #[error("a quantity below zero")]
    Negative,
    /// Beyond what 64 bits hold.
    #[error("a quantity too large to be kept exactly")]
    TooLarge,
}

/// `numerator / denominator`, rounded half up (both at least 0, denominator above 0).
pub(crate) fn divide_half_up(numerator: i128, denominator: i128) -> Result<i64, QuantityError> {
    if numerator < 0 {
        return Err(QuantityError::Negative);
    }
    let doubled = numerator
        .checked_mul(2)
        .and_then(|n| n.checked_add(denominator));
    let twice = denominator.checked_mul(2);
    let rounded = doubled.zip(twice).and_then(|(n, d)| n.checked_div(d));
    rounded
        .and_then(|value| i64::try_from(value).ok())
        .ok_or(QuantityError::TooLarge)
}

/// `numerator / denominator`, rounded down (both at least 0, denominator above 0).
pub(crate) fn divide_down(numerator: i128, denominator: i128) -> Result<i64, QuantityError> {
    if numerator < 0 {
        return Err(QuantityError::Negative);
    }
    let quotient = numerator.checked_div(denominator);
    quotient
        .and_then(|value| i64::try_from(value).ok())
        .ok_or(QuantityError::TooLarge)
}

macro_rules! quantity {
    ($(#[$about:meta])* $name:ident) => {
        $(#[$about])*
        #[derive(
            Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
        )]
        #[serde(try_from = "i64", into = "i64")]
        pub struct $name(i64);

        impl $name {
            /// Nothing.
            pub const ZERO: Self = Self(0);

            /// From a whole number of the unit, at least 0.
            ///
            /// # Errors
            /// [`QuantityError::Negative`] below 0.
            pub const fn new(value: i64) -> Result<Self, QuantityError> {
                if value < 0 { Err(QuantityError::Negative) } else { Ok(Self(value)) }
            }

            /// From a whole number that cannot be negative; for figures written in the code.
            #[must_use]
            pub const fn of(value: u32) -> Self {
                Self(value as i64)
            }

            /// The whole number of the unit.
            #[must_use]
            pub const fn get(self) -> i64 {
                self.0
            }

            /// The sum.
            ///
            /// # Errors
            /// [`QuantityError::TooLarge`] beyond 64 bits.
            pub fn plus(self, other: Self) -> Result<Self, QuantityError> {
                self.0.checked_add(other.0).map(Self).ok_or(QuantityError::TooLarge)
            }

            /// The difference.
            ///
            /// # Errors
            /// [`QuantityError::Negative`] where more is taken than there is.
            pub fn minus(self, other: Self) -> Result<Self, QuantityError> {
                Self::new(self.0 - other.0)
            }

            /// So many times as much.
            ///
            /// # Errors
            /// [`QuantityError::TooLarge`] beyond 64 bits.
            pub fn times(self, count: u32) -> Result<Self, QuantityError> {
                self.0.checked_mul(i64::from(count)).map(Self).ok_or(QuantityError::TooLarge)
            }
        }

        impl TryFrom<i64> for $name {
            type Error = QuantityError;

            fn try_from(value: i64) -> Result<Self, QuantityError> {
                Self::new(value)
            }
        }

        impl From<$name> for i64 {
            fn from(quantity: $name) -> i64 {
                quantity.0
            }
        }
    };
}

quantity! {
    /// A volume in microlitres: what is charged, poured, drawn.
    Microlitres
}
quantity! {
    /// A volume in nanolitres: fresh solution spent by use.
    Nanolitres
}
quantity! {
    /// A flow of air in microlitres a second.
    Flow
}
quantity! {
    /// A length in tenths of a millimetre.
    TenthsMm
}
quantity! {
    /// An area in hundredths of a square millimetre.
    Area
}
quantity! {
    /// A fraction in parts per billion: of capacity, of life, of a whole. It may pass 1.
    Ppb
}
quantity! {
    /// A time span in seconds.
    Seconds
}
quantity! {
    /// A mass in micrograms.
    Micrograms
}
quantity! {
    /// A ratio in thousandths: 2000 is twice as much.
    Thousandths
}

impl Microlitres {
    /// From millilitres: 1 ml = 1000 µl, exactly.
    ///
    /// # Errors
    /// [`QuantityError`] below 0 or beyond 64 bits.
    pub fn from_millilitres(millilitres: i64) -> Result<Self, QuantityError> {
        millilitres
            .checked_mul(1_000)
            .ok_or(QuantityError::TooLarge)
            .and_then(Self::new)
    }

    /// The same volume in nanolitres, exactly.
    ///
    /// # Errors
    /// [`QuantityError::TooLarge`] beyond 64 bits (above nine billion litres).
    pub fn to_nanolitres(self) -> Result<Nanolitres, QuantityError> {
        self.0
            .checked_mul(1_000)
            .map(Nanolitres)
            .ok_or(QuantityError::TooLarge)
    }
}

impl Nanolitres {
    /// The same volume in microlitres, rounded half up.
    ///
    /// # Errors
    /// None in practice: the result is a thousandth of what is held.
    pub fn to_microlitres(self) -> Result<Microlitres, QuantityError> {
        divide_half_up(i128::from(self.0), 1_000).map(Microlitres)
    }
}

impl TenthsMm {
    /// From inches in thousandths: 1 in = 25.4 mm exactly (international inch),
    /// rounded half up to a tenth of a millimetre.
    ///
    /// # Errors
    /// [`QuantityError`] below 0 or beyond 64 bits.
    pub fn from_thousandths_inch(inches: i64) -> Result<Self, QuantityError> {
        divide_half_up(i128::from(inches) * 254, 1_000).map(Self)
    }

    /// The rectangle of this and another side.
    ///
    /// # Errors
    /// [`QuantityError::TooLarge`] beyond 64 bits.
    pub fn by(self, other: Self) -> Result<Area, QuantityError> {
        self.0
            .checked_mul(other.0)
            .map(Area)
            .ok_or(QuantityError::TooLarge)
    }
}

impl Area {
    /// One sheet of 8×10 in, 203.2 × 254.0 mm: the unit of sheet equivalents.
    /// Source: 1 in = 25.4 mm exactly.
    pub const SHEET_8X10: Self = Self(5_161_280);
}

impl Ppb {
    /// The whole.
    pub const ONE: Self = Self(1_000_000_000);
    /// From here on a limit counts as met: 1 − 10⁻⁶, so that sums of rounded
    /// parts do not stop a hair short of it. A note's wear is rounded to a
    /// nanolitre, so a thousand notes in a litre may stop half a millionth short:
    /// fourteen notes of five sheets at 70 sheets a litre come to 0.999999994.
    pub const LIMIT: Self = Self(999_999_000);

    /// `part / whole`, rounded down.
    ///
    /// # Errors
    /// [`QuantityError::TooLarge`] for a whole of nothing, or beyond 64 bits.
    pub(crate) fn of_whole(part: i128, whole: i128) -> Result<Self, QuantityError> {
        let scaled = part
            .checked_mul(i128::from(Self::ONE.0))
            .ok_or(QuantityError::TooLarge)?;
        divide_down(scaled, whole).map(Self)
    }

    /// What is left of the whole; nothing where it is passed.
    #[must_use]
    pub fn rest(self) -> Self {
        Self((Self::ONE.0 - self.0).max(0))
    }
}

impl Seconds {
    /// From whole minutes; for figures written in the code.
    #[must_use]
    pub const fn from_minutes(minutes: u16) -> Self {
        Self(minutes as i64 * 60)
    }

    /// From whole hours; for figures written in the code.
    #[must_use]
    pub const fn from_hours(hours: u16) -> Self {
        Self(hours as i64 * 3_600)
    }
}

/// An instant: microseconds since 1970-01-01 00:00 UTC, negative before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Moment(i64);

impl Moment {
    /// From microseconds since 1970-01-01 00:00 UTC.
    #[must_use]
    pub const fn new(microseconds: i64) -> Self {
        Self(microseconds)
    }

    /// Microseconds since 1970-01-01 00:00 UTC.
    #[must_use]
    pub const fn get(self) -> i64 {
        self.0
    }

    /// That much later; the last instant there is where it would lie beyond.
    #[must_use]
    pub fn after(self, span: Seconds) -> Self {
        Self(self.0.saturating_add(span.0.saturating_mul(1_000_000)))
    }

    /// Microseconds from an earlier instant to this one; 0 where it is no earlier.
    #[must_use]
    pub(crate) fn microseconds_since(self, earlier: Self) -> i128 {
        (i128::from(self.0) - i128::from(earlier.0)).max(0)
    }
}

/// A temperature in tenths of a degree Celsius, −273.1 °C and up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "i64", into = "i64")]
pub struct TenthsCelsius(i32);

impl TenthsCelsius {
    /// From tenths of a degree; −273.1 to 1000.0 °C.
    ///
    /// # Errors
    /// [`QuantityError::Negative`] below, [`QuantityError::TooLarge`] above.
    pub fn new(tenths: i64) -> Result<Self, QuantityError> {
        if tenths < -2_731 {
            return Err(QuantityError::Negative);
        }
        let value = i32::try_from(tenths).map_err(|_| QuantityError::TooLarge)?;
        if value > 10_000 {
            Err(QuantityError::TooLarge)
        } else {
            Ok(Self(value))
        }
    }

    /// From whole degrees that need no check; for figures written in the code.
    #[must_use]
    pub const fn degrees(degrees: u8) -> Self {
        Self(degrees as i32 * 10)
    }

    /// Tenths of a degree.
    #[must_use]
    pub const fn get(self) -> i32 {
        self.0
    }

    /// Degrees as a number for formulas that are approximate anyhow.
    #[must_use]
    pub fn celsius(self) -> f64 {
        f64::from(self.0) / 10.0
    }
}

impl TryFrom<i64> for TenthsCelsius {
    type Error = QuantityError;

    fn try_from(value: i64) -> Result<Self, QuantityError> {
        Self::new(value)
    }
}

impl From<TenthsCelsius> for i64 {
    fn from(temperature: TenthsCelsius) -> i64 {
        i64::from(temperature.0)
    }
}
