//! Where a request comes from: the peer's address, or what proxies we trust say.

use std::convert::Infallible;
use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::str::FromStr;

use axum::extract::{ConnectInfo, FromRequestParts};
use axum::http::request::Parts;
use axum::http::{HeaderMap, HeaderName, header::USER_AGENT};
use ipnet::IpNet;

use crate::app::App;

const FORWARDED_FOR: HeaderName = HeaderName::from_static("x-forwarded-for");
/// Characters kept of what a browser says it is.
const AGENT: usize = 200;

/// Proxies whose word about an address is believed.
#[derive(Clone, Debug, Default, Eq, PartialEq)]
pub struct TrustedProxies(Vec<IpNet>);

/// A list of proxies that cannot be read.
#[derive(Clone, Debug, Eq, PartialEq, thiserror::Error)]
#[error(
    "{0:?} is no address or network; write them like 10.0.0.1, 10.1.0.0/16 or fd00::/8, with commas"
)]
pub struct NotANetwork(String);

impl FromStr for TrustedProxies {
    type Err = NotANetwork;

    /// Reads addresses and networks with commas between.
    fn from_str(text: &str) -> Result<Self, NotANetwork> {
        text.split(',')
            .map(str::trim)
            .filter(|part| !part.is_empty())
            .map(|part| {
                part.parse::<IpNet>()
                    .or_else(|_| part.parse::<IpAddr>().map(IpNet::from))
                    .map_err(|_| NotANetwork(part.to_owned()))
            })
            .collect::<Result<_, _>>()
            .map(Self)
    }
}

impl TrustedProxies {
    fn contain(&self, address: IpAddr) -> bool {
        self.0.iter().any(|network| network.contains(&address))
    }

    /// The address a request comes from: walked from the peer leftwards through
    /// `X-Forwarded-For` for as long as the one who added the next is trusted.
    #[must_use]
    pub fn client(&self, peer: IpAddr, headers: &HeaderMap) -> IpAddr {
        let mut client = peer.to_canonical();
        let lines: Vec<&str> = headers
            .get_all(FORWARDED_FOR)
            .iter()
            .map(|line| line.to_str().unwrap_or(""))
            .collect();
        for said in lines.iter().rev().flat_map(|line| line.rsplit(',')) {
            if !self.contain(client) {
                break;
            }
            match address(said.trim()) {
                Some(next) => client = next.to_canonical(),
                None => break,
            }
        }
        client
    }
}

/// An address, with or without a port.
fn address(text: &str) -> Option<IpAddr> {
    let bare = text.trim_start_matches('[').trim_end_matches(']');
    bare.parse()
        .ok()
        .or_else(|| text.parse::<SocketAddr>().ok().map(|socket| socket.ip()))
}

/// Who asks, as far as the network knows.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Client {
    /// The address.
    pub address: IpAddr,
    /// What the browser says it is, cut short.
    pub agent: String,
}

impl Default for Client {
    /// A request from this machine itself.
    fn default() -> Self {
        Self {
            address: IpAddr::V4(Ipv4Addr::LOCALHOST),
            agent: String::new(),
        }
    }
}

impl Client {
    /// What one subscriber has: an IPv4 address, or a /64 of IPv6.
    #[must_use]
    pub fn network(&self) -> [u8; 16] {
        match self.address.to_canonical() {
            IpAddr::V4(address) => address.to_ipv6_mapped().octets(),
            IpAddr::V6(address) => {
                let mut octets = address.octets();
                octets[8..].fill(0);
                octets
            }
        }
    }
}

impl FromRequestParts<App> for Client {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Infallible> {
        let peer = parts
            .extensions
            .get::<ConnectInfo<SocketAddr>>()
            .map_or(IpAddr::V4(Ipv4Addr::LOCALHOST), |peer| peer.0.ip());
        let agent = parts.headers.get(USER_AGENT);
        Ok(Self {
            address: app.entrance().proxies.client(peer, &parts.headers),
            agent: agent
                .and_then(|agent| agent.to_str().ok())
                .unwrap_or_default()
                .chars()
                .take(AGENT)
                .collect(),
        })
    }
}

#[cfg(test)]
mod tests {
    use std::net::IpAddr;

    use axum::http::{HeaderMap, HeaderValue};

    use super::{Client, FORWARDED_FOR, TrustedProxies};

    fn walk(trusted: &str, peer: &str, lines: &[&str]) -> IpAddr {
        let mut headers = HeaderMap::new();
        for line in lines {
            headers.append(FORWARDED_FOR, HeaderValue::from_str(line).unwrap());
        }
        let trusted: TrustedProxies = trusted.parse().unwrap();
        trusted.client(peer.parse().unwrap(), &headers)
    }

    #[test]
    fn only_trusted_proxies_are_believed() {
        let cases = [
            // Nobody is trusted: the header is whatever the client likes.
            ("", "203.0.113.9", vec!["198.51.100.1"], "203.0.113.9"),
            ("10.0.0.1", "10.0.0.1", vec!["198.51.100.1"], "198.51.100.1"),
            // What the client put in front does not count.
            (
                "10.0.0.1",
                "10.0.0.1",
                vec!["192.0.2.7, 198.51.100.1"],
                "198.51.100.1",
            ),
            (
                "10.0.0.0/8",
                "10.0.0.1",
                vec!["192.0.2.7, 198.51.100.1, 10.2.2.2"],
                "198.51.100.1",
            ),
            // Two header lines are one list.
            (
                "10.0.0.1",
                "10.0.0.1",
                vec!["192.0.2.7", "198.51.100.1"],
                "198.51.100.1",
            ),
            // All trusted: the first of them.
            ("10.0.0.0/8", "10.0.0.1", vec!["10.9.9.9"], "10.9.9.9"),
            // What is no address ends the walk.
            ("10.0.0.1", "10.0.0.1", vec!["unknown"], "10.0.0.1"),
            ("::1", "::1", vec!["[2001:db8::5]:4711"], "2001:db8::5"),
            (
                "10.0.0.1",
                "::ffff:10.0.0.1",
                vec!["198.51.100.1:99"],
                "198.51.100.1",
            ),
        ];
        for (trusted, peer, lines, wanted) in cases {
            assert_eq!(walk(trusted, peer, &lines).to_string(), wanted, "{lines:?}");
        }
    }

    #[test]
    fn one_subscriber_has_one_network() {
        let network = |address: &str| {
            let client = Client {
                address: address.parse().unwrap(),
                agent: String::new(),
            };
            client.network()
        };
        assert_eq!(network("2001:db8:1:2::a"), network("2001:db8:1:2:ffff::b"));
        assert_ne!(network("2001:db8:1:2::a"), network("2001:db8:1:3::a"));
        assert_ne!(network("198.51.100.1"), network("198.51.100.2"));
    }
}
