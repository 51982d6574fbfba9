//! Telling people and stewards of inductions that end soon.

use super::{Claim, finish};
use crate::app::App;
use crate::error::Result;
use crate::inductions;

/// Tells them once of each end within thirty days.
pub(super) async fn tell(app: &App, claim: Claim) -> Result<()> {
    let now = app.clock().now();
    finish(app, claim, move |tx| {
        Box::pin(inductions::tell_due(tx, now))
    })
    .await
}
