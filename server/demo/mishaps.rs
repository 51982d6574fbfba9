//! What goes wrong at the demo's bench, and what people do about it.

use time::Duration;

use super::bench::Row;
use super::keeping::{pours_into, refills, tends};
use super::papers::EIGHT_BY_TEN;
use super::people::{DAGNY, MIREA, OTTILIE, TOMAS, Who};
use super::printing::Prints;
use super::stage::Stage;
use super::{Cellar, missing, testing};
use crate::bench::Step;
use crate::clock::micros;
use crate::darkroom::incompatibility::Group;
use crate::error::Result;
use crate::mixes::actions::{NewRinse, NewUnknown, VesselId, report_unknown, rinse};
use crate::mixes::readings::{Taken, UndoReading, take_back};
use crate::mixes::{ReadingKind, Why};
use crate::outages::actions::{NewOutage, OutageOver, begin, end};
use crate::outages::{self, What};
use crate::sheets::by_hand::{CheckRow, NewSheet, NoteRow, enter};

/// Fixer splashed into the developer: flagged, poured off apart, mixed anew.
pub(super) async fn contaminated(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Long, Step::Developer)?;
    let look = stage.looks().await?;
    let mix = look.mix_in(here.tray)?;
    let fixer = Taken::Contamination(vec![Group::Fixer, Group::Thiosulfate]);
    let words = "A wet print fell from the tongs over the developer.";
    testing::finds(stage, DAGNY, mix.id, (fixer, words)).await?;
    let container = "Developer with fixer in it".to_owned();
    pours_into(stage, by, mix, (Why::Contaminated, container)).await?;
    refills(stage, cellar, here, by).await
}

/// A flag that a steward takes back.
pub(super) async fn mistaken_flag(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let here = cellar.bench.tray(Row::Long, Step::StopBath)?;
    let mix = stage.looks().await?.mix_in(here.tray)?.id;
    let taken = Taken::Contamination(Vec::new());
    let words = "It smells of something else than usual.";
    let reading_id = testing::finds(stage, DAGNY, mix, (taken, words)).await?;
    stage.passes(Duration::minutes(6));
    let new = UndoReading {
        reading_id,
        reason: "A fresh bath smells so; nothing came into it.".to_owned(),
    };
    stage.act(OTTILIE, take_back, new).await?;
    Ok(())
}

/// Somebody cleaned a tray with household bleach: the bath goes, and the tray is
/// rinsed before anything stands in it again.
pub(super) async fn bleach(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Fibre, Step::WashAid)?;
    let look = stage.looks().await?;
    let mix = look.mix_in(here.tray)?;
    let taken = Taken::Contamination(vec![Group::Hypochlorite]);
    let words = "The tray was cleaned with household bleach and not rinsed.";
    testing::finds(stage, by, mix.id, (taken, words)).await?;
    let container = "Wash aid with bleach in it, keep apart".to_owned();
    pours_into(stage, by, mix, (Why::Contaminated, container)).await?;
    stage.passes(Duration::minutes(10));
    let new = NewRinse {
        rinsed: VesselId::Tray(here.tray),
    };
    stage.act(by, rinse, new).await?;
    refills(stage, cellar, here, by).await
}

/// Silver was left in a print: everyone since the last good test is told, and the
/// bath is replaced.
pub(super) async fn prints_in_doubt(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Fibre, Step::SecondFixer)?;
    let mix = stage.looks().await?.mix_in(here.tray)?.id;
    let taken = Taken::ByEye {
        kind: ReadingKind::ResidualSilver,
        passed: false,
    };
    let words = "A yellow-brown stain on the white border.";
    testing::finds(stage, by, mix, (taken, words)).await?;
    stage.passes(Duration::minutes(5));
    tends(stage, cellar, &[Row::Fibre], by).await
}

/// A failed spot test that was made wrongly.
pub(super) async fn doubt_lifted(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Long, Step::SecondFixer)?;
    let mix = stage.looks().await?.mix_in(here.tray)?.id;
    let taken = Taken::ByEye {
        kind: ReadingKind::ResidualThiosulfate,
        passed: false,
    };
    let reading_id = testing::finds(stage, by, mix, (taken, "")).await?;
    stage.passes(Duration::minutes(9));
    let new = UndoReading {
        reading_id,
        reason: "The print came from the fixer, not from the wash.".to_owned(),
    };
    stage.act(OTTILIE, take_back, new).await?;
    Ok(())
}

/// Somebody says that the fan or the power is off.
pub(super) async fn goes_off(stage: &mut Stage, who: Who, what: What) -> Result<()> {
    let new = NewOutage {
        what,
        space_id: None,
        happened_at_us: None,
    };
    stage.act(who, begin, new).await?;
    Ok(())
}

/// What was off is on again.
pub(super) async fn is_on_again(stage: &mut Stage, who: Who) -> Result<()> {
    for off in stage.reads(|tx| Box::pin(outages::open(tx))).await? {
        let over = OutageOver {
            ended_outage_id: off.id,
            happened_at_us: None,
        };
        stage.act(who, end, over).await?;
    }
    Ok(())
}

/// The power is back, and what was kept on paper meanwhile is entered.
pub(super) async fn power_is_back(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    is_on_again(stage, MIREA).await?;
    let back = stage.now();
    stage.passes(Duration::minutes(7));
    let ago = |minutes| back - Duration::minutes(minutes);
    let mut sheet = NewSheet::default();
    for (who, sheets, minutes) in [(TOMAS, 4, 31), (MIREA, 3, 22), (TOMAS, 2, 9)] {
        let prints = Prints {
            row: Row::Long,
            class: 0,
            size: EIGHT_BY_TEN,
            sheets: Some(sheets),
            is_toned: false,
        };
        sheet.notes.push(NoteRow {
            person_id: stage.id(who),
            note: prints.note(cellar, Some(ago(minutes)))?,
        });
    }
    let developer = cellar.bench.tray(Row::Long, Step::Developer)?;
    sheet.checks.push(CheckRow {
        person_id: stage.id(TOMAS),
        tray_id: developer.tray,
        taken: Taken::Temperature(194),
        remark: "By torchlight.".to_owned(),
        happened_at_us: micros(ago(15)),
    });
    stage.act(MIREA, enter, sheet).await?;
    Ok(())
}

/// Somebody finds liquid; a steward pours it off, apart from everything.
pub(super) async fn unknown_liquid(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let spare = cellar.bench.tray(Row::Shelf, Step::Any)?;
    stands_there(stage, spare.tray, TOMAS).await?;
    stage.passes(Duration::minutes(12));
    let look = stage.looks().await?;
    let mix = look.mix_in(spare.tray)?;
    let container = "Unknown liquid, nothing else in".to_owned();
    pours_into(stage, OTTILIE, mix, (Why::Spent, container)).await
}

/// Somebody reports liquid that nobody can name.
pub(super) async fn stands_there(stage: &mut Stage, tray: uuid::Uuid, who: Who) -> Result<()> {
    let new = NewUnknown {
        vessel: VesselId::Tray(tray),
        volume_ul: 900_000,
        remark: "Clear, no label, no smell from a distance.".to_owned(),
    };
    let done = stage.act(who, report_unknown, new).await?;
    done.id("mix").map(drop).map_err(|_| missing("mix"))
}
