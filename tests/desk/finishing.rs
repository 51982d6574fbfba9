//! A line's page: its steps, its times and its wash. The times are invented; that
//! the last print that joins restarts the wash for all is `common practice, no source`.

use time::Duration;

use super::{Desk, beside, sentence};
use crate::harness::{Answer, Stage, scenario};

/// The page of the first line.
async fn line_page(desk: &mut Desk) -> Answer {
    let page = desk.open("/bench").await;
    desk.follow(&page, "Steps, times and wash of First line")
        .await
}

/// Enters times of a class: fix, longest, rinse, aid, with it, without it.
async fn enter(desk: &mut Desk, class: &str, times: [&str; 6]) -> Answer {
    let page = line_page(desk).await;
    let words = format!("Enter the times of {class}");
    let page = desk.follow(&page, &words).await;
    let [fix, longest, rinse, aid, with, without] = times;
    let fields = [
        ("In each fixing bath", fix),
        ("Longest in all fixing baths together", longest),
        ("Rinse after the fixer", rinse),
        ("In the wash aid", aid),
        ("Wash after the wash aid", with),
        ("Wash without wash aid", without),
        ("Where these come from", "invented for this test"),
    ];
    desk.send(&page, "Keep these times", &fields).await
}

/// The names of the paper classes, in their order.
async fn classes(desk: &mut Desk) -> Vec<String> {
    let page = line_page(desk).await;
    page.page().all(".times tbody th")
}

/// A line with times of its first two classes.
async fn timed(stage: &Stage) -> (Desk, Vec<String>) {
    let mut desk = Desk::steward(stage).await;
    let classes = classes(&mut desk).await;
    let short = ["45 s", "2", "0.5", "", "", "5"];
    enter(&mut desk, &classes[0], short).await.expect(303);
    let long = ["1", "5", "5", "10", "20", "1 h"];
    enter(&mut desk, &classes[1], long).await.expect(303);
    (desk, classes)
}

async fn press(desk: &mut Desk, label: &str) -> Answer {
    let page = line_page(desk).await;
    let button = format!("My print is in the wash: {label}");
    desk.send_on(&page, &button, &[]).await
}

fn wash(page: &Answer) -> String {
    page.page().first(".wash-until").unwrap_or_default()
}

fn why(page: &Answer) -> String {
    page.page().first(".wash-said").unwrap()
}

#[test]
fn times_stand_in_the_table_with_where_they_come_from() {
    scenario(async |stage| {
        let (mut desk, classes) = timed(&stage).await;
        let page = line_page(&mut desk).await;
        let cells = page.page().all(".times td");
        let said = [
            "45 s",
            "2 min",
            "30 s",
            "none",
            "none",
            "5 min",
            "invented for this test",
        ];
        assert_eq!(cells[..7], said);
        let words = format!("Change the times of {}", classes[0]);
        let page = desk.follow(&page, &words).await;
        let form = page.page().form("Keep these times").unwrap();
        // What is no whole tenth of a minute is written in seconds.
        assert_eq!(form.value("fix"), Some("45\u{a0}s"));
        assert_eq!(form.value("rinse"), Some("0.5"));
        assert_eq!(form.value("wash_aid"), Some(""));
        let page = desk.send_on(&page, "Keep these times", &[]).await;
        assert_eq!(page.page().all(".times td"), cells);
    });
}

#[test]
fn times_that_contradict_each_other_are_refused_beside_their_fields() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let class = classes(&mut desk).await.swap_remove(0);
        let page = enter(&mut desk, &class, ["", "soon", "2 days", "", "", "0"]).await;
        let page = page.expect(422);
        let wrong = ["fix", "longest_fix", "rinse", "wash_without_aid"];
        assert_eq!(beside(&page), wrong);
        let kept = page.page().form("Keep these times").unwrap();
        assert_eq!(kept.value("longest_fix"), Some("soon"));
        let page = enter(&mut desk, &class, ["1", "2", "1", "5", "", "10"]).await;
        assert_eq!(beside(&page.expect(422)), ["wash_with_aid"]);
        let page = enter(&mut desk, &class, ["1", "2", "1", "", "5", "10"]).await;
        assert_eq!(beside(&page.expect(422)), ["wash_aid"]);
        let page = enter(&mut desk, &class, ["1", "2", "1", "5", "11", "10"]).await;
        assert!(sentence(&page.expect(422), "wash_with_aid").contains("shortens the wash"));
        // Two baths of one minute are more than a minute and a half.
        for (name, step) in [("Fix 1", "first_fixer"), ("Fix 2", "second_fixer")] {
            super::spaces::add_tray(&mut desk, name, step).await;
        }
        let page = enter(&mut desk, &class, ["1", "1.5", "1", "", "", "10"]).await;
        assert!(sentence(&page.expect(422), "longest_fix").contains("together take longer"));
        enter(&mut desk, &class, ["1", "2", "1", "", "", "10"])
            .await
            .expect(303);
    });
}

