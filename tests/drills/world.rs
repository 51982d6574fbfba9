//! An installation in a folder of its own, with rooms, people and benches, that
//! the program then serves as a process.

use std::fs::DirBuilder;
use std::net::{Ipv4Addr, TcpListener};
use std::os::unix::fs::DirBuilderExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use sqlx::postgres::PgConnectOptions;
use sqlx::{Connection, PgConnection, PgPool};
use uuid::Uuid;
use wetside::address::PublicAddress;
use wetside::app::App;
use wetside::clock::Clock;
use wetside::database::cluster::{
    Cluster, DATABASE, Folders, OWNER_ROLE, StartOptions, WEB_ROLE, look,
};
use wetside::database::{Database, Owner, RoleName, connect, migrate};
use wetside::identity::accounts::{self, NewAccount};
use wetside::identity::client::TrustedProxies;
use wetside::identity::names::LogInName;
use wetside::identity::passwords::{Cost, Password};
use wetside::identity::{Client, Entrance, Person};
use wetside::logbook::{Asked, Author, Recording, fingerprint};
use wetside::members;
use wetside::rights::Role;
use wetside::rooms::Settings;
use wetside::rooms::actions::{Founder, NewRoom, open_room};
use wetside::starters::STARTERS;

use crate::cluster::helpers::{is_alive, processes_in, program, send, server_of, until};
use crate::harness::{Bench, Cast, Installation, PASSWORD, Stage, new_key};

static COUNT: AtomicU32 = AtomicU32::new(0);

/// Somebody who is logged in, and the room they print in.
#[derive(Clone, Debug)]
pub(crate) struct Writer {
    /// The cookie's value.
    pub(crate) session: String,
    pub(crate) slug: String,
    pub(crate) line: Uuid,
    pub(crate) paper_class: Uuid,
    pub(crate) sheet_size: Uuid,
}

/// A data folder with everything set up in it, gone with this value.
#[derive(Debug)]
pub(crate) struct World {
    folder: PathBuf,
    pub(crate) port: u16,
    pub(crate) writers: Vec<Writer>,
}

impl World {
    /// Sets up so many rooms, with one person in each and all others in the first.
    /// Its owner may copy the database.
    pub(crate) async fn new(rooms: usize, people: usize) -> Self {
        let options = StartOptions {
            may_create_databases: true,
            ..StartOptions::default()
        };
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let folder = std::env::temp_dir().join(format!("wd-{}-{number}", std::process::id()));
        // The account the database runs as has to pass through.
        DirBuilder::new().mode(0o711).create(&folder).unwrap();
        let mut world = Self {
            folder,
            port: free_port(),
            writers: Vec::new(),
        };
        let cluster = Cluster::start(&world.folders(), &options).await.unwrap();
        world.furnish(&cluster, rooms, people).await;
        cluster.stop().await;
        world
    }

    pub(crate) fn data(&self) -> PathBuf {
        self.folder.join("data")
    }

    /// The folder of PostgreSQL's own files, which its processes work in.
    pub(crate) fn cluster(&self) -> PathBuf {
        self.data().join("postgres")
    }

    /// A file of the drill's own.
    pub(crate) fn file(&self, name: &str) -> PathBuf {
        self.folder.join(name)
    }

    pub(crate) fn folders(&self) -> Folders {
        Folders::choose(Some(&self.data())).unwrap()
    }

    async fn furnish(&mut self, cluster: &Cluster, rooms: usize, people: usize) {
        let role = RoleName::new(WEB_ROLE).unwrap();
        let owner = PgPool::connect_with(cluster.owner_options()).await.unwrap();
        migrate::migrate(&owner, &role).await.unwrap();
        owner.close().await;
        let cheap = Cost {
            memory_kib: 8,
            passes: 1,
        };
        let app = App::new(
            Database::new(connect::serving(cluster.web_options()), role),
            Clock::System,
            PublicAddress::loopback(self.port),
            self.data(),
            Entrance::at_cost(cheap, TrustedProxies::default()).unwrap(),
        )
        .with_owner(Owner::new(connect::owner(cluster.owner_options())));
        let installation = Installation {
            app: app.clone(),
            clock: Clock::System,
            data: self.data(),
            owner: cluster.owner_options(),
            web: cluster.web_options(),
        };
        let steward = account(&app, "steward").await;
        let mut opened = Vec::new();
        for number in 0..rooms {
            opened.push(open(&installation, &steward, number).await);
        }
        for number in 0..people {
            self.writers.push(arrive(&app, &opened, number).await);
        }
        app.database().close().await;
    }

    /// Starts the program on this folder and waits until it answers.
    pub(crate) async fn serve(&self) -> Server {
        let server = Server::start(self.port, &self.data(), None);
        self.ready().await;
        server
    }

