//! Boards as they are drawn: read once from the room, drawn for each variant of reader.

use std::sync::Arc;

use askama::Template;
use axum::body::Bytes;
use data_encoding::HEXLOWER;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::figures::figures;
use super::state::{BenchNow, BottleNow, LineNow, TrayNow, bench_now};
use super::views::{BoardPage, BottleOnBoard, LineOnBoard, MixOnBoard, TrayOnBoard};
use crate::air;
use crate::app::App;
use crate::arrivals::views::WhoIsHere;
use crate::arrivals::{self, Presence};
use crate::bench::Step;
use crate::checks;
use crate::clock::{micros, moment};
use crate::darkroom::verdict::{Judgement, Verdict};
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::identity::Membership;
use crate::lamps::{self, Due};
use crate::logbook::{self, Head};
use crate::outages::{self, Outage};
use crate::rights::{self, Right, Role};
use crate::rooms::{self, Settings};
use crate::web::around;
use crate::web::dates::Zone;
use crate::web::drawing::VerdictWord;
use crate::web::frame::{BUILD, Frame};
use crate::web::messages::verdicts;
use crate::web::shell::{Display, Place, RoomName, Shell};
use crate::workshops::{self, Group};

/// Which board: everything its page depends on but the room's book and the time.
#[derive(Clone, Debug, Eq, Hash, PartialEq)]
pub struct Variant {
    /// The room.
    pub room: Uuid,
    /// Its part of the address.
    pub slug: String,
    /// Whether it is a room of invented people.
    pub is_demo: bool,
    /// What whoever looks is there.
    pub role: Role,
    /// How bright the page is.
    pub display: Display,
}

impl Variant {
    /// The board that somebody of this standing sees.
    #[must_use]
    pub fn of(membership: &Membership, display: Display) -> Self {
        Self {
            room: membership.room,
            slug: membership.slug.clone(),
            is_demo: membership.is_demo,
            role: membership.role,
            display,
        }
    }
}

/// A board as it was drawn.
#[derive(Debug)]
pub struct Drawn {
    /// Where the room's book ended.
    pub head: Head,
    /// When.
    pub at: OffsetDateTime,
    /// The room's zone then.
    pub zone: Zone,
    /// When something on it changes by itself.
    pub good_until: OffsetDateTime,
    /// Names the build, the entry, the variant and the next change.
    pub etag: String,
    /// What the page shows.
    pub view: BoardPage,
    /// The page as it is sent.
    pub page: Bytes,
}

/// What a room's boards are drawn from.
#[derive(Debug)]
pub struct Ground {
    /// When it was read.
    pub now: OffsetDateTime,
    /// Where the room's book ended.
    pub head: Head,
    /// The room's settings.
    pub settings: Settings,
    /// Lines, trays and bottles.
    pub bench: BenchNow,
    /// What is off.
    pub off: Vec<Outage>,
    /// Who is in the room.
    pub present: Vec<Presence>,
    /// Guests who are there, by workshop.
    pub guests: Vec<Group>,
    workshops: Due,
    lamps: Due,
    checks: Due,
    air: Vec<String>,
}

impl Ground {
    /// Reads a room as it is now.
    ///
    /// # Errors
    /// That the database is away.
    pub async fn read(app: &App, room: Uuid) -> Result<Self> {
        let now = app.clock().now();
        let scope = Scope { room, person: None };
        app.database()
            .reading(scope, move |tx| {
                Box::pin(async move {
                    let head = logbook::head(tx).await?;
                    let settings = rooms::settings(tx).await?;
                    let bench = bench_now(tx, now, &settings).await?;
                    let off = outages::open(tx).await?;
                    let present = arrivals::present(tx, now).await?;
                    let guests = workshops::here(tx, now).await?;
                    let zone = settings.time_zone()?;
                    let workshops = workshops::due(tx, &zone, now).await?;
                    let lamps = lamps::due(tx, &zone, now).await?;
                    let checks = checks::due(tx, &zone, now).await?;
                    let air = air::due(tx, &settings, now).await?;
                    Ok(Self {
                        now,
                        head,
                        settings,
                        bench,
                        off,
                        present,
                        guests,
                        workshops,
                        lamps,
                        checks,
                        air,
                    })
                })
            })
            .await
    }

