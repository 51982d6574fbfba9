//! What all pages share.

pub mod failure;
pub mod forms;
pub mod guards;
pub mod messages;
