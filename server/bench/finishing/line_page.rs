//! What the page of a line shows.

use time::OffsetDateTime;
use uuid::Uuid;

use super::views::{JoinButton, LineShownPage, StepRow, Times, TimesRow, WashShown};
use super::{Finishing, Wash, store};
use crate::app::App;
use crate::bench::pages::shell;
use crate::bench::spaces::{self, Space};
use crate::bench::{Line, Tray, line, trays};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::papers::{self, PaperClass};
use crate::problem::Problems;
use crate::rights::{KeepBench, NoteSheets, Right};
use crate::rooms::{self, Settings};
use crate::web::forms::{in_words, new_key};
use crate::web::frame::Frame;
use crate::web::messages::lines as words;

/// Everything the page stands on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) line: Line,
    spaces: Vec<Space>,
    trays: Vec<Tray>,
    classes: Vec<PaperClass>,
    finishings: Vec<Finishing>,
    wash: Option<Wash>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Self> {
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let mut trays = trays(tx).await?;
                    trays.retain(|tray| tray.line_id == id && !tray.is_retired);
                    let mut classes = papers::paper_classes(tx).await?;
                    classes.retain(|class| !class.is_retired);
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        line: line(tx, id).await?.ok_or(Error::NotFound)?,
                        spaces: spaces::spaces(tx).await?,
                        trays,
                        classes,
                        finishings: store::finishings(tx, id).await?,
                        wash: store::wash(tx, id).await?,
                    })
                })
            })
            .await
    }

    pub(super) fn class(&self, id: Uuid) -> Result<&PaperClass> {
        let mut classes = self.classes.iter();
        classes.find(|class| class.id == id).ok_or(Error::NotFound)
    }

    pub(super) fn finishing(&self, class: Uuid) -> Option<&Finishing> {
        let mut all = self.finishings.iter();
        all.find(|times| times.paper_class_id == class)
    }

    fn space(&self) -> Option<String> {
        let mut spaces = self.spaces.iter();
        let found = spaces.find(|space| Some(space.id) == self.line.space_id)?;
        Some(found.name.clone())
    }
}

pub(super) fn line_page<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    ground: &Ground,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<LineShownPage> {
    let line = &ground.line;
    let may_note = NoteSheets::ROW.roles.contains(&permit.role()) && !line.is_retired;
    Ok(LineShownPage {
        shell: shell(permit, frame, &format!("/lines/{}", line.id)),
        id: line.id.to_string(),
        name: line.name.clone(),
        space: ground.space(),
        is_retired: line.is_retired,
        steps: ground.trays.iter().map(step).collect(),
        times: ground
            .classes
            .iter()
            .map(|class| times(class, ground))
            .collect(),
        wash: wash(ground, now)?,
        joins: joins(ground)?,
        key: new_key()?,
        problems: in_words(problems, ground.settings.numbers()),
        may_note,
        may_change: KeepBench::ROW.roles.contains(&permit.role()) && !line.is_retired,
    })
}

fn step(tray: &Tray) -> StepRow {
    StepRow {
        id: tray.id.to_string(),
        name: tray.name.clone(),
        step: words::step_shown(tray.step).to_owned(),
    }
}

fn times(class: &PaperClass, ground: &Ground) -> TimesRow {
    let time = |seconds: Option<i64>| seconds.map_or(words::NO_TIME.to_owned(), words::time);
    let found = ground.finishing(class.id);
    TimesRow {
        class_id: class.id.to_string(),
        class: class.name.clone(),
        times: found.map(|found| Times {
            fix: words::time(found.fix_s),
            longest_fix: words::time(found.longest_fix_s),
            rinse: words::time(found.rinse_s),
            wash_aid: time(found.wash_aid_s),
            wash_with_aid: time(found.wash_with_aid_s),
            wash_without_aid: words::time(found.wash_without_aid_s),
            basis: found.basis.clone(),
        }),
    }
}

fn wash(ground: &Ground, now: OffsetDateTime) -> Result<WashShown> {
    let Some(wash) = &ground.wash else {
        return Ok(WashShown::Empty);
    };
    let (zone, ends) = (ground.settings.time_zone()?, wash.ends_at()?);
    if ends <= now {
        return Ok(WashShown::OverSince(zone.words(ends, now)));
    }
    let since = zone.words(wash.last_joined_at, now).words;
    let since = match wash.is_restarted() {
        true => words::restarted(&since),
        false => words::since(&since),
    };
    let class = ground.classes.iter();
    let class = class.clone().find(|class| class.id == wash.paper_class_id);
    let class = class.map_or(words::A_RETIRED_CLASS, |class| class.name.as_str());
    Ok(WashShown::Until {
        ends: zone.words(ends, now),
        why: words::why(&since, class, &words::time(wash.wash_s)),
    })
}

/// A button for each class that has a time, and one more after the wash aid.
fn joins(ground: &Ground) -> Result<Vec<JoinButton>> {
    let mut buttons = Vec::new();
    for class in &ground.classes {
        let Some(times) = ground.finishing(class.id) else {
            continue;
        };
        let has_aid = times.wash_with_aid_s.is_some();
        let mut button = |had_wash_aid: bool, wash_s: i64| -> Result<()> {
            buttons.push(JoinButton {
                key: new_key()?,
                class_id: class.id.to_string(),
                had_wash_aid: if had_wash_aid { "yes" } else { "" },
                label: words::join(&class.name, had_wash_aid, has_aid),
                time: words::washes(&words::time(wash_s)),
            });
            Ok(())
        };
        if let Some(wash_s) = times.wash_with_aid_s {
            button(true, wash_s)?;
        }
        button(false, times.wash_without_aid_s)?;
    }
    Ok(buttons)
}
