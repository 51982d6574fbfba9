//! Questions about stop bath, carry-over, levels, finishing and replenishment.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::mixing::area;
use super::wear::tray;
use super::{Answer, Question, Refusal, question};
use crate::darkroom::finishing::{lacks, notes_in_doubt, wash_ends};
use crate::darkroom::noting::{LATE, may_note, silent_since};
use crate::darkroom::quantities::{Micrograms, Moment};
use crate::darkroom::replenishment::{
    bromide_released, bromide_used, potassium_bromide_released, replenishment, silver_developed,
};
use crate::darkroom::stop_bath::{
    LIMIT_PH, StopAcid, StopBath, StopBathError, alkali_carried, carried_over, level_after,
};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "stop_bath_ph",
        r#","acid":"acetic","acid_mol_per_litre":0.25,"alkali_eq_per_litre":0.1"#,
        stop_bath_ph,
    ),
    question(
        "stop_bath_alkali",
        r#","acid":"citric","acid_mol_per_litre":0.1,"ph":5.2"#,
        stop_bath_alkali,
    ),
    question(
        "stop_bath_used",
        concat!(
            r#","acid":"acetic","acid_mol_per_litre":0.25,"volume_microlitres":1000000,"#,
            r#""alkali_nanoequivalents":90000000,"limit_ph":5.2"#
        ),
        stop_bath_used,
    ),
    question(
        "carry_over",
        concat!(
            r#","sheets":20,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""per_square_metre_microlitres":40000,"alkali_milliequivalents_per_litre":300,"#,
            r#""level_microlitres":1000000"#
        ),
        carry_over,
    ),
    question(
        "least_depth",
        concat!(
            r#","volume_microlitres":300000,"tray_long_tenths_mm":3048,"#,
            r#""tray_short_tenths_mm":2540,"least_depth_tenths_mm":80"#
        ),
        least_depth,
    ),
    question(
        "wash_ends",
        r#","joined_us":[0,240000000,120000000],"wash_seconds":300"#,
        wash,
    ),
    question(
        "notes_in_doubt",
        r#","notes_us":[1,2,3,4,5],"last_passed_us":2,"failed_us":4"#,
        doubtful_notes,
    ),
    question(
        "note_time",
        r#","happened_us":0,"now_us":604800000000"#,
        note_time,
    ),
    question(
        "silent_since",
        r#","present_since_us":0,"last_note_us":1200000000,"now_us":4800000000"#,
        silence,
    ),
    question(
        "replenishment",
        r#","capacity_thousandths_sheets_per_litre":100000,"steady_ppb":500000000"#,
        replenish,
    ),
    question(
        "bromide",
        concat!(
            r#","sheets":100,"long_tenths_mm":2540,"short_tenths_mm":2032,"#,
            r#""coating_mg_per_m2":1200,"kept_ppb":250000000,"#,
            r#""volume_microlitres":1000000,"limit_mg_per_litre":4000"#
        ),
        bromide,
    ),
];

fn stop_bath(fields: &mut Fields) -> Result<StopBath, Refusal> {
    let acid: StopAcid = fields.take("acid")?;
    StopBath::new(acid, fields.take("acid_mol_per_litre")?).blame("acid_mol_per_litre")
}

fn stop_bath_ph(fields: &mut Fields) -> Answer {
    let bath = stop_bath(fields)?;
    let alkali = fields.take("alkali_eq_per_litre")?;
    Ok(json!({
        "ph": bath.ph_with(alkali).blame("alkali_eq_per_litre")?,
        "neutralised_fraction": bath.neutralised(alkali).blame("alkali_eq_per_litre")?,
    }))
}

fn stop_bath_alkali(fields: &mut Fields) -> Answer {
    let bath = stop_bath(fields)?;
    Ok(json!({ "alkali_eq_per_litre": bath.alkali_at_ph(fields.take("ph")?).blame("ph")? }))
}

