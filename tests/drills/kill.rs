//! The kill drill: people note sheets while server and database are killed,
//! stopped and cut off. `WETSIDE_DRILL_ROUNDS` and `WETSIDE_DRILL_SEED` make it
//! longer and other.

use std::collections::BTreeSet;
use std::fs::{self, File, OpenOptions};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use data_encoding::HEXLOWER;
use nix::errno::Errno;
use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;
use sqlx::{AssertSqlSafe, Connection};
use tokio::task::JoinSet;
use wetside::database::cluster::{DATABASE, WEB_ROLE};
use wetside::logbook::Key;

use super::audit::{Audit, Dice};
use super::client::Client;
use super::world::{Server, World, Writer, database_processes};
use crate::cluster::helpers::{server_of, until};

/// So many people note at once.
const WRITERS: usize = 32;
/// So many rounds, unless somebody says.
const ROUNDS: usize = 3;
/// What order and moments are drawn from, unless somebody says.
const SEED: u64 = 20_261_125;
/// A client waits so long for an answer, then goes away.
const PATIENCE: Duration = Duration::from_secs(2);
/// So long a stopped process stands.
const STANDSTILL: Duration = Duration::from_secs(5);

/// What is done to the program in the middle of its work.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
enum Mischief {
    KillServer,
    KillDatabase,
    KillBoth,
    StopServer,
    StopDatabase,
    CutConnections,
}

const ALL: [Mischief; 6] = [
    Mischief::KillServer,
    Mischief::KillDatabase,
    Mischief::KillBoth,
    Mischief::StopServer,
    Mischief::StopDatabase,
    Mischief::CutConnections,
];

/// What one person sent, on disk before it is sent.
struct Journal {
    file: File,
    key: Option<Key>,
    number: u64,
    writer: u64,
}

impl Journal {
    fn open(path: &Path, writer: usize, first: u64) -> Self {
        let file = OpenOptions::new()
            .create(true)
            .append(true)
            .open(path)
            .unwrap();
        Self {
            file,
            key: None,
            number: first,
            writer: writer.try_into().unwrap(),
        }
    }

    /// The key that is to be sent again, or a new one.
    fn next(&mut self) -> Key {
        if let Some(key) = self.key.take() {
            return key;
        }
        self.number += 1;
        let key = (u128::from(self.writer) << 64 | u128::from(self.number)).to_be_bytes();
        self.write("sent", &key);
        key
    }

    fn write(&mut self, what: &str, key: &Key) {
        let line = format!("{what} {}\n", HEXLOWER.encode(key));
        self.file.write_all(line.as_bytes()).unwrap();
    }
}

/// Notes sheets until told to stop; answers what the server should not have said.
async fn print(
    world: (u16, Writer),
    mut journal: Journal,
    mut dice: Dice,
    stop: Arc<AtomicBool>,
) -> Vec<String> {
    let (port, writer) = world;
    let mut client = Client::new(port);
    let mut wrong = Vec::new();
    while !stop.load(Ordering::Relaxed) {
        let key = journal.next();
        let answer = tokio::time::timeout(PATIENCE, client.note(&writer, &key)).await;
        match answer {
            Ok(Ok(answer)) if is_noted(answer.status, answer.location.as_deref()) => {
                journal.write("noted", &key);
                continue;
            }
            Ok(Ok(answer)) if answer.status < 500 => {
                wrong.push(format!("{} {:?}", answer.status, answer.location));
            }
            _ => {}
        }
        // Nobody knows whether it was noted. Some ask again, some never do.
        if dice.below(4) > 0 {
            journal.key = Some(key);
        }
        tokio::time::sleep(Duration::from_millis(20 + dice.below(60))).await;
    }
    wrong
}

fn is_noted(status: u16, location: Option<&str>) -> bool {
    status == 303 && location.is_some_and(|path| path.contains("/sheets/"))
}

