//! Mixes: working solutions, from the moment they are mixed until they are
//! discarded.
//!
//! A mix entry freezes every figure that later folds need: capacity per paper
//! class, life, dilution, product version. What a product is changed to later
//! touches no mix that stands.

pub mod actions;
pub mod api;
mod entries;
mod fold;
pub mod input;
mod judging;
/// Keeping, joining, moving up and discarding: pages and API.
pub mod keeping;
mod mix;
/// Mixing, topping up, and entering what stood there already.
pub mod mixing;
mod pages;
pub mod readings;
pub mod stock;
mod store;

pub use api::api;
pub use entries::{
    Contaminant, DiscardUndone, Discarded, Extended, Figures, FrozenCapacity, Mixed, Outcome,
    PouredTogether, RULES, Reading, ReadingKind, ReadingUndone, Rinsed, Shifted, SilverLimits,
    Stand, StopFigures, Storage, Stored, ToppedUp, UnknownFound, Why,
};
pub use judging::{Findings, judge, silver_mg_per_litre, state};
pub use mix::Mix;
pub(crate) use mixing::step;
pub(crate) use pages::cautions;
pub use pages::pages;
pub use store::{all_capacities, capacities, in_vessel, mix, mixes, standing, waits_for_rinse};
