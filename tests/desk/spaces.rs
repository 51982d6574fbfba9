//! Spaces and bottles, and what prints do in a tray.

use super::{Desk, beside, sentence};
use crate::harness::{Answer, scenario};

/// Adds a tray with a step to the first line.
pub(super) async fn add_tray(desk: &mut Desk, name: &str, step: &str) -> Answer {
    let page = desk.open("/bench").await;
    let links = page.page().links();
    let is_add = |(words, _): &&(String, String)| words.ends_with("to First line");
    let words = links.iter().find(is_add).unwrap().0.clone();
    let page = desk.follow(&page, &words).await;
    let form = page.page().form("Add the tray").unwrap();
    // Nobody said what prints do in it.
    assert_eq!(form.value("step"), Some("any"));
    let form = form
        .with("step", step)
        .fill("Name", name)
        .fill("Long edge", "300")
        .fill("Short edge", "250")
        .fill("Floor to rim", "65");
    let answer = desk.browser.submit(&form).await.expect(303);
    let next = answer.location().unwrap().to_owned();
    desk.browser.get(&next).await.expect(200)
}

#[test]
fn a_line_says_what_prints_do_in_its_trays_in_their_order() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        for (name, step) in [
            ("Dev", "developer"),
            ("Stop", "stop_bath"),
            ("Sink", "wash"),
        ] {
            add_tray(&mut desk, name, step).await;
        }
        let page = add_tray(&mut desk, "Grey", "any").await;
        let said = page.page().all(".set-tray .step-said");
        assert_eq!(said, ["Developer", "Stop bath", "Wash"]);
        let page = desk
            .follow(&page, "Steps, times and wash of First line")
            .await;
        assert_eq!(page.page().heading(), "First line");
        let said = page.page().all(".steps .step-said");
        assert_eq!(said, ["Developer", "Stop bath", "Wash"]);
        desk.follow(&page, "Say what prints do in it: Grey").await;
        let page = desk.follow(&page, "Dev").await;
        assert_eq!(page.page().heading(), "Dev");
    });
}

#[test]
fn a_full_tray_keeps_its_step() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open(&format!("/bench/trays/{}", bench.tray)).await;
        let form = page.page().form("Keep the change").unwrap();
        let other = form.with("step", "fixer");
        let refused = desk.browser.submit(&other).await.expect(422);
        assert!(sentence(&refused, "step").contains("Discard it first"));
        // Everything else of it may change.
        let fields = [("Name", "Developing tray")];
        desk.send(&page, "Keep the change", &fields)
            .await
            .expect(303);
    });
}

#[test]
fn a_bottle_is_added_changed_retired_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/bench").await;
        let page = desk.follow(&page, "Bottles").await;
        let (name, holds) = ("Name", "Holds up to the stopper");
        let add = "Add the bottle";
        let fields = [(name, ""), (holds, "1,5")];
        let refused = desk.send(&page, add, &fields).await.expect(422);
        assert_eq!(beside(&refused), ["name", "holds"]);
        let fields = [(name, "Brown"), (holds, "60")];
        let refused = desk.send(&refused, add, &fields).await.expect(422);
        assert!(sentence(&refused, "holds").contains("from 50 ml to 50 L"));
        let fields = [(name, "Brown"), (holds, "500 ml")];
        let page = desk.send_on(&refused, add, &fields).await;
        assert_eq!(page.page().all(".rows td.num"), ["0.5 L"]);
        let fields = [(name, "Brown"), (holds, "1")];
        let refused = desk.send(&page, add, &fields).await.expect(422);
        assert!(sentence(&refused, "name").contains("that name already"));
        let page = desk.follow(&page, "Change Brown").await;
        let page = desk
            .send_on(&page, "Keep the change", &[(holds, "1.25")])
            .await;
        assert_eq!(page.page().all(".rows td.num"), ["1.25 L"]);
        let page = desk.follow(&page, "Change Brown").await;
        let page = desk.follow(&page, "Retire the bottle").await;
        assert_eq!(page.page().heading(), "Retire Brown?");
        let page = desk.send_on(&page, "Retire it", &[]).await;
        assert!(page.page().all(".rows td.num").is_empty());
        let page = desk.send_on(&page, "Bring back Brown", &[]).await;
        assert_eq!(page.page().all(".rows td.num"), ["1.25 L"]);
    });
}

#[test]
fn spaces_show_nowhere_until_there_is_one_and_a_line_is_put_in_it() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let mut member = Desk::of(&stage, &stage.cast.member).await;
        let page = member.open("/bench").await;
        let of_spaces = |page: &Answer| page.page().main().to_lowercase().contains("space");
        assert!(!of_spaces(&page), "{}", page.page().main());
        let page = desk.open("/bench").await;
        let quiet = "This room has more than one space";
        let page = desk.follow(&page, quiet).await;
        let name = "Name of the space";
        let refused = desk
            .send(&page, "Add the space", &[(name, "")])
            .await
            .expect(422);
        assert_eq!(beside(&refused), ["name"]);
        let page = desk
            .send_on(&page, "Add the space", &[(name, "Cellar")])
            .await;
        let refused = desk
            .send(&page, "Add the space", &[(name, "Cellar")])
            .await
            .expect(422);
        assert!(sentence(&refused, "name").contains("that name already"));
        let page = desk.follow(&page, "Bench").await;
        let page = desk.follow(&page, "Rename or retire First line").await;
        let form = page.page().form("Keep this name").unwrap();
        let nowhere = form
            .clone()
            .with("space", "00000000-0000-0000-0000-000000000000");
        let refused = desk.browser.submit(&nowhere).await.expect(422);
        assert_eq!(beside(&refused), ["space"]);
        let page = desk.open("/bench/spaces").await;
        let cellar = page.page().links();
        let cellar = cellar
            .iter()
            .find(|(words, _)| words == "Rename or retire Cellar");
        let id = cellar.unwrap().1.rsplit('/').next().unwrap().to_owned();
        desk.browser
            .submit(&form.with("space", &id))
            .await
            .expect(303);
        let page = member.open("/bench").await;
        assert!(page.page().main().contains("In Cellar."));
        let page = desk.open("/bench/spaces").await;
        assert_eq!(page.page().all(".rows td")[0], "First line");
        let page = desk.follow(&page, "Rename or retire Cellar").await;
        let page = desk.follow(&page, "Retire the space").await;
        let refused = desk.send(&page, "Retire it", &[]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("A line stands in this space."), "{said}");
        comes_back_to_the_room(&mut desk, &id).await;
    });
}

/// A line that is retired before its space comes back to the room itself.
async fn comes_back_to_the_room(desk: &mut Desk, space: &str) {
    let page = desk.open("/bench").await;
    let page = desk.follow(&page, "Rename or retire First line").await;
    let page = desk.follow(&page, "Retire the line").await;
    desk.send_on(&page, "Retire it", &[]).await;
    let page = desk.open(&format!("/bench/spaces/{space}/retire")).await;
    let page = desk.send_on(&page, "Retire it", &[]).await;
    assert!(page.page().all(".rows td").is_empty());
    let page = desk.open("/bench").await;
    let page = desk.send_on(&page, "Bring back First line", &[]).await;
    assert_eq!(page.page().all(".set-line h2"), ["First line"]);
    assert!(!page.page().main().contains("In Cellar."));
}
