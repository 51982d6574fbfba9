//! How soon a commit reaches everyone who has the board open: on the server that
//! committed, and on another one of the same database.
//!
//! A reader here does what a browser does with server-sent events: it keeps the
//! connection and takes the events as they come. The time counts from the moment
//! at which the note was sent, so it holds the writing too.

use std::net::Ipv4Addr;
use std::path::Path;
use std::time::{Duration, Instant};

use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::TcpStream;
use tokio::sync::watch;
use tokio::task::JoinSet;

use super::client::{Client, request};
use super::notes::Noted;
use super::plan::Plan;
use super::table::{Goal, Table, p99};
use super::world::{Server, World, free_port};

/// Between two notes.
const PAUSE: Duration = Duration::from_millis(250);
/// Everything arrives within this time, or the figure is void.
const PATIENCE: Duration = Duration::from_secs(10);

/// A reader, and the entries it heard of: each number with when it came.
type Heard = Vec<(i64, Instant)>;

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table, noted: &mut Noted) {
    let server = world.serve().await;
    let socket = world.socket();
    let other = serve_beside(&world.file("other"), &socket).await;
    let same = followed(plan, world, world.port, noted).await;
    let elsewhere = followed(plan, world, other.1, noted).await;
    other.0.stop().await;
    server.stop().await;
    let mut say = |where_: &str, times: Vec<Duration>, goal: f64| {
        let what = format!("Note to {} boards {where_}, p99", plan.streams);
        table.time(&what, p99(times), Goal::AtMost(goal));
    };
    say("on the same server", same, 250.0);
    say("on another server", elsewhere, 1_000.0);
}

/// Another server of the same database.
async fn serve_beside(data: &Path, socket: &Path) -> (Server, u16) {
    let port = free_port();
    let server = Server::start(port, data, Some(socket));
    let began = Instant::now();
    while !matches!(Client::new(port).get("/ready").await, Ok(answer) if answer.status == 200) {
        assert!(
            began.elapsed() < Duration::from_secs(30),
            "it does not answer"
        );
        tokio::time::sleep(Duration::from_millis(20)).await;
    }
    (server, port)
}

/// Opens the boards on the server at this port and notes on the first server;
/// answers how long each note took to each board.
async fn followed(plan: &Plan, world: &World, port: u16, noted: &mut Noted) -> Vec<Duration> {
    let first = &world.writers[0];
    let path = format!("/rooms/{}/board/stream", first.slug);
    let there = world.writers.iter().filter(|each| each.slug == first.slug);
    let sessions: Vec<&str> = there.map(|each| each.session.as_str()).collect();
    let (last, wanted) = watch::channel(i64::MAX);
    let mut readers = JoinSet::new();
    for place in 0..plan.streams {
        let session = sessions[place % sessions.len()];
        let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, port))
            .await
            .unwrap();
        let request = request(port, &path, Some(session));
        stream.write_all(request.as_bytes()).await.unwrap();
        let opened = opened(&mut stream).await;
        readers.spawn(follow(stream, opened, wanted.clone()));
    }
    let mut sent = Vec::new();
    let mut client = Client::new(world.port);
    for _ in 0..plan.told * plan.rounds {
        tokio::time::sleep(PAUSE).await;
        let at = Instant::now();
        let seq = noted.one(&mut client, first).await;
        sent.push((seq, at));
    }
    last.send(sent.last().unwrap().0).unwrap();
    let heard = tokio::time::timeout(PATIENCE, readers.join_all()).await;
    let heard = heard.expect("void: a board did not hear of every note");
    heard
        .iter()
        .flat_map(|heard| arrivals(&sent, heard))
        .collect()
}

/// For each note, how long it took until an event brought this board as far.
fn arrivals(sent: &[(i64, Instant)], heard: &Heard) -> Vec<Duration> {
    let arrival = |(seq, at): &(i64, Instant)| {
        let came = heard.iter().find(|(to, _)| to >= seq);
        came.unwrap().1.duration_since(*at)
    };
    sent.iter().map(arrival).collect()
}

/// Waits for the head of the answer and the first event; answers what came with them.
async fn opened(stream: &mut TcpStream) -> Vec<u8> {
    let mut got = Vec::new();
    while !got.windows(6).any(|six| six == b"data: ") {
        assert!(stream.read_buf(&mut got).await.unwrap() > 0, "it hung up");
    }
    assert!(
        got.starts_with(b"HTTP/1.1 200"),
        "{}",
        String::from_utf8_lossy(&got)
    );
    got
}

/// Listens until the last note that is wanted came.
async fn follow(mut stream: TcpStream, mut got: Vec<u8>, mut last: watch::Receiver<i64>) -> Heard {
    let mut heard = Heard::new();
    loop {
        let came = Instant::now();
        let whole = got
            .iter()
            .rposition(|byte| *byte == b'\n')
            .map_or(0, |at| at + 1);
        let lines: Vec<u8> = got.drain(..whole).collect();
        heard.extend(ids(&lines).map(|seq| (seq, came)));
        let has_come = |last: i64| heard.last().is_some_and(|(seq, _)| *seq >= last);
        if has_come(*last.borrow_and_update()) {
            return heard;
        }
        tokio::select! {
            read = stream.read_buf(&mut got) => assert!(read.unwrap() > 0, "it hung up"),
            changed = last.changed() => changed.unwrap(),
        }
    }
}

/// The entries that lines of a stream name: `id: 412.9f86d081`.
fn ids(lines: &[u8]) -> impl Iterator<Item = i64> {
    lines.split(|byte| *byte == b'\n').filter_map(|line| {
        let id = std::str::from_utf8(line).ok()?.strip_prefix("id: ")?;
        id.split_once('.')?.0.parse().ok()
    })
}
