//! The pages to note sheets and to take a note back.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::actions::{UNDO, Undo, note_sheets, undo};
use super::store::{self, Effect};
use super::views::{NoteSheetsForm, NoteSheetsPage, SheetsNotedPage, UndoForm, UndoNotePage};
use super::{NewNote, Pass, input};
use crate::app::App;
use crate::bench::{self, Line};
use crate::board::ppb;
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::papers::{self, PaperClass, SheetSize};
use crate::problem::{Problem, Problems};
use crate::rights::{LookAtBoard, NoteSheets, Role, UndoNote};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Adjusted;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::bench as words;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/sheets/new", note_form)
        .post("/rooms/{room}/sheets", note_send)
        .get("/rooms/{room}/sheets/{seq}", noted)
        .get("/rooms/{room}/sheets/{seq}/undo", undo_form)
        .post("/rooms/{room}/sheets/{seq}/undo", undo_send)
}

/// What the form to note sheets offers.
struct Ground {
    settings: Settings,
    lines: Vec<Line>,
    classes: Vec<PaperClass>,
    sizes: Vec<SheetSize>,
    last: Option<(Uuid, Uuid, Uuid, i32)>,
}

async fn ground(app: &App, permit: &Permit<NoteSheets>) -> Result<Ground> {
    let person = permit.person().id;
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                Ok(Ground {
                    settings: rooms::settings(tx).await?,
                    lines: bench::lines(tx).await?,
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                    last: store::last_choice(tx, person).await?,
                })
            })
        })
        .await
}

/// A line that a link chose.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Chosen {
    line: String,
}

async fn note_form(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
    Query(chosen): Query<Chosen>,
) -> Result<Response> {
    let ground = ground(&app, &permit).await?;
    let form = NoteSheetsForm {
        key: new_key()?,
        when: "now".to_owned(),
        ..last_choice(&ground, &chosen)
    };
    let now = app.clock().now();
    page(&note_page(
        &permit,
        &frame,
        &ground,
        form,
        &Problems::default(),
        now,
    )?)
}

/// The person's last choice, as far as it is still offered.
fn last_choice(ground: &Ground, chosen: &Chosen) -> NoteSheetsForm {
    let first_line = ground.lines.iter().find(|line| !line.is_retired);
    let first_line = first_line.map_or_else(String::new, |line| line.id.to_string());
    let Some((line, class, size, sheets)) = ground.last else {
        return NoteSheetsForm {
            line: pick(&chosen.line, first_line),
            sheets: "1".to_owned(),
            ..NoteSheetsForm::default()
        };
    };
    NoteSheetsForm {
        line: pick(&chosen.line, line.to_string()),
        paper_class: class.to_string(),
        sheet_size: size.to_string(),
        sheets: sheets.to_string(),
        ..NoteSheetsForm::default()
    }
}

fn pick(chosen: &str, otherwise: String) -> String {
    match chosen.is_empty() {
        true => otherwise,
        false => chosen.to_owned(),
    }
}

async fn note_send(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
    Form(form): Form<NoteSheetsForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match note_as_typed(&app, &permit, key, &form).await {
        Ok((seq, adjusted)) => {
            let query = adjusted_query(adjusted);
            Ok(on_to(&app, &permit, &format!("/sheets/{seq}{query}")))
        }
        Err(error) => {
            let (problems, now) = (to_mend(error)?, app.clock().now());
            let ground = ground(&app, &permit).await?;
            mend(&note_page(&permit, &frame, &ground, form, &problems, now)?)
        }
    }
}

async fn note_as_typed(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    form: &NoteSheetsForm,
) -> Result<(i64, Adjusted)> {
    let when = when(app, permit, form).await?;
    let (new, adjusted) = read(form, when).map_err(Error::Invalid)?;
    let done = note_sheets(app, permit, key, new).await?;
    Ok((done.seq, adjusted))
}

/// A time as typed, read: nothing for just now, and what the rule for local
/// times did.
type When = Result<Option<(OffsetDateTime, Adjusted)>, Problem>;

