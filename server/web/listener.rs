//! Connections: accepted until the program stops, then let go of one by one.

use std::net::SocketAddr;
use std::time::Duration;

use axum::Router;
use axum::body::Body;
use axum::extract::ConnectInfo;
use hyper::body::Incoming;
use hyper::service::service_fn;
use hyper_util::rt::{TokioExecutor, TokioIo, TokioTimer};
use hyper_util::server::conn::auto::Builder;
use hyper_util::server::graceful::{GracefulShutdown, Watcher};
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::TcpListener;
use tokio_rustls::TlsAcceptor;
use tokio_util::sync::CancellationToken;
use tower::ServiceExt;

/// A client sends its head within this time or is let go of.
const HEAD: Duration = Duration::from_secs(5);
/// Open requests are finished within this time after a stop.
const GRACE: Duration = Duration::from_secs(10);

/// Serves until `stop`, then finishes what is open. With `tls` it speaks https.
pub async fn serve(
    listener: TcpListener,
    service: Router,
    tls: Option<TlsAcceptor>,
    stop: CancellationToken,
) {
    let graceful = GracefulShutdown::new();
    loop {
        let (stream, peer) = tokio::select! {
            () = stop.cancelled() => break,
            accepted = listener.accept() => match accepted {
                Ok(accepted) => accepted,
                Err(cause) => {
                    // Out of file descriptors, most likely: better soon than in a circle.
                    tracing::warn!(%cause, "a connection could not be accepted");
                    tokio::time::sleep(Duration::from_millis(100)).await;
                    continue;
                }
            },
        };
        drop(stream.set_nodelay(true));
        let conversation = Conversation {
            peer,
            service: service.clone(),
            watcher: graceful.watcher(),
        };
        match tls.clone() {
            None => drop(tokio::spawn(conversation.hold(stream))),
            Some(tls) => drop(tokio::spawn(async move {
                match tokio::time::timeout(HEAD, tls.accept(stream)).await {
                    Ok(Ok(stream)) => conversation.hold(stream).await,
                    Ok(Err(cause)) => tracing::debug!(%cause, "no common ground for https"),
                    Err(_) => tracing::debug!("a client took too long to agree on https"),
                }
            })),
        }
    }
    drop(listener);
    if tokio::time::timeout(GRACE, graceful.shutdown())
        .await
        .is_err()
    {
        tracing::warn!("some requests were still open when the program stopped");
    }
}

/// One client's connection.
struct Conversation {
    peer: SocketAddr,
    service: Router,
    watcher: Watcher,
}

impl Conversation {
    /// Answers until either side ends it.
    async fn hold<S>(self, stream: S)
    where
        S: AsyncRead + AsyncWrite + Unpin + Send + 'static,
    {
        let Self {
            peer,
            service,
            watcher,
        } = self;
        let answer = service_fn(move |request: hyper::Request<Incoming>| {
            let mut request = request.map(Body::new);
            request.extensions_mut().insert(ConnectInfo(peer));
            service.clone().oneshot(request)
        });
        let mut builder = Builder::new(TokioExecutor::new());
        builder
            .http1()
            .timer(TokioTimer::new())
            .header_read_timeout(HEAD);
        let connection = builder
            .serve_connection_with_upgrades(TokioIo::new(stream), answer)
            .into_owned();
        if let Err(cause) = watcher.watch(connection).await {
            tracing::debug!(%cause, "a connection ended badly");
        }
    }
}
