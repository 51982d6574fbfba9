//! Logging in tells nothing and locks nobody out. The numbers are the design's;
//! 100 failures are what NIST SP 800-63B leaves to one account.

use std::time::Instant;

use futures_util::future::join_all;
use time::Duration;
use wetside::error::Error;
use wetside::identity::passwords::{Cost, Hasher};
use wetside::members;
use wetside::problem::{Problem, Problems};
use wetside::rights::Role;

use super::helpers::{Home, PASSWORD, log_in, new_app, run, unique};

fn is_refused<T: std::fmt::Debug>(answer: wetside::error::Result<T>) {
    let wanted = Problems::one("", Problem::LogInFailed);
    match answer {
        Err(Error::Invalid(problems)) => assert_eq!(problems, wanted),
        other => panic!("not the one refusal: {other:?}"),
    }
}

#[test]
fn every_refusal_is_the_same_and_costs_the_same() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let shut_out = home.member("tomas", Role::Member).await;
        members::set_suspended(app, shut_out.id, true)
            .await
            .unwrap();
        let unknown = unique("nobody");
        let cases = [
            (unknown.as_str(), PASSWORD),
            (home.steward.log_in_name.as_str(), "a wrong one"),
            (shut_out.log_in_name.as_str(), PASSWORD),
            ("no log-in name at all!", PASSWORD),
            ("", ""),
            (unknown.as_str(), "\0"),
        ];
        for (name, password) in cases {
            let before = app.entrance().hasher.verifications();
            is_refused(log_in(app, "198.51.100.7", None, name, password).await);
            assert_eq!(app.entrance().hasher.verifications() - before, 1, "{name}");
        }
    });
}

#[test]
fn a_sleeping_name_costs_nothing_whether_it_is_known_or_not() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let unknown = unique("nobody");
        let mut counts = Vec::new();
        for name in [home.steward.log_in_name.as_str(), unknown.as_str()] {
            let before = app.entrance().hasher.verifications();
            for _ in 0..25 {
                is_refused(log_in(app, "2001:db8:7::1", None, name, "wrong").await);
            }
            counts.push(app.entrance().hasher.verifications() - before);
        }
        assert_eq!(counts, [10, 10]);
        // Any address of the same /64 sleeps too, and the right password with it.
        let name = &home.steward.log_in_name;
        is_refused(log_in(app, "2001:db8:7::2", None, name, PASSWORD).await);
    });
}

#[test]
fn a_thousand_failures_lock_nobody_out() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        let known = log_in(app, "203.0.113.5", None, name, PASSWORD)
            .await
            .unwrap();
        let before = app.entrance().hasher.verifications();
        for _ in 0..1_000 {
            is_refused(log_in(app, "203.0.113.5", None, name, "wrong").await);
        }
        let spent = app.entrance().hasher.verifications() - before;
        assert!(spent <= 100, "{spent} verifications for the attacker");
        log_in(app, "203.0.113.6", None, name, PASSWORD)
            .await
            .expect("the owner, from another address, at the first try");
        log_in(app, "203.0.113.5", Some(&known.device), name, PASSWORD)
            .await
            .expect("the owner, at the attacker's address, from a known device");
        is_refused(log_in(app, "203.0.113.5", None, name, PASSWORD).await);
    });
}

#[test]
fn any_hour_holds_at_most_a_hundred_verifications_of_one_account() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        let before = app.entrance().hasher.verifications();
        // From everywhere, for one hour, starting in the middle of a window.
        is_refused(log_in(app, "198.18.0.1", None, name, "wrong").await);
        home.advance(Duration::minutes(40));
        for minute in 0..60_u8 {
            for host in 0..4 {
                let address = format!("198.18.{minute}.{host}");
                is_refused(log_in(app, &address, None, name, "wrong").await);
            }
            home.advance(Duration::minutes(1));
        }
        let spent = app.entrance().hasher.verifications() - before;
        assert!((50..=100).contains(&spent), "{spent}");
    });
}

#[test]
fn one_network_never_uses_up_an_accounts_tries() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        for _ in 0..24 {
            for _ in 0..15 {
                is_refused(log_in(app, "198.51.100.80", None, name, "wrong").await);
            }
            log_in(app, "198.51.100.81", None, name, PASSWORD)
                .await
                .expect("the owner, whenever and from elsewhere");
            home.advance(Duration::minutes(5));
        }
    });
}

#[test]
fn tries_at_once_do_not_slip_through_together() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let name = &home.steward.log_in_name;
        let before = app.entrance().hasher.verifications();
        let tries = (0..60).map(|_| log_in(app, "198.51.100.90", None, name, "wrong"));
        for answer in join_all(tries).await {
            assert!(answer.is_err());
        }
        let spent = app.entrance().hasher.verifications() - before;
        assert!(spent <= 10, "{spent}");
    });
}

