//! Tests that are due: on the board, in a handover, and told to stewards.

use time::OffsetDateTime;

use super::standing::{LampNow, PaperNow, Standing, lamps_now};
use super::store::{self, Lamp};
use crate::database::RoomTx;
use crate::error::Result;
use crate::notices::{self, Notice};
use crate::rooms;
use crate::web::dates::Zone;
use crate::web::messages::lamps as words;

/// What everyone in the room should know of its lamps.
#[derive(Clone, Debug, Default, Eq, PartialEq)]
pub struct Due {
    /// One sentence each.
    pub sentences: Vec<String>,
    /// The next moment at which there is more to say.
    pub changes_at: Option<OffsetDateTime>,
}

/// What everyone should know of the lamps in use: nothing where none is recorded.
///
/// # Errors
/// The database's.
pub async fn due(tx: &mut RoomTx, zone: &Zone, now: OffsetDateTime) -> Result<Due> {
    let lamps = lamps_now(tx, zone, now).await?;
    let in_use: Vec<&LampNow> = in_use(&lamps).collect();
    let holding = in_use.iter().flat_map(|lamp| &lamp.papers);
    let holding = holding.filter(|paper| paper.standing == Standing::Tested);
    Ok(Due {
        changes_at: holding.filter_map(|paper| paper.ends).min(),
        sentences: in_use.into_iter().filter_map(to_do).collect(),
    })
}

fn in_use(lamps: &[LampNow]) -> impl Iterator<Item = &LampNow> {
    lamps.iter().filter(|each| !each.lamp.is_retired)
}

/// Papers of which the same is to be said.
struct Alike<'l> {
    standing: Standing,
    since: Option<&'l str>,
    papers: Vec<&'l str>,
}

fn alike<'l>(papers: &[&'l PaperNow]) -> Vec<Alike<'l>> {
    let mut all: Vec<Alike<'l>> = Vec::new();
    for paper in papers {
        let (standing, since) = (paper.standing, overdue_since(paper));
        let same = |each: &&mut Alike<'_>| each.standing == standing && each.since == since;
        match all.iter_mut().find(same) {
            Some(each) => each.papers.push(&paper.name),
            None => all.push(Alike {
                standing,
                since,
                papers: vec![&paper.name],
            }),
        }
    }
    all
}

/// What is to be done about a lamp, in one sentence.
fn to_do(lamp: &LampNow) -> Option<String> {
    let open = lamp.papers.iter();
    let open: Vec<&PaperNow> = open
        .filter(|paper| paper.standing != Standing::Tested)
        .collect();
    let (count, of) = (open.len(), lamp.papers.len());
    let reason = |alike: &Alike<'_>| {
        // Where all papers are alike, none is named.
        let is_all = alike.papers.len() == of;
        let named = if is_all { &[][..] } else { &alike.papers };
        words::unsafe_for(alike.standing, alike.since, named)
    };
    let reasons: Vec<String> = alike(&open).iter().map(reason).collect();
    (count > 0).then(|| words::treat_as_unsafe(&lamp.lamp.name, &reasons, count, of))
}

fn overdue_since(paper: &PaperNow) -> Option<&str> {
    let test = paper.test.as_ref()?;
    (paper.standing == Standing::Overdue).then_some(test.again_by.as_str())
}

/// What is to be done about each lamp in use: now, or on the next day on which a test is
/// due; nothing where no paper is in use.
pub fn next_tests(lamps: &[LampNow]) -> impl Iterator<Item = (&Lamp, String)> {
    let line = |lamp: &LampNow| {
        let tests = lamp.papers.iter().filter_map(|paper| paper.test.as_ref());
        let next = tests.map(|test| test.again_by.as_str()).min()?;
        Some(words::tested_until(&lamp.lamp.name, next))
    };
    in_use(lamps).filter_map(move |lamp| {
        let said = to_do(lamp).or_else(|| line(lamp))?;
        Some((&lamp.lamp, said))
    })
}

/// The same for a steward who takes the room over.
#[must_use]
pub fn handed_over(lamps: &[LampNow]) -> Vec<String> {
    next_tests(lamps).map(|(_, said)| said).collect()
}

/// Tells stewards of each lamp with an overdue test, once for each day on which one was
/// due.
///
/// # Errors
/// The database's.
pub async fn tell_due(tx: &mut RoomTx, now: OffsetDateTime) -> Result<()> {
    if store::lamps(tx).await?.is_empty() {
        return Ok(());
    }
    let zone = rooms::settings(tx).await?.time_zone()?;
    let lamps = lamps_now(tx, &zone, now).await?;
    for lamp in in_use(&lamps) {
        for since in lamp.papers.iter().filter_map(overdue_since) {
            tell_once(tx, now, &lamp.lamp, since).await?;
        }
    }
    Ok(())
}

async fn tell_once(tx: &mut RoomTx, now: OffsetDateTime, lamp: &Lamp, since: &str) -> Result<()> {
    if !store::first_told(tx, lamp.id, since, now).await? {
        return Ok(());
    }
    let notice = Notice::FogTestDue {
        lamp: lamp.id,
        name: lamp.name.clone(),
        again_by: since.to_owned(),
    };
    notices::tell_stewards(tx, now, &notice).await
}
