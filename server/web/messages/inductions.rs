//! What is said of inductions.

use super::entries::{Sentence, Telling, say};
use crate::inductions::{
    Basis, Inducted, InductionConfirmed, InductionWithdrawn, Means, Standing, Supplement,
};
use crate::logbook::Entry;
use crate::problem::Problem;
use crate::web::days;
use crate::web::fields::Choice;

/// Problems of inductions.
pub(super) fn about_inductions(problem: &Problem) -> Option<String> {
    match problem {
        Problem::NotInducted { missing, stewards } => Some(not_inducted(missing, stewards)),
        Problem::NotOneself => Some(
            "Nobody inducts themself: ask another steward of this room, and leave yourself out \
             here."
                .to_owned(),
        ),
        Problem::NothingToConfirm => {
            Some("No induction waits to be confirmed. A steward records it first.".to_owned())
        }
        _ => None,
    }
}

fn not_inducted(missing: &[String], stewards: &[String]) -> String {
    let who = match stewards {
        [] => "a steward".to_owned(),
        [one] => one.clone(),
        several => format!("one of {}", several.join(", ")),
    };
    format!(
        "You cannot come in yet: you were not inducted on {}, or have not confirmed it, or it has \
         ended. Ask {who}.",
        missing.join(", ")
    )
}

/// What somebody's records say of a topic.
#[must_use]
pub fn standing(standing: &Standing) -> String {
    match standing {
        Standing::Never => "Never inducted".to_owned(),
        Standing::Outdated => "The text has changed since".to_owned(),
        Standing::Ended(day) => format!("Ended {}", days::words(day)),
        Standing::Waits => "Waits for confirmation".to_owned(),
        Standing::Until(day) => format!("In force until {}", days::words(day)),
        Standing::WithoutEnd => "In force without end".to_owned(),
    }
}

/// A topic that is in force, and until when.
#[must_use]
pub fn holds(title: &str, standing: &Standing) -> String {
    match standing {
        Standing::Until(day) => format!("{title}, until {}", days::words(day)),
        _ => title.to_owned(),
    }
}

/// Somebody, and how much of what is asked for now they lack.
#[must_use]
pub fn lacks(name: &str, count: usize) -> String {
    match count {
        0 => format!("{name}: inducted"),
        1 => format!("{name}: lacks 1 topic"),
        count => format!("{name}: lacks {count} topics"),
    }
}

/// Of how many topics asked for now somebody's induction is in force.
#[must_use]
pub fn in_force(holds: usize, of: usize) -> String {
    match of {
        0 => "Nothing is asked for now".to_owned(),
        of => format!("{holds} of {of} topics in force"),
    }
}

/// What of somebody's ends soon.
#[must_use]
pub fn ends_soon(title: &str, day: &str) -> String {
    format!("{title}: ends {}", days::words(day))
}

/// What a record stands on.
#[must_use]
pub fn basis(basis: Basis, inducer: Option<&str>, given_on: &str) -> String {
    let (day, by) = (days::words(given_on), inducer.unwrap_or("a steward"));
    match basis {
        Basis::Given => format!("Inducted {day} by {by}."),
        Basis::OnPaper => format!("Inducted {day}, from a signed paper that {by} entered."),
        Basis::SelfDeclared => {
            format!("Self-declared {day} by {by}, then the only steward of the room.")
        }
    }
}

/// How the person confirmed, and when.
#[must_use]
pub fn confirmed(means: Means, at: &str) -> String {
    match means {
        Means::OwnAccount => format!("Confirmed from their own account, {at}."),
        Means::NumberAndPin => format!("Confirmed by number and PIN beside a steward, {at}."),
        Means::Paper => "Confirmed on paper.".to_owned(),
        Means::Oneself => "Declared by the person themself; nobody else confirmed it.".to_owned(),
    }
}

/// Of a record that the person has still to confirm.
pub const WAITS: &str = "Waits for the person’s confirmation; until then it does not count.";

