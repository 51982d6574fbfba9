//! Topics as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewTopic};
use super::input::{self, GOOD_MONTHS};
use super::store;
use super::{Required, Topic, Trait};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::name;
use crate::problem::Problems;
use crate::rights::{KeepTopics, SeeTopics};

const TOPICS: &str = "/rooms/{room}/topics";
const TOPIC: &str = "/rooms/{room}/topics/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(TOPICS, "Topics by title, retired ones last.", list),
        Route::one(TOPIC, "One topic, with the text of its last version.", one),
        Route::add(TOPICS, "Add a topic.", add),
        Route::change(
            TOPIC,
            "Set a topic; another title or text is its next version.",
            change,
        ),
    ]
}

/// Of whom a topic is required.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum RequiredWhen {
    /// Of everyone who comes in.
    Always,
    /// While something with one of its traits is in a tray or stands there.
    ByTrait,
    /// While one of its products is in a tray.
    ByProduct,
    /// Of nobody: it is there to be asked for.
    Offered,
}

/// What somebody must know.
#[derive(Debug, Serialize, ToSchema)]
pub struct TopicOut {
    /// Which.
    pub id: Uuid,
    /// Counts the changes of its text.
    pub version: i32,
    /// Inductions on an earlier version count no more.
    pub counts_from_version: i32,
    /// What it is about.
    pub title: String,
    /// What is to be known: paragraphs, with empty lines between them.
    pub body: String,
    /// Of whom it is required.
    pub required: RequiredWhen,
    /// The traits that ask for it, where it is required by trait.
    pub traits: Vec<Trait>,
    /// The products that ask for it, where it is required by product.
    pub product_ids: Vec<Uuid>,
    /// So many months an induction on it is good; nothing for one without end.
    pub good_months: Option<i32>,
    /// Whether nobody is inducted on it any more.
    pub is_retired: bool,
}

impl From<Topic> for TopicOut {
    fn from(topic: Topic) -> Self {
        let (required, traits, product_ids) = match topic.required {
            Required::Always => (RequiredWhen::Always, Vec::new(), Vec::new()),
            Required::ByTrait(traits) => (RequiredWhen::ByTrait, traits, Vec::new()),
            Required::ByProduct(ids) => (RequiredWhen::ByProduct, Vec::new(), ids),
            Required::Offered => (RequiredWhen::Offered, Vec::new(), Vec::new()),
        };
        Self {
            id: topic.id,
            version: topic.version,
            counts_from_version: topic.counts_from_version,
            title: topic.title,
            body: topic.body,
            required,
            traits,
            product_ids,
            good_months: topic.good_months,
            is_retired: topic.is_retired,
        }
    }
}

async fn all(by: &By<SeeTopics>) -> Result<Vec<Topic>> {
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(store::topics(tx)));
    all.await
}

async fn list(by: By<SeeTopics>, paging: Paging) -> Result<Page<TopicOut>> {
    let all = all(&by).await?.into_iter().map(TopicOut::from).collect();
    paging.cut(all, |topic: &TopicOut| topic.id.to_string())
}

async fn one(by: By<SeeTopics>, id: Uuid) -> Result<TopicOut> {
    let mut all = all(&by).await?.into_iter();
    let found = all.find(|topic| topic.id == id);
    found.map(TopicOut::from).ok_or(Error::NotFound)
}

/// A topic to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TopicIn {
    /// What it is about.
    #[schema(max_length = 80)]
    pub title: String,
    /// What is to be known: paragraphs, with empty lines between them.
    #[schema(max_length = 6_000)]
    pub body: String,
    /// Of whom it is required.
    pub required: RequiredWhen,
    /// The traits that ask for it, where it is required by trait.
    #[serde(default)]
    pub traits: Vec<Trait>,
    /// The products that ask for it, where it is required by product.
    #[serde(default)]
    pub product_ids: Vec<Uuid>,
    /// So many months an induction on it is good; null for one without end.
    #[serde(default = "usual_months")]
    #[schema(minimum = 1, maximum = 120)]
    pub good_months: Option<i64>,
    /// Whether a new text asks everyone anew, or only on renewal.
    #[serde(default)]
    pub asks_anew: bool,
    /// Whether nobody is inducted on it any more.
    #[serde(default)]
    pub is_retired: bool,
}

fn usual_months() -> Option<i64> {
    Some(GOOD_MONTHS.into())
}

impl Input for TopicIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("products", "product_ids")];
}

impl TopicIn {
    fn read(self, id: Option<Uuid>) -> Result<NewTopic> {
        let mut problems = Problems::default();
        let title = problems.take("title", name(&self.title));
        let body = problems.take("body", input::body(&self.body));
        let months = self.good_months.map(input::months).transpose();
        let months = problems.take("good_months", months);
        let required = match self.required {
            RequiredWhen::Always => Required::Always,
            RequiredWhen::ByTrait => Required::ByTrait(self.traits),
            RequiredWhen::ByProduct => Required::ByProduct(self.product_ids),
            RequiredWhen::Offered => Required::Offered,
        };
        match (title, body, months) {
            (Some(title), Some(body), Some(good_months)) => Ok(NewTopic {
                id,
                title,
                body,
                required,
                good_months,
                asks_anew: self.asks_anew,
                is_retired: self.is_retired,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<KeepTopics>, topic: TopicIn) -> Result<Made> {
    set(by, topic.read(None)?).await
}

async fn change(by: Writing<KeepTopics>, id: Uuid, topic: TopicIn) -> Result<Made> {
    set(by, topic.read(Some(id))?).await
}

async fn set(by: Writing<KeepTopics>, new: NewTopic) -> Result<Made> {
    let done = actions::set_topic(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "topic", "topics")
}
