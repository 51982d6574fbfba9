//! What the pages of mixing stand on.

use axum::extract::{FromRequestParts, RawPathParams};
use axum::http::request::Parts;
use time::OffsetDateTime;
use uuid::Uuid;

use crate::air::LineAir;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Vessel, VesselId, may_mix_in};
use crate::mixes::stock::{self, Stock};
use crate::mixes::{Mix, store};
use crate::papers::{self, PaperClass};
use crate::problem::{Problem, Problems};
use crate::products::{self, DilutionFigures, Product};
use crate::rights::{Right, Role};
use crate::rooms::{self, Settings};
use crate::web::fields::Choice;
use crate::web::messages::problem;
use crate::web::numbers::Numbers;

/// The tray or the bottle that a path names.
#[derive(Clone, Copy, Debug)]
pub(super) struct Where(pub(super) VesselId);

impl FromRequestParts<App> for Where {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        let params = RawPathParams::from_request_parts(parts, app).await;
        let params = params.map_err(|_| Error::NotFound)?;
        let found = params.iter().find_map(|(name, value)| {
            let id = Uuid::parse_str(value).ok()?;
            match name {
                "tray" => Some(VesselId::Tray(id)),
                "bottle" => Some(VesselId::Bottle(id)),
                _ => None,
            }
        });
        found.map(Self).ok_or(Error::NotFound)
    }
}

/// Everything a page of mixing stands on.
pub(in crate::mixes) struct Ground {
    pub(super) settings: Settings,
    pub(super) vessel: Vessel,
    pub(super) standing: Option<Mix>,
    pub(super) products: Vec<Product>,
    pub(super) classes: Vec<PaperClass>,
    pub(super) stocks: Vec<Stock>,
    pub(super) now: OffsetDateTime,
    /// Where the vessel is a tray, what the air of its line lets start.
    air: Option<LineAir>,
}

impl Ground {
    /// What is around a vessel.
    pub(super) async fn at<R: Right>(
        app: &App,
        permit: &Permit<R>,
        vessel: VesselId,
    ) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let vessel = Vessel::find(tx, vessel).await?;
                    let air = match &vessel {
                        Vessel::Tray(tray) => Some(LineAir::of(tx, tray.line_id).await?),
                        Vessel::Bottle(_) => None,
                    };
                    Ok(Self {
                        air,
                        settings: rooms::settings(tx).await?,
                        standing: store::in_vessel(tx, vessel.id()).await?,
                        vessel,
                        products: products::products(tx).await?,
                        classes: papers::paper_classes(tx).await?,
                        stocks: stock::stocks(tx, None).await?,
                        now,
                    })
                })
            })
            .await
    }

    pub(super) fn numbers(&self) -> Numbers {
        self.settings.numbers()
    }

    /// The product and the figures of a dilution.
    pub(super) fn dilution(&self, id: Uuid) -> Result<(&Product, &DilutionFigures)> {
        let found = self.products.iter().find_map(|product| {
            let mut figures = product.dilutions.iter();
            Some((product, figures.find(|figures| figures.id == id)?))
        });
        found.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))
    }

    /// Refuses a product that may not start in the vessel for the air around it.
    pub(super) fn may_start(&self, product: &Product) -> Result<()> {
        self.air.map_or(Ok(()), |air| air.may_start(product))
    }

    /// Every dilution that may be mixed into the vessel by a role.
    pub(super) fn mixable(&self, role: Role) -> impl Iterator<Item = (&Product, &DilutionFigures)> {
        self.products.iter().flat_map(move |product| {
            let figures = product.dilutions.iter();
            figures
                .filter(move |figures| may_mix_in(product, role, figures.id, &self.vessel).is_ok())
                .map(move |figures| (product, figures))
        })
    }

    /// The same, to choose from.
    pub(super) fn choices(&self, role: Role) -> Vec<Choice> {
        let mixable = self.mixable(role);
        mixable
            .map(|(product, figures)| {
                let choice = Choice::new(figures.id, title(product, figures, self));
                match self.may_start(product) {
                    Err(Error::Refused(why)) => choice.explained(problem(&why, self.numbers())),
                    _ => choice,
                }
            })
            .collect()
    }

    /// The first of them.
    pub(super) fn first(&self, role: Role) -> String {
        let first = self.mixable(role).next();
        first.map_or_else(String::new, |(_, figures)| figures.id.to_string())
    }

    /// Half a litre where that covers a print, else what does: common practice, no source.
    pub(super) fn usual_fill(&self) -> String {
        const HALF_A_LITRE_UL: i64 = 500_000;
        let (least, holds) = (self.vessel.least_ul(), self.vessel.holds_ul());
        // Up to the next tenth of a litre, so that it can be measured.
        let covers = (least + 99_999) / 100_000 * 100_000;
        let fill = covers.max(HALF_A_LITRE_UL).min(holds);
        self.numbers().decimal(fill, 6)
    }
}

/// `Plain print developer 1+9`.
pub(super) fn title(product: &Product, figures: &DilutionFigures, ground: &Ground) -> String {
    let dilution = ground.numbers().dilution(figures.parts_thousandths);
    format!("{} {dilution}", product.name)
}

/// The page of a vessel, below the room.
pub(super) fn path_of(vessel: &Vessel) -> String {
    match vessel {
        Vessel::Tray(tray) => format!("/trays/{}", tray.id),
        Vessel::Bottle(bottle) => format!("/bottles/{}", bottle.id),
    }
}

/// What is wrong, where the page has no fields that it could stand beside.
pub(super) fn without_fields(problems: &Problems, instead: Problem) -> Problems {
    match problems.is_empty() {
        true => Problems::default(),
        false => Problems::one("", instead),
    }
}
