//! All that is in force, to print, and the whole log as a table.

use axum::extract::State;
use axum::response::Response;

use super::in_force::InForce;
use super::pages::{Ground, shell};
use super::showing::Titles;
use super::store::{self, Asked, Induction};
use super::views::{InForcePage, InForceRow};
use crate::app::App;
use crate::error::Result;
use crate::identity::Permit;
use crate::members::Member;
use crate::rights::SeeInductions;
use crate::router::Pages;
use crate::web::dates::machine;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::inductions as words;
use crate::web::shell::Place;
use crate::web::table::download;

const IN_FORCE: &str = "/rooms/{room}/inductions/in-force";
const LOG: &str = "/rooms/{room}/inductions.csv";

/// The columns of the table.
const COLUMNS: [&str; 12] = [
    "entry",
    "person",
    "given_on",
    "topic",
    "version",
    "good_until",
    "inducted_by",
    "basis",
    "confirmed_at",
    "confirmed_by",
    "withdrawn_entry",
    "remark",
];

/// So many records the table holds at most.
const MOST: i64 = 50_000;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new().get(IN_FORCE, in_force).get(LOG, log)
}

async fn in_force(
    State(app): State<App>,
    permit: Permit<SeeInductions>,
    frame: Frame,
) -> Result<Response> {
    let now = app.clock().now();
    let ground = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(Ground::read(tx, now)));
    let ground = ground.await?;
    let people = ground.in_force.members.iter();
    page(&InForcePage {
        shell: shell(&permit, &frame, (Place::Inductions, "/inductions/in-force")),
        as_of: ground.zone.on_paper(now),
        people: people
            .map(|member| row(member, &ground.in_force))
            .filter(|row| !row.topics.is_empty())
            .collect(),
    })
}

fn row(member: &Member, in_force: &InForce) -> InForceRow {
    let standings = in_force.of(member.person).into_iter();
    let holding = standings.filter(|(_, standing)| standing.holds());
    InForceRow {
        number: member.member_number,
        name: member.name.clone(),
        topics: holding
            .map(|(topic, standing)| words::holds(&topic.title, &standing))
            .collect(),
    }
}

async fn log(State(app): State<App>, permit: Permit<SeeInductions>) -> Result<Response> {
    let now = app.clock().now();
    let (titles, log) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let titles = Ground::read(tx, now).await?.titles;
                Ok((titles, store::inductions(tx, Asked::default(), MOST).await?))
            })
        })
        .await?;
    let rows = log.iter().flat_map(|record| cells(record, &titles));
    download("inductions.csv", COLUMNS, rows)
}

/// A row for each topic of a record.
fn cells<'l>(record: &'l Induction, titles: &'l Titles) -> impl Iterator<Item = [String; 12]> + 'l {
    let (confirmed_at, means) = record.confirmed.unzip();
    let withdrawn = record.withdrawn.as_ref();
    record.topics.iter().map(move |covered| {
        [
            record.seq.to_string(),
            record.person.clone(),
            record.given_on.clone(),
            titles.get(&covered.topic_id).cloned().unwrap_or_default(),
            covered.version.to_string(),
            covered.good_until.clone().unwrap_or_default(),
            record.inducer.clone().unwrap_or_default(),
            record.basis.as_str().to_owned(),
            confirmed_at.map(machine).unwrap_or_default(),
            means
                .map(|means| means.as_str().to_owned())
                .unwrap_or_default(),
            withdrawn
                .map(|(seq, _)| seq.to_string())
                .unwrap_or_default(),
            record.remark.clone(),
        ]
    })
}
