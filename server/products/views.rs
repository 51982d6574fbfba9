//! Products with their dilutions, lives, capacities and safety data.

use askama::Template;
use serde::Deserialize;

use super::Place;
use super::ingredients::views::IngredientRow;
use crate::mixes::stock::views::StockRow;
use crate::web::dates::Moment;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A product of the list.
#[derive(Debug, Clone)]
pub struct ProductRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// `Developer`.
    pub kind: String,
    /// `1+9, 1+14`.
    pub dilutions: String,
    /// Is no safety data on file? Then it cannot be mixed.
    pub lacks_safety_data: bool,
}

/// The products.
#[derive(Debug, Clone, Template)]
#[template(path = "products/products.html")]
pub struct ProductsPage {
    /// The frame.
    pub shell: Shell,
    /// The products.
    pub products: Vec<ProductRow>,
    /// What is retired; each posts to its `/restore`.
    pub retired: Vec<RetiredRow>,
    /// Idempotency key of what brings one back.
    pub key: String,
    /// May this reader add one?
    pub may_change: bool,
}

/// A figure as shown.
#[derive(Debug, Clone)]
pub struct FigureShown {
    /// `A litre, RC`.
    pub what: String,
    /// `100 sheets`.
    pub figure: String,
    /// `common practice, no source`.
    pub basis: String,
}

/// Figures that belong together.
#[derive(Debug, Clone)]
pub struct FigureGroup {
    /// `The first of two baths`; none where all of them are one group.
    pub title: Option<String>,
    /// The figures.
    pub figures: Vec<FigureShown>,
}

/// A dilution as shown.
#[derive(Debug, Clone)]
pub struct DilutionShown {
    /// Its id, for `/products/{product}/dilutions/{id}`.
    pub id: String,
    /// `1+9`.
    pub name: String,
    /// Paper, film, lives and limits, each with where it comes from.
    pub groups: Vec<FigureGroup>,
}

/// A code of the data sheet with its text.
#[derive(Debug, Clone)]
pub struct CodeShown {
    /// `H317`.
    pub code: String,
    /// Its text.
    pub text: String,
}

/// One product.
#[derive(Debug, Clone, Template)]
#[template(path = "products/product.html")]
pub struct ProductPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// `Developer`.
    pub kind: String,
    /// Is it offered no more?
    pub is_retired: bool,
    /// Its version; each change makes a new one.
    pub version: i32,
    /// What it is before it is mixed: `One liquid concentrate.`
    pub made_of: String,
    /// Its form, temperatures, times and limits.
    pub figures: Vec<FigureShown>,
    /// Its dilutions.
    pub dilutions: Vec<DilutionShown>,
    /// What it asks of whoever handles it, at any content.
    pub concerns: String,
    /// What section 3 of its sheet lists.
    pub ingredients: Vec<IngredientRow>,
    /// Did a steward say that this is all of it?
    pub composition_is_known: bool,
    /// Hazard statements as supplied.
    pub hazards: Vec<CodeShown>,
    /// Precautionary statements as supplied.
    pub precautions: Vec<CodeShown>,
    /// Chemical groups that decide what it may meet, in words.
    pub groups: Vec<String>,
    /// The date of its safety data sheet.
    pub data_sheet_on: Option<Moment>,
    /// May only a steward mix it?
    pub is_steward_only: bool,
    /// Does it oxidise, and at which depth was its tray life given? `at 8 mm depth`.
    pub oxidises: Option<String>,
    /// May this reader change it?
    pub may_change: bool,
    /// Is it a powder, made up into stock solution first?
    pub is_powder: bool,
    /// May this reader make some up?
    pub may_make: bool,
    /// What was made of it and is left.
    pub stocks: Vec<StockRow>,
    /// What to tell whom before it is opened, one sentence a topic; for stewards only.
    pub supplements: Vec<String>,
}

/// A product as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ProductForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// `developer`, `stop_bath`, `fixer`, `wash_aid`, `toner` or `holding_water`.
    pub kind: String,
    /// `liquid`, `kit`, `powder` or `ready_to_use`.
    pub form: String,
    /// A kit's parts: `1:1:0.5`.
    pub kit_parts: String,
    /// Litres of stock solution that a packet makes.
    pub packet_makes: String,
    /// `yes` where a part of a packet may be taken.
    pub packets_may_be_divided: String,
    /// How long stock solution keeps in a full bottle, in hours.
    pub stock_full_life: String,
    /// The same from the first draw on.
    pub stock_part_life: String,
    /// The age that no top-up moves, in hours.
    pub longest_life: String,
    /// The coldest it works at, in °C.
    pub coldest: String,
    /// The warmest it works at, in °C.
    pub warmest: String,
    /// The warmest water it may be mixed with, in °C.
    pub water_warmest: String,
    /// One point of its sheet: the time, in seconds.
    pub time_1: String,
    /// At which temperature, in °C.
    pub at_1: String,
    /// The other point: the time, in seconds.
    pub time_2: String,
    /// At which temperature, in °C.
    pub at_2: String,
    /// `acetic`, `citric` or empty.
    pub stop_acid: String,
    /// The pH at which a stop bath is used up.
    pub limit_ph: String,
    /// The bromide at which a developer is used up, in mg/L.
    pub bromide_limit: String,
    /// Where its temperatures, times and limits come from.
    pub figures_basis: String,
    /// The chemical groups ticked, by the names the API has for them.
    pub groups: Vec<String>,
    /// `yes` where it oxidises in an open tray.
    pub oxidises: String,
    /// The depth its tray life is given for, in millimetres.
    pub depth_reference: String,
    /// `yes` where only a steward may mix it.
    pub steward_only: String,
    /// H codes, as supplied, any separator.
    pub hazard_codes: String,
    /// P codes, as supplied, any separator.
    pub precaution_codes: String,
    /// The data sheet's date, `2026-03-01`.
    pub data_sheet_on: String,
}

