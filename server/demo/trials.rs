//! What people of the demo try, mix for once, pour together or forget.

use time::Duration;
use uuid::Uuid;

use super::bench::Row;
use super::keeping::{fills, moves, pours_off, refills};
use super::papers::EIGHT_BY_TEN;
use super::people::{DAGNY, MIREA, OTTILIE, Who};
use super::printing::{Prints, notes};
use super::stage::Stage;
use super::{Cellar, testing};
use crate::bench::Step;
use crate::error::Result;
use crate::mixes::actions::{Move, NewJoin, NewMix, VesselId, mix, pour_together};
use crate::mixes::readings::Taken;
use crate::mixes::{ReadingKind, Why};
use crate::outages;
use crate::products::Kind;

const LITRE_UL: i64 = 1_000_000;

/// Somebody mixes something that is not usual.
pub(super) async fn mixes(
    stage: &mut Stage,
    who: Who,
    vessel: VesselId,
    (dilution_id, volume_ul): (Uuid, i64),
) -> Result<Uuid> {
    let new = NewMix {
        vessel,
        dilution_id,
        volume_ul,
        stock_id: None,
        happened_at_us: None,
    };
    stage.act(who, mix, new).await?.id("mix")
}

/// What was mixed in the chipped tray goes again.
async fn goes_again(stage: &mut Stage, cellar: &Cellar, who: Who, what: (Kind, Why)) -> Result<()> {
    let look = stage.looks().await?;
    let tried = look.mix_in(cellar.bench.chipped()?.tray)?;
    pours_off(stage, who, tried, what).await
}

/// The supplier calls the stop bath back.
pub(super) async fn recalled(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Long, Step::StopBath)?;
    let look = stage.looks().await?;
    pours_off(
        stage,
        by,
        look.mix_in(here.tray)?,
        (Kind::StopBath, Why::Recalled),
    )
    .await?;
    refills(stage, cellar, here, by).await
}

/// Developer, thinner than anybody wanted it.
pub(super) async fn mixed_wrongly(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let vessel = VesselId::Tray(cellar.bench.chipped()?.tray);
    let wanted = (cellar.shelf.thin_developer, 2 * LITRE_UL);
    mixes(stage, MIREA, vessel, wanted).await?;
    stage.passes(Duration::minutes(3));
    goes_again(stage, cellar, MIREA, (Kind::Developer, Why::Mistaken)).await
}

/// The developer in two parts is tried, with a print.
pub(super) async fn kit(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let vessel = VesselId::Tray(cellar.bench.chipped()?.tray);
    let wanted = (cellar.shelf.two_part_developer, 2 * LITRE_UL);
    let tried = mixes(stage, OTTILIE, vessel, wanted).await?;
    stage.passes(Duration::minutes(8));
    let good = Taken::ByEye {
        kind: ReadingKind::TestPrint,
        passed: true,
    };
    let words = "Warmer than ours, and slower.";
    testing::finds(stage, OTTILIE, tried, (good, words)).await?;
    goes_again(stage, cellar, OTTILIE, (Kind::Developer, Why::Test)).await
}

/// A stop bath of citric acid is tried.
pub(super) async fn other_stop(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let vessel = VesselId::Tray(cellar.bench.chipped()?.tray);
    let tried = mixes(stage, OTTILIE, vessel, (cellar.shelf.citric, 2 * LITRE_UL)).await?;
    testing::finds(stage, OTTILIE, tried, (Taken::Ph(2_300), "")).await?;
    stage.passes(Duration::minutes(20));
    goes_again(stage, cellar, OTTILIE, (Kind::StopBath, Why::Test)).await
}

/// A litre of fixer mixed too much is poured to the second bath.
pub(super) async fn poured_together(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let bottle = VesselId::Bottle(cellar.bench.spare_bottle);
    let poured = mixes(stage, by, bottle, (cellar.shelf.fixer, LITRE_UL)).await?;
    let second = cellar.bench.tray(Row::Long, Step::SecondFixer)?;
    let new = NewJoin {
        poured_mix_id: poured,
        into_mix_id: stage.looks().await?.mix_in(second.tray)?.id,
        happened_at_us: None,
    };
    stage.act(by, pour_together, new).await?;
    Ok(())
}

/// A few prints are toned; the toner comes from its jug and goes back at closing.
/// Nobody does that while power or fan is off.
pub(super) async fn toning(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let off = stage.reads(|tx| Box::pin(outages::open(tx))).await?;
    if !off.is_empty() {
        return Ok(());
    }
    let here = cellar.bench.tray(Row::Fibre, Step::Toner)?;
    let look = stage.looks().await?;
    let kept = here.bottle.and_then(|bottle| look.in_bottle(bottle));
    match (kept, super::bench::bath(&cellar.shelf, here)) {
        (Some((toner, _)), _) => moves(stage, OTTILIE, toner.id, Move::Return(here.tray)).await?,
        (None, Some(bath)) => fills(stage, OTTILIE, here, bath).await?,
        (None, None) => {}
    }
    for (class, sheets) in [(1, 2), (3, 3)] {
        let prints = Prints {
            row: Row::Fibre,
            class,
            size: EIGHT_BY_TEN,
            sheets: Some(sheets),
            is_toned: true,
        };
        notes(stage, cellar, DAGNY, (prints, None)).await?;
    }
    Ok(())
}

/// Developer goes into a bottle for tomorrow, and nobody comes for it.
pub(super) async fn forgotten(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Window, Step::Developer)?;
    let look = stage.looks().await?;
    let bottle = cellar.bench.spare_bottle;
    moves(stage, by, look.mix_in(here.tray)?.id, Move::Bottle(bottle)).await?;
    refills(stage, cellar, here, by).await
}
