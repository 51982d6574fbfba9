//! Solution joins a mix, or takes another's place.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::{
    Ground, HYPOCHLORITE, Vessel, guard, guard_container, life_of, liquid, may_mix_alone, state_of,
};
use crate::air;
use crate::app::App;
use crate::darkroom::dilution::{Dilution, parts_for_volume};
use crate::darkroom::joining::{JoinRefused, may_pour_together, may_top_up};
use crate::darkroom::quantities::{Microlitres, Moment, Ppb};
use crate::darkroom::silver::{self, Shift};
use crate::darkroom::state::TrayState;
use crate::darkroom::verdict::{self, Verdict};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::stock::actions::may_draw;
use crate::mixes::{Mix, PouredTogether, RULES, Shifted, ToppedUp, store};
use crate::problem::Problem;
use crate::products::{self, Place};
use crate::rights::{self, Role};

/// Fresh solution for a mix.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewTopUp {
    /// The mix.
    pub mix_id: Uuid,
    /// How much fresh working solution, in microlitres.
    pub volume_ul: i64,
    /// The stock solution that is drawn from; nothing where it is not from stock.
    pub stock_id: Option<Uuid>,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// One mix poured into another.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewJoin {
    /// The mix that is poured.
    pub poured_mix_id: Uuid,
    /// The mix it is poured into.
    pub into_mix_id: Uuid,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// The first of two fixing baths to waste, the second in its place.
#[derive(Clone, Debug, Serialize)]
pub struct NewShift {
    /// The first bath.
    pub first_mix_id: Uuid,
    /// How much of it is poured off, in microlitres.
    pub volume_ul: i64,
    /// Into which container.
    pub container: String,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// Tops a mix up with fresh solution of the same product and dilution.
///
/// # Errors
/// More than the vessel holds; a mix that nothing may be added to.
pub async fn top_up(
    app: &App,
    permit: &Permit<rights::Mix>,
    key: Key,
    new: NewTopUp,
) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_top_up(book, role, new).await })
        })
        .await
}

async fn write_top_up(book: &mut Book<'_>, role: Role, new: NewTopUp) -> Result<()> {
    let ground = Ground::of(book, new.mix_id, new.happened_at_us).await?;
    may_mix_alone(book, &ground.settings, ground.at).await?;
    let mix = &ground.mix;
    let product = mix
        .product_id
        .ok_or(Error::Refused(Problem::UnknownLiquid))?;
    let product = products::product(book.tx(), product).await?;
    let product = product.ok_or(Error::NotFound)?;
    super::mixing::may_mix_product(&product, role)?;
    if let Vessel::Tray(tray) = &ground.vessel {
        air::may_start_in(book.tx(), tray.line_id, &product).await?;
    }
    let state = ground.state(book).await?;
    may_top_up(&state, true, true, ground.moment(book.now())).map_err(refused)?;
    let room_ul = ground.vessel.holds_ul() - mix.level_ul();
    if new.volume_ul > room_ul {
        let holds_ul = room_ul.max(0);
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    let contaminants = store::contaminants(book.tx(), mix.id).await?;
    let there = liquid(&mix.groups, &contaminants)?;
    guard("volume", there, there, true)?;
    let concentrate_ul = concentrate_ul(mix, new.volume_ul)?;
    if let Some(stock) = new.stock_id {
        let then = ground.at.unwrap_or(book.now());
        may_draw(book.tx(), stock, product.id, concentrate_ul, then).await?;
    }
    let entry = ToppedUp {
        rules: RULES,
        mix_id: mix.id,
        stand: mix.stand,
        product_id: product.id,
        product_version: product.version,
        volume_ul: new.volume_ul,
        concentrate_ul,
        stock_id: new.stock_id,
        life_s: life_of(
            mix,
            &ground.vessel,
            mix.storage,
            mix.charged_ul + new.volume_ul,
        )?,
    };
    book.append_at(ground.at, &entry).await?;
    Ok(())
}

/// The concentrate in fresh solution at a mix's own dilution.
pub(in crate::mixes) fn concentrate_ul(mix: &Mix, volume_ul: i64) -> Result<i64> {
    let dilution = Dilution::new(mix.parts_thousandths).map_err(Error::fault)?;
    let volume = Microlitres::new(volume_ul).map_err(Error::fault)?;
    let made = parts_for_volume(dilution, volume).map_err(Error::fault)?;
    Ok(made.concentrate.get())
}

/// Pours one mix into another of the same product and dilution.
///
/// # Errors
/// More than the vessel holds; two mixes that may not be joined.
pub async fn pour_together(
    app: &App,
    permit: &Permit<rights::Mix>,
    key: Key,
    new: NewJoin,
) -> Result<Done> {
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_join(book, new).await })
        })
        .await
}

