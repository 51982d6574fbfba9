//! Many people at once, through two servers over one database.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use std::sync::Arc;
use std::time::Duration;

use futures_util::future::join_all;
use sqlx::{Connection, PgConnection, Row};
use uuid::Uuid;
use wetside::app::App;
use wetside::database::Scope;
use wetside::error::{Error, Result};
use wetside::identity::{Person, permit_for};
use wetside::logbook::{Asked, Author, Done, Key, fingerprint, head};
use wetside::mixes;
use wetside::mixes::Why;
use wetside::mixes::actions::{NewDiscard, NewMix, VesselId, discard, mix};
use wetside::problem::Problem;
use wetside::sheets::NewNote;
use wetside::sheets::actions::{Undo, note_sheets, undo};

use crate::harness::{Bench, Stage, new_key, scenario, scenario_alone};

/// A litre at 1+9 develops 100 sheets of 8×10 in on RC, so a sheet is 10 ml.
/// Source: common practice, no source.
const SHEET_NL: i64 = 10_000_000;

/// A room that two servers serve.
struct Pair {
    stage: Stage,
    bench: Bench,
    servers: [App; 2],
}

impl Pair {
    async fn of(stage: Stage) -> Self {
        let bench = stage.bench().await;
        let servers = [stage.installation.app.clone(), stage.installation.second()];
        Self {
            stage,
            bench,
            servers,
        }
    }

    fn printers(&self) -> [&Person; 3] {
        let cast = &self.stage.cast;
        [&cast.member, &cast.trained, &cast.steward]
    }

    fn sheets(&self, sheets: u32) -> NewNote {
        NewNote {
            line_id: self.bench.line,
            paper_class_id: self.bench.classes[0],
            sheet_size_id: self.bench.size,
            sheets: Some(sheets),
            is_toned: false,
            is_without_tray: false,
            happened_at_us: None,
            workshop_id: None,
        }
    }

    /// Notes through one of the servers.
    async fn note(&self, server: usize, who: &Person, key: Key, note: NewNote) -> Result<Done> {
        let app = &self.servers[server % 2];
        let permit = permit_for(app, who.clone(), &self.stage.slug).await?;
        note_sheets(app, &permit, key, note).await
    }

    fn scope(&self) -> Scope {
        Scope {
            room: self.stage.room,
            person: None,
        }
    }

    async fn spent_nl(&self, id: Uuid) -> i64 {
        let database = self.servers[0].database();
        let found = database.reading(self.scope(), move |tx| Box::pin(mixes::mix(tx, id)));
        found.await.unwrap().unwrap().spent_nl
    }

    async fn last_seq(&self) -> i64 {
        let database = self.servers[0].database();
        let found = database.reading(self.scope(), move |tx| Box::pin(head(tx)));
        found.await.unwrap().seq
    }

    /// The numbers of the entries under these keys.
    async fn seqs(&self, db: &mut PgConnection, keys: &[Key]) -> Vec<i64> {
        let keys: Vec<&[u8]> = keys.iter().map(<[u8; 16]>::as_slice).collect();
        let found =
            sqlx::query("select seq from entry where room_id = $1 and key = any($2) order by seq")
                .bind(self.stage.room)
                .bind(keys)
                .fetch_all(db)
                .await
                .unwrap();
        found.iter().map(|row| row.get(0)).collect()
    }

    /// Holds the room's head, so that what is asked meanwhile waits in the queue.
    async fn hold(&self) -> Held {
        let mut db = self.stage.installation.db().await;
        sqlx::raw_sql("begin").execute(&mut db).await.unwrap();
        sqlx::query("select seq from head where room_id = $1 for update")
            .bind(self.stage.room)
            .execute(&mut db)
            .await
            .unwrap();
        Held { db }
    }

    async fn let_go(&self) {
        self.servers[1].database().close().await;
    }
}

/// The lock on a room's head.
struct Held {
    db: PgConnection,
}