/// When it happened, where that was not just now. Only then the room's zone is
/// asked for: most notes are of just now, and many come at once.
async fn when(app: &App, permit: &Permit<NoteSheets>, form: &NoteSheetsForm) -> Result<When> {
    if form.when != "earlier" {
        return Ok(Ok(None));
    }
    let settings = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?;
    let local = format!("{}T{}", form.day.trim(), form.time.trim());
    let at = settings.time_zone()?.instant(&local);
    Ok(at.map(Some).map_err(|_| Problem::NotATime))
}

/// The form as typed, read: the note, and what the rule for local times did.
fn read(form: &NoteSheetsForm, when: When) -> Result<(NewNote, Adjusted), Problems> {
    let mut problems = Problems::default();
    let line = problems.take("line", read_id(&form.line));
    let class = problems.take("paper_class", read_id(&form.paper_class));
    let size = problems.take("sheet_size", read_id(&form.sheet_size));
    // A count is whole: the room's decimal mark does not matter.
    let count = Numbers::default().read_count(&form.sheets);
    let count = count.map_err(Problem::Number).and_then(input::sheets);
    let count = problems.take("sheets", count);
    let when = problems.take("time", when);
    match (line, class, size, count, when) {
        (Some(line_id), Some(paper_class_id), Some(sheet_size_id), Some(sheets), Some(when)) => {
            let note = NewNote {
                line_id,
                paper_class_id,
                sheet_size_id,
                sheets: Some(sheets),
                is_toned: false,
                is_without_tray: false,
                happened_at_us: when.map(|(at, _)| micros(at)),
            };
            Ok((note, when.map_or(Adjusted::No, |(_, adjusted)| adjusted)))
        }
        _ => Err(problems),
    }
}

fn adjusted_query(adjusted: Adjusted) -> &'static str {
    match adjusted {
        Adjusted::No => "",
        Adjusted::MovedForward => "?time=moved",
        Adjusted::FirstOfTwo => "?time=first",
    }
}

fn note_page(
    permit: &Permit<NoteSheets>,
    frame: &Frame,
    ground: &Ground,
    form: NoteSheetsForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<NoteSheetsPage> {
    let lines = ground.lines.iter().filter(|line| !line.is_retired);
    let classes = ground.classes.iter().filter(|class| !class.is_retired);
    let sizes = ground.sizes.iter().filter(|size| !size.is_retired);
    let mut shell = frame.shell_in(permit, Some(Place::NoteSheets));
    // Shown again after a mistake, the page still has an address of its own.
    shell.here = format!("/rooms/{}/sheets/new", permit.membership().slug);
    Ok(NoteSheetsPage {
        shell,
        form,
        problems: in_words(problems, ground.settings.numbers()),
        lines: lines.map(|line| Choice::new(line.id, &line.name)).collect(),
        paper_classes: classes
            .map(|class| Choice::new(class.id, &class.name))
            .collect(),
        sheet_sizes: sizes.map(|size| Choice::new(size.id, &size.name)).collect(),
        days: days(&ground.settings, now)?,
    })
}

/// The days a late note may name, today first.
fn days(settings: &Settings, now: OffsetDateTime) -> Result<Vec<Choice>> {
    let zone = settings.time_zone()?;
    let back = i64::from(settings.late_note_minutes) / (24 * 60);
    let days = (0..=back.clamp(0, 31)).map(|back| {
        let day = now - Duration::days(back);
        Choice::new(zone.date_value(day), zone.day(day).words)
    });
    Ok(days.collect())
}

/// What the address says of the time.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Noted {
    time: String,
}

async fn noted(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
    Query(query): Query<Noted>,
) -> Result<Response> {
    let found = look_at(&app, &permit, seq).await?;
    let time_note = match query.time.as_str() {
        "moved" => Some(words::moved_forward()),
        "first" => Some(words::first_of_two()),
        _ => None,
    };
    let noted = noted_page(&permit, &frame, &found, app.clock().now())?;
    page(&SheetsNotedPage { time_note, ..noted })
}

fn noted_page(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    (settings, pass, effects): &(Settings, Pass, Vec<Effect>),
    now: OffsetDateTime,
) -> Result<SheetsNotedPage> {
    let (zone, numbers) = (settings.time_zone()?, settings.numbers());
    let is_undone = pass.reversed_by.is_some();
    let until = may_undo_until(pass, permit.person().id, permit.role(), now);
    Ok(SheetsNotedPage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        seq: pass.seq,
        sheets: pass.sheets.to_string(),
        paper: paper(pass).unwrap_or_else(|| words::FILM.to_owned()),
        line: pass.line_name.clone(),
        line_id: pass.line_id.to_string(),
        at: zone.words(pass.happened_at, now),
        effects: effects_in_words(effects, numbers),
        time_note: None,
        may_correct: !is_undone && permit.role() == Role::Steward,
        undo_until: until.map(|until| zone.words(until, now)),
        is_undone,
    })
}

