//! The sheet that hangs at the door: a code that leads to arriving.

use axum::extract::State;
use axum::response::Response;

use super::QrCode;
use super::views::DoorSheetPage;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::rights::LookAtBoard;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::shell::Place;

/// The route of this page.
pub(super) fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/door-sheet", door_sheet)
}

async fn door_sheet(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
) -> Result<Response> {
    let membership = permit.membership();
    let address = app.address();
    let leads_to = address.absolute(&format!("/rooms/{}/arrive", membership.slug));
    page(&DoorSheetPage {
        code: QrCode::of(&leads_to).map_err(Error::fault)?,
        room: membership.room_name.clone(),
        shell: lying_at(frame.shell_in(&permit, Some(Place::Present)), "/door-sheet"),
        leads_to,
    })
}
