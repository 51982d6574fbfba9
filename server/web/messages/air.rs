//! What is said of room air. Nothing is called good: there is a figure with its
//! arithmetic, or nobody measured.

use super::entries::{Sentence, Telling, say};
use super::lines;
use crate::air::{
    AirSet, Aired, AiringBegan, AiringEnded, ExhaustRule, ExhaustWaiverSet, FlowMeasured, FlowOf,
    FlowTakenBack,
};
use crate::darkroom::air::{Cleared, Exhaust, NeedsExhaust};
use crate::logbook::Entry;
use crate::outages::What;
use crate::problem::Problem;
use crate::web::air_units::AirUnits;
use crate::web::days;

/// A place by name, or the room itself.
#[must_use]
pub fn here(name: Option<&str>) -> &str {
    name.unwrap_or("The room itself")
}

/// The rule by which exhaust is wanted, to choose.
#[must_use]
pub const fn rule(rule: ExhaustRule) -> &'static str {
    match rule {
        ExhaustRule::Imc2018 => "International Mechanical Code 2018",
        ExhaustRule::Ashrae621 => "ASHRAE 62.1",
        ExhaustRule::Own => "A figure of your own",
    }
}

/// What that comes to.
#[must_use]
pub const fn rule_hint(rule: ExhaustRule) -> &'static str {
    match rule {
        ExhaustRule::Imc2018 => {
            "Table 403.3.1.1, darkrooms: 1.0 cfm for each ft² of floor, 5.08 L/s for each m²"
        }
        ExhaustRule::Ashrae621 => "5.0 L/s for each m² of floor, from memory",
        ExhaustRule::Own => "What your local rule or a competent person asks for",
    }
}

/// Which flow, to choose.
#[must_use]
pub const fn flow_of(of: FlowOf) -> &'static str {
    match of {
        FlowOf::Exhaust => "Exhaust",
        FlowOf::Airing => "Airing",
    }
}

/// What that means.
#[must_use]
pub const fn flow_of_hint(of: FlowOf) -> &'static str {
    match of {
        FlowOf::Exhaust => "What the fan takes out of the space",
        FlowOf::Airing => "What moves while doors and windows stand open: never exhaust",
    }
}

/// The large words of a place.
#[must_use]
pub fn word(judged: Exhaust, is_off: bool) -> &'static str {
    match (is_off, judged) {
        (true, _) => "Fan off",
        (false, Exhaust::Unmeasured) => "Unmeasured",
        (false, Exhaust::Measured) => "Measured",
        (false, Exhaust::Short(_)) => "Short",
        (false, Exhaust::AsWanted) => "As much as wanted",
    }
}

/// Of a place whose fan stands still.
#[must_use]
pub fn off_since(what: What, since: &str) -> String {
    let what = super::outages::name(what);
    format!(
        "The {what} has been off since {since}: nothing takes air out, and none of these figures \
         holds now."
    )
}

/// Of a place in which nobody measured any exhaust.
#[must_use]
pub fn unmeasured(was_nothing: bool, has_fan: bool) -> &'static str {
    match (was_nothing, has_fan) {
        (true, _) => "What was measured is no exhaust at all. Treat the air as standing still.",
        (false, true) => {
            "Nobody measured how much air the fan takes out. Treat the air as standing still."
        }
        (false, false) => "No fan takes air out here. Treat the air as standing still.",
    }
}

/// Of measured exhaust, held against what is wanted.
#[must_use]
pub fn measured(judged: Exhaust, flow: &str, on: &str, missing: Option<&str>) -> String {
    let against = match (judged, missing) {
        (Exhaust::Short(_), Some(missing)) => format!(" It is {missing} less than is wanted."),
        (Exhaust::AsWanted, _) => {
            " That is no less than is wanted; it says nothing of what you breathe over a tray."
                .to_owned()
        }
        _ => " How much is wanted is not known: the floor, or a figure, is missing.".to_owned(),
    };
    format!("{flow} were measured {}.{against}", days::words(on))
}

