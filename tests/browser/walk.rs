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
        let axe = json!({"source": tools::axe()});
        tab.own("Page.addScriptToEvaluateOnNewDocument", axe).await;
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
        let cast = &self.house.stage.cast;
        if self.seen != Some(page.who) {
            match page.who {
                Who::Nobody => {
                    self.tab
                        .forget(self.site.app.address().session_cookie())
                        .await
                }
                Who::Member => self.site.enter(&self.tab, &cast.member).await,
                Who::Trained => self.site.enter(&self.tab, &cast.trained).await,
                Who::Steward => self.site.enter(&self.tab, &cast.steward).await,
            }
            self.seen = Some(page.who);
        }
        self.tab.size(360, 740).await;
        page.open(&self.tab).await;
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
        let answer = self.tab.run_later(AXE, vec![json!(REVIEWED)]).await;
        let judged: Judged = serde_json::from_value(answer).unwrap();
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

/// The first pixel in which anything but red is lit.
pub(super) fn not_red(picture: &Picture) -> Option<String> {
    picture.first_that(|pixel| pixel[1] != 0 || pixel[2] != 0)
}

const AXE: &str = include_str!("axe.js");

const LAYOUT: &str = include_str!("layout.js");

const STATES: &str = include_str!("states.js");
