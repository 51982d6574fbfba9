//! The pages to arrive and to leave, and the roll of who is there.

use std::collections::BTreeMap;

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{self, NewStay};
use super::alone::contacts;
use super::store::{self, Presence};
use super::until::{asks, asks_of_who_comes, until_typed};
use super::views::{
    ArriveForm, ArrivePage, AsksUntil, GuestsHere, LackShown, LeavePage, NotYet, OpenTray,
    PersonHere, StayShown, UntilForm, WhoIsHere,
};
use super::{roll_pages, supervised_pages};
use crate::app::App;
use crate::bench::{self, Line, Tray};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::incidents;
use crate::inductions::{self, Lack, Standing};
use crate::logbook::{Done, Key};
use crate::mixes::{self, Mix, Storage};
use crate::problem::{Problem, Problems};
use crate::products::{self, Concern, Product};
use crate::rights::{Arrive, ClosePresence, Induct, NoteSheets, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::{Moment, Zone};
use crate::web::desk::{KeyForm, ask, lying_at};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::inductions::standing;
use crate::web::messages::{
    arrivals as words, drawing, ingredients, verdicts, workshops as workshops_said,
};
use crate::web::shell::{Place, Shell};
use crate::workshops::{self, Group};

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/arrive", arrive_form)
        .post("/rooms/{room}/arrive", arrive_send)
        .post("/rooms/{room}/present/until", until_send)
        .get("/rooms/{room}/leave", leave_form)
        .post("/rooms/{room}/leave", leave_send)
        .and(roll_pages::pages())
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
    guests: Vec<Group>,
    mine: Option<Presence>,
    baths: Baths,
    avoid: Vec<String>,
    cautions: Vec<String>,
    lacks: Vec<Lack>,
    stewards: Vec<String>,
    told: Vec<String>,
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
                    let mut told = contacts(tx).await?;
                    told.retain(|contact| contact.person != person);
                    Ok(Self {
                        settings,
                        cautions: cautions(tx, &baths).await?,
                        told: told.into_iter().map(|contact| contact.name).collect(),
                        lacks: inductions::lacks(tx, person, &today).await?,
                        stewards: inductions::stewards(tx).await?,
                        present: store::present(tx, now).await?,
                        guests: workshops::here(tx, now).await?,
                        mine: store::open_of(tx, person).await?,
                        avoid: incidents::warnings(tx, &standing).await?,
                        baths,
                        now,
                    })
                })
            })
            .await
    }

    /// Whether the reader is there.
    fn is_here(&self) -> bool {
        let mine = self.mine.as_ref();
        mine.is_some_and(|mine| mine.is_there(self.now))
    }

    /// Since when the reader is there, and until when that holds.
    fn since(&self, zone: &Zone) -> Option<(Moment, Moment)> {
        let mine = self.mine.as_ref().filter(|_| self.is_here())?;
        Some((zone.clock(mine.arrived_at), zone.clock(mine.over_at)))
    }

    fn here(&self, zone: &Zone) -> WhoIsHere {
        let people = (&self.present[..], &self.guests[..]);
        WhoIsHere::of(people, &self.settings, zone, self.now)
    }

    /// The workshop that this person leads and whose guests are there, and what is said of
    /// them.
    fn leads(&self, person: Uuid) -> Option<(String, String)> {
        let group = self.guests.iter().find(|group| group.leader_id == person)?;
        let said = workshops_said::still_here(group.count);
        Some((group.workshop_id.to_string(), said))
    }

    /// Asks a reader who comes into an empty room until when they stay.
    fn asks(&self, form: &UntilForm) -> Result<Option<AsksUntil>> {
        let asks = || asks_of_who_comes(form.clone(), &self.settings, self.now);
        self.present.is_empty().then(asks).transpose()
    }

    /// Asks a reader who is there, and alone or expected to leave.
    fn stay(&self, form: &UntilForm, zone: &Zone) -> Option<StayShown> {
        let mine = self.mine.as_ref().filter(|_| self.is_here())?;
        let is_alone = self.present.len() == 1;
        (is_alone || mine.expected_at.is_some()).then(|| StayShown {
            is_alone,
            has_guests: !self.guests.is_empty(),
            expected: mine.expected_at.map(|at| zone.clock(at)),
            is_overdue: mine.is_overdue(self.now),
            asks: asks(form.clone(), (self.now, mine.over_at), zone),
        })
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
    let baths = baths(tx).await?;
    cautions(tx, &baths).await
}

/// What the products in the trays ask for: by what they have in common first, then the
/// codes of each, once.
async fn cautions(tx: &mut RoomTx, baths: &Baths) -> Result<Vec<String>> {
    let is_there = |product: &Product| {
        baths
            .iter()
            .any(|(_, _, mix)| mix.product_id == Some(product.id))
    };
    let products = products::products(tx).await?.into_iter();
    let unnamed = baths.iter().any(|(_, _, mix)| mix.product_id.is_none());
    let mut cautions = shared(&products.filter(is_there).collect::<Vec<_>>(), unnamed);
    for (_, _, mix) in baths {
        let name = verdicts::mix_name(mix.product_name.as_deref());
        let caution = drawing::caution(&name, &mix.hazard_codes);
        if !cautions.contains(&caution) {
            cautions.push(caution);
        }
    }
    Ok(cautions)
}

