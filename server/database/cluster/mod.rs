//! The private PostgreSQL cluster: an installation's own database, kept in its
//! data folder and closed to everyone else.
//!
//! * One server a folder, by a lock that the kernel gives up with the process.
//! * The server listens on a socket in a folder of mode 0700 and never on a port.
//!   Two roles may log in, only from the cluster's account (and from root where
//!   root started it): [`OWNER_ROLE`] owns the database and its tables,
//!   [`WEB_ROLE`] is who the web server logs in as. The bootstrap superuser
//!   cannot log in at all.
//! * A server that outlived its Wetside is adopted; what outlived its server is
//!   ended; a server that dies is started again.

mod account;
mod create;
mod error;
mod folders;
mod guardian;
mod keeper;
mod processes;
mod programs;
mod upgrade;

use std::fs::File;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use sqlx::postgres::{PgConnectOptions, PgSslMode};

pub use account::{Account, is_root};
pub use error::ClusterError;
pub use folders::{Folders, Surroundings};
pub use programs::{OLDEST_MAJOR, Programs};
pub use upgrade::{Upgraded, upgrade};

use folders::Open;
use guardian::Guardian;
use keeper::{Keeper, Plan};
use processes::Phase;

/// Owns the database and its tables; migrates, backs up and verifies.
pub const OWNER_ROLE: &str = "wetside_owner";

/// Serves: holds only what it was granted, under row-level security.
pub const WEB_ROLE: &str = "wetside_web";

/// The one database of a private cluster.
pub const DATABASE: &str = "wetside";

/// Part of the socket's name; nothing listens on this port.
const PORT: u16 = 5432;

/// How a cluster is started.
#[derive(Clone, Debug)]
pub struct StartOptions {
    /// Whether a commit waits for the disk. Off only where the data may be lost.
    pub fsync: bool,
    /// Whether the owner role of a cluster made now may create databases.
    pub may_create_databases: bool,
    /// Whether server and data folder go when this process goes, however it goes.
    pub throw_away: bool,
}

impl Default for StartOptions {
    fn default() -> Self {
        Self {
            fsync: true,
            may_create_databases: false,
            throw_away: false,
        }
    }
}

impl StartOptions {
    /// For tests: quick, able to clone databases, gone with the process.
    #[must_use]
    pub fn for_tests() -> Self {
        Self {
            fsync: false,
            may_create_databases: true,
            throw_away: true,
        }
    }
}

/// A private cluster that is up.
///
/// Dropping it asks the server to stop without waiting; [`Cluster::stop`] waits.
#[derive(Debug)]
pub struct Cluster {
    data: PathBuf,
    socket: PathBuf,
    account: Account,
    /// Nothing where another process keeps the server and this one is a guest.
    keeper: Option<Keeper>,
    _guardian: Option<Guardian>,
    /// Held to the end: fields are dropped in order.
    _lock: Option<File>,
}

impl Cluster {
    /// Starts the cluster of a folder, making it first where there is none.
    ///
    /// # Errors
    /// Each says in a sentence what to do: see [`ClusterError`].
    pub async fn start(folders: &Folders, options: &StartOptions) -> Result<Self, ClusterError> {
        let (folders, wanted) = (folders.clone(), options.clone());
        // Making a cluster takes a second, which the caller's other tasks shall not wait for.
        let prepared = tokio::task::spawn_blocking(move || {
            let taken = folders.take()?;
            let plan = Self::plan(&taken.open, &wanted)?;
            Ok((taken, plan))
        });
        let (taken, plan) = prepared.await.unwrap_or(Err(ClusterError::Stopped))?;
        let (keeper, socket) = Keeper::start(plan).await?;
        let guardian = if options.throw_away {
            Some(Guardian::post(&taken.open)?)
        } else {
            None
        };
        Ok(Self {
            data: taken.open.data,
            socket,
            account: taken.open.account,
            keeper: Some(keeper),
            _guardian: guardian,
            _lock: Some(taken.lock),
        })
    }

