//! What is made to be printed, with invented data: the chart of wear, labels, the bench
//! sheet.

use askama::Template;
use time::macros::datetime;
use wetside::address::PublicAddress;
use wetside::bench_sheet::views::{BenchSheetPage, LineOnSheet, MixOnSheet, TrayOnSheet};
use wetside::emergency::views::RoomHelp;
use wetside::labels::views::{DoorSheetPage, LabelPage, Size};
use wetside::labels::{LabelOf, QrCode, label};
use wetside::rooms::Settings;
use wetside::web::chart::{Event, Point, WearChart, WearOverTime};
use wetside::web::dates::Zone;
use wetside::web::drawing::{Standing, VerdictWords};
use wetside::web::shell::{Place, Shell};

use super::bench_pages::moment;
use super::{Page, strings};

pub(crate) const PAGES: &[Page] = &[
    ("label-strip", |shell| a_label(shell, Size::Strip)),
    ("label-a7", |shell| a_label(shell, Size::A7)),
    ("label-a6", |shell| a_label(shell, Size::A6)),
    ("label-a5", |shell| a_label(shell, Size::A5)),
    ("label-strip-full", |shell| a_full_label(shell, Size::Strip)),
    ("label-a7-full", |shell| a_full_label(shell, Size::A7)),
    ("label-a6-full", |shell| a_full_label(shell, Size::A6)),
    ("label-a5-full", |shell| a_full_label(shell, Size::A5)),
    ("bench-sheet", bench_sheet),
    ("door-sheet", door_sheet),
];

fn door_sheet(shell: Shell) -> String {
    let leads_to = "https://darkroom.example/rooms/cellar/arrive".to_owned();
    let page = DoorSheetPage {
        shell: Shell {
            place: Some(Place::Present),
            ..shell
        },
        room: "The cellar".to_owned(),
        code: QrCode::of(&leads_to).unwrap(),
        leads_to,
    };
    page.render().unwrap()
}

/// An evening of an invented mix.
pub(crate) fn wear() -> WearChart {
    let began = datetime!(2026-11-26 13:10 UTC);
    let now = datetime!(2026-11-26 16:22 UTC);
    let at = |minutes: i64| began + time::Duration::minutes(minutes);
    let notes = [
        (40, 12),
        (62, 18),
        (66, 20),
        (110, 26),
        (150, 31),
        (155, 36),
    ];
    let point = |(minutes, percent): (i64, i64)| Point {
        at: at(minutes),
        used_ppb: percent * 10_000_000,
    };
    let mut events = vec![Event {
        at: began,
        what: "1\u{a0}L mixed.".to_owned(),
    }];
    for (minutes, _) in notes {
        events.push(Event {
            at: at(minutes),
            what: "6 sheets of 8×10 in, RC, noted.".to_owned(),
        });
    }
    let input = WearOverTime {
        began,
        now,
        capacity: [(0, 0)].into_iter().chain(notes).map(point).collect(),
        life: [(0, 0), (192, 40)].into_iter().map(point).collect(),
        life_ends: Some(at(480)),
        test_first_ppb: 800_000_000,
        events,
    };
    WearChart::draw(input, &Zone::utc()).unwrap()
}

fn label_of(codes: &[&str]) -> LabelOf {
    LabelOf {
        vessel: "Developer".to_owned(),
        place: "Long bench".to_owned(),
        link_path: "/rooms/north-quay/trays/0199aa00-0000-7000-8000-000000000001".to_owned(),
        product: "Larch print developer".to_owned(),
        parts_thousandths: Some(9_000),
        volume_ul: 1_000_000,
        mixed_at: datetime!(2026-11-26 13:10 UTC),
        mixed_by: Some("Ines Vatry".to_owned()),
        use_by: Some(datetime!(2026-11-26 21:10 UTC)),
        hazard_codes: strings(codes),
    }
}

