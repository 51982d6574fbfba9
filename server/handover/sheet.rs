//! The list of what is open in a room.
//!
//! A part is a row of [`PARTS`]: its heading, and a function from [`Ground`] to
//! lines. A noun that has something to hand over adds what it exports to `Ground`
//! and a row here. Lines name whole days and times, so that a line changes only
//! when the thing does.

use data_encoding::HEXLOWER;
use sha2::{Digest, Sha256};
use time::OffsetDateTime;

use super::Part;
use crate::air::{self, air_now};
use crate::app::App;
use crate::board::{BenchNow, LineNow, TrayNow, bench_now};
use crate::book::{Verified, checkpoints, last_verified};
use crate::checks::{self, CheckNow};
use crate::clock::moment;
use crate::darkroom::verdict::{Judgement, Reason, Verdict};
use crate::database::RoomTx;
use crate::error::Result;
use crate::identity::links::{self, OpenLink};
use crate::identity::tokens::{self, GoodToken};
use crate::incidents;
use crate::lamps::{self, LampNow};
use crate::logbook::checkpoint::Checkpoint;
use crate::members::{self, Member};
use crate::outages::{self, Outage};
use crate::products::{self, Product};
use crate::rights::Role;
use crate::rooms::{self, Settings};
use crate::screens::{self, Screen};
use crate::web::dates::Zone;
use crate::web::messages::handover as words;
use crate::web::messages::verdicts;
use crate::workshops;

/// Everything the list is made from.
pub(super) struct Ground {
    pub(super) settings: Settings,
    zone: Zone,
    bench: BenchNow,
    products: Vec<Product>,
    off: Vec<Outage>,
    lamps: Vec<LampNow>,
    checks: Vec<CheckNow>,
    air: Vec<String>,
    incidents: Vec<i64>,
    workshops: Vec<String>,
    links: Vec<OpenLink>,
    tokens: Vec<GoodToken>,
    screens: Vec<Screen>,
    pub(super) members: Vec<Member>,
    sealed: Option<Checkpoint>,
    verified: Option<Verified>,
}

impl Ground {
    /// Reads it; `sealed` is the book's last checkpoint, which lies outside the
    /// database.
    pub(super) async fn read(
        tx: &mut RoomTx,
        now: OffsetDateTime,
        sealed: Option<Checkpoint>,
    ) -> Result<Self> {
        let settings = rooms::settings(tx).await?;
        let zone = settings.time_zone()?;
        Ok(Self {
            bench: bench_now(tx, now, &settings).await?,
            products: products::products(tx).await?,
            off: outages::open(tx).await?,
            lamps: lamps::lamps_now(tx, &zone, now).await?,
            checks: checks::checks_now(tx, &zone, now).await?,
            incidents: incidents::unfinished(tx).await?,
            workshops: workshops::handed_over(&workshops::coming(tx, now).await?, &zone),
            air: air::handed_over(&air_now(tx, now).await?, &settings)?,
            links: links::open_in(tx, now).await?,
            tokens: tokens::good_in(tx, now).await?,
            screens: screens::paired(tx).await?,
            members: members::everyone(tx).await?,
            sealed,
            verified: last_verified(tx).await?,
            settings,
            zone,
        })
    }

    /// The list.
    pub(super) fn parts(&self) -> Vec<Part> {
        let part = |(heading, lines): &(&str, Lines)| Part {
            heading: (*heading).to_owned(),
            lines: lines(self),
        };
        PARTS.iter().map(part).collect()
    }

    fn day_and_time(&self, at: OffsetDateTime) -> String {
        self.zone.minute_in_full(at).words
    }

    fn trays(&self) -> impl Iterator<Item = (&LineNow, &TrayNow)> {
        let trays = |line| -> Vec<(&LineNow, &TrayNow)> {
            let line: &LineNow = line;
            line.trays.iter().map(|tray| (line, tray)).collect()
        };
        self.bench.lines.iter().flat_map(trays)
    }
}

