//! Setting a PIN, and taking one away.

use super::{PIN, look};
use crate::harness::{PASSWORD, scenario};

#[test]
fn one_sets_ones_own_pin_with_the_password_and_nobody_sees_it() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let mut browser = stage.browser(member).await;
        let pin = stage.at("/pin");
        let page = look(&mut browser, &pin).await;
        let form = page.page().form("Set this PIN").unwrap();
        let fill = |pin: &str, password: &str| {
            let form = form.clone().fill("Six digits", pin);
            form.fill("Your password now", password)
        };
        for (typed, password, field) in [
            ("12345", PASSWORD, "pin"),
            ("123456", PASSWORD, "pin"),
            ("abcdef", PASSWORD, "pin"),
            (PIN, "another password", "current_password"),
        ] {
            let wrong = browser.submit(&fill(typed, password)).await.expect(422);
            assert_eq!(wrong.page().problems()[0].0, field, "{typed}");
            assert!(
                !wrong.body.contains(&format!("\"{typed}\"")),
                "it comes back"
            );
        }
        browser.submit(&fill(PIN, PASSWORD)).await.expect(303);
        assert!(
            look(&mut browser, &pin)
                .await
                .page()
                .form("Take my PIN away")
                .is_some()
        );
        // The book says that it was set, and holds nothing of it.
        let payload: Vec<u8> =
            sqlx::query_scalar("select payload from entry where room_id = $1 and kind = 'pin_set'")
                .bind(stage.room)
                .fetch_one(&mut stage.installation.db().await)
                .await
                .unwrap();
        let wanted = format!("{{\"person_id\":\"{}\"}}", member.id);
        assert_eq!(String::from_utf8(payload).unwrap(), wanted);
        let hash: String = sqlx::query_scalar("select hash from pin where person_id = $1")
            .bind(member.id)
            .fetch_one(&mut stage.installation.db().await)
            .await
            .unwrap();
        assert!(hash.starts_with("$argon2id$"), "{hash}");
    });
}

#[test]
fn a_steward_takes_a_pin_away_and_can_set_none() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.sets_pin(member).await;
        let path = stage.at(&format!("/members/{}", member.id));
        let mut steward = stage.browser(&stage.cast.steward).await;
        let page = look(&mut steward, &path).await;
        let number = stage.number(member).await;
        let lead = page.page().first(".lead").unwrap();
        assert!(lead.starts_with(&format!("Member {number},")), "{lead}");
        assert!(!page.body.contains("name=\"pin\""));
        let form = page.page().form("Take the PIN away").unwrap();
        let mut other = stage.browser(&stage.cast.trained).await;
        other.submit(&form).await.expect(403);
        steward.submit(&form).await.expect(303);
        let page = look(&mut steward, &path).await;
        assert!(page.page().form("Take the PIN away").is_none());
        let book = look(&mut steward, &stage.at("/book")).await;
        let said = format!("The PIN of {} for the door was taken away.", member.name);
        assert_eq!(book.page().all(".ledger-said")[0], said);
    });
}

/// Whoever comes back after their access ended has no PIN from before.
#[test]
fn a_pin_ends_with_the_access() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.sets_pin(member).await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        let path = stage.at(&format!("/members/{}/end", member.id));
        let page = look(&mut steward, &path).await;
        let form = page.page().form("End the access").unwrap();
        steward.submit(&form).await.expect(303);
        let left: i64 = sqlx::query_scalar("select count(*) from pin where person_id = $1")
            .bind(member.id)
            .fetch_one(&mut stage.installation.db().await)
            .await
            .unwrap();
        assert_eq!(left, 0);
    });
}