#[test]
fn thirty_people_behind_one_address_get_in_within_a_minute() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        // Some hammering beside them changes nothing.
        for _ in 0..200 {
            let name = &home.steward.log_in_name;
            is_refused(log_in(app, "192.0.2.200", None, name, "wrong").await);
        }
        let began = Instant::now();
        for place in 0..30 {
            let somebody = home.member(&format!("m{place}"), Role::Member).await;
            is_refused(log_in(app, "192.0.2.200", None, &somebody.log_in_name, "typo").await);
            log_in(app, "192.0.2.200", None, &somebody.log_in_name, PASSWORD)
                .await
                .unwrap();
        }
        assert!(began.elapsed().as_secs() < 60);
    });
}

#[test]
fn two_instances_share_what_was_tried_and_it_survives_a_restart() {
    run(async {
        let home = Home::new().await;
        let name = &home.steward.log_in_name;
        for _ in 0..10 {
            is_refused(log_in(&home.app, "198.51.100.33", None, name, "wrong").await);
        }
        let other = new_app().await;
        is_refused(log_in(&other, "198.51.100.33", None, name, PASSWORD).await);
        assert_eq!(other.entrance().hasher.verifications(), 0);
        // And it ends: the clock of the other stands where ours did.
        other
            .clock()
            .set(other.clock().now() + Duration::minutes(31));
        log_in(&other, "198.51.100.33", None, name, PASSWORD)
            .await
            .unwrap();
    });
}

#[test]
fn a_device_is_known_for_whom_it_logged_in_and_has_its_own_allowance() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let tomas = home.member("tomas", Role::Member).await;
        let name = &home.steward.log_in_name;
        let first = log_in(app, "192.0.2.9", None, name, PASSWORD)
            .await
            .unwrap();
        let second = log_in(
            app,
            "192.0.2.9",
            Some(&first.device),
            &tomas.log_in_name,
            PASSWORD,
        )
        .await
        .unwrap();
        // Whoever knew the old secret gains nothing by the new person.
        assert_ne!(first.device.reveal(), second.device.reveal());
        let again = log_in(app, "192.0.2.9", Some(&second.device), name, PASSWORD)
            .await
            .unwrap();
        assert_eq!(again.device.reveal(), second.device.reveal());
        let before = app.entrance().hasher.verifications();
        for _ in 0..40 {
            let device = Some(&second.device);
            is_refused(log_in(app, "192.0.2.9", device, name, "wrong").await);
        }
        assert_eq!(app.entrance().hasher.verifications() - before, 20);
        // The browser sleeps; the address is as free as it was.
        log_in(app, "192.0.2.9", None, name, PASSWORD)
            .await
            .unwrap();
    });
}

#[test]
fn a_password_of_another_cost_is_hashed_anew() {
    run(async {
        let cost = Cost {
            memory_kib: 128,
            passes: 2,
        };
        let hasher = Hasher::new(cost).unwrap();
        let home = Home::new().await;
        let password =
            wetside::identity::passwords::Password::choose("plain and long enough", &[]).unwrap();
        let hash = hasher.hash(&password).await.unwrap();
        assert!(hash.starts_with("$argon2id$v=19$m=128,t=2,p=1$"), "{hash}");
        assert!(home.app.entrance().hasher.is_outdated(&hash));
        assert!(!hasher.is_outdated(&hash));
        let verify = home.app.entrance().hasher.clone();
        let right = verify.verify("plain and long enough", Some(&hash)).await;
        assert!(right.unwrap());
        assert!(!verify.verify("plain and long enough", None).await.unwrap());
    });
}

#[test]
fn the_usual_cost_is_the_published_one() {
    run(async {
        // OWASP, Password Storage Cheat Sheet: m=19456 (19 MiB), t=2, p=1.
        let hasher = Hasher::new(Cost::OWASP).unwrap();
        let password =
            wetside::identity::passwords::Password::choose("plain and long enough", &[]).unwrap();
        let hash = hasher.hash(&password).await.unwrap();
        assert!(
            hash.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"),
            "{hash}"
        );
    });
}

#[test]
fn too_many_at_once_are_told_to_come_again() {
    run(async {
        let slow = Cost {
            memory_kib: 19_456,
            passes: 4,
        };
        let hasher = Hasher::new(slow).unwrap();
        let answers = join_all((0..64).map(|_| hasher.verify("anything", None))).await;
        let busy = answers
            .iter()
            .filter(|answer| matches!(answer, Err(Error::Unavailable(_))))
            .count();
        let seats = std::thread::available_parallelism().unwrap().get();
        assert_eq!(busy, 64_usize.saturating_sub(seats + 16));
        assert!(answers.into_iter().flatten().all(|right| !right));
    });
}