/// The people at work.
struct Crowd {
    stop: Arc<AtomicBool>,
    people: JoinSet<Vec<String>>,
}

impl Crowd {
    fn set_to_work(world: &World, journals: &[PathBuf], dice: &mut Dice, round: usize) -> Self {
        let stop = Arc::new(AtomicBool::new(false));
        let mut people = JoinSet::new();
        let first = u64::try_from(round).unwrap() << 32;
        for (place, (writer, path)) in world.writers.iter().zip(journals).enumerate() {
            let journal = Journal::open(path, place + 1, first);
            let dice = Dice::new(dice.below(u64::MAX));
            people.spawn(print(
                (world.port, writer.clone()),
                journal,
                dice,
                stop.clone(),
            ));
        }
        Self { stop, people }
    }

    async fn rest(mut self) {
        self.stop.store(true, Ordering::Relaxed);
        while let Some(wrong) = self.people.join_next().await {
            let wrong = wrong.unwrap();
            assert!(wrong.is_empty(), "the server answered {wrong:?}");
        }
    }
}

fn signal_all(processes: &[i32], signal: Signal) {
    for process in processes {
        // One that has ended meanwhile needs no signal.
        let sent = kill(Pid::from_raw(*process), signal);
        assert!(matches!(sent, Ok(()) | Err(Errno::ESRCH)), "{sent:?}");
    }
}

/// Does one thing to the program, and has it serve again afterwards.
async fn befall(world: &World, server: Server, mischief: Mischief, dice: &mut Dice) -> Server {
    let mut server = server;
    match mischief {
        Mischief::KillServer => server.kill(),
        Mischief::KillDatabase => {
            let killed = kill_database(world, dice.below(2) == 0).await;
            until("the server starts its database again", || {
                server_of(&world.cluster()).is_some_and(|pid| pid != killed)
            })
            .await;
        }
        Mischief::KillBoth => {
            kill_database(world, dice.below(2) == 0).await;
            server.kill();
        }
        Mischief::StopServer => stand_still(&[server.pid()]).await,
        Mischief::StopDatabase => stand_still(&database_processes(world)).await,
        Mischief::CutConnections => {
            let cut = format!(
                "select count(pg_terminate_backend(pid)) from pg_stat_activity
                where usename = '{WEB_ROLE}'"
            );
            let mut db = world.owner(DATABASE).await;
            let cut: i64 = sqlx::query_scalar(AssertSqlSafe(cut))
                .fetch_one(&mut db)
                .await
                .unwrap();
            assert!(cut > 0, "no connection was cut");
            db.close().await.unwrap();
        }
    }
    match mischief {
        Mischief::KillServer | Mischief::KillBoth => world.serve().await,
        _ => {
            world.ready().await;
            server
        }
    }
}

/// The first process alone, whose others then find out, or all of them at once.
/// Answers the first one's number.
async fn kill_database(world: &World, all_at_once: bool) -> i32 {
    let mut first = None;
    until("the database is up", || {
        first = server_of(&world.cluster());
        first.is_some()
    })
    .await;
    let first = first.unwrap();
    let mut processes = vec![first];
    if all_at_once {
        processes.extend(database_processes(world));
    }
    signal_all(&processes, Signal::SIGKILL);
    first
}

async fn stand_still(processes: &[i32]) {
    signal_all(processes, Signal::SIGSTOP);
    tokio::time::sleep(STANDSTILL).await;
    signal_all(processes, Signal::SIGCONT);
}

