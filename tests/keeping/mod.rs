//! Keeping, joining, moving up and discarding, through the pages: every form is
//! sent as it was served. Lives and capacities are the room's own invented ones
//! where nothing else is said; how they are counted is the trade's: what is used
//! stays used, volumes and wear add up, dead solution is never made good (common
//! practice, no source).

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a helper of a test fails with it"
)]

mod containers;
mod fixers;
mod storage;

use uuid::Uuid;
use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::bench::bottles::actions::{NewBottle, set_bottle};
use wetside::darkroom::incompatibility::Group;
use wetside::database::Scope;
use wetside::identity::Person;
use wetside::mixes::actions::{NewMix, NewUnknown, VesselId, mix, report_unknown};
use wetside::mixes::readings::{NewReading, Taken, look};
use wetside::mixes::{self, Mix};
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{self, Product};
use wetside::rights;

use crate::harness::{Answer, Browser, Form, Stage, new_key, tray_on};

const HOUR_S: i64 = 3_600;

/// A browser that stands on a page of the room.
struct Visitor {
    browser: Browser,
    slug: String,
}

impl Visitor {
    async fn of(stage: &Stage, person: &Person) -> Self {
        Self {
            browser: stage.browser(person).await,
            slug: stage.slug.clone(),
        }
    }

    async fn open(&mut self, path: &str) -> Answer {
        let path = format!("/rooms/{}{path}", self.slug);
        self.browser.get(&path).await.expect(200)
    }

    /// Sends a form and follows it to where it leads.
    async fn send(&mut self, form: &Form) -> Answer {
        self.browser.submit_and_follow(form).await.expect(200)
    }

    /// Sends a form that must come back; answers what stands beside its fields, and
    /// in the summary where it is about none.
    async fn send_in_vain(&mut self, form: &Form) -> String {
        let answer = self.browser.submit(form).await.expect(422);
        answer.page().first(".summary").unwrap()
    }
}

fn form(page: &Answer, button: &str) -> Form {
    let found = page.page().form(button);
    found.unwrap_or_else(|| panic!("no button {button:?} in {}", page.page().main()))
}

/// The line of explanation under a choice.
fn hint(page: &Answer, choice: &str) -> String {
    let (names, hints) = (
        page.page().all(".target-face .target-name"),
        page.page().all(".target-face .target-hint"),
    );
    assert!(names.iter().any(|name| name == choice), "{names:?}");
    let faces = page.page().all(".target-face");
    let face = faces.iter().find(|face| face.starts_with(choice)).unwrap();
    let found = hints.into_iter().find(|hint| face.ends_with(hint.as_str()));
    found.unwrap_or_default()
}

/// What may not be chosen, with the reason.
fn barred(page: &Answer) -> Vec<(String, String)> {
    let names = page.page().all(".barred dt");
    names
        .into_iter()
        .zip(page.page().all(".barred dd"))
        .collect()
}

impl Stage {
    async fn mix_of(&self, id: Uuid) -> Mix {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        let database = self.installation.app.database();
        let found = database.reading(scope, move |tx| Box::pin(mixes::mix(tx, id)));
        found.await.unwrap().unwrap()
    }

    async fn product(&self, name: &str) -> Product {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        let database = self.installation.app.database();
        let all = database.reading(scope, |tx| Box::pin(products::products(tx)));
        let mut all = all.await.unwrap().into_iter();
        all.find(|product| product.name == name).unwrap()
    }

    /// Sets a product with safety data and what else is changed of it.
    async fn stock(&self, name: &str, change: impl FnOnce(&mut NewProduct)) -> Product {
        let product = self.product(name).await;
        let mut new = NewProduct {
            data_sheet_on: Some("2026-03-02".to_owned()),
            ..NewProduct::like(&product)
        };
        change(&mut new);
        let permit = self
            .permit::<rights::KeepProducts>(&self.cast.steward)
            .await
            .unwrap();
        let app = &self.installation.app;
        set_product(app, &permit, new_key(), new).await.unwrap();
        self.product(name).await
    }

    async fn tray(&self, line: Uuid, name: &str, step: Step) -> Uuid {
        let tray = NewTray {
            name: name.to_owned(),
            step: Some(step),
            ..tray_on(line)
        };
        let permit = self
            .permit::<rights::KeepBench>(&self.cast.steward)
            .await
            .unwrap();
        let app = &self.installation.app;
        let done = set_tray(app, &permit, new_key(), tray).await.unwrap();
        done.id("tray").unwrap()
    }

    async fn bottle(&self, name: &str, holds_ul: i64) -> Uuid {
        let bottle = NewBottle {
            id: None,
            name: name.to_owned(),
            holds_ul,
            is_retired: false,
        };
        let permit = self
            .permit::<rights::KeepBench>(&self.cast.steward)
            .await
            .unwrap();
        let app = &self.installation.app;
        let done = set_bottle(app, &permit, new_key(), bottle).await.unwrap();
        done.id("bottle").unwrap()
    }

    /// Mixes a product's first dilution.
    async fn mix_into(&self, vessel: VesselId, product: &Product, volume_ul: i64) -> Uuid {
        let permit = self
            .permit::<rights::Mix>(&self.cast.steward)
            .await
            .unwrap();
        let new = NewMix {
            vessel,
            dilution_id: product.dilutions[0].id,
            volume_ul,
            stock_id: None,
            happened_at_us: None,
        };
        let app = &self.installation.app;
        let done = mix(app, &permit, new_key(), new).await.unwrap();
        done.id("mix").unwrap()
    }

    /// Reports that these came into a mix.
    async fn flag(&self, mix_id: Uuid, groups: Vec<Group>) {
        let permit = self
            .permit::<rights::TestMix>(&self.cast.member)
            .await
            .unwrap();
        let new = NewReading {
            mix_id,
            taken: Taken::Contamination(groups),
            remark: "Splashed".to_owned(),
            happened_at_us: None,
        };
        let app = &self.installation.app;
        look(app, &permit, new_key(), new).await.unwrap();
    }

    /// Reports liquid that nobody can name.
    async fn unknown(&self, vessel: VesselId, volume_ul: i64) -> Uuid {
        let permit = self
            .permit::<rights::TestMix>(&self.cast.member)
            .await
            .unwrap();
        let new = NewUnknown {
            vessel,
            volume_ul,
            remark: "Brown, no label".to_owned(),
        };
        let app = &self.installation.app;
        let done = report_unknown(app, &permit, new_key(), new).await.unwrap();
        done.id("mix").unwrap()
    }
}

/// Discards a mix into a container by its page.
async fn discard_into(who: &mut Visitor, mix: Uuid, container: &str) -> Answer {
    let page = who.open(&format!("/mixes/{mix}/discard")).await;
    let form = form(&page, "Discard it")
        .with("container", container)
        .with("confirmed", "yes");
    who.send(&form).await
}