/// The paper of a note; nothing for film.
fn paper(pass: &Pass) -> Option<String> {
    let (size, class) = pass.sheet_size.as_ref().zip(pass.paper_class.as_ref())?;
    Some(format!("{size}, {class}"))
}

/// Until when this reader may take the note back.
fn may_undo_until(
    pass: &Pass,
    reader: Uuid,
    role: Role,
    now: OffsetDateTime,
) -> Option<OffsetDateTime> {
    let until = pass.recorded_at + UNDO;
    let is_own = pass.person_id == reader;
    let may = pass.reversed_by.is_none() && role != Role::Treasurer;
    (may && is_own && now <= until).then_some(until)
}

fn effects_in_words(effects: &[Effect], numbers: Numbers) -> Vec<String> {
    if effects.is_empty() {
        return vec![words::WORE_NOTHING.to_owned()];
    }
    effects
        .iter()
        .map(|effect| {
            let used = ppb(effect.mix_spent_nl, effect.charged_ul.saturating_mul(1_000));
            words::effect(
                &effect.product,
                &spent(effect.spent_nl, numbers),
                &numbers.percent_used(used),
            )
        })
        .collect()
}

fn spent(nanolitres: i64, numbers: Numbers) -> String {
    numbers.volume((nanolitres + 500) / 1_000)
}

async fn look_at<R: crate::rights::Right>(
    app: &App,
    permit: &Permit<R>,
    seq: i64,
) -> Result<(Settings, Pass, Vec<Effect>)> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let pass = store::pass_at(tx, seq).await?.ok_or(Error::NotFound)?;
                Ok((settings, pass, store::effects(tx, seq).await?))
            })
        })
        .await
}

async fn undo_form(
    State(app): State<App>,
    permit: Permit<UndoNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
) -> Result<Response> {
    let found = look_at(&app, &permit, seq).await?;
    let form = UndoForm {
        key: new_key()?,
        ..UndoForm::default()
    };
    let now = app.clock().now();
    page(&undo_page(
        &permit,
        &frame,
        &found,
        form,
        &Problems::default(),
        now,
    )?)
}

async fn undo_send(
    State(app): State<App>,
    permit: Permit<UndoNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
    Form(form): Form<UndoForm>,
) -> Result<Response> {
    let found = look_at(&app, &permit, seq).await?;
    let key = read_key(&form.key)?;
    match undo_as_typed(&app, &permit, key, found.1.id, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &format!("/sheets/{seq}"))),
        Err(error) => {
            let problems = to_mend(error)?;
            let now = app.clock().now();
            mend(&undo_page(&permit, &frame, &found, form, &problems, now)?)
        }
    }
}

async fn undo_as_typed(
    app: &App,
    permit: &Permit<UndoNote>,
    key: Key,
    pass_id: Uuid,
    form: &UndoForm,
) -> Result<Done> {
    let reason = input::reason(&form.reason);
    let reason = reason.map_err(|problem| Error::field("reason", problem))?;
    let wanted = Undo { pass_id, reason };
    undo(app, permit, key, wanted).await
}

fn undo_page(
    permit: &Permit<UndoNote>,
    frame: &Frame,
    (settings, pass, effects): &(Settings, Pass, Vec<Effect>),
    form: UndoForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<UndoNotePage> {
    let numbers = settings.numbers();
    let effects = effects
        .iter()
        .map(|effect| words::gives_back(&effect.product, &spent(effect.spent_nl, numbers)));
    Ok(UndoNotePage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        seq: pass.seq,
        note: words::note(pass.sheets, paper(pass).as_deref(), &pass.line_name),
        at: settings.time_zone()?.words(pass.happened_at, now),
        effects: effects.collect(),
        asks_reason: pass.person_id != permit.person().id,
        form,
        problems: in_words(problems, numbers),
    })
}
