//! Ends a throw-away cluster with its process, however that ends.
//!
//! A small shell waits for the other end of a pipe to close, which the kernel
//! does for a process that was killed as well as for one that ended.

use std::os::unix::process::CommandExt;
use std::process::{Child, ChildStdin, Stdio};

use super::error::ClusterError;
use super::folders::Open;

/// Stands by as long as this lives.
#[derive(Debug)]
pub(super) struct Guardian {
    _pipe: Option<ChildStdin>,
}

/// The first process ends at once; its own child, adopted by the system, waits.
const WATCH: &str = r#"
exec 3<&0
(
    read -r _ <&3
    pid=$(head -n 1 "$1/postgres/postmaster.pid" 2>/dev/null)
    [ -z "$pid" ] || kill -INT "$pid" 2>/dev/null
    tries=0
    while [ -e "$1/postgres/postmaster.pid" ] && [ $tries -lt 200 ]; do
        sleep 0.05
        tries=$((tries + 1))
    done
    rm -rf -- "$1"
) >/dev/null 2>&1 &
"#;

impl Guardian {
    pub(super) fn post(open: &Open) -> Result<Self, ClusterError> {
        let post = || {
            let mut shell: Child = open
                .account
                .command("/bin/sh".as_ref())
                .args(["-c", WATCH, "guardian"])
                .arg(&open.data)
                .process_group(0)
                .stdin(Stdio::piped())
                .stdout(Stdio::null())
                .stderr(Stdio::null())
                .spawn()?;
            let pipe = shell.stdin.take();
            shell.wait()?;
            Ok(Self { _pipe: pipe })
        };
        post().map_err(ClusterError::io("Standing by for", &open.data))
    }
}
