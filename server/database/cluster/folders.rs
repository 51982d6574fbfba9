//! Where the data and the socket live, who may enter, and who holds the lock.

use std::env;
use std::ffi::OsString;
use std::fs::{self, DirBuilder, File, OpenOptions, TryLockError};
use std::io::{self, Read, Seek, Write};
use std::os::unix::ffi::OsStrExt;
use std::os::unix::fs::{DirBuilderExt, MetadataExt, OpenOptionsExt, PermissionsExt, lchown};
use std::path::{Path, PathBuf};
use std::process::Stdio;

use data_encoding::HEXLOWER;
use sha2::{Digest, Sha256};

use super::account::{Account, is_root, name_of};
use super::error::ClusterError;

/// The longest path of a Unix socket on Linux (`unix(7)`: 108 bytes with the final NUL).
const LONGEST_SOCKET_PATH: usize = 107;

/// What PostgreSQL calls its socket at the port the private cluster uses.
pub(super) const SOCKET_NAME: &str = ".s.PGSQL.5432";

/// Whoever locks this file has the folder; its presence marks a folder as ours.
const LOCK: &str = "wetside.lock";

/// The two folders of a private cluster.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Folders {
    /// Holds the cluster, its dumps, and what else belongs to this installation.
    data: PathBuf,
    /// Holds the socket.
    socket: PathBuf,
}

/// What the choice of the folders depends on.
#[derive(Clone, Debug, Default)]
pub struct Surroundings {
    /// `$STATE_DIRECTORY`
    pub state_directory: Option<OsString>,
    /// `$RUNTIME_DIRECTORY`
    pub runtime_directory: Option<OsString>,
    /// `$XDG_DATA_HOME`
    pub xdg_data_home: Option<OsString>,
    /// `$XDG_RUNTIME_DIR`
    pub xdg_runtime_dir: Option<OsString>,
    /// `$HOME`
    pub home: Option<OsString>,
    /// Whether root asks.
    pub is_root: bool,
}

impl Surroundings {
    /// Those of this process.
    #[must_use]
    pub fn here() -> Self {
        let set = |name| env::var_os(name).filter(|value| !value.is_empty());
        Self {
            state_directory: set("STATE_DIRECTORY"),
            runtime_directory: set("RUNTIME_DIRECTORY"),
            xdg_data_home: set("XDG_DATA_HOME"),
            xdg_runtime_dir: set("XDG_RUNTIME_DIR"),
            home: set("HOME"),
            is_root: is_root(),
        }
    }
}

impl Folders {
    /// Chooses the folders; `data` is what the person named, if anything.
    ///
    /// # Errors
    /// Where there is no place, the place is inside the source code, or the
    /// socket's path would be too long.
    pub fn choose(data: Option<&Path>) -> Result<Self, ClusterError> {
        Self::choose_in(&Surroundings::here(), data)
    }

    /// As [`Folders::choose`], in surroundings of the caller's making.
    ///
    /// # Errors
    /// As [`Folders::choose`].
    pub fn choose_in(around: &Surroundings, data: Option<&Path>) -> Result<Self, ClusterError> {
        let data = match (data, &around.state_directory) {
            (Some(named), _) => named.to_path_buf(),
            (None, Some(state)) => first_of(state),
            (None, None) if around.is_root => PathBuf::from("/var/lib/wetside"),
            (None, None) => match (&around.xdg_data_home, &around.home) {
                (Some(base), _) => Path::new(base).join("wetside"),
                (None, Some(home)) => Path::new(home).join(".local/share/wetside"),
                (None, None) => return Err(ClusterError::NoPlace),
            },
        };
        let data = std::path::absolute(&data).map_err(ClusterError::io("Finding", &data))?;
        if is_inside_clone(&data) {
            return Err(ClusterError::InsideClone { data });
        }
        let socket = socket_folder(around, &data)?;
        Ok(Self { data, socket })
    }

    /// The data folder.
    #[must_use]
    pub fn data(&self) -> &Path {
        &self.data
    }