impl Held {
    async fn release(mut self) {
        sqlx::raw_sql("rollback")
            .execute(&mut self.db)
            .await
            .unwrap();
        self.db.close().await.unwrap();
    }
}

/// Asks for something while the head is held, and gives it time to queue up.
async fn queued<T: Send + 'static>(
    asked: impl Future<Output = T> + Send + 'static,
) -> tokio::task::JoinHandle<T> {
    let task = tokio::spawn(asked);
    tokio::time::sleep(Duration::from_millis(200)).await;
    task
}

#[test]
fn notes_of_many_through_two_servers_are_numbered_without_gaps() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        let before = pair.last_seq().await;
        let keys: Vec<Key> = (0..160).map(|_| new_key()).collect();
        let printers = pair.printers();
        let notes = keys.iter().enumerate().map(|(place, key)| {
            let who = printers[place % printers.len()];
            pair.note(place / 3, who, *key, pair.sheets(1))
        });
        let answers: Vec<Done> = join_all(notes)
            .await
            .into_iter()
            .map(Result::unwrap)
            .collect();
        assert!(answers.iter().all(|done| !done.hit));
        let mut told: Vec<i64> = answers.iter().map(|done| done.seq).collect();
        told.sort_unstable();
        let wanted: Vec<i64> = (before + 1..=before + 160).collect();
        assert_eq!(told, wanted);
        assert_eq!(pair.last_seq().await, before + 160);
        let mut db = pair.stage.installation.db().await;
        assert_eq!(pair.seqs(&mut db, &keys).await, wanted);
        assert_eq!(pair.spent_nl(pair.bench.mix).await, 160 * SHEET_NL);
        pair.let_go().await;
    });
}

#[test]
fn one_key_sent_many_times_at_once_is_one_entry() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        let before = pair.last_seq().await;
        let key = new_key();
        let member = &pair.stage.cast.member;
        let notes = (0..40).map(|place| pair.note(place, member, key, pair.sheets(2)));
        let answers: Vec<Done> = join_all(notes)
            .await
            .into_iter()
            .map(Result::unwrap)
            .collect();
        assert_eq!(answers.iter().filter(|done| !done.hit).count(), 1);
        assert!(answers.iter().all(|done| done.seq == before + 1));
        let ids: Vec<Uuid> = answers
            .iter()
            .map(|done| done.id("pass").unwrap())
            .collect();
        assert!(ids.iter().all(|id| *id == ids[0]));
        assert_eq!(pair.last_seq().await, before + 1);
        assert_eq!(pair.spent_nl(pair.bench.mix).await, 2 * SHEET_NL);
        let other = pair
            .note(0, &pair.stage.cast.trained, key, pair.sheets(2))
            .await;
        assert!(matches!(other, Err(Error::Mismatch)), "{other:?}");
        let more = pair.note(1, member, key, pair.sheets(3)).await;
        assert!(matches!(more, Err(Error::Mismatch)), "{more:?}");
        pair.let_go().await;
    });
}

#[test]
fn two_who_mix_into_one_tray_at_once_make_one_mix() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        for _ in 0..5 {
            discard_standing(&pair).await;
            let new = NewMix {
                vessel: VesselId::Tray(pair.bench.tray),
                dilution_id: pair.bench.dilution,
                volume_ul: 1_000_000,
                stock_id: None,
                happened_at_us: None,
            };
            let people = [&pair.stage.cast.trained, &pair.stage.cast.steward];
            let mixing = people.into_iter().zip(&pair.servers).map(|(who, app)| {
                let new = new.clone();
                async {
                    let permit = permit_for(app, who.clone(), &pair.stage.slug).await?;
                    mix(app, &permit, new_key(), new).await
                }
            });
            let answers = join_all(mixing).await;
            let (done, told): (Vec<_>, Vec<_>) = answers.into_iter().partition(Result::is_ok);
            assert_eq!(done.len(), 1, "{told:?}");
            assert!(
                matches!(told[0], Err(Error::Refused(Problem::TrayFull))),
                "{told:?}"
            );
        }
        pair.let_go().await;
    });
}

