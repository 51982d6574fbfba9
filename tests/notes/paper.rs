//! A bench sheet that was kept on paper: entered for everyone on it, whole or not at all.

use time::Duration;
use wetside::book::filter::Reader;
use wetside::book::reading;
use wetside::identity::Person;
use wetside::rights::Role;

use super::beside;
use crate::harness::{Bench, Browser, Form, Stage, scenario};

const BUTTON: &str = "Enter the sheet";

/// Writes into one row's input of that name, the first row being 0.
fn put(form: &mut Form, name: &str, row: usize, value: &str) {
    let mut fields = form.fields.iter_mut().filter(|(other, _)| other == name);
    fields.nth(row).unwrap().1 = value.to_owned();
}

/// Adds a tick of a row, as a browser sends it.
fn tick(form: &mut Form, name: &str, row: usize) {
    form.fields.push((name.to_owned(), (row + 1).to_string()));
}

async fn opened(stage: &Stage, browser: &mut Browser) -> Form {
    let sheet = browser.get(&stage.at("/bench-sheet")).await.expect(200);
    let words = "Enter a sheet that was kept by hand";
    let page = super::follow(browser, &sheet, words).await;
    page.page().form(BUTTON).unwrap()
}

/// Fills in a row of sheets.
fn note(form: &mut Form, row: usize, bench: &Bench, (who, time, count): (&Person, &str, &str)) {
    put(form, "time", row, time);
    put(form, "person", row, &who.id.to_string());
    put(form, "line", row, &bench.line.to_string());
    put(form, "paper_class", row, &bench.classes[0].to_string());
    put(form, "sheet_size", row, &bench.size.to_string());
    put(form, "sheets", row, count);
}

/// Fills in a row of a check.
fn check(form: &mut Form, row: usize, bench: &Bench, (who, time): (&Person, &str), what: &str) {
    put(form, "check_time", row, time);
    put(form, "check_person", row, &who.id.to_string());
    put(form, "tray", row, &bench.tray.to_string());
    put(form, "check", row, what);
}

/// Kinds, writers and moments of the last entries, oldest first.
async fn last(stage: &Stage, count: usize) -> Vec<(String, Option<uuid::Uuid>, String)> {
    let steward = &stage.cast.steward;
    let reader = Reader::new(steward.id, Role::Steward);
    let app = &stage.installation.app;
    let scope = stage.whole_room();
    let page = reading::page_for(app, scope, reader, Default::default(), None);
    let page = page.await.unwrap();
    let shown = page.lines.iter().take(count).rev();
    shown
        .map(|line| {
            let shown = line.shown.as_ref().unwrap();
            let at = shown.happened_at.time().to_string();
            (shown.kind.clone(), shown.actor, at)
        })
        .collect()
}

/// Three and ten sheets at 100 a litre. Source: common practice, no source.
#[test]
fn rows_are_written_in_the_order_they_happened_and_once() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::hours(4));
        let cast = stage.cast.clone();
        let mut browser = stage.browser(&cast.trained).await;
        let mut form = opened(&stage, &mut browser).await;
        note(&mut form, 0, &bench, (&cast.steward, "15:30", "10"));
        note(&mut form, 2, &bench, (&cast.member, "14:05", "3"));
        check(&mut form, 1, &bench, (&cast.member, "14.30"), "temperature");
        put(&mut form, "figure", 1, "20.5");
        let entered = browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(entered.page().heading(), "Sheet entered");
        let rows = entered.page().all(".events li");
        assert_eq!(rows.len(), 3, "{rows:?}");
        assert!(rows[0].contains("3 sheets"), "{rows:?}");
        assert!(rows[0].contains(&cast.member.name), "{rows:?}");
        assert!(rows[1].contains("20.5 °C"), "{rows:?}");
        assert!(rows[1].contains(&cast.member.name), "{rows:?}");
        assert!(rows[2].contains("10 sheets"), "{rows:?}");
        assert_eq!(stage.spent(bench.mix).await, 130_000_000);
        let writer = Some(cast.trained.id);
        let said = [
            ("noted", "13:05:00.0"),
            ("reading", "13:30:00.0"),
            ("noted", "14:30:00.0"),
        ];
        let said = said.map(|(kind, at)| (kind.to_owned(), writer, at.to_owned()));
        assert_eq!(last(&stage, 3).await, said);

        let again = browser.submit_and_follow(&form).await;
        assert_eq!(again.path, entered.path);
        assert_eq!(stage.spent(bench.mix).await, 130_000_000);
        // Whose note it is sees who entered it.
        let mut theirs = stage.browser(&cast.member).await;
        let links = entered.page().links();
        let (_, to) = links
            .iter()
            .find(|(text, _)| text.contains("3 sheets"))
            .unwrap();
        let noted = theirs.get(to).await.expect(200);
        let by = format!("Entered for you by {}.", cast.trained.name);
        assert!(noted.page().main().contains(&by));
    });
}

