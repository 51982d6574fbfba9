//! Reading the fields of a question one by one, so that a refusal names the
//! field it is about.

use std::fmt::Display;

use serde::de::{DeserializeOwned, Deserializer, Error, MapAccess, Visitor};
use serde_json::{Map, Value};

/// Why there is no answer, and which field is to be mended.
#[derive(Debug)]
pub(super) struct Refusal {
    pub(super) sentence: String,
    pub(super) field: Option<String>,
}

impl Refusal {
    pub(super) fn new(reason: impl Display, field: impl Into<Option<&'static str>>) -> Self {
        Self {
            sentence: sentence(&reason.to_string()),
            field: field.into().map(str::to_owned),
        }
    }
}

/// A capital at its beginning and a full stop at its end.
fn sentence(reason: &str) -> String {
    let mut letters = reason.chars();
    let first = letters.next().map(char::to_uppercase).into_iter().flatten();
    let mut whole: String = first.chain(letters).collect();
    if !whole.ends_with('.') {
        whole.push('.');
    }
    whole
}

/// Names the field a failed computation is about.
pub(super) trait Blame<T, E> {
    /// Every failure is about this field.
    fn blame(self, field: &'static str) -> Result<T, Refusal>;

    /// Which field it is about depends on the failure.
    fn blame_by(self, field: impl FnOnce(&E) -> &'static str) -> Result<T, Refusal>;
}

impl<T, E: Display> Blame<T, E> for Result<T, E> {
    fn blame(self, field: &'static str) -> Result<T, Refusal> {
        self.blame_by(|_| field)
    }

    fn blame_by(self, field: impl FnOnce(&E) -> &'static str) -> Result<T, Refusal> {
        self.map_err(|reason| {
            let field = field(&reason);
            Refusal::new(reason, field)
        })
    }
}

/// The fields of one question that nobody has read yet.
#[derive(Debug, Default)]
pub(super) struct Fields(Map<String, Value>);

impl Fields {
    /// Reads a field that must be there.
    pub(super) fn take<T: DeserializeOwned>(&mut self, name: &'static str) -> Result<T, Refusal> {
        let value = self
            .0
            .remove(name)
            .ok_or_else(|| Refusal::new("this field is missing", name))?;
        serde_json::from_value(value).blame(name)
    }

    /// Reads a field that may be left out.
    pub(super) fn take_or<T: DeserializeOwned>(
        &mut self,
        name: &'static str,
        otherwise: T,
    ) -> Result<T, Refusal> {
        if self.0.contains_key(name) {
            self.take(name)
        } else {
            Ok(otherwise)
        }
    }

    /// The name of the question, taken out.
    pub(super) fn take_ask(&mut self) -> Option<Value> {
        self.0.remove("ask")
    }

    /// Refuses fields no question has read.
    pub(super) fn refuse_unread(self) -> Result<(), Refusal> {
        self.0.into_iter().next().map_or(Ok(()), |(name, _)| {
            let sentence = sentence("this question has no such field");
            Err(Refusal {
                sentence,
                field: Some(name),
            })
        })
    }
}

impl<'de> serde::Deserialize<'de> for Fields {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_map(Once)
    }
}

/// Reads an object in which no field stands twice: a second one would silently win.
struct Once;

impl<'de> Visitor<'de> for Once {
    type Value = Fields;

    fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("one JSON object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut from: A) -> Result<Fields, A::Error> {
        let mut fields = Map::new();
        while let Some((name, value)) = from.next_entry::<String, Value>()? {
            if fields.contains_key(&name) {
                return Err(A::Error::custom(format_args!(
                    "the field {name} stands twice"
                )));
            }
            fields.insert(name, value);
        }
        Ok(Fields(fields))
    }
}
