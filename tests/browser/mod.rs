//! The pages as people meet them: in Chromium, driven from here, served by the
//! program over the database of the tests.
//!
//! `deploy/browser-tools` installs what this needs; without it the tests fail and
//! say so.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod basement;
mod chromium;
mod flash;
mod hands;
mod html;
mod live;
mod looks;
mod pages;
mod picture;
mod plain;
mod print;
mod relay;
mod site;
mod tab;
mod tools;
mod walk;
mod walks;
mod wall;
