//! What is said of lamps and screens. Nothing is called safe without the time that a
//! test gave.

use super::entries::{Sentence, Telling, say, set};
use super::lines;
use crate::lamps::{FogTestTakenBack, FogTested, LampKind, LampSet, Standing};
use crate::logbook::Entry;
use crate::web::days;
use crate::web::desk::Question;
use crate::web::views::TakeBackWords;

/// A step or a safe time: `2 min 49 s`.
#[must_use]
pub fn time(seconds: i64) -> String {
    lines::time(seconds)
}

/// What shines, to choose.
#[must_use]
pub const fn kind(kind: LampKind) -> &'static str {
    match kind {
        LampKind::Safelight => "Safelight",
        LampKind::Screen => "Screen",
    }
}

/// What that means.
#[must_use]
pub const fn kind_hint(kind: LampKind) -> &'static str {
    match kind {
        LampKind::Safelight => "A lamp to work with paper by",
        LampKind::Screen => "On the wall, on the bench or in a hand",
    }
}

/// What a lamp is and how it hangs.
#[must_use]
pub fn about(what: LampKind, light: &str, distance: &str, space: Option<&str>) -> String {
    let light = match light.trim_end_matches('.') {
        "" => String::new(),
        light => format!(": {light}"),
    };
    let space = space.map_or_else(String::new, |space| format!(" In {space}."));
    format!(
        "{}{light}. {distance} from the nearest paper.{space}",
        kind(what)
    )
}

/// The large words where no time holds, and what stands beside the time where one does.
#[must_use]
pub const fn word(standing: Standing, is_moved: bool) -> &'static str {
    match (standing, is_moved) {
        (Standing::Never, _) => "Never tested",
        (Standing::Changed, true) => "Moved since its test",
        (Standing::Changed, false) => "Changed since its test",
        (Standing::NoSafeTime, _) => "No safe time",
        (Standing::Overdue, _) => "Test overdue",
        (Standing::Tested, _) => "Tested safe time",
    }
}

/// Of a paper that never lay in that light for a test.
pub const NEVER_TESTED: &str = "Treat it as unsafe for this paper.";

/// Of a time that holds.
#[must_use]
pub fn tested(at: &str, again_by: &str, steps: (Option<i64>, Option<i64>)) -> String {
    let lower = match steps {
        (Some(clean), None) => format!(
            " Nothing fogged up to {}: this is half of that, a lower figure.",
            time(clean)
        ),
        _ => String::new(),
    };
    format!("Tested {at}, again by {again_by}.{lower}")
}

/// Of a time that holds no more, because its day has passed.
#[must_use]
pub fn overdue(at: &str, safe_s: Option<i64>, again_by: &str) -> String {
    let gave = safe_s.map_or_else(String::new, |safe| format!(" and gave {}", time(safe)));
    format!(
        "It was tested {at}{gave}. The next test is overdue since {again_by}: until then treat \
         it as unsafe."
    )
}

/// Of a test that fogged at once.
#[must_use]
pub fn no_safe_time(at: &str, fogged_s: Option<i64>) -> String {
    let step = fogged_s.map_or_else(String::new, |step| format!(" of {}", time(step)));
    format!(
        "The test of {at} fogged at its shortest step{step} already. Keep this paper out of this \
         light."
    )
}

/// Of a test that was made when the lamp hung otherwise.
#[must_use]
pub fn changed(at: &str, light: &str, distance: &str) -> String {
    let then = hung(light, distance);
    format!("It was tested {at}, {then}. Until it is tested as it hangs now, treat it as unsafe.")
}

/// How a lamp hung when it was tested.
fn hung(light: &str, distance: &str) -> String {
    match light {
        "" => format!("at {distance}"),
        light => format!("at {distance} ({light})"),
    }
}

/// What a test found.
#[must_use]
pub fn found(
    paper: &str,
    (clean, fogged): (Option<i64>, Option<i64>),
    safe_s: Option<i64>,
) -> String {
    let steps = match (clean.map(time), fogged.map(time)) {
        (Some(clean), Some(fogged)) => format!("clean up to {clean}, fogged from {fogged} on"),
        (Some(clean), None) => format!("nothing fogged up to {clean}"),
        (None, Some(fogged)) => format!("fogged at {fogged} already"),
        (None, None) => "no step".to_owned(),
    };
    match (safe_s.map(time), fogged) {
        (Some(safe), Some(_)) => format!("{paper}: {steps}. Safe time {safe}."),
        (Some(safe), None) => format!("{paper}: {steps}. Safe time {safe}, a lower figure."),
        (None, _) => format!("{paper}: {steps}. No safe time."),
    }
}

