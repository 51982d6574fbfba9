//! What each entry about a mix says, in one sentence.

use super::entries::{Sentence, Telling, say};
use crate::clock::moment;
use crate::darkroom::state::Origin;
use crate::logbook::Entry;
use crate::mixes::stock::StockMade;
use crate::mixes::{
    Contaminant, DiscardUndone, Discarded, Extended, Mixed, Outcome, PouredTogether, Reading,
    ReadingKind, ReadingUndone, Rinsed, Shifted, Stand, Storage, Stored, ToppedUp, UnknownFound,
    Why,
};
use crate::web::messages::readings as words;

/// The sentences, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (Mixed::KIND, |text, telling| say(text, telling, mixed)),
    (StockMade::KIND, |text, telling| {
        say(text, telling, stock_made)
    }),
    (UnknownFound::KIND, |text, telling| {
        say(text, telling, unknown_found)
    }),
    (Stored::KIND, |text, telling| say(text, telling, stored)),
    (ToppedUp::KIND, |text, telling| {
        say(text, telling, topped_up)
    }),
    (PouredTogether::KIND, |text, telling| {
        say(text, telling, poured_together)
    }),
    (Shifted::KIND, |text, telling| say(text, telling, shifted)),
    (Reading::KIND, |text, telling| say(text, telling, reading)),
    (ReadingUndone::KIND, |text, telling| {
        say(text, telling, reading_undone)
    }),
    (Extended::KIND, |text, telling| say(text, telling, extended)),
    (Discarded::KIND, |text, telling| {
        say(text, telling, discarded)
    }),
    (DiscardUndone::KIND, |text, telling| {
        say(text, telling, discard_undone)
    }),
    (Rinsed::KIND, |text, telling| say(text, telling, rinsed)),
];

fn place(stand: Stand, telling: Telling<'_>) -> String {
    let vessel = stand.tray_id.or(stand.bottle_id);
    vessel.map_or("no vessel", |id| telling.name(id)).to_owned()
}

/// A sentence with a reason behind it, where there is one.
fn because(said: &str, reason: &str) -> String {
    match reason.trim() {
        "" => format!("{said}."),
        reason => format!("{said}: {}.", reason.trim_end_matches('.')),
    }
}

fn mixed(entry: &Mixed, telling: Telling<'_>) -> String {
    let what = format!(
        "{} of {} at {}",
        telling.numbers.litres(entry.charged_ul),
        telling.name(entry.product_id),
        telling.numbers.dilution(entry.parts_thousandths)
    );
    let place = place(entry.stand, telling);
    match entry.origin {
        Origin::Mixed if entry.stock_id.is_some() => {
            format!("{what} was mixed in {place}, from recorded stock solution.")
        }
        Origin::Mixed => format!("{what} was mixed in {place}."),
        Origin::Guessed | Origin::Unknown => {
            format!("Opening entry: {what} stood in {place} already, its age and use by guess.")
        }
    }
}

fn stock_made(entry: &StockMade, telling: Telling<'_>) -> String {
    format!(
        "{} of {} made {} of stock solution.",
        super::mixing::packets(entry.packets_thousandths, telling.numbers),
        telling.name(entry.product_id),
        telling.numbers.litres(entry.volume_ul)
    )
}

fn unknown_found(entry: &UnknownFound, telling: Telling<'_>) -> String {
    let litres = telling.numbers.litres(entry.charged_ul);
    let place = place(entry.stand, telling);
    let said = format!("About {litres} of liquid that nobody can name was found in {place}");
    because(&said, &entry.remark)
}

fn stored(entry: &Stored, telling: Telling<'_>) -> String {
    let (from, to) = (place(entry.from, telling), place(entry.to, telling));
    match entry.storage {
        Storage::CoveredTray => format!("{to} was covered."),
        Storage::OpenTray if entry.from.tray_id == entry.to.tray_id => {
            format!("The cover was taken off {to}.")
        }
        Storage::OpenTray => format!("The mix in {from} was poured back into {to}."),
        Storage::FullBottle => format!("The mix in {from} was poured into {to}, full."),
        Storage::PartBottle => {
            format!("The mix in {from} was poured into {to}, with air above it.")
        }
    }
}

