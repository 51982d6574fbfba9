//! What can go wrong with the private cluster, each as a sentence that says
//! what to do about it.

use std::io;
use std::path::{Path, PathBuf};

use super::programs::OLDEST_MAJOR;

/// Why the private cluster cannot be used.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ClusterError {
    /// Neither a folder was named nor can one be derived.
    #[error(
        "There is no place for the data: HOME is not set. Name a folder with --data, \
         or set STATE_DIRECTORY or XDG_DATA_HOME."
    )]
    NoPlace,

    /// The folder lies in the source code.
    #[error(
        "{} lies inside the source code, where cleaning up would delete the book. \
         Name a folder elsewhere with --data.", data.display()
    )]
    InsideClone {
        /// The folder that was asked for.
        data: PathBuf,
    },

    /// A socket could not be made there.
    #[error(
        "The socket {} would have a path of {length} bytes and the system takes 107. \
         Name a folder with a shorter path with --data, or set RUNTIME_DIRECTORY to one \
         for the socket.", socket.display()
    )]
    PathTooLong {
        /// The socket's whole path.
        socket: PathBuf,
        /// Its length in bytes.
        length: usize,
    },

    /// The folder was there before and is not ours.
    #[error(
        "{} holds something else. Name a new or an empty folder with --data.", data.display()
    )]
    NotOurs {
        /// The folder that was asked for.
        data: PathBuf,
    },

    /// The folder belongs to somebody else.
    #[error(
        "{} belongs to {owner}. Run this as {owner} or as root, or name another folder \
         with --data.", folder.display()
    )]
    OtherOwner {
        /// The folder in question.
        folder: PathBuf,
        /// Its owner's name, or number where it has none.
        owner: String,
    },

    /// The cluster's account cannot reach the folder.
    #[error(
        "{account}, the account the database runs as, cannot enter {}, so {} is out of its \
         reach. Open the way with `chmod o+x {}`, or name another folder with --data.",
         closed.display(), data.display(), closed.display()
    )]
    ClosedParent {
        /// The cluster's account.
        account: String,
        /// The outermost folder it cannot enter.
        closed: PathBuf,
        /// The data folder below it.
        data: PathBuf,
    },

    /// The lock is held.
    #[error(
        "Another Wetside (process {holder}) is using {}. Stop it first, or give this one \
         a folder of its own with --data.", data.display()
    )]
    InUse {
        /// The process that holds the lock, as far as it wrote its number.
        holder: String,
        /// The folder.
        data: PathBuf,
    },

    /// Root, and none of the accounts exists.
    #[error(
        "PostgreSQL refuses to run as root and this machine has none of the users postgres, \
         wetside and nobody. Make one with `useradd --system wetside`."
    )]
    NoAccount,

    /// The user has a number but no name.
    #[error(
        "User number {uid} has no name on this machine, and PostgreSQL needs one. \
         Run this as a user that is listed in /etc/passwd."
    )]
    NamelessUser {
        /// The user's number.
        uid: u32,
    },

    /// Root's powers could not be given up.
    #[error(
        "Giving up root's powers for those of {account} failed ({why}), so nothing was served."
    )]
    StillRoot {
        /// The account to become.
        account: String,
        /// What failed.
        why: String,
    },

    /// No programs at all.
    #[error(
        "No PostgreSQL {OLDEST_MAJOR} or newer was found on this machine. Install it \
         (Debian: apt-get install postgresql), or name the folder of its programs in \
         WETSIDE_POSTGRES_BIN."
    )]
    NoPrograms,

    /// Programs, but of another version than the data.
    #[error(
        "The data in {} was written by PostgreSQL {found} and this machine has {at_hand}. \
         {advice}", data.display()
    )]
    OtherVersion {
        /// The data folder.
        data: PathBuf,
        /// What PG_VERSION says.
        found: String,
        /// The majors at hand, in words.
        at_hand: String,
        /// The way out.
        advice: String,
    },

    /// The upgrade has nothing to read from.
    #[error(
        "The data in {} was written by PostgreSQL {found}, whose programs are not on this \
         machine, and there is no dump in {}. Install PostgreSQL {found} for the upgrade, or \
         put a dump made by `pg_dump --format=custom` there.", data.display(), dumps.display()
    )]
    NothingToUpgradeFrom {
        /// The data folder.
        data: PathBuf,
        /// What PG_VERSION says.
        found: String,
        /// Where dumps are looked for.
        dumps: PathBuf,
    },

    /// There is no cluster yet.
    #[error("There is no database in {} yet, so there is nothing to do.", data.display())]
    NothingThere {
        /// The data folder.
        data: PathBuf,
    },

    /// PG_VERSION cannot be read.
    #[error(
        "{} is damaged: it has no readable PG_VERSION. Restore it from a backup.",
        cluster.display()
    )]
    Damaged {
        /// The cluster's folder.
        cluster: PathBuf,
    },

    /// A PostgreSQL program ended with a complaint.
    #[error("{program} failed and said: {said}")]
    ProgramFailed {
        /// Its name.
        program: String,
        /// What it wrote to standard error.
        said: String,
    },

    /// The database did not come up.
    #[error("PostgreSQL did not start. The end of {}: {said}", log.display())]
    DidNotStart {
        /// Its log.
        log: PathBuf,
        /// The log's last lines.
        said: String,
    },

    /// It was asked to stop while it was starting.
    #[error("PostgreSQL was stopped before it was up.")]
    Stopped,

    /// The system refused something.
    #[error("{doing} {} failed: {source}.", path.display())]
    Io {
        /// What was tried, as the beginning of a sentence.
        doing: &'static str,
        /// On which file or folder.
        path: PathBuf,
        /// The system's answer.
        source: io::Error,
    },
}

impl ClusterError {
    /// Names what was tried on which path when the system refused.
    pub(super) fn io(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_path_buf();
        move |source| Self::Io {
            doing,
            path,
            source,
        }
    }
}
