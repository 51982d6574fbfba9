//! A demo room: invented people, products and figures, written through the same
//! actions as everyone's, by a clock of its own that ends now.
//!
//! The same seed, span and end give the same book, byte for byte: everything that
//! stands in an entry is drawn from the seed by whole numbers, and acts follow one
//! another. Only what is in no entry comes from chance: the few passwords that are
//! printed and the links that people join by.

mod affairs;
mod air;
mod bench;
mod calendar;
mod checks;
mod draw;
mod evening;
mod happenings;
mod incidents;
mod inductions;
mod joining;
mod keeping;
mod lamps;
mod mishaps;
mod papers;
mod people;
mod presence;
mod printing;
mod products;
mod screens;
mod sheets;
mod slips;
mod stage;
mod testing;
mod tonight;
mod trials;
mod waste;
mod workshops;

use self::bench::{Bench, Row};
use self::calendar::{Calendar, Day};
use self::draw::Draw;
use self::evening::Evening;
use self::happenings::Happening;
use self::papers::Papers;
use self::people::{OTTILIE, PARTS, Who};
use self::products::Shelf;
use self::stage::Stage;
use crate::app::App;
use crate::bench::Step;
use crate::book::checkpoints;
use crate::clock::Clock;
use crate::error::{Error, Result};
use crate::logbook::{Recording, reading};
use crate::mixes::actions::{NewMix, NewOpening, VesselId, open};
use crate::rooms::actions::{Founder, NewRoom, open_room, set_closed};
use crate::starters::STARTERS;

pub use joining::LogIn;

/// The demo room's short name.
pub const SLUG: &str = "larchfold";
/// The weeks a demo tells of, unless somebody wants another number: six months.
pub const WEEKS: i64 = 26;
/// The fewest weeks that all that happens fits into.
pub const FEWEST_WEEKS: i64 = 3;

/// Where the figures of the room's own products and papers come from.
const INVENTED: &str = "invented for the demo";

/// The demo somebody wants.
#[derive(Clone, Copy, Debug)]
pub struct Wanted {
    /// What the history is drawn from.
    pub seed: i64,
    /// How many weeks it tells of.
    pub weeks: i64,
}

/// How far the making has come.
#[derive(Clone, Debug)]
pub struct Progress {
    /// The week that was just acted out, from 1.
    pub week: i64,
    /// All of them.
    pub weeks: i64,
    /// Its month, such as `Mar 2026`.
    pub month: String,
    /// How many entries the book has.
    pub entries: i64,
}

/// What stands in the invented room.
struct Cellar {
    papers: Papers,
    shelf: Shelf,
    bench: Bench,
}

/// Makes the demo room in `app`, whose clock must be `clock`, and answers who
/// can log in; `tell` hears of every week that is done.
///
/// # Errors
/// A demo room that is there already; the database's.
pub async fn make(
    app: App,
    clock: Clock,
    wanted: Wanted,
    mut tell: impl FnMut(Progress),
) -> Result<Vec<LogIn>> {
    let end = clock.now();
    let calendar = Calendar::before(end - tonight::BEGINS, wanted.weeks, wanted.seed)?;
    let first = calendar.days.first().ok_or_else(|| missing("days"))?;
    clock.set(first.at(first.opens() - 5 * 60)?);
    let mut stage = opened(app, clock, wanted.seed).await?;
    let cellar = set_up(&mut stage).await?;
    for day in &calendar.days {
        let done = act(&mut stage, (&cellar, &calendar), day).await;
        done.map_err(|cause| Error::fault(format!("day {} of the demo: {cause}", day.number)))?;
        let is_week_over = day.number % 7 == 6 && day.week() + 1 < wanted.weeks;
        if is_week_over || calendar.after(day) == 0 {
            tell(progress(&stage, day, wanted.weeks).await?);
        }
    }
    tonight::act(&mut stage, &cellar, end).await?;
    Ok(stage.log_ins)
}

