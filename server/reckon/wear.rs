//! Questions about how used and how old a mix is.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::mixing::area;
use super::{Answer, Question, Refusal, question};
use crate::darkroom::age::{Age, REFERENCE_DEPTH, depth, oxidising_life};
use crate::darkroom::film::{FilmError, clearing_ratio, wear_of_rolls};
use crate::darkroom::quantities::{Area, Micrograms, Microlitres, Moment, TenthsMm};
use crate::darkroom::silver::SECOND_BATH_SHARE;
use crate::darkroom::wear::{
    Charge, second_bath_wear, share_leaving, sheets_left, used_fraction, wear_of,
};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "wear_of_sheets",
        concat!(
            r#","sheets":6,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""capacity_thousandths_sheets_per_litre":100000"#
        ),
        wear_of_sheets,
    ),
    question(
        "wear_of_rolls",
        r#","rolls":2,"capacity_thousandths_rolls_per_litre":20000"#,
        rolls,
    ),
    question(
        "used_capacity",
        r#","charged_microlitres":1000000,"spent_nanolitres":840000000"#,
        used_capacity,
    ),
    question(
        "sheets_left",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":840000000,"#,
            r#""long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""capacity_thousandths_sheets_per_litre":100000"#
        ),
        left,
    ),
    question(
        "note_pass",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":840000000,"#,
            r#""wear_nanolitres":60000000"#
        ),
        note_pass,
    ),
    question(
        "reverse_pass",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":900000000,"#,
            r#""wear_nanolitres":60000000"#
        ),
        reverse_pass,
    ),
    question(
        "top_up",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":400000000,"#,
            r#""age":{"used_ppb":500000000,"at_us":0,"life_seconds":28800},"#,
            r#""now_us":3600000000,"fresh_microlitres":250000"#
        ),
        top_up,
    ),
    question(
        "pour_together",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":400000000,"#,
            r#""age":{"used_ppb":500000000,"at_us":0,"life_seconds":28800},"now_us":3600000000,"#,
            r#""other_charged_microlitres":500000,"other_spent_nanolitres":100000000,"#,
            r#""other_age":{"used_ppb":100000000,"at_us":0,"life_seconds":86400}"#
        ),
        pour_together,
    ),
    question(
        "pour_off",
        concat!(
            r#","charged_microlitres":1000000,"spent_nanolitres":400000000,"#,
            r#""leaving_microlitres":250000"#
        ),
        pour_off,
    ),
    question(
        "share_leaving",
        r#","amount_micrograms":465000,"volume_microlitres":1000000,"leaving_microlitres":250000"#,
        share,
    ),
    question(
        "second_bath_wear",
        r#","wear_nanolitres":60000000,"second_share_ppb":100000000"#,
        second_bath,
    ),
    question(
        "used_life",
        concat!(
            r#","age":{"used_ppb":0,"at_us":0,"life_seconds":28800},"#,
            r#""now_us":18720000000,"fraction_ppb":999999999"#
        ),
        used_life,
    ),
    question(
        "change_storage",
        concat!(
            r#","age":{"used_ppb":0,"at_us":0,"life_seconds":28800},"#,
            r#""now_us":14400000000,"life_seconds":86400"#
        ),
        change_storage,
    ),
    question(
        "oxidising_life",
        concat!(
            r#","reference_life_seconds":28800,"volume_microlitres":1000000,"#,
            r#""tray_long_tenths_mm":6096,"tray_short_tenths_mm":5080,"#,
            r#""reference_depth_tenths_mm":80"#
        ),
        oxidises,
    ),
    question(
        "clearing_ratio",
        concat!(
            r#","fresh":{"clear_after_seconds":40,"tenths_celsius":200},"#,
            r#""now":{"clear_after_seconds":66,"tenths_celsius":205}"#
        ),
        clearing,
    ),
];

fn charge(fields: &mut Fields) -> Result<Charge, Refusal> {
    Ok(Charge {
        charged: fields.take("charged_microlitres")?,
        spent: fields.take("spent_nanolitres")?,
    })
}

fn with_fraction(charge: Charge) -> Answer {
    let used = charge.used().blame("charged_microlitres")?;
    Ok(json!({
        "charged_microlitres": charge.charged,
        "spent_nanolitres": charge.spent,
        "used_ppb": used,
    }))
}

fn wear_of_sheets(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let sheets = fields.take("sheets")?;
    let capacity = fields.take("capacity_thousandths_sheets_per_litre")?;
    Ok(json!({ "wear_nanolitres": wear_of(sheets, area, capacity).blame("sheets")? }))
}

fn rolls(fields: &mut Fields) -> Answer {
    let capacity = fields.take_or("capacity_thousandths_rolls_per_litre", None)?;
    let wear = wear_of_rolls(fields.take("rolls")?, capacity).blame_by(|reason| match reason {
        FilmError::PaperOnly => "capacity_thousandths_rolls_per_litre",
        _ => "rolls",
    })?;
    Ok(json!({ "wear_nanolitres": wear }))
}

