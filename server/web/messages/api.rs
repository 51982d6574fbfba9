//! What the API says that pages do not.

/// What somebody needs who asks the API without a good token.
#[must_use]
pub const fn token_needed() -> &'static str {
    "Send a token that is good now: Authorization: Bearer wetside_… Tokens are made on the page \
     of your own tokens."
}

/// What somebody needs whose token or role does not reach that far.
#[must_use]
pub const fn token_too_weak() -> &'static str {
    "This token may not do this: it takes another scope of the token or another role in the room."
}

/// A key that belongs to another request.
#[must_use]
pub const fn key_used() -> &'static str {
    "This key was used before for something else or by somebody else. Make a new key for a new \
     request."
}

/// A path of the API that leads nowhere.
#[must_use]
pub const fn no_such_route() -> &'static str {
    "The API has nothing at this path. What there is stands in /api/v1/openapi.json."
}

/// A method that a path does not take.
#[must_use]
pub const fn other_method() -> &'static str {
    "This path does not take that method. The Allow header names those it takes."
}

/// A body of another type.
#[must_use]
pub const fn send_json() -> &'static str {
    "Send JSON, with the header Content-Type: application/json."
}

/// A body that is not what its type says.
#[must_use]
pub const fn broken_json() -> &'static str {
    "This is no JSON. Mend the text and send it again."
}

/// A body above the limit.
#[must_use]
pub fn body_too_large(most_kilobytes: usize) -> String {
    format!("This is too large. Send {most_kilobytes} kB at most.")
}

/// A host that is not ours.
#[must_use]
pub const fn other_host() -> &'static str {
    "This is not the host that was asked for. Use the public address of this installation."
}