#[test]
fn what_is_wrong_stands_beside_its_row_and_nothing_is_written_or_lost() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::hours(4));
        let cast = stage.cast.clone();
        let mut browser = stage.browser(&cast.steward).await;
        let before = last(&stage, 1).await;
        let mut form = opened(&stage, &mut browser).await;
        note(&mut form, 0, &bench, (&cast.member, "14:05", "3"));
        // Nothing stood there before one o'clock.
        note(&mut form, 1, &bench, (&cast.member, "12:30", "4"));
        note(&mut form, 3, &bench, (&cast.member, "14:50", "5"));
        check(&mut form, 0, &bench, (&cast.member, "12:30"), "test_print");
        put(&mut form, "outcome", 0, "good");
        // A colour tells nothing of a developer.
        check(
            &mut form,
            2,
            &bench,
            (&cast.member, "14:00"),
            "indicator_colour",
        );
        put(&mut form, "outcome", 2, "good");
        let page = browser.submit(&form).await.expect(422);
        let mut wrong = beside(&page);
        wrong.sort();
        assert_eq!(wrong, ["check-1-tray", "check-3-check", "row-2-line"]);
        assert_eq!(last(&stage, 1).await, before);
        assert_eq!(stage.spent(bench.mix).await, 0);

        let mut form = page.page().form(BUTTON).unwrap();
        for (name, row, value) in [("time", 3, "14:50"), ("sheets", 1, "4"), ("sheets", 3, "5")] {
            let kept: Vec<_> = form.fields.iter().filter(|(of, _)| of == name).collect();
            assert_eq!(kept[row].1, value);
        }
        tick(&mut form, "unknown_tray", 1);
        for row in [0, 2] {
            for name in ["check_time", "check_person", "tray", "check", "outcome"] {
                put(&mut form, name, row, "");
            }
        }
        browser.submit(&form).await.expect(303);
        assert_eq!(stage.spent(bench.mix).await, 80_000_000);
    });
}

#[test]
fn what_cannot_be_read_stands_beside_its_row() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::hours(2));
        let cast = stage.cast.clone();
        let mut browser = stage.browser(&cast.trained).await;
        let form = opened(&stage, &mut browser).await;
        let page = browser.submit(&form).await.expect(422);
        let summary = page.page().first(".summary").unwrap();
        assert!(summary.contains("Nothing is filled in"), "{summary}");

        let mut form = page.page().form("More rows").unwrap();
        note(&mut form, 5, &bench, (&cast.member, "half three", ""));
        put(&mut form, "check", 0, "emergence");
        let more = browser.submit(&form).await.expect(200);
        let form = more.page().form(BUTTON).unwrap();
        assert_eq!(
            form.fields.iter().filter(|(of, _)| of == "time").count(),
            12
        );
        let page = browser.submit(&form).await.expect(422);
        let wrong = [
            "row-6-time",
            "row-6-sheets",
            "check-1-time",
            "check-1-person",
            "check-1-tray",
            "check-1-figure",
            "check-1-bath-temperature",
            "check-1-sample",
        ];
        let mut found = beside(&page);
        found.sort();
        let mut wrong = wrong.map(str::to_owned);
        wrong.sort();
        assert_eq!(found, wrong);
        // A row that nobody counted needs no number.
        let mut form = page.page().form(BUTTON).unwrap();
        put(&mut form, "time", 5, "14:10");
        tick(&mut form, "uncounted", 5);
        put(&mut form, "check", 0, "");
        browser.submit(&form).await.expect(303);
        // Five where nobody ever counted: from memory.
        assert_eq!(stage.spent(bench.mix).await, 50_000_000);
        assert_eq!(super::verdict(&stage, &cast.member).await, "Test first");
    });
}

#[test]
fn only_those_who_print_here_can_be_named_and_members_do_not_enter() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::hours(2));
        let cast = stage.cast.clone();
        let mut theirs = stage.browser(&cast.member).await;
        theirs
            .get(&stage.at("/bench-sheet/enter"))
            .await
            .expect(403);
        let mut browser = stage.browser(&cast.steward).await;
        let mut form = opened(&stage, &mut browser).await;
        note(&mut form, 0, &bench, (&cast.treasurer, "14:05", "3"));
        note(&mut form, 1, &bench, (&cast.stranger, "14:06", "3"));
        let page = browser.submit(&form).await.expect(422);
        let mut wrong = beside(&page);
        wrong.sort();
        assert_eq!(wrong, ["row-1-person", "row-2-person"]);
    });
}
