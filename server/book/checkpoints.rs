//! Sealing a book: signed marks of how it stood, outside the database.

use uuid::Uuid;

use crate::app::App;
use crate::clock::micros;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::checkpoint::{Checkpoint, Shelf};
use crate::logbook::reading;
use crate::logbook::vault::VaultError;
use crate::rights::{ReadBook, SealBook};

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
    blocking(move || vault.seal(room, head, at_us)).await
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
    blocking(move || vault.shelf(room)).await
}

/// The key that this installation signs with, once it has one.
///
/// # Errors
/// A key that cannot be used.
pub async fn public_key(app: &App) -> Result<Option<[u8; 32]>> {
    let vault = app.vault();
    blocking(move || vault.public_key()).await
}

async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, VaultError> + Send + 'static,
) -> Result<T> {
    match tokio::task::spawn_blocking(work).await {
        Ok(answer) => answer.map_err(|cause| Error::Internal(cause.into())),
        Err(ended) => Err(Error::fault(ended.to_string())),
    }
}
