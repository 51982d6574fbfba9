//! Telling stewards of lamps whose fog test is overdue.

use super::{Claim, finish};
use crate::app::App;
use crate::error::Result;
use crate::lamps;

/// Tells them once of each lamp and each day on which a test was due.
pub(super) async fn tell(app: &App, claim: Claim) -> Result<()> {
    let now = app.clock().now();
    finish(app, claim, move |tx| Box::pin(lamps::tell_due(tx, now))).await
}
