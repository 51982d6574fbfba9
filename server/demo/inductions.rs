//! What the demo's people are told: the starter set on the first day, a word with each
//! who joins, and a developer that not everybody was told of.

use uuid::Uuid;

use super::INVENTED;
use super::missing;
use super::people::{MIREA, OTTILIE, TOMAS, Who};
use super::stage::Stage;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions::actions::{NewInduction, Withdrawal, induct, withdraw};
use crate::inductions::confirming::confirm_own;
use crate::inductions::scans::{self, NewScan};
use crate::logbook::Done;
use crate::products::Kind;
use crate::products::actions::{NewProduct, set_product};
use crate::rights::ConfirmInductions;
use crate::rooms;
use crate::topics::actions::{NewTopic, copy_starter, set_topic};
use crate::topics::input::GOOD_MONTHS;
use crate::topics::{self, Required, Topic};
use crate::web::days;

/// Joined so lately that nobody has had the time: comes in under a steward's eyes.
const NEWCOMER: Who = Who(43);

/// So many days after the first one, papers of those who were there before end: soon
/// after six months.
const PAPERS_GOOD_DAYS: i32 = 195;

/// The paper that those who were there before signed.
const PAPER: &[u8] = include_bytes!("paper.pdf");

/// The steward copies the starter set in, and declares that she knows it: nobody else
/// could induct her.
pub(super) async fn begin(stage: &mut Stage) -> Result<()> {
    stage.act(OTTILIE, copy_starter, ()).await?;
    let declared = told(stage, &[OTTILIE]).await?;
    stage.act(OTTILIE, induct, declared).await?;
    Ok(())
}

/// Everything that is asked for, told these people today.
async fn told(stage: &Stage, who: &[Who]) -> Result<NewInduction> {
    let topics = stage.reads(|tx| Box::pin(topics::topics(tx))).await?;
    let in_use = topics.iter().filter(|topic| !topic.is_retired);
    Ok(NewInduction {
        person_ids: who.iter().map(|who| stage.id(*who)).collect(),
        topic_ids: in_use.map(|topic| topic.id).collect(),
        given_on: None,
        is_on_paper: false,
        remark: String::new(),
        renews_id: None,
    })
}

/// Inducts somebody who has just joined: those of the first day have a paper from
/// before.
pub(super) async fn welcomes(stage: &mut Stage, who: Who, is_first_day: bool) -> Result<()> {
    if who == NEWCOMER {
        return Ok(());
    }
    let mut new = told(stage, &[who]).await?;
    if is_first_day {
        new.is_on_paper = true;
        new.given_on = Some(paper_day(stage).await?);
        new.remark = "Signed sheet in the grey binder".to_owned();
    }
    let record = records(stage, who, new).await?;
    if is_first_day {
        scans_paper(stage, record).await?;
    }
    Ok(())
}

async fn scans_paper(stage: &mut Stage, induction_id: Uuid) -> Result<Uuid> {
    let scan = NewScan {
        induction_id,
        also: Vec::new(),
        file: PAPER.to_vec(),
    };
    stage.act(OTTILIE, scans::add, scan).await?.id("scan")
}

/// The day that the papers of those who were there before carry.
async fn paper_day(stage: &Stage) -> Result<String> {
    let today = today(stage).await?;
    let last = days::later(&today, PAPERS_GOOD_DAYS).map_err(Error::fault)?;
    days::months_after(&last, -GOOD_MONTHS).map_err(Error::fault)
}

async fn today(stage: &Stage) -> Result<String> {
    let settings = stage.reads(|tx| Box::pin(rooms::settings(tx))).await?;
    Ok(settings.time_zone()?.date_value(stage.now()))
}

/// The steward records it, and the person confirms it.
async fn records(stage: &mut Stage, who: Who, new: NewInduction) -> Result<Uuid> {
    let is_on_paper = new.is_on_paper;
    let record = stage.act(OTTILIE, induct, new).await?.id("induction")?;
    if !is_on_paper {
        confirms(stage, who).await?;
    }
    Ok(record)
}

async fn confirms(stage: &mut Stage, who: Who) -> Result<Done> {
    let confirms = async |app: &App, permit: &Permit<ConfirmInductions>, key, ()| {
        confirm_own(app, permit, key).await
    };
    stage.act(who, confirms, ()).await
}

/// A record of somebody else's evening is withdrawn and its scan erased, and the right
/// one made.
pub(super) async fn mistaken(stage: &mut Stage) -> Result<()> {
    let new = told(stage, &[MIREA]).await?;
    let mistaken = records(stage, MIREA, new.clone()).await?;
    let scan = scans_paper(stage, mistaken).await?;
    stage.act(OTTILIE, scans::remove, scan).await?;
    let wanted = Withdrawal {
        induction_id: mistaken,
        reason: "Written down for the wrong evening".to_owned(),
    };
    stage.act(OTTILIE, withdraw, wanted).await?;
    records(stage, MIREA, new).await?;
    Ok(())
}

/// Somebody's induction is renewed long before it ends.
pub(super) async fn renewed(stage: &mut Stage) -> Result<()> {
    let new = told(stage, &[TOMAS]).await?;
    let first = records(stage, TOMAS, new.clone()).await?;
    let renewal = NewInduction {
        renews_id: Some(first),
        remark: "Asked again about the eyewash".to_owned(),
        ..new
    };
    records(stage, TOMAS, renewal).await?;
    Ok(())
}

/// A text is set right; those who know the old one are asked on renewal.
pub(super) async fn reworded(stage: &mut Stage) -> Result<()> {
    let topics = stage.reads(|tx| Box::pin(topics::topics(tx))).await?;
    let eyewash = topics.iter().find(|topic| topic.title == "Eyewash");
    let eyewash: &Topic = eyewash.ok_or_else(|| missing("topic"))?;
    let new = NewTopic {
        body: format!("{}\n\nHere it hangs left of the sink.", eyewash.body),
        ..NewTopic::like(eyewash, false)
    };
    stage.act(OTTILIE, set_topic, new).await?;
    Ok(())
}

/// A developer comes in that asks for a word of its own before it is opened; two have
/// had it, the others not yet.
pub(super) async fn new_developer(stage: &mut Stage) -> Result<()> {
    let new = NewProduct {
        hazard_codes: vec!["H317".to_owned(), "H334".to_owned()],
        precaution_codes: vec!["P280".to_owned()],
        data_sheet_on: Some(today(stage).await?),
        ..NewProduct::named("Larchfold lith developer".to_owned(), Kind::Developer)
    };
    let product = stage.act(OTTILIE, set_product, new).await?.id("product")?;
    let topic = NewTopic {
        id: None,
        title: "Lith developer".to_owned(),
        body: format!(
            "Both parts can make you allergic, through the skin and through the air. Pour them \
             with the fan on, and cover the tray between prints. Its own data sheet comes first. \
             This text is {INVENTED}."
        ),
        required: Required::ByProduct(vec![product]),
        good_months: Some(GOOD_MONTHS),
        asks_anew: true,
        is_retired: false,
    };
    let topic = stage.act(OTTILIE, set_topic, topic).await?.id("topic")?;
    for who in [TOMAS, MIREA] {
        let new = NewInduction {
            topic_ids: vec![topic],
            ..told(stage, &[who]).await?
        };
        records(stage, who, new).await?;
    }
    Ok(())
}
