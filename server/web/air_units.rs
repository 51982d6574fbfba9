//! Floors, heights, volumes and flows of air in a room's units: metres and litres a
//! second, or feet and cubic feet a minute. What is kept is hundredths of a square
//! millimetre, tenths of a millimetre, microlitres, and microlitres a second.

use super::numbers::{NumberProblem, Numbers};
use crate::darkroom::quantities::{Area, Flow, Microlitres, QuantityError};
use crate::darkroom::units::{
    AreaUnit, FlowUnit, VolumeUnit, area_in_unit_thousandths, area_of_unit,
    flow_in_unit_thousandths, flow_of_unit, volume_in_unit_thousandths,
};

/// Tenths of a millimetre in a foot: twelve inches of 25.4 mm (international yard and
/// pound agreement of 1959).
const FOOT: i64 = 3_048;

/// A room's way of writing what is said of its air.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct AirUnits {
    numbers: Numbers,
    is_inch: bool,
}

/// The number that was typed, in thousandths, and the unit behind it.
fn parts(numbers: Numbers, typed: &str) -> Result<(i64, String), NumberProblem> {
    let typed = typed.trim().to_lowercase();
    let unit_at = typed.find(char::is_alphabetic).unwrap_or(typed.len());
    let (number, unit) = typed.split_at(unit_at);
    let unit = unit.replace('\u{b2}', "2").replace('\u{b3}', "3");
    Ok((numbers.read_thousandths(number)?, unit))
}

fn too_large(_: QuantityError) -> NumberProblem {
    NumberProblem::TooLarge
}

impl AirUnits {
    /// The way of a room that writes feet, or metres.
    #[must_use]
    pub fn new(numbers: Numbers, is_inch: bool) -> Self {
        Self { numbers, is_inch }
    }

