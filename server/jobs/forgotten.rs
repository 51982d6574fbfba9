//! Those who do not say that they left, and those alone of whom nothing is heard.

use super::{Claim, finish};
use crate::app::App;
use crate::arrivals;
use crate::error::Result;
use crate::workshops;

/// Writes down in a room's book whose presence has run out, and which workshops nobody
/// ended.
pub(super) async fn close_presences(app: &App, claim: Claim) -> Result<()> {
    workshops::close_forgotten(app, claim.room).await?;
    arrivals::close_forgotten(app, claim.room).await?;
    finish(app, claim, |_| Box::pin(async { Ok(()) })).await
}

/// Asks those who were to have left, and tells the room's contacts of them.
pub(super) async fn ask_after(app: &App, claim: Claim) -> Result<()> {
    let now = app.clock().now();
    finish(app, claim, move |tx| Box::pin(arrivals::ask_after(tx, now))).await
}
