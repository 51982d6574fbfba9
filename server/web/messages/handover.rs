//! What a steward hands over, line by line. These lines stand in the book.

use crate::outages::What;
use crate::rights::Role;
use crate::web::messages::{outages, people};

/// Heading: what is off.
pub const OFF: &str = "Off now";
/// Heading: trays that nobody prints through.
pub const NOT_TO_USE: &str = "Not to be used";
/// Heading: mixes that a steward let be used longer.
pub const EXTENDED: &str = "Used a little longer";
/// Heading: what is kept in bottles.
pub const BOTTLED: &str = "What is kept in bottles";
/// Heading: what stands in the trays.
pub const STANDING: &str = "What stands in the trays";
/// Heading: room checks that are to be done, and when the others are due.
pub const ROOM_CHECKS: &str = "Room checks";
/// Heading: tests of lamps and screens that are due, and when the next ones are.
pub const FOG_TESTS: &str = "Fog tests of lamps and screens";
/// Heading: what is known of the exhaust of each space.
pub const AIR: &str = "Room air";
/// Heading: incidents that are not dealt with, by number.
pub const INCIDENTS: &str = "Incidents";
/// Heading: workshops that are to come.
pub const WORKSHOPS: &str = "Workshops";
/// Heading: products that nobody may mix from.
pub const NO_SAFETY_DATA: &str = "Products without safety data";
/// Heading: what the page for emergencies lacks.
pub const NOT_ON_FILE: &str = "Not on file for an emergency";
/// Heading: people with a part of the room's keeping, and those kept out.
pub const PEOPLE: &str = "Who keeps the room, and who is suspended";
/// Heading: links that are open.
pub const LINKS: &str = "Invitations and links that are open";
/// Heading: tokens of programs and devices.
pub const TOKENS: &str = "Tokens of programs and devices";
/// Heading: paired screens.
pub const SCREENS: &str = "Paired screens";
/// Heading: seals and checks of the book.
pub const BOOK: &str = "The book";

/// Not on file: the number of the emergency services.
pub const EMERGENCY_NUMBER: &str = "The emergency number";
/// Not on file: the poison centre.
pub const POISON_CENTRE: &str = "The poison centre";
/// Not on file: the room's address.
pub const ADDRESS: &str = "The address of this room";
/// Not on file: the room's people.
pub const CONTACTS: &str = "The people to call";
/// Not on file: the eyewash.
pub const EYEWASH: &str = "Where the eyewash is";
/// Not on file: the sheets.
pub const DATA_SHEETS: &str = "Where the safety data sheets are";

/// Something that is off.
#[must_use]
pub fn off(what: What, since: &str) -> String {
    outages::off_since(what, since)
}

/// A tray that nobody prints through.
#[must_use]
pub fn not_to_use(line: &str, tray: &str, verdict: &str) -> String {
    format!("{line}, {tray}: {verdict}.")
}

/// A mix that a steward let be used longer.
#[must_use]
pub fn extended(place: &str, until: &str) -> String {
    format!("{place}: until {until}, tested first.")
}

/// A mix in a bottle.
#[must_use]
pub fn bottled(bottle: &str, what: &str, mixed: &str, verdict: &str) -> String {
    format!("{bottle}: {what}, mixed {mixed}. {verdict}.")
}

/// A mix in a tray.
#[must_use]
pub fn standing((line, tray): (&str, &str), what: &str, mixed: &str, verdict: &str) -> String {
    format!("{line}, {tray}: {what}, mixed {mixed}. {verdict}.")
}

/// An incident, of which the number is all that is handed over.
#[must_use]
pub fn unfinished(number: i64) -> String {
    format!("Incident {number} is not dealt with.")
}

/// A paired screen.
#[must_use]
pub fn screen(name: &str, kind: &str, paired: &str) -> String {
    format!("{name}, a {kind}, paired {paired}.")
}

/// Somebody of the room.
#[must_use]
pub fn person(name: &str, role: Role, is_suspended: bool) -> String {
    let role = people::role(role);
    match is_suspended {
        true => format!("{name}, {role}, suspended."),
        false => format!("{name}, {role}."),
    }
}

/// What a link is for.
#[must_use]
pub fn link(role: Option<Role>, person: Option<&str>) -> String {
    match (role, person) {
        (Some(role), _) => format!("Invitation as {}", people::role(role)),
        (None, Some(person)) => format!("New password for {person}"),
        (None, None) => "A link".to_owned(),
    }
}

/// A link that is open.
#[must_use]
pub fn open_link(what: &str, made_by: Option<&str>, ends: Option<&str>) -> String {
    let maker = made_by.map_or_else(people::the_machine, str::to_owned);
    match ends {
        Some(ends) => format!("{what}, made by {maker}, good until {ends}."),
        None => format!("{what}, made by {maker}."),
    }
}

/// A token that is good.
#[must_use]
pub fn token(name: &str, person: &str, scopes: &[String], until: &str) -> String {
    let scopes = scopes.join(", ");
    format!("{name}, of {person}, for {scopes}, good until {until}.")
}

/// The last checkpoint: its entry and its moment.
#[must_use]
pub fn sealed(last: Option<(i64, String)>) -> String {
    match last {
        Some((seq, at)) => format!("The last checkpoint is of entry {seq}, made {at}."),
        None => "No checkpoint was made yet.".to_owned(),
    }
}

/// The last look at the whole book: its moment, and what did not agree.
#[must_use]
pub fn verified(last: Option<(String, i64)>) -> String {
    match last {
        Some((at, 0)) => format!("It was last verified {at}; everything agreed."),
        Some((at, findings)) => {
            format!("It was last verified {at}; {findings} did not agree.")
        }
        None => "It was not verified yet.".to_owned(),
    }
}

/// The one-line state of a handover that waits.
#[must_use]
pub fn waits(from: &str, to: &str) -> String {
    format!("{from} hands over to {to}, who has not confirmed it yet.")
}

/// The one-line state of a handover that is done.
#[must_use]
pub fn done(from: &str, to: &str, at: &str) -> String {
    format!("{from} handed over to {to}, who confirmed it {at}.")
}

/// The one-line state of a handover that was taken back.
#[must_use]
pub fn withdrawn(from: &str, to: &str, at: &str) -> String {
    format!("{from} wanted to hand over to {to}; it was taken back {at}.")
}
