//! Those who do not say that they left.

use super::{Claim, finish};
use crate::app::App;
use crate::arrivals;
use crate::error::Result;

/// Writes down in a room's book whose presence has run out.
pub(super) async fn close_presences(app: &App, claim: Claim) -> Result<()> {
    arrivals::close_forgotten(app, claim.room).await?;
    finish(app, claim, |_| Box::pin(async { Ok(()) })).await
}
