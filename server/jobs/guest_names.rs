//! Erasing the names of guests that a room keeps no longer.

use super::{Claim, finish};
use crate::app::App;
use crate::error::Result;
use crate::workshops;

/// Erases those whose time is over.
pub(super) async fn erase(app: &App, claim: Claim) -> Result<()> {
    workshops::erase_names(app, claim.room).await?;
    finish(app, claim, |_| Box::pin(async { Ok(()) })).await
}
