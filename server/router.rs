//! Every route: the pages, the API, and what stands around them.
//!
//! A page's route is listed as it is added, with the right that its handler's
//! own signature demands, so that the access tests walk what is really there.

use std::time::Duration;

use axum::Router;
use axum::extract::{DefaultBodyLimit, Extension};
use axum::handler::Handler;
use axum::http::Method;
use axum::middleware::{from_fn, from_fn_with_state};
use axum::routing::{MethodRouter, get, post};
use tower_http::catch_panic::CatchPanicLayer;
use tower_http::timeout::RequestBodyTimeoutLayer;

use crate::app::App;
use crate::error::Result;
use crate::identity::{Permit, Skin};
use crate::rights::{Right, Row};
use crate::web::{assets, display, error_pages, guards, health, journal, offline};
use crate::{
    air, api, arrivals, bench, bench_sheet, board, book, checks, emergency, handover, identity,
    incidents, inductions, labels, lamps, members, mixes, notices, outages, papers, products,
    rooms, screens, sheets, topics, trays, workshops,
};

/// A body arrives without a longer pause than this, or is given up.
const BODY: Duration = Duration::from_secs(10);
/// A page's form may have so many bytes.
const MOST_BYTES: usize = 64 * 1_024;

/// A route, as the access tests walk it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Listed {
    /// How it is asked.
    pub method: Method,
    /// Its path, with `{names}` for what varies.
    pub path: String,
    /// The right it takes; nothing where none is asked for.
    pub right: Option<&'static str>,
}

/// Routes of pages, with the list of them.
#[derive(Debug, Default)]
pub struct Pages {
    router: Router<App>,
    listed: Vec<Listed>,
}

impl Pages {
    /// No routes yet.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// A page of a room, seen by the right its handler demands.
    #[must_use]
    pub fn get<H, T>(self, path: &str, handler: H) -> Self
    where
        H: Handler<T, App>,
        T: ByRight + 'static,
    {
        self.add(Method::GET, path, Some(T::ROW.name), get(handler))
    }

    /// A form of a room, sent by the right its handler demands.
    #[must_use]
    pub fn post<H, T>(self, path: &str, handler: H) -> Self
    where
        H: Handler<T, App>,
        T: ByRight + 'static,
    {
        self.add(Method::POST, path, Some(T::ROW.name), post(handler))
    }

    /// A form of a room that may bring a file of so many bytes.
    #[must_use]
    pub fn post_file<H, T>(self, path: &str, handler: H, most: usize) -> Self
    where
        H: Handler<T, App>,
        T: ByRight + 'static,
    {
        let limit = DefaultBodyLimit::max(most + MOST_BYTES);
        let taken = post(handler).layer(limit);
        self.add(Method::POST, path, Some(T::ROW.name), taken)
    }

    /// A page outside the rooms' rights: for everyone, or for whoever is logged in.
    #[must_use]
    pub fn open_get<H, T>(self, path: &str, handler: H) -> Self
    where
        H: Handler<T, App>,
        T: 'static,
    {
        self.add(Method::GET, path, None, get(handler))
    }

    /// A form outside the rooms' rights.
    #[must_use]
    pub fn open_post<H, T>(self, path: &str, handler: H) -> Self
    where
        H: Handler<T, App>,
        T: 'static,
    {
        self.add(Method::POST, path, None, post(handler))
    }

    fn add(
        mut self,
        method: Method,
        path: &str,
        right: Option<&'static str>,
        taken: MethodRouter<App>,
    ) -> Self {
        self.listed.push(Listed {
            method,
            path: path.to_owned(),
            right,
        });
        self.router = self.router.route(path, taken);
        self
    }

    /// These and those.
    #[must_use]
    pub fn and(mut self, others: Self) -> Self {
        self.listed.extend(others.listed);
        self.router = self.router.merge(others.router);
        self
    }

    /// The list.
    #[must_use]
    pub fn listed(&self) -> &[Listed] {
        &self.listed
    }
}

/// A handler whose second argument, after the program, is a permit.
pub trait ByRight {
    /// The right's row.
    const ROW: Row;
}

macro_rules! by_right {
    ($($rest:ident)*) => {
        impl<M, S, R: Right, $($rest),*> ByRight for (M, S, Permit<R>, $($rest,)*) {
            const ROW: Row = R::ROW;
        }
    };
}

by_right!();
by_right!(A);
by_right!(A B);
by_right!(A B C);
by_right!(A B C D);
by_right!(A B C D E);

/// Every page.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .open_get("/emergency", emergency::for_everyone)
        .open_get("/rooms/{room}/emergency", emergency::of_room)
        .open_post("/display", display::choose)
        .open_get("/safelight", display::safelight)
        .open_get("/offline", offline::offline)
        .and(identity::pages::pages())
        .and(identity::token_pages::pages())
        .and(rooms::pages::pages())
        .and(members::pages::pages())
        .and(members::join_pages::pages())
        .and(board::pages())
        .and(trays::pages())
        .and(bench_sheet::pages())
        .and(mixes::pages())
        .and(labels::pages())
        .and(sheets::pages())
        .and(bench::pages())
        .and(papers::pages())
        .and(products::pages())
        .and(book::pages())
        .and(notices::pages())
        .and(outages::pages())
        .and(lamps::pages())
        .and(topics::pages())
        .and(inductions::pages())
        .and(checks::pages())
        .and(air::pages())
        .and(incidents::pages())
        .and(arrivals::pages())
        .and(workshops::pages())
        .and(screens::pages())
        .and(handover::pages())
}

/// The whole program as a service, below the public address's path.
///
/// # Errors
/// A fault in the API's own description.
pub fn service(app: &App) -> Result<Router> {
    let quiet = Router::new()
        .route("/live", get(health::live))
        .route("/ready", get(health::ready))
        .route("/worker.js", get(offline::worker))
        .route("/assets/{file}", get(assets::asset_file));
    let pages = pages()
        .router
        .fallback(error_pages::no_such_page)
        .layer(DefaultBodyLimit::max(MOST_BYTES))
        .layer(CatchPanicLayer::custom(error_pages::panicked))
        .layer(from_fn_with_state(app.clone(), guards::guard))
        .layer(from_fn_with_state(app.clone(), error_pages::in_words))
        .layer(Extension(Skin::Pages));
    let all = pages.merge(quiet).merge(api::router(app)?);
    let base = app.address().base();
    let all = match base.is_empty() {
        true => all,
        false => Router::new().nest(base, all),
    };
    Ok(all
        .layer(RequestBodyTimeoutLayer::new(BODY))
        .layer(from_fn(journal::write))
        .with_state(app.clone()))
}