/// What several products ask for alike, by concern; liquid that nobody can name is unknown.
fn shared(products: &[Product], holds_unnamed: bool) -> Vec<String> {
    let mut by_concern: BTreeMap<Concern, Vec<&str>> = BTreeMap::new();
    if holds_unnamed {
        let unknown = by_concern.entry(Concern::UnknownComposition);
        unknown.or_default().push(ingredients::UNNAMED);
    }
    for product in products {
        for concern in product.concerns() {
            by_concern.entry(concern).or_default().push(&product.name);
        }
    }
    let shared = by_concern.into_iter();
    let shared = shared.map(|(concern, names)| ingredients::shared(concern, &names));
    shared.collect()
}

impl WhoIsHere {
    /// Who is there, in words whose times hold on any day.
    #[must_use]
    pub fn of(
        (present, guests): (&[Presence], &[Group]),
        settings: &Settings,
        zone: &Zone,
        now: OffsetDateTime,
    ) -> Self {
        let is_alone = present.len() == 1 && guests.is_empty();
        let person = |presence: &Presence| PersonHere {
            id: presence.id.to_string(),
            name: presence.name.clone(),
            since: zone.clock(presence.arrived_at),
            supervised_by: presence.supervisor.clone(),
            stays: stays(presence, zone, now, is_alone),
        };
        Self {
            people: present.iter().map(person).collect(),
            guests: guests.iter().map(guests_here).collect(),
            places: usize::try_from(settings.people_limit).unwrap_or(0),
        }
    }
}

fn guests_here(group: &Group) -> GuestsHere {
    GuestsHere {
        count: usize::try_from(group.count).unwrap_or(0),
        said: workshops_said::guests_of(group.count, &group.leader),
    }
}

/// What is known of when somebody leaves.
fn stays(presence: &Presence, zone: &Zone, now: OffsetDateTime, is_alone: bool) -> Option<String> {
    let expected = presence.expected_at.map(|at| zone.clock(at).words);
    words::stays(expected.as_deref(), presence.is_overdue(now), is_alone)
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Present)), path)
}

pub(super) fn may<R: Right, S: Right>(permit: &Permit<R>) -> bool {
    S::ROW.roles.contains(&permit.role())
}

async fn arrive_form(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
) -> Result<Response> {
    let form = ArriveForm {
        key: new_key()?,
        ..ArriveForm::default()
    };
    page(&arrive_page(&app, &permit, &frame, form, &Problems::default()).await?)
}

async fn arrive_page(
    app: &App,
    permit: &Permit<Arrive>,
    frame: &Frame,
    form: ArriveForm,
    problems: &Problems,
) -> Result<ArrivePage> {
    let ground = Ground::read(app, permit).await?;
    let zone = ground.settings.time_zone()?;
    Ok(ArrivePage {
        shell: shell(permit, frame, "/arrive"),
        asks: ground.asks(&form.stay)?,
        stay: ground.stay(&form.stay, &zone),
        key: form.key,
        problems: in_words(problems, ground.settings.numbers()),
        here: ground.here(&zone),
        since: ground.since(&zone),
        told: ground.told,
        not_yet: not_yet(permit, ground.lacks, ground.stewards),
        avoid: ground.avoid,
        cautions: ground.cautions,
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
    Form(form): Form<ArriveForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match arrives(&app, &permit, key, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, "/arrive")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&arrive_page(&app, &permit, &frame, form, &problems).await?)
        }
    }
}

async fn arrives(app: &App, permit: &Permit<Arrive>, key: Key, form: &ArriveForm) -> Result<Done> {
    let until_us = until_typed(app, permit.scope(), &form.stay).await?;
    actions::arrive(app, permit, key, until_us).await
}

async fn until_send(
    State(app): State<App>,
    permit: Permit<Arrive>,
    frame: Frame,
    Form(form): Form<ArriveForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match stays_until(&app, &permit, key, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, "/arrive")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&arrive_page(&app, &permit, &frame, form, &problems).await?)
        }
    }
}

async fn stays_until(
    app: &App,
    permit: &Permit<Arrive>,
    key: Key,
    form: &ArriveForm,
) -> Result<Done> {
    let until_us = until_typed(app, permit.scope(), &form.stay).await?;
    let new = NewStay {
        presence_id: None,
        until_us: until_us.ok_or_else(|| Error::field("until", Problem::UntilWhen))?,
    };
    actions::stay(app, permit, key, new).await
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
        leads: ground.leads(own),
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
