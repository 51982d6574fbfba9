//! Every visible sentence that does not stand in a template.

pub mod verdicts;
