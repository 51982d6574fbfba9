//! The pages by which a steward plans workshops and calls them off.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{CallOff, call_off, set_workshop};
use super::form::{of_workshop, read_plan};
use super::pages::{Ground, shell};
use super::store::{self, Workshop};
use super::views::{CallOffForm, CallOffPage, PlanForm, PlanPage};
use crate::app::App;
use crate::bench::{self, Line, spaces};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::needed_remark;
use crate::logbook::Done;
use crate::members::{self, Member};
use crate::problem::Problems;
use crate::rights::{LeadWorkshop, PlanWorkshop, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::workshops as words;

const WORKSHOPS: &str = "/rooms/{room}/workshops";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{WORKSHOPS}{path}");
    Pages::new()
        .get(&at("/new"), new_form)
        .post(WORKSHOPS, add)
        .get(&at("/{workshop}/change"), form)
        .post(&at("/{workshop}/change"), change)
        .get(&at("/{workshop}/call-off"), call_off_form)
        .post(&at("/{workshop}/call-off"), call_off_send)
}

/// What the form of a workshop offers.
struct Offer {
    settings: Settings,
    zone: Zone,
    old: Option<Workshop>,
    members: Vec<Member>,
    spaces: Vec<spaces::Space>,
    lines: Vec<Line>,
}

impl Offer {
    async fn read(app: &App, permit: &Permit<PlanWorkshop>, id: Option<Uuid>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), move |tx| Box::pin(Self::of(tx, id)))
            .await
    }

    async fn of(tx: &mut RoomTx, id: Option<Uuid>) -> Result<Self> {
        let old = match id {
            Some(id) => Some(store::workshop(tx, id).await?.ok_or(Error::NotFound)?),
            None => None,
        };
        let settings = rooms::settings(tx).await?;
        let mut members = members::everyone(tx).await?;
        members.retain(Member::is_active);
        Ok(Self {
            zone: settings.time_zone()?,
            settings,
            old,
            members,
            spaces: spaces::spaces(tx).await?,
            lines: bench::lines(tx).await?,
        })
    }

    fn id(&self) -> Option<Uuid> {
        self.old.as_ref().map(|old| old.id)
    }

    fn leaders(&self) -> Vec<Choice> {
        let works_here = |member: &&Member| LeadWorkshop::ROW.roles.contains(&member.role);
        let members = self.members.iter().filter(works_here);
        members.map(choice).collect()
    }

    fn payers(&self) -> Vec<Choice> {
        let room = Choice::new("", words::THE_ROOM);
        let members = self.members.iter().map(choice);
        std::iter::once(room).chain(members).collect()
    }

    fn line_choices(&self) -> Vec<Choice> {
        let kept = self.old.as_ref().map_or(&[][..], |old| &old.line_ids);
        let lines = self.lines.iter();
        let offered = lines.filter(|line| !line.is_retired || kept.contains(&line.id));
        offered
            .map(|line| Choice::new(line.id, &line.name))
            .collect()
    }
}

fn choice(member: &Member) -> Choice {
    Choice::new(member.person.to_string(), member.name.clone())
}

fn plan_page(
    permit: &Permit<PlanWorkshop>,
    frame: &Frame,
    offer: &Offer,
    (form, problems): (PlanForm, &Problems),
) -> PlanPage {
    let path = offer.id().map_or_else(
        || "/workshops/new".to_owned(),
        |id| format!("/workshops/{id}/change"),
    );
    let there = offer.old.as_ref().and_then(|old| old.space_id);
    PlanPage {
        shell: shell(permit, frame, &path),
        id: offer.id().map(|id| id.to_string()),
        leaders: offer.leaders(),
        spaces: spaces::choices(&offer.spaces, there),
        lines: offer.line_choices(),
        payers: offer.payers(),
        form,
        problems: in_words(problems, offer.settings.numbers()),
    }
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
) -> Result<Response> {
    let offer = Offer::read(&app, &permit, None).await?;
    let form = PlanForm {
        key: new_key()?,
        day: offer.zone.date_value(app.clock().now()),
        ..PlanForm::default()
    };
    let shown = (form, &Problems::default());
    page(&plan_page(&permit, &frame, &offer, shown))
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<PlanWorkshop>,
    offer: &Offer,
    form: &PlanForm,
) -> Result<Done> {
    let new = read_plan(form, offer.id(), (&offer.settings, &offer.zone));
    let new = new.map_err(Error::Invalid)?;
    set_workshop(app, permit, read_key(&form.key)?, new).await
}

/// On to the workshop, or the form again with what is to be mended.
async fn set_or_mend(
    app: &App,
    permit: &Permit<PlanWorkshop>,
    frame: &Frame,
    id: Option<Uuid>,
    form: PlanForm,
) -> Result<Response> {
    let offer = Offer::read(app, permit, id).await?;
    match set_as_typed(app, permit, &offer, &form).await {
        Ok(done) => {
            let path = format!("/workshops/{}", done.id("workshop")?);
            Ok(on_to(app, permit, &path))
        }
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&plan_page(permit, frame, &offer, shown))
        }
    }
}

async fn add(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
    Form(form): Form<PlanForm>,
) -> Result<Response> {
    set_or_mend(&app, &permit, &frame, None, form).await
}

async fn form(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let offer = Offer::read(&app, &permit, Some(id)).await?;
    let old = offer.old.as_ref().ok_or(Error::NotFound)?;
    let form = of_workshop(old, new_key()?, &offer.zone);
    let shown = (form, &Problems::default());
    page(&plan_page(&permit, &frame, &offer, shown))
}

async fn change(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<PlanForm>,
) -> Result<Response> {
    set_or_mend(&app, &permit, &frame, Some(id), form).await
}

fn call_off_page(
    permit: &Permit<PlanWorkshop>,
    frame: &Frame,
    ground: &Ground,
    (form, problems): (CallOffForm, &Problems),
) -> CallOffPage {
    let path = format!("/workshops/{}/call-off", ground.workshop.id);
    CallOffPage {
        shell: shell(permit, frame, &path),
        workshop: ground.shown(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn call_off_form(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let form = CallOffForm {
        key: new_key()?,
        ..CallOffForm::default()
    };
    let shown = (form, &Problems::default());
    page(&call_off_page(&permit, &frame, &ground, shown))
}

async fn call_off_send(
    State(app): State<App>,
    permit: Permit<PlanWorkshop>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<CallOffForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    match off_as_typed(&app, &permit, id, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &format!("/workshops/{id}"))),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&call_off_page(&permit, &frame, &ground, shown))
        }
    }
}

async fn off_as_typed(
    app: &App,
    permit: &Permit<PlanWorkshop>,
    workshop_id: Uuid,
    form: &CallOffForm,
) -> Result<Done> {
    let reason = needed_remark(&form.reason).map_err(|no| Error::field("reason", no))?;
    let off = CallOff {
        workshop_id,
        reason,
    };
    call_off(app, permit, read_key(&form.key)?, off).await
}
