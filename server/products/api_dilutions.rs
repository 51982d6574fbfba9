//! Dilutions as JSON: parts of their products.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::NewDilution;
use super::{CapacityFigure, DilutionFigures, Place, input};
use crate::input::{needed_note, note};
use crate::problem::{Problem, Problems};

/// The figures of one dilution.
#[derive(Debug, Serialize, ToSchema)]
pub struct DilutionOut {
    /// Which.
    pub id: Uuid,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    pub bottle_life_s: i64,
    /// How long it keeps in a covered tray, in seconds; null is as in an open one.
    pub covered_life_s: Option<i64>,
    /// How long it keeps in a part-filled bottle, in seconds; null is as in a full one.
    pub part_bottle_life_s: Option<i64>,
    /// Where the lives come from.
    pub life_basis: String,
    /// How many rolls of film a litre of a fixer takes, in thousandths; null is paper only.
    pub film_rolls_per_litre_thousandths: Option<i64>,
    /// The acid of a fresh stop bath, in millimoles a litre; null counts by capacity only.
    pub acid_mmol_per_litre: Option<i64>,
    /// The silver at which a single fixer is used up; null where nobody set one.
    pub silver_limit_single_mg_per_litre: Option<i64>,
    /// The same for the first of two.
    pub silver_limit_first_mg_per_litre: Option<i64>,
    /// The same for the second of two.
    pub silver_limit_second_mg_per_litre: Option<i64>,
    /// Where film, acid and silver come from; empty where there is none.
    pub figures_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityOut>,
}

/// How much of one paper class a litre takes.
#[derive(Debug, Serialize, ToSchema)]
pub struct CapacityOut {
    /// The class.
    pub paper_class_id: Uuid,
    /// Where the bath stands.
    pub place: Place,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    pub basis: String,
}

impl From<DilutionFigures> for DilutionOut {
    fn from(figures: DilutionFigures) -> Self {
        Self {
            id: figures.id,
            parts_thousandths: figures.parts_thousandths,
            tray_life_s: figures.tray_life_s,
            bottle_life_s: figures.bottle_life_s,
            covered_life_s: figures.covered_life_s,
            part_bottle_life_s: figures.part_bottle_life_s,
            life_basis: figures.life_basis,
            film_rolls_per_litre_thousandths: figures.film_rolls_per_litre_thousandths,
            acid_mmol_per_litre: figures.acid_mmol_per_litre,
            silver_limit_single_mg_per_litre: figures.silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre: figures.silver_limit_first_mg_per_litre,
            silver_limit_second_mg_per_litre: figures.silver_limit_second_mg_per_litre,
            figures_basis: figures.figures_basis,
            capacities: figures.capacities.into_iter().map(Into::into).collect(),
        }
    }
}

impl From<CapacityFigure> for CapacityOut {
    fn from(figure: CapacityFigure) -> Self {
        Self {
            paper_class_id: figure.paper_class_id,
            place: figure.place,
            sheets_per_litre_thousandths: figure.sheets_per_litre_thousandths,
            basis: figure.basis,
        }
    }
}

/// A dilution to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DilutionIn {
    /// N of 1+N, in thousandths.
    #[schema(minimum = 0, maximum = 1_000_000)]
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub bottle_life_s: i64,
    /// How long it keeps in a covered tray, in seconds; null is as in an open one.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub covered_life_s: Option<i64>,
    /// How long it keeps in a part-filled bottle, in seconds; null is as in a full one.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub part_bottle_life_s: Option<i64>,
    /// Where the lives come from.
    #[schema(max_length = 200)]
    pub life_basis: String,
    /// How many rolls of film a litre of a fixer takes, in thousandths; null is paper only.
    #[schema(minimum = 100, maximum = 1_000_000)]
    pub film_rolls_per_litre_thousandths: Option<i64>,
    /// The acid of a fresh stop bath, in millimoles a litre; null counts by capacity only.
    #[schema(minimum = 1, maximum = 5_000)]
    pub acid_mmol_per_litre: Option<i64>,
    /// The silver at which a single fixer is used up.
    #[schema(minimum = 1, maximum = 20_000)]
    pub silver_limit_single_mg_per_litre: Option<i64>,
    /// The same for the first of two.
    #[schema(minimum = 1, maximum = 20_000)]
    pub silver_limit_first_mg_per_litre: Option<i64>,
    /// The same for the second of two.
    #[schema(minimum = 1, maximum = 20_000)]
    pub silver_limit_second_mg_per_litre: Option<i64>,
    /// Where film, acid and silver come from.
    #[serde(default)]
    #[schema(max_length = 200)]
    pub figures_basis: String,
    /// How much paper a litre takes.
    #[serde(default)]
    pub capacities: Vec<CapacityIn>,
}

