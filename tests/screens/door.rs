//! The door: a number, a PIN, and one act.

use serde_json::Value;
use time::Duration;
use uuid::Uuid;

use super::{PIN, look, state};
use crate::access::screens::paired;
use crate::harness::{Answer, Browser, Form, Stage, scenario, scenario_alone};

fn known(form: Form, number: &str, pin: &str) -> Form {
    form.fill("Your number", number).fill("Your PIN", pin)
}

/// Does something at the door and follows to what says so.
async fn act(door: &mut Browser, path: &str, button: &str, number: &str, pin: &str) -> Answer {
    let page = look(door, path).await;
    let form = page.page().form(button).unwrap();
    door.submit(&known(form, number, pin)).await
}

async fn done(door: &mut Browser, answer: Answer) -> String {
    let next = answer.expect(303).location().unwrap().to_owned();
    look(door, &next).await.page().heading()
}

/// The last entry of a kind: who wrote it, and what it says.
async fn last(stage: &Stage, kind: &str) -> (Uuid, Value) {
    let (actor, payload): (Uuid, Vec<u8>) = sqlx::query_as(
        "select actor, payload from entry where room_id = $1 and kind = $2
        order by seq desc limit 1",
    )
    .bind(stage.room)
    .bind(kind)
    .fetch_one(&mut stage.installation.db().await)
    .await
    .unwrap();
    (actor, serde_json::from_slice(&payload).unwrap())
}

/// What a refused try says.
fn said(answer: Answer) -> String {
    answer.expect(422).page().first(".summary li").unwrap()
}

#[test]
fn whoever_comes_into_an_empty_room_says_until_when_at_the_door_too() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        for person in [member, trained] {
            stage.sets_pin(person).await;
        }
        let (_, mut door) = paired(&stage, "door").await;
        let page = look(&mut door, "/screen/arrive").await;
        assert_eq!(page.page().all(".target-name").len(), 4);
        let number = stage.number(member).await;
        let form = known(page.page().form("I am here").unwrap(), &number, PIN);
        let form = form.choose("Another time").with("time", "12:30");
        let refused = door.submit(&form).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "until");
        assert_eq!(
            refused.page().form("I am here").unwrap().value("time"),
            Some("12:30")
        );
        let form = known(refused.page().form("I am here").unwrap(), &number, PIN);
        let came = door.submit(&form.with("time", "14.45")).await;
        assert_eq!(done(&mut door, came).await, "You are here.");
        let (_, says) = last(&stage, "arrived").await;
        assert_eq!(says["expected"]["clock"], "14:45");
        // To others one comes without being asked.
        let page = look(&mut door, "/screen/arrive").await;
        assert!(page.page().all(".target-name").is_empty());
        let number = stage.number(trained).await;
        let came = act(&mut door, "/screen/arrive", "I am here", &number, PIN).await;
        assert_eq!(done(&mut door, came).await, "You are here.");
        let (_, says) = last(&stage, "arrived").await;
        assert!(says["expected"].is_null(), "{says}");
    });
}

