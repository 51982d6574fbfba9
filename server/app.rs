//! What every request shares.

use std::path::PathBuf;
use std::sync::Arc;

use crate::address::PublicAddress;
use crate::board::Boards;
use crate::clock::Clock;
use crate::database::Database;
use crate::identity::Entrance;
use crate::identity::sessions::Sessions;
use crate::kinds::KINDS;
use crate::logbook::{Head, Recording, Scribes};

/// The program, running. Cheap to clone.
#[derive(Clone, Debug)]
pub struct App {
    parts: Arc<Parts>,
}

#[derive(Debug)]
struct Parts {
    database: Database,
    scribes: Scribes,
    clock: Clock,
    address: PublicAddress,
    data: PathBuf,
    sessions: Sessions,
    entrance: Entrance,
    boards: Arc<Boards>,
}

impl App {
    /// Puts the program together. `data` is the folder for what is kept outside
    /// the database: the key and the checkpoints.
    #[must_use]
    pub fn new(
        database: Database,
        clock: Clock,
        address: PublicAddress,
        data: PathBuf,
        entrance: Entrance,
    ) -> Self {
        let boards = Arc::new(Boards::default());
        let drop_boards = boards.clone();
        let scribes = Scribes::new(
            database.clone(),
            KINDS,
            Recording::ByClock(clock.clone()),
            Arc::new(move |room, head: Head| drop_boards.changed(room, &head)),
        );
        Self {
            parts: Arc::new(Parts {
                database,
                scribes,
                clock,
                address,
                data,
                sessions: Sessions::default(),
                entrance,
                boards,
            }),
        }
    }

    /// The database.
    #[must_use]
    pub fn database(&self) -> &Database {
        &self.parts.database
    }

    /// Those who write in the books.
    #[must_use]
    pub fn scribes(&self) -> &Scribes {
        &self.parts.scribes
    }

    /// The time.
    #[must_use]
    pub fn clock(&self) -> &Clock {
        &self.parts.clock
    }

    /// Where people reach this installation.
    #[must_use]
    pub fn address(&self) -> &PublicAddress {
        &self.parts.address
    }

    /// The folder for what is kept outside the database.
    #[must_use]
    pub fn data(&self) -> &std::path::Path {
        &self.parts.data
    }

    /// The sessions this instance knows of.
    #[must_use]
    pub fn sessions(&self) -> &Sessions {
        &self.parts.sessions
    }

    /// What stands at the door.
    #[must_use]
    pub fn entrance(&self) -> &Entrance {
        &self.parts.entrance
    }

    /// The boards this instance keeps.
    #[must_use]
    pub fn boards(&self) -> &Boards {
        &self.parts.boards
    }
}
