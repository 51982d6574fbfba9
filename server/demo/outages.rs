//! The demo's fan: off for a while before anything was poured.

use time::Duration;

use super::Stage;
use super::people::Cast;
use crate::error::Result;
use crate::outages::What;
use crate::outages::actions::{NewOutage, OutageOver, begin, end};
use crate::rights::NoteOutages;

/// So long before now it went off.
const BEGAN: Duration = Duration::hours(60);
/// So long it was off.
const LASTED: Duration = Duration::minutes(40);

/// Lets the fan go off and on again.
pub(super) async fn act(stage: &mut Stage, cast: &Cast) -> Result<()> {
    stage.before(BEGAN);
    let permit = stage.permit::<NoteOutages>(&cast.trained).await?;
    let new = NewOutage {
        what: What::Fan,
        space_id: None,
        happened_at_us: None,
    };
    let key = stage.key();
    let done = begin(&stage.app, &permit, key, new).await?;
    stage.before(BEGAN - LASTED);
    let over = OutageOver {
        ended_outage_id: done.id("outage")?,
        happened_at_us: None,
    };
    let key = stage.key();
    end(&stage.app, &permit, key, over).await?;
    Ok(())
}
