//! Ends that come: told once to the person and to stewards, thirty days before.

use time::macros::datetime;
use wetside::identity::Person;
use wetside::inductions::actions::NewInduction;
use wetside::jobs::tick;
use wetside::topics::Required;

use super::refused;
use crate::harness::{Stage, Visitor, scenario_alone};

async fn told(stage: &Stage, person: &Person) -> Vec<String> {
    let told = Visitor::of(stage, person).await.notices_told().await;
    let all = told.into_iter();
    all.filter(|said| said.contains(" ends, ")).collect()
}

#[test]
fn an_end_is_told_once_thirty_days_before() {
    scenario_alone(async |stage| {
        let app = stage.installation.app.clone();
        let clock = stage.installation.clock.clone();
        let (member, steward) = (&stage.cast.member, &stage.cast.steward);
        let spills = stage.topic("Spills", Required::Always).await;
        let eyewash = stage.topic("Eyewash", Required::Offered).await;
        // Two years later is 27 December 2026.
        stage
            .records(NewInduction {
                person_ids: vec![member.id],
                topic_ids: vec![spills, eyewash],
                given_on: Some("2024-12-27".to_owned()),
                is_on_paper: true,
                remark: String::new(),
                renews_id: None,
            })
            .await
            .unwrap();
        tick(&app).await.unwrap();
        clock.set(datetime!(2026-11-26 06:00 UTC));
        tick(&app).await.unwrap();
        assert!(told(&stage, member).await.is_empty());
        for night in [
            datetime!(2026-11-27 06:00 UTC),
            datetime!(2026-11-28 06:00 UTC),
        ] {
            clock.set(night);
            tick(&app).await.unwrap();
        }
        let own = "Your induction on Eyewash, Spills ends, the first part Sun 27 Dec 2026. Ask a \
                   steward to renew it.";
        assert_eq!(told(&stage, member).await, [own]);
        let of = told(&stage, steward).await;
        assert_eq!(of.len(), 1, "{of:?}");
        assert!(of[0].starts_with(&format!("The induction of {} on", member.name)));
        assert!(told(&stage, &stage.cast.trained).await.is_empty());
        // It holds to the end of its last day by the clock on the room's wall.
        clock.set(datetime!(2026-12-27 21:00 UTC));
        stage.comes(member).await.unwrap();
        clock.set(datetime!(2026-12-28 12:00 UTC));
        refused(stage.comes(member).await);
    });
}
