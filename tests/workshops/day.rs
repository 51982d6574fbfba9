//! A workshop of ten, run by its leader from opening to end, by the pages.

use time::Duration;

use super::{look, taken};
use crate::harness::{Answer, Browser, Stage, scenario};

const TEN: &str = "Ada Moss\nBo Lind\nCam Reed\nDina Holt\nEli Frost\nFay Brook\nGus Hill\n\
    Hana Vale\nIvo Marsh\n\nJune Field\n";

/// The steward plans it for today, and answers its path below the room.
async fn planned(stage: &Stage) -> String {
    let mut steward = stage.browser(&stage.cast.steward).await;
    let page = look(&mut steward, stage, "/workshops").await;
    assert!(page.page().main().contains("None is planned"));
    let page = look(&mut steward, stage, "/workshops/new").await;
    let form = page.page().form("Plan it").unwrap();
    // Today stands there already.
    assert_eq!(form.value("day"), Some("2026-11-25"));
    let form = form
        .with("title", "First prints")
        .with("leader", &stage.cast.member.id.to_string())
        .with("begins", "14:00")
        .with("ends", "17:00")
        .with("most", "10");
    let done = steward.submit(&form).await.expect(303);
    let path = done.location().unwrap().to_owned();
    let page = steward.get(&path).await.expect(200);
    let said = page.page().first(".lead").unwrap();
    assert!(said.contains("14:00–17:00: Planned"), "{said}");
    path.split_once(&stage.slug).unwrap().1.to_owned()
}

/// Presses what leads on to a page, and answers it.
async fn follow(browser: &mut Browser, stage: &Stage, path: &str, words: &str) -> Answer {
    let page = look(browser, stage, path).await;
    let links = page.page().links();
    let way = links.iter().find(|(said, _)| said == words);
    browser.get(&way.unwrap().1).await.expect(200)
}

#[test]
fn ten_guests_come_print_and_leave() {
    scenario(async |stage| {
        stage.bench().await;
        stage.sets("people_limit", "12").await;
        let path = planned(&stage).await;
        let member = &stage.cast.member;
        let mut leader = stage.browser(member).await;
        let board = look(&mut leader, &stage, "/board").await;
        let notice = format!(
            "Workshop 14:00–17:00: First prints, led by {}, up to 10 guests.",
            member.name
        );
        assert!(board.page().main().contains(&notice));

        // Nothing begins before its leader is there.
        let page = follow(&mut leader, &stage, &path, "Read the cautions and open it").await;
        let said = page.page().main();
        assert!(said.contains("H317"), "{said}");
        let form = page.page().form("Open the workshop").unwrap();
        let unread = leader.submit(&form).await.expect(422);
        assert!(unread.page().main().contains("Confirm this first"));
        let form = form.choose("All of this was read to the group");
        let refused = leader.submit(&form).await.expect(422);
        assert!(
            refused
                .page()
                .main()
                .contains("has not said that they are here")
        );
        stage.arrives(member).await.unwrap();
        let form = refused.page().form("Open the workshop").unwrap();
        let form = form.choose("All of this was read to the group");
        leader.submit(&form).await.expect(303);

        let page = follow(&mut leader, &stage, &path, "Sign guests in").await;
        let form = page.page().form("Sign them in").unwrap();
        let page = leader
            .submit_and_follow(&form.with("names", TEN))
            .await
            .expect(200);
        assert!(page.page().main().contains("10 guests are here now."));
        let board = look(&mut leader, &stage, "/board").await;
        assert_eq!(taken(&board), "11 of 12 places taken");
        let said = board.page().first("#present .present-guests").unwrap();
        assert_eq!(said, format!("10 guests of {}’s workshop", member.name));
        assert!(!board.page().main().contains("Moss"));
        let roll = look(&mut leader, &stage, "/present").await;
        let names = roll.page().all("table th[scope=row]").join(", ");
        assert!(
            names.contains("Ada Moss") && names.contains("June Field"),
            "{names}"
        );

        notes(&mut leader, &stage, &path).await;
        leaves_last(&mut leader, &stage, &path).await;
    });
}

/// The leader notes what the group printed: for the workshop, unless they say otherwise.
async fn notes(leader: &mut Browser, stage: &Stage, path: &str) {
    let page = follow(leader, stage, path, "Note sheets for it").await;
    let form = page.page().form("Note them").unwrap();
    assert!(form.value("workshop").is_some_and(|id| path.ends_with(id)));
    let form = form.choose("RC").choose("8×10 in").with("sheets", "12");
    let noted = leader.submit_and_follow(&form).await.expect(200);
    assert!(
        noted
            .page()
            .main()
            .contains("For the workshop First prints.")
    );
    let own = look(leader, stage, "/sheets/new").await;
    let own = own.page().form("Note them").unwrap();
    let own = own.choose("For yourself").with("sheets", "2");
    let noted = leader.submit_and_follow(&own).await.expect(200);
    assert!(!noted.page().main().contains("For the workshop"));
    let page = look(leader, stage, path).await;
    let said = page.page().main();
    assert!(said.contains("12 sheets, 8×10 in, RC"), "{said}");
    assert!(said.contains("In all 12 sheets."), "{said}");
}

/// Two go early, the leader cannot; then it ends.
async fn leaves_last(leader: &mut Browser, stage: &Stage, path: &str) {
    let page = look(leader, stage, path).await;
    let form = page.page().form("Sign out: Bo Lind").unwrap();
    leader.submit(&form).await.expect(303);
    let page = look(leader, stage, path).await;
    let form = page.page().form("Sign out: Ada Moss").unwrap();
    let page = leader.submit_and_follow(&form).await.expect(200);
    assert!(page.page().main().contains("8 guests are here now."));
    let page = look(leader, stage, "/leave").await;
    assert!(
        page.page()
            .main()
            .contains("8 guests of your workshop are still here.")
    );
    let form = page.page().form("I have left").unwrap();
    let refused = leader.submit(&form).await.expect(422);
    let said = refused.page().first(".summary").unwrap();
    assert!(said.contains("end the workshop"), "{said}");

    stage.pass(Duration::hours(4));
    let page = follow(leader, stage, path, "End it").await;
    let said = page.page().main();
    assert!(said.contains("8 guests are here still"), "{said}");
    assert!(said.contains("First line, Developer"), "{said}");
    assert!(said.contains("In all 12 sheets."), "{said}");
    let form = page.page().form("End the workshop").unwrap();
    let page = leader.submit_and_follow(&form).await.expect(200);
    let said = page.page().main();
    assert!(
        said.contains("Over.") && said.contains("10 guests came."),
        "{said}"
    );
    stage.leaves(&stage.cast.member).await.unwrap();
    let board = stage.looks(&stage.cast.member, "/board").await;
    assert_eq!(taken(&board), "0 of 12 places taken");
    assert!(!board.page().main().contains("First prints"));
    // What is read of it in the book names no guest.
    let book = stage.looks(&stage.cast.steward, "/book").await;
    let said = book.page().main();
    assert!(
        said.contains("10 guests came to the workshop First prints."),
        "{said}"
    );
    assert!(!said.contains("Moss"));
}
