//! What is sent to those who follow a board, as server-sent events.
//!
//! | event | when | data |
//! |---|---|---|
//! | `change` | the book went on, or a verdict changed by itself | from, to, drawn, as of, parts |
//! | `beat` | every few seconds while the board is true | as of |
//! | `resync` | whoever follows is too far behind | to |
//! | `notices` | the person's count of unread notices is otherwise | unread |
//!
//! An event that brings the book forward has an id, which names its last entry; what only
//! the clock or the person's own affairs cause has none.

use axum::body::Bytes;
use serde::Serialize;

use super::draw::Drawn;
use super::parts::{Part, Shown};
use crate::error::Result;
use crate::web::dates::Moment;

/// After a break a browser waits so long, where no script of ours decides.
const RETRY: &str = "retry: 3000\n\n";

/// Where somebody follows a board from.
#[derive(Clone, Debug, Eq, PartialEq)]
pub(super) struct Position {
    /// The number of the last entry they were shown.
    pub(super) seq: i64,
    /// The first eight digits of its hash.
    pub(super) hash: String,
    /// When their board was drawn, where they know.
    pub(super) drawn_us: Option<i64>,
}

impl Position {
    /// Reads an event's id. One that nobody was given names no entry of any book.
    pub(super) fn read(id: &str, drawn_us: Option<i64>) -> Self {
        let parts = id.split_once('.');
        let parsed = parts.and_then(|(seq, hash)| Some((seq.parse().ok()?, hash)));
        let (seq, hash) = parsed.unwrap_or((-1, ""));
        Self {
            seq,
            hash: hash.to_owned(),
            drawn_us,
        }
    }

    /// The event's id.
    pub(super) fn id(&self) -> String {
        format!("{}.{}", self.seq, self.hash)
    }
}

#[derive(Serialize)]
struct Change<'a> {
    from: i64,
    to: i64,
    drawn: i64,
    as_of: Time<'a>,
    parts: &'a [Part],
}

#[derive(Serialize)]
struct Time<'a> {
    machine: &'a str,
    words: &'a str,
}

impl<'a> Time<'a> {
    fn of(moment: &'a Moment) -> Self {
        Self {
            machine: &moment.machine,
            words: &moment.words,
        }
    }
}

/// What brings a board of entry `from` to the one shown now.
pub(super) fn change(from: i64, shown: &Shown, drawn: &Drawn, parts: &[Part]) -> Result<Bytes> {
    let id = (shown.seq != from).then_some(shown.id.as_str());
    let change = Change {
        from,
        to: shown.seq,
        drawn: shown.drawn_us,
        as_of: Time::of(&drawn.view.as_of),
        parts,
    };
    event(id, "change", &change)
}

/// The board was true at this moment.
pub(super) fn beat(as_of: &Moment) -> Result<Bytes> {
    let as_of = Time::of(as_of);
    event(None, "beat", &serde_json::json!({ "as_of": as_of }))
}

/// What was missed is not to be had in parts: the page itself must be asked for.
pub(super) fn resync(shown: &Shown) -> Result<Bytes> {
    let to = serde_json::json!({ "to": shown.seq });
    event(Some(&shown.id), "resync", &to)
}

/// So many notices are unread.
pub(super) fn notices(unread: u32) -> Result<Bytes> {
    let unread = serde_json::json!({ "unread": unread });
    event(None, "notices", &unread)
}

/// Several, as one piece, at the beginning of a stream.
pub(super) fn opening(events: &[Bytes]) -> Bytes {
    let mut all = RETRY.as_bytes().to_vec();
    events.iter().for_each(|event| all.extend_from_slice(event));
    Bytes::from(all)
}

fn event(id: Option<&str>, name: &str, data: &impl Serialize) -> Result<Bytes> {
    let id = id.map_or_else(String::new, |id| format!("id: {id}\n"));
    // JSON has no line breaks of its own.
    let data = serde_json::to_string(data)?;
    Ok(Bytes::from(format!("{id}event: {name}\ndata: {data}\n\n")))
}
