//! What everyone should know of the air: on the board where a bath stands that wants
//! exhaust, and in a handover.

use time::OffsetDateTime;

use super::standing::{AirNow, air_now};
use super::store;
use crate::darkroom::air::Exhaust;
use crate::database::RoomTx;
use crate::error::Result;
use crate::rooms::Settings;
use crate::web::messages::air as words;

/// What everyone should know now: one sentence for each place where toner, glacial acid
/// or ammonia stands and its exhaust is not measured, is short, or stands still. Where
/// none stands, nothing else is asked for.
///
/// # Errors
/// The database's.
pub async fn due(tx: &mut RoomTx, settings: &Settings, now: OffsetDateTime) -> Result<Vec<String>> {
    let baths = store::baths(tx).await?;
    if baths.iter().all(|bath| bath.needs.is_none()) {
        return Ok(Vec::new());
    }
    let places = air_now(tx, now).await?;
    let said = places.iter().map(|place| to_know(place, settings));
    let said = said.collect::<Result<Vec<Option<String>>>>()?;
    Ok(said.into_iter().flatten().collect())
}

fn to_know(place: &AirNow, settings: &Settings) -> Result<Option<String>> {
    let needing = place.baths.iter().filter(|bath| bath.needs.is_some());
    let mut names: Vec<&str> = needing.filter_map(|bath| bath.product.as_deref()).collect();
    names.sort_unstable();
    names.dedup();
    if names.is_empty() {
        return Ok(None);
    }
    let what = what_is_wrong(place, settings)?;
    let here = words::here(place.place.name.as_deref());
    Ok(what.map(|what| words::stands_there(here, &what, &names)))
}

/// That its fan stands still, or what is wrong with its exhaust.
fn what_is_wrong(place: &AirNow, settings: &Settings) -> Result<Option<String>> {
    if let Some((what, _)) = place.off {
        return Ok(Some(words::stands_still(what)));
    }
    Ok(match place.judged()? {
        Exhaust::Unmeasured => Some(words::NOBODY_MEASURED.to_owned()),
        Exhaust::Short(missing) => {
            let missing = settings.air_units().flow(missing.get());
            Some(words::is_short(&missing))
        }
        Exhaust::Measured | Exhaust::AsWanted => None,
    })
}

/// What a steward who takes the room over should know of each place.
///
/// # Errors
/// A fault: measurements that no arithmetic holds.
pub fn handed_over(places: &[AirNow], settings: &Settings) -> Result<Vec<String>> {
    let line = |place: &AirNow| -> Result<String> {
        let here = words::here(place.place.name.as_deref());
        let units = settings.air_units();
        let flow = place.measured().map(|flow| units.flow(flow.get()));
        let missing = match place.judged()? {
            Exhaust::Short(missing) => Some(units.flow(missing.get())),
            _ => None,
        };
        let agreed = place.agreed.as_ref().map(|(by, _)| by.as_str());
        Ok(words::handed_over(
            here,
            flow.as_deref(),
            missing.as_deref(),
            agreed,
        ))
    };
    places.iter().map(line).collect()
}
