//! What a busy room does to a quiet one, and a bad note to its neighbours.

use std::time::{Duration, Instant};

use tokio::task::JoinSet;
use uuid::Uuid;

use super::client::Client;
use super::notes::{Noted, in_one_room, press};
use super::plan::Plan;
use super::table::{Goal, Table, p99};
use super::world::{World, Writer};
use crate::harness::new_key;

/// Between two notes in the quiet room.
const PAUSE: Duration = Duration::from_millis(5);
/// Those who note at once in the busy room.
const BUSY: usize = 64;

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table, noted: &mut Noted) {
    let server = world.serve().await;
    let (mut alone, mut beside) = (Vec::new(), Vec::new());
    for _ in 0..plan.rounds {
        alone.extend(quiet_room(plan, world, noted).await);
        let time = plan.time;
        let mut busy = Noted::default();
        let (times, _) = tokio::join!(
            quiet_room(plan, world, noted),
            press(world, in_one_room(world, BUSY), time, &mut busy),
        );
        beside.extend(times);
        noted.and(busy);
    }
    let answered = bad_among_good(plan, world, noted).await;
    server.stop().await;
    let (alone, beside) = (p99(alone), p99(beside));
    table.time("Note in a quiet room, p99", alone, Goal::None);
    let what = "Note in a quiet room beside 64 people in another, p99";
    table.time(what, beside, Goal::None);
    let ratio = beside.as_secs_f64() / alone.as_secs_f64();
    table.ratio(
        "Quiet room beside a busy one to alone",
        ratio,
        Goal::AtMost(3.0),
    );
    let what = "Of 63 good notes beside a bad one, written";
    table.number(what, answered, "", Goal::AtLeast(63.0));
}

/// One person in the last room, who has time; on a thread of their own.
async fn quiet_room(plan: &Plan, world: &World, noted: &mut Noted) -> Vec<Duration> {
    let (port, time) = (world.port, plan.time);
    let writer = world.writers[plan.rooms - 1].clone();
    let noting = tokio::task::spawn_blocking(move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        runtime.unwrap().block_on(one_by_one(port, &writer, time))
    });
    let (times, mine) = noting.await.unwrap();
    noted.and(mine);
    times
}

async fn one_by_one(port: u16, writer: &Writer, time: Duration) -> (Vec<Duration>, Noted) {
    let (mut client, mut mine, mut times) = (Client::new(port), Noted::default(), Vec::new());
    let began = Instant::now();
    while began.elapsed() < time {
        let sent = Instant::now();
        mine.one(&mut client, writer).await;
        times.push(sent.elapsed());
        tokio::time::sleep(PAUSE).await;
    }
    (times, mine)
}

/// In each round 64 people note at once, one of them on a paper that there is not.
/// Answers the fewest of the others whose notes were written.
async fn bad_among_good(plan: &Plan, world: &World, noted: &mut Noted) -> f64 {
    let mut fewest = BUSY;
    for _ in 0..plan.rounds {
        let mut all = JoinSet::new();
        for (place, mut writer) in in_one_room(world, BUSY).into_iter().flatten().enumerate() {
            let (port, key, is_bad) = (world.port, new_key(), place == BUSY / 2);
            if is_bad {
                writer.sheet_size = Uuid::nil();
            }
            all.spawn(async move {
                let answer = Client::new(port).note(&writer, &key).await.unwrap();
                assert_eq!(answer.status == 422, is_bad, "{}", answer.status);
                (key, answer.status == 303)
            });
        }
        let answers = all.join_all().await;
        let written = answers.iter().filter(|(_, is_written)| *is_written);
        fewest = fewest.min(written.clone().count());
        written.for_each(|(key, _)| noted.know(*key));
    }
    fewest as f64
}
