//! The chart says what it was given, in its zone, and never leaves its plot.

use proptest::prelude::*;
use time::macros::datetime;

use super::*;

fn point(at: OffsetDateTime, percent: i64) -> Point {
    Point {
        at,
        used_ppb: percent * 10_000_000,
    }
}

fn event(at: OffsetDateTime, what: &str) -> Event {
    Event {
        at,
        what: what.to_owned(),
    }
}

/// Mixed at 13:00 for eight hours, looked at at 17:00.
fn evening() -> WearOverTime {
    let began = datetime!(2026-11-26 13:00 UTC);
    let now = datetime!(2026-11-26 17:00 UTC);
    WearOverTime {
        began,
        now,
        capacity: vec![
            point(began, 0),
            point(datetime!(2026-11-26 15:00 UTC), 40),
            point(datetime!(2026-11-26 16:00 UTC), 20),
        ],
        life: vec![point(began, 0), point(now, 50)],
        life_ends: Some(datetime!(2026-11-26 21:00 UTC)),
        test_first_ppb: 800_000_000,
        events: vec![
            event(began, "Mixed."),
            event(datetime!(2026-11-26 15:00 UTC), "Noted."),
            event(datetime!(2026-11-26 16:00 UTC), "Undone."),
        ],
    }
}

fn drawn(input: WearOverTime) -> WearChart {
    WearChart::draw(input, &Zone::utc()).unwrap()
}

/// Eight hours wide: two hours are a quarter, four are the half. Plain arithmetic.
#[test]
fn capacity_goes_in_steps_and_life_straight() {
    let chart = drawn(evening());
    let capacity = "M0 1000H250V600H375V800H500";
    assert_eq!(chart.capacity.as_deref(), Some(capacity));
    assert_eq!(chart.life.as_deref(), Some("M0 1000L500 500"));
    assert_eq!(chart.ahead.as_deref(), Some("M500 500L1000 0"));
    assert_eq!(chart.now, Tenths(500));
    assert_eq!(chart.test_first, Tenths(200));
    let levels: Vec<&str> = chart.levels.iter().map(|it| it.words.as_str()).collect();
    let quarters = [
        "0\u{a0}%",
        "25\u{a0}%",
        "50\u{a0}%",
        "75\u{a0}%",
        "100\u{a0}%",
    ];
    assert_eq!(levels, quarters);
}

#[test]
fn the_table_says_what_the_curves_show() {
    let chart = drawn(evening());
    let said = |row: &Told| {
        let capacity = row.capacity.clone().unwrap();
        let life = row.life.clone().unwrap();
        format!("{} {} {capacity} {life}", row.letter, row.from.words)
    };
    let rows: Vec<String> = chart.rows.iter().map(said).collect();
    let wanted = [
        "A 13:00 0\u{a0}% 0\u{a0}%",
        "B 15:00 40\u{a0}% 25\u{a0}%",
        "C 16:00 20\u{a0}% 37\u{a0}%",
    ];
    assert_eq!(rows, wanted);
    let letters: String = chart.letters.iter().map(|it| it.letter).collect();
    assert_eq!(letters, "ABC");
    assert_eq!(chart.letters[1].y, Tenths(600));
}

#[test]
fn what_happened_close_together_shares_a_letter() {
    let mut input = evening();
    for minute in 0..6 {
        let at = datetime!(2026-11-26 15:01 UTC) + Duration::minutes(minute);
        input.events.push(event(at, "Noted."));
    }
    let chart = drawn(input);
    let shared = &chart.rows[1];
    assert_eq!((shared.what.len(), shared.more), (MOST_TOLD, 3));
    let to = shared.to.as_ref().map(|to| to.words.as_str());
    assert_eq!((shared.from.words.as_str(), to), ("15:00", Some("15:06")));
    assert_eq!(chart.rows.len(), 3);
}

#[test]
fn what_is_over_the_whole_is_drawn_over_the_line() {
    let mut input = evening();
    input.capacity.push(point(input.now, 340));
    let chart = drawn(input);
    // Half as much again at the top, so the whole stands a third below it.
    let limit = chart.levels.iter().find(|level| level.is_limit).unwrap();
    assert_eq!(limit.y, Tenths(334));
    assert!(chart.capacity.unwrap().ends_with("V0H500"));
    assert_eq!(chart.ends[1].words, "340\u{a0}%");
}

#[test]
fn a_mix_that_paper_does_not_use_up_has_one_curve() {
    let mut input = evening();
    input.capacity.clear();
    let chart = drawn(input);
    assert_eq!(chart.capacity, None);
    assert_eq!(chart.ends.len(), 1);
    assert!(chart.rows.iter().all(|row| row.capacity.is_none()));
    let page = chart.to_string();
    assert!(!page.contains("chart-capacity") && page.contains("not counted"));
}

