//! The page to top a mix up with fresh solution of its own dilution.

use axum::extract::{Path, State};
use axum::response::Response;
use time::Duration;
use uuid::Uuid;

use super::form::{AskedTopUp, RECORDED, read_top_up};
use super::ground::{Ground, path_of, without_fields};
use super::mix_pages::{answer, stock_choices};
use super::sheet::{Made, asides, cylinder, pours, said, step};
use super::views::{Aside, TopUpForm, TopUpPage, Worksheet};
use crate::app::App;
use crate::board;
use crate::clock::micros;
use crate::darkroom::dilution::{Dilution, water_to_weaken};
use crate::darkroom::joining::{JoinRefused, may_top_up};
use crate::darkroom::quantities::{Microlitres, Moment};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{
    NewTopUp, Recipe, Vessel, VesselId, may_mix_product, may_pour, parts, top_up,
};
use crate::mixes::{Findings, Mix, cautions, state, store};
use crate::problem::{Problem, Problems};
use crate::products::Product;
use crate::rights;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::mixing::Used;
use crate::web::messages::{self, mixing};
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

const TOP_UP: &str = "/rooms/{room}/mixes/{mix}/top-up";

/// The routes of this page.
pub(super) fn pages() -> Pages {
    Pages::new().get(TOP_UP, form).post(TOP_UP, send)
}

/// Everything the page stands on.
struct Standing {
    ground: Ground,
    mix: Mix,
    product: Product,
    /// Why nothing may be added.
    barred: Option<Problem>,
}

impl Standing {
    async fn read(app: &App, permit: &Permit<rights::Mix>, id: Uuid) -> Result<Self> {
        let database = app.database();
        let found = database.reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let mix = store::mix(tx, id).await?.ok_or(Error::NotFound)?;
                let findings = Findings::of(tx, std::slice::from_ref(&mix)).await?;
                Ok((mix, findings))
            })
        });
        let (mix, findings) = found.await?;
        let vessel = match (mix.stand.tray_id, mix.stand.bottle_id) {
            (Some(tray), _) => VesselId::Tray(tray),
            (None, Some(bottle)) => VesselId::Bottle(bottle),
            (None, None) => return Err(Error::Refused(Problem::MixGone)),
        };
        let ground = Ground::at(app, permit, vessel).await?;
        let unknown = || Error::Refused(Problem::UnknownLiquid);
        let product = mix.product_id.ok_or_else(unknown)?;
        let mut products = ground.products.iter();
        let product = products.find(|each| each.id == product);
        let product = product.cloned().ok_or(Error::NotFound)?;
        let barred = barred(
            &mix,
            &findings,
            &ground,
            may_mix_product(&product, permit.role()).and_then(|()| ground.may_start(&product)),
        )?;
        Ok(Self {
            ground,
            mix,
            product,
            barred,
        })
    }

    fn room_ul(&self) -> i64 {
        (self.ground.vessel.holds_ul() - self.mix.level_ul()).max(0)
    }
}

/// What stands in the way of any top-up.
fn barred(
    mix: &Mix,
    findings: &Findings,
    ground: &Ground,
    may_mix: Result<()>,
) -> Result<Option<Problem>> {
    match may_mix {
        Ok(()) => {}
        Err(Error::Refused(problem)) => return Ok(Some(problem)),
        Err(other) => return Err(other),
    }
    let state = state(mix, findings, &ground.settings)?;
    let now = Moment::new(micros(ground.now));
    match may_top_up(&state, true, true, now) {
        Ok(()) => Ok(None),
        Err(JoinRefused::Quantity(fault)) => Err(Error::fault(fault)),
        Err(cause) => Ok(Some(Problem::MayNotJoin(cause))),
    }
}

async fn form(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let standing = Standing::read(&app, &permit, id).await?;
    let form = TopUpForm {
        key: new_key()?,
        stock: RECORDED.to_owned(),
        when: late::NOW.to_owned(),
        ..TopUpForm::default()
    };
    page(&top_up_page(&permit, &frame, &standing, form, Ok(None))?)
}

