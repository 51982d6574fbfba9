//! The room's people, as a steward sees them.

use askama::Template;
use serde::Deserialize;

use crate::identity::views::{LinkFor, RoleShown};
use crate::web::dates::Moment;
use crate::web::fields::Problems;
use crate::web::shell::Shell;

/// May a member come in?
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Access {
    /// Yes.
    Active,
    /// Not until restored.
    Suspended,
    /// Not any more.
    Ended,
}

/// One member of the list.
#[derive(Debug, Clone)]
pub struct MemberRow {
    /// The person's id, for links.
    pub id: String,
    /// The member number.
    pub number: i32,
    /// The name.
    pub name: String,
    /// The role.
    pub role: RoleShown,
    /// May they come in?
    pub access: Access,
}

/// An invitation that waits.
#[derive(Debug, Clone)]
pub struct InvitationRow {
    /// Its id, for `POST /members/invitations/{id}/revoke`.
    pub id: String,
    /// What it is for.
    pub link_for: LinkFor,
    /// Who made it.
    pub made_by: String,
    /// When it ends.
    pub expires: Moment,
}

/// An invitation as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct InviteForm {
    /// Idempotency key.
    pub key: String,
    /// The role.
    pub role: String,
}

/// The members; an invitation posts to `/members/invitations`.
#[derive(Debug, Clone, Template)]
#[template(path = "members/members.html")]
pub struct MembersPage {
    /// The frame.
    pub shell: Shell,
    /// The members by number.
    pub members: Vec<MemberRow>,
    /// The invitations that wait.
    pub invitations: Vec<InvitationRow>,
    /// Leads to further members: a query such as `?after=40`.
    pub next: Option<String>,
    /// May this reader invite and change?
    pub may_manage: bool,
    /// As typed.
    pub form: InviteForm,
    /// What to mend.
    pub problems: Problems,
}

/// A change of role as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct RoleForm {
    /// Idempotency key.
    pub key: String,
    /// The role.
    pub role: String,
}

/// One member. Posts, each with `key`: `/members/{id}/role` (`role`), `/members/{id}/suspend`,
/// `/members/{id}/restore`, `/members/{id}/reset-link`; `GET /members/{id}/end` asks first
/// (a [`crate::web::views::ConfirmPage`]).
#[derive(Debug, Clone, Template)]
#[template(path = "members/member.html")]
pub struct MemberPage {
    /// The frame.
    pub shell: Shell,
    /// The person's id.
    pub id: String,
    /// The member number.
    pub number: i32,
    /// The name.
    pub name: String,
    /// The role.
    pub role: RoleShown,
    /// May they come in?
    pub access: Access,
    /// When they joined.
    pub joined: Moment,
    /// As typed, or the role they have.
    pub form: RoleForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader change role and access?
    pub may_manage: bool,
    /// Has the member a PIN for the door?
    pub has_pin: bool,
    /// May a reset link be made? Else the sentence that says why not.
    pub reset_refusal: Option<String>,
}
