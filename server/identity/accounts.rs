//! Accounts: logging in and out, and what a person does to their own.

use time::OffsetDateTime;
use uuid::Uuid;

use super::client::Client;
use super::names::LogInName;
use super::passwords::{Hasher, Password};
use super::secret::Secret;
use super::throttle::Tries;
use super::{Person, memberships, sessions};
use crate::app::App;
use crate::database::InstallationTx;
use crate::error::{Error, OnConstraint, Result};
use crate::problem::Problem;

pub(super) mod store;

/// What a person types to log in.
#[derive(Clone)]
pub struct Typed {
    /// The log-in name.
    pub log_in_name: String,
    /// The password.
    pub password: String,
}

/// What a browser gets for a good log-in.
#[derive(Clone, Debug)]
pub struct LoggedIn {
    /// Who.
    pub person: Uuid,
    /// The new session.
    pub session: Secret,
    /// The browser's own secret, new or as it was.
    pub device: Secret,
    /// Whether something happened to the account that its person has not seen.
    pub has_news: bool,
}

/// What is known of an account before its password was looked at.
pub(super) struct Account {
    pub(super) id: Uuid,
    pub(super) password_hash: String,
    pub(super) is_suspended: bool,
}

/// A new account's particulars, with the password hashed.
#[derive(Clone)]
pub struct NewAccount {
    /// Who it will be.
    pub id: Uuid,
    /// The name others see.
    pub name: String,
    /// The log-in name.
    pub log_in_name: LogInName,
    password_hash: String,
}

impl std::fmt::Debug for NewAccount {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("NewAccount").field(&self.id).finish()
    }
}

impl NewAccount {
    /// Hashes the password of a new account.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where too many wait for that.
    pub async fn prepare(
        app: &App,
        name: String,
        log_in_name: LogInName,
        password: &Password,
    ) -> Result<Self> {
        Ok(Self {
            id: Uuid::now_v7(),
            name,
            log_in_name,
            password_hash: app.entrance().hasher.hash(password).await?,
        })
    }

    /// An account that nobody can log in with before its password is set by a
    /// link.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn without_password(app: &App, name: String, log_in_name: LogInName) -> Result<Self> {
        Ok(Self {
            id: Uuid::now_v7(),
            name,
            log_in_name,
            password_hash: app.entrance().hasher.of_no_password()?,
        })
    }

    /// Adds the account inside a room's transaction.
    ///
    /// # Errors
    /// That the log-in name is taken.
    pub async fn insert(
        &self,
        tx: &mut crate::database::RoomTx,
        is_operator: bool,
        now: OffsetDateTime,
    ) -> Result<()> {
        store::insert(tx, self, &self.password_hash, is_operator, now)
            .await
            .on_constraint("person_log_in_name_key", || {
                Error::field("log_in_name", Problem::LogInNameTaken)
            })
    }
}

/// Logs somebody in. What is wrong is never said: an unknown name, a wrong
/// password, a suspended account and too many tries answer alike. The try is
/// counted first; a try that is left costs one verification, whoever is asked
/// about, and one that is refused costs none.
///
/// # Errors
/// [`Problem::LogInFailed`]; [`Error::Unavailable`] where too many wait.
pub async fn log_in(
    app: &App,
    client: &Client,
    device: Option<Secret>,
    typed: Typed,
) -> Result<LoggedIn> {
    let failed = || Error::field("", Problem::LogInFailed);
    let device_hash = device.as_ref().map(Secret::hash);
    let admitted = match admit(app, client, device_hash, &typed.log_in_name).await {
        Err(Error::TooMany(_)) => {
            tracing::warn!(address = %client.address, "a log-in was refused: too many tries");
            return Err(failed());
        }
        other => other?,
    };
    let hash = admitted.account.as_ref();
    let hash = hash.map(|account| account.password_hash.as_str());
    let verified = app.entrance().hasher.verify(&typed.password, hash).await;
    let account = match (verified, admitted.account) {
        (Ok(true), Some(account)) if !account.is_suspended => account,
        (Ok(_), _) => {
            tracing::warn!(address = %client.address, "a log-in failed");
            return Err(failed());
        }
        (Err(cause), _) => {
            let (tries, now) = (admitted.tries, app.clock().now());
            app.database()
                .installation(move |tx| Box::pin(async move { tries.give_back(tx, now).await }))
                .await?;
            return Err(cause);
        }
    };
    let logged_in = let_in(app, client, device, &account, admitted.tries).await?;
    if app.entrance().hasher.is_outdated(&account.password_hash) {
        let password = Hasher::retyped(&typed.password);
        let done = rehash(app, account.id, &account.password_hash, &password).await;
        if let Err(cause) = done {
            tracing::warn!(%cause, "a password keeps its old hash until the next log-in");
        }
    }
    Ok(logged_in)
}

