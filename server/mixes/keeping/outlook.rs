//! What a mix is, and what it would be after something is done with it.

use time::OffsetDateTime;
use uuid::Uuid;

use super::views::Bath;
use crate::app::App;
use crate::board;
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Ground, Vessel};
use crate::mixes::{Findings, Mix, Storage, judge, store};
use crate::problem::{Problem, Problems};
use crate::rights::Right;
use crate::rooms::{self, Settings};
use crate::web::desk::renamed;
use crate::web::drawing::VerdictWord;
use crate::web::messages::{keeping as words, problems, verdicts};
use crate::web::numbers::Numbers;

/// A mix with its verdict.
pub(super) struct Outlook {
    pub(super) mix: Mix,
    pub(super) judgement: Judgement,
}

impl Outlook {
    /// A mix judged by what was found of it.
    pub(super) async fn of(
        tx: &mut RoomTx,
        mix: Mix,
        settings: &Settings,
        now: OffsetDateTime,
    ) -> Result<Self> {
        let findings = Findings::of(tx, std::slice::from_ref(&mix)).await?;
        Ok(Self {
            judgement: judge(Some(&mix), &findings, settings, now)?,
            mix,
        })
    }

    /// Its life, its end and its verdict in words.
    pub(super) fn words(&self, settings: &Settings, now: OffsetDateTime) -> Result<String> {
        let zone = settings.time_zone()?;
        let ends = self.mix.life_ends();
        let ends = ends.map(|ends| (now < ends, zone.clock_and_weekday(ends).words));
        let life = words::lives(self.mix.life_s, ends.as_ref());
        let reason = verdicts::reason(&self.judgement, settings.numbers(), &zone);
        let verdict = verdicts::word(self.judgement.verdict);
        Ok(format!("{life} {}", words::then(verdict, &reason)))
    }
}

/// A mix as its pages begin: what stands where, and how good it is.
pub(super) fn bath(ground: &Ground, judgement: &Judgement, now: OffsetDateTime) -> Result<Bath> {
    let (numbers, zone) = (ground.settings.numbers(), ground.settings.time_zone()?);
    let mix = &ground.mix;
    Ok(Bath {
        mix_id: mix.id.to_string(),
        title: mix.title(numbers),
        vessel: ground.vessel.name().to_owned(),
        path: path(&ground.vessel),
        stands: words::stands(
            kept(mix.storage),
            &numbers.volume(mix.level_ul()),
            &numbers.volume(ground.vessel.holds_ul()),
            &depth(&ground.vessel, mix.level_ul(), numbers),
        ),
        mixed: zone.words(mix.mixed_at, now),
        word: VerdictWord {
            standing: verdicts::standing(judgement.verdict),
        },
        reason: verdicts::reason(judgement, numbers, &zone),
    })
}

/// How a mix is kept, in words.
pub(super) const fn kept(storage: Storage) -> &'static str {
    match storage {
        Storage::OpenTray => words::OPEN,
        Storage::CoveredTray => words::COVERED,
        Storage::FullBottle => words::FULL,
        Storage::PartBottle => words::PART,
    }
}

/// The page of a tray or bottle, below the room.
pub(super) fn path(vessel: &Vessel) -> String {
    match vessel {
        Vessel::Tray(tray) => format!("/trays/{}", tray.id),
        Vessel::Bottle(bottle) => format!("/bottles/{}", bottle.id),
    }
}

/// How deep a volume stands in a tray; nothing in a bottle.
pub(super) fn depth(vessel: &Vessel, level_ul: i64, numbers: Numbers) -> String {
    match vessel {
        Vessel::Tray(tray) => numbers.millimetres(board::shape(tray).depth_of(level_ul)),
        Vessel::Bottle(_) => String::new(),
    }
}

/// Where a mix stands now, as a path below the room.
pub(super) async fn path_of<R: Right>(app: &App, permit: &Permit<R>, mix: Uuid) -> Result<String> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let mix = store::mix(tx, mix).await?.ok_or(Error::NotFound)?;
                Ok(path(&Vessel::of(tx, &mix).await?))
            })
        })
        .await
}

/// The room's settings.
pub(super) async fn settings<R: Right>(app: &App, permit: &Permit<R>) -> Result<Settings> {
    let database = app.database();
    let read = database.reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)));
    read.await
}

/// Sorts what a question came to: something to say, or why it may not be.
///
/// # Errors
/// What no change of the question mends.
pub(super) fn or_why_not<T>(asked: Result<T>, numbers: Numbers) -> Result<Result<T, String>> {
    match asked {
        Ok(found) => Ok(Ok(found)),
        Err(Error::Refused(problem)) => Ok(Err(why_not(&problem, numbers))),
        Err(Error::Invalid(all)) => {
            let mut said = all.iter().map(|(_, problem)| why_not(problem, numbers));
            Ok(Err(said.next().unwrap_or_default()))
        }
        Err(other) => Err(other),
    }
}

fn why_not(problem: &Problem, numbers: Numbers) -> String {
    words::why_not(problem, numbers).unwrap_or_else(|| problems::problem(problem, numbers))
}

/// What is wrong with a form, under the names of its fields.
pub(super) fn by_field(problems: &Problems, names: &[(&str, &str)]) -> Problems {
    let when = [("happened_at", "time")];
    renamed(problems, &[&when[..], names].concat())
}
