//! Notes of what one wants to avoid: private, and in no book.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::avoiding::{add, remove};
use super::form::read_one;
use super::pages::Listed;
use super::views::{AvoidForm, PeriodForm};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::name;
use crate::problem::Problems;
use crate::rights::KeepAvoidNotes;
use crate::router::Pages;
use crate::web::forms::{Form, mend, on_to, to_mend};
use crate::web::frame::Frame;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .post("/rooms/{room}/avoid", add_send)
        .post("/rooms/{room}/avoid/{note}/remove", remove_send)
}

async fn add_send(
    State(app): State<App>,
    permit: Permit<KeepAvoidNotes>,
    frame: Frame,
    Form(form): Form<AvoidForm>,
) -> Result<Response> {
    match add_as_typed(&app, &permit, &form).await {
        Ok(()) => Ok(on_to(&app, &permit, "/incidents")),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            let listed = Listed::read(&app, &permit, PeriodForm::default()).await?;
            mend(&listed.page(&permit, &frame, shown))
        }
    }
}

async fn add_as_typed(app: &App, permit: &Permit<KeepAvoidNotes>, form: &AvoidForm) -> Result<()> {
    let mut problems = Problems::default();
    let product = problems.take("product", read_one(&form.product));
    let words = match form.words.trim() {
        "" => Ok(String::new()),
        words => name(words),
    };
    let words = problems.take("words", words);
    match (product, words) {
        (Some(product), Some(words)) => add(app, permit, product, words).await,
        _ => Err(Error::Invalid(problems)),
    }
}

async fn remove_send(
    State(app): State<App>,
    permit: Permit<KeepAvoidNotes>,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    remove(&app, &permit, id).await?;
    Ok(on_to(&app, &permit, "/incidents"))
}
