//! How the people of the demo come into the room, and what becomes of some.

use data_encoding::BASE32_NOPAD;
use time::{Duration, OffsetDateTime};

use super::draw::Draw;
use super::missing;
use super::people::{
    BENNO, CASIMIR, CORIN, EMERIC, FENNA, JASPER, LOG_IN, NADJA, OTTILIE, PARTS, Part, Someone, Who,
};
use super::screens;
use super::stage::Stage;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Person;
use crate::identity::accounts::NewAccount;
use crate::identity::links::{self, Kind};
use crate::identity::names::LogInName;
use crate::identity::passwords::Password;
use crate::identity::secret::{Secret, random};
use crate::members::actions::{
    LinkMade, NewRole, change_role, end_access, invite, make_reset_link, restore, revoke, suspend,
};
use crate::members::{Joiner, accept};
use crate::rights::Role;

/// Somebody who can log in, with the password to print.
#[derive(Clone, Debug)]
pub struct LogIn {
    /// The name others see.
    pub name: &'static str,
    /// What they may do.
    pub role: Role,
    /// The log-in name.
    pub log_in_name: &'static str,
    /// The password.
    pub password: String,
    /// Their number in the room.
    pub number: i32,
    /// Their PIN for the door.
    pub pin: String,
}

/// A random password that a person can type.
fn password() -> Result<String> {
    let drawn = BASE32_NOPAD.encode(&random::<10>()?).to_lowercase();
    let quarters = [0..4, 4..8, 8..12, 12..16].into_iter();
    let quarters: Vec<&str> = quarters.filter_map(|each| drawn.get(each)).collect();
    Ok(quarters.join("-"))
}

/// Makes somebody's account: of a few with a password that is printed, of the
/// others with none that anybody knows.
async fn account(
    app: &App,
    seed: i64,
    who: Who,
    at: OffsetDateTime,
) -> Result<(NewAccount, Option<String>)> {
    let Part {
        name, log_in_name, ..
    } = &PARTS[who.0];
    let wrong = |problem| Error::field("password", problem);
    let log_in_name = LogInName::read(log_in_name).map_err(wrong)?;
    let (mut account, password) = match LOG_IN.contains(&who) {
        true => {
            let password = password()?;
            let chosen = Password::choose(&password, &[]).map_err(wrong)?;
            let name = (*name).to_owned();
            let account = NewAccount::prepare(app, name, log_in_name, &chosen).await?;
            (account, Some(password))
        }
        false => {
            let account = NewAccount::without_password(app, (*name).to_owned(), log_in_name)?;
            (account, None)
        }
    };
    let number = i64::try_from(who.0).unwrap_or(0);
    account.id = Draw::of(seed, "person", number).id(at);
    Ok((account, password))
}

/// The account of who opens the room, and the password to print.
pub(super) async fn founder(
    app: &App,
    seed: i64,
    at: OffsetDateTime,
) -> Result<(NewAccount, Option<String>)> {
    account(app, seed, OTTILIE, at).await
}

/// Puts everyone on the list: the founder is in, the others are outside.
pub(super) async fn list(
    stage: &mut Stage,
    founder: &NewAccount,
    password: Option<String>,
) -> Result<()> {
    for (place, part) in PARTS.iter().enumerate() {
        let person = Person {
            id: founder.id,
            name: part.name.to_owned(),
            session: None,
            is_operator: false,
        };
        let someone = Someone::outside(stage.seed, Who(place), person);
        stage.everyone.push(someone);
    }
    stage.becomes(OTTILIE, Some(Role::Steward));
    keep(stage, OTTILIE, password).await
}

/// Keeps how somebody gets in, to print it.
async fn keep(stage: &mut Stage, who: Who, password: Option<String>) -> Result<()> {
    let Some(password) = password else {
        return Ok(());
    };
    let part = &PARTS[who.0];
    let (number, pin) = screens::sets_pin(stage, who, &password).await?;
    stage.log_ins.push(LogIn {
        name: part.name,
        role: part.role,
        log_in_name: part.log_in_name,
        password,
        number,
        pin,
    });
    Ok(())
}

/// Lets somebody join by an invitation that a steward hands over.
pub(super) async fn joins(stage: &mut Stage, who: Who) -> Result<()> {
    let role = PARTS[who.0].role;
    let made: LinkMade = stage.act(OTTILIE, invite, role).await?;
    let address = made.address.ok_or_else(|| missing("invitation"))?;
    let secret = address.rsplit('/').next().unwrap_or_default();
    let link = links::look(&stage.app, Kind::Join, &Secret::received(secret)).await?;
    stage.passes(Duration::minutes(4));
    let (account, password) = account(&stage.app, stage.seed, who, stage.now()).await?;
    stage.everyone[who.0].person.id = account.id;
    accept(&stage.app, &link, Joiner::New(account)).await?;
    stage.becomes(who, Some(role));
    keep(stage, who, password).await
}

/// What becomes of some members.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) enum Change {
    /// Casimir keeps the room too.
    OtherSteward,
    /// Nadja may mix.
    NadjaMixes,
    /// Emeric may mix.
    EmericMixes,
    /// Corin's membership rests.
    CorinRests,
    /// Corin is back.
    CorinIsBack,
    /// Fenna forgot the password.
    ForgottenPassword,
    /// Benno leaves.
    BennoLeaves,
    /// Jasper's membership rests.
    JasperRests,
    /// An invitation went to the wrong address.
    RevokedInvitation,
}

/// Lets a change come about.
pub(super) async fn changes(stage: &mut Stage, change: Change) -> Result<()> {
    match change {
        Change::OtherSteward => promote(stage, CASIMIR, Role::Steward).await,
        Change::NadjaMixes => promote(stage, NADJA, Role::Trained).await,
        Change::EmericMixes => promote(stage, EMERIC, Role::Trained).await,
        Change::CorinRests => rests(stage, CORIN).await,
        Change::JasperRests => rests(stage, JASPER).await,
        Change::CorinIsBack => {
            let person = stage.id(CORIN);
            stage.act(OTTILIE, restore, person).await?;
            stage.becomes(CORIN, Some(PARTS[CORIN.0].role));
            Ok(())
        }
        Change::BennoLeaves => {
            let person = stage.id(BENNO);
            stage.act(OTTILIE, end_access, person).await?;
            stage.becomes(BENNO, None);
            Ok(())
        }
        Change::ForgottenPassword => {
            let person = stage.id(FENNA);
            stage.act(OTTILIE, make_reset_link, person).await?;
            Ok(())
        }
        Change::RevokedInvitation => {
            let made = stage.act(OTTILIE, invite, Role::Member).await?;
            let invitation = made.done.id("invitation")?;
            stage.act(OTTILIE, revoke, invitation).await?;
            Ok(())
        }
    }
}

async fn promote(stage: &mut Stage, who: Who, role: Role) -> Result<()> {
    let person = stage.id(who);
    let new = NewRole { person, role };
    stage.act(OTTILIE, change_role, new).await?;
    stage.becomes(who, Some(role));
    for log_in in &mut stage.log_ins {
        if log_in.log_in_name == PARTS[who.0].log_in_name {
            log_in.role = role;
        }
    }
    Ok(())
}

async fn rests(stage: &mut Stage, who: Who) -> Result<()> {
    let person = stage.id(who);
    stage.act(OTTILIE, suspend, person).await?;
    stage.becomes(who, None);
    Ok(())
}
