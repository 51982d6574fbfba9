//! Questions about paper sizes, units and making up solutions.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::{Answer, Question, Refusal, question};
use crate::darkroom::dilution::{
    Dilution, DilutionError, parts_for_volume, volume_from_concentrate, water_to_weaken,
};
use crate::darkroom::kit::{KitError, kit_volumes, packets_for, use_by};
use crate::darkroom::measuring::{MeasuringError, measure};
use crate::darkroom::percentage::{PercentageError, pearson, weights_for};
use crate::darkroom::quantities::{Area, Microlitres, TenthsMm};
use crate::darkroom::sheet::{STANDARD_SIZES, SheetSize, sheet_equivalents};
use crate::darkroom::units::{
    MassUnit, VolumeUnit, mass_in_micrograms, volume_in_microlitres, volume_in_unit_thousandths,
};
use crate::darkroom::water::{
    Drawn, Taps, WARMEST_WATER, WantedMix, WaterError, WaterPlan, mix_temperature, plan_water,
    water_temperature,
};

const NINE: &str = r#","volume_microlitres":1000000,"parts_of_water_thousandths":9000"#;
const MIX: &str = concat!(
    r#","volume_microlitres":1000000,"concentrate_microlitres":100000,"#,
    r#""wanted_tenths_celsius":200,"concentrate_tenths_celsius":150"#
);

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "sheet_size",
        r#","sheets":6,"long_tenths_mm":2540,"short_tenths_mm":2032"#,
        sheet_size,
    ),
    question("standard_sizes", "", standard_sizes),
    question("inches", r#","inches_thousandths":9500"#, inches),
    question(
        "volume_of_unit",
        r#","thousandths":16000,"unit":"us_fluid_ounce""#,
        volume_of_unit,
    ),
    question(
        "volume_in_unit",
        r#","volume_microlitres":1000000,"unit":"imperial_fluid_ounce""#,
        volume_in_unit,
    ),
    question(
        "mass_of_unit",
        r#","thousandths":1000,"unit":"ounce""#,
        mass_of_unit,
    ),
    question("parts_for_volume", NINE, parts),
    question(
        "volume_from_concentrate",
        r#","concentrate_microlitres":100000,"parts_of_water_thousandths":9000"#,
        volume_of_concentrate,
    ),
    question(
        "water_to_weaken",
        concat!(
            r#","volume_microlitres":1000000,"from_parts_of_water_thousandths":9000,"#,
            r#""to_parts_of_water_thousandths":14000"#
        ),
        weaken,
    ),
    question(
        "dilution_of_parts",
        r#","concentrate_microlitres":48500,"water_microlitres":451500"#,
        dilution_of_parts,
    ),
    question(
        "measure",
        concat!(
            r#","volume_microlitres":485000,"parts_of_water_thousandths":9000,"#,
            r#""graduation_microlitres":2000"#
        ),
        measured,
    ),
    question(
        "kit_volumes",
        r#","parts_thousandths":[1000,1000],"water_thousandths":8000,"volume_microlitres":1000000"#,
        kit,
    ),
    question(
        "packets_for_powder",
        concat!(
            r#","wanted_microlitres":1500000,"packet_makes_microlitres":1000000,"#,
            r#""part_packets":false"#
        ),
        packets,
    ),
    question(
        "use_by",
        concat!(
            r#","made_us":1764104400000000,"opened_us":1764190800000000,"#,
            r#""life":{"full_seconds":15552000,"part_seconds":5184000}"#
        ),
        keeps,
    ),
    question(
        "percentage",
        concat!(
            r#","strong_percent_thousandths":54000,"weak_percent_thousandths":8000,"#,
            r#""target_percent_thousandths":26000,"total_micrograms":600000000"#
        ),
        percentage,
    ),
    question("water_temperature", MIX, water),
    question(
        "mix_temperature",
        concat!(
            r#","volume_microlitres":1000000,"concentrate_microlitres":100000,"#,
            r#""concentrate_tenths_celsius":150,"water_tenths_celsius":206"#
        ),
        mixed_temperature,
    ),
    question(
        "plan_water",
        concat!(
            r#","volume_microlitres":1000000,"concentrate_microlitres":100000,"#,
            r#""wanted_tenths_celsius":200,"concentrate_tenths_celsius":150,"#,
            r#""hot_tenths_celsius":550,"cold_tenths_celsius":120,"warmest_tenths_celsius":400"#
        ),
        planned_water,
    ),
];

