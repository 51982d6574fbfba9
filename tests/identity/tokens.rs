//! Tokens: good for what they say, for their room, for as long as their person is.

use axum::http::header::AUTHORIZATION;
use time::Duration;
use wetside::error::{Error, Result};
use wetside::identity::tokens::{self, NewToken, scopes_of};
use wetside::members::actions;
use wetside::problem::Problem;
use wetside::rights::{KeepTokens, Role};

use super::helpers::{Home, Somebody, new_key, run};

async fn make(home: &Home, whose: &Somebody, scopes: &[&str]) -> Result<String> {
    let permit = home.by::<KeepTokens>(whose).await?;
    let new = NewToken {
        name: "the scale by the sink".to_owned(),
        scopes: scopes.iter().map(|&scope| scope.to_owned()).collect(),
        days: 30,
    };
    Ok(tokens::make(&home.app, &permit, new).await?.text)
}

#[test]
fn a_role_gives_its_scopes() {
    assert_eq!(scopes_of(Role::Member), ["read", "bench"]);
    assert_eq!(scopes_of(Role::Trained), ["read", "bench"]);
    assert_eq!(scopes_of(Role::Steward), ["read", "bench", "keep"]);
    assert_eq!(scopes_of(Role::Treasurer), ["read", "bench", "keep"]);
}

#[test]
fn a_token_does_no_more_than_its_person_and_ends_with_them() {
    run(async {
        let home = Home::new().await;
        let tomas = home.member("tomas", Role::Member).await;
        let Err(Error::Invalid(problems)) = make(&home, &tomas, &["keep", "read"]).await else {
            panic!("a member's token that keeps")
        };
        let found: Vec<_> = problems.iter().collect();
        assert_eq!(found, [("scopes", &Problem::NotAScope)]);
        let token = make(&home, &tomas, &["read"]).await.unwrap();
        let held = tokens::find(&home.app, &token).await.unwrap().unwrap();
        assert_eq!(held.person.id, tomas.id);
        assert_eq!(held.scopes, ["read"]);
        let wrong = format!("{}x", &token[..token.len() - 1]);
        assert!(tokens::find(&home.app, &wrong).await.unwrap().is_none());
        let keep = home.by_steward().await;
        actions::suspend(&home.app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        assert!(tokens::find(&home.app, &token).await.unwrap().is_none());
        actions::restore(&home.app, &keep, new_key(), tomas.id)
            .await
            .unwrap();
        assert!(tokens::find(&home.app, &token).await.unwrap().is_some());
        home.advance(Duration::days(30));
        assert!(tokens::find(&home.app, &token).await.unwrap().is_none());
    });
}

#[test]
fn a_token_is_revoked_by_its_person_alone() {
    run(async {
        let home = Home::new().await;
        let tomas = home.member("tomas", Role::Member).await;
        let token = make(&home, &tomas, &["read"]).await.unwrap();
        let own = home.by::<KeepTokens>(&tomas).await.unwrap();
        let listed = tokens::list(&home.app, &own).await.unwrap();
        assert_eq!(listed.len(), 1);
        let steward = home.by_steward::<KeepTokens>().await;
        assert!(tokens::list(&home.app, &steward).await.unwrap().is_empty());
        let foreign = tokens::revoke(&home.app, &steward, listed[0].id).await;
        assert!(matches!(foreign, Err(Error::NotFound)));
        tokens::revoke(&home.app, &own, listed[0].id).await.unwrap();
        assert!(tokens::find(&home.app, &token).await.unwrap().is_none());
    });
}

#[test]
fn a_session_cookie_is_no_token() {
    run(async {
        let home = Home::new().await;
        let header = format!("Bearer {}", home.steward.session.reveal());
        let answer = super::helpers::extract::<wetside::identity::Permit<KeepTokens>>(
            &home.app,
            (AUTHORIZATION.as_str(), &header),
            &home.slug,
        )
        .await;
        assert!(matches!(answer, Err(Error::Unauthenticated)));
    });
}
