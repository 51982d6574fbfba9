//! What a request says about the frame of its page, and the shell made of it.

use std::convert::Infallible;

use axum::extract::FromRequestParts;
use axum::http::request::Parts;

use crate::app::App;
use crate::identity::sessions::cookie;
use crate::identity::{Membership, Permit, Person};
use crate::rights::{
    KeepTokens, LookAtBoard, NoteSheets, ReadBook, ReadNotices, Right, Role, SealBook, SeeBench,
    SeeMembers, SeePapers, SeeProducts, SeeRoom,
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
}

impl FromRequestParts<App> for Frame {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Infallible> {
        Ok(Self::of(parts, app))
    }
}

impl Frame {
    /// Reads it from a request's head.
    #[must_use]
    pub fn of(parts: &Parts, app: &App) -> Self {
        let here = parts.uri.path_and_query();
        Self {
            base: app.address().base().to_owned(),
            here: here.map_or_else(|| "/".to_owned(), |here| here.as_str().to_owned()),
            display: cookie(&parts.headers, "display").map_or(Display::Day, Display::named),
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
        Shell {
            person: Some(permit.person().name.clone()),
            place,
            ..self.shell_for_role(permit.membership())
        }
    }

    /// The shell of a page that is kept for everyone of a role: it names nobody.
    #[must_use]
    pub fn shell_for_role(&self, membership: &Membership) -> Shell {
        Shell {
            logged_in: true,
            room: Some(RoomName {
                slug: membership.slug.clone(),
                name: membership.room_name.clone(),
            }),
            places: places(membership.role),
            demo: membership.is_demo,
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
        (Place::Book, ReadBook::ROW),
        (Place::Members, SeeMembers::ROW),
        (Place::Bench, SeeBench::ROW),
        (Place::Products, SeeProducts::ROW),
        (Place::Papers, SeePapers::ROW),
        (Place::Settings, SeeRoom::ROW),
        (Place::Checkpoints, SealBook::ROW),
        (Place::Tokens, KeepTokens::ROW),
    ];
    let open = all.into_iter().filter(|(_, row)| row.roles.contains(&role));
    open.map(|(place, _)| place).collect()
}
