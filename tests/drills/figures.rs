//! How many notes a second, beside the same statements and beside the least that
//! a numbered line can cost. `deploy/figures` runs it in full; the suite runs it
//! short, to see that it runs. A figure counts only where every answered note is
//! in the book afterwards and the books verify.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use sqlx::{AssertSqlSafe, Connection};
use tokio::task::JoinSet;
use wetside::database::cluster::{
    Account, Cluster, DATABASE, OWNER_ROLE, Programs, StartOptions, WEB_ROLE,
};
use wetside::logbook::Key;

use super::audit::Audit;
use super::client::Client;
use super::world::{World, Writer};
use crate::harness::new_key;

/// The copy of the database that the scripts write in.
const COPY: &str = "measured";

/// How it is measured.
struct Plan {
    rooms: usize,
    rounds: usize,
    seconds: u64,
    /// How many clients the scripts are tried with; the best counts.
    clients: &'static [usize],
}

const SHORT: Plan = Plan {
    rooms: 3,
    rounds: 1,
    seconds: 1,
    clients: &[4],
};

const FULL: Plan = Plan {
    rooms: 100,
    rounds: 5,
    seconds: 4,
    clients: &[1, 4, 16, 64],
};

/// Notes a second, by what was measured.
#[derive(Default)]
struct Figures {
    many_rooms: Vec<f64>,
    one_room_16: Vec<f64>,
    one_room_64: Vec<f64>,
    same_many: Vec<f64>,
    same_one: Vec<f64>,
    floor_many: Vec<f64>,
    floor_one: Vec<f64>,
}

/// One of the scripts, over so many rooms, with the number of clients it likes best.
struct Script {
    file: &'static str,
    role: &'static str,
    rooms: usize,
    clients: usize,
}

/// What was sent and answered in the rooms.
#[derive(Default)]
struct Noted {
    sent: BTreeSet<Key>,
    answered: BTreeSet<Key>,
}

/// Prints with so many people for so long; answers notes a second.
async fn press(world: &World, people: Vec<Vec<Writer>>, time: Duration, noted: &mut Noted) -> f64 {
    let (port, began) = (world.port, Instant::now());
    let mut clients = JoinSet::new();
    for rooms in people {
        clients.spawn(async move {
            let (mut client, mut sent, mut answered) = (Client::new(port), Vec::new(), Vec::new());
            for writer in rooms.iter().cycle() {
                if began.elapsed() >= time {
                    break;
                }
                let key = new_key();
                sent.push(key);
                let answer = client.note(writer, &key).await.unwrap();
                let place = answer.location.unwrap_or_default();
                assert!(
                    answer.status == 303 && place.contains("/sheets/"),
                    "{} {place}",
                    answer.status
                );
                answered.push(key);
            }
            (sent, answered)
        });
    }
    let mut count = 0;
    while let Some(ended) = clients.join_next().await {
        let (sent, answered) = ended.unwrap();
        count += answered.len();
        noted.sent.extend(sent);
        noted.answered.extend(answered);
    }
    count as f64 / began.elapsed().as_secs_f64()
}

/// So many people, each with a room of their own or several by turns.
fn over_rooms(world: &World, people: usize) -> Vec<Vec<Writer>> {
    let mut each = vec![Vec::new(); people];
    for (place, writer) in world.writers[..world.rooms].iter().enumerate() {
        each[place % people].push(writer.clone());
    }
    each.retain(|rooms| !rooms.is_empty());
    each
}

/// So many people in the first room.
fn in_one_room(world: &World, people: usize) -> Vec<Vec<Writer>> {
    let first = world.writers[0].room;
    let there = world.writers.iter().filter(|writer| writer.room == first);
    let each: Vec<Vec<Writer>> = there
        .take(people)
        .map(|writer| vec![writer.clone()])
        .collect();
    assert_eq!(each.len(), people, "too few people in the room");
    each
}

