//! Every visible sentence that does not stand in a template.
//!
//! Functions with typed arguments: the rules and the actions know meanings, only
//! this module knows words. A sentence says what to do where there is something
//! to do.

pub mod air;
pub mod api;
pub mod arrivals;
pub mod bench;
pub mod checks;
pub mod desk;
pub mod drawing;
pub mod entries;
pub mod handover;
pub mod incidents;
pub mod inductions;
pub mod ingredients;
pub mod keeping;
pub mod lamps;
pub mod lines;
pub mod mix_entries;
pub mod mix_problems;
pub mod mixing;
pub mod notices;
pub mod outages;
pub mod papers;
pub mod people;
pub mod problems;
pub mod products;
pub mod readings;
pub mod scans;
pub mod screens;
pub mod sheets;
pub mod testing;
pub mod topics;
pub mod trays;
pub mod verdicts;
pub mod workshops;

pub use problems::{clash, danger, failure, problem};
