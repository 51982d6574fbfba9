//! `wetside verify`: holds every book against its chain, its checkpoints and
//! everything that was made of it.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::Args;

use crate::database::Owner;
use crate::error::Error;
use crate::kinds::KINDS;
use crate::logbook::reading;
use crate::logbook::vault::Vault;
use crate::logbook::verify::{verify, verify_all};
use crate::logbook::verify_report::{Report, ReportOut};

/// What `wetside verify` is asked.
#[derive(Args, Clone, Debug)]
pub struct VerifyArgs {
    /// Only this room, by its short name
    #[arg(long, value_name = "SLUG")]
    pub room: Option<String>,
    /// Answer in JSON, for programs
    #[arg(long)]
    pub json: bool,
}

/// Verifies and says what was found; the code is 1 where anything was.
///
/// # Errors
/// A database that does not answer, a room there is none of; the error is a sentence.
pub async fn run(args: VerifyArgs, owner: &Owner, vault: &Vault) -> anyhow::Result<ExitCode> {
    let reports = match &args.room {
        None => verify_all(owner, KINDS, vault).await?,
        Some(slug) => {
            let room = room_of(owner, slug).await?;
            vec![verify(owner, KINDS, vault, room).await?]
        }
    };
    let mut out = io::stdout().lock();
    if args.json {
        let all: Vec<ReportOut<'_>> = reports.iter().map(Report::to_out).collect();
        serde_json::to_writer_pretty(&mut out, &all)?;
        writeln!(out)?;
    } else {
        for report in &reports {
            writeln!(out, "{report}")?;
        }
        if reports.is_empty() {
            writeln!(out, "There is no room, so there is no book.")?;
        }
    }
    let clean = reports.iter().all(Report::is_clean);
    Ok(ExitCode::from(u8::from(!clean)))
}

/// The room of a short name, or a sentence that there is none.
pub(super) async fn room_of(owner: &Owner, slug: &str) -> anyhow::Result<uuid::Uuid> {
    match reading::room_of(owner, slug).await {
        Err(Error::NotFound) => Err(anyhow::anyhow!("There is no room {slug}.")),
        answer => Ok(answer?),
    }
}
