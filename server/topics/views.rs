//! The pages of topics.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A topic in the list.
#[derive(Debug, Clone)]
pub struct TopicRow {
    /// Its id, for links.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Of whom it is required, one line.
    pub required: String,
    /// Its version, and how long an induction on it is good.
    pub about: String,
}

/// The topics. A new one is asked for at `/topics/new`; the starter set is copied by
/// `POST /topics/starter`.
#[derive(Debug, Clone, Template)]
#[template(path = "topics/topics.html")]
pub struct TopicsPage {
    /// The frame.
    pub shell: Shell,
    /// Those in use, by title.
    pub topics: Vec<TopicRow>,
    /// Those that are not.
    pub retired: Vec<RetiredRow>,
    /// So many topics of the starter set are not there.
    pub starters: usize,
    /// Idempotency key of the buttons.
    pub key: String,
    /// May this reader change topics?
    pub may_keep: bool,
}

/// A version in a topic's history.
#[derive(Debug, Clone)]
pub struct VersionRow {
    /// Which.
    pub version: i32,
    /// Its title then.
    pub title: String,
    /// When it was set.
    pub at: Moment,
    /// The number of its entry.
    pub seq: i64,
}

/// One topic: a text, and what came before it. `?version=1` shows an older one.
#[derive(Debug, Clone, Template)]
#[template(path = "topics/topic.html")]
pub struct TopicPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its title in this version.
    pub title: String,
    /// The paragraphs of this version.
    pub paragraphs: Vec<String>,
    /// Which version is shown.
    pub version: i32,
    /// Whether that is the last one.
    pub is_last: bool,
    /// Of whom it is required, one line.
    pub required: String,
    /// How long an induction on it is good, and on which versions.
    pub about: String,
    /// Whether nobody is inducted on it any more.
    pub is_retired: bool,
    /// Every version, the last first.
    pub versions: Vec<VersionRow>,
    /// May this reader change it?
    pub may_keep: bool,
}

/// A topic as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct TopicForm {
    /// Idempotency key.
    pub key: String,
    /// Its title.
    pub title: String,
    /// Its text.
    pub body: String,
    /// `always`, `by_trait`, `by_product` or `offered`.
    pub required: String,
    /// The traits that ask for it.
    pub traits: Vec<String>,
    /// The ids of the products that ask for it.
    pub products: Vec<String>,
    /// Months an induction is good; empty for one without end.
    pub months: String,
    /// `anew` or `on_renewal`.
    pub again: String,
}

/// A topic to be added or changed: posts to `/topics` or `/topics/{id}/change`.
#[derive(Debug, Clone, Template)]
#[template(path = "topics/change.html")]
pub struct TopicFormPage {
    /// The frame.
    pub shell: Shell,
    /// Its id; nothing for a new one.
    pub id: Option<String>,
    /// Of whom it may be required.
    pub when: Vec<Choice>,
    /// The traits that may ask for it.
    pub traits: Vec<Choice>,
    /// The products that may ask for it.
    pub products: Vec<Choice>,
    /// What a new text may ask for.
    pub again: Vec<Choice>,
    /// As typed.
    pub form: TopicForm,
    /// What to mend.
    pub problems: Problems,
}