/// The area of a sheet from its sides.
pub(super) fn area(fields: &mut Fields) -> Result<Area, Refusal> {
    sheet(fields)?.area().blame("long_tenths_mm")
}

fn sheet(fields: &mut Fields) -> Result<SheetSize, Refusal> {
    let long: TenthsMm = fields.take("long_tenths_mm")?;
    let short: TenthsMm = fields.take("short_tenths_mm")?;
    SheetSize::new(long, short).blame("short_tenths_mm")
}

fn sheet_size(fields: &mut Fields) -> Answer {
    let size = sheet(fields)?;
    let sheets = fields.take_or("sheets", 1)?;
    let area = size.area().blame("long_tenths_mm")?;
    Ok(json!({
        "long_tenths_mm": size.long(),
        "short_tenths_mm": size.short(),
        "area_hundredths_mm2": area,
        "sheets_8x10_millionths": sheet_equivalents(sheets, area).blame("sheets")?,
    }))
}

fn standard_sizes(_: &mut Fields) -> Answer {
    Ok(json!({ "sizes": STANDARD_SIZES }))
}

fn inches(fields: &mut Fields) -> Answer {
    let inches = fields.take("inches_thousandths")?;
    let length = TenthsMm::from_thousandths_inch(inches).blame("inches_thousandths")?;
    Ok(json!({ "length_tenths_mm": length }))
}

fn volume_of_unit(fields: &mut Fields) -> Answer {
    let unit: VolumeUnit = fields.take("unit")?;
    let volume = volume_in_microlitres(fields.take("thousandths")?, unit).blame("thousandths")?;
    Ok(json!({ "volume_microlitres": volume }))
}

fn volume_in_unit(fields: &mut Fields) -> Answer {
    let volume = fields.take("volume_microlitres")?;
    let thousandths =
        volume_in_unit_thousandths(volume, fields.take("unit")?).blame("volume_microlitres")?;
    Ok(json!({ "thousandths": thousandths }))
}

fn mass_of_unit(fields: &mut Fields) -> Answer {
    let unit: MassUnit = fields.take("unit")?;
    let mass = mass_in_micrograms(fields.take("thousandths")?, unit).blame("thousandths")?;
    Ok(json!({ "mass_micrograms": mass }))
}

fn parts(fields: &mut Fields) -> Answer {
    let dilution = fields.take("parts_of_water_thousandths")?;
    let volume = fields.take("volume_microlitres")?;
    Ok(json!(
        parts_for_volume(dilution, volume).blame("volume_microlitres")?
    ))
}

fn volume_of_concentrate(fields: &mut Fields) -> Answer {
    let dilution = fields.take("parts_of_water_thousandths")?;
    let concentrate: Microlitres = fields.take("concentrate_microlitres")?;
    let volume = volume_from_concentrate(dilution, concentrate).blame("concentrate_microlitres")?;
    let water = volume.minus(concentrate).blame("concentrate_microlitres")?;
    Ok(json!({ "volume_microlitres": volume, "water_microlitres": water }))
}

fn weaken(fields: &mut Fields) -> Answer {
    let volume = fields.take("volume_microlitres")?;
    let from = fields.take("from_parts_of_water_thousandths")?;
    let to = fields.take("to_parts_of_water_thousandths")?;
    let water = water_to_weaken(volume, from, to).blame_by(|reason| match reason {
        DilutionError::NotWeaker => "to_parts_of_water_thousandths",
        _ => "volume_microlitres",
    })?;
    Ok(json!({ "water_microlitres": water }))
}

fn dilution_of_parts(fields: &mut Fields) -> Answer {
    let concentrate = fields.take("concentrate_microlitres")?;
    let water = fields.take("water_microlitres")?;
    let dilution: Dilution =
        Dilution::from_parts(concentrate, water).blame("concentrate_microlitres")?;
    Ok(json!({ "parts_of_water_thousandths": dilution.parts_of_water_thousandths() }))
}

fn measured(fields: &mut Fields) -> Answer {
    let dilution = fields.take("parts_of_water_thousandths")?;
    let volume = fields.take("volume_microlitres")?;
    let graduation = fields.take("graduation_microlitres")?;
    let measured = measure(dilution, volume, graduation).blame_by(|reason| match reason {
        MeasuringError::Dilution(_) | MeasuringError::Quantity(_) => "volume_microlitres",
        _ => "graduation_microlitres",
    })?;
    Ok(json!(measured))
}

