//! The program as a server on this machine, over a database of the tests.

use std::net::Ipv4Addr;

use axum::Router;
use tokio::net::TcpListener;
use tokio_util::sync::CancellationToken;
use wetside::address::PublicAddress;
use wetside::app::App;
use wetside::identity::accounts;
use wetside::identity::{Client, Person};
use wetside::web::listener;
use wetside::{board, router};

use super::chromium::Chromium;
use super::relay::Relay;
use super::tab::Tab;
use crate::access::screens;
use crate::harness::{Browser, Installation};

/// A server, ended with this value.
pub(super) struct Site {
    pub(super) app: App,
    /// The port that browsers know.
    port: u16,
    /// The port it listens at; another one where it stands behind a relay.
    pub(super) listens_at: u16,
    stop: CancellationToken,
}

impl Site {
    /// Serves an installation.
    pub(super) async fn open(installation: &Installation) -> Self {
        Self::open_with(installation, |service| service).await
    }

    /// The same with something around the service.
    pub(super) async fn open_with(
        installation: &Installation,
        around: impl FnOnce(Router) -> Router,
    ) -> Self {
        let (listener, port) = listening().await;
        Self::serve(installation, port, (listener, port), around)
    }

    /// Serves it at an address that is known already; from now on that leads here.
    pub(super) async fn behind(relay: &Relay, installation: &Installation) -> Self {
        Self::behind_with(relay, installation, |service| service).await
    }

    /// The same with something around the service.
    pub(super) async fn behind_with(
        relay: &Relay,
        installation: &Installation,
        around: impl FnOnce(Router) -> Router,
    ) -> Self {
        let site = Self::serve(installation, relay.port(), listening().await, around);
        relay.lead_to(&site);
        site
    }

    fn serve(
        installation: &Installation,
        port: u16,
        (listener, listens_at): (TcpListener, u16),
        around: impl FnOnce(Router) -> Router,
    ) -> Self {
        let app = installation.reached_at(PublicAddress::loopback(port));
        let service = around(router::service(&app).unwrap());
        let stop = CancellationToken::new();
        tokio::spawn(listener::serve(listener, service, None, stop.clone()));
        tokio::spawn(board::watch(app.clone(), stop.clone()));
        Self {
            app,
            port,
            listens_at,
            stop,
        }
    }

    /// Stops it: it takes no more connections, and ends what it sends.
    pub(super) fn stop(&self) {
        self.stop.cancel();
    }

    /// Where it is reached.
    pub(super) fn origin(&self) -> String {
        format!("http://127.0.0.1:{}", self.port)
    }

    /// A browser in which this person is logged in, as wide as a phone.
    pub(super) async fn phone(&self, chromium: &Chromium, person: Option<&Person>) -> Tab {
        let tab = chromium.browser(&self.origin()).await;
        tab.size(360, 740).await;
        tab.open("/live").await;
        if let Some(person) = person {
            self.enter(&tab, person).await;
        }
        tab
    }

    /// A browser that is a paired screen, with the display it was paired with.
    pub(super) async fn screen(&self, chromium: &Chromium, screen: &Browser) -> Tab {
        let tab = chromium.browser(&self.origin()).await;
        tab.open("/live").await;
        tab.keep(screens::COOKIE, screen.kept(screens::COOKIE).unwrap())
            .await;
        tab
    }

    /// Logs somebody in, in the place of whoever was.
    pub(super) async fn enter(&self, tab: &Tab, person: &Person) {
        let client = Client {
            address: Ipv4Addr::LOCALHOST.into(),
            agent: "tests".to_owned(),
        };
        let entered = accounts::enter(&self.app, &client, None, person.id).await;
        let session = entered.unwrap().session;
        tab.keep(self.app.address().session_cookie(), session.reveal())
            .await;
    }
}

/// A listener at a port of this machine that nobody else has.
pub(super) async fn listening() -> (TcpListener, u16) {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await.unwrap();
    let port = listener.local_addr().unwrap().port();
    (listener, port)
}

impl Drop for Site {
    fn drop(&mut self) {
        self.stop();
    }
}
