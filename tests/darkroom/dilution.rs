//! Parts make the whole; there and back again.

use proptest::prelude::*;
use wetside::darkroom::dilution::{
    Dilution, DilutionError, parts_for_volume, volume_from_concentrate, water_to_weaken,
};
use wetside::darkroom::quantities::Microlitres;

fn volume() -> impl Strategy<Value = Microlitres> {
    (1_i64..1_000_000_000).prop_map(|v| Microlitres::new(v).unwrap())
}

fn dilution() -> impl Strategy<Value = Dilution> {
    (0_i64..=1_000_000).prop_map(|n| Dilution::new(n).unwrap())
}

proptest! {
    #[test]
    fn concentrate_and_water_add_up_to_the_volume(d in dilution(), v in volume()) {
        let parts = parts_for_volume(d, v).unwrap();
        prop_assert_eq!(parts.concentrate.plus(parts.water).unwrap(), v);
    }

    #[test]
    fn concentrate_is_within_half_a_microlitre_of_its_share(d in dilution(), v in volume()) {
        let parts = parts_for_volume(d, v).unwrap();
        let all = i128::from(d.parts_of_water_thousandths()) + 1000;
        let off = i128::from(parts.concentrate.get()) * all - i128::from(v.get()) * 1000;
        prop_assert!(2 * off.abs() <= all);
    }

    #[test]
    fn the_volume_a_concentrate_makes_asks_for_that_concentrate(d in dilution(), c in volume()) {
        let whole = volume_from_concentrate(d, c).unwrap();
        prop_assert_eq!(parts_for_volume(d, whole).unwrap().concentrate, c);
    }

    #[test]
    fn more_water_never_asks_for_more_concentrate(v in volume(), n in 0_i64..100_000, m in 0_i64..100_000) {
        let (n, m) = (n.min(m), n.max(m));
        let stronger = parts_for_volume(Dilution::new(n).unwrap(), v).unwrap();
        let weaker = parts_for_volume(Dilution::new(m).unwrap(), v).unwrap();
        prop_assert!(weaker.concentrate <= stronger.concentrate);
    }

    #[test]
    fn weakening_keeps_the_concentrate(v in 1_000_i64..1_000_000_000, n in 0_i64..50_000, more in 1_i64..50_000) {
        let v = Microlitres::new(v).unwrap();
        let (from, to) = (Dilution::new(n).unwrap(), Dilution::new(n + more).unwrap());
        let added = water_to_weaken(v, from, to).unwrap();
        let before = parts_for_volume(from, v).unwrap().concentrate.get();
        let after = parts_for_volume(to, v.plus(added).unwrap()).unwrap().concentrate.get();
        prop_assert!((before - after).abs() <= 1, "{before} before, {after} after");
    }

    #[test]
    fn measured_parts_name_their_dilution(d in dilution(), v in 10_000_000_i64..1_000_000_000) {
        let parts = parts_for_volume(d, Microlitres::new(v).unwrap()).unwrap();
        let read = Dilution::from_parts(parts.concentrate, parts.water).unwrap();
        let off = (read.parts_of_water_thousandths() - d.parts_of_water_thousandths()).abs();
        // Half a microlitre of concentrate c moves N by about (1+N)/2c.
        let all = i128::from(d.parts_of_water_thousandths()) + 1000;
        let allowed = 1 + all / i128::from(parts.concentrate.get()) ;
        prop_assert!(i128::from(off) <= allowed, "{off} off, {allowed} allowed");
    }
}

#[test]
fn weakening_refuses_the_same_and_the_stronger() {
    let (weak, strong) = (
        Dilution::new(14_000).unwrap(),
        Dilution::new(9_000).unwrap(),
    );
    let litre = Microlitres::of(1_000_000);
    assert_eq!(
        water_to_weaken(litre, weak, strong),
        Err(DilutionError::NotWeaker)
    );
    assert_eq!(
        water_to_weaken(litre, weak, weak),
        Err(DilutionError::NotWeaker)
    );
}

#[test]
fn nothing_cannot_be_diluted() {
    let dilution = Dilution::new(9_000).unwrap();
    assert_eq!(
        parts_for_volume(dilution, Microlitres::ZERO),
        Err(DilutionError::Nothing)
    );
    assert_eq!(
        volume_from_concentrate(dilution, Microlitres::ZERO),
        Err(DilutionError::Nothing)
    );
    assert_eq!(
        Dilution::from_parts(Microlitres::ZERO, Microlitres::of(1)),
        Err(DilutionError::Nothing)
    );
    assert_eq!(Dilution::new(-1), Err(DilutionError::PartsOfWater));
    assert_eq!(Dilution::new(10_000_001), Err(DilutionError::PartsOfWater));
}
