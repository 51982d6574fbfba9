//! Jobs: once each, again after a failure, by one instance at a time; and the
//! notices they tell.

use std::os::unix::fs::PermissionsExt;

use time::Duration;
use time::macros::datetime;
use wetside::database::Scope;
use wetside::jobs::tick;
use wetside::notices::{Notice, Told, list_for, mark_read_for, tell, unread_for};

use super::bench::ENTRIES;
use super::helpers::{Library, START, run};

/// After both jobs of the night in Berlin, before the next full hour.
const NIGHT: time::OffsetDateTime = datetime!(2026-11-26 02:50 UTC);

impl Library {
    async fn count(&self, from: &str) -> i64 {
        self.answer(&format!("select count(*) from {from}")).await
    }
}

#[tokio::test]
async fn a_night_verifies_seals_and_plans_the_next_one() {
    let library = Library::open().await;
    assert_eq!(tick(&library.app).await.unwrap(), 0);
    assert_eq!(
        library
            .count("work where due_at > '2026-11-25 12:00Z'")
            .await,
        9
    );
    library.clock.set(NIGHT);
    assert_eq!(tick(&library.app).await.unwrap(), 5);
    assert_eq!(tick(&library.app).await.unwrap(), 0);
    assert_eq!(
        library
            .count(&format!(
                "verification where findings = 0 and entries = {ENTRIES}"
            ))
            .await,
        1
    );
    assert_eq!(library.count("notice").await, 0);
    assert!(
        library
            .verify()
            .await
            .to_string()
            .contains(&format!("sealed up to {ENTRIES} by"))
    );
    let next = "work where (kind, due_at) in (
        ('verify_book', '2026-11-27 02:10Z'), ('seal_book', '2026-11-27 02:40Z'),
        ('fog_tests_due', '2026-11-26 03:10Z'), ('room_checks_due', '2026-11-26 03:15Z'),
        ('inductions_due', '2026-11-26 03:20Z'), ('erase_guest_names', '2026-11-26 03:30Z'),
        ('ask_after', '2026-11-26 02:55Z'),
        ('close_presences', '2026-11-26 23:00Z'),
        ('expire', '2026-11-26 03:00Z'))";
    assert_eq!(library.count(next).await, 9);
    assert_eq!(library.count("work").await, 9);
}

#[tokio::test]
async fn nights_without_the_program_are_made_up_for_once() {
    let library = Library::open().await;
    tick(&library.app).await.unwrap();
    library.clock.set(NIGHT + Duration::days(10));
    assert_eq!(tick(&library.app).await.unwrap(), 9);
    assert_eq!(library.count("verification").await, 1);
}

#[tokio::test]
async fn of_two_instances_one_does_each_job() {
    let library = Library::open().await;
    let second = library.second_instance();
    tick(&library.app).await.unwrap();
    library.clock.set(NIGHT);
    let (ours, theirs) = tokio::join!(tick(&library.app), tick(&second));
    assert_eq!(ours.unwrap() + theirs.unwrap(), 5);
    assert_eq!(library.count("verification").await, 1);
    assert_eq!(library.count("work").await, 9);
}

#[tokio::test]
async fn a_job_whose_holder_died_is_taken_over_when_its_lease_ends() {
    let library = Library::open().await;
    tick(&library.app).await.unwrap();
    library.clock.set(NIGHT);
    let mut db = library.db().await;
    run(
        &mut db,
        "update work set lease_until = '2026-11-26 03:30Z' where kind = 'verify_book'",
    )
    .await;
    assert_eq!(tick(&library.app).await.unwrap(), 4);
    assert_eq!(library.count("verification").await, 0);
    library.clock.set(datetime!(2026-11-26 03:30 UTC));
    tick(&library.app).await.unwrap();
    assert_eq!(library.count("verification").await, 1);
}

#[tokio::test]
async fn a_job_that_fails_waits_and_is_left_for_its_next_time_in_the_end() {
    let library = Library::open().await;
    tick(&library.app).await.unwrap();
    // A key that others can read is refused, so nothing can be sealed.
    let key = library.vault.key_path();
    std::fs::write(&key, "00").unwrap();
    std::fs::set_permissions(&key, std::fs::Permissions::from_mode(0o644)).unwrap();
    let tried = "select attempts::bigint from work where kind = 'seal_book'";
    library.clock.set(NIGHT);
    tick(&library.app).await.unwrap();
    assert_eq!(library.answer(tried).await, 1);
    tick(&library.app).await.unwrap();
    assert_eq!(library.answer(tried).await, 1, "it waits a minute first");
    library.clock.set(NIGHT + Duration::minutes(1));
    tick(&library.app).await.unwrap();
    assert_eq!(library.answer(tried).await, 2);
    for hours in 1..=6 {
        library.clock.set(NIGHT + Duration::hours(hours));
        tick(&library.app).await.unwrap();
    }
    let next = "work where kind = 'seal_book' and attempts = 0 and due_at = '2026-11-27 02:40Z'";
    assert_eq!(library.count(next).await, 1);
    std::fs::remove_file(&key).unwrap();
    library.clock.set(NIGHT + Duration::days(1));
    tick(&library.app).await.unwrap();
    assert!(
        library
            .verify()
            .await
            .to_string()
            .contains(&format!("sealed up to {ENTRIES} by"))
    );
}

