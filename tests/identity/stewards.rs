//! What a steward may do to a person, and what not.

use futures_util::future::join;
use time::Duration;
use wetside::database::Scope;
use wetside::error::{Error, Result};
use wetside::identity::accounts;
use wetside::identity::links::{self, Kind};
use wetside::logbook;
use wetside::members::actions::{self, NewRole};
use wetside::members::{self, Joiner};
use wetside::problem::Problem;
use wetside::rights::{KeepMembers, LookAtBoard, MakeResetLink, Role};

use super::helpers::{Home, PASSWORD, Somebody, log_in, new_key, run, secret_of};

fn refused_for<T: std::fmt::Debug>(answer: Result<T>, wanted: &Problem) {
    match answer {
        Err(Error::Refused(problem)) => assert_eq!(&problem, wanted),
        other => panic!("not refused for {wanted:?}: {other:?}"),
    }
}

async fn make_role(home: &Home, by: &Somebody, whose: &Somebody, role: Role) -> Result<()> {
    let permit = home.by::<KeepMembers>(by).await?;
    let new = NewRole {
        person: whose.id,
        role,
    };
    actions::change_role(&home.app, &permit, new_key(), new).await?;
    Ok(())
}

#[test]
fn only_a_steward_keeps_members() {
    run(async {
        let home = Home::new().await;
        for role in [Role::Member, Role::Trained, Role::Treasurer] {
            let somebody = home.member("tomas", role).await;
            let answer = home.by::<KeepMembers>(&somebody).await;
            assert!(matches!(answer, Err(Error::Forbidden)), "{role:?}");
        }
        let elsewhere = Home::new().await;
        let answer = home.by::<KeepMembers>(&elsewhere.steward).await;
        assert!(matches!(answer, Err(Error::NotFound)));
    });
}

#[test]
fn the_last_steward_stays_and_a_second_may_step_down() {
    run(async {
        let home = Home::new().await;
        let steward = &home.steward;
        let answer = make_role(&home, steward, steward, Role::Member).await;
        refused_for(answer, &Problem::LastSteward);
        let second = home.member("lena", Role::Steward).await;
        let permit = home.by_steward::<KeepMembers>().await;
        actions::suspend(&home.app, &permit, new_key(), second.id)
            .await
            .unwrap();
        // A suspended steward is no steward to lean on.
        let answer = make_role(&home, steward, steward, Role::Member).await;
        refused_for(answer, &Problem::LastSteward);
        actions::restore(&home.app, &permit, new_key(), second.id)
            .await
            .unwrap();
        make_role(&home, steward, steward, Role::Member)
            .await
            .unwrap();
        let answer = make_role(&home, &second, &second, Role::Trained).await;
        refused_for(answer, &Problem::LastSteward);
    });
}

#[test]
fn of_two_stewards_who_step_down_at_once_one_stays() {
    run(async {
        for _ in 0..10 {
            let home = Home::new().await;
            let second = home.member("lena", Role::Steward).await;
            let (one, other) = join(
                make_role(&home, &home.steward, &home.steward, Role::Member),
                make_role(&home, &second, &second, Role::Member),
            )
            .await;
            assert!(one.is_ok() != other.is_ok(), "{one:?} {other:?}");
            refused_for(one.and(other), &Problem::LastSteward);
        }
    });
}

#[test]
fn of_two_stewards_who_demote_each_other_at_once_one_stays() {
    run(async {
        for _ in 0..10 {
            let home = Home::new().await;
            let second = home.member("lena", Role::Steward).await;
            let (one, other) = join(
                make_role(&home, &home.steward, &second, Role::Member),
                make_role(&home, &second, &home.steward, Role::Member),
            )
            .await;
            assert!(one.is_ok() != other.is_ok(), "{one:?} {other:?}");
            // Whoever came second had lost the right by then.
            assert!(matches!(one.and(other), Err(Error::Forbidden)));
        }
    });
}

#[test]
fn nobody_suspends_ends_or_resets_themself() {
    run(async {
        let home = Home::new().await;
        home.member("lena", Role::Steward).await;
        let (app, id) = (&home.app, home.steward.id);
        let keep = home.by_steward::<KeepMembers>().await;
        let own = &Problem::NotToOneself;
        refused_for(actions::suspend(app, &keep, new_key(), id).await, own);
        refused_for(actions::end_access(app, &keep, new_key(), id).await, own);
        let reset = home.by_steward::<MakeResetLink>().await;
        refused_for(
            actions::make_reset_link(app, &reset, new_key(), id).await,
            own,
        );
    });
}

