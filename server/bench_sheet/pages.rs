//! The page of the bench sheet.

use axum::extract::State;
use axum::response::Response;
use time::OffsetDateTime;

use super::views::{BenchSheetPage, LineOnSheet, MixOnSheet, TrayOnSheet};
use crate::app::App;
use crate::board::{self, LineNow, TrayNow, life_ends};
use crate::emergency;
use crate::emergency::views::{Precaution, RoomHelp};
use crate::error::Result;
use crate::identity::Permit;
use crate::mixes::Mix;
use crate::papers;
use crate::rights::{EnterBenchSheet, LookAtBoard, Right};
use crate::rooms::Settings;
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::drawing::VerdictWords;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::messages::drawing as words;
use crate::web::messages::verdicts;
use crate::web::shell::Place;

/// The sheet's route.
#[must_use]
pub fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/bench-sheet", bench_sheet)
}

/// Everything the sheet stands on.
struct Ground {
    settings: Settings,
    lines: Vec<LineNow>,
    paper_classes: Vec<String>,
    sheet_sizes: Vec<String>,
    help: RoomHelp,
    precautions: Vec<Precaution>,
}

async fn bench_sheet(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
) -> Result<Response> {
    let now = app.clock().now();
    let ground = ground(&app, &permit, now).await?;
    page(&sheet(&permit, &frame, ground, now)?)
}

async fn ground(app: &App, permit: &Permit<LookAtBoard>, now: OffsetDateTime) -> Result<Ground> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let (settings, help, precautions) = emergency::on_file(tx).await?;
                let classes = papers::paper_classes(tx).await?.into_iter();
                let sizes = papers::sheet_sizes(tx).await?.into_iter();
                Ok(Ground {
                    lines: board::lines_now(tx, now, &settings).await?,
                    settings,
                    paper_classes: classes
                        .filter(|class| !class.is_retired)
                        .map(|class| class.name)
                        .collect(),
                    sheet_sizes: sizes
                        .filter(|size| !size.is_retired)
                        .map(|size| size.name)
                        .collect(),
                    help,
                    precautions,
                })
            })
        })
        .await
}

fn sheet(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    ground: Ground,
    now: OffsetDateTime,
) -> Result<BenchSheetPage> {
    let zone = ground.settings.time_zone()?;
    let on_sheet = |line: &LineNow| LineOnSheet {
        name: line.line.name.clone(),
        trays: line
            .trays
            .iter()
            .map(|each| tray_on_sheet(each, &ground.settings, &zone))
            .collect(),
    };
    let lines: Vec<LineOnSheet> = ground.lines.iter().map(on_sheet).collect();
    Ok(BenchSheetPage {
        shell: frame.shell_in(permit, Some(Place::Board)),
        as_of: zone.on_paper(now),
        cautions: cautions(&ground.lines),
        lines,
        paper_classes: ground.paper_classes,
        sheet_sizes: ground.sheet_sizes,
        may_enter: EnterBenchSheet::ROW.roles.contains(&permit.role()),
        room: Some(ground.help),
        precautions: each_once(ground.precautions),
    })
}

fn tray_on_sheet(each: &TrayNow, settings: &Settings, zone: &Zone) -> TrayOnSheet {
    let numbers = settings.numbers();
    let on_sheet = |mix: &Mix| MixOnSheet {
        title: match mix.product_id {
            Some(_) => format!(
                "{} {}",
                verdicts::mix_name(mix.product_name.as_deref()),
                numbers.dilution(mix.parts_thousandths)
            ),
            None => verdicts::mix_name(mix.product_name.as_deref()),
        },
        litres: numbers.volume(mix.charged_ul),
        mixed: zone.on_paper(mix.mixed_at),
        use_by: life_ends(mix).map(|at| zone.on_paper(at)),
        codes: mix.hazard_codes.join(", "),
    };
    TrayOnSheet {
        name: each.tray.name.clone(),
        verdict: VerdictWords {
            standing: verdicts::standing(each.judgement.verdict),
        },
        reason: verdicts::reason(&each.judgement, numbers, zone),
        mix: each.mix.as_ref().map(on_sheet),
    }
}

/// Each statement once, with every product it stands for.
fn each_once(all: Vec<Precaution>) -> Vec<Precaution> {
    let mut once: Vec<Precaution> = Vec::new();
    for one in all {
        match once.iter_mut().find(|known| known.code == one.code) {
            Some(known) => known.product = format!("{}, {}", known.product, one.product),
            None => once.push(one),
        }
    }
    once
}

/// What each product that stands on the bench asks for, once.
fn cautions(lines: &[LineNow]) -> Vec<String> {
    let trays = lines.iter().flat_map(|line| &line.trays);
    let mixes = trays.filter_map(|each| each.mix.as_ref());
    let mut cautions: Vec<String> = Vec::new();
    for mix in mixes {
        let caution = words::caution(
            &verdicts::mix_name(mix.product_name.as_deref()),
            &mix.hazard_codes,
        );
        if !cautions.contains(&caution) {
            cautions.push(caution);
        }
    }
    cautions
}
