//! The demo: the same book every time, and all that a room can show.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "what fails here fails the test"
)]

mod contents;
mod walk;

use time::OffsetDateTime;
use time::macros::datetime;
use uuid::Uuid;
use wetside::clock::Clock;
use wetside::database::Scope;
use wetside::demo::{self, LogIn, Progress, SLUG, Wanted};
use wetside::kinds::KINDS;
use wetside::logbook::chain::Head;
use wetside::logbook::reading;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify;
use wetside::rooms;

use crate::harness::{Installation, alone, on_runtime};

/// A demo that was made, and the program that serves it by the same clock.
struct Made {
    installation: Installation,
    end: OffsetDateTime,
    room: Uuid,
    log_ins: Vec<LogIn>,
    told: Vec<Progress>,
}

impl Made {
    async fn new(end: OffsetDateTime, wanted: Wanted) -> Self {
        let installation = alone(Clock::standing_at(end)).await;
        let mut told = Vec::new();
        let app = installation.demo();
        let made = demo::make(app, installation.clock.clone(), wanted, |far| {
            told.push(far);
        });
        let log_ins = made.await.unwrap();
        let rooms = installation
            .app
            .database()
            .installation(|tx| Box::pin(rooms::by_slug(tx, SLUG)))
            .await
            .unwrap();
        Self {
            room: rooms.unwrap().id,
            installation,
            end,
            log_ins,
            told,
        }
    }

    async fn head(&self) -> Head {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        let database = self.installation.app.database();
        let head = database.reading(scope, |tx| Box::pin(reading::head(tx)));
        head.await.unwrap()
    }

    async fn verifies(&self) {
        let owner = self.installation.app.owner().unwrap();
        let vault = Vault {
            data: self.installation.data.clone(),
            key_file: None,
        };
        let report = verify(owner, KINDS, &vault, self.room).await.unwrap();
        assert!(report.is_clean(), "{report}");
    }
}

/// At an hour when the room is shut, of the day whose sheets are to be few.
#[test]
fn six_months_hold_all_that_a_room_can_show() {
    on_runtime(async {
        let wanted = Wanted {
            seed: 1,
            weeks: demo::WEEKS,
        };
        let made = Made::new(datetime!(2026-11-23 02:20 UTC), wanted).await;
        contents::hold(&made).await;
        walk::every_page_of_the_steward(&made).await;
        made.verifies().await;
        made.installation.close().await;
    });
}

#[test]
fn the_same_seed_and_end_make_the_same_book() {
    on_runtime(async {
        let end = datetime!(2026-11-26 19:40:07.123456 UTC);
        let mut heads = Vec::new();
        for seed in [1, 1, 2] {
            let weeks = demo::FEWEST_WEEKS;
            let made = Made::new(end, Wanted { seed, weeks }).await;
            heads.push(made.head().await);
            if seed == 2 {
                made.verifies().await;
            }
            made.installation.close().await;
        }
        assert_eq!(heads[0], heads[1]);
        assert_ne!(heads[0].hash, heads[2].hash);
    });
}