/// The last checkpoint that counts.
pub(super) async fn last_sealed(app: &App, room: uuid::Uuid) -> Result<Option<Checkpoint>> {
    let shelf = checkpoints::shelf(app, room).await?;
    Ok(shelf.checkpoints.into_iter().max_by_key(|mark| mark.at_us))
}

/// Lines of one part.
type Lines = fn(&Ground) -> Vec<String>;

/// The parts, in the order of the sheet.
const PARTS: &[(&str, Lines)] = &[
    (words::OFF, off),
    (words::NOT_TO_USE, not_to_use),
    (words::EXTENDED, extended),
    (words::STANDING, standing),
    (words::BOTTLED, bottled),
    (words::ROOM_CHECKS, room_checks),
    (words::FOG_TESTS, fog_tests),
    (words::AIR, room_air),
    (words::INCIDENTS, unfinished),
    (words::WORKSHOPS, planned_workshops),
    (words::NO_SAFETY_DATA, no_safety_data),
    (words::NOT_ON_FILE, not_on_file),
    (words::PEOPLE, people),
    (words::LINKS, open_links),
    (words::TOKENS, good_tokens),
    (words::SCREENS, paired_screens),
    (words::BOOK, the_book),
];

fn off(ground: &Ground) -> Vec<String> {
    let off = ground.off.iter();
    off.map(|off| words::off(off.what, &ground.day_and_time(off.began_at)))
        .collect()
}

/// Trays that nobody is to print through: used up, failed, contaminated, unknown.
fn not_to_use(ground: &Ground) -> Vec<String> {
    ground
        .trays()
        .filter(|(_, now)| matches!(now.judgement.verdict, Verdict::Replace | Verdict::Unknown))
        .map(|(line, now)| {
            let word = verdicts::word(now.judgement.verdict);
            words::not_to_use(&line.line.name, &now.tray.name, word)
        })
        .collect()
}

/// What a steward let be used a little longer.
fn extended(ground: &Ground) -> Vec<String> {
    let until = |judgement: &Judgement| {
        judgement.reasons.iter().find_map(|reason| match reason {
            Reason::ExtendedUntil(until) => Some(ground.day_and_time(moment(until.get()))),
            _ => None,
        })
    };
    let in_trays = ground.trays().filter_map(|(line, now)| {
        let place = format!("{}, {}", line.line.name, now.tray.name);
        Some(words::extended(&place, &until(&now.judgement)?))
    });
    let in_bottles = ground
        .bench
        .bottles
        .iter()
        .filter_map(|now| Some(words::extended(&now.bottle.name, &until(&now.judgement)?)));
    in_trays.chain(in_bottles).collect()
}

fn bottled(ground: &Ground) -> Vec<String> {
    let numbers = ground.settings.numbers();
    let bottles = ground.bench.bottles.iter();
    bottles
        .map(|now| {
            let litres = numbers.litres(now.mix.level_ul());
            let what = format!("{}, {litres}", now.mix.title(numbers));
            let mixed = ground.day_and_time(now.mix.mixed_at);
            let word = verdicts::word(now.judgement.verdict);
            words::bottled(&now.bottle.name, &what, &mixed, word)
        })
        .collect()
}

fn standing(ground: &Ground) -> Vec<String> {
    let numbers = ground.settings.numbers();
    ground
        .trays()
        .filter_map(|(line, now)| {
            let mix = now.mix.as_ref()?;
            let litres = numbers.litres(mix.charged_ul);
            let mixed = ground.day_and_time(mix.mixed_at);
            let what = format!("{}, {litres}", mix.title(numbers));
            let word = verdicts::word(now.judgement.verdict);
            Some(words::standing(
                (&line.line.name, &now.tray.name),
                &what,
                &mixed,
                word,
            ))
        })
        .collect()
}

fn room_checks(ground: &Ground) -> Vec<String> {
    checks::handed_over(&ground.checks, &ground.zone)
}

fn fog_tests(ground: &Ground) -> Vec<String> {
    lamps::handed_over(&ground.lamps)
}

