//! Telling people and stewards that an induction ends soon: each end once.

use time::OffsetDateTime;

use super::in_force::InForce;
use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::members::Member;
use crate::notices::{self, Notice};
use crate::rooms;
use crate::topics;

/// Tells whoever's induction ends within thirty days, and stewards.
///
/// # Errors
/// The database's.
pub async fn tell_due(tx: &mut RoomTx, now: OffsetDateTime) -> Result<()> {
    if topics::topics(tx).await?.is_empty() {
        return Ok(());
    }
    let today = rooms::settings(tx).await?.time_zone()?.date_value(now);
    let in_force = InForce::read(tx, &today).await?;
    for member in &in_force.members {
        let mut ends: Vec<(String, String)> = Vec::new();
        for (topic, standing) in in_force.of(member.person) {
            let Some(last) = in_force.ends_soon(&standing) else {
                continue;
            };
            if store::first_told_end(tx, (member.person, topic.id), last, now).await? {
                ends.push((last.to_owned(), topic.title.clone()));
            }
        }
        tell(tx, now, member, ends).await?;
    }
    Ok(())
}

/// One notice for all that ends soon, with the first day on which something does.
async fn tell(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    member: &Member,
    ends: Vec<(String, String)>,
) -> Result<()> {
    let Some(first) = ends.iter().map(|(last, _)| last.clone()).min() else {
        return Ok(());
    };
    let topics: Vec<String> = ends.into_iter().map(|(_, title)| title).collect();
    let own = Notice::InductionEnds {
        topics: topics.clone(),
        first: first.clone(),
    };
    notices::tell(tx, now, member.person, &own).await?;
    let notice = Notice::InductionOfEnds {
        person: member.person,
        name: member.name.clone(),
        topics,
        first,
    };
    notices::tell_stewards(tx, now, &notice).await
}
