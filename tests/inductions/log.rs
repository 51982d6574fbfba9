//! The log: one or a group, paper from before, renewing, withdrawing, as a table; and
//! who reads it.

use wetside::error::Error;
use wetside::inductions::Standing;
use wetside::inductions::actions::NewInduction;
use wetside::topics::Required;

use super::refused;
use crate::harness::{Stage, Visitor, scenario};

#[test]
fn a_group_is_recorded_at_once_and_each_confirms_for_themself() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        stage.topic("Spills", Required::Always).await;
        stage.topic("Toning", Required::Offered).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/inductions").await;
        let page = steward.follow(&page, "Record an induction").await;
        // What is asked for now is ticked already; what is only offered is not.
        let mut form = page.page().form("Record it").unwrap();
        for person in [member, trained] {
            assert!(page.page().main().contains(&person.name));
            form.fields
                .push(("people".to_owned(), person.id.to_string()));
        }
        steward.browser.submit_and_follow(&form).await.expect(200);
        stage.confirms(member).await.unwrap();
        assert!(stage.lacks(member).await.is_empty());
        assert_eq!(stage.lacks(trained).await[0].1, Standing::Waits);
        stage.comes(member).await.unwrap();
        refused(stage.comes(trained).await);
        let mut own = Visitor::of(&stage, member).await;
        let page = own.open("/inductions/own").await;
        let said = page.page().main();
        assert!(said.contains("In force until Sat 25 Nov 2028"), "{said}");
        assert!(!said.contains("Toning, version"), "{said}");
        let records = page.page().all(".ledger-said");
        assert_eq!(records.len(), 1, "{records:?}");
        assert!(!page.body.contains(&trained.name));
    });
}

pub(super) fn on_paper(person: uuid::Uuid, topic: uuid::Uuid, day: &str) -> NewInduction {
    NewInduction {
        person_ids: vec![person],
        topic_ids: vec![topic],
        given_on: Some(day.to_owned()),
        is_on_paper: true,
        remark: "Grey binder, page 3".to_owned(),
        renews_id: None,
    }
}

#[test]
fn a_paper_counts_from_its_own_date_and_says_so() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        let spills = stage.topic("Spills", Required::Always).await;
        stage
            .records(on_paper(member.id, spills, "2025-03-10"))
            .await
            .unwrap();
        assert!(stage.lacks(member).await.is_empty());
        // Older than it is good for.
        stage
            .records(on_paper(trained.id, spills, "2024-11-24"))
            .await
            .unwrap();
        let ended = Standing::Ended("2026-11-24".to_owned());
        assert_eq!(stage.lacks(trained).await[0].1, ended);
        let path = format!("/inductions/people/{}", member.id);
        let page = Visitor::steward(&stage).await.open(&path).await;
        let said = page.page().first(".ledger-said").unwrap();
        assert!(said.contains("from a signed paper"), "{said}");
        assert!(
            said.contains("Mon 10 Mar 2025") && said.contains("Confirmed on paper."),
            "{said}"
        );
        let tomorrow = stage
            .records(on_paper(member.id, spills, "2026-11-26"))
            .await;
        assert!(matches!(tomorrow, Err(Error::Invalid(_))));
    });
}

#[test]
fn it_is_renewed_from_its_own_record() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("Spills", Required::Always).await;
        stage
            .records(on_paper(member.id, spills, "2024-12-10"))
            .await
            .unwrap();
        let mut steward = Visitor::steward(&stage).await;
        let path = format!("/inductions/people/{}", member.id);
        let overview = steward.open("/inductions").await;
        assert!(
            overview
                .page()
                .main()
                .contains("Spills: ends Thu 10 Dec 2026")
        );
        let page = steward.open(&path).await;
        let words = page.page().links();
        let link = words
            .iter()
            .find(|(words, _)| words.starts_with("Read or print it"));
        let record = steward.browser.get(&link.unwrap().1).await.expect(200);
        let form = steward.follow(&record, "Renew it").await;
        let page = steward.send_on(&form, "Record it", &[]).await;
        assert!(page.page().main().contains("It renews an earlier record"));
        stage.confirms(member).await.unwrap();
        let overview = steward.open("/inductions").await;
        assert!(!overview.page().main().contains("Spills: ends"));
    });
}

#[test]
fn a_withdrawn_record_counts_no_more_and_stays() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("Spills", Required::Always).await;
        let record = stage.inducts(member, &[spills]).await.unwrap();
        stage.confirms(member).await.unwrap();
        let mut steward = Visitor::steward(&stage).await;
        let path = format!("/inductions/records/{record}/withdraw");
        let page = steward.open(&path).await;
        let empty = steward.send(&page, "Withdraw it", &[("Why", " ")]).await;
        assert!(empty.expect(422).page().main().contains("Fill this in"));
        let reason = [("Why", "Written down for somebody else")];
        let kept = steward.send_on(&page, "Withdraw it", &reason).await;
        let said = kept.page().main();
        assert!(
            said.contains("Withdrawn: Written down for somebody else."),
            "{said}"
        );
        assert_eq!(stage.lacks(member).await[0].1, Standing::Never);
        refused(stage.comes(member).await);
    });
}

#[test]
fn the_log_is_a_table_too() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("=Spills", Required::Always).await;
        stage
            .records(on_paper(member.id, spills, "2025-03-10"))
            .await
            .unwrap();
        let answer = Visitor::steward(&stage).await.open("/inductions.csv").await;
        let mut table = csv::Reader::from_reader(answer.body.as_bytes());
        let rows: Vec<csv::StringRecord> = table.records().map(Result::unwrap).collect();
        assert_eq!(rows.len(), 1);
        let row: Vec<&str> = rows[0].iter().collect();
        assert_eq!(
            row[1..7],
            [
                &*member.name,
                "2025-03-10",
                "'=Spills",
                "1",
                "2027-03-10",
                &*stage.cast.steward.name,
            ]
        );
        assert_eq!([row[7], row[9]], ["on_paper", "paper"]);
    });
}

/// What a person may not open.
async fn closed(stage: &Stage, person: &wetside::identity::Person, path: &str) -> u16 {
    let mut browser = stage.browser(person).await;
    browser.get(&stage.at(path)).await.status.as_u16()
}

#[test]
fn a_record_is_its_persons_and_the_stewards() {
    scenario(async |stage| {
        let cast = &stage.cast;
        let spills = stage.topic("Spills", Required::Always).await;
        let record = stage.inducts(&cast.member, &[spills]).await.unwrap();
        let path = format!("/inductions/records/{record}");
        for (person, status) in [
            (&cast.member, 200),
            (&cast.steward, 200),
            (&cast.trained, 404),
            (&cast.treasurer, 404),
            (&cast.stranger, 404),
            (&cast.neighbour, 404),
        ] {
            assert_eq!(
                closed(&stage, person, &path).await,
                status,
                "{}",
                person.name
            );
        }
        for path in ["/inductions", "/inductions.csv", "/inductions/in-force"] {
            assert_eq!(closed(&stage, &cast.treasurer, path).await, 403, "{path}");
            assert_eq!(closed(&stage, &cast.stranger, path).await, 404, "{path}");
        }
        // In the book, others see that there is an entry and nothing of it.
        for person in [&cast.trained, &cast.treasurer] {
            let book = Visitor::of(&stage, person).await.open("/book").await;
            let said = book.page().main();
            assert!(said.contains("not shown to you"), "{said}");
            assert!(!said.contains("was inducted"), "{said}");
        }
        let book = Visitor::of(&stage, &cast.member).await.open("/book").await;
        assert!(book.page().main().contains("was inducted on Spills"));
    });
}
