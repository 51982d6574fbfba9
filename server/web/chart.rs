//! How a mix wore, drawn over the room's local time: its capacity in steps, its life
//! as a slope, and by letters what happened, with a table that says the same.
//!
//! Both curves are one ink and differ by stroke and by a word at their end, so that
//! the chart reads under a red lamp and in print. Places are whole tenths of a per cent
//! of the plot, which keeps letters and figures at their size on every screen.

use askama::Template;
use askama::filters::HtmlSafe;
use time::{Duration, OffsetDateTime};

use super::dates::{DateError, Moment, Zone};
use super::drawing::Tenths;
use super::numbers::Numbers;

/// One point of a curve.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Point {
    /// When.
    pub at: OffsetDateTime,
    /// The used share, in parts per billion; it may pass the whole.
    pub used_ppb: i64,
}

/// Something that happened to the mix.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// When.
    pub at: OffsetDateTime,
    /// What, one sentence.
    pub what: String,
}

/// What the chart is drawn from. Points and events may come in any order; those of one
/// instant keep theirs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WearOverTime {
    /// When the mix began.
    pub began: OffsetDateTime,
    /// As of when the chart is drawn.
    pub now: OffsetDateTime,
    /// The used share of capacity; each point holds until the next. None where paper
    /// uses nothing up.
    pub capacity: Vec<Point>,
    /// The used share of life, straight between the points. None where nobody knows it.
    pub life: Vec<Point>,
    /// When its life is over if it stays as it stands.
    pub life_ends: Option<OffsetDateTime>,
    /// From which used share on it is tested first, in parts per billion.
    pub test_first_ppb: i64,
    /// What happened.
    pub events: Vec<Event>,
}

const WHOLE_PPB: i64 = 1_000_000_000;
/// The plot's width and height.
const FULL: i64 = 1_000;
/// Events nearer than this share one letter: at 320 px so much is a letter's width.
const LETTERS_APART: i64 = 70;
/// Two words at the ends of curves stand so far apart.
const ENDS_APART: i64 = 90;
/// A row of the table tells so many events in full.
const MOST_TOLD: usize = 4;
const MOST_TICKS: i64 = 6;
/// A fresh mix is shown with so much of the time ahead of it, longer ones with three
/// times what they have stood.
const LEAST_AHEAD: Duration = Duration::hours(12);

/// A line across, with its share.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Level {
    /// From the top.
    pub y: Tenths,
    /// `50 %`.
    pub words: String,
    /// Is it the whole?
    pub is_limit: bool,
}

/// A moment on the axis of time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tick {
    /// From the left.
    pub x: Tenths,
    /// `18:00`, or `26 Nov` where the steps are days.
    pub words: String,
    /// The day, at the first of its moments.
    pub day: Option<String>,
}

/// The word at the end of a curve.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CurveEnd {
    /// Is it the curve of capacity?
    pub is_capacity: bool,
    /// From the top.
    pub y: Tenths,
    /// `36 %`.
    pub words: String,
}

/// A letter over the moment at which something happened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letter {
    /// `A`.
    pub letter: char,
    /// From the left.
    pub x: Tenths,
    /// How far down its line reaches.
    pub y: Tenths,
}

/// A row of the table: one letter and what it stands for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// `A`.
    pub letter: char,
    /// When the first of it happened.
    pub from: Moment,
    /// When the last of it happened, where that is another minute.
    pub to: Option<Moment>,
    /// What, sentence by sentence.
    pub what: Vec<String>,
    /// How many more there were.
    pub more: usize,
    /// The used share of capacity after it.
    pub capacity: Option<String>,
    /// The used share of life then.
    pub life: Option<String>,
}