/// Discards what stands in the tray.
async fn discard_standing(pair: &Pair) {
    let database = pair.servers[0].database();
    let standing = database.reading(pair.scope(), |tx| Box::pin(mixes::standing(tx)));
    for mix in standing.await.unwrap() {
        try_discard(pair, 0, mix.id).await.unwrap();
    }
}

async fn try_discard(pair: &Pair, server: usize, mix_id: Uuid) -> Result<Done> {
    let app = &pair.servers[server];
    let permit = permit_for(app, pair.stage.cast.steward.clone(), &pair.stage.slug).await?;
    let new = NewDiscard {
        mix_id,
        volume_ul: 1_000_000,
        container: "Used developer".to_owned(),
        why: Why::Spent,
        happened_at_us: None,
    };
    discard(app, &permit, new_key(), new).await
}

#[test]
fn a_note_taken_back_twice_at_once_is_taken_back_once() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        let member = &pair.stage.cast.member;
        for _ in 0..5 {
            let noted = pair
                .note(0, member, new_key(), pair.sheets(4))
                .await
                .unwrap();
            let wanted = Undo {
                pass_id: noted.id("pass").unwrap(),
                reason: String::new(),
            };
            let undoing = pair.servers.iter().map(|app| async {
                let permit = permit_for(app, member.clone(), &pair.stage.slug).await?;
                undo(app, &permit, new_key(), wanted.clone()).await
            });
            let answers = join_all(undoing).await;
            let (done, told): (Vec<_>, Vec<_>) = answers.into_iter().partition(Result::is_ok);
            assert_eq!(done.len(), 1, "{told:?}");
            assert!(
                matches!(told[0], Err(Error::Refused(Problem::AlreadyUndone))),
                "{told:?}"
            );
            assert_eq!(pair.spent_nl(pair.bench.mix).await, 0);
        }
        pair.let_go().await;
    });
}

/// Whichever comes first: a note after the discard is told that nothing stood
/// there, and what was noted before it is what the mix was used for.
#[test]
fn a_discard_between_notes_loses_none_of_them() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        let printers = pair.printers();
        let notes = (0..24).map(|place| {
            let who = printers[place % printers.len()];
            pair.note(place, who, new_key(), pair.sheets(1))
        });
        let discarding = async {
            tokio::time::sleep(Duration::from_millis(3)).await;
            try_discard(&pair, 1, pair.bench.mix).await
        };
        let (answers, discarded) = tokio::join!(join_all(notes), discarding);
        let discarded = discarded.unwrap().seq;
        let mut sheets = 0;
        for answer in answers {
            match answer {
                Ok(done) => {
                    assert!(done.seq < discarded, "noted after the discard");
                    sheets += 1;
                }
                Err(Error::Invalid(problems)) => {
                    let told: Vec<_> = problems.iter().map(|(_, problem)| problem).collect();
                    assert!(matches!(told[..], [Problem::NothingStoodThere]), "{told:?}");
                }
                Err(other) => panic!("{other}"),
            }
        }
        assert_eq!(pair.spent_nl(pair.bench.mix).await, sheets * SHEET_NL);
        pair.let_go().await;
    });
}

#[test]
fn one_bad_note_in_a_group_of_64_spoils_no_other() {
    scenario(async |stage: Stage| {
        let pair = Arc::new(Pair::of(stage).await);
        let held = pair.hold().await;
        let first = {
            let pair = pair.clone();
            queued(async move {
                let member = &pair.stage.cast.member;
                pair.note(0, member, new_key(), pair.sheets(1)).await
            })
            .await
        };
        let keys: Vec<Key> = (0..64).map(|_| new_key()).collect();
        let group = {
            let (pair, keys) = (pair.clone(), keys.clone());
            queued(async move {
                let printers = pair.printers();
                let notes = keys.iter().enumerate().map(|(place, key)| {
                    let mut note = pair.sheets(1);
                    if place == 31 {
                        note.paper_class_id = Uuid::nil();
                    }
                    pair.note(0, printers[place % printers.len()], *key, note)
                });
                join_all(notes).await
            })
            .await
        };
        held.release().await;
        first.await.unwrap().unwrap();
        let answers = group.await.unwrap();
        assert!(
            matches!(answers[31], Err(Error::Invalid(_))),
            "{:?}",
            answers[31]
        );
        assert_eq!(answers.iter().filter(|answer| answer.is_ok()).count(), 63);
        let mut db = pair.stage.installation.db().await;
        assert_eq!(pair.seqs(&mut db, &keys).await.len(), 63);
        assert_eq!(transactions(&mut db, pair.stage.room, &keys).await, 1);
        assert_eq!(pair.spent_nl(pair.bench.mix).await, 64 * SHEET_NL);
        pair.let_go().await;
    });
}

