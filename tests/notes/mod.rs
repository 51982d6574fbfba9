//! Notes by their pages: counted and not, film, what a steward sets right, and a
//! sheet that was kept on paper.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod correction;
mod effects;
mod film;
mod form;
mod kept;
mod paper;

use uuid::Uuid;
use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::database::Scope;
use wetside::identity::Person;
use wetside::mixes;
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::papers;
use wetside::papers::actions::{NewPaperClass, set_paper_class};
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{self, Kind};
use wetside::rights;

use crate::harness::{Answer, Browser, Form, Stage, new_key, tray_on};

impl Stage {
    fn whole_room(&self) -> Scope {
        Scope {
            room: self.room,
            person: None,
        }
    }

    /// What is spent of a mix, in nanolitres.
    async fn spent(&self, mix: Uuid) -> i64 {
        let app = &self.installation.app;
        let found = app.database().reading(self.whole_room(), move |tx| {
            Box::pin(async move { mixes::mix(tx, mix).await })
        });
        found.await.unwrap().unwrap().spent_nl
    }

    /// A litre of the starter's product of a kind, in a tray of its own on the line.
    async fn bath(&self, line: Uuid, kind: Kind, step: Step, change: fn(&mut NewProduct)) -> Uuid {
        let app = &self.installation.app;
        let found = app.database().reading(self.whole_room(), move |tx| {
            Box::pin(async move { products::products(tx).await })
        });
        let found = found.await.unwrap();
        let found = found.iter().find(|each| each.kind == kind).unwrap();
        let mut new = NewProduct {
            data_sheet_on: Some("2026-03-02".to_owned()),
            ..NewProduct::like(found)
        };
        change(&mut new);
        let steward = &self.cast.steward;
        let permit = self.permit::<rights::KeepProducts>(steward).await.unwrap();
        let product = set_product(app, &permit, new_key(), new).await.unwrap();
        let dilution = self.first_dilution(product.id("product").unwrap()).await;
        let permit = self.permit::<rights::KeepBench>(steward).await.unwrap();
        let tray = NewTray {
            name: found.name.clone(),
            step: Some(step),
            ..tray_on(line)
        };
        let tray = set_tray(app, &permit, new_key(), tray).await.unwrap();
        let permit = self.permit::<rights::Mix>(steward).await.unwrap();
        let new = NewMix {
            vessel: VesselId::Tray(tray.id("tray").unwrap()),
            dilution_id: dilution,
            volume_ul: 1_000_000,
            happened_at_us: None,
            stock_id: None,
        };
        let mixed = mix(app, &permit, new_key(), new).await.unwrap();
        mixed.id("mix").unwrap()
    }

    async fn first_dilution(&self, product: Uuid) -> Uuid {
        let app = &self.installation.app;
        let found = app.database().reading(self.whole_room(), move |tx| {
            Box::pin(async move { products::product(tx, product).await })
        });
        found.await.unwrap().unwrap().dilutions[0].id
    }

    /// Changes what is known of the first paper class.
    async fn paper(&self, change: fn(&mut NewPaperClass)) {
        let app = &self.installation.app;
        let found = app
            .database()
            .reading(self.whole_room(), |tx| Box::pin(papers::paper_classes(tx)));
        let class = found.await.unwrap().swap_remove(0);
        let mut new = NewPaperClass {
            id: Some(class.id),
            name: class.name,
            is_retired: false,
            silver: class.silver,
            carry_over_ul_per_m2: class.carry_over_ul_per_m2,
        };
        change(&mut new);
        let permit = self
            .permit::<rights::KeepPapers>(&self.cast.steward)
            .await
            .unwrap();
        set_paper_class(app, &permit, new_key(), new).await.unwrap();
    }
}

/// The form to note sheets, the first class and 8×10 in chosen.
async fn note_form(stage: &Stage, browser: &mut Browser) -> Form {
    let page = browser.get(&stage.at("/sheets/new")).await.expect(200);
    let form = page.page().form("Note them").unwrap();
    let classes = page.page().all("input[name=paper_class] + span");
    form.choose(&classes[0]).choose("8×10 in")
}

/// The verdict of the first tray on somebody's board.
async fn verdict(stage: &Stage, person: &Person) -> String {
    let mut browser = stage.browser(person).await;
    let board = browser.get(&stage.at("/board")).await.expect(200);
    board.page().first(".verdict-word").unwrap()
}

/// Follows a link of a page by its words.
async fn follow(browser: &mut Browser, page: &Answer, words: &str) -> Answer {
    let links = page.page().links();
    let link = links.iter().find(|(text, _)| text == words);
    let (_, href) = link.unwrap_or_else(|| panic!("no link {words:?} in {links:?}"));
    browser.get(href).await.expect(200)
}

/// What stands beside the fields, by their names.
fn beside(answer: &Answer) -> Vec<String> {
    let problems = answer.page().problems();
    problems.into_iter().map(|(field, _)| field).collect()
}
