//! What is known of the air of each place now.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::store::{self, Airing, Bath, Measurement, Waiver};
use super::{Air, ExhaustRule, FlowOf};
use crate::bench::spaces::{self, Space};
use crate::bench::{self, Line};
use crate::darkroom::air::{
    ASHRAE_62_1_PER_M2, Cleared, Exhaust, IMC_2018_PER_M2, MixingFactor, air_changes,
    average_air_changes, clearing_time, exhaust_wanted, judge_exhaust, space_volume,
};
use crate::darkroom::quantities::{Area, Flow, Microlitres, Seconds, TenthsMm, Thousandths};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::outages::{self, Outage, What};

/// An average of airing is taken over so long.
pub(super) const AVERAGE_OVER: Seconds = Seconds::from_hours(1);

/// A part of the room that has air of its own: a space, or the room itself.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Place {
    /// The space's id, or the room's.
    pub id: Uuid,
    /// Which space; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// What people call it; nothing for the room itself.
    pub name: Option<String>,
}

/// A place, what is known of its air, and what stands in it.
#[derive(Clone, Debug)]
pub struct AirNow {
    /// Which.
    pub place: Place,
    /// What is known of it; nothing where nobody wrote anything.
    pub air: Option<Air>,
    /// The last measurement of its exhaust.
    pub exhaust: Option<Measurement>,
    /// The last measurement of what moves while it is aired.
    pub airing_flow: Option<Measurement>,
    /// Since when its fan stands still, and why.
    pub off: Option<(What, OffsetDateTime)>,
    /// Who agreed that baths start without measured exhaust, and when.
    pub agreed: Option<(String, OffsetDateTime)>,
    /// The airing that is not over.
    pub aired_now: Option<Airing>,
    /// When the last one was over, within the hour.
    pub last_aired: Option<OffsetDateTime>,
    /// How long it was aired within the hour, as far as that is over.
    pub aired: Seconds,
    /// What stands in its trays.
    pub(super) baths: Vec<Bath>,
}

impl AirNow {
    /// Whether a fan takes air out, as far as anybody said.
    #[must_use]
    pub fn has_fan(&self) -> bool {
        self.air.as_ref().is_none_or(|air| air.has_fan)
    }

    fn floor(&self) -> Result<Option<Area>> {
        let floor = self.air.as_ref().and_then(|air| air.floor_hundredths_mm2);
        floor.map(Area::new).transpose().map_err(Error::fault)
    }

    /// Its volume, where floor and height are known.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn volume(&self) -> Result<Option<Microlitres>> {
        let height = self.air.as_ref().and_then(|air| air.height_tenths_mm);
        let (Some(floor), Some(height)) = (self.floor()?, height) else {
            return Ok(None);
        };
        let height = TenthsMm::new(height.into()).map_err(Error::fault)?;
        let volume = space_volume(floor, height).map_err(Error::fault)?;
        Ok(Some(volume))
    }

    /// The mixing factor it is reckoned with.
    ///
    /// # Errors
    /// A fault: it was held to its bounds when it was set.
    pub fn mixing(&self) -> Result<MixingFactor> {
        let tenths = self.air.as_ref().map(|air| i64::from(air.mixing_tenths));
        let given = tenths.map(MixingFactor::new).transpose();
        Ok(given.map_err(Error::fault)?.unwrap_or(MixingFactor::USUAL))
    }

    /// The exhaust that was measured, and is more than none; none without a fan.
    #[must_use]
    pub fn measured(&self) -> Option<Flow> {
        moving(self.exhaust.as_ref()).filter(|_| self.has_fan())
    }

    /// The exhaust that is wanted.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn wanted(&self) -> Result<Option<Flow>> {
        let Some(air) = &self.air else {
            return Ok(None);
        };
        let per_m2 = match air.rule {
            ExhaustRule::Imc2018 => IMC_2018_PER_M2,
            ExhaustRule::Ashrae621 => ASHRAE_62_1_PER_M2,
            ExhaustRule::Own => {
                let own = air.own_ul_per_s.map(Flow::new).transpose();
                return own.map_err(Error::fault);
            }
        };
        let wanted = self.floor()?.map(|floor| exhaust_wanted(floor, per_m2));
        wanted.transpose().map_err(Error::fault)
    }

    /// Its exhaust against what is wanted, whether its fan runs now or not.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn judged(&self) -> Result<Exhaust> {
        Ok(judge_exhaust(self.measured(), self.wanted()?))
    }

    /// Air changes an hour by its measured exhaust.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn changes(&self) -> Result<Option<Thousandths>> {
        self.changes_by(self.measured())
    }

    /// Air changes an hour while it is aired.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn changes_while_aired(&self) -> Result<Option<Thousandths>> {
        self.changes_by(moving(self.airing_flow.as_ref()))
    }

    fn changes_by(&self, flow: Option<Flow>) -> Result<Option<Thousandths>> {
        let (Some(flow), Some(volume)) = (flow, self.volume()?) else {
            return Ok(None);
        };
        let changes = air_changes(flow, volume).map_err(Error::fault)?;
        Ok(Some(changes))
    }

    /// Air changes an hour on average of the last hour, by airing alone.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn average(&self) -> Result<Option<Thousandths>> {
        let changes = self.changes_while_aired()?;
        let average = changes.map(|each| average_air_changes(each, self.aired, AVERAGE_OVER));
        average.transpose().map_err(Error::fault)
    }

    /// The trays that give off, as `line, tray`.
    pub fn open_trays(&self) -> impl Iterator<Item = String> {
        let open = self.baths.iter().filter(|bath| bath.is_open);
        open.map(|bath| format!("{}, {}", bath.line, bath.tray))
    }

    /// How long until so much has gone; nothing while trays stand open, while its fan
    /// stands still, and where exhaust or volume is not known.
    ///
    /// # Errors
    /// A fault: measurements that no arithmetic holds.
    pub fn clearing(&self, cleared: Cleared) -> Result<Option<Seconds>> {
        let is_open = self.baths.iter().any(|bath| bath.is_open);
        let known = self.measured().zip(self.volume()?);
        let (Some((flow, volume)), false, None) = (known, is_open, self.off) else {
            return Ok(None);
        };
        let time = clearing_time(flow, volume, cleared, self.mixing()?);
        Ok(Some(time.map_err(Error::fault)?))
    }
}

