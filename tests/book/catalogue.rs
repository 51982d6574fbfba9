//! What the database's own catalogue says, held against the program's lists.

use std::collections::BTreeSet;

use sqlx::AssertSqlSafe;
use wetside::logbook::replay::{DERIVED, NOT_DERIVED};

use super::helpers::Library;

#[tokio::test]
async fn every_table_with_a_room_is_made_by_entries_or_listed_with_a_reason() {
    let library = Library::open().await;
    let mut db = library.db().await;
    let found: Vec<String> = sqlx::query_scalar(AssertSqlSafe(
        "select c.relname::text from pg_class c
        join pg_attribute a on a.attrelid = c.oid and a.attname = 'room_id'
        where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p')"
            .to_owned(),
    ))
    .fetch_all(&mut db)
    .await
    .unwrap();
    let found: BTreeSet<&str> = found.iter().map(String::as_str).collect();
    let others = NOT_DERIVED.iter().map(|(table, reason)| {
        assert!(!reason.is_empty(), "{table}");
        *table
    });
    let listed: Vec<&str> = DERIVED.iter().copied().chain(others).collect();
    let once: BTreeSet<&str> = listed.iter().copied().collect();
    assert_eq!(once.len(), listed.len(), "no table stands in both lists");
    assert_eq!(once, found);
}
