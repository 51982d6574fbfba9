//! The page of a label.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::views::{LabelPage, Size};
use super::{LabelOf, door_pages, label};
use crate::app::App;
use crate::darkroom::verdict::Verdict;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::{self, Permit};
use crate::mixes::actions::Vessel;
use crate::mixes::{Findings, Mix};
use crate::problem::Problem;
use crate::rights::LookAtBoard;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::verdicts;
use crate::web::shell::Place;
use crate::{bench, board, mixes};

/// The routes of labels and of the sheet at the door.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/mixes/{mix}/label", of_mix)
        .and(door_pages::pages())
}

/// Which size is asked for.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Asked {
    size: String,
}

impl Asked {
    /// The size, A7 where none is named.
    fn size(&self) -> Result<Size> {
        match self.size.as_str() {
            "" => Ok(Size::A7),
            name => Size::named(name).ok_or_else(|| Error::field("size", Problem::NotAChoice)),
        }
    }
}

/// What a label stands on.
struct Ground {
    settings: Settings,
    of: LabelOf,
    is_replace: bool,
}

async fn of_mix(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(asked): Query<Asked>,
) -> Result<Response> {
    let size = asked.size()?;
    let ground = ground(&app, &permit, id).await?;
    let shell = frame.shell_in(&permit, Some(Place::Board));
    let (settings, address) = (&ground.settings, app.address());
    page(&LabelPage {
        back: shell.to(&ground.of.link_path),
        here: shell.at(&format!("/mixes/{id}/label")),
        is_replace: ground.is_replace,
        label: label(&ground.of, size, settings, address, shell.demo)?,
        shell,
    })
}

async fn ground(app: &App, permit: &Permit<LookAtBoard>, id: Uuid) -> Result<Ground> {
    let (now, slug) = (app.clock().now(), permit.membership().slug.clone());
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let mix = mixes::mix(tx, id).await?.ok_or(Error::NotFound)?;
                in_vessel(tx, settings, mix, &slug, now).await
            })
        })
        .await
}

/// What stands in a tray or a bottle.
async fn in_vessel(
    tx: &mut RoomTx,
    settings: Settings,
    mix: Mix,
    slug: &str,
    now: OffsetDateTime,
) -> Result<Ground> {
    let vessel = Vessel::of(tx, &mix).await?;
    let (place, link_path) = match &vessel {
        Vessel::Tray(tray) => {
            let line = bench::line(tx, tray.line_id).await?;
            let line = line.ok_or(Error::NotFound)?.name;
            (line, format!("/rooms/{slug}/trays/{}", tray.id))
        }
        Vessel::Bottle(bottle) => (
            String::new(),
            format!("/rooms/{slug}/bottles/{}", bottle.id),
        ),
    };
    let mixed_by = match mix.mixed_by {
        Some(person) => identity::person_name(tx, person).await?,
        None => None,
    };
    let findings = Findings::of(tx, std::slice::from_ref(&mix)).await?;
    let judged = mixes::judge(Some(&mix), &findings, &settings, now)?;
    let of = LabelOf {
        vessel: vessel.name().to_owned(),
        place,
        link_path,
        product: verdicts::mix_name(mix.product_name.as_deref()),
        parts_thousandths: mix.product_id.map(|_| mix.parts_thousandths),
        volume_ul: mix.charged_ul,
        mixed_at: mix.mixed_at,
        mixed_by,
        use_by: board::life_ends(&mix),
        hazard_codes: mix.hazard_codes.clone(),
    };
    Ok(Ground {
        settings,
        of,
        is_replace: judged.verdict == Verdict::Replace,
    })
}
