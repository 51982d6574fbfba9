//! One's own inductions, and the press that confirms all that waits.

use axum::extract::State;
use axum::response::Response;

use super::confirming::confirm_own;
use super::pages::{OfPerson, shell};
use super::views::PersonPage;
use crate::app::App;
use crate::error::Result;
use crate::identity::Permit;
use crate::problem::Problems;
use crate::rights::{ConfirmInductions, Right, SeeOwnInductions};
use crate::router::Pages;
use crate::web::desk::KeyForm;
use crate::web::forms::{Form, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::shell::Place;

const OWN: &str = "/rooms/{room}/inductions/own";

/// The routes of this page.
pub(super) fn pages() -> Pages {
    Pages::new().get(OWN, own).post(OWN, confirm)
}

async fn own_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    (key, problems): (String, &Problems),
) -> Result<PersonPage> {
    let person = OfPerson::read(app, permit, permit.person().id).await?;
    let shell = shell(permit, frame, (Place::OwnInductions, "/inductions/own"));
    Ok(person.page(shell, key, problems))
}

async fn own(
    State(app): State<App>,
    permit: Permit<SeeOwnInductions>,
    frame: Frame,
) -> Result<Response> {
    let fresh = (new_key()?, &Problems::default());
    page(&own_page(&app, &permit, &frame, fresh).await?)
}

async fn confirm(
    State(app): State<App>,
    permit: Permit<ConfirmInductions>,
    frame: Frame,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    match confirm_own(&app, &permit, read_key(&form.key)?).await {
        Ok(_) => Ok(on_to(&app, &permit, "/inductions/own")),
        Err(error) => {
            let shown = (form.key, &to_mend(error)?);
            mend(&own_page(&app, &permit, &frame, shown).await?)
        }
    }
}
