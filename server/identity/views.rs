//! Log-in, one-time links, the account.

use askama::Template;
use askama::filters::HtmlSafe;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A role, printed as the word people use.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Template)]
#[template(path = "identity/role.html")]
#[expect(missing_docs, reason = "each is the role of that name")]
pub enum RoleShown {
    Member,
    Trained,
    Steward,
    Treasurer,
}

impl HtmlSafe for RoleShown {}

impl RoleShown {
    /// The role of the database's word.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "member" => Some(Self::Member),
            "trained" => Some(Self::Trained),
            "steward" => Some(Self::Steward),
            "treasurer" => Some(Self::Treasurer),
            _ => None,
        }
    }
}

/// A log-in as typed; the password is never kept.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct LogInForm {
    /// The log-in name.
    pub log_in_name: String,
    /// The password.
    pub password: String,
    /// Where to go afterwards, a path below the address; may be empty.
    pub back: String,
}

/// The log-in page.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/log_in.html")]
pub struct LogInPage {
    /// The frame, without room.
    pub shell: Shell,
    /// As typed.
    pub form: LogInForm,
    /// What to mend.
    pub problems: Problems,
}

/// The first day of a room, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct SetUpForm {
    /// The room's name.
    pub room_name: String,
    /// Its IANA zone.
    pub zone: String,
    /// Its ISO 4217 currency.
    pub currency: String,
    /// `metric` or `inch`.
    pub units: String,
    /// The steward's name.
    pub name: String,
    /// The steward's log-in name.
    pub log_in_name: String,
    /// The steward's password.
    pub password: String,
}

/// Sets up the first room; posts to its own address.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/set_up.html")]
pub struct SetUpPage {
    /// The frame; `here` is the path of the link.
    pub shell: Shell,
    /// As typed.
    pub form: SetUpForm,
    /// What to mend.
    pub problems: Problems,
    /// The zones to choose from.
    pub zones: Vec<Choice>,
}

/// A new member, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct JoinForm {
    /// The person's name.
    pub name: String,
    /// The log-in name.
    pub log_in_name: String,
    /// The password.
    pub password: String,
}

/// Joins a room by an invitation; posts to its own address.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/join.html")]
pub struct JoinPage {
    /// The frame; `here` is the path of the link.
    pub shell: Shell,
    /// The room that invites.
    pub room_name: String,
    /// The role one joins with.
    pub role: RoleShown,
    /// Who is logged in and joins with one tap; none: a new account is made.
    pub as_person: Option<String>,
    /// As typed.
    pub form: JoinForm,
    /// What to mend.
    pub problems: Problems,
}

/// A new password by a reset link; posts to its own address (`password`).
#[derive(Debug, Clone, Template)]
#[template(path = "identity/reset.html")]
pub struct ResetPage {
    /// The frame; `here` is the path of the link.
    pub shell: Shell,
    /// Whose password.
    pub name: String,
    /// Their log-in name, for the password manager.
    pub log_in_name: String,
    /// What to mend.
    pub problems: Problems,
}

/// A one-time link that is used up, ended or was never made.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/spent_link.html")]
pub struct SpentLinkPage {
    /// The frame.
    pub shell: Shell,
}

/// One browser in which the person is logged in.
#[derive(Debug, Clone)]
pub struct SessionShown {
    /// Its id, for `POST /account/sessions/{id}/end`.
    pub id: String,
    /// The browser as it names itself.
    pub agent: String,
    /// Since when.
    pub since: Moment,
    /// Last seen.
    pub last_seen: Moment,
    /// Is it the one that asks?
    pub is_this: bool,
}

/// The person's own account. Forms: `POST /account/name` (`name`), `POST /account/seen`
/// (`until`), `POST /account/password` (`current_password`,
/// `new_password`), `POST /account/sessions/{id}/end`, `POST /account/sessions/end-all`.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/account.html")]
pub struct AccountPage {
    /// The frame.
    pub shell: Shell,
    /// The person's name.
    pub name: String,
    /// The name as typed.
    pub typed_name: String,
    /// The log-in name.
    pub log_in_name: String,
    /// What to mend in either form.
    pub problems: Problems,
    /// Where the person is logged in.
    pub sessions: Vec<SessionShown>,
    /// What stewards did to this account, one sentence each, newest first.
    pub done_by_stewards: Vec<String>,
    /// Up to when that is, for `POST /account/seen`.
    pub seen_until: String,
    /// The person's rooms, each with its token page: slug and name.
    pub rooms: Vec<Choice>,
}

/// What a one-time link is for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LinkFor {
    /// To join with that role.
    Joining(RoleShown),
    /// A new password for that person.
    Password(String),
}

/// A link shown once, right after it was made.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/one_time_link.html")]
pub struct OneTimeLinkPage {
    /// The frame.
    pub shell: Shell,
    /// What it is for.
    pub link_for: LinkFor,
    /// The whole address; none when it was shown before and cannot be shown again.
    pub url: Option<String>,
    /// When it ends.
    pub expires: Moment,
}

/// The scopes, name and life of a token as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct TokenForm {
    /// What it is for.
    pub name: String,
    /// What it may do.
    pub scopes: Vec<String>,
    /// Days until it ends.
    pub days: String,
}

/// One token of the person in this room.
#[derive(Debug, Clone)]
pub struct TokenRow {
    /// Its id, for `POST /tokens/{id}/revoke`.
    pub id: String,
    /// What it is for.
    pub name: String,
    /// What it may do, in words.
    pub scopes: String,
    /// When it was made.
    pub made: Moment,
    /// When it ends.
    pub expires: Moment,
    /// When it was last used.
    pub last_used: Option<Moment>,
    /// Was it revoked, or has it ended?
    pub has_ended: bool,
}

/// The person's tokens in a room; posts to `/tokens`.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/tokens.html")]
pub struct TokensPage {
    /// The frame.
    pub shell: Shell,
    /// The tokens.
    pub tokens: Vec<TokenRow>,
    /// As typed.
    pub form: TokenForm,
    /// What to mend.
    pub problems: Problems,
    /// The scopes this person may give.
    pub scopes: Vec<Choice>,
}

/// A token shown once.
#[derive(Debug, Clone, Template)]
#[template(path = "identity/token_made.html")]
pub struct TokenMadePage {
    /// The frame.
    pub shell: Shell,
    /// What it is for.
    pub name: String,
    /// The token; none when it was shown before.
    pub token: Option<String>,
    /// When it ends.
    pub expires: Moment,
}
