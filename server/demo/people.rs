//! The invented people of the demo, and their random passwords.

use data_encoding::BASE32_NOPAD;

use super::Stage;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Person;
use crate::identity::accounts::NewAccount;
use crate::identity::names::LogInName;
use crate::identity::passwords::Password;
use crate::identity::secret::random;
use crate::logbook::{Asked, Author, fingerprint};
use crate::members;
use crate::rights::Role;

/// Somebody of the demo.
pub(super) struct Part {
    name: &'static str,
    log_in_name: &'static str,
    role: Role,
}

/// Keeps the demo room.
pub(super) const STEWARD: Part = Part {
    name: "Ottilie Brandvik",
    log_in_name: "ottilie",
    role: Role::Steward,
};

const OTHERS: [Part; 3] = [
    Part {
        name: "Mirea Dunholt",
        log_in_name: "mirea",
        role: Role::Trained,
    },
    Part {
        name: "Tomas Ferrow",
        log_in_name: "tomas",
        role: Role::Member,
    },
    Part {
        name: "Pavo Sandmoor",
        log_in_name: "pavo",
        role: Role::Treasurer,
    },
];

/// Log-in names and passwords: name, role, log-in name, password.
pub type Passwords = Vec<(String, Role, String, String)>;

/// Somebody who may now log in.
pub(super) struct Arrived {
    pub(super) account: NewAccount,
    name: &'static str,
    role: Role,
    password: String,
}

impl Arrived {
    fn person(&self) -> Person {
        Person {
            id: self.account.id,
            name: self.name.to_owned(),
            session: None,
            is_operator: false,
        }
    }
}

/// Everyone of the demo.
pub(super) struct Cast {
    pub(super) steward: Person,
    pub(super) trained: Person,
    pub(super) member: Person,
    pub(super) passwords: Passwords,
}

/// Makes an account with a random password.
pub(super) async fn account(app: &App, part: &Part) -> Result<Arrived> {
    let drawn = BASE32_NOPAD.encode(&random::<10>()?).to_lowercase();
    let quarters: Vec<&str> = [0..4, 4..8, 8..12, 12..16]
        .into_iter()
        .filter_map(|quarter| drawn.get(quarter))
        .collect();
    let password = quarters.join("-");
    let wrong = |problem| Error::field("password", problem);
    let chosen = Password::choose(&password, &[]).map_err(wrong)?;
    let log_in_name = LogInName::read(part.log_in_name).map_err(wrong)?;
    let account = NewAccount::prepare(app, part.name.to_owned(), log_in_name, &chosen).await?;
    Ok(Arrived {
        account,
        name: part.name,
        role: part.role,
        password,
    })
}

/// Lets the others join.
pub(super) async fn arrive(stage: &mut Stage, steward: Arrived) -> Result<Cast> {
    let mut everyone = vec![steward];
    for part in &OTHERS {
        let arrived = account(&stage.app, part).await?;
        join(stage, &arrived).await?;
        everyone.push(arrived);
    }
    let passwords = everyone
        .iter()
        .map(|each| {
            let log_in_name = each.account.log_in_name.as_str().to_owned();
            (
                each.name.to_owned(),
                each.role,
                log_in_name,
                each.password.clone(),
            )
        })
        .collect();
    let person = |role: Role| {
        let found = everyone.iter().find(|each| each.role == role);
        found
            .map(Arrived::person)
            .ok_or_else(|| super::missing("people"))
    };
    Ok(Cast {
        steward: person(Role::Steward)?,
        trained: person(Role::Trained)?,
        member: person(Role::Member)?,
        passwords,
    })
}

async fn join(stage: &mut Stage, arrived: &Arrived) -> Result<()> {
    let asked = Asked {
        actor: None,
        key: Some(stage.key()),
        fingerprint: fingerprint("demo_joins", &arrived.account.id)?,
    };
    let (account, role) = (arrived.account.clone(), arrived.role);
    stage
        .app
        .scribes()
        .write(stage.room, Author::Unchecked, asked, move |book| {
            Box::pin(async move { members::add_account(book, &account, role).await })
        })
        .await?;
    Ok(())
}
