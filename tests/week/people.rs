//! The people of the week, and what each of them can do with a page.

use wetside::identity::Person;

use crate::harness::{Browser, Form, Page, Stage};

/// The room, and a browser for everyone in it.
pub(super) struct Week {
    pub(super) stage: Stage,
    pub(super) steward: Someone,
    pub(super) trained: Someone,
    pub(super) member: Someone,
}

/// Somebody with their phone.
pub(super) struct Someone {
    browser: Browser,
    room: String,
}

impl Week {
    /// Monday noon: a room with its starter set and a bare bench.
    pub(super) async fn opens(stage: Stage) -> Self {
        let someone = async |person: &Person| Someone {
            browser: stage.browser(person).await,
            room: stage.at(""),
        };
        Self {
            steward: someone(&stage.cast.steward).await,
            trained: someone(&stage.cast.trained).await,
            member: someone(&stage.cast.member).await,
            stage,
        }
    }

    /// The verdict on a tray as the member reads it: its word, and the reason.
    pub(super) async fn says(&mut self, tray: &str, word: &str, reason: &str) {
        let page = self.member.tray(tray).await;
        let found = page.first(".verdict-word").unwrap();
        let why = page.first(".reason").unwrap();
        assert_eq!(found, word, "{tray}: {why}");
        assert!(why.contains(reason), "{tray}: {why:?} lacks {reason:?}");
    }
}

impl Someone {
    /// A page of the room.
    pub(super) async fn opens(&mut self, path: &str) -> Page {
        let path = format!("{}{path}", self.room);
        self.browser.visit(&path).await.expect(200).page()
    }

    /// Follows the link that begins with these words.
    pub(super) async fn follows(&mut self, page: &Page, words: &str) -> Page {
        let links = page.links();
        let found = links.iter().find(|(label, _)| label.starts_with(words));
        let (_, path) = found.unwrap_or_else(|| panic!("no link {words:?} in {links:?}"));
        let path = path.split('#').next().unwrap().to_owned();
        self.browser.visit(&path).await.expect(200).page()
    }

    /// The page of a tray, found on the board.
    pub(super) async fn tray(&mut self, name: &str) -> Page {
        let board = self.opens("/board").await;
        self.follows(&board, name).await
    }

    /// Sends a form that goes through.
    pub(super) async fn sends(&mut self, form: &Form) -> Page {
        self.browser
            .submit_and_follow(form)
            .await
            .expect(200)
            .page()
    }

    /// Does what a button or link of a tray's page offers.
    pub(super) async fn at_tray(&mut self, tray: &str, deed: &str) -> Page {
        let page = self.tray(tray).await;
        self.follows(&page, deed).await
    }

    /// Mixes a volume of a dilution into a tray.
    pub(super) async fn mixes(&mut self, tray: &str, what: &str, litres: &str) -> Page {
        let page = self.at_tray(tray, "Mix into this tray").await;
        let form = page.form("Show what to pour").unwrap();
        let form = form.choose(what).fill("Volume", litres);
        let sheet = self.browser.submit(&form).await.expect(200).page();
        self.sends(&sheet.form("It stands in the tray").unwrap())
            .await
    }

    /// Notes so many sheets of 8×10 in on RC.
    pub(super) async fn notes(&mut self, sheets: u32) -> Page {
        let page = self.opens("/sheets/new").await;
        let form = page.form("Note them").unwrap();
        let form = form.choose("RC").choose("8×10 in");
        self.sends(&form.with("sheets", &sheets.to_string())).await
    }

    /// Discards what stands in a tray into a container.
    pub(super) async fn discards(&mut self, tray: &str, container: &str, why: &str) -> Page {
        let page = self.at_tray(tray, "Discard").await;
        let form = page.form("Discard it").unwrap();
        let form = form
            .with("collected", "")
            .with("container", container)
            .choose(why)
            .with("confirmed", "yes");
        self.sends(&form).await
    }

    /// Records a check of a kind on what stands in a tray.
    pub(super) async fn checks(&mut self, tray: &str, kind: &str, found: &[(&str, &str)]) -> Page {
        let page = self.at_tray(tray, "Record a check").await;
        let page = self.follows(&page, kind).await;
        let mut form = page.form("Record it").unwrap();
        for (name, value) in found {
            form = form.with(name, value);
        }
        self.sends(&form).await
    }
}
