//! Paired screens as they hang there: read from three metres, kept up to date, and alive
//! when their server comes and goes.

use std::time::{Duration, Instant};

use serde_json::json;
use uuid::Uuid;
use wetside::bench::actions::{NewLine, NewTray, set_line, set_tray};
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::outages::What;
use wetside::outages::actions::{NewOutage, begin};
use wetside::rights::{KeepBench, Mix, NoteOutages};

use super::chromium::Chromium;
use super::relay::Relay;
use super::site::Site;
use super::tab::Tab;
use super::walk::{hold_fit, in_safelight};
use crate::access::screens::paired;
use crate::harness::{Bench, Stage, new_key, scenario, tray_on};

const IS_CONNECTED: &str = "return document.getElementById('lost').hidden";

const IS_LOST: &str = "return !document.getElementById('lost').hidden";

async fn says(wall: &Tab, word: &str) {
    let shown = "document.querySelector('.verdict-word')?.textContent.trim()";
    let script = format!("return {shown} === '{word}'");
    wall.until(word, &script).await;
}

/// Emergency is read at a screen, and the screen comes back to its start.
async fn emergency_opens(tab: &Tab, start: &str) {
    tab.tap("Emergency").await;
    assert_eq!(tab.text("h1").await, "Emergency");
    assert!(
        tab.text(".first")
            .await
            .contains("Eyes or skin: running water at once")
    );
    tab.tap("Back to the screen").await;
    let script = format!("return !!document.querySelector('{start}')");
    tab.until("the screen is back", &script).await;
}

#[test]
fn wall_and_door_outlive_their_server() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let relay = Relay::open().await;
        let first = Site::behind(&relay, &stage.installation).await;
        let chromium = Chromium::start();
        let (wall, door) = (
            first
                .screen(&chromium, &paired(&stage, "board").await.1)
                .await,
            first
                .screen(&chromium, &paired(&stage, "door").await.1)
                .await,
        );
        for (tab, width) in [(&wall, 1920), (&door, 1280)] {
            in_safelight(tab).await;
            tab.size(width, 1080).await;
            tab.open("/screen").await;
            let kept = "return emergency !== null";
            tab.until("Emergency is at hand", kept).await;
            tab.run("window.isTheSame = true", vec![]).await;
        }
        says(&wall, "Ready").await;
        let trained = &stage.cast.trained;
        let noted_at = Instant::now();
        stage.note(trained, &bench, 0, 80).await.unwrap();
        says(&wall, "Test first").await;
        // It asks every five seconds; the rest is for a busy machine.
        assert!(noted_at.elapsed() < Duration::from_secs(10));

        relay.shut();
        first.stop();
        emergency_opens(&wall, ".wall-rows").await;
        emergency_opens(&door, ".door-deeds").await;
        door.tap("Arrive").await;
        let not_sent = "return !document.getElementById('not-sent').hidden";
        door.until("it says that nothing was sent", not_sent).await;
        for (tab, what) in [(&wall, "a wall"), (&door, "a door")] {
            tab.until("it is not connected", IS_LOST).await;
            let said = tab.text("#lost").await;
            assert!(said.starts_with("As of "), "{said}");
            assert!(said.contains(", not connected."), "{said}");
            hold_fit(tab, what).await;
        }
        emergency_opens(&wall, ".wall-rows").await;
        stage.note(trained, &bench, 0, 80).await.unwrap();

        let second = Site::behind(&relay, &stage.installation).await;
        says(&wall, "Replace").await;
        for tab in [&wall, &door] {
            tab.until("it is connected again", IS_CONNECTED).await;
            let is_the_same = tab.run("return window.isTheSame", vec![]).await;
            assert_eq!(is_the_same, json!(true), "it was loaded anew");
        }
        emergency_opens(&wall, ".wall-rows").await;
        drop(second);
    });
}

/// What a person at three metres misses, a sentence each; nothing is well.
const FAR: &str = include_str!("far.js");

const LAYOUT: &str = include_str!("layout.js");

#[test]
fn the_wall_is_read_from_three_metres() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let site = Site::open(&stage.installation).await;
        let chromium = Chromium::start();
        let wall = site
            .screen(&chromium, &paired(&stage, "board").await.1)
            .await;
        in_safelight(&wall).await;
        wall.size(1920, 1080).await;
        let mut on_it = vec![(bench.line, bench.tray)];
        for trays in [1, 2, 4, 8, 12] {
            fill(&stage, &bench, &mut on_it, trays).await;
            look_from_afar(&wall, trays, "as it begins").await;
        }
        hold_fit(&wall, "a wall of twelve trays").await;
        // Everything that makes it fuller: what is worn out, and a fan that is off.
        stage
            .note(&stage.cast.member, &bench, 0, 160)
            .await
            .unwrap();
        look_from_afar(&wall, 12, "one used up").await;
        fan_off(&stage).await;
        look_from_afar(&wall, 12, "the fan off").await;
    });
}

/// Everything on the wall is seen, in the font it asks for and in the one it may get.
async fn look_from_afar(wall: &Tab, trays: usize, when: &str) {
    wall.open("/screen").await;
    for font in ["", "DejaVu Sans"] {
        let far = wall.run(FAR, vec![json!(trays), json!(font)]).await;
        assert_eq!(far, json!([]), "{trays} trays, {when}, in {font:?}");
        let layout = wall.run(LAYOUT, vec![json!(false)]).await;
        assert_eq!(layout, json!([]), "{trays} trays, {when}, in {font:?}");
    }
}

const NAMES: [&str; 6] = [
    "Developer",
    "Stop bath",
    "First fixing bath",
    "Second fixing bath",
    "Wash aid",
    "Toner",
];

/// Puts trays on the bench until there are so many, six a line; every other holds a mix.
async fn fill(stage: &Stage, bench: &Bench, on_it: &mut Vec<(Uuid, Uuid)>, trays: usize) {
    let app = &stage.installation.app;
    while on_it.len() < trays {
        let place = on_it.len();
        let line = match place % NAMES.len() {
            0 => add_line(stage, place).await,
            _ => on_it[place - 1].0,
        };
        let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
        let new = NewTray {
            name: NAMES[place % NAMES.len()].to_owned(),
            ..tray_on(line)
        };
        let set = set_tray(app, &permit.unwrap(), new_key(), new).await;
        let tray = set.unwrap().id("tray").unwrap();
        if place.is_multiple_of(2) {
            pour(stage, bench, tray).await;
        }
        on_it.push((line, tray));
    }
}

async fn add_line(stage: &Stage, place: usize) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let new = NewLine {
        id: None,
        name: format!("Line {}", place / NAMES.len() + 1),
        position: None,
        space_id: None,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_line(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("line").unwrap()
}

async fn pour(stage: &Stage, bench: &Bench, tray: Uuid) {
    let permit = stage.permit::<Mix>(&stage.cast.trained).await;
    let new = NewMix {
        vessel: VesselId::Tray(tray),
        dilution_id: bench.dilution,
        volume_ul: 1_000_000,
        stock_id: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    mix(app, &permit.unwrap(), new_key(), new).await.unwrap();
}

async fn fan_off(stage: &Stage) {
    let permit = stage.permit::<NoteOutages>(&stage.cast.member).await;
    let new = NewOutage {
        what: What::Fan,
        space_id: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    begin(app, &permit.unwrap(), new_key(), new).await.unwrap();
}
