//! A room of one's own behind the whole router, with tokens of its people.

use std::sync::atomic::{AtomicU32, Ordering};

use axum::Router;
use axum::body::Body;
use axum::http::{HeaderMap, Method, Request, StatusCode};
use serde_json::Value;
use time::macros::datetime;
use time::{Duration, OffsetDateTime};
use tower::ServiceExt;
use uuid::Uuid;
use wetside::app::App;
use wetside::clock::Clock;
use wetside::identity::accounts::NewAccount;
use wetside::identity::names::LogInName;
use wetside::identity::passwords::Password;
use wetside::identity::secret::Secret;
use wetside::identity::tokens;
use wetside::logbook::{Asked, Author, Recording};
use wetside::rights::Role;
use wetside::rooms::Settings;
use wetside::rooms::actions::{Founder, NewRoom, Starter, open_room};
use wetside::{bench, members, papers, products, router};

use crate::harness::{self, Installation};

pub(crate) const START: OffsetDateTime = datetime!(2026-11-25 12:00 UTC);

/// Every scope a token can have.
pub(crate) const ALL: &[&str] = &["read", "bench", "keep"];

const HOST: &str = "127.0.0.1:8480";

static COUNT: AtomicU32 = AtomicU32::new(0);

const STARTERS: &[Starter] = &[
    |book| Box::pin(papers::starter::write(book)),
    |book| Box::pin(products::starter::write(book)),
    |book| Box::pin(bench::starter::write(book)),
];

/// A room, its steward, and the whole program around it.
pub(crate) struct Room {
    pub(crate) app: App,
    pub(crate) clock: Clock,
    pub(crate) id: Uuid,
    pub(crate) slug: String,
    pub(crate) steward: Bearer,
    service: Router,
    installation: Installation,
}

/// Somebody with a token.
#[derive(Clone, Debug)]
pub(crate) struct Bearer {
    pub(crate) person: Uuid,
    pub(crate) token: Uuid,
    pub(crate) text: String,
}

impl Room {
    pub(crate) async fn open() -> Self {
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let clock = Clock::standing_at(START);
        let installation = harness::shared(clock.clone()).await;
        let app = installation.app.clone();
        let settings = Settings::starting(
            format!("API room {number}"),
            "Europe/Berlin".to_owned(),
            "EUR".to_owned(),
        );
        let account = account(&app).await;
        let steward = account.id;
        let founder = Founder::New {
            account,
            set_up: None,
            is_operator: false,
        };
        let recording = Recording::ByClock(clock.clone());
        let opened = open_room(&app, NewRoom::new(settings), founder, recording, STARTERS)
            .await
            .unwrap();
        let until = START + Duration::days(30);
        let steward = bearer(&installation, opened.room, steward, ALL, until).await;
        Self {
            installation,
            service: router::service(&app).unwrap(),
            app,
            clock,
            id: opened.room,
            slug: opened.slug,
            steward,
        }
    }

    /// A new person with this role, and a token of theirs.
    pub(crate) async fn person(&self, role: Role, scopes: &[&str]) -> Bearer {
        let account = account(&self.app).await;
        let person = account.id;
        let asked = Asked {
            actor: None,
            key: Some(*Uuid::now_v7().as_bytes()),
            fingerprint: [0; 32],
        };
        let joined = self
            .app
            .scribes()
            .write(self.id, Author::Unchecked, asked, move |book| {
                Box::pin(async move { members::add_account(book, &account, role).await })
            })
            .await;
        joined.unwrap();
        self.token(person, scopes, START + Duration::days(30)).await
    }

    /// A token of a person, good until then.
    pub(crate) async fn token(
        &self,
        person: Uuid,
        scopes: &[&str],
        until: OffsetDateTime,
    ) -> Bearer {
        bearer(&self.installation, self.id, person, scopes, until).await
    }

    /// Runs a statement as owner, past every policy.
    pub(crate) async fn as_owner(&self, statement: &'static str, id: Uuid) {
        let mut db = self.installation.db().await;
        let done = sqlx::query(statement)
            .bind(self.id)
            .bind(id)
            .execute(&mut db)
            .await;
        assert_eq!(done.unwrap().rows_affected(), 1, "{statement}");
    }

    /// A path of this room.
    pub(crate) fn at(&self, path: &str) -> String {
        format!("/api/v1/rooms/{}{path}", self.slug)
    }

    pub(crate) async fn get(&self, who: &Bearer, path: &str) -> Answer {
        self.send(Sent::new(Method::GET, &self.at(path)).by(who))
            .await
    }

    /// Everything a list has, whole.
    pub(crate) async fn list(&self, path: &str) -> Vec<Value> {
        let answer = self.get(&self.steward, path).await;
        assert_eq!(answer.status, StatusCode::OK, "{path}: {}", answer.body);
        answer.body["data"].as_array().unwrap().clone()
    }

    /// The id of the thing of this name.
    pub(crate) async fn id_of(&self, path: &str, name: &str) -> String {
        let list = self.list(path).await;
        let found = list.iter().find(|each| each["name"] == name);
        found.unwrap()["id"].as_str().unwrap().to_owned()
    }

    pub(crate) async fn post(&self, who: &Bearer, path: &str, body: &Value) -> Answer {
        let sent = Sent::new(Method::POST, &self.at(path)).by(who).new_key();
        self.send(sent.json(body)).await
    }

