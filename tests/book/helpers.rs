//! A database of one's own with one room whose book has entries of every kind
//! there is a filler for.

use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicU32, Ordering};

use axum::body::Body;
use axum::http::Request;
use data_encoding::HEXLOWER;
use http_body_util::BodyExt;
use sqlx::postgres::PgConnectOptions;
use sqlx::{AssertSqlSafe, Connection, Executor, PgConnection, PgPool};
use time::OffsetDateTime;
use time::macros::datetime;
use tokio::runtime::Runtime;
use tower::ServiceExt;
use uuid::Uuid;
use wetside::address::PublicAddress;
use wetside::app::App;
use wetside::clock::Clock;
use wetside::database::cluster::{Cluster, Folders, StartOptions, WEB_ROLE};
use wetside::database::{Database, Owner, RoleName, Scope, connect, migrate};
use wetside::identity::Entrance;
use wetside::identity::client::TrustedProxies;
use wetside::identity::passwords::Cost;
use wetside::identity::secret::Secret;
use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify;
use wetside::logbook::verify_report::Report;
use wetside::logbook::{Asked, Author, Recording, fingerprint};
use wetside::papers::PaperClassSet;
use wetside::rooms::Settings;
use wetside::rooms::actions::{Founder, NewRoom, open_room};
use wetside::router;

use super::bench;

pub(crate) const START: OffsetDateTime = datetime!(2026-11-25 12:00 UTC);

static COUNT: AtomicU32 = AtomicU32::new(0);
static SERVER: OnceLock<Server> = OnceLock::new();

/// One cluster for all tests here, on a runtime that outlives each of them; gone
/// with the process.
struct Server {
    _runtime: Runtime,
    _cluster: Cluster,
    owner: PgConnectOptions,
    web: PgConnectOptions,
    folder: PathBuf,
}