/// The chart and its table.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(path = "drawing/chart.html")]
pub struct WearChart {
    /// Lines across.
    pub levels: Vec<Level>,
    /// Where *Test first* begins.
    pub test_first: Tenths,
    /// The axis of time.
    pub ticks: Vec<Tick>,
    /// The path of capacity.
    pub capacity: Option<String>,
    /// The path of life.
    pub life: Option<String>,
    /// The life ahead if nothing changes.
    pub ahead: Option<String>,
    /// Where now is.
    pub now: Tenths,
    /// Now, in words.
    pub as_of: Moment,
    /// Do the words at the ends stand left of now?
    pub is_late: bool,
    /// The words at the ends of the curves.
    pub ends: Vec<CurveEnd>,
    /// The letters.
    pub letters: Vec<Letter>,
    /// The table.
    pub rows: Vec<Told>,
}

impl HtmlSafe for WearChart {}

/// The room of the plot: which moments and shares it spans.
struct Plot {
    from: OffsetDateTime,
    span_us: i128,
    top_ppb: i64,
}

impl Plot {
    fn of(input: &WearOverTime) -> Self {
        let lived = (input.now - input.began).max(Duration::ZERO);
        let wanted = input.life_ends.unwrap_or(input.now);
        let ahead: Duration = lived * 3;
        let most = input.now + ahead.max(LEAST_AHEAD);
        let until = wanted.min(most).max(input.now);
        let span = (until - input.began).max(Duration::minutes(10));
        let shares = input.capacity.iter().chain(&input.life);
        let highest = shares.map(|point| point.used_ppb).max().unwrap_or(0);
        // What passes the half again of the whole is drawn at the top; its figure is said.
        let quarters = ((highest + WHOLE_PPB / 4 - 1) / (WHOLE_PPB / 4)).clamp(4, 6);
        Self {
            from: input.began,
            span_us: span.whole_microseconds(),
            top_ppb: quarters * WHOLE_PPB / 4,
        }
    }

    fn x(&self, at: OffsetDateTime) -> i64 {
        let since = (at - self.from).whole_microseconds();
        let x = since * i128::from(FULL) / self.span_us;
        i64::try_from(x).unwrap_or(FULL).clamp(0, FULL)
    }

    fn y(&self, used_ppb: i64) -> i64 {
        let used = used_ppb.clamp(0, self.top_ppb);
        let up = i128::from(used) * i128::from(FULL) / i128::from(self.top_ppb);
        FULL - i64::try_from(up).unwrap_or(FULL)
    }

    fn until(&self) -> OffsetDateTime {
        let span = i64::try_from(self.span_us).unwrap_or(i64::MAX);
        self.from + Duration::microseconds(span)
    }
}

fn tenths(place: i64) -> Tenths {
    let place = place.clamp(0, FULL);
    Tenths(u16::try_from(place).unwrap_or(0))
}

fn percent(used_ppb: i64) -> String {
    Numbers::default().percent_used(used_ppb)
}

impl WearChart {
    /// Draws it in a room's zone.
    ///
    /// # Errors
    /// [`DateError::OutOfRange`]: instants that no calendar holds.
    pub fn draw(mut input: WearOverTime, zone: &Zone) -> Result<Self, DateError> {
        input.capacity.sort_by_key(|point| point.at);
        input.life.sort_by_key(|point| point.at);
        input.events.sort_by_key(|event| event.at);
        let plot = Plot::of(&input);
        let now_x = plot.x(input.now);
        let (letters, rows) = told(&input, &plot, zone);
        Ok(Self {
            levels: levels(&plot),
            test_first: tenths(plot.y(input.test_first_ppb)),
            ticks: ticks(&plot, zone)?,
            capacity: steps(&input, &plot),
            life: (!input.life.is_empty()).then(|| slope(&plot, &input.life)),
            ahead: ahead(&input, &plot),
            now: tenths(now_x),
            as_of: zone.words(input.now, input.now),
            is_late: now_x > FULL * 6 / 10,
            ends: ends(&input, &plot),
            letters,
            rows,
        })
    }

    /// How far from now the words at the ends stand, in CSS pixels.
    #[must_use]
    pub fn beside(&self) -> i64 {
        if self.is_late { -8 } else { 8 }
    }
}