    pub(super) fn draw(&self, app: &App, variant: &Variant) -> Result<Drawn> {
        let zone = self.settings.time_zone()?;
        let good_until = self.good_until();
        let view = self.view(app, variant, &zone);
        let page = view
            .render()
            .map_err(|cause| Error::Internal(cause.into()))?;
        Ok(Drawn {
            head: self.head,
            at: self.now,
            good_until,
            etag: etag(
                &self.head,
                variant.role.as_str(),
                variant.display,
                good_until,
            ),
            page: Bytes::from(page),
            view,
            zone,
        })
    }

    fn view(&self, app: &App, variant: &Variant, zone: &Zone) -> BoardPage {
        let (settings, now) = (&self.settings, self.now);
        let may = |row: rights::Row| row.roles.contains(&variant.role);
        // The page is kept for others: nothing of one request's query stays in it.
        let here = format!("/rooms/{}/board", variant.slug);
        let room = RoomName {
            slug: variant.slug.clone(),
            name: settings.name.clone(),
        };
        let frame = Frame::kept(app, here, variant.display);
        let bottles = self.bench.bottles.iter();
        BoardPage {
            shell: Shell {
                place: Some(Place::Board),
                off: around::off(&self.off, zone),
                demo: variant.is_demo,
                ..frame.shell_for_role(variant.role, room)
            },
            as_of: zone.clock_and_weekday(now),
            at: event_id(&self.head),
            drawn_us: micros(now),
            notices: self.notices(),
            lines: self.lines(zone),
            bottles: bottles
                .map(|each| bottle_on_board(each, settings, zone, now))
                .collect(),
            here: self.here(zone),
            may_note: may(rights::NoteSheets::ROW),
            may_mix: may(rights::Mix::ROW),
            may_set_up: may(rights::KeepBench::ROW),
        }
    }

    /// Who is in the room.
    #[must_use]
    pub fn here(&self, zone: &Zone) -> WhoIsHere {
        let people = (&self.present[..], &self.guests[..]);
        WhoIsHere::of(people, &self.settings, zone, self.now)
    }

    /// The next moment at which a verdict changes, a rule has moved by a twentieth of
    /// a life, somebody is taken for gone or overdue, a fog test or a room check is
    /// overdue, or a workshop is over or of the day that begins.
    #[must_use]
    pub fn good_until(&self) -> OffsetDateTime {
        let now = self.now;
        let trays = self.bench.lines.iter().flat_map(|line| &line.trays);
        let of_trays = trays.flat_map(|each| {
            let moves = each.mix.as_ref().map(|mix| {
                let twentieth = Duration::seconds((mix.life_s / 20).max(1));
                now + twentieth
            });
            [changes_at(&each.judgement), moves]
        });
        let of_bottles = self.bench.bottles.iter().flat_map(|each| {
            // What the list says of a bottle's life changes when that is over.
            let over = each.mix.life_ends().filter(|ends| *ends > now);
            [changes_at(&each.judgement), over]
        });
        let of_people = self.present.iter().flat_map(|presence| {
            let expected = presence.expected_at.filter(|at| *at > now);
            [Some(presence.over_at), expected]
        });
        let of_bench = of_trays.chain(of_bottles);
        let of_guests = self.guests.iter().map(|group| Some(group.over_at));
        let dues = [&self.lamps, &self.checks, &self.workshops];
        let of_dues = dues.map(|due| due.changes_at);
        let moments = of_bench.chain(of_people).chain(of_guests).chain(of_dues);
        let a_day = now + Duration::days(1);
        moments.flatten().fold(a_day, OffsetDateTime::min)
    }

