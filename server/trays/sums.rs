//! The arithmetic behind a verdict, step by step.

use time::OffsetDateTime;

use super::views::Step;
use crate::board::{life_used_ppb, ppb};
use crate::clock::micros;
use crate::darkroom::quantities::Area;
use crate::mixes::{Mix, step};
use crate::sheets::WornByClass;
use crate::web::dates::Zone;
use crate::web::messages::bench as words;
use crate::web::numbers::Numbers;

/// How the used share of capacity comes about.
pub(super) fn capacity(mix: &Mix, worn: &[WornByClass], numbers: Numbers) -> Vec<Step> {
    let charged = numbers.volume(mix.charged_ul);
    let mut steps = vec![step(words::CHARGED, String::new(), charged.clone())];
    for class in worn {
        let equivalents = i128::from(class.area) * 1_000 / i128::from(Area::SHEET_8X10.get());
        let equivalents = i64::try_from(equivalents).unwrap_or(i64::MAX);
        let how = match (&class.paper_class, class.sheets_per_litre_thousandths) {
            (None, _) => words::rolls(class.count),
            (Some(_), Some(per_litre)) => {
                let per_litre = numbers.decimal(per_litre, 3);
                words::worn(&numbers.rounded(equivalents, 3, 1), &per_litre)
            }
            (Some(_), None) => String::new(),
        };
        let what = class.paper_class.as_deref().unwrap_or(words::FILM);
        steps.push(step(what, how, litres(class.spent_nl, numbers)));
    }
    let used = ppb(mix.spent_nl, mix.charged_ul.saturating_mul(1_000));
    let how = format!("{} ÷ {charged}", litres(mix.spent_nl, numbers));
    steps.push(step(words::CAPACITY_USED, how, numbers.percent_used(used)));
    steps
}

fn litres(nanolitres: i64, numbers: Numbers) -> String {
    numbers.volume((nanolitres + 500) / 1_000)
}

/// How the used share of life comes about.
pub(super) fn life(mix: &Mix, zone: &Zone, now: OffsetDateTime) -> Vec<Step> {
    let lived_s = ((micros(now) - micros(mix.age_at)) / 1_000_000).max(0);
    let life = words::span(mix.life_s);
    let lived = words::span(lived_s);
    let since = words::stands_since(&zone.clock_and_weekday(mix.age_at).words);
    let used = Numbers::default().percent_used(life_used_ppb(mix, now));
    vec![
        step(words::LIFE_HERE, String::new(), life.clone()),
        step(&since, String::new(), lived.clone()),
        step(words::LIFE_USED, format!("{lived} ÷ {life}"), used),
    ]
}
