//! Entries about notes of sheets.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{store, wear};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// Sheets went down a line.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Noted {
    /// The rules it is folded by.
    pub rules: u16,
    /// The note.
    pub pass_id: Uuid,
    /// The line.
    pub line_id: Uuid,
    /// Who printed.
    pub person_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// Long side in tenths of a millimetre.
    pub long_tenths_mm: i32,
    /// Short side in tenths of a millimetre.
    pub short_tenths_mm: i32,
    /// How many.
    pub sheets: u32,
    /// What that used up, mix by mix.
    pub wear: Vec<Wear>,
}

/// What a note used up of one mix.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Wear {
    /// The mix.
    pub mix_id: Uuid,
    /// The tray it stood in.
    pub tray_id: Uuid,
    /// The mix's capacity for this class: 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// What was used up, in nanolitres.
    pub spent_nl: i64,
}

impl Wear {
    fn about(&self) -> [About; 2] {
        [
            About::new("mix", self.mix_id),
            About::new("tray", self.tray_id),
        ]
    }
}

impl Entry for Noted {
    const KIND: &'static str = "noted";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let mut about = vec![
            About::new("pass", self.pass_id),
            About::new("line", self.line_id),
            About::new("person", self.person_id),
        ];
        about.extend(self.wear.iter().flat_map(Wear::about));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        store::insert_passes(tx, placed).await
    }

    /// The wear it stored, computed again from sheets, sides and capacity.
    fn recheck(&self) -> Result<Option<String>> {
        for wear in &self.wear {
            let again = wear::spent_nl(
                self.sheets,
                (self.long_tenths_mm, self.short_tenths_mm),
                wear.sheets_per_litre_thousandths,
            )?;
            if again != wear.spent_nl {
                let stored = wear.spent_nl;
                let mix = wear.mix_id;
                return Ok(Some(format!(
                    "it wears mix {mix} by {stored} nl where its own figures give {again} nl"
                )));
            }
        }
        Ok(None)
    }
}

/// A note was taken back.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct NoteUndone {
    /// The note.
    pub pass_id: Uuid,
    /// The number of its entry.
    pub pass_seq: i64,
    /// The line.
    pub line_id: Uuid,
    /// Whose note it was.
    pub person_id: Uuid,
    /// What comes off again: what the note's entry stored.
    pub wear: Vec<Wear>,
    /// Why, where a steward corrects somebody.
    pub reason: String,
}

impl Entry for NoteUndone {
    const KIND: &'static str = "note_undone";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let mut about = vec![
            About::new("pass", self.pass_id),
            About::new("line", self.line_id),
            About::new("person", self.person_id),
        ];
        about.extend(self.wear.iter().flat_map(Wear::about));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::reverse_pass(tx, each).await?;
        }
        Ok(())
    }
}
