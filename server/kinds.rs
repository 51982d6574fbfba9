//! Every kind of entry the program writes, by its noun.

use crate::logbook::Kind;
use crate::papers;

/// The table of kinds.
pub const KINDS: &[Kind] = &[
    Kind::of::<papers::SheetSizeSet>(),
    Kind::of::<papers::PaperClassSet>(),
];
