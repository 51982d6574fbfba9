//! Tampering by somebody who owns the tables and has switched every guard off.
//! Each column of the book and of everything made of it is altered in turn, and
//! verifying must name it.

use std::collections::{BTreeMap, BTreeSet};

use sqlx::{AssertSqlSafe, PgConnection, Row};
use uuid::Uuid;
use wetside::book::checkpoints;
use wetside::kinds::KINDS;
use wetside::logbook::chain::{Link, hash};
use wetside::logbook::keys::Key;
use wetside::logbook::verify::{verify, verify_all};
use wetside::logbook::verify_report::Finding;
use wetside::logbook::{Entry, Kind};
use wetside::mixes::Discarded;
use wetside::papers::SheetSizeSet;

use super::bench::ENTRIES;
use super::helpers::{Library, run};
use super::knife::{
    altered, columns, count, disarm, invented, names, number_of, one_row, restore, tables,
};

/// The entry of the note that nobody took back.
const SECOND_NOTE: i64 = 29;

#[tokio::test]
async fn an_untouched_book_verifies_clean() {
    let library = Library::open().await;
    let report = library.verify().await;
    assert!(report.is_clean(), "{report}");
    assert_eq!(report.entries, ENTRIES, "{report}");
    assert_eq!(
        report.to_string(),
        format!(
            "Room ours: {ENTRIES} entries, not sealed; 1..{ENTRIES} rest on this database \
             alone.\n  3 texts beside it were erased.\n  Everything agrees."
        )
    );
}

#[tokio::test]
async fn a_change_of_any_column_is_named() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    let mut unnoticed = BTreeMap::new();
    for table in tables() {
        assert!(
            count(&mut db, table).await > 0,
            "nothing in {table} to alter"
        );
        for column in columns(&mut db, table).await {
            let (name, value) = (&column.name, altered(&column));
            let change = format!(
                "update {table} set {name} = {value} where {}",
                one_row(table)
            );
            let seq = number_of(&mut db, table).await;
            run(&mut db, &change).await;
            let report = library.verify().await;
            if !names(&report, table, seq) {
                unnoticed.insert(format!("{table}.{name}"), report.to_string());
            }
            restore(&mut db).await;
        }
    }
    assert!(unnoticed.is_empty(), "nobody noticed: {unnoticed:#?}");
    assert!(library.verify().await.is_clean());
}

#[tokio::test]
async fn an_emptied_column_is_named() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    for table in tables() {
        for column in columns(&mut db, table).await {
            let name = &column.name;
            let full = format!("select count(*) from {table} where {name} is not null");
            let full: i64 = sqlx::query_scalar(AssertSqlSafe(full))
                .fetch_one(&mut db)
                .await
                .unwrap();
            if !column.is_nullable || full == 0 {
                continue;
            }
            let change = format!(
                "update {table} set {name} = null
                where ctid = (select ctid from {table} where {name} is not null limit 1)"
            );
            run(&mut db, &change).await;
            let report = library.verify().await;
            assert!(names(&report, table, None), "{table}.{name}: {report}");
            restore(&mut db).await;
        }
    }
}

#[tokio::test]
async fn an_invented_row_and_a_removed_row_are_named_in_every_table() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    // Of the others a room has one row: nothing can be put beside it.
    let one_a_room = ["head", "room_name", "room_setting"];
    for table in tables() {
        let columns = columns(&mut db, table).await;
        let names_of: Vec<&str> = columns.iter().map(|one| one.name.as_str()).collect();
        let values: Vec<String> = columns
            .iter()
            .map(|one| match one.name.as_str() {
                "room_id" => format!("'{}'", library.room),
                _ => invented(&one.sort).to_owned(),
            })
            .collect();
        let (names_of, values) = (names_of.join(", "), values.join(", "));
        if one_a_room.contains(&table) {
            run(&mut db, &format!("delete from {table}")).await;
        } else if table == "entry" {
            // Number 7 is taken; an entry too many stands at the end.
            let values = values.replacen('7', "1000", 1);
            run(
                &mut db,
                &format!("insert into entry ({names_of}) select {values}"),
            )
            .await;
        } else {
            run(
                &mut db,
                &format!("insert into {table} ({names_of}) select {values}"),
            )
            .await;
        }
        let report = library.verify().await;
        assert!(
            names(&report, table, None),
            "a row too many or less in {table}: {report}"
        );
        restore(&mut db).await;
        if count(&mut db, table).await > 0 {
            run(
                &mut db,
                &format!("delete from {table} where {}", one_row(table)),
            )
            .await;
            let report = library.verify().await;
            assert!(
                names(&report, table, None),
                "a row less in {table}: {report}"
            );
            restore(&mut db).await;
        }
    }
}

