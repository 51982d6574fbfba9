//! The board of a room: every tray's verdict, why, and when it changes.
//!
//! The page is the same for everyone of a role and a display. It is drawn once after each
//! change and kept until the next entry or the next moment at which something on it
//! changes by itself. Those who have it open are sent the parts that changed.

/// Its routes of the API.
pub mod api;
mod cache;
mod draw;
mod events;
mod feed;
mod figures;
mod page;
mod parts;
mod seats;
mod state;
mod stream;
mod stream_pages;
/// The page, as its template wants it.
pub mod views;

use crate::router::Pages;

pub use api::api;
pub use cache::{Boards, look, watch};
pub use draw::{Drawn, Ground, Variant, etag};
pub use figures::{Figures, figures, life_ends, life_rule, life_used_ppb, ppb, rules, shape};
pub use page::is_known;
pub use state::{BenchNow, BottleNow, LineNow, TrayNow, bench_now, lines_now, tray_now};

/// The board's page, and what keeps it up to date.
#[must_use]
pub fn pages() -> Pages {
    page::pages().and(stream_pages::pages())
}
