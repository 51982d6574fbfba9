//! How much is measured: in full for the figures, in short to see that it runs.

use std::time::Duration;

/// How it is measured.
#[derive(Debug)]
pub(crate) struct Plan {
    /// Rooms that are written in.
    pub(crate) rooms: usize,
    /// People in the first of them.
    pub(crate) people: usize,
    /// Everything is measured so often, by turns; the middle one counts.
    pub(crate) rounds: usize,
    /// So long each time.
    pub(crate) time: Duration,
    /// How many clients the scripts are tried with; the best counts.
    pub(crate) clients: &'static [usize],
    /// Boards that are open at once on one server.
    pub(crate) streams: usize,
    /// Notes in each round that they hear of.
    pub(crate) told: usize,
    /// Nobody asks for anything for so long, before the memory is looked at.
    pub(crate) idle: Duration,
    /// Days of history behind a board.
    pub(crate) days: i32,
}

/// The figures to report.
pub(crate) const FULL: Plan = Plan {
    rooms: 100,
    people: 100,
    rounds: 5,
    time: Duration::from_secs(4),
    clients: &[1, 4, 16, 64],
    streams: 500,
    told: 8,
    idle: Duration::from_secs(3),
    days: 3_652,
};

/// A moment of everything; its figures mean nothing.
pub(crate) const SMOKE: Plan = Plan {
    rooms: 2,
    people: 65,
    rounds: 1,
    time: Duration::from_millis(300),
    clients: &[4],
    streams: 12,
    told: 2,
    idle: Duration::from_millis(300),
    days: 30,
};
