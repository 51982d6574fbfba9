//! The bench on paper, for when power or network are out: what stands in each tray,
//! cautions, Emergency, and blank rows to note by hand.

mod pages;
/// The sheet, as its template wants it.
pub mod views;

pub use pages::pages;
