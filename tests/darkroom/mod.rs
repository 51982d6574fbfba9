//! Laws of the trade's arithmetic that hold for every input, and the verdict's
//! table case by case. Nothing here is held against the outside world; that is
//! done under `reference`.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod air;
mod bench;
mod dilution;
mod fog;
mod mixing;
mod pages;
mod pouring;
mod reckon;
mod verdict;
mod verdict_laws;
mod wear;
