//! A tray in words and drawings, as the board and the tray's own page show it.

use time::OffsetDateTime;

use super::state::TrayNow;
use crate::bench::Tray;
use crate::clock::micros;
use crate::mixes::Mix;
use crate::rooms::Settings;
use crate::web::dates::Zone;
use crate::web::drawing::{Measured, Rule, TrayDrawing, TrayShape, VerdictWord};
use crate::web::messages::verdicts;
use crate::web::numbers::{Numbers, whole_percent_left, whole_percent_used};

/// What board and tray page both show of a tray.
#[derive(Clone, Debug)]
pub struct Figures {
    /// The verdict, large.
    pub word: VerdictWord,
    /// The tray from above.
    pub drawing: TrayDrawing,
    /// The reason in numbers.
    pub reason: String,
    /// When the verdict changes if nobody prints.
    pub change: Option<String>,
    /// How deep the mix stands.
    pub depth: String,
    /// What is left of capacity and of life.
    pub rules: Option<(Rule, Rule)>,
}

/// Puts a judged tray into words and drawings.
#[must_use]
pub fn figures(each: &TrayNow, settings: &Settings, zone: &Zone, now: OffsetDateTime) -> Figures {
    let numbers = settings.numbers();
    let standing = verdicts::standing(each.judgement.verdict);
    let shape = shape(&each.tray);
    let volume = each.mix.as_ref().map(|mix| mix.charged_ul);
    let litres = volume.map_or_else(String::new, |volume| numbers.volume(volume));
    let depth = volume.map_or(0, |volume| shape.depth_of(volume));
    Figures {
        word: VerdictWord { standing },
        drawing: TrayDrawing::new(shape, standing, volume, litres),
        reason: verdicts::reason(&each.judgement, numbers, zone),
        change: verdicts::change(&each.judgement, zone),
        depth: numbers.millimetres(depth),
        rules: each.mix.as_ref().map(|mix| rules(mix, settings, zone, now)),
    }
}

/// What is left of a mix's capacity and of its life.
#[must_use]
pub fn rules(mix: &Mix, settings: &Settings, zone: &Zone, now: OffsetDateTime) -> (Rule, Rule) {
    let test_from = whole_percent_used(settings.test_first_ppb);
    let test_from = u8::try_from(test_from).ok();
    (
        capacity_rule(mix, settings.numbers(), test_from),
        life_rule(mix, zone, now, test_from),
    )
}

/// A tray's measurements, as it is drawn.
#[must_use]
pub fn shape(tray: &Tray) -> TrayShape {
    TrayShape {
        long_tenths_mm: tray.inside_long_tenths_mm.into(),
        short_tenths_mm: tray.inside_short_tenths_mm.into(),
        depth_tenths_mm: tray.inside_depth_tenths_mm.into(),
        least_depth_tenths_mm: tray.least_depth_tenths_mm.into(),
    }
}

/// Parts per billion of a whole, rounded down.
#[must_use]
pub fn ppb(part: i64, whole: i64) -> i64 {
    let ppb = i128::from(part) * 1_000_000_000 / i128::from(whole.max(1));
    i64::try_from(ppb).unwrap_or(i64::MAX)
}

fn capacity_rule(mix: &Mix, numbers: Numbers, test_from: Option<u8>) -> Rule {
    let charged_nl = mix.charged_ul.saturating_mul(1_000);
    let left_ul = (charged_nl - mix.spent_nl).max(0) / 1_000;
    Rule {
        measured: Measured::Capacity,
        left_percent: whole_percent_left(ppb(mix.spent_nl, charged_nl)),
        test_from_percent: test_from,
        words: verdicts::capacity_left(mix.has_capacity, left_ul, mix.charged_ul, numbers),
        from: verdicts::FRESH.to_owned(),
        until: verdicts::USED_UP.to_owned(),
        parts: 10,
    }
}

/// What is used of a mix's life now, in parts per billion.
#[must_use]
pub fn life_used_ppb(mix: &Mix, now: OffsetDateTime) -> i64 {
    let lived_us = (micros(now) - micros(mix.age_at)).max(0);
    mix.age_ppb + ppb(lived_us, mix.life_s.saturating_mul(1_000_000))
}

/// When a mix's life is over where it stands now; none where nobody knows.
#[must_use]
pub fn life_ends(mix: &Mix) -> Option<OffsetDateTime> {
    mix.life_ends()
}

/// What is left of a mix's life, drawn as of `now`.
#[must_use]
pub fn life_rule(mix: &Mix, zone: &Zone, now: OffsetDateTime, test_from: Option<u8>) -> Rule {
    let ends = life_ends(mix).unwrap_or(mix.age_at);
    let ends_words = zone.clock_and_weekday(ends).words;
    Rule {
        measured: Measured::Life,
        left_percent: whole_percent_left(life_used_ppb(mix, now)),
        test_from_percent: test_from,
        words: verdicts::life_left(now < ends, &ends_words),
        from: verdicts::mixed_at(&zone.clock_and_weekday(mix.mixed_at).words),
        until: ends_words,
        parts: u8::try_from((mix.life_s / 3_600).clamp(1, 48)).unwrap_or(48),
    }
}
