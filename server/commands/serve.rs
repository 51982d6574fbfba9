//! `wetside serve`: the server.

use std::fs::OpenOptions;
use std::io::{self, IsTerminal, Write};
use std::net::SocketAddr;
use std::os::unix::fs::OpenOptionsExt;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use anyhow::{Context, bail};
use clap::Args;
use tokio::net::TcpListener;
use tokio::signal::unix::{SignalKind, signal};
use tokio_rustls::TlsAcceptor;
use tokio_util::sync::CancellationToken;

use super::installation::{Installation, USUAL_PORT, Where, public_address};
use crate::address::PublicAddress;
use crate::app::App;
use crate::identity::links;
use crate::web::{listener, tls};
use crate::{board, jobs, router};

/// How `wetside serve` is started.
#[derive(Args, Clone, Debug)]
pub struct ServeArgs {
    /// The port on this machine
    #[arg(long, default_value_t = USUAL_PORT)]
    pub port: u16,
    /// The address to listen on
    #[arg(long, default_value = "127.0.0.1")]
    pub listen: std::net::IpAddr,
    /// Speak https with this certificate and its chain, PEM; wants --tls-key
    #[arg(long, requires = "tls_key", value_name = "FILE")]
    pub tls_cert: Option<PathBuf>,
    /// The certificate's key, PEM
    #[arg(long, requires = "tls_cert", value_name = "FILE")]
    pub tls_key: Option<PathBuf>,
    /// Let a demo room be served to other machines
    #[arg(long)]
    pub demo_public: bool,
}

/// Serves until told to stop.
///
/// # Errors
/// What stands in the way, as a sentence.
pub async fn run(args: ServeArgs, place: &Where) -> anyhow::Result<ExitCode> {
    let address = public_address(args.port)?;
    let tls = https(&args, &address)?;
    let stop = CancellationToken::new();
    let signals = tokio::spawn(wait_for_signal(stop.clone()));
    let listener = TcpListener::bind(SocketAddr::new(args.listen, args.port))
        .await
        .with_context(|| format!("port {} cannot be listened on", args.port))?;
    let installation = Installation::start(place).await?;
    installation.account.drop_to()?;
    installation.migrate().await?;
    let app = installation.app(address).await?;
    refuse_public_demo(&app, &args).await?;
    announce(&app, &installation.data).await?;
    let helpers = [
        tokio::spawn(board::watch(app.clone(), stop.clone())),
        tokio::spawn(jobs::run(app.clone(), stop.clone())),
    ];
    let service = router::service(&app)?;
    let served = listener::serve(listener, service, tls, stop.clone());
    let ended = async {
        match &installation.cluster {
            Some(cluster) => cluster.ended().await,
            None => std::future::pending().await,
        }
    };
    let status = tokio::select! {
        () = served => ExitCode::SUCCESS,
        _ = ended => {
            tracing::error!("the private database ended and could not be started again");
            ExitCode::FAILURE
        }
    };
    for helper in helpers {
        helper.abort();
    }
    signals.abort();
    app.database().close().await;
    installation.close().await?;
    Ok(status)
}

/// https where a certificate is named; the address people use must then say so.
fn https(args: &ServeArgs, address: &PublicAddress) -> anyhow::Result<Option<TlsAcceptor>> {
    let (Some(certificate), Some(key)) = (&args.tls_cert, &args.tls_key) else {
        return Ok(None);
    };
    if !address.is_secure() {
        bail!("With --tls-cert, say the https address people use in WETSIDE_PUBLIC_URL");
    }
    Ok(Some(tls::acceptor(certificate, key)?))
}

/// Stops on SIGINT, SIGTERM and SIGHUP.
async fn wait_for_signal(stop: CancellationToken) -> io::Result<()> {
    let mut interrupted = signal(SignalKind::interrupt())?;
    let mut terminated = signal(SignalKind::terminate())?;
    let mut hung_up = signal(SignalKind::hangup())?;
    tokio::select! {
        _ = interrupted.recv() => {}
        _ = terminated.recv() => {}
        _ = hung_up.recv() => {}
    }
    stop.cancel();
    Ok(())
}

/// A demo room's passwords were shown on a screen: it stays on this machine.
async fn refuse_public_demo(app: &App, args: &ServeArgs) -> anyhow::Result<()> {
    if args.demo_public || args.listen.is_loopback() {
        return Ok(());
    }
    let rooms = app
        .database()
        .installation(|tx| Box::pin(crate::rooms::all(tx)))
        .await?;
    if rooms.iter().any(|room| room.is_demo) {
        bail!(
            "This installation holds a demo room, which is served on this machine only. \
               --demo-public serves it to others all the same"
        );
    }
    Ok(())
}

/// Says where to look, and on an empty database how to begin. The link is a
/// secret: it goes to a terminal, else into a file for its owner alone.
async fn announce(app: &App, data: &Path) -> anyhow::Result<()> {
    let mut out = io::stdout();
    writeln!(out, "Wetside serves at {}", app.address().absolute("/"))?;
    let Some(link) = links::new_set_up(app).await? else {
        return Ok(());
    };
    if out.is_terminal() {
        writeln!(
            out,
            "No room is set up yet. Set up the first one here, once:\n{link}"
        )?;
    } else {
        let path = data.join("set-up.txt");
        let mut file = OpenOptions::new()
            .create(true)
            .write(true)
            .truncate(true)
            .mode(0o600)
            .open(&path)
            .with_context(|| format!("{} cannot be written", path.display()))?;
        writeln!(file, "{link}")?;
        writeln!(
            out,
            "No room is set up yet. The link for that is in {}",
            path.display()
        )?;
    }
    Ok(())
}
