//! Papers: the sheet sizes and paper classes a room prints on.
//!
//! Both are set, whole, by entries; a retired one stays for what was printed on
//! it and is offered no more.

pub mod actions;
pub mod api;
mod entries;
mod form;
pub mod input;
mod pages;
pub mod starter;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{PaperClassSet, SheetSizeSet, SilverFigures};
pub use pages::pages;
pub use store::{PaperClass, SheetSize, paper_classes, sheet_sizes};
