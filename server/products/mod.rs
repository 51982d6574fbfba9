//! Products: what the room mixes from, with every figure its sheet or the trade
//! gives: dilutions, lives, capacities per paper class, safety data.
//!
//! A product is set, whole, by one entry; each change is a new version. A mix
//! freezes the figures of the version it was mixed from.

pub mod actions;
pub mod api;
pub mod api_dilutions;
mod check;
mod concerns;
mod dilution_form;
mod dilution_pages;
pub mod dilutions;
mod entries;
mod figures;
mod form;
/// What the supplier's data sheet lists of a product.
pub mod ingredients;
pub mod input;
mod pages;
mod spans;
pub mod starter;
mod statements;
mod store;
/// Its pages, as templates want them.
pub mod views;
mod wanted;

pub use api::api;
pub use concerns::Concern;
pub use entries::{
    CapacityFigure, DilutionFigures, Form, Ingredient, Kind, Place, ProductSet, TimePoint,
    WATER_WARMEST_TENTHS_CELSIUS, group_text, parse_group,
};
pub use pages::pages;
pub(crate) use statements::text as statement;
pub use store::{Product, groups, product, products};
