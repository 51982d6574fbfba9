//! Ingredients: what section 3 of the supplier's data sheet lists of a product. The list
//! is set as a whole, and each time makes a new version of the product.

/// What a steward does with them.
pub mod actions;
pub mod api;
mod form;
/// What may be said of them.
pub mod input;
mod pages;
mod store;
/// Their pages, as templates want them.
pub mod views;

pub(super) use pages::{ingredient_rows, pages};
pub(super) use store::{by_product, replace};
