//! A room's first day through the pages alone: from the one-time link of a fresh
//! installation to a board that is right and a book that two programs verify.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use std::path::Path;
use std::process::Command;

use wetside::clock::Clock;
use wetside::identity::links;
use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify_all;

use crate::harness::{Answer, Browser, Installation, PASSWORD, START, alone, on_runtime};

/// The page a form leads to.
async fn send(browser: &mut Browser, form: &crate::harness::Form) -> Answer {
    browser.submit_and_follow(form).await.expect(200)
}

fn path_of(url: &str) -> String {
    url.trim_start_matches("http://127.0.0.1:8480").to_owned()
}

async fn set_up(installation: &Installation) -> Browser {
    let link = links::new_set_up(&installation.app).await.unwrap().unwrap();
    let mut steward = Browser::new(&installation.app);
    let page = steward.get(&path_of(&link)).await.expect(200).page();
    let form = page
        .form("Set up the room")
        .unwrap()
        .fill("Name of the room", "Harrow Lane cellar")
        .with("zone", "Europe/Berlin")
        .fill("Currency", "EUR")
        .fill("Your name", "Selma Orrin")
        .fill("Log-in name", "selma")
        .fill("Password", PASSWORD);
    let board = send(&mut steward, &form).await;
    assert_eq!(board.page().heading(), "Is the bench good?");
    // The link worked once.
    steward.get(&path_of(&link)).await.expect(410);
    steward
}

async fn invite(installation: &Installation, steward: &mut Browser, room: &str) -> Browser {
    let page = steward
        .get(&format!("{room}/members"))
        .await
        .expect(200)
        .page();
    let form = page.form("Make the link").unwrap().choose("Member");
    let shown = steward.submit(&form).await.expect(200).page();
    let link = shown.first("code").unwrap();
    let mut member = Browser::new(&installation.app);
    let page = member.get(&path_of(&link)).await.expect(200).page();
    let form = page
        .form("Join")
        .unwrap()
        .fill("Your name", "Noor Tamsin")
        .fill("Log-in name", "noor")
        .fill("Password", PASSWORD);
    send(&mut member, &form).await;
    member
}

/// Copies the developer's safety data in, measures a tray, mixes a litre at 1+9.
async fn mix(steward: &mut Browser, room: &str) {
    let products = steward
        .get(&format!("{room}/products"))
        .await
        .expect(200)
        .page();
    let (_, developer) = products
        .links()
        .into_iter()
        .find(|(words, _)| words == "Neutral paper developer")
        .unwrap();
    let edit = steward
        .get(&format!("{developer}/edit"))
        .await
        .expect(200)
        .page();
    let form = edit
        .form("Keep the change")
        .unwrap()
        .fill("H codes", "H317, H319")
        .fill("Date of the data sheet", "2026-03-01");
    send(steward, &form).await;
    let bench = steward
        .get(&format!("{room}/bench"))
        .await
        .expect(200)
        .page();
    let (_, add) = bench
        .links()
        .into_iter()
        .find(|(words, _)| words.starts_with("Add the first tray"))
        .unwrap();
    let form = steward.get(&add).await.expect(200).page();
    let form = form
        .form("Add the tray")
        .unwrap()
        .fill("Name", "Developer")
        .fill("Long edge", "300")
        .fill("Short edge", "250")
        .fill("Floor to rim", "65");
    send(steward, &form).await;
    let board = steward
        .get(&format!("{room}/board"))
        .await
        .expect(200)
        .page();
    let (_, mix) = board
        .links()
        .into_iter()
        .find(|(words, _)| words == "Mix into this tray")
        .unwrap();
    let form = steward.get(&mix).await.expect(200).page();
    let form = form.form("Show what to pour").unwrap().with("volume", "1");
    let sheet = steward.submit(&form).await.expect(200).page();
    // One litre at 1+9 is 100 ml of concentrate and 900 ml of water.
    assert!(sheet.main().contains("100 ml"), "{}", sheet.main());
    assert!(sheet.main().contains("900 ml"), "{}", sheet.main());
    send(steward, &sheet.form("It stands in the tray").unwrap()).await;
}

async fn note_six(member: &mut Browser, room: &str) -> Answer {
    let page = member
        .get(&format!("{room}/sheets/new"))
        .await
        .expect(200)
        .page();
    let form = page
        .form("Note them")
        .unwrap()
        .choose("RC")
        .choose("8×10 in")
        .with("sheets", "6");
    send(member, &form).await
}

#[test]
fn a_room_is_set_up_mixed_in_and_noted_in_and_its_book_verifies() {
    on_runtime(async {
        let installation = alone(Clock::standing_at(START)).await;
        let mut steward = set_up(&installation).await;
        let room = "/rooms/harrow-lane-cellar";
        let mut member = invite(&installation, &mut steward, room).await;
        mix(&mut steward, room).await;
        let noted = note_six(&mut member, room).await;
        // Common practice, no source: 100 sheets of 8×10 in RC a litre at 1+9.
        assert!(
            noted.page().main().contains("6 % of its capacity"),
            "{}",
            noted.page().main()
        );
        let board = member
            .get(&format!("{room}/board"))
            .await
            .expect(200)
            .page();
        assert_eq!(
            board.first(".reason").unwrap(),
            "6 % of its capacity used, 0 % of its life."
        );
        let book = member.get(&format!("{room}/book")).await.expect(200).page();
        assert!(
            book.main().contains("6 sheets of 8×10 in, RC"),
            "{}",
            book.main()
        );
        both_agree(&installation, &mut steward, room).await;
        installation.close().await;
    });
}

/// `verify`, and the script that has nothing of ours, say the same.
async fn both_agree(installation: &Installation, steward: &mut Browser, room: &str) {
    let page = steward
        .get(&format!("{room}/checkpoints"))
        .await
        .expect(200)
        .page();
    send(steward, &page.form("Make one now").unwrap()).await;
    let vault = Vault {
        data: installation.data.clone(),
        key_file: None,
    };
    let owner = installation.app.owner().unwrap();
    let reports = verify_all(owner, KINDS, &vault).await.unwrap();
    assert!(
        reports
            .iter()
            .all(wetside::logbook::verify_report::Report::is_clean)
    );
    let page = steward
        .get(&format!("{room}/checkpoints"))
        .await
        .expect(200)
        .page();
    let (_, whole) = page
        .links()
        .into_iter()
        .find(|(_, href)| href.ends_with(".jsonl"))
        .unwrap();
    let file = installation.data.join("book.jsonl");
    std::fs::write(&file, steward.get(&whole).await.expect(200).body).unwrap();
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("deploy/verify-book");
    let said = Command::new("python3")
        .arg(script)
        .arg(&file)
        .output()
        .unwrap();
    let words = String::from_utf8_lossy(&said.stdout).into_owned();
    assert!(said.status.success(), "{words}");
    assert!(words.contains("sealed"), "{words}");
}
