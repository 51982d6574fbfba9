//! Lists in parts: so many from behind a key.

use axum::extract::{FromRequestParts, Query};
use axum::http::request::Parts;
use serde::Deserialize;

use super::Page;
use crate::app::App;
use crate::error::{Error, Result};
use crate::problem::{Problem, Problems};

/// What a part holds where nothing is said.
pub(super) const USUAL: i64 = 100;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Asked {
    after: Option<String>,
    limit: Option<String>,
}

/// Which part of a list is asked for, of at most so many.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Paging<const MOST: i64 = 200> {
    /// The `next` of the part before; nothing for the first.
    pub after: Option<String>,
    /// So many at most.
    pub limit: i64,
}

impl<const MOST: i64> FromRequestParts<App> for Paging<MOST> {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        let Ok(Query(asked)) = Query::<Asked>::from_request_parts(parts, app).await else {
            return Err(Error::field("", Problem::NotAField));
        };
        let mut problems = Problems::default();
        let limit = match asked.limit.as_deref().map(str::parse::<i64>) {
            None => Ok(USUAL),
            Some(Ok(number @ 1..)) if number <= MOST => Ok(number),
            Some(Ok(_)) => Err(Problem::OutOfRange {
                least: "1".to_owned(),
                most: MOST.to_string(),
            }),
            Some(Err(_)) => Err(Problem::NotANumber),
        };
        match problems.take("limit", limit) {
            Some(limit) => Ok(Self {
                after: asked.after,
                limit,
            }),
            None => Err(Error::Invalid(problems)),
        }
    }
}

impl<const MOST: i64> Paging<MOST> {
    /// Cuts the part out of a list that is short enough to be read whole.
    ///
    /// # Errors
    /// A key that nothing in the list has.
    pub fn cut<T>(&self, all: Vec<T>, key: impl Fn(&T) -> String) -> Result<Page<T>> {
        let from = match &self.after {
            None => 0,
            Some(after) => {
                let found = all.iter().position(|each| key(each) == *after);
                1 + found.ok_or_else(Self::no_such_key)?
            }
        };
        let more = all.into_iter().skip(from).collect();
        Ok(self.first_of(more, key))
    }

    /// The part that begins `more`, which is read one further than asked.
    pub fn first_of<T>(&self, mut more: Vec<T>, key: impl Fn(&T) -> String) -> Page<T> {
        let limit = usize::try_from(self.limit).unwrap_or(0);
        let goes_on = more.len() > limit;
        more.truncate(limit);
        let next = more.last().filter(|_| goes_on).map(key);
        Page { data: more, next }
    }

    /// The key, where it is the number of an entry.
    ///
    /// # Errors
    /// Anything else.
    pub fn after_seq(&self) -> Result<Option<i64>> {
        let read = self.after.as_deref().map(str::parse::<i64>).transpose();
        read.map_err(|_| Self::no_such_key())
    }

    fn no_such_key() -> Error {
        Error::field("after", Problem::NotAChoice)
    }
}

impl<T> Page<T> {
    /// The same part in other words.
    ///
    /// # Errors
    /// What `word` answers.
    pub fn map<U>(self, word: impl FnMut(T) -> Result<U>) -> Result<Page<U>> {
        Ok(Page {
            data: self.data.into_iter().map(word).collect::<Result<_>>()?,
            next: self.next,
        })
    }
}
