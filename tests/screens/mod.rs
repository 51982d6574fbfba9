//! Paired screens: the code, the board on the wall, the door, and PINs.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod api;
mod door;
mod pairing;
mod pins;
mod wall;

use wetside::identity::Person;
use wetside::rights::{KeepPin, KeepScreens};
use wetside::screens::actions::{NewPin, end, set_pin};

use crate::harness::{Answer, Browser, PASSWORD, Stage, new_key};

/// A PIN that nobody tries first.
const PIN: &str = "482915";

impl Stage {
    async fn sets_pin(&self, person: &Person) {
        let permit = self.permit::<KeepPin>(person).await.unwrap();
        let new = NewPin {
            pin: PIN.to_owned(),
            password: PASSWORD.to_owned(),
        };
        let app = &self.installation.app;
        set_pin(app, &permit, new_key(), new).await.unwrap();
    }

    async fn ends(&self, screen: uuid::Uuid) {
        let steward = &self.cast.steward;
        let permit = self.permit::<KeepScreens>(steward).await.unwrap();
        let app = &self.installation.app;
        end(app, &permit, new_key(), screen).await.unwrap();
    }

    /// A member's number, as it stands on their own page.
    async fn number(&self, person: &Person) -> String {
        let mut browser = self.browser(person).await;
        let page = browser.get(&self.at("/pin")).await.expect(200).page();
        page.first(".lead b").unwrap()
    }
}

async fn look(browser: &mut Browser, path: &str) -> Answer {
    browser.get(path).await.expect(200)
}

/// What the page of a screen is.
fn state(answer: &Answer) -> &'static str {
    ["code", "board", "door"]
        .into_iter()
        .find(|state| {
            answer
                .body
                .contains(&format!("class=\"screen screen-{state}\""))
        })
        .unwrap()
}
