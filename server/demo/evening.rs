//! An ordinary day of the demo: who comes, what they print, who looks after the
//! baths; planned first, then acted out minute by minute.

use time::Duration;

use super::bench::Row;
use super::calendar::{Calendar, Day, SATURDAY, THURSDAY};
use super::draw::Draw;
use super::happenings::{self, Happening};
use super::papers::{EIGHT_BY_TEN, is_fibre};
use super::people::{OTTILIE, Someone, Who};
use super::presence::Inside;
use super::printing::{self, Prints};
use super::stage::Stage;
use super::{Cellar, keeping, testing};
use crate::bench::Step;
use crate::error::Result;

/// Sizes of a sheet that the window line's trays hold, by place in the list.
const SMALL: [usize; 5] = [0, 1, 6, 7, 9];

/// How many sheets somebody puts through between two pauses, by size.
const SHEETS: [(i64, i64); 10] = [
    (3, 9),
    (2, 7),
    (1, 5),
    (1, 3),
    (1, 3),
    (1, 2),
    (3, 8),
    (2, 5),
    (1, 2),
    (3, 8),
];

/// Something of an evening.
#[derive(Clone, Copy, Debug)]
enum Thing {
    Opens,
    Comes(Who),
    /// Of so many minutes ago.
    Notes(Who, Prints, i64),
    Films(Who, Row, u32),
    Washes(Who, Row, usize),
    Goes(Who),
    LooksAfter,
    Happens(Happening),
    Closes,
}

/// A day as it was planned.
pub(super) struct Evening<'d> {
    day: &'d Day,
    /// Who opens, looks after the baths and closes.
    keeper: Who,
    /// The lines that are filled.
    rows: Vec<Row>,
    things: Vec<(i64, Thing)>,
    inside: Inside,
}

impl<'d> Evening<'d> {
    /// A day, and what is to happen on it besides.
    pub(super) fn plan(
        stage: &Stage,
        (cellar, calendar): (&Cellar, &Calendar),
        day: &'d Day,
        special: &[Happening],
    ) -> Self {
        let mut draw = Draw::of(stage.seed, "evening", day.number);
        let mixers = stage.those(Someone::mixes);
        let keeper = draw.one_of(&mixers).unwrap_or(OTTILIE);
        let many = calendar.visits(day);
        let rows = rows(&mut draw, day, many, special);
        let weighted = stage.those(Someone::prints).into_iter();
        let weighted = weighted.map(|who| (who, stage.of(who).habit.weight(day.weekday)));
        let visitors = draw.some_of(weighted.collect(), many);
        let mut evening = Self {
            day,
            keeper,
            rows,
            things: Vec::new(),
            inside: Inside::default(),
        };
        evening.keeps(special);
        for who in visitors {
            evening.visits(stage, cellar, who);
        }
        evening.things.sort_by_key(|(minute, _)| *minute);
        evening
    }

    /// What the keeper does, and what is special.
    fn keeps(&mut self, special: &[Happening]) {
        let (opens, closes) = (self.day.opens(), self.day.closes());
        self.things.push((opens - 20, Thing::Comes(self.keeper)));
        self.things.push((opens - 18, Thing::Opens));
        for minute in (opens + 70..closes - 40).step_by(60) {
            self.things.push((minute, Thing::LooksAfter));
        }
        for (place, happening) in (0..).zip(special) {
            let minute = (opens + 50 + 23 * place).min(closes - 45);
            self.things.push((minute, Thing::Happens(*happening)));
            if let Some((later, ends)) = happening.ends() {
                self.things.push((minute + later, Thing::Happens(ends)));
            }
        }
        self.things.push((closes, Thing::Closes));
        self.things.push((closes + 25, Thing::Goes(self.keeper)));
    }

    /// Somebody's visit: they come, print, note at each pause, and go.
    fn visits(&mut self, stage: &Stage, cellar: &Cellar, who: Who) {
        let number = self.day.number * 100 + i64::try_from(who.0).unwrap_or(0);
        let mut draw = Draw::of(stage.seed, "visit", number);
        let (opens, closes) = (self.day.opens(), self.day.closes());
        let comes = draw.between(opens + 5, closes - 100);
        let goes = (comes + draw.between(80, 200)).min(closes - 8);
        if who != self.keeper {
            self.things.push((comes, Thing::Comes(who)));
        }
        let mut last = None;
        let mut minute = comes + draw.between(20, 45);
        while minute < goes {
            for _ in 0..if draw.happens(25) { 2 } else { 1 } {
                let prints = prints(&mut draw, stage, cellar, (who, &self.rows));
                let late = if draw.happens(4) {
                    draw.between(22, 50)
                } else {
                    0
                };
                let late = late.min(minute - comes);
                self.things.push((minute, Thing::Notes(who, prints, late)));
                last = Some(prints);
            }
            minute += draw.between(25, 50);
        }
        if stage.of(who).habit.has_film && draw.happens(12) {
            let rolls = u32::try_from(draw.between(1, 3)).unwrap_or(1);
            let row = draw.one_of(&[Row::Long, Row::Window]).unwrap_or(Row::Long);
            let row = if self.rows.contains(&row) {
                row
            } else {
                Row::Long
            };
            self.things
                .push((comes + 15, Thing::Films(who, row, rolls)));
        }
        if let Some(prints) = last.filter(|prints| prints.row != Row::Window)
            && draw.happens(30)
        {
            self.things
                .push((goes - 2, Thing::Washes(who, prints.row, prints.class)));
        }
        if who != self.keeper {
            self.things.push((goes, Thing::Goes(who)));
        }
    }

