//! Words for workshops and their guests.

use super::entries::{Sentence, Telling, say};
use crate::logbook::Entry;
use crate::problem::Problem;
use crate::web::desk::Question;
use crate::workshops::{
    GuestNamesErased, GuestsSignedIn, GuestsSignedOut, Standing, Workshop, WorkshopCalledOff,
    WorkshopEnded, WorkshopNotEnded, WorkshopOpened, WorkshopSet, WorkshopTakenOver,
};

/// So many guests.
#[must_use]
pub fn guests(count: i64) -> String {
    match count {
        1 => "1 guest".to_owned(),
        count => format!("{count} guests"),
    }
}

fn count(ids: &[uuid::Uuid]) -> String {
    guests(i64::try_from(ids.len()).unwrap_or(i64::MAX))
}

/// Guests who are there, and whose.
#[must_use]
pub fn guests_of(count: i64, leader: &str) -> String {
    format!("{} of {leader}’s workshop", guests(count))
}

/// To a leader who wants to leave.
#[must_use]
pub fn still_here(count: i64) -> String {
    let are = if count == 1 { "is" } else { "are" };
    format!("{} of your workshop {are} still here.", guests(count))
}

/// A guest's name, as long as it is kept.
#[must_use]
pub fn guest_name(name: Option<&str>) -> String {
    name.map_or_else(|| "A guest, name erased".to_owned(), str::to_owned)
}

/// When a guest left.
#[must_use]
pub fn until(clock: &str, is_confirmed: bool) -> String {
    match is_confirmed {
        true => clock.to_owned(),
        false => format!("{clock}, not confirmed left"),
    }
}

/// From when to when, by the clock of the room.
#[must_use]
pub fn hours(begins: &str, ends: &str) -> String {
    format!("{begins}–{ends}")
}

/// On its day: that the bench is taken.
#[must_use]
pub fn on_the_day(workshop: &Workshop, hours: &str) -> String {
    let at = lines_of(&workshop.lines).map_or_else(String::new, |at| format!(", {at}"));
    format!(
        "Workshop {hours}: {}, led by {}, up to {}{at}.",
        workshop.title.trim_end_matches('.'),
        workshop.leader,
        guests(workshop.most_guests.into())
    )
}

/// The lines a workshop takes.
#[must_use]
pub fn lines_of(lines: &[String]) -> Option<String> {
    match lines {
        [] => None,
        lines => Some(format!("at {}", lines.join(", "))),
    }
}

/// For whoever takes the room over.
#[must_use]
pub fn handed_over(workshop: &Workshop, begins: &str) -> String {
    format!(
        "{}: {begins}, led by {}, up to {}; {}.",
        workshop.title,
        workshop.leader,
        guests(workshop.most_guests.into()),
        paid_by(workshop.paid_by.as_deref())
    )
}

/// Who pays.
#[must_use]
pub fn paid_by(member: Option<&str>) -> String {
    match member {
        Some(member) => format!("{member} pays"),
        None => "the room pays".to_owned(),
    }
}

/// How a workshop stands, in a word or two.
#[must_use]
pub const fn word(standing: Standing) -> &'static str {
    match standing {
        Standing::Planned => "Planned",
        Standing::CalledOff => "Called off",
        Standing::Open => "Going on",
        Standing::Over => "Over",
        Standing::NotHeld => "Not held",
    }
}

/// The choice where the room pays.
pub const THE_ROOM: &str = "The room";

/// The choice of a note that is one's own.
pub const FOR_ONESELF: &str = "For yourself";

/// The choice of a note for a workshop.
#[must_use]
pub fn for_workshop(title: &str) -> String {
    format!("For the workshop: {title}")
}

/// Asks before somebody takes a workshop over.
#[must_use]
pub fn take_over(title: &str, leader: &str) -> Question {
    Question {
        question: format!("Do you lead “{title}” from now on?"),
        consequence: format!(
            "Its guests are yours then: you stay until they have left, and {leader} may leave. \
             The book says so. {leader} can take it over again while they are here."
        ),
        verb: "Take it over".to_owned(),
    }
}

/// How many guests are there, while a workshop goes on.
#[must_use]
pub fn there_now(count: i64) -> String {
    let are = if count == 1 { "is" } else { "are" };
    format!("{} {are} here now.", guests(count))
}

/// What ending a workshop does.
#[must_use]
pub fn there_still(count: i64) -> String {
    match count {
        0 => "Everybody was signed out.".to_owned(),
        1 => "1 guest is here still and is signed out with it.".to_owned(),
        count => format!("{count} guests are here still and are signed out with it."),
    }
}

/// How many guests came, in all.
#[must_use]
pub fn came(count: usize) -> String {
    let count = i64::try_from(count).unwrap_or(i64::MAX);
    format!("{} came.", guests(count))
}

/// What a note put through, on the page of its workshop.
#[must_use]
pub fn noted(sheets: i64, paper: &str, line: &str) -> String {
    format!("{}, {paper}, {line}", super::sheets::sheets(sheets))
}

/// All that was noted for a workshop.
#[must_use]
pub fn noted_in_all(sheets: i64) -> String {
    format!("In all {}.", super::sheets::sheets(sheets))
}

