//! Sessions and standings: who was let in is shown out within a second.

use std::time::{Duration as Wall, Instant};

use time::Duration;
use wetside::error::Error;
use wetside::identity::accounts::{self, NewPassword};
use wetside::identity::sessions::{self, IDLE, LONGEST};
use wetside::members::actions;
use wetside::rights::{KeepMembers, LookAtBoard, Role};

use super::helpers::{
    Home, PASSWORD, Somebody, empty_app, from, log_in, new_app, new_key, permit, run,
};

async fn may_look(home: &Home, somebody: &Somebody) -> Result<(), Error> {
    home.by::<LookAtBoard>(somebody).await.map(|_| ())
}

#[test]
fn ended_access_bites_at_once_here_and_within_a_second_elsewhere() {
    run(async {
        let home = Home::new().await;
        let member = home.member("tomas", Role::Member).await;
        let other = new_app().await;
        for _ in 0..3 {
            may_look(&home, &member).await.unwrap();
            permit::<LookAtBoard>(&other, &member.session, &home.slug)
                .await
                .unwrap();
        }
        let steward = home.by_steward::<KeepMembers>().await;
        actions::suspend(&home.app, &steward, new_key(), member.id)
            .await
            .unwrap();
        assert!(matches!(
            may_look(&home, &member).await,
            Err(Error::NotFound)
        ));
        let began = Instant::now();
        while permit::<LookAtBoard>(&other, &member.session, &home.slug)
            .await
            .is_ok()
        {
            assert!(began.elapsed() < Wall::from_millis(1_500), "still let in");
            tokio::time::sleep(Wall::from_millis(20)).await;
        }
        actions::restore(&home.app, &steward, new_key(), member.id)
            .await
            .unwrap();
        may_look(&home, &member).await.unwrap();
    });
}

#[test]
fn an_ended_session_is_nobodys() {
    run(async {
        let home = Home::new().await;
        let other = new_app().await;
        let session = home.steward.session.clone();
        other.sessions().find(&other, &session).await.unwrap();
        let ended = sessions::end_all(&home.app, home.steward.id).await.unwrap();
        assert_eq!(ended, 1);
        let here = home.app.sessions().find(&home.app, &session).await;
        assert!(matches!(here, Err(Error::Unauthenticated)));
        let began = Instant::now();
        while other.sessions().find(&other, &session).await.is_ok() {
            assert!(began.elapsed() < Wall::from_millis(1_500), "still known");
            tokio::time::sleep(Wall::from_millis(20)).await;
        }
    });
}

#[test]
fn a_person_ends_their_own_log_ins_and_no_one_elses() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let tomas = home.member("tomas", Role::Member).await;
        log_in(app, "192.0.2.1", None, &tomas.log_in_name, PASSWORD)
            .await
            .unwrap();
        let theirs = sessions::of_person(app, tomas.id).await.unwrap();
        assert_eq!(theirs.len(), 2);
        let foreign = sessions::end_one(app, home.steward.id, theirs[0].id).await;
        assert!(matches!(foreign, Err(Error::NotFound)));
        sessions::end_one(app, tomas.id, theirs[0].id)
            .await
            .unwrap();
        assert_eq!(sessions::of_person(app, tomas.id).await.unwrap().len(), 1);
    });
}

#[test]
fn each_log_in_has_a_new_secret_and_log_out_ends_it() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        let first = log_in(app, "192.0.2.1", None, name, PASSWORD)
            .await
            .unwrap();
        let second = log_in(app, "192.0.2.1", Some(&first.device), name, PASSWORD)
            .await
            .unwrap();
        assert_ne!(first.session.reveal(), second.session.reveal());
        sessions::end(app, &second.session).await.unwrap();
        let gone = app.sessions().find(app, &second.session).await;
        assert!(matches!(gone, Err(Error::Unauthenticated)));
        app.sessions().find(app, &first.session).await.unwrap();
    });
}