impl Server {
    fn start() -> Self {
        let folder = std::env::temp_dir().join(format!("wb-{}", std::process::id()));
        let runtime = Runtime::new().unwrap();
        let cluster = runtime.block_on(async {
            let folders = Folders::choose(Some(&folder)).unwrap();
            let cluster = Cluster::start(&folders, &StartOptions::for_tests())
                .await
                .unwrap();
            let owner = PgPool::connect_with(cluster.owner_options()).await.unwrap();
            migrate::migrate(&owner, &role()).await.unwrap();
            owner.close().await;
            // Copies are ordered from here: nobody may stand in what is copied.
            let mut db = PgConnection::connect_with(&cluster.owner_options())
                .await
                .unwrap();
            run(&mut db, "create database desk").await;
            db.close().await.unwrap();
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

    /// The one server, started off any test's runtime.
    fn get() -> &'static Self {
        SERVER.get_or_init(|| std::thread::spawn(Self::start).join().unwrap())
    }
}

fn program(pool: PgPool, clock: &Clock, data: &Path, owner: &Owner) -> App {
    let entrance = Entrance::at_cost(
        Cost {
            memory_kib: 8,
            passes: 1,
        },
        TrustedProxies::default(),
    )
    .unwrap();
    App::new(
        Database::new(pool, role()),
        clock.clone(),
        PublicAddress::loopback(1),
        data.to_path_buf(),
        entrance,
    )
    .with_owner(owner.clone())
}

fn role() -> RoleName {
    RoleName::new(WEB_ROLE).unwrap()
}

/// A database with one room.
pub(crate) struct Library {
    pub(crate) app: App,
    pub(crate) owner: Owner,
    pub(crate) vault: Vault,
    pub(crate) clock: Clock,
    pub(crate) room: Uuid,
    pub(crate) steward: Uuid,
    pub(crate) member: Uuid,
    options: PgConnectOptions,
    web: PgConnectOptions,
}

impl Library {
    pub(crate) async fn open() -> Self {
        let server = tokio::task::spawn_blocking(Server::get).await.unwrap();
        let name = format!("book_{}", COUNT.fetch_add(1, Ordering::Relaxed));
        let mut db = PgConnection::connect_with(&server.owner.clone().database("desk"))
            .await
            .unwrap();
        run(&mut db, &format!("create database {name} template wetside")).await;
        let options = server.owner.clone().database(&name);
        let data = server.folder.join(&name);
        std::fs::create_dir_all(&data).unwrap();
        let clock = Clock::standing_at(START);
        let pool = connect::serving(server.web.clone().database(&name));
        let owner = Owner::new(connect::owner(options.clone()));
        let app = program(pool, &clock, &data, &owner);
        let mut library = Self {
            app,
            owner,
            vault: Vault {
                data,
                key_file: None,
            },
            clock,
            room: Uuid::from_u128(0x51),
            steward: Uuid::from_u128(0x52),
            member: Uuid::from_u128(0x53),
            options,
            web: server.web.clone().database(&name),
        };
        library.found_room().await;
        library
    }

    async fn found_room(&mut self) {
        let mut db = self.db().await;
        for (id, name) in [(self.steward, "Steward"), (self.member, "Member")] {
            run(
                &mut db,
                &format!(
                    "insert into person (id, name, log_in_name, password_hash, created_at)
                    values ('{id}', '{name}', lower('{name}'), '-', now())"
                ),
            )
            .await;
        }
        let zone = "Europe/Berlin".to_owned();
        let settings = Settings::starting("Ours".to_owned(), zone, "EUR".to_owned());
        let new = NewRoom {
            id: self.room,
            ..NewRoom::new(settings)
        };
        let recording = Recording::ByClock(self.clock.clone());
        let founder = Founder::Known(self.steward);
        open_room(&self.app, new, founder, recording, &[])
            .await
            .unwrap();
        self.write_bench().await;
    }

    async fn write_bench(&self) {
        let printer = self.member;
        self.app
            .scribes()
            .write(self.room, Author::Unchecked, self.asked(), move |book| {
                Box::pin(bench::write(book, printer))
            })
            .await
            .unwrap();
    }

    /// Writes one further entry.
    pub(crate) async fn write_more(&self) {
        self.app
            .scribes()
            .write(self.room, Author::Unchecked, self.asked(), |book| {
                Box::pin(async move {
                    let id = book.new_id();
                    let entry = PaperClassSet {
                        id,
                        name: format!("Class {id}"),
                        position: 50,
                        is_retired: false,
                        silver: None,
                        carry_over_ul_per_m2: None,
                    };
                    book.append(&entry).await.map(drop)
                })
            })
            .await
            .unwrap();
    }

    fn asked(&self) -> Asked {
        let key = u128::from(COUNT.fetch_add(1, Ordering::Relaxed)).to_be_bytes();
        Asked {
            actor: Some(self.steward),
            key: Some(key),
            fingerprint: fingerprint("start", &key).unwrap(),
        }
    }

    /// A connection as owner, past every policy.
    pub(crate) async fn db(&self) -> PgConnection {
        PgConnection::connect_with(&self.options).await.unwrap()
    }

    pub(crate) fn scope(&self, person: Uuid) -> Scope {
        Scope {
            room: self.room,
            person: Some(person),
        }
    }

    /// Logs a person in and answers the cookie that says so.
    pub(crate) async fn log_in(&self, person: Uuid) -> String {
        let secret = Secret::new().unwrap();
        let hash = HEXLOWER.encode(&secret.hash());
        let mut db = self.db().await;
        run(
            &mut db,
            &format!(
                "insert into session
                    (secret_hash, id, person_id, agent, created_at, last_seen_at, expires_at)
                values (decode('{hash}', 'hex'), gen_random_uuid(), '{person}', 'test',
                    '2026-11-25 12:00Z', '2026-11-25 12:00Z', '2027-11-25 12:00Z')"
            ),
        )
        .await;
        format!(
            "{}={}",
            self.app.address().session_cookie(),
            secret.reveal()
        )
    }

    /// Sends a request as a browser would; answers status and text.
    pub(crate) async fn ask(&self, cookie: &str, method: &str, path: &str) -> (u16, String) {
        let request = Request::builder()
            .method(method)
            .uri(path)
            .header("host", "127.0.0.1:1")
            .header("sec-fetch-site", "same-origin")
            .header("cookie", cookie)
            .header("content-type", "application/x-www-form-urlencoded")
            .body(Body::empty())
            .unwrap();
        let service = router::service(&self.app).unwrap();
        let response = service.oneshot(request).await.unwrap();
        let status = response.status().as_u16();
        let body = response.into_body().collect().await.unwrap().to_bytes();
        (status, String::from_utf8(body.to_vec()).unwrap())
    }

    /// Somebody with an account and no membership.
    pub(crate) async fn stranger(&self) -> Uuid {
        let id = Uuid::from_u128(0x54);
        let mut db = self.db().await;
        run(
            &mut db,
            &format!(
                "insert into person (id, name, log_in_name, password_hash, created_at)
                values ('{id}', 'Stranger', 'stranger', '-', now())"
            ),
        )
        .await;
        id
    }

    /// One answer of the database.
    pub(crate) async fn answer(&self, asked: &str) -> i64 {
        sqlx::query_scalar(AssertSqlSafe(asked.to_owned()))
            .fetch_one(&mut self.db().await)
            .await
            .unwrap()
    }

    /// Another instance of the program beside this one.
    pub(crate) fn second_instance(&self) -> App {
        let pool = connect::serving(self.web.clone());
        program(pool, &self.clock, &self.vault.data, &self.owner)
    }

    pub(crate) async fn verify(&self) -> Report {
        verify(&self.owner, KINDS, &self.vault, self.room)
            .await
            .unwrap()
    }
}

/// Runs statements without parameters.
pub(crate) async fn run(db: &mut PgConnection, statements: &str) {
    let done = db
        .execute(sqlx::raw_sql(AssertSqlSafe(statements.to_owned())))
        .await;
    assert!(done.is_ok(), "{statements}: {}", done.unwrap_err());
}
