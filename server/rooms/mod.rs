//! Rooms and their settings.

mod store;

pub use store::{Settings, settings};
