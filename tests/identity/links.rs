//! One-time links: used once, by whom they are for, while they are good.

use futures_util::future::join_all;
use time::Duration;
use wetside::error::Error;
use wetside::identity::links::{self, Kind};
use wetside::identity::secret::Secret;
use wetside::members::{self, Joiner, actions};
use wetside::problem::Problem;
use wetside::rights::{Invite, LookAtBoard, Role, SeeMembers};
use wetside::rooms::actions::set_closed;

use super::helpers::{Home, enter, new_account, new_key, run, secret_of};

fn is_dead<T: std::fmt::Debug>(answer: wetside::error::Result<T>) {
    assert!(
        matches!(answer, Err(Error::Refused(Problem::LinkDead))),
        "{answer:?}"
    );
}

#[test]
fn of_ten_at_once_one_joins() {
    run(async {
        let home = Home::new().await;
        let secret = home.invitation(Role::Member).await;
        let link = links::look(&home.app, Kind::Join, &secret).await.unwrap();
        let mut accounts = Vec::new();
        for place in 0..10 {
            accounts.push(new_account(&home.app, &format!("r{place}")).await);
        }
        let tries = accounts
            .iter()
            .map(|account| members::accept(&home.app, &link, Joiner::New(account.clone())));
        let answers = join_all(tries).await;
        assert_eq!(answers.iter().filter(|answer| answer.is_ok()).count(), 1);
        for (account, answer) in accounts.iter().zip(answers) {
            let known = members::account(&home.app, account.log_in_name.as_str()).await;
            match answer {
                Ok(_) => assert_eq!(known.unwrap().rooms.len(), 1),
                Err(cause) => {
                    is_dead::<()>(Err(cause));
                    assert!(known.is_err(), "an account without an invitation");
                }
            }
        }
        is_dead(links::look(&home.app, Kind::Join, &secret).await);
    });
}

#[test]
fn looking_uses_nothing_up_and_kinds_are_kept_apart() {
    run(async {
        let home = Home::new().await;
        let secret = home.invitation(Role::Trained).await;
        for _ in 0..3 {
            let link = links::look(&home.app, Kind::Join, &secret).await.unwrap();
            assert_eq!(link.role, Some(Role::Trained));
            assert_eq!(link.room, Some(home.room));
        }
        is_dead(links::look(&home.app, Kind::Reset, &secret).await);
        is_dead(links::look(&home.app, Kind::SetUp, &secret).await);
        is_dead(links::look(&home.app, Kind::Join, &Secret::new().unwrap()).await);
    });
}

#[test]
fn a_link_ends_after_a_day_and_when_it_is_revoked() {
    run(async {
        let home = Home::new().await;
        let old = home.invitation(Role::Member).await;
        let link = links::look(&home.app, Kind::Join, &old).await.unwrap();
        home.advance(Duration::hours(24) - Duration::seconds(1));
        links::look(&home.app, Kind::Join, &old).await.unwrap();
        home.advance(Duration::seconds(1));
        is_dead(links::look(&home.app, Kind::Join, &old).await);
        let account = new_account(&home.app, "late").await;
        is_dead(members::accept(&home.app, &link, Joiner::New(account)).await);

        let secret = home.invitation(Role::Member).await;
        let see = home.by_steward::<SeeMembers>().await;
        let (_, open) = actions::see(&home.app, &see, 0).await.unwrap();
        assert_eq!(open.len(), 1, "the old one is open no more");
        let invite = home.by_steward::<Invite>().await;
        actions::revoke(&home.app, &invite, new_key(), open[0].id)
            .await
            .unwrap();
        is_dead(links::look(&home.app, Kind::Join, &secret).await);
        is_dead(actions::revoke(&home.app, &invite, new_key(), open[0].id).await);
    });
}

#[test]
fn a_link_of_another_room_cannot_be_revoked() {
    run(async {
        let (home, other) = (Home::new().await, Home::new().await);
        let secret = other.invitation(Role::Member).await;
        let link = links::look(&other.app, Kind::Join, &secret).await.unwrap();
        let invite = home.by_steward::<Invite>().await;
        let answer = actions::revoke(&home.app, &invite, new_key(), link.id).await;
        assert!(matches!(answer, Err(Error::NotFound)), "{answer:?}");
        links::look(&other.app, Kind::Join, &secret).await.unwrap();
    });
}

