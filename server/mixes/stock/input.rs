//! What may be asked of stock solutions, for pages and API alike.

use crate::darkroom::kit::{KitError, Packets, packets_for};
use crate::darkroom::quantities::{Microlitres, divide_half_up};
use crate::error::{Error, Result};
use crate::input::Bounds;
use crate::problem::Problem;
use crate::products::{Form, Product};

const PACKETS: Bounds = Bounds {
    least: 1,
    most: 1_000_000,
    words: ("0.001", "1000 packets"),
};

/// A number of packets, in thousandths.
///
/// # Errors
/// Outside a thousandth to a thousand.
pub fn packets(thousandths: i64) -> Result<i64, Problem> {
    PACKETS.hold(thousandths)
}

/// What a packet of this product makes, in microlitres.
///
/// # Errors
/// It is no powder, or nobody entered it.
pub fn packet_makes(product: &Product) -> Result<i64, Problem> {
    match (product.form, product.packet_makes_ul) {
        (Form::Powder, Some(makes_ul)) => Ok(makes_ul),
        _ => Err(Problem::NotAPowder),
    }
}

/// The packets for at least so much stock solution, and what they make.
///
/// # Errors
/// As [`packet_makes`]; more packets than anybody makes up.
pub fn packets_of(product: &Product, wanted_ul: i64) -> Result<Packets> {
    let makes_ul = packet_makes(product).map_err(Error::Refused)?;
    let wanted = Microlitres::new(wanted_ul).map_err(Error::fault)?;
    let makes = Microlitres::new(makes_ul).map_err(Error::fault)?;
    let found = packets_for(wanted, makes, product.packets_may_be_divided);
    let found = found.map_err(|cause| match cause {
        KitError::Packets => Error::field("wanted", PACKETS.problem()),
        cause => Error::fault(cause),
    })?;
    packets(found.packets_thousandths).map_err(|no| Error::field("wanted", no))?;
    Ok(found)
}

/// What so many packets make, in microlitres.
///
/// # Errors
/// As [`packet_makes`]; a part of a packet that is taken whole.
pub fn made_of(product: &Product, packets_thousandths: i64) -> Result<i64> {
    let makes_ul = packet_makes(product).map_err(Error::Refused)?;
    if !product.packets_may_be_divided && packets_thousandths % 1_000 != 0 {
        return Err(Error::field("packets", Problem::WholePackets));
    }
    let made = i128::from(packets_thousandths) * i128::from(makes_ul);
    divide_half_up(made, 1_000).map_err(Error::fault)
}