fn topped_up(entry: &ToppedUp, telling: Telling<'_>) -> String {
    format!(
        "{} of fresh {} was added in {}.",
        telling.numbers.litres(entry.volume_ul),
        telling.name(entry.product_id),
        place(entry.stand, telling)
    )
}

fn poured_together(entry: &PouredTogether, telling: Telling<'_>) -> String {
    format!(
        "{} from {} was poured into {}.",
        telling.numbers.litres(entry.volume_ul),
        place(entry.poured_from, telling),
        place(entry.stand, telling)
    )
}

fn shifted(entry: &Shifted, telling: Telling<'_>) -> String {
    format!(
        "{} was poured off from {} into {}, and the bath of {} moved up into its place.",
        telling.numbers.litres(entry.volume_ul),
        place(entry.to, telling),
        entry.container,
        place(entry.from, telling)
    )
}

fn reading(entry: &Reading, telling: Telling<'_>) -> String {
    let place = place(entry.stand, telling);
    if entry.kind == ReadingKind::Contamination {
        let what = match &entry.contaminant {
            Some(Contaminant::Groups(groups)) => words::groups(groups),
            Some(Contaminant::Unknown) | None => "something nobody can name".to_owned(),
        };
        let said = format!("Contamination of {place} was reported: {what}");
        return because(&said, &entry.remark);
    }
    let mut said = format!("{} of {place}", words::kind(entry.kind));
    if let Some(value) = entry.value {
        said = format!(
            "{said}: {}",
            words::figure(entry.kind, value, telling.numbers)
        );
    }
    if let Some(ratio) = entry.ratio_thousandths {
        let ratio = telling.numbers.rounded(ratio, 3, 2);
        said = format!("{said}, {ratio} times the fresh one");
    }
    match entry.outcome {
        Outcome::Read => {}
        Outcome::Passed if entry.is_fresh => said.push_str(", taken fresh"),
        Outcome::Passed => said.push_str(", passed"),
        Outcome::Failed => said.push_str(", failed"),
    }
    if let Some(person) = entry.person_id {
        said = format!("{said}, looked at by {}", telling.name(person));
    }
    match entry.remark.trim() {
        "" => format!("{said}."),
        remark => format!("{said}. {}.", remark.trim_end_matches('.')),
    }
}

fn reading_undone(entry: &ReadingUndone, telling: Telling<'_>) -> String {
    let place = place(entry.stand, telling);
    let said = format!(
        "The reading of entry {}, {place}, was taken back",
        entry.reading_seq
    );
    because(&said, &entry.reason)
}

fn extended(entry: &Extended, telling: Telling<'_>) -> String {
    let minutes = (moment(entry.until_us) - moment(entry.given_us)).whole_minutes();
    let place = place(entry.stand, telling);
    let span = super::bench::span(minutes * 60);
    because(
        &format!("{place} may be tested and used for {span} more"),
        &entry.reason,
    )
}

fn discarded(entry: &Discarded, telling: Telling<'_>) -> String {
    let said = format!(
        "{} was poured off from {} into {}",
        telling.numbers.litres(entry.volume_ul),
        place(entry.stand, telling),
        entry.container
    );
    match entry.why {
        Why::Spent => format!("{said}."),
        Why::Contaminated => format!("{said}: it was contaminated."),
        Why::Mistaken => format!("{said}: it was mixed wrongly."),
        Why::Test => format!("{said}: it was mixed for a test."),
        Why::Recalled => format!("{said}: its product was called back."),
    }
}

fn discard_undone(entry: &DiscardUndone, telling: Telling<'_>) -> String {
    let place = place(entry.stand, telling);
    let said = format!(
        "The discard of entry {} was a mistake, and the mix stands in {place}",
        entry.discard_seq
    );
    because(&said, &entry.reason)
}

fn rinsed(entry: &Rinsed, telling: Telling<'_>) -> String {
    format!("{} was rinsed.", place(entry.stand, telling))
}
