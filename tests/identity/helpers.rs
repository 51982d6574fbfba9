//! Rooms with people in them, on one throw-away database a process.

use std::net::IpAddr;
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Arc, LazyLock, Mutex};

use axum::Router;
use axum::body::Body;
use axum::extract::FromRequestParts;
use axum::http::Request;
use axum::http::header::COOKIE;
use axum::routing::get;
use sqlx::{AssertSqlSafe, Connection, Executor, PgConnection};
use time::{Duration, OffsetDateTime};
use tokio::runtime::Runtime;
use tokio::sync::OnceCell;
use tower::ServiceExt;
use uuid::Uuid;
use wetside::address::PublicAddress;
use wetside::app::App;
use wetside::clock::Clock;
use wetside::database::cluster::{Cluster, Folders, StartOptions, WEB_ROLE};
use wetside::database::{Database, RoleName, connect, migrate};
use wetside::error::{Error, Result};
use wetside::identity::accounts::{self, LoggedIn, NewAccount, Typed};
use wetside::identity::client::{Client, TrustedProxies};
use wetside::identity::links::{self, Kind};
use wetside::identity::names::LogInName;
use wetside::identity::passwords::{Cost, Password};
use wetside::identity::secret::{Secret, random};
use wetside::identity::{Entrance, Permit};
use wetside::logbook::{Key, Recording};
use wetside::members::{self, Joiner, actions};
use wetside::rights::{Right, Role};
use wetside::rooms::Settings;
use wetside::rooms::actions::{Founder, NewRoom, Starter, open_room};

pub(crate) const PASSWORD: &str = "kelp lantern orbit nine";

/// The cluster's tasks live here, whichever test started it.
static RUNTIME: LazyLock<Runtime> = LazyLock::new(|| Runtime::new().unwrap());
static DATABASE: OnceCell<(Cluster, Database)> = OnceCell::const_new();
static COUNT: AtomicU32 = AtomicU32::new(0);

/// Runs a test on the runtime that the cluster lives on.
pub(crate) fn run(test: impl Future<Output = ()>) {
    RUNTIME.block_on(test);
}

async fn start() -> (Cluster, Database) {
    let folder = std::env::temp_dir().join(format!("ws-identity-{}", std::process::id()));
    let folders = Folders::choose(Some(&folder)).unwrap();
    let cluster = Cluster::start(&folders, &StartOptions::for_tests())
        .await
        .unwrap();
    let role = RoleName::new(WEB_ROLE).unwrap();
    let owner = connect::owner(cluster.owner_options());
    migrate::migrate(&owner, &role).await.unwrap();
    owner.close().await;
    let database = Database::new(connect::serving(cluster.web_options()), role);
    (cluster, database)
}

/// A name nobody else has in this process.
pub(crate) fn unique(name: &str) -> String {
    format!("{name}-{}", COUNT.fetch_add(1, Ordering::Relaxed))
}

pub(crate) fn new_key() -> Key {
    random::<16>().unwrap()
}

/// One running program; several share the database.
pub(crate) async fn new_app() -> App {
    app_with_clock(Clock::standing_at(morning())).await
}

pub(crate) fn morning() -> OffsetDateTime {
    OffsetDateTime::from_unix_timestamp(1_795_593_600).unwrap()
}

pub(crate) async fn app_with_clock(clock: Clock) -> App {
    let (cluster, database) = DATABASE.get_or_init(start).await;
    app_over(database.clone(), cluster, clock)
}

/// A program over a database of its own, empty.
pub(crate) async fn empty_app() -> App {
    let (cluster, _) = DATABASE.get_or_init(start).await;
    let name = unique("alone").replace('-', "_");
    let mut desk = PgConnection::connect_with(&cluster.owner_options())
        .await
        .unwrap();
    let statement = format!("create database {name}");
    desk.execute(AssertSqlSafe(statement)).await.unwrap();
    let role = RoleName::new(WEB_ROLE).unwrap();
    let owner = connect::owner(cluster.owner_options().database(&name));
    migrate::migrate(&owner, &role).await.unwrap();
    owner.close().await;
    let web = cluster.web_options().database(&name);
    let database = Database::new(connect::serving(web), role);
    app_over(database, cluster, Clock::standing_at(morning()))
}

fn app_over(database: Database, cluster: &Cluster, clock: Clock) -> App {
    let cheap = Cost {
        memory_kib: 64,
        passes: 1,
    };
    App::new(
        database,
        clock,
        PublicAddress::loopback(4711),
        cluster.data().to_owned(),
        Entrance::at_cost(cheap, TrustedProxies::default()).unwrap(),
    )
}

/// A room with its steward.
pub(crate) struct Home {
    pub(crate) app: App,
    pub(crate) room: Uuid,
    pub(crate) slug: String,
    pub(crate) steward: Somebody,
}

/// Somebody with an account, logged in.
#[derive(Clone)]
pub(crate) struct Somebody {
    pub(crate) id: Uuid,
    pub(crate) log_in_name: String,
    pub(crate) session: Secret,
}

