//! Workshops and the guests at them.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "what fails here fails the test"
)]

mod api;
mod day;
mod ending;
mod erasing;
mod guests;
mod limits;
mod planning;

use time::{Duration, OffsetDateTime};
use uuid::Uuid;
use wetside::app::App;
use wetside::clock::micros;
use wetside::error::Result;
use wetside::identity::{Person, permit_for};
use wetside::logbook::Done;
use wetside::rights::{LeadWorkshop, PlanWorkshop};
use wetside::workshops::actions::{NewWorkshop, set_workshop};
use wetside::workshops::leading::{GuestsOut, NewGuests, Opening, end, open, sign_in, sign_out};
use wetside::workshops::{Guest, cautions, guests};

use crate::harness::{Answer, Browser, Stage, new_key};

impl Stage {
    /// A workshop that begins then, for three hours and five guests.
    fn plan_of(&self, leader: &Person, begins: OffsetDateTime) -> NewWorkshop {
        NewWorkshop {
            id: None,
            title: "First prints".to_owned(),
            leader_id: leader.id,
            space_id: None,
            begins_at_us: micros(begins),
            ends_at_us: micros(begins + Duration::hours(3)),
            most_guests: 5,
            line_ids: Vec::new(),
            paid_by_id: None,
        }
    }

    async fn plans(&self, new: NewWorkshop) -> Result<Uuid> {
        let permit = self.permit::<PlanWorkshop>(&self.cast.steward).await?;
        let app = &self.installation.app;
        set_workshop(app, &permit, new_key(), new)
            .await?
            .id("workshop")
    }

    /// One for the member, an hour from now.
    async fn planned(&self) -> Uuid {
        let begins = self.installation.clock.now() + Duration::hours(1);
        let plan = self.plan_of(&self.cast.member, begins);
        self.plans(plan).await.unwrap()
    }

    /// One that the member has come in for and opened.
    async fn opened(&self) -> Uuid {
        let id = self.planned().await;
        self.arrives(&self.cast.member).await.unwrap();
        self.opens(&self.cast.member, id).await.unwrap();
        id
    }

    /// What is to be read to a group now.
    async fn to_read(&self) -> String {
        let database = self.installation.app.database();
        let read = database.reading(self.scope(), |tx| Box::pin(cautions(tx)));
        read.await.unwrap().read.digest().unwrap()
    }

    async fn opens(&self, person: &Person, id: Uuid) -> Result<Done> {
        let permit = self.permit::<LeadWorkshop>(person).await?;
        let opening = Opening {
            opened_workshop_id: id,
            read: self.to_read().await,
        };
        open(&self.installation.app, &permit, new_key(), opening).await
    }

    async fn come(&self, id: Uuid, names: &[&str]) -> Result<Done> {
        let app = &self.installation.app;
        sign_in_at(app, self, &self.cast.member, id, names).await
    }

    async fn go(&self, person: &Person, id: Uuid, guest_ids: Vec<Uuid>) -> Result<Done> {
        let permit = self.permit::<LeadWorkshop>(person).await?;
        let out = GuestsOut {
            workshop_id: id,
            guest_ids,
        };
        sign_out(&self.installation.app, &permit, new_key(), out).await
    }

    async fn is_ended(&self, person: &Person, id: Uuid) -> Result<Done> {
        let permit = self.permit::<LeadWorkshop>(person).await?;
        end(&self.installation.app, &permit, new_key(), id).await
    }

    async fn guests_of(&self, id: Uuid) -> Vec<Guest> {
        let database = self.installation.app.database();
        let read = database.reading(self.scope(), move |tx| Box::pin(guests(tx, id)));
        read.await.unwrap()
    }

    /// Sets one of the room's figures.
    async fn sets(&self, field: &str, value: &str) {
        let mut steward = self.browser(&self.cast.steward).await;
        let page = look(&mut steward, self, "/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        steward.submit(&form.with(field, value)).await.expect(303);
    }
}

/// Signs guests in at one of several servers.
async fn sign_in_at(
    app: &App,
    stage: &Stage,
    person: &Person,
    workshop_id: Uuid,
    names: &[&str],
) -> Result<Done> {
    let permit = permit_for::<LeadWorkshop>(app, person.clone(), &stage.slug).await?;
    let new = NewGuests {
        workshop_id,
        names: names.iter().map(|&name| name.to_owned()).collect(),
    };
    sign_in(app, &permit, new_key(), new).await
}

async fn look(browser: &mut Browser, stage: &Stage, path: &str) -> Answer {
    browser.get(&stage.at(path)).await.expect(200)
}

/// How many places are taken, as the board says it.
fn taken(board: &Answer) -> String {
    board.page().first("#present .present-count").unwrap()
}
