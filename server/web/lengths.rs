//! Lengths in a room's unit: millimetres or inches. What is kept is tenths of a
//! millimetre; an inch is 25.4 mm (international yard and pound agreement of 1959).

use super::numbers::{NumberProblem, Numbers};

/// Tenths of a millimetre in an inch.
const INCH: i64 = 254;

/// A room's way of writing lengths.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Lengths {
    numbers: Numbers,
    is_inch: bool,
}

impl Lengths {
    /// The way of a room that writes inches, or millimetres.
    #[must_use]
    pub fn new(numbers: Numbers, is_inch: bool) -> Self {
        Self { numbers, is_inch }
    }

    /// What a bare number is: `mm` or `in`.
    #[must_use]
    pub fn unit(self) -> &'static str {
        if self.is_inch { "in" } else { "mm" }
    }

    /// A length in tenths of a millimetre, from the room's unit or the one typed
    /// behind the number.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read(self, typed: &str) -> Result<i64, NumberProblem> {
        let typed = typed.trim().to_lowercase();
        let says_inch = typed.ends_with("in") || typed.ends_with('"');
        let says_metric = typed.ends_with('m');
        if says_inch || (self.is_inch && !says_metric) {
            self.numbers.read_inches(&typed)
        } else {
            self.numbers.read_millimetres(&typed)
        }
    }

    /// The bare number for a field; it is read back as the same length.
    #[must_use]
    pub fn value(self, tenths_mm: i64) -> String {
        if self.is_inch {
            let thousandths = (tenths_mm * 1_000 + INCH / 2) / INCH;
            self.numbers.decimal(thousandths, 3)
        } else {
            self.numbers.decimal(tenths_mm, 1)
        }
    }

    /// `203.2 mm` or `8 in`.
    #[must_use]
    pub fn words(self, tenths_mm: i64) -> String {
        format!("{}\u{a0}{}", self.value(tenths_mm), self.unit())
    }

    /// `254 × 203.2 mm` or `10 × 8 in`.
    #[must_use]
    pub fn sides(self, long_tenths_mm: i64, short_tenths_mm: i64) -> String {
        let long = self.value(long_tenths_mm);
        format!("{long} × {}", self.words(short_tenths_mm))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn lengths(mark: &str, is_inch: bool) -> Lengths {
        Lengths::new(Numbers::with_mark(mark), is_inch)
    }

    // 1 in is 25.4 mm: international yard and pound agreement of 1959.
    #[test]
    fn a_bare_number_is_in_the_rooms_unit_and_a_unit_behind_it_wins() {
        assert_eq!(lengths(".", false).read("254"), Ok(2_540));
        assert_eq!(lengths(".", true).read("10"), Ok(2_540));
        assert_eq!(lengths(".", true).read("254 mm"), Ok(2_540));
        assert_eq!(lengths(",", true).read("25,4 cm"), Ok(2_540));
        assert_eq!(lengths(",", false).read("9,5 IN"), Ok(2_413));
        assert_eq!(lengths(".", false).read("8\""), Ok(2_032));
        let unknown = lengths(".", false).read("3 ft");
        assert_eq!(unknown, Err(NumberProblem::UnknownUnit));
    }

    #[test]
    fn sides_carry_their_unit_once() {
        assert_eq!(
            lengths(",", false).sides(2_540, 2_032),
            "254 × 203,2\u{a0}mm"
        );
        assert_eq!(lengths(".", true).sides(2_540, 2_032), "10 × 8\u{a0}in");
    }

    proptest! {
        #[test]
        fn a_field_gives_its_length_back(tenths in 0_i64..100_000, is_inch: bool) {
            let lengths = lengths(",", is_inch);
            prop_assert_eq!(lengths.read(&lengths.value(tenths)), Ok(tenths));
        }
    }
}
