//! What the tests of each lamp say of each paper now.

use serde::Serialize;
use time::OffsetDateTime;
use utoipa::ToSchema;
use uuid::Uuid;

use super::store::{self, FogTest, Lamp};
use crate::bench::spaces;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::papers;
use crate::web::dates::Zone;
use crate::web::days;

/// What a lamp's last test with a paper says now.
#[derive(Clone, Copy, Debug, Eq, Hash, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// There is none.
    Never,
    /// It was made when the lamp hung otherwise.
    Changed,
    /// The shortest step fogged already.
    NoSafeTime,
    /// It was to be made again by now.
    Overdue,
    /// Its time holds.
    Tested,
}

impl Standing {
    fn of(
        lamp: &Lamp,
        test: Option<&FogTest>,
        ends: Option<OffsetDateTime>,
        now: OffsetDateTime,
    ) -> Self {
        match (test, ends) {
            (None, _) => Self::Never,
            (Some(test), _) if test.hangs != lamp.hangs => Self::Changed,
            (Some(test), _) if test.safe_s.is_none() => Self::NoSafeTime,
            (Some(_), Some(ends)) if ends <= now => Self::Overdue,
            (Some(_), _) => Self::Tested,
        }
    }
}

/// A lamp and what is known of every paper in use.
#[derive(Clone, Debug)]
pub struct LampNow {
    /// The lamp.
    pub lamp: Lamp,
    /// The space it hangs in, where the room has several.
    pub space: Option<String>,
    /// Every paper in use, in the room's order.
    pub papers: Vec<PaperNow>,
}

/// What is known of one paper under a lamp.
#[derive(Clone, Debug)]
pub struct PaperNow {
    /// The paper.
    pub id: Uuid,
    /// Its name.
    pub name: String,
    /// The last test with it.
    pub test: Option<FogTest>,
    /// What that says now.
    pub standing: Standing,
    /// When that ends by itself: the first instant after the last day it holds.
    pub ends: Option<OffsetDateTime>,
}

/// Every lamp by its name, retired ones last; in a room without any, nothing else is
/// asked for.
///
/// # Errors
/// The database's.
pub async fn lamps_now(tx: &mut RoomTx, zone: &Zone, now: OffsetDateTime) -> Result<Vec<LampNow>> {
    let lamps = store::lamps(tx).await?;
    if lamps.is_empty() {
        return Ok(Vec::new());
    }
    let spaces = spaces::spaces(tx).await?;
    let classes = papers::paper_classes(tx).await?;
    let tests = store::latest(tx).await?;
    let in_use = || classes.iter().filter(|class| !class.is_retired);
    let known = |lamp: &Lamp| -> Result<Vec<PaperNow>> {
        in_use()
            .map(|class| {
                let is_its =
                    |test: &&FogTest| test.lamp_id == lamp.id && test.paper_class_id == class.id;
                let test = tests.iter().find(is_its).cloned();
                let ends = test.as_ref().map(|test| days::ends(zone, &test.again_by));
                let ends = ends.transpose().map_err(Error::fault)?;
                Ok(PaperNow {
                    id: class.id,
                    name: class.name.clone(),
                    standing: Standing::of(lamp, test.as_ref(), ends, now),
                    test,
                    ends,
                })
            })
            .collect()
    };
    lamps
        .into_iter()
        .map(|lamp| {
            let hangs_in = lamp.hangs.space_id;
            let space = spaces.iter().find(|space| Some(space.id) == hangs_in);
            Ok(LampNow {
                space: space.map(|space| space.name.clone()),
                papers: known(&lamp)?,
                lamp,
            })
        })
        .collect()
}
