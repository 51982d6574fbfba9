//! What the people who mix do with the baths of an evening: fill the trays, look
//! after them as the board says, and put everything away.

use uuid::Uuid;

use super::bench::{Bath, Here, Row, bath};
use super::draw::Draw;
use super::people::{OTTILIE, Who};
use super::stage::Stage;
use super::{Cellar, testing};
use crate::bench::Step;
use crate::bench::finishing::actions::{Emptying, empty_wash};
use crate::darkroom::verdict::Verdict;
use crate::error::{Error, Result};
use crate::mixes::actions::{
    Move, NewDiscard, NewMix, NewMove, NewShift, NewTopUp, VesselId, discard, keep, mix, shift,
    top_up,
};
use crate::mixes::stock::actions::{NewStock, make_stock};
use crate::mixes::stock::stocks;
use crate::mixes::{Mix, Storage, Why};
use crate::problem::Problem;
use crate::products::Kind;

/// A bath is topped up once prints carried so much of it out, in microlitres.
const TOP_UP_UL: i64 = 120_000;

/// Whoever mixes this: some baths only a steward does.
fn mixer(step: Step, by: Who) -> Who {
    match step {
        Step::Toner => OTTILIE,
        _ => by,
    }
}

/// Which kind of bath stands in a tray with this step; a developer where any may.
pub(super) const fn kind_of(step: Step) -> Kind {
    match step {
        Step::Developer | Step::Any | Step::Wash => Kind::Developer,
        Step::StopBath => Kind::StopBath,
        Step::Fixer | Step::FirstFixer | Step::SecondFixer => Kind::Fixer,
        Step::HoldingWater => Kind::HoldingWater,
        Step::WashAid => Kind::WashAid,
        Step::Toner => Kind::Toner,
    }
}

/// Fills the trays of some lines: from their bottles, else with something fresh.
pub(super) async fn opens(stage: &mut Stage, cellar: &Cellar, rows: &[Row], by: Who) -> Result<()> {
    let look = stage.looks().await?;
    let trays = rows.iter().flat_map(|row| cellar.bench.trays(*row));
    for here in trays.filter(|here| here.step != Step::Toner) {
        let Some(bath) = bath(&cellar.shelf, here) else {
            continue;
        };
        if let Some((mix, _)) = look.in_tray(here.tray) {
            if mix.storage == Storage::CoveredTray {
                moves(stage, by, mix.id, Move::Uncover).await?;
            }
            continue;
        }
        let bottled = here.bottle.and_then(|bottle| look.in_bottle(bottle));
        match bottled {
            None => fills(stage, by, here, bath).await?,
            // A used-up developer is not worth pouring back.
            Some((old, judged))
                if here.step == Step::Developer && judged.verdict >= Verdict::Replace =>
            {
                pours_off(stage, by, old, (Kind::Developer, Why::Spent)).await?;
                fills(stage, by, here, bath).await?;
            }
            Some((old, _)) => moves(stage, by, old.id, Move::Return(here.tray)).await?,
        }
    }
    tends(stage, cellar, rows, by).await
}

/// Mixes a tray's usual bath in it, and takes the first readings of it.
pub(super) async fn fills(stage: &mut Stage, by: Who, here: Here, bath: Bath) -> Result<()> {
    let by = mixer(here.step, by);
    let new = NewMix {
        vessel: VesselId::Tray(here.tray),
        dilution_id: bath.dilution,
        volume_ul: bath.volume_ul,
        stock_id: draws(stage, by, bath).await?,
        happened_at_us: None,
    };
    let mixed = stage.act(by, mix, new).await?.id("mix")?;
    testing::when_fresh(stage, by, here, mixed).await
}

/// The stock solution a bath is drawn from; a packet is made up where none is left.
async fn draws(stage: &mut Stage, by: Who, bath: Bath) -> Result<Option<Uuid>> {
    let Some((product_id, volume_ul)) = bath.stock else {
        return Ok(None);
    };
    let there = stage
        .reads(move |tx| Box::pin(async move { stocks(tx, Some(product_id)).await }))
        .await?;
    let now = stage.now();
    let good = there
        .iter()
        .find(|stock| stock.may_be_drawn(now) && stock.left_ul() >= volume_ul);
    if let Some(stock) = good {
        return Ok(Some(stock.id));
    }
    let new = NewStock {
        product_id,
        packets_thousandths: 1_000,
        happened_at_us: None,
    };
    let made = stage.act(by, make_stock, new).await?;
    Ok(Some(made.id("stock_solution")?))
}

/// Covers, uncovers, bottles or pours back a mix.
pub(super) async fn moves(stage: &mut Stage, by: Who, mix_id: Uuid, to: Move) -> Result<()> {
    let new = NewMove {
        mix_id,
        to,
        happened_at_us: None,
    };
    stage.act(by, keep, new).await?;
    Ok(())
}

/// Pours a mix into the canister for its kind.
pub(super) async fn pours_off(
    stage: &mut Stage,
    by: Who,
    old: &Mix,
    (kind, why): (Kind, Why),
) -> Result<()> {
    let container = stage.canisters.take(kind, old.level_ul());
    pours_into(stage, by, old, (why, container)).await
}

