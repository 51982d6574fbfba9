//! A steward keeps the record; everyone reads it.

use super::{CLEAN, DISTANCE, NAME, PAPERS, RECORD, Visitor, large, said};
use crate::harness::{Answer, scenario};

#[test]
fn a_room_without_lamps_is_taught_and_its_board_says_nothing_of_them() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        assert!(member.notices().await.is_empty());
        let page = member.open("/lamps").await;
        let empty = page.page().first(".empty").unwrap();
        assert!(
            empty.contains("treat every one of them as unsafe"),
            "{empty}"
        );
        assert_eq!(page.page().all(".how li").len(), 7);
        assert!(!page.page().main().contains("Add a lamp"));
        let page = steward.open("/lamps").await;
        let page = steward.follow(&page, "Add a lamp or a screen").await;
        let form = page.page().form("Add it").unwrap();
        assert_eq!(form.value("months"), Some("12"));
    });
}

#[test]
fn a_lamp_is_added_and_what_is_wrong_with_it_is_said_beside_it() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open("/lamps/new").await;
        let wrong = [
            (NAME, ""),
            (DISTANCE, "4"),
            ("Test again after", "0"),
            ("Its light", &"x".repeat(201)),
        ];
        let refused = steward.send(&page, "Add it", &wrong).await.expect(422);
        let problems = refused.page().problems();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        assert_eq!(fields, ["name", "light", "distance", "months"]);
        assert!(problems[2].1.contains("from 50 mm to 10 m"), "{problems:?}");
        // What was typed stays.
        let form = refused.page().form("Add it").unwrap();
        assert_eq!(form.value("distance"), Some("4"));
        let page = steward.add_lamp("Red lamp", "1200").await;
        assert_eq!(page.page().heading(), "Red lamp");
        let about = page.page().first(".lead").unwrap();
        assert_eq!(about, "Safelight. 1200 mm from the nearest paper.");
        assert_eq!(large(&page), vec!["Never tested"; PAPERS.len()]);
        assert_eq!(said(&page)[0], "Treat it as unsafe for this paper.");
        let page = steward.open("/lamps/new").await;
        let same = [(NAME, "Red lamp"), (DISTANCE, "50 cm")];
        let refused = steward.send(&page, "Add it", &same).await.expect(422);
        let problems = refused.page().problems();
        assert_eq!(problems.len(), 1, "{problems:?}");
        assert_eq!(problems[0].0, "name");
    });
}

/// Opens the lamp's own form from its page and keeps a change.
async fn change(steward: &mut Visitor, page: &Answer, fields: &[(&str, &str)]) -> Answer {
    let page = steward.follow(page, "Change it").await;
    steward.send_on(&page, "Keep the change", fields).await
}

#[test]
fn a_test_holds_only_while_the_lamp_hangs_as_it_was_tested() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let page = steward.test(&page, "RC", ("4", "8")).await;
        let time = "2 min 49 s";
        assert_eq!(large(&page)[0], time);
        let page = change(&mut steward, &page, &[(DISTANCE, "900")]).await;
        assert_eq!(large(&page)[0], "Moved since its test");
        let then = &said(&page)[0];
        assert!(then.contains("at 1200 mm"), "{then}");
        // Where it hung before, the test holds again.
        let page = change(&mut steward, &page, &[(DISTANCE, "1200")]).await;
        assert_eq!(large(&page)[0], time);
        let page = change(&mut steward, &page, &[("Its light", "New bulb")]).await;
        assert_eq!(large(&page)[0], "Changed since its test");
        let page = change(&mut steward, &page, &[("Its light", "")]).await;
        // Its name says nothing of its light.
        let page = change(&mut steward, &page, &[(NAME, "Lamp over the sink")]).await;
        assert_eq!(page.page().heading(), "Lamp over the sink");
        assert_eq!(large(&page)[0], time);
        let form = steward.follow(&page, "Change it").await;
        let form = form.page().form("Keep the change").unwrap();
        let screen = form.choose("Screen");
        let page = steward.browser.submit_and_follow(&screen).await;
        assert_eq!(large(&page.expect(200))[0], "Changed since its test");
    });
}

