//! Between two pages: in Safelight nothing is painted while a style sheet is on its way,
//! the browser keeps a dark ground meanwhile, and what it paints first is black and red,
//! also where nobody answers.

use axum::Router;
use axum::extract::Request;
use axum::middleware::{Next, from_fn};
use serde_json::json;
use tokio::sync::watch;

use super::basement::KEPT;
use super::chromium::Chromium;
use super::relay::Relay;
use super::site::Site;
use super::walk::{in_safelight, not_red};
use crate::access::screens::{COOKIE, paired};
use crate::harness::scenario;

/// Holds back style sheets while it is shut.
fn behind_gate(service: Router, gate: watch::Receiver<bool>) -> Router {
    service.layer(from_fn(move |request: Request, next: Next| {
        let mut gate = gate.clone();
        async move {
            if request.uri().path().ends_with(".css") {
                gate.wait_for(|is_open| *is_open).await.unwrap();
            }
            next.run(request).await
        }
    }))
}

#[test]
fn nothing_lights_up_while_a_page_is_on_its_way() {
    scenario(async |stage| {
        let (gate, passes) = watch::channel(true);
        let around = |service| behind_gate(service, passes);
        let site = Site::open_with(&stage.installation, around).await;
        let chromium = Chromium::start();
        let tab = chromium.that_does_not_wait(&site.origin()).await;
        tab.size(360, 740).await;
        in_safelight(&tab).await;
        let (_, wall) = paired(&stage, "board").await;
        tab.keep(COOKIE, wall.kept(COOKIE).unwrap()).await;
        tab.own("Network.enable", json!({})).await;
        tab.own("Network.setCacheDisabled", json!({"cacheDisabled": true}))
            .await;
        for path in ["/log-in", "/emergency", "/nowhere", "/screen"] {
            gate.send(false).unwrap();
            tab.open(path).await;
            let is_there = format!("return location.pathname === '{path}' && !!document.body");
            tab.until("the page is there", &is_there).await;
            // White words, so the ground the browser gives by itself is dark.
            let before = json!(["rgb(255, 255, 255)", 0]);
            assert_eq!(
                tab.run(SHOWN, vec![]).await,
                before,
                "{path} before its sheets"
            );
            gate.send(true).unwrap();
            tab.until("something is painted", IS_PAINTED).await;
            assert_eq!(not_red(&tab.window_picture().await), None, "{path}");
        }
    });
}

#[test]
fn nothing_lights_up_where_nobody_answers() {
    scenario(async |stage| {
        let relay = Relay::open().await;
        let site = Site::behind(&relay, &stage.installation).await;
        let chromium = Chromium::start();
        let tab = chromium.that_does_not_wait(&site.origin()).await;
        tab.size(360, 740).await;
        in_safelight(&tab).await;
        site.enter(&tab, &stage.cast.member).await;
        let form = stage.at("/sheets/new");
        tab.open(&form).await;
        tab.until("the form is kept", KEPT).await;
        relay.shut();
        for path in [stage.at("/board"), form, "/nowhere".to_owned()] {
            tab.open(&path).await;
            let is_there = format!("return location.pathname === '{path}' && !!document.body");
            tab.until("a page is there", &is_there).await;
            tab.until("something is painted", IS_PAINTED).await;
            assert_eq!(not_red(&tab.window_picture().await), None, "{path}");
        }
    });
}

const IS_PAINTED: &str = "return performance.getEntriesByType('paint').length > 0";

/// The colour of words, and how often anything was painted.
const SHOWN: &str = "
    return [getComputedStyle(document.body).color, performance.getEntriesByType('paint').length];";
