//! The machine the figures were taken on.

use std::fs::read_to_string;
use std::path::Path;
use std::process::Command;

use wetside::database::cluster::{Account, Programs};

/// Processors, memory, system, database and how the program was built, in a line.
pub(crate) fn described() -> String {
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let model = line_of("/proc/cpuinfo", "model name");
    let memory = line_of("/proc/meminfo", "MemTotal");
    let memory = memory.trim_end_matches(" kB").parse().unwrap_or(0_u64);
    let kernel = read_to_string("/proc/sys/kernel/osrelease").unwrap_or_default();
    let profile = if cfg!(debug_assertions) {
        "debug"
    } else {
        "release"
    };
    format!(
        "{cores} × {model}, {} GiB, Linux {}, {}, Wetside {} ({profile})",
        (memory + 524_288) / 1_048_576,
        kernel.trim(),
        database(),
        env!("CARGO_PKG_VERSION"),
    )
}

/// The load of the last one, five and fifteen minutes.
pub(crate) fn load() -> String {
    let load = read_to_string("/proc/loadavg").unwrap_or_default();
    load.split(' ').take(3).collect::<Vec<_>>().join(" ")
}

/// A file's line of this name: what stands behind the colon.
fn line_of(file: &str, name: &str) -> String {
    let text = read_to_string(file).unwrap_or_default();
    let line = text.lines().find(|line| line.starts_with(name));
    let value = line.and_then(|line| line.split_once(':'));
    value.map_or_else(String::new, |(_, value)| value.trim().to_owned())
}

fn database() -> String {
    let account = Account::for_folder(Path::new("/nonexistent")).unwrap();
    let program = Programs::preferred(&account).unwrap().path("postgres");
    let said = Command::new(program).arg("--version").output().unwrap();
    let said = String::from_utf8_lossy(&said.stdout).into_owned();
    let version = said.split_whitespace().nth(2).unwrap_or_default();
    format!("PostgreSQL {version}")
}

/// What a process holds in memory, in kibibytes.
pub(crate) fn memory_of(pid: i32) -> u64 {
    let resident = line_of(&format!("/proc/{pid}/status"), "VmRSS");
    resident.trim_end_matches(" kB").parse().unwrap()
}
