//! Products and dilutions as somebody wants them.

use serde::Serialize;
use uuid::Uuid;

use super::{CapacityFigure, DilutionFigures, Form, Kind, ProductSet, TimePoint};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::stop_bath::StopAcid;

/// A product as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewProduct {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Which bath it makes.
    pub kind: Kind,
    /// The groups that decide what it may be poured with.
    pub groups: Vec<Group>,
    /// Whether air uses it up.
    pub oxidises: bool,
    /// The depth the tray lives hold for, in tenths of a millimetre.
    pub depth_reference_tenths_mm: i32,
    /// Whether only a steward mixes it.
    pub steward_only: bool,
    /// H codes as supplied.
    pub hazard_codes: Vec<String>,
    /// P codes as supplied.
    pub precaution_codes: Vec<String>,
    /// The date of the safety data sheet on file.
    pub data_sheet_on: Option<String>,
    /// Whether it is offered no more.
    pub is_retired: bool,
    /// What it is before it is mixed.
    pub form: Form,
    /// A kit's parts, in thousandths.
    pub kit_parts_thousandths: Vec<i64>,
    /// The stock solution that a packet of powder makes, in microlitres.
    pub packet_makes_ul: Option<i64>,
    /// Whether a part of a packet may be taken.
    pub packets_may_be_divided: bool,
    /// How long a powder's stock solution keeps in a full bottle, in seconds.
    pub stock_full_life_s: Option<i64>,
    /// The same from the first draw on, in seconds.
    pub stock_part_life_s: Option<i64>,
    /// The age of a mix that no top-up moves, in seconds.
    pub longest_life_s: Option<i64>,
    /// The coldest it works at, in tenths of a degree Celsius.
    pub coldest_tenths_celsius: Option<i32>,
    /// The warmest it works at, in tenths of a degree Celsius.
    pub warmest_tenths_celsius: Option<i32>,
    /// The warmest water it may be mixed with, in tenths of a degree Celsius.
    pub water_warmest_tenths_celsius: Option<i32>,
    /// Two points of its sheet, or none.
    pub time_points: Vec<TimePoint>,
    /// A stop bath's acid.
    pub stop_acid: Option<StopAcid>,
    /// The pH at which a stop bath is used up, in thousandths.
    pub limit_ph_thousandths: Option<i64>,
    /// The bromide at which a developer is used up.
    pub bromide_limit_mg_per_litre: Option<i64>,
    /// Where its temperatures, times and limits come from.
    pub figures_basis: String,
    /// How it is used.
    pub dilutions: Vec<NewDilution>,
}

/// The depth that usual tray lives hold for, in tenths of a millimetre: common
/// practice, no source.
pub(super) const USUAL_DEPTH_TENTHS_MM: i32 = 80;

impl NewProduct {
    /// A new liquid of which nothing else is known.
    #[must_use]
    pub const fn named(name: String, kind: Kind) -> Self {
        Self {
            id: None,
            name,
            kind,
            groups: Vec::new(),
            oxidises: false,
            depth_reference_tenths_mm: USUAL_DEPTH_TENTHS_MM,
            steward_only: false,
            hazard_codes: Vec::new(),
            precaution_codes: Vec::new(),
            data_sheet_on: None,
            is_retired: false,
            form: Form::Liquid,
            kit_parts_thousandths: Vec::new(),
            packet_makes_ul: None,
            packets_may_be_divided: false,
            stock_full_life_s: None,
            stock_part_life_s: None,
            longest_life_s: None,
            coldest_tenths_celsius: None,
            warmest_tenths_celsius: None,
            water_warmest_tenths_celsius: None,
            time_points: Vec::new(),
            stop_acid: None,
            limit_ph_thousandths: None,
            bromide_limit_mg_per_litre: None,
            figures_basis: String::new(),
            dilutions: Vec::new(),
        }
    }

    /// The same product again, to be changed in places.
    #[must_use]
    pub fn like(product: &ProductSet) -> Self {
        let product = product.clone();
        Self {
            id: Some(product.id),
            name: product.name,
            kind: product.kind,
            groups: product.groups,
            oxidises: product.oxidises,
            depth_reference_tenths_mm: product.depth_reference_tenths_mm,
            steward_only: product.steward_only,
            hazard_codes: product.hazard_codes,
            precaution_codes: product.precaution_codes,
            data_sheet_on: product.data_sheet_on,
            is_retired: product.is_retired,
            form: product.form,
            kit_parts_thousandths: product.kit_parts_thousandths,
            packet_makes_ul: product.packet_makes_ul,
            packets_may_be_divided: product.packets_may_be_divided,
            stock_full_life_s: product.stock_full_life_s,
            stock_part_life_s: product.stock_part_life_s,
            longest_life_s: product.longest_life_s,
            coldest_tenths_celsius: product.coldest_tenths_celsius,
            warmest_tenths_celsius: product.warmest_tenths_celsius,
            water_warmest_tenths_celsius: product.water_warmest_tenths_celsius,
            time_points: product.time_points,
            stop_acid: product.stop_acid,
            limit_ph_thousandths: product.limit_ph_thousandths,
            bromide_limit_mg_per_litre: product.bromide_limit_mg_per_litre,
            figures_basis: product.figures_basis,
            dilutions: product.dilutions.into_iter().map(Into::into).collect(),
        }
    }

