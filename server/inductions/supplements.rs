//! What people who are inducted are to be told besides, before a product is opened.

use uuid::Uuid;

use super::in_force::InForce;
use super::standing::Standing;
use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Book;
use crate::notices::{self, Notice};
use crate::products::{self, Product};
use crate::rooms;
use crate::topics::{self, Required, Topic, traits_of};

/// A topic that a product asks for, and the inducted people who were never told it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Supplement {
    /// The product.
    pub product_id: Uuid,
    /// Its name.
    pub product: String,
    /// The topic.
    pub topic_id: Uuid,
    /// Its title.
    pub topic: String,
    /// Which version of it counts.
    pub counts_from_version: i32,
    /// Whom to tell, by number: who, and their name.
    pub people: Vec<(Uuid, String)>,
}

/// Every supplement of products in use, by product and topic.
///
/// # Errors
/// The database's.
pub async fn supplements(tx: &mut RoomTx, today: &str) -> Result<Vec<Supplement>> {
    let mut products = products::products(tx).await?;
    products.retain(|product| !product.is_retired);
    due_for(tx, &products, today).await
}

/// The supplements of one product.
///
/// # Errors
/// The database's.
pub async fn supplements_of(
    tx: &mut RoomTx,
    product: &Product,
    today: &str,
) -> Result<Vec<Supplement>> {
    match product.is_retired {
        true => Ok(Vec::new()),
        false => due_for(tx, std::slice::from_ref(product), today).await,
    }
}

async fn due_for(tx: &mut RoomTx, products: &[Product], today: &str) -> Result<Vec<Supplement>> {
    let in_force = InForce::read(tx, today).await?;
    let people: Vec<Known<'_>> = in_force
        .members
        .iter()
        .map(|member| Known {
            who: (member.person, member.name.clone()),
            standings: in_force.of(member.person),
        })
        .filter(Known::is_inducted)
        .collect();
    let due = products.iter().flat_map(|product| {
        let topics = in_force.topics.iter();
        let asked = topics.filter(move |topic| asks_for(product, topic));
        asked.map(move |topic| (product, topic))
    });
    Ok(due
        .map(|(product, topic)| supplement(product, topic, &people))
        .filter(|supplement| !supplement.people.is_empty())
        .collect())
}

/// Somebody and what they know.
struct Known<'f> {
    who: (Uuid, String),
    standings: Vec<(&'f Topic, Standing)>,
}

impl Known<'_> {
    fn is_inducted(&self) -> bool {
        self.standings.iter().any(|(_, standing)| standing.holds())
    }

    fn was_never_told(&self, topic: &Topic) -> bool {
        let mut standings = self.standings.iter();
        standings.any(|(each, standing)| each.id == topic.id && standing.is_new())
    }
}

fn asks_for(product: &Product, topic: &Topic) -> bool {
    match &topic.required {
        Required::ByTrait(wanted) => {
            let traits = traits_of(product);
            wanted.iter().any(|each| traits.contains(each))
        }
        Required::ByProduct(ids) => ids.contains(&product.id),
        Required::Always | Required::Offered => false,
    }
}

fn supplement(product: &Product, topic: &Topic, people: &[Known<'_>]) -> Supplement {
    let untold = people.iter().filter(|each| each.was_never_told(topic));
    Supplement {
        product_id: product.id,
        product: product.name.clone(),
        topic_id: topic.id,
        topic: topic.title.clone(),
        counts_from_version: topic.counts_from_version,
        people: untold.map(|each| each.who.clone()).collect(),
    }
}

/// Tells stewards of each supplement once, as of what was just written: in the
/// transaction that gives the reason for it.
///
/// # Errors
/// The database's.
pub async fn tell_supplements(book: &mut Book<'_>) -> Result<()> {
    let now = book.now();
    let tx = book.tx();
    if topics::topics(tx).await?.is_empty() {
        return Ok(());
    }
    let today = rooms::settings(tx).await?.time_zone()?.date_value(now);
    for due in supplements(tx, &today).await? {
        let topic = (due.topic_id, due.counts_from_version);
        if store::first_told_supplement(tx, due.product_id, topic, now).await? {
            let notice = Notice::SupplementDue {
                product: due.product_id,
                name: due.product,
                topic: due.topic,
                people: i64::try_from(due.people.len()).unwrap_or(i64::MAX),
            };
            notices::tell_stewards(tx, now, &notice).await?;
        }
    }
    Ok(())
}
