//! What people find of baths, by the pages they write it on: each row of the
//! verdict is reached by what somebody does.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod checks;
mod doubt;
mod steward;
mod times;
mod tray;
mod verdicts;

use uuid::Uuid;
use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::database::Scope;
use wetside::identity::Person;
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{Kind, TimePoint};
use wetside::rights;
use wetside::rooms::Settings;
use wetside::rooms::actions::change_settings;
use wetside::sheets::NewNote;
use wetside::sheets::actions::note_sheets;
use wetside::{bench, papers, products, rooms};

use crate::harness::{Answer, Bench, Page, Stage, new_key, tray_on};

/// A litre of a starter product in a tray of its own.
struct Bath {
    stage: Stage,
    bench: Bench,
}

impl Bath {
    /// Mixes it at the product's first dilution, once the steward has copied a
    /// data sheet and changed what the scenario needs.
    async fn of(stage: &Stage, kind: Kind, step: Step, change: fn(&mut NewProduct)) -> Self {
        let app = &stage.installation.app;
        let (line, found, classes, size) = found(stage, kind).await;
        let dilution = found.dilutions[0].id;
        let mut new = NewProduct {
            data_sheet_on: Some("2026-03-02".to_owned()),
            hazard_codes: vec!["H319".to_owned()],
            ..NewProduct::like(&found)
        };
        change(&mut new);
        let steward = &stage.cast.steward;
        let permit = stage.permit::<rights::KeepProducts>(steward).await.unwrap();
        let product = set_product(app, &permit, new_key(), new).await.unwrap();
        let permit = stage.permit::<rights::KeepBench>(steward).await.unwrap();
        let tray = NewTray {
            name: format!("Tray for {}", found.name),
            step: Some(step),
            ..tray_on(line)
        };
        let tray = set_tray(app, &permit, new_key(), tray).await.unwrap();
        let tray = tray.id("tray").unwrap();
        let trained = &stage.cast.trained;
        let permit = stage.permit::<rights::Mix>(trained).await.unwrap();
        let new = NewMix {
            vessel: VesselId::Tray(tray),
            dilution_id: dilution,
            volume_ul: 1_000_000,
            stock_id: None,
            happened_at_us: None,
        };
        let mixed = mix(app, &permit, new_key(), new).await.unwrap();
        Self {
            stage: stage.clone(),
            bench: Bench {
                line,
                tray,
                mix: mixed.id("mix").unwrap(),
                product: product.id("product").unwrap(),
                dilution,
                classes,
                size,
            },
        }
    }

    /// A developer whose sheet says 90 s at 20 °C and 60 s at 24 °C; invented.
    async fn developer(stage: &Stage) -> Self {
        Self::of(stage, Kind::Developer, Step::Developer, |product| {
            product.time_points = vec![
                TimePoint {
                    seconds: 90,
                    tenths_celsius: 200,
                },
                TimePoint {
                    seconds: 60,
                    tenths_celsius: 240,
                },
            ];
        })
        .await
    }

    async fn fixer(stage: &Stage) -> Self {
        Self::of(stage, Kind::Fixer, Step::Fixer, |_| {}).await
    }

    fn at(&self, what: &str) -> String {
        self.stage.at(&format!("/mixes/{}/{what}", self.bench.mix))
    }

    /// The page of its tray, as somebody sees it.
    async fn seen_by(&self, person: &Person) -> Answer {
        let mut browser = self.stage.browser(person).await;
        let path = self.stage.at(&format!("/trays/{}", self.bench.tray));
        browser.get(&path).await.expect(200)
    }

    async fn page(&self) -> Page {
        self.seen_by(&self.stage.cast.member).await.page()
    }

    /// The verdict that stands large on the page.
    async fn verdict(&self) -> String {
        self.page().await.first(".tray-said .verdict-word").unwrap()
    }

    /// The reason beside it.
    async fn reason(&self) -> String {
        self.page().await.first(".tray-said .reason").unwrap()
    }

    /// Fills in the form of a check and sends it.
    async fn sent(&self, person: &Person, kind: &str, said: &[(&str, &str)]) -> Answer {
        let mut browser = self.stage.browser(person).await;
        let path = self.at(&format!("check?kind={kind}"));
        let page = browser.get(&path).await.expect(200);
        let mut form = page.page().form("Record it").unwrap();
        for (label, value) in said {
            form = match *value {
                "" => form.choose(label),
                value => form.fill(label, value),
            };
        }
        browser.submit(&form).await
    }

    /// The same by a member, and it is taken.
    async fn check(&self, kind: &str, said: &[(&str, &str)]) {
        self.sent(&self.stage.cast.member, kind, said)
            .await
            .expect(303);
    }

