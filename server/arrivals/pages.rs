//! The pages to arrive and to leave, and the roll of who is there.

use axum::extract::{Path, State};
use axum::response::Response;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::actions;
use super::store::{self, Presence};
use super::supervised_pages;
use super::views::WhoIsHere;
use super::views::{
    ArrivePage, LackShown, LeavePage, NotConfirmed, NotYet, OpenTray, PersonHere, RollPage,
};
use crate::app::App;
use crate::bench::{self, Line, Tray};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::incidents;
use crate::inductions::{self, Lack, Standing};
use crate::mixes::{self, Mix, Storage};
use crate::problem::Problems;
use crate::rights::{Arrive, ClosePresence, Induct, LookAtBoard, NoteSheets, Right, Supervise};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::{KeyForm, ask, lying_at};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::inductions::standing;
use crate::web::messages::{arrivals as words, drawing, verdicts};
use crate::web::shell::{Place, Shell};

/// The roll shows for so long who did not say that they left.
const REMEMBERED: Duration = Duration::days(1);

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/arrive", arrive_form)
        .post("/rooms/{room}/arrive", arrive_send)
        .get("/rooms/{room}/leave", leave_form)
        .post("/rooms/{room}/leave", leave_send)
        .get("/rooms/{room}/present", roll)
        .and(supervised_pages::pages())
        .get("/rooms/{room}/presences/{presence}/close", close_asked)
        .post("/rooms/{room}/presences/{presence}/close", close_send)
}

/// What stands in the trays, each with its line.
type Baths = Vec<(Line, Tray, Mix)>;

/// Everything the pages of one's own coming and going stand on.
struct Ground {
    settings: Settings,
    present: Vec<Presence>,
    mine: Option<Presence>,
    baths: Baths,
    avoid: Vec<String>,
    lacks: Vec<Lack>,
    stewards: Vec<String>,
    now: OffsetDateTime,
}

impl Ground {
    async fn read(app: &App, permit: &Permit<Arrive>) -> Result<Self> {
        let (now, person) = (app.clock().now(), permit.person().id);
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let settings = rooms::settings(tx).await?;
                    let today = settings.time_zone()?.date_value(now);
                    let baths = baths(tx).await?;
                    let standing: Vec<&Mix> = baths.iter().map(|(_, _, mix)| mix).collect();
                    Ok(Self {
                        settings,
                        lacks: inductions::lacks(tx, person, &today).await?,
                        stewards: inductions::stewards(tx).await?,
                        present: store::present(tx, now).await?,
                        mine: store::open_of(tx, person).await?,
                        avoid: incidents::warnings(tx, &standing).await?,
                        baths,
                        now,
                    })
                })
            })
            .await
    }
}

async fn baths(tx: &mut RoomTx) -> Result<Baths> {
    let (lines, trays) = (bench::lines(tx).await?, bench::trays(tx).await?);
    let mixes = mixes::standing(tx).await?;
    let bath = |tray: &Tray| {
        let line = lines.iter().find(|line| line.id == tray.line_id)?;
        let mix = mixes
            .iter()
            .find(|mix| mix.stand.tray_id == Some(tray.id))?;
        Some((line.clone(), tray.clone(), mix.clone()))
    };
    Ok(trays.iter().filter_map(bath).collect())
}

/// The trays that stand open and could stand covered.
///
/// # Errors
/// The database's.
pub async fn open_baths(tx: &mut RoomTx, settings: &Settings) -> Result<Vec<OpenTray>> {
    Ok(open_of(&baths(tx).await?, settings))
}

fn open_of(baths: &Baths, settings: &Settings) -> Vec<OpenTray> {
    let open = baths
        .iter()
        .filter(|(_, _, mix)| mix.storage == Storage::OpenTray && mix.product_id.is_some());
    open.map(|(line, tray, mix)| OpenTray {
        name: words::tray(&line.name, &tray.name),
        mix: mix.title(settings.numbers()),
        mix_id: mix.id.to_string(),
    })
    .collect()
}

/// What each product in the trays now asks for.
///
/// # Errors
/// The database's.
pub async fn cautions_now(tx: &mut RoomTx) -> Result<Vec<String>> {
    Ok(cautions(&baths(tx).await?))
}

/// What each product in the trays asks for, once.
fn cautions(baths: &Baths) -> Vec<String> {
    let mut cautions: Vec<String> = Vec::new();
    for (_, _, mix) in baths {
        let name = verdicts::mix_name(mix.product_name.as_deref());
        let caution = drawing::caution(&name, &mix.hazard_codes);
        if !cautions.contains(&caution) {
            cautions.push(caution);
        }
    }
    cautions
}

impl WhoIsHere {
    /// Who is there, in words whose times hold on any day.
    #[must_use]
    pub fn of(present: &[Presence], settings: &Settings, zone: &Zone) -> Self {
        let person = |presence: &Presence| PersonHere {
            id: presence.id.to_string(),
            name: presence.name.clone(),
            since: zone.clock(presence.arrived_at),
            supervised_by: presence.supervisor.clone(),
        };
        Self {
            people: present.iter().map(person).collect(),
            places: usize::try_from(settings.people_limit).unwrap_or(0),
        }
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Present)), path)
}

