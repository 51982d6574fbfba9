//! The demo's bench: three lines to print on and a shelf, what they are filled
//! with, and the bottles beside them.

use uuid::Uuid;

use super::papers::{Papers, is_fibre};
use super::people::OTTILIE;
use super::products::Shelf;
use super::stage::Stage;
use super::{INVENTED, missing};
use crate::bench::actions::{NewLine, NewTray, set_line, set_tray};
use crate::bench::bottles::actions::{NewBottle, set_bottle};
use crate::bench::finishing::actions::{NewFinishing, set_finishing};
use crate::bench::spaces::actions::{NewSpace, set_space};
use crate::bench::{self, Step};
use crate::error::Result;

const LITRE_UL: i64 = 1_000_000;

/// A line.
#[derive(Clone, Copy, Debug, Eq, Ord, PartialEq, PartialOrd)]
pub(super) enum Row {
    /// Where most people print.
    Long,
    /// Smaller, and with one fixing bath.
    Window,
    /// For fibre-base paper, in a space of its own.
    Fibre,
    /// Trays that nobody prints in just now.
    Shelf,
}

impl Row {
    const ALL: [Self; 4] = [Self::Long, Self::Window, Self::Fibre, Self::Shelf];

    const fn name(self) -> &'static str {
        match self {
            Self::Long => "Long bench",
            Self::Window => "Window line",
            Self::Fibre => "Fibre table",
            Self::Shelf => "Shelf under the stairs",
        }
    }
}

/// The trays, line by line in the order prints travel.
const TRAYS: [(Row, &str, Step); 18] = [
    (Row::Long, "Developer", Step::Developer),
    (Row::Long, "Stop bath", Step::StopBath),
    (Row::Long, "First fixer", Step::FirstFixer),
    (Row::Long, "Second fixer", Step::SecondFixer),
    (Row::Long, "Print wash", Step::Wash),
    (Row::Window, "Developer", Step::Developer),
    (Row::Window, "Stop bath", Step::StopBath),
    (Row::Window, "Fixer", Step::Fixer),
    (Row::Fibre, "Developer", Step::Developer),
    (Row::Fibre, "Stop bath", Step::StopBath),
    (Row::Fibre, "First fixer", Step::FirstFixer),
    (Row::Fibre, "Second fixer", Step::SecondFixer),
    (Row::Fibre, "Holding water", Step::HoldingWater),
    (Row::Fibre, "Wash aid", Step::WashAid),
    (Row::Fibre, "Toner", Step::Toner),
    (Row::Fibre, "Archival wash", Step::Wash),
    (Row::Shelf, "Spare tray", Step::Any),
    (Row::Shelf, "Tray with the chipped corner", Step::Any),
];

/// A bottle's name, what it holds in microlitres, and the bath it keeps overnight.
type Bottle = (&'static str, i64, Option<(Row, Step)>);

/// The bottles.
const BOTTLES: [Bottle; 12] = [
    ("Brown 1", 2 * LITRE_UL, Some((Row::Long, Step::StopBath))),
    ("Brown 2", 2 * LITRE_UL, Some((Row::Long, Step::Developer))),
    ("Brown 3", LITRE_UL, Some((Row::Window, Step::StopBath))),
    ("Brown 4", LITRE_UL, Some((Row::Window, Step::Fixer))),
    ("Brown 5", LITRE_UL, Some((Row::Window, Step::Developer))),
    ("Brown 6", 2 * LITRE_UL, Some((Row::Fibre, Step::StopBath))),
    (
        "Brown 7",
        2 * LITRE_UL,
        Some((Row::Fibre, Step::FirstFixer)),
    ),
    (
        "Brown 8",
        2 * LITRE_UL,
        Some((Row::Fibre, Step::SecondFixer)),
    ),
    ("Brown 9", 2 * LITRE_UL, Some((Row::Fibre, Step::WashAid))),
    (
        "Grey jug",
        3 * LITRE_UL / 2,
        Some((Row::Fibre, Step::Toner)),
    ),
    ("Accordion", 2 * LITRE_UL, None),
    ("Clear glass, for tests", LITRE_UL / 2, None),
];

/// The bottle that belongs to no bath.
const SPARE_BOTTLE: &str = "Accordion";

/// A tray where it stands.
#[derive(Clone, Copy, Debug)]
pub(super) struct Here {
    pub(super) row: Row,
    pub(super) step: Step,
    pub(super) tray: Uuid,
    /// The bottle that its bath is kept in overnight.
    pub(super) bottle: Option<Uuid>,
}

/// What a tray is filled with.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bath {
    pub(super) dilution: Uuid,
    pub(super) volume_ul: i64,
    /// The stock solution's product, and how much of it goes in.
    pub(super) stock: Option<(Uuid, i64)>,
}

/// The bench as it was set up.
#[derive(Clone, Debug)]
pub(super) struct Bench {
    lines: Vec<(Row, Uuid)>,
    trays: Vec<Here>,
    /// The bottle that belongs to no bath.
    pub(super) spare_bottle: Uuid,
}

impl Bench {
    /// A line's id.
    pub(super) fn line(&self, row: Row) -> Result<Uuid> {
        let found = self.lines.iter().find(|(each, _)| *each == row);
        found.map(|(_, id)| *id).ok_or_else(|| missing("lines"))
    }

    /// The trays of a line.
    pub(super) fn trays(&self, row: Row) -> impl Iterator<Item = Here> + use<> {
        let here = self.trays.clone().into_iter();
        here.filter(move |here| here.row == row)
    }