#[test]
fn the_last_print_that_joins_restarts_the_wash_and_the_longest_time_counts() {
    scenario(async |stage| {
        let (mut desk, classes) = timed(&stage).await;
        assert_eq!(
            why(&line_page(&mut desk).await),
            "Nothing is noted in the wash."
        );
        // The clock stands at 13:00 in the room's zone.
        let with_aid = format!("{}, after the wash aid washes 20 min", classes[1]);
        let page = press(&mut desk, &with_aid).await;
        let first = wash(&page);
        assert!(first.starts_with("Wash until "), "{first}");
        assert!(why(&page).starts_with("Running since "), "{}", why(&page));
        stage.pass(Duration::minutes(15));
        let short = format!("{} washes 5 min", classes[0]);
        let page = press(&mut desk, &short).await;
        // Restarted a quarter of an hour later, and the longer time goes on counting.
        assert_ne!(wash(&page), first);
        let said = why(&page);
        assert!(said.starts_with("Restarted "), "{said}");
        let longest = format!("{} needs the longest: 20 min.", classes[1]);
        assert!(said.ends_with(&longest), "{said}");
        stage.pass(Duration::minutes(19));
        assert!(wash(&line_page(&mut desk).await).starts_with("Wash until "));
        stage.pass(Duration::minutes(1));
        let page = line_page(&mut desk).await;
        assert!(wash(&page).starts_with("Washed at "));
        assert!(why(&page).contains("Take those prints out"));
        // Its time is over: the next print begins a wash of its own.
        let page = press(&mut desk, &short).await;
        assert!(why(&page).ends_with(&format!("{} needs the longest: 5 min.", classes[0])));
    });
}

#[test]
fn an_emptied_wash_begins_anew_and_cannot_be_emptied_twice() {
    scenario(async |stage| {
        let (mut desk, classes) = timed(&stage).await;
        let page = press(
            &mut desk,
            &format!("{}, no wash aid washes 1 h", classes[1]),
        )
        .await;
        let empty = "All prints are out of the wash";
        let before = desk.send_on(&page, empty, &[]).await;
        assert_eq!(why(&before), "Nothing is noted in the wash.");
        // From a page that was open all the while, with a key of its own.
        let again = desk.send(&page, empty, &[]).await;
        again.expect(303);
        let id = page.path.rsplit('/').next().unwrap().to_owned();
        let path = desk.at(&format!("/lines/{id}/wash/empty"));
        let key = ("key".to_owned(), "AAAAAAAAAAAAAAAAAAAAAA".to_owned());
        let refused = desk.browser.post(&path, &[key]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("Nothing is noted in this wash"), "{said}");
        let page = press(&mut desk, &format!("{} washes 5 min", classes[0])).await;
        assert!(why(&page).starts_with("Running since "));
    });
}

#[test]
fn a_member_presses_and_a_treasurer_reads() {
    scenario(async |stage| {
        let (_, classes) = timed(&stage).await;
        let mut desk = Desk::of(&stage, &stage.cast.member).await;
        let page = press(&mut desk, &format!("{} washes 5 min", classes[0])).await;
        assert!(wash(&page).starts_with("Wash until "));
        assert!(!page.page().main().contains("Change the times"));
        let mut desk = Desk::of(&stage, &stage.cast.treasurer).await;
        let page = line_page(&mut desk).await;
        assert!(wash(&page).starts_with("Wash until "));
        assert!(page.page().form("All prints are out of the wash").is_none());
    });
}

#[test]
fn a_line_used_no_more_takes_no_print_and_keeps_its_page() {
    scenario(async |stage| {
        let (mut desk, classes) = timed(&stage).await;
        let open = line_page(&mut desk).await;
        let id = open.path.rsplit('/').next().unwrap().to_owned();
        let page = desk.open(&format!("/bench/lines/{id}/retire")).await;
        desk.send_on(&page, "Retire it", &[]).await;
        // From a page that was open all the while.
        let button = format!("My print is in the wash: {} washes 5 min", classes[0]);
        let refused = desk.send(&open, &button, &[]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("used no more"), "{said}");
        let page = desk.open(&format!("/lines/{id}")).await;
        assert!(page.page().form(&button).is_none());
        let path = format!("/lines/{id}/finishing/");
        assert!(!page.page().links().iter().any(|(_, to)| to.contains(&path)));
    });
}

#[test]
fn a_paper_without_a_washing_time_is_said_and_not_let_in() {
    scenario(async |stage| {
        let (mut desk, classes) = timed(&stage).await;
        assert!(classes.len() > 1);
        let mut page = desk.open("/papers").await;
        let fields = [("Class", "Postcards")];
        page = desk.send_on(&page, "Add the class", &fields).await;
        assert!(page.page().main().contains("Postcards"));
        let page = line_page(&mut desk).await;
        let main = page.page().main();
        assert!(
            main.contains("not listed here no washing time is entered"),
            "{main}"
        );
        let form = page.page().form("All prints are out of the wash");
        assert!(form.is_none(), "nothing is in it");
        // A button of another class, made to say this one.
        let links = page.page().links();
        let words = "Enter the times of Postcards";
        let (_, to) = links.iter().find(|(text, _)| text == words).unwrap();
        let class = to.rsplit('/').next().unwrap();
        let button = format!("My print is in the wash: {} washes 5 min", classes[0]);
        let form = page
            .page()
            .form(&button)
            .unwrap()
            .with("paper_class", class);
        let refused = desk.browser.submit(&form).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(
            said.contains("Nobody entered how long this paper washes"),
            "{said}"
        );
    });
}
