//! What somebody needs who owns the tables: the guards off, a row and a column to
//! alter, and whether verifying named it.

use sqlx::{AssertSqlSafe, PgConnection, Row};
use wetside::logbook::replay::DERIVED;
use wetside::logbook::verify_report::Report;

use super::helpers::run;

/// The tables under the knife: the book, its index, and what is made of it.
pub(super) fn tables() -> Vec<&'static str> {
    let mut tables = vec!["entry", "entry_about", "head"];
    tables.extend(DERIVED);
    tables
}

pub(super) struct Column {
    pub(super) name: String,
    pub(super) sort: String,
    pub(super) is_nullable: bool,
}

pub(super) async fn columns(db: &mut PgConnection, table: &str) -> Vec<Column> {
    let found = sqlx::query(AssertSqlSafe(format!(
        "select attname::text, format_type(atttypid, atttypmod), not attnotnull
        from pg_attribute
        where attrelid = 'public.{table}'::regclass and attnum > 0 and not attisdropped
        order by attnum"
    )))
    .fetch_all(db)
    .await
    .unwrap();
    found
        .iter()
        .map(|row| Column {
            name: row.get(0),
            sort: row.get(1),
            is_nullable: row.get(2),
        })
        .collect()
}

/// Another value of the column's sort, never the one that is there.
pub(super) fn altered(column: &Column) -> String {
    let name = &column.name;
    let something = invented(&column.sort);
    let other = match column.sort.as_str() {
        "uuid" => return something.to_owned(),
        "text" => format!("{name} || 'x'"),
        "bigint" | "integer" | "smallint" | "date" => format!("{name} + 1000"),
        "timestamp with time zone" => format!("{name} + interval '1 millisecond'"),
        "bytea" => format!(
            "case when length({name}) = 0 then '\\x01'::bytea
            else set_byte({name}, 0, get_byte({name}, 0) # 1) end"
        ),
        "boolean" => format!("not {name}"),
        "uuid[]" => format!("array_append({name}, gen_random_uuid())"),
        "text[]" => format!("array_append({name}, 'x')"),
        "integer[]" | "bigint[]" => format!("array_append({name}, 1)"),
        other => panic!("no way to alter a column of the sort {other}"),
    };
    format!("coalesce({other}, {something})")
}

/// A value of a sort out of thin air.
pub(super) fn invented(sort: &str) -> &'static str {
    match sort {
        "uuid" => "gen_random_uuid()",
        "text" => "'invented'",
        "bigint" | "integer" | "smallint" => "7",
        "date" => "date '2026-01-01'",
        "timestamp with time zone" => "timestamptz '2026-01-01'",
        "bytea" => "decode(repeat('07', 32), 'hex')",
        "boolean" => "true",
        "uuid[]" => "array[gen_random_uuid()]",
        "text[]" => "'{x}'::text[]",
        "integer[]" => "'{1}'::integer[]",
        "bigint[]" => "'{1}'::bigint[]",
        other => panic!("no value of the sort {other}"),
    }
}

/// Switches off what would keep the owner from it, and keeps a copy.
pub(super) async fn disarm(db: &mut PgConnection) {
    run(
        db,
        "alter table entry disable trigger user;
        do $$
        declare guard record;
        begin
            for guard in
                select conrelid::regclass as held, conname from pg_constraint
                where contype in ('f', 'c') and connamespace = 'public'::regnamespace
            loop
                execute format('alter table %s drop constraint %I', guard.held, guard.conname);
            end loop;
        end $$",
    )
    .await;
    for table in tables() {
        run(db, &format!("create table kept_{table} as table {table}")).await;
    }
}

pub(super) async fn restore(db: &mut PgConnection) {
    for table in tables() {
        run(
            db,
            &format!("delete from {table}; insert into {table} table kept_{table}"),
        )
        .await;
    }
}

pub(super) async fn count(db: &mut PgConnection, table: &str) -> i64 {
    sqlx::query_scalar(AssertSqlSafe(format!("select count(*) from {table}")))
        .fetch_one(db)
        .await
        .unwrap()
}

/// One row, not at an end of the book, so that its neighbours could tell.
pub(super) fn one_row(table: &str) -> String {
    format!(
        "ctid = (select ctid from {table} order by {table} offset (select count(*) / 2 from {table}) limit 1)"
    )
}

/// The number of the entry that [`one_row`] is or stands beside.
pub(super) async fn number_of(db: &mut PgConnection, table: &str) -> Option<i64> {
    if table != "entry" && table != "entry_about" {
        return None;
    }
    let asked = format!("select seq from {table} where {}", one_row(table));
    Some(
        sqlx::query_scalar(AssertSqlSafe(asked))
            .fetch_one(db)
            .await
            .unwrap(),
    )
}

/// Whether the report names what was done: an entry by its number, a row by its
/// table, the note of the end in a sentence of its own.
pub(super) fn names(report: &Report, table: &str, seq: Option<i64>) -> bool {
    report.findings.iter().any(|finding| match table {
        "entry" | "entry_about" => {
            finding.seq().is_some() && (seq.is_none() || finding.seq() == seq)
        }
        "head" => finding.to_string().contains("note of"),
        table => finding.table() == Some(table),
    })
}
