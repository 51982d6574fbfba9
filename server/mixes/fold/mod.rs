//! What entries do to mixes: each reads the mix as earlier entries left it, does
//! the trade's arithmetic, and writes it back.
//!
//! Ages run by when things happened, everything else in the order of the book.

mod store;

use time::OffsetDateTime;
use uuid::Uuid;

use super::stock::store::draw;
use super::store::mix;
use super::{
    DiscardUndone, Discarded, Mix, Mixed, PouredTogether, Rinsed, Shifted, Stand, Stored, ToppedUp,
    UnknownFound,
};
use crate::clock::{micros, moment};
use crate::darkroom::age::Age;
use crate::darkroom::quantities::{Microlitres, Moment, Ppb, Seconds};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::products::Place;

/// A mix begins.
pub(super) async fn mixed(tx: &mut RoomTx, placed: &Placed<Mixed>) -> Result<()> {
    store::insert_mix(tx, placed).await?;
    let entry = &placed.entry;
    for capacity in &entry.capacities {
        store::insert_capacity(tx, entry.mix_id, capacity).await?;
    }
    if let Some(stock) = entry.stock_id {
        draw(tx, stock, entry.concentrate_ul, placed.happened_at).await?;
    }
    begin_stay(tx, entry.mix_id, entry.stand, placed.happened_at).await
}

/// Liquid that nobody can name is kept like a mix, without product and life.
pub(super) async fn unknown_found(tx: &mut RoomTx, placed: &Placed<UnknownFound>) -> Result<()> {
    store::insert_unknown(tx, placed).await?;
    begin_stay(
        tx,
        placed.entry.mix_id,
        placed.entry.stand,
        placed.happened_at,
    )
    .await
}

/// A mix is covered, uncovered, bottled or poured back.
pub(super) async fn stored(tx: &mut RoomTx, placed: &Placed<Stored>) -> Result<()> {
    let entry = &placed.entry;
    let mut mix = found(tx, entry.mix_id).await?;
    let moves = (mix.stand.tray_id, mix.stand.bottle_id) != (entry.to.tray_id, entry.to.bottle_id);
    mix.keep(entry, placed.happened_at)?;
    if moves {
        store::end_stay(tx, mix.id, placed.happened_at).await?;
    }
    store::save(tx, &mix, placed.seq).await?;
    if moves {
        begin_stay(tx, mix.id, entry.to, placed.happened_at).await?;
    }
    Ok(())
}

/// Fresh solution joins: V grows, W stays, the mix grows younger.
pub(super) async fn topped_up(tx: &mut RoomTx, placed: &Placed<ToppedUp>) -> Result<()> {
    let entry = &placed.entry;
    let mut mix = found(tx, entry.mix_id).await?;
    mix.top_up(entry, placed.happened_at)?;
    if let Some(stock) = entry.stock_id {
        draw(tx, stock, entry.concentrate_ul, placed.happened_at).await?;
    }
    store::save(tx, &mix, placed.seq).await
}

/// One mix joins another: what both were charged with and have spent adds up.
pub(super) async fn poured_together(
    tx: &mut RoomTx,
    placed: &Placed<PouredTogether>,
) -> Result<()> {
    let entry = &placed.entry;
    let mut into = found(tx, entry.mix_id).await?;
    let mut poured = found(tx, entry.poured_mix_id).await?;
    into.join(&poured, entry, placed.happened_at)?;
    poured.poured_into = Some(into.id);
    poured.stand = Stand::default();
    store::end_stay(tx, poured.id, placed.happened_at).await?;
    store::save(tx, &poured, placed.seq).await?;
    store::save(tx, &into, placed.seq).await?;
    store::save_dissolved(tx, &into).await?;
    store::follow(tx, poured.id, into.id).await?;
    store::least_capacities(tx, into.id, poured.id).await
}

/// The first bath ends and the second takes its place, with all it has spent.
pub(super) async fn shifted(tx: &mut RoomTx, placed: &Placed<Shifted>) -> Result<()> {
    let entry = &placed.entry;
    let first = found(tx, entry.first_mix_id).await?;
    end(tx, first, &entry.container, placed.happened_at, placed.seq).await?;
    let mut second = found(tx, entry.mix_id).await?;
    second.move_up(entry, placed.happened_at)?;
    store::end_stay(tx, second.id, placed.happened_at).await?;
    store::save(tx, &second, placed.seq).await?;
    begin_stay(tx, second.id, entry.to, placed.happened_at).await
}

/// A mix ends.
pub(super) async fn discarded(tx: &mut RoomTx, placed: &Placed<Discarded>) -> Result<()> {
    let mix = found(tx, placed.entry.mix_id).await?;
    let container = &placed.entry.container;
    end(tx, mix, container, placed.happened_at, placed.seq).await
}

async fn end(
    tx: &mut RoomTx,
    mut mix: Mix,
    container: &str,
    at: OffsetDateTime,
    seq: i64,
) -> Result<()> {
    let vessel = mix.stand.tray_id.or(mix.stand.bottle_id);
    if let Some(vessel) = vessel {
        store::ask_for_rinse(tx, mix.id, vessel, seq).await?;
    }
    mix.stand = Stand::default();
    mix.discarded_at = Some(at);
    mix.discarded_into = Some(container.to_owned());
    store::end_stay(tx, mix.id, at).await?;
    store::save(tx, &mix, seq).await
}