    /// The first tray of a line with this step.
    pub(super) fn tray(&self, row: Row, step: Step) -> Result<Here> {
        let found = self.trays(row).find(|here| here.step == step);
        found.ok_or_else(|| missing("trays"))
    }

    /// The last tray of the shelf, which stands empty.
    pub(super) fn chipped(&self) -> Result<Here> {
        let last = self.trays(Row::Shelf).last();
        last.ok_or_else(|| missing("trays"))
    }
}

/// What a tray is usually filled with; nothing where nothing is.
pub(super) fn bath(shelf: &Shelf, here: Here) -> Option<Bath> {
    let litres = match here.row {
        Row::Window => 1,
        Row::Long | Row::Fibre => 2,
        Row::Shelf => return None,
    };
    let (dilution, volume_ul, stock) = match (here.row, here.step) {
        (Row::Fibre, Step::Developer) => {
            let stock = (shelf.powder, litres * LITRE_UL / 3 + 1);
            (shelf.powder_developer, litres * LITRE_UL, Some(stock))
        }
        (_, Step::Developer) => (shelf.developer, litres * LITRE_UL, None),
        (_, Step::StopBath) => (shelf.acetic, litres * LITRE_UL, None),
        (_, Step::Fixer | Step::FirstFixer | Step::SecondFixer) => {
            (shelf.fixer, litres * LITRE_UL, None)
        }
        (_, Step::HoldingWater) => (shelf.holding_water, 3 * LITRE_UL, None),
        (_, Step::WashAid) => (shelf.wash_aid, litres * LITRE_UL, None),
        (_, Step::Toner) => (shelf.toner, 3 * LITRE_UL / 2, None),
        (_, Step::Wash | Step::Any) => return None,
    };
    Some(Bath {
        dilution,
        volume_ul,
        stock,
    })
}

/// The steward sets it up.
pub(super) async fn set_up(stage: &mut Stage, papers: &Papers) -> Result<Bench> {
    let space = NewSpace {
        id: None,
        name: "Back room".to_owned(),
        position: None,
        is_retired: false,
    };
    let space = stage.act(OTTILIE, set_space, space).await?.id("space")?;
    let there = stage.reads(|tx| Box::pin(bench::lines(tx))).await?;
    let mut lines = Vec::new();
    for row in Row::ALL {
        let new = NewLine {
            // The starter's line becomes the long bench.
            id: there
                .first()
                .filter(|_| row == Row::Long)
                .map(|line| line.id),
            name: row.name().to_owned(),
            position: None,
            space_id: (row == Row::Fibre).then_some(space),
            is_retired: false,
        };
        let done = stage.act(OTTILIE, set_line, new).await?;
        lines.push((row, done.id("line")?));
    }
    let mut bench = Bench {
        lines,
        trays: Vec::new(),
        spare_bottle: Uuid::nil(),
    };
    let bottles = bottles(stage, &mut bench).await?;
    for (row, name, step) in TRAYS {
        let new = tray(bench.line(row)?, name, (row, step));
        let done = stage.act(OTTILIE, set_tray, new).await?;
        let kept = bottles
            .iter()
            .find(|(place, _)| *place == Some((row, step)));
        bench.trays.push(Here {
            row,
            step,
            tray: done.id("tray")?,
            bottle: kept.map(|(_, id)| *id),
        });
    }
    for row in [Row::Long, Row::Window, Row::Fibre] {
        finish(stage, papers, (row, bench.line(row)?)).await?;
    }
    Ok(bench)
}

type Bottled = (Option<(Row, Step)>, Uuid);

async fn bottles(stage: &mut Stage, bench: &mut Bench) -> Result<Vec<Bottled>> {
    let mut bottles = Vec::new();
    for (name, holds_ul, place) in BOTTLES {
        let new = NewBottle {
            id: None,
            name: name.to_owned(),
            holds_ul,
            is_retired: false,
        };
        let id = stage.act(OTTILIE, set_bottle, new).await?.id("bottle")?;
        if name == SPARE_BOTTLE {
            bench.spare_bottle = id;
        }
        bottles.push((place, id));
    }
    Ok(bottles)
}

fn tray(line_id: Uuid, name: &str, (row, step): (Row, Step)) -> NewTray {
    let (long, short, deep) = match (row, step) {
        (_, Step::Wash) => (5_200, 4_300, 1_400),
        (Row::Window, _) => (2_800, 2_300, 600),
        _ => (4_300, 3_300, 750),
    };
    NewTray {
        id: None,
        line_id,
        name: name.to_owned(),
        position: None,
        step: Some(step),
        inside_long_tenths_mm: long,
        inside_short_tenths_mm: short,
        inside_depth_tenths_mm: deep,
        least_depth_tenths_mm: 100,
        is_retired: false,
    }
}

/// Times for each class: fibre base takes longer, and a wash aid where there is one.
async fn finish(stage: &mut Stage, papers: &Papers, (row, line_id): (Row, Uuid)) -> Result<()> {
    for class in &papers.classes {
        let is_slow = is_fibre(class);
        let has_aid = is_slow && row == Row::Fibre;
        let new = NewFinishing {
            line_id,
            paper_class_id: class.id,
            fix_s: if is_slow { 120 } else { 45 },
            longest_fix_s: if is_slow { 300 } else { 120 },
            rinse_s: if is_slow { 300 } else { 30 },
            wash_aid_s: has_aid.then_some(600),
            wash_with_aid_s: has_aid.then_some(1_200),
            wash_without_aid_s: if is_slow { 3_600 } else { 300 },
            basis: INVENTED.to_owned(),
        };
        stage.act(OTTILIE, set_finishing, new).await?;
    }
    Ok(())
}
