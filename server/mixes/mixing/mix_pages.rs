//! The page to mix into a tray or a bottle, and what it says afterwards.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::form::{Asked, NONE, RECORDED, read_mix};
use super::ground::{Ground, Where, path_of, without_fields};
use super::sheet::worksheet;
use super::views::{MixForm, MixPage, MixedPage};
use crate::app::App;
use crate::board;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Vessel, may_pour, mix};
use crate::mixes::stock::{self, Stock};
use crate::mixes::{Mix, cautions, store};
use crate::problem::{Problem, Problems};
use crate::rights;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{bench as words, mixing};
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/trays/{tray}/mix", mix_form)
        .post("/rooms/{room}/trays/{tray}/mix", mix_send)
        .get("/rooms/{room}/bottles/{bottle}/mix", mix_form)
        .post("/rooms/{room}/bottles/{bottle}/mix", mix_send)
        .get("/rooms/{room}/mixes/{mix}", mixed)
}

async fn mix_form(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Where(vessel): Where,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    let form = MixForm {
        key: new_key()?,
        dilution: ground.first(permit.role()),
        volume: ground.usual_fill(),
        stock: RECORDED.to_owned(),
        when: late::NOW.to_owned(),
        ..MixForm::default()
    };
    page(&mix_page(&permit, &frame, &ground, form, Ok(None))?)
}

async fn mix_send(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Where(vessel): Where,
    Form(form): Form<MixForm>,
) -> Result<Response> {
    let ground = Ground::at(&app, &permit, vessel).await?;
    let asked = match mix_as_typed(&app, &permit, &ground, &form).await {
        Ok(Outcome::Mixed(id)) => return Ok(on_to(&app, &permit, &format!("/mixes/{id}"))),
        Ok(Outcome::Reckoned(asked)) => Ok(asked),
        Err(error) => Err(to_mend(error)?),
    };
    let asked = asked.as_ref().map(|asked| Some(&**asked));
    let shown = mix_page(&permit, &frame, &ground, form, asked)?;
    answer(&shown, !shown.problems.is_empty())
}

/// A page that may have something to mend.
pub(super) fn answer(shown: &impl askama::Template, is_wrong: bool) -> Result<Response> {
    match is_wrong {
        true => mend(shown),
        false => page(shown),
    }
}

enum Outcome {
    Mixed(Uuid),
    Reckoned(Box<Asked>),
}

/// Mixes, once the worksheet has been seen; before that it is shown.
async fn mix_as_typed(
    app: &App,
    permit: &Permit<rights::Mix>,
    ground: &Ground,
    form: &MixForm,
) -> Result<Outcome> {
    let asked = read_mix(form, ground).map_err(Error::Invalid)?;
    if form.step != "mix" {
        may_pour(app, permit, asked.new.happened_at_us).await?;
        return Ok(Outcome::Reckoned(Box::new(asked)));
    }
    let done = mix(app, permit, read_key(&form.key)?, asked.new).await?;
    Ok(Outcome::Mixed(done.id("mix")?))
}

fn mix_page(
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    ground: &Ground,
    mut form: MixForm,
    asked: Result<Option<&Asked>, &Problems>,
) -> Result<MixPage> {
    let (numbers, role) = (ground.numbers(), permit.role());
    let mut problems = asked.err().cloned().unwrap_or_default();
    let mut sheet = None;
    if let Ok(Some(asked)) = asked {
        // Where the concentrate was given, the volume follows.
        form.volume = numbers.decimal(asked.new.volume_ul, 6);
        match worksheet(ground, asked, role) {
            Ok(found) => sheet = Some(found),
            Err(error) => problems = to_mend(error)?,
        }
    }
    let chosen = read_id(&form.dilution).ok();
    let chosen = chosen.and_then(|id| ground.dilution(id).ok());
    let zone = ground.settings.time_zone()?;
    let vessel_path = path_of(&ground.vessel);
    let shell = frame.shell_in(permit, Some(Place::Board));
    let dilutions = ground.choices(role);
    if ground.standing.is_some() {
        problems = without_fields(&problems, Problem::TrayFull);
    } else if dilutions.is_empty() {
        problems = without_fields(&problems, Problem::NotAChoice);
    }
    Ok(MixPage {
        shell: lying_at(shell, &format!("{vessel_path}/mix")),
        vessel_path,
        vessel: ground.vessel.name().to_owned(),
        full_of: ground.standing.as_ref().map(|mix| full_of(mix, ground)),
        top_up_path: top_up_path(ground.standing.as_ref()),
        problems: in_words(&problems, numbers),
        stocks: stock_choices(ground, |stock| {
            let mut mixable = ground.mixable(role);
            mixable.any(|(product, _)| product.id == stock.product_id)
        })?,
        dilutions,
        volume_hint: volume_hint(ground),
        days: late::days(&zone, ground.settings.late_note_minutes, ground.now),
        worksheet: sheet,
        cautions: chosen.map_or_else(Vec::new, |(product, _)| cautions(&product.hazard_codes)),
        form,
    })
}

