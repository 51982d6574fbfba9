//! What people do with mixes.

mod ending;
mod joining;
mod mixing;
mod storing;

pub(in crate::mixes) use ending::may_undo;
pub use ending::{NewDiscard, NewRinse, UndoDiscard, discard, rinse, undo_discard};
pub use joining::{NewJoin, NewShift, NewTopUp, pour_together, shift, top_up};
pub(in crate::mixes) use joining::{joined, moved_up, second_to_move};
pub use mixing::{
    NewMix, NewOpening, NewUnknown, Recipe, may_mix, mix, open, recipe, report_unknown,
};
pub(in crate::mixes) use mixing::{may_mix_in, may_mix_product, parts};
pub(in crate::mixes) use storing::stored;
pub use storing::{Move, NewMove, keep};

use serde::Serialize;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::{Figures, Findings, Mix, Stand, Storage, store};
use crate::app::App;
use crate::bench::bottles::{self, Bottle};
use crate::bench::{self, Step, Tray};
use crate::clock::{micros, moment};
use crate::darkroom::age::oxidising_life;
use crate::darkroom::incompatibility::{
    Clash, Groups, Liquid, Pour, judge_pour, judge_pour_of_one_product,
};
use crate::darkroom::quantities::{Area, Microlitres, Moment, Seconds, TenthsMm};
use crate::darkroom::state::MixState;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input;
use crate::logbook::Book;
use crate::problem::Problem;
use crate::products::{self, Kind, Place};
use crate::rights;
use crate::rooms::{self, Settings};

/// A tray or a bottle, by its id.
#[derive(Clone, Copy, Debug, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum VesselId {
    /// A tray.
    Tray(Uuid),
    /// A bottle.
    Bottle(Uuid),
}

/// What a mix stands in.
#[derive(Clone, Debug)]
pub enum Vessel {
    /// A tray of a line.
    Tray(Tray),
    /// A bottle.
    Bottle(Bottle),
}

impl Vessel {
    /// The tray or bottle of an id.
    ///
    /// # Errors
    /// None of that id.
    pub async fn find(tx: &mut RoomTx, id: VesselId) -> Result<Self> {
        let found = match id {
            VesselId::Tray(id) => bench::tray(tx, id).await?.map(Self::Tray),
            VesselId::Bottle(id) => bottles::bottle(tx, id).await?.map(Self::Bottle),
        };
        found.ok_or(Error::NotFound)
    }

    /// Where a mix stands.
    ///
    /// # Errors
    /// It is gone.
    pub async fn of(tx: &mut RoomTx, mix: &Mix) -> Result<Self> {
        let gone = Error::Refused(Problem::MixGone);
        let id = match (mix.stand.tray_id, mix.stand.bottle_id) {
            (Some(id), _) => VesselId::Tray(id),
            (None, Some(id)) => VesselId::Bottle(id),
            (None, None) => return Err(gone),
        };
        Self::find(tx, id).await
    }

    /// Its id.
    #[must_use]
    pub const fn id(&self) -> Uuid {
        match self {
            Self::Tray(tray) => tray.id,
            Self::Bottle(bottle) => bottle.id,
        }
    }

    /// What people call it.
    #[must_use]
    pub fn name(&self) -> &str {
        match self {
            Self::Tray(tray) => &tray.name,
            Self::Bottle(bottle) => &bottle.name,
        }
    }

    /// How a mix stands in it.
    #[must_use]
    pub fn stand(&self) -> Stand {
        match self {
            Self::Tray(tray) => Stand {
                tray_id: Some(tray.id),
                line_id: Some(tray.line_id),
                bottle_id: None,
                place: place_of(tray.step),
            },
            Self::Bottle(bottle) => Stand {
                bottle_id: Some(bottle.id),
                ..Stand::default()
            },
        }
    }

    /// What it holds up to its rim, in microlitres.
    #[must_use]
    pub fn holds_ul(&self) -> i64 {
        match self {
            Self::Tray(tray) => volume_at(tray, tray.inside_depth_tenths_mm),
            Self::Bottle(bottle) => bottle.holds_ul,
        }
    }

