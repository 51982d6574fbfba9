//! A route of the API: what it answers to, by which right, with which types.
//!
//! Right and types are those of the handler's own signature.

use std::future::Future;

use axum::Json;
use axum::extract::rejection::QueryRejection;
use axum::extract::{Extension, Query, State};
use axum::http::header::CONTENT_TYPE;
use axum::http::{HeaderValue, Method, StatusCode};
use axum::response::{IntoResponse, Response};
use axum::routing::{MethodFilter, MethodRouter, get, on};
use serde::Serialize;
use utoipa::ToSchema;
use utoipa::openapi::path::{Parameter, ParameterIn};
use utoipa::openapi::{RefOr, Schema};
use uuid::Uuid;

use super::answer::{MadeOut, One};
use super::json::{Body, Question, renamed};
use super::key::WriteKey;
use super::openapi::{Document, list_of, one_of, reference};
use super::which::Which;
use super::{Input, Made, PREFIX, Page, Paging};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::Problem;
use crate::rights::{Right, Row};
use crate::router::Listed;

/// Somebody who reads by right `R`.
#[derive(Clone, Debug)]
pub struct By<R> {
    /// The program.
    pub app: App,
    /// The proof.
    pub permit: Permit<R>,
}

/// Somebody who writes by right `R`.
#[derive(Clone, Debug)]
pub struct Writing<R> {
    /// The program.
    pub app: App,
    /// The proof.
    pub permit: Permit<R>,
    /// The client's key for this write.
    pub key: Key,
}

impl<R: Right> Writing<R> {
    /// What the write made: the `noun` its entry is about, to be read in `list`.
    ///
    /// # Errors
    /// A noun that the entry is not about.
    pub fn made(&self, done: &Done, noun: &str, list: &str) -> Result<Made> {
        let id = done.id(noun)?;
        Ok(self.made_at(done, id, &format!("{list}/{id}")))
    }

    /// What the write made or changed, to be read at a path of the room.
    #[must_use]
    pub fn made_at(&self, done: &Done, id: Uuid, path: &str) -> Made {
        let base = self.app.address().base();
        let slug = &self.permit.membership().slug;
        Made::new(done, id, format!("{base}{PREFIX}/rooms/{slug}/{path}"))
    }
}

/// What a route takes or gives, for the document.
pub(super) type Shapes = Vec<(String, RefOr<Schema>)>;

/// One route.
pub struct Route {
    /// How it is asked.
    pub method: Method,
    /// Its path below `/api/v1`.
    pub path: &'static str,
    /// What it does, in a sentence.
    pub says: &'static str,
    /// The right it takes; nothing where everyone may ask.
    pub right: Option<Row>,
    pub(super) methods: MethodRouter<App>,
    pub(super) paged: Option<i64>,
    pub(super) takes: Option<RefOr<Schema>>,
    pub(super) asks: Vec<Parameter>,
    pub(super) fresh: StatusCode,
    pub(super) gives: RefOr<Schema>,
    pub(super) shapes: Shapes,
}

impl Route {
    /// Reads a list in parts.
    pub fn list<const MOST: i64, R, T, F, A>(
        path: &'static str,
        says: &'static str,
        handler: F,
    ) -> Self
    where
        R: Right,
        T: Serialize + ToSchema + Send + 'static,
        F: Fn(By<R>, Paging<MOST>) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<Page<T>>> + Send,
    {
        let methods = get(
            |State(app): State<App>, permit: Permit<R>, paging: Paging<MOST>| async move {
                handler(By { app, permit }, paging).await.map(Json)
            },
        );
        Self {
            paged: Some(MOST),
            gives: list_of::<T>(),
            shapes: shapes::<T>(),
            ..Self::new::<R>(Method::GET, path, says, methods)
        }
    }

