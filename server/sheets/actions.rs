//! What people do with notes.

use serde::Serialize;
use time::Duration;
use uuid::Uuid;

use super::brought::{self, Load, Running};
use super::compose::store::{Stood, stood};
use super::compose::worn;
use super::store::{self, Pass};
use super::{FilmNoted, NewNote, NoteUndone, wear};
use crate::app::App;
use crate::clock::moment;
use crate::error::{Error, Result};
use crate::identity::{self, Permit};
use crate::input;
use crate::logbook::{Book, Done, Key};
use crate::mixes::RULES;
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::products::Kind;
use crate::rights::{NoteSheets, Role, UndoNote};
use crate::rooms;

/// So long a member may take back a note of their own.
pub const UNDO: Duration = Duration::minutes(10);

/// Notes sheets.
///
/// # Errors
/// A time too far off; a line where nothing recorded stood; a paper that a bath
/// has no figure for.
pub async fn note_sheets(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    new: NewNote,
) -> Result<Done> {
    permit.write_grouped(app, key, &new.clone(), new).await
}

/// Notes sheets that waited on a phone until there was a network: by the phone's own
/// clock they were noted at `said_us`. A repeat says the same, while what `new` says
/// of when it happened was reckoned back from the moment at which it was sent.
///
/// # Errors
/// As [`note_sheets`].
pub async fn note_kept_sheets(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    new: NewNote,
    said_us: i64,
) -> Result<Done> {
    let said = NewNote {
        happened_at_us: Some(said_us),
        ..new.clone()
    };
    permit.write_grouped(app, key, &said, new).await
}

/// A note to take back.
#[derive(Clone, Debug, Serialize)]
pub struct Undo {
    /// The note.
    pub pass_id: Uuid,
    /// Why, where a steward corrects somebody.
    pub reason: String,
}

/// Takes a note back by an entry that reverses it.
///
/// # Errors
/// A note of somebody else, unless a steward says why; too late; done before.
pub async fn undo(app: &App, permit: &Permit<UndoNote>, key: Key, undo: Undo) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_undo(book, role, undo).await })
        })
        .await
}

async fn write_undo(book: &mut Book<'_>, role: Role, undo: Undo) -> Result<()> {
    let pass = store::pass(book.tx(), undo.pass_id).await?;
    let pass = pass.ok_or(Error::NotFound)?;
    let is_own = book.actor() == Some(pass.person_id);
    match role {
        Role::Steward if !is_own && undo.reason.is_empty() => {
            return Err(Error::field("reason", Problem::Missing));
        }
        Role::Steward => {}
        _ if !is_own => return Err(Error::Forbidden),
        _ if pass.reversed_by.is_none() && book.now() > pass.recorded_at + UNDO => {
            return Err(Error::Refused(Problem::UndoTimeOver {
                minutes: UNDO.whole_minutes(),
            }));
        }
        _ => {}
    }
    let reason = undo.reason.clone();
    take_back(book, &pass, undo.reason).await?;
    if !is_own {
        let by = writer(book).await?;
        let note = pass.seq;
        let notice = Notice::NoteTakenBack { note, by, reason };
        let now = book.now();
        notices::tell(book.tx(), now, pass.person_id, &notice).await?;
    }
    Ok(())
}

/// The name of whoever writes.
pub(super) async fn writer(book: &mut Book<'_>) -> Result<String> {
    let actor = book.actor().ok_or(Error::Unauthenticated)?;
    let name = identity::person_name(book.tx(), actor).await?;
    name.ok_or(Error::NotFound)
}

/// Writes what takes a note back, each wear off the mix its liquid is in now.
pub(super) async fn take_back(book: &mut Book<'_>, pass: &Pass, reason: String) -> Result<()> {
    if pass.reversed_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    let mut wear = store::wear_of(book.tx(), pass.seq).await?;
    for worn in &mut wear {
        worn.mix_id = store::present_mix(book.tx(), worn.mix_id).await?;
    }
    let entry = NoteUndone {
        pass_id: pass.id,
        pass_seq: pass.seq,
        line_id: pass.line_id,
        person_id: pass.person_id,
        wear,
        reason,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Rolls of film as somebody noted them.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewFilm {
    /// The line whose fixer they went through.
    pub line_id: Uuid,
    /// How many rolls.
    pub rolls: u32,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// Notes rolls of film that were fixed.
///
/// # Errors
/// A line without a fixer, or one whose fixer takes paper only.
pub async fn note_film(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    new: NewFilm,
) -> Result<Done> {
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_film(book, new).await })
        })
        .await
}

async fn write_film(book: &mut Book<'_>, new: NewFilm) -> Result<()> {
    let settings = rooms::settings(book.tx()).await?;
    let person_id = book.actor().ok_or(Error::Unauthenticated)?;
    let at = new.happened_at_us.map(moment);
    if let Some(at) = at {
        input::happened(at, book.now(), settings.late_note_minutes)
            .map_err(|problem| Error::field("happened_at", problem))?;
    }
    let when = at.unwrap_or(book.now());
    // Film has no class: the fixers of the line are what counts.
    let stood = stood(book.tx(), &[new.line_id], &[Uuid::nil()], &[when]).await?;
    let is_fixer = |bath: &&Stood| bath.kind == Some(Kind::Fixer);
    let fixers: Vec<&Stood> = stood.iter().filter(is_fixer).collect();
    if fixers.is_empty() {
        return Err(Error::field("line", Problem::NothingStoodThere));
    }
    let pass = brought::Pass {
        load: Load::Rolls(
            new.rolls,
            settings.silver_mg_per_roll.zip(settings.film_kept_ppb),
        ),
        silver: None,
        carry_over_ul_per_m2: None,
        alkali_meq_per_litre: None,
        second_bath_ppb: settings.second_bath_ppb,
    };
    let wear = worn(&pass, &fixers, &mut Running::default(), true, |bath| {
        let figures = bath.figures()?;
        let capacity = figures.and_then(|figures| figures.film_rolls_per_litre_thousandths);
        let product = || bath.product.clone().unwrap_or_default();
        let capacity = capacity
            .ok_or_else(|| Error::field("line", Problem::PaperOnly { product: product() }))?;
        Ok((capacity, wear::of_rolls(new.rolls, capacity)?))
    })?;
    let entry = FilmNoted {
        rules: RULES,
        pass_id: book.new_id(),
        line_id: new.line_id,
        person_id,
        rolls: new.rolls,
        wear,
    };
    book.append_at(at, &entry).await?;
    Ok(())
}