impl Script {
    /// Transactions a second, as `pgbench` counts them.
    fn run(&self, world: &World, clients: usize, seconds: u64) -> f64 {
        let account = Account::for_folder(Path::new("/nonexistent")).unwrap();
        let own = Programs::preferred(&account).unwrap().path("pgbench");
        let program = if own.exists() { own } else { "pgbench".into() };
        let file = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("deploy/bench.d")
            .join(self.file);
        let output = Command::new(program)
            .args(["-n", "-M", "prepared", "-j", "2", "-p", "5432"])
            .args(["-c", &clients.to_string(), "-T", &seconds.to_string()])
            .args(["-D", &format!("rooms={}", self.rooms), "-U", self.role])
            .arg("-h")
            .arg(world.socket())
            .arg("-f")
            .arg(file)
            .arg(COPY)
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        assert!(
            output.status.success(),
            "{said}{}",
            String::from_utf8_lossy(&output.stderr)
        );
        let failed = said
            .lines()
            .find_map(|line| line.strip_prefix("number of failed transactions: "));
        assert!(
            failed.is_none_or(|failed| failed.starts_with("0 ")),
            "{said}"
        );
        let tps = said
            .lines()
            .find_map(|line| line.strip_prefix("tps = "))
            .unwrap();
        tps.split(' ').next().unwrap().parse().unwrap()
    }

    /// Finds the number of clients it likes best.
    fn tried(mut self, world: &World, plan: &Plan) -> Self {
        if let [only] = plan.clients {
            self.clients = *only;
            return self;
        }
        let mut best = 0.0;
        for clients in plan.clients {
            let tps = self.run(world, *clients, plan.seconds.min(2));
            if tps > best {
                (best, self.clients) = (tps, *clients);
            }
        }
        self
    }
}

fn script(file: &'static str, role: &'static str, rooms: usize) -> Script {
    Script {
        file,
        role,
        rooms,
        clients: 0,
    }
}

