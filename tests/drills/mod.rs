//! Drills: what goes wrong in the middle of the work, and what must be left of
//! it afterwards: everything that was answered, once.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod audit;
mod cancel;
mod client;
mod kill;
mod said;
mod world;

/// The seed that `WETSIDE_DRILL_SEED` names, for a drill by hand.
fn seed() -> Option<u64> {
    let text = std::env::var("WETSIDE_DRILL_SEED").ok()?;
    Some(text.parse().unwrap())
}

/// Runs a drill on a runtime of its own.
fn on_runtime(drill: impl Future<Output = ()>) {
    let mut builder = tokio::runtime::Builder::new_multi_thread();
    builder.worker_threads(2).enable_all();
    builder.build().unwrap().block_on(drill);
}
