//! A workshop of the house that goes on, with a guest.

use time::Duration;
use uuid::Uuid;
use wetside::clock::micros;
use wetside::database::Scope;
use wetside::identity::Person;
use wetside::rights::{LeadWorkshop, PlanWorkshop};
use wetside::workshops::actions::{NewWorkshop, set_workshop};
use wetside::workshops::cautions;
use wetside::workshops::leading::{NewGuests, Opening, open, sign_in};

use crate::harness::{START, Stage, new_key};

/// One led by somebody who is there.
pub(super) async fn workshop(stage: &Stage, leader: &Person) -> Uuid {
    let permit = stage.permit::<PlanWorkshop>(&stage.cast.steward).await;
    let new = NewWorkshop {
        id: None,
        title: "First prints".to_owned(),
        leader_id: leader.id,
        space_id: None,
        begins_at_us: micros(START),
        ends_at_us: micros(START + Duration::hours(3)),
        most_guests: 3,
        line_ids: Vec::new(),
        paid_by_id: None,
    };
    let app = &stage.installation.app;
    let set = set_workshop(app, &permit.unwrap(), new_key(), new).await;
    let workshop_id = set.unwrap().id("workshop").unwrap();
    let scope = Scope {
        room: stage.room,
        person: None,
    };
    let database = app.database();
    let read = database.reading(scope, |tx| Box::pin(cautions(tx)));
    let opening = Opening {
        opened_workshop_id: workshop_id,
        read: read.await.unwrap().read.digest().unwrap(),
    };
    let permit = stage.permit::<LeadWorkshop>(leader).await.unwrap();
    open(app, &permit, new_key(), opening).await.unwrap();
    let new = NewGuests {
        workshop_id,
        names: vec!["Ada Moss".to_owned()],
    };
    sign_in(app, &permit, new_key(), new).await.unwrap();
    workshop_id
}
