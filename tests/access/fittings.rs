//! What stands in the house beside the bench of the harness.

use uuid::Uuid;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::bench::bottles::actions::{NewBottle, set_bottle};
use wetside::bench::finishing::actions::{Joining, NewFinishing, join_wash, set_finishing};
use wetside::bench::spaces::actions::{NewSpace, set_space};
use wetside::mixes::actions::{NewMix, VesselId, mix};
use wetside::mixes::readings::{NewReading, Taken, look};
use wetside::mixes::stock::actions::{NewStock, make_stock};
use wetside::products::actions::{NewProduct, set_product};
use wetside::products::{Form, Kind};
use wetside::rights::{KeepBench, KeepProducts, Mix, NoteSheets, TestMix};

use crate::harness::{Bench, Stage, new_key, tray_on};

/// A temperature that somebody took.
pub(super) async fn reading(stage: &Stage, bench: &Bench) -> Uuid {
    let permit = stage.permit::<TestMix>(&stage.cast.member).await.unwrap();
    let new = NewReading {
        mix_id: bench.mix,
        taken: Taken::Temperature(200),
        remark: String::new(),
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let done = look(app, &permit, new_key(), new).await.unwrap();
    done.id("reading").unwrap()
}

/// A tray that waits for a mix.
pub(super) async fn empty_tray(stage: &Stage, line: Uuid) {
    let steward = &stage.cast.steward;
    let permit = stage.permit::<KeepBench>(steward).await.unwrap();
    let tray = NewTray {
        name: "Stop bath".to_owned(),
        ..tray_on(line)
    };
    let app = &stage.installation.app;
    set_tray(app, &permit, new_key(), tray).await.unwrap();
}

/// Times of the first class, and a print of it in the wash.
pub(super) async fn wash(stage: &Stage, bench: &Bench) {
    let (line_id, paper_class_id) = (bench.line, bench.classes[0]);
    let times = NewFinishing {
        line_id,
        paper_class_id,
        fix_s: 60,
        longest_fix_s: 120,
        rinse_s: 30,
        wash_aid_s: None,
        wash_with_aid_s: None,
        wash_without_aid_s: 300,
        basis: "invented for this test".to_owned(),
    };
    let app = &stage.installation.app;
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let set = set_finishing(app, &permit.unwrap(), new_key(), times).await;
    set.unwrap();
    let print = Joining {
        line_id,
        paper_class_id,
        had_wash_aid: false,
    };
    let permit = stage.permit::<NoteSheets>(&stage.cast.member).await;
    let joined = join_wash(app, &permit.unwrap(), new_key(), print).await;
    joined.unwrap();
}

/// A bottle that stands beside the trays.
pub(super) async fn bottle(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let bottle = NewBottle {
        id: None,
        name: "Brown".to_owned(),
        holds_ul: 1_000_000,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_bottle(app, &permit.unwrap(), new_key(), bottle).await;
    set.unwrap().id("bottle").unwrap()
}

/// A bottle that waits for a mix.
pub(super) async fn empty_bottle(stage: &Stage) {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let bottle = NewBottle {
        id: None,
        name: "Clear".to_owned(),
        holds_ul: 1_000_000,
        is_retired: false,
    };
    let app = &stage.installation.app;
    set_bottle(app, &permit.unwrap(), new_key(), bottle)
        .await
        .unwrap();
}

/// Fresh developer in a bottle.
pub(super) async fn fill(stage: &Stage, bottle: Uuid, dilution_id: Uuid) {
    let permit = stage.permit::<Mix>(&stage.cast.trained).await;
    let new = NewMix {
        vessel: VesselId::Bottle(bottle),
        dilution_id,
        volume_ul: 500_000,
        stock_id: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    mix(app, &permit.unwrap(), new_key(), new).await.unwrap();
}

/// A space without lines.
pub(super) async fn space(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
    let space = NewSpace {
        id: None,
        name: "Cellar".to_owned(),
        position: None,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_space(app, &permit.unwrap(), new_key(), space).await;
    set.unwrap().id("space").unwrap()
}

/// Stock solution of a powder.
pub(super) async fn stock(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepProducts>(&stage.cast.steward).await;
    let powder = NewProduct {
        form: Form::Powder,
        packet_makes_ul: Some(1_000_000),
        data_sheet_on: Some("2026-03-02".to_owned()),
        ..NewProduct::named("Alder powder".to_owned(), Kind::Developer)
    };
    let app = &stage.installation.app;
    let set = set_product(app, &permit.unwrap(), new_key(), powder).await;
    let new = NewStock {
        product_id: set.unwrap().id("product").unwrap(),
        packets_thousandths: 1_000,
        happened_at_us: None,
    };
    let permit = stage.permit::<Mix>(&stage.cast.trained).await;
    let made = make_stock(app, &permit.unwrap(), new_key(), new).await;
    made.unwrap().id("stock_solution").unwrap()
}
