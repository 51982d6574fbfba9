//! A room's settings as its form shows and reads them.

use super::read::check;
use super::settings::{DecimalMark, Emergency, HazardRules, Hours, Settings, Units};
use super::views::SettingsForm;
use crate::problem::{Problem, Problems};
use crate::web::numbers::Numbers;

/// The settings as texts.
pub(super) fn shown_settings(settings: &Settings, key: String) -> SettingsForm {
    let emergency = settings.emergency.clone();
    let day = |pick: fn(Hours) -> i32| -> Vec<String> {
        let hours = settings.hours.iter();
        hours
            .map(|hours| hours.map_or_else(String::new, |hours| clock_text(pick(hours))))
            .collect()
    };
    let numbers = settings.numbers();
    let if_any = |value: Option<i64>, places| {
        value.map_or_else(String::new, |value| numbers.decimal(value, places))
    };
    SettingsForm {
        key,
        name: settings.name.clone(),
        zone: settings.zone.clone(),
        currency: settings.currency.clone(),
        units: settings.units.as_str().to_owned(),
        decimal_mark: settings.decimal_mark.as_str().to_owned(),
        opens: day(|hours| hours.opens_minute),
        closes: day(|hours| hours.closes_minute),
        people_limit: settings.people_limit.to_string(),
        // Parts per billion are ten-millionths of a per cent.
        test_first: numbers.decimal(settings.test_first_ppb, 7),
        late_note_hours: hours_text(settings.late_note_minutes, numbers),
        is_unheated: if settings.is_unheated { "yes" } else { "" }.to_owned(),
        fixer_shifts: settings.fixer_shifts.to_string(),
        second_bath: numbers.decimal(settings.second_bath_ppb, 7),
        alkali: if_any(settings.alkali_meq_per_litre.map(i64::from), 0),
        silver_per_roll: if_any(settings.silver_mg_per_roll, 0),
        film_kept: if_any(settings.film_kept_ppb, 7),
        forbids_mixing_alone: if settings.forbids_mixing_alone {
            "yes"
        } else {
            ""
        }
        .to_owned(),
        guest_days: settings.guest_days.to_string(),
        hazard_rules: settings.hazard_rules.as_str().to_owned(),
        emergency_number: emergency.number,
        poison_centre: emergency.poison_centre,
        address: emergency.address,
        contacts: emergency.contacts,
        eyewash: emergency.eyewash,
        data_sheets: emergency.data_sheets,
    }
}

fn hours_text(minutes: i32, numbers: Numbers) -> String {
    numbers.decimal(i64::from(minutes) * 1_000 / 60, 3)
}

fn clock_text(minute: i32) -> String {
    format!("{:02}:{:02}", minute / 60, minute % 60)
}

/// `18:00`, from 00:00 to 24:00.
fn read_clock(text: &str) -> Option<i32> {
    let (hour, minute) = text.trim().split_once(':')?;
    let digits = |part: &str| part.len() <= 2 && part.bytes().all(|sign| sign.is_ascii_digit());
    if !digits(hour) || !digits(minute) {
        return None;
    }
    let (hour, minute): (i32, i32) = (hour.parse().ok()?, minute.parse().ok()?);
    let whole = hour * 60 + minute;
    (minute < 60 && whole <= 1_440).then_some(whole)
}

fn read_hours(opens: &str, closes: &str) -> Result<Option<Hours>, Problem> {
    if opens.trim().is_empty() && closes.trim().is_empty() {
        return Ok(None);
    }
    match (read_clock(opens), read_clock(closes)) {
        (Some(opens_minute), Some(closes_minute)) => Ok(Some(Hours {
            opens_minute,
            closes_minute,
        })),
        _ => Err(Problem::NotATime),
    }
}

/// Reads the form, in the numbers the room writes now.
pub(super) fn read_settings(form: &SettingsForm, numbers: Numbers) -> Result<Settings, Problems> {
    let mut problems = Problems::default();
    let choice = Problem::NotAChoice;
    let units = problems.take("units", Units::parse(&form.units).ok_or(choice.clone()));
    let mark = DecimalMark::parse(&form.decimal_mark).ok_or(choice.clone());
    let mark = problems.take("decimal_mark", mark);
    let rules = HazardRules::parse(&form.hazard_rules).ok_or(choice);
    let rules = problems.take("hazard_rules", rules);
    let people = numbers.read_count(&form.people_limit);
    let people = problems.take("people_limit", people.map_err(Problem::Number));
    let test_first = numbers.read_percent(&form.test_first);
    let test_first = problems.take("test_first", test_first.map_err(Problem::Number));
    let late = numbers.read_thousandths(&form.late_note_hours);
    let late = problems.take("late_note_hours", late.map_err(Problem::Number));
    let hours = std::array::from_fn(|day| {
        let text = |texts: &[String]| texts.get(day).cloned().unwrap_or_default();
        let read = read_hours(&text(&form.opens), &text(&form.closes));
        problems.take(format!("hours-{day}"), read).flatten()
    });
    let baths = read_baths(form, numbers, &mut problems);
    let (Some(units), Some(decimal_mark), Some(hazard_rules)) = (units, mark, rules) else {
        return Err(problems);
    };
    let settings = Settings {
        name: form.name.clone(),
        zone: form.zone.clone(),
        currency: form.currency.clone(),
        units,
        decimal_mark,
        hours,
        people_limit: whole(people.unwrap_or(1)),
        test_first_ppb: test_first.unwrap_or(800_000_000),
        // Thousandths of an hour; to the nearest minute.
        late_note_minutes: whole((late.unwrap_or(0) * 60 + 500) / 1_000),
        hazard_rules,
        emergency: Emergency {
            number: form.emergency_number.clone(),
            poison_centre: form.poison_centre.clone(),
            address: form.address.clone(),
            contacts: form.contacts.clone(),
            eyewash: form.eyewash.clone(),
            data_sheets: form.data_sheets.clone(),
        },
        ..baths
    };
    match check(settings) {
        Ok(settings) if problems.is_empty() => Ok(settings),
        Ok(_) => Err(problems),
        Err(more) => {
            problems.append(more);
            Err(problems)
        }
    }
}

