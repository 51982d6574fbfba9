//! Stock solutions, as templates want them.

use askama::Template;
use serde::Deserialize;

use crate::mixes::mixing::views::Worksheet;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// Stock solution that was made, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct StockForm {
    /// Idempotency key.
    pub key: String,
    /// How much is wanted at least, in litres.
    pub wanted: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day it was made earlier, `2026-11-25`.
    pub day: String,
    /// Its time, `18:05`.
    pub time: String,
    /// `reckon` shows the packets, `mix` writes the entry.
    pub step: String,
}

/// The form to make stock solution of a powder.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/make_stock.html")]
pub struct MakeStockPage {
    /// The frame.
    pub shell: Shell,
    /// The product's id.
    pub product_id: String,
    /// Its name.
    pub product: String,
    /// Why none can be made; then there is no form.
    pub barred: Option<String>,
    /// As typed.
    pub form: StockForm,
    /// What to mend.
    pub problems: Problems,
    /// What a packet makes.
    pub wanted_hint: String,
    /// The days an earlier making may name, today first.
    pub days: Vec<Choice>,
    /// The arithmetic.
    pub worksheet: Option<Worksheet>,
    /// Cautions of the product.
    pub cautions: Vec<String>,
}

/// A stock solution, and the label of its bottle.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/stock.html")]
pub struct StockPage {
    /// The frame.
    pub shell: Shell,
    /// The number of its entry.
    pub seq: i64,
    /// The product's id.
    pub product_id: String,
    /// Its name.
    pub product: String,
    /// `1 packet`.
    pub packets: String,
    /// `1 L`.
    pub volume: String,
    /// When it was made.
    pub made: Moment,
    /// By whom.
    pub made_by: Option<String>,
    /// What remains of it.
    pub left: String,
    /// When something was first drawn from it.
    pub opened: Option<Moment>,
    /// Until when it may be used.
    pub use_by: Option<Moment>,
    /// Has that passed?
    pub is_past: bool,
    /// Cautions of the product.
    pub cautions: Vec<String>,
}

/// A stock solution on the page of its product.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StockRow {
    /// Its id.
    pub id: String,
    /// When it was made.
    pub made: Moment,
    /// What is left and until when it may be used.
    pub left: String,
}