#[test]
fn somebody_comes_notes_flags_and_goes_by_number_and_pin() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let member = &stage.cast.member;
        stage.sets_pin(member).await;
        let number = stage.number(member).await;
        let (screen, mut door) = paired(&stage, "door").await;
        let start = look(&mut door, "/screen").await;
        assert_eq!(state(&start), "door");
        assert!(!start.body.contains(&member.name));
        assert_eq!(
            start.page().first("#door-places").unwrap(),
            "0 of 10 places taken"
        );

        let came = act(&mut door, "/screen/arrive", "I am here", &number, PIN).await;
        assert_eq!(done(&mut door, came).await, "You are here.");
        let through = |says: &Value| says["through_screen_id"] == screen.to_string();
        let (actor, says) = last(&stage, "arrived").await;
        assert!(actor == member.id && through(&says), "{says}");
        // Places are counted; nobody is named.
        let start = look(&mut door, "/screen").await;
        assert_eq!(
            start.page().first("#door-places").unwrap(),
            "1 of 10 places taken"
        );
        assert!(!start.body.contains(&member.name));

        let page = look(&mut door, "/screen/note").await;
        let form = page.page().form("Note them").unwrap();
        let form = form
            .choose("RC")
            .choose("8×10 in")
            .fill("How many sheets", "6");
        let noted = door.submit(&known(form, &number, PIN)).await;
        assert_eq!(done(&mut door, noted).await, "Your sheets are noted.");
        let (actor, says) = last(&stage, "noted").await;
        assert!(actor == member.id && through(&says), "{says}");
        assert_eq!(says["sheets"], 6);

        let list = look(&mut door, "/screen/flag").await;
        let links = list.page().links();
        let tray = links.iter().find(|(words, _)| words.contains("Developer"));
        let page = look(&mut door, &tray.unwrap().1).await;
        let form = page.page().form("Flag it").unwrap();
        let form = form.choose("Nobody can say, or not all of it");
        let flagged = door.submit(&known(form, &number, PIN)).await;
        assert_eq!(done(&mut door, flagged).await, "The tray is flagged.");
        let (actor, says) = last(&stage, "reading").await;
        assert!(actor == member.id && through(&says), "{says}");
        assert_eq!(says["mix_id"], bench.mix.to_string());

        let gone = act(&mut door, "/screen/leave", "I leave", &number, PIN).await;
        assert_eq!(done(&mut door, gone).await, "You have left.");
        let mut steward = stage.browser(&stage.cast.steward).await;
        let book = look(&mut steward, &stage.at("/book")).await;
        let wanted = format!("{} left. At the screen “door by the sink”.", member.name);
        assert_eq!(book.page().all(".ledger-said")[0], wanted);
        let about = format!("/book?noun=screen&id={screen}");
        let book = look(&mut steward, &stage.at(&about)).await;
        assert_eq!(book.page().all(".ledger-said").len(), 5);
    });
}

#[test]
fn liquid_nobody_can_name_is_reported_at_the_door() {
    scenario(async |stage| {
        let house = crate::access::house::House::furnish(stage).await;
        let stage = &house.stage;
        stage.sets_pin(&stage.cast.member).await;
        let number = stage.number(&stage.cast.member).await;
        let mut door = house.browser(&("door-screen", None)).await;
        let list = look(&mut door, "/screen/flag").await;
        let links = list.page().links();
        let tray = links.iter().find(|(words, _)| words.contains("Stop bath"));
        let page = look(&mut door, &tray.unwrap().1).await;
        let form = page.page().form("Report it").unwrap();
        let wrong = door
            .submit(&known(form.clone(), &number, PIN))
            .await
            .expect(422);
        assert_eq!(wrong.page().problems()[0].0, "volume");
        let form = form.fill("About how much", "0.5");
        let sent = door.submit(&known(form, &number, PIN)).await;
        assert_eq!(done(&mut door, sent).await, "It is reported.");
        assert_eq!(last(stage, "unknown_found").await.0, stage.cast.member.id);
        let list = look(&mut door, "/screen/flag").await;
        assert!(!list.page().main().contains("Stop bath"));
    });
}

/// An unknown number, a wrong PIN, nobody's PIN and a suspended member read alike,
/// and each costs one verification.
#[test]
fn what_is_wrong_is_never_said() {
    scenario_alone(async |stage| {
        let house = crate::access::house::House::furnish(stage).await;
        let stage = &house.stage;
        stage.sets_pin(&stage.cast.member).await;
        let number = stage.number(&stage.cast.member).await;
        let without = stage.number(&stage.cast.trained).await;
        let suspended: i32 =
            sqlx::query_scalar("select member_number from membership where person_id = $1")
                .bind(house.suspended.id)
                .fetch_one(&mut stage.installation.db().await)
                .await
                .unwrap();
        let hasher = &stage.installation.app.entrance().hasher;
        let mut door = house.browser(&("door-screen", None)).await;
        let mut heard = std::collections::BTreeSet::new();
        for (number, pin) in [
            (number.as_str(), "482916"),
            ("999", PIN),
            ("not a number", PIN),
            (without.as_str(), PIN),
            (&suspended.to_string(), PIN),
            ("", ""),
        ] {
            let before = hasher.verifications();
            let refused = act(&mut door, "/screen/arrive", "I am here", number, pin).await;
            assert!(
                !refused.body.contains(pin) || pin.is_empty(),
                "a PIN comes back"
            );
            heard.insert(said(refused));
            assert_eq!(hasher.verifications() - before, 1, "{number:?} {pin:?}");
        }
        assert_eq!(heard.len(), 1, "{heard:?}");
    });
}

