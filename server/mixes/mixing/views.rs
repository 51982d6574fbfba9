//! Mixing, topping up, and entering what stood there already.

use askama::Template;
use askama::filters::HtmlSafe;
use serde::Deserialize;

use crate::trays::views::Step;
use crate::web::drawing::Rule;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// What is wanted beside volume and dilution, and only reckoned.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct Wanted {
    /// The temperature the mix should have, in degrees Celsius.
    pub mix_temperature: String,
    /// The temperature of the concentrate as it stands.
    pub concentrate_temperature: String,
    /// The temperature of the hot tap.
    pub hot_tap: String,
    /// The temperature of the cold tap.
    pub cold_tap: String,
    /// The graduation of the measuring cylinder, in millilitres.
    pub graduation: String,
}

impl Wanted {
    /// Was any of it asked for?
    #[must_use]
    pub fn is_any(&self) -> bool {
        let all = [
            &self.mix_temperature,
            &self.concentrate_temperature,
            &self.hot_tap,
            &self.cold_tap,
            &self.graduation,
        ];
        all.iter().any(|typed| !typed.trim().is_empty())
    }
}

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
    /// The concentrate there is, in millilitres; the volume follows from it.
    pub concentrate: String,
    /// Temperatures and the cylinder.
    #[serde(flatten)]
    pub wanted: Wanted,
    /// A stock solution's id, `recorded` or `none`.
    pub stock: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day of an earlier mix, `2026-11-25`.
    pub day: String,
    /// Its time, `18:05`.
    pub time: String,
    /// `reckon` shows the arithmetic, `mix` writes the entry.
    pub step: String,
}

/// The form to mix into a tray or a bottle, with the arithmetic once product and
/// volume are known.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/mix.html")]
pub struct MixPage {
    /// The frame.
    pub shell: Shell,
    /// The page of the tray or the bottle, below the room.
    pub vessel_path: String,
    /// Its name.
    pub vessel: String,
    /// What stands there already, so that nothing can be mixed: `1 L of Larch developer 1+9`.
    pub full_of: Option<String>,
    /// Where that is topped up, below the room; none for liquid that nobody can name.
    pub top_up_path: Option<String>,
    /// As typed, or a usual fill.
    pub form: MixForm,
    /// What to mend.
    pub problems: Problems,
    /// Each dilution this reader may mix: `Plain print developer 1+9`.
    pub dilutions: Vec<Choice>,
    /// Says how much covers the least depth and how much it holds.
    pub volume_hint: String,
    /// Recorded stock solutions to draw from; none: the question is not asked.
    pub stocks: Vec<Choice>,
    /// The days an earlier mix may name, today first.
    pub days: Vec<Choice>,
    /// The arithmetic; none before it was asked for, or while the form is wrong.
    pub worksheet: Option<Worksheet>,
    /// Cautions of the product, one sentence each.
    pub cautions: Vec<String>,
}

/// One thing to pour.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pour {
    /// `100 ml`.
    pub amount: String,
    /// `concentrate into it`.
    pub what: String,
    /// Is it water?
    pub is_water: bool,
}

/// Lines under a heading of their own.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Aside {
    /// The heading.
    pub heading: String,
    /// The lines.
    pub lines: Vec<String>,
}

/// What to pour, and what the mix will be.
#[derive(Debug, Clone)]
pub struct Worksheet {
    /// `Plain print developer 1+9`.
    pub title: String,
    /// What to pour, in order: water first.
    pub pours: Vec<Pour>,
    /// `1 L`.
    pub total: String,
    /// `in the tray`.
    pub place: String,
    /// The two in a cylinder; none where nothing is diluted.
    pub cylinder: Option<Cylinder>,
    /// The sum: dilution, parts, concentrate, water, depth in the tray.
    pub steps: Vec<Step>,
    /// Temperature, cylinder, stock solution, as far as they were asked for.
    pub asides: Vec<Aside>,
    /// How many sheets it takes, one line a paper class: `100 sheets of 8×10 in, RC`.
    pub takes: Vec<String>,
    /// `In the open tray 8 h: good until 21:10 Thu.`
    pub keeps: String,
    /// Where the figures come from: `Common practice, no source; a steward may change it.`
    pub basis: String,
    /// What is read out while typing: `100 ml concentrate, 900 ml water.`
    pub said: String,
    /// The button: `It stands in the tray`.
    pub verb: String,
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
    /// The page of the tray or the bottle, below the room.
    pub vessel_path: String,
    /// Its name.
    pub vessel: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `1 L`.
    pub total: String,
    /// What is left of its life: all of it.
    pub life: Rule,
    /// What was drawn from stock, or that nothing was.
    pub drawn: String,
}

