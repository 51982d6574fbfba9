//! The papers of the demo: the starter's, with figures of silver and of what they
//! carry over, and one class and one size more.

use uuid::Uuid;

use super::people::OTTILIE;
use super::stage::Stage;
use super::{INVENTED, missing};
use crate::error::Result;
use crate::papers::actions::{NewPaperClass, NewSheetSize, set_paper_class, set_sheet_size};
use crate::papers::{self, PaperClass, SheetSize, SilverFigures};

/// What the people of the demo print on.
#[derive(Clone, Debug)]
pub(super) struct Papers {
    /// RC, FB, RC of a cool tone, FB of a warm tone, and a class that is retired.
    pub(super) classes: Vec<PaperClass>,
    /// The starter's sizes, and one more.
    pub(super) sizes: Vec<SheetSize>,
}

/// The class that the room gives up.
const OLD_CLASS: &str = "RC, old stock";
/// The size that the room gives up.
const OLD_SIZE: &str = "A3";
/// 8×10 in, by place in the list.
pub(super) const EIGHT_BY_TEN: usize = 1;

impl Papers {
    /// The class of that place in the list.
    pub(super) fn class(&self, place: usize) -> Result<Uuid> {
        let found = self.classes.get(place).map(|class| class.id);
        found.ok_or_else(|| missing("classes"))
    }

    /// The size of that place in the list.
    pub(super) fn size(&self, place: usize) -> Result<Uuid> {
        let found = self.sizes.get(place).map(|size| size.id);
        found.ok_or_else(|| missing("sizes"))
    }
}

/// Whether a class is of fibre-base paper.
pub(super) fn is_fibre(class: &PaperClass) -> bool {
    class.name.starts_with("FB")
}

/// The steward enters them.
pub(super) async fn enter(stage: &mut Stage) -> Result<Papers> {
    for class in found(stage).await?.classes {
        let new = figured(Some(class.id), &class.name);
        stage.act(OTTILIE, set_paper_class, new).await?;
    }
    for name in ["FB, warm tone", OLD_CLASS] {
        let new = figured(None, name);
        stage.act(OTTILIE, set_paper_class, new).await?;
    }
    let size = NewSheetSize {
        id: None,
        name: "13×18 cm".to_owned(),
        long_tenths_mm: 1_800,
        short_tenths_mm: 1_300,
        is_retired: false,
    };
    stage.act(OTTILIE, set_sheet_size, size).await?;
    found(stage).await
}

async fn found(stage: &Stage) -> Result<Papers> {
    stage
        .reads(|tx| {
            Box::pin(async move {
                Ok(Papers {
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                })
            })
        })
        .await
}

/// A class with its figures: fibre base holds more and carries more.
fn figured(id: Option<Uuid>, name: &str) -> NewPaperClass {
    let (usual_mg_per_m2, carried_ul) = match name.starts_with("FB") {
        true => (1_200, 90_000),
        false => (800, 35_000),
    };
    NewPaperClass {
        id,
        name: name.to_owned(),
        is_retired: false,
        silver: Some(SilverFigures {
            least_mg_per_m2: usual_mg_per_m2 - 300,
            usual_mg_per_m2,
            most_mg_per_m2: usual_mg_per_m2 + 400,
            least_kept_ppb: 300_000_000,
            usual_kept_ppb: 500_000_000,
            most_kept_ppb: 700_000_000,
            basis: INVENTED.to_owned(),
        }),
        carry_over_ul_per_m2: Some(carried_ul),
    }
}

/// The room gives up a class and a size that nobody buys any more.
pub(super) async fn retire(stage: &mut Stage, papers: &Papers) -> Result<()> {
    let class = papers.classes.iter().find(|class| class.name == OLD_CLASS);
    let class = class.ok_or_else(|| missing("classes"))?;
    let new = NewPaperClass {
        is_retired: true,
        ..figured(Some(class.id), &class.name)
    };
    stage.act(OTTILIE, set_paper_class, new).await?;
    let size = papers.sizes.iter().find(|size| size.name == OLD_SIZE);
    let size = size.ok_or_else(|| missing("sizes"))?;
    let new = NewSheetSize {
        id: Some(size.id),
        name: size.name.clone(),
        long_tenths_mm: size.long_tenths_mm,
        short_tenths_mm: size.short_tenths_mm,
        is_retired: true,
    };
    stage.act(OTTILIE, set_sheet_size, new).await?;
    Ok(())
}