/// Copies the rooms, so that the scripts spoil no book.
async fn copy(world: &World) {
    let options = StartOptions::default();
    let cluster = Cluster::start(&world.folders(), &options).await.unwrap();
    let mut db = world.owner(DATABASE).await;
    sqlx::raw_sql("create database desk")
        .execute(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
    let mut db = world.owner("desk").await;
    let statement = format!("create database {COPY} template {DATABASE}");
    sqlx::raw_sql(AssertSqlSafe(statement))
        .execute(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
    let mut db = world.owner(COPY).await;
    let lay = include_str!("../../deploy/bench.d/lay.sql");
    sqlx::raw_sql(lay).execute(&mut db).await.unwrap();
    let rooms: i64 = sqlx::query_scalar("select count(*) from bench_room")
        .fetch_one(&mut db)
        .await
        .unwrap();
    assert_eq!(usize::try_from(rooms).unwrap(), world.rooms);
    db.close().await.unwrap();
    cluster.stop().await;
}

async fn measure(plan: &Plan) {
    // One person a room, and as many more in the first as are needed there.
    let world = World::to_copy(plan.rooms, plan.rooms + 63).await;
    copy(&world).await;
    let server = world.serve().await;
    let mut noted = Noted::default();
    let mut figures = Figures::default();
    let scripts = [
        script("note.sql", WEB_ROLE, plan.rooms).tried(&world, plan),
        script("floor.sql", OWNER_ROLE, plan.rooms).tried(&world, plan),
        script("note.sql", WEB_ROLE, 1).tried(&world, plan),
        script("floor.sql", OWNER_ROLE, 1).tried(&world, plan),
    ];
    for _ in 0..plan.rounds {
        round(&world, plan, &scripts, &mut figures, &mut noted).await;
    }
    figures.print(&scripts);
    check(&world, &noted).await;
    server.stop().await;
    let (is_clean, said) = world.verify();
    assert!(is_clean, "void: {said}");
}

/// Each measured once, the program and the scripts by turns.
async fn round(
    world: &World,
    plan: &Plan,
    scripts: &[Script; 4],
    figures: &mut Figures,
    noted: &mut Noted,
) {
    let time = Duration::from_secs(plan.seconds);
    let run = |script: &Script| script.run(world, script.clients, plan.seconds);
    let [same_many, floor_many, same_one, floor_one] = scripts;
    figures
        .many_rooms
        .push(press(world, over_rooms(world, 16), time, noted).await);
    figures.same_many.push(run(same_many));
    figures.floor_many.push(run(floor_many));
    figures
        .one_room_16
        .push(press(world, in_one_room(world, 16), time, noted).await);
    figures.same_one.push(run(same_one));
    figures
        .one_room_64
        .push(press(world, in_one_room(world, 64), time, noted).await);
    figures.floor_one.push(run(floor_one));
}

/// A figure is void where an answered note is not in the book.
async fn check(world: &World, noted: &Noted) {
    let mut db = world.owner(DATABASE).await;
    let there: Vec<Vec<u8>> = sqlx::query_scalar("select key from entry where kind = 'noted'")
        .fetch_all(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
    let there: Vec<Key> = there
        .into_iter()
        .map(|key| key.try_into().unwrap())
        .collect();
    let audit = Audit::of(&noted.sent, &noted.answered, &there);
    assert!(audit.is_clean(), "void: {audit:?}");
    println!("{} answered notes, all in the book once", audit.kept);
}

fn median(mut figures: Vec<f64>) -> f64 {
    figures.sort_by(f64::total_cmp);
    figures[figures.len() / 2]
}

/// The median of the ratios of neighbouring measurements.
fn ratio(of: &[f64], to: &[f64]) -> f64 {
    median(of.iter().zip(to).map(|(of, to)| of / to).collect())
}

impl Figures {
    fn print(&self, scripts: &[Script; 4]) {
        let clients = scripts.each_ref().map(|script| script.clients);
        let [same_many, floor_many, same_one, floor_one] = clients;
        let line = |name: &str, figures: &[f64]| {
            println!("{name:<44} {:>8.0} a second", median(figures.to_vec()));
        };
        line("16 people, all rooms", &self.many_rooms);
        line("16 people, one room", &self.one_room_16);
        line("64 people, one room", &self.one_room_64);
        let same = "same statements";
        line(
            &format!("{same}, all rooms, {same_many} clients"),
            &self.same_many,
        );
        line(
            &format!("{same}, one room, {same_one} clients"),
            &self.same_one,
        );
        line(
            &format!("floor, all rooms, {floor_many} clients"),
            &self.floor_many,
        );
        line(
            &format!("floor, one room, {floor_one} clients"),
            &self.floor_one,
        );
        self.print_ratios();
    }

    fn print_ratios(&self) {
        let line = |name: &str, of: &[f64], to: &[f64], goal: f64| {
            println!("{name:<44} {:>8.2} (goal {goal})", ratio(of, to));
        };
        let (many, one_16, one_64) = (&self.many_rooms, &self.one_room_16, &self.one_room_64);
        line(
            "to same statements, all rooms, 16 people",
            many,
            &self.same_many,
            1.2,
        );
        line(
            "to same statements, one room, 16 people",
            one_16,
            &self.same_one,
            5.0,
        );
        line(
            "to same statements, one room, 64 people",
            one_64,
            &self.same_one,
            10.0,
        );
        line(
            "to the floor, all rooms, 16 people",
            many,
            &self.floor_many,
            0.35,
        );
        line(
            "to the floor, one room, 16 people",
            one_16,
            &self.floor_one,
            2.0,
        );
        line(
            "to the floor, one room, 64 people",
            one_64,
            &self.floor_one,
            2.0,
        );
    }
}

/// The short form, or with `WETSIDE_FIGURES=full` the one to report.
#[test]
fn figures_can_be_taken_and_every_answered_note_is_in_the_book() {
    super::on_runtime(async {
        let is_full = std::env::var("WETSIDE_FIGURES").is_ok_and(|which| which == "full");
        measure(if is_full { &FULL } else { &SHORT }).await;
    });
}

/// A statement without its values: its verb, and the tables it names.
type Bones = (String, BTreeSet<String>);

fn bones(statement: &str) -> Bones {
    let words: Vec<&str> = statement
        .split(|letter: char| !letter.is_ascii_alphanumeric() && letter != '_')
        .filter(|word| !word.is_empty())
        .collect();
    let verb = words.first().map(|verb| verb.to_lowercase());
    let names = words
        .windows(2)
        .filter(|pair| ["from", "into", "update", "join"].contains(&pair[0]))
        .map(|pair| pair[1].to_owned())
        // What only the script needs, what is no table, what only locks.
        .filter(|name| !["bench_room", "unnest", "set", "of", "left"].contains(&name.as_str()));
    (verb.unwrap_or_default(), names.collect())
}

/// From the lock on the head on, the transaction that notes: log lines that
/// begin with a moment, the process and what was executed.
fn captured(log: &str) -> Vec<Bones> {
    let mut statements: Vec<(String, String)> = Vec::new();
    for line in log.lines() {
        let said = line.split_once("] LOG:  ");
        let told = said.and_then(|(before, what)| {
            let process = before.rsplit_once('[')?.1;
            let is_one = what.starts_with("execute ") || what.starts_with("statement: ");
            is_one.then(|| {
                what.split_once(": ")
                    .map(|(_, text)| (process.to_owned(), text.to_owned()))
            })?
        });
        match (told, statements.last_mut()) {
            (Some(told), _) => statements.push(told),
            (None, Some((_, last))) if said.is_none() && !line.contains("] DETAIL:  ") => {
                last.push(' ');
                last.push_str(line);
            }
            _ => {}
        }
    }
    let locks = |text: &str| {
        text.starts_with("select") && text.contains("from head") && text.contains("for update")
    };
    let at = statements.iter().position(|(_, text)| locks(text)).unwrap();
    let process = statements[at].0.clone();
    let own = statements[at..]
        .iter()
        .filter(|(other, _)| *other == process);
    let mut noted: Vec<Bones> = own.map(|(_, text)| bones(text)).collect();
    let end = noted.iter().position(|(verb, _)| verb == "commit").unwrap();
    noted.truncate(end + 1);
    noted
}

/// What the script says from the lock on the head on.
fn scripted() -> Vec<Bones> {
    let script = include_str!("../../deploy/bench.d/note.sql");
    let (_, body) = script.split_once("\\endpipeline").unwrap();
    let body = body.replace("\\gset", ";");
    let statements = body.split(';').filter(|text| !text.trim().is_empty());
    statements.map(bones).collect()
}

/// The script that the figures are compared with does what a note does: the same
/// statements over the same tables in the same order.
#[test]
fn the_script_says_what_the_server_says_for_one_note() {
    super::on_runtime(async {
        let world = World::new(1, 1).await;
        let settings = world.cluster().join("postgresql.auto.conf");
        let mut text = std::fs::read_to_string(&settings).unwrap();
        text.push_str("log_statement = 'all'\n");
        std::fs::write(&settings, text).unwrap();
        let server = world.serve().await;
        let log = world.data().join("postgres.log");
        let before = std::fs::metadata(&log).unwrap().len();
        let mut client = Client::new(world.port);
        let answer = client.note(&world.writers[0], &new_key()).await.unwrap();
        assert_eq!(answer.status, 303);
        server.stop().await;
        let bytes = std::fs::read(&log).unwrap();
        let log = String::from_utf8_lossy(&bytes[usize::try_from(before).unwrap()..]).into_owned();
        assert_eq!(scripted(), captured(&log));
    });
}
