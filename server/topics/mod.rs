//! Topics: what somebody must know before they touch chemistry, as texts in versions.
//!
//! A change of a text is a new version by an entry; old ones stay to be read, because
//! inductions name them. What makes a topic required is asked of products in one place,
//! `traits_of`.

pub mod actions;
pub mod api;
mod entries;
mod form;
pub mod input;
mod keep_pages;
mod pages;
pub mod starter;
mod store;
mod traits;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{Required, TopicSet};
pub use pages::pages;
pub use store::{Topic, TopicVersion, topics, versions};
pub use traits::{Trait, UNKNOWN, traits_of};
