//! The pages of papers.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{set_paper_class, set_sheet_size};
use super::form::{
    CLASS_FIELDS, class_retired, of_class, of_size, read_class, read_size, size_retired,
};
use super::views::{ClassForm, ClassPage, ClassRow, PapersForm, PapersPage, SizePage, SizeRow};
use super::{PaperClass, SheetSize, store};
use crate::app::App;
use crate::darkroom::quantities::TenthsMm;
use crate::darkroom::sheet::sheet_equivalents;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::problem::Problems;
use crate::rights::{KeepPapers, Right, SeePapers};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{KeyForm, RetiredRow, ask, lying_at, renamed};
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{desk as words, papers as said};
use crate::web::shell::{Place, Shell};

const PAPERS: &str = "/rooms/{room}/papers";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    let at = |path: &str| format!("{PAPERS}{path}");
    Pages::new()
        .get(PAPERS, papers)
        .post(&at("/sizes"), add_size)
        .get(&at("/sizes/{id}"), size_form)
        .post(&at("/sizes/{id}"), change_size)
        .get(&at("/sizes/{id}/retire"), ask_size)
        .post(&at("/sizes/{id}/retire"), retire_size)
        .post(&at("/sizes/{id}/restore"), restore_size)
        .post(&at("/classes"), add_class)
        .get(&at("/classes/{id}"), class_form)
        .post(&at("/classes/{id}"), change_class)
        .get(&at("/classes/{id}/retire"), ask_class)
        .post(&at("/classes/{id}/retire"), retire_class)
        .post(&at("/classes/{id}/restore"), restore_class)
}

/// Everything the pages stand on.
struct Ground {
    settings: Settings,
    sizes: Vec<SheetSize>,
    classes: Vec<PaperClass>,
}

impl Ground {
    async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        sizes: store::sheet_sizes(tx).await?,
                        classes: store::paper_classes(tx).await?,
                    })
                })
            })
            .await
    }

    fn size(&self, id: Uuid) -> Result<&SheetSize> {
        let mut sizes = self.sizes.iter();
        sizes.find(|size| size.id == id).ok_or(Error::NotFound)
    }

    fn class(&self, id: Uuid) -> Result<&PaperClass> {
        let mut classes = self.classes.iter();
        classes.find(|class| class.id == id).ok_or(Error::NotFound)
    }
}

fn back<R: Right>(app: &App, permit: &Permit<R>) -> Response {
    let slug = &permit.membership().slug;
    see_other(app, &format!("/rooms/{slug}/papers"))
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Papers)), path)
}

async fn papers(
    State(app): State<App>,
    permit: Permit<SeePapers>,
    frame: Frame,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = PapersForm {
        key: new_key()?,
        ..PapersForm::default()
    };
    let none = Problems::default();
    page(&papers_page(&permit, &frame, &ground, form, &none)?)
}

fn papers_page<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    ground: &Ground,
    form: PapersForm,
    problems: &Problems,
) -> Result<PapersPage> {
    let sizes = ground.sizes.iter().filter(|size| !size.is_retired);
    let classes = ground.classes.iter().filter(|class| !class.is_retired);
    Ok(PapersPage {
        shell: shell(permit, frame, "/papers"),
        sizes: sizes
            .map(|size| size_row(size, &ground.settings))
            .collect::<Result<_>>()?,
        classes: classes
            .map(|class| class_row(class, &ground.settings))
            .collect(),
        retired: retired(ground),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        unit: ground.settings.lengths().unit().to_owned(),
        may_change: KeepPapers::ROW.roles.contains(&permit.role()),
    })
}

fn size_row(size: &SheetSize, settings: &Settings) -> Result<SizeRow> {
    let (long, short) = (size.long_tenths_mm.into(), size.short_tenths_mm.into());
    let area = TenthsMm::new(long).and_then(|long| long.by(TenthsMm::new(short)?));
    let sheets = area.and_then(|area| sheet_equivalents(1, area));
    let sheets = sheets.map_err(|cause| Error::fault(cause.to_string()))?;
    Ok(SizeRow {
        id: size.id.to_string(),
        name: size.name.clone(),
        sides: settings.lengths().sides(long, short),
        equivalent: settings.numbers().rounded(sheets.get(), 6, 2),
    })
}

fn class_row(class: &PaperClass, settings: &Settings) -> ClassRow {
    let numbers = settings.numbers();
    let known = class.silver.as_ref().map(|silver| {
        let coating = [
            silver.least_mg_per_m2,
            silver.usual_mg_per_m2,
            silver.most_mg_per_m2,
        ];
        let kept = [
            silver.least_kept_ppb,
            silver.usual_kept_ppb,
            silver.most_kept_ppb,
        ];
        (said::silver(coating, kept, numbers), silver.basis.clone())
    });
    let (silver, basis) = known.unwrap_or_else(|| (said::nothing(), String::new()));
    let carried = class.carry_over_ul_per_m2;
    ClassRow {
        id: class.id.to_string(),
        name: class.name.clone(),
        silver,
        basis,
        carry_over: carried
            .map_or_else(said::nothing, |carried| said::carry_over(carried, numbers)),
    }
}

