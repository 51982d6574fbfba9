//! A tray seen from above, and the two rules beside it.
//!
//! The walls of a tray slope outwards, so from above a deeper liquid reaches further:
//! the drawing shows the walls as a map shows a basin, one contour line every 10 mm, and
//! the liquid fills the contours up to its real depth. Long sides, short sides and depths
//! keep their proportions; the slope of the wall is drawn wider than it is.
//!
//! Verdicts differ by word, by fill pattern and by position on the rail, never by hue. A
//! mix that is used up is drawn full and struck through.
//!
//! Coordinates are whole tenths of a drawing unit; all colours come from the style sheet.

use askama::Template;
use askama::filters::HtmlSafe;

/// The verdict as it is drawn; the words stand in `templates/drawing/word.html`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// No mix is recorded here.
    NothingRecorded,
    /// Liquid of unknown origin or age.
    Unknown,
    /// Used up, failed or contaminated.
    Replace,
    /// May still be good: test before printing.
    TestFirst,
    /// Good.
    Ready,
}

impl Standing {
    /// The name in classes and pattern ids.
    #[must_use]
    pub fn class(self) -> &'static str {
        match self {
            Self::NothingRecorded => "nothing",
            Self::Unknown => "unknown",
            Self::Replace => "replace",
            Self::TestFirst => "test",
            Self::Ready => "ready",
        }
    }

    /// Which of the three stops of the rail is taken; none before a mix is known.
    #[must_use]
    pub fn stop(self) -> Option<u8> {
        match self {
            Self::NothingRecorded | Self::Unknown => None,
            Self::Ready => Some(0),
            Self::TestFirst => Some(1),
            Self::Replace => Some(2),
        }
    }
}

/// The verdict word, set large, over its rail.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "drawing/word.html")]
pub struct VerdictWord {
    /// The verdict.
    pub standing: Standing,
}

impl HtmlSafe for VerdictWord {}

impl VerdictWord {
    /// Is it liquid nobody knows?
    #[must_use]
    pub fn is_unknown(&self) -> bool {
        self.standing == Standing::Unknown
    }

    /// Must it be replaced?
    #[must_use]
    pub fn is_replace(&self) -> bool {
        self.standing == Standing::Replace
    }

    /// The word alone.
    #[must_use]
    pub fn words(&self) -> VerdictWords {
        VerdictWords {
            standing: self.standing,
        }
    }
}

/// The verdict in words and nothing else, for running text.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "drawing/verdict.html")]
pub struct VerdictWords {
    /// The verdict.
    pub standing: Standing,
}

impl HtmlSafe for VerdictWords {}

/// Inside measurements of a tray, in tenths of a millimetre.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TrayShape {
    /// The long inside edge.
    pub long_tenths_mm: i64,
    /// The short inside edge.
    pub short_tenths_mm: i64,
    /// From floor to rim.
    pub depth_tenths_mm: i64,
    /// The least depth a print needs.
    pub least_depth_tenths_mm: i64,
}

impl TrayShape {
    /// How deep that volume (in microlitres) stands, in tenths of a millimetre, rounded
    /// half up. One microlitre is one cubic millimetre.
    #[must_use]
    pub fn depth_of(&self, microlitres: i64) -> i64 {
        let area = i128::from(self.long_tenths_mm.max(1)) * i128::from(self.short_tenths_mm.max(1));
        let depth = (i128::from(microlitres.max(0)) * 2_000 + area) / (2 * area);
        i64::try_from(depth).unwrap_or(i64::MAX)
    }
}

/// A rectangle with round corners, in drawing units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Plate {
    /// From the left.
    pub x: i64,
    /// From the top.
    pub y: i64,
    /// Width.
    pub width: i64,
    /// Height.
    pub height: i64,
    /// Radius of the corners.
    pub round: i64,
}

const WIDTH: i64 = 3_600;
const MARGIN: i64 = 60;
const RIM: i64 = 130;
const WALL: i64 = 500;
const CONTOUR_EVERY_TENTHS_MM: i64 = 100;
const MOST_CONTOURS: i64 = 14;

