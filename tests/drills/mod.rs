//! Drills: what goes wrong in the middle of the work, and what must be left of
//! it afterwards: everything that was answered, once.

mod audit;
mod cancel;

/// The seed that `WETSIDE_DRILL_SEED` names, for a drill by hand.
fn seed() -> Option<u64> {
    let text = std::env::var("WETSIDE_DRILL_SEED").ok()?;
    Some(text.parse().unwrap())
}
