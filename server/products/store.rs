//! The products' SQL.

use std::collections::BTreeMap;

use time::{Date, Month};
use uuid::Uuid;

use super::entries::{acid_text, group_text, parse_acid, parse_group};
use super::ingredients;
use super::{CapacityFigure, DilutionFigures, Form, Kind, Place, ProductSet, TimePoint};
use crate::darkroom::incompatibility::Group;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A product of the room, as it was last set.
pub type Product = ProductSet;

/// Every product, retired ones last.
///
/// # Errors
/// The database's.
pub async fn products(tx: &mut RoomTx) -> Result<Vec<Product>> {
    let mut products = described(tx).await?;
    let mut dilutions = dilutions(tx).await?;
    let mut ingredients = ingredients::by_product(tx).await?;
    for product in &mut products {
        product.dilutions = dilutions.remove(&product.id).unwrap_or_default();
        product.ingredients = ingredients.remove(&product.id).unwrap_or_default();
    }
    Ok(products)
}

/// Every product without its dilutions and ingredients, retired ones last.
async fn described(tx: &mut RoomTx) -> Result<Vec<Product>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            id, version, name, kind, groups, oxidises, depth_reference_tenths_mm, steward_only,
            hazard_codes, precaution_codes, data_sheet_on,
            form, kit_parts_thousandths, packet_makes_ul, packets_may_be_divided,
            stock_full_life_s, stock_part_life_s, longest_life_s,
            coldest_tenths_celsius, warmest_tenths_celsius, water_warmest_tenths_celsius,
            time_point_seconds, time_point_tenths_celsius,
            stop_acid, limit_ph_thousandths, bromide_limit_mg_per_litre, figures_basis,
            composition_is_known, retired_at is not null as "is_retired!"
        from product
        where room_id = $1
        order by retired_at is not null, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(Product {
                id: row.id,
                version: row.version,
                name: row.name,
                kind: kind(&row.kind)?,
                groups: groups(&row.groups)?,
                oxidises: row.oxidises,
                depth_reference_tenths_mm: row.depth_reference_tenths_mm,
                steward_only: row.steward_only,
                hazard_codes: row.hazard_codes,
                precaution_codes: row.precaution_codes,
                data_sheet_on: row.data_sheet_on.map(|date| date.to_string()),
                is_retired: row.is_retired,
                form: form(&row.form)?,
                kit_parts_thousandths: row.kit_parts_thousandths,
                packet_makes_ul: row.packet_makes_ul,
                packets_may_be_divided: row.packets_may_be_divided,
                stock_full_life_s: row.stock_full_life_s,
                stock_part_life_s: row.stock_part_life_s,
                longest_life_s: row.longest_life_s,
                coldest_tenths_celsius: row.coldest_tenths_celsius,
                warmest_tenths_celsius: row.warmest_tenths_celsius,
                water_warmest_tenths_celsius: row.water_warmest_tenths_celsius,
                time_points: points(&row.time_point_seconds, &row.time_point_tenths_celsius),
                stop_acid: row.stop_acid.as_deref().map(parse_acid).transpose()?,
                limit_ph_thousandths: row.limit_ph_thousandths,
                bromide_limit_mg_per_litre: row.bromide_limit_mg_per_litre,
                figures_basis: row.figures_basis,
                dilutions: Vec::new(),
                ingredients: Vec::new(),
                composition_is_known: row.composition_is_known,
            })
        })
        .collect()
}

fn kind(text: &str) -> Result<Kind> {
    Kind::parse(text).ok_or_else(|| Error::fault(format!("no such kind: {text}")))
}

fn form(text: &str) -> Result<Form> {
    Form::parse(text).ok_or_else(|| Error::fault(format!("no such form: {text}")))
}

fn points(seconds: &[i64], tenths_celsius: &[i32]) -> Vec<TimePoint> {
    let points = seconds.iter().zip(tenths_celsius);
    let points = points.map(|(seconds, tenths_celsius)| TimePoint {
        seconds: *seconds,
        tenths_celsius: *tenths_celsius,
    });
    points.collect()
}

/// One product.
///
/// # Errors
/// The database's.
pub async fn product(tx: &mut RoomTx, id: Uuid) -> Result<Option<Product>> {
    let all = products(tx).await?;
    Ok(all.into_iter().find(|product| product.id == id))
}

