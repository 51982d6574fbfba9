//! `wetside demo`: a room of invented people with half a year of history.

use std::fs::{self, OpenOptions};
use std::io::{self, IsTerminal, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::path::Path;
use std::process::ExitCode;
use std::time::Instant;

use anyhow::{Context, bail};
use clap::Args;

use super::installation::{Installation, Where};
use crate::address::PublicAddress;
use crate::app::App;
use crate::clock::Clock;
use crate::demo::{self, FEWEST_WEEKS, LogIn, Progress, SLUG, WEEKS, Wanted};
use crate::identity::Entrance;
use crate::identity::client::TrustedProxies;
use crate::input;
use crate::rights::Role;
use crate::rooms;

/// The most weeks a demo tells of: ten years.
const MOST_WEEKS: i64 = 520;

/// How `wetside demo` is called.
#[derive(Args, Clone, Debug)]
pub struct DemoArgs {
    /// What the invented history is drawn from
    #[arg(long, default_value_t = 1)]
    pub seed: i64,
    /// How many weeks it tells of
    #[arg(long, default_value_t = WEEKS,
          value_parser = clap::value_parser!(i64).range(FEWEST_WEEKS..=MOST_WEEKS))]
    pub weeks: i64,
    /// When it ends, as RFC 3339 writes it [default: now]
    #[arg(long, value_name = "RFC3339")]
    pub now: Option<String>,
}

/// Makes the demo room where it is missing, and says who can log in.
///
/// # Errors
/// What stands in the way, as a sentence.
pub async fn run(args: DemoArgs, place: &Where) -> anyhow::Result<ExitCode> {
    let end = match &args.now {
        None => Clock::System.now(),
        Some(text) => input::moment(text)
            .map_err(|_| anyhow::anyhow!("--now {text:?} is no moment as RFC 3339 writes it"))?,
    };
    let installation = Installation::reach(place).await?;
    installation.migrate().await?;
    let clock = Clock::standing_at(end);
    let app = App::for_demo(
        installation.hurried_database().await?,
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
        let text = fs::read_to_string(&file).with_context(|| unfinished(&installation.data))?;
        write!(io::stdout(), "{text}")?;
    } else if rooms.is_empty() {
        let wanted = Wanted {
            seed: args.seed,
            weeks: args.weeks,
        };
        let mut teller = Teller::new();
        let log_ins = demo::make(app.clone(), clock, wanted, |far| teller.tell(&far)).await?;
        teller.ends();
        installation.owner().analyze().await?;
        let text = in_words(&log_ins);
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

fn unfinished(data: &Path) -> String {
    format!(
        "The making of the demo was broken off, or its demo.txt is gone. Remove {} and start again",
        data.display()
    )
}

/// Says how far the making has come: on a terminal in one line that is renewed
/// every week, elsewhere in a line a month.
struct Teller {
    began: Instant,
    is_terminal: bool,
    month: String,
}

impl Teller {
    fn new() -> Self {
        Self {
            began: Instant::now(),
            is_terminal: io::stderr().is_terminal(),
            month: String::new(),
        }
    }

    fn tell(&mut self, far: &Progress) {
        let is_last = far.week >= far.weeks;
        if !self.is_terminal && self.month == far.month && !is_last {
            return;
        }
        self.month.clone_from(&far.month);
        let line = format!(
            "Making the demo: week {} of {}, {}, {} entries, {} s",
            far.week,
            far.weeks,
            far.month,
            far.entries,
            self.began.elapsed().as_secs()
        );
        let (before, after) = match self.is_terminal {
            true => ("\r\x1b[K", ""),
            false => ("", "\n"),
        };
        let mut out = io::stderr();
        // Whoever does not listen misses nothing that matters.
        drop(write!(out, "{before}{line}{after}").and_then(|()| out.flush()));
    }

    fn ends(&self) {
        if self.is_terminal {
            drop(writeln!(io::stderr()));
        }
    }
}

fn in_words(log_ins: &[LogIn]) -> String {
    let mut text = String::from(
        "The demo room, its people and their figures are invented. Who can log in:\n\n",
    );
    for LogIn {
        name,
        role,
        log_in_name,
        password,
        number,
        pin,
    } in log_ins
    {
        let role = match role {
            Role::Steward => "steward",
            Role::Trained => "trained member",
            Role::Member => "member",
            Role::Treasurer => "treasurer",
        };
        text.push_str(&format!(
            "  {role:<15} {log_in_name:<10} {password}   at a door {number:>2} {pin}   ({name})\n"
        ));
    }
    text.push('\n');
    text
}
