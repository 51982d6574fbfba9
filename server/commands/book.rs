//! `wetside book`: the book as a file that anyone outside can check.

use std::fs::OpenOptions;
use std::io::{self, BufWriter, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use anyhow::Context;
use clap::{Args, Subcommand};

use super::verify::room_of;
use crate::database::Owner;
use crate::logbook::reading;
use crate::logbook::vault::Vault;

/// What `wetside book` is asked.
#[derive(Args, Clone, Debug)]
pub struct BookArgs {
    /// What to do.
    #[command(subcommand)]
    pub action: BookAction,
}

/// What to do with a book.
#[derive(Clone, Debug, Subcommand)]
pub enum BookAction {
    /// Write a room's whole book and its checkpoints to a file
    Export {
        /// The room, by its short name
        #[arg(long, value_name = "SLUG")]
        room: String,
        /// The file, which must not be there yet; - for standard output
        file: PathBuf,
    },
}

/// Does what was asked.
///
/// # Errors
/// A room there is none of, a file that is there; the error is a sentence.
pub async fn run(args: BookArgs, owner: &Owner, vault: &Vault) -> anyhow::Result<ExitCode> {
    let BookAction::Export { room, file } = args.action;
    let id = room_of(owner, &room).await?;
    if file == Path::new("-") {
        reading::write_out(owner, vault, id, io::stdout()).await?;
        return Ok(ExitCode::SUCCESS);
    }
    let made = OpenOptions::new()
        .write(true)
        .create_new(true)
        .mode(0o600)
        .open(&file)
        .with_context(|| format!("{} cannot be made", file.display()))?;
    let entries = reading::write_out(owner, vault, id, BufWriter::new(made)).await?;
    let mut out = io::stdout().lock();
    writeln!(
        out,
        "{entries} entries of room {room} are in {}. Hold them against deploy/verify-book.",
        file.display()
    )?;
    Ok(ExitCode::SUCCESS)
}
