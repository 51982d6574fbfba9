//! Every kind of entry the program writes, by its noun.

use crate::logbook::Kind;
use crate::{bench, mixes, papers, products, sheets};

/// The table of kinds.
pub const KINDS: &[Kind] = &[
    Kind::of::<papers::SheetSizeSet>(),
    Kind::of::<papers::PaperClassSet>(),
    Kind::of::<products::ProductSet>(),
    Kind::of::<bench::LineSet>(),
    Kind::of::<bench::TraySet>(),
    Kind::of::<mixes::Mixed>(),
    Kind::of::<mixes::Discarded>(),
    Kind::of::<sheets::Noted>(),
    Kind::of::<sheets::NoteUndone>(),
];
