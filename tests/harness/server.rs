//! The database server of the test process, and installations on it.

use std::future::Future;
use std::path::PathBuf;
use std::sync::OnceLock;
use std::sync::atomic::{AtomicU32, Ordering};

use sqlx::postgres::PgConnectOptions;
use sqlx::{AssertSqlSafe, Connection, Executor, PgConnection, PgPool};
use tokio::runtime::Runtime;
use wetside::address::PublicAddress;
use wetside::app::App;
use wetside::clock::Clock;
use wetside::database::cluster::{Cluster, Folders, StartOptions, WEB_ROLE};
use wetside::database::{Database, Owner, RoleName, connect, migrate};
use wetside::identity::Entrance;
use wetside::identity::client::TrustedProxies;
use wetside::identity::passwords::Cost;

static COUNT: AtomicU32 = AtomicU32::new(0);
static SERVER: OnceLock<Server> = OnceLock::new();

/// The public address of every installation under test.
pub(crate) const ADDRESS: &str = "http://127.0.0.1:8480";

/// One server for the process, on a runtime that outlives each test; gone with it.
struct Server {
    _runtime: Runtime,
    _cluster: Cluster,
    owner: PgConnectOptions,
    web: PgConnectOptions,
    folder: PathBuf,
}

impl Server {
    fn start() -> Self {
        let folder = std::env::temp_dir().join(format!("wh-{}", std::process::id()));
        let runtime = Runtime::new().unwrap();
        let cluster = runtime.block_on(async {
            let folders = Folders::choose(Some(&folder)).unwrap();
            let options = StartOptions::for_tests();
            let cluster = Cluster::start(&folders, &options).await.unwrap();
            let owner = PgPool::connect_with(cluster.owner_options()).await.unwrap();
            migrate::migrate(&owner, &role()).await.unwrap();
            owner.close().await;
            let mut db = connect_to(&cluster.owner_options()).await;
            // Copies are ordered from the desk: nobody may stand in what is copied.
            run(&mut db, "create database desk").await;
            run(&mut db, "create database shared template desk").await;
            db.close().await.unwrap();
            let shared = cluster.owner_options().database("shared");
            let owner = PgPool::connect_with(shared).await.unwrap();
            migrate::migrate(&owner, &role()).await.unwrap();
            owner.close().await;
            cluster
        });
        Self {
            owner: cluster.owner_options(),
            web: cluster.web_options(),
            _runtime: runtime,
            _cluster: cluster,
            folder,
        }
    }

    async fn get() -> &'static Self {
        let started = || SERVER.get_or_init(|| std::thread::spawn(Self::start).join().unwrap());
        tokio::task::spawn_blocking(started).await.unwrap()
    }
}

fn role() -> RoleName {
    RoleName::new(WEB_ROLE).unwrap()
}

async fn connect_to(options: &PgConnectOptions) -> PgConnection {
    PgConnection::connect_with(options).await.unwrap()
}

async fn run(db: &mut PgConnection, statement: &str) {
    db.execute(AssertSqlSafe(statement.to_owned()))
        .await
        .unwrap();
}

/// A program over a database of the test server.
#[derive(Clone, Debug)]
pub(crate) struct Installation {
    /// The program.
    pub(crate) app: App,
    /// Its clock, which stands until it is set.
    pub(crate) clock: Clock,
    /// Its data folder.
    pub(crate) data: PathBuf,
    /// The database as its owner.
    pub(crate) owner: PgConnectOptions,
    /// The database as the server logs in.
    pub(crate) web: PgConnectOptions,
}

impl Installation {
    async fn over(name: &str, clock: Clock) -> Self {
        let server = Server::get().await;
        let owner = server.owner.clone().database(name);
        let web = server.web.clone().database(name);
        let data = server.folder.join(name);
        std::fs::create_dir_all(&data).unwrap();
        let app = program(App::new, &owner, &web, &clock, &data, usual_address());
        Self {
            app,
            clock,
            data,
            owner,
            web,
        }
    }

    /// A second program over the same database: another server behind the proxy.
    pub(crate) fn second(&self) -> App {
        self.reached_at(usual_address())
    }

    /// The same, reached by another address.
    pub(crate) fn reached_at(&self, address: PublicAddress) -> App {
        program(
            App::new,
            &self.owner,
            &self.web,
            &self.clock,
            &self.data,
            address,
        )
    }

    /// The program as it makes a demo, over the same database.
    pub(crate) fn demo(&self) -> App {
        program(
            App::for_demo,
            &self.owner,
            &self.web,
            &self.clock,
            &self.data,
            usual_address(),
        )
    }

    /// A connection as the owner of the tables.
    pub(crate) async fn db(&self) -> PgConnection {
        connect_to(&self.owner).await
    }

    /// Lets go of every connection.
    pub(crate) async fn close(&self) {
        self.app.database().close().await;
    }
}

fn usual_address() -> PublicAddress {
    PublicAddress::parse(ADDRESS).unwrap()
}

fn program(
    made: fn(Database, Clock, PublicAddress, PathBuf, Entrance) -> App,
    owner: &PgConnectOptions,
    web: &PgConnectOptions,
    clock: &Clock,
    data: &std::path::Path,
    address: PublicAddress,
) -> App {
    let cost = Cost {
        memory_kib: 8,
        passes: 1,
    };
    made(
        Database::new(connect::serving(web.clone()), role()),
        clock.clone(),
        address,
        data.to_owned(),
        Entrance::at_cost(cost, TrustedProxies::default()).unwrap(),
    )
    .with_owner(Owner::new(connect::owner(owner.clone())))
}

/// The installation that all scenarios share, each with a room of its own.
pub(crate) async fn shared(clock: Clock) -> Installation {
    Installation::over("shared", clock).await
}

/// An installation of one's own, empty.
pub(crate) async fn alone(clock: Clock) -> Installation {
    let server = Server::get().await;
    let name = format!("alone_{}", COUNT.fetch_add(1, Ordering::Relaxed));
    let mut db = connect_to(&server.owner.clone().database("desk")).await;
    run(&mut db, &format!("create database {name} template wetside")).await;
    db.close().await.unwrap();
    Installation::over(&name, clock).await
}

/// An installation over a database that an earlier program left, brought up to date.
pub(crate) async fn bare(dump: &str) -> Installation {
    let server = Server::get().await;
    let name = format!("bare_{}", COUNT.fetch_add(1, Ordering::Relaxed));
    let mut db = connect_to(&server.owner.clone().database("desk")).await;
    run(
        &mut db,
        &format!("create database {name} template template0"),
    )
    .await;
    db.close().await.unwrap();
    let options = server.owner.clone().database(&name);
    let mut db = connect_to(&options).await;
    run(&mut db, dump).await;
    db.close().await.unwrap();
    let owner = PgPool::connect_with(options).await.unwrap();
    migrate::migrate(&owner, &role()).await.unwrap();
    owner.close().await;
    Installation::over(&name, Clock::System).await
}

/// Runs a test on a runtime of its own.
pub(crate) fn on_runtime(test: impl Future<Output = ()>) {
    let mut builder = tokio::runtime::Builder::new_multi_thread();
    builder.worker_threads(2).enable_all();
    builder.build().unwrap().block_on(test);
}