async fn write_join(book: &mut Book<'_>, new: NewJoin) -> Result<()> {
    if new.poured_mix_id == new.into_mix_id {
        return Err(Error::field("into", Problem::NotAChoice));
    }
    let into = Ground::of(book, new.into_mix_id, new.happened_at_us).await?;
    let poured = Ground::of(book, new.poured_mix_id, new.happened_at_us).await?;
    let now = book.now();
    let entry = joined(book.tx(), &into, &poured, now).await?;
    book.append_at(into.at, &entry).await?;
    Ok(())
}

/// What the book would say of one mix poured into another.
///
/// # Errors
/// As [`pour_together`].
pub(in crate::mixes) async fn joined(
    tx: &mut RoomTx,
    into: &Ground,
    poured: &Ground,
    now: OffsetDateTime,
) -> Result<PouredTogether> {
    let is_one_product = into.mix.product_id == poured.mix.product_id;
    let is_one_dilution = into.mix.parts_thousandths == poured.mix.parts_thousandths;
    let contaminants = store::contaminants(tx, poured.mix.id).await?;
    guard(
        "into",
        liquid(&poured.mix.groups, &contaminants)?,
        liquid(&into.mix.groups, &[])?,
        is_one_product,
    )?;
    let receiving = state_of(tx, &into.mix, &into.settings).await?;
    let joining = state_of(tx, &poured.mix, &poured.settings).await?;
    let at = into.moment(now);
    may_pour_together(&receiving, &joining, is_one_product, is_one_dilution, at)
        .map_err(refused)?;
    let room_ul = into.vessel.holds_ul() - into.mix.level_ul();
    let volume_ul = poured.mix.charged_ul;
    if poured.mix.level_ul() > room_ul {
        let holds_ul = room_ul.max(0);
        return Err(Error::field("into", Problem::OverTheRim { holds_ul }));
    }
    let charged_ul = into.mix.charged_ul + volume_ul;
    Ok(PouredTogether {
        rules: RULES,
        mix_id: into.mix.id,
        stand: into.mix.stand,
        poured_mix_id: poured.mix.id,
        poured_from: poured.mix.stand,
        volume_ul,
        poured_spent_nl: poured.mix.spent_nl,
        poured_age_ppb: age_ppb(&poured.mix, at)?,
        life_s: life_of(&into.mix, &into.vessel, into.mix.storage, charged_ul)?,
    })
}

/// The part of a mix's life that is used at an instant; nothing where nobody knows.
fn age_ppb(mix: &Mix, at: Moment) -> Result<i64> {
    let used = mix.age()?.map(|age| age.used_at(at).map_err(Error::fault));
    Ok(used.transpose()?.map_or(0, Ppb::get))
}

/// Why solutions are not joined, said to whoever wants it.
fn refused(cause: JoinRefused) -> Error {
    match cause {
        JoinRefused::Quantity(fault) => Error::fault(fault),
        cause => Error::Refused(Problem::MayNotJoin(cause)),
    }
}

