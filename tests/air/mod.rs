//! Room air: what is known and measured of each space, how it is aired, and which baths
//! may start where.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "a helper of a test fails with it"
)]

mod airing;
mod api;
mod measuring;
mod record;
mod starting;

use uuid::Uuid;
use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::error::Result;
use wetside::logbook::Done;
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{self, Kind};
use wetside::{database, rights};

use crate::harness::{Answer, Stage, Visitor, new_key, tray_on};

const FLOOR: &str = "Floor";
const HEIGHT: &str = "Height";
const FLOW: &str = "Flow";
const HOW: &str = "How";

impl Visitor {
    /// Opens the page of the room's own air.
    async fn air(&mut self) -> Answer {
        let page = self.open("/air").await;
        self.follow(&page, "The room itself").await
    }

    /// Sets floor and height of the room itself, and stays on its page.
    async fn size(&mut self, floor: &str, height: &str) -> Answer {
        let page = self.air().await;
        let page = self.follow(&page, "Floor, height and rule").await;
        let fields = [(FLOOR, floor), (HEIGHT, height)];
        self.send_on(&page, "Keep the change", &fields).await
    }

    /// Records so much exhaust of the room itself, and stays on its page.
    async fn measure(&mut self, flow: &str) -> Answer {
        let page = self.air().await;
        let page = self.follow(&page, "Record a measurement").await;
        let fields = [(FLOW, flow), (HOW, "Vane anemometer at the grille")];
        self.send_on(&page, "Record it", &fields).await
    }

    /// What the board says beside its lines.
    async fn says(&mut self) -> Vec<String> {
        let board = self.open("/board").await;
        board.page().all(".notice-board li")
    }
}

/// The large word of a place's page.
fn word(page: &Answer) -> String {
    page.page().first(".air-word").unwrap()
}

/// The figures of a place's page.
fn figures(page: &Answer) -> Vec<String> {
    page.page().all(".sum td")
}

impl Stage {
    /// A toner that may be mixed, and a tray for it on a line.
    async fn toner(&self, line: Uuid) -> Toner {
        let app = &self.installation.app;
        let scope = database::Scope {
            room: self.room,
            person: None,
        };
        let found = app.database().reading(scope, move |tx| {
            Box::pin(async move { products::products(tx).await })
        });
        let found = found.await.unwrap();
        let found = found.iter().find(|each| each.kind == Kind::Toner).unwrap();
        let new = NewProduct {
            data_sheet_on: Some("2026-03-02".to_owned()),
            ..NewProduct::like(found)
        };
        let steward = &self.cast.steward;
        let permit = self.permit::<rights::KeepProducts>(steward).await;
        let set = set_product(app, &permit.unwrap(), new_key(), new).await;
        set.unwrap();
        let permit = self.permit::<rights::KeepBench>(steward).await;
        let tray = NewTray {
            name: "Toner".to_owned(),
            step: Some(Step::Toner),
            ..tray_on(line)
        };
        let tray = set_tray(app, &permit.unwrap(), new_key(), tray).await;
        Toner {
            tray: tray.unwrap().id("tray").unwrap(),
            // Its dilutions keep their ids while their figures stay.
            dilution: found.dilutions[0].id,
        }
    }

    /// Mixes a litre of it as the steward.
    async fn mix_toner(&self, toner: &Toner) -> Result<Done> {
        let steward = &self.cast.steward;
        let permit = self.permit::<rights::Mix>(steward).await.unwrap();
        let new = NewMix {
            vessel: VesselId::Tray(toner.tray),
            dilution_id: toner.dilution,
            volume_ul: 1_000_000,
            stock_id: None,
            happened_at_us: None,
        };
        mix(&self.installation.app, &permit, new_key(), new).await
    }
}

/// A toner and the tray it is for.
struct Toner {
    tray: Uuid,
    dilution: Uuid,
}
