//! One-time links: a room's first day, an invitation, a new password.
//!
//! A link holds 256 random bits, the database their hash. Looking at one changes
//! nothing; using it up is one update that compares, so of two at once one wins.
//! A link is good for 24 hours, a set-up link until the first room is there.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::accounts;
use super::passwords::Password;
use super::secret::Secret;
use super::sessions;
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::rights::Role;

pub(super) mod store;

/// How long an invitation and a link for a new password are good.
pub const GOOD_FOR: Duration = Duration::hours(24);

/// What a link is for.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Kind {
    /// The first room and its first steward.
    SetUp,
    /// Becoming a member of a room.
    Join,
    /// A new password.
    Reset,
}

impl Kind {
    /// The kind as the database writes it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::SetUp => "set_up",
            Self::Join => "join",
            Self::Reset => "reset",
        }
    }

    fn path(self) -> &'static str {
        match self {
            Self::SetUp => "/set-up/",
            Self::Join => "/join/",
            Self::Reset => "/reset/",
        }
    }
}

/// The whole address of a link, to be handed over once.
#[must_use]
pub fn address(app: &App, kind: Kind, secret: &Secret) -> String {
    app.address()
        .absolute(&format!("{}{}", kind.path(), secret.reveal()))
}

/// A link that is still good.
#[derive(Clone, Debug)]
pub struct Link {
    /// Which.
    pub id: Uuid,
    /// The room it leads into.
    pub room: Option<Uuid>,
    /// That room's name.
    pub room_name: Option<String>,
    /// That room's short name.
    pub slug: Option<String>,
    /// What its user becomes there.
    pub role: Option<Role>,
    /// Whose password it changes.
    pub person: Option<Uuid>,
    /// That person's name.
    pub person_name: Option<String>,
    /// That person's log-in name.
    pub log_in_name: Option<String>,
    /// Who made it; nobody for the machine.
    pub made_by: Option<Uuid>,
    /// When it ends.
    pub expires_at: Option<OffsetDateTime>,
}

/// A link as the members page lists it: open, without its secret.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct OpenLink {
    /// Which.
    pub id: Uuid,
    /// Whether it is for a new password rather than an invitation.
    pub is_reset: bool,
    /// What its user becomes.
    pub role: Option<Role>,
    /// Whose password it changes, by name.
    pub person_name: Option<String>,
    /// Who made it, by name; nobody for the machine.
    pub made_by: Option<String>,
    /// When it was made.
    pub made_at: OffsetDateTime,
    /// When it ends.
    pub expires_at: Option<OffsetDateTime>,
}

/// A link about to be written down.
#[derive(Clone, Debug)]
pub struct NewLink {
    /// Which.
    pub id: Uuid,
    /// What for.
    pub kind: Kind,
    /// The room, where it belongs to one.
    pub room: Option<Uuid>,
    /// What its user becomes there.
    pub role: Option<Role>,
    /// Whose password it changes.
    pub person: Option<Uuid>,
    /// Who makes it; nobody for the machine.
    pub made_by: Option<Uuid>,
    /// When it ends.
    pub expires_at: Option<OffsetDateTime>,
}

impl NewLink {
    /// Writes it down inside a room's transaction.
    ///
    /// # Errors
    /// The database's.
    pub async fn insert(
        &self,
        tx: &mut RoomTx,
        secret: &Secret,
        now: OffsetDateTime,
    ) -> Result<()> {
        store::insert_in_room(tx, self, &secret.hash(), now).await
    }
}

fn dead() -> Error {
    Error::Refused(Problem::LinkDead)
}

/// What a secret leads to. Changes nothing.
///
/// # Errors
/// [`Problem::LinkDead`] where it was used, revoked, is too old or never was.
pub async fn look(app: &App, kind: Kind, secret: &Secret) -> Result<Link> {
    let (hash, now) = (secret.hash(), app.clock().now());
    let link = app
        .database()
        .installation(move |tx| Box::pin(async move { store::find(tx, kind, &hash, now).await }))
        .await?
        .ok_or_else(dead)?;
    if kind == Kind::Reset {
        check_reset(app, &link).await?;
    }
    Ok(link)
}

/// Uses a link up, inside a room's transaction.
///
/// # Errors
/// [`Problem::LinkDead`].
pub async fn use_up(tx: &mut RoomTx, link: Uuid, now: OffsetDateTime) -> Result<()> {
    match store::use_up_in_room(tx, link, now).await? {
        true => Ok(()),
        false => Err(dead()),
    }
}

/// Uses up a set-up link, inside the transaction that makes the first room.
///
/// # Errors
/// [`Problem::LinkDead`], also where there is a room already.
pub async fn use_up_set_up(tx: &mut RoomTx, link: Uuid, now: OffsetDateTime) -> Result<()> {
    use_up(tx, link, now).await?;
    match store::has_room(tx).await? {
        true => Err(dead()),
        false => Ok(()),
    }
}

