//! Entries about notes of sheets.

mod store;

use std::ops::AddAssign;

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::wear;
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
    /// Whether nobody counted and the number is the usual one.
    #[serde(default, skip_serializing_if = "is_no")]
    pub is_estimated: bool,
    /// The number of the entry that a steward set right by this one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub corrects_seq: Option<i64>,
    /// For which workshop.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub workshop_id: Option<Uuid>,
    /// What that used up, mix by mix.
    pub wear: Vec<Wear>,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks by reference")]
const fn is_no(claim: &bool) -> bool {
    !*claim
}

/// Rolls of film went through the fixer of a line.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FilmNoted {
    /// The rules it is folded by.
    pub rules: u16,
    /// The note.
    pub pass_id: Uuid,
    /// The line.
    pub line_id: Uuid,
    /// Who fixed them.
    pub person_id: Uuid,
    /// How many.
    pub rolls: u32,
    /// What that used up, mix by mix; capacities are rolls a litre.
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
    /// The share of a pass that counts here, in parts per billion: the second of
    /// two fixing baths takes a part of it; nothing where it counts in full.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub share_ppb: Option<i64>,
    /// What prints brought and took, where that is estimated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub brought: Option<Brought>,
}

/// What prints brought into a mix and took out of it, by estimate.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize)]
pub struct Brought {
    /// Silver in micrograms, what was carried out taken off: least, usual, most.
    pub silver_ug: [i64; 3],
    /// Bromide in micrograms.
    pub bromide_ug: i64,
    /// Alkali in nano-equivalents.
    pub alkali_neq: i64,
    /// Solution carried out, in microlitres.
    pub carried_out_ul: i64,
    /// Solution of the bath before carried in, in microlitres.
    pub received_ul: i64,
}

impl AddAssign for Brought {
    fn add_assign(&mut self, other: Self) {
        for (sum, silver) in self.silver_ug.iter_mut().zip(other.silver_ug) {
            *sum += silver;
        }
        self.bromide_ug += other.bromide_ug;
        self.alkali_neq += other.alkali_neq;
        self.carried_out_ul += other.carried_out_ul;
        self.received_ul += other.received_ul;
    }
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
        let mut about = about(self.pass_id, self.line_id, self.person_id, &self.wear);
        about.extend(self.workshop_id.map(|id| About::new("workshop", id)));
        about
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        store::insert_passes(tx, placed).await
    }

    /// The wear it stored, computed again from sheets, sides and capacity.
    fn recheck(&self) -> Result<Option<String>> {
        let sides = (self.long_tenths_mm, self.short_tenths_mm);
        recheck(&self.wear, |capacity| {
            wear::of_sheets(self.sheets, sides, capacity)
        })
    }
}

impl Entry for FilmNoted {
    const KIND: &'static str = "film_noted";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about(self.pass_id, self.line_id, self.person_id, &self.wear)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        store::insert_films(tx, placed).await
    }

    /// The wear it stored, computed again from rolls and capacity.
    fn recheck(&self) -> Result<Option<String>> {
        recheck(&self.wear, |capacity| wear::of_rolls(self.rolls, capacity))
    }
}

fn about(pass: Uuid, line: Uuid, person: Uuid, wear: &[Wear]) -> Vec<About> {
    let mut about = vec![
        About::new("pass", pass),
        About::new("line", line),
        About::new("person", person),
    ];
    about.extend(wear.iter().flat_map(Wear::about));
    about
}

fn recheck(all: &[Wear], full: impl Fn(i64) -> Result<i64>) -> Result<Option<String>> {
    // What nothing uses up has no capacity to work with.
    for wear in all
        .iter()
        .filter(|wear| wear.sheets_per_litre_thousandths > 0)
    {
        let again = wear::share(full(wear.sheets_per_litre_thousandths)?, wear.share_ppb)?;
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
        about(self.pass_id, self.line_id, self.person_id, &self.wear)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::reverse_pass(tx, each).await?;
        }
        Ok(())
    }
}
