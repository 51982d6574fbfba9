//! What people find of the baths: fresh readings, later ones, and what a board
//! that says "test first" asks for.

use uuid::Uuid;

use super::bench::Here;
use super::draw::Draw;
use super::keeping::kind_of;
use super::people::Who;
use super::stage::Stage;
use crate::bench::Step;
use crate::darkroom::verdict::{Judgement, Reason};
use crate::error::Result;
use crate::mixes::readings::{NewReading, Taken, checks, look};
use crate::mixes::{Mix, ReadingKind};

/// What fresh clearing times are taken with.
pub(super) const LEADER: &str = "film leader";
/// What emergence times are taken with.
pub(super) const STRIP: &str = "RC, 8×10 strip";

/// What somebody finds of a mix.
pub(super) async fn finds(
    stage: &mut Stage,
    by: Who,
    mix_id: Uuid,
    (taken, remark): (Taken, &str),
) -> Result<Uuid> {
    let new = NewReading {
        mix_id,
        taken,
        remark: remark.to_owned(),
        happened_at_us: None,
    };
    stage.act(by, look, new).await?.id("reading")
}

/// Numbers of one's own for each reading.
fn draw(stage: &Stage, matter: &str) -> Draw {
    Draw::of(stage.seed, matter, stage.now().unix_timestamp())
}

/// A temperature near 20 °C, in tenths.
pub(super) async fn temperature(stage: &mut Stage, by: Who, mix: Uuid) -> Result<()> {
    let tenths = draw(stage, "temperature").between(192, 209);
    let tenths = i32::try_from(tenths).unwrap_or(200);
    finds(stage, by, mix, (Taken::Temperature(tenths), "")).await?;
    Ok(())
}

/// The times that later ones are held against.
pub(super) async fn when_fresh(stage: &mut Stage, by: Who, here: Here, mix: Uuid) -> Result<()> {
    match here.step {
        Step::Developer => {
            let wanted = draw(stage, "fresh").happens(30);
            if wanted {
                emergence(stage, by, mix, 100).await?;
            }
            Ok(())
        }
        Step::Fixer | Step::FirstFixer | Step::SecondFixer => clearing(stage, by, mix, 100).await,
        _ => Ok(()),
    }
}

/// A time, in per cent of the fresh one; at a hundred it is the fresh one.
pub(super) async fn emergence(stage: &mut Stage, by: Who, mix: Uuid, per_cent: i64) -> Result<()> {
    let taken = timed(ReadingKind::Emergence, (14, per_cent), STRIP);
    finds(stage, by, mix, (taken, "")).await?;
    Ok(())
}

/// The same of a fixer, with film.
pub(super) async fn clearing(stage: &mut Stage, by: Who, mix: Uuid, per_cent: i64) -> Result<()> {
    let taken = timed(ReadingKind::Clearing, (32, per_cent), LEADER);
    finds(stage, by, mix, (taken, "")).await?;
    Ok(())
}

fn timed(kind: ReadingKind, (fresh_s, per_cent): (i64, i64), sample: &str) -> Taken {
    Taken::Timed {
        kind,
        seconds: fresh_s * per_cent / 100,
        tenths_celsius: 200,
        sample: sample.to_owned(),
        is_fresh: per_cent == 100,
    }
}

/// Makes the check that a doubtful bath asks for, as often as not: nobody does it
/// every time.
pub(super) async fn in_doubt(
    stage: &mut Stage,
    by: Who,
    here: Here,
    (mix, judged): (&Mix, &Judgement),
) -> Result<()> {
    if draw(stage, "tests").happens(60) {
        return Ok(());
    }
    let taken = match judged.reasons.first() {
        Some(Reason::SilverEstimated(estimated, limit)) => {
            let measured = i64::from(*estimated) * 8 / 10;
            Taken::Silver(measured.min(i64::from(*limit) - 100))
        }
        Some(Reason::TemperatureOut(_)) => Taken::Temperature(200),
        Some(Reason::ExtendedUntil(_)) => return Ok(()),
        _ => match checks(kind_of(here.step), mix.place()).first() {
            // A strip tells of silver what film tells of speed.
            Some(ReadingKind::Clearing)
                if here.step == Step::FirstFixer && draw(stage, "strip").happens(35) =>
            {
                Taken::Silver(draw(stage, "silver").between(11, 18) * 100)
            }
            Some(ReadingKind::Clearing) => {
                let per_cent = draw(stage, "clearing").between(115, 170);
                return clearing(stage, by, mix.id, per_cent).await;
            }
            Some(kind @ (ReadingKind::TestPrint | ReadingKind::IndicatorColour)) => {
                let passed = !draw(stage, "passes").happens(6);
                let kind = *kind;
                Taken::ByEye { kind, passed }
            }
            _ => return Ok(()),
        },
    };
    finds(stage, by, mix.id, (taken, "")).await?;
    Ok(())
}