/// A new product (posts to `/products`) or a change (posts to `/products/{id}`;
/// `/products/{id}/retire` asks first).
#[derive(Debug, Clone, Template)]
#[template(path = "products/edit.html")]
pub struct ProductFormPage {
    /// The frame.
    pub shell: Shell,
    /// Its id; none for a new one.
    pub id: Option<String>,
    /// Its name as it is on file; empty for a new one.
    pub name: String,
    /// As typed.
    pub form: ProductForm,
    /// Every chemical group.
    pub groups: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
}

impl ProductFormPage {
    /// Whether a section is opened: it is used, or something in it is wrong.
    #[must_use]
    pub fn opens(&self, is_used: bool, fields: &[&str]) -> bool {
        is_used || fields.iter().any(|field| self.problems.has(field))
    }

    /// Whether the temperatures' section has anything in it.
    #[must_use]
    pub fn has_temperatures(&self) -> bool {
        let form = &self.form;
        let typed = [
            &form.coldest,
            &form.warmest,
            &form.water_warmest,
            &form.time_1,
            &form.time_2,
        ];
        typed.iter().any(|typed| !typed.is_empty())
    }
}

/// A dilution as typed; `place`, `capacity` and `basis` follow the order of `paper_class`.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct DilutionForm {
    /// Idempotency key.
    pub key: String,
    /// The N of 1+N.
    pub parts: String,
    /// Hours in the open tray, or any unit of time behind the number.
    pub tray_life: String,
    /// The same in a covered tray; empty: as in an open one.
    pub covered_life: String,
    /// The same in a stoppered bottle.
    pub bottle_life: String,
    /// The same in a part-filled bottle; empty: as in a full one.
    pub part_bottle_life: String,
    /// Where the lives come from.
    pub life_basis: String,
    /// Rolls of film per litre; empty: paper only.
    pub film_rolls: String,
    /// Acid in mmol/L; empty: capacity only.
    pub acid: String,
    /// Silver in mg/L at which a single bath is used up.
    pub silver_single: String,
    /// The same for the first of two.
    pub silver_first: String,
    /// The same for the second of two.
    pub silver_second: String,
    /// Where film, acid and silver come from.
    pub figures_basis: String,
    /// The paper classes' ids.
    pub paper_class: Vec<String>,
    /// `single`, `first` or `second`, one a class and place.
    pub place: Vec<String>,
    /// Sheets of 8×10 in per litre, one a class and place; empty: not for this class.
    pub capacity: Vec<String>,
    /// Where each comes from.
    pub basis: Vec<String>,
}

/// The paper classes of one place in the dilution's form.
#[derive(Debug, Clone)]
pub struct PlaceFields {
    /// `The first of two baths`.
    pub title: String,
    /// Is it opened?
    pub is_open: bool,
    /// Does it stand by itself, without a title?
    pub is_plain: bool,
    /// Its classes.
    pub fields: Vec<CapacityField>,
}

/// One paper class in the dilution's form.
#[derive(Debug, Clone)]
pub struct CapacityField {
    /// Its place among all of them.
    pub index: usize,
    /// Where the bath stands.
    pub place: Place,
    /// The paper class's id.
    pub paper_class: String,
    /// Its name.
    pub name: String,
    /// Sheets of 8×10 in per litre as typed.
    pub capacity: String,
    /// Where it comes from, as typed.
    pub basis: String,
}

/// A new dilution (posts to `/products/{product}/dilutions`) or a change (posts to
/// `/products/{product}/dilutions/{id}`). Problems of the nth class are of `capacity-n`.
#[derive(Debug, Clone, Template)]
#[template(path = "products/dilution.html")]
pub struct DilutionFormPage {
    /// The frame.
    pub shell: Shell,
    /// The product's id.
    pub product_id: String,
    /// The product's name.
    pub product: String,
    /// The dilution's id; none for a new one. `…/{id}/remove` asks first.
    pub id: Option<String>,
    /// `1+9`, as it is on file; empty for a new one.
    pub name: String,
    /// As typed.
    pub form: DilutionForm,
    /// What the water is added to: `concentrate`.
    pub parts_of: String,
    /// Is it used as it is?
    pub is_ready_to_use: bool,
    /// Is it a fixer, with film and silver?
    pub is_fixer: bool,
    /// The acid of a stop bath: `acetic acid`.
    pub acid: Option<String>,
    /// One a place, with what was typed for each paper class.
    pub places: Vec<PlaceFields>,
    /// What to mend.
    pub problems: Problems,
}

impl DilutionFormPage {
    /// Whether film or silver was sent, where they do not belong.
    #[must_use]
    pub fn has_film_or_silver(&self) -> bool {
        let form = &self.form;
        let typed = [
            &form.film_rolls,
            &form.silver_single,
            &form.silver_first,
            &form.silver_second,
        ];
        typed.iter().any(|typed| !typed.is_empty())
    }

    /// Whether something of this place is wrong.
    #[must_use]
    pub fn is_wrong(&self, place: &PlaceFields) -> bool {
        place.fields.iter().any(|field| {
            let wrong = |stem| self.problems.nth(stem, &field.index).is_some();
            wrong("capacity") || wrong("basis")
        })
    }
}
