//! What stewards do with screens, and people with their PINs.

use serde::Serialize;
use uuid::Uuid;

use super::store::{self, Screen};
use super::{PinRemoved, PinSet, ScreenEnded, ScreenPaired, ScreenRenamed};
use crate::app::App;
use crate::error::{Error, OnConstraint, Result};
use crate::identity::devices::{self, Code, CodeTries, DeviceKind};
use crate::identity::pins::{self, Pin};
use crate::identity::{Permit, accounts};
use crate::input;
use crate::logbook::{Book, Done, Key};
use crate::problem::{Problem, Problems};
use crate::rights::{KeepMembers, KeepPin, KeepScreens};
use crate::web::shell::Display;

/// So many screens of a room are paired at once.
const MOST: usize = 50;

/// A screen as a steward pairs it.
#[derive(Clone, Debug, Serialize)]
pub struct NewScreen {
    /// The code that it shows, as typed. It is drawn anew each time: no fingerprint
    /// holds it.
    #[serde(skip)]
    pub code: String,
    /// `board` or `door`.
    pub kind: String,
    /// What people will call it.
    pub name: String,
    /// The display it begins with.
    pub display: String,
}

/// The same, read.
struct Wanted {
    code: Code,
    kind: DeviceKind,
    name: String,
    display: Display,
}

impl Wanted {
    fn read(new: &NewScreen) -> Result<Self, Problems> {
        let mut problems = Problems::default();
        let kind = DeviceKind::parse(&new.kind).ok_or(Problem::NotAChoice);
        let display = Display::ALL.into_iter();
        let display = display.clone().find(|each| each.name() == new.display);
        let code = problems.take("code", Code::read(&new.code));
        let kind = problems.take("kind", kind);
        let name = problems.take("name", input::name(&new.name));
        let display = problems.take("display", display.ok_or(Problem::NotAChoice));
        match (code, kind, name, display) {
            (Some(code), Some(kind), Some(name), Some(display)) => Ok(Self {
                code,
                kind,
                name,
                display,
            }),
            _ => Err(problems),
        }
    }
}

/// Pairs the screen that shows a code. Wrong codes are few for each person.
///
/// # Errors
/// What is wrong with each field; a name that another screen has; too many tries.
pub async fn pair(
    app: &App,
    permit: &Permit<KeepScreens>,
    key: Key,
    new: NewScreen,
) -> Result<Done> {
    let wanted = Wanted::read(&new).map_err(Error::Invalid)?;
    let tries = CodeTries::count(app, permit.person().id).await?;
    let done = permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_pairing(book, wanted).await })
        })
        .await
        .on_constraint("screen_name_key", name_taken);
    if !done.as_ref().is_err_and(is_wrong_code) {
        tries.give_back(app).await?;
    }
    done
}

fn is_wrong_code(error: &Error) -> bool {
    let Error::Invalid(problems) = error else {
        return false;
    };
    problems
        .iter()
        .any(|(_, problem)| *problem == Problem::CodeUnknown)
}

fn name_taken() -> Error {
    Error::field("name", Problem::NameTaken)
}

async fn write_pairing(book: &mut Book<'_>, wanted: Wanted) -> Result<()> {
    let (now, screen_id) = (book.now(), book.new_id());
    if store::paired(book.tx()).await?.len() >= MOST {
        return Err(Error::Refused(Problem::TooMany(MOST)));
    }
    devices::claim(book.tx(), &wanted.code, screen_id, now).await?;
    let paired = ScreenPaired {
        screen_id,
        kind: wanted.kind.as_str().to_owned(),
        name: wanted.name,
        display: wanted.display.name().to_owned(),
    };
    book.append(&paired).await?;
    Ok(())
}

/// A screen's new name.
#[derive(Clone, Debug, Serialize)]
pub struct NewName {
    /// Which screen.
    pub screen_id: Uuid,
    /// What people will call it, as typed.
    pub name: String,
}

