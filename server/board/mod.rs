//! The board of a room: every tray's verdict, why, and when it changes.
//!
//! The page is the same for everyone of a role and a display. It is rendered
//! once after each change and kept until the next entry or the next moment at
//! which something on it changes by itself.

/// Its routes of the API.
pub mod api;
mod cache;
mod page;
mod state;
/// The page, as its template wants it.
pub mod views;

pub use api::api;
pub use cache::{Boards, Kept, Variant, look, watch};
pub use page::{Figures, figures, life_ends, life_rule, life_used_ppb, pages, ppb, rules, shape};
pub use state::{BenchNow, BottleNow, LineNow, TrayNow, bench_now, lines_now, tray_now};
