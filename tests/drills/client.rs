//! The least client there is: it shares the processors with what it measures.

use std::io::{Error, ErrorKind, Result};
use std::net::Ipv4Addr;

use data_encoding::BASE64URL_NOPAD;
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::TcpStream;
use wetside::address::PublicAddress;
use wetside::logbook::Key;

use super::world::Writer;

/// An answer of the server.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) status: u16,
    /// Where it leads, for a redirect.
    pub(crate) location: Option<String>,
}

/// One connection, opened again after a failure.
#[derive(Debug)]
pub(crate) struct Client {
    port: u16,
    stream: Option<TcpStream>,
}

impl Client {
    pub(crate) fn new(port: u16) -> Self {
        Self { port, stream: None }
    }

    pub(crate) async fn get(&mut self, path: &str) -> Result<Answer> {
        self.send(&request(self.port, path, None)).await
    }

    /// Sends the form to note one sheet.
    pub(crate) async fn note(&mut self, writer: &Writer, key: &Key) -> Result<Answer> {
        let Writer {
            session,
            slug,
            line,
            paper_class,
            sheet_size,
            ..
        } = writer;
        let key = BASE64URL_NOPAD.encode(key);
        let body = format!(
            "key={key}&line={line}&paper_class={paper_class}&sheet_size={sheet_size}&sheets=1&when=now"
        );
        self.post(
            &format!("/rooms/{slug}/sheets"),
            &cookie(self.port, session),
            &body,
        )
        .await
    }

    /// Sends a form; `cookie` is a line of the head, or nothing.
    pub(crate) async fn post(&mut self, path: &str, cookie: &str, body: &str) -> Result<Answer> {
        let (port, length) = (self.port, body.len());
        self.send(&format!(
            "POST {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n{cookie}\
             Sec-Fetch-Site: same-origin\r\n\
             Content-Type: application/x-www-form-urlencoded\r\nContent-Length: {length}\r\n\r\n{body}"
        ))
        .await
    }

    async fn send(&mut self, request: &str) -> Result<Answer> {
        let mut stream = match self.stream.take() {
            Some(stream) => stream,
            None => {
                let stream = TcpStream::connect((Ipv4Addr::LOCALHOST, self.port)).await?;
                stream.set_nodelay(true)?;
                stream
            }
        };
        stream.write_all(request.as_bytes()).await?;
        let (answer, stays) = read(&mut stream).await?;
        self.stream = stays.then_some(stream);
        Ok(answer)
    }
}

/// The line of a request's head that says who is logged in.
pub(crate) fn cookie(port: u16, session: &str) -> String {
    let name = PublicAddress::loopback(port).session_cookie();
    format!("Cookie: {name}={session}\r\n")
}

/// A request for a page, of whoever is logged in with this session.
pub(crate) fn request(port: u16, path: &str, session: Option<&str>) -> String {
    let cookie = session.map_or_else(String::new, |session| cookie(port, session));
    format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n{cookie}\r\n")
}

/// Reads one answer; also whether the connection may be used again.
async fn read(stream: &mut TcpStream) -> Result<(Answer, bool)> {
    let mut got = Vec::with_capacity(2_048);
    let end = loop {
        if let Some(end) = got.windows(4).position(|four| four == b"\r\n\r\n") {
            break end + 4;
        }
        if stream.read_buf(&mut got).await? == 0 {
            return Err(ErrorKind::UnexpectedEof.into());
        }
    };
    let head = String::from_utf8_lossy(&got[..end]).into_owned();
    let field = |name: &str| {
        head.lines().find_map(|line| {
            let (found, value) = line.split_once(':')?;
            found
                .eq_ignore_ascii_case(name)
                .then(|| value.trim().to_owned())
        })
    };
    let status = head.get(9..12).and_then(|status| status.parse().ok());
    let answer = Answer {
        status: status.ok_or_else(|| Error::from(ErrorKind::InvalidData))?,
        location: field("location"),
    };
    let Some(length) = field("content-length").and_then(|length| length.parse::<usize>().ok())
    else {
        return Ok((answer, false));
    };
    while got.len() < end + length {
        if stream.read_buf(&mut got).await? == 0 {
            return Err(ErrorKind::UnexpectedEof.into());
        }
    }
    Ok((answer, field("connection").is_none()))
}