/// A tray seen from above with what stands in it.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "drawing/tray.html")]
pub struct TrayDrawing {
    /// The verdict, for pattern and strike.
    pub standing: Standing,
    /// The volume in words, printed on the liquid; empty prints nothing.
    pub litres: String,
    /// Height of the drawing; its width is 3600.
    pub height: i64,
    /// Outer edge of the rim.
    pub rim: Plate,
    /// Where rim and wall meet.
    pub edge: Plate,
    /// The floor.
    pub floor: Plate,
    /// Every 10 mm of depth.
    pub contours: Vec<Plate>,
    /// The least depth.
    pub least: Plate,
    /// The surface of the liquid.
    pub liquid: Option<Plate>,
    /// The plate under the litres.
    pub plate: Plate,
}

impl HtmlSafe for TrayDrawing {}

impl TrayDrawing {
    /// Draws a tray with that volume in it (microlitres), `litres` being its words.
    #[must_use]
    pub fn new(
        shape: TrayShape,
        standing: Standing,
        microlitres: Option<i64>,
        litres: impl Into<String>,
    ) -> Self {
        let litres = litres.into();
        let height = height_of(shape);
        let depth = shape.depth_tenths_mm.max(1);
        let level = match standing {
            Standing::Replace => Some(depth),
            Standing::NothingRecorded => None,
            _ => Some(microlitres.map_or(depth / 3, |volume| shape.depth_of(volume))),
        };
        let contour = |tenths_mm: i64| {
            let up = tenths_mm.clamp(0, depth) * WALL / depth;
            inset(height, MARGIN + RIM + WALL - up)
        };
        Self {
            standing,
            height,
            rim: inset(height, MARGIN),
            edge: inset(height, MARGIN + RIM),
            floor: contour(0),
            contours: (1..=MOST_CONTOURS)
                .map(|line| line * CONTOUR_EVERY_TENTHS_MM)
                .filter(|tenths_mm| *tenths_mm < depth)
                .map(contour)
                .collect(),
            least: contour(shape.least_depth_tenths_mm),
            liquid: level.map(contour),
            plate: plate_for(&litres, height),
            litres,
        }
    }

    /// Half the width: where the litres stand.
    #[must_use]
    pub fn middle(&self) -> i64 {
        WIDTH / 2
    }

    /// The line on which the litres stand.
    #[must_use]
    pub fn baseline(&self) -> i64 {
        self.height / 2 + 155
    }

    /// Ribs of the floor, from left to right.
    #[must_use]
    pub fn ribs(&self) -> Vec<i64> {
        let between = self.floor.width / 7;
        (1..7).map(|rib| self.floor.x + rib * between).collect()
    }
}

impl Plate {
    /// The right edge.
    #[must_use]
    pub fn right(&self) -> i64 {
        self.x + self.width
    }

    /// The lower edge.
    #[must_use]
    pub fn bottom(&self) -> i64 {
        self.y + self.height
    }
}

fn height_of(shape: TrayShape) -> i64 {
    let long = shape.long_tenths_mm.max(shape.short_tenths_mm).max(1);
    let short = shape.long_tenths_mm.min(shape.short_tenths_mm).max(1);
    let frame = 2 * MARGIN;
    (frame + (WIDTH - frame) * short / long).clamp(2_300, WIDTH)
}

fn inset(height: i64, by: i64) -> Plate {
    Plate {
        x: by,
        y: by,
        width: WIDTH - 2 * by,
        height: height - 2 * by,
        round: (300 - by / 4).max(90),
    }
}

fn plate_for(words: &str, height: i64) -> Plate {
    let letters = i64::try_from(words.chars().count()).unwrap_or(0);
    let width = 240 + letters * 235;
    Plate {
        x: (WIDTH - width) / 2,
        y: height / 2 - 270,
        width,
        height: 540,
        round: 40,
    }
}

/// Which quantity a rule measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measured {
    /// Of the sheets it can take.
    Capacity,
    /// Of the hours it keeps.
    Life,
}

