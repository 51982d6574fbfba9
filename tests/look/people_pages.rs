//! Log-in, links, account, members, tokens, rooms: invented people.

use askama::Template;
use wetside::identity::views::{
    AccountPage, JoinForm, JoinPage, LinkFor, LogInForm, LogInPage, OneTimeLinkPage, ResetPage,
    RoleShown, SessionShown, SetUpForm, SetUpPage, SpentLinkPage, TokenForm, TokenMadePage,
    TokenRow, TokensPage,
};
use wetside::members::views::{
    Access, InvitationRow, InviteForm, MemberPage, MemberRow, MembersPage, RoleForm,
};
use wetside::rooms::views::{RoomShown, RoomsPage};
use wetside::web::fields::{Choice, Problems};
use wetside::web::shell::{Place, Shell};

use super::bench_pages::moment;
use super::{Page, outside, roomless};

pub(crate) const PAGES: &[Page] = &[
    ("log-in", log_in),
    ("log-in-wrong", log_in_wrong),
    ("set-up", set_up),
    ("join", join),
    ("join-logged-in", join_logged_in),
    ("reset", reset),
    ("spent-link", spent_link),
    ("account", account),
    ("rooms", rooms),
    ("rooms-none", rooms_none),
    ("members", members),
    ("member", member),
    ("link-join", link_join),
    ("link-reset-spent", link_reset_spent),
    ("tokens", tokens),
    ("tokens-none", tokens_none),
    ("token-made", token_made),
];

