//! Who is in the room: arriving, leaving, and forgetting to.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod alone;
mod api;
mod coming;
mod forgetting;

use wetside::arrivals::actions::{arrive, leave};
use wetside::error::Result;
use wetside::identity::Person;
use wetside::logbook::Done;
use wetside::rights::Arrive;

use crate::harness::{Answer, Browser, Stage, new_key};

impl Stage {
    pub(crate) async fn arrives(&self, person: &Person) -> Result<Done> {
        let permit = self.permit::<Arrive>(person).await?;
        arrive(
            &self.installation.app,
            &permit,
            new_key(),
            self.an_hour().await,
        )
        .await
    }

    pub(crate) async fn leaves(&self, person: &Person) -> Result<Done> {
        let permit = self.permit::<Arrive>(person).await?;
        leave(&self.installation.app, &permit, new_key(), None).await
    }

    /// Sets the largest number of people.
    async fn has_places(&self, places: &str) {
        let mut steward = self.browser(&self.cast.steward).await;
        let page = steward.get(&self.at("/settings")).await.expect(200);
        let form = page.page().form("Keep these rules").unwrap();
        let form = form.with("people_limit", places);
        steward.submit(&form).await.expect(303);
    }

    pub(crate) async fn looks(&self, person: &Person, path: &str) -> Answer {
        let mut browser = self.browser(person).await;
        look(&mut browser, self, path).await
    }
}

async fn look(browser: &mut Browser, stage: &Stage, path: &str) -> Answer {
    browser.get(&stage.at(path)).await.expect(200)
}

/// The names on the board of who is there.
fn names(board: &Answer) -> Vec<String> {
    board.page().all("#present li b")
}

/// What a person reads of the book, the latest first.
async fn book(stage: &Stage, person: &Person) -> Vec<String> {
    stage
        .looks(person, "/book")
        .await
        .page()
        .all(".ledger-said")
}
