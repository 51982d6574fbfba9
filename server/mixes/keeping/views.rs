//! Keeping, joining, moving up and discarding, as the templates want it.

use askama::Template;
use serde::Deserialize;

use crate::trays::views::TrayEvent;
use crate::web::dates::Moment;
use crate::web::drawing::{Rule, VerdictWord};
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A mix, where it stands and how good it is.
#[derive(Debug, Clone)]
pub struct Bath {
    /// The mix's id.
    pub mix_id: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// The tray or bottle it stands in.
    pub vessel: String,
    /// The page of that, below the room.
    pub path: String,
    /// `1 L of 3 L, 20 mm deep, open to the air`.
    pub stands: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// The verdict.
    pub word: VerdictWord,
    /// The reason in numbers.
    pub reason: String,
}

/// What may not be chosen, and why.
#[derive(Debug, Clone)]
pub struct Barred {
    /// Its name.
    pub name: String,
    /// The reason, a sentence.
    pub why: String,
}

/// A move as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct KeepForm {
    /// Idempotency key.
    pub key: String,
    /// `cover`, `uncover`, `bottle` or `return`.
    pub to: String,
    /// The bottle or tray it goes into.
    pub vessel: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time of that day.
    pub time: String,
}

/// How a mix may be kept.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/keep.html")]
pub struct KeepPage {
    /// The frame.
    pub shell: Shell,
    /// The mix as it is.
    pub bath: Bath,
    /// What comes of covering it, or of taking the cover off; nothing in a bottle.
    pub cover: Option<String>,
    /// Does it stand under a cover?
    pub is_covered: bool,
    /// Does it stand in a bottle?
    pub is_bottled: bool,
    /// The bottles or trays it may go into, each with what comes of it.
    pub vessels: Vec<Choice>,
    /// Those it may not go into.
    pub barred: Vec<Barred>,
    /// As typed.
    pub form: KeepForm,
    /// The days of something earlier.
    pub days: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
    /// The product's own cautions.
    pub cautions: Vec<String>,
}

/// Pouring together as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PourForm {
    /// Idempotency key.
    pub key: String,
    /// The mix it is poured into.
    pub into: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time of that day.
    pub time: String,
}

/// Into which mix another may be poured.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/pour.html")]
pub struct PourPage {
    /// The frame.
    pub shell: Shell,
    /// The mix that is poured.
    pub bath: Bath,
    /// The mixes it may join, each with what comes of it.
    pub choices: Vec<Choice>,
    /// Those it may not join.
    pub barred: Vec<Barred>,
    /// As typed.
    pub form: PourForm,
    /// The days of something earlier.
    pub days: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
    /// The product's own cautions.
    pub cautions: Vec<String>,
}

/// A container to choose: one the book knows, or another by its name.
#[derive(Debug, Clone)]
pub struct Containers {
    /// Those that no rule keeps the bath out of, and another one; none where the
    /// book knows none of them.
    pub choices: Vec<Choice>,
    /// Those it must not go into.
    pub barred: Vec<Barred>,
}

/// A shift as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ShiftForm {
    /// Idempotency key.
    pub key: String,
    /// A container that the book knows.
    pub collected: String,
    /// Another container's name.
    pub container: String,
    /// The volume poured into it, in litres.
    pub volume: String,
    /// `yes` once it was confirmed.
    pub confirmed: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time of that day.
    pub time: String,
}

/// The second of two fixing baths takes the place of the first.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/shift.html")]
pub struct ShiftPage {
    /// The frame.
    pub shell: Shell,
    /// The first bath.
    pub bath: Bath,
    /// What will happen; nothing where it may not.
    pub plan: Option<ShiftPlan>,
    /// Why it may not.
    pub why_not: String,
    /// Where the first bath may go.
    pub containers: Containers,
    /// As typed.
    pub form: ShiftForm,
    /// The days of something earlier.
    pub days: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
    /// The product's own cautions, and what must not share a container.
    pub cautions: Vec<String>,
}