/// A flow that was measured and is more than none.
fn moving(measured: Option<&Measurement>) -> Option<Flow> {
    let flow = Flow::new(measured?.ul_per_s).ok()?;
    (flow > Flow::ZERO).then_some(flow)
}

/// The places of a room: its spaces in use, and the room itself where it has none, or a
/// line in use stands in none.
fn places(room: Uuid, spaces: &[Space], lines: &[Line]) -> Vec<Place> {
    let in_use: Vec<&Space> = spaces.iter().filter(|space| !space.is_retired).collect();
    let mut lines = lines.iter().filter(|line| !line.is_retired);
    let is_one = in_use.is_empty() || lines.any(|line| line.space_id.is_none());
    let itself = is_one.then_some(Place {
        id: room,
        space_id: None,
        name: None,
    });
    let spaces = in_use.into_iter().map(|space| Place {
        id: space.id,
        space_id: Some(space.id),
        name: Some(space.name.clone()),
    });
    itself.into_iter().chain(spaces).collect()
}

/// Since when the fan of a place stands still: the power, or the fan, is off there or in
/// the whole room.
pub(super) fn off_in(off: &[Outage], space: Option<Uuid>) -> Option<(What, OffsetDateTime)> {
    let here = |each: &&Outage| each.space_id.is_none() || each.space_id == space;
    let first = off.iter().filter(here).min_by_key(|each| each.began_at);
    first.map(|each| (each.what, each.began_at))
}

/// Every place of the room: the room itself first.
///
/// # Errors
/// The database's.
pub async fn air_now(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<AirNow>> {
    let room = tx.room();
    let since = now - Duration::seconds(AVERAGE_OVER.get());
    let (spaces, lines) = (spaces::spaces(tx).await?, bench::lines(tx).await?);
    let known = Known {
        airs: store::airs(tx).await?,
        measured: store::latest(tx).await?,
        waivers: store::waivers(tx).await?,
        airings: store::airings_since(tx, since).await?,
        baths: store::baths(tx).await?,
        off: outages::open(tx).await?,
        since,
    };
    let places = places(room, &spaces, &lines).into_iter();
    Ok(places.map(|place| known.of(place)).collect())
}

/// All that is known, before it is told apart by places.
struct Known {
    airs: Vec<(Uuid, Air)>,
    measured: Vec<Measurement>,
    waivers: Vec<Waiver>,
    airings: Vec<Airing>,
    baths: Vec<Bath>,
    off: Vec<Outage>,
    since: OffsetDateTime,
}

impl Known {
    fn of(&self, place: Place) -> AirNow {
        let air = self.airs.iter().find(|(id, _)| *id == place.id);
        let air = air.map(|(_, air)| air.clone());
        let measured = |of: FlowOf| {
            let mut all = self.measured.iter();
            all.find(|each| each.place_id == place.id && each.of == of)
                .cloned()
        };
        let has_fan = air.as_ref().is_none_or(|air| air.has_fan);
        let waiver = self.waivers.iter().find(|each| each.place_id == place.id);
        let airings = || self.airings.iter().filter(|each| each.place_id == place.id);
        let baths = self.baths.iter();
        AirNow {
            exhaust: measured(FlowOf::Exhaust),
            airing_flow: measured(FlowOf::Airing),
            off: off_in(&self.off, place.space_id).filter(|_| has_fan),
            agreed: waiver.map(|waiver| (waiver.agreed_by.clone(), waiver.set_at)),
            aired_now: airings().find(|each| each.ended_at.is_none()).cloned(),
            last_aired: airings().filter_map(|each| each.ended_at).max(),
            aired: self.aired(airings()),
            baths: baths
                .filter(|bath| bath.space_id == place.space_id)
                .cloned()
                .collect(),
            air,
            place,
        }
    }

    /// How long it was aired within the hour; what two say of the same minutes counts
    /// once.
    fn aired<'a>(&self, airings: impl Iterator<Item = &'a Airing>) -> Seconds {
        let (mut seconds, mut until) = (0, self.since);
        for airing in airings {
            if let Some(ended) = airing.ended_at {
                let from = airing.began_at.max(until);
                seconds += (ended - from).whole_seconds().max(0);
                until = until.max(ended);
            }
        }
        Seconds::new(seconds).unwrap_or_default()
    }
}
