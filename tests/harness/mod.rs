//! What the tests stand on: one database server for the process, a room of
//! one's own with a fixed cast, a browser that submits the form it was served.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod browser;
mod page;
mod server;
mod stage;
mod visitor;

pub(crate) use browser::{Answer, Browser};
pub(crate) use page::{Form, Page};
pub(crate) use server::{Installation, alone, bare, on_runtime, shared};
pub(crate) use stage::{
    Bench, Cast, PASSWORD, START, Stage, new_key, scenario, scenario_alone, tray_on,
};
pub(crate) use visitor::Visitor;
