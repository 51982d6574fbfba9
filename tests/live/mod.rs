//! The live board: what those who have it open are sent, and when it ends.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod changes;
mod ending;
mod reader;
mod resuming;
mod seats;
mod wire;

use uuid::Uuid;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::identity::Person;
use wetside::logbook::Done;
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::rights::{KeepBench, Mix};

use self::reader::Reader;
use crate::harness::{Bench, Stage, new_key, tray_on};

/// A room with a tray of developer and an empty one behind it on the same line.
struct Room {
    stage: Stage,
    bench: Bench,
    second: Uuid,
}

impl Room {
    async fn of(stage: Stage) -> Self {
        let bench = stage.bench().await;
        let second = add_tray(&stage, &bench, "Second developer").await;
        Self {
            stage,
            bench,
            second,
        }
    }

    /// The stream of somebody who begins with nothing.
    async fn follow(&self, person: &Person) -> Reader {
        let browser = self.stage.browser(person).await;
        Reader::follow(&browser, &self.stage.at("/board/stream"), None).await
    }

    /// The same, after the event of this id.
    async fn resume(&self, person: &Person, last: &str) -> Reader {
        let browser = self.stage.browser(person).await;
        Reader::follow(&browser, &self.stage.at("/board/stream"), Some(last)).await
    }

    async fn note(&self, sheets: u32) -> Done {
        let member = &self.stage.cast.member;
        let noted = self.stage.note(member, &self.bench, 0, sheets).await;
        noted.unwrap()
    }

    /// Mixes into the second tray.
    async fn mix(&self) -> Done {
        let permit = self.stage.permit::<Mix>(&self.stage.cast.trained).await;
        let new = NewMix {
            vessel: VesselId::Tray(self.second),
            dilution_id: self.bench.dilution,
            volume_ul: 1_000_000,
            stock_id: None,
            happened_at_us: None,
        };
        let app = &self.stage.installation.app;
        mix(app, &permit.unwrap(), new_key(), new).await.unwrap()
    }

    /// The id of an event that ends with the last entry.
    async fn last_id(&self) -> String {
        let found: (i64, Vec<u8>) = sqlx::query_as("select seq, hash from head where room_id = $1")
            .bind(self.stage.room)
            .fetch_one(&mut self.stage.installation.db().await)
            .await
            .unwrap();
        let hash = data_encoding::HEXLOWER.encode(&found.1);
        format!("{}.{}", found.0, &hash[..8])
    }

    fn first_tray(&self) -> String {
        format!("tray-{}", self.bench.tray)
    }

    fn second_tray(&self) -> String {
        format!("tray-{}", self.second)
    }
}

async fn add_tray(stage: &Stage, bench: &Bench, name: &str) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let new = NewTray {
        name: name.to_owned(),
        ..tray_on(bench.line)
    };
    let app = &stage.installation.app;
    let done = set_tray(app, &permit.unwrap(), new_key(), new).await;
    done.unwrap().id("tray").unwrap()
}
