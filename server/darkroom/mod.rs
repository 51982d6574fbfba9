//! The trade's arithmetic. It knows nobody: no clock, no SQL, no HTTP, and no
//! sentence a person reads: it returns numbers and reasons, the pages find words.
//!
//! Volumes, areas, fractions and instants are whole numbers ([`quantities`]), so
//! that a book folded anywhere gives the same figures.

/// How old a mix is.
pub mod age;
/// 1+N.
pub mod dilution;
/// What may join a mix, and what may not.
pub mod joining;
/// Whole numbers with a unit each.
pub mod quantities;
/// Sizes of paper.
pub mod sheet;
/// What stands in a tray, as far as the verdict needs to know it.
pub mod state;
/// May I print in this tray, and why (not).
pub mod verdict;
/// How much of a mix is used up.
pub mod wear;
