//! The page to note sheets: made for one hand, its last choice kept.

use axum::extract::{Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{note_kept_sheets, note_sheets};
use super::kept::Waited;
use super::lines::{LineFor, lines_for};
use super::store::{self, LastChoice};
use super::views::{NoteSheetsForm, NoteSheetsPage};
use super::when::{self, Typed, When};
use super::{NewNote, input};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Key;
use crate::papers::{self, PaperClass, SheetSize};
use crate::problem::{Problem, Problems};
use crate::rights::{EnterBenchSheet, NoteSheets, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Adjusted;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{sheets as words, workshops as workshop_words};
use crate::web::numbers::Numbers;
use crate::web::shell::Place;
use crate::workshops::{self, Workshop};

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/sheets/new", note_form)
        .post("/rooms/{room}/sheets", note_send)
}

/// What the form to note sheets offers.
struct Ground {
    settings: Settings,
    lines: Vec<LineFor>,
    classes: Vec<PaperClass>,
    sizes: Vec<SheetSize>,
    last: Option<LastChoice>,
    leads: Vec<Workshop>,
    now: OffsetDateTime,
}

async fn ground(app: &App, permit: &Permit<NoteSheets>) -> Result<Ground> {
    let (person, now) = (permit.person().id, app.clock().now());
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                Ok(Ground {
                    settings: rooms::settings(tx).await?,
                    lines: lines_for(tx, now).await?,
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                    last: store::last_choice(tx, person).await?,
                    leads: workshops::led_by(tx, person, now).await?,
                    now,
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
        person: permit.person().id.to_string(),
        workshop: led(&ground),
        ..last_choice(&ground, &chosen)
    };
    page(&note_page(
        &permit,
        &frame,
        &ground,
        form,
        &Problems::default(),
    )?)
}

/// The person's last choice, as far as it is still offered.
fn last_choice(ground: &Ground, chosen: &Chosen) -> NoteSheetsForm {
    let first_line = ground.lines.first();
    let first_line = first_line.map_or_else(String::new, |line| line.id.to_string());
    let Some(last) = &ground.last else {
        return NoteSheetsForm {
            line: pick(&chosen.line, first_line),
            sheets: "1".to_owned(),
            ..NoteSheetsForm::default()
        };
    };
    NoteSheetsForm {
        line: pick(&chosen.line, last.line_id.to_string()),
        paper_class: last.paper_class_id.to_string(),
        sheet_size: last.sheet_size_id.to_string(),
        sheets: last.sheets.to_string(),
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
    let key = own_key(&permit, &form)?;
    match note_as_typed(&app, &permit, key, &form).await {
        Ok((seq, adjusted)) => {
            let query = when::query(adjusted);
            Ok(on_to(&app, &permit, &format!("/sheets/{seq}{query}")))
        }
        Err(error) => {
            let (problems, ground) = (to_mend(error)?, ground(&app, &permit).await?);
            mend(&note_page(&permit, &frame, &ground, form, &problems)?)
        }
    }
}

/// The form's key, unless the form is somebody else's: a phone that was handed on
/// may still hold what another noted.
fn own_key(permit: &Permit<NoteSheets>, form: &NoteSheetsForm) -> Result<Key> {
    let is_own = form.person.is_empty() || form.person == permit.person().id.to_string();
    match is_own {
        true => read_key(&form.key),
        false => Err(Error::Refused(Problem::NotYourForm)),
    }
}

async fn note_as_typed(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    form: &NoteSheetsForm,
) -> Result<(i64, Adjusted)> {
    let typed = Typed {
        when: &form.when,
        day: &form.day,
        time: &form.time,
    };
    let when = when::read(app, permit, typed).await?;
    let (new, adjusted) = read(form, when).map_err(Error::Invalid)?;
    let waited = Waited::read(form).map_err(|problem| Error::field("time", problem))?;
    let done = match waited {
        Some(waited) => {
            let new = waited.placed(new, app.clock().now());
            note_kept_sheets(app, permit, key, new, waited.said_us).await
        }
        None => note_sheets(app, permit, key, new).await,
    };
    Ok((done.map_err(at_time)?.seq, adjusted))
}

/// What is wrong with the moment stands beside the time.
pub(super) fn at_time(error: Error) -> Error {
    let Error::Invalid(problems) = error else {
        return error;
    };
    let mut shown = Problems::default();
    for (field, problem) in problems.iter() {
        let field = if field == "happened_at" {
            "time"
        } else {
            field
        };
        shown.add(field, problem.clone());
    }
    Error::Invalid(shown)
}

/// The form as typed, read: the note, and what the rule for local times did.
fn read(form: &NoteSheetsForm, when: When) -> Result<(NewNote, Adjusted), Problems> {
    let mut problems = Problems::default();
    let line = problems.take("line", read_id(&form.line));
    let class = problems.take("paper_class", read_id(&form.paper_class));
    let size = problems.take("sheet_size", read_id(&form.sheet_size));
    let count = problems.take("sheets", count(&form.sheets, form.uncounted == "yes"));
    let when = problems.take("time", when);
    let workshop = problems.take("workshop", workshop(&form.workshop));
    match (line, class, size, count, when, workshop) {
        (
            Some(line_id),
            Some(paper_class_id),
            Some(sheet_size_id),
            Some(sheets),
            Some(when),
            Some(workshop_id),
        ) => {
            let note = NewNote {
                line_id,
                paper_class_id,
                sheet_size_id,
                sheets,
                is_toned: form.toned == "yes",
                is_without_tray: form.unknown_tray == "yes",
                happened_at_us: when.map(|(at, _)| at),
                workshop_id,
            };
            Ok((note, when.map_or(Adjusted::No, |(_, adjusted)| adjusted)))
        }
        _ => Err(problems),
    }
}

/// The workshop that somebody leads now: what they note is for it unless they say otherwise.
fn led(ground: &Ground) -> String {
    let first = ground.leads.first();
    first.map_or_else(String::new, |it| it.id.to_string())
}

/// For which workshop; nothing for oneself.
fn workshop(chosen: &str) -> Result<Option<Uuid>, Problem> {
    match chosen {
        "" => Ok(None),
        id => read_id(id).map(Some),
    }
}

/// Whom a note may be for, where that is a question: for a workshop that somebody leads.
fn whom(ground: &Ground, form: &NoteSheetsForm) -> Vec<Choice> {
    if ground.leads.is_empty() && form.workshop.is_empty() {
        return Vec::new();
    }
    let leads = ground.leads.iter();
    let leads = leads.map(|it| Choice::new(it.id, workshop_words::for_workshop(&it.title)));
    let own = Choice::new("", workshop_words::FOR_ONESELF);
    leads.chain([own]).collect()
}

/// A count as typed; nothing where nobody counted, whatever stands in the field.
pub(super) fn count(typed: &str, is_uncounted: bool) -> Result<Option<u32>, Problem> {
    if is_uncounted {
        return Ok(None);
    }
    // A count is whole: the room's decimal mark does not matter.
    let count = Numbers::default().read_count(typed);
    let count = count.map_err(Problem::Number).and_then(input::sheets);
    count.map(Some)
}

fn note_page(
    permit: &Permit<NoteSheets>,
    frame: &Frame,
    ground: &Ground,
    form: NoteSheetsForm,
    problems: &Problems,
) -> Result<NoteSheetsPage> {
    let lines = ground.lines.iter();
    let mut shell = frame.shell_in(permit, Some(Place::NoteSheets));
    // Shown again after a mistake, the page still has an address of its own.
    shell.here = format!("/rooms/{}/sheets/new", permit.membership().slug);
    let nothing_stood = |(field, problem): (&str, &Problem)| {
        field == "line" && *problem == Problem::NothingStoodThere
    };
    Ok(NoteSheetsPage {
        shell,
        offers_unknown_tray: form.unknown_tray == "yes" || problems.iter().any(nothing_stood),
        toned_hint: toned_hint(&ground.lines, form.toned == "yes"),
        whom: whom(ground, &form),
        takes_film: ground.lines.iter().any(LineFor::takes_film),
        may_enter_paper: EnterBenchSheet::ROW.roles.contains(&permit.role()),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        lines: lines.map(|line| Choice::new(line.id, &line.name)).collect(),
        paper_classes: class_choices(&ground.classes),
        sheet_sizes: size_choices(&ground.sizes),
        zone: ground.settings.zone.clone(),
        days: late::days(
            &ground.settings.time_zone()?,
            ground.settings.late_note_minutes,
            ground.now,
        ),
    })
}

/// What stands beside the tick for toned prints; no tick without a toner.
fn toned_hint(lines: &[LineFor], is_ticked: bool) -> Option<String> {
    let with: Vec<String> = lines
        .iter()
        .filter(|line| line.has_toner)
        .map(|line| line.name.clone())
        .collect();
    match with.len() {
        0 if !is_ticked => None,
        count if count == lines.len() => Some(words::TONED_HERE.to_owned()),
        0 => Some(String::new()),
        _ => Some(words::toned_on(&with)),
    }
}

/// The paper classes in use.
pub(super) fn class_choices(classes: &[PaperClass]) -> Vec<Choice> {
    let classes = classes.iter().filter(|class| !class.is_retired);
    classes
        .map(|class| Choice::new(class.id, &class.name))
        .collect()
}

/// The sheet sizes in use.
pub(super) fn size_choices(sizes: &[SheetSize]) -> Vec<Choice> {
    let sizes = sizes.iter().filter(|size| !size.is_retired);
    sizes.map(|size| Choice::new(size.id, &size.name)).collect()
}
