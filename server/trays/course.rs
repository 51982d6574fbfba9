//! The course of a mix: what its entries did to it one after another, for the chart.
//!
//! The entries say everything that is needed, so nothing is looked up: what a mix
//! was charged with, what was spent of it, and how old it was, after each.

use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use crate::app::App;
use crate::board::ppb;
use crate::book::filter::{self, Filter};
use crate::book::reading;
use crate::clock::micros;
use crate::darkroom::quantities::{Moment, Ppb};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Entry;
use crate::mixes::{Mix, Mixed, PouredTogether, Shifted, Stored, ToppedUp};
use crate::rights::LookAtBoard;
use crate::sheets::{FilmNoted, NoteUndone, Noted, Wear};
use crate::web::chart::Point;
use crate::web::messages::entries::{self, Telling};
use crate::web::numbers::Numbers;

/// An entry about a mix, as the book shows it.
#[derive(Clone, Debug)]
pub(super) struct Turn {
    pub(super) kind: String,
    pub(super) payload: Vec<u8>,
    pub(super) happened_at: OffsetDateTime,
    /// What it says.
    pub(super) sentence: String,
}

/// The two curves of a mix.
#[derive(Clone, Debug, Default)]
pub(super) struct Course {
    pub(super) capacity: Vec<Point>,
    pub(super) life: Vec<Point>,
}

/// So many pages of the book are read for one chart; before them the mix is taken
/// as it stands.
const MOST_PAGES: usize = 10;

/// What the book shows of a mix, oldest first.
///
/// # Errors
/// That the database is away.
pub(super) async fn turns(
    app: &App,
    permit: &Permit<LookAtBoard>,
    mix: Uuid,
    numbers: Numbers,
) -> Result<Vec<Turn>> {
    let mut turns = Vec::new();
    let mut before = None;
    for _ in 0..MOST_PAGES {
        let reader = filter::Reader::new(permit.person().id, permit.role());
        let filter = Filter {
            noun: Some("mix".to_owned()),
            id: Some(mix),
            ..Filter::default()
        };
        let page = reading::page_for(app, permit.scope(), reader, filter, before).await?;
        let names = &page.names;
        let telling = Telling { names, numbers };
        let shown = page.lines.iter().filter_map(|line| line.shown.as_ref());
        turns.extend(shown.map(|shown| Turn {
            kind: shown.kind.clone(),
            payload: shown.payload.clone(),
            happened_at: shown.happened_at,
            sentence: entries::sentence(&shown.kind, &shown.payload, telling),
        }));
        before = page.older;
        if before.is_none() {
            break;
        }
    }
    turns.reverse();
    Ok(turns)
}

/// The course of a mix through its entries, oldest first. Where the oldest are not
/// among them, the curves begin so that they end where the mix stands now.
///
/// # Errors
/// A fault: figures that no arithmetic holds.
pub(super) fn course(mix: &Mix, turns: &[Turn], now: OffsetDateTime) -> Result<Course> {
    let begins = turns.first().is_some_and(|turn| turn.kind == Mixed::KIND);
    if !begins {
        return Ok(rest_of(mix, now));
    }
    // Only what the two curves show is carried back to the beginning.
    let mut standing = mix.clone();
    standing.life_s = 0;
    let mut course = Course::default();
    for turn in turns {
        let was = life_at(&standing, turn.happened_at)?;
        if follow(&mut standing, turn)? {
            let point = |used_ppb| Point {
                at: turn.happened_at,
                used_ppb,
            };
            let used = ppb(standing.spent_nl, standing.charged_ul.saturating_mul(1_000));
            course.capacity.push(point(used));
            let is = life_at(&standing, turn.happened_at)?;
            course
                .life
                .extend(was.filter(|was| Some(*was) != is).map(point));
            course.life.extend(is.map(point));
        }
    }
    let ends = life_at(&standing, now)?;
    course
        .life
        .extend(ends.map(|used_ppb| Point { at: now, used_ppb }));
    // What was noted late stands at its own time.
    course.capacity.sort_by_key(|point| point.at);
    course.life.sort_by_key(|point| point.at);
    if !mix.has_capacity {
        course.capacity.clear();
    }
    Ok(course)
}