/// A step of the sum: the volume.
pub const VOLUME: &str = "Volume";
/// A step of the sum: the exhaust that was measured.
pub const MEASURED: &str = "Measured exhaust";
/// A step of the sum: air changes.
pub const CHANGES: &str = "Air changes";
/// A step of the sum: the exhaust that is wanted.
pub const WANTED: &str = "Wanted exhaust";
/// A step of the sum: what is missing.
pub const SHORT_BY: &str = "Short by";
/// What was never measured.
pub const NOT_MEASURED: &str = "unmeasured";

/// Air changes an hour.
#[must_use]
pub fn an_hour(changes: &str) -> String {
    format!("{changes} an hour")
}

/// How air changes come about.
#[must_use]
pub fn changes_how(flow: &str, volume: &str) -> String {
    format!("{flow} for an hour ÷ {volume}")
}

/// How much is wanted, and by which rule.
#[must_use]
pub fn wanted_how(of: ExhaustRule, floor: &str, basis: &str) -> String {
    match of {
        ExhaustRule::Imc2018 => {
            format!("{floor} of floor × 5.08 L/s for each m² (IMC 2018, Table 403.3.1.1)")
        }
        ExhaustRule::Ashrae621 => {
            format!("{floor} of floor × 5.0 L/s for each m² (ASHRAE 62.1, from memory)")
        }
        ExhaustRule::Own => format!("The steward’s figure: {basis}"),
    }
}

/// By whom something was measured, and how.
#[must_use]
pub fn by_how(by: &str, how: &str) -> String {
    let how = how.trim_end_matches('.');
    match by {
        "" => format!("{how}."),
        by => format!("By {by}: {how}."),
    }
}

/// So much has gone.
#[must_use]
pub const fn cleared(cleared: Cleared) -> &'static str {
    match cleared {
        Cleared::Ninety => "90 % has gone",
        Cleared::NinetyNine => "99 % has gone",
        Cleared::NinetyNinePointNine => "99.9 % has gone",
    }
}

/// How a clearing time comes about: −ln f is a natural logarithm of ten for each tenfold.
#[must_use]
pub fn clearing_how(of: Cleared, changes: &str, mixing: &str) -> String {
    let logarithm = match of {
        Cleared::Ninety => "2.303",
        Cleared::NinetyNine => "4.605",
        Cleared::NinetyNinePointNine => "6.908",
    };
    format!("{logarithm} ÷ {changes} an hour × {mixing}")
}

/// A clearing time, in whole minutes rounded up.
#[must_use]
pub fn minutes(seconds: i64) -> String {
    lines::time((seconds + 59) / 60 * 60)
}

/// What the times hold for.
#[must_use]
pub fn clearing_holds(mixing: &str) -> String {
    format!(
        "Counted from the moment the trays are covered or emptied (CDC 2003, Table B.1). Air \
         hardly ever mixes perfectly: the mixing factor here is {mixing}, of 1 to 10."
    )
}

/// Why there is no clearing time: trays stand open.
#[must_use]
pub fn trays_open(trays: &[String]) -> String {
    let which = trays.join("; ");
    match trays.len() {
        1 => format!(
            "None while a tray stands open, for it gives off all the time: {which}. Cover or empty \
             it first."
        ),
        count => format!(
            "None while {count} trays stand open, for they give off all the time: {which}. Cover \
             or empty them first."
        ),
    }
}

/// Why there is no clearing time: the fan stands still.
pub const NO_TIME_OFF: &str = "None while nothing takes air out. Leave, and let air in.";
/// Why there is no clearing time: the exhaust or the volume is not known.
pub const NO_TIME_UNKNOWN: &str =
    "None: it takes measured exhaust, and the floor and the height of the space.";

/// What everyone does where no fan runs.
pub const AIR_OFTEN: &str = "Without a fan, air for a couple of minutes about every fifteen \
    (common practice, no source). It never counts as exhaust.";

/// When a place was last aired.
#[must_use]
pub fn last_aired(at: Option<&str>) -> String {
    match at {
        Some(at) => format!("Last aired until {at}."),
        None => "Nobody noted any airing within the last hour.".to_owned(),
    }
}

