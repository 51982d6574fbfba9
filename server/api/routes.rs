//! The table of the API's routes: every noun's, and the document's own.

use super::Route;
use crate::{
    air, arrivals, bench, board, book, checks, handover, inductions, lamps, members, mixes,
    outages, papers, products, rooms, screens, sheets, topics, workshops,
};

/// Every route.
#[must_use]
pub fn all() -> Vec<Route> {
    let document = Route::document("/openapi.json", "This document.");
    [
        rooms::api(),
        members::api(),
        board::api(),
        papers::api(),
        products::api(),
        bench::api(),
        mixes::api(),
        mixes::readings::api::api(),
        sheets::api(),
        outages::api(),
        lamps::api(),
        topics::api(),
        inductions::api(),
        checks::api(),
        air::api(),
        arrivals::api(),
        workshops::api(),
        screens::api(),
        handover::api(),
        book::api(),
        vec![document],
    ]
    .into_iter()
    .flatten()
    .collect()
}