fn unfinished(ground: &Ground) -> Vec<String> {
    let numbers = ground.incidents.iter();
    numbers.map(|number| words::unfinished(*number)).collect()
}

fn planned_workshops(ground: &Ground) -> Vec<String> {
    ground.workshops.clone()
}

fn room_air(ground: &Ground) -> Vec<String> {
    ground.air.clone()
}

fn no_safety_data(ground: &Ground) -> Vec<String> {
    let products = ground.products.iter();
    products
        .filter(|product| !product.is_retired && product.data_sheet_on.is_none())
        .map(|product| product.name.clone())
        .collect()
}

/// What the page for emergencies lacks.
fn not_on_file(ground: &Ground) -> Vec<String> {
    let help = &ground.settings.emergency;
    [
        (&help.number, words::EMERGENCY_NUMBER),
        (&help.poison_centre, words::POISON_CENTRE),
        (&help.address, words::ADDRESS),
        (&help.contacts, words::CONTACTS),
        (&help.eyewash, words::EYEWASH),
        (&help.data_sheets, words::DATA_SHEETS),
    ]
    .into_iter()
    .filter(|(text, _)| text.trim().is_empty())
    .map(|(_, name)| name.to_owned())
    .collect()
}

/// Who keeps the room, and who may not come in.
fn people(ground: &Ground) -> Vec<String> {
    let kept = |member: &&Member| {
        let keeps = matches!(member.role, Role::Steward | Role::Treasurer);
        member.ended_at.is_none() && (keeps || member.suspended_at.is_some())
    };
    let members = ground.members.iter().filter(kept);
    members
        .map(|member| words::person(&member.name, member.role, !member.is_active()))
        .collect()
}

fn open_links(ground: &Ground) -> Vec<String> {
    let links = ground.links.iter();
    links
        .map(|link| {
            let ends = link.expires_at.map(|at| ground.day_and_time(at));
            let what = words::link(link.role, link.person_name.as_deref());
            words::open_link(&what, link.made_by.as_deref(), ends.as_deref())
        })
        .collect()
}

fn good_tokens(ground: &Ground) -> Vec<String> {
    let tokens = ground.tokens.iter();
    tokens
        .map(|token| {
            let until = ground.day_and_time(token.expires_at);
            words::token(&token.name, &token.person_name, &token.scopes, &until)
        })
        .collect()
}

/// Screens of the room that are no person's.
fn paired_screens(ground: &Ground) -> Vec<String> {
    let screens = ground.screens.iter();
    screens
        .map(|screen| {
            let paired = ground.day_and_time(screen.paired_at);
            words::screen(&screen.name, screen.kind.as_str(), &paired)
        })
        .collect()
}

fn the_book(ground: &Ground) -> Vec<String> {
    let sealed = ground.sealed.as_ref().map(|mark| {
        let at = ground.day_and_time(moment(mark.at_us));
        (mark.seq, at)
    });
    let verified = ground.verified.map(|last| {
        let at = ground.day_and_time(last.at);
        (at, last.findings)
    });
    vec![words::sealed(sealed), words::verified(verified)]
}

/// The digest of a list, as the entry that confirms it has it: of its JSON text,
/// in lower-case hexadecimal.
///
/// # Errors
/// A list that JSON cannot hold.
pub fn digest(parts: &[Part]) -> Result<String> {
    Ok(HEXLOWER.encode(&Sha256::digest(serde_json::to_vec(parts)?)))
}

/// What of one list is not in another: under its heading, in its order.
pub(super) fn beyond(list: &[Part], other: &[Part]) -> Vec<Part> {
    let has = |heading: &str, line: &String| {
        let same = other.iter().filter(|part| part.heading == heading);
        same.flat_map(|part| &part.lines).any(|known| known == line)
    };
    let rest = list.iter().map(|part| Part {
        heading: part.heading.clone(),
        lines: part
            .lines
            .iter()
            .filter(|line| !has(&part.heading, line))
            .cloned()
            .collect(),
    });
    rest.filter(|part| !part.lines.is_empty()).collect()
}
