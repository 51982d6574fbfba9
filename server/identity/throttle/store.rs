//! The counters' SQL: each statement carries its own compare.

use time::OffsetDateTime;

use super::Window;
use crate::database::InstallationTx;
use crate::error::Result;

/// Counts a try; answers whether there was one left.
pub(super) async fn count(
    tx: &mut InstallationTx,
    (scope, subject): (&str, &[u8]),
    (window, slides): (Window, bool),
    now: OffsetDateTime,
) -> Result<bool> {
    let counted = sqlx::query_scalar!(
        r#"
        insert into throttle (scope, subject, tries, window_ends_at)
        values ($1, $2, 1, $3)
        on conflict (scope, subject) do update
        set tries = case when throttle.window_ends_at <= $4 then 1 else throttle.tries + 1 end,
            window_ends_at = case
                when $6 or throttle.window_ends_at <= $4 then excluded.window_ends_at
                else throttle.window_ends_at
            end
        where throttle.window_ends_at <= $4 or throttle.tries < $5
        returning tries
        "#,
        scope,
        subject,
        now + window.length,
        now,
        window.tries,
        slides
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(counted.is_some())
}

pub(super) async fn give_back(
    tx: &mut InstallationTx,
    scope: &str,
    subject: &[u8],
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        update throttle
        set tries = tries - 1
        where scope = $1
            and subject = $2
            and tries > 0
            and window_ends_at > $3
        "#,
        scope,
        subject,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
