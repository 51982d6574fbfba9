//! A screen shows a code, a steward types it.

use axum::http::header::SET_COOKIE;
use futures_util::future::join_all;
use time::Duration;
use wetside::error::Error;
use wetside::identity::permit_for;
use wetside::problem::Problem;
use wetside::rights::{KeepScreens, Role};
use wetside::screens::actions::pair;

use super::{look, state};
use crate::access::house::somebody;
use crate::access::screens::{COOKIE, paired, screen, showing};
use crate::harness::{Answer, Browser, Stage, new_key, scenario, scenario_alone};

/// Fills in the steward's form.
async fn type_in(browser: &mut Browser, stage: &Stage, code: &str, name: &str) -> Answer {
    let page = look(browser, &stage.at("/screens")).await;
    let form = page.page().form("Pair it").unwrap();
    let form = form
        .fill("The code it shows", code)
        .fill("What you call it", name)
        .choose("Dim");
    browser.submit(&form).await
}

fn cookies(answer: &Answer) -> Vec<String> {
    let all = answer.headers.get_all(SET_COOKIE).iter();
    all.map(|cookie| cookie.to_str().unwrap().to_owned())
        .collect()
}

#[test]
fn a_code_on_the_screen_makes_it_the_rooms() {
    scenario(async |stage| {
        stage.bench().await;
        let mut wall = stage.nobody();
        let first = look(&mut wall, "/screen").await;
        assert_eq!(first.page().heading(), "Pair this screen");
        assert!(
            first.page().first(".code").is_none(),
            "looking shows no code yet"
        );
        // It asks for nothing: a button is all there is.
        let form = first.page().form("Show a code").unwrap();
        assert!(form.fields.is_empty(), "{:?}", form.fields);
        let shown = wall.submit(&form).await.expect(303);
        let cookie = &cookies(&shown)[0];
        assert!(cookie.starts_with(&format!("{COOKIE}=")), "{cookie}");
        for part in [
            "Path=/;",
            "Secure",
            "HttpOnly",
            "SameSite=Lax",
            "Max-Age=34560000",
        ] {
            assert!(cookie.contains(part), "{cookie}");
        }
        let shown = look(&mut wall, "/screen").await;
        let code = shown.page().first(".code").unwrap();
        assert_eq!(code.len(), 9, "{code}");
        // The same code until it is too old, however often one looks.
        assert_eq!(
            look(&mut wall, "/screen")
                .await
                .page()
                .first(".code")
                .unwrap(),
            code
        );

        let mut steward = stage.browser(&stage.cast.steward).await;
        let typed = format!(" {} ", code.to_lowercase());
        let answer = type_in(&mut steward, &stage, &typed, "Wall over the sink").await;
        answer.expect(303);
        let board = look(&mut wall, "/screen").await;
        assert_eq!(state(&board), "board");
        assert!(board.body.contains("data-display=\"dim\""));
        let list = look(&mut steward, &stage.at("/screens")).await;
        let cards = list.page().all(".card");
        assert_eq!(cards.len(), 1);
        assert!(cards[0].starts_with("Wall over the sink"), "{cards:?}");
        assert!(cards[0].contains("Last seen 13:00"), "{cards:?}");
        // The code is used up.
        let again = type_in(&mut steward, &stage, &code, "Another")
            .await
            .expect(422);
        assert_eq!(again.page().problems()[0].0, "code");
    });
}

#[test]
fn the_display_is_the_stewards_until_somebody_changes_it_at_the_screen() {
    scenario(async |stage| {
        let (mut wall, code) = showing(&stage).await;
        wall.keep("display", "day");
        let mut steward = stage.browser(&stage.cast.steward).await;
        type_in(&mut steward, &stage, &code, "Wall")
            .await
            .expect(303);
        let board = look(&mut wall, "/screen").await;
        assert!(board.body.contains("data-display=\"dim\""));
        let form = board.page().form("Day").unwrap();
        assert_eq!(form.value("back"), Some("/screen"));
        let board = wall.submit_and_follow(&form).await.expect(200);
        assert!(board.body.contains("data-display=\"day\""));
        assert!(
            look(&mut wall, "/screen")
                .await
                .body
                .contains("data-display=\"day\"")
        );
    });
}