/// A line every quarter of the whole.
fn levels(plot: &Plot) -> Vec<Level> {
    let quarters = 0..=plot.top_ppb / (WHOLE_PPB / 4);
    quarters
        .map(|quarter| {
            let share = quarter * (WHOLE_PPB / 4);
            Level {
                y: tenths(plot.y(share)),
                words: percent(share),
                is_limit: share == WHOLE_PPB,
            }
        })
        .collect()
}

/// Capacity is used up by steps.
fn steps(input: &WearOverTime, plot: &Plot) -> Option<String> {
    let first = input.capacity.first()?;
    let start = (plot.x(first.at), plot.y(first.used_ppb));
    let mut path = format!("M{} {}", start.0, start.1);
    for point in &input.capacity[1..] {
        let (x, y) = (plot.x(point.at), plot.y(point.used_ppb));
        path.push_str(&format!("H{x}V{y}"));
    }
    path.push_str(&format!("H{}", plot.x(input.now)));
    Some(path)
}

/// Life goes straight from point to point.
fn slope(plot: &Plot, points: &[Point]) -> String {
    let mut path = String::new();
    for point in points {
        let pen = if path.is_empty() { 'M' } else { 'L' };
        let (x, y) = (plot.x(point.at), plot.y(point.used_ppb));
        path.push_str(&format!("{pen}{x} {y}"));
    }
    path
}

/// What is left of life, as far as the plot shows it.
fn ahead(input: &WearOverTime, plot: &Plot) -> Option<String> {
    let last = *input.life.last()?;
    let ends = input.life_ends.filter(|ends| *ends > last.at)?;
    let whole = Point {
        at: ends,
        used_ppb: WHOLE_PPB,
    };
    let until = plot.until().min(ends);
    let shown = Point {
        at: until,
        used_ppb: between(last, whole, until),
    };
    Some(slope(plot, &[last, shown]))
}

/// The share on the straight line between two points.
fn between(one: Point, other: Point, at: OffsetDateTime) -> i64 {
    let span = (other.at - one.at).whole_microseconds();
    if span <= 0 {
        return other.used_ppb;
    }
    let passed = (at - one.at).whole_microseconds().clamp(0, span);
    let grown = i128::from(other.used_ppb - one.used_ppb) * passed / span;
    one.used_ppb
        .saturating_add(i64::try_from(grown).unwrap_or(0))
}

fn capacity_at(points: &[Point], at: OffsetDateTime) -> Option<i64> {
    let first = points.first()?;
    let before = points.iter().rev().find(|point| point.at <= at);
    Some(before.unwrap_or(first).used_ppb)
}

fn life_at(points: &[Point], at: OffsetDateTime) -> Option<i64> {
    let next = points.iter().position(|point| point.at > at);
    match (next, points) {
        (_, []) => None,
        (None, [.., last]) => Some(last.used_ppb),
        (Some(0), [first, ..]) => Some(first.used_ppb),
        (Some(next), _) => Some(between(points[next - 1], points[next], at)),
    }
}

/// The words at the ends, apart from each other.
fn ends(input: &WearOverTime, plot: &Plot) -> Vec<CurveEnd> {
    let end = |is_capacity: bool, used: i64| CurveEnd {
        is_capacity,
        y: tenths(plot.y(used)),
        words: percent(used),
    };
    let life = life_at(&input.life, input.now).map(|used| end(false, used));
    let capacity = capacity_at(&input.capacity, input.now).map(|used| end(true, used));
    let mut ends: Vec<CurveEnd> = life.into_iter().chain(capacity).collect();
    if let [one, other] = ends.as_mut_slice() {
        let (upper, lower) = match one.y.0 < other.y.0 {
            true => (one, other),
            false => (other, one),
        };
        // The lower one gives way, and both where the floor is near.
        let apart = i64::from(lower.y.0).max(i64::from(upper.y.0) + ENDS_APART);
        let up = (apart - FULL).max(0);
        upper.y = tenths(i64::from(upper.y.0) - up);
        lower.y = tenths(apart - up);
    }
    ends
}

