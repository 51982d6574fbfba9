//! What must not meet, pair by pair, with the authority for each.

use wetside::darkroom::incompatibility::{Clash, Danger, Group, Groups, Liquid, Pour, judge_pour};

fn solution(groups: &[Group]) -> Liquid {
    Liquid::Solution(Groups::from(groups.to_vec()))
}

fn concentrate(groups: &[Group]) -> Liquid {
    Liquid::Concentrate(Groups::from(groups.to_vec()))
}

/// The pair is refused both ways round, and what it gives is named.
#[track_caller]
fn refused(one: Liquid, other: Liquid, expected: Pour, gives: Danger, source: &str) {
    assert_eq!(judge_pour(one, other), expected, "{source}");
    assert_eq!(judge_pour(other, one), expected, "{source}");
    let clash = match expected {
        Pour::Never(clash) | Pour::NotInOneContainer(clash) => Some(clash),
        Pour::Unknown | Pour::Allowed => None,
    };
    let named = clash.is_some_and(|clash| clash.gives().contains(&gives));
    assert!(named, "{clash:?} gives {gives:?} ({source})");
}

#[test]
pub(super) fn hypochlorite() {
    let bleach = solution(&[Group::Hypochlorite]);
    let clp = "CLP Annex II 1.2.2 (EUH031); ATSDR Medical Management Guideline";
    let expected = Pour::Never(Clash::HypochloriteWithAcid);
    refused(
        bleach,
        solution(&[Group::Acid]),
        expected,
        Danger::Chlorine,
        clp,
    );
    refused(
        bleach,
        solution(&[Group::StopBath]),
        expected,
        Danger::Chlorine,
        clp,
    );
    let atsdr = "ATSDR Medical Management Guideline; Stanford EHS quoting CDC";
    let expected = Pour::Never(Clash::HypochloriteWithAmmonium);
    let rapid_fixer = solution(&[Group::Fixer, Group::Thiosulfate, Group::Ammonium]);
    refused(bleach, rapid_fixer, expected, Danger::Chloramines, atsdr);
    let epa =
        "EPA method group 104, from memory: strong oxidiser with organics, sulfite, thiosulfate";
    let expected = Pour::Never(Clash::HypochloriteWithAnything);
    refused(
        bleach,
        solution(&[Group::Developer]),
        expected,
        Danger::Heat,
        epa,
    );
    refused(
        bleach,
        solution(&[Group::Sulfite]),
        expected,
        Danger::Gas,
        epa,
    );
}

#[test]
pub(super) fn sulfide_toner_and_acid() {
    let source = "40 CFR 265 App. V; EPA-600/2-80-076 groups 33 × 1 to 3, from memory";
    let expected = Pour::Never(Clash::SulfideWithAcid);
    let toner = solution(&[Group::Sulfide]);
    refused(
        toner,
        solution(&[Group::StopBath]),
        expected,
        Danger::HydrogenSulfide,
        source,
    );
    refused(
        toner,
        solution(&[Group::Acid]),
        expected,
        Danger::HydrogenSulfide,
        source,
    );
}

#[test]
pub(super) fn ammonium_and_strong_alkali() {
    let source = "pKa of ammonium 9.24 (University of Sydney); from memory";
    let expected = Pour::Never(Clash::AmmoniumWithStrongAlkali);
    let fixer = solution(&[Group::Fixer, Group::Ammonium]);
    refused(
        fixer,
        solution(&[Group::StrongAlkali]),
        expected,
        Danger::Ammonia,
        source,
    );
}

#[test]
pub(super) fn concentrated_acid_and_concentrated_alkali() {
    let source = "EPA method chart, group 10 × 1 to 3: heat (rehs.rutgers.edu)";
    let expected = Pour::Never(Clash::ConcentratedAcidWithAlkali);
    let acid = concentrate(&[Group::Acid]);
    refused(
        acid,
        concentrate(&[Group::StrongAlkali]),
        expected,
        Danger::Heat,
        source,
    );
}

#[test]
pub(super) fn acid_with_sulfite_and_thiosulfate() {
    let icsc = "ICSC 1134 (inchem.org eics1134)";
    let expected = Pour::NotInOneContainer(Clash::AcidWithSulfite);
    let acid = solution(&[Group::Acid]);
    refused(
        acid,
        solution(&[Group::Sulfite]),
        expected,
        Danger::SulfurDioxide,
        icsc,
    );
    let textbook = "textbook chemistry, from memory";
    let expected = Pour::NotInOneContainer(Clash::AcidWithFixer);
    refused(
        acid,
        solution(&[Group::Thiosulfate]),
        expected,
        Danger::SulfurDioxide,
        textbook,
    );
}

#[test]
pub(super) fn ferricyanide_and_acid() {
    let source = "from memory: hydrogen cyanide from hot or strong acid";
    let expected = Pour::Never(Clash::FerricyanideWithAcid);
    let bleach = solution(&[Group::Ferricyanide]);
    refused(
        bleach,
        solution(&[Group::Acid]),
        expected,
        Danger::HydrogenCyanide,
        source,
    );
}

#[test]
pub(super) fn fixer_and_bleach_in_a_waste_container() {
    let source = "check values, topic 3: fixer + bleach must be blocked in waste containers";
    let fixer = solution(&[Group::Fixer, Group::Thiosulfate]);
    let bleaches = [Group::Hypochlorite, Group::OxidisingBleach];
    for bleach in bleaches {
        let pour = judge_pour(fixer, solution(&[bleach]));
        assert!(matches!(pour, Pour::Never(_)), "{bleach:?} ({source})");
    }
}
