//! Every visible sentence that does not stand in a template.

pub mod bench;
pub mod verdicts;

use crate::problem::Problem;
use crate::web::numbers::Numbers;

/// stand-in
#[must_use]
pub fn problem(problem: &Problem, _numbers: Numbers) -> String {
    format!("{problem:?}")
}