/// Of a record that was withdrawn.
#[must_use]
pub fn withdrawn(reason: &str) -> String {
    format!("Withdrawn: {}.", reason.trim_end_matches('.'))
}

/// A topic as a record covers it.
#[must_use]
pub fn covered(title: &str, version: i32, good_until: Option<&str>) -> String {
    let until = good_until.map_or_else(
        || "without end".to_owned(),
        |day| format!("good until {}", days::words(day)),
    );
    format!("{title}, version {version}, {until}")
}

/// What is to be told before a product is opened, and whom.
#[must_use]
pub fn supplement(due: &Supplement) -> String {
    let names: Vec<&str> = due.people.iter().map(|(_, name)| name.as_str()).collect();
    format!("{}: tell {}.", due.topic, names.join(", "))
}

/// What a record may stand on, to choose.
#[must_use]
pub fn bases() -> Vec<Choice> {
    vec![
        Choice::new("given", "Told in person").explained("They confirm it themselves afterwards"),
        Choice::new("on_paper", "A signed paper").explained("From before this program was here"),
    ]
}

/// What somebody is told whom a steward has inducted.
pub(super) fn asked_to_confirm(by: &str) -> String {
    format!("{by} has recorded an induction of yours. Confirm it: before that it does not count.")
}

/// What somebody is told whose induction ends soon.
pub(super) fn own_ends(topics: &[String], first: &str) -> String {
    let ends = ends(topics, first);
    format!("Your induction {ends}. Ask a steward to renew it.")
}

/// What stewards are told of it.
pub(super) fn ends_of(name: &str, topics: &[String], first: &str) -> String {
    format!("The induction of {name} {}.", ends(topics, first))
}

fn ends(topics: &[String], first: &str) -> String {
    let day = days::words(first);
    match topics {
        [one] => format!("on {one} ends {day}"),
        several => format!("on {} ends, the first part {day}", several.join(", ")),
    }
}

/// What stewards are told of a product that asks for something new.
pub(super) fn supplement_due(product: &str, topic: &str, people: i64) -> String {
    let people = match people {
        1 => "1 inducted person was".to_owned(),
        people => format!("{people} inducted people were"),
    };
    format!("Before {product} is opened: {people} never told {topic}.")
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (Inducted::KIND, |text, telling| say(text, telling, inducted)),
    (InductionConfirmed::KIND, |text, telling| {
        say(text, telling, induction_confirmed)
    }),
    (InductionWithdrawn::KIND, |text, telling| {
        say(text, telling, induction_withdrawn)
    }),
];

fn inducted(entry: &Inducted, telling: Telling<'_>) -> String {
    let topics: Vec<&str> = entry
        .topics
        .iter()
        .map(|covered| telling.name(covered.topic_id))
        .collect();
    let (name, topics) = (telling.name(entry.person_id), topics.join(", "));
    match entry.basis {
        Basis::Given => format!("{name} was inducted on {topics}."),
        Basis::OnPaper => format!(
            "A paper was entered: {name} was inducted on {topics}, {}.",
            days::words(&entry.given_on)
        ),
        Basis::SelfDeclared => format!("{name}, the only steward, declared to know {topics}."),
    }
}

fn induction_confirmed(entry: &InductionConfirmed, telling: Telling<'_>) -> String {
    let means = match entry.means {
        Means::NumberAndPin => ", by number and PIN",
        Means::OwnAccount | Means::Paper | Means::Oneself => "",
    };
    format!(
        "{} confirmed the induction of entry {}{means}.",
        telling.name(entry.person_id),
        entry.induction_seq
    )
}

fn induction_withdrawn(entry: &InductionWithdrawn, telling: Telling<'_>) -> String {
    format!(
        "The induction of entry {}, of {}, was withdrawn: {}.",
        entry.induction_seq,
        telling.name(entry.person_id),
        entry.reason.trim_end_matches('.')
    )
}