/// How a lamp hung, until when the test holds, and who made it.
#[must_use]
pub fn with(light: &str, distance: &str, person: Option<&str>, again_by: &str) -> String {
    let by = person.map_or_else(String::new, |person| format!(" by {person}"));
    format!("Tested{by} {}; again by {again_by}.", hung(light, distance))
}

/// Why a lamp's light counts as unsafe: for these papers, or for all where none is
/// named.
#[must_use]
pub fn unsafe_for(standing: Standing, since: Option<&str>, papers: &[&str]) -> String {
    let papers = match papers.is_empty() {
        true => String::new(),
        // A name may have a comma of its own.
        false => format!(" for {}", papers.join(" and ")),
    };
    let since = since.map_or_else(String::new, |day| format!(" since {}", days::words(day)));
    let why = match standing {
        Standing::Never => "no fog test yet",
        Standing::Changed => "moved or changed since its fog test",
        Standing::NoSafeTime => "its fog test gave no safe time",
        Standing::Overdue => "its fog test is overdue",
        Standing::Tested => "its fog test holds",
    };
    format!("{why}{since}{papers}")
}

/// What everyone should know of a lamp whose light counts as unsafe for so many of so
/// many papers.
#[must_use]
pub fn treat_as_unsafe(lamp: &str, reasons: &[String], count: usize, of: usize) -> String {
    let which = match count {
        count if count == of => "",
        1 => " for that paper",
        _ => " for those papers",
    };
    let reasons = reasons.join("; ");
    format!("{lamp}: {reasons}. Treat its light as unsafe{which}.")
}

/// Of a lamp about which nothing is to be done yet.
#[must_use]
pub fn tested_until(lamp: &str, again_by: &str) -> String {
    format!("{lamp}: fog test again by {}.", days::words(again_by))
}

/// What stewards are told once a test is overdue.
#[must_use]
pub fn told(lamp: &str, again_by: &str) -> String {
    format!(
        "The fog test of {lamp} is overdue since {}. Until it is tested again its light counts as \
         unsafe for paper.",
        days::words(again_by)
    )
}

/// Before a fog test is taken back.
pub const TAKE_BACK: TakeBackWords = TakeBackWords {
    title: "Take a fog test back",
    question: "Take this test back?",
    consequence: "What the test before it found then counts again, if it still holds.",
};

/// Before a lamp is retired.
#[must_use]
pub fn retire(name: &str) -> Question {
    Question {
        question: format!("Retire {name}?"),
        consequence: "Nobody can record a test of it any more, and the board says nothing of it. \
            Its tests stay in the book, and it can be brought back on the page of lamps and \
            screens."
            .to_owned(),
        verb: "Retire it".to_owned(),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (LampSet::KIND, |text, telling| say(text, telling, lamp_set)),
    (FogTested::KIND, |text, telling| {
        say(text, telling, fog_tested)
    }),
    (FogTestTakenBack::KIND, |text, telling| {
        say(text, telling, taken_back)
    }),
];

fn lamp_set(entry: &LampSet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Lamp", &entry.name, true);
    }
    let distance = entry.hangs.distance_tenths_mm.into();
    let distance = telling.numbers.millimetres(distance);
    let about = about(entry.hangs.kind, &entry.hangs.light, &distance, None);
    format!("Lamp {} was set: {about}", entry.name)
}

fn fog_tested(entry: &FogTested, telling: Telling<'_>) -> String {
    let (lamp, paper) = (
        telling.name(entry.lamp_id),
        telling.name(entry.paper_class_id),
    );
    let found = found(paper, (entry.clean_s, entry.fogged_s), entry.safe_s);
    format!("Fog test of {lamp}. {found}")
}

fn taken_back(entry: &FogTestTakenBack, telling: Telling<'_>) -> String {
    format!(
        "The fog test of entry {}, of {}, was taken back: {}.",
        entry.fog_test_seq,
        telling.name(entry.lamp_id),
        entry.reason.trim_end_matches('.')
    )
}
