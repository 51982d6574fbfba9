//! The pages of stock solutions.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{NewStock, make_stock};
use super::views::{MakeStockPage, StockForm, StockPage, StockRow};
use super::{Stock, input, store};
use crate::app::App;
use crate::darkroom::kit::Packets;
use crate::error::{Error, Result};
use crate::identity::{self, Permit};
use crate::mixes::actions::{may_mix_product, may_pour};
use crate::mixes::mixing::step;
use crate::mixes::mixing::views::{Aside, Pour, Worksheet};
use crate::mixes::{cautions, input as volumes};
use crate::problem::{Problem, Problems};
use crate::products::{self, Product};
use crate::rights::{Mix, SeeProducts};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{self, mixing as words};
use crate::web::shell::Place;

const MAKE: &str = "/rooms/{room}/products/{product}/stock";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(MAKE, make_form)
        .post(MAKE, make_send)
        .get("/rooms/{room}/stock-solutions/{stock}", stock)
}

/// What the form to make some stands on.
struct Ground {
    settings: Settings,
    product: Product,
    now: OffsetDateTime,
}

impl Ground {
    async fn read(app: &App, permit: &Permit<Mix>, product: Uuid) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let product = products::product(tx, product).await?;
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        product: product.ok_or(Error::NotFound)?,
                        now,
                    })
                })
            })
            .await
    }
}

/// Why no stock solution can be made of a product by this reader.
fn barred(ground: &Ground, permit: &Permit<Mix>) -> Result<Option<Problem>> {
    if let Err(problem) = input::packet_makes(&ground.product) {
        return Ok(Some(problem));
    }
    match may_mix_product(&ground.product, permit.role()) {
        Ok(()) => Ok(None),
        Err(Error::Refused(problem)) => Ok(Some(problem)),
        Err(other) => Err(other),
    }
}

async fn make_form(
    State(app): State<App>,
    permit: Permit<Mix>,
    frame: Frame,
    Path((_, product)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    let one_packet = ground.product.packet_makes_ul.unwrap_or_default();
    let form = StockForm {
        key: new_key()?,
        wanted: ground.settings.numbers().decimal(one_packet, 6),
        when: late::NOW.to_owned(),
        ..StockForm::default()
    };
    page(&make_page(&permit, &frame, &ground, form, Ok(None))?)
}

async fn make_send(
    State(app): State<App>,
    permit: Permit<Mix>,
    frame: Frame,
    Path((_, product)): Path<(String, Uuid)>,
    Form(form): Form<StockForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    match make_as_typed(&app, &permit, &ground, &form).await {
        Ok(Outcome::Made(id)) => Ok(on_to(&app, &permit, &format!("/stock-solutions/{id}"))),
        Ok(Outcome::Reckoned(packets)) => page(&make_page(
            &permit,
            &frame,
            &ground,
            form,
            Ok(Some(packets)),
        )?),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&make_page(&permit, &frame, &ground, form, Err(&problems))?)
        }
    }
}

enum Outcome {
    Made(Uuid),
    Reckoned(Packets),
}

async fn make_as_typed(
    app: &App,
    permit: &Permit<Mix>,
    ground: &Ground,
    form: &StockForm,
) -> Result<Outcome> {
    let mut problems = Problems::default();
    let wanted = ground.settings.numbers().read_litres(&form.wanted);
    let wanted = wanted.map_err(Problem::Number).and_then(volumes::mixed);
    let wanted = problems.take("wanted", wanted);
    let zone = ground.settings.time_zone()?;
    let when = late::read(&zone, &form.when, &form.day, &form.time);
    let when = problems.take("time", when);
    let (Some(wanted), Some(happened_at_us)) = (wanted, when) else {
        return Err(Error::Invalid(problems));
    };
    let packets = input::packets_of(&ground.product, wanted)?;
    if form.step != "mix" {
        may_pour(app, permit, happened_at_us).await?;
        return Ok(Outcome::Reckoned(packets));
    }
    let new = NewStock {
        product_id: ground.product.id,
        packets_thousandths: packets.packets_thousandths,
        happened_at_us,
    };
    let done = make_stock(app, permit, read_key(&form.key)?, new).await?;
    Ok(Outcome::Made(done.id("stock_solution")?))
}

