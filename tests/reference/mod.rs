//! The trade's arithmetic held against the outside world. Each check names its
//! source; a fact without one says `common practice, no source`, a remembered
//! one `from memory`. Nothing here is made up.

#![expect(clippy::unwrap_used, reason = "a helper of a test fails with it")]

mod air;
mod cas;
mod chemistry;
mod dilution;
mod fog;
mod mixing;
mod paper;
mod pouring;
mod starter;

use std::cell::RefCell;
use std::collections::BTreeSet;

/// Definitions that need no authority: "1+9" is one part and nine parts.
const DEFINITION: &str = "by definition";
/// What printers agree on and nobody has published where we could read it.
const COMMON_PRACTICE: &str = "common practice, no source";

/// Fails with the source of the expectation in the message.
#[track_caller]
fn near(what: &str, found: f64, expected: f64, tolerance: f64, source: &str) {
    held(&format!("{what} {expected}"), source);
    assert!(
        (found - expected).abs() <= tolerance,
        "{what}: found {found}, expected {expected} ± {tolerance} ({source})"
    );
}

/// Fails with the source of the expectation in the message.
#[track_caller]
fn same<T: PartialEq + std::fmt::Debug>(what: &str, found: T, expected: T, source: &str) {
    held(&format!("{what} {expected:?}"), source);
    assert_eq!(found, expected, "{what} ({source})");
}

thread_local! {
    /// What was held against the outside world on this thread, each with its source.
    static HELD: RefCell<BTreeSet<(String, String)>> = const { RefCell::new(BTreeSet::new()) };
}

fn held(what: &str, source: &str) {
    HELD.with_borrow_mut(|held| held.insert((what.to_owned(), source.to_owned())));
}

/// Somebody else published it: not by definition, no mere practice, not from memory.
fn is_published(source: &str) -> bool {
    ![DEFINITION, COMMON_PRACTICE].contains(&source) && !source.contains("from memory")
}

/// Every check of this folder.
const CHECKS: &[fn()] = &[
    cas::published_numbers_agree_with_their_check_digit,
    air::every_row_of_the_clearing_table,
    air::a_misprint_is_no_row_of_the_table,
    air::mixing_multiplies_the_time,
    air::exhaust_of_two_darkrooms,
    air::a_cubic_foot_a_minute_for_a_square_foot_is_5_08,
    air::airing_every_fifteen_minutes,
    chemistry::bromide_from_developed_silver,
    chemistry::a_fresh_stop_bath,
    chemistry::a_stop_bath_turns_long_after_half_its_acid_is_gone,
    chemistry::the_indicator_is_purple_at_99_percent,
    chemistry::citric_acid_is_buffered_three_times,
    chemistry::developing_by_emergence,
    chemistry::factors_of_mixed_agents,
    chemistry::a_fixer_of_1909,
    chemistry::silver_of_a_worked_sheet,
    chemistry::fixing_limits_in_grams,
    chemistry::coating_weights_of_papers,
    chemistry::four_fifths_of_the_silver_may_reach_the_fixer,
    chemistry::clearing_time_doubled_means_spent,
    chemistry::temperature_coefficients_come_out_of_two_points,
    chemistry::a_litre_in_a_tray_dies_sooner_the_shallower_it_stands,
    chemistry::carry_over_of_a_sheet_stays_in_its_doubtful_range,
    dilution::one_part_and_n_parts,
    dilution::one_to_nine_is_never_read_as_one_in_nine,
    fog::half_the_geometric_mean_of_the_last_clean_and_the_first_fogged_time,
    fog::one_end_alone_never_gives_more_than_half_of_it,
    mixing::pearsons_square,
    mixing::amounts_of_a_square,
    mixing::three_parts_glacial_and_eight_of_water_are_near_28_percent,
    mixing::units_are_exact,
    mixing::us_and_imperial_ounces_differ_by_four_percent,
    mixing::a_colder_concentrate_asks_for_warmer_water,
    mixing::a_working_solution_is_ten_to_fifteen_times_weaker,
    mixing::a_coarse_cylinder_weakens_noticeably,
    paper::inch_sizes,
    paper::iso_216_sizes,
    paper::metric_trade_names,
    paper::near_names_are_not_equal_areas,
    paper::the_unit_of_sheet_equivalents_is_exact,
    paper::every_size_names_where_it_comes_from,
    pouring::hypochlorite,
    pouring::sulfide_toner_and_acid,
    pouring::ammonium_and_strong_alkali,
    pouring::concentrated_acid_and_concentrated_alkali,
    pouring::acid_with_sulfite_and_thiosulfate,
    pouring::ferricyanide_and_acid,
    pouring::fixer_and_bleach_in_a_waste_container,
    starter::a_litre_takes_its_capacity_and_is_then_replaced,
    starter::a_litre_of_concentrate_serves_a_thousand_sheets,
    starter::half_a_litre_is_a_usual_fill,
    starter::an_open_tray_lasts_a_working_day_and_is_dead_by_morning,
    starter::an_evening_in_the_tray_counts_when_it_is_bottled,
    starter::in_a_small_room_a_developer_dies_of_age_before_its_capacity,
    starter::capacity_is_counted_in_sheets_of_8x10,
    starter::every_starter_figure_says_that_it_has_no_source,
    starter::no_starter_product_has_safety_data_so_none_is_mixed_before_a_steward_copied_it,
    starter::a_litre_of_a_second_fixer_takes_what_one_of_the_first_does,
    starter::a_fresh_stop_bath_is_as_acid_as_its_acid_makes_it,
];

/// Different figures that somebody else published, all of them held here.
#[test]
fn eighty_figures_of_others_come_out_here() {
    for check in CHECKS {
        check();
    }
    let published = HELD.with_borrow(|held| {
        held.iter()
            .filter(|(_, source)| is_published(source))
            .count()
    });
    assert!(published >= 80, "only {published} checks have a source");
}
