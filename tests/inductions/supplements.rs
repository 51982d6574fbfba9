//! A product that asks for something new lists whom to tell before it is opened.

use wetside::products::Kind;
use wetside::products::actions::{NewProduct, set_product};
use wetside::rights::KeepProducts;
use wetside::topics::{Required, Trait};

use crate::harness::{Stage, Visitor, new_key, scenario};

/// A toner, with a data sheet and nothing else that asks for a topic.
fn toner() -> NewProduct {
    NewProduct {
        data_sheet_on: Some("2026-03-02".to_owned()),
        ..NewProduct::named("Rowan toner".to_owned(), Kind::Toner)
    }
}

async fn set(stage: &Stage, new: NewProduct) -> uuid::Uuid {
    let permit = stage.permit::<KeepProducts>(&stage.cast.steward).await;
    let app = &stage.installation.app;
    let set = set_product(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("product").unwrap()
}

async fn told(visitor: &mut Visitor) -> Vec<String> {
    let all = visitor.notices_told().await.into_iter();
    all.filter(|said| said.starts_with("Before ")).collect()
}

#[test]
fn a_new_sensitiser_lists_who_must_be_told() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        let spills = stage.topic("Spills", Required::Always).await;
        for person in [member, trained] {
            stage.inducts(person, &[spills]).await.unwrap();
            stage.confirms(person).await.unwrap();
        }
        let rowan = set(&stage, toner()).await;
        let by_product = Required::ByProduct(vec![rowan]);
        let toning = stage.topic("Toning", by_product).await;
        let mut steward = Visitor::steward(&stage).await;
        // The treasurer and the steward were never inducted: the gate asks them for all.
        let wanted = format!("Toning: tell {}, {}.", trained.name, member.name);
        let page = steward.open(&format!("/products/{rowan}")).await;
        assert_eq!(page.page().all(".told li"), std::slice::from_ref(&wanted));
        let page = steward.open("/inductions").await;
        assert_eq!(page.page().all(".told li"), [wanted]);
        let first = "Before Rowan toner is opened: 2 inducted people were never told Toning.";
        assert_eq!(told(&mut steward).await, [first]);
        // The product asks for it before it stands in any tray; the gate does not yet.
        stage.comes(member).await.unwrap();

        stage.inducts(member, &[toning]).await.unwrap();
        stage.confirms(member).await.unwrap();
        let page = steward.open("/inductions").await;
        let rest = format!("Toning: tell {}.", trained.name);
        assert_eq!(page.page().all(".told li"), [rest]);
        // Told once: the same product set again says nothing new.
        let again = NewProduct {
            id: Some(rowan),
            ..toner()
        };
        set(&stage, again).await;
        assert_eq!(told(&mut steward).await.len(), 1);
        let mut own = Visitor::of(&stage, member).await;
        let page = own.open(&format!("/products/{rowan}")).await;
        assert!(page.page().all(".told li").is_empty());
    });
}

#[test]
fn a_trait_that_a_product_gains_does_the_same() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("Spills", Required::Always).await;
        let by = Required::ByTrait(vec![Trait::Oxidiser]);
        stage.topic("Oxidisers", by).await;
        stage.inducts(member, &[spills]).await.unwrap();
        stage.confirms(member).await.unwrap();
        let rowan = set(&stage, toner()).await;
        let mut steward = Visitor::steward(&stage).await;
        assert!(told(&mut steward).await.is_empty());
        let gains = NewProduct {
            id: Some(rowan),
            hazard_codes: vec!["H272".to_owned()],
            ..toner()
        };
        set(&stage, gains).await;
        let wanted = "Before Rowan toner is opened: 1 inducted person was never told Oxidisers.";
        assert_eq!(told(&mut steward).await, [wanted]);
        let page = steward.open(&format!("/products/{rowan}")).await;
        let wanted = format!("Oxidisers: tell {}.", member.name);
        assert_eq!(page.page().all(".told li"), [wanted]);
    });
}
