//! What the figures of a product and of its dilutions may be, each by itself and
//! all together. Both skins read by these rules, and the actions hold to them;
//! fields are called as the structs call them.

use super::actions::{NewDilution, NewProduct};
use super::{Form, Kind, Place, input};
use crate::darkroom::quantities::{Seconds, TenthsCelsius};
use crate::darkroom::stop_bath::{LIMIT_PH, StopBath, StopBathError};
use crate::darkroom::time_temperature::{Coefficient, TimeError, Timed};
use crate::input::Bounds;
use crate::problem::{Problem, Problems};

const KIT_PARTS: Bounds = Bounds {
    least: 1,
    most: 1_000_000,
    words: ("0.001 parts", "1000 parts"),
};

const PACKETS: Bounds = Bounds {
    least: 10_000,
    most: 1_000_000_000,
    words: ("10 ml", "1000 L"),
};

const TEMPERATURES: Bounds = Bounds {
    least: 0,
    most: 600,
    words: ("0 °C", "60 °C"),
};

const TIMES: Bounds = Bounds {
    least: 1,
    most: 24 * 3_600,
    words: ("1 second", "24 hours"),
};

const LIMIT_PHS: Bounds = Bounds {
    least: 2_000,
    most: 9_000,
    words: ("2", "9"),
};

const BROMIDE: Bounds = Bounds {
    least: 1,
    most: 100_000,
    words: ("1 mg/L", "100000 mg/L"),
};

const ROLLS: Bounds = Bounds {
    least: 100,
    most: 1_000_000,
    words: ("0.1 rolls a litre", "1000 rolls a litre"),
};

const ACID: Bounds = Bounds {
    least: 1,
    most: 5_000,
    words: ("1 mmol/L", "5000 mmol/L"),
};

const SILVER: Bounds = Bounds {
    least: 1,
    most: 20_000,
    words: ("1 mg/L", "20000 mg/L"),
};

/// A kit has so many parts.
const KIT: std::ops::RangeInclusive<usize> = 2..=8;

/// Keeps the problems of one field after another; the first of a field counts.
struct Found(Problems);

impl Found {
    fn is_within(&mut self, field: &str, value: Option<impl Into<i64>>, bounds: Bounds) {
        if let Some(value) = value {
            self.0.take(field, bounds.hold(value.into()));
        }
    }

    fn unless(&mut self, is_so: bool, field: &str, problem: Problem) {
        if !is_so {
            self.0.add(field, problem);
        }
    }
}

/// What is wrong with a product, its dilutions left out.
pub(super) fn product(new: &NewProduct) -> Problems {
    let mut found = Found(Problems::default());
    forms(new, &mut found);
    temperatures(new, &mut found);
    let is_stop_bath = new.kind == Kind::StopBath;
    found.unless(
        is_stop_bath || new.stop_acid.is_none(),
        "stop_acid",
        Problem::NotOfThisKind,
    );
    let limit = new.limit_ph_thousandths;
    found.unless(
        new.stop_acid.is_some() || limit.is_none(),
        "limit_ph_thousandths",
        Problem::NoAcid,
    );
    found.is_within("limit_ph_thousandths", limit, LIMIT_PHS);
    let bromide = new.bromide_limit_mg_per_litre;
    found.unless(
        new.kind == Kind::Developer || bromide.is_none(),
        "bromide_limit_mg_per_litre",
        Problem::NotOfThisKind,
    );
    found.is_within("bromide_limit_mg_per_litre", bromide, BROMIDE);
    lives(&mut found.0, &[("longest_life_s", new.longest_life_s)]);
    found.0
}

/// What each form has, and no other.
fn forms(new: &NewProduct, found: &mut Found) {
    let is_kit = new.form == Form::Kit;
    let parts = &new.kit_parts_thousandths;
    if is_kit {
        let are_parts = KIT.contains(&parts.len());
        found.unless(are_parts, "kit_parts_thousandths", Problem::NotKitParts);
    } else {
        found.unless(
            parts.is_empty(),
            "kit_parts_thousandths",
            Problem::NotOfThisForm,
        );
    }
    for part in parts {
        found.is_within("kit_parts_thousandths", Some(*part), KIT_PARTS);
    }
    let is_powder = new.form == Form::Powder;
    let stock = [
        ("stock_full_life_s", new.stock_full_life_s),
        ("stock_part_life_s", new.stock_part_life_s),
    ];
    if is_powder {
        let makes = new.packet_makes_ul;
        found.unless(makes.is_some(), "packet_makes_ul", Problem::Missing);
    } else {
        for (field, figure) in stock
            .into_iter()
            .chain([("packet_makes_ul", new.packet_makes_ul)])
        {
            found.unless(figure.is_none(), field, Problem::NotOfThisForm);
        }
        found.unless(
            !new.packets_may_be_divided,
            "packets_may_be_divided",
            Problem::NotOfThisForm,
        );
    }
    found.is_within("packet_makes_ul", new.packet_makes_ul, PACKETS);
    lives(&mut found.0, &stock);
    let is_longer = new.stock_part_life_s > new.stock_full_life_s;
    found.unless(
        new.stock_full_life_s.is_none() || !is_longer,
        "stock_part_life_s",
        Problem::LongerThanFull,
    );
}