fn log_in(shell: Shell) -> String {
    let page = LogInPage {
        shell: outside(shell),
        form: LogInForm::default(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn log_in_wrong(shell: Shell) -> String {
    let page = LogInPage {
        shell: outside(shell),
        form: LogInForm {
            log_in_name: "ines".to_owned(),
            ..LogInForm::default()
        },
        problems: Problems::one(
            "log_in_name",
            "Log-in name and password do not fit, or there were too many tries. Check both, or wait a while.",
        ),
    };
    page.render().unwrap()
}

fn set_up(shell: Shell) -> String {
    let page = SetUpPage {
        shell: outside(shell),
        form: SetUpForm {
            zone: "Europe/Berlin".to_owned(),
            units: "metric".to_owned(),
            ..SetUpForm::default()
        },
        problems: Problems::none(),
        zones: vec![
            Choice::new("America/St_Johns", "America/St_Johns"),
            Choice::new("Europe/Berlin", "Europe/Berlin"),
        ],
    };
    page.render().unwrap()
}

fn join_page(shell: Shell, as_person: Option<&str>) -> String {
    let page = JoinPage {
        shell,
        room_name: "North Quay Darkroom".to_owned(),
        role: RoleShown::Trained,
        as_person: as_person.map(str::to_owned),
        form: JoinForm::default(),
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn join(shell: Shell) -> String {
    join_page(outside(shell), None)
}

fn join_logged_in(shell: Shell) -> String {
    join_page(roomless(shell), Some("Ines Vatry"))
}

fn reset(shell: Shell) -> String {
    let page = ResetPage {
        shell: outside(shell),
        name: "Mirea Dunst".to_owned(),
        log_in_name: "mirea".to_owned(),
        problems: Problems::one("password", "Enter at least 10 characters."),
    };
    page.render().unwrap()
}

fn spent_link(shell: Shell) -> String {
    SpentLinkPage {
        shell: outside(shell),
    }
    .render()
    .unwrap()
}

fn account(shell: Shell) -> String {
    let session = |id: &str, agent: &str, is_this| SessionShown {
        id: id.to_owned(),
        agent: agent.to_owned(),
        since: moment("Mon 2 Nov, 18:04"),
        last_seen: moment("17:02"),
        is_this,
    };
    let page = AccountPage {
        shell: roomless(shell),
        name: "Ines Vatry".to_owned(),
        typed_name: "Ines Vatry".to_owned(),
        seen_until: "1".to_owned(),
        log_in_name: "ines".to_owned(),
        problems: Problems::none(),
        sessions: vec![session("1", "A browser on a phone", true), session("2", "A browser on a desk", false)],
        done_by_stewards: vec!["Tomasz Orlen made a link for a new password on Wed 25 Nov, 20:11. If you did not ask for it, speak to the other stewards.".to_owned()],
        rooms: vec![Choice::new("north-quay", "North Quay Darkroom")],
    };
    page.render().unwrap()
}

fn rooms(shell: Shell) -> String {
    let room = |slug: &str, name: &str, role, is_closed| RoomShown {
        slug: slug.to_owned(),
        name: name.to_owned(),
        role,
        is_closed,
        is_suspended: false,
    };
    let page = RoomsPage {
        shell: roomless(shell),
        rooms: vec![
            room(
                "north-quay",
                "North Quay Darkroom",
                RoleShown::Steward,
                false,
            ),
            room(
                "mill-lane",
                "Mill Lane Photo Circle",
                RoleShown::Member,
                false,
            ),
            room("old-works", "Old Works", RoleShown::Treasurer, true),
        ],
    };
    page.render().unwrap()
}

fn rooms_none(shell: Shell) -> String {
    let page = RoomsPage {
        shell: roomless(shell),
        rooms: Vec::new(),
    };
    page.render().unwrap()
}

fn members(shell: Shell) -> String {
    let row = |number, name: &str, role, access| MemberRow {
        id: format!("m{number}"),
        number,
        name: name.to_owned(),
        role,
        access,
    };
    let page = MembersPage {
        shell: Shell {
            place: Some(Place::Members),
            ..shell
        },
        members: vec![
            row(1, "Ines Vatry", RoleShown::Steward, Access::Active),
            row(2, "Tomasz Orlen", RoleShown::Trained, Access::Active),
            row(3, "Mirea Dunst", RoleShown::Member, Access::Suspended),
            row(
                4,
                "Pell Ashgrove-Okonta",
                RoleShown::Treasurer,
                Access::Ended,
            ),
        ],
        invitations: vec![InvitationRow {
            id: "i1".to_owned(),
            link_for: LinkFor::Joining(RoleShown::Member),
            made_by: "Ines Vatry".to_owned(),
            expires: moment("Fri 27 Nov, 17:02"),
        }],
        next: None,
        may_manage: true,
        form: InviteForm {
            key: "k".to_owned(),
            role: "member".to_owned(),
        },
        problems: Problems::none(),
    };
    page.render().unwrap()
}

fn member(shell: Shell) -> String {
    let page = MemberPage {
        shell: Shell {
            place: Some(Place::Members),
            ..shell
        },
        id: "m3".to_owned(),
        number: 3,
        name: "Mirea Dunst".to_owned(),
        role: RoleShown::Member,
        access: Access::Active,
        joined: moment("Mon 2 Feb 2026"),
        form: RoleForm {
            key: "k".to_owned(),
            role: "member".to_owned(),
        },
        problems: Problems::none(),
        may_manage: true,
        has_pin: true,
        reset_refusal: None,
    };
    page.render().unwrap()
}

fn link_join(shell: Shell) -> String {
    let page = OneTimeLinkPage {
        shell,
        link_for: LinkFor::Joining(RoleShown::Member),
        url: Some(
            "http:/127.0.0.1:8080/join/2f4c9d0e7a61b8533c2f4c9d0e7a61b8533c2f4c9d0e7a61b8"
                .to_owned(),
        ),
        expires: moment("Fri 27 Nov, 17:02"),
    };
    page.render().unwrap()
}

fn link_reset_spent(shell: Shell) -> String {
    let page = OneTimeLinkPage {
        shell,
        link_for: LinkFor::Password("Mirea Dunst".to_owned()),
        url: None,
        expires: moment("Fri 27 Nov, 17:02"),
    };
    page.render().unwrap()
}

fn tokens_page(shell: Shell, tokens: Vec<TokenRow>) -> String {
    let page = TokensPage {
        shell: Shell {
            place: Some(Place::Tokens),
            ..shell
        },
        tokens,
        form: TokenForm {
            name: String::new(),
            scopes: vec!["read".to_owned()],
            days: "90".to_owned(),
        },
        problems: Problems::none(),
        scopes: vec![
            Choice::new("read", "Read the board and the book"),
            Choice::new("note", "Note sheets"),
        ],
    };
    page.render().unwrap()
}

fn tokens(shell: Shell) -> String {
    let token = |id: &str, name: &str, has_ended| TokenRow {
        id: id.to_owned(),
        name: name.to_owned(),
        scopes: "Read the board and the book".to_owned(),
        made: moment("Mon 2 Nov"),
        expires: moment("Sun 31 Jan 2027"),
        last_used: None,
        has_ended,
    };
    tokens_page(
        shell,
        vec![
            token("1", "Corridor display", false),
            token("2", "Old script", true),
        ],
    )
}

fn tokens_none(shell: Shell) -> String {
    tokens_page(shell, Vec::new())
}

fn token_made(shell: Shell) -> String {
    let page = TokenMadePage {
        shell,
        name: "Corridor display".to_owned(),
        token: Some("invented-token-2f4c9d0e7a61b8533c".to_owned()),
        expires: moment("Sun 31 Jan 2027"),
    };
    page.render().unwrap()
}
