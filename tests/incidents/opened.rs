//! What a steward sees and does.

use wetside::incidents::What;

use super::{WORDS, details};
use crate::harness::{Stage, Visitor, new_key, scenario};

#[test]
fn a_steward_opens_it_by_a_button_and_the_person_sees_who_looked() {
    scenario(async |stage| {
        let id = stage
            .happened(&stage.cast.member, details(What::SkinContact, None))
            .await;
        let path = format!("/incidents/{id}");
        let mut steward = Visitor::steward(&stage).await;
        let list = steward.open("/incidents").await;
        let closed = steward.open(&path).await;
        for page in [&list, &closed] {
            let main = page.page().main();
            assert!(main.contains("Incident 1"), "{main}");
            assert!(main.contains(&stage.cast.member.name), "{main}");
            assert!(main.contains(", open"), "{main}");
            assert!(!main.contains("skin") && !main.contains(WORDS), "{main}");
        }
        assert_eq!(looks(&stage).await, 0);
        let page = closed;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let main = member.open(&path).await.page().main();
        assert!(main.contains("No steward has opened it."), "{main}");
        let page = steward.send(&page, "Open it", &[]).await.expect(200);
        let main = page.page().main();
        assert!(main.contains(WORDS), "{main}");
        // What comes first for the person is no news to a steward at a desk.
        assert!(!main.contains("running water, now"), "{main}");
        let main = member.open(&path).await.page().main();
        let looked = format!("{} looked at it", stage.cast.steward.name);
        assert!(main.contains(&looked), "{main}");
        assert_eq!(looks(&stage).await, 1);
        let page = steward.send_on(&page, "It is dealt with", &[]).await;
        assert!(page.page().main().contains("dealt with"));
        let page = steward.open("/incidents").await;
        let main = page.page().main();
        assert!(
            main.contains("1 incident was reported; not dealt with: 0."),
            "{main}"
        );
        let earlier = steward
            .open("/incidents?from=2025-01-01&until=2025-12-31")
            .await;
        let main = earlier.page().main();
        assert!(main.contains("No incident was reported."), "{main}");
        let path = stage.at("/incidents?from=soon&until=2025-12-31");
        let refused = steward.browser.get(&path).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "from");
    });
}

#[test]
fn nobody_else_opens_finishes_or_erases_it() {
    scenario(async |stage| {
        let id = stage
            .happened(&stage.cast.member, details(What::Spill, None))
            .await;
        let cast = &stage.cast;
        for (other, sees) in [
            (&cast.trained, 404),
            (&cast.treasurer, 404),
            (&cast.stranger, 404),
        ] {
            let mut browser = stage.browser(other).await;
            let at = |path: &str| stage.at(&format!("/incidents/{id}{path}"));
            browser.get(&at("")).await.expect(sees);
            browser.get(&at("/erase")).await.expect(sees);
            browser.post(&at("/erase"), &[key()]).await.expect(sees);
            let acts = if other.id == cast.stranger.id {
                404
            } else {
                403
            };
            browser.post(&at("/open"), &[key()]).await.expect(acts);
            browser.post(&at("/finish"), &[key()]).await.expect(acts);
        }
        assert_eq!(looks(&stage).await, 0);
    });
}

fn key() -> (String, String) {
    let key = data_encoding::BASE64URL_NOPAD.encode(&new_key());
    ("key".to_owned(), key)
}

/// How often a steward's look is in the room's book.
async fn looks(stage: &Stage) -> i64 {
    let looks = "select count(*) from entry where room_id = $1 and kind = 'incident_looked_at'";
    let looks = sqlx::query_scalar(looks).bind(stage.room);
    looks
        .fetch_one(&mut stage.installation.db().await)
        .await
        .unwrap()
}

#[test]
fn a_handover_names_numbers_alone() {
    scenario(async |stage| {
        stage
            .happened(&stage.cast.member, details(What::Spill, None))
            .await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/handover").await;
        let main = page.page().main();
        assert!(main.contains("Incident 1 is not dealt with."), "{main}");
        assert!(!main.contains(WORDS));
    });
}

#[test]
fn a_steward_reports_for_somebody() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/incidents/new").await;
        let form = page.page().form("Report it").unwrap();
        let form = form
            .choose("Something was spilt")
            .with("person", &stage.cast.member.id.to_string())
            .fill("What happened, and how the person is", WORDS);
        let answer = steward.browser.submit(&form).await.expect(303);
        let path = answer.location().unwrap().to_owned();
        let mut member = stage.browser(&stage.cast.member).await;
        let page = member.get(&path).await.expect(200);
        let main = page.page().main();
        assert!(main.contains(WORDS), "{main}");
        assert!(main.contains(&format!("by {}", stage.cast.steward.name)));
        let page = member.get(&stage.at("/notices")).await.expect(200);
        let said = page.page().all(".events li p");
        assert!(said[0].contains("reported incident 1"), "{said:?}");
    });
}