    /// What covers a print in it, in microlitres; anything in a bottle.
    #[must_use]
    pub fn least_ul(&self) -> i64 {
        match self {
            Self::Tray(tray) => volume_at(tray, tray.least_depth_tenths_mm),
            Self::Bottle(_) => 0,
        }
    }

    /// How a volume is kept in it when nobody covers it.
    #[must_use]
    pub fn storage(&self, volume_ul: i64) -> Storage {
        match self {
            Self::Tray(_) => Storage::OpenTray,
            // Full from nine tenths on: from memory.
            Self::Bottle(bottle) if volume_ul >= bottle.holds_ul / 10 * 9 => Storage::FullBottle,
            Self::Bottle(_) => Storage::PartBottle,
        }
    }

    /// Whether it is used no more.
    #[must_use]
    pub const fn is_retired(&self) -> bool {
        match self {
            Self::Tray(tray) => tray.is_retired,
            Self::Bottle(bottle) => bottle.is_retired,
        }
    }

    /// Refuses a vessel that a mix cannot go into now.
    ///
    /// # Errors
    /// It is retired, full, or waits for a rinse.
    async fn must_be_empty(&self, tx: &mut RoomTx) -> Result<()> {
        if self.is_retired() {
            return Err(Error::Refused(Problem::Retired));
        }
        if store::in_vessel(tx, self.id()).await?.is_some() {
            return Err(Error::Refused(Problem::TrayFull));
        }
        if store::waits_for_rinse(tx, self.id()).await? {
            return Err(Error::Refused(Problem::RinseFirst));
        }
        Ok(())
    }

    /// Refuses a kind of bath that prints do not meet in this tray.
    ///
    /// # Errors
    /// The tray is for another.
    fn must_be_for(&self, kind: Kind) -> Result<()> {
        match self {
            Self::Tray(tray) if !serves(tray.step, kind) => Err(Error::Refused(Problem::OtherStep)),
            _ => Ok(()),
        }
    }
}

/// Whether prints meet this kind of bath in a tray with this step.
#[must_use]
pub fn serves(step: Step, kind: Kind) -> bool {
    match step {
        Step::Any => true,
        Step::Developer => kind == Kind::Developer,
        Step::StopBath => kind == Kind::StopBath,
        Step::Fixer | Step::FirstFixer | Step::SecondFixer => kind == Kind::Fixer,
        Step::HoldingWater => kind == Kind::HoldingWater,
        Step::WashAid => kind == Kind::WashAid,
        Step::Toner => kind == Kind::Toner,
        Step::Wash => false,
    }
}

/// Which place among fixing baths a tray's step is.
#[must_use]
pub const fn place_of(step: Step) -> Place {
    match step {
        Step::FirstFixer => Place::First,
        Step::SecondFixer => Place::Second,
        _ => Place::Single,
    }
}

/// What a tray holds up to a depth, in microlitres: a cubic millimetre is a
/// microlitre, and the sides are in tenths.
#[must_use]
pub fn volume_at(tray: &Tray, depth_tenths_mm: i32) -> i64 {
    i64::from(tray.inside_long_tenths_mm)
        * i64::from(tray.inside_short_tenths_mm)
        * i64::from(depth_tenths_mm)
        / 1_000
}

/// The area of a tray's floor.
///
/// # Errors
/// A fault: measurements that no arithmetic holds.
pub fn floor_of(tray: &Tray) -> Result<Area> {
    let long = TenthsMm::new(tray.inside_long_tenths_mm.into()).map_err(Error::fault)?;
    let short = TenthsMm::new(tray.inside_short_tenths_mm.into()).map_err(Error::fault)?;
    long.by(short).map_err(Error::fault)
}

