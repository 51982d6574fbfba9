//! What can go wrong, by meaning. Pages and the API render it, each in its own way.

use std::time::Duration;

use crate::problem::{Problem, Problems};

/// The answer of anything that may fail.
pub type Result<T, E = Error> = std::result::Result<T, E>;

/// Why something was not done.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// Nobody is logged in, or the token is unknown.
    #[error("not logged in")]
    Unauthenticated,
    /// The person may see this and may not do it.
    #[error("not allowed")]
    Forbidden,
    /// There is no such thing, or none this person may know of.
    #[error("not found")]
    NotFound,
    /// Fields of the input, each with what is wrong.
    #[error("invalid input: {0:?}")]
    Invalid(Problems),
    /// The room's state does not allow it.
    #[error("refused: {0:?}")]
    Refused(Problem),
    /// The key was used before, by somebody else or for something else.
    #[error("the key belongs to another request")]
    Mismatch,
    /// Too many tries.
    #[error("too many tries")]
    TooMany(Duration),
    /// Too busy, or a part of the program is away; worth another try.
    #[error("unavailable: {0}")]
    Unavailable(&'static str),
    /// A fault of ours. The cause goes to the log, never to a person.
    #[error("fault: {0:#}")]
    Internal(anyhow::Error),
}

impl Error {
    /// A fault described by a sentence for the log.
    #[must_use]
    pub fn fault(what: impl std::fmt::Display) -> Self {
        Self::Internal(anyhow::anyhow!("{what}"))
    }

    /// One field with one problem.
    #[must_use]
    pub fn field(field: &'static str, problem: Problem) -> Self {
        Self::Invalid(Problems::one(field, problem))
    }

    /// The name of the constraint that a database error names, if it does.
    #[must_use]
    pub fn constraint(&self) -> Option<&str> {
        match self {
            Self::Internal(cause) => cause
                .downcast_ref::<sqlx::Error>()?
                .as_database_error()?
                .constraint(),
            _ => None,
        }
    }
}

impl From<sqlx::Error> for Error {
    fn from(cause: sqlx::Error) -> Self {
        match cause {
            sqlx::Error::PoolTimedOut | sqlx::Error::PoolClosed => {
                Self::Unavailable("no database connection is free")
            }
            sqlx::Error::Io(_) => Self::Unavailable("the database does not answer"),
            other => Self::Internal(other.into()),
        }
    }
}

impl From<serde_json::Error> for Error {
    fn from(cause: serde_json::Error) -> Self {
        Self::Internal(cause.into())
    }
}

/// Turns a named constraint's violation into something better than a fault.
pub trait OnConstraint<T> {
    /// Where the error names `constraint`, answers `instead`.
    ///
    /// # Errors
    /// `instead`, or the error as it was.
    fn on_constraint(self, constraint: &str, instead: impl FnOnce() -> Error) -> Result<T>;
}

impl<T> OnConstraint<T> for Result<T> {
    fn on_constraint(self, constraint: &str, instead: impl FnOnce() -> Error) -> Result<T> {
        self.map_err(|error| match error.constraint() == Some(constraint) {
            true => instead(),
            false => error,
        })
    }
}
