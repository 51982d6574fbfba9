//! What every request shares.

use std::path::PathBuf;
use std::sync::{Arc, OnceLock};

use crate::address::PublicAddress;
use crate::board::Boards;
use crate::clock::Clock;
use crate::database::{Database, Owner};
use crate::identity::Entrance;
use crate::identity::sessions::Sessions;
use crate::kinds::KINDS;
use crate::logbook::vault::Vault;
use crate::logbook::{Head, Recording, Scribes};
use crate::screens::Walls;
use crate::web::around::Memory;

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
    owner: OnceLock<Owner>,
    key_file: OnceLock<PathBuf>,
    boards: Arc<Boards>,
    walls: Walls,
    around: Memory,
    entrance: Entrance,
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
        let recording = Recording::ByClock(clock.clone());
        Self::recording(database, recording, clock, address, data, entrance)
    }

    /// The program as `wetside demo` uses it: its entries are recorded by a clock
    /// of its own, which only a demo room's book takes.
    #[must_use]
    pub fn for_demo(
        database: Database,
        clock: Clock,
        address: PublicAddress,
        data: PathBuf,
        entrance: Entrance,
    ) -> Self {
        let recording = Recording::Demo(clock.clone());
        Self::recording(database, recording, clock, address, data, entrance)
    }

    fn recording(
        database: Database,
        recording: Recording,
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
            recording,
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
                owner: OnceLock::new(),
                key_file: OnceLock::new(),
                boards,
                walls: Walls::default(),
                around: Memory::default(),
                entrance,
            }),
        }
    }

    /// Lets the nightly jobs verify as the owner of the tables; the first one
    /// named stays.
    #[must_use]
    pub fn with_owner(self, owner: Owner) -> Self {
        self.parts.owner.get_or_init(|| owner);
        self
    }

    /// Names a key file outside the data folder; the first one named stays.
    #[must_use]
    pub fn with_key_file(self, path: PathBuf) -> Self {
        self.parts.key_file.get_or_init(|| path);
        self
    }

    /// The database as the owner of the tables, where this instance may.
    #[must_use]
    pub fn owner(&self) -> Option<&Owner> {
        self.parts.owner.get()
    }

    /// Where checkpoints and their key are.
    #[must_use]
    pub fn vault(&self) -> Vault {
        Vault {
            data: self.parts.data.clone(),
            key_file: self.parts.key_file.get().cloned(),
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

    /// What this instance last said around the pages of each reader.
    #[must_use]
    pub fn around(&self) -> &Memory {
        &self.parts.around
    }

    /// The boards this instance keeps.
    #[must_use]
    pub fn boards(&self) -> &Boards {
        &self.parts.boards
    }

    /// What this instance keeps for the rooms' screens.
    #[must_use]
    pub fn walls(&self) -> &Walls {
        &self.parts.walls
    }

    /// What stands at the door.
    #[must_use]
    pub fn entrance(&self) -> &Entrance {
        &self.parts.entrance
    }
}
