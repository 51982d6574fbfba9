//! What a steward does with papers.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{PaperClassSet, SheetSizeSet, SilverFigures};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::KeepPapers;

/// So many sizes and so many classes a room keeps at most.
const MOST: usize = 100;

/// A sheet size as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewSheetSize {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Long side in tenths of a millimetre.
    pub long_tenths_mm: i32,
    /// Short side in tenths of a millimetre.
    pub short_tenths_mm: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

/// A paper class as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewPaperClass {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Whether it is offered no more.
    pub is_retired: bool,
    /// What is known of its silver.
    pub silver: Option<SilverFigures>,
    /// What a square metre carries into the next bath, in microlitres.
    pub carry_over_ul_per_m2: Option<i64>,
}

/// Adds or changes a sheet size.
///
/// # Errors
/// A name that is taken; too many; none of that id.
pub async fn set_sheet_size(
    app: &App,
    permit: &Permit<KeepPapers>,
    key: Key,
    new: NewSheetSize,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_sheet_size(book, new).await })
        })
        .await
}

async fn write_sheet_size(book: &mut Book<'_>, new: NewSheetSize) -> Result<()> {
    let sizes = store::sheet_sizes(book.tx()).await?;
    let names = sizes
        .iter()
        .map(|size| (size.id, size.name.as_str(), size.position));
    let (id, position) = place(book, new.id, &new.name, names.collect())?;
    let entry = SheetSizeSet {
        id,
        name: new.name,
        long_tenths_mm: new.long_tenths_mm,
        short_tenths_mm: new.short_tenths_mm,
        position,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Adds or changes a paper class.
///
/// # Errors
/// A name that is taken; too many; none of that id.
pub async fn set_paper_class(
    app: &App,
    permit: &Permit<KeepPapers>,
    key: Key,
    new: NewPaperClass,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_paper_class(book, new).await })
        })
        .await
}

async fn write_paper_class(book: &mut Book<'_>, new: NewPaperClass) -> Result<()> {
    let classes = store::paper_classes(book.tx()).await?;
    let names = classes
        .iter()
        .map(|class| (class.id, class.name.as_str(), class.position));
    let (id, position) = place(book, new.id, &new.name, names.collect())?;
    let entry = PaperClassSet {
        id,
        name: new.name,
        position,
        is_retired: new.is_retired,
        silver: new.silver,
        carry_over_ul_per_m2: new.carry_over_ul_per_m2,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Id and place in the list: its own for one that exists, the next for a new one.
fn place(
    book: &mut Book<'_>,
    id: Option<Uuid>,
    name: &str,
    there: Vec<(Uuid, &str, i32)>,
) -> Result<(Uuid, i32)> {
    if there
        .iter()
        .any(|(other, taken, _)| Some(*other) != id && *taken == name)
    {
        return Err(Error::field("name", Problem::NameTaken));
    }
    match id {
        Some(id) => {
            let found = there.iter().find(|(other, _, _)| *other == id);
            found
                .map(|(_, _, position)| (id, *position))
                .ok_or(Error::NotFound)
        }
        None if there.len() >= MOST => Err(Error::Refused(Problem::TooMany(MOST))),
        None => {
            let last = there.iter().map(|(_, _, position)| *position).max();
            Ok((book.new_id(), last.unwrap_or(0) + 1))
        }
    }
}
