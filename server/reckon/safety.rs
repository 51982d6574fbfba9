//! Questions about the verdict, about what must not meet, and about what a sheet lists.

use serde_json::{Value, json};

use super::fields::{Blame, Fields};
use super::{Answer, Question, question};
use crate::darkroom::cas::CasNumber;
use crate::darkroom::incompatibility::{Liquid, Pour, judge_pour, judge_pour_of_one_product};
use crate::darkroom::joining::{JoinRefused, Side, may_pour_together, may_top_up};
use crate::darkroom::quantities::Moment;
use crate::darkroom::state::{MixState, TrayState};
use crate::darkroom::verdict::{ExtensionRefused, Reason, extend, fractions, judge};

pub(super) const QUESTIONS: &[Question] = &[
    question(
        "verdict",
        concat!(
            r#","tray":{"mix":{"charge":{"charged_microlitres":1000000,"#,
            r#""spent_nanolitres":840000000},"#,
            r#""age":{"used_ppb":0,"at_us":0,"life_seconds":28800}}},"now_us":18720000000"#
        ),
        verdict,
    ),
    question(
        "used_fractions",
        concat!(
            r#","mix":{"charge":{"charged_microlitres":1000000,"spent_nanolitres":840000000},"#,
            r#""age":{"used_ppb":0,"at_us":0,"life_seconds":28800}},"now_us":18720000000"#
        ),
        used_fractions,
    ),
    question(
        "extend",
        concat!(
            r#","mix":{"charge":{"charged_microlitres":1000000,"#,
            r#""spent_nanolitres":1050000000}},"now_us":0,"until_us":43200000000"#
        ),
        extension,
    ),
    question(
        "may_top_up",
        concat!(
            r#","mix":{"charge":{"charged_microlitres":1000000,"spent_nanolitres":300000000}},"#,
            r#""same_product":true,"same_dilution":true,"now_us":0"#
        ),
        top_up_allowed,
    ),
    question(
        "may_pour_together",
        concat!(
            r#","receiving":{"charge":{"charged_microlitres":1000000,"#,
            r#""spent_nanolitres":300000000}},"poured":{"charge":"#,
            r#"{"charged_microlitres":500000,"spent_nanolitres":100000000}},"#,
            r#""same_product":true,"same_dilution":true,"now_us":0"#
        ),
        pouring_together_allowed,
    ),
    question(
        "pour",
        concat!(
            r#","one":{"solution":["fixer","thiosulfate","ammonium"]},"#,
            r#""other":{"solution":["stop_bath","acid"]}"#
        ),
        pour,
    ),
    question(
        "pour_of_one_product",
        r#","liquid":{"concentrate":["developer"]}"#,
        own_pour,
    ),
    question("cas_number", r#","number":"123-31-9""#, cas_number),
];

fn verdict(fields: &mut Fields) -> Answer {
    let tray: TrayState = fields.take("tray")?;
    let judgement = judge(&tray, fields.take("now_us")?).blame("tray")?;
    let reasons: Vec<Value> = judgement.reasons.iter().map(reason).collect();
    Ok(json!({
        "verdict": judgement.verdict,
        "reasons": reasons,
        "changes_at_us": judgement.changes_at.map(|(moment, _)| moment),
        "changes_to": judgement.changes_at.map(|(_, verdict)| verdict),
    }))
}

/// A reason with a unit at the end of each number's name.
fn reason(reason: &Reason) -> Value {
    match reason {
        Reason::NothingRecorded => json!({ "reason": "nothing_recorded" }),
        Reason::UnknownStart => json!({ "reason": "unknown_start" }),
        Reason::GuessedStart => json!({ "reason": "guessed_start" }),
        Reason::Contaminated(at) => json!({ "reason": "contaminated", "at_us": at }),
        Reason::CheckFailed(failed) => {
            json!({ "reason": "check_failed", "check": failed.kind, "at_us": failed.at })
        }
        Reason::SilverMeasured(reading, limit) => json!({
            "reason": "silver_measured", "at_us": reading.at,
            "silver_mg_per_litre": reading.milligrams_per_litre, "limit_mg_per_litre": limit,
        }),
        Reason::SilverEstimated(silver, limit) => json!({
            "reason": "silver_estimated", "silver_mg_per_litre": silver,
            "limit_mg_per_litre": limit,
        }),
        Reason::ClearingSlow(ratio) => {
            json!({ "reason": "clearing_slow", "ratio_thousandths": ratio })
        }
        Reason::EmergenceSlow(ratio) => {
            json!({ "reason": "emergence_slow", "ratio_thousandths": ratio })
        }
        Reason::Used(measure, used) => {
            json!({ "reason": "used", "of": measure, "used_ppb": used })
        }
        Reason::ExtendedUntil(until) => json!({ "reason": "extended", "until_us": until }),
        Reason::TemperatureOut(found) => {
            json!({ "reason": "temperature_out", "found_tenths_celsius": found })
        }
        Reason::TemperatureNotTaken(since) => {
            json!({ "reason": "temperature_not_taken", "since_us": since })
        }
        Reason::SheetsUnknown(at) => json!({ "reason": "sheets_unknown", "at_us": at }),
        Reason::Tested(check, at, until) => {
            json!({ "reason": "tested", "check": check, "at_us": at, "good_until_us": until })
        }
    }
}

fn used_fractions(fields: &mut Fields) -> Answer {
    let mix: MixState = fields.take("mix")?;
    let used = fractions(&mix, fields.take("now_us")?).blame("mix")?;
    let used: Vec<Value> = used
        .iter()
        .map(|(of, used)| json!({ "of": of, "used_ppb": used }))
        .collect();
    Ok(json!({ "fractions": used }))
}

fn extension(fields: &mut Fields) -> Answer {
    let mix: MixState = fields.take("mix")?;
    let now: Moment = fields.take("now_us")?;
    let given = extend(&mix, now, fields.take("until_us")?).blame_by(|reason| match reason {
        ExtensionRefused::Length => "until_us",
        _ => "mix",
    })?;
    Ok(json!({ "extension": given }))
}

fn top_up_allowed(fields: &mut Fields) -> Answer {
    let mix: MixState = fields.take("mix")?;
    let same_product = fields.take("same_product")?;
    let same_dilution = fields.take("same_dilution")?;
    let now = fields.take("now_us")?;
    may_top_up(&mix, same_product, same_dilution, now).blame_by(|reason| match reason {
        JoinRefused::OtherProduct => "same_product",
        JoinRefused::OtherDilution => "same_dilution",
        _ => "mix",
    })?;
    Ok(json!({ "allowed": true }))
}

fn pouring_together_allowed(fields: &mut Fields) -> Answer {
    let receiving: MixState = fields.take("receiving")?;
    let poured: MixState = fields.take("poured")?;
    let same_product = fields.take("same_product")?;
    let same_dilution = fields.take("same_dilution")?;
    let now = fields.take("now_us")?;
    let allowed = may_pour_together(&receiving, &poured, same_product, same_dilution, now);
    allowed.blame_by(|reason| match reason {
        JoinRefused::OtherProduct => "same_product",
        JoinRefused::OtherDilution => "same_dilution",
        JoinRefused::UsedUp(Side::Poured, _)
        | JoinRefused::Contaminated(Side::Poured)
        | JoinRefused::CheckFailed(Side::Poured)
        | JoinRefused::ReadingOver(Side::Poured)
        | JoinRefused::UnknownStart(Side::Poured) => "poured",
        _ => "receiving",
    })?;
    Ok(json!({ "allowed": true }))
}

/// "allowed" means that no rule forbids it; the answer says what comes first.
fn judged(pour: Pour) -> Value {
    let (verdict, clash) = match pour {
        Pour::Never(clash) => ("never", Some(clash)),
        Pour::NotInOneContainer(clash) => ("not_in_one_container", Some(clash)),
        Pour::Unknown => ("unknown", None),
        Pour::Allowed => ("no_rule_forbids_it", None),
    };
    json!({ "pour": verdict, "clash": clash, "gives": clash.map(|clash| clash.gives()) })
}

fn pour(fields: &mut Fields) -> Answer {
    let one: Liquid = fields.take("one")?;
    Ok(judged(judge_pour(one, fields.take("other")?)))
}

fn own_pour(fields: &mut Fields) -> Answer {
    Ok(judged(judge_pour_of_one_product(fields.take("liquid")?)))
}

fn cas_number(fields: &mut Fields) -> Answer {
    let number: String = fields.take("number")?;
    let number = CasNumber::parse(&number).blame("number")?;
    Ok(json!({ "number": number.to_string() }))
}
