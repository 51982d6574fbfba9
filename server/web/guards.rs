//! What every request passes before anything else looks at it: the host it
//! names, the site it comes from, and the headers its answer carries.

use axum::extract::{Request, State};
use axum::http::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, HOST, ORIGIN, REFERRER_POLICY,
    STRICT_TRANSPORT_SECURITY, X_CONTENT_TYPE_OPTIONS, X_FRAME_OPTIONS,
};
use axum::http::{HeaderMap, HeaderName, HeaderValue, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};

use crate::address::PublicAddress;
use crate::app::App;
use crate::error::Error;
use crate::identity::Skin;

const CONTENT_RULES: &str = "default-src 'none'; style-src 'self'; script-src 'self'; \
    img-src 'self'; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

const SEC_FETCH_SITE: HeaderName = HeaderName::from_static("sec-fetch-site");
const OPENER_POLICY: HeaderName = HeaderName::from_static("cross-origin-opener-policy");
const RESOURCE_POLICY: HeaderName = HeaderName::from_static("cross-origin-resource-policy");
const PERMISSIONS: HeaderName = HeaderName::from_static("permissions-policy");

/// Refuses foreign hosts and foreign sites; sets the headers on every answer,
/// refusals too.
pub async fn guard(State(app): State<App>, request: Request, next: Next) -> Response {
    let address = app.address();
    // The API ignores cookies, so a foreign site has nothing to ride on.
    let is_api = request.extensions().get::<Skin>() == Some(&Skin::Api);
    let mut response = if !names_our_host(request.headers(), request.uri().host(), address) {
        StatusCode::MISDIRECTED_REQUEST.into_response()
    } else if !request.method().is_safe() && !is_api && !is_own_site(request.headers(), address) {
        Error::Forbidden.into_response()
    } else {
        next.run(request).await
    };
    set_headers(response.headers_mut(), address);
    response
}

fn names_our_host(headers: &HeaderMap, in_uri: Option<&str>, address: &PublicAddress) -> bool {
    let header = headers.get(HOST).and_then(|host| host.to_str().ok());
    header
        .or(in_uri)
        .is_some_and(|host| address.allows_host(host))
}

/// A browser says which site a request comes from. An `Authorization` header
/// proves nothing here: the browser adds a proxy's password by itself.
fn is_own_site(headers: &HeaderMap, address: &PublicAddress) -> bool {
    let text = |name: &HeaderName| headers.get(name).and_then(|value| value.to_str().ok());
    match text(&SEC_FETCH_SITE) {
        Some(site) => site == "same-origin",
        None => text(&ORIGIN).is_some_and(|origin| address.allows_origin(origin)),
    }
}

fn set_headers(headers: &mut HeaderMap, address: &PublicAddress) {
    let fixed = [
        (X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (X_FRAME_OPTIONS, "DENY"),
        (OPENER_POLICY, "same-origin"),
        (RESOURCE_POLICY, "same-origin"),
        (PERMISSIONS, "camera=(), geolocation=(), microphone=()"),
    ];
    for (name, value) in fixed {
        headers.insert(name, HeaderValue::from_static(value));
    }
    // What an answer set for itself stays.
    let unless_set = [
        (CONTENT_SECURITY_POLICY, CONTENT_RULES),
        (REFERRER_POLICY, "same-origin"),
        (CACHE_CONTROL, "no-store"),
    ];
    for (name, value) in unless_set {
        headers
            .entry(name)
            .or_insert(HeaderValue::from_static(value));
    }
    if address.is_secure() {
        let year = HeaderValue::from_static("max-age=31536000");
        headers.insert(STRICT_TRANSPORT_SECURITY, year);
    }
}
