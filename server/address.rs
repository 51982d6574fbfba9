//! The public address: the only source of links, cookie paths and allowed hosts.

use std::net::IpAddr;

/// Where people reach this installation: scheme, host and path.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct PublicAddress {
    is_secure: bool,
    authority: String,
    base: String,
}

/// Why an address is refused.
#[derive(Clone, Debug, Eq, PartialEq, thiserror::Error)]
pub enum AddressFault {
    /// Not an http or https address without query, fragment and user.
    #[error("{0:?} is no public address; write it like https://darkroom.example/wetside")]
    NotAnAddress(String),
    /// Passwords would travel in the open.
    #[error(
        "{0:?} is plain http and not this machine alone, so passwords would travel in the open. \
         Put https before the server (deploy/nginx.conf shows how) and give its https address"
    )]
    InTheOpen(String),
}

impl PublicAddress {
    /// The address of a server on this machine alone.
    #[must_use]
    pub fn loopback(port: u16) -> Self {
        Self {
            is_secure: false,
            authority: format!("127.0.0.1:{port}"),
            base: String::new(),
        }
    }

    /// Reads scheme, host and path.
    ///
    /// # Errors
    /// [`AddressFault`], a sentence for the terminal.
    pub fn parse(text: &str) -> Result<Self, AddressFault> {
        let wrong = || AddressFault::NotAnAddress(text.to_owned());
        let uri: axum::http::Uri = text.trim().parse().map_err(|_| wrong())?;
        let is_secure = match uri.scheme_str() {
            Some("https") => true,
            Some("http") => false,
            _ => return Err(wrong()),
        };
        let authority = uri.authority().ok_or_else(wrong)?;
        if authority.as_str().contains('@') || uri.query().is_some() || text.contains('#') {
            return Err(wrong());
        }
        if !is_secure && !is_loopback(authority.host()) {
            return Err(AddressFault::InTheOpen(text.to_owned()));
        }
        Ok(Self {
            is_secure,
            authority: authority.as_str().to_ascii_lowercase(),
            base: uri.path().trim_end_matches('/').to_owned(),
        })
    }

    /// What stands before every path: empty, or a path without slash at its end.
    #[must_use]
    pub fn base(&self) -> &str {
        &self.base
    }

    /// Whether it is https.
    #[must_use]
    pub fn is_secure(&self) -> bool {
        self.is_secure
    }

    /// The origin that a browser on our pages sends.
    #[must_use]
    pub fn origin(&self) -> String {
        let scheme = if self.is_secure { "https" } else { "http" };
        format!("{scheme}://{}", self.authority)
    }

    /// The whole address of a path of ours.
    #[must_use]
    pub fn absolute(&self, path: &str) -> String {
        format!("{}{}{path}", self.origin(), self.base)
    }

    /// Whether a request may name this host: the public one, or where that is
    /// this machine alone, any of this machine's own names at the same port.
    #[must_use]
    pub fn allows_host(&self, host: &str) -> bool {
        let host = host.to_ascii_lowercase();
        if host == self.authority {
            return true;
        }
        let (name, port) = split_port(&host);
        let (ours, our_port) = split_port(&self.authority);
        is_loopback(ours) && is_loopback(name) && port == our_port
    }

    /// Whether a browser's Origin header is ours.
    #[must_use]
    pub fn allows_origin(&self, origin: &str) -> bool {
        let scheme = if self.is_secure {
            "https://"
        } else {
            "http://"
        };
        origin
            .strip_prefix(scheme)
            .is_some_and(|host| self.allows_host(host))
    }

    /// The session cookie's name: bound to the host, or below a path to that path.
    #[must_use]
    pub fn session_cookie(&self) -> &'static str {
        if self.base.is_empty() {
            "__Host-session"
        } else {
            "__Secure-session"
        }
    }

    /// The path cookies are sent to.
    #[must_use]
    pub fn cookie_path(&self) -> &str {
        if self.base.is_empty() {
            "/"
        } else {
            &self.base
        }
    }
}

fn split_port(authority: &str) -> (&str, Option<&str>) {
    match authority.rsplit_once(':') {
        Some((name, port)) if port.bytes().all(|byte| byte.is_ascii_digit()) => (name, Some(port)),
        _ => (authority, None),
    }
}

fn is_loopback(host: &str) -> bool {
    let bare = host.trim_start_matches('[').trim_end_matches(']');
    bare == "localhost"
        || bare
            .parse::<IpAddr>()
            .is_ok_and(|address| address.is_loopback())
}