    /// Waits until the server says that it is ready.
    pub(crate) async fn ready(&self) {
        let began = Instant::now();
        while !self.answers().await {
            assert!(
                began.elapsed() < Duration::from_secs(30),
                "the server does not answer"
            );
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
    }

    /// Whether the server says that it is ready.
    async fn answers(&self) -> bool {
        let mut client = super::client::Client::new(self.port);
        let asked = tokio::time::timeout(Duration::from_secs(1), client.get("/ready"));
        matches!(asked.await, Ok(Ok(answer)) if answer.status == 200)
    }

    /// A connection as the owner of the tables, while the database is up.
    pub(crate) async fn owner(&self, database: &str) -> PgConnection {
        let options = PgConnectOptions::new_without_pgpass()
            .socket(self.socket())
            .username(OWNER_ROLE)
            .database(database);
        PgConnection::connect_with(&options).await.unwrap()
    }

    /// The folder of the database's socket, while it is up.
    pub(crate) fn socket(&self) -> PathBuf {
        let (_, socket) = look(&self.folders()).unwrap().server.unwrap();
        socket
    }

    /// `wetside verify` on this folder: whether all is well, and what it says.
    pub(crate) fn verify(&self) -> (bool, String) {
        let mut command: Command = program();
        command.args(["verify", "--data"]).arg(self.data());
        command
            .env_remove("WETSIDE_DATABASE_URL")
            .env_remove("DATABASE_URL");
        let output = command.output().unwrap();
        let mut said = String::from_utf8_lossy(&output.stdout).into_owned();
        said.push_str(&String::from_utf8_lossy(&output.stderr));
        (output.status.success(), said)
    }
}

impl Drop for World {
    fn drop(&mut self) {
        if let Some(pid) = server_of(&self.cluster()) {
            send(pid, "QUIT");
        }
        let began = Instant::now();
        while std::fs::remove_dir_all(&self.folder).is_err()
            && began.elapsed() < Duration::from_secs(5)
        {
            std::thread::sleep(Duration::from_millis(10));
        }
    }
}

/// The program as a process, killed with this value.
#[derive(Debug)]
pub(crate) struct Server {
    child: Child,
}

impl Server {
    /// Starts it; over this socket's database, where one is named.
    pub(crate) fn start(port: u16, data: &Path, socket: Option<&Path>) -> Self {
        let mut command = program();
        command
            .args(["serve", "--port", &port.to_string(), "--data"])
            .arg(data)
            .env("WETSIDE_LOG", "error")
            .env_remove("WETSIDE_DATABASE_URL")
            .env_remove("DATABASE_URL")
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        if let Some(socket) = socket {
            let url = |role| {
                let socket = socket.display();
                format!("postgres://{role}@localhost/{DATABASE}?host={socket}&port=5432")
            };
            command
                .env("WETSIDE_DATABASE_URL", url(WEB_ROLE))
                .env("WETSIDE_OWNER_DATABASE_URL", url(OWNER_ROLE));
        }
        Self {
            child: command.spawn().unwrap(),
        }
    }

    pub(crate) fn pid(&self) -> i32 {
        self.child.id().try_into().unwrap()
    }

    /// Kills it and waits until it is gone.
    pub(crate) fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    /// Asks it to stop, and expects that it says all went well.
    pub(crate) async fn stop(mut self) {
        send(self.pid(), "TERM");
        let pid = self.pid();
        until("the server stops when asked to", || !is_alive(pid)).await;
        assert!(self.child.wait().unwrap().success());
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        if matches!(self.child.try_wait(), Ok(None)) {
            self.kill();
        }
    }
}

/// Every process of the database in this folder.
pub(crate) fn database_processes(world: &World) -> Vec<i32> {
    processes_in(&world.cluster())
}

/// A port that nobody listens on.
pub(crate) fn free_port() -> u16 {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).unwrap();
    listener.local_addr().unwrap().port()
}

async fn account(app: &App, name: &str) -> NewAccount {
    let password = Password::choose(PASSWORD, &[]).unwrap();
    let log_in_name = LogInName::read(name).unwrap();
    NewAccount::prepare(app, name.to_owned(), log_in_name, &password)
        .await
        .unwrap()
}

fn person(account: &NewAccount) -> Person {
    Person {
        id: account.id,
        name: account.name.clone(),
        session: None,
        is_operator: false,
    }
}

/// Opens a room with developer in its tray. The steward of all rooms is the same.
async fn open(
    installation: &Installation,
    steward: &NewAccount,
    number: usize,
) -> (Uuid, String, Bench) {
    let slug = format!("room-{number}");
    let settings = Settings::starting(
        format!("Cellar {number}"),
        "Europe/Berlin".to_owned(),
        "EUR".to_owned(),
    );
    let new = NewRoom {
        slug: slug.clone(),
        ..NewRoom::new(settings)
    };
    let founder = match number {
        0 => Founder::New {
            account: steward.clone(),
            set_up: None,
            is_operator: false,
        },
        _ => Founder::Known(steward.id),
    };
    let recording = Recording::ByClock(Clock::System);
    let opened = open_room(&installation.app, new, founder, recording, STARTERS).await;
    let steward = person(steward);
    let stage = Stage {
        installation: installation.clone(),
        room: opened.unwrap().room,
        slug: slug.clone(),
        other_slug: slug.clone(),
        cast: Cast {
            steward: steward.clone(),
            trained: steward.clone(),
            member: steward.clone(),
            treasurer: steward.clone(),
            stranger: steward.clone(),
            neighbour: steward,
        },
    };
    let bench = stage.bench().await;
    (stage.room, slug, bench)
}

/// Makes a member of one of the rooms and logs them in.
async fn arrive(app: &App, rooms: &[(Uuid, String, Bench)], number: usize) -> Writer {
    let (room, slug, bench) = rooms.get(number).unwrap_or(&rooms[0]);
    let account = account(app, &format!("printer.{number}")).await;
    let asked = Asked {
        actor: None,
        key: Some(new_key()),
        fingerprint: fingerprint("joins", &account.id).unwrap(),
    };
    let joining = account.clone();
    app.scribes()
        .write(*room, Author::Unchecked, asked, move |book| {
            Box::pin(async move { members::add_account(book, &joining, Role::Member).await })
        })
        .await
        .unwrap();
    let client = Client {
        address: Ipv4Addr::LOCALHOST.into(),
        agent: "drill".to_owned(),
    };
    let entered = accounts::enter(app, &client, None, account.id)
        .await
        .unwrap();
    Writer {
        session: entered.session.reveal().to_owned(),
        slug: slug.clone(),
        line: bench.line,
        paper_class: bench.classes[0],
        sheet_size: bench.size,
    }
}