/// The room, with its founder alone in it.
async fn opened(app: App, clock: Clock, seed: i64) -> Result<Stage> {
    let at = clock.now();
    let (account, password) = joining::founder(&app, seed, at).await?;
    let room = NewRoom {
        id: Draw::of(seed, "room", 0).id(at),
        slug: SLUG.to_owned(),
        demo_seed: Some(seed),
        ..NewRoom::new(affairs::starting())
    };
    let founder = Founder::New {
        account: account.clone(),
        set_up: None,
        is_operator: true,
    };
    let recording = Recording::Demo(clock.clone());
    let opened = open_room(&app, room, founder, recording, STARTERS).await?;
    let mut stage = Stage::new(app, clock, seed, opened.room);
    joining::list(&mut stage, &account, password).await?;
    Ok(stage)
}

/// The steward sets everything up, and enters what stands there already.
async fn set_up(stage: &mut Stage) -> Result<Cellar> {
    let papers = papers::enter(stage).await?;
    let cellar = Cellar {
        shelf: products::enter(stage, &papers).await?,
        bench: bench::set_up(stage, &papers).await?,
        papers,
    };
    air::set_up(stage).await?;
    let stop_bath = cellar.bench.tray(Row::Long, Step::StopBath)?;
    let new = NewOpening {
        mix: NewMix {
            vessel: VesselId::Tray(stop_bath.tray),
            dilution_id: cellar.shelf.acetic,
            volume_ul: 2_000_000,
            stock_id: None,
            happened_at_us: None,
        },
        used_ppb: 200_000_000,
        age_ppb: 100_000_000,
    };
    stage.act(OTTILIE, open, new).await?;
    lamps::hang(stage).await?;
    screens::pair_all(stage).await?;
    inductions::begin(stage).await?;
    checks::enter(stage).await?;
    Ok(cellar)
}

/// Acts an ordinary day out and seals the book.
async fn act(stage: &mut Stage, (cellar, calendar): (&Cellar, &Calendar), day: &Day) -> Result<()> {
    let is_shut = |number: i64| {
        let days = calendar.days.iter();
        let mut that = days.filter(|day| day.number == number);
        that.next().is_some_and(|day| calendar.is_shut(day))
    };
    match (is_shut(day.number - 1), is_shut(day.number)) {
        (false, true) => {
            stage.reaches(day.at(10 * 60)?);
            set_closed(&stage.app, stage.room, true).await?;
        }
        (true, false) => {
            stage.reaches(day.at(8 * 60)?);
            set_closed(&stage.app, stage.room, false).await?;
        }
        _ => {}
    }
    if !is_shut(day.number) {
        let special = Happening::on(calendar, day);
        for who in due_to_join(calendar, day) {
            stage.reaches(day.at(day.opens() - 100)?);
            joining::joins(stage, who).await?;
            inductions::welcomes(stage, who, day.number == 0).await?;
        }
        stage.reaches(day.at(day.opens() - 40)?);
        checks::look_round(stage, calendar, day).await?;
        let evening = Evening::plan(stage, (cellar, calendar), day, &special);
        evening.act(stage, cellar).await?;
    }
    stage.reaches(day.over()?);
    checkpoints::seal(&stage.app, stage.room).await?;
    Ok(())
}

/// Who joins on a day.
fn due_to_join(calendar: &Calendar, day: &Day) -> Vec<Who> {
    let parts = PARTS.iter().enumerate().skip(1);
    let due = parts.filter(|(_, part)| calendar.due(part.joins) == day.number);
    due.map(|(place, _)| Who(place)).collect()
}

async fn progress(stage: &Stage, day: &Day, weeks: i64) -> Result<Progress> {
    let head = stage.reads(|tx| Box::pin(reading::head(tx))).await?;
    Ok(Progress {
        week: weeks.min(day.week() + 1),
        weeks,
        month: day.month(),
        entries: head.seq,
    })
}

/// What was there a moment ago must be there still.
fn missing(what: &str) -> Error {
    Error::fault(format!("the demo lost its {what}"))
}
