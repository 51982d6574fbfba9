//! What the database holds, and how a route is written down.

use axum::http::Method;
use sqlx::PgConnection;

/// What every table holds, but for the moments at which a session, a token or a
/// screen was last used.
pub(crate) async fn contents(db: &mut PgConnection) -> Vec<(String, Vec<String>)> {
    let tables: Vec<String> = sqlx::query_scalar(
        "select tablename::text from pg_tables where schemaname = 'public' order by 1",
    )
    .fetch_all(&mut *db)
    .await
    .unwrap();
    let mut contents = Vec::new();
    for table in tables {
        let rows = format!("select (to_jsonb(t) - $1::text[])::text from {table} t order by 1");
        // A session is good for a month from when it was last seen.
        let moving = match table.as_str() {
            "session" => vec!["last_seen_at", "expires_at"],
            "token" => vec!["last_used_at"],
            "pairing" => vec!["last_seen_at"],
            _ => Vec::new(),
        };
        let rows = sqlx::query_scalar(sqlx::AssertSqlSafe(rows))
            .bind(moving)
            .fetch_all(&mut *db)
            .await
            .unwrap();
        contents.push((table, rows));
    }
    contents
}

/// How a route is written in the snapshots.
pub(crate) fn said(method: &Method, path: &str, right: Option<&str>) -> String {
    format!("{method} {path} [{}]", right.unwrap_or("open"))
}