/// A mix whose beginning lies too far back: as it stands.
fn rest_of(mix: &Mix, now: OffsetDateTime) -> Course {
    let used = ppb(mix.spent_nl, mix.charged_ul.saturating_mul(1_000));
    let level = |at| Point { at, used_ppb: used };
    let life = [
        (mix.age_at, mix.age_ppb),
        (now, crate::board::life_used_ppb(mix, now)),
    ];
    let life = life.map(|(at, used_ppb)| Point { at, used_ppb });
    Course {
        capacity: match mix.has_capacity {
            true => vec![level(mix.mixed_at)],
            false => Vec::new(),
        },
        life: match mix.life_s > 0 {
            true => life.to_vec(),
            false => Vec::new(),
        },
    }
}

/// What notes and what takes them back have in common.
#[derive(Deserialize)]
struct Worn {
    wear: Vec<Wear>,
}

fn life_at(mix: &Mix, at: OffsetDateTime) -> Result<Option<i64>> {
    let used = mix
        .age()?
        .map(|age| age.used_at(Moment::new(micros(at))).map_err(Error::fault));
    Ok(used.transpose()?.map(Ppb::get))
}

/// Does to a mix what an entry did, by the book's own fold; says whether that
/// changed anything drawn.
fn follow(mix: &mut Mix, turn: &Turn) -> Result<bool> {
    let at = turn.happened_at;
    match turn.kind.as_str() {
        Mixed::KIND => begin(mix, &serde_json::from_slice(&turn.payload)?, at),
        Stored::KIND => mix.keep(&serde_json::from_slice(&turn.payload)?, at)?,
        ToppedUp::KIND => mix.top_up(&serde_json::from_slice(&turn.payload)?, at)?,
        PouredTogether::KIND => {
            let entry: PouredTogether = serde_json::from_slice(&turn.payload)?;
            if entry.mix_id != mix.id {
                return Ok(false);
            }
            let poured = poured(mix, &entry, at);
            mix.join(&poured, &entry, at)?;
        }
        Shifted::KIND => {
            let entry: Shifted = serde_json::from_slice(&turn.payload)?;
            if entry.mix_id != mix.id {
                return Ok(false);
            }
            mix.move_up(&entry, at)?;
        }
        Noted::KIND | FilmNoted::KIND => wear(mix, turn, 1)?,
        NoteUndone::KIND => wear(mix, turn, -1)?,
        _ => return Ok(false),
    }
    Ok(true)
}

fn begin(mix: &mut Mix, entry: &Mixed, at: OffsetDateTime) {
    mix.charged_ul = entry.charged_ul;
    mix.spent_nl = entry.guessed_spent_nl;
    mix.age_ppb = entry.guessed_age_ppb;
    mix.age_at = at;
    mix.life_s = entry.life_s;
}

/// The mix that was poured, as far as its entry tells: of the same product.
fn poured(into: &Mix, entry: &PouredTogether, at: OffsetDateTime) -> Mix {
    Mix {
        charged_ul: entry.volume_ul,
        spent_nl: entry.poured_spent_nl,
        age_ppb: entry.poured_age_ppb,
        age_at: at,
        ..into.clone()
    }
}

fn wear(mix: &mut Mix, turn: &Turn, sign: i64) -> Result<()> {
    let worn: Worn = serde_json::from_slice(&turn.payload)?;
    let mine = worn.wear.iter().filter(|wear| wear.mix_id == mix.id);
    mix.spent_nl += sign * mine.map(|wear| wear.spent_nl).sum::<i64>();
    Ok(())
}
