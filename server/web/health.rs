//! Is the program alive, and is it ready to serve?

use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

use crate::app::App;
use crate::database::migrate::{Schema, schema};

/// The process answers.
pub async fn live() -> &'static str {
    "live\n"
}

/// The database answers and has the tables this program wants.
pub async fn ready(State(app): State<App>) -> Response {
    match schema(app.database()).await {
        Ok(Schema::Current) => "ready\n".into_response(),
        Ok(Schema::Behind | Schema::Ahead) => {
            (StatusCode::SERVICE_UNAVAILABLE, "migrating\n").into_response()
        }
        Err(_) => (StatusCode::SERVICE_UNAVAILABLE, "no database\n").into_response(),
    }
}