/// How much of one paper class a litre takes.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CapacityIn {
    /// The class.
    pub paper_class_id: Uuid,
    /// Where the bath stands; all but fixers stand by themselves.
    #[serde(default)]
    pub place: Place,
    /// 8×10 in sheets a litre, in thousandths.
    #[schema(minimum = 1_000, maximum = 10_000_000)]
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    #[schema(max_length = 200)]
    pub basis: String,
}

pub(super) fn dilutions(all: Vec<DilutionIn>, problems: &mut Problems) -> Vec<NewDilution> {
    problems.take("dilutions", input::dilution_count(all.len()));
    let mut read: Vec<NewDilution> = Vec::new();
    for (index, dilution) in all.into_iter().enumerate() {
        let at = format!("dilutions[{index}]");
        let new = dilution.read(&at, problems);
        if read
            .iter()
            .any(|each| each.parts_thousandths == new.parts_thousandths)
        {
            problems.add(format!("{at}.parts_thousandths"), Problem::Twice);
        }
        read.push(new);
    }
    read
}

impl DilutionIn {
    /// The figures; where one is wrong, the problem says so and none is used.
    fn read(self, at: &str, problems: &mut Problems) -> NewDilution {
        let mut take = |field: &str, read| {
            problems
                .take(format!("{at}.{field}"), read)
                .unwrap_or_default()
        };
        let parts_thousandths = take("parts_thousandths", input::parts(self.parts_thousandths));
        let tray_life_s = take("tray_life_s", input::life(self.tray_life_s));
        let bottle_life_s = take("bottle_life_s", input::life(self.bottle_life_s));
        let basis = needed_note(&self.life_basis);
        let life_basis = problems.take(format!("{at}.life_basis"), basis);
        let basis = note(&self.figures_basis);
        let figures_basis = problems.take(format!("{at}.figures_basis"), basis);
        NewDilution {
            parts_thousandths,
            tray_life_s,
            bottle_life_s,
            life_basis: life_basis.unwrap_or_default(),
            covered_life_s: self.covered_life_s,
            part_bottle_life_s: self.part_bottle_life_s,
            film_rolls_per_litre_thousandths: self.film_rolls_per_litre_thousandths,
            acid_mmol_per_litre: self.acid_mmol_per_litre,
            silver_limit_single_mg_per_litre: self.silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre: self.silver_limit_first_mg_per_litre,
            silver_limit_second_mg_per_litre: self.silver_limit_second_mg_per_litre,
            figures_basis: figures_basis.unwrap_or_default(),
            capacities: capacities(self.capacities, at, problems),
        }
    }
}

fn capacities(all: Vec<CapacityIn>, at: &str, problems: &mut Problems) -> Vec<CapacityFigure> {
    let mut read: Vec<CapacityFigure> = Vec::new();
    for (index, figure) in all.into_iter().enumerate() {
        let at = format!("{at}.capacities[{index}]");
        let (id, place) = (figure.paper_class_id, figure.place);
        let is_same = |other: &CapacityFigure| (other.paper_class_id, other.place) == (id, place);
        if read.iter().any(is_same) {
            problems.add(format!("{at}.paper_class_id"), Problem::Twice);
        }
        let sheets = input::capacity(figure.sheets_per_litre_thousandths);
        let sheets = problems.take(format!("{at}.sheets_per_litre_thousandths"), sheets);
        let basis = problems.take(format!("{at}.basis"), needed_note(&figure.basis));
        read.push(CapacityFigure {
            paper_class_id: id,
            place,
            sheets_per_litre_thousandths: sheets.unwrap_or_default(),
            basis: basis.unwrap_or_default(),
        });
    }
    read
}
