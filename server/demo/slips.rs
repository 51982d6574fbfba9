//! What people of the demo note wrongly or late, and how it is set right.

use time::Duration;

use super::bench::Row;
use super::papers::EIGHT_BY_TEN;
use super::people::{MIREA, OTTILIE, TOMAS, Who};
use super::printing::{Prints, notes};
use super::stage::Stage;
use super::{Cellar, keeping};
use crate::bench::Step;
use crate::error::Result;
use crate::mixes::Why;
use crate::mixes::actions::{UndoDiscard, undo_discard};
use crate::products::Kind;
use crate::sheets::NewNote;
use crate::sheets::actions::{Undo, note_sheets, undo};
use crate::sheets::correction::{Correction, correct};

/// Resin-coated 8×10 in on the long bench.
const fn eight_by_ten(sheets: u32) -> Prints {
    Prints {
        row: Row::Long,
        class: 0,
        size: EIGHT_BY_TEN,
        sheets: Some(sheets),
        is_toned: false,
    }
}

/// Sheets of half an hour ago, when a hand was wet, and some of yesterday,
/// whatever stood there then.
pub(super) async fn late_note(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let then = stage.now() - Duration::minutes(35);
    notes(stage, cellar, TOMAS, (eight_by_ten(5), Some(then))).await?;
    let yesterday = stage.now() - Duration::hours(24);
    let new = NewNote {
        is_without_tray: true,
        ..eight_by_ten(3).note(cellar, Some(yesterday))?
    };
    stage.act(TOMAS, note_sheets, new).await?;
    Ok(())
}

/// Eighty for eight, taken back at once.
pub(super) async fn own(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let pass_id = notes(stage, cellar, TOMAS, (eight_by_ten(80), None)).await?;
    let new = Undo {
        pass_id,
        reason: String::new(),
    };
    stage.act(TOMAS, undo, new).await?;
    notes(stage, cellar, TOMAS, (eight_by_ten(8), None)).await?;
    Ok(())
}

/// Forty-four for four, set right by a steward.
pub(super) async fn corrected(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let who = if by == OTTILIE { TOMAS } else { OTTILIE };
    let pass_id = notes(stage, cellar, who, (eight_by_ten(44), None)).await?;
    stage.passes(Duration::minutes(2));
    let new = Correction {
        corrected_pass_id: pass_id,
        paper_class_id: cellar.papers.class(0)?,
        sheet_size_id: cellar.papers.size(EIGHT_BY_TEN)?,
        sheets: 4,
        reason: "Four sheets lay in the wash, not forty-four.".to_owned(),
    };
    stage.act(by, correct, new).await?;
    Ok(())
}

/// A note of prints that never were, taken back by a steward.
pub(super) async fn taken_back(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let pass_id = notes(stage, cellar, MIREA, (eight_by_ten(6), None)).await?;
    stage.passes(Duration::minutes(2));
    let new = Undo {
        pass_id,
        reason: "Noted twice: these were in the note before.".to_owned(),
    };
    stage.act(OTTILIE, undo, new).await?;
    Ok(())
}

/// The wrong tray was said to be empty.
pub(super) async fn wrong_discard(stage: &mut Stage, cellar: &Cellar, by: Who) -> Result<()> {
    let here = cellar.bench.tray(Row::Long, Step::StopBath)?;
    let look = stage.looks().await?;
    let mix = look.mix_in(here.tray)?;
    keeping::pours_off(stage, by, mix, (Kind::StopBath, Why::Spent)).await?;
    let new = UndoDiscard {
        mix_id: mix.id,
        reason: "It was another line's; this one still stands.".to_owned(),
    };
    stage.act(OTTILIE, undo_discard, new).await?;
    Ok(())
}
