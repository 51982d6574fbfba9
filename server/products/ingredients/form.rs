//! The list of ingredients as typed: read, and shown again.

use super::actions::NewIngredients;
use super::input;
use super::views::{IngredientCells, IngredientsForm};
use crate::input::name;
use crate::problem::{Problem, Problems};
use crate::products::form::read_codes;
use crate::products::input::hazard_codes;
use crate::products::spans::if_any;
use crate::products::{Ingredient, Product};
use crate::web::fields::{self, Cell};
use crate::web::numbers::Numbers;

/// Blank rows that a fresh form has at its end, and that more rows add.
const BLANK_ROWS: usize = 5;

/// The list as it is, with room for more.
pub(super) fn of_product(product: &Product, key: String, numbers: Numbers) -> IngredientsForm {
    let share = |share: Option<i32>| {
        share.map_or_else(String::new, |share| numbers.decimal(share.into(), 4))
    };
    let all = product.ingredients.iter();
    let text = |of: fn(&Ingredient) -> String| -> Vec<String> { all.clone().map(of).collect() };
    IngredientsForm {
        key,
        step: String::new(),
        name: text(|each| each.name.clone()),
        cas: text(|each| each.cas.clone().unwrap_or_default()),
        least: all
            .clone()
            .map(|each| share(each.least_millionths))
            .collect(),
        most: all
            .clone()
            .map(|each| share(each.most_millionths))
            .collect(),
        hazard_codes: text(|each| each.hazard_codes.join(", ")),
        is_complete: match product.composition_is_known {
            true => "yes".to_owned(),
            false => String::new(),
        },
    }
}

fn at(list: &[String], row: usize) -> &str {
    list.get(row).map_or("", |value| value.trim())
}

fn id(row: usize, field: &str) -> String {
    format!("row-{}-{field}", row + 1)
}

impl IngredientsForm {
    fn rows(&self) -> usize {
        self.name.len().max(self.cas.len())
    }

    /// Whether nothing is filled in: then there is no such ingredient.
    fn is_blank(&self, row: usize) -> bool {
        let said = [
            &self.name,
            &self.cas,
            &self.least,
            &self.most,
            &self.hazard_codes,
        ];
        said.iter().all(|list| at(list, row).is_empty())
    }

    /// Reads every row that is filled in.
    pub(super) fn read(
        &self,
        product: &Product,
        numbers: Numbers,
    ) -> Result<NewIngredients, Problems> {
        let mut problems = Problems::default();
        let filled = (0..self.rows()).filter(|row| !self.is_blank(*row));
        let ingredients: Vec<Ingredient> = filled
            .map(|row| self.read_row(row, numbers, &mut problems))
            .collect();
        let new = NewIngredients {
            product_id: product.id,
            ingredients,
            composition_is_known: self.is_complete == "yes",
        };
        match problems.is_empty() {
            true => Ok(new),
            false => Err(problems),
        }
    }

    /// What could not be read is empty, and has its problem.
    fn read_row(&self, row: usize, numbers: Numbers, problems: &mut Problems) -> Ingredient {
        let share = |typed: &str| {
            if_any(typed, |typed| {
                let read = numbers.read_percent_coarsely(typed);
                read.map_err(Problem::Number).and_then(input::share)
            })
        };
        let codes = read_codes(at(&self.hazard_codes, row), |codes| hazard_codes(codes));
        let name = problems.take(id(row, "name"), name(at(&self.name, row)));
        let cas = problems.take(id(row, "cas"), input::cas(at(&self.cas, row)));
        let least = problems.take(id(row, "least"), share(at(&self.least, row)));
        let most = problems.take(id(row, "most"), share(at(&self.most, row)));
        let codes = problems.take(id(row, "codes"), codes);
        let (least, most) = (least.flatten(), most.flatten());
        problems.take(id(row, "most"), input::range(least, most));
        Ingredient {
            name: name.unwrap_or_default(),
            cas: cas.flatten(),
            least_millionths: least,
            most_millionths: most,
            hazard_codes: codes.unwrap_or_default(),
        }
    }

    /// The rows as typed, with blank ones at the end.
    pub(super) fn cells(&self, problems: &fields::Problems) -> Vec<IngredientCells> {
        let blank = if self.step == "keep" { 0 } else { BLANK_ROWS };
        (0..(self.rows() + blank).min(input::MOST))
            .map(|row| {
                let cell = |field: &str, list: &[String]| {
                    Cell::new(id(row, field), at(list, row), problems)
                };
                IngredientCells {
                    number: row + 1,
                    name: cell("name", &self.name),
                    cas: cell("cas", &self.cas),
                    least: cell("least", &self.least),
                    most: cell("most", &self.most),
                    hazard_codes: cell("codes", &self.hazard_codes),
                }
            })
            .collect()
    }
}
