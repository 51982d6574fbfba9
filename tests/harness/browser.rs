//! A browser without a network: cookies, redirects, and forms as they were served.

use axum::Router;
use axum::body::{Body, Bytes};
use axum::http::header::{CONTENT_TYPE, COOKIE, HOST, LOCATION, SET_COOKIE};
use axum::http::{HeaderMap, Method, Request, StatusCode};
use axum::response::Response;
use http_body_util::BodyExt;
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};
use tower::ServiceExt;
use wetside::app::App;
use wetside::router;

use super::page::{Form, Page};

/// What came back.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) method: Method,
    pub(crate) path: String,
    pub(crate) status: StatusCode,
    pub(crate) headers: HeaderMap,
    pub(crate) body: String,
}

impl Answer {
    pub(crate) fn page(&self) -> Page {
        Page::parse(&self.body)
    }

    pub(crate) fn location(&self) -> Option<&str> {
        self.headers.get(LOCATION)?.to_str().ok()
    }

    /// Expects a status, or says everything there is to say.
    pub(crate) fn expect(self, status: u16) -> Self {
        let said = Page::parse(&self.body).main();
        assert_eq!(
            self.status.as_u16(),
            status,
            "{} {} answered: {said}",
            self.method,
            self.path
        );
        self
    }
}

/// Somebody's browser.
#[derive(Clone, Debug)]
pub(crate) struct Browser {
    service: Router,
    cookies: Vec<(String, String)>,
}

impl Browser {
    pub(crate) fn new(app: &App) -> Self {
        Self {
            service: router::service(app).unwrap(),
            cookies: Vec::new(),
        }
    }

    /// The same browser, sent to another server behind the proxy.
    pub(crate) fn at_another_server(&self, app: &App) -> Self {
        Self {
            cookies: self.cookies.clone(),
            ..Self::new(app)
        }
    }

    /// Keeps a cookie.
    pub(crate) fn keep(&mut self, name: &str, value: &str) {
        self.cookies.retain(|(other, _)| other != name);
        if !value.is_empty() {
            self.cookies.push((name.to_owned(), value.to_owned()));
        }
    }

    /// What it keeps in the cookie of this name.
    pub(crate) fn kept(&self, name: &str) -> Option<&str> {
        let found = self.cookies.iter().find(|(other, _)| other == name);
        found.map(|(_, value)| value.as_str())
    }

    /// Sends a request as it is.
    pub(crate) async fn send(&mut self, request: Request<Body>) -> Answer {
        let method = request.method().clone();
        let path = request.uri().to_string();
        let response = self.open(request).await;
        let (parts, body) = response.into_parts();
        // What is sent for hours has no end to wait for.
        let is_stream = parts
            .headers
            .get(CONTENT_TYPE)
            .is_some_and(|it| it == "text/event-stream");
        let body = match is_stream {
            true => Bytes::new(),
            false => body.collect().await.unwrap().to_bytes(),
        };
        for cookie in parts.headers.get_all(SET_COOKIE) {
            let pair = cookie.to_str().unwrap().split(';').next().unwrap();
            let (name, value) = pair.split_once('=').unwrap();
            let (name, value) = (name.to_owned(), value.to_owned());
            self.keep(&name, &value);
        }
        Answer {
            method,
            path,
            status: parts.status,
            headers: parts.headers,
            body: String::from_utf8_lossy(&body).into_owned(),
        }
    }

    /// A request with this browser's cookies, from a page of ours.
    pub(crate) fn request(&self, method: Method, path: &str) -> axum::http::request::Builder {
        let cookies: Vec<String> = self
            .cookies
            .iter()
            .map(|(name, value)| format!("{name}={value}"))
            .collect();
        let mut request = Request::builder()
            .method(method)
            .uri(path)
            .header(HOST, "127.0.0.1:8480")
            .header("sec-fetch-site", "same-origin");
        if !cookies.is_empty() {
            request = request.header(COOKIE, cookies.join("; "));
        }
        request
    }

    /// Asks, and leaves what comes to whoever asked.
    pub(crate) async fn open(&self, request: Request<Body>) -> Response {
        self.service.clone().oneshot(request).await.unwrap()
    }

    pub(crate) async fn get(&mut self, path: &str) -> Answer {
        let request = self.request(Method::GET, path).body(Body::empty()).unwrap();
        self.send(request).await
    }

    /// Gets a page, following redirects.
    pub(crate) async fn visit(&mut self, path: &str) -> Answer {
        let mut answer = self.get(path).await;
        for _ in 0..5 {
            match answer.location().map(str::to_owned) {
                Some(next) => answer = self.get(&next).await,
                None => break,
            }
        }
        answer
    }

    pub(crate) async fn post(&mut self, path: &str, fields: &[(String, String)]) -> Answer {
        let encode = |text: &str| utf8_percent_encode(text, NON_ALPHANUMERIC).to_string();
        let body: Vec<String> = fields
            .iter()
            .map(|(name, value)| format!("{}={}", encode(name), encode(value)))
            .collect();
        let request = self
            .request(Method::POST, path)
            .header(CONTENT_TYPE, "application/x-www-form-urlencoded")
            .body(Body::from(body.join("&")))
            .unwrap();
        self.send(request).await
    }

    /// Sends a form that was served, without following where it leads.
    pub(crate) async fn submit(&mut self, form: &Form) -> Answer {
        let path = form.action.split('#').next().unwrap_or_default();
        self.post(path, &form.fields).await
    }

    /// Sends a form and follows to the page it leads to.
    pub(crate) async fn submit_and_follow(&mut self, form: &Form) -> Answer {
        let answer = self.submit(form).await.expect(303);
        let next = answer.location().unwrap().to_owned();
        self.visit(&next).await
    }
}
