//! What to do first, open to everyone without log-in.

mod pages;
mod statements;
mod store;
/// Its pages.
pub mod views;

pub use pages::{for_everyone, of_room, on_file};
pub(crate) use statements::response;