#[test]
fn the_secret_is_shown_once() {
    run(async {
        let home = Home::new().await;
        let invite = home.by_steward::<Invite>().await;
        let key = new_key();
        let first = actions::invite(&home.app, &invite, key, Role::Member)
            .await
            .unwrap();
        let again = actions::invite(&home.app, &invite, key, Role::Member)
            .await
            .unwrap();
        assert!(first.address.is_some());
        assert_eq!(again.address, None);
        assert!(again.done.hit);
        assert_eq!(again.done.seq, first.done.seq);
        let other = actions::invite(&home.app, &invite, key, Role::Steward).await;
        assert!(matches!(other, Err(Error::Mismatch)));
    });
}

#[test]
fn who_comes_back_keeps_their_number_and_a_suspension_stays() {
    run(async {
        let home = Home::new().await;
        let tomas = home.member("tomas", Role::Member).await;
        let lena = home.member("lena", Role::Member).await;
        let keep = home.by_steward().await;
        actions::suspend(&home.app, &keep, new_key(), lena.id)
            .await
            .unwrap();
        let again = home.join(Joiner::Known(lena.id), Role::Trained).await;
        assert!(matches!(again, Err(Error::Refused(Problem::AlreadyMember))));
        actions::end_access(&home.app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        home.join(Joiner::Known(tomas.id), Role::Trained)
            .await
            .unwrap();
        let see = home.by_steward::<SeeMembers>().await;
        let (all, _) = actions::see(&home.app, &see, 0).await.unwrap();
        let numbers: Vec<_> = all
            .iter()
            .map(|member| (member.person, member.member_number, member.role))
            .collect();
        let wanted = [
            (home.steward.id, 1, Role::Steward),
            (tomas.id, 2, Role::Trained),
            (lena.id, 3, Role::Member),
        ];
        assert_eq!(numbers, wanted);
        home.by::<LookAtBoard>(&tomas).await.unwrap();
        assert!(home.by::<LookAtBoard>(&lena).await.is_err());
    });
}

#[test]
fn a_closed_room_takes_nobody_and_uses_no_link_up() {
    run(async {
        let home = Home::new().await;
        let secret = home.invitation(Role::Member).await;
        let link = links::look(&home.app, Kind::Join, &secret).await.unwrap();
        set_closed(&home.app, home.room, true).await.unwrap();
        let account = new_account(&home.app, "early").await;
        let answer = members::accept(&home.app, &link, Joiner::New(account.clone())).await;
        assert!(matches!(answer, Err(Error::Refused(Problem::RoomClosed))));
        let invite = home.by_steward::<Invite>().await;
        let answer = actions::invite(&home.app, &invite, new_key(), Role::Member).await;
        assert!(matches!(answer, Err(Error::Refused(Problem::RoomClosed))));
        set_closed(&home.app, home.room, false).await.unwrap();
        members::accept(&home.app, &link, Joiner::New(account.clone()))
            .await
            .unwrap();
        let somebody = enter(&home.app, &account).await;
        home.by::<LookAtBoard>(&somebody).await.unwrap();
    });
}

#[test]
fn a_log_in_name_is_somebodys_and_the_link_survives_the_try() {
    run(async {
        let home = Home::new().await;
        let secret = home.invitation(Role::Member).await;
        let link = links::look(&home.app, Kind::Join, &secret).await.unwrap();
        let mut account = new_account(&home.app, "twin").await;
        let theirs = members::account(&home.app, &home.steward.log_in_name)
            .await
            .unwrap();
        account.log_in_name =
            wetside::identity::names::LogInName::read(&theirs.log_in_name.to_uppercase()).unwrap();
        let answer = members::accept(&home.app, &link, Joiner::New(account.clone())).await;
        let Err(Error::Invalid(problems)) = answer else {
            panic!("{answer:?}")
        };
        let found: Vec<_> = problems.iter().collect();
        assert_eq!(found, [("log_in_name", &Problem::LogInNameTaken)]);
        account.log_in_name = new_account(&home.app, "twin").await.log_in_name;
        members::accept(&home.app, &link, Joiner::New(account))
            .await
            .unwrap();
    });
}

#[test]
fn where_there_is_a_room_there_is_no_set_up() {
    run(async {
        let home = Home::new().await;
        assert_eq!(links::new_set_up(&home.app).await.unwrap(), None);
        let secret = secret_of("http://127.0.0.1:4711/set-up/AAAA");
        is_dead(links::look(&home.app, Kind::SetUp, &secret).await);
    });
}
