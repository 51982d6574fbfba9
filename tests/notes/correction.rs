//! What a steward sets right, and what the member is told of it.

use super::{beside, follow};
use crate::harness::{Stage, scenario};

/// Six and sixty sheets at 100 a litre. Source: common practice, no source.
#[test]
fn old_and_new_stand_beside_each_other_and_the_member_is_told() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let (member, steward) = (stage.cast.member.clone(), stage.cast.steward.clone());
        let seq = stage.note(&member, &bench, 0, 6).await.unwrap().seq;
        let path = stage.at(&format!("/sheets/{seq}"));
        let mut theirs = stage.browser(&member).await;
        theirs.get(&format!("{path}/correct")).await.expect(403);

        let mut browser = stage.browser(&steward).await;
        let page = browser.get(&path).await.expect(200);
        let page = follow(&mut browser, &page, "Set it right").await;
        let form = page.page().form("Show old and new").unwrap();
        let shown = browser
            .submit(&form.fill("How many sheets", "60"))
            .await
            .expect(200);
        let cells = shown.page().all(".compared td");
        assert_eq!(cells[..2], ["6", "60"]);
        assert_eq!(cells[cells.len() - 2..], ["60 ml", "600 ml"]);
        assert_eq!(stage.spent(bench.mix).await, 60_000_000, "only shown");

        let form = shown.page().form("Set it right").unwrap();
        let refused = browser.submit(&form).await.expect(422);
        assert_eq!(beside(&refused), ["reason"]);
        let form = refused.page().form("Set it right").unwrap();
        assert_eq!(form.value("sheets"), Some("60"));
        let form = form.fill("Why", "A nought was missing");
        let right = browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(right.page().first(".noted-count").unwrap(), "60");
        assert_eq!(right.page().all(".compared td")[..2], ["6", "60"]);
        assert_eq!(stage.spent(bench.mix).await, 600_000_000);
        // The same form once more is the same correction.
        let again = browser.submit_and_follow(&form).await;
        assert_eq!(again.path, right.path);

        let notices = theirs.get(&stage.at("/notices")).await.expect(200);
        let links = notices.page().links();
        let told = links
            .iter()
            .find(|(words, _)| words.contains("set your note"));
        let (words, to) = told.unwrap();
        assert!(words.contains("A nought was missing"), "{words}");
        let holds = theirs.get(to).await.expect(200);
        assert!(holds.page().main().contains("set the note of entry"));
        let old = theirs.get(&path).await.expect(200);
        assert_eq!(old.page().heading(), "This note was undone");
        follow(&mut theirs, &old, "See the note that holds in its place").await;
    });
}

#[test]
fn what_changes_nothing_is_no_correction() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let seq = stage
            .note(&stage.cast.member, &bench, 0, 6)
            .await
            .unwrap()
            .seq;
        let mut browser = stage.browser(&stage.cast.steward).await;
        let path = stage.at(&format!("/sheets/{seq}/correct"));
        let page = browser.get(&path).await.expect(200);
        let form = page.page().form("Set it right").unwrap();
        let page = browser
            .submit(&form.fill("Why", "No reason"))
            .await
            .expect(422);
        let summary = page.page().first(".summary").unwrap();
        assert!(summary.contains("nothing to change"), "{summary}");
    });
}

#[test]
fn a_member_is_told_when_a_steward_takes_a_note_back_and_not_when_they_do() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        let mut theirs = stage.browser(&member).await;
        for (person, why) in [(&member, None), (&stage.cast.steward, Some("Noted twice"))] {
            let seq = stage.note(&member, &bench, 0, 2).await.unwrap().seq;
            let mut browser = stage.browser(person).await;
            let path = stage.at(&format!("/sheets/{seq}/undo"));
            let page = browser.get(&path).await.expect(200);
            let mut form = page.page().form("Undo the note").unwrap();
            if let Some(why) = why {
                form = form.fill("Why", why);
            }
            browser.submit(&form).await.expect(303);
            let notices = theirs.get(&stage.at("/notices")).await.expect(200);
            let told = notices.page().main().contains("took back your note");
            assert_eq!(told, why.is_some());
            assert_eq!(notices.page().main().contains("Noted twice"), told);
        }
    });
}
