//! The trade's arithmetic held against the outside world. Each check names its
//! source; a fact without one says `common practice, no source`, a remembered
//! one `from memory`. Nothing here is made up.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod chemistry;
mod dilution;
mod mixing;
mod paper;
mod pouring;
mod starter;

/// Definitions that need no authority: "1+9" is one part and nine parts.
const DEFINITION: &str = "by definition";
/// What printers agree on and nobody has published where we could read it.
const COMMON_PRACTICE: &str = "common practice, no source";

/// Fails with the source of the expectation in the message.
#[track_caller]
fn near(what: &str, found: f64, expected: f64, tolerance: f64, source: &str) {
    assert!(
        (found - expected).abs() <= tolerance,
        "{what}: found {found}, expected {expected} ± {tolerance} ({source})"
    );
}

/// Fails with the source of the expectation in the message.
#[track_caller]
fn same<T: PartialEq + std::fmt::Debug>(what: &str, found: T, expected: T, source: &str) {
    assert_eq!(found, expected, "{what} ({source})");
}
