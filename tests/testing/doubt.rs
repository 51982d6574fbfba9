//! Prints in doubt after a failed spot test: who is told, and of which notes.

use time::Duration;
use wetside::identity::Person;

use super::Bath;
use crate::harness::{Page, Stage, scenario};

const GOOD: (&str, &str) = ("Good: no more of a stain than allowed", "");
const BAD: (&str, &str) = ("Not good: too dark a stain", "");

async fn notices(stage: &Stage, person: &Person) -> Page {
    let mut browser = stage.browser(person).await;
    let page = browser.get(&stage.at("/notices")).await.expect(200);
    page.page()
}

#[test]
fn a_failed_residual_test_tells_exactly_those_whose_notes_are_in_doubt() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let (member, trained) = (stage.cast.member.clone(), stage.cast.trained.clone());
        bath.note(&trained, 2).await;
        bath.note(&member, 2).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_thiosulfate", &[GOOD]).await;
        stage.pass(Duration::minutes(5));
        let first = bath.note(&member, 3).await;
        stage.pass(Duration::minutes(5));
        let second = bath.note(&member, 1).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_thiosulfate", &[BAD]).await;
        assert_eq!(bath.verdict().await, "Replace");
        let told = notices(&stage, &member).await;
        let said = told.main();
        assert!(said.contains("2 of your notes went through"), "{said}");
        let links = told.all("a.entry");
        let wanted = [format!("note {first}"), format!("note {second}")];
        assert_eq!(links, wanted);
        for person in [&trained, &stage.cast.steward, &stage.cast.treasurer] {
            let said = notices(&stage, person).await.main();
            assert!(!said.contains("spot test"), "{}: {said}", person.name);
        }
        // The link leads to the notes themselves.
        let mut browser = stage.browser(&member).await;
        let links = told.links();
        let (_, href) = links.iter().find(|(words, _)| *words == wanted[0]).unwrap();
        let page = browser.get(href).await.expect(200).page();
        assert!(page.main().contains("3 sheets"), "{}", page.main());
    });
}

/// The other spot test has a last good one of its own.
#[test]
fn a_good_test_for_one_thing_clears_no_doubt_about_another() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let member = stage.cast.member.clone();
        let note = bath.note(&member, 2).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_thiosulfate", &[GOOD]).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_silver", &[BAD]).await;
        let told = notices(&stage, &member).await;
        assert_eq!(told.all("a.entry"), [format!("note {note}")]);
    });
}

#[test]
fn a_test_taken_back_lifts_the_doubt_unless_another_stands() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let member = stage.cast.member.clone();
        let note = bath.note(&member, 2).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_silver", &[BAD]).await;
        stage.pass(Duration::minutes(5));
        bath.check("residual_thiosulfate", &[BAD]).await;
        bath.take_back().await;
        let said = notices(&stage, &member).await.main();
        assert!(!said.contains("in doubt no more"), "{said}");
        stage.pass(Duration::minutes(5));
        bath.take_back().await;
        assert_eq!(bath.verdict().await, "Ready");
        let told = notices(&stage, &member).await;
        assert!(told.main().contains("in doubt no more"), "{}", told.main());
        assert_eq!(told.all("a.entry")[0], format!("note {note}"));
    });
}
