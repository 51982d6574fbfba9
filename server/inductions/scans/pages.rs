//! Adding the scan of a paper, taking it away to read, and erasing it.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::views::{ScanForm, ScanPage};
use super::{MOST_BYTES, NewScan, Scan, add, remove, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions::Basis;
use crate::inductions::pages::{Ground, shell};
use crate::inductions::record_pages::readable;
use crate::inductions::showing::record_shown;
use crate::inductions::store::{Asked, Induction, inductions};
use crate::logbook::Done;
use crate::logbook::beside::file_beside;
use crate::problem::Problems;
use crate::rights::{Induct, Right, Role, SeeOwnInductions};
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::scans as words;
use crate::web::shell::Place;
use crate::web::upload::{Upload, taken_away};

const ADD: &str = "/rooms/{room}/inductions/records/{induction}/scan";
const SCAN: &str = "/rooms/{room}/inductions/scans/{scan}";
const REMOVE: &str = "/rooms/{room}/inductions/scans/{scan}/remove";

/// So many papers are looked through for those of the same day.
const MOST_PAPERS: i64 = 1_000;

/// The routes of these pages.
pub(in crate::inductions) fn pages() -> Pages {
    Pages::new()
        .get(ADD, add_form)
        .post_file(ADD, add_send, MOST_BYTES)
        .get(SCAN, file)
        .get(REMOVE, remove_asked)
        .post(REMOVE, remove_send)
}

/// Other papers of the same day without a scan: the list may be one that all signed.
async fn others(app: &App, permit: &Permit<Induct>, of: &Induction) -> Result<Vec<Choice>> {
    let (id, day) = (of.id, of.given_on.clone());
    let found = app.database().reading(permit.scope(), move |tx| {
        Box::pin(async move {
            let mut papers = inductions(tx, Asked::default(), MOST_PAPERS).await?;
            papers.retain(|paper| paper.basis == Basis::OnPaper && paper.given_on == day);
            papers.retain(|paper| paper.id != id && paper.withdrawn.is_none());
            let ids: Vec<Uuid> = papers.iter().map(|paper| paper.id).collect();
            let scanned = store::scanned(tx, &ids).await?;
            papers.retain(|paper| !scanned.contains(&paper.id));
            Ok(papers)
        })
    });
    let choice = |paper: Induction| Choice::new(paper.id.to_string(), paper.person);
    Ok(found.await?.into_iter().map(choice).collect())
}

async fn add_page(
    app: &App,
    permit: &Permit<Induct>,
    frame: &Frame,
    (ground, record): &(Ground, Induction),
    (form, problems): (ScanForm, &Problems),
) -> Result<ScanPage> {
    let path = format!("/inductions/records/{}/scan", record.id);
    Ok(ScanPage {
        shell: shell(permit, frame, (Place::Inductions, &path)),
        record: record_shown(record, &ground.titles, &ground.zone),
        others: others(app, permit, record).await?,
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn add_form(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = readable(&app, &permit, id).await?;
    let form = ScanForm {
        key: new_key()?,
        ..ScanForm::default()
    };
    let shown = (form, &Problems::default());
    page(&add_page(&app, &permit, &frame, &kept, shown).await?)
}

async fn add_send(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    upload: Upload,
) -> Result<Response> {
    let kept = readable(&app, &permit, id).await?;
    let form = ScanForm {
        key: upload.text("key"),
        also: upload.all("also").map(str::to_owned).collect(),
    };
    let Err(error) = as_sent(&app, &permit, (id, &form), upload.file).await else {
        return Ok(on_to(&app, &permit, &format!("/inductions/records/{id}")));
    };
    let problems = to_mend(error)?;
    mend(&add_page(&app, &permit, &frame, &kept, (form, &problems)).await?)
}

async fn as_sent(
    app: &App,
    permit: &Permit<Induct>,
    (induction_id, form): (Uuid, &ScanForm),
    file: Vec<u8>,
) -> Result<Done> {
    let key = read_key(&form.key)?;
    let also: Result<Vec<Uuid>, _> = form.also.iter().map(|text| read_id(text)).collect();
    let new = NewScan {
        induction_id,
        also: also.map_err(|problem| Error::field("also", problem))?,
        file,
    };
    add(app, permit, key, new).await
}

/// A scan that whoever asks may read: their own, or as a steward.
async fn readable_scan<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Scan> {
    let found = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(store::scan(tx, id)));
    let scan = found.await?.ok_or(Error::NotFound)?;
    let is_own = scan.person_id == permit.person().id;
    match is_own || permit.role() == Role::Steward {
        true => Ok(scan),
        false => Err(Error::NotFound),
    }
}

/// Sent to be kept, never shown within the room's own pages.
async fn file(
    State(app): State<App>,
    permit: Permit<SeeOwnInductions>,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let scan = readable_scan(&app, &permit, id).await?;
    let found = app.database().reading(permit.scope(), move |tx| {
        Box::pin(file_beside(tx, scan.seq))
    });
    let bytes = found.await?.ok_or(Error::NotFound)?;
    let name = format!("induction-{}.{}", scan.seq, scan.media.ending());
    Ok(taken_away(&name, scan.media.as_str(), bytes))
}

async fn remove_asked(
    State(app): State<App>,
    permit: Permit<Induct>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let scan = readable_scan(&app, &permit, id).await?;
    let path = format!("/inductions/scans/{id}/remove");
    let shell = shell(&permit, &frame, (Place::Inductions, &path));
    let back = format!("/inductions/records/{}", scan.induction_id);
    ask(shell, words::remove_question(), &path, &back)
}

async fn remove_send(
    State(app): State<App>,
    permit: Permit<Induct>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let scan = readable_scan(&app, &permit, id).await?;
    remove(&app, &permit, read_key(&form.key)?, id).await?;
    let record = scan.induction_id;
    Ok(on_to(
        &app,
        &permit,
        &format!("/inductions/records/{record}"),
    ))
}