fn top_up_path(mix: Option<&Mix>) -> Option<String> {
    let known = mix.filter(|mix| mix.product_id.is_some())?;
    Some(format!("/mixes/{}/top-up", known.id))
}

/// `1 L of Larch developer 1+9`.
fn full_of(mix: &Mix, ground: &Ground) -> String {
    let numbers = ground.numbers();
    words::volume_of(
        &numbers.volume(mix.level_ul()),
        mix.product_name.as_deref(),
        &numbers.dilution(mix.parts_thousandths),
    )
}

/// How much it takes.
pub(super) fn volume_hint(ground: &Ground) -> String {
    let (vessel, numbers) = (&ground.vessel, ground.numbers());
    match vessel {
        Vessel::Tray(_) => words::volume_hint(vessel.least_ul(), vessel.holds_ul(), numbers),
        Vessel::Bottle(_) => mixing::bottle_hint(vessel.holds_ul(), numbers),
    }
}

/// Recorded stock solutions to draw from; nothing where none is recorded.
pub(super) fn stock_choices(
    ground: &Ground,
    suits: impl Fn(&Stock) -> bool,
) -> Result<Vec<Choice>> {
    let zone = ground.settings.time_zone()?;
    let numbers = ground.numbers();
    let suits = |stock: &&Stock| stock.may_be_drawn(ground.now) && suits(stock);
    let mut choices: Vec<Choice> = Vec::new();
    for stock in ground.stocks.iter().filter(suits) {
        let made = zone.day(stock.made_at).words;
        let until = stock.use_by().map(|until| zone.day(until).words);
        let left = mixing::stock_left(&numbers.volume(stock.left_ul()), until.as_deref());
        let label = mixing::stock_choice(&stock.product_name, &made);
        choices.push(Choice::new(stock.id, label).explained(left));
    }
    if choices.is_empty() {
        return Ok(choices);
    }
    let recorded = Choice::new(RECORDED, mixing::RECORDED).explained(mixing::RECORDED_HINT);
    let none = Choice::new(NONE, mixing::NONE_RECORDED);
    choices.insert(0, recorded);
    choices.push(none);
    Ok(choices)
}

/// What is said of a mix after it was made.
struct Stands {
    settings: Settings,
    mix: Mix,
    vessel: Vessel,
    stock: Option<Stock>,
}

async fn stands(app: &App, permit: &Permit<rights::Mix>, id: Uuid) -> Result<Stands> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let mix = store::mix(tx, id).await?.ok_or(Error::NotFound)?;
                let stock = match mix.stock_id {
                    Some(id) => stock::stock(tx, id).await?,
                    None => None,
                };
                Ok(Stands {
                    settings: rooms::settings(tx).await?,
                    vessel: Vessel::of(tx, &mix).await?,
                    stock,
                    mix,
                })
            })
        })
        .await
}

async fn mixed(
    State(app): State<App>,
    permit: Permit<rights::Mix>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let stands = stands(&app, &permit, id).await?;
    page(&mixed_page(&app, &permit, &frame, &stands)?)
}

fn mixed_page(
    app: &App,
    permit: &Permit<rights::Mix>,
    frame: &Frame,
    stands: &Stands,
) -> Result<MixedPage> {
    let (mix, numbers) = (&stands.mix, stands.settings.numbers());
    let zone = stands.settings.time_zone()?;
    let stock = stands.stock.as_ref();
    Ok(MixedPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        mix_id: mix.id.to_string(),
        seq: mix.mixed_seq,
        vessel_path: path_of(&stands.vessel),
        vessel: stands.vessel.name().to_owned(),
        title: mix.title(numbers),
        total: numbers.volume(mix.charged_ul),
        life: board::life_rule(mix, &zone, app.clock().now(), None),
        drawn: stock.map_or_else(
            || mixing::NO_PRICE.to_owned(),
            |stock| mixing::left_after(&numbers.volume(stock.left_ul())),
        ),
    })
}
