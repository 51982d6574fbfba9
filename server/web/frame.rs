//! What a request says about the frame of its page, and the shell made of it.
//!
//! A frame that is extracted after a permit also knows what is around the page: it
//! comes after it in every handler's signature. A page that is kept for several
//! readers takes the `Display` alone, and asks nothing.

use std::convert::Infallible;

use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::request::Parts;

use super::around::{Around, around};
use crate::app::App;
use crate::database::Scope;
use crate::identity::sessions::cookie;
use crate::identity::{Permit, Person};
use crate::rights::{
    KeepTokens, LookAtBoard, NoteSheets, ReadBook, ReadNotices, Right, Role, SealBook, SeeAir,
    SeeBench, SeeChecks, SeeHandover, SeeIncidents, SeeInductions, SeeLamps, SeeMembers,
    SeeOwnInductions, SeePapers, SeeProducts, SeeRoom, SeeScreens, SeeTopics, SeeWorkshops,
};
use crate::web::shell::{Display, Place, RoomName, Shell};

/// The build, for the footer and the board's ETag.
pub const BUILD: &str = env!("CARGO_PKG_VERSION");

/// What the request says: where it is, and how bright its page is.
#[derive(Clone, Debug)]
pub struct Frame {
    base: String,
    here: String,
    display: Display,
    around: Option<Around>,
}

impl FromRequestParts<App> for Frame {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Infallible> {
        let frame = Self::of(parts, app);
        let Some(scope) = parts.extensions.get::<Scope>().copied() else {
            return Ok(frame);
        };
        let around = around(app, scope, &parts.method).await;
        Ok(Self {
            around: Some(around),
            ..frame
        })
    }
}

/// The display of the device that asks: all that a page that is kept takes from a request.
impl FromRequestParts<App> for Display {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &App) -> Result<Self, Infallible> {
        Ok(display(&parts.headers))
    }
}

fn display(headers: &HeaderMap) -> Display {
    cookie(headers, "display").map_or(Display::Day, Display::named)
}

impl Frame {
    /// Reads it from a request's head.
    #[must_use]
    pub fn of(parts: &Parts, app: &App) -> Self {
        let here = parts.uri.path_and_query();
        Self {
            base: app.address().base().to_owned(),
            here: here.map_or_else(|| "/".to_owned(), |here| here.as_str().to_owned()),
            display: display(&parts.headers),
            around: None,
        }
    }

    /// The frame of a page that is kept for several readers: what is a reader's own stays
    /// out of it.
    #[must_use]
    pub fn kept(app: &App, here: String, display: Display) -> Self {
        Self {
            base: app.address().base().to_owned(),
            here,
            display,
            around: None,
        }
    }

    /// The display of this device.
    #[must_use]
    pub fn display(&self) -> Display {
        self.display
    }

    /// The shell of a page that knows nobody.
    #[must_use]
    pub fn shell(&self) -> Shell {
        Shell {
            base: self.base.clone(),
            here: self.here.clone(),
            display: self.display,
            build: BUILD.to_owned(),
            ..Shell::default()
        }
    }

    /// The shell of a person's page outside any room.
    #[must_use]
    pub fn shell_of(&self, person: &Person) -> Shell {
        Shell {
            logged_in: true,
            person: Some(person.name.clone()),
            ..self.shell()
        }
    }

    /// The shell of a room's page.
    #[must_use]
    pub fn shell_in<R: Right>(&self, permit: &Permit<R>, place: Option<Place>) -> Shell {
        let around = self.around.clone();
        let membership = permit.membership();
        let room = RoomName {
            slug: membership.slug.clone(),
            name: membership.room_name.clone(),
        };
        Shell {
            person: Some(permit.person().name.clone()),
            place,
            unread: around.as_ref().map(|around| around.unread),
            off: around.map_or_else(Vec::new, |around| around.off),
            demo: membership.is_demo,
            ..self.shell_for_role(membership.role, room)
        }
    }

    /// The shell of a page that is kept for everyone of a role: it names nobody.
    #[must_use]
    pub fn shell_for_role(&self, role: Role, room: RoomName) -> Shell {
        Shell {
            logged_in: true,
            room: Some(room),
            places: places(role),
            ..self.shell()
        }
    }
}

/// Where a role may go, in the order of the navigation.
fn places(role: Role) -> Vec<Place> {
    let all = [
        (Place::Board, LookAtBoard::ROW),
        (Place::NoteSheets, NoteSheets::ROW),
        (Place::Notices, ReadNotices::ROW),
        (Place::Present, LookAtBoard::ROW),
        (Place::Outages, LookAtBoard::ROW),
        (Place::Checks, SeeChecks::ROW),
        (Place::Workshops, SeeWorkshops::ROW),
        (Place::Book, ReadBook::ROW),
        (Place::Members, SeeMembers::ROW),
        (Place::Bench, SeeBench::ROW),
        (Place::Products, SeeProducts::ROW),
        (Place::Papers, SeePapers::ROW),
        (Place::Lamps, SeeLamps::ROW),
        (Place::OwnInductions, SeeOwnInductions::ROW),
        (Place::Inductions, SeeInductions::ROW),
        (Place::Topics, SeeTopics::ROW),
        (Place::Air, SeeAir::ROW),
        (Place::Incidents, SeeIncidents::ROW),
        (Place::Settings, SeeRoom::ROW),
        (Place::Screens, SeeScreens::ROW),
        (Place::Handover, SeeHandover::ROW),
        (Place::Checkpoints, SealBook::ROW),
        (Place::Tokens, KeepTokens::ROW),
    ];
    let open = all.into_iter().filter(|(_, row)| row.roles.contains(&role));
    open.map(|(place, _)| place).collect()
}
