//! What a room judges its baths by.

use super::{Desk, beside, sentence};
use crate::harness::scenario;

#[test]
fn a_room_says_what_its_baths_are_judged_by() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        // Three shifts and a tenth: from memory.
        assert_eq!(form.value("fixer_shifts"), Some("3"));
        assert_eq!(form.value("second_bath"), Some("10"));
        assert_eq!(form.value("alkali"), Some(""));
        let wrong = form
            .clone()
            .fill("A second fixer moves up", "30")
            .fill("The second of two fixers gains", "60")
            .fill("Alkali in the developer that prints carry over", "0");
        let wrong = desk.browser.submit(&wrong).await.expect(422);
        assert_eq!(beside(&wrong), ["fixer_shifts", "second_bath", "alkali"]);
        assert!(sentence(&wrong, "second_bath").contains("to 50 %"));
        let form = form
            .choose("The room is unheated")
            .fill("A second fixer moves up", "2")
            .fill("The second of two fixers gains", "12.5")
            .fill("Alkali in the developer that prints carry over", "400")
            .fill("Silver in a roll of film", "200")
            .fill("Of which stays in the film", "30");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let kept = page.page().form("Keep these rules").unwrap();
        for (name, value) in [
            ("is_unheated", "yes"),
            ("fixer_shifts", "2"),
            ("second_bath", "12.5"),
            ("alkali", "400"),
            ("silver_per_roll", "200"),
            ("film_kept", "30"),
        ] {
            assert_eq!(kept.value(name), Some(value), "{name}");
        }
    });
}