    pub(crate) async fn put(&self, who: &Bearer, path: &str, body: &Value) -> Answer {
        let sent = Sent::new(Method::PUT, &self.at(path)).by(who).new_key();
        self.send(sent.json(body)).await
    }

    pub(crate) async fn send(&self, sent: Sent) -> Answer {
        let request = sent.request.body(Body::from(sent.body)).unwrap();
        let said = format!("{} {}", request.method(), request.uri());
        let response = self.service.clone().oneshot(request).await.unwrap();
        let (parts, body) = response.into_parts();
        let bytes = axum::body::to_bytes(body, 10_000_000).await.unwrap();
        let body = serde_json::from_slice(&bytes);
        assert!(body.is_ok(), "{said}: {}", String::from_utf8_lossy(&bytes));
        Answer {
            status: parts.status,
            headers: parts.headers,
            body: body.unwrap(),
        }
    }
}

/// A request in the making.
pub(crate) struct Sent {
    request: axum::http::request::Builder,
    body: Vec<u8>,
}

impl Sent {
    pub(crate) fn new(method: Method, path: &str) -> Self {
        Self::to(HOST, method, path)
    }

    pub(crate) fn to(host: &str, method: Method, path: &str) -> Self {
        let request = Request::builder().method(method).uri(path);
        Self {
            request: request.header("host", host),
            body: Vec::new(),
        }
    }

    pub(crate) fn with(self, name: &str, value: &str) -> Self {
        Self {
            request: self.request.header(name, value),
            ..self
        }
    }

    pub(crate) fn by(self, who: &Bearer) -> Self {
        let value = format!("Bearer {}", who.text);
        self.with("authorization", &value)
    }

    pub(crate) fn key(self, key: &str) -> Self {
        self.with("idempotency-key", key)
    }

    pub(crate) fn new_key(self) -> Self {
        self.key(&Uuid::now_v7().to_string())
    }

    pub(crate) fn json(self, body: &Value) -> Self {
        let sent = self.with("content-type", "application/json");
        sent.bytes(body.to_string().into_bytes())
    }

    pub(crate) fn bytes(self, body: Vec<u8>) -> Self {
        Self { body, ..self }
    }
}

/// What came back. Everything the API answers is JSON.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) status: StatusCode,
    pub(crate) headers: HeaderMap,
    pub(crate) body: Value,
}

impl Answer {
    pub(crate) fn header(&self, name: &str) -> Option<&str> {
        self.headers.get(name).map(|value| value.to_str().unwrap())
    }

    /// The id of what a write made.
    pub(crate) fn made(&self) -> String {
        assert_eq!(self.status, StatusCode::CREATED, "{}", self.body);
        self.body["data"]["id"].as_str().unwrap().to_owned()
    }

    /// The names of the fields to mend.
    pub(crate) fn fields(&self) -> Vec<&str> {
        let fields = self.body["error"]["fields"].as_array().unwrap();
        fields
            .iter()
            .map(|each| each["field"].as_str().unwrap())
            .collect()
    }

    /// Holds an error to the envelope's shape.
    pub(crate) fn assert_error(&self, status: StatusCode, kind: &str) {
        assert_eq!(self.status, status, "{}", self.body);
        let body = self.body.as_object().unwrap();
        assert_eq!(body.keys().collect::<Vec<_>>(), ["error"]);
        let error = body["error"].as_object().unwrap();
        let mut names: Vec<&String> = error.keys().collect();
        names.sort();
        assert_eq!(names, ["fields", "kind", "request_id", "sentence"]);
        assert_eq!(error["kind"], kind, "{}", self.body);
        assert!(error["sentence"].as_str().unwrap().ends_with('.'));
        let id = error["request_id"].as_str().unwrap();
        assert!(Uuid::parse_str(id).is_ok(), "{id}");
        assert_eq!(self.header("x-request-id"), Some(id));
        assert_eq!(self.header("content-type"), Some("application/json"));
        for field in error["fields"].as_array().unwrap() {
            assert!(
                field["sentence"].as_str().unwrap().ends_with('.'),
                "{field}"
            );
        }
    }
}

async fn account(app: &App) -> NewAccount {
    let number = COUNT.fetch_add(1, Ordering::Relaxed);
    let name = LogInName::read(&format!("api-person{number}")).unwrap();
    let password = Password::choose("wet-plates-and-tongs", &[]).unwrap();
    NewAccount::prepare(app, format!("Person {number}"), name, &password)
        .await
        .unwrap()
}

/// A token as its row has it.
async fn bearer(
    installation: &Installation,
    room: Uuid,
    person: Uuid,
    scopes: &[&str],
    expires_at: OffsetDateTime,
) -> Bearer {
    let (id, secret) = (Uuid::now_v7(), Secret::new().unwrap());
    let scopes: Vec<String> = scopes.iter().map(|&scope| scope.to_owned()).collect();
    let mut db = installation.db().await;
    sqlx::query(
        "insert into token (room_id, id, person_id, name, secret_hash, scopes, made_at, expires_at)
        values ($1, $2, $3, 'test', $4, $5, $6, $7)",
    )
    .bind(room)
    .bind(id)
    .bind(person)
    .bind(secret.hash())
    .bind(scopes)
    .bind(START)
    .bind(expires_at)
    .execute(&mut db)
    .await
    .unwrap();
    Bearer {
        person,
        token: id,
        text: tokens::text(room, id, &secret),
    }
}
