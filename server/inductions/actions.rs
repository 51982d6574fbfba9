//! What a steward does with inductions: records one for everybody who was told, and
//! withdraws one. The record is the steward's own confirmation.

use std::collections::BTreeSet;

use serde::Serialize;
use uuid::Uuid;

use super::gate::active;
use super::store;
use super::{Basis, Covered, Inducted, InductionWithdrawn};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::members::Member;
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::rights::{Induct, Role};
use crate::rooms;
use crate::topics::{self, Topic};
use crate::web::days;

/// So many people are inducted together at most.
const MOST_PEOPLE: usize = 60;

/// An induction as somebody wants it recorded.
#[derive(Clone, Debug, Serialize)]
pub struct NewInduction {
    /// Everybody who was told.
    pub person_ids: Vec<Uuid>,
    /// What, in the version that holds now.
    pub topic_ids: Vec<Uuid>,
    /// The day, as `2026-11-26`; nothing for today.
    pub given_on: Option<String>,
    /// Whether a paper from before is entered, which they signed.
    pub is_on_paper: bool,
    /// Anything else; may be empty.
    pub remark: String,
    /// The record it renews.
    pub renews_id: Option<Uuid>,
}

/// A record to withdraw.
#[derive(Clone, Debug, Serialize)]
pub struct Withdrawal {
    /// Which.
    pub induction_id: Uuid,
    /// Why.
    pub reason: String,
}

/// Records that people were inducted: a record for each. They have still to confirm it,
/// unless it stands on paper.
///
/// # Errors
/// Nobody or nothing; somebody who may not enter; a topic that is used no more; a day to
/// come; oneself, where somebody else could induct one.
pub async fn induct(
    app: &App,
    permit: &Permit<Induct>,
    key: Key,
    new: NewInduction,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_inductions(book, &new).await })
        })
        .await
}

async fn write_inductions(book: &mut Book<'_>, new: &NewInduction) -> Result<()> {
    let given_on = given_on(book, new).await?;
    let members = active(book.tx()).await?;
    let people = people(&members, &new.person_ids)?;
    let topics = covered(book, &new.topic_ids, &given_on).await?;
    renewed(book, new).await?;
    let inducer = book.actor().ok_or(Error::Unauthenticated)?;
    for member in people {
        let entry = Inducted {
            induction_id: book.new_id(),
            person_id: member.person,
            topics: topics.clone(),
            basis: basis(&members, member, inducer, new.is_on_paper)?,
            given_on: given_on.clone(),
            remark: new.remark.clone(),
            renews_id: new.renews_id,
        };
        book.append(&entry).await?;
        if entry.basis == Basis::Given {
            ask_to_confirm(book, &members, &entry, inducer).await?;
        }
    }
    Ok(())
}

/// The day it was given: today where nothing is said, and none to come.
async fn given_on(book: &mut Book<'_>, new: &NewInduction) -> Result<String> {
    let now = book.now();
    let today = rooms::settings(book.tx())
        .await?
        .time_zone()?
        .date_value(now);
    match &new.given_on {
        Some(day) if *day > today => Err(Error::field("on", Problem::InTheFuture)),
        Some(day) => Ok(day.clone()),
        None => Ok(today),
    }
}

fn people<'m>(members: &'m [Member], ids: &[Uuid]) -> Result<Vec<&'m Member>> {
    let ids: BTreeSet<Uuid> = ids.iter().copied().collect();
    if ids.is_empty() {
        return Err(Error::field("people", Problem::Missing));
    }
    if ids.len() > MOST_PEOPLE {
        return Err(Error::field("people", Problem::TooMany(MOST_PEOPLE)));
    }
    let people: Vec<&Member> = members
        .iter()
        .filter(|member| ids.contains(&member.person))
        .collect();
    match people.len() == ids.len() {
        true => Ok(people),
        false => Err(Error::field("people", Problem::NotAChoice)),
    }
}

/// The topics in the version that holds now, each with the last day it is good.
async fn covered(book: &mut Book<'_>, ids: &[Uuid], given_on: &str) -> Result<Vec<Covered>> {
    let ids: BTreeSet<Uuid> = ids.iter().copied().collect();
    if ids.is_empty() {
        return Err(Error::field("topics", Problem::Missing));
    }
    let topics = topics::topics(book.tx()).await?;
    let wanted: Vec<&Topic> = topics
        .iter()
        .filter(|topic| !topic.is_retired && ids.contains(&topic.id))
        .collect();
    if wanted.len() < ids.len() {
        return Err(Error::field("topics", Problem::NotAChoice));
    }
    let covered = |topic: &&Topic| {
        let until = |months| days::months_after(given_on, months).map_err(Error::fault);
        Ok(Covered {
            topic_id: topic.id,
            version: topic.version,
            good_until: topic.good_months.map(until).transpose()?,
        })
    };
    wanted.iter().map(covered).collect()
}

/// What it renews is a record of the one person it is about.
async fn renewed(book: &mut Book<'_>, new: &NewInduction) -> Result<()> {
    let Some(id) = new.renews_id else {
        return Ok(());
    };
    let old = store::induction(book.tx(), id).await?;
    let old = old.ok_or(Error::NotFound)?;
    match new.person_ids == [old.person_id] {
        true => Ok(()),
        false => Err(Error::field("people", Problem::NotAChoice)),
    }
}

/// Nobody inducts themself, but a steward whom nobody else could induct.
fn basis(members: &[Member], member: &Member, inducer: Uuid, is_on_paper: bool) -> Result<Basis> {
    let is_other_steward = |other: &Member| other.role == Role::Steward && other.person != inducer;
    match (member.person == inducer, is_on_paper) {
        (true, _) if members.iter().any(is_other_steward) => {
            Err(Error::field("people", Problem::NotOneself))
        }
        (true, _) => Ok(Basis::SelfDeclared),
        (false, true) => Ok(Basis::OnPaper),
        (false, false) => Ok(Basis::Given),
    }
}

async fn ask_to_confirm(
    book: &mut Book<'_>,
    members: &[Member],
    entry: &Inducted,
    inducer: Uuid,
) -> Result<()> {
    let by = members.iter().find(|member| member.person == inducer);
    let notice = Notice::InductionWaits {
        by: by.map(|member| member.name.clone()).unwrap_or_default(),
    };
    let now = book.now();
    notices::tell(book.tx(), now, entry.person_id, &notice).await
}

/// Withdraws a record: it counts no more, and stays in the book.
///
/// # Errors
/// None of that id; withdrawn before; no reason.
pub async fn withdraw(
    app: &App,
    permit: &Permit<Induct>,
    key: Key,
    wanted: Withdrawal,
) -> Result<Done> {
    permit
        .write(app, key, &wanted.clone(), move |book| {
            Box::pin(async move { write_withdrawal(book, wanted).await })
        })
        .await
}

async fn write_withdrawal(book: &mut Book<'_>, wanted: Withdrawal) -> Result<()> {
    if wanted.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let record = store::induction(book.tx(), wanted.induction_id).await?;
    let record = record.ok_or(Error::NotFound)?;
    if record.withdrawn.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    let entry = InductionWithdrawn {
        induction_id: record.id,
        induction_seq: record.seq,
        person_id: record.person_id,
        reason: wanted.reason,
    };
    book.append(&entry).await?;
    Ok(())
}