#[test]
fn a_mix_whose_age_nobody_knows_has_no_curve_of_life() {
    let mut input = evening();
    input.life.clear();
    input.life_ends = None;
    let chart = drawn(input);
    assert_eq!((chart.life.as_ref(), chart.ahead.as_ref()), (None, None));
    assert_eq!(chart.ends.len(), 1);
    let page = chart.to_string();
    assert!(!page.contains("chart-life") && page.contains("not known"));
}

#[test]
fn the_words_at_the_ends_never_lie_on_each_other() {
    for (capacity, life) in [(50, 50), (49, 50), (0, 0), (1, 0), (100, 99)] {
        let mut input = evening();
        input.capacity = vec![point(input.began, 0), point(input.now, capacity)];
        input.life = vec![point(input.began, 0), point(input.now, life)];
        let ends = drawn(input).ends;
        let apart = ends[0].y.0.abs_diff(ends[1].y.0);
        assert!(i64::from(apart) >= ENDS_APART, "{capacity} {life}: {apart}");
    }
}

/// Source: IANA time zone database, file europe: on 2026-10-25 the clock of Berlin
/// goes back from 03:00 to 02:00.
#[test]
fn the_axis_keeps_local_time_over_a_change_of_the_clock() {
    let began = datetime!(2026-10-24 18:00 UTC);
    let input = WearOverTime {
        began,
        now: began + Duration::hours(2),
        life: vec![point(began, 0), point(began + Duration::hours(2), 2)],
        life_ends: Some(began + Duration::hours(96)),
        capacity: Vec::new(),
        ..evening()
    };
    let chart = WearChart::draw(input, &Zone::named("Europe/Berlin").unwrap()).unwrap();
    let words: Vec<&str> = chart.ticks.iter().map(|it| it.words.as_str()).collect();
    assert_eq!(words, ["21:00", "00:00", "03:00", "06:00", "09:00"]);
    let days: Vec<&str> = chart
        .ticks
        .iter()
        .filter_map(|it| it.day.as_deref())
        .collect();
    assert_eq!(days, ["Sat 24", "Sun 25"]);
}

#[test]
fn a_bottle_of_half_a_year_has_days() {
    let began = datetime!(2026-06-01 10:00 UTC);
    let now = began + Duration::days(90);
    let input = WearOverTime {
        began,
        now,
        life: vec![point(began, 0), point(now, 50)],
        life_ends: Some(began + Duration::days(180)),
        capacity: Vec::new(),
        ..evening()
    };
    let chart = drawn(input);
    assert!(chart.ticks.len() <= 7, "{}", chart.ticks.len());
    assert_eq!(chart.ticks[0].words, "1 Jul");
    assert!(chart.ticks.iter().all(|tick| tick.day.is_none()));
}

proptest! {
    /// Whatever happened, every place lies in the plot and letters stay apart.
    #[test]
    fn nothing_leaves_the_plot(
        lived in 0_i64..60_000,
        life in 1_i64..300_000,
        notes in proptest::collection::vec((0_i64..60_000, 0_i64..400), 0..60),
    ) {
        let began = datetime!(2026-03-28 20:00 UTC);
        let now = began + Duration::minutes(lived);
        let at = |minute: i64| began + Duration::minutes(minute.min(lived));
        let input = WearOverTime {
            began,
            now,
            capacity: notes.iter().map(|(minute, used)| point(at(*minute), *used)).collect(),
            life: vec![point(began, 0), point(now, lived * 100 / life)],
            life_ends: Some(began + Duration::minutes(life)),
            events: notes.iter().map(|(minute, _)| event(at(*minute), "Noted.")).collect(),
            ..evening()
        };
        let chart = WearChart::draw(input, &Zone::named("Europe/Berlin").unwrap()).unwrap();
        let places = chart.capacity.iter().chain(&chart.life).chain(&chart.ahead);
        for path in places {
            let numbers = path.split(|letter: char| !letter.is_ascii_digit());
            for number in numbers.filter(|number| !number.is_empty()) {
                prop_assert!(number.parse::<i64>().unwrap() <= FULL, "{path}");
            }
            prop_assert!(!path.contains('-'), "{path}");
        }
        for pair in chart.letters.windows(2) {
            prop_assert!(pair[1].x.0 - pair[0].x.0 >= 70);
        }
        let told: usize = chart.rows.iter().map(|row| row.what.len() + row.more).sum();
        prop_assert_eq!(told, notes.len());
        prop_assert!(chart.ticks.len() <= 8, "{}", chart.ticks.len());
    }
}
