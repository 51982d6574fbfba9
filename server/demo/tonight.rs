//! The last evening of the demo, told backwards from now, so that the board is
//! alive whatever the hour: the people of this room keep odd hours.

use time::{Duration, OffsetDateTime};

use super::bench::{Bath, Here, Row, bath};
use super::draw::Draw;
use super::evening::prints;
use super::keeping::{fills, kind_of, opens, pours_off, tends};
use super::papers::EIGHT_BY_TEN;
use super::people::{CASIMIR, DAGNY, MIREA, OTTILIE, Someone, TOMAS, Who};
use super::presence::Inside;
use super::printing::{Prints, films, notes, washes};
use super::stage::Stage;
use super::trials::mixes;
use super::{Cellar, affairs, air, incidents, mishaps, missing, slips, testing, workshops};
use crate::bench::Step;
use crate::error::Result;
use crate::members::actions::invite;
use crate::mixes::actions::VesselId;
use crate::mixes::readings::{NewExtension, Taken, extend};
use crate::mixes::{ReadingKind, Why};
use crate::rights::Role;

/// So long before now it begins.
pub(super) const BEGINS: Duration = Duration::minutes(310);

/// When somebody notes prints on the long bench, in minutes before now.
const NOTES: [i64; 15] = [
    246, 228, 205, 186, 171, 159, 143, 126, 112, 94, 79, 57, 40, 16, 4,
];

/// When sheets of 8×10 in go down the window line, and how many: all but the last
/// leave its fixer just good, the last brings its developer to 94 % of its capacity.
const ON_THE_WINDOW_LINE: [(i64, u32); 5] = [(252, 12), (190, 10), (130, 9), (75, 8), (8, 7)];

/// When sheets of 8×10 in go down the fibre table.
const ON_THE_FIBRE_TABLE: [(i64, u32); 3] = [(232, 3), (166, 2), (104, 3)];

/// Something of the evening.
#[derive(Clone, Copy, Debug)]
enum Thing {
    Opens,
    Comes(Who),
    Goes(Who),
    Stays(Who),
    Notes(Who),
    Puts(Who, Prints),
    Films,
    Washes(Row, usize),
    TimesEmergence(i64),
    TestsPrint,
    LooksAfter,
    MixesReserve,
    FindsLiquid,
    IsCorrected,
    Invites,
    HandsBack,
    Extends,
    Airs(Option<i64>),
    AirsNoMore,
    IsHurt,
    PlansWorkshop,
}

/// Acts it out; `end` is now.
pub(super) async fn act(stage: &mut Stage, cellar: &Cellar, end: OffsetDateTime) -> Result<()> {
    let mut inside = Inside::default();
    let mut draw = Draw::of(stage.seed, "tonight", 0);
    for (minutes, thing) in plan(stage, &mut draw) {
        stage.reaches(end - Duration::minutes(minutes));
        match thing {
            Thing::Opens => fresh(stage, cellar).await?,
            Thing::Comes(who) => inside.comes(stage, who).await?,
            Thing::Goes(who) => inside.goes(stage, who).await?,
            Thing::Stays(who) => inside.stays(stage, who).await?,
            Thing::Notes(who) => {
                let prints = prints(&mut draw, stage, cellar, (who, &[Row::Long]));
                notes(stage, cellar, who, (prints, None)).await?;
            }
            Thing::Puts(who, prints) => {
                notes(stage, cellar, who, (prints, None)).await?;
            }
            Thing::Films => films(stage, cellar, TOMAS, (Row::Long, 2)).await?,
            Thing::Washes(row, class) => washes(stage, cellar, DAGNY, (row, class)).await?,
            Thing::TimesEmergence(per_cent) => {
                let mix = standing(stage, cellar, (Row::Long, Step::Developer)).await?;
                testing::emergence(stage, MIREA, mix, per_cent).await?;
            }
            Thing::TestsPrint => {
                tests_print(stage, cellar, (Row::Long, MIREA), "").await?;
            }
            Thing::LooksAfter => {
                tends(stage, cellar, &[Row::Long, Row::Window], CASIMIR).await?;
            }
            Thing::MixesReserve => reserve(stage, cellar).await?,
            Thing::FindsLiquid => {
                let spare = cellar.bench.tray(Row::Shelf, Step::Any)?;
                mishaps::stands_there(stage, spare.tray, TOMAS).await?;
            }
            Thing::IsCorrected => slips::corrected(stage, cellar, CASIMIR).await?,
            Thing::Invites => {
                stage.act(OTTILIE, invite, Role::Member).await?;
            }
            Thing::HandsBack => affairs::hands_back(stage).await?,
            Thing::Extends => extends(stage, cellar).await?,
            Thing::Airs(seconds) => air::airs(stage, TOMAS, seconds).await?,
            Thing::PlansWorkshop => workshops::plans(stage, cellar).await?,
            Thing::AirsNoMore => air::airs_no_more(stage, TOMAS).await?,
            Thing::IsHurt => incidents::tonight(stage).await?,
        }
    }
    stage.reaches(end);
    Ok(())
}