/// What the journals say, held against the book.
async fn audit(world: &World, journals: &[PathBuf]) -> Audit {
    let (mut sent, mut answered) = (BTreeSet::new(), BTreeSet::new());
    for path in journals {
        for line in fs::read_to_string(path).unwrap().lines() {
            let (what, key) = line.split_once(' ').unwrap();
            let key: Key = HEXLOWER.decode(key.as_bytes()).unwrap().try_into().unwrap();
            match what {
                "sent" => sent.insert(key),
                _ => answered.insert(key),
            };
        }
    }
    let mut db = world.owner(DATABASE).await;
    // Also what was made of each entry, without asking how often there may be one.
    let query = "select e.key from entry e join pass p using (room_id, seq) where e.kind = 'noted'";
    let there: Vec<Vec<u8>> = sqlx::query_scalar(query).fetch_all(&mut db).await.unwrap();
    db.close().await.unwrap();
    let there: Vec<Key> = there
        .into_iter()
        .map(|key| key.try_into().unwrap())
        .collect();
    Audit::of(&sent, &answered, &there)
}

fn journals(world: &World) -> Vec<PathBuf> {
    let names = (0..world.writers.len()).map(|place| world.file(&format!("journal.{place}")));
    names.collect()
}

fn shuffled(dice: &mut Dice) -> Vec<Mischief> {
    let mut order = ALL.to_vec();
    for place in (1..order.len()).rev() {
        let other = dice.below(place as u64 + 1);
        order.swap(place, other.try_into().unwrap());
    }
    order
}

fn rounds() -> usize {
    let asked = std::env::var("WETSIDE_DRILL_ROUNDS").ok();
    asked.map_or(ROUNDS, |rounds| rounds.parse().unwrap())
}

#[test]
fn whatever_is_killed_every_answered_note_is_there_once() {
    super::on_runtime(async {
        let seed = super::seed().unwrap_or(SEED);
        let mut dice = Dice::new(seed);
        let world = World::new(1, WRITERS).await;
        let journals = journals(&world);
        let mut server = world.serve().await;
        let mut kept = 0;
        for round in 0..rounds() {
            let crowd = Crowd::set_to_work(&world, &journals, &mut dice, round);
            for mischief in shuffled(&mut dice) {
                tokio::time::sleep(Duration::from_millis(200 + dice.below(400))).await;
                let began = Instant::now();
                server = befall(&world, server, mischief, &mut dice).await;
                println!(
                    "round {round}: {mischief:?}, ready again after {:?}",
                    began.elapsed()
                );
            }
            tokio::time::sleep(Duration::from_millis(300)).await;
            crowd.rest().await;
            let audit = audit(&world, &journals).await;
            println!(
                "round {round}: {} kept, {} unanswered",
                audit.kept, audit.unanswered
            );
            assert!(audit.is_clean(), "seed {seed}, round {round}: {audit:?}");
            assert!(
                audit.kept > kept,
                "round {round}: nobody could note anything"
            );
            kept = audit.kept;
        }
        server.stop().await;
        let (is_clean, said) = world.verify();
        assert!(is_clean, "{said}");
    });
}

/// What the drill is for: a database that answers before it has written.
#[test]
fn the_same_drill_over_a_database_that_does_not_write_first_fails() {
    super::on_runtime(async {
        let mut dice = Dice::new(SEED);
        let world = World::new(1, WRITERS).await;
        let journals = journals(&world);
        let server = world.serve().await;
        let mut db = world.owner(DATABASE).await;
        let careless = format!("alter database {DATABASE} set synchronous_commit = off");
        sqlx::query(AssertSqlSafe(careless))
            .execute(&mut db)
            .await
            .unwrap();
        db.close().await.unwrap();
        let mut server = befall(&world, server, Mischief::CutConnections, &mut dice).await;
        let mut lost = 0;
        for round in 0..10 {
            let crowd = Crowd::set_to_work(&world, &journals, &mut dice, round);
            tokio::time::sleep(Duration::from_millis(500)).await;
            kill_database(&world, true).await;
            server.kill();
            crowd.rest().await;
            server = world.serve().await;
            lost = audit(&world, &journals).await.lost.len();
            if lost > 0 {
                break;
            }
        }
        println!("{lost} answered notes were lost");
        assert!(lost > 0, "the drill does not show what it is for");
    });
}