#[test]
fn a_lamp_in_another_space_is_moved_too() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let lamp = steward.test(&page, "RC", ("4", "8")).await;
        let page = steward.open("/bench/spaces").await;
        let name = [("Name of the space", "Cellar")];
        steward.send_on(&page, "Add the space", &name).await;
        let page = steward.follow(&lamp, "Change it").await;
        let form = page.page().form("Keep the change").unwrap();
        let nowhere = form.clone().with("space", &uuid::Uuid::nil().to_string());
        let refused = steward.browser.submit(&nowhere).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "space");
        let cellar = page.page();
        let html = scraper::Html::parse_document(&page.body);
        let option = scraper::Selector::parse("#field-space option").unwrap();
        let ids: Vec<&str> = html
            .select(&option)
            .map(|option| option.value().attr("value").unwrap())
            .collect();
        assert_eq!(
            cellar.all("#field-space option"),
            ["The room itself", "Cellar"]
        );
        let form = form.with("space", ids[1]);
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(large(&page)[0], "Moved since its test");
        let about = page.page().first(".lead").unwrap();
        assert!(about.ends_with("paper. In Cellar."), "{about}");
    });
}

#[test]
fn a_new_paper_was_never_tested() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut page = steward.add_lamp("Red lamp", "1200").await;
        for paper in PAPERS {
            page = steward.test(&page, paper, ("4", "8")).await;
        }
        assert!(steward.notices().await.is_empty());
        let papers = steward.open("/papers").await;
        let form = papers.page().form("Add the class").unwrap();
        let form = form.with("class_name", "Warm tone");
        steward.browser.submit(&form).await.expect(303);
        let page = steward.open("/lamps").await;
        let time = "2 min 49 s";
        assert_eq!(large(&page), [time, time, time, "Never tested"]);
        assert_eq!(
            steward.notices().await,
            ["Red lamp: no fog test yet for Warm tone. Treat its light as unsafe for that paper."]
        );
    });
}

#[test]
fn a_retired_lamp_is_tested_no_more_and_comes_back_with_its_tests() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let page = steward.test(&page, "RC", ("", "2")).await;
        let form = steward.follow(&page, "Record a fog test").await;
        assert_eq!(
            steward.notices().await,
            [
                "Red lamp: its fog test gave no safe time for RC; no fog test yet for FB and RC, \
                 cool tone. Treat its light as unsafe."
            ]
        );
        let ask = steward.follow(&page, "Retire it").await;
        assert_eq!(ask.page().heading(), "Retire Red lamp?");
        let list = steward.send_on(&ask, "Retire it", &[]).await;
        assert!(large(&list).is_empty());
        assert!(steward.notices().await.is_empty());
        let late = form.page().form(RECORD).unwrap().choose("FB");
        let late = late.fill(CLEAN, "4");
        let refused = steward.browser.submit(&late).await.expect(422);
        let summary = refused.page().first(".summary").unwrap();
        assert!(summary.contains("used no more"), "{summary}");
        let list = steward.send_on(&list, "Bring back Red lamp", &[]).await;
        assert_eq!(large(&list)[0], "No safe time");
    });
}

#[test]
fn the_page_on_the_way_to_safelight_leads_to_the_rooms_record() {
    scenario(async |stage| {
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = browser.get(&stage.at("/lamps")).await.expect(200);
        let form = page.page().form("Safelight").unwrap();
        let notice = browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(notice.page().all(".how li").len(), 7);
        let main = notice.page().main();
        assert!(
            main.contains("none is, until it passed a fog test"),
            "{main}"
        );
        let links = notice.page().links();
        let record = links
            .iter()
            .find(|(words, _)| words == "What this room has tested");
        assert_eq!(record.unwrap().1, stage.at("/lamps"));
        // Outside a room there is no record to lead to.
        for back in [
            "/account",
            "/rooms",
            "/rooms/a%22b/board",
            "//elsewhere/rooms/x/y",
        ] {
            let path = format!("/safelight?back={}", back.replace('%', "%25"));
            let page = browser.get(&path).await.expect(200);
            let links = page.page().links();
            assert!(
                links
                    .iter()
                    .all(|(words, _)| words != "What this room has tested")
            );
        }
    });
}
