//! How fast the program is, beside what the same machine can do otherwise.
//!
//! `deploy/bench` builds the program and this for release and runs it on a quiet
//! machine. Everything is measured in rounds by turns, the middle one counts, and a
//! run counts only where every answered note is in the books and the books verify.
//! `--smoke` does a moment of everything, to see that it runs.

#![expect(
    clippy::disallowed_methods,
    clippy::disallowed_types,
    reason = "it looks behind the program, as the owner of its tables"
)]
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "what fails here makes the figures void; the table is printed"
)]

#[expect(dead_code, reason = "the suite uses all of it")]
#[path = "../drills/audit.rs"]
mod audit;
mod boards;
#[path = "../drills/client.rs"]
mod client;
mod cluster;
#[expect(dead_code, unused_imports, reason = "the suite uses all of it")]
#[path = "../harness/mod.rs"]
mod harness;
mod history;
mod load;
mod log_ins;
mod machine;
mod notes;
mod others;
mod plan;
mod quiet;
#[path = "../drills/said.rs"]
mod said;
mod script;
mod start;
mod streams;
mod table;
#[expect(dead_code, reason = "the suite uses all of it")]
#[path = "../drills/world.rs"]
mod world;
mod writes;

use std::path::Path;
use std::process::ExitCode;

use notes::Noted;
use plan::{FULL, Plan, SMOKE};
use table::Table;
use world::World;

/// As the program has it, so that the bare route is as quick as it can be.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

/// What is measured, in this order.
const SECTIONS: [&str; 7] = [
    "start", "notes", "quiet", "boards", "log-ins", "streams", "history",
];

fn main() -> ExitCode {
    // `cargo bench` adds a word of its own.
    let words = std::env::args().skip(1).filter(|word| word != "--bench");
    let words: Vec<String> = words.collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["bare", port, file] => others::serve_bare(port.parse().unwrap(), Path::new(file)),
        ["drawing", port, data] => others::serve_drawing(port.parse().unwrap(), Path::new(data)),
        [] => say(&take(&FULL, &SECTIONS)),
        ref some if some.iter().all(|word| SECTIONS.contains(word)) => say(&take(&FULL, some)),
        ["--smoke"] => {
            take(&SMOKE, &SECTIONS);
            println!("Everything runs. The figures of so short a run mean nothing.");
        }
        _ => {
            println!("Usage: bench [--smoke | {}…]", SECTIONS.join(" | "));
            return ExitCode::from(2);
        }
    }
    ExitCode::SUCCESS
}

/// Takes figures.
fn take(plan: &Plan, sections: &[&str]) -> Table {
    println!("Load before: {}", machine::load());
    let mut table = Table::default();
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .worker_threads(2)
        .enable_all()
        .build()
        .unwrap();
    runtime.block_on(measure(plan, sections, &mut table));
    println!("Load after: {}", machine::load());
    table
}

/// Prints the table and the machine it was taken on.
fn say(table: &Table) {
    println!("\n{}\n\n{table}", machine::described());
    println!("{} figures miss their goal.", table.missed());
}

async fn measure(plan: &Plan, sections: &[&str], table: &mut Table) {
    let wants = |section: &str| sections.contains(&section);
    let world = World::new(plan.rooms, plan.rooms - 1 + plan.people).await;
    script::copy(&world, plan).await;
    let mut noted = Noted::default();
    if wants("start") {
        start::measure(plan, &world, table).await;
    }
    if wants("notes") {
        writes::measure(plan, &world, table, &mut noted).await;
    }
    if wants("quiet") {
        quiet::measure(plan, &world, table, &mut noted).await;
    }
    if wants("boards") {
        boards::measure(plan, &world, table).await;
    }
    if wants("log-ins") {
        log_ins::measure(plan, &world, table).await;
    }
    if wants("streams") {
        streams::measure(plan, &world, table, &mut noted).await;
    }
    noted.check(&world).await;
    drop(world);
    if wants("history") {
        history::measure(plan, table).await;
    }
}