    /// For a command beside a server: where another Wetside keeps the cluster,
    /// becomes its guest; else starts the cluster as [`Cluster::start`] does.
    ///
    /// Where root asks and an ordinary user started that server, root gets in only
    /// after [`Account::drop_to`].
    ///
    /// # Errors
    /// As [`Cluster::start`].
    pub async fn reach(folders: &Folders, options: &StartOptions) -> Result<Self, ClusterError> {
        let began = Instant::now();
        loop {
            let held = match Self::start(folders, options).await {
                Err(held @ ClusterError::InUse { .. }) => held,
                other => return other,
            };
            let Open { data, account, .. } = folders.open()?;
            let found = processes::postmaster(&data.join("postgres"), &account);
            if let Some(found) = found.filter(|found| found.phase == Phase::Ready) {
                let socket = found.socket;
                return Ok(Self {
                    data,
                    socket,
                    account,
                    keeper: None,
                    _guardian: None,
                    _lock: None,
                });
            }
            // The other one is just starting or just stopping.
            if began.elapsed() > Duration::from_secs(15) {
                return Err(held);
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    fn plan(open: &Open, options: &StartOptions) -> Result<Plan, ClusterError> {
        let cluster = open.cluster();
        upgrade::finish(open)?;
        let programs = match programs::version_of(&cluster, &open.account)? {
            Some(version) => Programs::for_version(&version, &open.data, &open.account)?,
            None => {
                let programs = Programs::preferred(&open.account)?;
                processes::end_orphans(&open.data, &cluster);
                let made = create::create(open, &programs, options)?;
                create::put_in_place(&made, open)?;
                programs
            }
        };
        Ok(Plan {
            programs,
            data: open.data.clone(),
            cluster,
            socket: open.socket.clone(),
            account: open.account.clone(),
            by_root: open.by_root,
            options: options.clone(),
        })
    }

    /// How the owner of the tables connects.
    #[must_use]
    pub fn owner_options(&self) -> PgConnectOptions {
        self.options(OWNER_ROLE)
    }

    /// How the web server connects.
    #[must_use]
    pub fn web_options(&self) -> PgConnectOptions {
        self.options(WEB_ROLE)
    }

    fn options(&self, role: &str) -> PgConnectOptions {
        PgConnectOptions::new_without_pgpass()
            .socket(&self.socket)
            .port(PORT)
            .username(role)
            .database(DATABASE)
            .ssl_mode(PgSslMode::Disable)
            .application_name("wetside")
    }

    /// The user the cluster belongs to.
    #[must_use]
    pub fn account(&self) -> &Account {
        &self.account
    }

    /// The data folder, without links in its path.
    #[must_use]
    pub fn data(&self) -> &Path {
        &self.data
    }

    /// The folder of the socket.
    #[must_use]
    pub fn socket(&self) -> &Path {
        &self.socket
    }

    /// The number of the server's process, while this process keeps it and it is up.
    #[must_use]
    pub fn server_pid(&self) -> Option<i32> {
        self.keeper.as_ref().and_then(Keeper::pid)
    }

    /// Returns when the server has ended and will not be started again.
    pub async fn ended(&self) {
        match &self.keeper {
            Some(keeper) => keeper.ended().await,
            None => std::future::pending().await,
        }
    }

    /// Stops the server and waits for it. A guest leaves it running.
    pub async fn stop(mut self) {
        if let Some(keeper) = &mut self.keeper {
            keeper.stop().await;
        }
    }
}

/// What there is in a folder, found without changing anything.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The version that wrote the cluster; nothing where there is none.
    pub version: Option<String>,
    /// The server's process and its socket's folder, where one is ready.
    pub server: Option<(i32, PathBuf)>,
    /// The user it belongs to.
    pub account: Account,
}

/// Looks at a folder without making or changing anything.
///
/// # Errors
/// Where the folder cannot be read.
pub fn look(folders: &Folders) -> Result<Found, ClusterError> {
    let account = Account::for_folder(folders.data())?;
    let data = folders
        .data()
        .canonicalize()
        .unwrap_or_else(|_| folders.data().to_path_buf());
    let cluster = data.join("postgres");
    let version = programs::version_of(&cluster, &account)?;
    let server = processes::postmaster(&cluster, &account)
        .filter(|found| found.phase == Phase::Ready)
        .map(|found| (found.pid, found.socket));
    Ok(Found {
        version,
        server,
        account,
    })
}