fn may<R: Right, S: Right>(permit: &Permit<R>) -> bool {
    S::ROW.roles.contains(&permit.role())
}

async fn arrive_form(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
) -> Result<Response> {
    page(&arrive_page(&app, &permit, &frame, new_key()?, &Problems::default()).await?)
}

async fn arrive_page(
    app: &App,
    permit: &Permit<Arrive>,
    frame: &Frame,
    key: String,
    problems: &Problems,
) -> Result<ArrivePage> {
    let ground = Ground::read(app, permit).await?;
    let zone = ground.settings.time_zone()?;
    let mine = ground.mine.filter(|mine| mine.is_there(ground.now));
    Ok(ArrivePage {
        shell: shell(permit, frame, "/arrive"),
        key,
        problems: in_words(problems, ground.settings.numbers()),
        here: WhoIsHere::of(&ground.present, &ground.settings, &zone),
        since: mine.map(|mine| (zone.clock(mine.arrived_at), zone.clock(mine.over_at))),
        not_yet: not_yet(permit, ground.lacks, ground.stewards),
        avoid: ground.avoid,
        cautions: cautions(&ground.baths),
        may_note: may::<_, NoteSheets>(permit),
    })
}

/// What keeps somebody out, where something does.
fn not_yet(permit: &Permit<Arrive>, lacks: Vec<Lack>, stewards: Vec<String>) -> Option<NotYet> {
    if lacks.is_empty() {
        return None;
    }
    let is_alone = may::<_, Induct>(permit) && stewards.len() == 1;
    Some(NotYet {
        waits: lacks.iter().any(|lack| lack.standing == Standing::Waits),
        alone: is_alone.then(|| permit.person().id.to_string()),
        stewards,
        lacks: lacks
            .into_iter()
            .map(|lack| LackShown {
                topic: lack.topic_id.to_string(),
                title: lack.title,
                why: standing(&lack.standing),
            })
            .collect(),
    })
}

async fn arrive_send(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    match actions::arrive(&app, &permit, read_key(&form.key)?).await {
        Ok(_) => Ok(on_to(&app, &permit, "/arrive")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&arrive_page(&app, &permit, &frame, form.key, &problems).await?)
        }
    }
}

async fn leave_form(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
) -> Result<Response> {
    page(&leave_page(&app, &permit, &frame, new_key()?, &Problems::default()).await?)
}

async fn leave_page(
    app: &App,
    permit: &Permit<Arrive>,
    frame: &Frame,
    key: String,
    problems: &Problems,
) -> Result<LeavePage> {
    let ground = Ground::read(app, permit).await?;
    let own = permit.person().id;
    let is_other = |presence: &Presence| presence.person_id != own;
    let supervised = ground.present.iter();
    let supervised = supervised.filter(|presence| presence.supervisor_id == Some(own));
    Ok(LeavePage {
        shell: shell(permit, frame, "/leave"),
        key,
        problems: in_words(problems, ground.settings.numbers()),
        is_here: ground.mine.is_some(),
        are_others: ground.present.iter().any(is_other),
        answers_for: supervised.map(|presence| presence.name.clone()).collect(),
        open: open_of(&ground.baths, &ground.settings),
        may_note: may::<_, NoteSheets>(permit),
    })
}

async fn leave_send(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    match actions::leave(&app, &permit, read_key(&form.key)?, None).await {
        Ok(_) => Ok(on_to(&app, &permit, "/present")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&leave_page(&app, &permit, &frame, form.key, &problems).await?)
        }
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
    let (settings, present, gone) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let present = store::present(tx, now).await?;
                let gone = store::not_confirmed(tx, now - REMEMBERED, now).await?;
                Ok((settings, present, gone))
            })
        })
        .await?;
    let zone = settings.time_zone()?;
    let not_confirmed = |presence: &Presence| NotConfirmed {
        name: presence.name.clone(),
        from: zone.words(presence.arrived_at, now),
        until: zone.words(presence.ended_at.unwrap_or(presence.over_at), now),
    };
    Ok(RollPage {
        shell: shell(permit, frame, "/present"),
        as_of: zone.on_paper(now),
        here: WhoIsHere::of(&present, &settings, &zone),
        not_confirmed: gone.iter().map(not_confirmed).collect(),
        may_arrive: may::<_, Arrive>(permit),
        may_close: may::<_, ClosePresence>(permit),
        may_supervise: may::<_, Supervise>(permit),
    })
}

async fn close_asked(
    State(app): State<App>,
    permit: Permit<ClosePresence>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let found = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(store::presence(tx, id)));
    let name = found.await?.ok_or(Error::NotFound)?.name;
    let path = format!("/presences/{id}/close");
    let shell = shell(&permit, &frame, &path);
    ask(shell, words::close_question(&name), &path, "/present")
}

async fn close_send(
    State(app): State<App>,
    permit: Permit<ClosePresence>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    actions::close(&app, &permit, read_key(&form.key)?, id).await?;
    Ok(on_to(&app, &permit, "/present"))
}