/// Makes the set-up link anew: earlier ones are dead. Nothing where there is a
/// room already. The caller shows it to whoever started the program.
///
/// # Errors
/// That the database is away.
pub async fn new_set_up(app: &App) -> Result<Option<String>> {
    let secret = Secret::new()?;
    let (hash, now) = (secret.hash(), app.clock().now());
    let made = app
        .database()
        .installation(move |tx| {
            Box::pin(async move { store::renew_set_up(tx, Uuid::now_v7(), &hash, now).await })
        })
        .await?;
    Ok(made.then(|| address(app, Kind::SetUp, &secret)))
}

/// Whether a steward may make a link for a person's new password: all the rooms
/// the person ever entered are rooms that this steward holds, and the person is
/// steward of none of them and no operator. An access that has ended counts too:
/// the account still stands for what the person did there.
///
/// # Errors
/// That the database is away.
pub async fn may_reset(app: &App, steward: Uuid, person: Uuid) -> Result<bool> {
    if steward == person {
        return Ok(false);
    }
    let held = app
        .database()
        .as_person(steward, move |tx| {
            Box::pin(async move { store::stewarded(tx, steward).await })
        })
        .await?;
    let theirs = app
        .database()
        .as_person(person, move |tx| {
            Box::pin(async move { store::every_membership(tx, person).await })
        })
        .await?;
    let within = theirs
        .memberships
        .iter()
        .all(|(room, role)| held.contains(room) && *role != Role::Steward);
    Ok(within && !theirs.is_operator && !theirs.memberships.is_empty())
}

/// A steward's link is good only while the steward could still make it.
async fn check_reset(app: &App, link: &Link) -> Result<()> {
    let (Some(steward), Some(person)) = (link.made_by, link.person) else {
        return Ok(());
    };
    match may_reset(app, steward, person).await? {
        true => Ok(()),
        false => Err(dead()),
    }
}

/// Sets a new password by a link. Every log-in of the person ends, no browser
/// counts as known any more, and other links for their password are dead.
///
/// # Errors
/// [`Problem::LinkDead`]; what is wrong with the password.
pub async fn reset(app: &App, secret: &Secret, typed: &str) -> Result<()> {
    let link = look(app, Kind::Reset, secret).await?;
    let person = link.person.ok_or_else(dead)?;
    let name = link.log_in_name.unwrap_or_default();
    let names = accounts::names_beside(app, person, &name).await?;
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let password =
        Password::choose(typed, &names).map_err(|problem| Error::field("password", problem))?;
    let password_hash = app.entrance().hasher.hash(&password).await?;
    let (id, now) = (link.id, app.clock().now());
    app.database()
        .installation(move |tx| {
            Box::pin(async move {
                if !store::use_up(tx, id, now).await? {
                    return Err(dead());
                }
                store::set_password(tx, person, &password_hash).await?;
                store::revoke_resets(tx, person, now).await?;
                accounts::store::forget_devices(tx, person).await?;
                sessions::store::end_all(tx, person, None).await?;
                Ok(())
            })
        })
        .await?;
    app.sessions().forget_person(person);
    tracing::info!(%person, "a password was set by a link");
    Ok(())
}

/// The open links of a room, the newest first.
///
/// # Errors
/// The database's.
pub async fn open_in(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<OpenLink>> {
    store::open_links(tx, now).await
}

/// Revokes an open link of the room; answers whose password it would have
/// changed, where that was what it was for.
///
/// # Errors
/// [`Error::NotFound`] for a link of another room, [`Problem::LinkDead`] for one
/// that is used or revoked already.
pub async fn revoke(tx: &mut RoomTx, link: Uuid, now: OffsetDateTime) -> Result<Option<Uuid>> {
    if let Some(person) = store::revoke(tx, link, now).await? {
        return Ok(person);
    }
    match store::is_of_room(tx, link).await? {
        true => Err(dead()),
        false => Err(Error::NotFound),
    }
}

/// The open links of the room that a person made.
///
/// # Errors
/// The database's.
pub async fn open_of(tx: &mut RoomTx, maker: Uuid, now: OffsetDateTime) -> Result<Vec<Uuid>> {
    store::open_of(tx, maker, now).await
}

/// Writes down a link that belongs to no room.
///
/// # Errors
/// That the database is away.
pub async fn write(app: &App, link: NewLink, secret: &Secret) -> Result<()> {
    let (hash, now) = (secret.hash(), app.clock().now());
    app.database()
        .installation(move |tx| Box::pin(async move { store::insert(tx, &link, &hash, now).await }))
        .await
}
