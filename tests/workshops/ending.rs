//! How a workshop ends: by its leader, by another who took it over, or by nobody.

use time::Duration;
use time::macros::datetime;
use uuid::Uuid;
use wetside::arrivals::actions::close;
use wetside::error::{Error, Result};
use wetside::identity::Person;
use wetside::jobs::tick;
use wetside::logbook::Done;
use wetside::problem::Problem;
use wetside::rights::{ClosePresence, LeadWorkshop};
use wetside::workshops::leading::take_over;

use super::taken;
use crate::harness::{START, Stage, new_key, scenario, scenario_alone};

async fn takes_over(stage: &Stage, person: &Person, id: Uuid) -> Result<Done> {
    let permit = stage.permit::<LeadWorkshop>(person).await?;
    take_over(&stage.installation.app, &permit, new_key(), id).await
}

#[test]
fn another_member_takes_over_and_the_leader_may_leave() {
    scenario(async |stage| {
        let id = stage.opened().await;
        let (leader, trained) = (&stage.cast.member, &stage.cast.trained);
        stage.come(id, &["A", "B"]).await.unwrap();
        let stays = stage.leaves(leader).await;
        assert!(matches!(
            stays,
            Err(Error::Refused(Problem::GuestsAreIn { guests: 2 }))
        ));
        // Nobody leads from outside.
        let outside = takes_over(&stage, trained, id).await;
        assert!(matches!(outside, Err(Error::Refused(Problem::NotHere))));
        stage.arrives(trained).await.unwrap();
        let own = takes_over(&stage, leader, id).await;
        assert!(matches!(own, Err(Error::Refused(Problem::Unchanged))));
        let mut browser = stage.browser(trained).await;
        let path = stage.at(&format!("/workshops/{id}"));
        let page = browser.get(&path).await.expect(200);
        let links = page.page().links();
        let way = links
            .iter()
            .find(|(said, _)| said == "Take it over")
            .unwrap();
        let asked = browser.get(&way.1).await.expect(200);
        let form = asked.page().form("Take it over").unwrap();
        let page = browser.submit_and_follow(&form).await.expect(200);
        let said = page.page().first(".lead").unwrap();
        assert!(said.contains(&format!("Led by {}", trained.name)), "{said}");
        stage.leaves(leader).await.unwrap();
        let stays = stage.leaves(trained).await;
        assert!(matches!(
            stays,
            Err(Error::Refused(Problem::GuestsAreIn { guests: 2 }))
        ));
        // It is the other's now.
        let not_theirs = stage.come(id, &["C"]).await;
        assert!(matches!(not_theirs, Err(Error::Forbidden)));
        stage.go(trained, id, Vec::new()).await.unwrap();
        let nobody = stage.go(trained, id, Vec::new()).await;
        assert!(matches!(nobody, Err(Error::Refused(Problem::LeftAlready))));
        stage.is_ended(trained, id).await.unwrap();
        stage.leaves(trained).await.unwrap();
        let over = stage.is_ended(&stage.cast.steward, id).await;
        assert!(matches!(
            over,
            Err(Error::Refused(Problem::WorkshopNotOpen))
        ));
    });
}

#[test]
fn a_steward_may_end_it_but_not_its_leaders_presence() {
    scenario(async |stage| {
        let id = stage.planned().await;
        let done = stage.arrives(&stage.cast.member).await.unwrap();
        let presence = done.id("presence").unwrap();
        stage.opens(&stage.cast.steward, id).await.unwrap();
        stage.come(id, &["A"]).await.unwrap();
        let permit = stage.permit::<ClosePresence>(&stage.cast.steward).await;
        let permit = permit.unwrap();
        let app = &stage.installation.app;
        let refused = close(app, &permit, new_key(), presence).await;
        assert!(matches!(
            refused,
            Err(Error::Refused(Problem::GuestsAreIn { guests: 1 }))
        ));
        stage.is_ended(&stage.cast.steward, id).await.unwrap();
        close(app, &permit, new_key(), presence).await.unwrap();
    });
}

#[test]
fn what_nobody_ends_runs_out_with_its_leader() {
    scenario_alone(async |stage| {
        let app = &stage.installation.app;
        tick(app).await.unwrap();
        let id = stage.opened().await;
        stage.come(id, &["A", "B", "C"]).await.unwrap();
        let first = stage.guests_of(id).await[0].id;
        stage.go(&stage.cast.member, id, vec![first]).await.unwrap();
        // 23:00 UTC is midnight in Berlin: from then on nobody counts on them.
        let midnight = datetime!(2026-11-25 23:00 UTC);
        stage.pass(midnight - START - Duration::seconds(1));
        let board = stage.looks(&stage.cast.trained, "/board").await;
        assert_eq!(taken(&board), "3 of 10 places taken");
        stage.pass(Duration::seconds(1));
        let board = stage.looks(&stage.cast.trained, "/board").await;
        assert_eq!(taken(&board), "0 of 10 places taken");
        let late = stage.come(id, &["D"]).await;
        assert!(matches!(
            late,
            Err(Error::Refused(Problem::WorkshopNotOpen))
        ));
        tick(app).await.unwrap();
        let guests = stage.guests_of(id).await;
        let left: Vec<_> = guests
            .iter()
            .map(|it| (it.left_at, it.is_confirmed))
            .collect();
        assert_eq!(left[0], (Some(START), true));
        assert_eq!(left[1..], [(Some(midnight), false); 2]);
        let page = stage
            .looks(&stage.cast.steward, &format!("/workshops/{id}"))
            .await;
        let said = page.page().main();
        assert!(said.contains("00:00, not confirmed left"), "{said}");
        let book = stage.looks(&stage.cast.steward, "/book").await;
        let wanted = "The workshop First prints ran out, 2026-11-25; 2 guests not confirmed left.";
        assert!(
            book.page().main().contains(wanted),
            "{}",
            book.page().main()
        );
    });
}
