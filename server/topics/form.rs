//! The form of a topic, read and filled in.

use super::actions::NewTopic;
use super::input::{self, GOOD_MONTHS};
use super::views::TopicForm;
use super::{Required, Topic, Trait};
use crate::input::name;
use crate::problem::{Problem, Problems};
use crate::web::forms::read_id;
use crate::web::numbers::Numbers;

/// What the form sends where a new text asks everyone anew.
const ANEW: &str = "anew";
/// What it sends where a new text is asked for on renewal only.
const ON_RENEWAL: &str = "on_renewal";

/// The form of a topic that is to be added.
pub(super) fn of_new(key: String) -> TopicForm {
    TopicForm {
        key,
        required: Required::Always.as_str().to_owned(),
        months: GOOD_MONTHS.to_string(),
        again: ANEW.to_owned(),
        ..TopicForm::default()
    }
}

/// The form of a topic as it is.
pub(super) fn of_topic(topic: &Topic, key: String) -> TopicForm {
    let mut form = TopicForm {
        key,
        title: topic.title.clone(),
        body: topic.body.clone(),
        required: topic.required.as_str().to_owned(),
        months: topic
            .good_months
            .map(|months| months.to_string())
            .unwrap_or_default(),
        again: ON_RENEWAL.to_owned(),
        ..TopicForm::default()
    };
    match &topic.required {
        Required::ByTrait(traits) => {
            form.traits = traits.iter().map(|each| each.as_str().to_owned()).collect();
        }
        Required::ByProduct(products) => {
            form.products = products.iter().map(ToString::to_string).collect();
        }
        Required::Always | Required::Offered => {}
    }
    form
}

/// A topic as typed, read; `old` is the one it changes.
pub(super) fn read_topic(
    form: &TopicForm,
    old: Option<&Topic>,
    numbers: Numbers,
) -> Result<NewTopic, Problems> {
    let mut problems = Problems::default();
    let title = problems.take("title", name(&form.title));
    let body = problems.take("body", input::body(&form.body));
    let required = read_required(form, &mut problems);
    let months = problems.take("months", read_months(&form.months, numbers));
    let again = match form.again.as_str() {
        ANEW => Ok(true),
        ON_RENEWAL => Ok(false),
        _ => Err(Problem::NotAChoice),
    };
    let again = problems.take("again", again);
    match (title, body, required, months, again) {
        (Some(title), Some(body), Some(required), Some(good_months), Some(asks_anew)) => {
            Ok(NewTopic {
                id: old.map(|old| old.id),
                title,
                body,
                required,
                good_months,
                asks_anew,
                is_retired: old.is_some_and(|old| old.is_retired),
            })
        }
        _ => Err(problems),
    }
}

fn read_months(typed: &str, numbers: Numbers) -> Result<Option<i32>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => {
            let count = numbers.read_count(typed).map_err(Problem::Number)?;
            input::months(count).map(Some)
        }
    }
}

fn read_required(form: &TopicForm, problems: &mut Problems) -> Option<Required> {
    match form.required.as_str() {
        "always" => Some(Required::Always),
        "offered" => Some(Required::Offered),
        "by_trait" => {
            let traits = form.traits.iter();
            let traits = traits.map(|text| Trait::parse(text).ok_or(Problem::NotAChoice));
            let traits = problems.take("traits", traits.collect());
            traits.map(Required::ByTrait)
        }
        "by_product" => {
            let products = form.products.iter().map(|text| read_id(text));
            let products = problems.take("products", products.collect());
            products.map(Required::ByProduct)
        }
        _ => {
            problems.add("required", Problem::NotAChoice);
            None
        }
    }
}
