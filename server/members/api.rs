//! Members as JSON. Invitations and links for new passwords are secrets, made
//! and shown on pages alone.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewRole};
use super::store::{self, Member};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::error::{Error, Result};
use crate::identity::links::OpenLink;
use crate::rights::{KeepMembers, Role, SeeMembers};

const MEMBERS: &str = "/rooms/{room}/members";
const MEMBER: &str = "/rooms/{room}/members/{id}";
const ROLE: &str = "/rooms/{room}/members/{id}/role";
const SUSPEND: &str = "/rooms/{room}/members/{id}/suspend";
const RESTORE: &str = "/rooms/{room}/members/{id}/restore";
const END: &str = "/rooms/{room}/members/{id}/end-access";
const LINKS: &str = "/rooms/{room}/open-links";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(MEMBERS, "Members by number, former ones too.", list),
        Route::one(MEMBER, "One member.", one),
        Route::change(ROLE, "Change a member's role.", change_role),
        Route::act(SUSPEND, "Suspend a membership.", suspend),
        Route::act(RESTORE, "Restore a suspended membership.", restore),
        Route::act(END, "End a member's access to the room.", end_access),
        Route::list(LINKS, "Links that are open, without their secrets.", links),
    ]
}

/// A member, or a former one.
#[derive(Debug, Serialize, ToSchema)]
pub struct MemberOut {
    /// The person.
    pub id: Uuid,
    /// The name others see.
    pub name: String,
    /// Their number in this room.
    pub member_number: i32,
    /// What they are.
    pub role: Role,
    /// Since when.
    #[schema(format = DateTime)]
    pub joined_at: String,
    /// Since when they may not enter.
    #[schema(format = DateTime)]
    pub suspended_at: Option<String>,
    /// When their access ended.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
}

impl MemberOut {
    fn of(member: Member) -> Result<Self> {
        Ok(Self {
            id: member.person,
            name: member.name,
            member_number: member.member_number,
            role: member.role,
            joined_at: moment_text(member.joined_at)?,
            suspended_at: member.suspended_at.map(moment_text).transpose()?,
            ended_at: member.ended_at.map(moment_text).transpose()?,
        })
    }
}

async fn list(by: By<SeeMembers>, paging: Paging) -> Result<Page<MemberOut>> {
    let after = i32::try_from(paging.after_seq()?.unwrap_or(0)).unwrap_or(i32::MAX);
    let (members, _) = actions::see(&by.app, &by.permit, after).await?;
    let page = paging.first_of(members, |member| member.member_number.to_string());
    page.map(MemberOut::of)
}

async fn one(by: By<SeeMembers>, id: Uuid) -> Result<MemberOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::member(tx, id)));
    MemberOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// A role to give.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RoleIn {
    /// What the member becomes.
    pub role: Role,
}

impl Input for RoleIn {}

async fn change_role(by: Writing<KeepMembers>, id: Uuid, new: RoleIn) -> Result<Made> {
    let new = NewRole {
        person: id,
        role: new.role,
    };
    let done = actions::change_role(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "person", "members")
}

/// Nothing further is asked.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NothingIn {}

impl Input for NothingIn {}

async fn suspend(by: Writing<KeepMembers>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::suspend(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "person", "members")
}

async fn restore(by: Writing<KeepMembers>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::restore(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "person", "members")
}

async fn end_access(by: Writing<KeepMembers>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::end_access(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "person", "members")
}

/// A link that nobody has used yet.
#[derive(Debug, Serialize, ToSchema)]
pub struct OpenLinkOut {
    /// Which.
    pub id: Uuid,
    /// Whether it is for a new password rather than an invitation.
    pub is_reset: bool,
    /// What its user becomes.
    pub role: Option<Role>,
    /// Whose password it changes.
    pub person_name: Option<String>,
    /// Who made it; nobody for the machine.
    pub made_by: Option<String>,
    /// When it was made.
    #[schema(format = DateTime)]
    pub made_at: String,
    /// When it ends.
    #[schema(format = DateTime)]
    pub expires_at: Option<String>,
}

impl OpenLinkOut {
    fn of(link: OpenLink) -> Result<Self> {
        Ok(Self {
            id: link.id,
            is_reset: link.is_reset,
            role: link.role,
            person_name: link.person_name,
            made_by: link.made_by,
            made_at: moment_text(link.made_at)?,
            expires_at: link.expires_at.map(moment_text).transpose()?,
        })
    }
}

async fn links(by: By<SeeMembers>, paging: Paging) -> Result<Page<OpenLinkOut>> {
    let (_, links) = actions::see(&by.app, &by.permit, i32::MAX).await?;
    let page = paging.cut(links, |link| link.id.to_string())?;
    page.map(OpenLinkOut::of)
}
