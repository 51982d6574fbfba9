//! Topics, inductions and the gate: what somebody must know before they come in, who
//! told them, and that both sides say so.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "what fails here fails the test"
)]

mod api;
mod confirming;
mod due;
mod gate;
mod log;
mod scans;
mod supplements;
mod topics;

use uuid::Uuid;
use wetside::arrivals::actions::{NewSupervised, arrive, supervise};
use wetside::database::Scope;
use wetside::error::{Error, Result};
use wetside::identity::Person;
use wetside::inductions::actions::{NewInduction, induct};
use wetside::inductions::confirming::confirm_own;
use wetside::inductions::{Lack, Standing, lacks};
use wetside::logbook::Done;
use wetside::problem::Problem;
use wetside::rights::{Arrive, ConfirmInductions, Induct, KeepTopics, Supervise};
use wetside::topics::actions::{NewTopic, copy_starter, set_topic};
use wetside::topics::{Required, Topic};

use crate::harness::{Stage, Visitor, new_key};

impl Stage {
    /// A topic that is required so.
    async fn topic(&self, title: &str, required: Required) -> Uuid {
        let new = NewTopic {
            id: None,
            title: title.to_owned(),
            body: "Say it aloud.".to_owned(),
            required,
            good_months: Some(24),
            asks_anew: true,
            is_retired: false,
        };
        self.sets_topic(new).await.unwrap().id("topic").unwrap()
    }

    async fn sets_topic(&self, new: NewTopic) -> Result<Done> {
        let permit = self.permit::<KeepTopics>(&self.cast.steward).await?;
        set_topic(&self.installation.app, &permit, new_key(), new).await
    }

    async fn copies_starter(&self) -> Result<Done> {
        let permit = self.permit::<KeepTopics>(&self.cast.steward).await?;
        copy_starter(&self.installation.app, &permit, new_key(), ()).await
    }

    async fn topics(&self) -> Vec<Topic> {
        let database = self.installation.app.database();
        let read = database.reading(self.scope(), |tx| Box::pin(wetside::topics::topics(tx)));
        read.await.unwrap()
    }

    pub(crate) fn scope(&self) -> Scope {
        Scope {
            room: self.room,
            person: None,
        }
    }

    /// The steward records what somebody was told.
    async fn inducts(&self, person: &Person, topics: &[Uuid]) -> Result<Uuid> {
        let new = NewInduction {
            person_ids: vec![person.id],
            topic_ids: topics.to_vec(),
            given_on: None,
            is_on_paper: false,
            remark: String::new(),
            renews_id: None,
        };
        self.records(new).await?.id("induction")
    }

    async fn records(&self, new: NewInduction) -> Result<Done> {
        let permit = self.permit::<Induct>(&self.cast.steward).await?;
        induct(&self.installation.app, &permit, new_key(), new).await
    }

    async fn confirms(&self, person: &Person) -> Result<Done> {
        let permit = self.permit::<ConfirmInductions>(person).await?;
        confirm_own(&self.installation.app, &permit, new_key()).await
    }

    async fn comes(&self, person: &Person) -> Result<Done> {
        let permit = self.permit::<Arrive>(person).await?;
        let until_us = self.an_hour().await;
        arrive(&self.installation.app, &permit, new_key(), until_us).await
    }

    async fn lets_in(&self, person: &Person) -> Result<Done> {
        let permit = self.permit::<Supervise>(&self.cast.steward).await?;
        let new = NewSupervised {
            person_id: person.id,
            until_us: self.an_hour().await,
        };
        supervise(&self.installation.app, &permit, new_key(), new).await
    }

    /// What somebody lacks today.
    async fn lacks(&self, person: &Person) -> Vec<(String, Standing)> {
        let (id, now) = (person.id, self.installation.clock.now());
        let database = self.installation.app.database();
        let read = database.reading(self.scope(), move |tx| {
            Box::pin(async move {
                let zone = wetside::rooms::settings(tx).await?.time_zone()?;
                lacks(tx, id, &zone.date_value(now)).await
            })
        });
        let named = |lack: Lack| (lack.title, lack.standing);
        read.await.unwrap().into_iter().map(named).collect()
    }
}

impl Visitor {
    /// What somebody's notices say, newest first.
    async fn notices_told(&mut self) -> Vec<String> {
        let page = self.open("/notices").await;
        let all = page.page().all(".events li p").into_iter();
        all.map(|said| said.trim_start_matches("new ").to_owned())
            .collect()
    }
}

/// What kept somebody out: what is missing, and who can give it.
fn refused(outcome: Result<Done>) -> (Vec<String>, Vec<String>) {
    match outcome {
        Err(Error::Refused(Problem::NotInducted { missing, stewards })) => (missing, stewards),
        other => panic!("{other:?}"),
    }
}

fn titles(lacks: &[(String, Standing)]) -> Vec<&str> {
    lacks.iter().map(|(title, _)| title.as_str()).collect()
}
