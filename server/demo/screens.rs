//! The demo's screens, and the PINs of those who can log in. No browser is behind a
//! screen: its code was shown to nobody, and its secret is forgotten.

use std::net::Ipv4Addr;

use axum::http::HeaderMap;
use uuid::Uuid;

use super::missing;
use super::people::{OTTILIE, Who};
use super::stage::Stage;
use crate::error::Result;
use crate::identity::Client;
use crate::identity::devices::{self, Code, DeviceKind};
use crate::identity::pins::{DIGITS, Pin};
use crate::identity::secret::random;
use crate::screens::actions::{
    NewName, NewPin, NewScreen, end, pair, remove_own_pin, rename, set_pin,
};
use crate::screens::member_number;
use crate::web::shell::Display;

/// Pairs the room's screens; one of them ends at once, and one gets another name.
pub(super) async fn pair_all(stage: &mut Stage) -> Result<()> {
    pair_one(stage, DeviceKind::Board, "Wall by the sinks").await?;
    let screen_id = pair_one(stage, DeviceKind::Door, "Door").await?;
    let name = "Door on the stairs".to_owned();
    let new = NewName { screen_id, name };
    stage.act(OTTILIE, rename, new).await?;
    let old = pair_one(stage, DeviceKind::Board, "Old tablet").await?;
    stage.act(OTTILIE, end, old).await?;
    Ok(())
}

async fn pair_one(stage: &mut Stage, kind: DeviceKind, name: &str) -> Result<Uuid> {
    let client = Client {
        address: Ipv4Addr::LOCALHOST.into(),
        agent: String::new(),
    };
    let secret = devices::show_code(&stage.app, &client, &HeaderMap::new()).await?;
    let secret = secret.ok_or_else(|| missing("code"))?;
    let code = Code::of(&secret, stage.now());
    let (first, second) = code.halves();
    let new = NewScreen {
        code: format!("{first}{second}"),
        kind: kind.as_str().to_owned(),
        name: name.to_owned(),
        display: Display::Safelight.name().to_owned(),
    };
    stage.act(OTTILIE, pair, new).await?.id("screen")
}

/// Whoever can log in sets a PIN for the door; the founder was unhappy with the first.
pub(super) async fn sets_pin(stage: &mut Stage, who: Who, password: &str) -> Result<(i32, String)> {
    let mut pin = set_drawn(stage, who, password).await?;
    if who == OTTILIE {
        let take_away = async |app: &_, permit: &_, key, ()| remove_own_pin(app, permit, key).await;
        stage.act(who, take_away, ()).await?;
        pin = set_drawn(stage, who, password).await?;
    }
    let person = stage.id(who);
    let number = stage
        .reads(move |tx| Box::pin(member_number(tx, person)))
        .await?;
    Ok((number.ok_or_else(|| missing("number"))?, pin))
}

async fn set_drawn(stage: &mut Stage, who: Who, password: &str) -> Result<String> {
    let pin = drawn()?;
    let new = NewPin {
        pin: pin.clone(),
        password: password.to_owned(),
    };
    stage.act(who, set_pin, new).await?;
    Ok(pin)
}

/// Random digits that may be chosen.
fn drawn() -> Result<String> {
    loop {
        let digits = random::<DIGITS>()?.map(|byte| char::from(b'0' + byte % 10));
        let digits = String::from_iter(digits);
        if Pin::choose(&digits).is_ok() {
            return Ok(digits);
        }
    }
}
