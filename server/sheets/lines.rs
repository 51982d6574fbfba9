//! Lines as notes need them: whether one has a toner, and which of its fixers
//! take film.

use time::OffsetDateTime;
use uuid::Uuid;

use super::compose::store::stood;
use crate::bench::{self, Step};
use crate::database::RoomTx;
use crate::error::Result;
use crate::products::Kind;

/// A line in use.
#[derive(Clone, Debug)]
pub(super) struct LineFor {
    /// Which.
    pub(super) id: Uuid,
    /// Its name.
    pub(super) name: String,
    /// Whether a tray of it is for toner, or toner stands in one.
    pub(super) has_toner: bool,
    /// The fixers that stand there, each with the rolls a litre takes, in
    /// thousandths; nothing where it takes paper only.
    pub(super) fixers: Vec<(String, Option<i64>)>,
}

impl LineFor {
    /// Whether rolls of film can be noted there: every fixer has a figure for them.
    pub(super) fn takes_film(&self) -> bool {
        !self.fixers.is_empty() && self.fixers.iter().all(|(_, rolls)| rolls.is_some())
    }
}

/// The lines in use, with what stands in them now.
///
/// # Errors
/// The database's.
pub(super) async fn lines_for(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<LineFor>> {
    let mut lines = bench::lines(tx).await?;
    lines.retain(|line| !line.is_retired);
    let trays = bench::trays(tx).await?;
    let ids: Vec<Uuid> = lines.iter().map(|line| line.id).collect();
    let classes = vec![Uuid::nil(); ids.len()];
    let stood = stood(tx, &ids, &classes, &vec![now; ids.len()]).await?;
    let mut all = Vec::new();
    for (item, line) in (1..).zip(lines) {
        let here = || stood.iter().filter(move |bath| bath.item == item);
        let is_for_toner = |tray: &bench::Tray| {
            tray.line_id == line.id && !tray.is_retired && tray.step == Step::Toner
        };
        let mut fixers = Vec::new();
        for bath in here().filter(|bath| bath.kind == Some(Kind::Fixer)) {
            let figures = bath.figures()?;
            let rolls = figures.and_then(|figures| figures.film_rolls_per_litre_thousandths);
            fixers.push((bath.product.clone().unwrap_or_default(), rolls));
        }
        all.push(LineFor {
            has_toner: trays.iter().any(is_for_toner)
                || here().any(|bath| bath.kind == Some(Kind::Toner)),
            id: line.id,
            name: line.name,
            fixers,
        });
    }
    Ok(all)
}
