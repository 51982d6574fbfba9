//! Questions about room air, and units of flow and area.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::{Answer, Question, question};
use crate::darkroom::air::{
    ASHRAE_62_1_PER_M2, AirError, Cleared, Exhaust, IMC_2018_PER_M2, MixingFactor, air_changes,
    average_air_changes, clearing_time, exhaust_wanted, judge_exhaust, needs_exhaust, space_volume,
};
use crate::darkroom::incompatibility::Groups;
use crate::darkroom::quantities::Flow;
use crate::darkroom::units::{
    AreaUnit, FlowUnit, area_in_unit_thousandths, area_of_unit, flow_in_unit_thousandths,
    flow_of_unit,
};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "flow_of_unit",
        r#","thousandths":200000,"unit":"cubic_foot_per_minute""#,
        of_flow_unit,
    ),
    question(
        "flow_in_unit",
        r#","flow_microlitres_per_second":101600000,"unit":"cubic_metre_per_hour""#,
        in_flow_unit,
    ),
    question(
        "area_of_unit",
        r#","thousandths":200000,"unit":"square_foot""#,
        of_area_unit,
    ),
    question(
        "area_in_unit",
        r#","floor_hundredths_mm2":2000000000,"unit":"square_metre""#,
        in_area_unit,
    ),
    question(
        "space_volume",
        r#","floor_hundredths_mm2":2000000000,"height_tenths_mm":26000"#,
        volume,
    ),
    question(
        "air_changes",
        r#","flow_microlitres_per_second":101600000,"volume_microlitres":52000000000"#,
        changes,
    ),
    question(
        "clearing_time",
        concat!(
            r#","flow_microlitres_per_second":101600000,"volume_microlitres":52000000000,"#,
            r#""cleared":"ninety_nine","mixing_tenths":30"#
        ),
        clearing,
    ),
    question(
        "exhaust",
        concat!(
            r#","floor_hundredths_mm2":2000000000,"rule":"imc_2018","#,
            r#""measured_microlitres_per_second":80000000"#
        ),
        exhaust,
    ),
    question(
        "average_air_changes",
        r#","while_aired_thousandths":12000,"aired_seconds":480,"over_seconds":3600"#,
        average,
    ),
    question(
        "needs_exhaust",
        r#","is_toner":false,"groups":["acid","organic"],"h_codes":["H226","H314"]"#,
        needs,
    ),
];

fn of_flow_unit(fields: &mut Fields) -> Answer {
    let unit: FlowUnit = fields.take("unit")?;
    let flow = flow_of_unit(fields.take("thousandths")?, unit).blame("thousandths")?;
    Ok(json!({ "flow_microlitres_per_second": flow }))
}

fn in_flow_unit(fields: &mut Fields) -> Answer {
    let flow = fields.take("flow_microlitres_per_second")?;
    let thousandths = flow_in_unit_thousandths(flow, fields.take("unit")?);
    Ok(json!({ "thousandths": thousandths.blame("flow_microlitres_per_second")? }))
}

fn of_area_unit(fields: &mut Fields) -> Answer {
    let unit: AreaUnit = fields.take("unit")?;
    let area = area_of_unit(fields.take("thousandths")?, unit).blame("thousandths")?;
    Ok(json!({ "floor_hundredths_mm2": area }))
}

fn in_area_unit(fields: &mut Fields) -> Answer {
    let area = fields.take("floor_hundredths_mm2")?;
    let thousandths = area_in_unit_thousandths(area, fields.take("unit")?);
    Ok(json!({ "thousandths": thousandths.blame("floor_hundredths_mm2")? }))
}

fn volume(fields: &mut Fields) -> Answer {
    let floor = fields.take("floor_hundredths_mm2")?;
    let volume = space_volume(floor, fields.take("height_tenths_mm")?);
    Ok(json!({ "volume_microlitres": volume.blame("height_tenths_mm")? }))
}

/// Which of flow and volume a refusal is about.
fn flow_or_volume(reason: &AirError) -> &'static str {
    match reason {
        AirError::NoVolume => "volume_microlitres",
        _ => "flow_microlitres_per_second",
    }
}

fn changes(fields: &mut Fields) -> Answer {
    let flow = fields.take("flow_microlitres_per_second")?;
    let changes = air_changes(flow, fields.take("volume_microlitres")?);
    let changes = changes.blame_by(flow_or_volume)?;
    Ok(json!({ "changes_per_hour_thousandths": changes }))
}

fn clearing(fields: &mut Fields) -> Answer {
    let flow = fields.take("flow_microlitres_per_second")?;
    let volume = fields.take("volume_microlitres")?;
    let cleared: Cleared = fields.take("cleared")?;
    let mixing: MixingFactor = fields.take("mixing_tenths")?;
    let time = clearing_time(flow, volume, cleared, mixing).blame_by(flow_or_volume)?;
    Ok(json!({ "time_seconds": time }))
}

/// "as_wanted" says that it is no less than the rule wants, and nothing of the air.
fn exhaust(fields: &mut Fields) -> Answer {
    let floor = fields.take("floor_hundredths_mm2")?;
    let rule: String = fields.take("rule")?;
    let per_m2 = match rule.as_str() {
        "imc_2018" => Ok(IMC_2018_PER_M2),
        "ashrae_62_1" => Ok(ASHRAE_62_1_PER_M2),
        _ => Err("the rules are imc_2018 and ashrae_62_1"),
    };
    let wanted = exhaust_wanted(floor, per_m2.blame("rule")?).blame("floor_hundredths_mm2")?;
    let measured: Option<Flow> = fields.take_or("measured_microlitres_per_second", None)?;
    let (judged, missing) = match judge_exhaust(measured, Some(wanted)) {
        Exhaust::Unmeasured => ("unmeasured", None),
        Exhaust::Measured => ("measured", None),
        Exhaust::Short(missing) => ("short", Some(missing)),
        Exhaust::AsWanted => ("as_wanted", None),
    };
    Ok(json!({
        "exhaust": judged,
        "wanted_microlitres_per_second": wanted,
        "short_microlitres_per_second": missing,
    }))
}

fn average(fields: &mut Fields) -> Answer {
    let changes = fields.take("while_aired_thousandths")?;
    let aired = fields.take("aired_seconds")?;
    let average = average_air_changes(changes, aired, fields.take("over_seconds")?);
    let average = average.blame_by(|reason| match reason {
        AirError::NoTime => "over_seconds",
        _ => "while_aired_thousandths",
    })?;
    Ok(json!({ "changes_per_hour_thousandths": average }))
}

fn needs(fields: &mut Fields) -> Answer {
    let is_toner = fields.take("is_toner")?;
    let groups: Groups = fields.take("groups")?;
    let codes: Vec<String> = fields.take("h_codes")?;
    Ok(json!({ "needs_exhaust_as": needs_exhaust(is_toner, groups, &codes) }))
}
