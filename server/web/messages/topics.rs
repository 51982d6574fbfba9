//! What is said of topics.

use super::entries::{Sentence, Telling, say, set};
use crate::logbook::Entry;
use crate::topics::{Required, TopicSet, Trait};
use crate::web::desk::Question;
use crate::web::fields::Choice;

/// Of a topic that everyone must know.
pub const ALWAYS: &str = "Required of everyone who comes in.";
/// Of a topic that nobody must know.
pub const OFFERED: &str = "Required of nobody; offered to whoever asks.";

/// What about a product asks for a topic, to choose.
#[must_use]
pub const fn trait_name(each: Trait) -> &'static str {
    match each {
        Trait::Sensitiser => "A sensitiser",
        Trait::AcidOrAlkali => "An acid or an alkali",
        Trait::Toner => "A toner",
        Trait::Oxidiser => "An oxidiser",
    }
}

/// By what it is recognised.
#[must_use]
pub const fn trait_hint(each: Trait) -> &'static str {
    match each {
        Trait::Sensitiser => {
            "H317, H334 or EUH203 to EUH208 on its sheet, and everything without safety data or a \
             name"
        }
        Trait::AcidOrAlkali => "H290 or H314 on its sheet, or what it holds says so",
        Trait::Toner => "Its kind is toner",
        Trait::Oxidiser => "H270 to H272 on its sheet, or what it holds says so",
    }
}

/// Of a topic that traits ask for.
#[must_use]
pub fn by_traits(traits: &[Trait]) -> String {
    let traits: Vec<String> = traits
        .iter()
        .map(|each| trait_name(*each).to_lowercase())
        .collect();
    format!(
        "Required while {} is in a tray or stands here as concentrate.",
        traits.join(" or ")
    )
}

/// Of a topic that products ask for.
#[must_use]
pub fn by_products(names: &[&str]) -> String {
    format!("Required while {} is in a tray.", names.join(" or "))
}

/// Its version, and how long an induction on it is good.
#[must_use]
pub fn about(version: i32, counts_from: i32, good_months: Option<i32>) -> String {
    let good = match good_months {
        Some(1) => "good for 1 month".to_owned(),
        Some(months) => format!("good for {months} months"),
        None => "good without end".to_owned(),
    };
    let counts = match counts_from == version {
        true => String::new(),
        false => format!(" Inductions count from version {counts_from} on."),
    };
    format!("Version {version}, {good}.{counts}")
}

/// Of whom a topic may be required.
#[must_use]
pub fn when() -> Vec<Choice> {
    vec![
        Choice::new("always", "Everyone, always").explained("Nobody comes in without it"),
        Choice::new("by_trait", "By what is here")
            .explained("While something with a trait below is in a tray or stands here"),
        Choice::new("by_product", "By product")
            .explained("While one of the products below is in a tray"),
        Choice::new("offered", "Nobody").explained("There for whoever asks"),
    ]
}

/// What a new text may ask for.
#[must_use]
pub fn again() -> Vec<Choice> {
    vec![
        Choice::new("anew", "Everyone anew")
            .explained("Inductions on the text before count no more"),
        Choice::new("on_renewal", "Only on renewal")
            .explained("Inductions on the text before count until they end"),
    ]
}

/// Before a topic is retired.
#[must_use]
pub fn retire(title: &str) -> Question {
    Question {
        question: format!("Retire {title}?"),
        consequence:
            "Nobody is asked for it any more, and nobody can be inducted on it. Its texts \
            and what people were told stay on record, and it can be brought back on the page of \
            topics."
                .to_owned(),
        verb: "Retire it".to_owned(),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[(TopicSet::KIND, |text, telling| {
    say(text, telling, topic_set)
})];

fn topic_set(entry: &TopicSet, telling: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Topic", &entry.title, true);
    }
    let required = match &entry.required {
        Required::Always => ALWAYS.to_owned(),
        Required::Offered => OFFERED.to_owned(),
        Required::ByTrait(traits) => by_traits(traits),
        Required::ByProduct(ids) => {
            let names: Vec<&str> = ids.iter().map(|id| telling.name(*id)).collect();
            by_products(&names)
        }
    };
    let about = about(entry.version, entry.counts_from_version, entry.good_months);
    format!("Topic {} was set. {required} {about}", entry.title)
}