/// Begins the session, if the account is still as it was when the password was
/// verified: whoever changes a password or suspends ends no session that comes later.
async fn let_in(
    app: &App,
    client: &Client,
    device: Option<Secret>,
    account: &Account,
    tries: Tries,
) -> Result<LoggedIn> {
    let now = app.clock().now();
    let (person, hash) = (account.id, account.password_hash.clone());
    let agent = client.agent.clone();
    app.database()
        .installation(move |tx| {
            Box::pin(async move {
                if !store::lock_unchanged(tx, person, &hash).await? {
                    return Err(Error::field("", Problem::LogInFailed));
                }
                tries.give_back(tx, now).await?;
                let session = sessions::begin(tx, person, &agent, now).await?;
                let device = know_device(tx, person, device, now).await?;
                let has_news = store::has_news(tx, person).await?;
                tracing::info!(%person, "logged in");
                Ok(LoggedIn {
                    person,
                    session,
                    device,
                    has_news,
                })
            })
        })
        .await
}

/// Begins the session of somebody whose account was just made in this request.
///
/// # Errors
/// That the database is away.
pub async fn enter(
    app: &App,
    client: &Client,
    device: Option<Secret>,
    person: Uuid,
) -> Result<LoggedIn> {
    let (agent, now) = (client.agent.clone(), app.clock().now());
    app.database()
        .installation(move |tx| {
            Box::pin(async move {
                Ok(LoggedIn {
                    person,
                    session: sessions::begin(tx, person, &agent, now).await?,
                    device: know_device(tx, person, device, now).await?,
                    has_news: false,
                })
            })
        })
        .await
}

struct Admitted {
    account: Option<Account>,
    tries: Tries,
}

/// Counts the try and finds the account, if there is one.
async fn admit(
    app: &App,
    client: &Client,
    device: Option<Vec<u8>>,
    typed_name: &str,
) -> Result<Admitted> {
    let now = app.clock().now();
    let limits = app.entrance().limits;
    let network = client.network();
    // What is no log-in name is nobody's, and is counted all the same.
    let typed = typed_name.to_lowercase();
    let name = LogInName::read(typed_name).ok();
    app.database()
        .installation(move |tx| {
            Box::pin(async move {
                let account = match &name {
                    Some(name) => store::account(tx, name.as_str()).await?,
                    None => None,
                };
                let known = match (&account, &device) {
                    (Some(account), Some(device)) => {
                        store::knows_device(tx, account.id, device).await?
                    }
                    _ => false,
                };
                let tries = match (&account, &device) {
                    (Some(account), Some(device)) if known => {
                        Tries::from_device(&limits, device, account.id)
                    }
                    _ => {
                        let counted = name.as_ref().map_or(typed.as_str(), LogInName::as_str);
                        Tries::at_name(&limits, counted, &network)
                    }
                };
                tries.count(tx, now).await?;
                Ok(Admitted { account, tries })
            })
        })
        .await
}

/// Remembers that this browser logged the person in. A browser gets a new secret
/// when somebody new logs in with it, so that no one who knew the old one gains
/// anything; whoever it was known for stays known.
async fn know_device(
    tx: &mut InstallationTx,
    person: Uuid,
    device: Option<Secret>,
    now: OffsetDateTime,
) -> Result<Secret> {
    if let Some(device) = device.as_ref()
        && store::device_used(tx, person, &device.hash(), now).await?
    {
        return Ok(device.clone());
    }
    let new = Secret::new()?;
    if let Some(device) = device {
        store::copy_device(tx, &device.hash(), &new.hash()).await?;
    }
    store::insert_device(tx, person, &new.hash(), now).await?;
    Ok(new)
}

async fn rehash(app: &App, person: Uuid, old: &str, password: &Password) -> Result<()> {
    let new = app.entrance().hasher.hash(password).await?;
    let old = old.to_owned();
    app.database()
        .installation(move |tx| {
            Box::pin(async move { store::replace_hash(tx, person, &old, &new).await })
        })
        .await?;
    Ok(())
}

/// Changes the name others see.
///
/// # Errors
/// That the database is away.
pub async fn change_name(app: &App, person: &Person, name: String) -> Result<()> {
    let id = person.id;
    app.database()
        .installation(move |tx| Box::pin(async move { store::rename(tx, id, &name).await }))
        .await?;
    app.sessions().forget_person(id);
    Ok(())
}

