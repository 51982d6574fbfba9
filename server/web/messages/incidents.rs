//! What is said of incidents. What happened is told to the person and to stewards who
//! opened it, and stands in no entry.

use super::entries::{Sentence, Telling, say};
use crate::incidents::{
    BodyPart, FirstDeed, IncidentErased, IncidentFinished, IncidentLookedAt, IncidentReported, What,
};
use crate::logbook::Entry;
use crate::web::desk::Question;

/// The choice of an incident without a product.
pub const NO_PRODUCT: &str = "None, or not known";
/// The choice of one that happened at no line.
pub const NO_LINE: &str = "Elsewhere in the room";
/// The choice of oneself.
pub const TO_ME: &str = "To me";

/// A fact: to whom.
pub const PERSON: &str = "It happened to";
/// A fact: who reported it.
pub const REPORTED: &str = "Reported";
/// A fact: what sort.
pub const WHAT: &str = "What";
/// A fact: when.
pub const WHEN: &str = "When";
/// A fact: where.
pub const WHERE: &str = "Where";
/// A fact: the product.
pub const PRODUCT: &str = "Product";
/// A fact: which part of the body.
pub const PART: &str = "Part of the body";
/// A fact: what was done first.
pub const FIRST: &str = "Done first";

/// What sort of incident.
#[must_use]
pub const fn what(what: What) -> &'static str {
    match what {
        What::SkinContact => "Chemistry on the skin",
        What::EyeSplash => "A splash in the eye",
        What::Inhalation => "Something was breathed in",
        What::Spill => "Something was spilt",
        What::NearMiss => "It nearly happened",
    }
}

/// Which part of the body.
#[must_use]
pub const fn part(part: BodyPart) -> &'static str {
    match part {
        BodyPart::Hands => "Hands and fingers",
        BodyPart::Arms => "Arms",
        BodyPart::Face => "Face and neck",
        BodyPart::Elsewhere => "Elsewhere",
    }
}

/// What was done first.
#[must_use]
pub const fn deed(deed: FirstDeed) -> &'static str {
    match deed {
        FirstDeed::LongFlush => "Running water, at least 15 minutes",
        FirstDeed::ShortFlush => "Running water, less than 15 minutes",
        FirstDeed::Out => "Everyone out, and air let in",
        FirstDeed::Called => "Emergency number, poison centre or a doctor called",
        FirstDeed::Nothing => "Nothing yet",
    }
}

/// What a list says of one.
#[must_use]
pub fn state(at: &str, is_finished: bool, is_erased: bool) -> String {
    let finished = if is_finished { "dealt with" } else { "open" };
    let erased = if is_erased { ", erased" } else { "" };
    format!("Reported {at}, {finished}{erased}")
}

/// When it was reported, and by whom.
#[must_use]
pub fn reported(by: Option<&str>, at: &str) -> String {
    match by {
        Some(by) => format!("{at}, by {by}"),
        None => at.to_owned(),
    }
}

/// Who looked at it.
#[must_use]
pub fn looked(person: Option<&str>, at: &str) -> String {
    format!("{} looked at it {at}.", person.unwrap_or("Somebody"))
}

/// What somebody wants to avoid.
#[must_use]
pub fn avoided(product: Option<&str>, words: &str) -> String {
    match (product, words) {
        (Some(product), "") => product.to_owned(),
        (Some(product), words) => format!("{product}: {words}"),
        (None, words) => words.to_owned(),
    }
}

/// A warning on arriving: what one wanted to avoid stands in a tray.
#[must_use]
pub fn avoid(product: &str, words: &str) -> String {
    let words = match words {
        "" => String::new(),
        words => format!(" ({words})"),
    };
    format!("You wanted to avoid this{words}: {product} stands in a tray now.")
}

/// A warning on arriving: what is not listed cannot be ruled out.
#[must_use]
pub fn may_hold(products: &[&str]) -> String {
    format!(
        "Nobody listed everything that is in {}: what you want to avoid may be in there. Read the \
         safety data sheet, and ask a steward.",
        products.join(", ")
    )
}

/// To somebody of whom a steward reported an incident.
#[must_use]
pub fn of_yours(number: i64, by: &str) -> String {
    format!(
        "{by} reported incident {number}, which happened to you. Read it under Incidents; it is \
         erased when you want it."
    )
}

/// How many incidents a period had; of small numbers nothing more, so that nobody is
/// known by them.
#[must_use]
pub fn counted(reported: i64, unfinished: i64) -> String {
    match reported {
        0 => "No incident was reported.".to_owned(),
        1 => format!("1 incident was reported; not dealt with: {unfinished}."),
        _ => format!("{reported} incidents were reported; not dealt with: {unfinished}."),
    }
}

/// To whoever touched a sensitiser again and again.
pub const SEE_A_DOCTOR: &str = "Your skin has met something that can cause an allergy, or that nobody \
    listed, several times within three months. Such an allergy builds up over years and stays. See a \
    doctor about it, even if nothing itches, and take the safety data sheet along. Only you are told \
    this.";

/// To stewards: no more than that.
#[must_use]
pub fn other_task(name: &str) -> String {
    format!("Offer {name} a task away from chemistry.")
}

/// Before it is erased.
#[must_use]
pub fn erase_question(number: i64) -> Question {
    Question {
        question: format!("Erase what is known of incident {number}?"),
        consequence: "What happened, when, where and to which part of the body is erased for good: \
            nobody can bring it back. The book keeps that there was an incident of this number, and \
            that it was erased."
            .to_owned(),
        verb: "Erase it".to_owned(),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (IncidentReported::KIND, |text, telling| {
        say(text, telling, incident_reported)
    }),
    (IncidentLookedAt::KIND, |text, telling| {
        say(text, telling, looked_at)
    }),
    (IncidentFinished::KIND, |text, telling| {
        say(text, telling, finished)
    }),
    (IncidentErased::KIND, |text, telling| {
        say(text, telling, erased)
    }),
];

fn incident_reported(entry: &IncidentReported, telling: Telling<'_>) -> String {
    format!(
        "Incident {} was reported, of {}.",
        entry.number,
        telling.name(entry.person_id)
    )
}

fn looked_at(entry: &IncidentLookedAt, telling: Telling<'_>) -> String {
    format!(
        "A steward looked at an incident of {}.",
        telling.name(entry.person_id)
    )
}

fn finished(entry: &IncidentFinished, telling: Telling<'_>) -> String {
    format!(
        "An incident of {} was dealt with.",
        telling.name(entry.person_id)
    )
}

fn erased(entry: &IncidentErased, telling: Telling<'_>) -> String {
    format!(
        "What was known of an incident of {} was erased.",
        telling.name(entry.person_id)
    )
}
