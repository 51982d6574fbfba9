//! A person's standing in rooms.

use uuid::Uuid;

use super::Membership;
use super::store;
use crate::app::App;
use crate::error::Result;

/// The person's standing in the room of this short name, if they have one now.
///
/// # Errors
/// That the database is away.
pub async fn find(app: &App, person: Uuid, slug: &str) -> Result<Option<Membership>> {
    app.sessions().cache.standing(app, person, slug).await
}

/// All rooms the person may enter now, by name.
///
/// # Errors
/// That the database is away.
pub async fn all(app: &App, person: Uuid) -> Result<Vec<Membership>> {
    app.database()
        .as_person(person, move |tx| {
            Box::pin(async move { store::memberships(tx, person).await })
        })
        .await
}

/// All rooms the person belongs to, suspended or not, by name; each with whether
/// they are suspended there.
///
/// # Errors
/// That the database is away.
pub async fn all_shown(app: &App, person: Uuid) -> Result<Vec<(Membership, bool)>> {
    app.database()
        .as_person(person, move |tx| {
            Box::pin(async move { store::every_room(tx, person).await })
        })
        .await
}
