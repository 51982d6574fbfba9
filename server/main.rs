//! Chooses a command and nothing else.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::{Parser, Subcommand};
use tracing_subscriber::EnvFilter;
use wetside::commands::installation::{Installation, Where};
use wetside::commands::{book, cluster, demo, member, migrate, reckon, room, serve, verify};
use wetside::database::connect;

/// A request allocates often and little.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

/// The wet side of a communal darkroom, with a book nobody can quietly alter.
#[derive(Parser)]
#[command(version)]
struct Arguments {
    #[command(flatten)]
    place: Where,
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Serve the rooms of this installation
    Serve(serve::ServeArgs),
    /// Make a demo room of invented people
    Demo(demo::DemoArgs),
    /// Bring the database's tables up to date
    Migrate,
    /// Help people and rooms that have locked themselves out
    Member(member::MemberArgs),
    /// Add, close, reopen and list rooms
    Room(room::RoomArgs),
    /// Check every room's book, and everything that was made of it
    Verify(verify::VerifyArgs),
    /// Take a room's book away as a file
    Book(book::BookArgs),
    /// Answer questions of the trade's arithmetic, one JSON object a line
    Reckon(reckon::ReckonArgs),
    /// Look after the private database
    Cluster(cluster::ClusterArgs),
}

#[tokio::main]
async fn main() -> ExitCode {
    let arguments = Arguments::parse();
    // A server keeps a journal; a command says what it has to say itself.
    let usual = match arguments.command {
        Command::Serve(_) => connect::JOURNAL,
        _ => "error",
    };
    tracing_subscriber::fmt()
        .json()
        .with_env_filter(EnvFilter::try_from_env("WETSIDE_LOG").unwrap_or_else(|_| usual.into()))
        .with_writer(io::stderr)
        .init();
    match run(arguments).await {
        Ok(status) => status,
        Err(cause) => {
            drop(writeln!(io::stderr(), "{cause:#}"));
            ExitCode::FAILURE
        }
    }
}

async fn run(Arguments { place, command }: Arguments) -> anyhow::Result<ExitCode> {
    match command {
        Command::Serve(args) => serve::run(args, &place).await,
        Command::Demo(args) => demo::run(args, &place).await,
        Command::Migrate => migrate::run(&place).await,
        Command::Reckon(args) => reckon::run(args),
        Command::Cluster(args) => cluster::run(args, &place).await,
        Command::Member(args) => {
            let (installation, app) = Installation::reach_app(&place).await?;
            let status = member::run(args, &app).await?;
            installation.close().await?;
            Ok(status)
        }
        Command::Room(args) => {
            let (installation, app) = Installation::reach_app(&place).await?;
            let status = room::run(args, &app).await?;
            installation.close().await?;
            Ok(status)
        }
        Command::Verify(args) => {
            let installation = Installation::reach(&place).await?;
            let status = verify::run(args, &installation.owner(), &installation.vault()).await?;
            installation.close().await?;
            Ok(status)
        }
        Command::Book(args) => {
            let installation = Installation::reach(&place).await?;
            let status = book::run(args, &installation.owner(), &installation.vault()).await?;
            installation.close().await?;
            Ok(status)
        }
    }
}