fn make_page(
    permit: &Permit<Mix>,
    frame: &Frame,
    ground: &Ground,
    form: StockForm,
    packets: Result<Option<Packets>, &Problems>,
) -> Result<MakeStockPage> {
    let (product, numbers) = (&ground.product, ground.settings.numbers());
    let zone = ground.settings.time_zone()?;
    let barred = barred(ground, permit)?;
    let problems = packets.err().cloned().unwrap_or_default();
    // Where there is no form, nothing stands beside a field.
    let problems = match &barred {
        Some(problem) if !problems.is_empty() => Problems::one("", problem.clone()),
        _ => problems,
    };
    let makes = numbers.volume(product.packet_makes_ul.unwrap_or_default());
    let shell = frame.shell_in(permit, Some(Place::Products));
    Ok(MakeStockPage {
        shell: lying_at(shell, &format!("/products/{}/stock", product.id)),
        product_id: product.id.to_string(),
        product: product.name.clone(),
        barred: barred.map(|problem| messages::problem(&problem, numbers)),
        problems: in_words(&problems, numbers),
        wanted_hint: words::packet_hint(&makes, product.packets_may_be_divided),
        days: late::days(&zone, ground.settings.late_note_minutes, ground.now),
        worksheet: packets.ok().flatten().map(|packets| sheet(ground, packets)),
        cautions: cautions(&product.hazard_codes),
        form,
    })
}

/// What is made up.
fn sheet(ground: &Ground, packets: Packets) -> Worksheet {
    let (product, numbers) = (&ground.product, ground.settings.numbers());
    let count = words::packets(packets.packets_thousandths, numbers);
    let total = numbers.volume(packets.volume.get());
    let makes = numbers.volume(product.packet_makes_ul.unwrap_or_default());
    let how = format!(
        "{} × {makes}",
        numbers.decimal(packets.packets_thousandths, 3)
    );
    let pours = vec![Pour {
        amount: count.clone(),
        what: words::POWDER_INTO_WATER.to_owned(),
        is_water: false,
    }];
    Worksheet {
        title: words::stock_of(&product.name),
        said: words::said(&format!("{count}, {total}")),
        pours,
        total: total.clone(),
        place: words::OF_STOCK.to_owned(),
        cylinder: None,
        steps: vec![step(words::STOCK, how, total)],
        asides: vec![Aside {
            heading: words::KEEPS.to_owned(),
            lines: vec![words::stock_keeps(
                product.stock_full_life_s,
                product.stock_part_life_s,
            )],
        }],
        takes: Vec::new(),
        keeps: String::new(),
        basis: String::new(),
        verb: words::IT_IS_MADE.to_owned(),
    }
}

/// A stock solution and what is around it.
struct Found {
    settings: Settings,
    stock: Stock,
    product: Product,
    made_by: Option<String>,
}

async fn found(app: &App, permit: &Permit<SeeProducts>, id: Uuid) -> Result<Found> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let stock = store::stock(tx, id).await?.ok_or(Error::NotFound)?;
                let product = products::product(tx, stock.product_id).await?;
                let made_by = match stock.made_by {
                    Some(person) => identity::person_name(tx, person).await?,
                    None => None,
                };
                Ok(Found {
                    settings: rooms::settings(tx).await?,
                    product: product.ok_or(Error::NotFound)?,
                    made_by,
                    stock,
                })
            })
        })
        .await
}

async fn stock(
    State(app): State<App>,
    permit: Permit<SeeProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let found = found(&app, &permit, id).await?;
    page(&stock_page(&app, &permit, &frame, &found)?)
}

fn stock_page(
    app: &App,
    permit: &Permit<SeeProducts>,
    frame: &Frame,
    found: &Found,
) -> Result<StockPage> {
    let (stock, numbers) = (&found.stock, found.settings.numbers());
    let (zone, now) = (found.settings.time_zone()?, app.clock().now());
    Ok(StockPage {
        shell: frame.shell_in(permit, Some(Place::Products)),
        seq: stock.made_seq,
        product_id: stock.product_id.to_string(),
        product: stock.product_name.clone(),
        packets: words::packets(stock.packets_thousandths, numbers),
        volume: numbers.volume(stock.volume_ul),
        made: zone.minute_in_full(stock.made_at),
        made_by: found.made_by.clone(),
        left: numbers.volume(stock.left_ul()),
        opened: stock.opened_at.map(|at| zone.minute_in_full(at)),
        use_by: stock.use_by().map(|at| zone.minute_in_full(at)),
        is_past: stock.is_past(now),
        cautions: cautions(&found.product.hazard_codes),
    })
}

/// The stock solutions of a product, for its page.
///
/// # Errors
/// A fault: a zone that is none.
pub(crate) fn rows(
    stocks: &[Stock],
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<Vec<StockRow>> {
    let (zone, numbers) = (settings.time_zone()?, settings.numbers());
    let rows = stocks.iter().map(|stock| {
        let left = numbers.volume(stock.left_ul());
        let until = stock.use_by().map(|until| zone.day(until).words);
        StockRow {
            id: stock.id.to_string(),
            made: zone.day(stock.made_at),
            left: match until {
                Some(until) if stock.is_past(now) => words::stock_past(&left, &until),
                until => words::stock_left(&left, until.as_deref()),
            },
        }
    });
    Ok(rows.collect())
}
