//! Sizes of paper and their sheet equivalents.

use wetside::darkroom::quantities::{Area, TenthsMm};
use wetside::darkroom::sheet::{STANDARD_SIZES, SheetSize, SizeSource, sheet_equivalents};

use super::{COMMON_PRACTICE, near, same};

const INCH: &str = "1 in = 25.4 mm exactly; equivalents by area";
const ISO_216: &str = "ISO 216, from memory";
/// Sides as that library has them; areas and equivalents by multiplying.
const PAPERSIZE: &str = "ISO 216 as the library papersize (PyPI) has it";

fn standard(name: &str) -> SheetSize {
    STANDARD_SIZES
        .iter()
        .find(|size| size.name == name)
        .unwrap()
        .size
}

#[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
fn check(name: &str, mm: (f64, f64), cm2: f64, equivalents: f64, source: &str) {
    let size = standard(name);
    near(name, size.short().get() as f64 / 10.0, mm.0, 0.001, source);
    near(name, size.long().get() as f64 / 10.0, mm.1, 0.001, source);
    let area = size.area().unwrap();
    near(name, area.get() as f64 / 10_000.0, cm2, 0.005, source);
    let found = sheet_equivalents(1, area).unwrap().get() as f64 / 1e6;
    near(name, found, equivalents, 0.001, source);
}

#[test]
pub(super) fn inch_sizes() {
    check("5×7 in", (127.0, 177.8), 225.806, 0.4375, INCH);
    check("8×10 in", (203.2, 254.0), 516.128, 1.0, INCH);
    check("9.5×12 in", (241.3, 304.8), 735.48, 1.425, INCH);
    check("11×14 in", (279.4, 355.6), 993.546, 1.925, INCH);
    check("12×16 in", (304.8, 406.4), 1_238.707, 2.4, INCH);
    check("16×20 in", (406.4, 508.0), 2_064.512, 4.0, INCH);
    check("20×24 in", (508.0, 609.6), 3_096.77, 6.0, INCH);
}

#[test]
pub(super) fn iso_216_sizes() {
    check("A3", (297.0, 420.0), 1_247.4, 2.416_84, PAPERSIZE);
    check("A4", (210.0, 297.0), 623.7, 1.208_42, PAPERSIZE);
    check("A5", (148.0, 210.0), 310.8, 0.602_2, PAPERSIZE);
    check("A6", (105.0, 148.0), 155.4, 0.301_09, ISO_216);
    check(
        "B4",
        (250.0, 353.0),
        882.5,
        1.709_85,
        "ISO 216, from memory: not 250 × 352",
    );
    check("B5", (176.0, 250.0), 440.0, 0.852_5, PAPERSIZE);
}

#[test]
pub(super) fn metric_trade_names() {
    check("13×18 cm", (130.0, 180.0), 234.0, 0.453_4, COMMON_PRACTICE);
    check(
        "17.8×24 cm",
        (178.0, 240.0),
        427.2,
        0.827_7,
        COMMON_PRACTICE,
    );
    check(
        "24×30.5 cm",
        (240.0, 305.0),
        732.0,
        1.418_3,
        COMMON_PRACTICE,
    );
    check(
        "40.6×50.8 cm",
        (406.0, 508.0),
        2_062.48,
        3.996_1,
        COMMON_PRACTICE,
    );
    check(
        "50.8×61 cm",
        (508.0, 610.0),
        3_098.8,
        6.003_9,
        COMMON_PRACTICE,
    );
}

#[test]
pub(super) fn near_names_are_not_equal_areas() {
    let inches = standard("9.5×12 in").area().unwrap();
    let metric = standard("24×30.5 cm").area().unwrap();
    assert_ne!(
        inches, metric,
        "9.5×12 in and 24×30.5 cm are near, not equal ({INCH})"
    );
}

#[test]
pub(super) fn the_unit_of_sheet_equivalents_is_exact() {
    same(
        "8×10 in in 1/100 mm²",
        Area::SHEET_8X10.get(),
        2_032 * 2_540,
        INCH,
    );
    let inches = |thousandths| TenthsMm::from_thousandths_inch(thousandths).unwrap().get();
    same("8 in", inches(8_000), 2_032, INCH);
    same("9.5 in", inches(9_500), 2_413, INCH);
}

#[test]
pub(super) fn every_size_names_where_it_comes_from() {
    for size in STANDARD_SIZES {
        let expected = match size.name {
            name if name.ends_with(" in") => SizeSource::Inch,
            name if name.ends_with(" cm") => SizeSource::TradeMetric,
            _ => SizeSource::Iso216,
        };
        assert_eq!(size.source, expected, "{}", size.name);
        assert_eq!(
            SheetSize::new(size.size.short(), size.size.long()),
            Ok(size.size)
        );
    }
}
