//! What a steward does with topics.

use std::collections::BTreeSet;

use serde::Serialize;
use uuid::Uuid;

use super::input::GOOD_MONTHS;
use super::{Required, Topic, TopicSet, starter, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::products;
use crate::rights::KeepTopics;

/// So many topics a room keeps at most.
const MOST: usize = 100;

/// A topic as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewTopic {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What it is about.
    pub title: String,
    /// What is to be known.
    pub body: String,
    /// Of whom it is required.
    pub required: Required,
    /// So many months an induction on it is good; nothing for one without end.
    pub good_months: Option<i32>,
    /// Whether a new text asks everyone anew, or only on renewal.
    pub asks_anew: bool,
    /// Whether nobody is inducted on it any more.
    pub is_retired: bool,
}

impl NewTopic {
    /// A topic as it is, required no more or again.
    #[must_use]
    pub fn like(topic: &Topic, is_retired: bool) -> Self {
        Self {
            id: Some(topic.id),
            title: topic.title.clone(),
            body: topic.body.clone(),
            required: topic.required.clone(),
            good_months: topic.good_months,
            asks_anew: false,
            is_retired,
        }
    }

    fn settled(self, id: Uuid, old: Option<&Topic>) -> TopicSet {
        let is_same = |old: &&Topic| old.title == self.title && old.body == self.body;
        let version = match old.filter(is_same) {
            Some(old) => old.version,
            None => old.map_or(1, |old| old.version + 1),
        };
        let counts_from_version = match old {
            Some(old) if old.version == version || !self.asks_anew => old.counts_from_version,
            _ => version,
        };
        TopicSet {
            id,
            version,
            counts_from_version,
            title: self.title,
            body: self.body,
            required: self.required,
            good_months: self.good_months,
            is_retired: self.is_retired,
        }
    }
}

/// Adds or changes a topic; another title or text is its next version.
///
/// # Errors
/// A title that is taken; no trait or no product where it is required by one; too many.
pub async fn set_topic(
    app: &App,
    permit: &Permit<KeepTopics>,
    key: Key,
    new: NewTopic,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_topic(book, new).await })
        })
        .await
}

async fn write_topic(book: &mut Book<'_>, new: NewTopic) -> Result<()> {
    let there = store::topics(book.tx()).await?;
    let mut others = there.iter().filter(|other| Some(other.id) != new.id);
    if others.any(|other| other.title == new.title) {
        return Err(Error::field("title", Problem::NameTaken));
    }
    let old = match new.id {
        Some(id) => Some(find(&there, id)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    check(book, &new.required).await?;
    let id = old.map_or_else(|| book.new_id(), |old| old.id);
    book.append(&new.settled(id, old)).await?;
    inductions::tell_supplements(book).await
}

fn find(topics: &[Topic], id: Uuid) -> Result<&Topic> {
    let mut topics = topics.iter();
    topics.find(|topic| topic.id == id).ok_or(Error::NotFound)
}

async fn check(book: &mut Book<'_>, required: &Required) -> Result<()> {
    match required {
        Required::ByTrait(traits) if traits.is_empty() => {
            Err(Error::field("traits", Problem::Missing))
        }
        Required::ByProduct(wanted) if wanted.is_empty() => {
            Err(Error::field("products", Problem::Missing))
        }
        Required::ByTrait(traits) if has_twice(traits) => {
            Err(Error::field("traits", Problem::Twice))
        }
        Required::ByProduct(wanted) if has_twice(wanted) => {
            Err(Error::field("products", Problem::Twice))
        }
        Required::ByProduct(wanted) => {
            let there = products::products(book.tx()).await?;
            let is_there = |id: &Uuid| there.iter().any(|product| product.id == *id);
            match wanted.iter().all(is_there) {
                true => Ok(()),
                false => Err(Error::field("products", Problem::NotAChoice)),
            }
        }
        Required::ByTrait(_) | Required::Always | Required::Offered => Ok(()),
    }
}

fn has_twice<T: Ord>(all: &[T]) -> bool {
    all.iter().collect::<BTreeSet<_>>().len() < all.len()
}

/// Copies the starter set in, as far as its titles are not there.
///
/// # Errors
/// All of them are there already.
pub async fn copy_starter(app: &App, permit: &Permit<KeepTopics>, key: Key, _: ()) -> Result<Done> {
    permit
        .write(app, key, &"starter", |book| Box::pin(write_starter(book)))
        .await
}

async fn write_starter(book: &mut Book<'_>) -> Result<()> {
    let there = store::topics(book.tx()).await?;
    let missing = starter::missing(&there);
    if missing.is_empty() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    for topic in missing {
        let new = NewTopic {
            id: None,
            title: topic.title.to_owned(),
            body: topic.body.to_owned(),
            required: topic.required(),
            good_months: Some(GOOD_MONTHS),
            asks_anew: true,
            is_retired: false,
        };
        let id = book.new_id();
        book.append(&new.settled(id, None)).await?;
    }
    inductions::tell_supplements(book).await
}
