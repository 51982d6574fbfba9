//! The look: every page view with invented data.
//!
//! Each page is held to the rules of its HTML in all three displays. With
//! `WETSIDE_GALLERY=folder` the pages are written there too, to be looked at in a
//! browser. The people, products and figures are invented.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod air_pages;
mod arrival_pages;
mod bench_pages;
mod check_pages;
mod colours;
mod desk_pages;
mod incident_pages;
mod induction_pages;
mod keeping_pages;
mod lamp_pages;
mod line_pages;
mod mixing_pages;
mod note_pages;
mod other_pages;
mod paper_pages;
mod people_pages;
mod print_pages;
mod product_pages;
mod rules;
mod screen_pages;
mod testing_pages;
mod workshop_pages;

use wetside::web::assets;
use wetside::web::shell::{Display, Place, RoomName, Shell};

/// A page of the gallery: its file name and how it is made in a given shell.
pub(crate) type Page = (&'static str, fn(Shell) -> String);

/// Every page.
pub(crate) fn pages() -> Vec<Page> {
    [
        air_pages::PAGES,
        arrival_pages::PAGES,
        bench_pages::PAGES,
        check_pages::PAGES,
        desk_pages::PAGES,
        induction_pages::PAGES,
        incident_pages::PAGES,
        keeping_pages::PAGES,
        lamp_pages::PAGES,
        line_pages::PAGES,
        mixing_pages::PAGES,
        paper_pages::PAGES,
        note_pages::PAGES,
        other_pages::PAGES,
        people_pages::PAGES,
        screen_pages::PAGES,
        testing_pages::PAGES,
        product_pages::PAGES,
        print_pages::PAGES,
        workshop_pages::PAGES,
    ]
    .concat()
}

/// The shell of a steward in an invented room.
pub(crate) fn shell(display: Display) -> Shell {
    Shell {
        base: ".".to_owned(),
        here: "/rooms/north-quay/board".to_owned(),
        display,
        room: Some(RoomName {
            slug: "north-quay".to_owned(),
            name: "North Quay Darkroom".to_owned(),
        }),
        logged_in: true,
        person: Some("Ines Vatry".to_owned()),
        places: vec![
            Place::Board,
            Place::NoteSheets,
            Place::Notices,
            Place::Present,
            Place::Outages,
            Place::Book,
            Place::Members,
            Place::Bench,
            Place::Products,
            Place::Papers,
            Place::Lamps,
            Place::OwnInductions,
            Place::Inductions,
            Place::Topics,
            Place::Air,
            Place::Incidents,
            Place::Workshops,
            Place::Settings,
            Place::Screens,
            Place::Handover,
            Place::Checkpoints,
            Place::Tokens,
        ],
        place: None,
        unread: Some(2),
        off: Vec::new(),
        flash: None,
        build: "0.1.0".to_owned(),
        demo: false,
        on_screen: false,
    }
}

/// A shell without room and person.
pub(crate) fn outside(shell: Shell) -> Shell {
    Shell {
        room: None,
        person: None,
        logged_in: false,
        places: Vec::new(),
        unread: None,
        here: "/log-in".to_owned(),
        ..shell
    }
}

/// A shell without room, but of someone logged in.
pub(crate) fn roomless(shell: Shell) -> Shell {
    Shell {
        room: None,
        places: Vec::new(),
        unread: None,
        here: "/account".to_owned(),
        ..shell
    }
}

/// Owned copies.
pub(crate) fn strings(all: &[&str]) -> Vec<String> {
    all.iter().map(|one| (*one).to_owned()).collect()
}

#[test]
fn gallery() {
    let Ok(folder) = std::env::var("WETSIDE_GALLERY") else {
        return assert!(!pages().is_empty());
    };
    let folder = std::path::Path::new(&folder);
    std::fs::create_dir_all(folder.join("assets")).unwrap();
    for (name, bytes) in assets::all() {
        let path = assets::path(name);
        std::fs::write(folder.join(path.trim_start_matches('/')), bytes).unwrap();
    }
    for (name, page) in pages() {
        for display in Display::ALL {
            let file = format!("{name}.{}.html", display.name());
            std::fs::write(folder.join(file), page(shell(display))).unwrap();
        }
    }
}
