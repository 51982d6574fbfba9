//! Pages on paper: how many, how large, with what on them, and black on white
//! whatever the display.

use std::path::{Path, PathBuf};

use super::chromium::Chromium;
use super::picture::Picture;
use super::site::Site;
use super::tab::Tab;
use super::tools::poppler;
use crate::access::house::House;
use crate::harness::{Stage, scenario};

/// What a sheet of paper should be: its path, millimetres, pages, and words on it.
struct Wanted {
    path: String,
    size: (f64, f64),
    pages: usize,
    words: &'static [&'static str],
}

const A4: (f64, f64) = (210.0, 297.0);

/// A page that is printed: its path as the router has it, its size, pages and words.
type Row = (&'static str, (f64, f64), usize, &'static [&'static str]);

const LABEL: &[&str] = &["Neutral paper developer", "1+9", "H317", "Mixed"];

const PRINTED: [Row; 11] = [
    (
        "/rooms/{room}/board",
        A4,
        2,
        &[
            "Is the bench good?",
            "Developer",
            "Ready",
            "of its capacity",
            "In bottles",
        ],
    ),
    (
        "/rooms/{room}/bench-sheet",
        A4,
        2,
        &[
            "Bench sheet",
            "As supplied: H317",
            "White light on.",
            "Write here",
        ],
    ),
    (
        "/rooms/{room}/emergency",
        A4,
        1,
        &[
            "Emergency",
            "White light on.",
            "Poison centre",
            "P305+P351+P338",
        ],
    ),
    (
        "/rooms/{room}/trays/{tray}",
        A4,
        3,
        &[
            "Developer",
            "Ready",
            "How it wore",
            "What happened",
            "6 sheets",
        ],
    ),
    (
        "/rooms/{room}/inductions/records/{induction}",
        A4,
        1,
        &["Induction of spare", "Eyewash, version 1", "Inducted"],
    ),
    (
        "/rooms/{room}/door-sheet",
        A4,
        1,
        &[
            "The cellar",
            "Point your phone",
            "/arrive",
            "Gloves and tongs",
        ],
    ),
    (
        "/rooms/{room}/inductions/in-force",
        A4,
        1,
        &["Inductions in force", "as of"],
    ),
    (
        "/rooms/{room}/mixes/{mix}/label?size=strip",
        (62.0, 100.0),
        1,
        LABEL,
    ),
    (
        "/rooms/{room}/mixes/{mix}/label?size=a7",
        (74.0, 105.0),
        1,
        LABEL,
    ),
    (
        "/rooms/{room}/mixes/{mix}/label?size=a6",
        (105.0, 148.0),
        1,
        LABEL,
    ),
    (
        "/rooms/{room}/mixes/{mix}/label?size=a5",
        (148.0, 210.0),
        1,
        LABEL,
    ),
];

fn wanted(house: &House) -> impl Iterator<Item = Wanted> {
    PRINTED.iter().map(|&(pattern, size, pages, words)| Wanted {
        path: house.page_path(pattern),
        size,
        pages,
        words,
    })
}

#[test]
fn pages_that_are_printed() {
    scenario(async |stage: Stage| {
        let house = House::furnish(stage).await;
        let site = Site::open(&house.stage.installation).await;
        let chromium = Chromium::start();
        let steward = &house.stage.cast.steward;
        let tab = site.phone(&chromium, Some(steward)).await;
        tab.keep("safelight", "warned").await;
        let file = house.stage.installation.data.join("print.pdf");
        for display in ["day", "safelight"] {
            tab.keep("display", display).await;
            for wanted in wanted(&house) {
                print(&tab, &wanted, &file).await;
            }
        }
    });
}

async fn print(tab: &Tab, wanted: &Wanted, file: &Path) {
    let path = &wanted.path;
    tab.open(path).await;
    std::fs::write(file, tab.on_paper().await).unwrap();
    let about = poppler("pdfinfo", &[file.as_os_str()]);
    assert_eq!(fact(&about, "Pages:"), wanted.pages.to_string(), "{path}");
    let size = fact(&about, "Page size:");
    let points: Vec<f64> = size
        .split(' ')
        .filter_map(|word| word.parse().ok())
        .collect();
    let millimetres = |points: f64| points * 25.4 / 72.0;
    let (wide, high) = (millimetres(points[0]), millimetres(points[1]));
    let is_near = |one: f64, other: f64| (one - other).abs() < 0.6;
    assert!(
        is_near(wide, wanted.size.0) && is_near(high, wanted.size.1),
        "{path}: {size}"
    );
    let text = poppler(
        "pdftotext",
        &["-layout".as_ref(), file.as_os_str(), "-".as_ref()],
    );
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for words in wanted.words {
        assert!(text.contains(words), "{path}: {words:?} in {text}");
    }
    is_black_on_white(file, path);
}

fn fact(about: &str, name: &str) -> String {
    let line = about.lines().find_map(|line| line.strip_prefix(name));
    line.unwrap().trim().to_owned()
}

/// Most of the paper stays white, something is on it, and nothing has a colour.
fn is_black_on_white(file: &Path, path: &str) {
    let root: PathBuf = file.with_extension("");
    let arguments = ["-r", "40", "-f", "1", "-l", "1", "-singlefile", "-png"];
    let mut arguments: Vec<&std::ffi::OsStr> = arguments.iter().map(AsRef::as_ref).collect();
    arguments.extend([file.as_os_str(), root.as_os_str()]);
    poppler("pdftoppm", &arguments);
    let picture = Picture::read(&std::fs::read(root.with_extension("png")).unwrap());
    let white = picture.count(|pixel| pixel == [255, 255, 255]);
    let dark = picture.count(|pixel| pixel[0] < 90);
    assert!(
        2 * white > picture.count(|_| true),
        "{path}: the paper is not white"
    );
    assert!(dark > 200, "{path}: nothing on it");
    let coloured = picture.first_that(|pixel| pixel[0] != pixel[1] || pixel[1] != pixel[2]);
    assert_eq!(coloured, None, "{path}");
}
