//! Screens that show a code, and screens that are paired.

use std::net::{IpAddr, Ipv6Addr};
use std::sync::atomic::{AtomicU16, Ordering};

use axum::http::HeaderMap;
use uuid::Uuid;
use wetside::identity::devices::show_code;
use wetside::identity::{Client, Permit};
use wetside::rights::KeepScreens;
use wetside::screens::actions::{NewScreen, pair};

use crate::harness::{Browser, Stage, new_key};

/// The cookie that makes a browser a screen.
pub(crate) const COOKIE: &str = "__Host-screen";

static NETWORKS: AtomicU16 = AtomicU16::new(1);

/// Somebody from a network of their own.
pub(crate) fn from_elsewhere() -> Client {
    let number = NETWORKS.fetch_add(1, Ordering::Relaxed);
    Client {
        address: IpAddr::V6(Ipv6Addr::new(0x2001, 0xdb8, number, 0, 0, 0, 0, 1)),
        agent: "a screen".to_owned(),
    }
}

/// A browser that shows a code, and the code.
pub(crate) async fn showing(stage: &Stage) -> (Browser, String) {
    let app = &stage.installation.app;
    let secret = show_code(app, &from_elsewhere(), &HeaderMap::new()).await;
    let mut browser = stage.nobody();
    browser.keep(COOKIE, secret.unwrap().unwrap().reveal());
    let page = browser.get("/screen").await.expect(200).page();
    (browser, page.first(".code").unwrap())
}

/// A screen as a steward pairs it.
pub(crate) fn screen(code: &str, kind: &str, name: &str) -> NewScreen {
    NewScreen {
        code: code.to_owned(),
        kind: kind.to_owned(),
        name: name.to_owned(),
        display: "safelight".to_owned(),
    }
}

/// A screen of the room, and its browser.
pub(crate) async fn paired(stage: &Stage, kind: &str) -> (Uuid, Browser) {
    let (browser, code) = showing(stage).await;
    let permit: Permit<KeepScreens> = stage.permit(&stage.cast.steward).await.unwrap();
    let new = screen(&code, kind, &format!("{kind} by the sink"));
    let app = &stage.installation.app;
    let done = pair(app, &permit, new_key(), new).await.unwrap();
    (done.id("screen").unwrap(), browser)
}
