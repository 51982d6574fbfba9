//! Labels for what stands in a tray: what they say, in every size, and when there is none.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use time::Duration;
use uuid::Uuid;
use wetside::labels::QrCode;
use wetside::labels::views::Size;
use wetside::mixes::Why;
use wetside::mixes::actions::{NewDiscard, discard};
use wetside::rights::Discard;

use crate::harness::{Answer, Bench, Stage, new_key, scenario};

fn label_path(stage: &Stage, bench: &Bench, query: &str) -> String {
    stage.at(&format!("/mixes/{}/label{query}", bench.mix))
}

fn said(page: &Answer) -> String {
    page.page().first(".bath-label").unwrap()
}

/// A litre at 1+9 keeps eight hours in an open tray. Source: common practice, no
/// source. Mixed at 12:00 UTC, which is 13:00 in Berlin in November (IANA, file europe).
#[test]
fn a_label_says_what_stands_there_and_until_when() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let mut member = stage.browser(&stage.cast.member).await;
        let tray = stage.at(&format!("/trays/{}", bench.tray));
        let tray_page = member.get(&tray).await.expect(200).page();
        let links = tray_page.links();
        let (_, to_label) = links.iter().find(|(words, _)| words == "Label").unwrap();
        assert_eq!(*to_label, label_path(&stage, &bench, ""));

        let page = member.get(to_label).await.expect(200);
        let said = said(&page);
        for words in [
            "Developer",
            "1+9",
            "Working strength",
            "1 L",
            "Mixed Wed 25 Nov 2026, 13:00",
            &stage.cast.trained.name,
            "Use by Wed 25 Nov 2026, 21:00",
            "Concentrate as supplied: Warning H317",
            "Gloves and tongs.",
            "Not a supplier’s label",
            "The cellar",
        ] {
            assert!(said.contains(words), "{words} in {said}");
        }
        assert!(!said.to_lowercase().contains("harmless"), "{said}");
        assert!(!said.contains("demo"), "{said}");
        let back = page.page().links();
        assert!(back.contains(&("Developer".to_owned(), tray.clone())));
    });
}

/// The code is the public address of the tray's page.
#[test]
fn the_code_leads_to_the_tray() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let mut member = stage.browser(&stage.cast.member).await;
        let page = member.get(&label_path(&stage, &bench, "")).await;
        let page = page.expect(200);
        let path = stage.at(&format!("/trays/{}", bench.tray));
        let address = stage.installation.app.address().absolute(&path);
        assert!(address.starts_with("http://"), "{address}");
        let drawn = QrCode::of(&address).unwrap();
        assert!(page.body.contains(&drawn.path), "{address}");
        // In Safelight it waits until it is asked for, and is there to be printed.
        member.keep("display", "safelight");
        let page = member.get(&label_path(&stage, &bench, "")).await;
        let page = page.expect(200);
        assert!(page.body.contains(&drawn.path));
        let links = page.page().links();
        assert!(links.iter().any(|(_, href)| href == "#code"), "{links:?}");
    });
}

#[test]
fn every_size_is_one_tap_away_and_no_other() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let mut member = stage.browser(&stage.cast.member).await;
        for size in Size::ALL {
            let query = format!("?size={}", size.name());
            let page = member.get(&label_path(&stage, &bench, &query)).await;
            let page = page.expect(200);
            let body = format!("body.label-page.page-{}", size.name());
            assert_eq!(page.page().all(&body).len(), 1, "{query}");
            let chosen = page.page().all(".sizes [aria-current]");
            assert_eq!(chosen.len(), 1, "{query}");
            for other in Size::ALL {
                let to = label_path(&stage, &bench, &format!("?size={}", other.name()));
                assert!(page.page().links().iter().any(|(_, href)| *href == to));
            }
            // Where there is room, the codes have their texts.
            let has_text = said(&page).contains("allergic skin reaction");
            assert_eq!(has_text, matches!(size, Size::A6 | Size::A5), "{query}");
        }
        let other = label_path(&stage, &bench, "?size=a0");
        member.get(&other).await.expect(422);
    });
}

/// Source: ISO 216 for A5, A6 and A7; the strip is a tape of 62 mm, common practice, no
/// source.
#[test]
fn every_size_has_its_paper() {
    let sheet = include_str!("../static/print.css");
    for (size, paper) in [
        (Size::Strip, "62mm 100mm"),
        (Size::A7, "74mm 105mm"),
        (Size::A6, "105mm 148mm"),
        (Size::A5, "148mm 210mm"),
    ] {
        let name = size.name();
        // CSS names A5 itself, and neither A6 nor A7.
        let by_name = format!("@page {name} {{ size: A5;");
        let by_sides = format!("@page {name} {{ size: {paper};");
        let is_named = size == Size::A5 && sheet.contains(&by_name);
        assert!(is_named || sheet.contains(&by_sides), "{name}");
        let asks = format!(".page-{name} {{ page: {name}; }}");
        assert!(sheet.contains(&asks), "{asks}");
    }
}

#[test]
fn a_bath_that_is_over_is_not_labelled_for_use() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let path = label_path(&stage, &bench, "");
        let mut member = stage.browser(&stage.cast.member).await;
        let fresh = member.get(&path).await.expect(200);
        assert!(!fresh.page().main().contains("Replace"));
        stage.pass(Duration::hours(9));
        let mut member = stage.browser(&stage.cast.member).await;
        let over = member.get(&path).await.expect(200);
        let flash = over.page().first(".flash").unwrap();
        assert!(flash.contains("Replace"), "{flash}");
    });
}

#[test]
fn what_is_gone_has_no_label_and_another_rooms_mix_is_not_there() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let path = label_path(&stage, &bench, "");
        let mut member = stage.browser(&stage.cast.member).await;
        let nowhere = stage.at(&format!("/mixes/{}/label", Uuid::nil()));
        member.get(&nowhere).await.expect(404);
        let mut stranger = stage.browser(&stage.cast.stranger).await;
        stranger.get(&path).await.expect(404);
        let elsewhere = path.replace(&stage.slug, &stage.other_slug);
        stranger.get(&elsewhere).await.expect(404);

        let app = &stage.installation.app;
        let permit = stage.permit::<Discard>(&stage.cast.steward).await.unwrap();
        let new = NewDiscard {
            mix_id: bench.mix,
            container: "D-1".to_owned(),
            volume_ul: 1_000_000,
            why: Why::default(),
            happened_at_us: None,
        };
        discard(app, &permit, new_key(), new).await.unwrap();
        let gone = member.get(&path).await.expect(409);
        assert!(gone.page().main().contains("stands there no more"));
    });
}

/// The sheet at the door leads to the page that takes arrivals, from whatever phone.
#[test]
fn the_sheet_at_the_door_leads_to_arriving() {
    scenario(async |stage: Stage| {
        let mut member = stage.browser(&stage.cast.member).await;
        let roll = member.get(&stage.at("/present")).await.expect(200);
        let links = roll.page().links();
        let link = links
            .iter()
            .find(|(words, _)| words == "Sheet for the door");
        let sheet = member.get(&link.unwrap().1).await.expect(200);
        let arrive = stage.at("/arrive");
        let leads_to = format!("http://127.0.0.1:8480{arrive}");
        assert!(sheet.page().main().contains(&leads_to));
        let code = QrCode::of(&leads_to).unwrap();
        assert!(
            sheet.body.contains(&code.path),
            "the code is of that address"
        );
        let there = member.get(&arrive).await.expect(200);
        assert!(there.page().form("I am here").is_some());
    });
}
