//! The one integration binary.

mod access;
mod api;
mod bench_day;
mod book;
mod cluster;
mod darkroom;
mod desk;
mod drills;
mod golden;
mod harness;
mod identity;
mod look;
mod races;
mod reference;
mod verifier;
