//! Stock solutions as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{NewStock, make_stock};
use super::{Stock, input, store};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::problem::Problems;
use crate::rights::{Mix, SeeProducts};

const STOCKS: &str = "/rooms/{room}/stock-solutions";
const STOCK: &str = "/rooms/{room}/stock-solutions/{id}";
const MAKE: &str = "/rooms/{room}/products/{id}/stock";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            STOCKS,
            "Stock solutions of which something remains, opened first.",
            list,
        ),
        Route::one(STOCK, "One stock solution, also one that is used up.", one),
        Route::act(MAKE, "Record that a powder was made up.", make),
    ]
}

/// A stock solution as it now is.
#[derive(Debug, Serialize, ToSchema)]
pub struct StockOut {
    /// Which.
    pub id: Uuid,
    /// What it was made of.
    pub product_id: Uuid,
    /// The product's name.
    pub product_name: String,
    /// How many packets, in thousandths.
    pub packets_thousandths: i64,
    /// What they made, in microlitres.
    pub volume_ul: i64,
    /// What remains, in microlitres.
    pub left_ul: i64,
    /// When it was made.
    #[schema(format = DateTime)]
    pub made_at: String,
    /// Who made it.
    pub made_by: Option<Uuid>,
    /// When something was first drawn from it.
    #[schema(format = DateTime)]
    pub opened_at: Option<String>,
    /// Until when it may be used; nothing where nobody knows.
    #[schema(format = DateTime)]
    pub use_by: Option<String>,
    /// The number of its entry.
    pub seq: i64,
}

impl StockOut {
    fn of(stock: Stock) -> Result<Self> {
        let use_by = stock.use_by().map(moment_text).transpose()?;
        Ok(Self {
            id: stock.id,
            product_id: stock.product_id,
            left_ul: stock.left_ul(),
            packets_thousandths: stock.packets_thousandths,
            volume_ul: stock.volume_ul,
            made_at: moment_text(stock.made_at)?,
            made_by: stock.made_by,
            opened_at: stock.opened_at.map(moment_text).transpose()?,
            use_by,
            seq: stock.made_seq,
            product_name: stock.product_name,
        })
    }
}

async fn list(by: By<SeeProducts>, paging: Paging) -> Result<Page<StockOut>> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), |tx| Box::pin(store::stocks(tx, None)));
    let page = paging.cut(found.await?, |stock| stock.id.to_string())?;
    page.map(StockOut::of)
}

async fn one(by: By<SeeProducts>, id: Uuid) -> Result<StockOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::stock(tx, id)));
    StockOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// Stock solution that was made up.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StockIn {
    /// How many packets, in thousandths.
    #[schema(minimum = 1, maximum = 1_000_000)]
    pub packets_thousandths: i64,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for StockIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("packets", "packets_thousandths")];
}

async fn make(by: Writing<Mix>, product_id: Uuid, stock: StockIn) -> Result<Made> {
    let mut problems = Problems::default();
    let packets = problems.take("packets", input::packets(stock.packets_thousandths));
    let at = stock.happened_at.as_deref().map(moment).transpose();
    let at = problems.take("happened_at", at);
    let (Some(packets_thousandths), Some(at)) = (packets, at) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewStock {
        product_id,
        packets_thousandths,
        happened_at_us: at.map(micros),
    };
    let done = make_stock(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "stock_solution", "stock-solutions")
}
