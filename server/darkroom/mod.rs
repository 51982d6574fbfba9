//! The trade's arithmetic. It knows nobody: no clock, no SQL, no HTTP. It returns
//! numbers and reasons; the pages find words for them. An error's own text is for
//! `reckon` and for logs.
//!
//! Volumes, areas, fractions and instants are whole numbers (`quantities`), so
//! that a book folded anywhere gives the same figures.

/// How old a mix is.
pub mod age;
/// Room air: changes an hour, clearing times, exhaust.
pub mod air;
/// Numbers of substances in the CAS Registry.
pub mod cas;
/// 1+N.
pub mod dilution;
/// Rolls of film in a fixer, and clearing time.
pub mod film;
/// The wash, residual tests and least depths.
pub mod finishing;
/// How long paper may lie in the light of a lamp or a screen.
pub mod fog;
/// What must not be poured into what.
pub mod incompatibility;
/// What may join a mix, and what may not.
pub mod joining;
/// Kits, powders and how long what was made up keeps.
pub mod kit;
/// What a measuring cylinder can show.
pub mod measuring;
/// When a note is taken.
pub mod noting;
/// Percentage solutions.
pub mod percentage;
/// Whole numbers with a unit each.
pub mod quantities;
/// Steady replenishment and bromide.
pub mod replenishment;
/// Sizes of paper.
pub mod sheet;
/// Silver in fixing baths.
pub mod silver;
/// What stands in a tray, as far as the verdict needs to know it.
pub mod state;
/// Stop bath: carry-over, alkali and pH.
pub mod stop_bath;
/// Time and temperature, and development by emergence.
pub mod time_temperature;
/// Other people's units, exactly.
pub mod units;
/// May I print in this tray, and why (not).
pub mod verdict;
/// Warm water for a mix, and the taps.
pub mod water;
/// How much of a mix is used up.
pub mod wear;
