//! A room of one's own with a fixed cast, and the bench a scenario prints on.

use std::future::Future;
use std::sync::atomic::{AtomicU32, Ordering};

use time::macros::datetime;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;
use wetside::air::FlowOf;
use wetside::air::actions::{NewMeasurement, measure};
use wetside::arrivals::over_at;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::clock::{Clock, micros};
use wetside::database::Scope;
use wetside::error::Result;
use wetside::identity::accounts::{self, NewAccount};
use wetside::identity::names::LogInName;
use wetside::identity::passwords::Password;
use wetside::identity::{Client, Permit, Person, permit_for};
use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify;
use wetside::logbook::verify_report::Report;
use wetside::logbook::{Asked, Author, Key, Recording, fingerprint};
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::products::actions::{NewProduct, set_product};
use wetside::rights::{self, Right, Role};
use wetside::rooms::Settings;
use wetside::rooms::actions::{Founder, NewRoom, open_room};
use wetside::sheets::NewNote;
use wetside::sheets::actions::note_sheets;
use wetside::starters::STARTERS;
use wetside::{bench, members, papers, products, rooms};

use super::browser::Browser;
use super::server::{Installation, alone, on_runtime, shared};

/// When scenarios begin.
pub(crate) const START: OffsetDateTime = datetime!(2026-11-25 12:00 UTC);

/// Everyone's password.
pub(crate) const PASSWORD: &str = "nine quiet enlargers";

static ROOMS: AtomicU32 = AtomicU32::new(0);
static KEYS: AtomicU32 = AtomicU32::new(1);

/// Everyone of a scenario.
#[derive(Clone, Debug)]
pub(crate) struct Cast {
    /// Keeps the room.
    pub(crate) steward: Person,
    /// May mix.
    pub(crate) trained: Person,
    /// Prints.
    pub(crate) member: Person,
    /// Keeps the money.
    pub(crate) treasurer: Person,
    /// Prints in another room.
    pub(crate) stranger: Person,
    /// Keeps another room.
    pub(crate) neighbour: Person,
}

/// A room, its people, the program and its clock.
#[derive(Clone, Debug)]
pub(crate) struct Stage {
    pub(crate) installation: Installation,
    pub(crate) room: Uuid,
    pub(crate) slug: String,
    /// The room of the neighbour.
    pub(crate) other_slug: String,
    pub(crate) cast: Cast,
}

/// A tray with developer at 1+9 in it.
#[derive(Clone, Debug)]
pub(crate) struct Bench {
    pub(crate) line: Uuid,
    pub(crate) tray: Uuid,
    pub(crate) mix: Uuid,
    pub(crate) product: Uuid,
    /// 1+9.
    pub(crate) dilution: Uuid,
    /// RC, FB, RC cool tone.
    pub(crate) classes: Vec<Uuid>,
    /// 8×10 in.
    pub(crate) size: Uuid,
}

/// Acts out a scenario in a new room of the shared installation, then checks
/// that the room's book verifies.
pub(crate) fn scenario<T, F>(test: T)
where
    T: FnOnce(Stage) -> F,
    F: Future<Output = ()>,
{
    on_runtime(async {
        let installation = shared(Clock::standing_at(START)).await;
        play(Stage::set(installation).await, test).await;
    });
}

/// The same in an installation of its own.
pub(crate) fn scenario_alone<T, F>(test: T)
where
    T: FnOnce(Stage) -> F,
    F: Future<Output = ()>,
{
    on_runtime(async {
        let installation = alone(Clock::standing_at(START)).await;
        play(Stage::set(installation).await, test).await;
    });
}

async fn play<T, F>(stage: Stage, test: T)
where
    T: FnOnce(Stage) -> F,
    F: Future<Output = ()>,
{
    test(stage.clone()).await;
    stage.check_book().await;
    stage.installation.close().await;
}

