//! Readers that ask for a page again and again, alike for every server.

use std::net::Ipv4Addr;
use std::sync::Arc;
use std::time::{Duration, Instant};

use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::TcpStream;
use tokio::task::JoinSet;

/// So many at once.
const READERS: usize = 64;

/// Asks for so long, on a thread of its own; answers pages a second.
pub(crate) async fn pull(port: u16, request: String, time: Duration) -> f64 {
    let pulling = tokio::task::spawn_blocking(move || {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build();
        runtime.unwrap().block_on(all(port, request.into(), time))
    });
    pulling.await.unwrap()
}

async fn all(port: u16, request: Arc<str>, time: Duration) -> f64 {
    let began = Instant::now();
    let mut readers = JoinSet::new();
    for _ in 0..READERS {
        readers.spawn(read(port, request.clone(), began + time));
    }
    let counts = readers.join_all().await;
    counts.iter().sum::<u32>() as f64 / began.elapsed().as_secs_f64()
}

async fn read(port: u16, request: Arc<str>, until: Instant) -> u32 {
    let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, port))
        .await
        .unwrap();
    stream.set_nodelay(true).unwrap();
    let mut got = Vec::with_capacity(65_536);
    let mut count = 0;
    while Instant::now() < until {
        stream.write_all(request.as_bytes()).await.unwrap();
        answer(&mut stream, &mut got).await;
        count += 1;
    }
    count
}

/// One whole answer, which must be a page.
async fn answer(stream: &mut TcpStream, got: &mut Vec<u8>) {
    got.clear();
    let mut length = None;
    while length.is_none_or(|length| got.len() < length) {
        let read = stream.read_buf(got).await.unwrap();
        assert!(read > 0, "the server hung up");
        length = length.or_else(|| length_of(got));
    }
}

/// How long an answer is with its head, as soon as that is there.
fn length_of(got: &[u8]) -> Option<usize> {
    let end = got.windows(4).position(|four| four == b"\r\n\r\n")? + 4;
    let head = std::str::from_utf8(&got[..end]).unwrap();
    assert!(head.starts_with("HTTP/1.1 200"), "{head}");
    let length = head.lines().find_map(|line| {
        let (name, value) = line.split_once(": ")?;
        name.eq_ignore_ascii_case("content-length").then_some(value)
    });
    Some(end + length.unwrap().parse::<usize>().unwrap())
}

/// The page as it is answered, and nothing around it.
pub(crate) async fn page(port: u16, request: &str) -> Vec<u8> {
    let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, port))
        .await
        .unwrap();
    stream.write_all(request.as_bytes()).await.unwrap();
    let mut got = Vec::new();
    answer(&mut stream, &mut got).await;
    let end = got.windows(4).position(|four| four == b"\r\n\r\n").unwrap() + 4;
    got.split_off(end)
}
