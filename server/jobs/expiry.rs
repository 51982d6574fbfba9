//! Taking away what is no longer good.

use super::{Claim, finish, store};
use crate::app::App;
use crate::error::Result;

/// Takes away old log-ins and tries, and closes links that ran out.
pub(super) async fn expire(app: &App, claim: Claim) -> Result<()> {
    let now = app.clock().now();
    finish(app, claim, move |tx| {
        Box::pin(async move {
            let (sessions, tries, links) = store::expire(tx, now).await?;
            tracing::info!(sessions, tries, links, "what ran out was taken away");
            Ok(())
        })
    })
    .await
}