#[test]
fn a_membership_is_suspended_restored_and_ended() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let tomas = home.member("tomas", Role::Member).await;
        let keep = home.by_steward::<KeepMembers>().await;
        let unchanged = &Problem::Unchanged;
        refused_for(
            actions::restore(app, &keep, new_key(), tomas.id).await,
            unchanged,
        );
        let key = new_key();
        let done = actions::suspend(app, &keep, key, tomas.id).await.unwrap();
        let again = actions::suspend(app, &keep, key, tomas.id).await.unwrap();
        assert!(again.hit && again.seq == done.seq);
        refused_for(
            actions::suspend(app, &keep, new_key(), tomas.id).await,
            unchanged,
        );
        assert!(home.by::<LookAtBoard>(&tomas).await.is_err());
        // The account is the person's: only this room is shut.
        log_in(app, "192.0.2.1", None, &tomas.log_in_name, PASSWORD)
            .await
            .unwrap();
        actions::restore(app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        home.by::<LookAtBoard>(&tomas).await.unwrap();
        actions::end_access(app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        assert!(home.by::<LookAtBoard>(&tomas).await.is_err());
        let ended = &Problem::AccessEnded;
        refused_for(
            actions::end_access(app, &keep, new_key(), tomas.id).await,
            ended,
        );
        refused_for(
            actions::restore(app, &keep, new_key(), tomas.id).await,
            ended,
        );
        let answer = make_role(&home, &home.steward, &tomas, Role::Trained).await;
        refused_for(answer, ended);
        let stranger = Home::new().await.steward;
        let answer = actions::suspend(app, &keep, new_key(), stranger.id).await;
        assert!(matches!(answer, Err(Error::NotFound)));
    });
}

#[test]
fn no_link_outlives_the_right_to_make_it() {
    run(async {
        let home = Home::new().await;
        let second = home.member("lena", Role::Steward).await;
        let invite = home.by(&second).await.unwrap();
        let made = actions::invite(&home.app, &invite, new_key(), Role::Steward)
            .await
            .unwrap();
        let theirs = secret_of(&made.address.unwrap());
        let ours = home.invitation(Role::Member).await;
        make_role(&home, &home.steward, &second, Role::Member)
            .await
            .unwrap();
        refused_for(
            links::look(&home.app, Kind::Join, &theirs).await,
            &Problem::LinkDead,
        );
        links::look(&home.app, Kind::Join, &ours).await.unwrap();
    });
}

async fn reset_link(home: &Home, whose: &Somebody) -> Result<String> {
    let permit = home.by_steward::<MakeResetLink>().await;
    let made = actions::make_reset_link(&home.app, &permit, new_key(), whose.id).await?;
    Ok(made.address.unwrap())
}

#[test]
fn a_reset_link_is_used_once_and_its_person_sees_it() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let tomas = home.member("tomas", Role::Trained).await;
        let before = log_in(app, "192.0.2.1", None, &tomas.log_in_name, PASSWORD)
            .await
            .unwrap();
        assert!(!before.has_news);
        let secret = secret_of(&reset_link(&home, &tomas).await.unwrap());
        let spare = secret_of(&reset_link(&home, &tomas).await.unwrap());
        let easy = links::reset(app, &secret, "password1234").await;
        assert!(matches!(easy, Err(Error::Invalid(_))));
        let new = "seven quiet enlargers";
        let (one, other) = join(
            links::reset(app, &secret, new),
            links::reset(app, &secret, "eight quiet enlargers"),
        )
        .await;
        assert!(one.is_ok() != other.is_ok(), "{one:?} {other:?}");
        let new = if one.is_ok() {
            new
        } else {
            "eight quiet enlargers"
        };
        refused_for(one.and(other), &Problem::LinkDead);
        refused_for(
            links::look(app, Kind::Reset, &spare).await,
            &Problem::LinkDead,
        );
        for gone in [&tomas.session, &before.session] {
            let answer = app.sessions().find(app, gone).await;
            assert!(matches!(answer, Err(Error::Unauthenticated)));
        }
        home.advance(Duration::minutes(1));
        let after = log_in(app, "192.0.2.1", None, &tomas.log_in_name, new)
            .await
            .unwrap();
        assert!(after.has_news);
        let person = app.sessions().find(app, &after.session).await.unwrap();
        let news = accounts::overview(app, &person).await.unwrap().news;
        assert_eq!(news.len(), 2);
        assert!(
            news.iter()
                .all(|each| each.made_by.as_deref() == Some("ines"))
        );
        let newest = news[0].made_at;
        accounts::seen_news(app, &person, newest).await.unwrap();
        assert!(
            accounts::overview(app, &person)
                .await
                .unwrap()
                .news
                .is_empty()
        );
    });
}