/// What a shift comes to.
#[derive(Debug, Clone)]
pub struct ShiftPlan {
    /// The second bath.
    pub second: String,
    /// The tray it stands in.
    pub from: String,
    /// `1 L of 3 L, 20 mm deep, open to the air`, in its new place.
    pub stands: String,
    /// Its life and its verdict there.
    pub outlook: String,
    /// Which move of how many this is.
    pub number: String,
}

/// A discard as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct DiscardForm {
    /// Idempotency key.
    pub key: String,
    /// A container that the book knows.
    pub collected: String,
    /// Another container's name.
    pub container: String,
    /// The volume poured into it, in litres.
    pub volume: String,
    /// Why: a word of `mixes::Why`.
    pub why: String,
    /// `yes` once it was confirmed.
    pub confirmed: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time of that day.
    pub time: String,
}

/// The form to discard a mix.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/discard.html")]
pub struct DiscardPage {
    /// The frame.
    pub shell: Shell,
    /// The mix.
    pub bath: Bath,
    /// Is it liquid that this reader leaves alone?
    pub is_left_alone: bool,
    /// Where it may go.
    pub containers: Containers,
    /// As typed; the volume filled in with all that stands there.
    pub form: DiscardForm,
    /// The days of something earlier.
    pub days: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
    /// The product's own cautions, and what must not share a container.
    pub cautions: Vec<String>,
}

/// Why a discard was a mistake, as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct UndoDiscardForm {
    /// Idempotency key.
    pub key: String,
    /// How the mistake came about.
    pub reason: String,
}

/// The form to take a discard back.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/undo_discard.html")]
pub struct UndoDiscardPage {
    /// The frame.
    pub shell: Shell,
    /// The mix's id.
    pub mix_id: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// What will happen; nothing where it may not.
    pub plan: Option<UndoPlan>,
    /// Why it may not.
    pub why_not: String,
    /// As typed.
    pub form: UndoDiscardForm,
    /// What to mend.
    pub problems: Problems,
}

/// What taking a discard back comes to.
#[derive(Debug, Clone)]
pub struct UndoPlan {
    /// The tray or bottle it stood in.
    pub vessel: String,
    /// The page of that, below the room.
    pub path: String,
    /// The container it was said to be in.
    pub container: String,
    /// When.
    pub discarded: Moment,
    /// Its life and its verdict as if it had never been discarded.
    pub outlook: String,
}

/// A bottle and what stands in it.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/bottle.html")]
pub struct BottlePage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What it holds up to the stopper.
    pub holds: String,
    /// The verdict.
    pub word: VerdictWord,
    /// The reason in numbers.
    pub reason: String,
    /// When the verdict changes if nobody uses it.
    pub change: Option<String>,
    /// What stands in it.
    pub mix: Option<MixInBottle>,
    /// Does it wait for a rinse?
    pub waits_for_rinse: bool,
    /// A mix whose discard from here may be taken back.
    pub undoable: Option<(String, String)>,
    /// May this reader pour it back into a tray?
    pub may_keep: bool,
    /// May this reader pour it into another mix?
    pub may_pour: bool,
    /// May this reader discard it, and record a rinse?
    pub may_discard: bool,
    /// May this reader mix into it?
    pub may_mix: bool,
    /// May this reader enter what stood in it already?
    pub may_open: bool,
    /// May this reader report liquid in it that nobody can name?
    pub may_report: bool,
    /// What happened to it, newest first.
    pub events: Vec<TrayEvent>,
    /// Leads to older events: a query such as `?before=412`.
    pub older: Option<String>,
}

/// The mix in a bottle.
#[derive(Debug, Clone)]
pub struct MixInBottle {
    /// Its id.
    pub id: String,
    /// The product's id; none for liquid that nobody can name.
    pub product_id: Option<String>,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// `1 L of 1 L, a full bottle`.
    pub stands: String,
    /// When it was mixed.
    pub mixed: Moment,
    /// What is left of its capacity.
    pub capacity: Rule,
    /// What is left of its life.
    pub life: Rule,
    /// The product's own cautions.
    pub cautions: Vec<String>,
}
