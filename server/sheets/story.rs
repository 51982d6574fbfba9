//! A note with its story: for whom, by whom, what it did, and what became of it.

use serde::Deserialize;

use super::effects::{Effect, effects};
use super::entries::Wear;
use super::store::{self, Pass};
use super::{FilmNoted, NoteUndone, Noted};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::person_name;
use crate::logbook::Entry;
use crate::rooms::{self, Settings};

/// A note and everything its pages say of it.
pub(super) struct Story {
    pub(super) settings: Settings,
    pub(super) pass: Pass,
    pub(super) effects: Vec<Effect>,
    /// Whose note it is.
    pub(super) person: String,
    /// Who wrote it, where that was somebody else.
    pub(super) written_by: Option<String>,
    /// Whether nothing recorded stood in the line then.
    pub(super) is_without_tray: bool,
    /// The note that this one was written in place of.
    pub(super) corrects: Option<Box<Story>>,
    pub(super) end: Option<End>,
}

/// How a note was taken back.
pub(super) struct End {
    pub(super) by: String,
    pub(super) reason: String,
    /// The note that holds in its place.
    pub(super) corrected_by: Option<i64>,
}

/// What the page asks of an entry of a note.
#[derive(Deserialize)]
struct Asked {
    wear: Vec<Wear>,
    #[serde(default)]
    corrects_seq: Option<i64>,
}

/// The story of the note of an entry.
///
/// # Errors
/// No note of that number.
pub(super) async fn story(tx: &mut RoomTx, seq: i64) -> Result<Story> {
    let (mut story, corrects) = chapter(tx, seq).await?;
    if let Some(corrected) = corrects {
        story.corrects = Some(Box::new(chapter(tx, corrected).await?.0));
    }
    Ok(story)
}

async fn chapter(tx: &mut RoomTx, seq: i64) -> Result<(Story, Option<i64>)> {
    let pass = store::pass_at(tx, seq).await?.ok_or(Error::NotFound)?;
    let written = store::written(tx, seq).await?.ok_or(Error::NotFound)?;
    let asked: Asked = serde_json::from_slice(&written.payload)?;
    let is_others = written.actor != Some(pass.person_id);
    let written_by = match written.actor.filter(|_| is_others) {
        Some(actor) => person_name(tx, actor).await?,
        None => None,
    };
    let stood =
        !asked.wear.is_empty() || store::stood_anything(tx, pass.line_id, pass.happened_at).await?;
    let story = Story {
        settings: rooms::settings(tx).await?,
        effects: effects(tx, &asked.wear).await?,
        person: person_name(tx, pass.person_id).await?.unwrap_or_default(),
        written_by,
        is_without_tray: !stood,
        corrects: None,
        end: end(tx, &pass).await?,
        pass,
    };
    Ok((story, asked.corrects_seq))
}

async fn end(tx: &mut RoomTx, pass: &Pass) -> Result<Option<End>> {
    let Some(seq) = pass.reversed_by else {
        return Ok(None);
    };
    let undone = store::written(tx, seq).await?.ok_or(Error::NotFound)?;
    let by = match undone.actor {
        Some(actor) => person_name(tx, actor).await?,
        None => None,
    };
    let undone: NoteUndone = serde_json::from_slice(&undone.payload)?;
    // A correction writes the note that holds right after what takes the old one back.
    let next = store::written(tx, seq + 1).await?;
    let next = next.filter(|next| [Noted::KIND, FilmNoted::KIND].contains(&next.kind.as_str()));
    let corrects = match next {
        Some(next) => serde_json::from_slice::<Asked>(&next.payload)?.corrects_seq,
        None => None,
    };
    Ok(Some(End {
        by: by.unwrap_or_default(),
        reason: undone.reason,
        corrected_by: (corrects == Some(pass.seq)).then_some(seq + 1),
    }))
}
