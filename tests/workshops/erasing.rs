//! The names of guests: beside the book, and erased when the room's time is over.

use time::Duration;
use wetside::jobs::tick;
use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify;
use wetside::logbook::verify_report::Report;

use crate::harness::{Stage, scenario_alone};

async fn verified(stage: &Stage) -> Report {
    let owner = stage.installation.app.owner().unwrap();
    let vault = Vault {
        data: stage.installation.data.clone(),
        key_file: None,
    };
    verify(owner, KINDS, &vault, stage.room).await.unwrap()
}

async fn run(stage: &Stage, statement: &'static str) {
    let mut db = stage.installation.db().await;
    let done = sqlx::query(statement).bind(stage.room);
    assert!(done.execute(&mut db).await.unwrap().rows_affected() > 0);
}

/// What lies beside the book, and what is in it.
async fn kept(stage: &Stage) -> (Vec<Option<String>>, String) {
    let mut db = stage.installation.db().await;
    let beside = sqlx::query_scalar("select words from beside where room_id = $1 order by seq");
    let beside = beside.bind(stage.room).fetch_all(&mut db).await.unwrap();
    let book =
        "select string_agg(convert_from(payload, 'utf8'), ' ') from entry where room_id = $1";
    let book = sqlx::query_scalar(book).bind(stage.room);
    (beside, book.fetch_one(&mut db).await.unwrap())
}

#[test]
fn names_are_erased_at_night_and_the_book_stands() {
    scenario_alone(async |stage| {
        let app = &stage.installation.app;
        stage.sets("guest_days", "3").await;
        tick(app).await.unwrap();
        let id = stage.opened().await;
        stage.come(id, &["Ada Moss", "Bo Lind"]).await.unwrap();
        stage.come(id, &["Cam Reed"]).await.unwrap();
        stage.is_ended(&stage.cast.member, id).await.unwrap();
        stage.leaves(&stage.cast.member).await.unwrap();
        let (beside, book) = kept(&stage).await;
        let lists = [r#"["Ada Moss","Bo Lind"]"#, r#"["Cam Reed"]"#];
        assert_eq!(beside, lists.map(|list| Some(list.to_owned())));
        assert!(!book.contains("Moss") && !book.contains("Reed"));

        // An hour is missing at the third noon; the next night takes them.
        for (time, is_kept) in [
            (Duration::days(3) - Duration::hours(1), true),
            (Duration::days(1), false),
        ] {
            stage.pass(time);
            tick(app).await.unwrap();
            let (beside, _) = kept(&stage).await;
            let as_wanted = beside.iter().all(|words| words.is_some() == is_kept);
            assert!(as_wanted, "{beside:?}");
        }
        let page = stage
            .looks(&stage.cast.steward, &format!("/workshops/{id}"))
            .await;
        let said = page.page().main();
        assert!(
            said.contains("A guest, name erased") && !said.contains("Moss"),
            "{said}"
        );
        assert!(said.contains("3 guests came."), "{said}");
        let report = verified(&stage).await;
        assert!(report.is_clean(), "{report}");
        assert!(
            report
                .to_string()
                .contains("2 texts beside it were erased."),
            "{report}"
        );
        // A second look finds nothing to erase.
        let entries = report.entries;
        stage.pass(Duration::days(1));
        tick(app).await.unwrap();
        assert_eq!(verified(&stage).await.entries, entries);
    });
}

#[test]
fn a_name_that_somebody_altered_is_found() {
    scenario_alone(async |stage| {
        let id = stage.opened().await;
        let done = stage.come(id, &["Ada Moss"]).await.unwrap();
        let said = format!("entry {}: what lies beside it", done.seq);
        assert!(verified(&stage).await.is_clean());
        let altered = "update beside set words = replace(words, 'Moss', 'Reed') where room_id = $1";
        let back = "update beside set words = replace(words, 'Reed', 'Moss') where room_id = $1";
        run(&stage, altered).await;
        let report = verified(&stage).await.to_string();
        assert!(report.contains(&said), "{report}");
        run(&stage, back).await;
        // Names that are gone without an entry that says so are found too.
        let taken = "with gone as (delete from beside where room_id = $1 returning *)
            insert into aside select * from gone";
        sqlx::query("create table aside (like beside)")
            .execute(&mut stage.installation.db().await)
            .await
            .unwrap();
        run(&stage, taken).await;
        let report = verified(&stage).await.to_string();
        assert!(report.contains(&said), "{report}");
        run(
            &stage,
            "insert into beside select * from aside where room_id = $1",
        )
        .await;
        let mut db = stage.installation.db().await;
        sqlx::query("drop table aside")
            .execute(&mut db)
            .await
            .unwrap();
        // The other one's guest is somebody else.
        run(
            &stage,
            "update guest set signed_in_seq = signed_in_seq - 1 where room_id = $1",
        )
        .await;
        assert!(!verified(&stage).await.is_clean());
        run(
            &stage,
            "update guest set signed_in_seq = signed_in_seq + 1 where room_id = $1",
        )
        .await;
    });
}