    /// Reads the thing that `{id}` names.
    pub fn one<R, T, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        T: Serialize + ToSchema + Send + 'static,
        F: Fn(By<R>, Uuid) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<T>> + Send,
    {
        let methods = get(
            |State(app): State<App>, permit: Permit<R>, Which(id): Which| async move {
                let data = handler(By { app, permit }, id).await?;
                Ok::<_, Error>(Json(One { data }))
            },
        );
        Self {
            gives: one_of::<T>(),
            shapes: shapes::<T>(),
            ..Self::new::<R>(Method::GET, path, says, methods)
        }
    }

    /// Answers a question about the thing that `{id}` names: what is asked stands in
    /// the query, and nothing is written.
    pub fn ask<R, Q, T, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        Q: Question,
        T: Serialize + ToSchema + Send + 'static,
        F: Fn(By<R>, Uuid, Q) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<T>> + Send,
    {
        let methods = get(
            |State(app): State<App>,
             permit: Permit<R>,
             Which(id): Which,
             asked: Result<Query<Q>, QueryRejection>| async move {
                let wrong = || Error::field("", Problem::WrongType);
                let Query(asked) = asked.map_err(|_| wrong())?;
                let answer = handler(By { app, permit }, id, asked).await;
                let data = answer.map_err(|error| renamed(error, Q::NAMES))?;
                Ok::<_, Error>(Json(One { data }))
            },
        );
        Self {
            asks: Q::into_params(|| Some(ParameterIn::Query)),
            gives: one_of::<T>(),
            shapes: shapes::<T>(),
            ..Self::new::<R>(Method::GET, path, says, methods)
        }
    }

    /// Reads the one thing of a room that the path names.
    pub fn read<R, T, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        T: Serialize + ToSchema + Send + 'static,
        F: Fn(By<R>) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<T>> + Send,
    {
        let methods = get(|State(app): State<App>, permit: Permit<R>| async move {
            let data = handler(By { app, permit }).await?;
            Ok::<_, Error>(Json(One { data }))
        });
        Self {
            gives: one_of::<T>(),
            shapes: shapes::<T>(),
            ..Self::new::<R>(Method::GET, path, says, methods)
        }
    }

    /// Makes something outside the book, which making it again only makes anew:
    /// it takes neither body nor key.
    pub fn make<R, T, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        T: Serialize + ToSchema + Send + 'static,
        F: Fn(By<R>) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<T>> + Send,
    {
        let methods = on(
            MethodFilter::POST,
            |State(app): State<App>, permit: Permit<R>| async move {
                let data = handler(By { app, permit }).await?;
                Ok::<_, Error>((StatusCode::CREATED, Json(One { data })))
            },
        );
        Self {
            fresh: StatusCode::CREATED,
            gives: one_of::<T>(),
            shapes: shapes::<T>(),
            ..Self::new::<R>(Method::POST, path, says, methods)
        }
    }

    /// Makes a new thing.
    pub fn add<R, I, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        I: Input,
        F: Fn(Writing<R>, I) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<Made>> + Send,
    {
        let methods = adder::<R, I, F, A>(MethodFilter::POST, StatusCode::CREATED, handler);
        Self::writing::<R, I>(Method::POST, path, says, methods)
    }

    /// Does something to the thing that `{id}` names.
    pub fn act<R, I, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        I: Input,
        F: Fn(Writing<R>, Uuid, I) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<Made>> + Send,
    {
        let methods = writer::<R, I, F, A>(MethodFilter::POST, StatusCode::CREATED, handler);
        Self::writing::<R, I>(Method::POST, path, says, methods)
    }

    /// Sets the thing that `{id}` names, whole.
    pub fn change<R, I, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        I: Input,
        F: Fn(Writing<R>, Uuid, I) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<Made>> + Send,
    {
        let methods = writer::<R, I, F, A>(MethodFilter::PUT, StatusCode::OK, handler);
        Self {
            fresh: StatusCode::OK,
            ..Self::writing::<R, I>(Method::PUT, path, says, methods)
        }
    }

