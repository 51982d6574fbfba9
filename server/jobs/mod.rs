//! What the program does by itself: rows that fall due, and the runner.
//!
//! Every instance runs `run`; a row is claimed by one of them at a time, with
//! a lease. What a job finds and that it is done are written in one transaction,
//! so that it takes effect once; a job that fails is tried again later and later.
//! Work of the installation, not of a room, stands under the room id of zeros.

mod expiry;
mod fog_tests;
mod forgotten;
mod guest_names;
mod inductions;
mod nightly;
mod room_checks;
mod schedule;
mod store;

pub use schedule::Job;

use std::time::Duration as Pause;

use time::{Duration, OffsetDateTime};
use tokio_util::sync::CancellationToken;
use uuid::Uuid;

use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::Result;

/// Between two looks at what is due.
const EVERY: Pause = Pause::from_secs(20);
/// A claim holds so long; then its holder is taken for dead.
const LEASE: Duration = Duration::hours(1);
/// After so many tries a job is left for its next time.
const TRIES: i32 = 8;
/// Jobs of one look, so that stopping never waits for a long queue.
const MOST: usize = 200;

/// A job that this instance holds.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Claim {
    /// What to do.
    pub(crate) job: Job,
    /// For which room; the id of zeros for the installation.
    pub(crate) room: Uuid,
    /// When it fell due.
    pub(crate) due_at: OffsetDateTime,
    /// Which try this is.
    pub(crate) attempts: i32,
    /// How long it is held.
    pub(crate) lease_until: OffsetDateTime,
}

/// Looks for work until told to stop.
pub async fn run(app: App, shutdown: CancellationToken) {
    if app.owner().is_none() {
        tracing::warn!(
            "the books are not verified at night: this instance has no login of the tables' \
             owner (WETSIDE_OWNER_DATABASE_URL)"
        );
    }
    while !shutdown.is_cancelled() {
        let looking = app.clone();
        // On a task of its own: a job that panics ends the look, not the runner.
        match tokio::spawn(async move { tick(&looking).await }).await {
            Ok(Ok(_)) => {}
            Ok(Err(cause)) => tracing::warn!(%cause, "looking for work failed"),
            Err(ended) => tracing::error!(%ended, "a job ended the look for work"),
        }
        tokio::select! {
            () = shutdown.cancelled() => {}
            () = tokio::time::sleep(EVERY) => {}
        }
    }
}

/// Plans what is not planned yet and does what is due; answers how many jobs
/// were done.
///
/// # Errors
/// That the database is away. A job that fails is logged and tried again.
pub async fn tick(app: &App) -> Result<usize> {
    schedule::plan(app).await?;
    let mut done = 0;
    for _ in 0..MOST {
        let Some(claim) = claim(app).await? else {
            break;
        };
        match perform(app, claim).await {
            Ok(()) => done += 1,
            Err(cause) => give_back(app, claim, &cause).await?,
        }
    }
    Ok(done)
}

async fn perform(app: &App, claim: Claim) -> Result<()> {
    match claim.job {
        Job::VerifyBook => nightly::verify_book(app, claim).await,
        Job::SealBook => nightly::seal_book(app, claim).await,
        Job::FogTestsDue => fog_tests::tell(app, claim).await,
        Job::InductionsDue => inductions::tell(app, claim).await,
        Job::RoomChecksDue => room_checks::tell(app, claim).await,
        Job::EraseGuestNames => guest_names::erase(app, claim).await,
        Job::AskAfter => forgotten::ask_after(app, claim).await,
        Job::ClosePresences => forgotten::close_presences(app, claim).await,
        Job::Expire => expiry::expire(app, claim).await,
    }
}

async fn claim(app: &App) -> Result<Option<Claim>> {
    let now = app.clock().now();
    app.database()
        .installation(move |tx| Box::pin(store::claim(tx, now, now + LEASE)))
        .await
}

/// Puts a failed job off, further each time, or leaves it for its next time.
async fn give_back(app: &App, claim: Claim, cause: &crate::error::Error) -> Result<()> {
    let (job, room) = (claim.job.kind(), claim.room);
    tracing::warn!(%cause, job, %room, attempts = claim.attempts, "a job failed");
    if claim.attempts >= TRIES {
        return finish(app, claim, |_| Box::pin(async { Ok(()) })).await;
    }
    let again = app.clock().now() + wait_after(claim.attempts);
    app.database()
        .installation(move |tx| Box::pin(async move { store::put_off(tx, claim, again).await }))
        .await
}

/// One minute, two, four, at most an hour.
fn wait_after(attempts: i32) -> Duration {
    let doublings = u32::try_from(attempts.clamp(1, 7) - 1).unwrap_or(0);
    Duration::minutes(2_i64.pow(doublings).min(60))
}

/// Takes a job off the list, plans its next time and writes what came of it,
/// all at once. Where another instance took the job over meanwhile, nothing
/// is written.
async fn finish<W>(app: &App, claim: Claim, outcome: W) -> Result<()>
where
    W: for<'t> FnOnce(&'t mut RoomTx) -> futures_util::future::BoxFuture<'t, Result<()>>
        + Send
        + 'static,
{
    let next = schedule::next(app, claim.job, claim.room).await?;
    let scope = Scope {
        room: claim.room,
        person: None,
    };
    app.database()
        .in_room(scope, move |tx| {
            Box::pin(async move {
                if !store::take_off(tx, claim).await? {
                    return Ok(());
                }
                store::plan(tx, claim.job, next).await?;
                outcome(tx).await
            })
        })
        .await
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_job_that_fails_waits_longer_each_time() {
        let minutes: Vec<i64> = (1..=8)
            .map(|attempts| wait_after(attempts).whole_minutes())
            .collect();
        assert_eq!(minutes, [1, 2, 4, 8, 16, 32, 60, 60]);
    }
}