#[test]
fn a_code_is_good_for_ten_minutes() {
    scenario(async |stage| {
        let (mut wall, code) = showing(&stage).await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        stage.pass(Duration::minutes(10));
        type_in(&mut steward, &stage, &code, "Wall")
            .await
            .expect(422);
        let page = look(&mut wall, "/screen").await;
        assert!(page.page().first(".code").is_none());
        let form = page.page().form("Show a code").unwrap();
        let page = wall.submit_and_follow(&form).await.expect(200);
        let new = page.page().first(".code").unwrap();
        assert_ne!(new, code);
        stage.pass(Duration::minutes(10) - Duration::seconds(1));
        type_in(&mut steward, &stage, &new, "Wall")
            .await
            .expect(303);
    });
}

#[test]
fn wrong_codes_are_few_for_each_person() {
    scenario_alone(async |stage| {
        let (_, code) = showing(&stage).await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        for _ in 0..10 {
            let wrong = type_in(&mut steward, &stage, "ACDEFHJK", "Wall").await;
            wrong.expect(422);
        }
        // Even the right one waits now; a colleague's does not.
        let late = type_in(&mut steward, &stage, &code, "Wall").await;
        late.expect(429);
        let colleague = somebody(&stage, "colleague", stage.room, Role::Steward).await;
        let mut other = stage.browser(&colleague).await;
        type_in(&mut other, &stage, &code, "Wall").await.expect(303);
        stage.pass(Duration::minutes(30));
        let (_, code) = showing(&stage).await;
        type_in(&mut steward, &stage, &code, "Second wall")
            .await
            .expect(303);
    });
}

#[test]
fn codes_are_few_for_each_network() {
    scenario_alone(async |stage| {
        let mut wall = stage.nobody();
        for _ in 0..60 {
            wall.post("/screen/code", &[]).await.expect(303);
        }
        wall.post("/screen/code", &[]).await.expect(429);
        stage.pass(Duration::minutes(10));
        wall.post("/screen/code", &[]).await.expect(303);
        let waiting: i64 = sqlx::query_scalar("select count(*) from pairing")
            .fetch_one(&mut stage.installation.db().await)
            .await
            .unwrap();
        assert_eq!(waiting, 1, "a browser waits under one code");
    });
}

/// Two stewards of two rooms, two servers, one code.
#[test]
fn of_two_who_type_one_code_one_pairs_it() {
    scenario(async |stage| {
        let second = stage.installation.second();
        for round in 0..5 {
            let (mut wall, code) = showing(&stage).await;
            let typing = [
                (&stage.installation.app, &stage.cast.steward, &stage.slug),
                (&second, &stage.cast.neighbour, &stage.other_slug),
            ]
            .map(|(app, person, slug)| {
                let new = screen(&code, "board", &format!("Wall {round}"));
                async move {
                    let permit = permit_for::<KeepScreens>(app, person.clone(), slug).await?;
                    pair(app, &permit, new_key(), new).await
                }
            });
            let answers = join_all(typing).await;
            let done = answers.iter().filter(|answer| answer.is_ok()).count();
            assert_eq!(done, 1, "{answers:?}");
            for late in answers.into_iter().filter_map(Result::err) {
                let Error::Invalid(problems) = late else {
                    panic!("{late:?}");
                };
                let unknown = ("code", &Problem::CodeUnknown);
                assert_eq!(problems.iter().next(), Some(unknown));
            }
            assert_eq!(state(&look(&mut wall, "/screen").await), "board");
        }
        second.database().close().await;
    });
}

