//! The figures of a mix beside its two rules.

use super::pages::Ground;
use super::views::Fact;
use crate::error::Result;
use crate::mixes::{Mix, silver_mg_per_litre};
use crate::web::dates::Zone;
use crate::web::messages::trays as words;

/// What is known of a mix beside capacity and life, as far as there is anything
/// to say.
pub(super) fn facts(ground: &Ground, mix: &Mix, zone: &Zone) -> Result<Vec<Fact>> {
    let numbers = ground.settings.numbers();
    let mut facts = vec![fact(words::KEPT, words::storage(mix.storage).to_owned())];
    if mix.carried_out_ul > 0 {
        let level = numbers.volume(mix.level_ul());
        let carried = numbers.volume(mix.carried_out_ul);
        facts.push(fact(words::LEVEL, words::carried_out(&level, &carried)));
    }
    if mix.received_ul > 0 {
        let received = numbers.volume(mix.received_ul);
        facts.push(fact(words::RECEIVED, words::received(&received)));
    }
    if let Some(silver) = silver(mix)? {
        facts.push(fact(words::SILVER, silver));
    }
    if mix.oldest_at < mix.mixed_at {
        let oldest = zone.clock_and_weekday(mix.oldest_at).words;
        facts.push(fact(words::OLDEST, oldest));
    }
    if mix.shifts > 0 {
        facts.push(fact(words::SHIFTS, words::times(mix.shifts)));
    }
    Ok(facts)
}

fn silver(mix: &Mix) -> Result<Option<String>> {
    let limit = mix
        .figures
        .as_ref()
        .and_then(|figures| figures.silver_limits.at(mix.place()));
    if limit.is_none() && mix.silver_ug == [0; 3] {
        return Ok(None);
    }
    Ok(Some(words::silver(silver_mg_per_litre(mix)?, limit)))
}

fn fact(what: &str, figure: String) -> Fact {
    Fact {
        what: what.to_owned(),
        figure,
    }
}
