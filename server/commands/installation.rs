//! Reaching an installation: its data folder, and its database as server and as owner.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, bail};
use clap::Args;
use sqlx::postgres::PgConnectOptions;

use crate::address::PublicAddress;
use crate::app::App;
use crate::clock::Clock;
use crate::database::cluster::{Account, Cluster, Folders, StartOptions, WEB_ROLE};
use crate::database::migrate::{self, Schema};
use crate::database::{Database, Owner, RoleName, connect, roles};
use crate::identity::Entrance;
use crate::identity::client::TrustedProxies;
use crate::logbook::vault::Vault;

/// Which installation.
#[derive(Args, Clone, Debug)]
pub struct Where {
    /// The data folder [default: $STATE_DIRECTORY, /var/lib/wetside for root, else ~/.local/share/wetside]
    #[arg(long, global = true, value_name = "FOLDER")]
    pub data: Option<PathBuf>,
    /// The role the server works as, where the database is one of your own
    #[arg(long, global = true, value_name = "ROLE", default_value = WEB_ROLE)]
    pub app_role: String,
}

/// An installation that was reached.
#[derive(Debug)]
pub struct Installation {
    /// The data folder.
    pub data: PathBuf,
    /// The private cluster, where the database is not one of your own.
    pub cluster: Option<Cluster>,
    /// Whom the program works as: never root.
    pub account: Account,
    role: RoleName,
    serving: PgConnectOptions,
    owning: PgConnectOptions,
}

impl Installation {
    /// For the server: keeps the private cluster up itself.
    ///
    /// # Errors
    /// What stands in the way, as a sentence.
    pub async fn start(place: &Where) -> anyhow::Result<Self> {
        let folders = Folders::choose(place.data.as_deref())?;
        match database_url()? {
            Some(url) => Self::at(place, &folders, &url),
            None => {
                let cluster = Cluster::start(&folders, &StartOptions::default()).await?;
                Self::of_cluster(place, &folders, cluster)
            }
        }
    }

    /// For a command, beside a server or alone. Gives up root at once.
    ///
    /// # Errors
    /// What stands in the way, as a sentence.
    pub async fn reach(place: &Where) -> anyhow::Result<Self> {
        let folders = Folders::choose(place.data.as_deref())?;
        let reached = match database_url()? {
            Some(url) => Self::at(place, &folders, &url)?,
            None => {
                let cluster = Cluster::reach(&folders, &StartOptions::default()).await?;
                Self::of_cluster(place, &folders, cluster)?
            }
        };
        reached.account.drop_to()?;
        Ok(reached)
    }

    /// For a command that acts as the program does, beside a server or alone.
    ///
    /// # Errors
    /// What stands in the way, as a sentence.
    pub async fn reach_app(place: &Where) -> anyhow::Result<(Self, App)> {
        let installation = Self::reach(place).await?;
        installation.migrate().await?;
        let app = installation.app(public_address(USUAL_PORT)?).await?;
        Ok((installation, app))
    }

    fn at(place: &Where, folders: &Folders, url: &str) -> anyhow::Result<Self> {
        let serving: PgConnectOptions = url.parse().context("the database URL cannot be read")?;
        let owning = match secret("WETSIDE_OWNER_DATABASE_URL")? {
            Some(url) => url
                .parse()
                .context("WETSIDE_OWNER_DATABASE_URL cannot be read")?,
            None => serving.clone(),
        };
        let data = folders.make()?;
        Ok(Self {
            account: Account::for_folder(&data)?,
            data,
            cluster: None,
            role: role(place)?,
            serving,
            owning,
        })
    }

    fn of_cluster(place: &Where, folders: &Folders, cluster: Cluster) -> anyhow::Result<Self> {
        Ok(Self {
            data: folders.data().to_owned(),
            role: role(place)?,
            serving: cluster.web_options(),
            owning: cluster.owner_options(),
            account: cluster.account().clone(),
            cluster: Some(cluster),
        })
    }

    /// The database as its owner.
    #[must_use]
    pub fn owner(&self) -> Owner {
        Owner::new(connect::owner(self.owning.clone()))
    }

    /// What is kept outside the database.
    #[must_use]
    pub fn vault(&self) -> Vault {
        Vault {
            data: self.data.clone(),
            key_file: key_file(),
        }
    }