/// Pours a mix into a canister of this name.
pub(super) async fn pours_into(
    stage: &mut Stage,
    by: Who,
    old: &Mix,
    (why, container): (Why, String),
) -> Result<()> {
    let new = NewDiscard {
        mix_id: old.id,
        volume_ul: old.level_ul(),
        container,
        why,
        happened_at_us: None,
    };
    stage.act(by, discard, new).await?;
    Ok(())
}

/// Looks after some lines as the board says: replaces, tests, tops up.
pub(super) async fn tends(stage: &mut Stage, cellar: &Cellar, rows: &[Row], by: Who) -> Result<()> {
    let mut look = stage.looks().await?;
    for here in rows.iter().flat_map(|row| cellar.bench.trays(*row)) {
        let Some((mix, judged)) = look.in_tray(here.tray) else {
            continue;
        };
        match judged.verdict {
            Verdict::Replace => {
                replaces(stage, cellar, here, by).await?;
                look = stage.looks().await?;
            }
            Verdict::TestFirst => testing::in_doubt(stage, by, here, (mix, judged)).await?,
            Verdict::Ready if here.step == Step::Developer => {
                tops_up(stage, by, mix, bath(&cellar.shelf, here)).await?;
            }
            Verdict::Ready | Verdict::Unknown | Verdict::NothingRecorded => {}
        }
    }
    Ok(())
}

async fn tops_up(stage: &mut Stage, by: Who, mix: &Mix, bath: Option<Bath>) -> Result<()> {
    let Some(bath) = bath.filter(|_| mix.carried_out_ul >= TOP_UP_UL) else {
        return Ok(());
    };
    // To the mark again, by fifty millilitres.
    let volume_ul = (bath.volume_ul - mix.level_ul()) / 50_000 * 50_000;
    if volume_ul < TOP_UP_UL / 2 {
        return Ok(());
    }
    let stock_id = match mix.stock_id {
        Some(_) => draws(stage, by, bath).await?,
        None => None,
    };
    let new = NewTopUp {
        mix_id: mix.id,
        volume_ul,
        stock_id,
        happened_at_us: None,
    };
    stage.act(by, top_up, new).await?;
    Ok(())
}

/// Replaces what stands in a tray. The first of two fixing baths goes and the
/// second moves up, until both are replaced.
pub(super) async fn replaces(
    stage: &mut Stage,
    cellar: &Cellar,
    here: Here,
    by: Who,
) -> Result<()> {
    let look = stage.looks().await?;
    let old = look.mix_in(here.tray)?;
    if here.step != Step::FirstFixer {
        pours_off(stage, by, old, (kind_of(here.step), Why::Spent)).await?;
        return refills(stage, cellar, here, by).await;
    }
    let second = cellar.bench.tray(here.row, Step::SecondFixer)?;
    let new = NewShift {
        first_mix_id: old.id,
        volume_ul: old.level_ul(),
        container: stage.canisters.take(Kind::Fixer, old.level_ul()),
        happened_at_us: None,
    };
    match stage.act(by, shift, new).await {
        Ok(_) => refills(stage, cellar, second, by).await,
        Err(Error::Refused(Problem::ReplaceBoth | Problem::NoSecondBath)) => {
            for tray in [here, second] {
                if let Some((old, _)) = look.in_tray(tray.tray) {
                    pours_off(stage, by, old, (Kind::Fixer, Why::Spent)).await?;
                }
                refills(stage, cellar, tray, by).await?;
            }
            Ok(())
        }
        Err(other) => Err(other),
    }
}

/// Fills a tray that was emptied.
pub(super) async fn refills(stage: &mut Stage, cellar: &Cellar, here: Here, by: Who) -> Result<()> {
    match bath(&cellar.shelf, here) {
        Some(bath) => fills(stage, by, here, bath).await,
        None => Ok(()),
    }
}

/// Puts the baths of some lines away for the night.
pub(super) async fn closes(
    stage: &mut Stage,
    cellar: &Cellar,
    rows: &[Row],
    by: Who,
) -> Result<()> {
    let look = stage.looks().await?;
    let mut draw = Draw::of(stage.seed, "closes", stage.now().unix_timestamp());
    for here in rows.iter().flat_map(|row| cellar.bench.trays(*row)) {
        let Some((mix, judged)) = look.in_tray(here.tray) else {
            continue;
        };
        match (here.step, here.bottle) {
            (Step::Developer, Some(bottle))
                if judged.verdict == Verdict::Ready && draw.happens(20) =>
            {
                moves(stage, by, mix.id, Move::Bottle(bottle)).await?;
            }
            (Step::Developer | Step::HoldingWater, _) => {
                pours_off(stage, by, mix, (kind_of(here.step), Why::Spent)).await?;
            }
            (_, Some(bottle)) => moves(stage, by, mix.id, Move::Bottle(bottle)).await?,
            (_, None) => moves(stage, by, mix.id, Move::Cover).await?,
        }
    }
    for row in rows {
        empties(stage, cellar, *row, by).await?;
    }
    Ok(())
}

/// Takes the last prints out of a line's wash, where somebody noted any.
async fn empties(stage: &mut Stage, cellar: &Cellar, row: Row, by: Who) -> Result<()> {
    let new = Emptying {
        emptied_line_id: cellar.bench.line(row)?,
    };
    match stage.act(by, empty_wash, new).await {
        Ok(_) | Err(Error::Refused(Problem::WashEmpty)) => Ok(()),
        Err(other) => Err(other),
    }
}
