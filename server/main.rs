//! Chooses a command and nothing else.

use std::process::ExitCode;

use clap::Parser;
use wetside::commands::cluster::{ClusterArgs, run};

#[derive(Parser)]
enum Command {
    /// Look after the private database
    Cluster(ClusterArgs),
}

#[tokio::main]
async fn main() -> anyhow::Result<ExitCode> {
    let Command::Cluster(args) = Command::parse();
    run(args).await
}
