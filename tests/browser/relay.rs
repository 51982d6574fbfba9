//! The address that browsers know, and what stands behind it: one server, later another,
//! or nobody.

use std::net::Ipv4Addr;

use tokio::io::copy_bidirectional;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::watch;
use tokio::task::JoinHandle;

use super::site::{Site, listening};

/// Carries connections on, until it is told to carry them elsewhere or nowhere; what is
/// open then ends. Ended with this value.
pub(super) struct Relay {
    port: u16,
    leads_to: watch::Sender<Option<u16>>,
    accepting: JoinHandle<()>,
}

impl Relay {
    /// An address behind which nobody is yet.
    pub(super) async fn open() -> Self {
        let (listener, port) = listening().await;
        let (leads_to, led) = watch::channel(None);
        Self {
            port,
            leads_to,
            accepting: tokio::spawn(accept(listener, led)),
        }
    }

    /// The port that browsers know.
    pub(super) fn port(&self) -> u16 {
        self.port
    }

    /// From now on this server answers.
    pub(super) fn lead_to(&self, site: &Site) {
        self.leads_to.send_replace(Some(site.listens_at));
    }

    /// From now on nobody does.
    pub(super) fn shut(&self) {
        self.leads_to.send_replace(None);
    }
}

impl Drop for Relay {
    fn drop(&mut self) {
        self.accepting.abort();
    }
}

async fn accept(listener: TcpListener, led: watch::Receiver<Option<u16>>) {
    loop {
        let (near, _) = listener.accept().await.unwrap();
        tokio::spawn(carry(near, led.clone()));
    }
}

async fn carry(mut near: TcpStream, mut led: watch::Receiver<Option<u16>>) {
    let Some(port) = *led.borrow_and_update() else {
        return;
    };
    // A server that is gone by now is nobody.
    let Ok(mut far) = TcpStream::connect((Ipv4Addr::LOCALHOST, port)).await else {
        return;
    };
    tokio::select! {
        _ = led.changed() => {}
        _ = copy_bidirectional(&mut near, &mut far) => {}
    }
}
