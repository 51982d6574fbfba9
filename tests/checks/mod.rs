//! Room checks: set, done, failed, overdue, taken back.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod api;
mod due;
mod keep;
mod record;

use crate::harness::{Answer, Visitor};

impl Visitor {
    /// Adds a check that the board speaks of, and stays on its page.
    async fn add_check(&mut self, name: &str, days: &str, more: &[(&str, &str)]) -> Answer {
        let page = self.open("/checks/new").await;
        let mut form = page.page().form("Add it").unwrap();
        let fields = [
            ("Name", name),
            ("How it is done", "Look at it"),
            ("What to do where it fails", "Leave it alone."),
            ("Do it again after", days),
            ("Where the number of days comes from", "our own rule"),
        ];
        for (label, value) in fields.iter().chain(more) {
            form = form.fill(label, value);
        }
        let form = form.with("is_on_board", "yes");
        self.browser.submit_and_follow(&form).await.expect(200)
    }

    /// Does the check whose page this is, and stays on its page.
    async fn do_check(&mut self, check: &Answer, outcome: &str, remark: &str) -> Answer {
        let page = self.follow(check, "Do this check").await;
        let form = page.page().form(RECORD).unwrap().choose(outcome);
        let form = form.fill(REMARK, remark);
        self.browser.submit_and_follow(&form).await.expect(200)
    }

    /// What the board says beside its lines.
    async fn on_board(&mut self) -> Vec<String> {
        let board = self.open("/board").await;
        board.page().all(".notice-board li")
    }
}

const RECORD: &str = "Record it";
const REMARK: &str = "Remark";
const WELL: &str = "All is well";
const FAILED: &str = "It failed";

/// When the check of this page is due, and what was found last.
fn lead(page: &Answer) -> String {
    page.page().first(".lead").unwrap()
}