async fn send(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<TopUpForm>,
) -> Result<Response> {
    let standing = Standing::read(&app, &permit, id).await?;
    let asked = match top_up_as_typed(&app, &permit, &standing, &form).await {
        Ok(Outcome::ToppedUp) => {
            return Ok(on_to(&app, &permit, &path_of(&standing.ground.vessel)));
        }
        Ok(Outcome::Reckoned(asked)) => Ok(asked),
        Err(error) => Err(to_mend(error)?),
    };
    let asked = asked.as_ref().map(|asked| Some(&**asked));
    let shown = top_up_page(&permit, &frame, &standing, form, asked)?;
    answer(&shown, !shown.problems.is_empty())
}

enum Outcome {
    ToppedUp,
    Reckoned(Box<AskedTopUp>),
}

async fn top_up_as_typed(
    app: &App,
    permit: &Permit<rights::Mix>,
    standing: &Standing,
    form: &TopUpForm,
) -> Result<Outcome> {
    let mix = &standing.mix;
    let asked = read_top_up(
        form,
        &standing.ground,
        &standing.product,
        mix.parts_thousandths,
    );
    let asked = asked.map_err(Error::Invalid)?;
    if form.step != "mix" {
        may_pour(app, permit, asked.happened_at_us).await?;
        return Ok(Outcome::Reckoned(Box::new(asked)));
    }
    let new = NewTopUp {
        mix_id: mix.id,
        volume_ul: asked.volume_ul,
        stock_id: asked.stock_id,
        happened_at_us: asked.happened_at_us,
    };
    top_up(app, permit, read_key(&form.key)?, new).await?;
    Ok(Outcome::ToppedUp)
}

fn top_up_page(
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    standing: &Standing,
    form: TopUpForm,
    asked: Result<Option<&AskedTopUp>, &Problems>,
) -> Result<TopUpPage> {
    let (ground, mix) = (&standing.ground, &standing.mix);
    let numbers = ground.numbers();
    let mut problems = asked.err().cloned().unwrap_or_default();
    let (mut sheet, mut typed) = (None, None);
    if let Ok(Some(asked)) = asked {
        typed = asked.weaker_thousandths;
        match worksheet(standing, asked) {
            Ok(found) => sheet = Some(found),
            Err(error) => problems = to_mend(error)?,
        }
    }
    let zone = ground.settings.time_zone()?;
    let shell = frame.shell_in(permit, Some(Place::Board));
    let barred = standing.barred.as_ref();
    if let Some(problem) = barred {
        problems = without_fields(&problems, problem.clone());
    }
    Ok(TopUpPage {
        shell: lying_at(shell, &format!("/mixes/{}/top-up", mix.id)),
        mix_id: mix.id.to_string(),
        vessel_path: path_of(&ground.vessel),
        vessel: ground.vessel.name().to_owned(),
        title: title(standing),
        there: numbers.volume(mix.level_ul()),
        barred: barred.map(|problem| messages::problem(problem, numbers)),
        problems: in_words(&problems, numbers),
        volume_hint: mixing::room_left(&numbers.volume(standing.room_ul())),
        stocks: stock_choices(ground, |stock| stock.product_id == standing.product.id)?,
        days: late::days(&zone, ground.settings.late_note_minutes, ground.now),
        worksheet: sheet,
        weaker: weaker(standing, typed)?,
        cautions: cautions(&mix.hazard_codes),
        form,
    })
}

fn title(standing: &Standing) -> String {
    standing.mix.title(standing.ground.numbers())
}