fn retired(ground: &Ground) -> Vec<RetiredRow> {
    let sizes = ground.sizes.iter().filter(|size| size.is_retired);
    let sizes = sizes.map(|size| RetiredRow {
        name: size.name.clone(),
        restore: format!("/papers/sizes/{}/restore", size.id),
    });
    let classes = ground.classes.iter().filter(|class| class.is_retired);
    let classes = classes.map(|class| RetiredRow {
        name: class.name.clone(),
        restore: format!("/papers/classes/{}/restore", class.id),
    });
    sizes.chain(classes).collect()
}

async fn add_size(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Form(form): Form<PapersForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match write_size(&app, &permit, &ground, &form, None).await? {
        None => Ok(back(&app, &permit)),
        Some(problems) => mend(&papers_page(&permit, &frame, &ground, form, &problems)?),
    }
}

/// Writes a size as typed; answers what is to be mended.
async fn write_size(
    app: &App,
    permit: &Permit<KeepPapers>,
    ground: &Ground,
    form: &PapersForm,
    id: Option<Uuid>,
) -> Result<Option<Problems>> {
    let is_retired = match id {
        Some(id) => ground.size(id)?.is_retired,
        None => false,
    };
    let mut new = match read_size(form, id, ground.settings.lengths()) {
        Ok(new) => new,
        Err(problems) => return Ok(Some(problems)),
    };
    new.is_retired = is_retired;
    match set_sheet_size(app, permit, read_key(&form.key)?, new).await {
        Ok(_) => Ok(None),
        Err(error) => Ok(Some(renamed(&to_mend(error)?, &[("name", "size_name")]))),
    }
}

async fn size_form(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = of_size(ground.size(id)?, new_key()?, ground.settings.lengths());
    let none = Problems::default();
    page(&size_page(&permit, &frame, &ground, (id, form), &none))
}

async fn change_size(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<PapersForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match write_size(&app, &permit, &ground, &form, Some(id)).await? {
        None => Ok(back(&app, &permit)),
        Some(problems) => mend(&size_page(&permit, &frame, &ground, (id, form), &problems)),
    }
}

fn size_page(
    permit: &Permit<KeepPapers>,
    frame: &Frame,
    ground: &Ground,
    (id, form): (Uuid, PapersForm),
    problems: &Problems,
) -> SizePage {
    SizePage {
        shell: shell(permit, frame, &format!("/papers/sizes/{id}")),
        id: id.to_string(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        unit: ground.settings.lengths().unit().to_owned(),
    }
}

async fn ask_size(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire_size(&ground.size(id)?.name);
    let here = format!("/papers/sizes/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire_size(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let new = size_retired(ground.size(id)?, true);
    set_sheet_size(&app, &permit, read_key(&form.key)?, new).await?;
    Ok(back(&app, &permit))
}

async fn restore_size(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let new = size_retired(ground.size(id)?, false);
    set_sheet_size(&app, &permit, read_key(&form.key)?, new).await?;
    Ok(back(&app, &permit))
}

async fn add_class(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Form(form): Form<PapersForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let named = ClassForm {
        key: form.key.clone(),
        class_name: form.class_name.clone(),
        ..ClassForm::default()
    };
    match write_class(&app, &permit, &ground, &named, None).await? {
        None => Ok(back(&app, &permit)),
        Some(problems) => mend(&papers_page(&permit, &frame, &ground, form, &problems)?),
    }
}

/// Writes a class as typed; answers what is to be mended.
async fn write_class(
    app: &App,
    permit: &Permit<KeepPapers>,
    ground: &Ground,
    form: &ClassForm,
    id: Option<Uuid>,
) -> Result<Option<Problems>> {
    let old = id.map(|id| ground.class(id)).transpose()?;
    let new = match read_class(form, id, old, ground.settings.numbers()) {
        Ok(new) => new,
        Err(problems) => return Ok(Some(problems)),
    };
    match set_paper_class(app, permit, read_key(&form.key)?, new).await {
        Ok(_) => Ok(None),
        Err(error) => Ok(Some(renamed(&to_mend(error)?, CLASS_FIELDS))),
    }
}

async fn class_form(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let numbers = ground.settings.numbers();
    let form = of_class(ground.class(id)?, new_key()?, numbers);
    let none = Problems::default();
    page(&class_page(&permit, &frame, &ground, (id, form), &none))
}

async fn change_class(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ClassForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match write_class(&app, &permit, &ground, &form, Some(id)).await? {
        None => Ok(back(&app, &permit)),
        Some(problems) => mend(&class_page(&permit, &frame, &ground, (id, form), &problems)),
    }
}

fn class_page(
    permit: &Permit<KeepPapers>,
    frame: &Frame,
    ground: &Ground,
    (id, form): (Uuid, ClassForm),
    problems: &Problems,
) -> ClassPage {
    ClassPage {
        shell: shell(permit, frame, &format!("/papers/classes/{id}")),
        id: id.to_string(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn ask_class(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire_class(&ground.class(id)?.name);
    let here = format!("/papers/classes/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire_class(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let new = class_retired(ground.class(id)?, true);
    set_paper_class(&app, &permit, read_key(&form.key)?, new).await?;
    Ok(back(&app, &permit))
}

async fn restore_class(
    State(app): State<App>,
    permit: Permit<KeepPapers>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let new = class_retired(ground.class(id)?, false);
    set_paper_class(&app, &permit, read_key(&form.key)?, new).await?;
    Ok(back(&app, &permit))
}
