//! Questions about time, temperature and emergence, and about paper in the light of a
//! lamp.

use serde_json::json;

use super::fields::{Blame, Fields};
use super::{Answer, Question, Refusal, question};
use crate::darkroom::fog::{FogError, SafeTime, Steps, safe_time};
use crate::darkroom::quantities::TenthsCelsius;
use crate::darkroom::time_temperature::{
    Agent, Coefficient, TimeError, Timed, WorkingRange, emergence_advice, emergence_ratio, factor,
    factor_of_agents, factorial_time, time_at,
};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "time_at_temperature",
        concat!(
            r#","one":{"time_seconds":90,"tenths_celsius":200},"#,
            r#""other":{"time_seconds":60,"tenths_celsius":240},"#,
            r#""lowest_tenths_celsius":180,"highest_tenths_celsius":240,"at_tenths_celsius":220"#
        ),
        at_temperature,
    ),
    question(
        "factor",
        r#","development_seconds":1200,"emergence_seconds":30"#,
        fresh_factor,
    ),
    question(
        "factorial_time",
        r#","emergence_seconds":9,"factor_thousandths":15000"#,
        by_factor,
    ),
    question(
        "factor_of_agents",
        concat!(
            r#","agents":[{"factor_thousandths":6000,"parts_thousandths":4000},"#,
            r#"{"factor_thousandths":30000,"parts_thousandths":2000}]"#
        ),
        agents,
    ),
    question(
        "emergence",
        concat!(
            r#","fresh":{"time_seconds":10,"tenths_celsius":200},"#,
            r#""now":{"time_seconds":14,"tenths_celsius":190},"#,
            r#""one":{"time_seconds":90,"tenths_celsius":200},"#,
            r#""other":{"time_seconds":60,"tenths_celsius":240}"#
        ),
        emergence,
    ),
    question(
        "fog_test",
        r#","longest_clean_seconds":240,"shortest_fogged_seconds":480"#,
        fog_test,
    ),
];

fn coefficient(one: Timed, other: Timed) -> Result<Coefficient, Refusal> {
    Coefficient::from_points(one, other).blame("other")
}

fn at_temperature(fields: &mut Fields) -> Answer {
    let one: Timed = fields.take("one")?;
    let coefficient = coefficient(one, fields.take("other")?)?;
    let range = WorkingRange {
        lowest: fields.take("lowest_tenths_celsius")?,
        highest: fields.take("highest_tenths_celsius")?,
    };
    let at: TenthsCelsius = fields.take("at_tenths_celsius")?;
    let time = time_at(one, coefficient, at, range).blame("at_tenths_celsius")?;
    Ok(json!({ "time_seconds": time, "coefficient_per_10_celsius": coefficient.get() }))
}

fn fresh_factor(fields: &mut Fields) -> Answer {
    let development = fields.take("development_seconds")?;
    let emergence = fields.take("emergence_seconds")?;
    Ok(json!({ "factor_thousandths": factor(development, emergence).blame("emergence_seconds")? }))
}

fn by_factor(fields: &mut Fields) -> Answer {
    let emergence = fields.take("emergence_seconds")?;
    let time = factorial_time(emergence, fields.take("factor_thousandths")?);
    Ok(json!({ "time_seconds": time.blame("emergence_seconds")? }))
}

fn agents(fields: &mut Fields) -> Answer {
    let agents: Vec<Agent> = fields.take("agents")?;
    Ok(json!({ "factor_thousandths": factor_of_agents(&agents).blame("agents")? }))
}

fn emergence(fields: &mut Fields) -> Answer {
    let fresh = fields.take("fresh")?;
    let now = fields.take("now")?;
    let one: Option<Timed> = fields.take_or("one", None)?;
    let other: Option<Timed> = fields.take_or("other", None)?;
    let points = one
        .zip(other)
        .map(|(one, other)| coefficient(one, other))
        .transpose()?;
    let ratio = emergence_ratio(fresh, now, points).blame_by(|reason| match reason {
        TimeError::NotComparable => "other",
        _ => "now",
    })?;
    Ok(json!({ "ratio_thousandths": ratio, "advice": emergence_advice(ratio) }))
}

/// A step that is left out was not found: nothing stayed clean, or nothing fogged.
fn fog_test(fields: &mut Fields) -> Answer {
    let steps = Steps {
        longest_clean: fields.take_or("longest_clean_seconds", None)?,
        shortest_fogged: fields.take_or("shortest_fogged_seconds", None)?,
    };
    let time = safe_time(steps).blame_by(|reason| match reason {
        FogError::OutOfOrder => "shortest_fogged_seconds",
        _ => "longest_clean_seconds",
    })?;
    let found = match time {
        SafeTime::Reckoned(_) => "reckoned",
        SafeTime::NothingFogged(_) => "nothing_fogged",
        SafeTime::AllFogged => "all_fogged",
    };
    Ok(json!({ "safe_seconds": time.seconds(), "found": found }))
}
