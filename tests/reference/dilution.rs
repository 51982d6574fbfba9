//! 1+N against its definition and the worked cases of the check values.

use wetside::darkroom::dilution::{Dilution, parts_for_volume};
use wetside::darkroom::quantities::Microlitres;

use super::{DEFINITION, same};

fn parts(water_thousandths: i64, millilitres: i64) -> (i64, i64) {
    let dilution = Dilution::new(water_thousandths).unwrap();
    let volume = Microlitres::from_millilitres(millilitres).unwrap();
    let parts = parts_for_volume(dilution, volume).unwrap();
    (parts.concentrate.get(), parts.water.get())
}

#[test]
pub(super) fn one_part_and_n_parts() {
    same(
        "1+9 in 1000 ml",
        parts(9_000, 1_000),
        (100_000, 900_000),
        DEFINITION,
    );
    same(
        "1+4 in 1000 ml",
        parts(4_000, 1_000),
        (200_000, 800_000),
        DEFINITION,
    );
    same(
        "1+1 in 750 ml",
        parts(1_000, 750),
        (375_000, 375_000),
        DEFINITION,
    );
    same(
        "1+14 in 1500 ml",
        parts(14_000, 1_500),
        (100_000, 1_400_000),
        DEFINITION,
    );
}

#[test]
pub(super) fn one_to_nine_is_never_read_as_one_in_nine() {
    let source = "'1:9' is read both ways, 100 or 111.1 ml of a litre; 1+9 is 100";
    same("1+9 in 1000 ml", parts(9_000, 1_000).0, 100_000, source);
    same(
        "1+8, the other reading, in 1000 ml",
        parts(8_000, 1_000).0,
        111_111,
        source,
    );
}