/// A rule: what is gone on the left, what is left on the right, and the numbers.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "drawing/rule.html")]
pub struct Rule {
    /// Of which quantity.
    pub measured: Measured,
    /// Whole per cent left.
    pub left_percent: u8,
    /// From which share used on the verdict is *Test first*, in whole per cent.
    pub test_from_percent: Option<u8>,
    /// What is left in words: `about 64 sheets of 8×10 in RC`, `good until 21:10 Thu`.
    pub words: String,
    /// What stands at the left end: `fresh`, `mixed 13:10`.
    pub from: String,
    /// What stands at the right end: `used up`, `21:10 Thu`.
    pub until: String,
    /// Into how many parts the rule is ruled: ten of capacity, the hours of a life.
    pub parts: u8,
}

impl HtmlSafe for Rule {}

impl Rule {
    /// Is it the rule of capacity?
    #[must_use]
    pub fn is_capacity(&self) -> bool {
        self.measured == Measured::Capacity
    }

    /// Whole per cent gone.
    #[must_use]
    pub fn gone_percent(&self) -> u8 {
        100 - self.left_percent.min(100)
    }

    /// The lines between the parts, in tenths of a per cent from the left.
    #[must_use]
    pub fn lines(&self) -> Vec<Tenths> {
        let parts = u16::from(self.parts.clamp(1, 48));
        (0..=parts)
            .map(|line| Tenths(line * 1_000 / parts))
            .collect()
    }
}

/// A number of tenths, printed as a decimal for drawing attributes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tenths(pub u16);

impl std::fmt::Display for Tenths {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(formatter, "{}.{}", self.0 / 10, self.0 % 10)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SHAPE: TrayShape = TrayShape {
        long_tenths_mm: 3_000,
        short_tenths_mm: 2_500,
        depth_tenths_mm: 650,
        least_depth_tenths_mm: 100,
    };

    #[test]
    fn depth_is_volume_over_area() {
        // Plain arithmetic: 1,000,000 mm³ / (300 mm × 250 mm) = 13.33 mm.
        assert_eq!(SHAPE.depth_of(1_000_000), 133);
        assert_eq!(SHAPE.depth_of(0), 0);
    }

    #[test]
    fn more_liquid_reaches_further_and_never_over_the_rim() {
        let width = |microlitres| {
            TrayDrawing::new(SHAPE, Standing::Ready, Some(microlitres), "")
                .liquid
                .map(|liquid| liquid.width)
        };
        assert!(width(500_000) < width(1_000_000));
        assert!(width(1_000_000) < width(4_000_000));
        assert_eq!(width(9_000_000), width(90_000_000));
        let drawing = TrayDrawing::new(SHAPE, Standing::Ready, Some(90_000_000), "");
        assert_eq!(
            drawing.liquid.map(|liquid| liquid.width),
            Some(drawing.edge.width)
        );
    }

    #[test]
    fn verdicts_differ_without_colour() {
        let drawn =
            |standing| TrayDrawing::new(SHAPE, standing, Some(1_000_000), "1 L").to_string();
        let all = [
            Standing::NothingRecorded,
            Standing::Unknown,
            Standing::Replace,
            Standing::TestFirst,
            Standing::Ready,
        ]
        .map(drawn);
        for (index, one) in all.iter().enumerate() {
            assert!(all[index + 1..].iter().all(|other| other != one));
        }
        assert!(all[2].contains("strike") && !all[3].contains("strike"));
        assert!(!all[0].contains("class=\"surface"));
    }

    #[test]
    fn a_rule_is_ruled_from_end_to_end() {
        let rule = Rule {
            measured: Measured::Life,
            left_percent: 40,
            test_from_percent: None,
            words: String::new(),
            from: String::new(),
            until: String::new(),
            parts: 8,
        };
        let lines: Vec<String> = rule.lines().iter().map(ToString::to_string).collect();
        assert_eq!(lines.first().map(String::as_str), Some("0.0"));
        assert_eq!(lines.get(1).map(String::as_str), Some("12.5"));
        assert_eq!(lines.last().map(String::as_str), Some("100.0"));
        assert_eq!(rule.gone_percent(), 60);
    }
}