pub(crate) fn from(address: &str) -> Client {
    Client {
        address: address.parse::<IpAddr>().unwrap(),
        agent: "a browser".to_owned(),
    }
}

pub(crate) async fn new_account(app: &App, name: &str) -> NewAccount {
    let log_in_name = LogInName::read(&unique(name)).unwrap();
    let password = Password::choose(PASSWORD, &[]).unwrap();
    NewAccount::prepare(app, name.to_owned(), log_in_name, &password)
        .await
        .unwrap()
}

pub(crate) async fn enter(app: &App, account: &NewAccount) -> Somebody {
    let logged_in = accounts::enter(app, &from("192.0.2.1"), None, account.id)
        .await
        .unwrap();
    Somebody {
        id: account.id,
        log_in_name: account.log_in_name.as_str().to_owned(),
        session: logged_in.session,
    }
}

const NOTHING: &[Starter] = &[];

impl Home {
    pub(crate) async fn new() -> Self {
        Self::of(new_app().await).await
    }

    pub(crate) async fn of(app: App) -> Self {
        let account = new_account(&app, "ines").await;
        let founder = Founder::New {
            account: account.clone(),
            set_up: None,
            is_operator: false,
        };
        let steward = |app: App| async move { enter(&app, &account).await };
        Self::founded(app, founder, steward).await
    }

    /// A second room of the same steward.
    pub(crate) async fn second(&self) -> Self {
        let steward = self.steward.clone();
        let founder = Founder::Known(steward.id);
        Self::founded(self.app.clone(), founder, |_| async { steward }).await
    }

    async fn founded<F: Future<Output = Somebody>>(
        app: App,
        founder: Founder,
        steward: impl FnOnce(App) -> F,
    ) -> Self {
        let settings = Settings::starting(unique("room"), "UTC".to_owned(), "EUR".to_owned());
        let recording = Recording::ByClock(app.clock().clone());
        let opened = open_room(&app, NewRoom::new(settings), founder, recording, NOTHING)
            .await
            .unwrap();
        let steward = steward(app.clone()).await;
        Self {
            app,
            room: opened.room,
            slug: opened.slug,
            steward,
        }
    }

    /// What the steward may do.
    pub(crate) async fn by_steward<R: Right>(&self) -> Permit<R> {
        self.by(&self.steward).await.unwrap()
    }

    /// What somebody may do here.
    pub(crate) async fn by<R: Right>(&self, somebody: &Somebody) -> Result<Permit<R>> {
        permit(&self.app, &somebody.session, &self.slug).await
    }

    /// An invitation's secret.
    pub(crate) async fn invitation(&self, role: Role) -> Secret {
        let permit = self.by_steward().await;
        let made = actions::invite(&self.app, &permit, new_key(), role)
            .await
            .unwrap();
        secret_of(&made.address.unwrap())
    }

    /// Somebody new who joined by an invitation.
    pub(crate) async fn member(&self, name: &str, role: Role) -> Somebody {
        let account = new_account(&self.app, name).await;
        self.join(Joiner::New(account.clone()), role).await.unwrap();
        enter(&self.app, &account).await
    }

    pub(crate) async fn join(&self, joiner: Joiner, role: Role) -> Result<()> {
        let secret = self.invitation(role).await;
        let link = links::look(&self.app, Kind::Join, &secret).await?;
        members::accept(&self.app, &link, joiner).await?;
        Ok(())
    }

    pub(crate) fn advance(&self, time: Duration) {
        self.app.clock().set(self.app.clock().now() + time);
    }
}

pub(crate) fn secret_of(address: &str) -> Secret {
    Secret::received(address.rsplit('/').next().unwrap())
}

/// Runs an extractor as a request to a room with this session would.
pub(crate) async fn permit<R: Right>(app: &App, session: &Secret, slug: &str) -> Result<Permit<R>> {
    let cookie = format!("{}={}", app.address().session_cookie(), session.reveal());
    extract::<Permit<R>>(app, (COOKIE.as_str(), &cookie), slug).await
}

pub(crate) async fn extract<E>(app: &App, header: (&str, &str), slug: &str) -> Result<E>
where
    E: FromRequestParts<App, Rejection = Error> + Send + 'static,
{
    let found = Arc::new(Mutex::new(None));
    let keep = found.clone();
    let handler = move |permit: Result<E>| async move {
        *keep.lock().unwrap() = Some(permit);
    };
    let router = Router::new()
        .route("/rooms/{room}", get(handler))
        .with_state(app.clone());
    let request = Request::get(format!("/rooms/{slug}"))
        .header(header.0, header.1)
        .body(Body::empty())
        .unwrap();
    router.oneshot(request).await.unwrap();
    let found = found.lock().unwrap().take();
    found.unwrap()
}

pub(crate) async fn log_in(
    app: &App,
    address: &str,
    device: Option<&Secret>,
    name: &str,
    password: &str,
) -> Result<LoggedIn> {
    let typed = Typed {
        log_in_name: name.to_owned(),
        password: password.to_owned(),
    };
    accounts::log_in(app, &from(address), device.cloned(), typed).await
}
