//! Airing: two presses, or once afterwards; it never counts as exhaust.

use time::Duration;

use super::{FLOW, HOW, Visitor, word};
use crate::harness::{Answer, scenario};

/// A room without a fan, 20 m² by 2.6 m, of which 52 L/s move while it is aired.
async fn without_fan(steward: &mut Visitor) -> Answer {
    let page = steward.size("20", "2.6").await;
    let page = steward.follow(&page, "Floor, height and rule").await;
    let form = page.page().form("Keep the change").unwrap().choose("No");
    let page = steward.browser.submit_and_follow(&form).await.expect(200);
    let page = steward.follow(&page, "Record a measurement").await;
    let fields = [(FLOW, "52"), (HOW, "At the open door")];
    steward.send_on(&page, "Record it", &fields).await
}

fn airing(page: &Answer) -> String {
    let sections = page.page().all("section");
    let found = sections.iter().find(|each| each.starts_with("Airing"));
    found.unwrap().clone()
}

#[test]
fn it_is_two_presses_and_comes_to_an_average() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = without_fan(&mut steward).await;
        let said = airing(&page);
        assert!(
            said.contains("about every fifteen (common practice, no source)"),
            "{said}"
        );
        assert!(said.contains("Nobody noted any airing"), "{said}");
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.air().await;
        let begin = "Air it now: The room itself";
        let page = member.send_on(&page, begin, &[]).await;
        assert!(airing(&page).contains("It is being aired since"));
        stage.pass(Duration::minutes(10));
        let over = "Airing is over: The room itself";
        let page = member.send_on(&page, over, &[]).await;
        let said = airing(&page);
        // 52 L/s are 3.6 changes an hour of 52 m³, and ten minutes a sixth of it.
        assert!(
            said.contains("Aired for 10 min of the last hour: 0.6 air changes an hour"),
            "{said}"
        );
        assert!(said.contains("That is no exhaust."), "{said}");
        assert_eq!(word(&page), "Unmeasured");
        // An hour later the room has it no more.
        stage.pass(Duration::minutes(61));
        let said = airing(&member.air().await);
        assert!(!said.contains("of the last hour:"), "{said}");
        let ledger = member.air().await.page().all(".ledger li");
        assert!(
            ledger.iter().any(|each| each.contains("Aired from")),
            "{ledger:?}"
        );
    });
}

#[test]
fn without_volume_or_flow_no_average_is_told() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.air().await;
        let page = member
            .follow(&page, "It was aired before: The room itself")
            .await;
        let page = member
            .send_on(&page, "Note it", &[("For how long", "2")])
            .await;
        let said = airing(&page);
        assert!(
            said.contains("Aired for 2 min of the last hour. How often the air changed is not"),
            "{said}"
        );
        // With a fan nobody is told to open doors.
        assert!(!said.contains("fifteen"), "{said}");
    });
}

#[test]
fn what_happened_before_is_noted_with_when_it_began() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.air().await;
        let page = member
            .follow(&page, "It was aired before: The room itself")
            .await;
        for (minutes, field) in [("", "minutes"), ("0:30", "minutes"), ("13 h", "minutes")] {
            let wrong = member
                .send(&page, "Note it", &[("For how long", minutes)])
                .await;
            assert_eq!(wrong.expect(422).page().problems()[0].0, field);
        }
        let form = page.page().form("Note it").unwrap();
        let form = form.fill("For how long", "20").choose("Earlier");
        // 12:00 UTC is one o'clock in Berlin: 12:50 and twenty minutes have not passed.
        let early = form.clone().fill("Time", "12:50");
        let refused = member.browser.submit(&early).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "minutes");
        let form = form.fill("Time", "12:30");
        let page = member.browser.submit_and_follow(&form).await.expect(200);
        assert!(airing(&page).contains("Last aired until 12:50"));
    });
}

#[test]
fn a_place_is_aired_once_at_a_time_and_ends_after_it_began() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let first = member.air().await;
        let again = member.air().await;
        let begin = "Air it now: The room itself";
        let page = member.send_on(&first, begin, &[]).await;
        let refused = member.send(&again, begin, &[]).await.expect(422);
        let summary = refused.page().first(".summary").unwrap();
        assert!(summary.contains("being aired already"), "{summary}");
        let end = member
            .follow(&page, "It was over earlier: The room itself")
            .await;
        let form = end.page().form("It is over").unwrap().choose("Earlier");
        let before = form.clone().fill("Time", "12:30");
        let refused = member.browser.submit(&before).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "time");
        stage.pass(Duration::minutes(5));
        let form = form.fill("Time", "13:03");
        let page = member.browser.submit_and_follow(&form).await.expect(200);
        assert!(airing(&page).contains("Aired for 3 min"));
        let late = member.send(&end, "It is over", &[]).await;
        late.expect(422);
    });
}