#[test]
fn five_wrong_pins_let_a_number_sleep_there_and_nowhere_else() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.sets_pin(member).await;
        stage.sets_pin(&stage.cast.trained).await;
        let number = stage.number(member).await;
        let other = stage.number(&stage.cast.trained).await;
        let (_, mut door) = paired(&stage, "door").await;
        for number in [number.as_str(), "777"] {
            for _ in 0..5 {
                // One every four minutes: the last one counts from its own moment.
                stage.pass(Duration::minutes(4));
                let wrong = act(&mut door, "/screen/arrive", "I am here", number, "000000").await;
                assert!(said(wrong).contains("do not go together"));
            }
            // Known or not, it sleeps, and the right PIN does not wake it.
            let late = act(&mut door, "/screen/arrive", "I am here", number, PIN).await;
            assert!(said(late).contains("Wait 15 minutes"));
        }
        // Somebody else comes in meanwhile, and their own pages are not held up.
        let came = act(&mut door, "/screen/arrive", "I am here", &other, PIN).await;
        assert_eq!(done(&mut door, came).await, "You are here.");
        stage
            .browser(member)
            .await
            .get(&stage.at("/arrive"))
            .await
            .expect(200);
        stage.pass(Duration::minutes(15));
        let came = act(&mut door, "/screen/arrive", "I am here", &number, PIN).await;
        assert_eq!(done(&mut door, came).await, "You are here.");
    });
}

#[test]
fn a_sleeping_number_is_awake_at_another_door() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.sets_pin(member).await;
        let number = stage.number(member).await;
        let (first, mut one) = paired(&stage, "door").await;
        for _ in 0..6 {
            act(&mut one, "/screen/arrive", "I am here", &number, "000000")
                .await
                .expect(422);
        }
        stage.ends(first).await;
        let (_, mut other) = paired(&stage, "door").await;
        let came = act(&mut other, "/screen/arrive", "I am here", &number, PIN).await;
        assert_eq!(done(&mut other, came).await, "You are here.");
    });
}

#[test]
fn a_role_and_a_rule_are_told_at_the_door() {
    scenario(async |stage| {
        stage.bench().await;
        let treasurer = &stage.cast.treasurer;
        stage.sets_pin(treasurer).await;
        let number = stage.number(treasurer).await;
        let (_, mut door) = paired(&stage, "door").await;
        let page = look(&mut door, "/screen/note").await;
        let form = page.page().form("Note them").unwrap();
        let form = form
            .choose("RC")
            .choose("8×10 in")
            .fill("How many sheets", "6");
        let refused = door.submit(&known(form, &number, PIN)).await;
        assert!(said(refused).contains("Your role"));
        let not_here = act(&mut door, "/screen/leave", "I leave", &number, PIN).await;
        assert!(said(not_here).contains("have not said that you are here"));
        // The same form sent twice counts once.
        let page = look(&mut door, "/screen/arrive").await;
        let form = known(page.page().form("I am here").unwrap(), &number, PIN);
        door.submit(&form).await.expect(303);
        door.submit(&form).await.expect(303);
        let again = act(&mut door, "/screen/arrive", "I am here", &number, PIN).await;
        assert!(said(again).contains("here already"));
    });
}

/// A door reads nothing of its room's pages, and knows no other room's people.
#[test]
fn a_door_is_no_member_and_takes_its_own_rooms_numbers_only() {
    scenario(async |stage| {
        let stranger = &stage.cast.stranger;
        let permit = wetside::identity::permit_for::<wetside::rights::KeepPin>(
            &stage.installation.app,
            stranger.clone(),
            &stage.other_slug,
        );
        let new = wetside::screens::actions::NewPin {
            pin: "907164".to_owned(),
            password: crate::harness::PASSWORD.to_owned(),
        };
        let app = &stage.installation.app;
        let key = crate::harness::new_key();
        let set = wetside::screens::actions::set_pin(app, &permit.await.unwrap(), key, new).await;
        set.unwrap();
        let (_, mut door) = paired(&stage, "door").await;
        for number in 1..=4 {
            let number = number.to_string();
            let answer = act(&mut door, "/screen/arrive", "I am here", &number, "907164").await;
            assert!(said(answer).contains("do not go together"));
        }
        for path in ["/board", "/book", "/present", "/members", "/sheets/new"] {
            let sent = door.get(&stage.at(path)).await.expect(303);
            assert!(sent.location().unwrap().starts_with("/log-in"), "{path}");
        }
    });
}
