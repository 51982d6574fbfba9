//! What people do with stock solutions.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::{Stock, StockMade, input, store};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::RULES;
use crate::mixes::actions::{happened, may_mix_alone, may_mix_product};
use crate::problem::Problem;
use crate::products;
use crate::rights::{Mix, Role};
use crate::rooms;

/// Stock solution that somebody made up.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewStock {
    /// Of which powder.
    pub product_id: Uuid,
    /// How many packets, in thousandths.
    pub packets_thousandths: i64,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// Records that a powder was made up into stock solution.
///
/// # Errors
/// A product that is no powder, that has no safety data, or that only a steward
/// mixes; a part of a packet that is taken whole.
pub async fn make_stock(app: &App, permit: &Permit<Mix>, key: Key, new: NewStock) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write(book, role, new).await })
        })
        .await
}

async fn write(book: &mut Book<'_>, role: Role, new: NewStock) -> Result<()> {
    let settings = rooms::settings(book.tx()).await?;
    let at = happened(book.now(), new.happened_at_us, &settings)?;
    may_mix_alone(book, &settings, at).await?;
    let product = products::product(book.tx(), new.product_id).await?;
    let product = product.ok_or(Error::NotFound)?;
    may_mix_product(&product, role)?;
    let entry = StockMade {
        rules: RULES,
        stock_id: book.new_id(),
        product_id: product.id,
        product_version: product.version,
        packets_thousandths: new.packets_thousandths,
        volume_ul: input::made_of(&product, new.packets_thousandths)?,
        full_life_s: product.stock_full_life_s,
        part_life_s: product.stock_part_life_s,
    };
    book.append_at(at, &entry).await?;
    Ok(())
}

/// The stock solution that so much is drawn from then, where it may be.
///
/// # Errors
/// Another product's; past its use-by or not yet made; less than that remains.
pub(in crate::mixes) async fn may_draw(
    tx: &mut RoomTx,
    id: Uuid,
    product: Uuid,
    volume_ul: i64,
    at: OffsetDateTime,
) -> Result<Stock> {
    let found = store::stock(tx, id).await?;
    let wrong = || Error::field("stock", Problem::NotAChoice);
    let stock = found.ok_or_else(wrong)?;
    suits(&stock, product, volume_ul, at).map_err(|no| Error::field("stock", no))?;
    Ok(stock)
}

/// Whether so much of this product may be drawn from a stock solution then.
///
/// # Errors
/// As [`may_draw`].
pub(in crate::mixes) fn suits(
    stock: &Stock,
    product: Uuid,
    volume_ul: i64,
    at: OffsetDateTime,
) -> Result<(), Problem> {
    if stock.product_id != product {
        return Err(Problem::OtherStock);
    }
    if stock.is_past(at) {
        return Err(Problem::StockPast);
    }
    let left_ul = stock.left_ul();
    if left_ul < volume_ul {
        let missing_ul = volume_ul - left_ul;
        return Err(Problem::StockShort {
            missing_ul,
            left_ul,
        });
    }
    match stock.may_be_drawn(at) {
        true => Ok(()),
        false => Err(Problem::StockNotYetMade),
    }
}
