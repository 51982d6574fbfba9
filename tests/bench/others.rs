//! Other servers, that the program's pages are measured beside: each a process.

use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use axum::Router;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::header::CONTENT_TYPE;
use axum::routing::get;
use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;
use time::OffsetDateTime;
use tokio::net::TcpListener;
use tokio_util::sync::CancellationToken;
use wetside::address::PublicAddress;
use wetside::commands::installation::{Installation, Where};
use wetside::database::cluster::WEB_ROLE;
use wetside::logbook::Head;
use wetside::web::listener;
use wetside::{rooms, router};

use super::client::Client;
use super::world::free_port;

/// A server as a process, ended with this value: asked to, so that it ends its own
/// workers first.
#[derive(Debug)]
pub(crate) struct Other {
    child: Child,
    pub(crate) port: u16,
}

impl Drop for Other {
    fn drop(&mut self) {
        let pid = i32::try_from(self.child.id()).unwrap();
        kill(Pid::from_raw(pid), Signal::SIGTERM).unwrap();
        self.child.wait().unwrap();
    }
}

impl Other {
    /// The framework alone, with one route that answers what stands in a file.
    pub(crate) async fn bare(file: &Path) -> Self {
        Self::own("bare", file).await
    }

    /// The program over an installation's database, keeping no board.
    pub(crate) async fn drawing(data: &Path) -> Self {
        Self::own("drawing", data).await
    }

    /// This program in one of its other parts.
    async fn own(part: &str, of: &Path) -> Self {
        let port = free_port();
        let mut command = Command::new(std::env::current_exe().unwrap());
        command.args([part, &port.to_string()]).arg(of);
        Self::start(command, port).await
    }

    /// `nginx`, serving a folder's files.
    pub(crate) async fn nginx(folder: &Path) -> Self {
        let port = free_port();
        let settings = folder.join("nginx.conf");
        let text = include_str!("../../deploy/bench.d/nginx.conf")
            .replace("FOLDER", &folder.display().to_string())
            .replace("PORT", &port.to_string());
        std::fs::write(&settings, text).unwrap();
        let mut command = Command::new(nginx());
        command.arg("-e").arg("stderr").arg("-c").arg(&settings);
        Self::start(command, port).await
    }

    async fn start(mut command: Command, port: u16) -> Self {
        let child = command.stdin(Stdio::null()).spawn().unwrap();
        let other = Self { child, port };
        let began = Instant::now();
        while Client::new(port).get("/").await.is_err() {
            assert!(began.elapsed() < Duration::from_secs(30), "{command:?}");
            tokio::time::sleep(Duration::from_millis(10)).await;
        }
        other
    }
}

/// Where `deploy/bench` found it, or the system's own.
fn nginx() -> PathBuf {
    let named = std::env::var_os("WETSIDE_BENCH_NGINX").map(PathBuf::from);
    named.unwrap_or_else(|| "/usr/sbin/nginx".into())
}

fn on_runtime(work: impl Future<Output = ()>) {
    tokio::runtime::Runtime::new().unwrap().block_on(work);
}

/// Serves a file's bytes until killed.
pub(crate) fn serve_bare(port: u16, file: &Path) {
    let bytes = Bytes::from(std::fs::read(file).unwrap());
    let route = get(|State(bytes): State<Bytes>| async move {
        ([(CONTENT_TYPE, "text/html; charset=utf-8")], bytes)
    });
    let service = Router::new().route("/board.html", route).with_state(bytes);
    on_runtime(async {
        let listener = TcpListener::bind(("127.0.0.1", port)).await.unwrap();
        axum::serve(listener, service).await.unwrap();
    });
}

/// Serves the program's pages until killed. It believes that every room's book has gone
/// on already, so it keeps no board.
pub(crate) fn serve_drawing(port: u16, data: &Path) {
    let place = Where {
        data: Some(data.to_owned()),
        app_role: WEB_ROLE.to_owned(),
    };
    on_runtime(async {
        let listener = TcpListener::bind(("127.0.0.1", port)).await.unwrap();
        let installation = Installation::reach(&place).await.unwrap();
        let address = PublicAddress::loopback(port);
        let app = installation.app(address).await.unwrap();
        let rooms = app.database().installation(|tx| Box::pin(rooms::all(tx)));
        let ahead = Head {
            seq: i64::MAX,
            hash: [0; 32],
            recorded_at: OffsetDateTime::UNIX_EPOCH,
        };
        for room in rooms.await.unwrap() {
            app.boards().changed(room.id, &ahead);
        }
        let service = router::service(&app).unwrap();
        listener::serve(listener, service, None, CancellationToken::new()).await;
    });
}
