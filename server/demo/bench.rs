//! The demo's bench: one line that is good, one to test first, one used up.

use time::Duration;
use uuid::Uuid;

use super::people::Cast;
use super::{Stage, finishing, missing};
use crate::bench::actions::{NewLine, NewTray, set_line, set_tray};
use crate::bench::{self, Step};
use crate::darkroom::incompatibility::Group;
use crate::database::Scope;
use crate::error::Result;
use crate::identity::Person;
use crate::mixes::actions::{NewMix, VesselId, mix};
use crate::papers::{self, PaperClass, SheetSize};
use crate::products::actions::{NewDilution, NewProduct, set_product};
use crate::products::{self, CapacityFigure, Kind, Place, Product};
use crate::rights::{KeepBench, KeepProducts, Mix, NoteSheets};
use crate::sheets::NewNote;
use crate::sheets::actions::note_sheets;

const INVENTED: &str = "invented for the demo";
const HOUR_S: i64 = 3_600;
const LITRE_UL: i64 = 1_000_000;

/// What the bench is set up from.
struct Ground {
    first_line: Uuid,
    developer: Product,
    classes: Vec<PaperClass>,
    sizes: Vec<SheetSize>,
}

async fn ground(stage: &Stage) -> Result<Ground> {
    let scope = Scope {
        room: stage.room,
        person: None,
    };
    stage
        .app
        .database()
        .reading(scope, |tx| {
            Box::pin(async move {
                let lines = bench::lines(tx).await?;
                let products = products::products(tx).await?;
                Ok(Ground {
                    first_line: lines.first().ok_or_else(|| missing("line"))?.id,
                    developer: products
                        .into_iter()
                        .find(|product| product.kind == Kind::Developer)
                        .ok_or_else(|| missing("product"))?,
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                })
            })
        })
        .await
}

/// Sets the bench up and prints on it.
pub(super) async fn act(stage: &mut Stage, cast: &Cast) -> Result<()> {
    let ground = ground(stage).await?;
    stage.before(Duration::days(2));
    let developer = with_data_sheet(stage, cast, &ground.developer).await?;
    let stop = product(stage, cast, stop_bath(&ground)).await?;
    let fixer = product(stage, cast, fixer(&ground)).await?;
    let first = ground.first_line;
    let window = line(stage, cast, "Window line").await?;
    let corner = line(stage, cast, "Corner line").await?;
    let mut trays = Vec::new();
    for (line, name, step) in [
        (first, "Developer", Step::Developer),
        (first, "Stop bath", Step::StopBath),
        (first, "Fixer", Step::Fixer),
        (window, "Developer", Step::Developer),
        (corner, "Developer", Step::Developer),
        (corner, "Spare tray", Step::Any),
    ] {
        trays.push(tray(stage, cast, line, (name, step)).await?);
    }
    finishing::act(stage, cast, first, &ground.classes).await?;
    let pours = [
        (3, trays[0], developer),
        (3, trays[1], stop),
        (3, trays[2], fixer),
        (7, trays[3], developer),
        (6, trays[4], developer),
    ];
    let mut script: Vec<(i64, Act)> = Vec::new();
    for (hours, tray, dilution) in pours {
        script.push((hours * 60, Act::Pour(tray, dilution)));
    }
    script.extend(notes([first, window, corner]));
    // The book never runs backwards: the longest ago comes first.
    script.sort_by_key(|(minutes, _)| -minutes);
    for (minutes, act) in script {
        stage.before(Duration::minutes(minutes));
        match act {
            Act::Pour(tray, dilution) => pour(stage, &cast.trained, tray, dilution).await?,
            Act::Note(note) => print(stage, cast, &ground, note).await?,
        }
    }
    stage.before(Duration::ZERO);
    Ok(())
}

/// Something that happens at the bench.
enum Act {
    /// A litre of a dilution is mixed in a tray.
    Pour(Uuid, Uuid),
    /// Sheets go down a line.
    Note(Printed),
}

/// Sheets of 8×10 in that went down a line.
struct Printed {
    line: Uuid,
    by_trained: bool,
    /// RC, FB, RC cool tone.
    class: usize,
    sheets: u32,
}

async fn product(stage: &mut Stage, cast: &Cast, new: NewProduct) -> Result<Uuid> {
    let permit = stage.permit::<KeepProducts>(&cast.steward).await?;
    let key = stage.key();
    let done = set_product(&stage.app, &permit, key, new).await?;
    let id = done.id("product")?;
    let found = stage
        .app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { products::product(tx, id).await })
        })
        .await?
        .ok_or_else(|| missing("product"))?;
    let dilution = found.dilutions.first();
    Ok(dilution.ok_or_else(|| missing("dilution"))?.id)
}

/// The starter developer with the safety data a steward would copy in.
async fn with_data_sheet(stage: &mut Stage, cast: &Cast, developer: &Product) -> Result<Uuid> {
    let new = NewProduct {
        hazard_codes: codes("H302 H317 H318 H341 H351 H410"),
        precaution_codes: codes("P280 P305+P351+P338 P302+P352 P308+P313"),
        data_sheet_on: Some("2026-03-02".to_owned()),
        ..NewProduct::like(developer)
    };
    product(stage, cast, new).await
}