#[tokio::test]
async fn a_book_that_does_not_agree_is_told_to_stewards_alone() {
    let library = Library::open().await;
    tick(&library.app).await.unwrap();
    let mut db = library.db().await;
    run(
        &mut db,
        "alter table entry disable trigger user; update entry set kind = 'other' where seq = 7",
    )
    .await;
    library.clock.set(NIGHT);
    tick(&library.app).await.unwrap();
    let steward = library.scope(library.steward);
    let member = library.scope(library.member);
    assert_eq!(unread_for(&library.app, member).await.unwrap(), 0);
    assert_eq!(unread_for(&library.app, steward).await.unwrap(), 1);
    let kept = list_for(&library.app, steward, None).await.unwrap();
    let Told::Known(Notice::BookDisagrees { findings, first }) = &kept[0].told else {
        panic!("another notice: {kept:?}");
    };
    assert!(*findings > 0);
    assert_eq!(*first, Some(7));

    let cookie = library.log_in(library.steward).await;
    let (status, text) = library.ask(&cookie, "GET", "/rooms/ours/notices").await;
    assert_eq!(status, 200, "{text}");
    assert!(text.contains("the first at entry 7"), "{text}");
    // Looking changes nothing; saying so does.
    assert_eq!(unread_for(&library.app, steward).await.unwrap(), 1);
    let (status, _) = library
        .ask(&cookie, "POST", "/rooms/ours/notices/read")
        .await;
    assert_eq!(status, 303);
    assert_eq!(unread_for(&library.app, steward).await.unwrap(), 0);
}

#[tokio::test]
async fn a_notice_is_its_persons_alone_and_read_by_them_alone() {
    let library = Library::open().await;
    let (steward, member) = (library.steward, library.member);
    let nobody = Scope {
        room: library.room,
        person: None,
    };
    let told = library.app.database().in_room(nobody, move |tx| {
        Box::pin(async move {
            let notice = Notice::BookDisagrees {
                findings: 1,
                first: None,
            };
            tell(tx, START, steward, &notice).await?;
            tell(tx, START, member, &notice).await
        })
    });
    told.await.unwrap();
    mark_read_for(&library.app, library.scope(member))
        .await
        .unwrap();
    assert_eq!(
        unread_for(&library.app, library.scope(steward))
            .await
            .unwrap(),
        1
    );
    assert_eq!(
        unread_for(&library.app, library.scope(member))
            .await
            .unwrap(),
        0
    );
    let mut db = library.db().await;
    run(&mut db, "update notice set kind = 'from_a_newer_program'").await;
    let kept = list_for(&library.app, library.scope(member), None)
        .await
        .unwrap();
    assert_eq!(
        kept[0].told,
        Told::Unknown("from_a_newer_program".to_owned())
    );
}

#[tokio::test]
async fn what_ran_out_is_taken_away_and_nothing_else() {
    let library = Library::open().await;
    tick(&library.app).await.unwrap();
    library.log_in(library.member).await;
    let mut db = library.db().await;
    run(
        &mut db,
        &format!(
            "insert into session
                (secret_hash, id, person_id, agent, created_at, last_seen_at, expires_at)
            values ('\\x01', gen_random_uuid(), '{}', 'old', now(), now(), '2026-11-25 12:30Z');
            insert into throttle (scope, subject, tries, window_ends_at)
            values ('a', '\\x01', 3, '2026-11-25 12:30Z'), ('a', '\\x02', 3, '2026-11-26 12:30Z');
            insert into invitation (id, secret_hash, kind, made_at, expires_at)
            values (gen_random_uuid(), '\\x01', 'join', now(), '2026-11-25 12:30Z'),
                (gen_random_uuid(), '\\x02', 'join', now(), '2026-11-26 12:30Z')",
            library.member
        ),
    )
    .await;
    library.clock.set(datetime!(2026-11-25 13:00 UTC));
    // The look for those alone is due as well.
    assert_eq!(tick(&library.app).await.unwrap(), 2);
    assert_eq!(library.count("session").await, 1);
    assert_eq!(library.count("throttle").await, 1);
    assert_eq!(
        library.count("invitation where revoked_at is null").await,
        1
    );
    assert_eq!(library.count("invitation").await, 2);
}
