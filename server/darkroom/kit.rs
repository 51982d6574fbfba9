//! Products that are not one concentrate: kits of several parts, and powders
//! made up into a stock solution; and until when what was made up may be used. By
//! definition of parts and lives; what is common practice says so where it stands.

use serde::{Deserialize, Serialize};

use super::quantities::{Microlitres, Moment, QuantityError, Seconds, divide_half_up};

/// Why a kit or a powder cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum KitError {
    /// A kit has 1 to 8 parts, each above 0.
    #[error("a kit has between 1 and 8 parts, each more than nothing")]
    Parts,
    /// No volume to make up.
    #[error("there is nothing to make up")]
    Nothing,
    /// More than ten thousand packets.
    #[error("that takes more than ten thousand packets")]
    Packets,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// The volumes of a kit: parts in their order, then water.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct KitVolumes {
    /// Each part in microlitres.
    #[serde(rename = "parts_microlitres")]
    pub parts: Vec<Microlitres>,
    /// Water in microlitres.
    #[serde(rename = "water_microlitres")]
    pub water: Microlitres,
}

/// A volume made of a kit's parts a:b:… and water (all in thousandths of a part;
/// water may be 0). Each part is rounded half up to a microlitre; water, or
/// without water the last part, is the remainder: they add up exactly.
/// Source: the definition of parts.
///
/// # Errors
/// [`KitError::Parts`] for no part, more than 8, or one of nothing; [`KitError::Nothing`] for no volume.
pub fn kit_volumes(
    parts_thousandths: &[u32],
    water_thousandths: u32,
    volume: Microlitres,
) -> Result<KitVolumes, KitError> {
    if parts_thousandths.is_empty() || parts_thousandths.len() > 8 || parts_thousandths.contains(&0)
    {
        return Err(KitError::Parts);
    }
    if volume == Microlitres::ZERO {
        return Err(KitError::Nothing);
    }
    let all: i128 = parts_thousandths
        .iter()
        .copied()
        .map(i128::from)
        .sum::<i128>()
        + i128::from(water_thousandths);
    let mut left = volume;
    let mut parts = Vec::with_capacity(parts_thousandths.len());
    for (index, part) in parts_thousandths.iter().enumerate() {
        let is_remainder = water_thousandths == 0 && index + 1 == parts_thousandths.len();
        let share = i128::from(volume.get()) * i128::from(*part);
        let rounded = Microlitres::new(divide_half_up(share, all)?)?;
        let taken = if is_remainder {
            left
        } else {
            rounded.min(left)
        };
        left = left.minus(taken)?;
        parts.push(taken);
    }
    Ok(KitVolumes { parts, water: left })
}

/// Packets to make up, and the stock solution they make.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Packets {
    /// Packets in thousandths, rounded up; a whole number unless the sheet allows a part of one.
    pub packets_thousandths: i64,
    /// What they make, in microlitres.
    #[serde(rename = "volume_microlitres")]
    pub volume: Microlitres,
}

/// Packets of a powder for at least a wanted volume of stock solution. Whole
/// packets, because the powders in a packet are not evenly mixed (common
/// practice, no source), unless the product's sheet says a part may be taken:
/// then thousandths, rounded up.
///
/// # Errors
/// [`KitError::Nothing`] for no volume; [`KitError::Packets`] beyond ten thousand.
pub fn packets_for(
    wanted: Microlitres,
    packet_makes: Microlitres,
    part_packets: bool,
) -> Result<Packets, KitError> {
    if wanted == Microlitres::ZERO || packet_makes == Microlitres::ZERO {
        return Err(KitError::Nothing);
    }
    let step: i128 = if part_packets { 1 } else { 1_000 };
    let makes = i128::from(packet_makes.get()) * step;
    let steps = (i128::from(wanted.get()) * 1_000 + makes - 1) / makes;
    let packets = steps * step;
    if packets > 10_000_000 {
        return Err(KitError::Packets);
    }
    let volume = divide_half_up(packets * i128::from(packet_makes.get()), 1_000)?;
    let packets_thousandths = i64::try_from(packets).map_err(|_| QuantityError::TooLarge)?;
    Ok(Packets {
        packets_thousandths,
        volume: Microlitres::new(volume)?,
    })
}

/// How long a bottle keeps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BottleLife {
    /// Full and stoppered, or unopened, in seconds.
    #[serde(rename = "full_seconds")]
    pub full: Seconds,
    /// From the first time it is opened or part used, in seconds.
    #[serde(rename = "part_seconds")]
    pub part: Seconds,
}

/// The instant from which a bottle may no longer be used: made + full life, or
/// opened + part life where that is sooner. Opening never makes it last longer.
#[must_use]
pub fn use_by(made: Moment, opened: Option<Moment>, life: BottleLife) -> Moment {
    let full = made.after(life.full);
    opened.map_or(full, |opened| full.min(opened.after(life.part)))
}