/// Who does what so many minutes before now, the longest ago first.
fn plan(stage: &Stage, draw: &mut Draw) -> Vec<(i64, Thing)> {
    let known = [OTTILIE, CASIMIR, MIREA, TOMAS, DAGNY];
    let others = stage.those(Someone::prints).into_iter();
    let others = others.filter(|who| !known.contains(who));
    let others = others.map(|who| (who, stage.of(who).habit.weight(3)));
    let mut others = draw.some_of(others.collect(), 6);
    let early = others.split_off(4);
    let mut things = vec![
        (306, Thing::Comes(CASIMIR)),
        (304, Thing::Opens),
        (268, Thing::Comes(MIREA)),
        (264, Thing::Comes(DAGNY)),
        (260, Thing::Comes(OTTILIE)),
        (258, Thing::Comes(TOMAS)),
        (210, Thing::HandsBack),
        (180, Thing::TimesEmergence(107)),
        (150, Thing::FindsLiquid),
        (300, Thing::Stays(CASIMIR)),
        (128, Thing::Stays(CASIMIR)),
        (120, Thing::IsCorrected),
        (100, Thing::Invites),
        (98, Thing::PlansWorkshop),
        (90, Thing::TimesEmergence(114)),
        (66, Thing::LooksAfter),
        (52, Thing::MixesReserve),
        (55, Thing::Airs(Some(180))),
        (44, Thing::Extends),
        (41, Thing::Airs(None)),
        (38, Thing::AirsNoMore),
        (30, Thing::Goes(OTTILIE)),
        (24, Thing::Washes(Row::Long, 1)),
        (50, Thing::IsHurt),
        (22, Thing::Airs(None)),
        (20, Thing::TestsPrint),
        (19, Thing::AirsNoMore),
        (12, Thing::Films),
        (10, Thing::Washes(Row::Fibre, 1)),
    ];
    things.extend(early.iter().map(|who| (255, Thing::Comes(*who))));
    things.extend(early.iter().map(|who| (110, Thing::Goes(*who))));
    things.extend(others.iter().map(|who| (150, Thing::Comes(*who))));
    for (place, minutes) in NOTES.into_iter().enumerate() {
        let present = if minutes > 115 { &early } else { &others };
        let who = present.get(place % present.len().max(1)).copied();
        things.push((minutes, Thing::Notes(who.unwrap_or(TOMAS))));
    }
    let by = |who, row, class| {
        move |(minutes, sheets)| (minutes, Thing::Puts(who, eight_by_ten(row, class, sheets)))
    };
    things.extend(ON_THE_WINDOW_LINE.map(by(MIREA, Row::Window, 0)));
    things.extend(ON_THE_FIBRE_TABLE.map(by(DAGNY, Row::Fibre, 1)));
    things.sort_by_key(|(minutes, _)| -minutes);
    things
}

const fn eight_by_ten(row: Row, class: usize, sheets: u32) -> Prints {
    Prints {
        row,
        class,
        size: EIGHT_BY_TEN,
        sheets: Some(sheets),
        is_toned: false,
    }
}

/// Opens all three lines. Their developers and the window line's fixer are mixed
/// anew, the window line's developer thinner and less than usual.
async fn fresh(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    for (row, step) in [
        (Row::Long, Step::Developer),
        (Row::Window, Step::Developer),
        (Row::Window, Step::Fixer),
        (Row::Fibre, Step::Developer),
    ] {
        let here = cellar.bench.tray(row, step)?;
        let look = stage.looks().await?;
        if let Some((old, _)) = here.bottle.and_then(|bottle| look.in_bottle(bottle)) {
            pours_off(stage, CASIMIR, old, (kind_of(step), Why::Spent)).await?;
        }
        fills(stage, CASIMIR, here, tonight(cellar, here)?).await?;
    }
    let mix = standing(stage, cellar, (Row::Long, Step::Developer)).await?;
    testing::emergence(stage, CASIMIR, mix, 100).await?;
    testing::temperature(stage, CASIMIR, mix).await?;
    opens(
        stage,
        cellar,
        &[Row::Long, Row::Window, Row::Fibre],
        CASIMIR,
    )
    .await
}

/// The window line's next fixer waits in its bottle.
async fn reserve(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let here = cellar.bench.tray(Row::Window, Step::Fixer)?;
    let bottle = here.bottle.ok_or_else(|| missing("bottles"))?;
    let bath = tonight(cellar, here)?;
    let wanted = (bath.dilution, bath.volume_ul);
    mixes(stage, CASIMIR, VesselId::Bottle(bottle), wanted).await?;
    Ok(())
}

fn tonight(cellar: &Cellar, here: Here) -> Result<Bath> {
    let usual = bath(&cellar.shelf, here).ok_or_else(|| missing("bath"))?;
    Ok(match (here.row, here.step) {
        (Row::Window, Step::Developer) => Bath {
            dilution: cellar.shelf.thin_developer,
            volume_ul: 700_000,
            stock: None,
        },
        _ => usual,
    })
}

async fn standing(stage: &Stage, cellar: &Cellar, (row, step): (Row, Step)) -> Result<uuid::Uuid> {
    let here = cellar.bench.tray(row, step)?;
    Ok(stage.looks().await?.mix_in(here.tray)?.id)
}

/// A test print on a line, which is good.
async fn tests_print(
    stage: &mut Stage,
    cellar: &Cellar,
    (row, who): (Row, Who),
    words: &str,
) -> Result<uuid::Uuid> {
    let mix = standing(stage, cellar, (row, Step::Developer)).await?;
    let good = Taken::ByEye {
        kind: ReadingKind::TestPrint,
        passed: true,
    };
    testing::finds(stage, who, mix, (good, words)).await?;
    Ok(mix)
}

/// The fibre table's developer is past its life; a steward lets it be used on.
async fn extends(stage: &mut Stage, cellar: &Cellar) -> Result<()> {
    let words = "As black as the first one.";
    let mix_id = tests_print(stage, cellar, (Row::Fibre, CASIMIR), words).await?;
    let new = NewExtension {
        mix_id,
        minutes: 180,
        reason: "Two prints are left to make, and the test print was good.".to_owned(),
    };
    stage.act(CASIMIR, extend, new).await?;
    Ok(())
}