fn temperatures(new: &NewProduct, found: &mut Found) {
    for (field, temperature) in [
        ("coldest_tenths_celsius", new.coldest_tenths_celsius),
        ("warmest_tenths_celsius", new.warmest_tenths_celsius),
        (
            "water_warmest_tenths_celsius",
            new.water_warmest_tenths_celsius,
        ),
    ] {
        found.is_within(field, temperature, TEMPERATURES);
    }
    if let (Some(coldest), Some(warmest)) = (new.coldest_tenths_celsius, new.warmest_tenths_celsius)
    {
        let is_range = coldest <= warmest;
        found.unless(
            is_range,
            "coldest_tenths_celsius",
            Problem::ColdestAboveWarmest,
        );
    }
    for point in &new.time_points {
        found.is_within("time_points", Some(point.seconds), TIMES);
        found.is_within("time_points", Some(point.tenths_celsius), TEMPERATURES);
    }
    match new.time_points.as_slice() {
        [] => {}
        [one, other] => {
            let timed = |seconds: i64, tenths: i32| {
                Some(Timed {
                    time: Seconds::new(seconds).ok()?,
                    temperature: TenthsCelsius::new(tenths.into()).ok()?,
                })
            };
            let one = timed(one.seconds, one.tenths_celsius);
            let other = timed(other.seconds, other.tenths_celsius);
            let problem = match one
                .zip(other)
                .map(|(one, other)| Coefficient::from_points(one, other))
            {
                Some(Err(TimeError::PointsTooClose)) => Some(Problem::PointsTooClose),
                Some(Err(TimeError::NotQuicker)) => Some(Problem::WarmerNotQuicker),
                // Figures out of their bounds are named above.
                _ => None,
            };
            if let Some(problem) = problem {
                found.0.add("time_points", problem);
            }
        }
        _ => found.0.add("time_points", Problem::NotTwoPoints),
    }
}

fn lives(problems: &mut Problems, lives: &[(&str, Option<i64>)]) {
    for (field, life) in lives {
        if let Some(life) = life {
            problems.take(*field, input::life(*life));
        }
    }
}

/// What is wrong with a dilution of this product.
pub(super) fn dilution(figures: &NewDilution, product: &NewProduct) -> Problems {
    let mut found = Found(Problems::default());
    found.unless(
        product.form != Form::ReadyToUse || figures.parts_thousandths == 0,
        "parts_thousandths",
        Problem::ReadyToUse,
    );
    lives(
        &mut found.0,
        &[
            ("covered_life_s", figures.covered_life_s),
            ("part_bottle_life_s", figures.part_bottle_life_s),
        ],
    );
    found.unless(
        figures.part_bottle_life_s <= Some(figures.bottle_life_s),
        "part_bottle_life_s",
        Problem::LongerThanFull,
    );
    fixer(figures, product.kind == Kind::Fixer, &mut found);
    acid(figures, product, &mut found);
    found.0
}

/// What only fixers have.
fn fixer(figures: &NewDilution, is_fixer: bool, found: &mut Found) {
    let rolls = figures.film_rolls_per_litre_thousandths;
    found.is_within("film_rolls_per_litre_thousandths", rolls, ROLLS);
    let silver = [
        (
            "silver_limit_single_mg_per_litre",
            figures.silver_limit_single_mg_per_litre,
        ),
        (
            "silver_limit_first_mg_per_litre",
            figures.silver_limit_first_mg_per_litre,
        ),
        (
            "silver_limit_second_mg_per_litre",
            figures.silver_limit_second_mg_per_litre,
        ),
    ];
    for (field, limit) in silver {
        found.is_within(field, limit, SILVER);
    }
    if is_fixer {
        return;
    }
    for (field, figure) in silver
        .into_iter()
        .chain([("film_rolls_per_litre_thousandths", rolls)])
    {
        found.unless(figure.is_none(), field, Problem::NotOfThisKind);
    }
    let mut capacities = figures.capacities.iter();
    let are_single = capacities.all(|figure| figure.place == Place::Single);
    found.unless(are_single, "capacities", Problem::NotOfThisKind);
}

