//! Questions about silver in fixing baths.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::mixing::area;
use super::{Answer, Question, Refusal, question};
use crate::darkroom::quantities::{Micrograms, Microlitres};
use crate::darkroom::silver::{
    CoatingRange, SECOND_BATH_SHARE, SHIFTS, SilverBath, SilverError, SilverPair, pass_one_bath,
    pass_two_baths, sheets_until_silver, shift, silver_dissolved, silver_from_rolls, silver_range,
};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "silver_dissolved",
        concat!(
            r#","sheets":1,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""coating_mg_per_m2":1200,"kept_ppb":250000000"#
        ),
        dissolved,
    ),
    question(
        "silver_range",
        concat!(
            r#","sheets":10,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""coating":{"lowest_mg_per_m2":540,"highest_mg_per_m2":1610,"#,
            r#""least_kept_ppb":200000000,"most_kept_ppb":500000000}"#
        ),
        range,
    ),
    question(
        "silver_from_rolls",
        r#","rolls":2,"per_roll_micrograms":250000,"kept_ppb":300000000"#,
        rolls,
    ),
    question(
        "silver_concentration",
        r#","bath":{"volume_microlitres":1000000,"silver_micrograms":465000}"#,
        concentration,
    ),
    question(
        "silver_diluted",
        concat!(
            r#","bath":{"volume_microlitres":1000000,"silver_micrograms":465000},"#,
            r#""fresh_microlitres":250000,"#,
            r#""other":{"volume_microlitres":500000,"silver_micrograms":90000}"#
        ),
        diluted,
    ),
    question(
        "pass_one_bath",
        concat!(
            r#","bath":{"volume_microlitres":1000000,"silver_micrograms":0},"#,
            r#""dissolved_micrograms":464515,"carried_microlitres":15000"#
        ),
        one_bath,
    ),
    question(
        "pass_two_baths",
        concat!(
            r#","first":{"volume_microlitres":1000000,"silver_micrograms":900000},"#,
            r#""second":{"volume_microlitres":1000000,"silver_micrograms":50000},"#,
            r#""dissolved_micrograms":464515,"second_share_ppb":100000000,"#,
            r#""carried_microlitres":15000"#
        ),
        two_baths,
    ),
    question(
        "sheets_until_silver",
        concat!(
            r#","bath":{"volume_microlitres":1000000,"silver_micrograms":0},"#,
            r#""limit_mg_per_litre":2000,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""coating_mg_per_m2":1200,"kept_ppb":250000000"#
        ),
        until,
    ),
    question(
        "shift",
        r#","shifts_done":2,"shifts_allowed":3,"second_is_used_up":false"#,
        shift_baths,
    ),
];

fn concentration_of(bath: SilverBath, field: &'static str) -> Result<u32, Refusal> {
    bath.milligrams_per_litre().blame(field)
}

fn dissolved(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let sheets = fields.take("sheets")?;
    let coating = fields.take("coating_mg_per_m2")?;
    let kept = fields.take("kept_ppb")?;
    let silver = silver_dissolved(sheets, area, coating, kept).blame("kept_ppb")?;
    Ok(json!({ "dissolved_micrograms": silver }))
}

fn range(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let sheets = fields.take("sheets")?;
    let coating: CoatingRange = fields.take("coating")?;
    Ok(json!(silver_range(sheets, area, coating).blame("coating")?))
}

fn rolls(fields: &mut Fields) -> Answer {
    let rolls = fields.take("rolls")?;
    let each = fields.take("per_roll_micrograms")?;
    let silver = silver_from_rolls(rolls, each, fields.take("kept_ppb")?).blame("kept_ppb")?;
    Ok(json!({ "dissolved_micrograms": silver }))
}

fn concentration(fields: &mut Fields) -> Answer {
    let bath = fields.take("bath")?;
    Ok(json!({ "silver_mg_per_litre": concentration_of(bath, "bath")? }))
}

fn diluted(fields: &mut Fields) -> Answer {
    let bath: SilverBath = fields.take("bath")?;
    let other = fields.take_or("other", SilverBath::default())?;
    let fresh = fields.take_or("fresh_microlitres", Microlitres::ZERO)?;
    let topped = bath.topped_up(fresh).blame("fresh_microlitres")?;
    let both = topped.poured_together(other).blame("other")?;
    Ok(json!({ "bath": both, "bath_mg_per_litre": concentration_of(both, "bath")? }))
}

fn one_bath(fields: &mut Fields) -> Answer {
    let bath = fields.take("bath")?;
    let dissolved: Micrograms = fields.take("dissolved_micrograms")?;
    let carried = fields.take("carried_microlitres")?;
    let after = pass_one_bath(bath, dissolved, carried).blame("carried_microlitres")?;
    Ok(json!({
        "bath": after.bath,
        "bath_mg_per_litre": concentration_of(after.bath, "bath")?,
        "carried_out_micrograms": after.carried_out,
    }))
}

fn two_baths(fields: &mut Fields) -> Answer {
    let pair = SilverPair {
        first: fields.take("first")?,
        second: fields.take("second")?,
    };
    let dissolved = fields.take("dissolved_micrograms")?;
    let share = fields.take_or("second_share_ppb", SECOND_BATH_SHARE)?;
    let carried = fields.take("carried_microlitres")?;
    let after = pass_two_baths(pair, dissolved, share, carried);
    let after = after.blame_by(|reason| match reason {
        SilverError::Share => "second_share_ppb",
        _ => "carried_microlitres",
    })?;
    Ok(json!({
        "first": after.baths.first,
        "first_mg_per_litre": concentration_of(after.baths.first, "first")?,
        "second": after.baths.second,
        "second_mg_per_litre": concentration_of(after.baths.second, "second")?,
        "carried_out_micrograms": after.carried_out,
    }))
}

fn until(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let bath = fields.take("bath")?;
    let limit = fields.take("limit_mg_per_litre")?;
    let coating = fields.take("coating_mg_per_m2")?;
    let kept = fields.take("kept_ppb")?;
    let sheets = sheets_until_silver(bath, limit, area, coating, kept);
    Ok(json!({ "sheets": sheets.blame("kept_ppb")? }))
}

fn shift_baths(fields: &mut Fields) -> Answer {
    let done = fields.take("shifts_done")?;
    let allowed = fields.take_or("shifts_allowed", SHIFTS)?;
    Ok(json!({ "shift": shift(done, allowed, fields.take("second_is_used_up")?) }))
}