    /// The folder of the socket.
    #[must_use]
    pub fn socket(&self) -> &Path {
        &self.socket
    }

    /// Makes both folders where they are missing, for those who keep other things
    /// there while the database is elsewhere, and returns the data folder without
    /// links in its path.
    ///
    /// # Errors
    /// Where a folder is somebody else's, or out of the account's reach.
    pub fn make(&self) -> Result<PathBuf, ClusterError> {
        self.open().map(|open| open.data)
    }

    /// Makes both folders where they are missing, closes them to everyone but
    /// the account, and takes the lock.
    pub(super) fn take(&self) -> Result<Taken, ClusterError> {
        let taken = self.open()?;
        taken.lock()
    }

    /// As [`Folders::take`], without the lock.
    pub(super) fn open(&self) -> Result<Open, ClusterError> {
        let account = Account::for_folder(&self.data)?;
        if let Some(parent) = self.data.parent() {
            fs::create_dir_all(parent).map_err(ClusterError::io("Making", parent))?;
        }
        own(&self.data, &account, true)?;
        check_reach(&self.data, &account)?;
        let data =
            fs::canonicalize(&self.data).map_err(ClusterError::io("Entering", &self.data))?;
        // Before anything else, for it also marks the folder as ours.
        open_lock(&data.join(LOCK), &account)?;
        if self.socket.starts_with(&self.data) {
            let made = account.act(
                || match DirBuilder::new().mode(0o700).create(&self.socket) {
                    Err(e) if e.kind() == io::ErrorKind::AlreadyExists => Ok(()),
                    other => other,
                },
            );
            made.map_err(ClusterError::io("Making", &self.socket))?;
        }
        own(&self.socket, &account, false)?;
        check_reach(&self.socket, &account)?;
        Ok(Open {
            data,
            socket: self.socket.clone(),
            account,
            by_root: is_root(),
        })
    }
}

/// The folders, made and closed to others.
pub(super) struct Open {
    /// The data folder without links in its path, as the kernel names it.
    pub(super) data: PathBuf,
    pub(super) socket: PathBuf,
    pub(super) account: Account,
    /// Whether root asks, who then may connect too.
    pub(super) by_root: bool,
}

/// The folders with the lock, which is held as long as this lives.
pub(super) struct Taken {
    pub(super) open: Open,
    pub(super) lock: File,
}

impl Open {
    pub(super) fn cluster(&self) -> PathBuf {
        self.data.join("postgres")
    }

    pub(super) fn lock(self) -> Result<Taken, ClusterError> {
        let path = self.data.join(LOCK);
        let mut lock = open_lock(&path, &self.account)?;
        match lock.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => {
                let mut holder = String::new();
                lock.read_to_string(&mut holder)
                    .map_err(ClusterError::io("Reading", &path))?;
                return Err(ClusterError::InUse {
                    holder: holder.trim().to_owned(),
                    data: self.data,
                });
            }
            Err(TryLockError::Error(e)) => return Err(ClusterError::io("Locking", &path)(e)),
        }
        let written = lock
            .set_len(0)
            .and_then(|()| lock.rewind())
            .and_then(|()| writeln!(lock, "{}", std::process::id()));
        written.map_err(ClusterError::io("Writing", &path))?;
        Ok(Taken { open: self, lock })
    }
}

fn open_lock(path: &Path, account: &Account) -> Result<File, ClusterError> {
    let opened = account.act(|| {
        OpenOptions::new()
            .read(true)
            .write(true)
            .create(true)
            .truncate(false)
            .mode(0o600)
            .open(path)
    });
    opened.map_err(ClusterError::io("Opening", path))
}

/// systemd lists several folders with colons; the first is the unit's own.
fn first_of(list: &OsString) -> PathBuf {
    env::split_paths(list).next().unwrap_or_default()
}

