//! Somebody who follows a board: the events as they come.

use std::time::Duration;

use axum::body::{Body, BodyDataStream};
use axum::http::{HeaderMap, Method, StatusCode};
use futures_util::StreamExt;
use serde_json::Value;
use tokio::time::timeout;

use crate::harness::Browser;

/// Longer than anything that is waited for here may take.
const PATIENCE: Duration = Duration::from_secs(20);

/// An event as it was sent.
#[derive(Clone, Debug)]
pub(super) struct Event {
    pub(super) name: String,
    pub(super) id: Option<String>,
    pub(super) data: Value,
    /// Its bytes.
    pub(super) text: String,
}

impl Event {
    fn parse(text: &str) -> Option<Self> {
        let field = |name: &str| {
            let lines = text.lines();
            lines
                .filter_map(|line| line.strip_prefix(name)?.strip_prefix(": "))
                .map(str::to_owned)
                .next()
        };
        Some(Self {
            name: field("event")?,
            id: field("id"),
            data: serde_json::from_str(&field("data")?).unwrap(),
            text: text.to_owned(),
        })
    }

    /// The ids of the parts it brings, in order.
    pub(super) fn parts(&self) -> Vec<&str> {
        let parts = self.data["parts"].as_array().unwrap().iter();
        parts.map(|part| part["id"].as_str().unwrap()).collect()
    }

    /// The markup of a part.
    pub(super) fn part(&self, id: &str) -> &str {
        let mut parts = self.data["parts"].as_array().unwrap().iter();
        let part = parts.find(|part| part["id"] == id);
        part.unwrap_or_else(|| panic!("no {id} in {:?}", self.parts()))["html"]
            .as_str()
            .unwrap()
    }

    pub(super) fn number(&self, name: &str) -> i64 {
        self.data[name].as_i64().unwrap()
    }
}

/// A stream, read event by event.
pub(super) struct Reader {
    body: BodyDataStream,
    text: String,
}

impl Reader {
    /// Asks for a stream that is to be had.
    pub(super) async fn follow(browser: &Browser, path: &str, last: Option<&str>) -> Self {
        let asked = Self::ask(browser, path, last).await;
        asked.unwrap_or_else(|(status, _)| panic!("{path}: {status}"))
    }

    /// Asks for a stream; where there is none, answers what came instead.
    pub(super) async fn ask(
        browser: &Browser,
        path: &str,
        last: Option<&str>,
    ) -> Result<Self, (StatusCode, HeaderMap)> {
        let mut request = browser.request(Method::GET, path);
        if let Some(last) = last {
            request = request.header("last-event-id", last);
        }
        let answer = browser.open(request.body(Body::empty()).unwrap()).await;
        let (parts, body) = answer.into_parts();
        if parts.status != StatusCode::OK {
            return Err((parts.status, parts.headers));
        }
        Ok(Self {
            body: body.into_data_stream(),
            text: String::new(),
        })
    }

    /// The next event; none where the stream is over.
    pub(super) async fn next(&mut self) -> Option<Event> {
        loop {
            if let Some((event, rest)) = self.text.split_once("\n\n") {
                let (event, rest) = (event.to_owned(), rest.to_owned());
                self.text = rest;
                match Event::parse(&event) {
                    Some(event) => return Some(event),
                    None => continue,
                }
            }
            let more = timeout(PATIENCE, self.body.next()).await;
            let more = more.unwrap_or_else(|_| panic!("nothing came; before: {}", self.text));
            self.text
                .push_str(std::str::from_utf8(&more?.unwrap()).unwrap());
        }
    }

    /// The next event of this name; others are passed over.
    pub(super) async fn until(&mut self, name: &str) -> Event {
        loop {
            let event = self.next().await;
            let event = event.unwrap_or_else(|| panic!("over before {name}"));
            if event.name == name {
                return event;
            }
        }
    }

    /// Everything up to the first beat: what brings somebody up to date.
    pub(super) async fn opening(&mut self) -> Vec<Event> {
        let mut events = Vec::new();
        loop {
            let event = self.next().await.unwrap();
            match event.name.as_str() {
                "beat" => return events,
                "notices" => {}
                _ => events.push(event),
            }
        }
    }

    /// Reads to the end and answers how many changes came yet.
    pub(super) async fn changes_until_end(&mut self) -> usize {
        let mut changes = 0;
        while let Some(event) = self.next().await {
            changes += usize::from(event.name == "change");
        }
        changes
    }
}
