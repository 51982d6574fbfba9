//! Mixes: working solutions, from the moment they are mixed until they are
//! discarded.
//!
//! A mix entry freezes every figure that later folds need: capacity per paper
//! class, life, dilution, product version. What a product is changed to later
//! touches no mix that stands.

pub mod actions;
pub mod api;
mod entries;
pub mod input;
mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;
mod worksheet;

pub use api::api;
pub use entries::{Discarded, FrozenCapacity, Mixed, RULES};
pub(crate) use pages::cautions;
pub use pages::pages;
pub use store::{Mix, WornAt, capacities, mix, standing, wear_history};
pub(crate) use worksheet::step;
