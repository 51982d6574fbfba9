//! Walks of which somebody counted the steps: on a phone, no address typed, each by
//! finger and by keyboard alone.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use axum::Router;
use axum::extract::Request;
use axum::middleware::{Next, from_fn};
use wetside::clock::Clock;
use wetside::identity::links;
use wetside::rights::{KeepTopics, Role};
use wetside::topics::actions::copy_starter;

use super::chromium::Chromium;
use super::hands::{By, Hands};
use super::site::Site;
use crate::access::house::somebody;
use crate::harness::{PASSWORD, START, alone, new_key, on_runtime, scenario};

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

/// Who inducts and who is inducted have a phone each. Everything that is asked for is
/// ticked already and nothing has to be typed, of the eight fields that it may take.
#[test]
fn an_uninducted_person_is_refused_inducted_and_comes_in() {
    scenario(async |stage| {
        let (member, steward) = (stage.cast.member.clone(), stage.cast.steward.clone());
        let permit = stage.permit::<KeepTopics>(&steward).await.unwrap();
        let app = &stage.installation.app;
        copy_starter(app, &permit, new_key(), ()).await.unwrap();
        let newcomer = somebody(&stage, "newcomer", stage.room, Role::Member).await;
        for (by, person) in [(By::Finger, member), (By::Keyboard, newcomer)] {
            let (chromium, loads) = (Chromium::start(), Loads::default());
            let site = Site::open_with(&stage.installation, |service| loads.around(service)).await;
            let own = site.phone(&chromium, Some(&person)).await;
            own.open(&stage.at("/arrive")).await;
            assert_eq!(own.text(".told h2").await, "You cannot come in yet");
            let said = own.text(".told").await;
            assert!(
                said.contains("Gloves and tongs") && said.contains(&steward.name),
                "{said}"
            );
            assert!(!own.has("form.coming").await);

            let desk = site.phone(&chromium, Some(&steward)).await;
            let before = loads.count();
            desk.open(&stage.at("/inductions")).await;
            let mut hands = Hands::at(&desk, by);
            hands.go(&format!("Induct {}", person.name)).await;
            hands.go("Record it").await;
            let waits = desk.text(".told h2").await;
            assert_eq!(waits, "1 record waits for confirmation");
            let mut hands = Hands::at(&own, by);
            hands.tap("More").await;
            hands.go("Your inductions").await;
            hands.go("I was told all of this").await;
            let steps = loads.count() - before;
            assert!(
                steps <= 6,
                "{by:?}: {steps} page loads to induct and confirm"
            );

            hands.tap("More").await;
            hands.go("Who is here").await;
            hands.go("Arrive or leave").await;
            hands.go("I am here").await;
            assert_eq!(own.text("h1").await, "You are here");
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