fn codes(text: &str) -> Vec<String> {
    text.split(' ').map(str::to_owned).collect()
}

fn stop_bath(ground: &Ground) -> NewProduct {
    NewProduct {
        groups: vec![Group::Acid, Group::StopBath],
        hazard_codes: codes("H314"),
        precaution_codes: codes("P280 P303+P361+P353 P305+P351+P338 P310"),
        dilutions: vec![dilution(ground, 19, 24, [80, 40, 80])],
        ..invented("Larchfold stop bath", Kind::StopBath)
    }
}

fn fixer(ground: &Ground) -> NewProduct {
    NewProduct {
        groups: vec![Group::Fixer, Group::Thiosulfate, Group::Ammonium],
        hazard_codes: codes("H319"),
        precaution_codes: codes("P280 P305+P351+P338"),
        dilutions: vec![dilution(ground, 4, 48, [40, 20, 40])],
        ..invented("Larchfold fixer", Kind::Fixer)
    }
}

fn invented(name: &str, kind: Kind) -> NewProduct {
    NewProduct {
        data_sheet_on: Some("2026-03-02".to_owned()),
        ..NewProduct::named(name.to_owned(), kind)
    }
}

fn dilution(ground: &Ground, parts: i64, hours: i64, sheets: [i64; 3]) -> NewDilution {
    let classes = ground.classes.iter().zip(sheets);
    NewDilution {
        parts_thousandths: parts * 1_000,
        tray_life_s: hours * HOUR_S,
        bottle_life_s: 7 * hours * HOUR_S,
        life_basis: INVENTED.to_owned(),
        capacities: classes
            .map(|(class, sheets)| CapacityFigure {
                paper_class_id: class.id,
                place: Place::Single,
                sheets_per_litre_thousandths: sheets * 1_000,
                basis: INVENTED.to_owned(),
            })
            .collect(),
        ..NewDilution::default()
    }
}

async fn line(stage: &mut Stage, cast: &Cast, name: &str) -> Result<Uuid> {
    let permit = stage.permit::<KeepBench>(&cast.steward).await?;
    let new = NewLine {
        id: None,
        name: name.to_owned(),
        position: None,
        space_id: None,
        is_retired: false,
    };
    let key = stage.key();
    set_line(&stage.app, &permit, key, new).await?.id("line")
}

async fn tray(
    stage: &mut Stage,
    cast: &Cast,
    line_id: Uuid,
    (name, step): (&str, Step),
) -> Result<Uuid> {
    let permit = stage.permit::<KeepBench>(&cast.steward).await?;
    let new = NewTray {
        id: None,
        line_id,
        name: name.to_owned(),
        position: None,
        step: Some(step),
        inside_long_tenths_mm: 3_400,
        inside_short_tenths_mm: 2_800,
        inside_depth_tenths_mm: 650,
        least_depth_tenths_mm: 100,
        is_retired: false,
    };
    let key = stage.key();
    set_tray(&stage.app, &permit, key, new).await?.id("tray")
}

async fn pour(stage: &mut Stage, by: &Person, tray_id: Uuid, dilution_id: Uuid) -> Result<()> {
    let permit = stage.permit::<Mix>(by).await?;
    let new = NewMix {
        vessel: VesselId::Tray(tray_id),
        dilution_id,
        volume_ul: LITRE_UL,
        stock_id: None,
        happened_at_us: None,
    };
    let key = stage.key();
    mix(&stage.app, &permit, key, new).await?;
    Ok(())
}

/// Minutes ago, and who printed how many sheets of which class where.
fn notes([first, window, corner]: [Uuid; 3]) -> Vec<(i64, Act)> {
    let notes = [
        (340, corner, true, 0, 40),
        (280, corner, false, 1, 22),
        (260, window, true, 0, 18),
        (200, corner, true, 0, 18),
        (150, window, false, 1, 34),
        (120, first, true, 0, 6),
        (60, first, false, 0, 4),
        (20, first, false, 1, 2),
    ];
    notes
        .into_iter()
        .map(|(minutes, line, by_trained, class, sheets)| {
            let printed = Printed {
                line,
                by_trained,
                class,
                sheets,
            };
            (minutes, Act::Note(printed))
        })
        .collect()
}

async fn print(stage: &mut Stage, cast: &Cast, ground: &Ground, printed: Printed) -> Result<()> {
    let person = match printed.by_trained {
        true => &cast.trained,
        false => &cast.member,
    };
    let permit = stage.permit::<NoteSheets>(person).await?;
    let class = ground.classes.get(printed.class);
    let size = ground.sizes.get(1).ok_or_else(|| missing("sizes"))?;
    let note = NewNote {
        line_id: printed.line,
        paper_class_id: class.ok_or_else(|| missing("classes"))?.id,
        sheet_size_id: size.id,
        sheets: Some(printed.sheets),
        is_toned: false,
        is_without_tray: false,
        happened_at_us: None,
    };
    let key = stage.key();
    note_sheets(&stage.app, &permit, key, note).await?;
    Ok(())
}
