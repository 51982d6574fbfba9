//! The pages by which a steward adds, changes and retires topics.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewTopic, copy_starter, set_topic};
use super::form::{of_new, of_topic, read_topic};
use super::pages::{Ground, shell};
use super::views::{TopicForm, TopicFormPage};
use super::{Topic, Trait};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::KeepTopics;
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::topics as words;

const TOPICS: &str = "/rooms/{room}/topics";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{TOPICS}{path}");
    Pages::new()
        .post(&at("/starter"), copy)
        .get(&at("/new"), new_form)
        .post(TOPICS, add)
        .get(&at("/{topic}/change"), form)
        .post(&at("/{topic}/change"), change)
        .get(&at("/{topic}/retire"), ask_first)
        .post(&at("/{topic}/retire"), retire)
        .post(&at("/{topic}/restore"), restore)
}

async fn copy(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    copy_starter(&app, &permit, read_key(&form.key)?, ()).await?;
    Ok(on_to(&app, &permit, "/topics"))
}

/// The form of a topic, or of a new one where there is none yet.
fn form_page(
    permit: &Permit<KeepTopics>,
    frame: &Frame,
    (ground, topic): (&Ground, Option<&Topic>),
    (form, problems): (TopicForm, &Problems),
) -> TopicFormPage {
    let path = topic.map_or_else(
        || "/topics/new".to_owned(),
        |topic| format!("/topics/{}/change", topic.id),
    );
    let chosen = |id: &str| form.products.iter().any(|each| each == id);
    let products = ground
        .products
        .iter()
        .map(|each| (each, each.id.to_string()));
    let products = products.filter(|(each, id)| !each.is_retired || chosen(id));
    TopicFormPage {
        shell: shell(permit, frame, &path),
        id: topic.map(|topic| topic.id.to_string()),
        when: words::when(),
        traits: Trait::ALL.into_iter().map(trait_choice).collect(),
        products: products
            .map(|(each, id)| Choice::new(id, each.name.clone()))
            .collect(),
        again: words::again(),
        problems: in_words(problems, ground.settings.numbers()),
        form,
    }
}

fn trait_choice(each: Trait) -> Choice {
    Choice::new(each.as_str(), words::trait_name(each)).explained(words::trait_hint(each))
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    frame: Frame,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let shown = (of_new(new_key()?), &Problems::default());
    page(&form_page(&permit, &frame, (&ground, None), shown))
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<KeepTopics>,
    (ground, old): (&Ground, Option<&Topic>),
    form: &TopicForm,
) -> Result<Done> {
    let new = read_topic(form, old, ground.settings.numbers()).map_err(Error::Invalid)?;
    set_topic(app, permit, read_key(&form.key)?, new).await
}

fn to_topic(app: &App, permit: &Permit<KeepTopics>, id: Uuid) -> Response {
    on_to(app, permit, &format!("/topics/{id}"))
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    frame: Frame,
    Form(form): Form<TopicForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, (&ground, None), &form).await {
        Ok(done) => Ok(to_topic(&app, &permit, done.id("topic")?)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&permit, &frame, (&ground, None), shown))
        }
    }
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let topic = ground.topic(id)?;
    let shown = (of_topic(topic, new_key()?), &Problems::default());
    page(&form_page(&permit, &frame, (&ground, Some(topic)), shown))
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<TopicForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let of = (&ground, Some(ground.topic(id)?));
    match set_as_typed(&app, &permit, of, &form).await {
        Ok(_) => Ok(to_topic(&app, &permit, id)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&permit, &frame, of, shown))
        }
    }
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire(&ground.topic(id)?.title);
    let here = format!("/topics/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, true).await
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepTopics>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, false).await
}

async fn set_retired(
    app: &App,
    permit: &Permit<KeepTopics>,
    id: Uuid,
    form: &KeyForm,
    is_retired: bool,
) -> Result<Response> {
    let ground = Ground::read(app, permit).await?;
    let new = NewTopic::like(ground.topic(id)?, is_retired);
    set_topic(app, permit, read_key(&form.key)?, new).await?;
    Ok(on_to(app, permit, "/topics"))
}