/// How long a volume lives in a vessel and storage, in seconds.
///
/// # Errors
/// A fault: figures that no arithmetic holds.
pub(super) fn life_in(
    figures: &Figures,
    vessel: &Vessel,
    storage: Storage,
    volume_ul: i64,
) -> Result<i64> {
    let life_s = match storage {
        Storage::OpenTray => figures.open_life_s,
        Storage::CoveredTray => figures.covered_life_s,
        Storage::FullBottle => figures.full_bottle_life_s,
        Storage::PartBottle => figures.part_bottle_life_s,
    };
    match vessel {
        Vessel::Tray(tray) if figures.oxidises && storage == Storage::OpenTray => {
            let volume = Microlitres::new(volume_ul).map_err(Error::fault)?;
            let reference = Seconds::new(life_s).map_err(Error::fault)?;
            let depth = TenthsMm::new(figures.depth_reference_tenths_mm.into());
            let depth = depth.map_err(Error::fault)?;
            let life = oxidising_life(reference, volume, floor_of(tray)?, depth);
            Ok(life.map_err(Error::fault)?.get())
        }
        _ => Ok(life_s),
    }
}

/// How long a mix lives from now on as it is kept, in seconds. A mix of an early
/// entry keeps no figures: it lives on at the pace it had.
fn life_of(mix: &Mix, vessel: &Vessel, storage: Storage, volume_ul: i64) -> Result<i64> {
    mix.figures.as_ref().map_or(Ok(mix.life_s), |figures| {
        life_in(figures, vessel, storage, volume_ul)
    })
}

/// When something happened, as somebody says it: nothing for just now.
///
/// # Errors
/// In the future; longer ago than the room takes notes for.
pub(crate) fn happened(
    now: OffsetDateTime,
    happened_at_us: Option<i64>,
    settings: &Settings,
) -> Result<Option<OffsetDateTime>> {
    let Some(at) = happened_at_us else {
        return Ok(None);
    };
    let at = moment(at);
    input::happened(at, now, settings.late_note_minutes)
        .map_err(|problem| Error::field("happened_at", problem))?;
    Ok(Some(at))
}

/// Refuses concentrate to whoever is alone then, in a room that forbids it.
///
/// # Errors
/// Nobody else was in the room, as far as it knows.
pub(in crate::mixes) async fn may_mix_alone(
    book: &mut Book<'_>,
    settings: &Settings,
    at: Option<OffsetDateTime>,
) -> Result<()> {
    let who = (book.actor(), at.unwrap_or(book.now()));
    must_not_be_alone(book.tx(), settings, who).await
}

/// The same, for a sheet that says what to pour: it is refused before anybody pours.
///
/// # Errors
/// Nobody else is in the room, as far as it knows.
pub(in crate::mixes) async fn may_pour(
    app: &App,
    permit: &Permit<rights::Mix>,
    happened_at_us: Option<i64>,
) -> Result<()> {
    let at = happened_at_us.map_or_else(|| app.clock().now(), moment);
    let who = (Some(permit.person().id), at);
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                must_not_be_alone(tx, &settings, who).await
            })
        })
        .await
}

async fn must_not_be_alone(
    tx: &mut RoomTx,
    settings: &Settings,
    (who, at): (Option<Uuid>, OffsetDateTime),
) -> Result<()> {
    if !settings.forbids_mixing_alone || store::others_present(tx, who, at).await? {
        return Ok(());
    }
    Err(Error::Refused(Problem::MixesAlone))
}

/// A mix to do something with, and when that happened.
pub(in crate::mixes) struct Ground {
    pub(in crate::mixes) mix: Mix,
    pub(in crate::mixes) vessel: Vessel,
    pub(in crate::mixes) settings: Settings,
    pub(in crate::mixes) at: Option<OffsetDateTime>,
}

impl Ground {
    pub(in crate::mixes) async fn of(
        book: &mut Book<'_>,
        id: Uuid,
        happened_at_us: Option<i64>,
    ) -> Result<Self> {
        let now = book.now();
        let mut ground = Self::seen(book.tx(), id).await?;
        ground.at = happened(now, happened_at_us, &ground.settings)?;
        // Nothing happens to a mix before it stood where it stands.
        let since = ground.mix.stands_since.unwrap_or(ground.mix.mixed_at);
        if ground
            .at
            .is_some_and(|at| at + Duration::minutes(1) < since)
        {
            return Err(Error::field("happened_at", Problem::BeforeItStood));
        }
        Ok(ground)
    }

