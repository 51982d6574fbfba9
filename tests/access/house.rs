//! A room with one of everything in it, and everyone who may come to its door.

use time::Duration;
use uuid::Uuid;
use wetside::arrivals::actions::arrive;
use wetside::handover::actions::{NewHandover, open};
use wetside::identity::accounts::NewAccount;
use wetside::identity::names::LogInName;
use wetside::identity::passwords::Password;
use wetside::identity::secret::Secret;
use wetside::identity::{Person, permit_for, tokens};
use wetside::logbook::{Asked, Author, Book};
use wetside::members::{self, actions};
use wetside::outages::What;
use wetside::outages::actions::{NewOutage, begin};
use wetside::rights::{Arrive, HandOver, Invite, KeepMembers, NoteOutages, Role, SeeRoom};

use super::air::{aired, measured};
use super::checks::{check, check_result};
use super::fittings;
use super::incidents::incident;
use super::inductions::{inductions, scan, topic};
use super::ingredients::ingredients;
use super::lamps::{fog_test, lamp};
use super::screens::paired;
use super::workshops::workshop;

use crate::harness::{Bench, Browser, PASSWORD, START, Stage, new_key};

/// Somebody who asks, by the name the snapshot has for them.
pub(crate) type Actor = (&'static str, Option<Person>);

/// The room, its things and the people.
#[derive(Clone, Debug)]
pub(crate) struct House {
    pub(crate) stage: Stage,
    pub(crate) bench: Bench,
    pub(crate) actors: Vec<Actor>,
    /// A member the pages of members are asked about.
    pub(crate) spare: Person,
    /// Whose membership is suspended.
    pub(crate) suspended: Person,
    bottle: Uuid,
    space: Uuid,
    stock: Uuid,
    note: i64,
    note_id: Uuid,
    reading: Uuid,
    link: Uuid,
    checkpoint: String,
    outage: Uuid,
    lamp: Uuid,
    fog_test: Uuid,
    check: Uuid,
    check_result: Uuid,
    flow: Uuid,
    airing: Uuid,
    incident: Uuid,
    presence: Uuid,
    workshop: Uuid,
    handover: Uuid,
    topic: Uuid,
    induction: Uuid,
    scan: Uuid,
    /// Paired screens, by the names they have among the actors.
    screens: Vec<(&'static str, Uuid, Browser)>,
}

impl House {
    pub(crate) async fn furnish(stage: Stage) -> Self {
        let bench = stage.bench().await;
        let bottle = at_the_bench(&stage, &bench).await;
        let noted = stage.note(&stage.cast.member, &bench, 0, 6).await.unwrap();
        let spare = somebody(&stage, "spare", stage.room, Role::Member).await;
        let suspended = somebody(&stage, "suspended", stage.room, Role::Steward).await;
        let both = in_both_rooms(&stage).await;
        let cast = &stage.cast;
        let actors = vec![
            ("nobody", None),
            ("stranger", Some(cast.stranger.clone())),
            ("steward-of-another-room", Some(cast.neighbour.clone())),
            ("suspended-steward", Some(suspended.clone())),
            ("member-here-steward-there", Some(both)),
            ("member", Some(cast.member.clone())),
            ("trained", Some(cast.trained.clone())),
            ("steward", Some(cast.steward.clone())),
            ("treasurer", Some(cast.treasurer.clone())),
            ("board-screen", None),
            ("door-screen", None),
        ];
        let outage = fan_off(&stage).await;
        let lamp = lamp(&stage).await;
        let topic = topic(&stage).await;
        let check = check(&stage).await;
        let space = fittings::space(&stage).await;
        let handover = handed_over(&stage, suspended.id).await;
        let induction = inductions(&stage, topic, &spare).await;
        let presence = present(&stage, &spare).await;
        Self {
            screens: screens(&stage).await,
            workshop: workshop(&stage, &spare).await,
            outage,
            lamp,
            fog_test: fog_test(&stage, lamp, bench.classes[0]).await,
            check,
            check_result: check_result(&stage, check).await,
            presence,
            handover,
            topic,
            induction,
            scan: scan(&stage, induction).await,
            bottle,
            flow: measured(&stage, space).await,
            airing: aired(&stage, space).await,
            incident: incident(&stage).await,
            space,
            stock: fittings::stock(&stage).await,
            note: noted.seq,
            note_id: noted.id("pass").unwrap(),
            reading: fittings::reading(&stage, &bench).await,
            link: invitation(&stage).await,
            checkpoint: checkpoint(&stage, suspended.id).await,
            actors,
            bench,
            spare,
            suspended,
            stage,
        }
    }

    /// A paired screen by its name among the actors, and its browser.
    pub(crate) fn screen(&self, name: &str) -> Option<(Uuid, &Browser)> {
        let found = self.screens.iter().find(|it| it.0 == name);
        found.map(|(_, id, browser)| (*id, browser))
    }

    pub(crate) async fn browser(&self, actor: &Actor) -> Browser {
        if let Some((_, browser)) = self.screen(actor.0) {
            return browser.clone();
        }
        match &actor.1 {
            Some(person) => self.stage.browser(person).await,
            None => self.stage.nobody(),
        }
    }

    /// A page's path with what is really there in the place of its names.
    pub(crate) fn page_path(&self, pattern: &str) -> String {
        let bench = &self.bench;
        let by_name = [
            ("{room}", self.stage.slug.clone()),
            ("{tray}", bench.tray.to_string()),
            ("{mix}", bench.mix.to_string()),
            ("{line}", bench.line.to_string()),
            ("{class}", bench.classes[0].to_string()),
            ("{bottle}", self.bottle.to_string()),
            ("{space}", self.space.to_string()),
            ("{stock}", self.stock.to_string()),
            ("{product}", bench.product.to_string()),
            ("{dilution}", bench.dilution.to_string()),
            ("sizes/{id}", format!("sizes/{}", bench.size)),
            ("classes/{id}", format!("classes/{}", bench.classes[0])),
            ("{seq}", self.note.to_string()),
            ("{reading}", self.reading.to_string()),
            ("{person}", self.spare.id.to_string()),
            ("{link}", self.link.to_string()),
            ("{file}", self.checkpoint.clone()),
            ("{outage}", self.outage.to_string()),
            ("{lamp}", self.lamp.to_string()),
            ("{test}", self.fog_test.to_string()),
            ("{check}", self.check.to_string()),
            ("{result}", self.check_result.to_string()),
            ("{measurement}", self.flow.to_string()),
            ("{airing}", self.airing.to_string()),
            ("{incident}", self.incident.to_string()),
            ("{presence}", self.presence.to_string()),
            ("{workshop}", self.workshop.to_string()),
            ("{screen}", self.screens[0].1.to_string()),
            ("{handover}", self.handover.to_string()),
            ("{topic}", self.topic.to_string()),
            ("{induction}", self.induction.to_string()),
            ("{scan}", self.scan.to_string()),
            // Nobody's: those that are somebody's are tried where they are made.
            ("{token}", Uuid::nil().to_string()),
            ("{note}", Uuid::nil().to_string()),
            ("{session}", Uuid::nil().to_string()),
            ("{secret}", "nothing".to_owned()),
        ];
        filled(pattern, &by_name)
    }

    /// The same for a path of the API.
    pub(crate) fn api_path(&self, pattern: &str) -> String {
        let bench = &self.bench;
        let by_name = [
            ("{room}", self.stage.slug.clone()),
            ("lines/{id}", format!("lines/{}", bench.line)),
            ("trays/{id}", format!("trays/{}", bench.tray)),
            ("bottles/{id}", format!("bottles/{}", self.bottle)),
            ("spaces/{id}", format!("spaces/{}", self.space)),
            (
                "stock-solutions/{id}",
                format!("stock-solutions/{}", self.stock),
            ),
            ("members/{id}", format!("members/{}", self.spare.id)),
            ("mixes/{id}", format!("mixes/{}", bench.mix)),
            ("sheet-sizes/{id}", format!("sheet-sizes/{}", bench.size)),
            ("classes/{id}", format!("classes/{}", bench.classes[0])),
            ("products/{id}", format!("products/{}", bench.product)),
            ("notes/{id}", format!("notes/{}", self.note_id)),
            ("readings/{id}", format!("readings/{}", self.reading)),
            ("outages/{id}", format!("outages/{}", self.outage)),
            ("lamps/{id}", format!("lamps/{}", self.lamp)),
            ("fog-tests/{id}", format!("fog-tests/{}", self.fog_test)),
            ("checks/{id}", format!("checks/{}", self.check)),
            (
                "check-results/{id}",
                format!("check-results/{}", self.check_result),
            ),
            ("air/{id}", format!("air/{}", self.space)),
            (
                "air-measurements/{id}",
                format!("air-measurements/{}", self.flow),
            ),
            ("airings/{id}", format!("airings/{}", self.airing)),
            ("presences/{id}", format!("presences/{}", self.presence)),
            ("workshops/{id}", format!("workshops/{}", self.workshop)),
            ("screens/{id}", format!("screens/{}", self.screens[0].1)),
            ("handovers/{id}", format!("handovers/{}", self.handover)),
            ("topics/{id}", format!("topics/{}", self.topic)),
            ("inductions/{id}", format!("inductions/{}", self.induction)),
        ];
        filled(pattern, &by_name)
    }

    /// A token of a person in a room with these scopes.
    pub(crate) async fn token(&self, person: &Person, slug: &str, scopes: &[&str]) -> String {
        let app = &self.stage.installation.app;
        // The suspended one's token is from before.
        let room = match permit_for::<SeeRoom>(app, person.clone(), slug).await {
            Ok(permit) => permit.room(),
            Err(_) => self.stage.room,
        };
        let (id, secret) = (Uuid::now_v7(), Secret::new().unwrap());
        let scopes: Vec<String> = scopes.iter().map(|&scope| scope.to_owned()).collect();
        sqlx::query(
            "insert into token (room_id, id, person_id, name, secret_hash, scopes, made_at, expires_at)
            values ($1, $2, $3, 'test', $4, $5, $6, $7)",
        )
        .bind(room)
        .bind(id)
        .bind(person.id)
        .bind(secret.hash())
        .bind(scopes)
        .bind(START)
        .bind(START + Duration::days(30))
        .execute(&mut self.stage.installation.db().await)
        .await
        .unwrap();
        tokens::text(room, id, &secret)
    }
}

/// What stands at the bench beside its tray; the full bottle of it.
async fn at_the_bench(stage: &Stage, bench: &Bench) -> Uuid {
    fittings::empty_tray(stage, bench.line).await;
    fittings::wash(stage, bench).await;
    ingredients(stage, bench.product).await;
    let bottle = fittings::bottle(stage).await;
    fittings::fill(stage, bottle, bench.dilution).await;
    fittings::empty_bottle(stage).await;
    bottle
}

/// One paired screen of each kind.
async fn screens(stage: &Stage) -> Vec<(&'static str, Uuid, Browser)> {
    let mut screens = Vec::new();
    for (name, kind) in [("board-screen", "board"), ("door-screen", "door")] {
        let (id, browser) = paired(stage, kind).await;
        screens.push((name, id, browser));
    }
    screens
}

fn filled(pattern: &str, by_name: &[(&str, String)]) -> String {
    let path = by_name
        .iter()
        .fold(pattern.to_owned(), |path, (name, value)| {
            path.replace(name, value)
        });
    assert!(!path.contains('{'), "nothing stands for a name in {path}");
    path
}

/// Writes in a room's book without a permit, as the machine itself does.
async fn write<W>(stage: &Stage, room: Uuid, work: W)
where
    W: for<'b, 't> FnOnce(
            &'b mut Book<'t>,
        )
            -> futures_util::future::BoxFuture<'b, wetside::error::Result<()>>
        + Send
        + Sync
        + 'static,
{
    let asked = Asked {
        actor: None,
        key: Some(new_key()),
        fingerprint: [0; 32],
    };
    let scribes = stage.installation.app.scribes();
    scribes
        .write(room, Author::Unchecked, asked, work)
        .await
        .unwrap();
}

/// A new person with a role in a room.
pub(crate) async fn somebody(stage: &Stage, part: &str, room: Uuid, role: Role) -> Person {
    let password = Password::choose(PASSWORD, &[]).unwrap();
    let name = LogInName::read(&format!("{part}.{}", stage.slug)).unwrap();
    let app = &stage.installation.app;
    let account = NewAccount::prepare(app, part.to_owned(), name, &password)
        .await
        .unwrap();
    let person = Person {
        id: account.id,
        name: account.name.clone(),
        session: None,
        is_operator: false,
    };
    write(stage, room, move |book| {
        Box::pin(async move { members::add_account(book, &account, role).await })
    })
    .await;
    person
}

/// A member of the room who keeps the other one.
async fn in_both_rooms(stage: &Stage) -> Person {
    let neighbour = stage.cast.neighbour.clone();
    let app = &stage.installation.app;
    let there = permit_for::<SeeRoom>(app, neighbour, &stage.other_slug).await;
    let both = somebody(stage, "both", there.unwrap().room(), Role::Steward).await;
    let id = both.id;
    write(stage, stage.room, move |book| {
        Box::pin(async move { members::join(book, id, Role::Member, None).await })
    })
    .await;
    both
}

/// An invitation that waits.
async fn invitation(stage: &Stage) -> Uuid {
    let app = &stage.installation.app;
    let permit = stage.permit::<Invite>(&stage.cast.steward).await.unwrap();
    actions::invite(app, &permit, new_key(), Role::Member)
        .await
        .unwrap();
    sqlx::query_scalar("select id from invitation where room_id = $1")
        .bind(stage.room)
        .fetch_one(&mut stage.installation.db().await)
        .await
        .unwrap()
}

/// The fan went off.
async fn fan_off(stage: &Stage) -> Uuid {
    let permit = stage.permit::<NoteOutages>(&stage.cast.member).await;
    let new = NewOutage {
        what: What::Fan,
        space_id: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let done = begin(app, &permit.unwrap(), new_key(), new).await.unwrap();
    done.id("outage").unwrap()
}

/// Somebody is in the room.
async fn present(stage: &Stage, person: &Person) -> Uuid {
    let permit = stage.permit::<Arrive>(person).await;
    let app = &stage.installation.app;
    let until_us = stage.an_hour().await;
    let done = arrive(app, &permit.unwrap(), new_key(), until_us)
        .await
        .unwrap();
    done.id("presence").unwrap()
}

/// The steward hands over to somebody, who has not confirmed it.
async fn handed_over(stage: &Stage, to_person_id: Uuid) -> Uuid {
    let permit = stage.permit::<HandOver>(&stage.cast.steward).await;
    let new = NewHandover { to_person_id };
    let app = &stage.installation.app;
    let done = open(app, &permit.unwrap(), new_key(), new).await.unwrap();
    done.id("handover").unwrap()
}

/// Suspends somebody, seals the book, and answers the checkpoint's file.
async fn checkpoint(stage: &Stage, suspended: Uuid) -> String {
    let app = &stage.installation.app;
    let permit = stage.permit::<KeepMembers>(&stage.cast.steward).await;
    let done = actions::suspend(app, &permit.unwrap(), new_key(), suspended).await;
    done.unwrap();
    let mut browser = stage.browser(&stage.cast.steward).await;
    let path = stage.at("/checkpoints");
    browser.post(&path, &[]).await.expect(303);
    let links = browser.get(&path).await.expect(200).page().links();
    let of_file = |(_, href): (String, String)| {
        let (_, file) = href.split_once("/checkpoints/")?;
        Some(file.to_owned())
    };
    links.into_iter().find_map(of_file).unwrap()
}
