//! What a new room starts with, noun by noun.

use crate::rooms::actions::Starter;
use crate::{bench, papers, products};

/// Papers first: the starter product has a figure for each class.
pub const STARTERS: &[Starter] = &[
    |book| Box::pin(papers::starter::write(book)),
    |book| Box::pin(products::starter::write(book)),
    |book| Box::pin(bench::starter::write(book)),
];
