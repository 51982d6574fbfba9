//! What must not meet: every pair of groups, whichever is poured into the other.

use wetside::darkroom::incompatibility::{
    Clash, Danger, Group, Groups, Liquid, Pour, judge_pour, judge_pour_of_one_product,
};

fn of(groups: &[Group]) -> Groups {
    Groups::from(groups.to_vec())
}

fn solution(groups: &[Group]) -> Liquid {
    Liquid::Solution(of(groups))
}

fn concentrate(groups: &[Group]) -> Liquid {
    Liquid::Concentrate(of(groups))
}

/// Every liquid of at most two groups, as solution and as concentrate.
fn liquids() -> Vec<Liquid> {
    let mut all = vec![Liquid::Water, Liquid::Unknown, solution(&[])];
    for a in Group::ALL {
        for b in Group::ALL {
            all.extend([solution(&[a, b]), concentrate(&[a, b])]);
        }
    }
    all
}

fn severity(pour: Pour) -> u8 {
    match pour {
        Pour::Allowed => 0,
        Pour::NotInOneContainer(_) => 1,
        Pour::Unknown => 2,
        Pour::Never(_) => 3,
    }
}

#[test]
fn it_does_not_matter_which_is_poured_into_which() {
    for a in liquids() {
        for b in liquids() {
            assert_eq!(judge_pour(a, b), judge_pour(b, a), "{a:?} and {b:?}");
        }
    }
}

#[test]
fn one_more_group_never_makes_a_pour_milder() {
    for a in Group::ALL {
        for b in Group::ALL {
            for more in Group::ALL {
                let before = judge_pour(solution(&[a]), solution(&[b]));
                let after = judge_pour(solution(&[a, more]), solution(&[b]));
                assert!(
                    severity(after) >= severity(before),
                    "{a:?} with {more:?} and {b:?}"
                );
            }
        }
    }
}

#[test]
fn a_concentrate_is_never_judged_more_mildly() {
    for a in Group::ALL {
        for b in Group::ALL {
            let weak = judge_pour(solution(&[a]), solution(&[b]));
            let strong = judge_pour(concentrate(&[a]), concentrate(&[b]));
            assert!(severity(strong) >= severity(weak), "{a:?} and {b:?}");
        }
    }
}

#[test]
fn hypochlorite_meets_nothing_but_water() {
    let bleach = solution(&[Group::Hypochlorite]);
    assert_eq!(judge_pour(bleach, Liquid::Water), Pour::Allowed);
    for other in liquids()
        .into_iter()
        .filter(|other| *other != Liquid::Water)
    {
        assert!(
            matches!(judge_pour(bleach, other), Pour::Never(_)),
            "{other:?}"
        );
    }
    let itself = judge_pour_of_one_product(bleach);
    assert_eq!(itself, Pour::Never(Clash::HypochloriteWithAnything));
}

#[test]
fn the_unknown_is_compatible_with_nothing() {
    for other in [
        Liquid::Water,
        Liquid::Unknown,
        solution(&[]),
        solution(&[Group::Developer]),
    ] {
        assert_eq!(
            judge_pour(Liquid::Unknown, other),
            Pour::Unknown,
            "{other:?}"
        );
    }
    assert_eq!(judge_pour_of_one_product(Liquid::Unknown), Pour::Unknown);
}

#[test]
fn concentrated_acid_and_alkali_meet_never_and_dilute_ones_by_the_other_rules() {
    let clash = Pour::Never(Clash::ConcentratedAcidWithAlkali);
    let acid = concentrate(&[Group::Acid]);
    assert_eq!(judge_pour(acid, concentrate(&[Group::Alkali])), clash);
    assert_eq!(judge_pour(acid, concentrate(&[Group::StrongAlkali])), clash);
    assert_eq!(judge_pour(acid, solution(&[Group::Alkali])), Pour::Allowed);
}

#[test]
fn one_product_may_be_added_to_itself() {
    let acid_fixer = solution(&[
        Group::Fixer,
        Group::Thiosulfate,
        Group::Sulfite,
        Group::Acid,
    ]);
    assert_eq!(judge_pour_of_one_product(acid_fixer), Pour::Allowed);
    assert!(matches!(
        judge_pour(acid_fixer, acid_fixer),
        Pour::NotInOneContainer(_)
    ));
}

#[test]
fn a_container_remembers_every_group_that_went_in() {
    let mut held = Groups::default();
    for group in [Group::Developer, Group::Sulfite] {
        held = held.and(Groups::default().with(group));
    }
    assert!(held.has(Group::Developer) && held.has(Group::Sulfite) && !held.has(Group::Acid));
    let pour = judge_pour(Liquid::Solution(held), solution(&[Group::StopBath]));
    assert!(matches!(pour, Pour::NotInOneContainer(_)));
    let json = serde_json::to_string(&held).unwrap();
    assert_eq!(json, r#"["sulfite","developer"]"#);
    assert_eq!(serde_json::from_str::<Groups>(&json).unwrap(), held);
}

#[test]
fn every_clash_says_what_it_gives() {
    let clashes = liquids()
        .into_iter()
        .flat_map(|a| liquids().into_iter().map(move |b| (a, b)));
    for (a, b) in clashes {
        if let Pour::Never(clash) | Pour::NotInOneContainer(clash) = judge_pour(a, b) {
            assert!(!clash.gives().is_empty(), "{clash:?}");
        }
    }
    assert_eq!(Clash::SulfideWithAcid.gives(), [Danger::HydrogenSulfide]);
}
