//! What the person sees and does.

use wetside::incidents::What;
use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify;

use super::{WORDS, details};
use crate::harness::{Stage, Visitor, scenario};

#[test]
fn it_is_reported_by_oneself_and_the_page_begins_with_what_to_do_first() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.open("/incidents").await;
        let page = member.follow(&page, "Report what happened").await;
        assert!(!page.page().main().contains("To whom"));
        let form = page.page().form("Report it").unwrap();
        let refused = member.browser.submit(&form).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "what");
        let skin = form.clone().choose("Chemistry on the skin");
        let refused = member.browser.submit(&skin).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "part");
        let eye = form
            .choose("A splash in the eye")
            .choose("Running water, at least 15 minutes")
            .fill("What happened, and how the person is", WORDS);
        let page = member.browser.submit_and_follow(&eye).await.expect(200);
        assert_eq!(page.page().heading(), "Incident 1");
        let main = page.page().main();
        let help = main.find("running water, now").unwrap();
        assert!(help < main.find(WORDS).unwrap(), "{main}");
        assert!(main.contains("No steward has opened it."));
        let links = page.page().links();
        let emergency = stage.at("/emergency");
        assert!(
            links
                .iter()
                .any(|(words, to)| words == "Emergency" && *to == emergency)
        );
        let list = member.open("/incidents").await;
        assert!(list.page().main().contains("Incident 1"));
        assert!(!list.page().main().contains(WORDS));
    });
}

#[test]
fn a_member_reports_for_nobody_else() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.open("/incidents/new").await;
        let form = page.page().form("Report it").unwrap();
        let form = form
            .choose("It nearly happened")
            .with("person", &stage.cast.trained.id.to_string());
        member.browser.submit(&form).await.expect(403);
    });
}

async fn verified(stage: &Stage) -> String {
    let owner = stage.installation.app.owner().unwrap();
    let vault = Vault {
        data: stage.installation.data.clone(),
        key_file: None,
    };
    let report = verify(owner, KINDS, &vault, stage.room).await.unwrap();
    report.to_string()
}

#[test]
fn it_is_erased_on_request_and_the_book_stands() {
    scenario(async |stage| {
        let id = stage
            .happened(&stage.cast.member, details(What::Spill, None))
            .await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let path = format!("/incidents/{id}");
        let page = member.open(&path).await;
        assert!(page.page().main().contains(WORDS));
        let ask = member.follow(&page, "Erase what is known of it").await;
        let page = member.send_on(&ask, "Erase it", &[]).await;
        let main = page.page().main();
        assert!(
            !main.contains(WORDS) && main.contains("was erased"),
            "{main}"
        );
        let mut db = stage.installation.db().await;
        let left: i64 = sqlx::query_scalar(
            "select count(*) from beside where room_id = $1 and (words is not null or salt is not null)",
        )
        .bind(stage.room)
        .fetch_one(&mut db)
        .await
        .unwrap();
        assert_eq!(left, 0);
        let said = verified(&stage).await;
        assert!(said.contains("1 text beside it was erased"), "{said}");
        assert!(said.contains("Everything agrees."), "{said}");
    });
}

#[test]
fn a_text_that_somebody_changed_beside_the_book_is_found() {
    scenario(async |stage| {
        stage
            .happened(&stage.cast.member, details(What::Spill, None))
            .await;
        let mut db = stage.installation.db().await;
        let words: String = sqlx::query_scalar("select words from beside where room_id = $1")
            .bind(stage.room)
            .fetch_one(&mut db)
            .await
            .unwrap();
        for other in [words.replace("Marmalade", "Raspberry"), words] {
            sqlx::query("update beside set words = $2 where room_id = $1")
                .bind(stage.room)
                .bind(&other)
                .execute(&mut db)
                .await
                .unwrap();
            let said = verified(&stage).await;
            let is_found = said.contains("what lies beside it is not what it holds the hash of");
            assert_eq!(is_found, other.contains("Raspberry"), "{said}");
        }
    });
}

#[test]
fn the_third_contact_with_a_sensitiser_in_ninety_days_is_advised_on() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let member = &stage.cast.member;
        let told = async || {
            let page = Visitor::of(&stage, member).await.open("/notices").await;
            page.page().all(".events li p")
        };
        for days in [-111, -40, -20] {
            let mut one = details(What::SkinContact, Some(bench.product));
            one.happened_at_us += days * 86_400_000_000;
            stage.happened(member, one).await;
        }
        // No other sort counts.
        let spill = details(What::Spill, Some(bench.product));
        stage.happened(member, spill).await;
        let said = told().await;
        assert!(said.is_empty(), "{said:?}");
        // What nobody can name may be one.
        let third = details(What::SkinContact, None);
        stage.happened(member, third).await;
        let said = told().await;
        assert!(said[0].contains("See a doctor"), "{said:?}");
        let page = Visitor::steward(&stage).await.open("/notices").await;
        let said = page.page().all(".events li p");
        let wanted = format!("Offer {} a task away from chemistry.", member.name);
        let of_them = said.iter().filter(|said| said.contains(&member.name));
        let of_them: Vec<&String> = of_them.collect();
        assert_eq!(of_them.len(), 1, "{said:?}");
        assert!(of_them[0].ends_with(&wanted), "{said:?}");
    });
}

#[test]
fn what_one_wants_to_avoid_is_said_on_arriving_and_stands_in_no_book() {
    scenario(async |stage| {
        stage.bench().await;
        let head = async || {
            let mut db = stage.installation.db().await;
            let seq: i64 = sqlx::query_scalar("select seq from head where room_id = $1")
                .bind(stage.room)
                .fetch_one(&mut db)
                .await
                .unwrap();
            seq
        };
        let before = head().await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.open("/incidents").await;
        let refused = member.send(&page, "Keep the note", &[]).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "words");
        let words = [("In words", "PAPER DEVELOPER")];
        let page = member.send_on(&page, "Keep the note", &words).await;
        assert!(page.page().main().contains("PAPER DEVELOPER"));
        let arrive = member.open("/arrive").await.page().main();
        assert!(
            arrive.contains("You wanted to avoid this (PAPER DEVELOPER): Neutral paper developer"),
            "{arrive}"
        );
        // What it is made of is not on file.
        let other = [("In words", "a substance of ours")];
        let page = member.send_on(&page, "Keep the note", &other).await;
        let arrive = member.open("/arrive").await.page().main();
        assert!(!arrive.contains("Nobody listed"), "{arrive}");
        for other in [&stage.cast.trained, &stage.cast.steward] {
            let mut other = Visitor::of(&stage, other).await;
            for path in ["/arrive", "/incidents"] {
                let main = other.open(path).await.page().main();
                assert!(!main.contains("PAPER DEVELOPER"), "{path}");
            }
        }
        assert_eq!(head().await, before);
        let page = member
            .send_on(&page, "Take it away: PAPER DEVELOPER", &[])
            .await;
        assert!(!page.page().main().contains("PAPER DEVELOPER"));
        // The other note is in words, and what this product is made of is not on file.
        let arrive = member.open("/arrive").await.page().main();
        assert!(!arrive.contains("You wanted to avoid"), "{arrive}");
        assert!(arrive.contains("Nobody listed everything that is in Neutral paper developer"));
    });
}
