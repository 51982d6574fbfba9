//! Mixing, topping up, opening entries, unknown liquid and stock solution, through
//! pages and API.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod stock;
mod there;
mod top_up;
mod worksheet;

use serde_json::Value;
use uuid::Uuid;
use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::bench::bottles::actions::{NewBottle, set_bottle};
use wetside::darkroom::incompatibility::Group;
use wetside::database::Scope;
use wetside::mixes::{self, Mix};
use wetside::products::actions::{NewDilution, NewProduct, set_product};
use wetside::products::{Form, Kind};
use wetside::rights::KeepBench;
use wetside::rights::KeepProducts;

use crate::harness::{Answer, Browser, Stage, new_key, tray_on};

/// An empty tray of 250 × 200 mm: half a litre covers a print.
pub(super) async fn tray(stage: &Stage, line: Uuid, name: &str, step: Option<Step>) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let tray = NewTray {
        name: name.to_owned(),
        step,
        ..tray_on(line)
    };
    let app = &stage.installation.app;
    let set = set_tray(app, &permit.unwrap(), new_key(), tray).await;
    set.unwrap().id("tray").unwrap()
}

/// A bottle of a litre.
pub(super) async fn bottle(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let bottle = NewBottle {
        id: None,
        name: "Green".to_owned(),
        holds_ul: 1_000_000,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_bottle(app, &permit.unwrap(), new_key(), bottle).await;
    set.unwrap().id("bottle").unwrap()
}

/// A product with one dilution and a data sheet; the figures are invented.
pub(super) fn product(name: &str, form: Form, parts_thousandths: i64) -> NewProduct {
    NewProduct {
        form,
        groups: vec![Group::Developer],
        data_sheet_on: Some("2026-03-02".to_owned()),
        dilutions: vec![NewDilution {
            parts_thousandths,
            tray_life_s: 8 * 3_600,
            bottle_life_s: 24 * 3_600,
            life_basis: "invented for this test".to_owned(),
            ..NewDilution::default()
        }],
        ..NewProduct::named(name.to_owned(), Kind::Developer)
    }
}

pub(super) async fn set(stage: &Stage, product: NewProduct) -> Uuid {
    let permit = stage.permit::<KeepProducts>(&stage.cast.steward).await;
    let app = &stage.installation.app;
    let done = set_product(app, &permit.unwrap(), new_key(), product).await;
    done.unwrap().id("product").unwrap()
}

/// What stands in a vessel.
pub(super) async fn standing(stage: &Stage, vessel: Uuid) -> Option<Mix> {
    let scope = Scope {
        room: stage.room,
        person: None,
    };
    let database = stage.installation.app.database();
    let found = database.reading(scope, move |tx| Box::pin(mixes::in_vessel(tx, vessel)));
    found.await.unwrap()
}

/// The page's form, filled in and reckoned.
pub(super) async fn reckoned(browser: &mut Browser, path: &str, fields: &[(&str, &str)]) -> Answer {
    let page = browser.get(path).await.expect(200).page();
    let form = page.form("Show what to pour");
    let mut form = form.unwrap_or_else(|| panic!("no form: {}", page.main()));
    for (name, value) in fields {
        form = form.with(name, value);
    }
    browser.submit(&form).await
}

/// What the worksheet of a page says.
pub(super) fn sheet(answer: &Answer) -> String {
    let page = answer.page();
    let sheet = page.first("#worksheet");
    sheet.unwrap_or_else(|| panic!("no worksheet: {}", page.main()))
}

/// Every line that a worksheet says to pour.
pub(super) fn pours(answer: &Answer) -> Vec<String> {
    answer.page().all("#worksheet .pour")
}

/// Sends a JSON request as the holder of a token.
pub(super) async fn api(
    stage: &Stage,
    token: &str,
    method: axum::http::Method,
    path: &str,
    body: Option<Value>,
) -> (u16, Value) {
    let mut nobody = stage.nobody();
    let path = format!("/api/v1/rooms/{}{path}", stage.slug);
    let mut request = nobody
        .request(method, &path)
        .header("authorization", format!("Bearer {token}"))
        .header("idempotency-key", Uuid::now_v7().to_string());
    let body = match body {
        Some(body) => {
            request = request.header("content-type", "application/json");
            axum::body::Body::from(body.to_string())
        }
        None => axum::body::Body::empty(),
    };
    let answer = nobody.send(request.body(body).unwrap()).await;
    let body = serde_json::from_str(&answer.body).unwrap_or(Value::Null);
    (answer.status.as_u16(), body)
}
