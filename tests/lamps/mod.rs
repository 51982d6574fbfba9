//! Lamps and screens near paper: recorded, tested, moved, overdue. That a screen or a
//! lamp counts as unsafe until it is tested as it hangs: common practice, no source.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod api;
mod due;
mod record;
mod tests;

use crate::harness::{Answer, Visitor};

impl Visitor {
    /// Adds a lamp so far from the paper and stays on its page.
    async fn add_lamp(&mut self, name: &str, distance: &str) -> Answer {
        let page = self.open("/lamps/new").await;
        let fields = [(NAME, name), (DISTANCE, distance)];
        self.send_on(&page, "Add it", &fields).await
    }

    /// Tests the lamp whose page this is with a paper and stays on its page.
    async fn test(&mut self, lamp: &Answer, paper: &str, steps: (&str, &str)) -> Answer {
        let page = self.follow(lamp, "Record a fog test").await;
        let form = page.page().form(RECORD).unwrap().choose(paper);
        let form = form.fill(CLEAN, steps.0).fill(FOGGED, steps.1);
        self.browser.submit_and_follow(&form).await.expect(200)
    }

    /// What the board says beside its lines.
    async fn notices(&mut self) -> Vec<String> {
        let board = self.open("/board").await;
        board.page().all(".notice-board li")
    }
}

const NAME: &str = "Name";
const DISTANCE: &str = "Distance to the nearest paper";
const CLEAN: &str = "Longest time without an outline";
const FOGGED: &str = "Shortest time with an outline";
const RECORD: &str = "Record the test";

/// The starter's papers, in their order.
const PAPERS: [&str; 3] = ["RC", "FB", "RC, cool tone"];

/// What a page says of each paper of its first lamp: the time, or the word that there
/// is none.
fn large(page: &Answer) -> Vec<String> {
    page.page().all(".safe-time, .safe-none")
}

/// The same in small words.
fn said(page: &Answer) -> Vec<String> {
    page.page().all(".safe-said")
}
