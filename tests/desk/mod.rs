//! The steward's desk: papers, products and the bench, by their pages. Every form
//! is sent as it was served, filled in as somebody fills it in.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a helper of a test fails with it"
)]

mod bench;
mod dilutions;
mod finishing;
mod papers;
mod products;
mod rights;
mod settings;
mod spaces;

use wetside::identity::Person;

use crate::harness::{Answer, Browser, Stage};

/// A browser that stands on a page.
struct Desk {
    browser: Browser,
    slug: String,
}

impl Desk {
    async fn of(stage: &Stage, person: &Person) -> Self {
        Self {
            browser: stage.browser(person).await,
            slug: stage.slug.clone(),
        }
    }

    async fn steward(stage: &Stage) -> Self {
        Self::of(stage, &stage.cast.steward).await
    }

    fn at(&self, path: &str) -> String {
        format!("/rooms/{}{path}", self.slug)
    }

    async fn open(&mut self, path: &str) -> Answer {
        let path = self.at(path);
        self.browser.get(&path).await.expect(200)
    }

    /// Follows a link of a page by its words.
    async fn follow(&mut self, page: &Answer, words: &str) -> Answer {
        let links = page.page().links();
        let link = links.iter().find(|(text, _)| text == words);
        let (_, href) = link.unwrap_or_else(|| panic!("no link {words:?} in {links:?}"));
        self.browser.get(href).await.expect(200)
    }

    /// Fills in the form of that button by labels and sends it.
    async fn send(&mut self, page: &Answer, button: &str, fields: &[(&str, &str)]) -> Answer {
        let mut form = page.page().form(button).unwrap_or_else(|| {
            panic!("no button {button:?} in {}", page.page().main());
        });
        for (label, value) in fields {
            form = form.fill(label, value);
        }
        self.browser.submit(&form).await
    }

    /// The same, and on to the page it leads to.
    async fn send_on(&mut self, page: &Answer, button: &str, fields: &[(&str, &str)]) -> Answer {
        let answer = self.send(page, button, fields).await.expect(303);
        let next = answer.location().unwrap().to_owned();
        self.browser.get(&next).await.expect(200)
    }
}

/// What stands beside the fields, by their names.
fn beside(answer: &Answer) -> Vec<String> {
    let problems = answer.page().problems();
    problems.into_iter().map(|(field, _)| field).collect()
}

/// The sentence beside one field.
fn sentence(answer: &Answer, field: &str) -> String {
    let problems = answer.page().problems();
    let found = problems.iter().find(|(name, _)| name == field);
    let (_, said) = found.unwrap_or_else(|| panic!("nothing beside {field:?} in {problems:?}"));
    said.clone()
}
