//! The products of the demo: the starter's, with the safety data that a steward
//! would copy from the sheets of what the room bought, and three of the room's own.

use time::Duration;
use uuid::Uuid;

use super::papers::{Papers, is_fibre};
use super::people::OTTILIE;
use super::stage::Stage;
use super::{INVENTED, missing, sheets};
use crate::darkroom::incompatibility::Group;
use crate::error::Result;
use crate::products::actions::{NewDilution, NewProduct, Retiring, retire_product, set_product};
use crate::products::ingredients::actions::set_ingredients;
use crate::products::{self, CapacityFigure, Form, Kind, Place, Product, TimePoint};
use crate::web::dates::Zone;

const HOUR_S: i64 = 3_600;
const DAY_S: i64 = 24 * HOUR_S;
const LITRE_UL: i64 = 1_000_000;

const POWDER: &str = "Larchfold powder developer";
const KIT: &str = "Larchfold two-part developer";
const TRIED: &str = "Larchfold odourless stop bath";
const CITRIC: &str = "Citric stop bath";

/// What stands on the shelf: the dilutions that people mix.
#[derive(Clone, Debug)]
pub(super) struct Shelf {
    pub(super) developer: Uuid,
    pub(super) thin_developer: Uuid,
    pub(super) powder_developer: Uuid,
    /// The product that stock solution is made of.
    pub(super) powder: Uuid,
    pub(super) two_part_developer: Uuid,
    pub(super) acetic: Uuid,
    pub(super) citric: Uuid,
    pub(super) fixer: Uuid,
    pub(super) holding_water: Uuid,
    pub(super) wash_aid: Uuid,
    pub(super) toner: Uuid,
}

/// The steward enters them.
pub(super) async fn enter(stage: &mut Stage, papers: &Papers) -> Result<Shelf> {
    let zone = Zone::named(super::calendar::ZONE).map_err(crate::error::Error::fault)?;
    let sheet_on = zone.date_value(stage.now() - Duration::days(40));
    let mut wanted: Vec<NewProduct> = found(stage).await?.iter().map(NewProduct::like).collect();
    for new in &mut wanted {
        copy_figures(papers, new);
    }
    wanted.extend([powder(papers), two_part(papers), tried(papers)]);
    for mut new in wanted {
        (new.hazard_codes, new.precaution_codes) = codes(&new);
        new.data_sheet_on = Some(sheet_on.clone());
        stage.act(OTTILIE, set_product, new).await?;
        stage.passes(Duration::minutes(3));
    }
    let products = found(stage).await?;
    for product in &products {
        if let Some(new) = sheets::of(product) {
            stage.act(OTTILIE, set_ingredients, new).await?;
            stage.passes(Duration::minutes(2));
        }
    }
    shelf(&products)
}

async fn found(stage: &Stage) -> Result<Vec<Product>> {
    stage.reads(|tx| Box::pin(products::products(tx))).await
}

fn shelf(products: &[Product]) -> Result<Shelf> {
    let named = |name: &str| {
        products
            .iter()
            .find(|product| product.name.starts_with(name))
    };
    let dilution = |name: &str, parts: i64| {
        let mut dilutions = named(name).into_iter().flat_map(|found| &found.dilutions);
        let found = dilutions.find(|each| each.parts_thousandths == parts * 1_000);
        found.map(|each| each.id).ok_or_else(|| missing("dilution"))
    };
    Ok(Shelf {
        developer: dilution("Neutral", 9)?,
        thin_developer: dilution("Neutral", 14)?,
        powder_developer: dilution(POWDER, 2)?,
        powder: named(POWDER).ok_or_else(|| missing("product"))?.id,
        two_part_developer: dilution(KIT, 4)?,
        acetic: dilution("Acetic", 19)?,
        citric: dilution("Citric", 19)?,
        fixer: dilution("Ammonium", 4)?,
        holding_water: dilution("Holding", 0)?,
        wash_aid: dilution("Wash aid", 9)?,
        toner: dilution("Selenium", 19)?,
    })
}

/// H and P codes by what a product is, as supplied.
fn codes(product: &NewProduct) -> (Vec<String>, Vec<String>) {
    let (hazards, precautions) = match product.kind {
        Kind::Developer => (
            "H302 H317 H318 H341 H351 H410",
            "P280 P305+P351+P338 P302+P352 P308+P313",
        ),
        Kind::StopBath => ("H314", "P280 P303+P361+P353 P305+P351+P338 P310"),
        Kind::Fixer => ("H319", "P280 P305+P351+P338"),
        Kind::WashAid => ("H319", "P264 P305+P351+P338"),
        Kind::Toner => ("H302 H332 H373", "P260 P280 P304+P340 P301+P330+P331"),
        Kind::HoldingWater => ("", "P280"),
    };
    let split = |text: &str| text.split_whitespace().map(str::to_owned).collect();
    (split(hazards), split(precautions))
}