/// Discards the first of two fixing baths and moves the second up.
///
/// # Errors
/// No second bath in the line; one that is used up itself, or a pair that moved
/// up often enough: then both are replaced.
pub async fn shift(
    app: &App,
    permit: &Permit<rights::Mix>,
    key: Key,
    new: NewShift,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_shift(book, new).await })
        })
        .await
}

async fn write_shift(book: &mut Book<'_>, new: NewShift) -> Result<()> {
    let first = Ground::of(book, new.first_mix_id, new.happened_at_us).await?;
    let now = book.now();
    let second = second_to_move(book.tx(), &first, now).await?;
    if new.volume_ul > first.mix.charged_ul {
        let holds_ul = first.mix.charged_ul;
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    guard_container(book.tx(), &first.mix, &new.container).await?;
    let entry = moved_up(&first, &second, new.volume_ul, new.container)?;
    book.append_at(first.at, &entry).await?;
    Ok(())
}

/// What the book would say of a shift that may be made.
///
/// # Errors
/// A fault: figures that no arithmetic holds.
pub(in crate::mixes) fn moved_up(
    first: &Ground,
    second: &Mix,
    volume_ul: i64,
    container: String,
) -> Result<Shifted> {
    Ok(Shifted {
        rules: RULES,
        mix_id: second.id,
        from: second.stand,
        to: first.mix.stand,
        first_mix_id: first.mix.id,
        volume_ul,
        destination: "collected".to_owned(),
        container,
        life_s: life_of(second, &first.vessel, second.storage, second.charged_ul)?,
        shifts: first.mix.shifts + 1,
    })
}

/// The second bath that may move up into the place of a first one now.
///
/// # Errors
/// As [`shift`].
pub(in crate::mixes) async fn second_to_move(
    tx: &mut RoomTx,
    first: &Ground,
    now: OffsetDateTime,
) -> Result<Mix> {
    let second = second_of(tx, &first.mix).await?;
    may_shift(tx, first, &second, now).await?;
    Ok(second)
}

/// The second bath of the pair a first bath stands in.
async fn second_of(tx: &mut RoomTx, first: &Mix) -> Result<Mix> {
    let none = || Error::Refused(Problem::NoSecondBath);
    if first.stand.place != Place::First {
        return Err(none());
    }
    let standing = store::standing(tx).await?;
    let is_second =
        |mix: &Mix| mix.stand.line_id == first.stand.line_id && mix.stand.place == Place::Second;
    let second = standing.into_iter().find(is_second).ok_or_else(none)?;
    match second.product_id == first.product_id {
        true => Ok(second),
        false => Err(none()),
    }
}

async fn may_shift(
    tx: &mut RoomTx,
    first: &Ground,
    second: &Mix,
    now: OffsetDateTime,
) -> Result<()> {
    // The second bath would go into the first one's tray before anybody rinsed it.
    let contaminants = store::contaminants(tx, first.mix.id).await?;
    if contaminants.iter().any(|name| name == HYPOCHLORITE) {
        return Err(Error::Refused(Problem::RinseFirst));
    }
    let holds_ul = first.vessel.holds_ul();
    if second.level_ul() > holds_ul {
        return Err(Error::Refused(Problem::OverTheRim { holds_ul }));
    }
    let state = state_of(tx, second, &first.settings).await?;
    let judged = verdict::judge(&TrayState::Mix(Box::new(state)), first.moment(now));
    let is_used_up = judged.map_err(Error::fault)?.verdict >= Verdict::Replace;
    let done = u32::try_from(first.mix.shifts).map_err(Error::fault)?;
    let allowed = u32::try_from(first.settings.fixer_shifts).map_err(Error::fault)?;
    match silver::shift(done, allowed, is_used_up) {
        Shift::MoveUp => Ok(()),
        Shift::ReplaceBoth => Err(Error::Refused(Problem::ReplaceBoth)),
    }
}