/// The screen asks for another code while its first one is typed: either the typing
/// was too late, or it is a screen and stays one.
#[test]
fn a_code_that_is_typed_while_the_screen_asks_for_another_is_not_lost() {
    scenario(async |stage| {
        let app = &stage.installation.app;
        for round in 0..8 {
            let (mut wall, code) = showing(&stage).await;
            let permit = stage.permit::<KeepScreens>(&stage.cast.steward).await;
            let (permit, name) = (permit.unwrap(), format!("Wall {round}"));
            let new = screen(&code, "board", &name);
            let typing = pair(app, &permit, new_key(), new);
            let mut asking = wall.clone();
            let (typed, asked) = tokio::join!(typing, asking.post("/screen/code", &[]));
            asked.expect(303);
            let now = look(&mut asking, "/screen").await;
            match typed {
                Ok(_) => assert_eq!(state(&now), "board"),
                Err(_) => {
                    assert_ne!(now.page().first(".code").unwrap(), code);
                    assert!(
                        look(&mut wall, "/screen")
                            .await
                            .page()
                            .first(".code")
                            .is_none()
                    );
                }
            }
        }
    });
}

#[test]
fn ending_a_pairing_takes_effect_with_the_next_request_everywhere() {
    scenario(async |stage| {
        stage.bench().await;
        let (id, mut wall) = paired(&stage, "board").await;
        let (door_id, mut door) = paired(&stage, "door").await;
        let second = stage.installation.second();
        let mut there = wall.at_another_server(&second);
        let tag = look(&mut there, "/screen").await.headers["etag"].clone();
        look(&mut door, "/screen/arrive").await;
        stage.ends(id).await;
        stage.ends(door_id).await;
        let known = there.request(axum::http::Method::GET, "/screen");
        let known = known.header("if-none-match", tag);
        let gone = there
            .send(known.body(axum::body::Body::empty()).unwrap())
            .await;
        assert_eq!(state(&gone.expect(200)), "code");
        assert_eq!(state(&look(&mut wall, "/screen").await), "code");
        let sent = door.get("/screen/arrive").await.expect(303);
        assert_eq!(sent.location(), Some("/screen"));
        let sent = door.post("/screen/arrive", &[]).await.expect(303);
        assert_eq!(sent.location(), Some("/screen"));
        second.database().close().await;
    });
}

#[test]
fn a_screen_lives_for_weeks_and_through_a_restart() {
    scenario(async |stage| {
        let (_, mut wall) = paired(&stage, "board").await;
        for weeks in [1, 8, 50] {
            stage.pass(Duration::weeks(weeks));
            let restarted = stage.installation.second();
            let mut wall_there = wall.at_another_server(&restarted);
            let board = look(&mut wall_there, "/screen").await;
            assert_eq!(state(&board), "board");
            // The browser keeps its secret for as long again.
            let renewed = cookies(&board);
            assert!(renewed.iter().any(|cookie| cookie.starts_with(COOKIE)));
            restarted.database().close().await;
        }
        assert_eq!(state(&look(&mut wall, "/screen").await), "board");
    });
}

#[test]
fn screens_are_renamed_and_told_of_to_stewards_alone() {
    scenario(async |stage| {
        let (id, _) = paired(&stage, "board").await;
        paired(&stage, "door").await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        let path = stage.at(&format!("/screens/{id}"));
        let page = look(&mut steward, &path).await;
        let form = page.page().form("Rename it").unwrap();
        let taken = form.clone().fill("What you call it", "DOOR by the sink");
        let taken = steward.submit(&taken).await.expect(422);
        assert_eq!(taken.page().problems()[0].0, "name");
        let form = form.fill("What you call it", "North wall");
        steward.submit(&form).await.expect(303);
        let asked = look(&mut steward, &format!("{path}/end")).await;
        assert_eq!(asked.page().heading(), "End the pairing of “North wall”?");
        let form = asked.page().form("End the pairing").unwrap();
        steward.submit(&form).await.expect(303);
        let book = look(&mut steward, &stage.at("/book")).await;
        let said = book.page().all(".ledger-said");
        let wanted = [
            "The pairing of the screen “North wall” ended.",
            "A screen is called “North wall” from here on.",
            "The screen “door by the sink” was paired as a door.",
            "The screen “board by the sink” was paired as a board.",
        ];
        assert_eq!(said[..4], wanted);
        let mut member = stage.browser(&stage.cast.member).await;
        let theirs = look(&mut member, &stage.at("/book")).await;
        assert!(!theirs.page().main().contains("The screen"));
        let list = look(&mut steward, &stage.at("/handover")).await;
        assert_eq!(list.page().heading(), "Handover");
    });
}
