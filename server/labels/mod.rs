//! Labels for what stands in a tray or a bottle: what it is, since when and until when,
//! the concentrate's hazards as supplied, and a code that leads to its page; and the sheet
//! at the door, whose code leads to arriving.
//!
//! A label says nothing of the working solution's own class: nothing here computes it.

mod door_pages;
mod label;
mod pages;
mod qr;
mod signal;
/// Label and page, as their templates want them.
pub mod views;

pub use label::{LabelOf, label};
pub use pages::pages;
pub use qr::QrCode;
pub use signal::{Signal, signal};