fn kit(fields: &mut Fields) -> Answer {
    let parts: Vec<u32> = fields.take("parts_thousandths")?;
    let water = fields.take_or("water_thousandths", 0)?;
    let volume = fields.take("volume_microlitres")?;
    let volumes = kit_volumes(&parts, water, volume).blame_by(|reason| match reason {
        KitError::Parts => "parts_thousandths",
        _ => "volume_microlitres",
    })?;
    Ok(json!(volumes))
}

fn packets(fields: &mut Fields) -> Answer {
    let wanted = fields.take("wanted_microlitres")?;
    let makes = fields.take("packet_makes_microlitres")?;
    let part_packets = fields.take_or("part_packets", false)?;
    Ok(json!(
        packets_for(wanted, makes, part_packets).blame("wanted_microlitres")?
    ))
}

fn keeps(fields: &mut Fields) -> Answer {
    let made = fields.take("made_us")?;
    let opened = fields.take_or("opened_us", None)?;
    Ok(json!({ "use_by_us": use_by(made, opened, fields.take("life")?) }))
}

fn percentage(fields: &mut Fields) -> Answer {
    let strong = fields.take("strong_percent_thousandths")?;
    let weak = fields.take("weak_percent_thousandths")?;
    let target = fields.take("target_percent_thousandths")?;
    let total = fields.take("total_micrograms")?;
    let square = pearson(strong, weak, target).blame_by(|reason| match reason {
        PercentageError::NotStronger => "strong_percent_thousandths",
        _ => "target_percent_thousandths",
    })?;
    let weights = weights_for(square, total).blame("total_micrograms")?;
    Ok(json!({
        "strong_parts_thousandths": square.strong_parts_thousandths,
        "weak_parts_thousandths": square.weak_parts_thousandths,
        "strong_micrograms": weights.strong,
        "weak_micrograms": weights.weak,
    }))
}

fn wanted_mix(fields: &mut Fields) -> Result<WantedMix, Refusal> {
    Ok(WantedMix {
        volume: fields.take("volume_microlitres")?,
        concentrate: fields.take("concentrate_microlitres")?,
        wanted: fields.take("wanted_tenths_celsius")?,
        concentrate_temperature: fields.take("concentrate_tenths_celsius")?,
    })
}

fn water(fields: &mut Fields) -> Answer {
    let water = water_temperature(wanted_mix(fields)?).blame("volume_microlitres")?;
    Ok(json!({ "water_tenths_celsius": water }))
}

fn mixed_temperature(fields: &mut Fields) -> Answer {
    let concentrate_temperature = fields.take("concentrate_tenths_celsius")?;
    let mix = WantedMix {
        volume: fields.take("volume_microlitres")?,
        concentrate: fields.take("concentrate_microlitres")?,
        // The temperature wanted has no part in the one that results.
        wanted: concentrate_temperature,
        concentrate_temperature,
    };
    let mixed = mix_temperature(mix, fields.take("water_tenths_celsius")?);
    Ok(json!({ "mix_tenths_celsius": mixed.blame("volume_microlitres")? }))
}

fn planned_water(fields: &mut Fields) -> Answer {
    let mix = wanted_mix(fields)?;
    let taps = Taps {
        hot: fields.take("hot_tenths_celsius")?,
        cold: fields.take("cold_tenths_celsius")?,
        warmest: fields.take_or("warmest_tenths_celsius", WARMEST_WATER)?,
    };
    let plan = plan_water(mix, taps).blame_by(|reason| match reason {
        WaterError::TapsSwapped => "hot_tenths_celsius",
        WaterError::ColdTooWarm => "cold_tenths_celsius",
        _ => "volume_microlitres",
    })?;
    let drawn = |reached: bool, drawn: Drawn, mixed| {
        json!({
            "reached": reached,
            "water_tenths_celsius": drawn.temperature,
            "hot_ppb": drawn.hot_ppb,
            "hot_microlitres": drawn.hot,
            "cold_microlitres": drawn.cold,
            "mix_tenths_celsius": mixed,
        })
    };
    Ok(match plan {
        WaterPlan::Reached(water) => drawn(true, water, mix.wanted),
        WaterPlan::Nearest(water, mixed) => drawn(false, water, mixed),
        WaterPlan::AsItIs(mixed) => {
            json!({ "reached": mixed == mix.wanted, "mix_tenths_celsius": mixed })
        }
    })
}
