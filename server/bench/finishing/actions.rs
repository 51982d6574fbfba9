//! What a steward does with finishing times, and members with the wash.

use serde::Serialize;
use uuid::Uuid;

use super::{FinishingSet, WashEmptied, WashJoined, store};
use crate::app::App;
use crate::bench::{Step, line, trays};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::papers;
use crate::problem::{Problem, Problems};
use crate::rights::{KeepBench, NoteSheets};

/// Times as somebody wants them, in seconds.
#[derive(Clone, Debug, Serialize)]
pub struct NewFinishing {
    /// The line.
    pub line_id: Uuid,
    /// The paper class.
    pub paper_class_id: Uuid,
    /// In each fixing bath.
    pub fix_s: i64,
    /// The longest in all fixing baths together.
    pub longest_fix_s: i64,
    /// The rinse after the fixer.
    pub rinse_s: i64,
    /// In the wash aid, where one is used.
    pub wash_aid_s: Option<i64>,
    /// The wash after the wash aid.
    pub wash_with_aid_s: Option<i64>,
    /// The wash without it.
    pub wash_without_aid_s: i64,
    /// Where they come from.
    pub basis: String,
}

/// Sets the times of one paper class in one line.
///
/// # Errors
/// A line or a class that is not there; times that contradict each other.
pub async fn set_finishing(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    new: NewFinishing,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_finishing(book, new).await })
        })
        .await
}

async fn write_finishing(book: &mut Book<'_>, new: NewFinishing) -> Result<()> {
    used_line(book, new.line_id).await?;
    used_class(book, new.paper_class_id).await?;
    let trays = trays(book.tx()).await?;
    let baths = trays.iter().filter(|tray| {
        let fixes = [Step::Fixer, Step::FirstFixer, Step::SecondFixer];
        tray.line_id == new.line_id && !tray.is_retired && fixes.contains(&tray.step)
    });
    let baths = i64::try_from(baths.count()).unwrap_or(i64::MAX).max(1);
    check(&new, baths)?;
    let entry = FinishingSet {
        line_id: new.line_id,
        paper_class_id: new.paper_class_id,
        fix_s: new.fix_s,
        longest_fix_s: new.longest_fix_s,
        rinse_s: new.rinse_s,
        wash_aid_s: new.wash_aid_s,
        wash_with_aid_s: new.wash_with_aid_s,
        wash_without_aid_s: new.wash_without_aid_s,
        basis: new.basis,
    };
    book.append(&entry).await?;
    Ok(())
}

/// What cannot be true of times at once.
fn check(new: &NewFinishing, baths: i64) -> Result<()> {
    let mut problems = Problems::default();
    if new.fix_s.saturating_mul(baths) > new.longest_fix_s {
        problems.add("longest_fix", Problem::BathsTakeLonger);
    }
    match (new.wash_aid_s, new.wash_with_aid_s) {
        (Some(_), None) => problems.add("wash_with_aid", Problem::Missing),
        (None, Some(_)) => problems.add("wash_aid", Problem::Missing),
        (Some(_), Some(wash_s)) if wash_s > new.wash_without_aid_s => {
            problems.add("wash_with_aid", Problem::LongerThanWithout);
        }
        _ => {}
    }
    match problems.is_empty() {
        true => Ok(()),
        false => Err(Error::Invalid(problems)),
    }
}

async fn used_line(book: &mut Book<'_>, id: Uuid) -> Result<()> {
    let line = line(book.tx(), id).await?.ok_or(Error::NotFound)?;
    match line.is_retired {
        true => Err(Error::Refused(Problem::Retired)),
        false => Ok(()),
    }
}

async fn used_class(book: &mut Book<'_>, id: Uuid) -> Result<()> {
    let classes = papers::paper_classes(book.tx()).await?;
    let mut in_use = classes.iter().filter(|class| !class.is_retired);
    match in_use.any(|class| class.id == id) {
        true => Ok(()),
        false => Err(Error::field("paper_class", Problem::NotAChoice)),
    }
}

/// A print that joins a wash.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct Joining {
    /// The line.
    pub line_id: Uuid,
    /// Of which paper class it is.
    pub paper_class_id: Uuid,
    /// Whether it was in the wash aid before.
    pub had_wash_aid: bool,
}

/// Notes that a print joined the wash of a line: it restarts for all in it.
///
/// # Errors
/// A line that is not there or retired; a class without a washing time.
pub async fn join_wash(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    joining: Joining,
) -> Result<Done> {
    permit
        .write(app, key, &joining, move |book| {
            Box::pin(async move { write_joining(book, joining).await })
        })
        .await
}

async fn write_joining(book: &mut Book<'_>, joining: Joining) -> Result<()> {
    used_line(book, joining.line_id).await?;
    used_class(book, joining.paper_class_id).await?;
    let times = store::finishings(book.tx(), joining.line_id).await?;
    let times = times
        .into_iter()
        .find(|times| times.paper_class_id == joining.paper_class_id);
    let wash_s = times.and_then(|times| match joining.had_wash_aid {
        true => times.wash_with_aid_s,
        false => Some(times.wash_without_aid_s),
    });
    let wash_s = wash_s.ok_or(Error::field("paper_class", Problem::NoWashingTime))?;
    let entry = WashJoined {
        line_id: joining.line_id,
        paper_class_id: joining.paper_class_id,
        had_wash_aid: joining.had_wash_aid,
        wash_s,
    };
    book.append(&entry).await?;
    Ok(())
}

/// A wash that all prints are out of.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct Emptying {
    /// The line.
    pub emptied_line_id: Uuid,
}

/// Notes that all prints are out of the wash of a line.
///
/// # Errors
/// A line that is not there; a wash in which nothing was noted.
pub async fn empty_wash(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    emptying: Emptying,
) -> Result<Done> {
    permit
        .write(app, key, &emptying, move |book| {
            Box::pin(async move { write_emptying(book, emptying.emptied_line_id).await })
        })
        .await
}

async fn write_emptying(book: &mut Book<'_>, line_id: Uuid) -> Result<()> {
    line(book.tx(), line_id).await?.ok_or(Error::NotFound)?;
    if store::wash(book.tx(), line_id).await?.is_none() {
        return Err(Error::Refused(Problem::WashEmpty));
    }
    book.append(&WashEmptied { line_id }).await?;
    Ok(())
}
