//! Telling stewards of room checks that are overdue.

use super::{Claim, finish};
use crate::app::App;
use crate::checks;
use crate::error::Result;

/// Tells them once of each check and each day by which it was due.
pub(super) async fn tell(app: &App, claim: Claim) -> Result<()> {
    let now = app.clock().now();
    finish(app, claim, move |tx| Box::pin(checks::tell_due(tx, now))).await
}
