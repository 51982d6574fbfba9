//! The demo's finishing times and bottles.

use uuid::Uuid;

use super::Stage;
use super::people::Cast;
use crate::bench::bottles::actions::{NewBottle, set_bottle};
use crate::bench::finishing::actions::{NewFinishing, set_finishing};
use crate::error::Result;
use crate::papers::PaperClass;
use crate::rights::KeepBench;

const INVENTED: &str = "invented for the demo";

/// Enters times for each class, and two bottles. The second class takes longer.
pub(super) async fn act(
    stage: &mut Stage,
    cast: &Cast,
    line_id: Uuid,
    classes: &[PaperClass],
) -> Result<()> {
    let permit = stage.permit::<KeepBench>(&cast.steward).await?;
    for (place, class) in classes.iter().enumerate() {
        let is_slow = place == 1;
        let new = NewFinishing {
            line_id,
            paper_class_id: class.id,
            fix_s: if is_slow { 120 } else { 45 },
            longest_fix_s: if is_slow { 300 } else { 120 },
            rinse_s: if is_slow { 300 } else { 30 },
            wash_aid_s: is_slow.then_some(600),
            wash_with_aid_s: is_slow.then_some(1_200),
            wash_without_aid_s: if is_slow { 3_600 } else { 300 },
            basis: INVENTED.to_owned(),
        };
        let key = stage.key();
        set_finishing(&stage.app, &permit, key, new).await?;
    }
    for (name, holds_ul) in [("Brown 1", 1_000_000), ("Accordion", 2_000_000)] {
        let new = NewBottle {
            id: None,
            name: name.to_owned(),
            holds_ul,
            is_retired: false,
        };
        let key = stage.key();
        set_bottle(&stage.app, &permit, key, new).await?;
    }
    Ok(())
}