    /// Sets the one thing of a room that the path names, whole.
    pub fn set<R, I, F, A>(path: &'static str, says: &'static str, handler: F) -> Self
    where
        R: Right,
        I: Input,
        F: Fn(Writing<R>, I) -> A + Clone + Send + Sync + 'static,
        A: Future<Output = Result<Made>> + Send,
    {
        let methods = adder::<R, I, F, A>(MethodFilter::PUT, StatusCode::OK, handler);
        Self {
            fresh: StatusCode::OK,
            ..Self::writing::<R, I>(Method::PUT, path, says, methods)
        }
    }

    /// The document of the API itself, for everyone.
    pub(super) fn document(path: &'static str, says: &'static str) -> Self {
        let methods = get(
            |Extension(Document(text)): Extension<Document>| async move {
                let json = HeaderValue::from_static("application/json");
                ([(CONTENT_TYPE, json)], text.to_string())
            },
        );
        Self {
            method: Method::GET,
            path,
            says,
            right: None,
            methods,
            paged: None,
            takes: None,
            asks: Vec::new(),
            fresh: StatusCode::OK,
            gives: utoipa::openapi::Object::new().into(),
            shapes: Vec::new(),
        }
    }

    fn new<R: Right>(
        method: Method,
        path: &'static str,
        says: &'static str,
        methods: MethodRouter<App>,
    ) -> Self {
        Self {
            method,
            right: Some(R::ROW),
            methods,
            ..Self::document(path, says)
        }
    }

    fn writing<R: Right, I: Input>(
        method: Method,
        path: &'static str,
        says: &'static str,
        methods: MethodRouter<App>,
    ) -> Self {
        let mut shapes = shapes::<I>();
        shapes.extend(self::shapes::<MadeOut>());
        Self {
            takes: Some(reference::<I>()),
            fresh: StatusCode::CREATED,
            gives: one_of::<MadeOut>(),
            shapes,
            ..Self::new::<R>(method, path, says, methods)
        }
    }

    /// What the table of routes says of it.
    #[must_use]
    pub fn listed(&self) -> Listed {
        Listed {
            method: self.method.clone(),
            path: format!("{PREFIX}{}", self.path),
            right: self.right.map(|row| row.name),
        }
    }
}

fn adder<R, I, F, A>(filter: MethodFilter, fresh: StatusCode, handler: F) -> MethodRouter<App>
where
    R: Right,
    I: Input,
    F: Fn(Writing<R>, I) -> A + Clone + Send + Sync + 'static,
    A: Future<Output = Result<Made>> + Send,
{
    on(
        filter,
        move |State(app): State<App>,
              permit: Permit<R>,
              WriteKey(key): WriteKey,
              Body(input): Body<I>| async move {
            let made = handler(Writing { app, permit, key }, input).await;
            answer::<I>(made, fresh)
        },
    )
}

fn writer<R, I, F, A>(filter: MethodFilter, fresh: StatusCode, handler: F) -> MethodRouter<App>
where
    R: Right,
    I: Input,
    F: Fn(Writing<R>, Uuid, I) -> A + Clone + Send + Sync + 'static,
    A: Future<Output = Result<Made>> + Send,
{
    on(
        filter,
        move |State(app): State<App>,
              permit: Permit<R>,
              Which(id): Which,
              WriteKey(key): WriteKey,
              Body(input): Body<I>| async move {
            let made = handler(Writing { app, permit, key }, id, input).await;
            answer::<I>(made, fresh)
        },
    )
}

fn answer<I: Input>(made: Result<Made>, fresh: StatusCode) -> Response {
    match made {
        Ok(made) => made.answer(fresh),
        Err(error) => I::rename(error).into_response(),
    }
}

/// A type's shape and those of the types inside it.
fn shapes<T: ToSchema>() -> Shapes {
    let mut shapes = vec![(T::name().into_owned(), T::schema())];
    T::schemas(&mut shapes);
    shapes
}
