//! `wetside demo`: a small room of invented people.

use std::fs::{self, OpenOptions};
use std::io::{self, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::process::ExitCode;

use anyhow::{Context, bail};
use clap::Args;

use super::installation::{Installation, Where};
use crate::address::PublicAddress;
use crate::app::App;
use crate::clock::Clock;
use crate::demo::{self, Passwords, SLUG};
use crate::identity::Entrance;
use crate::identity::client::TrustedProxies;
use crate::rights::Role;
use crate::rooms;

/// How `wetside demo` is called.
#[derive(Args, Clone, Debug)]
pub struct DemoArgs {
    /// What the invented history is drawn from
    #[arg(long, default_value_t = 1)]
    pub seed: i64,
}

/// Makes the demo room where it is missing, and says who can log in.
///
/// # Errors
/// What stands in the way, as a sentence.
pub async fn run(args: DemoArgs, place: &Where) -> anyhow::Result<ExitCode> {
    let installation = Installation::reach(place).await?;
    installation.migrate().await?;
    let now = Clock::System.now();
    let clock = Clock::standing_at(now);
    let app = App::for_demo(
        installation.database().await?,
        clock.clone(),
        PublicAddress::loopback(0),
        installation.data.clone(),
        Entrance::new(TrustedProxies::default())?,
    );
    let file = installation.data.join("demo.txt");
    let rooms = app
        .database()
        .installation(|tx| Box::pin(rooms::all(tx)))
        .await?;
    if rooms.iter().any(|room| room.slug == SLUG) {
        let text = fs::read_to_string(&file)
            .with_context(|| format!("the demo room is there, but {} is gone", file.display()))?;
        write!(io::stdout(), "{text}")?;
    } else if rooms.is_empty() {
        let passwords = demo::make(app.clone(), clock, args.seed).await?;
        let text = in_words(&passwords);
        let mut kept = OpenOptions::new()
            .create(true)
            .write(true)
            .truncate(true)
            .mode(0o600)
            .open(&file)
            .with_context(|| format!("{} cannot be written", file.display()))?;
        kept.write_all(text.as_bytes())?;
        write!(io::stdout(), "{text}")?;
    } else {
        bail!("This installation holds real rooms; a demo wants a data folder of its own");
    }
    installation.close().await?;
    Ok(ExitCode::SUCCESS)
}

fn in_words(passwords: &Passwords) -> String {
    let mut text = String::from(
        "The demo room, its people and their figures are invented. Who can log in:\n\n",
    );
    for (name, role, log_in_name, password) in passwords {
        let role = match role {
            Role::Steward => "steward",
            Role::Trained => "trained member",
            Role::Member => "member",
            Role::Treasurer => "treasurer",
        };
        text.push_str(&format!(
            "  {role:<15} {log_in_name:<10} {password}   ({name})\n"
        ));
    }
    text.push('\n');
    text
}
