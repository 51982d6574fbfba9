//! Who may look, who may change, and that a room knows of no other room's things.

use uuid::Uuid;

use super::Desk;
use crate::harness::{Stage, scenario};

/// The ids of what a room started with: a size, a product and a line.
async fn started_with(stage: &Stage) -> [String; 3] {
    let mut desk = Desk::steward(stage).await;
    let mut ids = Vec::new();
    for (page, below) in [
        ("/papers", "/papers/sizes/"),
        ("/products", "/products/"),
        ("/bench", "/bench/lines/"),
    ] {
        let links = desk.open(page).await.page().links();
        let id = links.iter().find_map(|(_, href)| {
            let last = href.split_once(below)?.1.split('/').next()?;
            last.parse::<Uuid>().ok()
        });
        ids.push(id.unwrap().to_string());
    }
    ids.try_into().unwrap()
}

/// Every page that changes something.
fn forms([size, product, line]: &[String; 3]) -> Vec<String> {
    vec![
        format!("/papers/sizes/{size}"),
        format!("/papers/sizes/{size}/retire"),
        "/products/new".to_owned(),
        format!("/products/{product}/edit"),
        format!("/products/{product}/retire"),
        format!("/products/{product}/dilutions/new"),
        format!("/bench/lines/{line}"),
        format!("/bench/lines/{line}/retire"),
        format!("/bench/lines/{line}/trays/new"),
    ]
}

/// Every form's target that names something.
fn targets([size, product, line]: &[String; 3]) -> Vec<String> {
    vec![
        format!("/papers/sizes/{size}"),
        format!("/papers/sizes/{size}/retire"),
        format!("/papers/sizes/{size}/restore"),
        format!("/products/{product}"),
        format!("/products/{product}/retire"),
        format!("/products/{product}/restore"),
        format!("/products/{product}/dilutions"),
        format!("/bench/lines/{line}"),
        format!("/bench/lines/{line}/retire"),
        format!("/bench/lines/{line}/restore"),
        format!("/bench/lines/{line}/trays"),
    ]
}

fn key() -> [(String, String); 1] {
    [("key".to_owned(), "AAAAAAAAAAAAAAAAAAAAAA".to_owned())]
}

#[test]
fn a_member_looks_and_changes_nothing() {
    scenario(async |stage| {
        let ids = started_with(&stage).await;
        for person in [
            &stage.cast.member,
            &stage.cast.trained,
            &stage.cast.treasurer,
        ] {
            let mut desk = Desk::of(&stage, person).await;
            for page in ["/papers", "/products", "/bench"] {
                let page = desk.open(page).await.page();
                let words = page.all("main button, main a");
                let offers = ["Add", "Change", "Retire", "Bring", "Rename"];
                let offered = words
                    .iter()
                    .filter(|word| offers.iter().any(|offer| word.starts_with(offer)));
                assert_eq!(offered.count(), 0, "{words:?}");
            }
            for form in forms(&ids) {
                let path = desk.at(&form);
                desk.browser.get(&path).await.expect(403);
            }
            for target in targets(&ids) {
                let path = desk.at(&target);
                desk.browser.post(&path, &key()).await.expect(403);
            }
        }
    });
}

#[test]
fn another_rooms_things_are_not_there() {
    scenario(async |stage| {
        let ids = started_with(&stage).await;
        let mut desk = Desk::of(&stage, &stage.cast.neighbour).await;
        desk.slug.clone_from(&stage.other_slug);
        for form in forms(&ids).iter().filter(|form| *form != "/products/new") {
            let path = desk.at(form);
            desk.browser.get(&path).await.expect(404);
        }
        for target in targets(&ids) {
            let path = desk.at(&target);
            desk.browser.post(&path, &key()).await.expect(404);
        }
    });
}