/// Problems of workshops.
#[must_use]
pub fn about_workshops(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::GuestsAreIn { guests } => {
            return Some(format!(
                "{} Sign them out, end the workshop, or let another inducted member who is here \
                 take it over; then this goes.",
                still_here(*guests)
            ));
        }
        Problem::LeaderLacks { missing } => {
            return Some(format!(
                "Whoever leads a workshop is inducted on all that is asked for on that day. This \
                 is missing: {}.",
                missing.join(", ")
            ));
        }
        Problem::LeaderNotHere { leader } => {
            return Some(format!(
                "{leader} leads this workshop and has not said that they are here."
            ));
        }
        Problem::TooManyGuests { places } => return Some(too_many(*places)),
        Problem::WorkshopNotPlanned => {
            "This workshop was opened or called off already, or its time has passed."
        }
        Problem::WorkshopNotToday => "This workshop is on another day. A steward can change that.",
        Problem::WorkshopNotOpen => "This workshop is not going on.",
        Problem::NotTheirWorkshop => {
            "This is not for a workshop that you lead and that was going on then. Choose another \
             time, or note it for yourself."
        }
        Problem::CautionsChanged => {
            "Something else stands here now than what you read out. Read this to the group, then \
             send it again."
        }
        Problem::EndsBeforeBeginning => "The end is not after the beginning.",
        Problem::NotOnOneDay => "A workshop ends on the day it begins. Plan another for the next.",
        Problem::HasPassed => "That has passed already.",
        _ => return None,
    };
    Some(sentence.to_owned())
}

fn too_many(places: usize) -> String {
    match places {
        0 => "There is no place left, in the workshop or in the room. Nobody of this list was \
              signed in."
            .to_owned(),
        1 => {
            "There is 1 place left, by the workshop’s most or the room’s. Nobody of this list was \
              signed in."
                .to_owned()
        }
        places => format!(
            "There are {places} places left, by the workshop’s most or the room’s. Nobody of this \
             list was signed in."
        ),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (WorkshopSet::KIND, |text, telling| {
        say(text, telling, workshop_set)
    }),
    (WorkshopCalledOff::KIND, |text, telling| {
        say(text, telling, called_off)
    }),
    (WorkshopOpened::KIND, |text, telling| {
        say(text, telling, opened)
    }),
    (WorkshopTakenOver::KIND, |text, telling| {
        say(text, telling, taken_over)
    }),
    (GuestsSignedIn::KIND, |text, telling| {
        say(text, telling, signed_in)
    }),
    (GuestsSignedOut::KIND, |text, telling| {
        say(text, telling, signed_out)
    }),
    (WorkshopEnded::KIND, |text, telling| {
        say(text, telling, ended)
    }),
    (WorkshopNotEnded::KIND, |text, telling| {
        say(text, telling, not_ended)
    }),
    (GuestNamesErased::KIND, |text, telling| {
        say(text, telling, erased)
    }),
];

fn workshop_set(entry: &WorkshopSet, telling: Telling<'_>) -> String {
    let payer = entry.paid_by_id.map(|id| telling.name(id));
    format!(
        "The workshop {} was planned for {}, led by {}, up to {}; {}.",
        entry.title,
        entry.local_date,
        telling.name(entry.leader_id),
        guests(entry.most_guests.into()),
        paid_by(payer)
    )
}

fn called_off(entry: &WorkshopCalledOff, telling: Telling<'_>) -> String {
    format!(
        "The workshop {} was called off: {}.",
        telling.name(entry.workshop_id),
        entry.reason.trim_end_matches('.')
    )
}

fn opened(entry: &WorkshopOpened, telling: Telling<'_>) -> String {
    let named = |ids: Vec<uuid::Uuid>, what: &str| {
        let names: Vec<&str> = ids.iter().map(|id| telling.name(*id)).collect();
        match names.is_empty() {
            true => String::new(),
            false => format!(" {what}: {}.", names.join(", ")),
        }
    };
    let products = entry.products.iter().map(|each| each.product_id).collect();
    let topics = entry.topics.iter().map(|each| each.topic_id).collect();
    format!(
        "The workshop {} was opened, led by {}, and the cautions were read to the group.{}{}{}",
        telling.name(entry.workshop_id),
        telling.name(entry.leader_id),
        named(products, "Products"),
        named(topics, "Topics"),
        if entry.is_unknown_there {
            " Liquid nobody can name stood in a tray."
        } else {
            ""
        }
    )
}

fn taken_over(entry: &WorkshopTakenOver, telling: Telling<'_>) -> String {
    format!(
        "{} took the workshop {} over from {}.",
        telling.name(entry.leader_id),
        telling.name(entry.workshop_id),
        telling.name(entry.from_person_id)
    )
}

fn signed_in(entry: &GuestsSignedIn, telling: Telling<'_>) -> String {
    format!(
        "{} came to the workshop {}.",
        count(&entry.guest_ids),
        telling.name(entry.workshop_id)
    )
}

fn signed_out(entry: &GuestsSignedOut, telling: Telling<'_>) -> String {
    format!(
        "{} left the workshop {}.",
        count(&entry.guest_ids),
        telling.name(entry.workshop_id)
    )
}

fn ended(entry: &WorkshopEnded, telling: Telling<'_>) -> String {
    format!(
        "The workshop {} ended; {} left with it.",
        telling.name(entry.workshop_id),
        count(&entry.guest_ids)
    )
}

fn not_ended(entry: &WorkshopNotEnded, telling: Telling<'_>) -> String {
    format!(
        "The workshop {} ran out, {}; {} not confirmed left.",
        telling.name(entry.workshop_id),
        entry.local_date,
        count(&entry.guest_ids)
    )
}

fn erased(entry: &GuestNamesErased, telling: Telling<'_>) -> String {
    format!(
        "Names of guests of the workshop {} were erased, beside entry {}.",
        telling.name(entry.workshop_id),
        entry.erases_beside_seq
    )
}
