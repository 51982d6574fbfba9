//! The pages of a room's people, and of accepting an invitation.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{self, LinkMade, NewRole};
use super::store::{self, Member};
use super::views::{
    Access, InvitationRow, InviteForm, MemberPage, MemberRow, MembersPage, RoleForm,
};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::identity::links::{self, OpenLink};
use crate::identity::pins;
use crate::identity::views::{LinkFor, OneTimeLinkPage, RoleShown};
use crate::logbook::{Done, Key};
use crate::problem::{Problem, Problems};
use crate::rights::{Invite, KeepMembers, MakeResetLink, Right, Role, SeeMembers};
use crate::rooms;
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages;
use crate::web::messages::people as words;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;
use crate::web::views::ConfirmPage;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/members", members)
        .post("/rooms/{room}/members/invitations", invite)
        .post("/rooms/{room}/members/invitations/{link}/revoke", revoke)
        .get("/rooms/{room}/members/{person}", member)
        .post("/rooms/{room}/members/{person}/role", role)
        .post("/rooms/{room}/members/{person}/suspend", suspend)
        .post("/rooms/{room}/members/{person}/restore", restore)
        .get("/rooms/{room}/members/{person}/end", end_asked)
        .post("/rooms/{room}/members/{person}/end", end)
        .post("/rooms/{room}/members/{person}/reset-link", reset_link)
}

fn numbers() -> Numbers {
    Numbers::with_mark(".")
}

fn shown(role: Role) -> Result<RoleShown> {
    RoleShown::named(role.as_str())
        .ok_or_else(|| Error::fault(format!("no word for the role {}", role.as_str())))
}

fn access_of(member: &Member) -> Access {
    match (member.suspended_at, member.ended_at) {
        (_, Some(_)) => Access::Ended,
        (Some(_), None) => Access::Suspended,
        (None, None) => Access::Active,
    }
}

async fn zone_of<R: Right>(app: &App, permit: &Permit<R>) -> Result<Zone> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?
        .time_zone()
}

/// Which part of the list.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct After {
    after: i32,
}

async fn members(
    State(app): State<App>,
    permit: Permit<SeeMembers>,
    frame: Frame,
    Query(After { after }): Query<After>,
) -> Result<Response> {
    let form = InviteForm {
        key: new_key()?,
        role: Role::Member.as_str().to_owned(),
    };
    page(&members_page(&app, &permit, &frame, after, form).await?)
}

async fn members_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    after: i32,
    form: InviteForm,
) -> Result<MembersPage> {
    let (now, zone) = (app.clock().now(), zone_of(app, permit).await?);
    let (members, open) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let members = store::members(tx, after).await?;
                Ok((members, links::open_in(tx, now).await?))
            })
        })
        .await?;
    let last = members.last().map(|member| member.member_number);
    let next = last.filter(|_| members.len() >= store::PART);
    Ok(MembersPage {
        shell: frame.shell_in(permit, Some(Place::Members)),
        members: members.iter().map(row).collect::<Result<_>>()?,
        invitations: invitations(open, &zone, now)?,
        next: next.map(|number| format!("?after={number}")),
        may_manage: true,
        form,
        problems: in_words(&Problems::default(), numbers()),
    })
}

fn row(member: &Member) -> Result<MemberRow> {
    Ok(MemberRow {
        id: member.person.to_string(),
        number: member.member_number,
        name: member.name.clone(),
        role: shown(member.role)?,
        access: access_of(member),
    })
}

fn invitations(
    open: Vec<OpenLink>,
    zone: &Zone,
    now: OffsetDateTime,
) -> Result<Vec<InvitationRow>> {
    open.into_iter()
        .map(|link| {
            Ok(InvitationRow {
                id: link.id.to_string(),
                link_for: match (link.role, link.person_name) {
                    (Some(role), _) => LinkFor::Joining(shown(role)?),
                    (None, name) => LinkFor::Password(name.unwrap_or_default()),
                },
                made_by: link.made_by.unwrap_or_else(words::the_machine),
                expires: zone.words(link.expires_at.unwrap_or(now), now),
            })
        })
        .collect()
}

async fn invite(
    State(app): State<App>,
    permit: Permit<Invite>,
    frame: Frame,
    Form(form): Form<InviteForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match invite_as_typed(&app, &permit, key, &form.role).await {
        Ok((role, made)) => {
            let link_for = LinkFor::Joining(shown(role)?);
            page(&link_page(&app, &permit, &frame, link_for, made).await?)
        }
        Err(error) => {
            let problems = in_words(&to_mend(error)?, numbers());
            let again = members_page(&app, &permit, &frame, 0, form).await?;
            mend(&MembersPage { problems, ..again })
        }
    }
}