/// Figures that the starter leaves open.
fn copy_figures(papers: &Papers, new: &mut NewProduct) {
    let places: &[Place] = match new.kind {
        Kind::Fixer => &Place::ALL,
        _ => &[Place::Single],
    };
    if new.kind == Kind::Developer {
        new.time_points = two_points();
        new.figures_basis = INVENTED.to_owned();
    }
    for dilution in &mut new.dilutions {
        for place in places {
            fill(papers, dilution, *place);
        }
        if new.kind == Kind::Fixer {
            dilution.covered_life_s = Some(6 * DAY_S);
            dilution.film_rolls_per_litre_thousandths = Some(20_000);
            dilution.figures_basis = INVENTED.to_owned();
        }
    }
}

/// 90 s at 20 °C, 66 s at 24 °C.
fn two_points() -> Vec<TimePoint> {
    [(90, 200), (66, 240)]
        .map(|(seconds, tenths_celsius)| TimePoint {
            seconds,
            tenths_celsius,
        })
        .to_vec()
}

/// Gives each class that has no figure the one of its like.
fn fill(papers: &Papers, dilution: &mut NewDilution, place: Place) {
    let here = dilution
        .capacities
        .iter()
        .filter(|figure| figure.place == place);
    let of = |class: usize| {
        let class = papers.classes.get(class)?.id;
        let mut here = here.clone();
        let figure = here.find(|figure| figure.paper_class_id == class)?;
        Some(figure.sheets_per_litre_thousandths)
    };
    let (coated, fibre) = (of(0), of(1));
    let missing = papers.classes.iter().filter(|class| {
        let mut here = here.clone();
        here.all(|figure| figure.paper_class_id != class.id)
    });
    let more: Vec<CapacityFigure> = missing
        .filter_map(|class| {
            let figure = if is_fibre(class) { fibre } else { coated };
            Some(capacity(class.id, place, figure?))
        })
        .collect();
    dilution.capacities.extend(more);
}

fn capacity(paper_class_id: Uuid, place: Place, thousandths: i64) -> CapacityFigure {
    CapacityFigure {
        paper_class_id,
        place,
        sheets_per_litre_thousandths: thousandths,
        basis: INVENTED.to_owned(),
    }
}

/// A dilution of the room's own: sheets a litre on RC and on FB.
fn dilution(papers: &Papers, parts: i64, lives_s: (i64, i64), sheets: (i64, i64)) -> NewDilution {
    let classes = papers.classes.iter();
    NewDilution {
        parts_thousandths: parts * 1_000,
        tray_life_s: lives_s.0,
        bottle_life_s: lives_s.1,
        life_basis: INVENTED.to_owned(),
        capacities: classes
            .map(|class| {
                let sheets = if is_fibre(class) { sheets.1 } else { sheets.0 };
                capacity(class.id, Place::Single, sheets * 1_000)
            })
            .collect(),
        ..NewDilution::default()
    }
}

fn own_developer(name: &str, form: Form) -> NewProduct {
    NewProduct {
        form,
        groups: vec![
            Group::Developer,
            Group::Alkali,
            Group::Sulfite,
            Group::Organic,
        ],
        oxidises: true,
        figures_basis: INVENTED.to_owned(),
        time_points: two_points(),
        ..NewProduct::named(name.to_owned(), Kind::Developer)
    }
}

/// For fibre-base paper: does not keep long in an open tray.
fn powder(papers: &Papers) -> NewProduct {
    NewProduct {
        packet_makes_ul: Some(5 * LITRE_UL),
        stock_full_life_s: Some(180 * DAY_S),
        stock_part_life_s: Some(60 * DAY_S),
        dilutions: vec![dilution(papers, 2, (4 * HOUR_S, DAY_S), (90, 45))],
        ..own_developer(POWDER, Form::Powder)
    }
}

fn two_part(papers: &Papers) -> NewProduct {
    NewProduct {
        kit_parts_thousandths: vec![1_000, 1_000],
        dilutions: vec![dilution(papers, 4, (6 * HOUR_S, DAY_S), (80, 40))],
        ..own_developer(KIT, Form::Kit)
    }
}

/// Tried once and given up.
fn tried(papers: &Papers) -> NewProduct {
    NewProduct {
        groups: vec![Group::Acid, Group::StopBath],
        dilutions: vec![dilution(papers, 15, (DAY_S, 14 * DAY_S), (50, 25))],
        ..NewProduct::named(TRIED.to_owned(), Kind::StopBath)
    }
}

/// The room gives up two stop baths.
pub(super) async fn retire(stage: &mut Stage) -> Result<()> {
    for product in found(stage).await? {
        if [TRIED, CITRIC].contains(&product.name.as_str()) {
            let retiring = Retiring {
                product_id: product.id,
                is_retired: true,
            };
            stage.act(OTTILIE, retire_product, retiring).await?;
        }
    }
    Ok(())
}