    /// What everyone in the room should know: which trays not to print through, which
    /// workshops take the bench today, which
    /// checks failed or are overdue, where baths stand without the exhaust they want, and
    /// which lamps to keep paper from.
    #[must_use]
    pub fn notices(&self) -> Vec<String> {
        let spent =
            |each: &&TrayNow| matches!(each.judgement.verdict, Verdict::Replace | Verdict::Unknown);
        let lines = self.bench.lines.iter();
        lines
            .filter_map(|line| {
                let trays = line.trays.iter().filter(spent);
                let trays: Vec<_> = trays.map(|each| each.tray.name.as_str()).collect();
                let says = || verdicts::do_not_use(&line.line.name, &trays);
                (!trays.is_empty()).then(says)
            })
            .chain(self.workshops.sentences.iter().cloned())
            .chain(self.checks.sentences.iter().cloned())
            .chain(self.air.iter().cloned())
            .chain(self.lamps.sentences.iter().cloned())
            .collect()
    }

    /// Each line in words and drawings.
    #[must_use]
    pub fn lines(&self, zone: &Zone) -> Vec<LineOnBoard> {
        let lines = self.bench.lines.iter();
        lines
            .map(|line| line_on_board(line, &self.settings, zone, self.now))
            .collect()
    }
}

/// The board of a variant as it is now: as it was drawn before, where that is still true.
///
/// # Errors
/// That the database is away.
pub(super) async fn board(app: &App, variant: &Variant) -> Result<Arc<Drawn>> {
    if let Some(drawn) = app.boards().find(variant, app.clock().now()) {
        return Ok(drawn);
    }
    let ground = Ground::read(app, variant.room).await?;
    let drawn = Arc::new(ground.draw(app, variant)?);
    app.boards().keep(variant, drawn.clone());
    Ok(drawn)
}

/// Names an entry to whoever follows the board: its number and the first eight digits of
/// its hash.
pub(super) fn event_id(head: &Head) -> String {
    format!("{}.{}", head.seq, HEXLOWER.encode(&head.hash[..4]))
}

/// Names a page that is kept: the build, the entry, who sees it, the display and the
/// next change.
#[must_use]
pub fn etag(head: &Head, seen_by: &str, display: Display, good_until: OffsetDateTime) -> String {
    let head = HEXLOWER.encode(&head.hash[..8]);
    let (display, until) = (display.name(), micros(good_until));
    format!("\"{BUILD}-{head}-{seen_by}-{display}-{until}\"")
}

fn changes_at(judgement: &Judgement) -> Option<OffsetDateTime> {
    judgement.changes_at.map(|(at, _)| moment(at.get()))
}

fn line_on_board(
    line: &LineNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> LineOnBoard {
    LineOnBoard {
        space: line.space.clone(),
        id: line.line.id.to_string(),
        name: line.line.name.clone(),
        trays: line
            .trays
            .iter()
            .map(|each| tray_on_board(each, settings, zone, now))
            .collect(),
    }
}

fn tray_on_board(
    each: &TrayNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> TrayOnBoard {
    let numbers = settings.numbers();
    let figures = figures(each, settings, zone, now);
    TrayOnBoard {
        id: each.tray.id.to_string(),
        name: each.tray.name.clone(),
        is_wash: each.tray.step == Step::Wash,
        word: figures.word,
        drawing: figures.drawing,
        reason: figures.reason,
        change: figures.change,
        mix: each.mix.as_ref().zip(figures.rules).map(|(mix, rules)| {
            let (capacity, life) = rules;
            MixOnBoard {
                product: verdicts::mix_name(mix.product_name.as_deref()),
                dilution: numbers.dilution(mix.parts_thousandths),
                mixed: zone.clock_and_weekday(mix.mixed_at),
                litres: numbers.volume(mix.charged_ul),
                depth: figures.depth.clone(),
                capacity,
                life,
            }
        }),
    }
}

fn bottle_on_board(
    each: &BottleNow,
    settings: &Settings,
    zone: &Zone,
    now: OffsetDateTime,
) -> BottleOnBoard {
    let numbers = settings.numbers();
    let ends = each.mix.life_ends().map(|ends| {
        let words = zone.clock_and_weekday(ends).words;
        verdicts::life_left(now < ends, &words)
    });
    BottleOnBoard {
        id: each.bottle.id.to_string(),
        name: each.bottle.name.clone(),
        word: VerdictWord {
            standing: verdicts::standing(each.judgement.verdict),
        },
        mix: each.mix.title(numbers),
        litres: numbers.volume(each.mix.level_ul()),
        ends,
    }
}
