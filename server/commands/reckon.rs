//! `wetside reckon`: the trade's arithmetic on standard input and output.

use std::io::{self, BufRead, ErrorKind, Write};
use std::process::ExitCode;

use clap::Args;

use crate::reckon::{examples, reckon};

/// What `wetside reckon` is asked.
#[derive(Args, Clone, Copy, Debug)]
pub struct ReckonArgs {
    /// Print every question as a line that asks it with an example; such lines are also input
    #[arg(long)]
    pub list: bool,
}

/// Answers standard input line by line, each answer written out at once, or
/// prints the list. A reader that goes away ends the run without a complaint.
///
/// # Errors
/// Where standard input or output fails.
pub fn run(args: ReckonArgs) -> anyhow::Result<ExitCode> {
    let mut out = io::stdout().lock();
    let written = if args.list {
        list(&mut out)
    } else {
        answer(io::stdin().lock(), &mut out)
    };
    match written {
        Err(reason) if reason.kind() != ErrorKind::BrokenPipe => Err(reason.into()),
        _ => Ok(ExitCode::SUCCESS),
    }
}

fn list(out: &mut impl Write) -> io::Result<()> {
    examples().try_for_each(|example| writeln!(out, "{example}"))
}

/// Answers every line of an input, in order, until it ends.
///
/// # Errors
/// Where reading or writing fails.
pub fn answer(input: impl BufRead, out: &mut impl Write) -> io::Result<()> {
    for line in input.split(b'\n') {
        writeln!(out, "{}", reckon(line?.trim_ascii()))?;
        out.flush()?;
    }
    Ok(())
}
