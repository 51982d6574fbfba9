//! What a steward does with lamps, and what anyone who prints finds of them.

use serde::Serialize;
use uuid::Uuid;

use super::entries::safe_s;
use super::store;
use super::{FogTestTakenBack, FogTested, Hanging, Lamp, LampSet, RULES};
use crate::app::App;
use crate::bench::spaces;
use crate::darkroom::fog::FogError;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::actions::happened;
use crate::papers;
use crate::problem::Problem;
use crate::rights::{KeepLamps, TakeBack, TestLamps};
use crate::rooms;
use crate::web::days;

/// So many lamps a room keeps at most.
const MOST: usize = 100;

/// A lamp or a screen as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewLamp {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// How it hangs.
    pub hangs: Hanging,
    /// So many months after a test it is tested again.
    pub test_months: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl NewLamp {
    /// A lamp as it is, used no more or again.
    #[must_use]
    pub fn like(lamp: &Lamp, is_retired: bool) -> Self {
        Self {
            id: Some(lamp.id),
            name: lamp.name.clone(),
            hangs: lamp.hangs.clone(),
            test_months: lamp.test_months,
            is_retired,
        }
    }
}

/// What somebody found on paper that lay in a lamp's light.
#[derive(Clone, Debug, Serialize)]
pub struct NewFogTest {
    /// The lamp.
    pub lamp_id: Uuid,
    /// The paper.
    pub paper_class_id: Uuid,
    /// The longest step that shows nothing, in seconds; nothing where the shortest one
    /// fogged.
    pub clean_s: Option<i64>,
    /// The shortest step that shows fog, in seconds; nothing where none does.
    pub fogged_s: Option<i64>,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// A test to take back.
#[derive(Clone, Debug, Serialize)]
pub struct UndoFogTest {
    /// Which.
    pub fog_test_id: Uuid,
    /// Why.
    pub reason: String,
}

/// Adds or changes a lamp or a screen.
///
/// # Errors
/// A name that is taken; a space that is none; too many of them.
pub async fn set_lamp(
    app: &App,
    permit: &Permit<KeepLamps>,
    key: Key,
    new: NewLamp,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_lamp(book, new).await })
        })
        .await
}

async fn write_lamp(book: &mut Book<'_>, new: NewLamp) -> Result<()> {
    let there = store::lamps(book.tx()).await?;
    let mut others = there.iter().filter(|other| Some(other.id) != new.id);
    if others.any(|other| other.name == new.name) {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|lamp| lamp.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    let stays = old.is_some_and(|old| old.hangs.space_id == new.hangs.space_id);
    if let Some(space) = new.hangs.space_id
        && !stays
    {
        let space = spaces::space(book.tx(), space).await?;
        if space.is_none_or(|space| space.is_retired) {
            return Err(Error::field("space", Problem::NotAChoice));
        }
    }
    let entry = LampSet {
        id: old.map_or_else(|| book.new_id(), |lamp| lamp.id),
        name: new.name,
        hangs: new.hangs,
        test_months: new.test_months,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Records what a fog test found, with how the lamp hangs now and the day by which it
/// is to be made again.
///
/// # Errors
/// None of that id; a lamp or a paper that is used no more; no step at all, or a
/// fogged one that is not the longer one; a time too far off.
pub async fn test_lamp(
    app: &App,
    permit: &Permit<TestLamps>,
    key: Key,
    new: NewFogTest,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_test(book, &new).await })
        })
        .await
}

async fn write_test(book: &mut Book<'_>, new: &NewFogTest) -> Result<()> {
    let lamp = store::lamp(book.tx(), new.lamp_id).await?;
    let lamp = lamp.ok_or(Error::NotFound)?;
    if lamp.is_retired {
        return Err(Error::Refused(Problem::Retired));
    }
    let classes = papers::paper_classes(book.tx()).await?;
    let mut in_use = classes.iter().filter(|class| !class.is_retired);
    if !in_use.any(|class| class.id == new.paper_class_id) {
        return Err(Error::field("paper_class", Problem::NotAChoice));
    }
    let (now, settings) = (book.now(), rooms::settings(book.tx()).await?);
    let at = happened(now, new.happened_at_us, &settings)?;
    let again_by = days::months_later(&settings.time_zone()?, at.unwrap_or(now), lamp.test_months);
    let entry = FogTested {
        rules: RULES,
        fog_test_id: book.new_id(),
        lamp_id: lamp.id,
        paper_class_id: new.paper_class_id,
        hangs: lamp.hangs,
        clean_s: new.clean_s,
        fogged_s: new.fogged_s,
        safe_s: safe_s(new.clean_s, new.fogged_s).map_err(to_mend)?,
        again_by: again_by.map_err(Error::fault)?,
    };
    book.append_at(at, &entry).await?;
    Ok(())
}

fn to_mend(wrong: FogError) -> Error {
    match wrong {
        FogError::NoStep => Error::field("clean", Problem::NoStep),
        FogError::OutOfOrder => Error::field("fogged", Problem::FoggedBeforeClean),
        FogError::NoTime | FogError::Quantity(_) => Error::fault(wrong),
    }
}

/// Takes a test back: it was mistaken. The one before it holds again, if it still does.
///
/// # Errors
/// None of that id; taken back before; no reason.
pub async fn take_back(
    app: &App,
    permit: &Permit<TakeBack>,
    key: Key,
    undo: UndoFogTest,
) -> Result<Done> {
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_taking_back(book, undo).await })
        })
        .await
}

async fn write_taking_back(book: &mut Book<'_>, undo: UndoFogTest) -> Result<()> {
    if undo.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let test = store::test(book.tx(), undo.fog_test_id).await?;
    let test = test.ok_or(Error::NotFound)?;
    if test.undone_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    let entry = FogTestTakenBack {
        fog_test_id: test.id,
        fog_test_seq: test.seq,
        lamp_id: test.lamp_id,
        reason: undo.reason,
    };
    book.append(&entry).await?;
    Ok(())
}