#[tokio::test]
async fn first_middle_and_last_entry_taken_away_are_named_by_number() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    for seq in [1, 6, ENTRIES] {
        run(
            &mut db,
            &format!(
                "delete from entry where seq = {seq}; delete from entry_about where seq = {seq}"
            ),
        )
        .await;
        let report = library.verify().await;
        let named = report.findings.iter().any(|one| one.seq() == Some(seq));
        assert!(named, "entry {seq} is gone: {report}");
        restore(&mut db).await;
    }
}

#[tokio::test]
async fn neighbours_that_changed_places_are_named_by_number() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    run(
        &mut db,
        "update entry set seq = 1000 where seq = 5;
        update entry set seq = 5 where seq = 6;
        update entry set seq = 6 where seq = 1000",
    )
    .await;
    let report = library.verify().await;
    for seq in [5, 6] {
        let named = report.findings.iter().any(|one| one.seq() == Some(seq));
        assert!(named, "entry {seq} has moved: {report}");
    }
}

/// Writes the entry anew with another actor and mends the chain behind it: the
/// database alone then holds nothing that disagrees.
async fn rewrite_from(db: &mut PgConnection, room: Uuid, first: i64) {
    let rows = sqlx::query(AssertSqlSafe(format!(
        "select seq, kind, key, fingerprint,
            (extract(epoch from happened_at) * 1000000)::bigint,
            (extract(epoch from recorded_at) * 1000000)::bigint, payload, prev
        from entry where seq >= {first} order by seq"
    )))
    .fetch_all(&mut *db)
    .await
    .unwrap();
    let mut prev: [u8; 32] = rows[0].get::<Vec<u8>, _>(7).try_into().unwrap();
    for row in rows {
        let (seq, kind): (i64, String) = (row.get(0), row.get(1));
        let key: Option<Vec<u8>> = row.get(2);
        let payload: Vec<u8> = row.get(6);
        let link = Link {
            room,
            seq,
            prev,
            kind: &kind,
            actor: None,
            key: key.map(|key| key.try_into().unwrap()),
            fingerprint: row.get::<Vec<u8>, _>(3).try_into().unwrap(),
            happened_at_us: row.get(4),
            recorded_at_us: row.get(5),
            payload: &payload,
        };
        let new = hash(&link);
        sqlx::query(AssertSqlSafe(
            "update entry set actor = null, prev = $2, hash = $3 where seq = $1".to_owned(),
        ))
        .bind(seq)
        .bind(prev.as_slice())
        .bind(new.as_slice())
        .execute(&mut *db)
        .await
        .unwrap();
        prev = new;
    }
    sqlx::query(AssertSqlSafe("update head set hash = $1".to_owned()))
        .bind(prev.as_slice())
        .execute(&mut *db)
        .await
        .unwrap();
}

#[tokio::test]
async fn a_tail_written_anew_is_caught_by_the_checkpoint_alone() {
    let library = Library::open().await;
    let mut db = library.db().await;
    checkpoints::seal(&library.app, library.room).await.unwrap();
    library.write_more().await;
    assert!(library.verify().await.is_clean());
    disarm(&mut db).await;

    // Behind the checkpoint: nothing in the database disagrees, and the report
    // says what rests on the database alone.
    rewrite_from(&mut db, library.room, ENTRIES + 1).await;
    let report = library.verify().await;
    assert!(report.is_clean(), "{report}");
    let says = report.to_string();
    let sealed = format!("sealed up to {ENTRIES} by");
    assert!(says.contains(&sealed), "{says}");
    let behind = ENTRIES + 1;
    assert!(
        says.contains(&format!("{behind}..{behind} rest on this database alone")),
        "{says}"
    );
    restore(&mut db).await;

    // The last entries, which left nobody in the rows.
    rewrite_from(&mut db, library.room, ENTRIES - 2).await;
    let report = library.verify().await;
    let seqs: Vec<_> = report.findings.iter().map(Finding::seq).collect();
    assert_eq!(seqs, [Some(ENTRIES)], "{report}");
    assert!(matches!(
        report.findings.iter().next(),
        Some(Finding::Breached(_))
    ));
    std::fs::remove_dir_all(library.vault.data.join("checkpoints")).unwrap();
    assert!(
        library.verify().await.is_clean(),
        "only the checkpoint knew"
    );
}

#[tokio::test]
async fn an_end_taken_away_with_its_note_is_caught_by_the_checkpoint() {
    let library = Library::open().await;
    let mut db = library.db().await;
    library.write_more().await;
    checkpoints::seal(&library.app, library.room).await.unwrap();
    disarm(&mut db).await;
    run(
        &mut db,
        &format!(
            "delete from entry where seq > {ENTRIES};
            delete from entry_about where seq > {ENTRIES};
            delete from paper_class where position = 50;
            update head set (seq, hash, recorded_at) =
                (select seq, hash, recorded_at from entry where seq = {ENTRIES})"
        ),
    )
    .await;
    let report = library.verify().await;
    let seqs: Vec<_> = report.findings.iter().map(Finding::seq).collect();
    assert_eq!(seqs, [Some(ENTRIES + 1)], "{report}");
    std::fs::remove_dir_all(library.vault.data.join("checkpoints")).unwrap();
    assert!(
        library.verify().await.is_clean(),
        "only the checkpoint knew"
    );
}

