//! Another member, a trained one, the treasurer, people of other rooms and screens ask for
//! every page, every file and every route of the API, before something happened to somebody
//! and after: nothing says more of the person, the product or the words.

use std::collections::BTreeMap;

use axum::body::Body;
use axum::http::Method;
use uuid::Uuid;
use wetside::api::routes;
use wetside::incidents::What;
use wetside::products::products;
use wetside::router;

use super::{WORDS, details};
use crate::access::house::{Actor, House};
use crate::harness::scenario_alone;

/// How often each of the words stands in each answer, by who asked for what.
type Said = BTreeMap<String, Vec<usize>>;

/// What everybody but the room's steward is answered, of an incident with this id.
async fn crawl(house: &House, words: &[String], incident: Uuid) -> Said {
    let mut said = Said::new();
    for actor in house.actors.iter().filter(|actor| actor.0 != "steward") {
        pages(house, actor, (words, incident), &mut said).await;
        routes_of(house, actor, words, &mut said).await;
    }
    said
}

fn count(body: &str, words: &[String]) -> Vec<usize> {
    words
        .iter()
        .map(|word| body.matches(word.as_str()).count())
        .collect()
}

async fn pages(
    house: &House,
    actor: &Actor,
    (words, incident): (&[String], Uuid),
    said: &mut Said,
) {
    let mut browser = house.browser(actor).await;
    for route in router::pages().listed() {
        if route.method != Method::GET || route.path.contains("/stream") {
            continue;
        }
        let path = route.path.replace("{incident}", &incident.to_string());
        let path = house.page_path(&path);
        let answer = browser.get(&path).await;
        // The address that was asked for comes back in the page's own frame.
        let body = answer.body.replace(&path, "");
        said.insert(format!("{} {}", actor.0, route.path), count(&body, words));
    }
}

async fn routes_of(house: &House, actor: &Actor, words: &[String], said: &mut Said) {
    let Some(person) = &actor.1 else { return };
    let browser = house.browser(actor).await;
    let scopes = ["read", "bench", "keep"];
    let token = house.token(person, &house.stage.slug, &scopes).await;
    for route in routes::all().iter().filter(|route| route.method.is_safe()) {
        let path = format!("/api/v1{}", house.api_path(route.path));
        let request = browser
            .request(Method::GET, &path)
            .header("authorization", format!("Bearer {token}"));
        let answer = browser
            .at_another_server(&house.stage.installation.app)
            .send(request.body(Body::empty()).unwrap())
            .await;
        said.insert(format!("{} {path}", actor.0), count(&answer.body, words));
    }
}

#[test]
fn nobody_else_finds_anything_of_it_anywhere() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let scope = stage
            .permit::<wetside::rights::SeeProducts>(&house.spare)
            .await;
        let database = stage.installation.app.database();
        let known = database
            .reading(scope.unwrap().scope(), |tx| Box::pin(products(tx)))
            .await
            .unwrap();
        let product = known.iter().find(|each| each.id == house.bench.product);
        let mut words = vec![
            WORDS.to_owned(),
            product.unwrap().name.clone(),
            house.bench.product.to_string(),
            house.spare.name.clone(),
            house.spare.id.to_string(),
        ];
        let before = crawl(&house, &words, Uuid::nil()).await;
        let one = details(What::SkinContact, Some(house.bench.product));
        let id = stage.happened(&house.spare, one).await;
        words.push(id.to_string());
        let after = crawl(&house, &words, id).await;
        assert!(before.len() > 500, "{}", before.len());
        for (what, said) in &after {
            let wanted = before.get(what).map(|said| [&said[..], &[0]].concat());
            assert_eq!(Some(said), wanted.as_ref(), "{what}");
        }
    });
}
