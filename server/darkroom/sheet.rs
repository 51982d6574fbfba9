//! Sheets of paper: their size, their area, and how many sheets of 8×10 in that
//! makes. Capacity is stated in sheets of 8×10 in, so wear follows area alone.
//! Source: 1 in = 25.4 mm exactly, and geometry. True sides are kept: the trade's names (18×24) are near the sizes, not the sizes.

use serde::{Deserialize, Serialize};

use super::quantities::{Area, QuantityError, TenthsMm, divide_half_up};

/// Why two sides are no sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SheetError {
    /// A side is shorter than 1 mm or longer than 10 m.
    #[error("a side of a sheet is between 1 mm and 10 m")]
    Side,
}

/// The size of one sheet; the long side is never shorter than the short one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "Sides", into = "Sides")]
pub struct SheetSize {
    long: TenthsMm,
    short: TenthsMm,
}

/// Two sides as they come from outside, in any order.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Sides {
    long_tenths_mm: TenthsMm,
    short_tenths_mm: TenthsMm,
}

impl TryFrom<Sides> for SheetSize {
    type Error = SheetError;

    fn try_from(sides: Sides) -> Result<Self, SheetError> {
        Self::new(sides.long_tenths_mm, sides.short_tenths_mm)
    }
}

impl From<SheetSize> for Sides {
    fn from(size: SheetSize) -> Self {
        Self {
            long_tenths_mm: size.long,
            short_tenths_mm: size.short,
        }
    }
}

impl SheetSize {
    /// A sheet of two sides in tenths of a millimetre, given in any order; 1 mm to 10 m each.
    ///
    /// # Errors
    /// [`SheetError::Side`] outside that range.
    pub fn new(one: TenthsMm, other: TenthsMm) -> Result<Self, SheetError> {
        let (long, short) = if one < other {
            (other, one)
        } else {
            (one, other)
        };
        if short < TenthsMm::of(10) || long > TenthsMm::of(100_000) {
            return Err(SheetError::Side);
        }
        Ok(Self { long, short })
    }

    /// The long side in tenths of a millimetre.
    #[must_use]
    pub const fn long(self) -> TenthsMm {
        self.long
    }

    /// The short side in tenths of a millimetre.
    #[must_use]
    pub const fn short(self) -> TenthsMm {
        self.short
    }

    /// Area in hundredths of a square millimetre, exact.
    ///
    /// # Errors
    /// None in practice: sides of at most 10 m make 10¹⁰ at most.
    pub fn area(self) -> Result<Area, QuantityError> {
        self.long.by(self.short)
    }
}

/// A number of sheets of 8×10 in, in millionths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct SheetEquivalents(i64);

impl SheetEquivalents {
    /// Millionths of a sheet of 8×10 in.
    #[must_use]
    pub const fn get(self) -> i64 {
        self.0
    }
}

/// How many sheets of 8×10 in (516.128 cm²) a number of sheets of this area
/// makes, in millionths, rounded half up. For showing; wear is computed from the area.
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn sheet_equivalents(sheets: u32, area: Area) -> Result<SheetEquivalents, QuantityError> {
    let total = i128::from(sheets) * i128::from(area.get()) * 1_000_000;
    divide_half_up(total, i128::from(Area::SHEET_8X10.get())).map(SheetEquivalents)
}

/// Where a standard size comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SizeSource {
    /// Named in inches; 1 in = 25.4 mm exactly.
    Inch,
    /// ISO 216, written from memory; the A sizes and B5 agree with an independent library.
    Iso216,
    /// Metric trade names: common practice, no source.
    TradeMetric,
}

/// One size a room may start with.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct StandardSize {
    /// What printers call it.
    pub name: &'static str,
    /// Its true sides.
    #[serde(flatten)]
    pub size: SheetSize,
    /// Where its sides come from.
    pub source: SizeSource,
}

const fn size(name: &'static str, long: u32, short: u32, source: SizeSource) -> StandardSize {
    let size = SheetSize {
        long: TenthsMm::of(long),
        short: TenthsMm::of(short),
    };
    StandardSize { name, size, source }
}

/// The sizes every room starts with, smallest first within each source.
pub const STANDARD_SIZES: &[StandardSize] = &[
    size("5×7 in", 1_778, 1_270, SizeSource::Inch),
    size("8×10 in", 2_540, 2_032, SizeSource::Inch),
    size("9.5×12 in", 3_048, 2_413, SizeSource::Inch),
    size("11×14 in", 3_556, 2_794, SizeSource::Inch),
    size("12×16 in", 4_064, 3_048, SizeSource::Inch),
    size("16×20 in", 5_080, 4_064, SizeSource::Inch),
    size("20×24 in", 6_096, 5_080, SizeSource::Inch),
    size("A6", 1_480, 1_050, SizeSource::Iso216),
    size("A5", 2_100, 1_480, SizeSource::Iso216),
    size("B5", 2_500, 1_760, SizeSource::Iso216),
    size("A4", 2_970, 2_100, SizeSource::Iso216),
    size("B4", 3_530, 2_500, SizeSource::Iso216),
    size("A3", 4_200, 2_970, SizeSource::Iso216),
    size("13×18 cm", 1_800, 1_300, SizeSource::TradeMetric),
    size("17.8×24 cm", 2_400, 1_780, SizeSource::TradeMetric),
    size("24×30.5 cm", 3_050, 2_400, SizeSource::TradeMetric),
    size("30.5×40.6 cm", 4_060, 3_050, SizeSource::TradeMetric),
    size("40.6×50.8 cm", 5_080, 4_060, SizeSource::TradeMetric),
    size("50.8×61 cm", 6_100, 5_080, SizeSource::TradeMetric),
];