    /// The product as it is from now on, without ingredients: they are set by themselves.
    pub(crate) fn settled(
        self,
        id: Uuid,
        version: i32,
        dilutions: Vec<DilutionFigures>,
    ) -> ProductSet {
        ProductSet {
            id,
            version,
            name: self.name,
            kind: self.kind,
            groups: self.groups,
            oxidises: self.oxidises,
            depth_reference_tenths_mm: self.depth_reference_tenths_mm,
            steward_only: self.steward_only,
            hazard_codes: self.hazard_codes,
            precaution_codes: self.precaution_codes,
            data_sheet_on: self.data_sheet_on,
            is_retired: self.is_retired,
            form: self.form,
            kit_parts_thousandths: self.kit_parts_thousandths,
            packet_makes_ul: self.packet_makes_ul,
            packets_may_be_divided: self.packets_may_be_divided,
            stock_full_life_s: self.stock_full_life_s,
            stock_part_life_s: self.stock_part_life_s,
            longest_life_s: self.longest_life_s,
            coldest_tenths_celsius: self.coldest_tenths_celsius,
            warmest_tenths_celsius: self.warmest_tenths_celsius,
            water_warmest_tenths_celsius: self.water_warmest_tenths_celsius,
            time_points: self.time_points,
            stop_acid: self.stop_acid,
            limit_ph_thousandths: self.limit_ph_thousandths,
            bromide_limit_mg_per_litre: self.bromide_limit_mg_per_litre,
            figures_basis: self.figures_basis,
            dilutions,
            ingredients: Vec::new(),
            composition_is_known: false,
        }
    }
}

/// A dilution as somebody wants it.
#[derive(Clone, Debug, Default, Serialize)]
pub struct NewDilution {
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    pub bottle_life_s: i64,
    /// How long it keeps in a covered tray, in seconds; none is as in an open one.
    pub covered_life_s: Option<i64>,
    /// How long it keeps in a part-filled bottle, in seconds; none is as in a full one.
    pub part_bottle_life_s: Option<i64>,
    /// Where the lives come from.
    pub life_basis: String,
    /// How many rolls of film a litre of a fixer takes, in thousandths.
    pub film_rolls_per_litre_thousandths: Option<i64>,
    /// The acid of a fresh stop bath at this strength, in millimoles a litre.
    pub acid_mmol_per_litre: Option<i64>,
    /// The silver at which a single fixer is used up.
    pub silver_limit_single_mg_per_litre: Option<i64>,
    /// The silver at which the first of two fixers is used up.
    pub silver_limit_first_mg_per_litre: Option<i64>,
    /// The silver at which the second of two fixers is used up.
    pub silver_limit_second_mg_per_litre: Option<i64>,
    /// Where its film, acid and silver figures come from.
    pub figures_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityFigure>,
}

impl NewDilution {
    /// The dilution as it is from now on.
    pub(super) fn settled(self, id: Uuid) -> DilutionFigures {
        DilutionFigures {
            id,
            parts_thousandths: self.parts_thousandths,
            tray_life_s: self.tray_life_s,
            bottle_life_s: self.bottle_life_s,
            covered_life_s: self.covered_life_s,
            part_bottle_life_s: self.part_bottle_life_s,
            life_basis: self.life_basis,
            film_rolls_per_litre_thousandths: self.film_rolls_per_litre_thousandths,
            acid_mmol_per_litre: self.acid_mmol_per_litre,
            silver_limit_single_mg_per_litre: self.silver_limit_single_mg_per_litre,
            silver_limit_first_mg_per_litre: self.silver_limit_first_mg_per_litre,
            silver_limit_second_mg_per_litre: self.silver_limit_second_mg_per_litre,
            figures_basis: self.figures_basis,
            capacities: self.capacities,
        }
    }
}

impl From<DilutionFigures> for NewDilution {
    fn from(figures: DilutionFigures) -> Self {
        Self {
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
            capacities: figures.capacities,
        }
    }
}
