//! Reading whole books, as they are stored.

pub(super) mod store;

pub use store::EntryRow;

use uuid::Uuid;

use crate::database::Owner;
use crate::error::{Error, Result};

/// Entries read at a time.
pub(super) const PAGE: i64 = 500;

/// The room of a short name.
///
/// # Errors
/// [`Error::NotFound`] where there is none.
pub async fn room_of(owner: &Owner, slug: &str) -> Result<Uuid> {
    let slug = slug.to_owned();
    owner
        .reading(move |tx| Box::pin(async move { store::room_of(tx, &slug).await }))
        .await?
        .ok_or(Error::NotFound)
}
