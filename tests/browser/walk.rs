//! A browser that goes from page to page, and what judges each: axe-core, our rules of
//! layout, and the light of Safelight.

use std::collections::BTreeSet;

use serde::Deserialize;
use serde_json::{Value, json};

use super::chromium::Chromium;
use super::pages::{Shown, Who};
use super::picture::Picture;
use super::site::Site;
use super::tab::Tab;
use super::tools;
use crate::access::house::House;
use crate::access::screens;

/// What axe-core cannot decide by itself: its rule, the elements, and why they are
/// well all the same.
const REVIEWED: &[(&str, &str, &str)] = &[
    (
        "color-contrast",
        ".first li *",
        "the pseudo element behind the words is their number, beside them",
    ),
    (
        "color-contrast",
        "svg text",
        "words of a drawing stand on what it fills; tests/look holds those colours",
    ),
    ("color-contrast", ".key *", "a sign and no letter: − and +"),
    (
        "color-contrast",
        ".verdict-replace .verdict-word",
        "the word has a ground of its own, lower than its line; tests/look holds those colours",
    ),
];

/// A browser that goes from page to page of a house, and what is wrong with them.
pub(super) struct Walk {
    pub(super) house: House,
    pub(super) site: Site,
    pub(super) tab: Tab,
    seen: Option<Who>,
    pub(super) found: Vec<String>,
    reviewed: BTreeSet<usize>,
    _chromium: Chromium,
}

/// What axe-core says of a page, and which of [`REVIEWED`] that leaves out.
#[derive(Deserialize)]
struct Judged {
    found: Vec<String>,
    reviewed: Vec<usize>,
}

impl Walk {
    pub(super) async fn begin(house: House, display: &str) -> Self {
        let chromium = Chromium::start();
        let site = Site::open(&house.stage.installation).await;
        let tab = site.phone(&chromium, None).await;
        tab.run_first(&tools::axe()).await;
        tab.keep("display", display).await;
        tab.keep("safelight", "warned").await;
        Self {
            house,
            site,
            tab,
            seen: None,
            found: Vec::new(),
            reviewed: BTreeSet::new(),
            _chromium: chromium,
        }
    }

    pub(super) async fn open(&mut self, page: &Shown) {
        if self.seen != Some(page.who) {
            self.is_now(page.who).await;
            self.seen = Some(page.who);
        }
        self.tab.size(360, 740).await;
        page.open(&self.tab).await;
    }

    /// Somebody else has the browser.
    async fn is_now(&self, who: Who) {
        let cast = &self.house.stage.cast;
        for cookie in [self.site.app.address().session_cookie(), screens::COOKIE] {
            self.tab.forget(cookie).await;
        }
        match who {
            Who::Nobody => {}
            Who::Member => self.site.enter(&self.tab, &cast.member).await,
            Who::Trained => self.site.enter(&self.tab, &cast.trained).await,
            Who::Steward => self.site.enter(&self.tab, &cast.steward).await,
            Who::Wall => self.is_screen("board-screen").await,
            Who::Door => self.is_screen("door-screen").await,
        }
    }

    /// A paired screen, whose display somebody has changed to the walk's.
    async fn is_screen(&self, name: &str) {
        let (id, browser) = self.house.screen(name).unwrap();
        let secret = browser.kept(screens::COOKIE).unwrap();
        self.tab.keep(screens::COOKIE, secret).await;
        self.tab.keep("screen_shown", &id.to_string()).await;
    }

    pub(super) fn say(
        &mut self,
        page: &Shown,
        width: u32,
        found: impl IntoIterator<Item = String>,
    ) {
        let place = format!("{:?} {} at {width}", page.who, page.path);
        let said = found.into_iter().map(|what| format!("{place}: {what}"));
        self.found.extend(said);
    }

    /// What keeps people out of the page.
    pub(super) async fn axe(&mut self, page: &Shown) {
        let judged = judged(&self.tab).await;
        self.reviewed.extend(judged.reviewed);
        self.say(page, 360, judged.found);
    }

    pub(super) async fn layout(&mut self, page: &Shown, width: u32, measures_targets: bool) {
        self.tab.size(width, 800).await;
        let answer = self.tab.run(LAYOUT, vec![json!(measures_targets)]).await;
        let found: Vec<String> = serde_json::from_value(answer).unwrap();
        self.say(page, width, found);
    }

    /// Green and blue are dark in every pixel of the page.
    pub(super) async fn red(&mut self, page: &Shown, width: u32) {
        self.tab.size(width, 740).await;
        let picture = self.tab.whole_picture().await;
        self.say(page, width, not_red(&picture));
    }

    /// The same around one control, in each of its states; each kind is tried once.
    pub(super) async fn red_states(&mut self, page: &Shown, known: &mut BTreeSet<String>) {
        let kinds = self.tab.run(STATES, vec![]).await;
        for (kind, at) in serde_json::from_value::<Vec<(String, usize)>>(kinds).unwrap() {
            if !known.insert(kind.clone()) {
                continue;
            }
            for state in ["focus", "disabled", "chosen"] {
                let place = self.tab.run(STATES, vec![json!(at), json!(state)]).await;
                if place == Value::Null {
                    continue;
                }
                let how = json!({"captureBeyondViewport": true, "clip": place});
                let lit = not_red(&self.tab.picture(how).await);
                self.say(page, 360, lit.map(|lit| format!("{kind} {state}: {lit}")));
            }
        }
    }

    pub(super) fn end(self) {
        assert!(self.found.is_empty(), "{}", self.found.join("\n"));
        let all: BTreeSet<usize> = (0..REVIEWED.len()).collect();
        assert_eq!(self.reviewed, all, "reviewed, and nowhere met");
    }
}

async fn judged(tab: &Tab) -> Judged {
    let answer = tab.run_later(AXE, vec![json!(REVIEWED)]).await;
    serde_json::from_value(answer).unwrap()
}

/// Puts a tab into Safelight, and lets [`hold_fit`] judge what it shows.
pub(super) async fn in_safelight(tab: &Tab) {
    tab.run_first(&tools::axe()).await;
    tab.keep("display", "safelight").await;
    tab.keep("safelight", "warned").await;
}

/// What came about in a tab keeps nobody out, and lights up in nothing but red, at its
/// own width and on the largest screen.
pub(super) async fn hold_fit(tab: &Tab, what: &str) {
    let size = "return [innerWidth, innerHeight, document.documentElement.scrollHeight]";
    let size = tab.run(size, vec![]).await;
    let [own, height, all]: [u32; 3] = serde_json::from_value(size).unwrap();
    // All of it at once: nothing scrolls under what stays at the top of the window.
    tab.size(own, all).await;
    assert_eq!(judged(tab).await.found, Vec::<String>::new(), "{what}");
    for width in [1920, own] {
        tab.size(width, height).await;
        let lit = not_red(&tab.whole_picture().await);
        assert_eq!(lit, None, "{what} at {width}");
    }
}

/// The first pixel in which anything but red is lit.
pub(super) fn not_red(picture: &Picture) -> Option<String> {
    picture.first_that(|pixel| pixel[1] != 0 || pixel[2] != 0)
}

const AXE: &str = include_str!("axe.js");

const LAYOUT: &str = include_str!("layout.js");

const STATES: &str = include_str!("states.js");