    /// Acts the day out.
    pub(super) async fn act(mut self, stage: &mut Stage, cellar: &Cellar) -> Result<()> {
        for (minute, thing) in std::mem::take(&mut self.things) {
            stage.reaches(self.day.at(minute)?);
            match thing {
                Thing::Comes(who) if !stage.of(who).prints() => {}
                Thing::Comes(who) => self.inside.comes(stage, who).await?,
                Thing::Goes(who) => self.inside.goes(stage, who).await?,
                Thing::Opens => self.opens(stage, cellar).await?,
                Thing::LooksAfter => {
                    keeping::tends(stage, cellar, &self.rows, self.keeper).await?;
                }
                Thing::Closes => {
                    keeping::closes(stage, cellar, &self.rows, self.keeper).await?;
                }
                Thing::Happens(happening) => {
                    for who in happening.people() {
                        self.inside.comes(stage, *who).await?;
                    }
                    happenings::happens(stage, cellar, happening, self.keeper).await?;
                }
                Thing::Notes(who, prints, late) if self.is_printing(stage, who) => {
                    let then = stage.now() - Duration::minutes(late);
                    let at = (late > 0).then_some(then);
                    printing::notes(stage, cellar, who, (prints, at)).await?;
                }
                Thing::Films(who, row, rolls) if self.is_printing(stage, who) => {
                    printing::films(stage, cellar, who, (row, rolls)).await?;
                }
                Thing::Washes(who, row, class) if self.is_printing(stage, who) => {
                    printing::washes(stage, cellar, who, (row, class)).await?;
                }
                // They found the room full, or are members no more.
                Thing::Notes(..) | Thing::Films(..) | Thing::Washes(..) => {}
            }
        }
        Ok(())
    }

    fn is_printing(&self, stage: &Stage, who: Who) -> bool {
        self.inside.has(who) && stage.of(who).prints()
    }

    async fn opens(&self, stage: &mut Stage, cellar: &Cellar) -> Result<()> {
        keeping::opens(stage, cellar, &self.rows, self.keeper).await?;
        let look = stage.looks().await?;
        let developer = cellar.bench.tray(Row::Long, Step::Developer)?;
        let mix = look.mix_in(developer.tray)?.id;
        testing::temperature(stage, self.keeper, mix).await
    }
}

/// The lines that are filled on a day.
fn rows(draw: &mut Draw, day: &Day, many: usize, special: &[Happening]) -> Vec<Row> {
    let asked = |row| special.iter().any(|happening| happening.row() == row);
    let is_busy = many >= 5 || draw.happens(30);
    let is_fibre_day = match day.weekday {
        2 | SATURDAY => true,
        THURSDAY => draw.happens(40),
        _ => false,
    };
    let mut rows = vec![Row::Long];
    if is_busy || asked(Row::Window) {
        rows.push(Row::Window);
    }
    if is_fibre_day || asked(Row::Fibre) {
        rows.push(Row::Fibre);
    }
    rows
}

/// What somebody prints between two pauses.
pub(super) fn prints(
    draw: &mut Draw,
    stage: &Stage,
    cellar: &Cellar,
    (who, rows): (Who, &[Row]),
) -> Prints {
    let habit = &stage.of(who).habit;
    let class = habit.classes[usize::from(draw.happens(25))];
    let size = habit.sizes[usize::from(draw.happens(30))];
    let is_slow = cellar.papers.classes.get(class).is_some_and(is_fibre);
    let row = match is_slow {
        true if rows.contains(&Row::Fibre) => Row::Fibre,
        false if rows.contains(&Row::Window) && draw.happens(35) => Row::Window,
        _ => Row::Long,
    };
    let size = match row {
        Row::Window if !SMALL.contains(&size) => EIGHT_BY_TEN,
        _ => size,
    };
    let (least, most) = SHEETS.get(size).copied().unwrap_or((1, 4));
    let sheets = u32::try_from(draw.between(least, most)).unwrap_or(1);
    Prints {
        row,
        class,
        size,
        sheets: (!draw.happens(2)).then_some(sheets),
        is_toned: false,
    }
}