/// What airing came to within the hour.
#[must_use]
pub fn average(minutes: &str, average: &str) -> String {
    format!(
        "Aired for {minutes} of the last hour: {average} air changes an hour on average. That is \
         no exhaust."
    )
}

/// The same where nobody knows how much moves, or the volume.
#[must_use]
pub fn aired_for(minutes: &str) -> String {
    format!(
        "Aired for {minutes} of the last hour. How often the air changed is not known: the volume, \
         or what moves while it is aired, was not measured."
    )
}

/// An airing that goes on.
#[must_use]
pub fn aired_since(at: &str, by: Option<&str>) -> String {
    let by = by.map_or_else(String::new, |by| format!(" Said by {by}."));
    format!("It is being aired since {at}.{by}")
}

/// An airing in the list.
#[must_use]
pub fn aired_from(from: &str, until: Option<&str>, by: Option<&str>) -> String {
    let by = by.map_or_else(String::new, |by| format!(" Said by {by}."));
    match until {
        Some(until) => format!("Aired from {from} until {until}.{by}"),
        None => format!("Aired since {from}.{by}"),
    }
}

/// What may start in a place.
#[must_use]
pub fn starts(is_measured: bool, agreed: Option<(&str, &str)>) -> String {
    match (is_measured, agreed) {
        (_, Some((by, at))) => format!(
            "Toner, glacial acid and ammonia may start here without measured exhaust: {by} agreed \
             to it, written down {at}."
        ),
        (true, None) => {
            "Toner, glacial acid and ammonia may start here while the fan runs: its exhaust was \
             measured."
                .to_owned()
        }
        (false, None) => {
            "Toner, glacial acid and ammonia may not start here: no exhaust was measured."
                .to_owned()
        }
    }
}

/// A measurement in the list.
#[must_use]
pub fn found(of: FlowOf, flow: &str) -> String {
    format!("{}: {flow}.", flow_of(of))
}

/// A baths' name, for a sentence.
const fn needing(needs: NeedsExhaust) -> &'static str {
    match needs {
        NeedsExhaust::Toner => "A toner",
        NeedsExhaust::GlacialAcid => "Glacial acid",
        NeedsExhaust::Ammonia => "Ammonia",
    }
}

/// What is wrong with what is said of air; nothing where it is no such problem.
#[must_use]
pub fn about_air(problem: &Problem) -> Option<String> {
    Some(match problem {
        Problem::ExhaustUnmeasured(needs) => format!(
            "{} starts only where exhaust was measured, and here nobody measured any. Ask a \
             steward: see Room air.",
            needing(*needs)
        ),
        Problem::FanStandsStill(needs) => format!(
            "{} does not start while power or fan is off: nothing takes the air out.",
            needing(*needs)
        ),
        Problem::NoFan => {
            "The record says that no fan takes air out here. Change that first.".to_owned()
        }
        Problem::NotByThisRule => {
            "This figure belongs to a rule of your own. Choose that, or leave it empty.".to_owned()
        }
        Problem::AiredAlready => {
            "It is being aired already. Say first that this is over.".to_owned()
        }
        Problem::BeforeAiringBegan => {
            "That is before the airing began. Give the time it was over.".to_owned()
        }
        _ => return None,
    })
}

/// On the board: nobody measured.
pub const NOBODY_MEASURED: &str = "its exhaust is unmeasured";

/// On the board: the fan stands still.
#[must_use]
pub fn stands_still(what: What) -> String {
    format!("the {} is off", super::outages::name(what))
}

/// On the board: less than is wanted.
#[must_use]
pub fn is_short(missing: &str) -> String {
    format!("its exhaust is {missing} short of what is wanted")
}

/// On the board: where something stands that wants exhaust.
#[must_use]
pub fn stands_there(here: &str, what: &str, products: &[&str]) -> String {
    let (stands, it) = match products.len() {
        1 => ("stands", "it"),
        _ => ("stand", "them"),
    };
    format!(
        "{here}: {what}, and {} {stands} there. Cover {it} when nobody prints, and let air in.",
        products.join(" and ")
    )
}