/// In how many transactions the entries under these keys were written.
async fn transactions(db: &mut PgConnection, room: Uuid, keys: &[Key]) -> i64 {
    let keys: Vec<&[u8]> = keys.iter().map(<[u8; 16]>::as_slice).collect();
    sqlx::query_scalar(
        "select count(distinct xmin::text) from entry where room_id = $1 and key = any($2)",
    )
    .bind(room)
    .bind(keys)
    .fetch_one(db)
    .await
    .unwrap()
}

/// The queue holds 256, and the group that waits for the head another 64.
#[test]
fn a_full_queue_tells_people_to_come_again_and_loses_nobody_in_it() {
    scenario_alone(async |stage: Stage| {
        let pair = Arc::new(Pair::of(stage).await);
        let held = pair.hold().await;
        let keys: Vec<Key> = (0..400).map(|_| new_key()).collect();
        let crowd = {
            let (pair, keys) = (pair.clone(), keys.clone());
            queued(async move {
                let printers = pair.printers();
                let notes = keys.iter().enumerate().map(|(place, key)| {
                    let who = printers[place % printers.len()];
                    pair.note(0, who, *key, pair.sheets(1))
                });
                join_all(notes).await
            })
            .await
        };
        held.release().await;
        let answers = crowd.await.unwrap();
        let mut done = Vec::new();
        let mut told = Vec::new();
        for (answer, key) in answers.iter().zip(&keys) {
            match answer {
                Ok(_) => done.push(*key),
                Err(Error::Unavailable(_)) => told.push(*key),
                Err(other) => panic!("{other}"),
            }
        }
        assert!(done.len() >= 256, "only {} were written", done.len());
        assert!(
            told.len() >= 400 - 256 - 64 - 1,
            "only {} were told",
            told.len()
        );
        let mut db = pair.stage.installation.db().await;
        assert_eq!(pair.seqs(&mut db, &done).await.len(), done.len());
        assert!(pair.seqs(&mut db, &told).await.is_empty());
        let again = pair
            .note(0, &pair.stage.cast.member, told[0], pair.sheets(1))
            .await;
        assert!(again.is_ok(), "{again:?}");
        pair.let_go().await;
    });
}

#[test]
fn an_action_that_panics_leaves_the_scribe_at_work() {
    scenario(async |stage: Stage| {
        let pair = Pair::of(stage).await;
        let before = pair.last_seq().await;
        for _ in 0..3 {
            let asked = Asked {
                actor: None,
                key: Some(new_key()),
                fingerprint: fingerprint("panics", &0).unwrap(),
            };
            let app = &pair.servers[0];
            let work = app
                .scribes()
                .write(pair.stage.room, Author::Unchecked, asked, |_book| {
                    Box::pin(async { panic!("this action panics on purpose") })
                });
            let answer = work.await;
            assert!(matches!(answer, Err(Error::Unavailable(_))), "{answer:?}");
        }
        let member = &pair.stage.cast.member;
        for server in 0..2 {
            pair.note(server, member, new_key(), pair.sheets(1))
                .await
                .unwrap();
        }
        assert_eq!(pair.last_seq().await, before + 2);
        pair.let_go().await;
    });
}
