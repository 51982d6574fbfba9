//! The stage on which the demo is acted out: the program, its clock, and everyone.

use futures_util::future::BoxFuture;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::joining::LogIn;
use super::people::{Someone, Who};
use super::waste::Canisters;
use super::{SLUG, missing};
use crate::app::App;
use crate::board::{BenchNow, bench_now};
use crate::clock::Clock;
use crate::darkroom::verdict::Judgement;
use crate::database::{RoomTx, Scope};
use crate::error::Result;
use crate::identity::{Permit, permit_for};
use crate::logbook::Key;
use crate::mixes::Mix;
use crate::rights::{Right, Role};
use crate::rooms;

/// What an act takes, before the next one begins.
const AN_ACT: Duration = Duration::seconds(20);

/// The stage.
#[derive(Debug)]
pub(super) struct Stage {
    pub(super) app: App,
    clock: Clock,
    pub(super) seed: i64,
    pub(super) room: Uuid,
    pub(super) everyone: Vec<Someone>,
    pub(super) log_ins: Vec<LogIn>,
    pub(super) canisters: Canisters,
    keys: u128,
}

impl Stage {
    /// A stage in a room that was just opened.
    pub(super) fn new(app: App, clock: Clock, seed: i64, room: Uuid) -> Self {
        Self {
            app,
            clock,
            seed,
            room,
            everyone: Vec::new(),
            log_ins: Vec::new(),
            canisters: Canisters::default(),
            keys: 0,
        }
    }

    /// The time on the stage.
    pub(super) fn now(&self) -> OffsetDateTime {
        self.clock.now()
    }

    /// Lets the time come to an instant; where it is past that, it stands.
    pub(super) fn reaches(&self, at: OffsetDateTime) {
        self.clock.set(at.max(self.clock.now()));
    }

    /// Lets so much time pass.
    pub(super) fn passes(&self, time: Duration) {
        self.clock.set(self.clock.now() + time);
    }

    /// Somebody.
    pub(super) fn of(&self, who: Who) -> &Someone {
        &self.everyone[who.0]
    }

    /// Somebody's id.
    pub(super) fn id(&self, who: Who) -> Uuid {
        self.of(who).person.id
    }

    /// Everyone of whom this holds, in the order of the list.
    pub(super) fn those(&self, hold: impl Fn(&Someone) -> bool) -> Vec<Who> {
        let all = self.everyone.iter().enumerate();
        all.filter(|(_, someone)| hold(someone))
            .map(|(place, _)| Who(place))
            .collect()
    }

    /// Says what somebody may do from now on.
    pub(super) fn becomes(&mut self, who: Who, role: Option<Role>) {
        self.everyone[who.0].role = role;
    }

    /// Somebody's permit, by the same checks as a request of theirs.
    pub(super) async fn permit<R: Right>(&self, who: Who) -> Result<Permit<R>> {
        permit_for(&self.app, self.of(who).person.clone(), SLUG).await
    }

    /// A key for the next form.
    pub(super) fn key(&mut self) -> Key {
        self.keys += 1;
        self.keys.to_be_bytes()
    }

    /// Lets somebody do something: any action, with a permit and a key of their own.
    pub(super) async fn act<R: Right, N, T>(
        &mut self,
        who: Who,
        action: impl AsyncFnOnce(&App, &Permit<R>, Key, N) -> Result<T>,
        new: N,
    ) -> Result<T> {
        let permit = self.permit::<R>(who).await?;
        let key = self.key();
        let done = action(&self.app, &permit, key, new).await;
        self.passes(AN_ACT);
        done
    }

    /// Reads in the room.
    pub(super) async fn reads<T, W>(&self, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut RoomTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        self.app.database().reading(scope, work).await
    }

    /// Looks at the board.
    pub(super) async fn looks(&self) -> Result<Look> {
        let now = self.now();
        self.reads(move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                Ok(Look(bench_now(tx, now, &settings).await?))
            })
        })
        .await
    }
}

/// What somebody saw on the board.
pub(super) struct Look(BenchNow);

impl Look {
    /// What stands in a tray, and how good it is.
    pub(super) fn in_tray(&self, id: Uuid) -> Option<(&Mix, &Judgement)> {
        let mut trays = self.0.lines.iter().flat_map(|line| &line.trays);
        let now = trays.find(|now| now.tray.id == id)?;
        Some((now.mix.as_ref()?, &now.judgement))
    }

    /// What a bottle holds, and how good it is.
    pub(super) fn in_bottle(&self, id: Uuid) -> Option<(&Mix, &Judgement)> {
        let now = self.0.bottles.iter().find(|now| now.bottle.id == id)?;
        Some((&now.mix, &now.judgement))
    }

    /// The mix that must stand in a tray.
    pub(super) fn mix_in(&self, id: Uuid) -> Result<&Mix> {
        let found = self.in_tray(id);
        found.map(|(mix, _)| mix).ok_or_else(|| missing("mix"))
    }
}
