//! The figures of products and dilutions as their pages show them: each with
//! where it comes from.

use super::views::{FigureGroup, FigureShown};
use super::{
    CapacityFigure, DilutionFigures, Form, Kind, Place, Product, WATER_WARMEST_TENTHS_CELSIUS,
};
use crate::darkroom::stop_bath::LIMIT_PH_THOUSANDTHS;
use crate::papers::PaperClass;
use crate::products::starter::COMMON_PRACTICE;
use crate::web::messages::products as words;
use crate::web::numbers::Numbers;

/// A list of figures in the making, with where those of a kind come from.
struct Figures<'f> {
    shown: Vec<FigureShown>,
    basis: &'f str,
}

impl Figures<'_> {
    fn add(&mut self, what: impl Into<String>, figure: String) {
        self.add_from(what, figure, self.basis.to_owned());
    }

    fn add_from(&mut self, what: impl Into<String>, figure: String, basis: String) {
        self.shown.push(FigureShown {
            what: what.into(),
            figure,
            basis,
        });
    }

    fn add_life(&mut self, what: &str, seconds: Option<i64>) {
        if let Some(seconds) = seconds {
            self.add(what, words::life(seconds));
        }
    }
}

/// The figures of a product, its dilutions left out.
pub(super) fn of_product(product: &Product, numbers: Numbers) -> Vec<FigureShown> {
    let mut figures = Figures {
        shown: Vec::new(),
        basis: &product.figures_basis,
    };
    of_form(product, numbers, &mut figures);
    figures.add_life(words::LONGEST_LIFE, product.longest_life_s);
    let degrees = |tenths: i32| numbers.celsius(tenths.into());
    let (coldest, warmest) = (
        product.coldest_tenths_celsius,
        product.warmest_tenths_celsius,
    );
    if coldest.is_some() || warmest.is_some() {
        let range = words::range(coldest.map(degrees), warmest.map(degrees));
        figures.add(words::WORKS_AT, range);
    }
    match product.water_warmest_tenths_celsius {
        Some(warmest) => figures.add(words::WATER_WARMEST, degrees(warmest)),
        None if product.form == Form::ReadyToUse => {}
        None => {
            let usual = degrees(WATER_WARMEST_TENTHS_CELSIUS);
            figures.add_from(words::WATER_WARMEST, usual, COMMON_PRACTICE.to_owned());
        }
    }
    let points = product.time_points.iter();
    let points: Vec<String> = points
        .map(|point| words::point(point.seconds, &degrees(point.tenths_celsius)))
        .collect();
    if !points.is_empty() {
        figures.add(words::TIME_POINTS, points.join(", "));
    }
    if let Some(acid) = product.stop_acid {
        match product.limit_ph_thousandths {
            Some(limit) => figures.add(words::limit_ph(acid), numbers.decimal(limit, 3)),
            None => figures.add_from(
                words::limit_ph(acid),
                numbers.decimal(LIMIT_PH_THOUSANDTHS, 3),
                words::USUAL_LIMIT_PH.to_owned(),
            ),
        }
    }
    if let Some(bromide) = product.bromide_limit_mg_per_litre {
        figures.add(words::BROMIDE_LIMIT, words::mg_per_litre(bromide, numbers));
    }
    figures.shown
}

fn of_form(product: &Product, numbers: Numbers, figures: &mut Figures<'_>) {
    let parts = product.kit_parts_thousandths.iter();
    let parts: Vec<String> = parts.map(|part| numbers.decimal(*part, 3)).collect();
    if !parts.is_empty() {
        figures.add(words::KIT_PARTS, parts.join(":"));
    }
    if let Some(makes) = product.packet_makes_ul {
        let makes = words::packet(&numbers.litres(makes), product.packets_may_be_divided);
        figures.add(words::PACKET_MAKES, makes);
    }
    figures.add_life(words::STOCK_FULL_LIFE, product.stock_full_life_s);
    figures.add_life(words::STOCK_PART_LIFE, product.stock_part_life_s);
}

/// The figures of one dilution: paper by the place of the bath, then the rest.
pub(super) fn of_dilution(
    dilution: &DilutionFigures,
    product: &Product,
    classes: &[PaperClass],
    numbers: Numbers,
) -> Vec<FigureGroup> {
    let is_fixer = product.kind == Kind::Fixer;
    let mut groups = Vec::new();
    for place in Place::ALL {
        let mut figures = Figures {
            shown: Vec::new(),
            basis: &dilution.figures_basis,
        };
        for figure in dilution.capacities_in(place) {
            let takes = words::takes(figure.sheets_per_litre_thousandths, numbers);
            figures.add_from(a_litre(figure, classes), takes, figure.basis.clone());
        }
        if let Some(limit) = dilution.silver_limit_mg_per_litre(place) {
            figures.add(words::SILVER_LIMIT, words::mg_per_litre(limit, numbers));
        }
        if !figures.shown.is_empty() {
            groups.push(FigureGroup {
                title: is_fixer.then(|| words::place(place).to_owned()),
                figures: figures.shown,
            });
        }
    }
    groups.push(FigureGroup {
        title: is_fixer.then(|| words::ANY_PLACE.to_owned()),
        figures: in_any_place(dilution, is_fixer, numbers),
    });
    groups
}

fn in_any_place(dilution: &DilutionFigures, is_fixer: bool, numbers: Numbers) -> Vec<FigureShown> {
    let mut figures = Figures {
        shown: Vec::new(),
        basis: &dilution.figures_basis,
    };
    if is_fixer {
        match dilution.film_rolls_per_litre_thousandths {
            Some(rolls) => figures.add(words::FILM, words::rolls(rolls, numbers)),
            None => figures.add_from(words::FILM, words::PAPER_ONLY.to_owned(), String::new()),
        }
    }
    if let Some(acid) = dilution.acid_mmol_per_litre {
        figures.add(words::ACID, words::mmol_per_litre(acid, numbers));
    }
    figures.basis = &dilution.life_basis;
    figures.add_life(words::OPEN_TRAY, Some(dilution.tray_life_s));
    figures.add_life(words::COVERED_TRAY, dilution.covered_life_s);
    figures.add_life(words::STOPPERED_BOTTLE, Some(dilution.bottle_life_s));
    figures.add_life(words::PART_BOTTLE, dilution.part_bottle_life_s);
    figures.shown
}

fn a_litre(figure: &CapacityFigure, classes: &[PaperClass]) -> String {
    let class = classes
        .iter()
        .find(|class| class.id == figure.paper_class_id);
    let class = class.map_or("", |class| class.name.as_str());
    words::a_litre(class)
}
