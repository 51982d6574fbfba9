//! Incidents of the house: each theirs to see, and a steward's to open.

use uuid::Uuid;
use wetside::clock::micros;
use wetside::identity::Person;
use wetside::incidents::actions::{NewIncident, open, report};
use wetside::incidents::{Details, What};
use wetside::rights::{OpenIncident, ReportIncident};

use crate::harness::{START, Stage, new_key};

/// A near miss of each of the cast but the steward; that of the member, which the steward
/// looked at.
pub(super) async fn incident(stage: &Stage) -> Uuid {
    let cast = &stage.cast;
    for other in [&cast.trained, &cast.treasurer] {
        near_miss(stage, other).await;
    }
    let id = near_miss(stage, &cast.member).await;
    let permit = stage.permit::<OpenIncident>(&cast.steward).await.unwrap();
    open(&stage.installation.app, &permit, new_key(), id)
        .await
        .unwrap();
    id
}

async fn near_miss(stage: &Stage, person: &Person) -> Uuid {
    let permit = stage.permit::<ReportIncident>(person).await.unwrap();
    let new = NewIncident {
        person_id: person.id,
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
    let done = report(&stage.installation.app, &permit, new_key(), new).await;
    done.unwrap().id("incident").unwrap()
}