/// What is known of a place's exhaust, for whoever takes the room over.
#[must_use]
pub fn handed_over(
    here: &str,
    flow: Option<&str>,
    missing: Option<&str>,
    agreed: Option<&str>,
) -> String {
    let known = match (flow, missing) {
        (Some(flow), Some(missing)) => format!("exhaust {flow}, {missing} short"),
        (Some(flow), None) => format!("exhaust {flow}"),
        (None, _) => "exhaust unmeasured".to_owned(),
    };
    let agreed = agreed.map_or_else(String::new, |by| {
        format!("; toner, glacial acid and ammonia may start without it, as {by} agreed")
    });
    format!("{here}: {known}{agreed}.")
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (AirSet::KIND, |text, telling| say(text, telling, air_set)),
    (FlowMeasured::KIND, |text, telling| {
        say(text, telling, flow_measured)
    }),
    (FlowTakenBack::KIND, |text, telling| {
        say(text, telling, taken_back)
    }),
    (ExhaustWaiverSet::KIND, |text, telling| {
        say(text, telling, waiver_set)
    }),
    (AiringBegan::KIND, |text, telling| {
        say(text, telling, airing_began)
    }),
    (AiringEnded::KIND, |text, telling| {
        say(text, telling, airing_ended)
    }),
    (Aired::KIND, |text, telling| say(text, telling, aired)),
];

/// A place in the middle of a sentence.
fn place(space: Option<uuid::Uuid>, telling: Telling<'_>) -> String {
    space
        .map_or("the room itself", |space| telling.name(space))
        .to_owned()
}

fn air_set(entry: &AirSet, telling: Telling<'_>) -> String {
    let air = &entry.air;
    let units = AirUnits::new(telling.numbers, false);
    let floor = air.floor_hundredths_mm2.map(|floor| units.area(floor));
    let height = air
        .height_tenths_mm
        .map(|height| units.height(height.into()));
    let size = match (floor, height) {
        (Some(floor), Some(height)) => format!("{floor} by {height}"),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => "size not known".to_owned(),
    };
    let fan = if air.has_fan { "a fan" } else { "no fan" };
    let mixing = telling.numbers.decimal(air.mixing_tenths.into(), 1);
    format!(
        "The air of {} was set: {size}, {fan}, mixing factor {mixing}; exhaust by: {}.",
        place(entry.space_id, telling),
        rule(air.rule)
    )
}

fn flow_measured(entry: &FlowMeasured, telling: Telling<'_>) -> String {
    let flow = AirUnits::new(telling.numbers, false).flow(entry.ul_per_s);
    format!(
        "{} of {}: {flow}, measured {}.",
        flow_of(entry.of),
        place(entry.space_id, telling),
        days::words(&entry.measured_on)
    )
}

fn taken_back(entry: &FlowTakenBack, telling: Telling<'_>) -> String {
    format!(
        "The measurement of entry {}, of {}, was taken back: {}.",
        entry.flow_measurement_seq,
        place(entry.space_id, telling),
        entry.reason.trim_end_matches('.')
    )
}

fn waiver_set(entry: &ExhaustWaiverSet, telling: Telling<'_>) -> String {
    let place = place(entry.space_id, telling);
    match &entry.agreed_by {
        Some(by) => format!(
            "In {place} toner, glacial acid and ammonia may start without measured exhaust: {by} \
             agreed."
        ),
        None => format!(
            "In {place} toner, glacial acid and ammonia may start with measured exhaust only."
        ),
    }
}

fn airing_began(entry: &AiringBegan, telling: Telling<'_>) -> String {
    format!("Airing of {} began.", place(entry.space_id, telling))
}

fn airing_ended(entry: &AiringEnded, telling: Telling<'_>) -> String {
    format!("Airing of {} was over.", place(entry.space_id, telling))
}

fn aired(entry: &Aired, telling: Telling<'_>) -> String {
    format!(
        "Airing of {}, for {}.",
        place(entry.space_id, telling),
        lines::time(entry.seconds)
    )
}
