//! How soon the program answers, and what it holds while nothing is asked of it.

use std::io::{ErrorKind, Read, Write};
use std::net::{Ipv4Addr, TcpStream};
use std::path::Path;
use std::time::{Duration, Instant};

use wetside::database::cluster::{Cluster, StartOptions};

use super::client::request;
use super::load::page;
use super::machine::memory_of;
use super::plan::Plan;
use super::table::{Goal, Table, median};
use super::world::{Server, World};

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table) {
    let (mut private, mut own) = (Vec::new(), Vec::new());
    for _ in 0..plan.rounds {
        private.push(started(world, &world.data(), None).await);
    }
    let cluster = Cluster::start(&world.folders(), &StartOptions::default())
        .await
        .unwrap();
    let (beside, socket) = (world.file("beside"), world.socket());
    for _ in 0..plan.rounds {
        own.push(started(world, &beside, Some(&socket)).await);
    }
    cluster.stop().await;
    let millis = |times: Vec<f64>| Duration::from_secs_f64(median(times));
    let goal = Goal::AtMost(300.0);
    table.time(
        "Start to first page, private database",
        millis(private),
        goal,
    );
    table.time(
        "Start to first page, a database that runs",
        millis(own),
        goal,
    );
    let memory = idle(plan, world).await as f64 / 1_024.0;
    table.number("Memory while idle", memory, "MiB", Goal::AtMost(40.0));
}

/// Seconds from the start of the process to its first page.
async fn started(world: &World, data: &Path, socket: Option<&Path>) -> f64 {
    let port = world.port;
    let began = Instant::now();
    let server = Server::start(port, data, socket);
    tokio::task::spawn_blocking(move || first_page(port))
        .await
        .unwrap();
    let took = began.elapsed().as_secs_f64();
    server.stop().await;
    took
}

/// Waits until somebody listens, and then for the answer.
fn first_page(port: u16) {
    let began = Instant::now();
    let mut stream = loop {
        match TcpStream::connect((Ipv4Addr::LOCALHOST, port)) {
            Ok(stream) => break stream,
            Err(cause) => {
                let is_early = cause.kind() == ErrorKind::ConnectionRefused;
                assert!(
                    is_early && began.elapsed() < Duration::from_secs(30),
                    "{cause}"
                );
                std::thread::sleep(Duration::from_millis(1));
            }
        }
    };
    let request = request(port, "/log-in", None);
    stream.write_all(request.as_bytes()).unwrap();
    let mut head = [0; 12];
    stream.read_exact(&mut head).unwrap();
    assert_eq!(&head, b"HTTP/1.1 200");
}

/// Kibibytes, some seconds after somebody looked at a board.
async fn idle(plan: &Plan, world: &World) -> u64 {
    let server = world.serve().await;
    let writer = &world.writers[0];
    let path = format!("/rooms/{}/board", writer.slug);
    page(
        world.port,
        &request(world.port, &path, Some(&writer.session)),
    )
    .await;
    tokio::time::sleep(plan.idle).await;
    let memory = memory_of(server.pid());
    server.stop().await;
    memory
}
