//! Every visible sentence that does not stand in a template.

pub mod entries;
pub mod verdicts;
