//! The gate: who is let in, who is not, and what they are told.

use wetside::darkroom::incompatibility::Group;
use wetside::error::{Error, Result};
use wetside::inductions::Standing;
use wetside::problem::Problem;
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{Ingredient, Kind, Product, products};
use wetside::rights::{KeepProducts, Role};
use wetside::topics::{Required, Trait, traits_of};

use super::{refused, titles};
use crate::access::house::somebody;
use crate::harness::{Stage, Visitor, new_key, scenario};

#[test]
fn a_room_without_required_topics_lets_everyone_in() {
    scenario(async |stage| {
        stage.bench().await;
        stage.topic("Darkroom chemistry", Required::Offered).await;
        stage.comes(&stage.cast.member).await.unwrap();
        stage.comes(&stage.cast.steward).await.unwrap();
    });
}

#[test]
fn who_is_not_inducted_reads_what_is_missing_and_who_can_give_it() {
    scenario(async |stage| {
        let (member, steward) = (&stage.cast.member, &stage.cast.steward);
        let spills = stage.topic("Spills", Required::Always).await;
        let (missing, stewards) = refused(stage.comes(member).await);
        assert_eq!(missing, ["Spills"]);
        assert_eq!(stewards, std::slice::from_ref(&steward.name));
        let mut visitor = Visitor::of(&stage, member).await;
        let page = visitor.open("/arrive").await;
        assert!(page.page().form("I am here").is_none());
        let said = page.page().first(".told").unwrap();
        assert!(said.contains("Spills Never inducted"), "{said}");
        assert!(said.contains(&steward.name), "{said}");

        stage.inducts(member, &[spills]).await.unwrap();
        let waits = [("Spills".to_owned(), Standing::Waits)];
        assert_eq!(stage.lacks(member).await, waits);
        refused(stage.comes(member).await);
        let page = visitor.open("/arrive").await;
        let page = visitor.follow(&page, "Confirm it").await;
        visitor.send_on(&page, "I was told all of this", &[]).await;
        let page = visitor.open("/arrive").await;
        let here = visitor.send_on(&page, "I am here", &[]).await;
        assert_eq!(here.page().heading(), "You are here");
    });
}

/// Between the form and its sending something new is asked for: refused, and the page
/// says why.
#[test]
fn a_form_of_before_is_refused_with_the_reason() {
    scenario(async |stage| {
        let mut visitor = Visitor::of(&stage, &stage.cast.member).await;
        let page = visitor.open("/arrive").await;
        stage.topic("Spills", Required::Always).await;
        let refused = visitor.send(&page, "I am here", &[]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("not inducted on Spills"), "{said}");
        assert!(said.contains(&stage.cast.steward.name), "{said}");
        assert!(refused.page().main().contains("You cannot come in yet"));
    });
}

async fn product(stage: &Stage, new: NewProduct) -> uuid::Uuid {
    let permit = stage.permit::<KeepProducts>(&stage.cast.steward).await;
    let app = &stage.installation.app;
    let set = set_product(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("product").unwrap()
}

#[test]
fn what_is_here_decides_what_is_asked_for() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let member = &stage.cast.member;
        let other = product(&stage, NewProduct::named("Toner X".to_owned(), Kind::Toner)).await;
        let by = |each: Trait| Required::ByTrait(vec![each]);
        stage.topic("Oxidisers", by(Trait::Oxidiser)).await;
        stage
            .topic("Toner X", Required::ByProduct(vec![other]))
            .await;
        // Neither stands here: a toner in its bottle asks by trait, not by product.
        assert_eq!(titles(&stage.lacks(member).await), Vec::<&str>::new());
        stage.topic("Toners", by(Trait::Toner)).await;
        let of_bench = Required::ByProduct(vec![bench.product]);
        stage.topic("This developer", of_bench).await;
        let found = stage.lacks(member).await;
        assert_eq!(titles(&found), ["This developer", "Toners"]);
    });
}

/// A product that asks for nothing.
async fn plain(stage: &Stage) -> Product {
    stage.bench().await;
    let database = stage.installation.app.database();
    let all = database.reading(stage.scope(), |tx| Box::pin(products(tx)));
    Product {
        groups: vec![Group::Fixer],
        kind: Kind::Fixer,
        hazard_codes: Vec::new(),
        data_sheet_on: Some("2026-03-02".to_owned()),
        composition_is_known: true,
        ..all.await.unwrap().remove(0)
    }
}

fn traits(product: &Product) -> Vec<Trait> {
    traits_of(product).into_iter().collect()
}

/// Source for the statements: CLP Annex III. That the composition of what has no safety
/// data counts as unknown is the room's own caution.
#[test]
fn traits_follow_from_the_concentrate_as_supplied() {
    scenario(async |stage| {
        let plain = plain(&stage).await;
        assert!(traits(&plain).is_empty());
        for (codes, wanted) in [
            ("H317", Trait::Sensitiser),
            ("H334", Trait::Sensitiser),
            ("EUH208", Trait::Sensitiser),
            ("H314", Trait::AcidOrAlkali),
            ("H290", Trait::AcidOrAlkali),
            ("H272", Trait::Oxidiser),
            ("H302+H317", Trait::Sensitiser),
        ] {
            let with = Product {
                hazard_codes: vec!["H319".to_owned(), codes.to_owned()],
                ..plain.clone()
            };
            assert_eq!(traits(&with), [wanted], "{codes}");
        }
        for (group, wanted) in [
            (Group::Acid, Trait::AcidOrAlkali),
            (Group::StrongAlkali, Trait::AcidOrAlkali),
            (Group::OxidisingBleach, Trait::Oxidiser),
            (Group::Sensitiser, Trait::Sensitiser),
        ] {
            let with = Product {
                groups: vec![group],
                ..plain.clone()
            };
            assert_eq!(traits(&with), [wanted], "{group:?}");
        }
    });
}

