//! The roll: who is there, to be called or printed.

use axum::extract::State;
use axum::response::Response;
use time::{Duration, OffsetDateTime};

use super::pages::{may, shell};
use super::store::{self, Presence};
use super::views::{GroupOnRoll, GuestOnRoll, NotConfirmed, RollPage, WhoIsHere};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::Result;
use crate::identity::Permit;
use crate::rights::{Arrive, ClosePresence, LookAtBoard, Role, Supervise};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::workshops as words;
use crate::workshops::{self, Group, GuestHere};

/// The roll shows for so long who did not say that they left.
const REMEMBERED: Duration = Duration::days(1);

/// The routes of this page.
pub(super) fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/present", roll)
}

/// Everything the roll stands on.
struct Ground {
    settings: Settings,
    present: Vec<Presence>,
    groups: Vec<Group>,
    guests: Vec<GuestHere>,
    gone: Vec<Presence>,
}

impl Ground {
    async fn read(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Self> {
        Ok(Self {
            settings: rooms::settings(tx).await?,
            present: store::present(tx, now).await?,
            groups: workshops::here(tx, now).await?,
            guests: workshops::guests_here(tx, now).await?,
            gone: store::not_confirmed(tx, now - REMEMBERED, now).await?,
        })
    }

    /// Guests are named to whoever is there, and to stewards.
    fn names_guests(&self, permit: &Permit<LookAtBoard>) -> bool {
        let reader = permit.person().id;
        let mut present = self.present.iter();
        permit.role() == Role::Steward || present.any(|each| each.person_id == reader)
    }

    fn group(&self, group: &Group, is_named: bool, zone: &Zone) -> GroupOnRoll {
        let guests = self.guests.iter();
        let theirs = guests.filter(|guest| is_named && guest.workshop_id == group.workshop_id);
        GroupOnRoll {
            workshop: group.workshop_id.to_string(),
            said: words::guests_of(group.count, &group.leader),
            guests: theirs.map(|guest| guest_on_roll(guest, zone)).collect(),
        }
    }
}

fn guest_on_roll(guest: &GuestHere, zone: &Zone) -> GuestOnRoll {
    GuestOnRoll {
        name: words::guest_name(guest.name.as_deref()),
        since: zone.clock(guest.signed_in_at),
    }
}

async fn roll(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
) -> Result<Response> {
    page(&roll_page(&app, &permit, &frame).await?)
}

async fn roll_page(app: &App, permit: &Permit<LookAtBoard>, frame: &Frame) -> Result<RollPage> {
    let now = app.clock().now();
    let ground = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(Ground::read(tx, now)))
        .await?;
    let zone = ground.settings.time_zone()?;
    let not_confirmed = |presence: &Presence| NotConfirmed {
        name: presence.name.clone(),
        from: zone.words(presence.arrived_at, now),
        until: zone.words(presence.ended_at.unwrap_or(presence.over_at), now),
    };
    let is_named = ground.names_guests(permit);
    let groups = ground.groups.iter();
    let people = (&ground.present[..], &ground.groups[..]);
    Ok(RollPage {
        shell: shell(permit, frame, "/present"),
        as_of: zone.on_paper(now),
        here: WhoIsHere::of(people, &ground.settings, &zone, now),
        groups: groups
            .map(|group| ground.group(group, is_named, &zone))
            .collect(),
        not_confirmed: ground.gone.iter().map(not_confirmed).collect(),
        may_arrive: may::<_, Arrive>(permit),
        may_close: may::<_, ClosePresence>(permit),
        may_supervise: may::<_, Supervise>(permit),
    })
}
