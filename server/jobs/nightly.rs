//! What happens to each book at night.

use super::store::{self, Outcome};
use super::{Claim, finish};
use crate::app::App;
use crate::book::checkpoints;
use crate::error::Result;
use crate::kinds::KINDS;
use crate::logbook::verify::verify;
use crate::logbook::verify_report::Report;
use crate::notices::{self, Notice};

/// Verifies a book and tells the stewards where something does not agree. It
/// needs the owner of the tables; without one, nothing is known and nothing said.
pub(super) async fn verify_book(app: &App, claim: Claim) -> Result<()> {
    let Some(owner) = app.owner() else {
        return finish(app, claim, |_| Box::pin(async { Ok(()) })).await;
    };
    let report = verify(owner, KINDS, &app.vault(), claim.room).await?;
    log(&report);
    let outcome = Outcome {
        at: app.clock().now(),
        entries: report.entries,
        sealed_seq: report.sealing.sealed.map(|(seq, _)| seq),
        findings: i64::try_from(report.findings.count()).unwrap_or(i64::MAX),
    };
    let notice = Notice::BookDisagrees {
        findings: outcome.findings,
        first: report.findings.iter().filter_map(|one| one.seq()).min(),
    };
    finish(app, claim, move |tx| {
        Box::pin(async move {
            store::insert_verification(tx, outcome).await?;
            if outcome.findings > 0 {
                notices::tell_stewards(tx, outcome.at, &notice).await?;
            }
            Ok(())
        })
    })
    .await
}

fn log(report: &Report) {
    let (room, entries, sealing) = (report.room, report.entries, &report.sealing);
    if report.is_clean() {
        tracing::info!(%room, entries, %sealing, "a book was verified and agrees");
        return;
    }
    for finding in report.findings.iter() {
        tracing::error!(%room, %finding, "a book does not agree");
    }
}

/// Seals a book.
pub(super) async fn seal_book(app: &App, claim: Claim) -> Result<()> {
    let sealed = checkpoints::seal(app, claim.room).await?;
    tracing::info!(room = %claim.room, seq = sealed.seq, "a book was sealed");
    finish(app, claim, |_| Box::pin(async { Ok(()) })).await
}
