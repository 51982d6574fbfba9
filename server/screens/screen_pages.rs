//! What a screen itself asks for: its page, and a code while nobody has paired it.

use axum::body::Body;
use axum::extract::State;
use axum::http::header::{CONTENT_TYPE, ETAG};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::views::CodePage;
use super::wall::{self, Kept};
use crate::app::App;
use crate::board;
use crate::error::Result;
use crate::identity::Client;
use crate::identity::devices::{self, Device, Pairing, screen_cookie, screen_secret};
use crate::identity::sessions::cookie;
use crate::router::Pages;
use crate::web::display::remember;
use crate::web::forms::{page, see_other};
use crate::web::frame::Frame;
use crate::web::shell::Display;

/// Which screen this browser showed last: a new one begins with the display that
/// the steward chose, whatever the browser had before.
const SHOWN: &str = "screen_shown";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .open_get("/screen", screen)
        .open_post("/screen/code", code)
}

async fn screen(
    State(app): State<App>,
    pairing: Pairing,
    frame: Frame,
    headers: HeaderMap,
) -> Result<Response> {
    match pairing {
        Pairing::Paired(device) => show(&app, &device, &frame, &headers).await,
        Pairing::Waiting(code, until) => {
            let (first, second) = code.halves();
            let seconds = (until - app.clock().now()).whole_seconds();
            code_page(&frame, Some((first.to_owned(), second.to_owned(), seconds)))
        }
        Pairing::Nothing => code_page(&frame, None),
    }
}

fn code_page(frame: &Frame, code: Option<(String, String, i64)>) -> Result<Response> {
    let shell = frame.shell();
    page(&CodePage { shell, code })
}

/// The page of a paired screen, unless it has it already. Each whole answer lets
/// the browser keep its secret for as long again.
async fn show(app: &App, device: &Device, frame: &Frame, headers: &HeaderMap) -> Result<Response> {
    let id = device.id().to_string();
    let is_new = cookie(headers, SHOWN) != Some(id.as_str());
    let display = match is_new {
        true => Display::named(device.display()),
        false => frame.display(),
    };
    let kept = wall::kept(app, device.room(), device.kind(), display).await?;
    if board::is_known(headers, &kept.etag) {
        return Ok((StatusCode::NOT_MODIFIED, [(ETAG, kept.etag)]).into_response());
    }
    let mut response = whole(kept);
    if let Some(secret) = screen_secret(headers, app.address()) {
        let (name, value) = screen_cookie(app.address(), &secret)?;
        response.headers_mut().append(name, value);
    }
    if is_new {
        remember(app, &mut response, SHOWN, &id)?;
        remember(app, &mut response, "display", display.name())?;
    }
    Ok(response)
}

fn whole(kept: Kept) -> Response {
    let headers = [
        (CONTENT_TYPE, "text/html; charset=utf-8".to_owned()),
        (ETAG, kept.etag),
    ];
    (headers, Body::from(kept.body)).into_response()
}

async fn code(State(app): State<App>, client: Client, headers: HeaderMap) -> Result<Response> {
    let mut response = see_other(&app, "/screen");
    if let Some(secret) = devices::show_code(&app, &client, &headers).await? {
        let (name, value) = screen_cookie(app.address(), &secret)?;
        response.headers_mut().append(name, value);
    }
    Ok(response)
}
