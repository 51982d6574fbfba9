//! The person's own confirmation: from their account, or by number and PIN.

use time::Duration;
use wetside::error::Error;
use wetside::identity::Person;
use wetside::problem::Problem;
use wetside::rights::KeepPin;
use wetside::screens::actions::{NewPin, set_pin};
use wetside::topics::Required;

use super::refused;
use crate::access::screens::paired;
use crate::harness::{Answer, PASSWORD, Stage, Visitor, new_key, scenario, scenario_alone};

const PIN: &str = "482915";

async fn sets_pin(stage: &Stage, person: &Person) -> String {
    let permit = stage.permit::<KeepPin>(person).await.unwrap();
    let new = NewPin {
        pin: PIN.to_owned(),
        password: PASSWORD.to_owned(),
    };
    let app = &stage.installation.app;
    set_pin(app, &permit, new_key(), new).await.unwrap();
    let page = Visitor::of(stage, person).await.open("/pin").await;
    page.page().first(".lead b").unwrap()
}

/// Types number and PIN on the steward's page.
async fn types(steward: &mut Visitor, number: &str, pin: &str) -> Answer {
    let page = steward.open("/inductions").await;
    let fields = [("Member number", number), ("PIN", pin)];
    steward.send(&page, "Confirm all that waits", &fields).await
}

#[test]
fn one_press_confirms_all_that_waits_and_nothing_else() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        let spills = stage.topic("Spills", Required::Always).await;
        let eyewash = stage.topic("Eyewash", Required::Always).await;
        for topic in [spills, eyewash] {
            stage.inducts(member, &[topic]).await.unwrap();
        }
        stage.inducts(trained, &[spills, eyewash]).await.unwrap();
        let mut visitor = Visitor::of(&stage, member).await;
        let notices = visitor.open("/notices").await;
        let told = notices.page().all(".events li p");
        assert_eq!(told.len(), 2, "{told:?}");
        assert!(
            told[0].contains("has recorded an induction of yours"),
            "{told:?}"
        );
        let page = visitor.open("/inductions/own").await;
        let heading = page.page().first(".told h2").unwrap();
        assert_eq!(heading, "2 records wait for confirmation");
        let page = visitor.send_on(&page, "I was told all of this", &[]).await;
        assert!(page.page().form("I was told all of this").is_none());
        assert!(stage.lacks(member).await.is_empty());
        assert_eq!(stage.lacks(trained).await.len(), 2);
        let nothing = stage.confirms(member).await;
        assert!(matches!(
            nothing,
            Err(Error::Refused(Problem::NothingToConfirm))
        ));
    });
}

#[test]
fn number_and_pin_confirm_beside_the_steward() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let number = sets_pin(&stage, member).await;
        let spills = stage.topic("Spills", Required::Always).await;
        stage.inducts(member, &[spills]).await.unwrap();
        let mut steward = Visitor::steward(&stage).await;
        let wrong = types(&mut steward, &number, "111213").await.expect(422);
        assert!(
            wrong
                .page()
                .first(".summary")
                .unwrap()
                .contains("do not go together")
        );
        assert_eq!(stage.lacks(member).await.len(), 1);
        let done = types(&mut steward, &number, PIN).await.expect(303);
        let next = done.location().unwrap().to_owned();
        let page = steward.browser.get(&next).await.expect(200);
        let said = page.page().main();
        assert!(
            said.contains("Confirmed by number and PIN beside a steward"),
            "{said}"
        );
        stage.comes(member).await.unwrap();
        let nothing = types(&mut steward, &number, PIN).await.expect(422);
        assert!(
            nothing
                .page()
                .first(".summary")
                .unwrap()
                .contains("No induction waits")
        );
        // The book says how, and never the PIN.
        let book = steward.open("/book").await;
        let said = book.page().all(".ledger-said");
        assert!(
            said.iter()
                .any(|each| each.contains(", by number and PIN.")),
            "{said:?}"
        );
        assert!(!book.body.contains(PIN));
    });
}

#[test]
fn five_wrong_pins_let_a_number_sleep_beside_this_steward_alone() {
    scenario_alone(async |stage| {
        let member = &stage.cast.member;
        let number = sets_pin(&stage, member).await;
        let spills = stage.topic("Spills", Required::Always).await;
        stage.inducts(member, &[spills]).await.unwrap();
        let mut steward = Visitor::steward(&stage).await;
        for _ in 0..5 {
            types(&mut steward, &number, "111213").await.expect(422);
        }
        let sleeps = types(&mut steward, &number, PIN).await.expect(422);
        let said = sleeps.page().first(".summary").unwrap();
        assert!(said.contains("Too many wrong PINs"), "{said}");
        // The door knows nothing of it: there the PIN is looked at, and the gate refuses.
        let (_, mut door) = paired(&stage, "door").await;
        let page = door.get("/screen/arrive").await.expect(200);
        let form = page.page().form("I am here").unwrap();
        let form = form.fill("Your number", &number).fill("Your PIN", PIN);
        let barred = door.submit(&form).await.expect(422);
        let said = barred.page().first(".summary").unwrap();
        assert!(said.contains("not inducted on Spills"), "{said}");
        // A door names nobody.
        assert!(said.contains("Ask a steward.") && !barred.body.contains(&stage.cast.steward.name));
        stage.pass(Duration::minutes(16));
        types(&mut steward, &number, PIN).await.expect(303);
        let page = door.get("/screen/arrive").await.expect(200);
        let form = page.page().form("I am here").unwrap();
        let form = form.fill("Your number", &number).fill("Your PIN", PIN);
        door.submit(&form).await.expect(303);
    });
}

#[test]
fn an_unconfirmed_induction_counts_for_nothing() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("Spills", Required::Always).await;
        stage.inducts(member, &[spills]).await.unwrap();
        let (missing, _) = refused(stage.comes(member).await);
        assert_eq!(missing, ["Spills"]);
        let mut steward = Visitor::steward(&stage).await;
        let list = steward.open("/inductions/in-force").await;
        assert!(!list.page().main().contains(&member.name));
        stage.confirms(member).await.unwrap();
        let list = steward.open("/inductions/in-force").await;
        assert!(list.page().main().contains(&member.name));
    });
}
