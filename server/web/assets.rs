//! Style sheets and script, embedded in the program.
//!
//! Each is served under a name that holds the first bytes of its SHA-256, so it may
//! be kept for ever and a new build is never shown with an old sheet.

use std::sync::LazyLock;

use axum::extract::Path;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use sha2::{Digest, Sha256};

struct Asset {
    name: &'static str,
    hashed_name: String,
    media: &'static str,
    bytes: &'static [u8],
}

const CSS: &str = "text/css; charset=utf-8";
const SCRIPT: &str = "text/javascript; charset=utf-8";

static ASSETS: LazyLock<Vec<Asset>> = LazyLock::new(|| {
    vec![
        asset(
            "wetside.css",
            CSS,
            include_bytes!("../../static/wetside.css"),
        ),
        asset("bench.css", CSS, include_bytes!("../../static/bench.css")),
        asset("desk.css", CSS, include_bytes!("../../static/desk.css")),
        asset("kept.css", CSS, include_bytes!("../../static/kept.css")),
        asset("live.css", CSS, include_bytes!("../../static/live.css")),
        asset("paper.css", CSS, include_bytes!("../../static/paper.css")),
        asset("print.css", CSS, include_bytes!("../../static/print.css")),
        asset(
            "wetside.js",
            SCRIPT,
            include_bytes!("../../static/wetside.js"),
        ),
        asset("notes.js", SCRIPT, include_bytes!("../../static/notes.js")),
        asset("live.js", SCRIPT, include_bytes!("../../static/live.js")),
        asset(
            "mark.svg",
            "image/svg+xml",
            include_bytes!("../../static/mark.svg"),
        ),
    ]
});

fn asset(name: &'static str, media: &'static str, bytes: &'static [u8]) -> Asset {
    let hash = data_encoding::HEXLOWER.encode(&Sha256::digest(bytes)[..8]);
    let hashed_name = match name.rsplit_once('.') {
        Some((stem, ending)) => format!("{stem}-{hash}.{ending}"),
        None => format!("{name}-{hash}"),
    };
    Asset {
        name,
        hashed_name,
        media,
        bytes,
    }
}

/// The path of an embedded file below the installation's address. A name that is
/// not embedded leads to a path that answers 404.
#[must_use]
pub fn path(name: &str) -> String {
    let hashed = ASSETS.iter().find(|asset| asset.name == name);
    format!(
        "/assets/{}",
        hashed.map_or(name, |asset| asset.hashed_name.as_str())
    )
}

/// Names and contents of all embedded files.
pub fn all() -> impl Iterator<Item = (&'static str, &'static [u8])> {
    ASSETS.iter().map(|asset| (asset.name, asset.bytes))
}

/// Serves `/assets/{file}`.
pub async fn asset_file(Path(file): Path<String>) -> Response {
    let Some(asset) = ASSETS.iter().find(|asset| asset.hashed_name == file) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    let headers = [
        (header::CONTENT_TYPE, asset.media),
        (header::CACHE_CONTROL, "public, max-age=31536000, immutable"),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    ];
    (headers, asset.bytes).into_response()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_follow_the_content() {
        let one = asset("a.css", CSS, b"one");
        let other = asset("a.css", CSS, b"other");
        assert_ne!(one.hashed_name, other.hashed_name);
        assert!(one.hashed_name.starts_with("a-") && one.hashed_name.ends_with(".css"));
    }

    #[tokio::test]
    async fn the_path_of_each_is_served_and_others_are_not() {
        for (name, bytes) in all() {
            let file = path(name).trim_start_matches("/assets/").to_owned();
            let answer = asset_file(Path(file)).await;
            assert_eq!(answer.status(), StatusCode::OK, "{name}");
            let body = axum::body::to_bytes(answer.into_body(), usize::MAX)
                .await
                .unwrap();
            assert_eq!(&body[..], bytes, "{name}");
        }
        let unhashed = asset_file(Path("wetside.css".to_owned())).await;
        assert_eq!(unhashed.status(), StatusCode::NOT_FOUND);
    }
}
