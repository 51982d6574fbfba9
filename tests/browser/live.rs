//! The open board: it takes what others write without being loaded anew, holds still, says
//! since when it is alone, and goes on at whichever server answers next.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use axum::Router;
use axum::extract::Request;
use axum::middleware::{Next, from_fn};
use serde_json::json;
use wetside::identity::sessions;

use super::chromium::Chromium;
use super::relay::Relay;
use super::site::Site;
use super::tab::Tab;
use super::walk::{hold_fit, in_safelight};
use crate::harness::{Bench, Stage, scenario};

/// So many sheets take a litre of developer from Ready to Test first, and as many more to
/// Replace.
const MANY: u32 = 80;

/// A member's open board, in Safelight on a phone.
struct Board {
    stage: Stage,
    bench: Bench,
    tab: Tab,
    _chromium: Chromium,
}

impl Board {
    async fn at(site: &Site, stage: &Stage) -> Self {
        let bench = stage.bench().await;
        let chromium = Chromium::start();
        let tab = site.phone(&chromium, Some(&stage.cast.member)).await;
        in_safelight(&tab).await;
        tab.open(&stage.at("/board")).await;
        let board = Self {
            stage: stage.clone(),
            bench,
            tab,
            _chromium: chromium,
        };
        board.is_connected().await;
        board.says("Ready").await;
        // Only as long as the page is not loaded anew.
        board.tab.run("window.isTheSame = true", vec![]).await;
        board
    }

    /// Somebody else notes sheets, at another server.
    async fn somebody_prints(&self) {
        let trained = &self.stage.cast.trained;
        let noted = self.stage.note(trained, &self.bench, 0, MANY).await;
        noted.unwrap();
    }

    async fn is_connected(&self) {
        let is = "return document.querySelector('[data-live]').dataset.liveState === 'connected'";
        self.tab.until("the board is connected", is).await;
    }

    /// The tray's verdict.
    async fn says(&self, word: &str) {
        let shown = "document.querySelector('.verdict-word').textContent.trim()";
        let script = format!("return {shown} === '{word}'");
        self.tab.until(word, &script).await;
    }

    /// This comes out.
    async fn shows(&self, hook: &str) {
        let script = format!("return !document.querySelector('[{hook}]').hidden");
        self.tab.until(hook, &script).await;
    }

    /// What a screen reader is given to say.
    async fn is_said(&self, words: &str) {
        let said = "document.querySelector('[data-live-said]').textContent";
        let script = format!("return {said}.includes('{words}')");
        self.tab.until(words, &script).await;
    }

    async fn is_the_same_page(&self) {
        let answer = self.tab.run("return window.isTheSame", vec![]).await;
        assert_eq!(answer, json!(true), "the page was loaded anew");
    }
}

#[test]
fn what_somebody_else_notes_is_seen_and_said_and_waits_while_the_board_is_held() {
    scenario(async |stage| {
        let site = Site::open(&stage.installation).await;
        let board = Board::at(&site, &stage).await;
        let tab = &board.tab;
        let focus = "
            window.focused = document.querySelector('.station-name a');
            window.focused.focus();";
        tab.run(focus, vec![]).await;
        board.somebody_prints().await;
        board.says("Test first").await;
        assert!(tab.has(".station[data-live-new]").await, "it is marked");
        hold_fit(tab, "a board on which something is new").await;
        let is_there = "return document.activeElement === window.focused";
        assert_eq!(tab.run(is_there, vec![]).await, json!(true), "the focus");
        board.is_said("tray 1, Developer: Test first").await;

        tab.tap("Hold still").await;
        board.somebody_prints().await;
        let is_counted = "return document.querySelector('[data-live-waiting]').textContent === '1'";
        tab.until("what came is counted", is_counted).await;
        assert_eq!(tab.text(".verdict-word").await, "Test first");
        hold_fit(tab, "a board that is held").await;
        tab.tap("Go on").await;
        board.says("Replace").await;
        assert_eq!(tab.text("[data-live-held]").await, "");
        board.is_the_same_page().await;
    });
}

/// Counts the streams that are asked for.
fn counting(service: Router, streams: Arc<AtomicUsize>) -> Router {
    service.layer(from_fn(move |request: Request, next: Next| {
        if request.uri().path().ends_with("/board/stream") {
            streams.fetch_add(1, Ordering::Relaxed);
        }
        next.run(request)
    }))
}

#[test]
fn a_board_says_since_when_it_is_alone_and_goes_on_at_another_server() {
    scenario(async |stage| {
        let relay = Relay::open().await;
        let first = Site::behind(&relay, &stage.installation).await;
        let board = Board::at(&first, &stage).await;
        let tab = &board.tab;
        relay.shut();
        first.stop();
        board.shows("data-live-lost").await;
        let banner = tab.text("[data-live-lost]").await;
        assert!(
            banner.starts_with("As of 13:00 Wed, not connected."),
            "{banner}"
        );
        board.is_said("not connected").await;
        hold_fit(tab, "a board that is not connected").await;
        board.somebody_prints().await;

        let streams = Arc::new(AtomicUsize::new(0));
        let count = streams.clone();
        let around = |service| counting(service, count);
        let second = Site::behind_with(&relay, &stage.installation, around).await;
        board.is_connected().await;
        assert_eq!(tab.text("[data-live-lost]").await, "");
        board.says("Test first").await;
        assert_eq!(streams.load(Ordering::Relaxed), 1, "it asked once");
        board.somebody_prints().await;
        board.says("Replace").await;
        board.is_the_same_page().await;

        let ended = sessions::end_all(&second.app, stage.cast.member.id).await;
        assert_eq!(ended.unwrap(), 1);
        board.shows("data-live-over").await;
        hold_fit(tab, "a board that is over").await;
    });
}
