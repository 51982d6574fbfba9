//! Finishing times as typed, read and written.

use uuid::Uuid;

use super::actions::NewFinishing;
use super::views::FinishingForm;
use super::{Finishing, input};
use crate::input::needed_note;
use crate::problem::{Problem, Problems};
use crate::web::minutes::{read_minutes, write_minutes};
use crate::web::numbers::Numbers;

/// Times as their form shows them.
pub(super) fn of_finishing(times: &Finishing, key: String, numbers: Numbers) -> FinishingForm {
    let write = |seconds: i64| write_minutes(seconds, numbers);
    FinishingForm {
        key,
        fix: write(times.fix_s),
        longest_fix: write(times.longest_fix_s),
        rinse: write(times.rinse_s),
        wash_aid: times.wash_aid_s.map(write).unwrap_or_default(),
        wash_with_aid: times.wash_with_aid_s.map(write).unwrap_or_default(),
        wash_without_aid: write(times.wash_without_aid_s),
        basis: times.basis.clone(),
    }
}

/// Times as typed, read.
pub(super) fn read_finishing(
    form: &FinishingForm,
    (line_id, paper_class_id): (Uuid, Uuid),
    numbers: Numbers,
) -> Result<NewFinishing, Problems> {
    let read = |typed: &str| read_minutes(typed, numbers);
    let if_given = |typed: &str, hold: fn(i64) -> Result<i64, Problem>| match typed.trim() {
        "" => Ok(None),
        typed => read(typed).and_then(hold).map(Some),
    };
    let mut problems = Problems::default();
    let fix = problems.take("fix", read(&form.fix).and_then(input::fix));
    let longest = read(&form.longest_fix).and_then(input::fix);
    let longest = problems.take("longest_fix", longest);
    let rinse = problems.take("rinse", read(&form.rinse).and_then(input::rinse));
    let aid = problems.take("wash_aid", if_given(&form.wash_aid, input::wash_aid));
    let with = problems.take("wash_with_aid", if_given(&form.wash_with_aid, input::wash));
    let without = read(&form.wash_without_aid).and_then(input::wash);
    let without = problems.take("wash_without_aid", without);
    let basis = problems.take("basis", needed_note(&form.basis));
    match (fix, longest, rinse, aid, with, without, basis) {
        (
            Some(fix),
            Some(longest),
            Some(rinse),
            Some(aid),
            Some(with),
            Some(without),
            Some(basis),
        ) => Ok(NewFinishing {
            line_id,
            paper_class_id,
            fix_s: fix,
            longest_fix_s: longest,
            rinse_s: rinse,
            wash_aid_s: aid,
            wash_with_aid_s: with,
            wash_without_aid_s: without,
            basis,
        }),
        _ => Err(problems),
    }
}
