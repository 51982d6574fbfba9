//! `wetside migrate`: brings the tables up to date and grants the serving role its rights.

use std::io::{self, Write};
use std::process::ExitCode;

use super::installation::{Installation, Where};

/// Migrates.
///
/// # Errors
/// What stands in the way, as a sentence.
pub async fn run(place: &Where) -> anyhow::Result<ExitCode> {
    let installation = Installation::reach(place).await?;
    installation.migrate().await?;
    writeln!(io::stdout(), "The tables are up to date.")?;
    installation.close().await?;
    Ok(ExitCode::SUCCESS)
}