/// The socket stands in the data folder, which is closed to others already and
/// outlives a log-out; only where its path is too long, in the user's runtime
/// folder. Root's runtime folder is closed to the account, so root has none.
fn socket_folder(around: &Surroundings, data: &Path) -> Result<PathBuf, ClusterError> {
    let own_name = format!(
        "wetside-{}",
        &HEXLOWER.encode(&Sha256::digest(data.as_os_str().as_bytes()))[..8]
    );
    let in_data = data.join("run");
    let folder = if let Some(run) = &around.runtime_directory {
        first_of(run).join(own_name)
    } else if socket_length(&in_data) <= LONGEST_SOCKET_PATH || around.is_root {
        in_data
    } else if let Some(run) = &around.xdg_runtime_dir {
        Path::new(run).join(own_name)
    } else {
        in_data
    };
    let length = socket_length(&folder);
    if length > LONGEST_SOCKET_PATH {
        return Err(ClusterError::PathTooLong {
            socket: folder.join(SOCKET_NAME),
            length,
        });
    }
    Ok(folder)
}

fn socket_length(folder: &Path) -> usize {
    folder.join(SOCKET_NAME).as_os_str().len()
}

fn is_inside_clone(data: &Path) -> bool {
    data.ancestors().any(|folder| {
        fs::read_to_string(folder.join("Cargo.toml"))
            .is_ok_and(|text| text.lines().any(|line| line.trim() == "name = \"wetside\""))
    })
}

/// Makes a folder the account's own and nobody else's.
fn own(folder: &Path, account: &Account, is_data: bool) -> Result<(), ClusterError> {
    match DirBuilder::new().mode(0o700).create(folder) {
        Ok(()) => {
            if is_root() {
                lchown(folder, Some(account.uid), Some(account.gid))
                    .map_err(ClusterError::io("Handing over", folder))?;
            }
        }
        Err(e) if e.kind() == io::ErrorKind::AlreadyExists => {}
        Err(e) => return Err(ClusterError::io("Making", folder)(e)),
    }
    let found = fs::metadata(folder).map_err(ClusterError::io("Looking at", folder))?;
    if !found.is_dir() {
        return Err(ClusterError::NotOurs {
            data: folder.to_path_buf(),
        });
    }
    if found.uid() != account.uid && !(is_root() && found.uid() == 0) {
        return Err(ClusterError::OtherOwner {
            folder: folder.to_path_buf(),
            owner: name_of(found.uid()),
        });
    }
    // Never close or hand over a folder that has other things in it.
    if is_data && !is_empty_or_ours(folder).map_err(ClusterError::io("Reading", folder))? {
        return Err(ClusterError::NotOurs {
            data: folder.to_path_buf(),
        });
    }
    if found.uid() != account.uid {
        lchown(folder, Some(account.uid), Some(account.gid))
            .map_err(ClusterError::io("Handing over", folder))?;
    }
    if found.mode() & 0o7777 != 0o700 {
        account
            .act(|| fs::set_permissions(folder, fs::Permissions::from_mode(0o700)))
            .map_err(ClusterError::io("Closing", folder))?;
    }
    Ok(())
}

fn is_empty_or_ours(folder: &Path) -> io::Result<bool> {
    let mut names = Vec::new();
    for entry in fs::read_dir(folder)? {
        let name = entry?.file_name();
        // A file system of its own begins with this folder.
        if name != "lost+found" {
            names.push(name);
        }
    }
    Ok(names.is_empty() || folder.join(LOCK).exists())
}

/// Only trying tells whether the account can enter a folder: modes, groups and
/// access lists all have a say.
fn check_reach(folder: &Path, account: &Account) -> Result<(), ClusterError> {
    if !is_root() || can_enter(folder, account) {
        return Ok(());
    }
    let mut ancestors: Vec<&Path> = folder.ancestors().collect();
    ancestors.reverse();
    let closed = ancestors
        .into_iter()
        .find(|ancestor| !can_enter(ancestor, account))
        .unwrap_or(folder);
    Err(ClusterError::ClosedParent {
        account: account.name.clone(),
        closed: closed.to_path_buf(),
        data: folder.to_path_buf(),
    })
}

fn can_enter(folder: &Path, account: &Account) -> bool {
    account
        .command(Path::new("/bin/true"))
        .current_dir(folder)
        .stdin(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}
