//! Where the machine keeps PostgreSQL's programs.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use super::account::Account;
use super::error::ClusterError;

/// The oldest PostgreSQL the schema and the roles work on.
pub const OLDEST_MAJOR: u32 = 15;

/// The folder a package outside the system's own places may be in.
const NAMED_FOLDER: &str = "WETSIDE_POSTGRES_BIN";

/// One set of programs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Programs {
    /// The folder they are in.
    pub bin: PathBuf,
    /// Their major version.
    pub major: u32,
}

impl Programs {
    /// Every usable set, the preferred one first: what was named, then newest first.
    #[must_use]
    pub fn all(account: &Account) -> Vec<Self> {
        let named = std::env::var_os(NAMED_FOLDER).filter(|name| !name.is_empty());
        let path = std::env::var_os("PATH").unwrap_or_default();
        let mut others: Vec<Self> = installed(Path::new("/usr/lib/postgresql"))
            .into_iter()
            .chain(std::env::split_paths(&path).filter(|folder| folder.is_absolute()))
            .filter_map(|bin| Self::at(bin, account))
            .collect();
        others.sort_by_key(|programs| std::cmp::Reverse(programs.major));
        let mut all: Vec<Self> = named
            .and_then(|bin| Self::at(bin.into(), account))
            .into_iter()
            .collect();
        for found in others {
            if !all.contains(&found) {
                all.push(found);
            }
        }
        all
    }

    /// The set a new cluster is made with.
    ///
    /// # Errors
    /// Where there is none.
    pub fn preferred(account: &Account) -> Result<Self, ClusterError> {
        Self::all(account)
            .into_iter()
            .next()
            .ok_or(ClusterError::NoPrograms)
    }

    /// The set that can run an existing cluster.
    ///
    /// # Errors
    /// Where no set has that version; the sentence says what to do.
    pub fn for_version(
        version: &str,
        data: &Path,
        account: &Account,
    ) -> Result<Self, ClusterError> {
        let all = Self::all(account);
        if all.is_empty() {
            return Err(ClusterError::NoPrograms);
        }
        let at_hand = all
            .iter()
            .map(|p| p.major.to_string())
            .collect::<Vec<_>>()
            .join(" and ");
        let newest = all.iter().map(|p| p.major).max();
        if let Some(programs) = all.into_iter().find(|p| p.major.to_string() == version) {
            return Ok(programs);
        }
        let is_newer = version.parse().ok() < newest;
        let way_out = if is_newer {
            ", or run `wetside cluster upgrade`"
        } else {
            ""
        };
        Err(ClusterError::OtherVersion {
            data: data.to_path_buf(),
            found: version.to_owned(),
            at_hand,
            advice: format!("Install PostgreSQL {version} again{way_out}."),
        })
    }

    /// The path of one program.
    #[must_use]
    pub fn path(&self, program: &str) -> PathBuf {
        self.bin.join(program)
    }

    fn at(bin: PathBuf, account: &Account) -> Option<Self> {
        if !bin.join("initdb").is_file() {
            return None;
        }
        // Behind a link stand all the programs, beside it perhaps only some.
        let bin = bin
            .join("postgres")
            .canonicalize()
            .ok()?
            .parent()?
            .to_path_buf();
        let asked = account
            .command(&bin.join("postgres"))
            .arg("--version")
            .stdin(Stdio::null())
            .output()
            .ok()?;
        let major = major_in(&String::from_utf8_lossy(&asked.stdout))?;
        (major >= OLDEST_MAJOR).then_some(Self { bin, major })
    }
}

fn installed(base: &Path) -> Vec<PathBuf> {
    let Ok(entries) = fs::read_dir(base) else {
        return Vec::new();
    };
    entries
        .flatten()
        .map(|entry| entry.path().join("bin"))
        .collect()
}

/// The major version in what `postgres --version` prints, packager's remarks
/// after it or not.
fn major_in(said: &str) -> Option<u32> {
    let version = said
        .split_whitespace()
        .find(|word| word.starts_with(|c: char| c.is_ascii_digit()))?;
    let digits: String = version.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().ok()
}

/// The version that wrote a cluster, or nothing where there is no cluster.
pub(super) fn version_of(
    cluster: &Path,
    account: &Account,
) -> Result<Option<String>, ClusterError> {
    let file = cluster.join(OsStr::new("PG_VERSION"));
    match account.act(|| fs::read_to_string(&file)) {
        Ok(text) if !text.trim().is_empty() => Ok(Some(text.trim().to_owned())),
        Ok(_) => Err(ClusterError::Damaged {
            cluster: cluster.to_path_buf(),
        }),
        Err(_) if account.act(|| fs::symlink_metadata(cluster)).is_ok() => {
            Err(ClusterError::Damaged {
                cluster: cluster.to_path_buf(),
            })
        }
        Err(_) => Ok(None),
    }
}

#[cfg(test)]
mod tests {
    use super::major_in;

    #[test]
    fn reads_the_major_version() {
        // As printed by the programs of Debian and of two registry packages.
        assert_eq!(
            major_in("postgres (PostgreSQL) 15.18 (Debian 15.18-0+deb12u1)\n"),
            Some(15)
        );
        assert_eq!(major_in("postgres (PostgreSQL) 18.4\n"), Some(18));
        assert_eq!(major_in("postgres (PostgreSQL) 19beta1\n"), Some(19));
        assert_eq!(major_in("nothing of the kind"), None);
    }
}