    /// A time until the image showed.
    async fn emergence(&self, seconds: &str, celsius: &str, is_fresh: bool) {
        self.timed(
            "emergence",
            ("Until the image showed", seconds),
            celsius,
            is_fresh,
        )
        .await;
    }

    /// A time until film was clear.
    async fn clearing(&self, seconds: &str, celsius: &str, is_fresh: bool) {
        self.timed(
            "clearing",
            ("Until the film was clear", seconds),
            celsius,
            is_fresh,
        )
        .await;
    }

    async fn timed(&self, kind: &str, time: (&str, &str), celsius: &str, is_fresh: bool) {
        let sample = match kind {
            "clearing" => ("Film", "Offcuts of roll film"),
            _ => ("Paper", "The room’s RC"),
        };
        let mut said = vec![time, ("Temperature of the bath", celsius), sample];
        if is_fresh {
            said.push((
                "The bath is fresh: later times are held against this one",
                "",
            ));
        }
        self.check(kind, &said).await;
    }

    /// Notes sheets of 8×10 in on RC.
    async fn note(&self, person: &Person, sheets: u32) -> i64 {
        self.stage
            .note(person, &self.bench, 0, sheets)
            .await
            .unwrap()
            .seq
    }

    /// Notes sheets that nobody counted.
    async fn note_uncounted(&self) {
        let member = &self.stage.cast.member;
        let permit = self.stage.permit::<rights::NoteSheets>(member).await;
        let note = NewNote {
            line_id: self.bench.line,
            paper_class_id: self.bench.classes[0],
            sheet_size_id: self.bench.size,
            sheets: None,
            is_toned: false,
            is_without_tray: false,
            happened_at_us: None,
            workshop_id: None,
        };
        let app = &self.stage.installation.app;
        note_sheets(app, &permit.unwrap(), new_key(), note)
            .await
            .unwrap();
    }

    /// Flags it as contaminated, as a member.
    async fn flag(&self, what: &str) {
        let mut browser = self.stage.browser(&self.stage.cast.member).await;
        let page = browser.get(&self.at("flag")).await.expect(200);
        let form = page.page().form("Flag it").unwrap().choose(what);
        browser.submit(&form).await.expect(303);
    }

    /// Asks for an extension, as the steward.
    async fn extend(&self, hours: &str) -> Answer {
        let mut browser = self.stage.browser(&self.stage.cast.steward).await;
        let page = browser.get(&self.at("extend")).await.expect(200);
        let form = page.page().form("Extend it").unwrap();
        let form = form
            .fill("For how long", hours)
            .fill("Why", "Last prints of the evening");
        browser.submit(&form).await
    }

    /// Takes the newest finding back, as the steward.
    async fn take_back(&self) {
        let steward = &self.stage.cast.steward;
        let page = self.seen_by(steward).await.page();
        let links = page.links();
        let found = links
            .iter()
            .find(|(words, _)| words.starts_with("Take back"));
        let mut browser = self.stage.browser(steward).await;
        let page = browser.get(&found.unwrap().1).await.expect(200);
        let form = page.page().form("Take it back").unwrap();
        let form = form.fill("Why", "It was another tray");
        browser.submit(&form).await.expect(303);
    }
}

fn everything(stage: &Stage) -> Scope {
    Scope {
        room: stage.room,
        person: None,
    }
}

/// A line, a product of a kind, the paper classes, and 8×10 in.
async fn found(stage: &Stage, kind: Kind) -> (Uuid, products::Product, Vec<Uuid>, Uuid) {
    let app = &stage.installation.app;
    let found = app.database().reading(everything(stage), move |tx| {
        Box::pin(async move {
            let products = products::products(tx).await?;
            let product = products.into_iter().find(|each| each.kind == kind);
            let classes = papers::paper_classes(tx).await?;
            let sizes = papers::sheet_sizes(tx).await?;
            let size = sizes.iter().find(|size| size.name.starts_with("8×10"));
            let lines = bench::lines(tx).await?;
            Ok((
                lines[0].id,
                product.unwrap(),
                classes.iter().map(|class| class.id).collect(),
                size.unwrap().id,
            ))
        })
    });
    found.await.unwrap()
}

/// Changes the room's settings.
async fn set(stage: &Stage, change: fn(&mut Settings)) {
    let app = &stage.installation.app;
    let reading = app
        .database()
        .reading(everything(stage), |tx| Box::pin(rooms::settings(tx)));
    let mut settings = reading.await.unwrap();
    change(&mut settings);
    let permit = stage.permit::<rights::KeepRoom>(&stage.cast.steward).await;
    change_settings(app, &permit.unwrap(), new_key(), settings)
        .await
        .unwrap();
}
