//! Forms that bring a file, and the file as it is taken away again.

use axum::extract::{FromRequest, Multipart, Request};
use axum::http::header::CONTENT_SECURITY_POLICY;
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};

use crate::app::App;
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::web::attached::attached;

/// What a file that is not ours may do in a browser: nothing.
const SANDBOX: &str = "sandbox; default-src 'none'";

/// A submitted form with at most one file. Its name and type are what somebody says, so
/// they are not kept.
#[derive(Clone, Debug, Default)]
pub struct Upload {
    texts: Vec<(String, String)>,
    /// The file; empty where none was chosen.
    pub file: Vec<u8>,
}

impl Upload {
    /// What was typed in a field; empty where it was not sent.
    #[must_use]
    pub fn text(&self, name: &str) -> String {
        self.all(name).next().unwrap_or_default().to_owned()
    }

    /// Everything that was sent under a name.
    pub fn all<'u>(&'u self, name: &'u str) -> impl Iterator<Item = &'u str> {
        let of_name = self.texts.iter().filter(move |(field, _)| field == name);
        of_name.map(|(_, text)| text.as_str())
    }

    async fn read(mut form: Multipart) -> Result<Self, StatusCode> {
        let mut upload = Self::default();
        while let Some(field) = form.next_field().await.map_err(|cause| cause.status())? {
            let name = field.name().unwrap_or_default().to_owned();
            let is_file = field.file_name().is_some();
            let bytes = field.bytes().await.map_err(|cause| cause.status())?;
            if is_file {
                upload.file = bytes.into();
            } else {
                let text = String::from_utf8_lossy(&bytes).into_owned();
                upload.texts.push((name, text));
            }
        }
        Ok(upload)
    }
}

impl FromRequest<App> for Upload {
    type Rejection = Response;

    async fn from_request(request: Request, app: &App) -> Result<Self, Response> {
        let unread = || Error::field("", Problem::Missing).into_response();
        let form = Multipart::from_request(request, app).await;
        let form = form.map_err(|_| unread())?;
        Self::read(form).await.map_err(|status| match status {
            StatusCode::PAYLOAD_TOO_LARGE => status.into_response(),
            _ => unread(),
        })
    }
}

/// A file that somebody brought, to be kept by whoever asks: never shown among our own
/// pages, and in a sandbox where a browser shows it all the same.
#[must_use]
pub fn taken_away(name: &str, media: &str, bytes: Vec<u8>) -> Response {
    let mut answer = attached(media, name, bytes);
    let sandbox = HeaderValue::from_static(SANDBOX);
    answer
        .headers_mut()
        .insert(CONTENT_SECURITY_POLICY, sandbox);
    answer
}
