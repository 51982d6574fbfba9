//! The pages to mix into a tray.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewMix, Vessel, VesselId, may_mix_in, mix};
use super::store;
use super::views::{MixForm, MixPage, MixedPage};
use super::worksheet::worksheet;
use super::{Mix, input, keeping, readings};
use crate::app::App;
use crate::bench::{self, Tray};
use crate::board;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::papers::{self, PaperClass};
use crate::problem::{Problem, Problems};
use crate::products::{self, DilutionFigures, Product};
use crate::rights;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::bench as words;
use crate::web::messages::verdicts;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/trays/{tray}/mix", mix_form)
        .post("/rooms/{room}/trays/{tray}/mix", mix_send)
        .get("/rooms/{room}/mixes/{mix}", mixed)
        .and(keeping::pages())
        .and(readings::pages::pages())
}

/// Everything the mix page stands on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) tray: Tray,
    pub(super) vessel: Vessel,
    pub(super) products: Vec<Product>,
    pub(super) classes: Vec<PaperClass>,
}

impl Ground {
    async fn read(app: &App, permit: &Permit<rights::Mix>, tray: Uuid) -> Result<Self> {
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let tray = bench::tray(tx, tray).await?.ok_or(Error::NotFound)?;
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        vessel: Vessel::Tray(tray.clone()),
                        tray,
                        products: products::products(tx).await?,
                        classes: papers::paper_classes(tx).await?,
                    })
                })
            })
            .await
    }

    /// The product and the figures of a dilution.
    pub(super) fn dilution(&self, id: Uuid) -> Option<(&Product, &DilutionFigures)> {
        self.products.iter().find_map(|product| {
            let mut figures = product.dilutions.iter();
            Some((product, figures.find(|figures| figures.id == id)?))
        })
    }
}

async fn mix_form(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, tray)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, tray).await?;
    let form = MixForm {
        key: new_key()?,
        dilution: first_choice(&ground, &permit),
        volume: usual_fill(&ground.vessel, ground.settings.numbers()),
        ..MixForm::default()
    };
    page(&mix_page(
        &app,
        &permit,
        &frame,
        ground,
        form,
        &Problems::default(),
    )?)
}

async fn mix_send(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, tray)): Path<(String, Uuid)>,
    Form(form): Form<MixForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, tray).await?;
    match mix_as_typed(&app, &permit, &ground, &form).await? {
        Ok(mix) => Ok(on_to(&app, &permit, &format!("/mixes/{mix}"))),
        Err(problems) => {
            let again = mix_page(&app, &permit, &frame, ground, form, &problems)?;
            if again.problems.is_empty() {
                return page(&again);
            }
            mend(&again)
        }
    }
}

/// Mixes, once the worksheet has been seen; before that and where something is to
/// be mended, the page is shown again.
async fn mix_as_typed(
    app: &App,
    permit: &Permit<rights::Mix>,
    ground: &Ground,
    form: &MixForm,
) -> Result<Result<Uuid, Problems>> {
    let new = match read_mix(form, ground.tray.id, ground.settings.numbers()) {
        Ok(_) if form.step != "mix" => return Ok(Err(Problems::default())),
        Ok(new) => new,
        Err(problems) => return Ok(Err(problems)),
    };
    match mix(app, permit, read_key(&form.key)?, new).await {
        Ok(done) => Ok(Ok(done.id("mix")?)),
        Err(error) => Ok(Err(to_mend(error)?)),
    }
}

/// The form as typed, read.
pub(super) fn read_mix(form: &MixForm, tray: Uuid, numbers: Numbers) -> Result<NewMix, Problems> {
    let mut problems = Problems::default();
    let dilution = problems.take("dilution", read_id(&form.dilution));
    let volume = numbers.read_litres(&form.volume).map_err(Problem::Number);
    let volume = problems.take("volume", volume.and_then(input::mixed));
    match (dilution, volume) {
        (Some(dilution_id), Some(volume_ul)) => Ok(NewMix {
            vessel: VesselId::Tray(tray),
            dilution_id,
            volume_ul,
            happened_at_us: None,
        }),
        _ => Err(problems),
    }
}

fn first_choice(ground: &Ground, permit: &Permit<rights::Mix>) -> String {
    let first = mixable(ground, permit).next();
    first.map_or_else(String::new, |(_, figures)| figures.id.to_string())
}

