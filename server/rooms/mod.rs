//! Rooms: their rules, and how a room comes about, closes and opens again.
//!
//! A room's settings change only by entries that hold the whole set; what they
//! say holds from that entry on.

pub mod actions;
/// Its routes of the API.
pub mod api;
mod entries;
mod form;
pub mod pages;
mod read;
mod settings;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{Demo, RoomClosed, RoomOpened, RoomReopened, RoomSettingsChanged};
pub use read::{is_slug, slug_of};
pub use settings::{DecimalMark, Emergency, HazardRules, Hours, Settings, Units};
pub use store::{Room, all, by_slug, is_closed, settings, settings_and_seq};