/// Letters and table: what happened close together shares one letter.
fn told(input: &WearOverTime, plot: &Plot, zone: &Zone) -> (Vec<Letter>, Vec<Told>) {
    let mut groups: Vec<Vec<&Event>> = Vec::new();
    for event in &input.events {
        match groups.last_mut() {
            Some(group) if plot.x(event.at) - plot.x(group[0].at) < LETTERS_APART => {
                group.push(event);
            }
            _ => groups.push(vec![event]),
        }
    }
    let letters = groups.iter().zip('A'..='Z');
    letters
        .map(|(group, letter)| {
            let (first, last) = (group[0], group[group.len() - 1]);
            let capacity = capacity_at(&input.capacity, last.at);
            let from = zone.words(first.at, input.now);
            let to = zone.words(last.at, input.now);
            let mark = Letter {
                letter,
                x: tenths(plot.x(first.at)),
                y: tenths(plot.y(capacity_at(&input.capacity, first.at).unwrap_or(0))),
            };
            let row = Told {
                letter,
                to: (to.words != from.words).then_some(to),
                from,
                what: group
                    .iter()
                    .take(MOST_TOLD)
                    .map(|event| event.what.clone())
                    .collect(),
                more: group.len().saturating_sub(MOST_TOLD),
                capacity: capacity.map(percent),
                life: life_at(&input.life, last.at).map(percent),
            };
            (mark, row)
        })
        .unzip()
}

/// Between which moments the axis has its marks.
#[derive(Clone, Copy)]
enum Every {
    Minutes(i64),
    Days(i64),
}

fn every(span: Duration) -> Every {
    const MINUTES: [i64; 8] = [15, 30, 60, 120, 180, 240, 360, 720];
    const DAYS: [i64; 8] = [1, 2, 4, 7, 14, 30, 60, 120];
    let fits = |minutes: i64| span.whole_minutes() / minutes <= MOST_TICKS;
    if let Some(minutes) = MINUTES.into_iter().find(|minutes| fits(*minutes)) {
        return Every::Minutes(minutes);
    }
    let days = DAYS.into_iter().find(|days| fits(days * 1_440));
    Every::Days(days.unwrap_or_else(|| span.whole_days() / MOST_TICKS + 1))
}

/// Marks at round times by the clock on the wall, day by day: a night on which the clock
/// changes is an hour narrower or wider.
fn ticks(plot: &Plot, zone: &Zone) -> Result<Vec<Tick>, DateError> {
    let until = plot.until();
    let every = every(until - plot.from);
    let mut ticks: Vec<Tick> = Vec::new();
    let (mut start, mut day) = (zone.day_of(plot.from)?.0, 0);
    while start <= until {
        let end = zone.day_of(start)?.1;
        let mut of_day = Vec::new();
        match every {
            Every::Days(days) if day % days == 0 => of_day.push(start),
            Every::Days(_) => {}
            Every::Minutes(minutes) => {
                for minute in (0..1_440).step_by(usize::try_from(minutes).unwrap_or(60)) {
                    let (hour, minute) = (minute / 60, minute % 60);
                    let clock = format!("{}T{hour:02}:{minute:02}", zone.date_value(start));
                    of_day.push(zone.instant(&clock)?.0);
                }
                // A time that the clock skipped is the one after it.
                of_day.dedup();
            }
        }
        of_day.retain(|at| *at >= plot.from && *at <= until);
        for (place, at) in of_day.into_iter().enumerate() {
            let is_clock = matches!(every, Every::Minutes(_));
            ticks.push(Tick {
                x: tenths(plot.x(at)),
                words: match is_clock {
                    true => zone.clock(at).words,
                    false => zone.day_and_month(at),
                },
                day: (is_clock && place == 0).then(|| zone.weekday_and_day(at)),
            });
        }
        (start, day) = (end, day + 1);
    }
    Ok(ticks)
}

#[cfg(test)]
mod tests;