    /// A mix as it stands, for somebody who looks before anything is done.
    pub(in crate::mixes) async fn seen(tx: &mut RoomTx, id: Uuid) -> Result<Self> {
        let mix = store::mix(tx, id).await?.ok_or(Error::NotFound)?;
        Ok(Self {
            vessel: Vessel::of(tx, &mix).await?,
            settings: rooms::settings(tx).await?,
            mix,
            at: None,
        })
    }

    /// Everything a verdict on the mix stands on.
    pub(in crate::mixes) async fn state(&self, book: &mut Book<'_>) -> Result<MixState> {
        state_of(book.tx(), &self.mix, &self.settings).await
    }

    /// When it happened, for the trade's arithmetic.
    fn moment(&self, now: OffsetDateTime) -> Moment {
        Moment::new(micros(self.at.unwrap_or(now)))
    }
}

/// The present moment of a writing, for the trade's arithmetic.
pub(in crate::mixes) fn happened_to(book: &Book<'_>) -> Moment {
    Moment::new(micros(book.now()))
}

async fn state_of(tx: &mut RoomTx, mix: &Mix, settings: &Settings) -> Result<MixState> {
    let findings = Findings::of(tx, std::slice::from_ref(mix)).await?;
    super::judging::state(mix, &findings, settings)
}

/// A liquid by its product's groups and what came into it besides; a product
/// without groups, or something nobody can name, is of an unknown nature.
fn liquid(groups: &[String], contaminants: &[String]) -> Result<Liquid> {
    if groups.is_empty() || contaminants.iter().any(|name| name == UNKNOWN) {
        return Ok(Liquid::Unknown);
    }
    let all = [products::groups(groups)?, products::groups(contaminants)?].concat();
    Ok(Liquid::Solution(Groups::from(all)))
}

/// What a mix can do with what came into it, where that is more than spoiling it.
///
/// # Errors
/// A fault: groups the program does not know.
pub fn came_into(mix: &Mix, contaminants: &[String]) -> Result<Option<Clash>> {
    let known: Vec<String> = contaminants
        .iter()
        .filter(|name| *name != UNKNOWN)
        .cloned()
        .collect();
    let judged = judge_pour(liquid(&mix.groups, &[])?, liquid(&known, &[])?);
    Ok(match judged {
        Pour::Never(clash) | Pour::NotInOneContainer(clash) => Some(clash),
        Pour::Allowed | Pour::Unknown => None,
    })
}

/// How household bleach is written among contaminants.
pub(super) const HYPOCHLORITE: &str = "hypochlorite";

/// How a contaminant nobody can name is written.
pub(super) const UNKNOWN: &str = "unknown";

/// Refuses what must not be poured together. Nobody can override it.
fn guard(field: &'static str, one: Liquid, other: Liquid, is_one_product: bool) -> Result<()> {
    let judged = match is_one_product {
        true => judge_pour_of_one_product(one),
        false => judge_pour(one, other),
    };
    let problem = match judged {
        Pour::Allowed => return Ok(()),
        Pour::Never(clash) => Problem::MustNotMeet(clash),
        Pour::NotInOneContainer(clash) => Problem::NotInOneContainer(clash),
        Pour::Unknown => Problem::UnknownGroups,
    };
    Err(Error::field(field, problem))
}

/// Refuses what must not meet in one container.
async fn guard_container(tx: &mut RoomTx, mix: &Mix, container: &str) -> Result<()> {
    let contaminants = store::contaminants(tx, mix.id).await?;
    let before = store::container(tx, container).await?;
    may_share(mix, &contaminants, &before)
}

/// Whether a mix may go where this went before.
pub(in crate::mixes) fn may_share(
    mix: &Mix,
    contaminants: &[String],
    before: &[store::Poured],
) -> Result<()> {
    let poured = liquid(&mix.groups, contaminants)?;
    for before in before {
        let other = liquid(&before.groups, &before.contaminants)?;
        let is_pure = contaminants.is_empty() && before.contaminants.is_empty();
        let is_one_product = is_pure && before.product_id == mix.product_id;
        guard(
            "container",
            poured,
            other,
            is_one_product && mix.product_id.is_some(),
        )?;
    }
    Ok(())
}
