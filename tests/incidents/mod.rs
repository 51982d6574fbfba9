//! Incidents: seen by the person and by stewards who are named when they look; erased on
//! request; advised on; and nothing of them anywhere else.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod crawl;
mod opened;
mod own;

use uuid::Uuid;
use wetside::clock::micros;
use wetside::identity::Person;
use wetside::incidents::actions::{NewIncident, report};
use wetside::incidents::{BodyPart, Details, FirstDeed, What};
use wetside::rights::ReportIncident;

use crate::harness::{START, Stage, new_key, scenario};

/// Words that stand nowhere else.
const WORDS: &str = "Marmalade elbow under the seventh lamp";

fn details(what: What, product_id: Option<Uuid>) -> Details {
    Details {
        what,
        happened_at_us: micros(START),
        line_id: None,
        product_id,
        part: (what == What::SkinContact).then_some(BodyPart::Hands),
        first: vec![FirstDeed::LongFlush],
        words: WORDS.to_owned(),
    }
}

impl Stage {
    /// Somebody reports what happened to them.
    async fn happened(&self, person: &Person, details: Details) -> Uuid {
        let permit = self.permit::<ReportIncident>(person).await.unwrap();
        let new = NewIncident {
            person_id: person.id,
            details,
        };
        let app = &self.installation.app;
        let done = report(app, &permit, new_key(), new).await.unwrap();
        done.id("incident").unwrap()
    }
}

/// The key of a request hashes what was asked without salt: nothing of it may be in there,
/// nor in what a fault would print.
#[test]
fn neither_a_fingerprint_nor_what_is_printed_holds_anything_of_it() {
    scenario(async |stage| {
        let sorts = [What::SkinContact, What::Spill, What::NearMiss];
        for what in sorts {
            let one = details(what, None);
            assert!(!format!("{one:?}").contains(WORDS));
            stage.happened(&stage.cast.member, one).await;
        }
        let prints: Vec<Vec<u8>> = sqlx::query_scalar(
            "select distinct fingerprint from entry
            where room_id = $1 and kind = 'incident_reported'",
        )
        .bind(stage.room)
        .fetch_all(&mut stage.installation.db().await)
        .await
        .unwrap();
        assert_eq!(prints.len(), 1);
        let told: i64 = sqlx::query_scalar(
            "select count(*) from entry
            where room_id = $1 and kind like 'incident%'
                and convert_from(payload, 'utf8') ~ 'skin|spill|elbow|near'",
        )
        .bind(stage.room)
        .fetch_one(&mut stage.installation.db().await)
        .await
        .unwrap();
        assert_eq!(told, 0);
    });
}