/// What the baths are judged by, and how long guests are named; the rest of these settings is nobody's.
fn read_baths(form: &SettingsForm, numbers: Numbers, problems: &mut Problems) -> Settings {
    let shifts = numbers.read_count(&form.fixer_shifts);
    let shifts = problems.take("fixer_shifts", shifts.map_err(Problem::Number));
    let guest_days = numbers.read_count(&form.guest_days);
    let guest_days = problems.take("guest_days", guest_days.map_err(Problem::Number));
    let second = numbers.read_percent(&form.second_bath);
    let second = problems.take("second_bath", second.map_err(Problem::Number));
    let mut if_any = |field: &str, typed: &str, is_percent: bool| {
        let read = match (typed.trim(), is_percent) {
            ("", _) => return None,
            (typed, true) => numbers.read_percent(typed),
            (typed, false) => numbers.read_count(typed),
        };
        problems.take(field, read.map_err(Problem::Number))
    };
    let starting = Settings::starting(String::new(), String::new(), String::new());
    Settings {
        is_unheated: form.is_unheated == "yes",
        forbids_mixing_alone: form.forbids_mixing_alone == "yes",
        fixer_shifts: shifts.map_or(starting.fixer_shifts, whole),
        guest_days: guest_days.map_or(starting.guest_days, whole),
        second_bath_ppb: second.unwrap_or(starting.second_bath_ppb),
        alkali_meq_per_litre: if_any("alkali", &form.alkali, false).map(whole),
        silver_mg_per_roll: if_any("silver_per_roll", &form.silver_per_roll, false),
        film_kept_ppb: if_any("film_kept", &form.film_kept, true),
        ..starting
    }
}

/// Too large for any setting is too large for its bounds.
fn whole(number: i64) -> i32 {
    i32::try_from(number).unwrap_or(i32::MAX)
}

#[cfg(test)]
mod tests {
    use super::{read_clock, read_settings, shown_settings};
    use crate::problem::Problem;
    use crate::rooms::{DecimalMark, Settings};

    fn settings() -> Settings {
        Settings {
            decimal_mark: DecimalMark::Comma,
            test_first_ppb: 825_000_000,
            late_note_minutes: 90,
            is_unheated: true,
            forbids_mixing_alone: true,
            second_bath_ppb: 125_000_000,
            alkali_meq_per_litre: Some(400),
            film_kept_ppb: Some(333_333_333),
            ..Settings::starting(
                "A room".to_owned(),
                "Asia/Tokyo".to_owned(),
                "JPY".to_owned(),
            )
        }
    }

    #[test]
    fn what_is_shown_reads_back_as_it_was() {
        let before = settings();
        let form = shown_settings(&before, "key".to_owned());
        assert_eq!(form.test_first, "82,5");
        assert_eq!(form.late_note_hours, "1,5");
        assert_eq!(form.closes[6], "24:00");
        assert_eq!(
            (form.second_bath.as_str(), form.silver_per_roll.as_str()),
            ("12,5", "")
        );
        assert_eq!(read_settings(&form, before.numbers()), Ok(before));
    }

    #[test]
    fn everything_wrong_is_said_at_once() {
        let before = settings();
        let mut form = shown_settings(&before, "key".to_owned());
        form.name = " ".to_owned();
        form.zone = "Nowhere".to_owned();
        form.people_limit = "0".to_owned();
        form.opens[2] = "18:00".to_owned();
        form.closes[2] = "9:00".to_owned();
        form.opens[4] = "noon".to_owned();
        let problems = read_settings(&form, before.numbers()).unwrap_err();
        let fields: Vec<_> = problems.iter().map(|(field, _)| field).collect();
        assert_eq!(
            fields,
            ["hours-4", "name", "zone", "people_limit", "hours-2"]
        );
        let late = problems.iter().find(|(field, _)| *field == "hours-2");
        assert_eq!(
            late.map(|(_, problem)| problem),
            Some(&Problem::ClosesBeforeOpening)
        );
    }

    #[test]
    fn the_clock_of_a_door() {
        assert_eq!(read_clock("18:00"), Some(1_080));
        assert_eq!(read_clock("0:05"), Some(5));
        assert_eq!(read_clock("24:00"), Some(1_440));
        for wrong in ["24:01", "18", "18:60", "-1:00", "", ":", "٣:00"] {
            assert_eq!(read_clock(wrong), None, "{wrong}");
        }
    }
}