impl Stage {
    async fn set(installation: Installation) -> Self {
        let number = ROOMS.fetch_add(1, Ordering::Relaxed);
        let tag = format!("{}x{number}", std::process::id());
        let account = |part: &str| {
            let log_in_name = LogInName::read(&format!("{part}.{tag}")).unwrap();
            let password = Password::choose(PASSWORD, &[]).unwrap();
            let app = installation.app.clone();
            let name = format!("{part} {tag}");
            async move {
                NewAccount::prepare(&app, name, log_in_name, &password)
                    .await
                    .unwrap()
            }
        };
        let (steward, neighbour) = (account("steward").await, account("neighbour").await);
        let room = found(&installation, &format!("room-{tag}"), &steward).await;
        let other = found(&installation, &format!("other-{tag}"), &neighbour).await;
        let mut people = Vec::new();
        for (part, role) in [
            ("trained", Role::Trained),
            ("member", Role::Member),
            ("treasurer", Role::Treasurer),
        ] {
            let account = account(part).await;
            join(&installation, room, &account, role).await;
            people.push(person(&account));
        }
        let stranger = account("stranger").await;
        join(&installation, other, &stranger, Role::Member).await;
        let [trained, member, treasurer] = people.try_into().unwrap();
        Self {
            room,
            slug: format!("room-{tag}"),
            other_slug: format!("other-{tag}"),
            cast: Cast {
                steward: person(&steward),
                trained,
                member,
                treasurer,
                stranger: person(&stranger),
                neighbour: person(&neighbour),
            },
            installation,
        }
    }

    /// A path of the room.
    pub(crate) fn at(&self, path: &str) -> String {
        format!("/rooms/{}{path}", self.slug)
    }

    /// A browser that nobody is logged in with.
    pub(crate) fn nobody(&self) -> Browser {
        Browser::new(&self.installation.app)
    }

    /// A browser that this person is logged in with.
    pub(crate) async fn browser(&self, person: &Person) -> Browser {
        let app = &self.installation.app;
        let client = Client {
            address: std::net::Ipv4Addr::LOCALHOST.into(),
            agent: "tests".to_owned(),
        };
        let entered = accounts::enter(app, &client, None, person.id)
            .await
            .unwrap();
        let mut browser = Browser::new(app);
        browser.keep(app.address().session_cookie(), entered.session.reveal());
        browser
    }

    /// A person's permit, by the same checks as a request of theirs.
    pub(crate) async fn permit<R: Right>(&self, person: &Person) -> Result<Permit<R>> {
        permit_for(&self.installation.app, person.clone(), &self.slug).await
    }

    /// Lets time pass.
    pub(crate) fn pass(&self, time: Duration) {
        let clock = &self.installation.clock;
        clock.set(clock.now() + time);
    }

    /// Until when somebody alone says they stay who comes now: for an hour, or until they
    /// are taken for gone.
    pub(crate) async fn an_hour(&self) -> Option<i64> {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        let database = self.installation.app.database();
        let settings = database.reading(scope, |tx| Box::pin(rooms::settings(tx)));
        let now = self.installation.clock.now();
        let over_at = over_at(&settings.await.unwrap(), now).unwrap();
        Some(micros(over_at.min(now + Duration::hours(1))))
    }

    /// Checks the room's book and everything made of it.
    pub(crate) async fn check_book(&self) {
        let report = self.verified().await;
        assert!(report.is_clean(), "{report}");
    }

    /// What verifying the room's book finds.
    pub(crate) async fn verified(&self) -> Report {
        let owner = self.installation.app.owner().unwrap();
        let vault = Vault {
            data: self.installation.data.clone(),
            key_file: None,
        };
        verify(owner, KINDS, &vault, self.room).await.unwrap()
    }

    /// Sets up a tray and mixes a litre of developer at 1+9 in it.
    pub(crate) async fn bench(&self) -> Bench {
        let app = &self.installation.app;
        let (line, product, classes, size) = self.found_things().await;
        let (product, dilution) = self.with_data_sheet(product).await;
        let permit = self
            .permit::<rights::KeepBench>(&self.cast.steward)
            .await
            .unwrap();
        let tray = set_tray(app, &permit, new_key(), tray_on(line))
            .await
            .unwrap();
        let tray = tray.id("tray").unwrap();
        let permit = self
            .permit::<rights::Mix>(&self.cast.trained)
            .await
            .unwrap();
        let new = NewMix {
            vessel: VesselId::Tray(tray),
            dilution_id: dilution,
            volume_ul: 1_000_000,
            stock_id: None,
            happened_at_us: None,
        };
        let mixed = mix(app, &permit, new_key(), new).await.unwrap();
        Bench {
            line,
            tray,
            mix: mixed.id("mix").unwrap(),
            product,
            dilution,
            classes,
            size,
        }
    }

