//! What the pages of readings stand on.

use uuid::Uuid;

use super::views::OfMix;
use super::{checks, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::Vessel;
use crate::mixes::{self, Mix, ReadingKind};
use crate::products;
use crate::rights::Right;
use crate::rooms::{self, Settings};

/// A mix that stands somewhere, and the check somebody wants to make of it.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) mix: Mix,
    vessel: Vessel,
    pub(super) kinds: &'static [ReadingKind],
    pub(super) kind: ReadingKind,
    /// With what fresh times of that check were taken, the last one first.
    pub(super) samples: Vec<String>,
}

impl Ground {
    /// Reads it; a check that does not fit the bath gives way to one that does.
    pub(super) async fn read<R: Right>(
        app: &App,
        permit: &Permit<R>,
        id: Uuid,
        asked: Option<ReadingKind>,
    ) -> Result<Self> {
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let mix = mixes::mix(tx, id).await?.ok_or(Error::NotFound)?;
                    let kinds = match mix.product_id {
                        None => &[ReadingKind::Temperature],
                        Some(product) => {
                            let product = products::product(tx, product).await?;
                            let product = product.ok_or(Error::NotFound)?;
                            checks(product.kind, mix.place())
                        }
                    };
                    let asked = asked.filter(|kind| kinds.contains(kind));
                    let kind = asked.unwrap_or(kinds[0]);
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        vessel: Vessel::of(tx, &mix).await?,
                        samples: store::samples(tx, mix.id, kind).await?,
                        mix,
                        kinds,
                        kind,
                    })
                })
            })
            .await
    }

    /// Which mix that is.
    pub(super) fn of(&self) -> OfMix {
        OfMix {
            id: self.mix.id.to_string(),
            title: self.mix.title(self.settings.numbers()),
            vessel: self.vessel.name().to_owned(),
            path: home(&self.vessel),
        }
    }

    /// Where its mix stands: that one's page, below the room.
    pub(super) fn home(&self) -> String {
        home(&self.vessel)
    }
}

/// The page of a tray or a bottle, below the room.
pub(super) fn home(vessel: &Vessel) -> String {
    match vessel {
        Vessel::Tray(tray) => format!("/trays/{}", tray.id),
        Vessel::Bottle(bottle) => format!("/bottles/{}", bottle.id),
    }
}