fn used_capacity(fields: &mut Fields) -> Answer {
    let Charge { charged, spent } = charge(fields)?;
    let used = used_fraction(spent, charged).blame("charged_microlitres")?;
    Ok(json!({ "used_ppb": used, "left_ppb": used.rest() }))
}

fn left(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    let area = area(fields)?;
    let capacity = fields.take("capacity_thousandths_sheets_per_litre")?;
    Ok(json!({ "sheets": sheets_left(charge, area, capacity).blame("charged_microlitres")? }))
}

fn note_pass(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    with_fraction(
        charge
            .worn_by(fields.take("wear_nanolitres")?)
            .blame("wear_nanolitres")?,
    )
}

fn reverse_pass(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    with_fraction(
        charge
            .reversed(fields.take("wear_nanolitres")?)
            .blame("wear_nanolitres")?,
    )
}

fn top_up(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    let age: Age = fields.take("age")?;
    let now = fields.take("now_us")?;
    let fresh: Microlitres = fields.take("fresh_microlitres")?;
    let aged = age
        .topped_up(now, charge.charged, fresh)
        .blame("fresh_microlitres")?;
    let mut answer = with_fraction(charge.topped_up(fresh).blame("fresh_microlitres")?)?;
    answer["age"] = json!(aged);
    Ok(answer)
}

fn pour_together(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    let age: Age = fields.take("age")?;
    let now = fields.take("now_us")?;
    let other = Charge {
        charged: fields.take("other_charged_microlitres")?,
        spent: fields.take("other_spent_nanolitres")?,
    };
    let other_age = fields.take("other_age")?;
    let aged = age.poured_together(now, charge.charged, other_age, other.charged);
    let both = charge
        .poured_together(other)
        .blame("other_charged_microlitres")?;
    let mut answer = with_fraction(both)?;
    answer["age"] = json!(aged.blame("other_age")?);
    Ok(answer)
}

fn pour_off(fields: &mut Fields) -> Answer {
    let charge = charge(fields)?;
    let leaving = fields.take("leaving_microlitres")?;
    let (gone, stays) = charge.poured_off(leaving).blame("leaving_microlitres")?;
    Ok(json!({ "leaves": gone, "stays": stays }))
}

fn share(fields: &mut Fields) -> Answer {
    let amount: Micrograms = fields.take("amount_micrograms")?;
    let volume = fields.take("volume_microlitres")?;
    let leaving = fields.take("leaving_microlitres")?;
    let gone = share_leaving(amount.get(), volume, leaving).blame("leaving_microlitres")?;
    Ok(json!({ "leaves_micrograms": gone, "stays_micrograms": amount.get() - gone }))
}

fn second_bath(fields: &mut Fields) -> Answer {
    let wear = fields.take("wear_nanolitres")?;
    let share = fields.take_or("second_share_ppb", SECOND_BATH_SHARE)?;
    let second = second_bath_wear(wear, share).blame("second_share_ppb")?;
    Ok(json!({ "first_nanolitres": wear, "second_nanolitres": second }))
}

fn used_life(fields: &mut Fields) -> Answer {
    let age: Age = fields.take("age")?;
    let now: Moment = fields.take("now_us")?;
    let fraction = fields.take("fraction_ppb")?;
    Ok(json!({
        "used_ppb": age.used_at(now).blame("now_us")?,
        "fraction_reached_us": age.reaches(fraction),
    }))
}

fn change_storage(fields: &mut Fields) -> Answer {
    let age: Age = fields.take("age")?;
    let now = fields.take("now_us")?;
    let life = fields.take("life_seconds")?;
    Ok(json!({ "age": age.stored(now, life).blame("life_seconds")? }))
}

fn oxidises(fields: &mut Fields) -> Answer {
    let life = fields.take("reference_life_seconds")?;
    let volume = fields.take("volume_microlitres")?;
    let tray = tray(fields)?;
    let reference = fields.take_or("reference_depth_tenths_mm", REFERENCE_DEPTH)?;
    let shortened = oxidising_life(life, volume, tray, reference);
    Ok(json!({
        "life_seconds": shortened.blame("reference_depth_tenths_mm")?,
        "depth_tenths_mm": depth(volume, tray).blame("tray_short_tenths_mm")?,
    }))
}

/// The inside area of a tray.
pub(super) fn tray(fields: &mut Fields) -> Result<Area, Refusal> {
    let long: TenthsMm = fields.take("tray_long_tenths_mm")?;
    long.by(fields.take("tray_short_tenths_mm")?)
        .blame("tray_long_tenths_mm")
}

fn clearing(fields: &mut Fields) -> Answer {
    let fresh = fields.take("fresh")?;
    let ratio = clearing_ratio(fresh, fields.take("now")?).blame("now")?;
    Ok(json!({ "ratio_thousandths": ratio }))
}