async fn dilutions(tx: &mut RoomTx) -> Result<BTreeMap<Uuid, Vec<DilutionFigures>>> {
    let room = tx.room();
    let mut capacities = capacities(tx).await?;
    let rows = sqlx::query!(
        r#"
        select
            id, product_id, parts_thousandths, tray_life_s, bottle_life_s, covered_life_s,
            part_bottle_life_s, life_basis, film_rolls_per_litre_thousandths,
            acid_mmol_per_litre, silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre, silver_limit_second_mg_per_litre, figures_basis
        from dilution
        where room_id = $1
        order by product_id, position, id
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let mut by_product: BTreeMap<Uuid, Vec<DilutionFigures>> = BTreeMap::new();
    for row in rows {
        let figures = DilutionFigures {
            id: row.id,
            parts_thousandths: row.parts_thousandths,
            tray_life_s: row.tray_life_s,
            bottle_life_s: row.bottle_life_s,
            covered_life_s: row.covered_life_s,
            part_bottle_life_s: row.part_bottle_life_s,
            life_basis: row.life_basis,
            film_rolls_per_litre_thousandths: row.film_rolls_per_litre_thousandths,
            acid_mmol_per_litre: row.acid_mmol_per_litre,
            silver_limit_single_mg_per_litre: row.silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre: row.silver_limit_first_mg_per_litre,
            silver_limit_second_mg_per_litre: row.silver_limit_second_mg_per_litre,
            figures_basis: row.figures_basis,
            capacities: capacities.remove(&row.id).unwrap_or_default(),
        };
        by_product.entry(row.product_id).or_default().push(figures);
    }
    Ok(by_product)
}

async fn capacities(tx: &mut RoomTx) -> Result<BTreeMap<Uuid, Vec<CapacityFigure>>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select c.dilution_id, c.paper_class_id, c.place, c.sheets_per_litre_thousandths, c.basis
        from capacity c
        join paper_class p on p.room_id = c.room_id and p.id = c.paper_class_id
        where c.room_id = $1
        order by
            c.dilution_id, array_position(array['single', 'first', 'second'], c.place),
            p.position, p.id
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let mut by_dilution: BTreeMap<Uuid, Vec<CapacityFigure>> = BTreeMap::new();
    for row in rows {
        by_dilution
            .entry(row.dilution_id)
            .or_default()
            .push(CapacityFigure {
                paper_class_id: row.paper_class_id,
                place: Place::parse(&row.place)
                    .ok_or_else(|| Error::fault(format!("no such place: {}", row.place)))?,
                sheets_per_litre_thousandths: row.sheets_per_litre_thousandths,
                basis: row.basis,
            });
    }
    Ok(by_dilution)
}

/// Reads a column of groups.
///
/// # Errors
/// A group the program does not know.
pub fn groups(texts: &[String]) -> Result<Vec<Group>> {
    texts.iter().map(|text| parse_group(text)).collect()
}

fn date(text: &str) -> Result<Date> {
    let wrong = || Error::fault(format!("no date: {text}"));
    let read: jiff::civil::Date = text.parse().map_err(|_| wrong())?;
    let number = |part: i8| u8::try_from(part).map_err(|_| wrong());
    let month = Month::try_from(number(read.month())?).map_err(|_| wrong())?;
    Date::from_calendar_date(read.year().into(), month, number(read.day())?).map_err(|_| wrong())
}

pub(super) async fn set_product(tx: &mut RoomTx, placed: &Placed<ProductSet>) -> Result<()> {
    upsert(tx, placed).await?;
    set_figures(tx, &placed.entry).await?;
    clear_figures(tx, placed.entry.id).await?;
    for (position, figures) in (1..).zip(&placed.entry.dilutions) {
        insert_dilution(tx, placed.entry.id, position, figures).await?;
        for figure in &figures.capacities {
            insert_capacity(tx, figures.id, figure).await?;
        }
    }
    ingredients::replace(tx, &placed.entry).await
}

