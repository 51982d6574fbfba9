//! Reading what somebody typed about a room.

use unicode_normalization::UnicodeNormalization;

use super::settings::{Hours, Settings};
use crate::identity::names::text;
use crate::problem::{Problem, Problems};

/// The most characters of a short name.
const SLUG: usize = 40;
/// The most characters of a room's name.
const NAME: usize = 80;
/// The most characters of one of the emergency page's texts.
const EMERGENCY: usize = 400;
/// The most people a room is set to.
const PEOPLE: i32 = 1_000;
/// The longest that the names of guests are kept: ten years.
const GUEST_DAYS: i64 = 3_650;
/// The latest a note may be: 90 days.
const LATE_MINUTES: i32 = 90 * 24 * 60;

/// Whether a text can be a room's short name: lower-case letters, digits and
/// hyphens between them.
#[must_use]
pub fn is_slug(text: &str) -> bool {
    let fits = |sign: u8| sign.is_ascii_lowercase() || sign.is_ascii_digit() || sign == b'-';
    !text.is_empty()
        && text.len() <= SLUG
        && text.bytes().all(fits)
        && !text.starts_with('-')
        && !text.ends_with('-')
}

/// A short name made of a room's name.
#[must_use]
pub fn slug_of(name: &str) -> String {
    let plain: String = name
        .nfkd()
        .filter(|sign| !unicode_normalization::char::is_combining_mark(*sign))
        .collect::<String>()
        .to_lowercase();
    let words: Vec<&str> = plain
        .split(|sign: char| !sign.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    let mut slug = words.join("-");
    slug.truncate(SLUG);
    let slug = slug.trim_end_matches('-');
    match slug.is_empty() {
        true => "room".to_owned(),
        false => slug.to_owned(),
    }
}

/// The zone's name as the zone table spells it.
///
/// # Errors
/// [`Problem::NotAZone`].
pub(super) fn zone(typed: &str) -> Result<String, Problem> {
    let found = jiff::tz::TimeZone::get(typed.trim()).ok();
    found
        .as_ref()
        .and_then(|zone| zone.iana_name())
        .map(str::to_owned)
        .ok_or(Problem::NotAZone)
}

/// A currency's code: three letters.
///
/// # Errors
/// [`Problem::NotACurrency`].
pub(super) fn currency(typed: &str) -> Result<String, Problem> {
    let code = typed.trim().to_ascii_uppercase();
    match code.len() == 3 && code.bytes().all(|sign| sign.is_ascii_uppercase()) {
        true => Ok(code),
        false => Err(Problem::NotACurrency),
    }
}

/// A room's name.
///
/// # Errors
/// What is wrong with it.
pub(super) fn name(typed: &str) -> Result<String, Problem> {
    let name = text(typed, NAME)?;
    match name.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(name),
    }
}

/// Settings in their one spelling, or all that is wrong with them, each under
/// the name its field has in the form.
///
/// # Errors
/// The problems.
pub(super) fn check(settings: Settings) -> Result<Settings, Problems> {
    let mut problems = Problems::default();
    let mut checked = settings.clone();
    let mut put = |field: &'static str, slot: &mut String, read: Result<String, Problem>| match read
    {
        Ok(text) => *slot = text,
        Err(problem) => problems.add(field, problem),
    };
    put("name", &mut checked.name, name(&settings.name));
    put("zone", &mut checked.zone, zone(&settings.zone));
    put(
        "currency",
        &mut checked.currency,
        currency(&settings.currency),
    );
    let (said, kept) = (&settings.emergency, &mut checked.emergency);
    let texts = [
        ("emergency_number", &said.number, &mut kept.number),
        (
            "poison_centre",
            &said.poison_centre,
            &mut kept.poison_centre,
        ),
        ("address", &said.address, &mut kept.address),
        ("contacts", &said.contacts, &mut kept.contacts),
        ("eyewash", &said.eyewash, &mut kept.eyewash),
        ("data_sheets", &said.data_sheets, &mut kept.data_sheets),
    ];
    for (field, typed, slot) in texts {
        put(field, slot, lines(typed));
    }
    check_numbers(&settings, &mut problems);
    match problems.is_empty() {
        true => Ok(checked),
        false => Err(problems),
    }
}

