//! Walks of which somebody counted the steps: on a phone, no address typed, each by
//! finger and by keyboard alone.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use axum::Router;
use axum::extract::Request;
use axum::middleware::{Next, from_fn};
use wetside::clock::Clock;
use wetside::identity::links;

use super::chromium::Chromium;
use super::hands::{By, Hands};
use super::site::Site;
use crate::harness::{PASSWORD, START, alone, on_runtime, scenario};

/// Pages as the browser loads them, counted at the door.
#[derive(Clone, Default)]
struct Loads(Arc<AtomicUsize>);

impl Loads {
    fn around(&self, service: Router) -> Router {
        let loads = self.clone();
        service.layer(from_fn(move |request: Request, next: Next| {
            let loads = loads.clone();
            async move {
                let mode = request.headers().get("sec-fetch-mode");
                let is_page = mode.is_some_and(|mode| mode == "navigate");
                let response = next.run(request).await;
                if is_page && !response.status().is_redirection() {
                    loads.0.fetch_add(1, Ordering::Relaxed);
                }
                response
            }
        }))
    }

    fn count(&self) -> usize {
        self.0.load(Ordering::Relaxed)
    }
}

#[test]
fn six_sheets_again_from_the_bookmark() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let member = &stage.cast.member;
        stage.note(member, &bench, 0, 6).await.unwrap();
        let chromium = Chromium::start();
        let site = Site::open(&stage.installation).await;
        for by in [By::Finger, By::Keyboard] {
            let tab = site.phone(&chromium, Some(member)).await;
            tab.open(&stage.at("/sheets/new")).await;
            let mut hands = Hands::at(&tab, by);
            hands.go("Note them").await;
            assert_eq!(tab.text("h1").await, "Noted");
            let noted = tab.text(".noted-what").await;
            assert!(noted.starts_with("6 sheets, 8×10 in, RC"), "{noted}");
            assert!(hands.taps <= 3, "{by:?}: {} taps", hands.taps);
        }
    });
}

#[test]
fn from_a_fresh_installation_to_the_first_board() {
    on_runtime(async {
        for by in [By::Finger, By::Keyboard] {
            let installation = alone(Clock::standing_at(START)).await;
            let (chromium, loads) = (Chromium::start(), Loads::default());
            let site = Site::open_with(&installation, |service| loads.around(service)).await;
            let link = links::new_set_up(&site.app).await.unwrap().unwrap();
            let tab = site.phone(&chromium, None).await;
            let before = loads.count();
            tab.open(link.strip_prefix(&site.origin()).unwrap()).await;
            let mut hands = Hands::at(&tab, by);
            set_up(&mut hands).await;
            assert_eq!(tab.text("h1").await, "Is the bench good?");
            let first = loads.count() - before;
            assert!(first <= 9, "{by:?}: {first} page loads to the first board");
            tray_that_is_ready(&mut hands).await;
            let ready = loads.count() - before;
            assert!(
                ready <= 13,
                "{by:?}: {ready} page loads to the first verdict"
            );
            drop(site);
            installation.close().await;
        }
    });
}

async fn set_up(hands: &mut Hands<'_>) {
    hands.write("Name of the room", "Harrow Lane cellar").await;
    hands.write("Time zone", "Europe/Berlin").await;
    hands.write("Currency", "EUR").await;
    hands.write("Your name", "Selma Orrin").await;
    hands.write("Log-in name", "selma").await;
    hands.write("Password", PASSWORD).await;
    hands.go("Set up the room").await;
}

/// Measures a tray, copies the developer's data sheet in, and mixes a litre.
async fn tray_that_is_ready(hands: &mut Hands<'_>) {
    hands.go("Put the first tray on it.").await;
    hands.go("Add the first tray").await;
    hands.write("Name", "Developer").await;
    hands.write("Long edge", "300").await;
    hands.write("Short edge", "250").await;
    hands.write("Floor to rim", "65").await;
    hands.go("Add the tray").await;
    hands.tap("More").await;
    hands.go("Products").await;
    hands.go("Neutral paper developer").await;
    hands.go("Change the product").await;
    hands.write("H codes", "H317, H319").await;
    hands.write("Date of the data sheet", "2026-03-01").await;
    hands.go("Keep the change").await;
    hands.go("Board").await;
    hands.go("Mix into this tray").await;
    hands.write("Volume", "1").await;
    let is_reckoned = "return !!document.querySelector('[data-live][aria-busy=false] .worksheet')";
    hands.tab.until("the sheet is reckoned", is_reckoned).await;
    hands.go("It stands in the tray").await;
    hands.go("To the board").await;
    assert_eq!(hands.tab.text(".verdict-word").await, "Ready");
}