#[test]
fn a_reset_link_is_refused_for_whom_it_is_not_allowed() {
    run(async {
        let home = Home::new().await;
        let not_allowed = &Problem::ResetNotAllowed;
        let fellow = home.member("lena", Role::Steward).await;
        refused_for(reset_link(&home, &fellow).await, not_allowed);

        // In a room that somebody else holds.
        let tomas = home.member("tomas", Role::Member).await;
        let elsewhere = Home::new().await;
        elsewhere
            .join(Joiner::Known(tomas.id), Role::Member)
            .await
            .unwrap();
        refused_for(reset_link(&home, &tomas).await, not_allowed);
        let keep = elsewhere.by_steward::<KeepMembers>().await;
        actions::end_access(&elsewhere.app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        refused_for(reset_link(&home, &tomas).await, not_allowed);

        // In two rooms of the same steward, but steward of one.
        let second = home.second().await;
        let rita = home.member("rita", Role::Member).await;
        second
            .join(Joiner::Known(rita.id), Role::Trained)
            .await
            .unwrap();
        reset_link(&home, &rita).await.unwrap();
        make_role(&second, &home.steward, &rita, Role::Steward)
            .await
            .unwrap();
        refused_for(reset_link(&home, &rita).await, not_allowed);

        // Nobody of this room.
        let stranger = Home::new().await.steward;
        let answer = reset_link(&home, &stranger).await;
        assert!(matches!(answer, Err(Error::NotFound)), "{answer:?}");
    });
}

#[test]
fn a_reset_link_is_dead_once_it_could_not_be_made_any_more() {
    run(async {
        let home = Home::new().await;
        let tomas = home.member("tomas", Role::Member).await;
        let secret = secret_of(&reset_link(&home, &tomas).await.unwrap());
        links::look(&home.app, Kind::Reset, &secret).await.unwrap();
        let elsewhere = Home::new().await;
        elsewhere
            .join(Joiner::Known(tomas.id), Role::Member)
            .await
            .unwrap();
        let answer = links::reset(&home.app, &secret, "seven quiet enlargers").await;
        refused_for(answer, &Problem::LinkDead);
        log_in(&home.app, "192.0.2.1", None, &tomas.log_in_name, PASSWORD)
            .await
            .unwrap();
    });
}

#[test]
fn a_reset_on_the_machine_stands_in_every_room_of_the_person() {
    run(async {
        let home = Home::new().await;
        let second = home.second().await;
        let before = (seq(&home).await, seq(&second).await);
        let account = members::account(&home.app, &home.steward.log_in_name)
            .await
            .unwrap();
        let address = members::reset(&home.app, &account).await.unwrap();
        assert_eq!(seq(&home).await, before.0 + 1);
        assert_eq!(seq(&second).await, before.1 + 1);
        links::reset(&home.app, &secret_of(&address), "seven quiet enlargers")
            .await
            .unwrap();
        let name = &home.steward.log_in_name;
        let after = log_in(&home.app, "192.0.2.1", None, name, "seven quiet enlargers")
            .await
            .unwrap();
        assert!(after.has_news);
    });
}

/// Where the room's book ends.
async fn seq(home: &Home) -> i64 {
    let scope = Scope {
        room: home.room,
        person: None,
    };
    home.app
        .database()
        .reading(scope, |tx| Box::pin(async move { logbook::head(tx).await }))
        .await
        .unwrap()
        .seq
}

#[test]
fn the_machine_makes_a_steward_of_anyone() {
    run(async {
        let home = Home::new().await;
        let tomas = home.member("tomas", Role::Member).await;
        let lena = home.member("lena", Role::Member).await;
        let stranger = Home::new().await.steward;
        let keep = home.by_steward::<KeepMembers>().await;
        actions::suspend(&home.app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        actions::end_access(&home.app, &keep, new_key(), lena.id)
            .await
            .unwrap();
        for somebody in [&tomas, &lena, &stranger] {
            members::make_steward(&home.app, home.room, somebody.id)
                .await
                .unwrap();
            home.by::<KeepMembers>(somebody).await.unwrap();
            let again = members::make_steward(&home.app, home.room, somebody.id).await;
            refused_for(again, &Problem::Unchanged);
        }
    });
}
