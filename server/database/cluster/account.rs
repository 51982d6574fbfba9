//! Which user the database runs as, acting as that user, and becoming it.
//!
//! PostgreSQL refuses to run as root. Started by root, the cluster belongs to an
//! unprivileged account, and root touches that account's files only with the
//! account's own rights: a link it planted leads root nowhere.

use std::io;
use std::os::unix::fs::MetadataExt;
use std::os::unix::process::CommandExt;
use std::path::Path;
use std::process::Command;
use std::thread;

use nix::unistd::{
    Gid, Uid, User, getgroups, getresgid, getresuid, setfsgid, setfsuid, setgroups, setresgid,
    setresuid, setuid,
};

use super::error::ClusterError;

/// Root looks for these, in this order.
const ACCOUNTS: [&str; 3] = ["postgres", "wetside", "nobody"];

/// The user the private cluster runs as.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Account {
    /// The user's number.
    pub uid: u32,
    /// The user's own group.
    pub gid: u32,
    /// The user's name.
    pub name: String,
}

impl Account {
    /// An ordinary user keeps the cluster as itself. Root gives it to whoever
    /// owns the data folder already, else to the first of the known accounts.
    ///
    /// # Errors
    /// Where that user does not exist or has no name.
    pub fn for_folder(data: &Path) -> Result<Self, ClusterError> {
        if !is_root() {
            return Self::of(Uid::effective());
        }
        match data.metadata() {
            Ok(folder) if folder.uid() != 0 => Self::of(Uid::from_raw(folder.uid())),
            _ => ACCOUNTS
                .iter()
                .find_map(|name| User::from_name(name).ok().flatten())
                .map(Self::from)
                .ok_or(ClusterError::NoAccount),
        }
    }

    fn of(uid: Uid) -> Result<Self, ClusterError> {
        User::from_uid(uid)
            .ok()
            .flatten()
            .map(Self::from)
            .ok_or(ClusterError::NamelessUser { uid: uid.as_raw() })
    }

    /// A command that will run as this account, without what this process was
    /// told about databases and secrets.
    pub(super) fn command(&self, program: &Path) -> Command {
        let mut command = Command::new(program);
        for (name, _) in std::env::vars_os() {
            let bytes = name.as_encoded_bytes();
            if [b"PG".as_slice(), b"WETSIDE_", b"DATABASE_"]
                .iter()
                .any(|p| bytes.starts_with(p))
            {
                command.env_remove(&name);
            }
        }
        command
            .env("LC_ALL", "C.UTF-8")
            .env("PGTZ", "UTC")
            .current_dir("/");
        if is_root() {
            command.uid(self.uid).gid(self.gid);
        }
        command
    }

    /// Does something to files with this account's rights instead of root's.
    ///
    /// # Errors
    /// What the work itself returns, or that the rights could not be changed.
    pub(super) fn act<T: Send>(
        &self,
        work: impl FnOnce() -> io::Result<T> + Send,
    ) -> io::Result<T> {
        if !is_root() {
            return work();
        }
        let (uid, gid) = (Uid::from_raw(self.uid), Gid::from_raw(self.gid));
        // These rights are a thread's own, so a thread of its own has them.
        let acted = thread::scope(|scope| {
            scope
                .spawn(move || {
                    setfsgid(gid);
                    setfsuid(uid);
                    if setfsgid(gid) != gid || setfsuid(uid) != uid {
                        return Err(io::Error::other("the account's rights were not granted"));
                    }
                    work()
                })
                .join()
        });
        acted.unwrap_or_else(|_| {
            Err(io::Error::other(
                "the work on the account's files broke off",
            ))
        })
    }

    /// Makes this whole process the account's, for good. Where the process is
    /// not root's there is nothing to give up.
    ///
    /// # Errors
    /// Where a step fails, or where root could be had back afterwards.
    pub fn drop_to(&self) -> Result<(), ClusterError> {
        if !is_root() {
            return Ok(());
        }
        let (uid, gid) = (Uid::from_raw(self.uid), Gid::from_raw(self.gid));
        let still = |why: String| ClusterError::StillRoot {
            account: self.name.clone(),
            why,
        };
        setgroups(&[gid]).map_err(|e| still(e.to_string()))?;
        setresgid(gid, gid, gid).map_err(|e| still(e.to_string()))?;
        setresuid(uid, uid, uid).map_err(|e| still(e.to_string()))?;
        let users = getresuid().map_err(|e| still(e.to_string()))?;
        let groups = getresgid().map_err(|e| still(e.to_string()))?;
        let further = getgroups().map_err(|e| still(e.to_string()))?;
        let dropped = [users.real, users.effective, users.saved]
            .iter()
            .all(|id| *id == uid)
            && [groups.real, groups.effective, groups.saved]
                .iter()
                .all(|id| *id == gid)
            && further.iter().all(|id| *id == gid);
        if !dropped || setuid(Uid::from_raw(0)).is_ok() {
            return Err(still("root could be had back".into()));
        }
        Ok(())
    }
}

impl From<User> for Account {
    fn from(user: User) -> Self {
        Self {
            uid: user.uid.as_raw(),
            gid: user.gid.as_raw(),
            name: user.name,
        }
    }
}

/// Whether this process has root's powers now.
#[must_use]
pub fn is_root() -> bool {
    Uid::effective().is_root()
}

/// A user's name for a sentence, or the number where there is none.
pub(super) fn name_of(uid: u32) -> String {
    User::from_uid(Uid::from_raw(uid))
        .ok()
        .flatten()
        .map_or_else(|| format!("user number {uid}"), |user| user.name)
}
