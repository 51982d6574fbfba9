//! Sealing a book: signed marks of how it stood, outside the database.

use crate::app::App;
use crate::clock::micros;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::chain::Head;
use crate::logbook::checkpoint::{self, Checkpoint, Shelf, Signer};
use crate::logbook::keys::{Key, KeyError};
use crate::logbook::reading;
use crate::logbook::verify::Vault;
use crate::rights::{ReadBook, SealBook};
use uuid::Uuid;

/// Seals the room's book as it now stands.
///
/// # Errors
/// A key or a folder that cannot be used; that the database is away.
pub async fn seal(app: &App, room: Uuid) -> Result<Checkpoint> {
    // The time is taken first: every entry behind the mark is recorded after it.
    let at_us = micros(app.clock().now());
    let scope = Scope { room, person: None };
    let head = app
        .database()
        .reading(scope, |tx| Box::pin(reading::head(tx)))
        .await?;
    let vault = app.vault();
    blocking(move || sign(&vault, room, head, at_us)).await
}

/// Seals the book now, for somebody who may ask for it.
///
/// # Errors
/// As [`seal`].
pub async fn seal_now(app: &App, permit: &Permit<SealBook>) -> Result<Checkpoint> {
    seal(app, permit.room()).await
}

/// The room's checkpoints, for whoever may read the book.
///
/// # Errors
/// A key or a folder that cannot be used.
pub async fn list(app: &App, permit: &Permit<ReadBook>) -> Result<Shelf> {
    shelf(app, permit.room()).await
}

/// The room's checkpoints and the lines that do not count.
///
/// # Errors
/// A key or a folder that cannot be used.
pub async fn shelf(app: &App, room: Uuid) -> Result<Shelf> {
    let vault = app.vault();
    blocking(move || read(&vault, room)).await
}

fn sign(vault: &Vault, room: Uuid, head: Head, at_us: i64) -> Result<Checkpoint> {
    let key = Key::read_or_create(&vault.key_path()).map_err(fault)?;
    let signed = Signer::new(&key).sign(room, head, at_us).map_err(fault)?;
    checkpoint::append(&vault.data, &signed).map_err(fault)?;
    Ok(signed)
}

fn read(vault: &Vault, room: Uuid) -> Result<Shelf> {
    let key = match Key::read(&vault.key_path()) {
        // No key was ever needed: nothing was sealed.
        Err(KeyError::Absent { .. }) if !checkpoint::path(&vault.data, room).exists() => {
            return Ok(Shelf::default());
        }
        answer => answer.map_err(fault)?,
    };
    let public_key = Signer::new(&key).public_key();
    checkpoint::read(&vault.data, room, &public_key).map_err(fault)
}

fn fault(cause: impl std::error::Error + Send + Sync + 'static) -> Error {
    Error::Internal(cause.into())
}

async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T> + Send + 'static,
) -> Result<T> {
    match tokio::task::spawn_blocking(work).await {
        Ok(answer) => answer,
        Err(ended) => Err(Error::fault(ended.to_string())),
    }
}