#[test]
fn a_session_ends_unused_and_in_the_end_used_too() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let began = app.clock().now();
        let name = &home.steward.log_in_name;
        let idle = log_in(app, "192.0.2.1", None, name, PASSWORD)
            .await
            .unwrap();
        let used = log_in(app, "192.0.2.2", None, name, PASSWORD)
            .await
            .unwrap();
        let mut days = 0;
        while app.clock().now() + Duration::days(20) < began + LONGEST {
            home.advance(Duration::days(20));
            days += 20;
            app.sessions().find(app, &used.session).await.unwrap();
            // What was noted is written beside the request.
            settle(&home, days).await;
        }
        assert!(Duration::days(days) > IDLE);
        let gone = app.sessions().find(app, &idle.session).await;
        assert!(matches!(gone, Err(Error::Unauthenticated)));
        home.advance(Duration::days(21));
        let gone = app.sessions().find(app, &used.session).await;
        assert!(matches!(gone, Err(Error::Unauthenticated)));
    });
}

/// Waits until the last use is written.
async fn settle(home: &Home, days: i64) {
    let began = Instant::now();
    loop {
        let log_ins = sessions::of_person(&home.app, home.steward.id)
            .await
            .unwrap();
        if log_ins
            .iter()
            .any(|log_in| log_in.last_seen_at == home.app.clock().now())
        {
            return;
        }
        assert!(began.elapsed() < Wall::from_secs(5), "day {days}");
        tokio::time::sleep(Wall::from_millis(5)).await;
    }
}

#[test]
fn a_new_password_ends_every_other_log_in() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        let elsewhere = log_in(app, "192.0.2.1", None, name, PASSWORD)
            .await
            .unwrap();
        let person = app
            .sessions()
            .find(app, &home.steward.session)
            .await
            .unwrap();
        let change = |present: &str, new: &str| {
            let typed = NewPassword {
                present: present.to_owned(),
                new: new.to_owned(),
            };
            let person = person.clone();
            async move { accounts::change_password(app, &person, &from("192.0.2.1"), typed).await }
        };
        assert!(change("wrong", "a wholly other one").await.is_err());
        assert!(change(PASSWORD, "short").await.is_err());
        assert!(change(PASSWORD, &format!("xx{name}xx")).await.is_err());
        let now = change(PASSWORD, "a wholly other one").await.unwrap();
        for gone in [&home.steward.session, &elsewhere.session] {
            let answer = app.sessions().find(app, gone).await;
            assert!(matches!(answer, Err(Error::Unauthenticated)));
        }
        app.sessions().find(app, &now.session).await.unwrap();
        assert!(
            log_in(app, "192.0.2.1", None, name, PASSWORD)
                .await
                .is_err()
        );
        log_in(app, "192.0.2.1", None, name, "a wholly other one")
            .await
            .unwrap();
    });
}

#[test]
fn whoever_holds_a_session_has_a_few_tries_at_the_present_password() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let person = app
            .sessions()
            .find(app, &home.steward.session)
            .await
            .unwrap();
        let before = app.entrance().hasher.verifications();
        let mut last = None;
        for _ in 0..15 {
            let typed = NewPassword {
                present: "wrong".to_owned(),
                new: "a wholly other one".to_owned(),
            };
            let answer = accounts::change_password(app, &person, &from("192.0.2.1"), typed).await;
            last = answer.err();
        }
        assert!(matches!(last, Some(Error::TooMany(_))), "{last:?}");
        assert_eq!(app.entrance().hasher.verifications() - before, 10);
    });
}

#[test]
fn while_the_database_is_away_nobody_is_known_for_longer_than_five_seconds() {
    run(async {
        let home = Home::of(empty_app().await).await;
        let session = &home.steward.session;
        may_look(&home, &home.steward).await.unwrap();
        let began = Instant::now();
        home.app.database().close().await;
        let mut last = Wall::ZERO;
        let (mut who, mut what) = (None, None);
        while who.is_none() || what.is_none() {
            assert!(
                began.elapsed() < Wall::from_secs(9),
                "somebody is still known"
            );
            match home.app.sessions().find(&home.app, session).await {
                Ok(_) => last = began.elapsed(),
                Err(error) => who = Some(error),
            }
            what = may_look(&home, &home.steward).await.err();
            tokio::time::sleep(Wall::from_millis(50)).await;
        }
        // Not "unknown", which would log people out, and not before it must be.
        assert!(matches!(who, Some(Error::Unavailable(_))), "{who:?}");
        assert!(matches!(what, Some(Error::Unavailable(_))), "{what:?}");
        assert!(
            last > Wall::from_secs(3) && last < Wall::from_millis(5_500),
            "{last:?}"
        );
    });
}