fn page_of(shell: Shell, of: &LabelOf, size: Size) -> String {
    let settings = Settings::starting(
        "North Quay Darkroom".to_owned(),
        "UTC".to_owned(),
        "EUR".to_owned(),
    );
    let address = PublicAddress::parse("https://darkroom.example/wetside").unwrap();
    let shell = Shell {
        place: Some(Place::Board),
        ..shell
    };
    let page = LabelPage {
        back: shell.at("/trays/t1"),
        here: shell.at("/mixes/m1/label"),
        is_replace: false,
        label: label(of, size, &settings, &address, shell.demo).unwrap(),
        shell,
    };
    page.render().unwrap()
}

fn a_label(shell: Shell, size: Size) -> String {
    page_of(shell, &label_of(&["H317", "H319", "H411"]), size)
}

/// As much as a label may have to say: names as long as they may be, many codes.
fn a_full_label(shell: Shell, size: Size) -> String {
    let codes = [
        "H290", "H302", "H312", "H314", "H317", "H318", "H332", "H334", "H341", "H351", "H361",
        "H373", "H400", "H410",
    ];
    let long = |text: &str| format!("{text} {}", "of the long name ".repeat(5))[..80].to_owned();
    let of = LabelOf {
        vessel: long("Second developer"),
        place: long("Window bench"),
        product: long("Larch print developer"),
        mixed_by: Some(long("Ines Vatry")),
        parts_thousandths: Some(9_125),
        ..label_of(&codes)
    };
    page_of(shell, &of, size)
}

fn tray(name: &str, standing: Standing, reason: &str, mix: Option<&str>) -> TrayOnSheet {
    TrayOnSheet {
        name: name.to_owned(),
        verdict: VerdictWords { standing },
        reason: reason.to_owned(),
        mix: mix.map(|title| MixOnSheet {
            title: title.to_owned(),
            litres: "1\u{a0}L".to_owned(),
            mixed: moment("Thu 26 Nov 2026, 13:10"),
            use_by: Some(moment("Thu 26 Nov 2026, 21:10")),
            codes: "H317, H319".to_owned(),
        }),
    }
}

fn bench_sheet(shell: Shell) -> String {
    let good = "36\u{a0}% of its capacity used, 40\u{a0}% of its life.";
    let line = |name: &str| LineOnSheet {
        name: name.to_owned(),
        trays: vec![
            tray(
                "Developer",
                Standing::Ready,
                good,
                Some("Larch print developer 1+9"),
            ),
            tray(
                "Stop bath",
                Standing::TestFirst,
                good,
                Some("Mild stop bath 1+19"),
            ),
            tray(
                "Fixer",
                Standing::Replace,
                "All of its life used.",
                Some("Clear fixer 1+4"),
            ),
            tray(
                "Spare",
                Standing::NothingRecorded,
                "No mix is recorded here: look before you pour.",
                None,
            ),
        ],
    };
    let page = BenchSheetPage {
        shell: Shell {
            place: Some(Place::Board),
            ..shell
        },
        as_of: moment("Thu 26 Nov 2026, 17:02"),
        lines: vec![line("Long bench"), line("Window bench")],
        paper_classes: strings(&["RC", "FB"]),
        sheet_sizes: strings(&["8×10 in", "5×7 in", "11×14 in"]),
        may_enter: true,
        cautions: strings(&[
            "Larch print developer, concentrate as supplied: H317, H319. Read the supplier’s safety data sheet before you pour.",
            "Clear fixer: no hazard codes are on file. That says nothing about it: read the supplier’s safety data sheet.",
        ]),
        room: Some(RoomHelp {
            emergency_number: "112".to_owned(),
            poison_centre: "000 111 222".to_owned(),
            address: "4 Quay Lane, rear yard, cellar door".to_owned(),
            contacts: "Ines Vatry, 000 333 444".to_owned(),
            eyewash: "Left of the sink".to_owned(),
            data_sheets: String::new(),
        }),
        precautions: Vec::new(),
    };
    page.render().unwrap()
}
