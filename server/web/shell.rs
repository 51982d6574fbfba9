//! The frame around every page: where it is, who may go where, which display.
//!
//! A page that is kept and shown to several people (the board) is given a shell
//! without `person`, `unread` and `flash`; nothing else in it depends on the reader
//! but `places`, which follow from the role.

use super::assets;

/// How bright the page is; remembered by each device in the cookie `display`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Display {
    /// Dark ink on a light ground.
    #[default]
    Day,
    /// Light ink on dark grey.
    Dim,
    /// One red on black and nothing else.
    Safelight,
}

impl Display {
    /// Every display, in the order of the switcher.
    pub const ALL: [Self; 3] = [Self::Day, Self::Dim, Self::Safelight];

    /// The display of a cookie or a form; what is not known is `Day`.
    #[must_use]
    pub fn named(name: &str) -> Self {
        match name {
            "dim" => Self::Dim,
            "safelight" => Self::Safelight,
            _ => Self::Day,
        }
    }

    /// The value in cookie, form and `data-display`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Day => "day",
            Self::Dim => "dim",
            Self::Safelight => "safelight",
        }
    }

    /// Which of the browser's own colours go with it.
    #[must_use]
    pub fn scheme(self) -> &'static str {
        match self {
            Self::Day => "light",
            Self::Dim | Self::Safelight => "dark",
        }
    }

    /// The colour of the browser's own frame.
    #[must_use]
    pub fn ground(self) -> &'static str {
        match self {
            Self::Day => "#e9e8e4",
            Self::Dim => "#19171a",
            Self::Safelight => "#000000",
        }
    }
}

/// The room a page belongs to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RoomName {
    /// Its part of the address.
    pub slug: String,
    /// Its name as people say it.
    pub name: String,
}

/// A page the navigation can lead to; its words stand in `templates/base.html`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "each is the page of that name")]
pub enum Place {
    Board,
    NoteSheets,
    Notices,
    Book,
    Members,
    Bench,
    Products,
    Papers,
    Settings,
    Checkpoints,
    Tokens,
    Outages,
    Lamps,
    Air,
    Incidents,
    Checks,
    Workshops,
    Inductions,
    OwnInductions,
    Topics,
    Present,
    Screens,
    Handover,
}

impl Place {
    /// The path below the room.
    #[must_use]
    pub fn path(self) -> &'static str {
        match self {
            Self::Board => "/board",
            Self::NoteSheets => "/sheets/new",
            Self::Notices => "/notices",
            Self::Book => "/book",
            Self::Members => "/members",
            Self::Bench => "/bench",
            Self::Products => "/products",
            Self::Papers => "/papers",
            Self::Settings => "/settings",
            Self::Checkpoints => "/checkpoints",
            Self::Tokens => "/tokens",
            Self::Outages => "/outages",
            Self::Lamps => "/lamps",
            Self::Topics => "/topics",
            Self::Inductions => "/inductions",
            Self::OwnInductions => "/inductions/own",
            Self::Checks => "/checks",
            Self::Workshops => "/workshops",
            Self::Air => "/air",
            Self::Incidents => "/incidents",
            Self::Present => "/present",
            Self::Screens => "/screens",
            Self::Handover => "/handover",
        }
    }

    /// Is it one tap away, or behind *More*?
    #[must_use]
    pub fn is_at_hand(self) -> bool {
        matches!(self, Self::Board | Self::NoteSheets | Self::Notices)
    }
}

/// Something that is off in the room, as every page of it says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Off {
    /// What, and since when.
    pub head: String,
    /// What to do.
    pub advice: String,
}

/// What `templates/base.html` needs; every page view has one in `shell`.
#[derive(Debug, Clone, Default)]
pub struct Shell {
    /// The path of the public address, without a slash at its end; empty at the root.
    pub base: String,
    /// Path and query of this page below `base`: where the display switcher returns to.
    pub here: String,
    /// The display this device chose.
    pub display: Display,
    /// The room, on a room's page.
    pub room: Option<RoomName>,
    /// Is anyone logged in?
    pub logged_in: bool,
    /// The name of who is logged in; none on a page kept for several readers.
    pub person: Option<String>,
    /// Where this reader may go, in the order shown.
    pub places: Vec<Place>,
    /// The one of them this page belongs to.
    pub place: Option<Place>,
    /// Notices not yet read; none on a page kept for several readers.
    pub unread: Option<u32>,
    /// What is off in the room now, each with what to do; on a kept page as well, for
    /// it changes by an entry.
    pub off: Vec<Off>,
    /// What was just done, once.
    pub flash: Option<String>,
    /// Names the build, for the footer and the board's ETag.
    pub build: String,
    /// Is this a room of invented people?
    pub demo: bool,
    /// May the browser be a paired screen? Then the page leads back to it.
    pub on_screen: bool,
}

impl Shell {
    /// A link within the installation; `path` begins with a slash.
    #[must_use]
    pub fn to(&self, path: &str) -> String {
        format!("{}{path}", self.base)
    }

    /// A link within this page's room; `path` begins with a slash.
    #[must_use]
    pub fn at(&self, path: &str) -> String {
        match &self.room {
            Some(room) => format!("{}/rooms/{}{path}", self.base, room.slug),
            None => self.to("/rooms"),
        }
    }

    /// The room whose pages a phone keeps for when there is no network: one in which
    /// the reader may go somewhere.
    #[must_use]
    pub fn own_room(&self) -> Option<&str> {
        let room = self.room.as_ref().filter(|_| !self.places.is_empty());
        room.map(|room| room.slug.as_str())
    }

    /// The Emergency page: the room's own where there is a room.
    #[must_use]
    pub fn emergency(&self) -> String {
        match &self.room {
            Some(_) => self.at("/emergency"),
            None => self.to("/emergency"),
        }
    }

    /// Where the name of the place leads: the board, for those who may go there,
    /// the rooms, the screen that it is, or the log-in.
    #[must_use]
    pub fn home(&self) -> String {
        let may_see_board = self.room.is_some() && self.offers(&Place::Board);
        match (may_see_board, self.logged_in) {
            (true, _) => self.at("/board"),
            (false, true) => self.to("/rooms"),
            (false, false) if self.on_screen => self.to("/screen"),
            (false, false) => self.to("/log-in"),
        }
    }

    /// The link to an embedded file of `static/`.
    #[must_use]
    pub fn asset(&self, name: &str) -> String {
        self.to(&assets::path(name))
    }

    /// The places one tap away.
    #[must_use]
    pub fn at_hand(&self) -> Vec<Place> {
        self.places_that(true)
    }

    /// The places behind *More*.
    #[must_use]
    pub fn further(&self) -> Vec<Place> {
        self.places_that(false)
    }

    fn places_that(&self, at_hand: bool) -> Vec<Place> {
        self.places
            .iter()
            .copied()
            .filter(|place| place.is_at_hand() == at_hand)
            .collect()
    }

    /// May whoever looks go there?
    #[must_use]
    pub fn offers(&self, place: &Place) -> bool {
        self.places.contains(place)
    }

    /// Is that the display now?
    #[must_use]
    pub fn shows(&self, display: &Display) -> bool {
        self.display == *display
    }

    /// Is this page of that place?
    #[must_use]
    pub fn is_in(&self, place: &Place) -> bool {
        self.place == Some(*place)
    }
}