async fn upsert(tx: &mut RoomTx, placed: &Placed<ProductSet>) -> Result<()> {
    let room = tx.room();
    let product = &placed.entry;
    let groups = product.groups.iter().map(|group| group_text(*group));
    let groups = groups.collect::<Result<Vec<String>>>()?;
    let data_sheet_on = product.data_sheet_on.as_deref().map(date).transpose()?;
    sqlx::query!(
        r#"
        insert into product (
            room_id, id, version, name, kind, groups, oxidises, depth_reference_tenths_mm,
            steward_only, hazard_codes, precaution_codes, data_sheet_on, retired_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13)
        on conflict (room_id, id) do update set
            version = excluded.version,
            name = excluded.name,
            kind = excluded.kind,
            groups = excluded.groups,
            oxidises = excluded.oxidises,
            depth_reference_tenths_mm = excluded.depth_reference_tenths_mm,
            steward_only = excluded.steward_only,
            hazard_codes = excluded.hazard_codes,
            precaution_codes = excluded.precaution_codes,
            data_sheet_on = excluded.data_sheet_on,
            retired_at = excluded.retired_at
        "#,
        room,
        product.id,
        product.version,
        product.name,
        product.kind.as_str(),
        &groups,
        product.oxidises,
        product.depth_reference_tenths_mm,
        product.steward_only,
        &product.hazard_codes,
        &product.precaution_codes,
        data_sheet_on,
        product.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// What its form and its kind add.
async fn set_figures(tx: &mut RoomTx, product: &ProductSet) -> Result<()> {
    let room = tx.room();
    let stop_acid = product.stop_acid.map(acid_text).transpose()?;
    let points = product.time_points.iter();
    let seconds: Vec<i64> = points.clone().map(|point| point.seconds).collect();
    let tenths_celsius: Vec<i32> = points.map(|point| point.tenths_celsius).collect();
    sqlx::query!(
        r#"
        update product
        set form = $3,
            kit_parts_thousandths = $4,
            packet_makes_ul = $5,
            packets_may_be_divided = $6,
            stock_full_life_s = $7,
            stock_part_life_s = $8,
            longest_life_s = $9,
            coldest_tenths_celsius = $10,
            warmest_tenths_celsius = $11,
            water_warmest_tenths_celsius = $12,
            time_point_seconds = $13,
            time_point_tenths_celsius = $14,
            stop_acid = $15,
            limit_ph_thousandths = $16,
            bromide_limit_mg_per_litre = $17,
            figures_basis = $18,
            composition_is_known = $19
        where room_id = $1 and id = $2
        "#,
        room,
        product.id,
        product.form.as_str(),
        &product.kit_parts_thousandths,
        product.packet_makes_ul,
        product.packets_may_be_divided,
        product.stock_full_life_s,
        product.stock_part_life_s,
        product.longest_life_s,
        product.coldest_tenths_celsius,
        product.warmest_tenths_celsius,
        product.water_warmest_tenths_celsius,
        &seconds,
        &tenths_celsius,
        stop_acid,
        product.limit_ph_thousandths,
        product.bromide_limit_mg_per_litre,
        product.figures_basis,
        product.composition_is_known
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// The figures are replaced as a whole; mixes carry their own.
async fn clear_figures(tx: &mut RoomTx, product: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        delete from capacity
        where room_id = $1
            and dilution_id in (select id from dilution where room_id = $1 and product_id = $2)
        "#,
        room,
        product
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        "delete from dilution where room_id = $1 and product_id = $2",
        room,
        product
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

async fn insert_dilution(
    tx: &mut RoomTx,
    product: Uuid,
    position: i32,
    figures: &DilutionFigures,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into dilution (
            room_id, id, product_id, parts_thousandths, tray_life_s, bottle_life_s, life_basis,
            position, covered_life_s, part_bottle_life_s, film_rolls_per_litre_thousandths,
            acid_mmol_per_litre, silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre, silver_limit_second_mg_per_litre, figures_basis
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16)
        "#,
        room,
        figures.id,
        product,
        figures.parts_thousandths,
        figures.tray_life_s,
        figures.bottle_life_s,
        figures.life_basis,
        position,
        figures.covered_life_s,
        figures.part_bottle_life_s,
        figures.film_rolls_per_litre_thousandths,
        figures.acid_mmol_per_litre,
        figures.silver_limit_single_mg_per_litre,
        figures.silver_limit_first_mg_per_litre,
        figures.silver_limit_second_mg_per_litre,
        figures.figures_basis
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

async fn insert_capacity(tx: &mut RoomTx, dilution: Uuid, figure: &CapacityFigure) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into capacity (
            room_id, dilution_id, paper_class_id, place, sheets_per_litre_thousandths, basis
        )
        values ($1, $2, $3, $4, $5, $6)
        "#,
        room,
        dilution,
        figure.paper_class_id,
        figure.place.as_str(),
        figure.sheets_per_litre_thousandths,
        figure.basis
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