    async fn found_things(&self) -> (Uuid, products::Product, Vec<Uuid>, Uuid) {
        let scope = Scope {
            room: self.room,
            person: None,
        };
        self.installation
            .app
            .database()
            .reading(scope, |tx| {
                Box::pin(async move {
                    let lines = bench::lines(tx).await?;
                    let products = products::products(tx).await?;
                    let mut all = products.iter();
                    let developer = all
                        .find(|each| each.kind == products::Kind::Developer)
                        .unwrap();
                    let classes = papers::paper_classes(tx).await?;
                    let sizes = papers::sheet_sizes(tx).await?;
                    let size = sizes.iter().find(|size| size.name.starts_with("8×10"));
                    Ok((
                        lines[0].id,
                        developer.clone(),
                        classes.iter().map(|class| class.id).collect(),
                        size.unwrap().id,
                    ))
                })
            })
            .await
            .unwrap()
    }

    async fn with_data_sheet(&self, product: products::Product) -> (Uuid, Uuid) {
        let permit = self
            .permit::<rights::KeepProducts>(&self.cast.steward)
            .await
            .unwrap();
        let dilution = product.dilutions[0].id;
        let new = NewProduct {
            hazard_codes: vec!["H317".to_owned()],
            precaution_codes: vec!["P305+P351+P338".to_owned()],
            data_sheet_on: Some("2026-03-02".to_owned()),
            ..NewProduct::like(&product)
        };
        let app = &self.installation.app;
        let done = set_product(app, &permit, new_key(), new).await.unwrap();
        (done.id("product").unwrap(), dilution)
    }

    /// Records some exhaust of the room itself, so that a toner may start in it.
    pub(crate) async fn measured_exhaust(&self) {
        let steward = &self.cast.steward;
        let permit = self.permit::<rights::KeepAir>(steward).await.unwrap();
        let new = NewMeasurement {
            place_id: self.room,
            of: FlowOf::Exhaust,
            ul_per_s: 100_000_000,
            measured_on: "2026-11-20".to_owned(),
            measured_by: String::new(),
            how: "At the grille".to_owned(),
        };
        let app = &self.installation.app;
        measure(app, &permit, new_key(), new).await.unwrap();
    }

    /// Notes sheets of 8×10 in as this person.
    pub(crate) async fn note(
        &self,
        person: &Person,
        bench: &Bench,
        class: usize,
        sheets: u32,
    ) -> Result<wetside::logbook::Done> {
        let permit = self.permit::<rights::NoteSheets>(person).await?;
        let note = NewNote {
            line_id: bench.line,
            paper_class_id: bench.classes[class],
            sheet_size_id: bench.size,
            sheets: Some(sheets),
            is_toned: false,
            is_without_tray: false,
            happened_at_us: None,
            workshop_id: None,
        };
        note_sheets(&self.installation.app, &permit, new_key(), note).await
    }
}

/// 250 × 200 mm inside, so that a litre stands 20 mm deep.
pub(crate) fn tray_on(line_id: Uuid) -> NewTray {
    NewTray {
        id: None,
        line_id,
        name: "Developer".to_owned(),
        position: None,
        step: None,
        inside_long_tenths_mm: 2_500,
        inside_short_tenths_mm: 2_000,
        inside_depth_tenths_mm: 600,
        least_depth_tenths_mm: 100,
        is_retired: false,
    }
}

/// A key nobody used.
pub(crate) fn new_key() -> Key {
    let process = u128::from(std::process::id()) << 64;
    (process + u128::from(KEYS.fetch_add(1, Ordering::Relaxed))).to_be_bytes()
}

fn person(account: &NewAccount) -> Person {
    Person {
        id: account.id,
        name: account.name.clone(),
        session: None,
        is_operator: false,
    }
}

async fn found(installation: &Installation, slug: &str, steward: &NewAccount) -> Uuid {
    let settings = Settings::starting(
        "The cellar".to_owned(),
        "Europe/Berlin".to_owned(),
        "EUR".to_owned(),
    );
    let room = NewRoom {
        slug: slug.to_owned(),
        ..NewRoom::new(settings)
    };
    let founder = Founder::New {
        account: steward.clone(),
        set_up: None,
        is_operator: false,
    };
    let recording = Recording::ByClock(installation.clock.clone());
    let opened = open_room(&installation.app, room, founder, recording, STARTERS).await;
    opened.unwrap().room
}

async fn join(installation: &Installation, room: Uuid, account: &NewAccount, role: Role) {
    let asked = Asked {
        actor: None,
        key: Some(new_key()),
        fingerprint: fingerprint("joins", &account.id).unwrap(),
    };
    let account = account.clone();
    installation
        .app
        .scribes()
        .write(room, Author::Unchecked, asked, move |book| {
            Box::pin(async move { members::add_account(book, &account, role).await })
        })
        .await
        .unwrap();
}
