//! The topics, and one of them with the versions of its text.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use uuid::Uuid;

use super::input::paragraphs;
use super::views::{TopicPage, TopicRow, TopicsPage, VersionRow};
use super::{Required, Topic, TopicVersion, keep_pages, starter, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::products::{self, Product};
use crate::rights::{KeepTopics, Right, SeeTopics};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{RetiredRow, lying_at};
use crate::web::forms::{new_key, page};
use crate::web::frame::Frame;
use crate::web::messages::topics as words;
use crate::web::shell::{Place, Shell};

const TOPICS: &str = "/rooms/{room}/topics";
const TOPIC: &str = "/rooms/{room}/topics/{topic}";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(TOPICS, list)
        .and(keep_pages::pages())
        .get(TOPIC, one)
}

/// Everything the pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) topics: Vec<Topic>,
    pub(super) products: Vec<Product>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        topics: store::topics(tx).await?,
                        products: products::products(tx).await?,
                    })
                })
            })
            .await
    }

    pub(super) fn topic(&self, id: Uuid) -> Result<&Topic> {
        let mut topics = self.topics.iter();
        topics.find(|topic| topic.id == id).ok_or(Error::NotFound)
    }

    /// Of whom a topic is required, in words.
    fn required(&self, topic: &Topic) -> String {
        match &topic.required {
            Required::ByProduct(ids) => {
                let named = self
                    .products
                    .iter()
                    .filter(|product| ids.contains(&product.id));
                let names: Vec<&str> = named.map(|product| product.name.as_str()).collect();
                words::by_products(&names)
            }
            Required::ByTrait(traits) => words::by_traits(traits),
            Required::Always => words::ALWAYS.to_owned(),
            Required::Offered => words::OFFERED.to_owned(),
        }
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Topics)), path)
}

fn may_keep<R: Right>(permit: &Permit<R>) -> bool {
    KeepTopics::ROW.roles.contains(&permit.role())
}

async fn list(State(app): State<App>, permit: Permit<SeeTopics>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let (retired, in_use): (Vec<&Topic>, Vec<&Topic>) =
        ground.topics.iter().partition(|topic| topic.is_retired);
    page(&TopicsPage {
        shell: shell(&permit, &frame, "/topics"),
        topics: in_use
            .into_iter()
            .map(|topic| row(topic, &ground))
            .collect(),
        retired: retired.into_iter().map(retired_row).collect(),
        starters: starter::missing(&ground.topics).len(),
        key: new_key()?,
        may_keep: may_keep(&permit),
    })
}

fn row(topic: &Topic, ground: &Ground) -> TopicRow {
    TopicRow {
        id: topic.id.to_string(),
        title: topic.title.clone(),
        required: ground.required(topic),
        about: words::about(topic.version, topic.counts_from_version, topic.good_months),
    }
}

fn retired_row(topic: &Topic) -> RetiredRow {
    RetiredRow {
        name: topic.title.clone(),
        restore: format!("/topics/{}/restore", topic.id),
    }
}

/// Which version of a text is asked for.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Which {
    version: Option<i32>,
}

async fn one(
    State(app): State<App>,
    permit: Permit<SeeTopics>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(Which { version }): Query<Which>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let versions = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(store::versions(tx, id)));
    let versions = versions.await?;
    let topic = ground.topic(id)?;
    let asked = version.unwrap_or(topic.version);
    let shown = versions.iter().find(|each| each.version == asked);
    let shown = shown.ok_or(Error::NotFound)?;
    page(&topic_page(
        &permit,
        &frame,
        (&ground, topic),
        (shown, &versions),
    )?)
}

fn topic_page(
    permit: &Permit<SeeTopics>,
    frame: &Frame,
    (ground, topic): (&Ground, &Topic),
    (shown, versions): (&TopicVersion, &[TopicVersion]),
) -> Result<TopicPage> {
    let zone = ground.settings.time_zone()?;
    let row = |each: &TopicVersion| VersionRow {
        version: each.version,
        title: each.title.clone(),
        at: zone.minute_in_full(each.set_at),
        seq: each.set_seq,
    };
    let texts = paragraphs(&shown.body);
    Ok(TopicPage {
        shell: shell(permit, frame, &format!("/topics/{}", topic.id)),
        id: topic.id.to_string(),
        title: shown.title.clone(),
        paragraphs: texts.map(str::to_owned).collect(),
        version: shown.version,
        is_last: shown.version == topic.version,
        required: ground.required(topic),
        about: words::about(topic.version, topic.counts_from_version, topic.good_months),
        is_retired: topic.is_retired,
        versions: versions.iter().map(row).collect(),
        may_keep: may_keep(permit),
    })
}
