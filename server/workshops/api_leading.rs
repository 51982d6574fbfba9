//! What whoever leads a workshop does, as JSON.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::cautions::cautions;
use super::guests::{are_named_to, names};
use super::input;
use super::leading::{self, GuestsOut, NewGuests, Opening};
use super::store::{self, Guest};
use crate::api::{By, Input, Made, Route, Writing, moment_text};
use crate::arrivals;
use crate::error::{Error, Result};
use crate::members::api::NothingIn;
use crate::rights::{LeadWorkshop, SeeWorkshops};

const CAUTIONS: &str = "/rooms/{room}/workshop-cautions";
const OPEN: &str = "/rooms/{room}/workshops/{id}/open";
const GUESTS: &str = "/rooms/{room}/workshops/{id}/guests";
const SIGN_OUT: &str = "/rooms/{room}/workshops/{id}/sign-out";
const TAKE_OVER: &str = "/rooms/{room}/workshops/{id}/take-over";
const END: &str = "/rooms/{room}/workshops/{id}/end";

/// The routes.
pub(super) fn api() -> Vec<Route> {
    vec![
        Route::read(
            CAUTIONS,
            "What is to be read to a group now, before a workshop is opened.",
            to_read,
        ),
        Route::act(
            OPEN,
            "Open a workshop on its day, once the cautions were read to the group.",
            open,
        ),
        Route::one(
            GUESTS,
            "The guests of a workshop, in the order they came. Their names are shown to whoever \
             leads it, to stewards, and while it goes on to those who are in the room.",
            guests_of,
        ),
        Route::act(GUESTS, "Sign guests in, all of them or nobody.", sign_in),
        Route::act(SIGN_OUT, "Sign guests out.", sign_out),
        Route::act(
            TAKE_OVER,
            "Lead a workshop that somebody else led.",
            take_over,
        ),
        Route::act(
            END,
            "End a workshop: whoever is there still is signed out.",
            end,
        ),
    ]
}

/// What is to be read to a group.
#[derive(Debug, Serialize, ToSchema)]
pub struct CautionsOut {
    /// Names exactly this; whoever opens a workshop says it back.
    pub read: String,
    /// Of what stands in the trays.
    pub in_trays: Vec<String>,
    /// Of the concentrates of products in use that are in no tray.
    pub concentrates: Vec<String>,
    /// The topics that whoever comes in must know.
    pub topics: Vec<TopicToReadOut>,
}

/// A topic to read out.
#[derive(Debug, Serialize, ToSchema)]
pub struct TopicToReadOut {
    /// Which.
    pub id: Uuid,
    /// Its text's version.
    pub version: i32,
    /// Its title.
    pub title: String,
    /// Its text.
    pub body: String,
}

async fn to_read(by: By<SeeWorkshops>) -> Result<CautionsOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), |tx| Box::pin(cautions(tx)));
    let found = found.await?;
    let topics = found.topics.into_iter().map(|topic| TopicToReadOut {
        id: topic.id,
        version: topic.version,
        title: topic.title,
        body: topic.body,
    });
    Ok(CautionsOut {
        read: found.read.digest()?,
        in_trays: found.in_trays,
        concentrates: found.concentrates,
        topics: topics.collect(),
    })
}

/// That the cautions were read to the group.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OpeningIn {
    /// What was read, as the list of cautions names it.
    pub read: String,
}

impl Input for OpeningIn {}

async fn open(by: Writing<LeadWorkshop>, id: Uuid, opening: OpeningIn) -> Result<Made> {
    let opening = Opening {
        opened_workshop_id: id,
        read: opening.read,
    };
    let done = leading::open(&by.app, &by.permit, by.key, opening).await?;
    by.made(&done, "workshop", "workshops")
}

/// The guests of a workshop.
#[derive(Debug, Serialize, ToSchema)]
pub struct GuestsOfOut {
    /// Each of them.
    pub guests: Vec<GuestOut>,
}

/// A guest.
#[derive(Debug, Serialize, ToSchema)]
pub struct GuestOut {
    /// Which.
    pub id: Uuid,
    /// Their name, where it is shown and was not erased.
    pub name: Option<String>,
    /// Since when.
    #[schema(format = DateTime)]
    pub signed_in_at: String,
    /// When they left.
    #[schema(format = DateTime)]
    pub left_at: Option<String>,
    /// Whether they were signed out.
    pub is_confirmed: bool,
}

impl GuestOut {
    fn of(guest: &Guest, name: Option<&String>) -> Result<Self> {
        Ok(Self {
            id: guest.id,
            name: name.cloned(),
            signed_in_at: moment_text(guest.signed_in_at)?,
            left_at: guest.left_at.map(moment_text).transpose()?,
            is_confirmed: guest.is_confirmed,
        })
    }
}

async fn guests_of(by: By<SeeWorkshops>, id: Uuid) -> Result<GuestsOfOut> {
    let now = by.app.clock().now();
    let reader = (by.permit.person().id, by.permit.role());
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            let workshop = store::workshop(tx, id).await?.ok_or(Error::NotFound)?;
            let present = arrivals::present(tx, now).await?;
            let guests = store::guests(tx, id).await?;
            let names = match are_named_to(reader, &workshop, &present, now) {
                true => names(tx, &guests).await?,
                false => BTreeMap::new(),
            };
            Ok((guests, names))
        })
    });
    let (guests, names) = found.await?;
    let guests = guests.iter();
    let guests = guests.map(|guest| GuestOut::of(guest, names.get(&guest.id)));
    Ok(GuestsOfOut {
        guests: guests.collect::<Result<_>>()?,
    })
}

/// Guests who come in.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct GuestsIn {
    /// By name. The names are kept beside the book, and erased after the room's time for
    /// that.
    #[schema(min_items = 1, max_items = 100)]
    pub names: Vec<String>,
}

impl Input for GuestsIn {}

async fn sign_in(by: Writing<LeadWorkshop>, id: Uuid, guests: GuestsIn) -> Result<Made> {
    let names = input::names(guests.names.iter().map(String::as_str));
    let new = NewGuests {
        workshop_id: id,
        names: names.map_err(|problem| Error::field("names", problem))?,
    };
    let done = leading::sign_in(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "workshop", "workshops")
}

/// Guests who leave.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SignOutIn {
    /// Who; all who are there where nobody is named.
    #[serde(default)]
    pub guest_ids: Vec<Uuid>,
}

impl Input for SignOutIn {}

async fn sign_out(by: Writing<LeadWorkshop>, id: Uuid, out: SignOutIn) -> Result<Made> {
    let out = GuestsOut {
        workshop_id: id,
        guest_ids: out.guest_ids,
    };
    let done = leading::sign_out(&by.app, &by.permit, by.key, out).await?;
    by.made(&done, "workshop", "workshops")
}

async fn take_over(by: Writing<LeadWorkshop>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = leading::take_over(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "workshop", "workshops")
}

async fn end(by: Writing<LeadWorkshop>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = leading::end(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "workshop", "workshops")
}