/// It was a mistake: the mix stands, and its age has run on.
pub(super) async fn discard_undone(tx: &mut RoomTx, placed: &Placed<DiscardUndone>) -> Result<()> {
    let mut mix = found(tx, placed.entry.mix_id).await?;
    mix.stand = placed.entry.stand;
    mix.discarded_at = None;
    mix.discarded_into = None;
    // A bottle is no stay: the last one was over before.
    if mix.stand.tray_id.is_some() {
        store::reopen_stay(tx, mix.id).await?;
    }
    store::save(tx, &mix, placed.seq).await
}

/// A vessel was rinsed.
pub(super) async fn rinsed(tx: &mut RoomTx, placed: &Placed<Rinsed>) -> Result<()> {
    let stand = placed.entry.stand;
    let vessel = stand.tray_id.or(stand.bottle_id).ok_or(Error::NotFound)?;
    store::rinsed(tx, vessel, placed.seq).await
}

async fn found(tx: &mut RoomTx, id: Uuid) -> Result<Mix> {
    mix(tx, id).await?.ok_or(Error::NotFound)
}

/// A bottle is no stay: prints do not go through it.
async fn begin_stay(tx: &mut RoomTx, mix: Uuid, stand: Stand, at: OffsetDateTime) -> Result<()> {
    match (stand.tray_id, stand.line_id) {
        (Some(tray), Some(line)) => store::begin_stay(tx, mix, (tray, line), stand.place, at).await,
        _ => Ok(()),
    }
}

fn volume(microlitres: i64) -> Result<Microlitres> {
    Microlitres::new(microlitres).map_err(Error::fault)
}

impl Mix {
    /// Its age; nothing where nobody knows how long it lives.
    ///
    /// # Errors
    /// A fault: figures that no arithmetic holds.
    pub fn age(&self) -> Result<Option<Age>> {
        if self.life_s == 0 {
            return Ok(None);
        }
        let used = Ppb::new(self.age_ppb).map_err(Error::fault)?;
        let life = Seconds::new(self.life_s).map_err(Error::fault)?;
        let at = Moment::new(micros(self.age_at));
        Ok(Some(Age::new(used, at, life).map_err(Error::fault)?))
    }

    fn set_age(&mut self, age: Age) {
        self.age_ppb = age.used().get();
        self.age_at = moment(age.at().get());
        self.life_s = age.life().get();
    }

    /// From an instant on it lives at another pace.
    fn age_in(&mut self, at: OffsetDateTime, life_s: i64) -> Result<()> {
        if let Some(age) = self.age()? {
            let life = Seconds::new(life_s).map_err(Error::fault)?;
            let at = Moment::new(micros(at));
            self.set_age(age.stored(at, life).map_err(Error::fault)?);
        }
        Ok(())
    }

    /// Fresh solution is added to it.
    pub(crate) fn top_up(&mut self, entry: &ToppedUp, at: OffsetDateTime) -> Result<()> {
        if let Some(age) = self.age()? {
            let volumes = (volume(self.charged_ul)?, volume(entry.volume_ul)?);
            let younger = age.topped_up(Moment::new(micros(at)), volumes.0, volumes.1);
            self.set_age(younger.map_err(Error::fault)?);
            self.age_in(at, entry.life_s)?;
        }
        self.charged_ul += entry.volume_ul;
        self.concentrate_ul += entry.concentrate_ul;
        Ok(())
    }

    /// It is kept otherwise from an instant on.
    pub(crate) fn keep(&mut self, entry: &Stored, at: OffsetDateTime) -> Result<()> {
        self.age_in(at, entry.life_s)?;
        self.storage = entry.storage;
        self.stand = entry.to;
        Ok(())
    }

    /// Another mix is poured into it.
    pub(crate) fn join(
        &mut self,
        poured: &Self,
        entry: &PouredTogether,
        at: OffsetDateTime,
    ) -> Result<()> {
        if let (Some(age), Some(other)) = (self.age()?, poured.age()?) {
            let volumes = (volume(self.charged_ul)?, volume(poured.charged_ul)?);
            let then = Moment::new(micros(at));
            let joined = age.poured_together(then, volumes.0, other, volumes.1);
            self.set_age(joined.map_err(Error::fault)?);
            self.age_in(at, entry.life_s)?;
        }
        self.takes_up(poured);
        Ok(())
    }

    /// The second of two baths takes the first one's place.
    pub(crate) fn move_up(&mut self, entry: &Shifted, at: OffsetDateTime) -> Result<()> {
        self.age_in(at, entry.life_s)?;
        self.stand = entry.to;
        self.shifts = entry.shifts;
        Ok(())
    }

    /// Takes up another mix whole, but for its age.
    fn takes_up(&mut self, other: &Self) {
        self.charged_ul += other.charged_ul;
        self.concentrate_ul += other.concentrate_ul;
        self.spent_nl += other.spent_nl;
        for (mine, theirs) in self.silver_ug.iter_mut().zip(other.silver_ug) {
            *mine += theirs;
        }
        self.bromide_ug += other.bromide_ug;
        self.alkali_neq += other.alkali_neq;
        self.carried_out_ul += other.carried_out_ul;
        self.received_ul += other.received_ul;
        self.oldest_at = self.oldest_at.min(other.oldest_at);
        self.unknown_sheets_at = self.unknown_sheets_at.max(other.unknown_sheets_at);
        self.shifts = self.shifts.max(other.shifts);
        if self.origin == crate::darkroom::state::Origin::Mixed {
            self.origin = other.origin;
        }
    }

    /// Its place among fixing baths.
    #[must_use]
    pub const fn place(&self) -> Place {
        self.stand.place
    }
}
