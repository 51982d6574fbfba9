//! A topic of the house that nobody needs, and somebody's induction on it.

use uuid::Uuid;
use wetside::identity::Person;
use wetside::inductions::actions::{NewInduction, induct};
use wetside::inductions::scans::{self, NewScan};
use wetside::rights::{Induct, KeepTopics};
use wetside::topics::Required;
use wetside::topics::actions::{NewTopic, set_topic};

use crate::harness::{Stage, new_key};

/// A topic to be asked for.
pub(super) async fn topic(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepTopics>(&stage.cast.steward).await;
    let new = NewTopic {
        id: None,
        title: "Eyewash".to_owned(),
        body: "It hangs left of the sink.\n\nNothing ever stands in front of it.".to_owned(),
        required: Required::Offered,
        good_months: Some(24),
        asks_anew: true,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_topic(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("topic").unwrap()
}

/// Somebody's induction on it, and one of each of the cast but the steward, with a scan;
/// all wait for their confirmation.
pub(super) async fn inductions(stage: &Stage, topic: Uuid, person: &Person) -> Uuid {
    let cast = &stage.cast;
    for other in [&cast.member, &cast.trained, &cast.treasurer] {
        let record = induction(stage, topic, other.id).await;
        scan(stage, record).await;
    }
    induction(stage, topic, person.id).await
}

/// The scan of a record's paper.
pub(super) async fn scan(stage: &Stage, induction_id: Uuid) -> Uuid {
    let permit = stage.permit::<Induct>(&stage.cast.steward).await;
    let new = NewScan {
        induction_id,
        also: Vec::new(),
        file: b"%PDF-1.4\n%%EOF\n".to_vec(),
    };
    let app = &stage.installation.app;
    let done = scans::add(app, &permit.unwrap(), new_key(), new).await;
    done.unwrap().id("scan").unwrap()
}

async fn induction(stage: &Stage, topic: Uuid, person: Uuid) -> Uuid {
    let permit = stage.permit::<Induct>(&stage.cast.steward).await;
    let new = NewInduction {
        person_ids: vec![person],
        topic_ids: vec![topic],
        given_on: None,
        is_on_paper: false,
        remark: String::new(),
        renews_id: None,
    };
    let app = &stage.installation.app;
    let done = induct(app, &permit.unwrap(), new_key(), new).await;
    done.unwrap().id("induction").unwrap()
}
