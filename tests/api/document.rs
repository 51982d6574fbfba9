//! The OpenAPI document says what the router does.

use std::collections::BTreeSet;

use axum::http::{Method, StatusCode};
use serde_json::Value;
use wetside::api::routes;

use super::room::{Room, Sent};

async fn document(room: &Room) -> Value {
    let answer = room
        .send(Sent::new(Method::GET, "/api/v1/openapi.json"))
        .await;
    assert_eq!(answer.status, StatusCode::OK);
    assert_eq!(answer.header("content-type"), Some("application/json"));
    answer.body
}

/// Method and path of every operation.
fn operations(document: &Value) -> Vec<(String, String, &Value)> {
    let mut all = Vec::new();
    for (path, item) in document["paths"].as_object().unwrap() {
        for (method, operation) in item.as_object().unwrap() {
            all.push((method.to_uppercase(), path.clone(), operation));
        }
    }
    all
}

#[tokio::test]
async fn it_lists_exactly_the_routes() {
    let room = Room::open().await;
    let document = document(&room).await;
    let said: BTreeSet<(String, String)> = operations(&document)
        .into_iter()
        .map(|(method, path, _)| (method, path))
        .collect();
    let there: BTreeSet<(String, String)> = routes::all()
        .iter()
        .map(|route| (route.method.to_string(), route.path.to_owned()))
        .collect();
    assert_eq!(said, there);
    assert_eq!(there.len(), routes::all().len(), "no route is listed twice");
    assert_eq!(document["servers"][0]["url"], "/api/v1");
}

#[tokio::test]
async fn every_route_it_lists_is_there_and_no_other_method() {
    let room = Room::open().await;
    let document = document(&room).await;
    for (path, item) in document["paths"].as_object().unwrap() {
        let path = format!("/api/v1{path}").replace("{room}", &room.slug);
        let path = path.replace("{id}", &room.id.to_string());
        for method in ["GET", "POST", "PUT", "PATCH", "DELETE"] {
            let sent = Sent::new(method.parse().unwrap(), &path);
            let answer = room.send(sent).await;
            let listed = item.get(method.to_lowercase()).is_some();
            let expected = match (listed, path.ends_with("openapi.json")) {
                (true, true) => StatusCode::OK,
                (true, false) => StatusCode::UNAUTHORIZED,
                (false, _) => StatusCode::METHOD_NOT_ALLOWED,
            };
            assert_eq!(answer.status, expected, "{method} {path}");
        }
    }
}

/// OpenAPI 3.1.0: "Paths Object", "Operation Object", "Parameter Object",
/// "Responses Object".
#[tokio::test]
async fn it_is_sound() {
    let room = Room::open().await;
    let document = document(&room).await;
    assert_eq!(document["openapi"], "3.1.0");
    assert!(document["info"]["title"].is_string() && document["info"]["version"].is_string());
    let mut names = BTreeSet::new();
    for (method, path, operation) in operations(&document) {
        let place = format!("{method} {path}");
        let id = operation["operationId"].as_str().unwrap();
        assert!(names.insert(id.to_owned()), "{place}: {id} twice");
        let parameters = parameters(operation);
        let inside: Vec<&str> = path.split(['{', '}']).skip(1).step_by(2).collect();
        let of_path = parameters.iter().filter(|each| each["in"] == "path");
        let named: Vec<&str> = of_path
            .inspect(|each| assert_eq!(each["required"], true, "{place}"))
            .map(|each| each["name"].as_str().unwrap())
            .collect();
        assert_eq!(named, inside, "{place}");
        let responses = operation["responses"].as_object().unwrap();
        assert!(!responses.is_empty(), "{place}");
        for (status, response) in responses {
            let response = resolve(&document, response);
            let says = response["description"].as_str();
            assert!(
                says.is_some_and(|says| !says.is_empty()),
                "{place} {status}"
            );
        }
    }
}

/// OpenAPI 3.1.0: "Security Requirement Object", "Security Scheme Object".
#[tokio::test]
async fn every_operation_says_what_it_takes_and_what_can_go_wrong() {
    let room = Room::open().await;
    let document = document(&room).await;
    for (method, path, operation) in operations(&document) {
        let place = format!("{method} {path}");
        if path == "/openapi.json" {
            assert_eq!(operation["security"], serde_json::json!([{}]), "{place}");
            continue;
        }
        let scopes = operation["security"][0]["bearer"].as_array().unwrap();
        assert_eq!(scopes.len(), 1, "{place}");
        let mut wanted = vec!["401", "403", "404", "421", "422", "500", "503"];
        let parameters = parameters(operation);
        let key = parameters
            .iter()
            .find(|each| each["name"] == "Idempotency-Key");
        // A checkpoint is no entry: making one takes neither body nor key.
        let writes = method != "GET" && path != "/rooms/{room}/book/checkpoints";
        assert_eq!(key.is_some(), writes, "{place}");
        assert_eq!(operation.get("requestBody").is_some(), writes, "{place}");
        if let Some(key) = key {
            wanted.extend(["400", "409", "413", "415"]);
            assert_eq!(key["required"], true, "{place}");
            assert_eq!(operation["requestBody"]["required"], true, "{place}");
        }
        for status in wanted {
            let said = operation["responses"].get(status).is_some();
            assert!(said, "{place} does not say {status}");
        }
    }
    let scheme = &document["components"]["securitySchemes"]["bearer"];
    assert_eq!(scheme["type"], "http");
    assert_eq!(scheme["scheme"], "bearer");
}

fn parameters(operation: &Value) -> Vec<Value> {
    let found = operation.get("parameters").and_then(Value::as_array);
    found.cloned().unwrap_or_default()
}

#[tokio::test]
async fn every_reference_leads_somewhere() {
    let room = Room::open().await;
    let document = document(&room).await;
    let mut seen = 0;
    each_reference(&document, &mut |reference| {
        let pointer = reference.strip_prefix('#').unwrap();
        assert!(document.pointer(pointer).is_some(), "{reference}");
        seen += 1;
    });
    assert!(seen > 50, "{seen} references");
}

/// What comes in refuses what the document does not have.
#[tokio::test]
async fn inputs_are_closed() {
    let room = Room::open().await;
    let document = document(&room).await;
    let schemas = document["components"]["schemas"].as_object().unwrap();
    let inputs: Vec<_> = schemas
        .iter()
        .filter(|(name, _)| name.ends_with("In"))
        .collect();
    assert!(inputs.len() >= 9, "{}", inputs.len());
    for (name, schema) in inputs {
        assert_eq!(schema["additionalProperties"], false, "{name}");
    }
}

fn resolve<'d>(document: &'d Value, value: &'d Value) -> &'d Value {
    match value["$ref"].as_str() {
        Some(reference) => document.pointer(&reference[1..]).unwrap(),
        None => value,
    }
}

fn each_reference(value: &Value, hear: &mut impl FnMut(&str)) {
    match value {
        Value::Object(fields) => {
            for (name, inner) in fields {
                match (name.as_str(), inner) {
                    ("$ref", Value::String(reference)) => hear(reference),
                    _ => each_reference(inner, hear),
                }
            }
        }
        Value::Array(all) => all.iter().for_each(|inner| each_reference(inner, hear)),
        _ => {}
    }
}