/// Text of several lines.
fn lines(typed: &str) -> Result<String, Problem> {
    let lines: Vec<String> = typed
        .lines()
        .map(|line| text(line, EMERGENCY))
        .collect::<Result<_, _>>()?;
    let whole = lines.join("\n").trim().to_owned();
    match whole.chars().count() > EMERGENCY {
        true => Err(Problem::TooLong(EMERGENCY)),
        false => Ok(whole),
    }
}

fn check_numbers(settings: &Settings, problems: &mut Problems) {
    let mut within = |field: &'static str, value: i64, (least, most), (unit, word): (i64, &str)| {
        if !(least..=most).contains(&value) {
            let (least, most) = (least / unit, most / unit);
            let (least, most) = (format!("{least}{word}"), format!("{most}{word}"));
            problems.add(field, Problem::OutOfRange { least, most });
        }
    };
    let people = i64::from(settings.people_limit);
    within("people_limit", people, (1, i64::from(PEOPLE)), (1, ""));
    let guests = i64::from(settings.guest_days);
    within("guest_days", guests, (1, GUEST_DAYS), (1, " days"));
    // In per cent, as it is typed; all used up is never "test first".
    let one_percent = 10_000_000;
    within(
        "test_first",
        settings.test_first_ppb,
        (one_percent, 99 * one_percent),
        (one_percent, " %"),
    );
    let late = i64::from(settings.late_note_minutes);
    within(
        "late_note_hours",
        late,
        (0, i64::from(LATE_MINUTES)),
        (60, " h"),
    );
    let shifts = i64::from(settings.fixer_shifts);
    within("fixer_shifts", shifts, (0, 20), (1, ""));
    let half = 50 * one_percent;
    let second = settings.second_bath_ppb;
    within("second_bath", second, (0, half), (one_percent, " %"));
    if let Some(alkali) = settings.alkali_meq_per_litre {
        within("alkali", alkali.into(), (1, 5_000), (1, " meq/L"));
    }
    if let Some(silver) = settings.silver_mg_per_roll {
        within("silver_per_roll", silver, (1, 10_000), (1, " mg"));
    }
    if let Some(kept) = settings.film_kept_ppb {
        within(
            "film_kept",
            kept,
            (0, 100 * one_percent),
            (one_percent, " %"),
        );
    }
    for (day, hours) in settings.hours.iter().enumerate() {
        if let Some(problem) = hours.and_then(check_hours) {
            problems.add(format!("hours-{day}"), problem);
        }
    }
}

fn check_hours(hours: Hours) -> Option<Problem> {
    let Hours {
        opens_minute,
        closes_minute,
    } = hours;
    if !(0..1_440).contains(&opens_minute) || !(1..=1_440).contains(&closes_minute) {
        return Some(Problem::NotATime);
    }
    (closes_minute <= opens_minute).then_some(Problem::ClosesBeforeOpening)
}

#[cfg(test)]
mod tests {
    use super::{currency, is_slug, slug_of, zone};

    #[test]
    fn a_short_name_comes_of_a_name() {
        for (name, slug) in [
            ("North Lane Darkroom", "north-lane-darkroom"),
            ("  Labor  Süd/2 ", "labor-sud-2"),
            ("暗室", "room"),
        ] {
            assert_eq!(slug_of(name), slug);
            assert!(is_slug(slug));
        }
        assert!(is_slug(&slug_of(&"a very long name of a room ".repeat(5))));
        for bad in ["", "-a", "a-", "A", "a b", "ä"] {
            assert!(!is_slug(bad), "{bad}");
        }
    }

    #[test]
    fn zones_and_currencies() {
        assert_eq!(zone("europe/berlin").as_deref(), Ok("Europe/Berlin"));
        assert!(zone("Europe/Nowhere").is_err());
        assert_eq!(currency(" eur").as_deref(), Ok("EUR"));
        assert!(currency("EURO").is_err());
    }
}
