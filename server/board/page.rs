//! The board's page.

use askama::Template;
use axum::body::{Body, Bytes};
use axum::extract::State;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE, ETAG, IF_NONE_MATCH, VARY};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use data_encoding::HEXLOWER;
use time::{Duration, OffsetDateTime};

use super::cache::{Kept, Variant};
use super::state::{BenchNow, BottleNow, LineNow, TrayNow, bench_now};
use super::views::{BoardPage, BottleOnBoard, LineOnBoard, MixOnBoard, TrayOnBoard};
use crate::app::App;
use crate::bench::{Step, Tray};
use crate::clock::{micros, moment};
use crate::darkroom::verdict::{Judgement, Verdict};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{self, Head};
use crate::mixes::Mix;
use crate::outages;
use crate::rights::{self, LookAtBoard, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::around;
use crate::web::dates::Zone;
use crate::web::drawing::{Measured, Rule, TrayDrawing, TrayShape, VerdictWord};
use crate::web::frame::{BUILD, Frame, KeptFrame};
use crate::web::messages::verdicts;
use crate::web::numbers::{Numbers, whole_percent_left, whole_percent_used};
use crate::web::shell::{Display, Place};

/// The board's route.
#[must_use]
pub fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/board", board)
}

async fn board(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    KeptFrame(frame): KeptFrame,
    headers: HeaderMap,
) -> Result<Response> {
    let variant = (permit.room(), permit.role(), frame.display());
    let board = match app.boards().find(variant, app.clock().now()) {
        Some(board) => board,
        None => draw(&app, &permit, &frame, variant).await?,
    };
    let known = headers.get(IF_NONE_MATCH).is_some_and(|tags| {
        let tags = tags.to_str().unwrap_or_default();
        tags.split(',').any(|tag| tag.trim() == board.etag)
    });
    Ok(answer(board, known))
}

fn answer(board: Kept, is_known: bool) -> Response {
    let headers = [
        (CONTENT_TYPE, "text/html; charset=utf-8".to_owned()),
        (CACHE_CONTROL, "private, no-cache".to_owned()),
        (VARY, "Cookie".to_owned()),
        (ETAG, board.etag),
    ];
    if is_known {
        return (StatusCode::NOT_MODIFIED, headers).into_response();
    }
    (headers, Body::from(board.body)).into_response()
}

async fn draw(
    app: &App,
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    variant: Variant,
) -> Result<Kept> {
    let now = app.clock().now();
    let (head, settings, bench, off) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let head = logbook::head(tx).await?;
                let settings = rooms::settings(tx).await?;
                let bench = bench_now(tx, now, &settings).await?;
                Ok((head, settings, bench, outages::open(tx).await?))
            })
        })
        .await?;
    let role = permit.role();
    let may = |row: rights::Row| row.roles.contains(&role);
    let zone = settings.time_zone()?;
    let mut shell = frame.shell_for_role(permit.membership());
    shell.place = Some(Place::Board);
    shell.off = around::off(&off, &zone);
    // The page is kept for others: nothing of this request's query stays in it.
    shell.here = format!("/rooms/{}/board", permit.membership().slug);
    let page = BoardPage {
        shell,
        as_of: zone.clock_and_weekday(now),
        notices: notices(&bench.lines),
        lines: bench
            .lines
            .iter()
            .map(|line| line_on_board(line, &settings, &zone, now))
            .collect(),
        bottles: bench
            .bottles
            .iter()
            .map(|each| bottle_on_board(each, &settings, &zone, now))
            .collect(),
        may_note: may(rights::NoteSheets::ROW),
        may_mix: may(rights::Mix::ROW),
        may_set_up: may(rights::KeepBench::ROW),
    };
    let body = page
        .render()
        .map_err(|cause| Error::Internal(cause.into()))?;
    let good_until = good_until(&bench, now);
    let board = Kept {
        body: Bytes::from(body),
        etag: etag(&head, variant, good_until),
        seq: head.seq,
        good_until,
    };
    app.boards().keep(variant, board.clone());
    Ok(board)
}

