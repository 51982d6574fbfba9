//! How many log-ins a second, beside the computation that each of them costs.

use std::time::{Duration, Instant};

use argon2::{Algorithm, Argon2, Params, Version};
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};
use tokio::task::JoinSet;
use wetside::identity::passwords::Cost;

use super::client::Client;
use super::plan::Plan;
use super::table::{Goal, Table, median, ratio};
use super::world::World;
use crate::harness::PASSWORD;

/// So many log in at once: fewer than would be told to come again.
const AT_ONCE: usize = 8;
/// The people of the installation who do.
const PEOPLE: usize = 16;

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table) {
    let server = world.serve().await;
    // The first time a hash of the set-up's cost is made anew at today's.
    for person in 0..PEOPLE {
        log_in(&mut Client::new(world.port), person).await;
    }
    let (mut log_ins, mut raw) = (Vec::new(), Vec::new());
    for _ in 0..plan.rounds {
        log_ins.push(at_once(world.port, plan.time).await);
        let time = plan.time;
        raw.push(
            tokio::task::spawn_blocking(move || hashes(time))
                .await
                .unwrap(),
        );
    }
    server.stop().await;
    let mut say = |what: &str, figures: &[f64]| {
        table.say(what, format!("{:.0} a second", median(figures.to_vec())));
    };
    say("Log-ins", &log_ins);
    say("Argon2id alone, same cost", &raw);
    table.ratio(
        "Log-ins to Argon2id alone",
        ratio(&log_ins, &raw),
        Goal::AtLeast(0.8),
    );
}

async fn log_in(client: &mut Client, person: usize) {
    let password = utf8_percent_encode(PASSWORD, NON_ALPHANUMERIC);
    let body = format!("log_in_name=printer.{person}&password={password}&back=");
    let answer = client.post("/log-in", "", &body).await.unwrap();
    assert_eq!(answer.status, 303, "a log-in failed");
}

async fn at_once(port: u16, time: Duration) -> f64 {
    let began = Instant::now();
    let mut all = JoinSet::new();
    for first in 0..AT_ONCE {
        all.spawn(async move {
            let (mut client, mut count) = (Client::new(port), 0_u32);
            for person in (0..PEOPLE).cycle().skip(first * PEOPLE / AT_ONCE) {
                if began.elapsed() >= time {
                    break;
                }
                log_in(&mut client, person).await;
                count += 1;
            }
            count
        });
    }
    let counts = all.join_all().await;
    counts.iter().sum::<u32>() as f64 / began.elapsed().as_secs_f64()
}

/// Computes on every processor; answers hashes a second.
fn hashes(time: Duration) -> f64 {
    let cost = Cost::OWASP;
    let params = Params::new(cost.memory_kib, cost.passes, 1, None).unwrap();
    let argon2 = Argon2::new(Algorithm::Argon2id, Version::V0x13, params);
    let began = Instant::now();
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let compute = || {
        let (mut count, mut hash) = (0_u32, [0; 32]);
        while began.elapsed() < time {
            argon2
                .hash_password_into(PASSWORD.as_bytes(), &[7; 16], &mut hash)
                .unwrap();
            count += 1;
        }
        count
    };
    let count: u32 = std::thread::scope(|scope| {
        let all: Vec<_> = (0..threads).map(|_| scope.spawn(compute)).collect();
        all.into_iter().map(|thread| thread.join().unwrap()).sum()
    });
    f64::from(count) / began.elapsed().as_secs_f64()
}