    /// What a bare area is.
    #[must_use]
    pub fn area_unit(self) -> &'static str {
        if self.is_inch { "ft²" } else { "m²" }
    }

    /// What a bare height is.
    #[must_use]
    pub fn height_unit(self) -> &'static str {
        if self.is_inch { "ft" } else { "m" }
    }

    /// What a bare flow is.
    #[must_use]
    pub fn flow_unit(self) -> &'static str {
        if self.is_inch { "cfm" } else { "L/s" }
    }

    /// A floor in hundredths of a square millimetre.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_area(self, typed: &str) -> Result<i64, NumberProblem> {
        let (thousandths, unit) = parts(self.numbers, typed)?;
        let unit = match (unit.as_str(), self.is_inch) {
            ("m2" | "sq m", _) | ("", false) => AreaUnit::SquareMetre,
            ("ft2" | "sq ft", _) | ("", true) => AreaUnit::SquareFoot,
            _ => return Err(NumberProblem::UnknownUnit),
        };
        area_of_unit(thousandths, unit)
            .map(Area::get)
            .map_err(too_large)
    }

    /// A height in tenths of a millimetre.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_height(self, typed: &str) -> Result<i64, NumberProblem> {
        let (thousandths, unit) = parts(self.numbers, typed)?;
        let tenths_mm = match (unit.as_str(), self.is_inch) {
            ("m", _) | ("", false) => 10_000,
            ("cm", _) => 100,
            ("mm", _) => 10,
            ("ft", _) | ("", true) => FOOT,
            _ => return Err(NumberProblem::UnknownUnit),
        };
        let scaled = thousandths.checked_mul(tenths_mm);
        let scaled = scaled.ok_or(NumberProblem::TooLarge)?;
        Ok(scaled.saturating_add(500) / 1_000)
    }

    /// A flow in microlitres a second.
    ///
    /// # Errors
    /// The [`NumberProblem`].
    pub fn read_flow(self, typed: &str) -> Result<i64, NumberProblem> {
        let (thousandths, unit) = parts(self.numbers, typed)?;
        let unit = match (unit.as_str(), self.is_inch) {
            ("l/s", _) | ("", false) => FlowUnit::LitrePerSecond,
            ("m3/h", _) => FlowUnit::CubicMetrePerHour,
            ("cfm" | "ft3/min", _) | ("", true) => FlowUnit::CubicFootPerMinute,
            _ => return Err(NumberProblem::UnknownUnit),
        };
        flow_of_unit(thousandths, unit)
            .map(Flow::get)
            .map_err(too_large)
    }

    fn area_thousandths(self, hundredths_mm2: i64) -> i64 {
        let unit = match self.is_inch {
            true => AreaUnit::SquareFoot,
            false => AreaUnit::SquareMetre,
        };
        let area = Area::new(hundredths_mm2);
        area.and_then(|area| area_in_unit_thousandths(area, unit))
            .unwrap_or_default()
    }

    fn height_thousandths(self, tenths_mm: i64) -> i64 {
        match self.is_inch {
            true => (tenths_mm * 1_000 + FOOT / 2) / FOOT,
            false => (tenths_mm + 5) / 10,
        }
    }

    fn flow_thousandths(self, ul_per_s: i64) -> i64 {
        let unit = match self.is_inch {
            true => FlowUnit::CubicFootPerMinute,
            false => FlowUnit::LitrePerSecond,
        };
        let flow = Flow::new(ul_per_s);
        flow.and_then(|flow| flow_in_unit_thousandths(flow, unit))
            .unwrap_or_default()
    }

    /// A floor for its field, so that it is read back as the same.
    #[must_use]
    pub fn area_value(self, hundredths_mm2: i64) -> String {
        self.numbers
            .decimal(self.area_thousandths(hundredths_mm2), 3)
    }

    /// A height for its field.
    #[must_use]
    pub fn height_value(self, tenths_mm: i64) -> String {
        self.numbers.decimal(self.height_thousandths(tenths_mm), 3)
    }

    /// A flow for its field.
    #[must_use]
    pub fn flow_value(self, ul_per_s: i64) -> String {
        self.numbers.decimal(self.flow_thousandths(ul_per_s), 3)
    }

    /// `20 m²`, to a hundredth.
    #[must_use]
    pub fn area(self, hundredths_mm2: i64) -> String {
        let area = self.area_thousandths(hundredths_mm2);
        let area = self.numbers.rounded(area, 3, 2);
        format!("{area}\u{a0}{}", self.area_unit())
    }

    /// `2.6 m`, to a hundredth.
    #[must_use]
    pub fn height(self, tenths_mm: i64) -> String {
        let height = self.height_thousandths(tenths_mm);
        let height = self.numbers.rounded(height, 3, 2);
        format!("{height}\u{a0}{}", self.height_unit())
    }

    /// `101.6 L/s`, to a tenth.
    #[must_use]
    pub fn flow(self, ul_per_s: i64) -> String {
        let flow = self.flow_thousandths(ul_per_s);
        let flow = self.numbers.rounded(flow, 3, 1);
        format!("{flow}\u{a0}{}", self.flow_unit())
    }

    /// `52 m³`, to a tenth.
    #[must_use]
    pub fn volume(self, microlitres: i64) -> String {
        let (unit, name) = match self.is_inch {
            true => (VolumeUnit::CubicFoot, "ft³"),
            false => (VolumeUnit::CubicMetre, "m³"),
        };
        let volume = Microlitres::new(microlitres);
        let volume = volume.and_then(|volume| volume_in_unit_thousandths(volume, unit));
        let volume = self.numbers.rounded(volume.unwrap_or_default(), 3, 1);
        format!("{volume}\u{a0}{name}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn units(mark: &str, is_inch: bool) -> AirUnits {
        AirUnits::new(Numbers::with_mark(mark), is_inch)
    }

    #[test]
    fn a_bare_number_is_in_the_rooms_unit_and_a_unit_behind_it_wins() {
        let (metric, inch) = (units(".", false), units(".", true));
        assert_eq!(metric.read_area("20"), Ok(2_000_000_000));
        assert_eq!(inch.read_area("20 m²"), Ok(2_000_000_000));
        // 1 ft² is 0.09290304 m²: from 1 ft = 0.3048 m.
        assert_eq!(inch.read_area("200"), Ok(1_858_060_800));
        assert_eq!(metric.read_area("200 ft2"), Ok(1_858_060_800));
        assert_eq!(metric.read_height("2.6"), Ok(26_000));
        assert_eq!(metric.read_height("260 cm"), Ok(26_000));
        assert_eq!(inch.read_height("9"), Ok(27_432));
        assert_eq!(metric.read_flow("101.6"), Ok(101_600_000));
        assert_eq!(metric.read_flow("360 m³/h"), Ok(100_000_000));
        // 1 cfm is 0.4719474432 L/s.
        assert_eq!(inch.read_flow("200"), Ok(94_389_489));
        assert_eq!(
            metric.read_flow("20 m"),
            Err(NumberProblem::UnknownUnit),
            "a length is no flow"
        );
        assert_eq!(units(",", false).read_height("2,6 m"), Ok(26_000));
    }

    #[test]
    fn figures_carry_their_unit() {
        let metric = units(".", false);
        assert_eq!(metric.area(2_000_000_000), "20\u{a0}m²");
        assert_eq!(metric.height(26_000), "2.6\u{a0}m");
        assert_eq!(metric.flow(101_600_000), "101.6\u{a0}L/s");
        assert_eq!(metric.volume(52_000_000_000), "52\u{a0}m³");
        let inch = units(".", true);
        assert_eq!(inch.area(1_858_060_800), "200\u{a0}ft²");
        assert_eq!(inch.flow(94_389_489), "200\u{a0}cfm");
        // 200 ft² by 9 ft.
        assert_eq!(inch.volume(50_970_323_866), "1800\u{a0}ft³");
    }

    proptest! {
        #[test]
        fn a_field_gives_back_what_was_typed(thousandths in 0_i64..10_000_000, is_inch: bool) {
            let units = units(",", is_inch);
            let typed = Numbers::with_mark(",").decimal(thousandths, 3);
            let area = units.read_area(&typed).unwrap();
            prop_assert_eq!(units.area_value(area), typed.clone());
            let flow = units.read_flow(&typed).unwrap();
            prop_assert_eq!(units.flow_value(flow), typed.clone());
            let height = units.read_height(&typed).unwrap();
            prop_assert_eq!(units.height_value(height), typed);
        }
    }
}