fn stop_bath_used(fields: &mut Fields) -> Answer {
    let bath = stop_bath(fields)?;
    let volume = fields.take("volume_microlitres")?;
    let alkali = fields.take("alkali_nanoequivalents")?;
    let limit = fields.take_or("limit_ph", LIMIT_PH)?;
    let used = bath
        .used(volume, alkali, limit)
        .blame_by(|reason| match reason {
            StopBathError::Ph | StopBathError::FreshPastLimit => "limit_ph",
            StopBathError::NoVolume => "volume_microlitres",
            _ => "alkali_nanoequivalents",
        })?;
    Ok(json!({ "used_ppb": used }))
}

fn carry_over(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let sheets = fields.take("sheets")?;
    let per_square_metre = fields.take("per_square_metre_microlitres")?;
    let strength = fields.take("alkali_milliequivalents_per_litre")?;
    let level = fields.take("level_microlitres")?;
    let carried = carried_over(sheets, area, per_square_metre).blame("sheets")?;
    let alkali = alkali_carried(carried, strength).blame("alkali_milliequivalents_per_litre")?;
    Ok(json!({
        "carried_microlitres": carried,
        "alkali_nanoequivalents": alkali,
        "level_microlitres": level_after(level, carried),
    }))
}

fn least_depth(fields: &mut Fields) -> Answer {
    let volume = fields.take("volume_microlitres")?;
    let tray = tray(fields)?;
    let least = fields.take("least_depth_tenths_mm")?;
    Ok(json!({ "lacks_microlitres": lacks(volume, tray, least) }))
}

fn wash(fields: &mut Fields) -> Answer {
    let joined: Vec<Moment> = fields.take("joined_us")?;
    Ok(json!({ "ends_us": wash_ends(&joined, fields.take("wash_seconds")?) }))
}

fn doubtful_notes(fields: &mut Fields) -> Answer {
    let notes: Vec<Moment> = fields.take("notes_us")?;
    let passed = fields.take_or("last_passed_us", None)?;
    let failed = fields.take("failed_us")?;
    Ok(json!({ "notes_us": notes_in_doubt(&notes, passed, failed) }))
}

fn note_time(fields: &mut Fields) -> Answer {
    let happened = fields.take("happened_us")?;
    let now = fields.take("now_us")?;
    let window = fields.take_or("late_window_seconds", LATE)?;
    may_note(happened, now, window).blame("happened_us")?;
    Ok(json!({ "taken": true }))
}

fn silence(fields: &mut Fields) -> Answer {
    let present = fields.take_or("present_since_us", None)?;
    let last = fields.take_or("last_note_us", None)?;
    Ok(json!({ "silent_since_us": silent_since(present, last, fields.take("now_us")?) }))
}

fn replenish(fields: &mut Fields) -> Answer {
    let capacity = fields.take("capacity_thousandths_sheets_per_litre")?;
    let fresh = replenishment(capacity, fields.take("steady_ppb")?).blame("steady_ppb")?;
    Ok(json!({ "per_sheet_8x10_nanolitres": fresh }))
}

fn bromide(fields: &mut Fields) -> Answer {
    let area = area(fields)?;
    let sheets = fields.take("sheets")?;
    let coating = fields.take("coating_mg_per_m2")?;
    let kept = fields.take("kept_ppb")?;
    let developed: Micrograms = silver_developed(sheets, area, coating, kept).blame("kept_ppb")?;
    let bromide = bromide_released(developed).blame("sheets")?;
    let volume = fields.take("volume_microlitres")?;
    let limit = fields.take("limit_mg_per_litre")?;
    Ok(json!({
        "developed_micrograms": developed,
        "bromide_micrograms": bromide,
        "potassium_bromide_micrograms": potassium_bromide_released(developed).blame("sheets")?,
        "limit_reached_ppb": bromide_used(bromide, volume, limit).blame("limit_mg_per_litre")?,
    }))
}