/// What of the fresh solution is poured, and what it makes of what stands there.
fn worksheet(standing: &Standing, asked: &AskedTopUp) -> Result<Worksheet> {
    let (ground, mix, product) = (&standing.ground, &standing.mix, &standing.product);
    let numbers = ground.numbers();
    if asked.volume_ul > standing.room_ul() {
        let holds_ul = standing.room_ul();
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    let volume = Microlitres::new(asked.volume_ul).map_err(Error::fault)?;
    let (concentrate_ul, parts_ul) = parts(product, mix.parts_thousandths, volume)?;
    let recipe = Recipe {
        concentrate_ul,
        parts_ul,
        water_ul: asked.volume_ul - concentrate_ul,
        depth_tenths_mm: None,
        life_s: 0,
    };
    let made = Made {
        product,
        parts_thousandths: mix.parts_thousandths,
        volume_ul: asked.volume_ul,
        recipe: &recipe,
    };
    let pours = pours(&made, numbers);
    let mut steps = super::sheet::steps(&made, &ground.vessel, numbers);
    let (there, fresh) = (
        numbers.volume(mix.charged_ul),
        numbers.volume(asked.volume_ul),
    );
    steps.push(step(
        mixing::TOGETHER,
        mixing::sum_of(&there, &fresh),
        numbers.volume(mix.charged_ul + asked.volume_ul),
    ));
    let mut asides = asides(ground, &made, &asked.wishes, asked.stock_id)?;
    asides.insert(0, what_that_does(standing, asked)?);
    let is_tray = matches!(ground.vessel, Vessel::Tray(_));
    Ok(Worksheet {
        title: title(standing),
        said: said(&pours),
        pours,
        total: fresh,
        place: mixing::fresh_in_the(is_tray).to_owned(),
        cylinder: cylinder(&made),
        steps,
        asides,
        takes: Vec::new(),
        keeps: String::new(),
        basis: String::new(),
        verb: mixing::IT_IS_IN.to_owned(),
    })
}

/// V grows and W stays: what is used of capacity and life becomes a smaller part.
fn what_that_does(standing: &Standing, asked: &AskedTopUp) -> Result<Aside> {
    let (mix, ground) = (&standing.mix, &standing.ground);
    let numbers = ground.numbers();
    let mut lines = Vec::new();
    let percent = |ppb: i64| numbers.percent_used(ppb);
    if mix.has_capacity {
        let used = |volume_ul: i64| board::ppb(mix.spent_nl, volume_ul.saturating_mul(1_000));
        let before = percent(used(mix.charged_ul));
        let after = percent(used(mix.charged_ul + asked.volume_ul));
        lines.push(mixing::younger(Used::Capacity, &before, &after));
    }
    if let Some(age) = mix.age()? {
        let at = asked.happened_at_us.unwrap_or_else(|| micros(ground.now));
        let at = Moment::new(at);
        let there = Microlitres::new(mix.charged_ul).map_err(Error::fault)?;
        let fresh = Microlitres::new(asked.volume_ul).map_err(Error::fault)?;
        let younger = age.topped_up(at, there, fresh).map_err(Error::fault)?;
        let before = age.used_at(at).map_err(Error::fault)?;
        lines.push(mixing::younger(
            Used::Life,
            &percent(before.get()),
            &percent(younger.used().get()),
        ));
    }
    let longest = mix.figures.as_ref().and_then(|all| all.longest_life_s);
    if let Some(longest) = longest {
        let until = mix.oldest_at + Duration::seconds(longest);
        let zone = ground.settings.time_zone()?;
        lines.push(mixing::longest(&zone.words(until, ground.now).words));
    }
    Ok(Aside {
        heading: mixing::DOES.to_owned(),
        lines,
    })
}

/// What water would make of what stands there: the product's own weaker dilutions,
/// and one that was typed.
fn weaker(standing: &Standing, typed: Option<i64>) -> Result<Vec<String>> {
    let mix = &standing.mix;
    let own = standing.product.dilutions.iter();
    let mut all: Vec<i64> = own
        .map(|figures| figures.parts_thousandths)
        .chain(typed)
        .filter(|parts| *parts > mix.parts_thousandths)
        .collect();
    all.sort_unstable();
    all.dedup();
    let numbers = standing.ground.numbers();
    all.into_iter()
        .map(|parts| weaker_line(mix, parts, numbers))
        .collect()
}

fn weaker_line(mix: &Mix, parts_thousandths: i64, numbers: Numbers) -> Result<String> {
    let dilution = |parts: i64| Dilution::new(parts).map_err(Error::fault);
    let there = Microlitres::new(mix.level_ul().max(1)).map_err(Error::fault)?;
    let (from, to) = (
        dilution(mix.parts_thousandths)?,
        dilution(parts_thousandths)?,
    );
    let water = water_to_weaken(there, from, to).map_err(Error::fault)?;
    Ok(mixing::weaker(
        &numbers.volume(there.get()),
        &numbers.dilution(mix.parts_thousandths),
        &numbers.volume(water.get()),
        &numbers.dilution(parts_thousandths),
        &numbers.volume(there.get() + water.get()),
    ))
}