/// Renames a screen.
///
/// # Errors
/// None of that id, or one whose pairing has ended; a name that another screen has,
/// or that it has already.
pub async fn rename(
    app: &App,
    permit: &Permit<KeepScreens>,
    key: Key,
    new: NewName,
) -> Result<Done> {
    let name = input::name(&new.name).map_err(|problem| Error::field("name", problem))?;
    let id = new.screen_id;
    permit
        .write(app, key, &("rename", &new), move |book| {
            Box::pin(async move {
                if still_paired(book, id).await?.name == name {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                let renamed = ScreenRenamed {
                    screen_id: id,
                    name,
                };
                book.append(&renamed).await?;
                Ok(())
            })
        })
        .await
        .on_constraint("screen_name_key", name_taken)
}

/// Ends a screen's pairing: its next request finds nothing.
///
/// # Errors
/// None of that id; one that has ended before.
pub async fn end(app: &App, permit: &Permit<KeepScreens>, key: Key, id: Uuid) -> Result<Done> {
    permit
        .write(app, key, &("end", id), move |book| {
            Box::pin(async move {
                still_paired(book, id).await?;
                devices::release(book.tx(), id).await?;
                book.append(&ScreenEnded { screen_id: id }).await?;
                Ok(())
            })
        })
        .await
}

async fn still_paired(book: &mut Book<'_>, id: Uuid) -> Result<Screen> {
    let screen = store::screen(book.tx(), id).await?;
    let screen = screen.ok_or(Error::NotFound)?;
    match screen.ended_at {
        Some(_) => Err(Error::Refused(Problem::Unchanged)),
        None => Ok(screen),
    }
}

/// A PIN as its person sets it, with the account's password.
#[derive(Clone)]
pub struct NewPin {
    /// Six digits.
    pub pin: String,
    /// The password now.
    pub password: String,
}

/// Sets one's own PIN. It takes the password, for it lets one act at a door.
///
/// # Errors
/// What is wrong with the PIN; a wrong password, or too many of them.
pub async fn set_pin(app: &App, permit: &Permit<KeepPin>, key: Key, new: NewPin) -> Result<Done> {
    let pin = Pin::choose(&new.pin).map_err(|problem| Error::field("pin", problem))?;
    let person_id = permit.person().id;
    accounts::confirm(app, person_id, &new.password).await?;
    let hash = pin.hash(app).await?;
    // What was typed is in no fingerprint: it could be tried out from there.
    permit
        .write(app, key, &"set", move |book| {
            Box::pin(async move {
                let now = book.now();
                pins::set(book.tx(), person_id, &hash, now).await?;
                book.append(&PinSet { person_id }).await?;
                Ok(())
            })
        })
        .await
}

/// Takes one's own PIN away.
///
/// # Errors
/// Who has none.
pub async fn remove_own_pin(app: &App, permit: &Permit<KeepPin>, key: Key) -> Result<Done> {
    let person = permit.person().id;
    permit
        .write(app, key, &"remove", move |book| {
            Box::pin(async move { write_removal(book, person).await })
        })
        .await
}

/// Takes a member's PIN away; nobody but its person sets one.
///
/// # Errors
/// Who has none.
pub async fn remove_pin(
    app: &App,
    permit: &Permit<KeepMembers>,
    key: Key,
    person: Uuid,
) -> Result<Done> {
    permit
        .write(app, key, &("remove_pin", person), move |book| {
            Box::pin(async move {
                let number = store::member_number(book.tx(), person).await?;
                number.ok_or(Error::NotFound)?;
                write_removal(book, person).await
            })
        })
        .await
}

async fn write_removal(book: &mut Book<'_>, person_id: Uuid) -> Result<()> {
    match pins::remove(book.tx(), person_id).await? {
        true => {
            book.append(&PinRemoved { person_id }).await?;
            Ok(())
        }
        false => Err(Error::Refused(Problem::Unchanged)),
    }
}