fn etag(head: &Head, (_, role, display): Variant, good_until: OffsetDateTime) -> String {
    let head = HEXLOWER.encode(&head.hash[..8]);
    let variant = match display {
        Display::Day => "day",
        Display::Dim => "dim",
        Display::Safelight => "safelight",
    };
    let until = micros(good_until);
    format!("\"{BUILD}-{head}-{}-{variant}-{until}\"", role.as_str())
}

/// The next moment at which a verdict changes, or a rule has moved by a
/// twentieth of a life.
fn good_until(bench: &BenchNow, now: OffsetDateTime) -> OffsetDateTime {
    let trays = bench.lines.iter().flat_map(|line| &line.trays);
    let of_trays = trays.flat_map(|each| {
        let moves = each.mix.as_ref().map(|mix| {
            let twentieth = Duration::seconds((mix.life_s / 20).max(1));
            now + twentieth
        });
        [changes_at(&each.judgement), moves]
    });
    let of_bottles = bench.bottles.iter().flat_map(|each| {
        // What the list says of a bottle's life changes when that is over.
        let over = each.mix.life_ends().filter(|ends| *ends > now);
        [changes_at(&each.judgement), over]
    });
    let moments = of_trays.chain(of_bottles);
    let a_day = now + Duration::days(1);
    moments.flatten().fold(a_day, OffsetDateTime::min)
}

fn changes_at(judgement: &Judgement) -> Option<OffsetDateTime> {
    judgement.changes_at.map(|(at, _)| moment(at.get()))
}

/// What everyone in the room should know: which trays not to print through.
fn notices(lines: &[LineNow]) -> Vec<String> {
    lines
        .iter()
        .flat_map(|line| line.trays.iter().map(move |tray| (line, tray)))
        .filter(|(_, each)| matches!(each.judgement.verdict, Verdict::Replace | Verdict::Unknown))
        .map(|(line, each)| verdicts::do_not_use(&line.line.name, &each.tray.name))
        .collect()
}

fn line_on_board(
    line: &LineNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> LineOnBoard {
    LineOnBoard {
        space: line.space.clone(),
        id: line.line.id.to_string(),
        name: line.line.name.clone(),
        trays: line
            .trays
            .iter()
            .map(|each| tray_on_board(each, settings, zone, now))
            .collect(),
    }
}

fn tray_on_board(
    each: &TrayNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> TrayOnBoard {
    let numbers = settings.numbers();
    let figures = figures(each, settings, zone, now);
    TrayOnBoard {
        id: each.tray.id.to_string(),
        name: each.tray.name.clone(),
        is_wash: each.tray.step == Step::Wash,
        word: figures.word,
        drawing: figures.drawing,
        reason: figures.reason,
        change: figures.change,
        mix: each.mix.as_ref().zip(figures.rules).map(|(mix, rules)| {
            let (capacity, life) = rules;
            MixOnBoard {
                product: verdicts::mix_name(mix.product_name.as_deref()),
                dilution: numbers.dilution(mix.parts_thousandths),
                mixed: zone.clock_and_weekday(mix.mixed_at),
                litres: numbers.volume(mix.charged_ul),
                depth: figures.depth.clone(),
                capacity,
                life,
            }
        }),
    }
}

fn bottle_on_board(
    each: &BottleNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> BottleOnBoard {
    let numbers = settings.numbers();
    let ends = each.mix.life_ends().map(|ends| {
        let words = zone.clock_and_weekday(ends).words;
        verdicts::life_left(now < ends, &words)
    });
    BottleOnBoard {
        id: each.bottle.id.to_string(),
        name: each.bottle.name.clone(),
        word: VerdictWord {
            standing: verdicts::standing(each.judgement.verdict),
        },
        mix: each.mix.title(numbers),
        litres: numbers.volume(each.mix.level_ul()),
        ends,
    }
}

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
