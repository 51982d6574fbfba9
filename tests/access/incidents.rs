//! An incident of the house's member: theirs to see, and a steward's to open.

use uuid::Uuid;
use wetside::clock::micros;
use wetside::incidents::actions::{NewIncident, open, report};
use wetside::incidents::{Details, What};
use wetside::rights::{OpenIncident, ReportIncident};

use crate::harness::{START, Stage, new_key};

/// A near miss, looked at.
pub(super) async fn incident(stage: &Stage) -> Uuid {
    let (member, steward) = (&stage.cast.member, &stage.cast.steward);
    let permit = stage.permit::<ReportIncident>(member).await.unwrap();
    let new = NewIncident {
        person_id: member.id,
        details: Details {
            what: What::NearMiss,
            happened_at_us: micros(START),
            line_id: None,
            product_id: None,
            part: None,
            first: Vec::new(),
            words: "A full tray almost tipped.".to_owned(),
        },
    };
    let app = &stage.installation.app;
    let done = report(app, &permit, new_key(), new).await.unwrap();
    let id = done.id("incident").unwrap();
    let permit = stage.permit::<OpenIncident>(steward).await.unwrap();
    open(app, &permit, new_key(), id).await.unwrap();
    id
}