/// A change of password, as typed.
#[derive(Clone)]
pub struct NewPassword {
    /// The present one.
    pub present: String,
    /// The new one.
    pub new: String,
}

/// Changes the password. Every other log-in ends, this one gets a new secret,
/// and no browser but this counts as known any more.
///
/// # Errors
/// What is wrong with the passwords; too many tries at the present one.
pub async fn change_password(
    app: &App,
    person: &Person,
    client: &Client,
    typed: NewPassword,
) -> Result<LoggedIn> {
    let account = account_of(app, person.id).await?;
    let names = names_beside(app, person.id, &account.1).await?;
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let new = Password::choose(&typed.new, &names)
        .map_err(|problem| Error::field("new_password", problem))?;
    check_present(app, person.id, &account.0.password_hash, &typed.present).await?;
    let hash = app.entrance().hasher.hash(&new).await?;
    let (id, agent, now) = (person.id, client.agent.clone(), app.clock().now());
    let old = account.0.password_hash;
    let logged_in = app
        .database()
        .installation(move |tx| {
            Box::pin(async move {
                if !store::replace_hash(tx, id, &old, &hash).await? {
                    return Err(Error::field("current_password", Problem::PasswordWrong));
                }
                sessions::store::end_all(tx, id, None).await?;
                store::forget_devices(tx, id).await?;
                Ok(LoggedIn {
                    person: id,
                    session: sessions::begin(tx, id, &agent, now).await?,
                    device: know_device(tx, id, None, now).await?,
                    has_news: store::has_news(tx, id).await?,
                })
            })
        })
        .await?;
    app.sessions().forget_person(id);
    Ok(logged_in)
}

/// Whether what was typed is the password a person has now; a few tries only.
async fn check_present(app: &App, person: Uuid, hash: &str, typed: &str) -> Result<()> {
    let tries = Tries::again(&app.entrance().limits, person);
    let (counted, now) = (tries.clone(), app.clock().now());
    app.database()
        .installation(move |tx| Box::pin(async move { counted.count(tx, now).await }))
        .await?;
    if !app.entrance().hasher.verify(typed, Some(hash)).await? {
        return Err(Error::field("current_password", Problem::PasswordWrong));
    }
    app.database()
        .installation(move |tx| Box::pin(async move { tries.give_back(tx, now).await }))
        .await
}

async fn account_of(app: &App, person: Uuid) -> Result<(Account, String)> {
    app.database()
        .installation(move |tx| Box::pin(async move { store::account_of(tx, person).await }))
        .await?
        .ok_or(Error::NotFound)
}

/// Names that a person's password may not hold.
pub(super) async fn names_beside(
    app: &App,
    person: Uuid,
    log_in_name: &str,
) -> Result<Vec<String>> {
    let rooms = memberships::all(app, person).await?;
    let mut names = vec![log_in_name.to_owned()];
    names.extend(rooms.into_iter().map(|room| room.room_name));
    Ok(names)
}

/// Something that happened to an account, which its person must see.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct ResetNews {
    /// When a link for a new password was made.
    pub made_at: OffsetDateTime,
    /// Who made it; nobody where it was made on the machine.
    pub made_by: Option<String>,
    /// When it was used, if it was.
    pub used_at: Option<OffsetDateTime>,
}

/// What the account page shows.
#[derive(Clone, Debug)]
pub struct Overview {
    /// The name others see.
    pub name: String,
    /// The log-in name.
    pub log_in_name: String,
    /// Links for a new password, made since the person last said "seen".
    pub news: Vec<ResetNews>,
    /// Log-ins that are still good.
    pub log_ins: Vec<sessions::LogIn>,
}

/// Reads what the account page shows.
///
/// # Errors
/// That the database is away.
pub async fn overview(app: &App, person: &Person) -> Result<Overview> {
    let id = person.id;
    let log_ins = sessions::of_person(app, id).await?;
    let (_, log_in_name) = account_of(app, id).await?;
    let news = app
        .database()
        .installation(move |tx| Box::pin(async move { store::news(tx, id).await }))
        .await?;
    Ok(Overview {
        name: person.name.clone(),
        log_in_name,
        news,
        log_ins,
    })
}

/// Notes that the person has seen what happened to the account up to the newest
/// thing they were shown.
///
/// # Errors
/// That the database is away.
pub async fn seen_news(app: &App, person: &Person, until: OffsetDateTime) -> Result<()> {
    let (id, until) = (person.id, until.min(app.clock().now()));
    app.database()
        .installation(move |tx| Box::pin(async move { store::seen_news(tx, id, until).await }))
        .await
}