/// A stop bath's acid, and that it is not past its limit when fresh.
fn acid(figures: &NewDilution, product: &NewProduct, found: &mut Found) {
    let Some(strength) = figures.acid_mmol_per_litre else {
        return;
    };
    found.is_within("acid_mmol_per_litre", Some(strength), ACID);
    let Some(acid) = product.stop_acid else {
        return found.0.add("acid_mmol_per_litre", Problem::NoAcid);
    };
    let limit = product.limit_ph_thousandths.map_or(LIMIT_PH, thousandths);
    let fresh = StopBath::new(acid, thousandths(strength));
    let room = fresh.and_then(|bath| bath.alkali_at_ph(limit));
    if matches!(room, Ok(room) if room <= 0.0) || matches!(room, Err(StopBathError::Ph)) {
        found.0.add("acid_mmol_per_litre", Problem::FreshPastLimit);
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "what is in bounds is far below 2^53"
)]
fn thousandths(value: i64) -> f64 {
    value as f64 / 1_000.0
}

/// What is wrong with changing a product under the dilutions it has.
pub(super) fn with_dilutions(new: &NewProduct, dilutions: &[NewDilution]) -> Problems {
    let mut problems = Problems::default();
    for each in dilutions {
        for (field, problem) in dilution(each, new).iter() {
            let (field, problem) = match (field, problem) {
                ("acid_mmol_per_litre", Problem::FreshPastLimit) => {
                    ("limit_ph_thousandths", Problem::FreshPastLimit)
                }
                ("acid_mmol_per_litre", _) => ("stop_acid", Problem::DilutionsDisagree),
                ("parts_thousandths", _) => ("form", Problem::DilutionsDisagree),
                _ => ("kind", Problem::DilutionsDisagree),
            };
            if problems.iter().all(|(there, _)| there != field) {
                problems.add(field, problem);
            }
        }
    }
    problems
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::darkroom::stop_bath::StopAcid;
    use crate::products::TimePoint;

    fn named(kind: Kind) -> NewProduct {
        NewProduct::named("A product".to_owned(), kind)
    }

    fn fields(problems: &Problems) -> Vec<(&str, &Problem)> {
        problems.iter().collect()
    }

    #[test]
    fn a_form_has_its_own_figures_and_no_other() {
        let kit = NewProduct {
            form: Form::Kit,
            kit_parts_thousandths: vec![1_000, 1_000, 500],
            ..named(Kind::Developer)
        };
        assert!(product(&kit).is_empty());
        let powder = NewProduct {
            form: Form::Powder,
            ..kit.clone()
        };
        assert_eq!(
            fields(&product(&powder)),
            [
                ("kit_parts_thousandths", &Problem::NotOfThisForm),
                ("packet_makes_ul", &Problem::Missing),
            ]
        );
        let one_part = NewProduct {
            kit_parts_thousandths: vec![1_000],
            ..kit
        };
        let wrong = product(&one_part);
        assert_eq!(
            fields(&wrong),
            [("kit_parts_thousandths", &Problem::NotKitParts)]
        );
    }

    #[test]
    fn two_points_of_a_sheet_lie_apart_and_the_warmer_one_is_quicker() {
        let point = |seconds, tenths_celsius| TimePoint {
            seconds,
            tenths_celsius,
        };
        for (points, problem) in [
            (vec![point(90, 200)], Some(Problem::NotTwoPoints)),
            (
                vec![point(90, 200), point(80, 219)],
                Some(Problem::PointsTooClose),
            ),
            (
                vec![point(90, 200), point(90, 240)],
                Some(Problem::WarmerNotQuicker),
            ),
            (vec![point(90, 200), point(60, 240)], None),
        ] {
            let new = NewProduct {
                time_points: points,
                ..named(Kind::Developer)
            };
            let found = product(&new);
            let said: Vec<&Problem> = found.iter().map(|(_, problem)| problem).collect();
            assert_eq!(said, problem.iter().collect::<Vec<_>>());
        }
    }

    #[test]
    fn a_stop_bath_is_not_past_its_limit_when_fresh() {
        let new = NewProduct {
            stop_acid: Some(StopAcid::Acetic),
            limit_ph_thousandths: Some(3_000),
            ..named(Kind::StopBath)
        };
        let figures = |acid| NewDilution {
            acid_mmol_per_litre: Some(acid),
            bottle_life_s: 60,
            ..NewDilution::default()
        };
        // 0.25 mol/l of acetic acid is of pH 2.68 fresh: charge balance.
        assert!(dilution(&figures(250), &new).is_empty());
        // 0.01 mol/l is of pH 3.39: charge balance.
        let weak = dilution(&figures(10), &new);
        assert_eq!(
            fields(&weak),
            [("acid_mmol_per_litre", &Problem::FreshPastLimit)]
        );
        let changed = with_dilutions(&new, &[figures(10)]);
        assert_eq!(
            fields(&changed),
            [("limit_ph_thousandths", &Problem::FreshPastLimit)]
        );
        let none = NewProduct {
            stop_acid: None,
            limit_ph_thousandths: None,
            ..new
        };
        let lost = with_dilutions(&none, &[figures(250)]);
        assert_eq!(fields(&lost), [("stop_acid", &Problem::DilutionsDisagree)]);
    }
}
