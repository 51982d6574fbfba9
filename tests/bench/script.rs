//! The scripts that the notes are measured beside, run by `pgbench`.

use std::path::Path;
use std::process::Command;
use std::time::Duration;

use sqlx::{AssertSqlSafe, Connection};
use wetside::database::cluster::{
    Account, Cluster, DATABASE, OWNER_ROLE, Programs, StartOptions, WEB_ROLE,
};

use super::plan::Plan;
use super::world::World;

/// The copy of the database that the scripts write in.
const COPY: &str = "measured";

/// One of the scripts, over so many rooms, with the number of clients it likes best.
#[derive(Debug)]
pub(crate) struct Script {
    file: &'static str,
    role: &'static str,
    rooms: usize,
    pub(crate) clients: usize,
}

impl Script {
    /// What the server says for a note, as the role it works as.
    pub(crate) fn same(world: &World, plan: &Plan, rooms: usize) -> Self {
        Self::tried("note.sql", WEB_ROLE, world, plan, rooms)
    }

    /// The least that a numbered line can cost.
    pub(crate) fn floor(world: &World, plan: &Plan, rooms: usize) -> Self {
        Self::tried("floor.sql", OWNER_ROLE, world, plan, rooms)
    }

    /// Finds the number of clients it likes best.
    fn tried(
        file: &'static str,
        role: &'static str,
        world: &World,
        plan: &Plan,
        rooms: usize,
    ) -> Self {
        let with = |clients| Self {
            file,
            role,
            rooms,
            clients,
        };
        if let [clients] = plan.clients {
            return with(*clients);
        }
        let time = plan.time.min(Duration::from_secs(2));
        let tried = plan.clients.iter().map(|clients| {
            let script = with(*clients);
            (script.run(world, time), script)
        });
        let best = tried.max_by(|(one, _), (other, _)| one.total_cmp(other));
        best.unwrap().1
    }

    /// Transactions a second, as `pgbench` counts them.
    pub(crate) fn run(&self, world: &World, time: Duration) -> f64 {
        let account = Account::for_folder(Path::new("/nonexistent")).unwrap();
        let own = Programs::preferred(&account).unwrap().path("pgbench");
        let program = if own.exists() { own } else { "pgbench".into() };
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("deploy/bench.d");
        let output = Command::new(program)
            .args(["-n", "-M", "prepared", "-j", "2", "-p", "5432"])
            .args(["-c", &self.clients.to_string()])
            .args(["-T", &time.as_secs().max(1).to_string()])
            .args(["-D", &format!("rooms={}", self.rooms), "-U", self.role])
            .arg("-h")
            .arg(world.socket())
            .arg("-f")
            .arg(folder.join(self.file))
            .arg(COPY)
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        assert!(
            output.status.success(),
            "{said}{}",
            String::from_utf8_lossy(&output.stderr)
        );
        let told = |what: &str| said.lines().find_map(|line| line.strip_prefix(what));
        let failed = told("number of failed transactions: ");
        assert!(
            failed.is_none_or(|failed| failed.starts_with("0 ")),
            "{said}"
        );
        let tps = told("tps = ").and_then(|tps| tps.split(' ').next());
        tps.unwrap().parse().unwrap()
    }
}

/// Copies the rooms, so that the scripts spoil no book.
pub(crate) async fn copy(world: &World, plan: &Plan) {
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
    assert_eq!(usize::try_from(rooms).unwrap(), plan.rooms);
    db.close().await.unwrap();
    cluster.stop().await;
}
