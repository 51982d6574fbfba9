//! Volumes, lengths and shares, read and printed exactly with the room's decimal mark.
//!
//! Quantities are whole numbers of a small unit throughout: microlitres, tenths of a
//! millimetre, thousandths, parts per billion. Nothing here is a floating-point number.
//! A no-break space stands between number and unit.

/// Why a number could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NumberProblem {
    /// Nothing was typed.
    Empty,
    /// Not a number.
    NotANumber,
    /// The other decimal mark was used; it could mean thousands.
    OtherMark,
    /// More places than can be kept; the most there may be.
    TooFine(u32),
    /// More than can be kept.
    TooLarge,
    /// The unit behind it is not one of this quantity.
    UnknownUnit,
}

/// A room's way of writing numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Numbers {
    decimal_mark: char,
}

impl Default for Numbers {
    fn default() -> Self {
        Self { decimal_mark: '.' }
    }
}

/// A unit as typed, and ten to which power it is of the unit kept.
type Unit = (&'static str, u32);

const VOLUMES: [Unit; 9] = [
    ("l", 6),
    ("litre", 6),
    ("litres", 6),
    ("liter", 6),
    ("liters", 6),
    ("cl", 4),
    ("ml", 3),
    ("cc", 3),
    ("µl", 0),
];

impl Numbers {
    /// The way of a room with that decimal mark; anything but `,` is the point.
    #[must_use]
    pub fn with_mark(decimal_mark: &str) -> Self {
        Self {
            decimal_mark: if decimal_mark == "," { ',' } else { '.' },
        }
    }

    /// The mark itself.
    #[must_use]
    pub fn mark(self) -> char {
        self.decimal_mark
    }

    /// A volume in microlitres from litres, or from any unit of volume typed behind it.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_litres(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_measure(typed, &VOLUMES, 6)
    }

    /// A volume in microlitres from millilitres, or from any unit typed behind it.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_millilitres(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_measure(typed, &VOLUMES, 3)
    }

    /// A length in tenths of a millimetre from millimetres or centimetres.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_millimetres(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_measure(typed, &[("mm", 1), ("cm", 2)], 1)
    }

    /// A length in tenths of a millimetre from inches: 25.4 mm each, rounded half up.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_inches(self, typed: &str) -> Result<i64, NumberProblem> {
        let typed = typed.trim();
        let bare = typed.strip_suffix("in").or(typed.strip_suffix('"'));
        let thousandths = self.read_scaled(bare.unwrap_or(typed), 3)?;
        let scaled = thousandths
            .checked_mul(254)
            .ok_or(NumberProblem::TooLarge)?;
        Ok((scaled + 500) / 1_000)
    }

    /// Thousandths: parts of water, sheets per litre, hours.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_thousandths(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_scaled(typed, 3)
    }

    /// Parts per billion from per cent.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_percent(self, typed: &str) -> Result<i64, NumberProblem> {
        let typed = typed.trim();
        self.read_scaled(typed.strip_suffix('%').unwrap_or(typed), 7)
    }

    /// Millionths from per cent.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_percent_coarsely(self, typed: &str) -> Result<i64, NumberProblem> {
        let typed = typed.trim();
        self.read_scaled(typed.strip_suffix('%').unwrap_or(typed), 4)
    }

    /// Tenths of a degree from degrees Celsius, with or without the unit behind.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_celsius(self, typed: &str) -> Result<i64, NumberProblem> {
        let typed = typed.trim();
        let bare = typed.strip_suffix(['C', 'c']).unwrap_or(typed).trim_end();
        self.read_scaled(bare.strip_suffix('\u{b0}').unwrap_or(bare), 1)
    }

    /// Tenths: factors to one decimal place.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_tenths(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_scaled(typed, 1)
    }

    /// A whole number of things.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_count(self, typed: &str) -> Result<i64, NumberProblem> {
        self.read_scaled(typed, 0)
    }

    fn read_measure(
        self,
        typed: &str,
        units: &[Unit],
        bare_power: u32,
    ) -> Result<i64, NumberProblem> {
        let typed = typed.trim();
        let unit_at = typed
            .find(|character: char| character.is_alphabetic())
            .unwrap_or(typed.len());
        let (number, unit) = typed.split_at(unit_at);
        let unit = unit.to_lowercase().replace('\u{3bc}', "\u{b5}");
        if unit.is_empty() {
            return self.read_scaled(number, bare_power);
        }
        let (_, power) = units
            .iter()
            .find(|(name, _)| *name == unit)
            .ok_or(NumberProblem::UnknownUnit)?;
        self.read_scaled(number, *power)
    }

    /// Reads a number that is not negative as a whole number of 10^-`places`.
    fn read_scaled(self, typed: &str, places: u32) -> Result<i64, NumberProblem> {
        let kept: String = typed
            .chars()
            .filter(|character| !character.is_whitespace() && *character != '\u{2019}')
            .collect();
        if kept.is_empty() {
            return Err(NumberProblem::Empty);
        }
        let other = if self.decimal_mark == ',' { '.' } else { ',' };
        if kept.contains(other) {
            return Err(NumberProblem::OtherMark);
        }
        let (whole, part) = kept.split_once(self.decimal_mark).unwrap_or((&kept, ""));
        let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
        if !digits(whole) || !digits(part) || whole.len() + part.len() == 0 {
            return Err(NumberProblem::NotANumber);
        }
        let part = part.trim_end_matches('0');
        let missing = u32::try_from(part.len())
            .ok()
            .and_then(|length| places.checked_sub(length))
            .ok_or(NumberProblem::TooFine(places))?;
        let number = format!("{whole}{part}");
        let number = number.trim_start_matches('0');
        if number.is_empty() {
            return Ok(0);
        }
        number
            .parse::<i64>()
            .ok()
            .and_then(|number| number.checked_mul(10_i64.pow(missing)))
            .ok_or(NumberProblem::TooLarge)
    }

    /// A whole number of 10^-`places`, exactly: no zeros at the end.
    #[must_use]
    pub fn decimal(self, value: i64, places: u32) -> String {
        let scale = 10_u64.pow(places);
        let size = value.unsigned_abs();
        let width = places as usize;
        let sign = if value < 0 { "\u{2212}" } else { "" };
        let part = format!("{:0width$}", size % scale);
        let part = if places == 0 {
            ""
        } else {
            part.trim_end_matches('0')
        };
        let whole = size / scale;
        if part.is_empty() {
            format!("{sign}{whole}")
        } else {
            format!("{sign}{whole}{}{part}", self.decimal_mark)
        }
    }

    /// The same rounded half up to `shown` places.
    #[must_use]
    pub fn rounded(self, value: i64, places: u32, shown: u32) -> String {
        let Some(drop) = places.checked_sub(shown).filter(|drop| *drop > 0) else {
            return self.decimal(value, places);
        };
        let step = 10_i64.pow(drop);
        let rounded = (value.saturating_add(step / 2)).div_euclid(step);
        self.decimal(rounded, shown)
    }

    /// `1.5 L`, exactly.
    #[must_use]
    pub fn litres(self, microlitres: i64) -> String {
        format!("{}\u{a0}L", self.decimal(microlitres, 6))
    }

    /// `100 ml`, exactly.
    #[must_use]
    pub fn millilitres(self, microlitres: i64) -> String {
        format!("{}\u{a0}ml", self.decimal(microlitres, 3))
    }

    /// `1.48 L` from a litre upwards, `480 ml` below, rounded to what a cylinder shows.
    #[must_use]
    pub fn volume(self, microlitres: i64) -> String {
        if microlitres.abs() >= 1_000_000 {
            format!("{}\u{a0}L", self.rounded(microlitres, 6, 2))
        } else {
            format!("{}\u{a0}ml", self.rounded(microlitres, 3, 0))
        }
    }

    /// `203.2 mm`, exactly.
    #[must_use]
    pub fn millimetres(self, tenths: i64) -> String {
        format!("{}\u{a0}mm", self.decimal(tenths, 1))
    }

    /// `20.5 °C`, exactly.
    #[must_use]
    pub fn celsius(self, tenths: i64) -> String {
        format!("{}\u{a0}\u{b0}C", self.decimal(tenths, 1))
    }

    /// `84 %`, rounded down: what is not yet used up never reads as 100 %.
    #[must_use]
    pub fn percent_used(self, parts_per_billion: i64) -> String {
        format!("{}\u{a0}%", whole_percent_used(parts_per_billion))
    }

    /// `1+9`, `1+9.3`.
    #[must_use]
    pub fn dilution(self, parts_thousandths: i64) -> String {
        format!("1+{}", self.decimal(parts_thousandths, 3))
    }
}