/// Every dilution this reader may mix now.
fn mixable<'g>(
    ground: &'g Ground,
    permit: &Permit<rights::Mix>,
) -> impl Iterator<Item = (&'g Product, &'g DilutionFigures)> {
    let role = permit.role();
    ground.products.iter().flat_map(move |product| {
        let figures = product.dilutions.iter();
        figures
            .filter(move |figures| may_mix_in(product, role, figures.id, &ground.vessel).is_ok())
            .map(move |figures| (product, figures))
    })
}

/// Half a litre where that covers a print, else what does: common practice, no source.
fn usual_fill(vessel: &Vessel, numbers: Numbers) -> String {
    const HALF_A_LITRE_UL: i64 = 500_000;
    let (least, holds) = (vessel.least_ul(), vessel.holds_ul());
    // Up to the next tenth of a litre, so that it can be measured.
    let covers = (least + 99_999) / 100_000 * 100_000;
    numbers.decimal(covers.max(HALF_A_LITRE_UL).min(holds), 6)
}

fn mix_page(
    app: &App,
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    ground: Ground,
    form: MixForm,
    problems: &Problems,
) -> Result<MixPage> {
    let numbers = ground.settings.numbers();
    let mut problems = problems.clone();
    let mut sheet = None;
    if problems.is_empty() && !form.step.is_empty() {
        match worksheet(&ground, &form, permit.role(), app.clock().now()) {
            Ok(found) => sheet = Some(found),
            Err(error) => problems = to_mend(error)?,
        }
    }
    let dilutions = mixable(&ground, permit).map(|(product, figures)| {
        let dilution = numbers.dilution(figures.parts_thousandths);
        Choice::new(figures.id, format!("{} {dilution}", product.name))
    });
    let chosen = read_id(&form.dilution).ok();
    let chosen = chosen.and_then(|id| ground.dilution(id));
    Ok(MixPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        tray_id: ground.tray.id.to_string(),
        tray: ground.tray.name.clone(),
        problems: in_words(&problems, numbers),
        dilutions: dilutions.collect(),
        volume_hint: words::volume_hint(
            ground.vessel.least_ul(),
            ground.vessel.holds_ul(),
            numbers,
        ),
        worksheet: sheet,
        cautions: chosen.map_or_else(Vec::new, |(product, _)| cautions(&product.hazard_codes)),
        form,
    })
}

/// What the product's own sheet says of it, as far as it is on file.
pub(crate) fn cautions(hazard_codes: &[String]) -> Vec<String> {
    vec![match hazard_codes.is_empty() {
        true => words::NO_CODES.to_owned(),
        false => words::as_supplied(hazard_codes),
    }]
}

async fn mixed(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let (settings, mix, tray) = stands(&app, &permit, id).await?;
    let now = app.clock().now();
    let numbers = settings.numbers();
    let zone = settings.time_zone()?;
    page(&MixedPage {
        shell: frame.shell_in(&permit, Some(Place::Board)),
        mix_id: mix.id.to_string(),
        seq: mix.mixed_seq,
        tray_id: tray.id.to_string(),
        tray: tray.name.clone(),
        title: titled(&mix, numbers),
        total: numbers.volume(mix.charged_ul),
        life: board::life_rule(&mix, &zone, now, None),
        is_not_from_stock: true,
    })
}

/// `Plain print developer 1+9`.
fn titled(mix: &Mix, numbers: Numbers) -> String {
    let dilution = numbers.dilution(mix.parts_thousandths);
    format!(
        "{} {dilution}",
        verdicts::mix_name(mix.product_name.as_deref())
    )
}

/// A mix that stands in a tray now, and that tray.
async fn stands<R: rights::Right>(
    app: &App,
    permit: &Permit<R>,
    id: Uuid,
) -> Result<(Settings, Mix, Tray)> {
    let (settings, mix) = look_at(app, permit, id).await?;
    let tray = mix.stand.tray_id.ok_or(Error::Refused(Problem::MixGone))?;
    let tray = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { bench::tray(tx, tray).await })
        })
        .await?;
    Ok((settings, mix, tray.ok_or(Error::NotFound)?))
}

async fn look_at<R: rights::Right>(
    app: &App,
    permit: &Permit<R>,
    id: Uuid,
) -> Result<(Settings, Mix)> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                Ok((settings, store::mix(tx, id).await?.ok_or(Error::NotFound)?))
            })
        })
        .await
}
