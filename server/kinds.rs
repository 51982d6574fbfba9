//! Every kind of entry the program writes, by its noun.

use crate::logbook::Kind;

/// The table of kinds.
pub const KINDS: &[Kind] = &[];