async fn invite_as_typed(
    app: &App,
    permit: &Permit<Invite>,
    key: Key,
    role: &str,
) -> Result<(Role, LinkMade)> {
    let role = Role::parse(role);
    let role = role.ok_or_else(|| Error::field("role", Problem::NotAChoice))?;
    Ok((role, actions::invite(app, permit, key, role).await?))
}

async fn link_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    link_for: LinkFor,
    made: LinkMade,
) -> Result<OneTimeLinkPage> {
    let zone = zone_of(app, permit).await?;
    Ok(OneTimeLinkPage {
        shell: frame.shell_in(permit, Some(Place::Members)),
        link_for,
        url: made.address,
        expires: zone.words(made.expires_at, app.clock().now()),
    })
}

/// A form that holds nothing but its key.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct KeyForm {
    key: String,
}

async fn revoke(
    State(app): State<App>,
    permit: Permit<Invite>,
    Path((_, link)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    actions::revoke(&app, &permit, read_key(&form.key)?, link).await?;
    let slug = &permit.membership().slug;
    Ok(see_other(&app, &format!("/rooms/{slug}/members")))
}

async fn member(
    State(app): State<App>,
    permit: Permit<SeeMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
) -> Result<Response> {
    page(&member_page(&app, &permit, &frame, person, None).await?)
}

async fn read_member<R: Right>(app: &App, permit: &Permit<R>, person: Uuid) -> Result<Member> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { store::member(tx, person).await })
        })
        .await?
        .ok_or(Error::NotFound)
}

async fn member_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    person: Uuid,
    typed: Option<RoleForm>,
) -> Result<MemberPage> {
    let member = read_member(app, permit, person).await?;
    let (zone, now) = (zone_of(app, permit).await?, app.clock().now());
    let may_reset = links::may_reset(app, permit.person().id, person).await?;
    let pin = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(pins::set_at(tx, person)))
        .await?;
    let form = match typed {
        Some(form) => form,
        None => RoleForm {
            key: new_key()?,
            role: member.role.as_str().to_owned(),
        },
    };
    Ok(MemberPage {
        shell: frame.shell_in(permit, Some(Place::Members)),
        id: person.to_string(),
        number: member.member_number,
        role: shown(member.role)?,
        access: access_of(&member),
        joined: zone.words(member.joined_at, now),
        name: member.name,
        form,
        problems: in_words(&Problems::default(), numbers()),
        may_manage: true,
        has_pin: pin.is_some(),
        reset_refusal: (!may_reset)
            .then(|| messages::problem(&Problem::ResetNotAllowed, numbers())),
    })
}

/// Where a change of a member leads: their page, or it again with what was wrong.
async fn onward<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    (person, form): (Uuid, RoleForm),
    sent: Result<Done>,
) -> Result<Response> {
    let Err(error) = sent else {
        let slug = &permit.membership().slug;
        return Ok(see_other(app, &format!("/rooms/{slug}/members/{person}")));
    };
    let problems = in_words(&to_mend(error)?, numbers());
    let again = member_page(app, permit, frame, person, Some(form)).await?;
    mend(&MemberPage { problems, ..again })
}

async fn role(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<RoleForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = match Role::parse(&form.role) {
        Some(role) => actions::change_role(&app, &permit, key, NewRole { person, role }).await,
        None => Err(Error::field("role", Problem::NotAChoice)),
    };
    // Whoever stepped down may see the members no more.
    if sent.is_ok() && person == permit.person().id {
        return Ok(see_other(&app, "/rooms"));
    }
    onward(&app, &permit, &frame, (person, form), sent).await
}

async fn suspend(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<RoleForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = actions::suspend(&app, &permit, key, person).await;
    onward(&app, &permit, &frame, (person, form), sent).await
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<RoleForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = actions::restore(&app, &permit, key, person).await;
    onward(&app, &permit, &frame, (person, form), sent).await
}

async fn end_asked(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
) -> Result<Response> {
    let member = read_member(&app, &permit, person).await?;
    let shell = frame.shell_in(&permit, Some(Place::Members));
    page(&ConfirmPage {
        question: words::end_access_question(&member.name),
        consequence: words::end_access_consequence(&member.name),
        verb: words::end_access_verb(),
        action: shell.at(&format!("/members/{person}/end")),
        back: shell.at(&format!("/members/{person}")),
        key: new_key()?,
        shell,
    })
}

async fn end(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<RoleForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = actions::end_access(&app, &permit, key, person).await;
    onward(&app, &permit, &frame, (person, form), sent).await
}

async fn reset_link(
    State(app): State<App>,
    permit: Permit<MakeResetLink>,
    frame: Frame,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<RoleForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match actions::make_reset_link(&app, &permit, key, person).await {
        Ok(made) => {
            let member = read_member(&app, &permit, person).await?;
            let link_for = LinkFor::Password(member.name);
            page(&link_page(&app, &permit, &frame, link_for, made).await?)
        }
        Err(error) => onward(&app, &permit, &frame, (person, form), Err(error)).await,
    }
}
