//! Somebody at the pages of a room: opens them, follows their links by words, and
//! sends their forms as they were served, filled in by labels.

use wetside::identity::Person;

use super::{Answer, Browser, Stage};

/// A browser that stands on a page of the room.
pub(crate) struct Visitor {
    pub(crate) browser: Browser,
    pub(crate) slug: String,
}

impl Visitor {
    pub(crate) async fn of(stage: &Stage, person: &Person) -> Self {
        Self {
            browser: stage.browser(person).await,
            slug: stage.slug.clone(),
        }
    }

    pub(crate) async fn steward(stage: &Stage) -> Self {
        Self::of(stage, &stage.cast.steward).await
    }

    /// A path of the room.
    pub(crate) fn at(&self, path: &str) -> String {
        format!("/rooms/{}{path}", self.slug)
    }

    pub(crate) async fn open(&mut self, path: &str) -> Answer {
        let path = self.at(path);
        self.browser.get(&path).await.expect(200)
    }

    /// Follows a link of a page by its words.
    pub(crate) async fn follow(&mut self, page: &Answer, words: &str) -> Answer {
        let links = page.page().links();
        let link = links.iter().find(|(text, _)| text == words);
        let (_, href) = link.unwrap_or_else(|| panic!("no link {words:?} in {links:?}"));
        self.browser.get(href).await.expect(200)
    }

    /// Fills in the form of that button by labels and sends it.
    pub(crate) async fn send(
        &mut self,
        page: &Answer,
        button: &str,
        fields: &[(&str, &str)],
    ) -> Answer {
        let mut form = page.page().form(button).unwrap_or_else(|| {
            panic!("no button {button:?} in {}", page.page().main());
        });
        for (label, value) in fields {
            form = form.fill(label, value);
        }
        self.browser.submit(&form).await
    }

    /// The same, and on to the page it leads to.
    pub(crate) async fn send_on(
        &mut self,
        page: &Answer,
        button: &str,
        fields: &[(&str, &str)],
    ) -> Answer {
        let answer = self.send(page, button, fields).await.expect(303);
        let next = answer.location().unwrap().to_owned();
        self.browser.get(&next).await.expect(200)
    }
}
