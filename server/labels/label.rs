//! From what stands in a vessel to what its label says.

use time::OffsetDateTime;

use super::views::{Hazard, Label, Size};
use super::{QrCode, signal};
use crate::address::PublicAddress;
use crate::error::{Error, Result};
use crate::products;
use crate::rooms::Settings;

/// What stands in a tray or a bottle, as far as a label says it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LabelOf {
    /// What it is stuck to: the name of the tray or the bottle.
    pub vessel: String,
    /// Where that stands, such as the line's name; may be empty.
    pub place: String,
    /// The page the code leads to, below the installation's address.
    pub link_path: String,
    /// The product's name.
    pub product: String,
    /// N of 1+N, in thousandths; none for liquid that nobody can name.
    pub parts_thousandths: Option<i64>,
    /// How much was filled in, in microlitres.
    pub volume_ul: i64,
    /// When it was mixed.
    pub mixed_at: OffsetDateTime,
    /// Who mixed it; none where that is not told.
    pub mixed_by: Option<String>,
    /// When its life is over as it stands; none where nobody knows.
    pub use_by: Option<OffsetDateTime>,
    /// H codes of the product as supplied.
    pub hazard_codes: Vec<String>,
}

/// So many letters and codes a label holds at its usual type.
const USUAL_LETTERS: usize = 90;
/// What a code takes of that.
const LETTERS_A_CODE: usize = 5;

/// Writes the label.
///
/// # Errors
/// A fault: a zone that is none, or an address too long for any code.
pub fn label(
    of: &LabelOf,
    size: Size,
    settings: &Settings,
    address: &PublicAddress,
    is_demo: bool,
) -> Result<Label> {
    let (zone, numbers) = (settings.time_zone()?, settings.numbers());
    let mixed_by = of.mixed_by.as_deref().unwrap_or_default();
    let texts = [
        of.vessel.as_str(),
        &of.place,
        &of.product,
        mixed_by,
        &settings.name,
    ];
    let letters: usize = texts.iter().map(|text| text.chars().count()).sum();
    let codes = of.hazard_codes.len();
    let with_texts = size.has_room_for(codes);
    let hazards = of.hazard_codes.iter().map(|code| Hazard {
        code: code.clone(),
        text: match with_texts {
            true => products::statement(code),
            false => String::new(),
        },
    });
    Ok(Label {
        size,
        is_dense: letters + codes * LETTERS_A_CODE > USUAL_LETTERS,
        room: settings.name.clone(),
        is_demo,
        vessel: of.vessel.clone(),
        place: of.place.clone(),
        product: of.product.clone(),
        dilution: of.parts_thousandths.map(|parts| numbers.dilution(parts)),
        volume: numbers.volume(of.volume_ul),
        mixed: zone.on_paper(of.mixed_at),
        mixed_by: of.mixed_by.clone(),
        use_by: of.use_by.map(|at| zone.on_paper(at)),
        signal: signal(&of.hazard_codes),
        hazards: hazards.collect(),
        code: QrCode::of(&address.absolute(&of.link_path)).map_err(Error::fault)?,
    })
}