#[tokio::test]
async fn a_lost_key_or_a_line_signed_by_another_key_is_a_finding() {
    let library = Library::open().await;
    checkpoints::seal(&library.app, library.room).await.unwrap();
    let key = library.vault.key_path();
    let kept = std::fs::read(&key).unwrap();
    std::fs::remove_file(&key).unwrap();
    let report = library.verify().await;
    assert!(
        matches!(report.findings.iter().next(), Some(Finding::NotChecked(_))),
        "{report}"
    );
    Key::read_or_create(&key).unwrap();
    let report = library.verify().await;
    assert!(
        matches!(report.findings.iter().next(), Some(Finding::Refused(_))),
        "{report}"
    );
    std::fs::write(&key, kept).unwrap();
    assert!(library.verify().await.is_clean());
}

#[tokio::test]
async fn every_room_is_verified_even_one_that_only_a_stray_row_speaks_of() {
    let library = Library::open().await;
    let mut db = library.db().await;
    disarm(&mut db).await;
    run(
        &mut db,
        &format!(
            "update sheet_size set room_id = '{}' where position = 1",
            Uuid::from_u128(0x99)
        ),
    )
    .await;
    let reports = verify_all(&library.owner, KINDS, &library.vault)
        .await
        .unwrap();
    let found: Vec<_> = reports
        .iter()
        .map(|one| (one.room, one.is_clean()))
        .collect();
    assert_eq!(
        found,
        [(library.room, false), (Uuid::from_u128(0x99), false)]
    );
}

#[tokio::test]
async fn an_entry_of_an_unknown_kind_is_verified_in_the_chain_and_named() {
    let library = Library::open().await;
    // Two kinds this program does not know, as if a newer one had written them.
    let known = KINDS
        .iter()
        .filter(|kind| ![Discarded::KIND, SheetSizeSet::KIND].contains(&kind.name))
        .map(|kind| Kind { ..*kind });
    let known: &'static [Kind] = Vec::leak(known.collect());
    let report = verify(&library.owner, known, &library.vault, library.room)
        .await
        .unwrap();
    let unknown: Vec<_> = report.unknown.iter().collect();
    let names = ["discarded", "sheet_size_set"].map(str::to_owned);
    assert_eq!(unknown, [(&names[0], &2), (&names[1], &9)]);
    // What they made cannot be told from what somebody invented.
    let tables: BTreeSet<_> = report.findings.iter().filter_map(Finding::table).collect();
    let expected = BTreeSet::from(["mix", "sheet_size", "stay"]);
    assert_eq!(tables, expected, "{report}");
}

#[tokio::test]
async fn an_entry_that_cannot_be_done_over_is_named_and_the_others_still_compared() {
    let library = Library::open().await;
    let mut db = library.db().await;
    // No table takes a note of no sheets.
    run(
        &mut db,
        &format!(
            r#"alter table entry disable trigger user;
        update entry
        set payload = convert_to(
            replace(convert_from(payload, 'UTF8'), '"sheets":6', '"sheets":0'), 'UTF8')
        where seq = {SECOND_NOTE}"#
        ),
    )
    .await;
    let report = library.verify().await;
    let failed: Vec<i64> = report
        .findings
        .iter()
        .filter(|finding| matches!(finding, Finding::NotReplayed { .. }))
        .filter_map(Finding::seq)
        .collect();
    assert_eq!(failed, [SECOND_NOTE], "{report}");
    let tables: BTreeSet<_> = report.findings.iter().filter_map(Finding::table).collect();
    assert_eq!(tables, BTreeSet::from(["mix", "pass", "wear"]), "{report}");
}

#[tokio::test]
async fn figures_that_come_out_otherwise_are_named() {
    fn disagree(_: &[u8]) -> wetside::error::Result<Option<String>> {
        Ok(Some("the wear comes out as 7 nl".to_owned()))
    }
    static KNOWN: &[Kind] = &[Kind {
        recheck: disagree,
        ..Kind::of::<Discarded>()
    }];
    let library = Library::open().await;
    let report = verify(&library.owner, KNOWN, &library.vault, library.room)
        .await
        .unwrap();
    let figures: Vec<String> = report
        .findings
        .iter()
        .filter(|finding| matches!(finding, Finding::Figure { .. }))
        .map(ToString::to_string)
        .collect();
    assert_eq!(
        figures,
        [
            "entry 31: the wear comes out as 7 nl",
            "entry 47: the wear comes out as 7 nl"
        ]
    );
}
