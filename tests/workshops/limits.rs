//! How many may come in.

use futures_util::future::join;
use wetside::arrivals::actions::arrive;
use wetside::error::{Error, Result};
use wetside::identity::permit_for;
use wetside::logbook::Done;
use wetside::problem::Problem;
use wetside::rights::Arrive;

use super::{sign_in_at, taken};
use crate::harness::{new_key, scenario};

fn places(outcome: Result<Done>) -> usize {
    match outcome {
        Err(Error::Invalid(problems)) => match problems.iter().next() {
            Some(("names", Problem::TooManyGuests { places })) => *places,
            other => panic!("{other:?}"),
        },
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_list_that_does_not_fit_is_refused_whole() {
    scenario(async |stage| {
        let id = stage.opened().await;
        // The workshop takes five, the room ten.
        let six = ["A", "B", "C", "D", "E", "F"];
        assert_eq!(places(stage.come(id, &six).await), 5);
        assert!(stage.guests_of(id).await.is_empty());
        stage.come(id, &six[..4]).await.unwrap();
        assert_eq!(places(stage.come(id, &six[4..]).await), 1);
        // Who left makes room again.
        let first = stage.guests_of(id).await[0].id;
        stage.go(&stage.cast.member, id, vec![first]).await.unwrap();
        stage.come(id, &six[4..]).await.unwrap();
        // The room's places count as well, and one too many is said in a sentence.
        stage.go(&stage.cast.member, id, Vec::new()).await.unwrap();
        stage.sets("people_limit", "3").await;
        let mut leader = stage.browser(&stage.cast.member).await;
        let path = stage.at(&format!("/workshops/{id}/guests"));
        let page = leader.get(&path).await.expect(200);
        let form = page.page().form("Sign them in").unwrap();
        let refused = leader
            .submit(&form.with("names", "A\nB\nC"))
            .await
            .expect(422);
        let said = refused.page().main();
        assert!(said.contains("There are 2 places left"), "{said}");
        assert!(said.contains("Nobody of this list was signed in"), "{said}");
        // What was typed is kept.
        let form = refused.page().form("Sign them in").unwrap();
        assert_eq!(form.value("names").map(str::trim), Some("A\nB\nC"));
        stage.come(id, &["A", "B"]).await.unwrap();
        let full = stage.arrives(&stage.cast.trained).await;
        assert!(matches!(
            full,
            Err(Error::Refused(Problem::RoomFull { places: 3 }))
        ));
        let board = stage.looks(&stage.cast.trained, "/board").await;
        assert_eq!(taken(&board), "3 of 3 places taken: the room is full");
    });
}

/// A guest and a member at the last place, at two servers.
#[test]
fn of_two_at_the_last_place_exactly_one_gets_it() {
    scenario(async |stage| {
        let id = stage.opened().await;
        let second = stage.installation.second();
        for round in 0..4 {
            let there = 1 + stage
                .guests_of(id)
                .await
                .iter()
                .filter(|guest| guest.left_at.is_none())
                .count();
            stage.sets("people_limit", &(there + 1).to_string()).await;
            let app = &stage.installation.app;
            let (here, beyond) = if round % 2 == 0 {
                (app, &second)
            } else {
                (&second, app)
            };
            let trained = &stage.cast.trained;
            let permit = permit_for::<Arrive>(here, trained.clone(), &stage.slug).await;
            let permit = permit.unwrap();
            let member = &stage.cast.member;
            let (came, guest) = join(
                arrive(here, &permit, new_key(), None),
                sign_in_at(beyond, &stage, member, id, &["A guest"]),
            )
            .await;
            assert!(came.is_ok() != guest.is_ok(), "{came:?} {guest:?}");
            if came.is_ok() {
                stage.leaves(trained).await.unwrap();
            }
        }
        second.database().close().await;
    });
}
