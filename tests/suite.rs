//! The one integration binary.

#![expect(
    clippy::disallowed_methods,
    clippy::disallowed_types,
    reason = "tests look behind the program, as the owner of its tables"
)]

mod access;
mod air;
mod api;
mod arrivals;
mod bench_day;
mod bench_sheet;
mod book;
mod browser;
mod checks;
mod cluster;
mod darkroom;
mod demo;
mod desk;
mod drills;
mod first_day;
mod golden;
mod handover;
mod harness;
mod identity;
mod incidents;
mod inductions;
mod keeping;
mod labels;
mod lamps;
mod live;
mod look;
mod mixing;
mod notes;
mod outages;
mod pages;
mod races;
mod reference;
mod screens;
mod style;
mod testing;
mod upgrades;
mod verifier;
mod wear_chart;
mod week;
mod workshops;