/// At any content, and where it is not known what is in it.
#[test]
fn traits_follow_from_what_is_in_it_too() {
    scenario(async |stage| {
        let plain = plain(&stage).await;
        let unlisted = Product {
            composition_is_known: false,
            ..plain.clone()
        };
        assert_eq!(traits(&unlisted), [Trait::Sensitiser]);
        let trace = Ingredient {
            name: "a trace".to_owned(),
            cas: None,
            least_millionths: None,
            most_millionths: Some(1),
            hazard_codes: vec!["H314".to_owned()],
        };
        let with = Product {
            ingredients: vec![trace],
            ..plain.clone()
        };
        assert_eq!(traits(&with), [Trait::AcidOrAlkali]);
        let toner = Product {
            kind: Kind::Toner,
            data_sheet_on: None,
            ..plain
        };
        assert_eq!(traits(&toner), [Trait::Sensitiser, Trait::Toner]);
    });
}

#[test]
fn a_steward_lets_somebody_in_and_answers_for_them() {
    scenario(async |stage| {
        let (member, steward) = (&stage.cast.member, &stage.cast.steward);
        stage.topic("Spills", Required::Always).await;
        let mut visitor = Visitor::of(&stage, steward).await;
        let roll = visitor.open("/present").await;
        let page = visitor.follow(&roll, "Sign somebody in, supervised").await;
        let label = format!("{}: lacks 1 topic", member.name);
        assert!(page.page().main().contains(&label));
        let id = member.id.to_string();
        let form = page
            .page()
            .form("Sign them in")
            .unwrap()
            .with("person", &id);
        let roll = visitor.browser.submit_and_follow(&form).await.expect(200);
        let supervised = format!("supervised by {}", steward.name);
        assert!(roll.page().main().contains(&supervised));
        let board = visitor.open("/board").await;
        let here = board.page().first("#present li").unwrap();
        let alone = "alone, expected until 15:00";
        let wanted = format!("{} since 13:00, {supervised}, {alone}", member.name);
        assert_eq!(here, wanted);
        let book = visitor.open("/book").await;
        let said = format!(
            "{} arrived, {supervised}, expected until 15:00.",
            member.name
        );
        assert_eq!(book.page().all(".ledger-said")[0], said);
        // Nobody answers for themself, and nobody is there twice.
        let twice = stage.lets_in(member).await;
        assert!(matches!(twice, Err(Error::Refused(Problem::HereAlready))));
        assert!(matches!(
            stage.lets_in(steward).await,
            Err(Error::Invalid(_))
        ));
        // The steward has to be inducted like everyone.
        refused(stage.comes(steward).await);
        let spills = stage.topics().await.remove(0).id;
        stage.inducts(steward, &[spills]).await.unwrap();
        stage.comes(steward).await.unwrap();
        let page = visitor.open("/leave").await;
        let said = page.page().first(".flash").unwrap();
        assert!(
            said.contains(&format!("You answer for {}", member.name)),
            "{said}"
        );
    });
}

#[test]
fn of_two_at_the_last_place_one_gets_it_supervised_or_not() {
    scenario(async |stage| {
        let mut settings = Visitor::steward(&stage).await;
        let page = settings.open("/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        settings
            .browser
            .submit(&form.with("people_limit", "2"))
            .await
            .expect(303);
        let spills = stage.topic("Spills", Required::Always).await;
        for person in [&stage.cast.trained, &stage.cast.treasurer] {
            stage.inducts(person, &[spills]).await.unwrap();
            stage.confirms(person).await.unwrap();
        }
        stage.comes(&stage.cast.trained).await.unwrap();
        let newcomer = somebody(&stage, "newcomer", stage.room, Role::Member).await;
        let (own, supervised) =
            tokio::join!(stage.comes(&stage.cast.treasurer), stage.lets_in(&newcomer));
        let full = Problem::RoomFull { places: 2 };
        let answers: Vec<Result<_>> = vec![own, supervised];
        assert_eq!(answers.iter().filter(|answer| answer.is_ok()).count(), 1);
        for late in answers.into_iter().filter_map(Result::err) {
            assert!(matches!(late, Error::Refused(why) if why == full));
        }
    });
}

#[test]
fn the_only_steward_declares_what_nobody_else_could_give() {
    scenario(async |stage| {
        let steward = &stage.cast.steward;
        let spills = stage.topic("Spills", Required::Always).await;
        let mut visitor = Visitor::of(&stage, steward).await;
        let page = visitor.open("/arrive").await;
        let page = visitor.follow(&page, "Declare it").await;
        let record = visitor.send_on(&page, "Record it", &[]).await;
        let said = record.page().main();
        assert!(said.contains("Self-declared Wed 25 Nov 2026"), "{said}");
        assert!(said.contains("then the only steward"), "{said}");
        stage.comes(steward).await.unwrap();
        // As soon as there is another one, nobody inducts themself.
        somebody(&stage, "other", stage.room, Role::Steward).await;
        let again = stage.inducts(steward, &[spills]).await;
        assert!(matches!(again, Err(Error::Invalid(_))), "{again:?}");
    });
}
