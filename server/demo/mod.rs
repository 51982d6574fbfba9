//! A demo room: invented people, products and figures, written through the same
//! actions as everyone's, by a clock of its own that ends now.

mod bench;
mod finishing;
mod outages;
mod people;

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use crate::app::App;
use crate::clock::Clock;
use crate::error::{Error, Result};
use crate::identity::{Permit, Person, permit_for};
use crate::logbook::{Key, Recording};
use crate::rights::Right;
use crate::rooms::actions::{Founder, NewRoom, open_room};
use crate::rooms::{Emergency, Settings};
use crate::starters::STARTERS;

pub use people::Passwords;

/// The demo room's short name.
pub const SLUG: &str = "larchfold";

/// The stage on which the demo is acted out.
#[derive(Debug)]
struct Stage {
    app: App,
    clock: Clock,
    now: OffsetDateTime,
    room: Uuid,
    keys: u128,
}

impl Stage {
    /// Sets the clock to so long before now.
    fn before(&self, ago: Duration) {
        self.clock.set(self.now - ago);
    }

    /// A person's permit, by the same checks as a request of theirs.
    async fn permit<R: Right>(&self, person: &Person) -> Result<Permit<R>> {
        permit_for(&self.app, person.clone(), SLUG).await
    }

    /// A key for the next form.
    fn key(&mut self) -> Key {
        self.keys += 1;
        self.keys.to_be_bytes()
    }
}

/// Makes the demo room in `app`, whose clock must be `clock`, and answers who
/// can log in.
///
/// # Errors
/// A demo room that is there already; the database's.
pub async fn make(app: App, clock: Clock, seed: i64) -> Result<Passwords> {
    let now = clock.now();
    clock.set(now - Duration::days(3));
    let steward = people::account(&app, &people::STEWARD).await?;
    let room = NewRoom {
        slug: SLUG.to_owned(),
        demo_seed: Some(seed),
        ..NewRoom::new(settings())
    };
    let founder = Founder::New {
        account: steward.account.clone(),
        set_up: None,
        is_operator: true,
    };
    let recording = Recording::Demo(clock.clone());
    let opened = open_room(&app, room, founder, recording, STARTERS).await?;
    let mut stage = Stage {
        app,
        clock,
        now,
        room: opened.room,
        keys: 0,
    };
    let cast = people::arrive(&mut stage, steward).await?;
    outages::act(&mut stage, &cast).await?;
    bench::act(&mut stage, &cast).await?;
    Ok(cast.passwords)
}

/// Settings of the invented room; the numbers to call are no numbers.
fn settings() -> Settings {
    Settings {
        emergency: Emergency {
            number: "Demo: write your own emergency number here".to_owned(),
            poison_centre: "Demo: write your poison centre here".to_owned(),
            address: "Larchfold Cellar, an invented place".to_owned(),
            contacts: "Ottilie Brandvik, steward of this demo".to_owned(),
            eyewash: "On the wall left of the sink".to_owned(),
            data_sheets: "In the red folder by the door".to_owned(),
        },
        ..Settings::starting(
            "Larchfold Cellar".to_owned(),
            "Europe/Berlin".to_owned(),
            "EUR".to_owned(),
        )
    }
}

/// What was there a moment ago must be there still.
fn missing(what: &str) -> Error {
    Error::fault(format!("the demo lost its {what}"))
}
