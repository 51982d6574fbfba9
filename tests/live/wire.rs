//! On a real connection: the headers, the beat, and the end when the program stops.

use std::time::{Duration, Instant};

use axum::http::Method;
use axum::http::header::{COOKIE, HOST};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};
use tokio::time::timeout;
use tokio_util::sync::CancellationToken;
use wetside::board::watch;
use wetside::router;
use wetside::web::listener;

use super::Room;
use crate::harness::scenario;

/// Longer than the time between two beats.
const PATIENCE: Duration = Duration::from_secs(20);

async fn read_until(stream: &mut TcpStream, wanted: &str, count: usize) -> String {
    let mut text = String::new();
    let reading = async {
        while text.matches(wanted).count() < count {
            let mut buffer = vec![0; 65_536];
            let read = stream.read(&mut buffer).await.unwrap();
            assert!(read > 0, "the connection ended: {text}");
            text.push_str(&String::from_utf8_lossy(&buffer[..read]));
        }
    };
    timeout(PATIENCE, reading).await.unwrap();
    text
}

#[test]
fn a_stream_is_sent_at_once_beats_and_ends_with_the_program() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let app = room.stage.installation.app.clone();
        let stop = CancellationToken::new();
        let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
        let address = listener.local_addr().unwrap();
        let service = router::service(&app).unwrap();
        let served = tokio::spawn(listener::serve(listener, service, None, stop.clone()));
        let watching = tokio::spawn(watch(app.clone(), stop.clone()));
        let browser = room.stage.browser(&room.stage.cast.member).await;
        let request = browser.request(Method::GET, &room.stage.at("/board/stream"));
        let request = request.body(()).unwrap();
        let header = |name| request.headers()[&name].to_str().unwrap();
        let head = format!(
            "GET {} HTTP/1.1\r\nHost: {}\r\nCookie: {}\r\nAccept-Encoding: gzip, br\r\n\r\n",
            request.uri(),
            header(HOST),
            header(COOKIE)
        );
        let mut stream = TcpStream::connect(address).await.unwrap();
        stream.write_all(head.as_bytes()).await.unwrap();
        let opening = read_until(&mut stream, "event: beat", 1)
            .await
            .to_lowercase();
        for wanted in [
            "http/1.1 200 ok",
            "content-type: text/event-stream",
            "cache-control: no-store, no-transform",
            "x-accel-buffering: no",
            "event: change",
        ] {
            assert!(opening.contains(wanted), "{wanted} is not in {opening}");
        }
        assert!(!opening.contains("content-encoding"), "{opening}");
        // Twice: not the room's first, but the one that comes every few seconds.
        read_until(&mut stream, "event: beat", 2).await;
        let began = Instant::now();
        stop.cancel();
        served.await.unwrap();
        watching.await.unwrap();
        let mut rest = Vec::new();
        stream.read_to_end(&mut rest).await.unwrap();
        assert!(
            began.elapsed() < Duration::from_secs(2),
            "{:?}",
            began.elapsed()
        );
    });
}
