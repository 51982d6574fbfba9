//! How bright the pages are: chosen anywhere, remembered by the device.

use axum::extract::{Query, State};
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, HeaderValue};
use axum::response::Response;
use serde::Deserialize;

use super::forms::{Form, page, see_other};
use super::frame::Frame;
use super::shell::Display;
use super::views::SafelightPage;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::sessions::cookie;

/// A choice, and the page it was made on.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
pub struct Choice {
    display: String,
    back: String,
}

/// Remembers the choice and goes back; the first time Safelight is chosen, by
/// way of the page that says what a screen is not.
///
/// # Errors
/// None that a choice can cause.
pub async fn choose(
    State(app): State<App>,
    headers: HeaderMap,
    Form(choice): Form<Choice>,
) -> Result<Response> {
    let display = Display::named(&choice.display);
    let back = own_path(&choice.back);
    let warned = cookie(&headers, "safelight").is_some();
    let mut response = match display {
        Display::Safelight if !warned => {
            let back =
                percent_encoding::utf8_percent_encode(back, percent_encoding::NON_ALPHANUMERIC);
            see_other(&app, &format!("/safelight?back={back}"))
        }
        _ => see_other(&app, back),
    };
    remember(&app, &mut response, "display", display.name())?;
    if display == Display::Safelight {
        remember(&app, &mut response, "safelight", "warned")?;
    }
    Ok(response)
}

fn remember(app: &App, response: &mut Response, name: &str, value: &str) -> Result<()> {
    let path = app.address().cookie_path();
    let secure = if app.address().is_secure() {
        "; Secure"
    } else {
        ""
    };
    let text =
        format!("{name}={value}; Path={path}; Max-Age=31536000; SameSite=Lax; HttpOnly{secure}");
    let value = HeaderValue::from_str(&text).map_err(|cause| Error::Internal(cause.into()))?;
    response.headers_mut().append(SET_COOKIE, value);
    Ok(())
}

/// A path of ours; anything else is the front door.
#[must_use]
pub fn own_path(path: &str) -> &str {
    let is_own = path.starts_with('/')
        && !path.starts_with("//")
        && !path.contains('\\')
        && !path.contains(char::is_control);
    if is_own { path } else { "/rooms" }
}

/// What a screen is not: said once, when Safelight is first chosen.
///
/// # Errors
/// A fault of the template.
pub async fn safelight(frame: Frame, Query(choice): Query<Choice>) -> Result<Response> {
    let mut shell = frame.shell();
    shell.display = Display::Safelight;
    shell.here = own_path(&choice.back).to_owned();
    let record = room_of(&shell.here).map(|slug| shell.to(&format!("/rooms/{slug}/lamps")));
    page(&SafelightPage { shell, record })
}

/// The short name of the room that a path of ours lies in.
fn room_of(path: &str) -> Option<&str> {
    let rest = path.strip_prefix("/rooms/")?;
    let slug = rest.split(['/', '?']).next()?;
    let is_of_slugs = |letter: char| letter.is_ascii_alphanumeric() || letter == '-';
    (!slug.is_empty() && slug.chars().all(is_of_slugs)).then_some(slug)
}
