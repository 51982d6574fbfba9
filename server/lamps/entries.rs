//! Entries about lamps and their fog tests.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::darkroom::fog::{FogError, Steps, safe_time};
use crate::darkroom::quantities::Seconds;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::{About, Entry, Placed, SeenBy};

/// The rules by which a safe time is reckoned from now on.
pub const RULES: u16 = 1;

/// What shines.
#[derive(Clone, Copy, Debug, Deserialize, Eq, Hash, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum LampKind {
    /// A lamp to work with paper by.
    Safelight,
    /// A screen: on the wall, on the bench, in a hand.
    Screen,
}

impl LampKind {
    /// Every kind, in the order pages list them.
    pub const ALL: [Self; 2] = [Self::Safelight, Self::Screen];

    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Safelight => "safelight",
            Self::Screen => "screen",
        }
    }

    /// Reads what [`LampKind::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.as_str() == text)
    }
}

/// How a lamp hangs: what a test found holds for it while it hangs just so.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Hanging {
    /// What shines.
    pub kind: LampKind,
    /// Bulb and filter, or how bright a screen is; may be empty.
    pub light: String,
    /// From it to the nearest place where paper lies or is carried.
    pub distance_tenths_mm: i32,
    /// The space it hangs in; nothing for the room itself.
    pub space_id: Option<Uuid>,
}

/// A lamp or a screen as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct LampSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// How it hangs.
    pub hangs: Hanging,
    /// So many months after a test it is tested again.
    pub test_months: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for LampSet {
    const KIND: &'static str = "lamp_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let space = self.hangs.space_id.map(|space| About::new("space", space));
        let lamp = About::new("lamp", self.id);
        space.into_iter().chain([lamp]).collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_lamp(tx, each).await?;
        }
        Ok(())
    }
}

/// Paper lay in a lamp's light, step by step. When it did is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FogTested {
    /// The rules by which the safe time was reckoned.
    pub rules: u16,
    /// Which test.
    pub fog_test_id: Uuid,
    /// Of which lamp.
    pub lamp_id: Uuid,
    /// With which paper.
    pub paper_class_id: Uuid,
    /// How the lamp hung then.
    pub hangs: Hanging,
    /// The longest step that showed nothing; nothing where the shortest one fogged.
    pub clean_s: Option<i64>,
    /// The shortest step that showed fog; nothing where none did.
    pub fogged_s: Option<i64>,
    /// How long paper may lie there; nothing where there is no such time.
    pub safe_s: Option<i64>,
    /// The last day on which it holds, as `2027-11-03`.
    pub again_by: String,
}

impl Entry for FogTested {
    const KIND: &'static str = "fog_tested";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("fog_test", self.fog_test_id),
            About::new("lamp", self.lamp_id),
            About::new("paper_class", self.paper_class_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert_test(tx, each).await?;
        }
        Ok(())
    }

    /// The time it kept, reckoned again from its own steps.
    fn recheck(&self) -> Result<Option<String>> {
        let again = safe_s(self.clean_s, self.fogged_s).map_err(Error::fault)?;
        let said = |time: Option<i64>| time.map_or("no".to_owned(), |time| format!("{time} s of"));
        Ok((again != self.safe_s).then(|| {
            let (kept, again) = (said(self.safe_s), said(again));
            format!("it keeps {kept} safe time where its own steps give {again} it")
        }))
    }
}

/// How long paper may lie there, in seconds, from steps in seconds.
pub(super) fn safe_s(clean_s: Option<i64>, fogged_s: Option<i64>) -> Result<Option<i64>, FogError> {
    let steps = Steps {
        longest_clean: clean_s.map(Seconds::new).transpose()?,
        shortest_fogged: fogged_s.map(Seconds::new).transpose()?,
    };
    Ok(safe_time(steps)?.seconds().map(Seconds::get))
}

/// A fog test was mistaken.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FogTestTakenBack {
    /// Which.
    pub fog_test_id: Uuid,
    /// The number of its entry.
    pub fog_test_seq: i64,
    /// The lamp.
    pub lamp_id: Uuid,
    /// Why.
    pub reason: String,
}

impl Entry for FogTestTakenBack {
    const KIND: &'static str = "fog_test_taken_back";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("fog_test", self.fog_test_id),
            About::new("lamp", self.lamp_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::take_back(tx, each).await?;
        }
        Ok(())
    }
}
