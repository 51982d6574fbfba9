//! How a room comes about, what its steward sets, and its closing.

use futures_util::future::BoxFuture;
use uuid::Uuid;

use super::entries::{Demo, RoomClosed, RoomOpened, RoomReopened, RoomSettingsChanged};
use super::settings::Settings;
use super::{read, store};
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, OnConstraint, Result};
use crate::identity::accounts::NewAccount;
use crate::identity::secret::Secret;
use crate::identity::{Permit, links};
use crate::kinds::KINDS;
use crate::logbook::{Asked, Author, Book, Done, Key, Recording, fingerprint};
use crate::members;
use crate::problem::Problem;
use crate::rights::{KeepRoom, Role};

/// Writes what a noun starts a room with into the new book.
pub type Starter = for<'b, 't> fn(&'b mut Book<'t>) -> BoxFuture<'b, Result<()>>;

/// A room about to be opened.
#[derive(Clone, Debug)]
pub struct NewRoom {
    /// Which it will be.
    pub id: Uuid,
    /// Its short name in addresses.
    pub slug: String,
    /// Its settings.
    pub settings: Settings,
    /// For a demo room: what its history is drawn from.
    pub demo_seed: Option<i64>,
}

impl NewRoom {
    /// A room with these settings and a short name made of its name.
    #[must_use]
    pub fn new(settings: Settings) -> Self {
        Self {
            id: Uuid::now_v7(),
            slug: read::slug_of(&settings.name),
            settings,
            demo_seed: None,
        }
    }
}

/// Who becomes the first steward.
#[derive(Clone, Debug)]
pub enum Founder {
    /// Somebody whose account is made with the room, by a set-up link where one
    /// was used.
    New {
        /// The account.
        account: NewAccount,
        /// The set-up link that this uses up.
        set_up: Option<Uuid>,
        /// Whether they look after the installation.
        is_operator: bool,
    },
    /// Somebody who has an account.
    Known(Uuid),
    /// Whoever is handed the link with this secret.
    Invited(Secret),
}

/// A room that was opened.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Opened {
    /// Which.
    pub room: Uuid,
    /// Its short name in addresses.
    pub slug: String,
}

/// Opens a room: its name, its book, its settings, its first steward and what
/// it starts with, all in one transaction.
///
/// # Errors
/// Settings that are wrong; a short name or log-in name that is taken; a set-up
/// link that is used up.
pub async fn open_room(
    app: &App,
    new: NewRoom,
    founder: Founder,
    recording: Recording,
    starters: &'static [Starter],
) -> Result<Opened> {
    let settings = read::check(new.settings).map_err(Error::Invalid)?;
    if !read::is_slug(&new.slug) {
        return Err(Error::field("slug", Problem::NotASlug));
    }
    let new = NewRoom { settings, ..new };
    let opened = Opened {
        room: new.id,
        slug: new.slug.clone(),
    };
    let scope = Scope {
        room: new.id,
        person: None,
    };
    app.database()
        .in_room(scope, move |tx| {
            Box::pin(async move {
                // What a set-up link may do depends on there being no room yet.
                admit_founder(tx, &founder, &recording).await?;
                store::insert_name(tx, &new.slug, &new.settings.name, new.demo_seed.is_some())
                    .await
                    .on_constraint("room_name_slug_key", || {
                        Error::field("slug", Problem::SlugTaken)
                    })?;
                write_first_entries(tx, &new, &founder, &recording, starters).await
            })
        })
        .await?;
    Ok(opened)
}

async fn admit_founder(tx: &mut RoomTx, founder: &Founder, recording: &Recording) -> Result<()> {
    let Founder::New {
        account,
        set_up,
        is_operator,
    } = founder
    else {
        return Ok(());
    };
    let now = recording.now();
    if let Some(link) = set_up {
        links::use_up_set_up(tx, *link, now).await?;
    }
    account.insert(tx, *is_operator, now).await
}

async fn write_first_entries(
    tx: &mut RoomTx,
    new: &NewRoom,
    founder: &Founder,
    recording: &Recording,
    starters: &[Starter],
) -> Result<()> {
    let actor = match founder {
        Founder::New { account, .. } => Some(account.id),
        Founder::Known(person) => Some(*person),
        Founder::Invited(_) => None,
    };
    let asked = Asked {
        actor,
        key: None,
        fingerprint: fingerprint("open_room", &(&new.slug, &new.settings))?,
    };
    let mut book = Book::start(tx, KINDS, recording, asked).await?;
    let (slug, settings) = (new.slug.clone(), new.settings.clone());
    match new.demo_seed {
        None => book.append(&RoomOpened { slug, settings }).await?,
        Some(seed) => {
            let demo = Demo {
                slug,
                settings,
                seed,
            };
            book.append(&demo).await?
        }
    };
    match (actor, founder) {
        (_, Founder::Invited(secret)) => {
            let role = Role::Steward;
            members::write_invitation(&mut book, role, secret).await?;
        }
        (Some(person), _) => members::join(&mut book, person, Role::Steward, None).await?,
        (None, _) => return Err(Error::fault("a room without a founder")),
    }
    for starter in starters {
        starter(&mut book).await?;
    }
    Ok(())
}

/// Changes the room's settings, all of them at once.
///
/// # Errors
/// What is wrong with them.
pub async fn change_settings(
    app: &App,
    permit: &Permit<KeepRoom>,
    key: Key,
    settings: Settings,
) -> Result<Done> {
    let settings = read::check(settings).map_err(Error::Invalid)?;
    let done = permit
        .write(app, key, &settings.clone(), move |book| {
            Box::pin(async move {
                book.append(&RoomSettingsChanged { settings }).await?;
                Ok(())
            })
        })
        .await?;
    app.sessions().forget_room(permit.room());
    Ok(done)
}

/// Closes a room, or opens it again: the machine's work, not a steward's.
///
/// # Errors
/// That it is closed, or open, already.
pub async fn set_closed(app: &App, room: Uuid, closed: bool) -> Result<Done> {
    let asked = Asked {
        actor: None,
        key: None,
        fingerprint: fingerprint("close_room", &closed)?,
    };
    let done = app
        .scribes()
        .write(room, Author::Unchecked, asked, move |book| {
            Box::pin(async move {
                if store::is_closed(book.tx()).await? == closed {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                match closed {
                    true => book.append(&RoomClosed {}).await?,
                    false => book.append(&RoomReopened {}).await?,
                };
                Ok(())
            })
        })
        .await?;
    app.sessions().forget_room(room);
    Ok(done)
}
