//! Mixing into a tray.

use askama::Template;
use askama::filters::HtmlSafe;
use serde::Deserialize;

use crate::trays::views::Step;
use crate::web::drawing::Rule;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// The mix as it was typed; `step` tells reckoning from mixing.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct MixForm {
    /// Idempotency key.
    pub key: String,
    /// The dilution's id; it names the product too.
    pub dilution: String,
    /// The volume to mix, in litres.
    pub volume: String,
    /// `reckon` shows the arithmetic, `mix` writes the entry.
    pub step: String,
}

/// The form to mix into a tray, with the arithmetic once product and volume are known.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/mix.html")]
pub struct MixPage {
    /// The frame.
    pub shell: Shell,
    /// The tray's id.
    pub tray_id: String,
    /// Its name.
    pub tray: String,
    /// As typed, or a usual fill.
    pub form: MixForm,
    /// What to mend.
    pub problems: Problems,
    /// Each dilution this reader may mix: `Plain print developer 1+9`.
    pub dilutions: Vec<Choice>,
    /// Says how much covers the least depth and how much the tray holds.
    pub volume_hint: String,
    /// The arithmetic; none before it was asked for, or while the form is wrong.
    pub worksheet: Option<Worksheet>,
    /// Cautions of the product, one sentence each.
    pub cautions: Vec<String>,
}

/// What to pour, and what the mix will be.
#[derive(Debug, Clone)]
pub struct Worksheet {
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `100 ml`.
    pub concentrate: String,
    /// `900 ml`.
    pub water: String,
    /// `1 L`.
    pub total: String,
    /// The two in a cylinder.
    pub cylinder: Cylinder,
    /// The sum: dilution, parts, concentrate, water, depth in the tray.
    pub steps: Vec<Step>,
    /// How many sheets it takes, one line a paper class: `100 sheets of 8×10 in, RC`.
    pub takes: Vec<String>,
    /// `In the open tray 8 h: good until 21:10 Thu.`
    pub keeps: String,
    /// Where the figures come from: `Common practice, no source; a steward may change it.`
    pub basis: String,
}

/// A measuring cylinder with concentrate below and water above.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "mixes/cylinder.html")]
pub struct Cylinder {
    /// The share of concentrate in thousandths.
    pub concentrate_thousandths: i64,
}

impl HtmlSafe for Cylinder {}

const CYLINDER_TOP: i64 = 60;
const CYLINDER_BOTTOM: i64 = 600;

impl Cylinder {
    /// The cylinder for 1+N, N in thousandths.
    #[must_use]
    pub fn of_dilution(parts_thousandths: i64) -> Self {
        let whole = 1_000 + parts_thousandths.max(0);
        Self {
            concentrate_thousandths: (1_000_000 + whole / 2) / whole,
        }
    }

    /// Where concentrate and water meet.
    #[must_use]
    pub fn meets_at(&self) -> i64 {
        let height = CYLINDER_BOTTOM - CYLINDER_TOP;
        CYLINDER_BOTTOM - height * self.concentrate_thousandths.clamp(0, 1_000) / 1_000
    }

    /// Tenths of the volume.
    #[must_use]
    pub fn graduations(&self) -> Vec<i64> {
        let tenth = (CYLINDER_BOTTOM - CYLINDER_TOP) / 10;
        (0..10).map(|line| CYLINDER_TOP + line * tenth).collect()
    }
}

/// After mixing.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/mixed.html")]
pub struct MixedPage {
    /// The frame.
    pub shell: Shell,
    /// The mix's id.
    pub mix_id: String,
    /// The entry's number.
    pub seq: i64,
    /// The tray's id.
    pub tray_id: String,
    /// Its name.
    pub tray: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `1 L`.
    pub total: String,
    /// What is left of its life: all of it.
    pub life: Rule,
    /// Was it drawn from no lot of the stock?
    pub is_not_from_stock: bool,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cylinder_shows_the_share_of_concentrate() {
        // 1+9 is one part in ten: plain arithmetic.
        let cylinder = Cylinder::of_dilution(9_000);
        assert_eq!(cylinder.concentrate_thousandths, 100);
        assert_eq!(cylinder.meets_at(), CYLINDER_BOTTOM - 54);
        assert_eq!(Cylinder::of_dilution(0).meets_at(), CYLINDER_TOP);
    }
}