    /// Brings the tables up to date.
    ///
    /// # Errors
    /// The database's; tables of a newer program.
    pub async fn migrate(&self) -> anyhow::Result<()> {
        let pool = connect::owner(self.owning.clone());
        if migrate::schema_of(&pool).await? == Schema::Ahead {
            bail!(
                "The tables were made by a newer Wetside. Start that one, or give this one the \
                 data folder of its own time"
            );
        }
        migrate::migrate(&pool, &self.role).await?;
        pool.close().await;
        Ok(())
    }

    /// The program over this installation, by the machine's clock.
    ///
    /// # Errors
    /// A role that may do too much; settings that cannot be read.
    pub async fn app(&self, address: PublicAddress) -> anyhow::Result<App> {
        let database = self.database().await?;
        let entrance = Entrance::new(proxies()?)?;
        let app = App::new(
            database,
            Clock::System,
            address,
            self.data.clone(),
            entrance,
        )
        .with_owner(self.owner());
        Ok(match key_file() {
            Some(path) => app.with_key_file(path),
            None => app,
        })
    }

    /// The database as the server uses it.
    ///
    /// # Errors
    /// A role under which one room could see another's book.
    pub async fn database(&self) -> anyhow::Result<Database> {
        self.served_by(connect::serving(self.serving.clone())).await
    }

    /// The same for filling a demo.
    ///
    /// # Errors
    /// As [`Installation::database`].
    pub async fn hurried_database(&self) -> anyhow::Result<Database> {
        self.served_by(connect::hurried(self.serving.clone())).await
    }

    #[expect(
        clippy::disallowed_types,
        reason = "the pool goes into the database that transactions come from"
    )]
    async fn served_by(&self, pool: sqlx::PgPool) -> anyhow::Result<Database> {
        roles::check(&pool, &self.role).await?;
        Ok(Database::new(pool, self.role.clone()))
    }

    /// Stops what this process started.
    ///
    /// # Errors
    /// A cluster that does not stop.
    pub async fn close(self) -> anyhow::Result<()> {
        if let Some(cluster) = self.cluster {
            cluster.stop().await;
        }
        Ok(())
    }
}

/// The port where none is named.
pub const USUAL_PORT: u16 = 8480;

/// Where people reach this installation: `WETSIDE_PUBLIC_URL`, else this machine
/// alone at that port.
///
/// # Errors
/// An address that cannot be one, as a sentence.
pub fn public_address(port: u16) -> anyhow::Result<PublicAddress> {
    match env::var("WETSIDE_PUBLIC_URL") {
        Ok(url) if !url.is_empty() => Ok(PublicAddress::parse(&url)?),
        _ => Ok(PublicAddress::loopback(port)),
    }
}

fn role(place: &Where) -> anyhow::Result<RoleName> {
    RoleName::new(&place.app_role).with_context(|| {
        format!(
            "--app-role {:?} is no name: lower-case letters, digits and underscores only",
            place.app_role
        )
    })
}

fn database_url() -> anyhow::Result<Option<String>> {
    Ok(match secret("WETSIDE_DATABASE_URL")? {
        Some(url) => Some(url),
        None => secret("DATABASE_URL")?,
    })
}

/// A setting that may hold a password: itself, or the file that NAME_FILE names.
fn secret(name: &str) -> anyhow::Result<Option<String>> {
    if let Some(value) = env::var(name).ok().filter(|value| !value.is_empty()) {
        return Ok(Some(value));
    }
    let Some(path) = env::var_os(format!("{name}_FILE")) else {
        return Ok(None);
    };
    let path = Path::new(&path);
    let text = fs::read_to_string(path)
        .with_context(|| format!("{name}_FILE: {} cannot be read", path.display()))?;
    Ok(Some(text.trim().to_owned()))
}

fn key_file() -> Option<PathBuf> {
    env::var_os("WETSIDE_KEY_FILE").map(PathBuf::from)
}

fn proxies() -> anyhow::Result<TrustedProxies> {
    let text = env::var("WETSIDE_TRUSTED_PROXIES").unwrap_or_default();
    text.parse().context("WETSIDE_TRUSTED_PROXIES")
}
