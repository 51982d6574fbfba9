//! Words about people, their accounts and what others did to them.

use crate::rights::Role;

/// What somebody is in a room, in the middle of a sentence.
#[must_use]
pub const fn role(role: Role) -> &'static str {
    match role {
        Role::Member => "member",
        Role::Trained => "trained member",
        Role::Steward => "steward",
        Role::Treasurer => "treasurer",
    }
}

/// That a link for one's new password was made: by whom, when, and whether it was used.
#[must_use]
pub fn reset_link_made(by: Option<&str>, at: &str, used_at: Option<&str>) -> String {
    let who = by.map_or_else(
        || "Whoever looks after the machine".to_owned(),
        str::to_owned,
    );
    let used = used_at.map_or_else(
        || "It was not used.".to_owned(),
        |used_at| format!("It was used on {used_at}."),
    );
    format!(
        "{who} made a link for a new password of yours on {at}. {used} If you did not ask for it, \
         change the password and speak to your stewards."
    )
}

/// What a token of this scope may do.
#[must_use]
pub fn scope(scope: &str) -> &'static str {
    match scope {
        "read" => "Read this room",
        "bench" => "Write what you write at the bench",
        "keep" => "Keep what you keep: bench, stock, people, book",
        _ => "Something this program knows no more",
    }
}

/// The question before somebody's access is ended.
#[must_use]
pub fn end_access_question(name: &str) -> String {
    format!("End {name}’s access to this room?")
}

/// What ending an access does.
#[must_use]
pub fn end_access_consequence(name: &str) -> String {
    format!(
        "{name} cannot enter any more, at once; tokens and open links of theirs end with it. What \
         {name} wrote stays in the book. Only a new invitation brings {name} back, under the same \
         number."
    )
}

/// The button that ends somebody's access.
#[must_use]
pub fn end_access_verb() -> String {
    "End the access".to_owned()
}

/// Who made a link, where nobody did: it came from the command line.
#[must_use]
pub fn the_machine() -> String {
    "whoever looks after the machine".to_owned()
}