/// Whole per cent used, rounded down, at least 0.
#[must_use]
pub fn whole_percent_used(parts_per_billion: i64) -> i64 {
    parts_per_billion.max(0) / 10_000_000
}

/// Whole per cent left: 100 less what is used, at least 0.
#[must_use]
pub fn whole_percent_left(parts_per_billion: i64) -> u8 {
    let left = 100 - whole_percent_used(parts_per_billion).min(100);
    u8::try_from(left).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const POINT: Numbers = Numbers { decimal_mark: '.' };
    const COMMA: Numbers = Numbers { decimal_mark: ',' };

    #[test]
    fn volumes_are_read_with_mark_and_unit() {
        assert_eq!(POINT.read_litres("1.5"), Ok(1_500_000));
        assert_eq!(COMMA.read_litres("1,5 l"), Ok(1_500_000));
        assert_eq!(POINT.read_litres("500 ml"), Ok(500_000));
        assert_eq!(POINT.read_litres(".5"), Ok(500_000));
        assert_eq!(POINT.read_litres("2.50000000"), Ok(2_500_000));
        assert_eq!(POINT.read_millilitres("66.667"), Ok(66_667));
        assert_eq!(POINT.read_millilitres("1 L"), Ok(1_000_000));
        assert_eq!(POINT.read_millimetres("20.3 cm"), Ok(2_030));
        // 1 in is 25.4 mm: international yard and pound agreement of 1959.
        assert_eq!(POINT.read_inches("8"), Ok(2_032));
        assert_eq!(POINT.read_inches("10 in"), Ok(2_540));
        assert_eq!(POINT.read_percent("80 %"), Ok(800_000_000));
        assert_eq!(POINT.read_thousandths("9.3"), Ok(9_300));
        assert_eq!(COMMA.read_celsius("20,5 °C"), Ok(205));
        assert_eq!(POINT.read_celsius("18"), Ok(180));
    }

    #[test]
    fn what_cannot_be_read_says_why() {
        assert_eq!(POINT.read_litres(" "), Err(NumberProblem::Empty));
        assert_eq!(POINT.read_litres("1,5"), Err(NumberProblem::OtherMark));
        assert_eq!(COMMA.read_litres("1.5"), Err(NumberProblem::OtherMark));
        assert_eq!(POINT.read_litres("-1"), Err(NumberProblem::NotANumber));
        assert_eq!(POINT.read_litres("."), Err(NumberProblem::NotANumber));
        assert_eq!(POINT.read_litres("1 gal"), Err(NumberProblem::UnknownUnit));
        assert_eq!(POINT.read_count("1.5"), Err(NumberProblem::TooFine(0)));
        assert_eq!(
            POINT.read_litres("99999999999999999"),
            Err(NumberProblem::TooLarge)
        );
    }

    #[test]
    fn quantities_are_printed_with_their_unit() {
        assert_eq!(COMMA.litres(1_500_000), "1,5\u{a0}L");
        assert_eq!(POINT.millilitres(66_667), "66.667\u{a0}ml");
        assert_eq!(POINT.volume(1_484_999), "1.48\u{a0}L");
        assert_eq!(POINT.volume(480_400), "480\u{a0}ml");
        assert_eq!(POINT.celsius(205), "20.5\u{a0}°C");
        assert_eq!(POINT.dilution(9_000), "1+9");
        assert_eq!(POINT.dilution(9_300), "1+9.3");
        assert_eq!(POINT.percent_used(999_999_999), "99\u{a0}%");
        assert_eq!(whole_percent_left(999_999_999), 1);
        assert_eq!(whole_percent_left(1_200_000_000), 0);
    }

    proptest! {
        #[test]
        fn what_is_printed_is_read_back(value in 0_i64..i64::MAX / 10, comma: bool, places in 0_u32..7) {
            let numbers = if comma { COMMA } else { POINT };
            prop_assert_eq!(numbers.read_scaled(&numbers.decimal(value, places), places), Ok(value));
        }

        #[test]
        fn reading_never_fails_otherwise(typed in ".*") {
            let _ = POINT.read_litres(&typed);
            let _ = COMMA.read_inches(&typed);
        }
    }
}