/// Fresh solution for a mix, as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct TopUpForm {
    /// Idempotency key.
    pub key: String,
    /// The fresh solution, in litres.
    pub volume: String,
    /// Temperatures and the cylinder.
    #[serde(flatten)]
    pub wanted: Wanted,
    /// Parts of water of a weaker dilution to be told about.
    pub weaker: String,
    /// A stock solution's id, `recorded` or `none`.
    pub stock: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day of an earlier top-up, `2026-11-25`.
    pub day: String,
    /// Its time, `18:05`.
    pub time: String,
    /// `reckon` shows the arithmetic, `mix` writes the entry.
    pub step: String,
}

/// The form to top a mix up with fresh solution of its own dilution.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/top_up.html")]
pub struct TopUpPage {
    /// The frame.
    pub shell: Shell,
    /// The mix's id.
    pub mix_id: String,
    /// The page of the tray or the bottle, below the room.
    pub vessel_path: String,
    /// Its name.
    pub vessel: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `1 L, 12 mm deep` or so: what stands there.
    pub there: String,
    /// Why nothing may be added; then there is no form.
    pub barred: Option<String>,
    /// As typed.
    pub form: TopUpForm,
    /// What to mend.
    pub problems: Problems,
    /// Says how much more it holds.
    pub volume_hint: String,
    /// Recorded stock solutions to draw from; none: the question is not asked.
    pub stocks: Vec<Choice>,
    /// The days an earlier top-up may name, today first.
    pub days: Vec<Choice>,
    /// The arithmetic.
    pub worksheet: Option<Worksheet>,
    /// What water would make of what stands there.
    pub weaker: Vec<String>,
    /// Cautions of the product.
    pub cautions: Vec<String>,
}

/// A mix that stood there already, as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct OpenForm {
    /// Idempotency key.
    pub key: String,
    /// The dilution's id; it names the product too.
    pub dilution: String,
    /// About how much stands there, in litres.
    pub volume: String,
    /// The guessed part of its capacity, in per cent.
    pub capacity_used: String,
    /// The guessed part of its life, in per cent.
    pub life_used: String,
}

/// The form to enter a mix that stood there on the first day.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/open.html")]
pub struct OpenPage {
    /// The frame.
    pub shell: Shell,
    /// The page of the tray or the bottle, below the room.
    pub vessel_path: String,
    /// Its name.
    pub vessel: String,
    /// Why nothing may be entered; then there is no form.
    pub barred: Option<String>,
    /// As typed.
    pub form: OpenForm,
    /// What to mend.
    pub problems: Problems,
    /// Each dilution that may stand there.
    pub dilutions: Vec<Choice>,
    /// Says how much it holds.
    pub volume_hint: String,
    /// Cautions.
    pub cautions: Vec<String>,
}

/// Liquid that nobody can name, as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct UnknownForm {
    /// Idempotency key.
    pub key: String,
    /// About how much, in litres.
    pub volume: String,
    /// What the finder saw.
    pub remark: String,
}

/// The form to report liquid that nobody can name.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/unknown.html")]
pub struct UnknownPage {
    /// The frame.
    pub shell: Shell,
    /// The page of the tray or the bottle, below the room.
    pub vessel_path: String,
    /// Its name.
    pub vessel: String,
    /// Why nothing may be reported; then there is no form.
    pub barred: Option<String>,
    /// As typed.
    pub form: UnknownForm,
    /// What to mend.
    pub problems: Problems,
    /// Says how much it holds.
    pub volume_hint: String,
    /// Cautions.
    pub cautions: Vec<String>,
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
