//! A week of a room, acted out through its pages by the people of it, with every
//! verdict as a printer would say it. Capacities and lives are those of the starter
//! set: common practice, no source, or from memory. What happens is invented.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "what fails here fails the test"
)]

mod acts;
mod people;

use time::Duration;

use crate::harness::{Stage, scenario};
use people::Week;

#[test]
fn a_week_of_a_real_room() {
    scenario(async |stage: Stage| {
        let mut week = Week::opens(stage).await;
        acts::opening(&mut week).await;
        week.stage.pass(Duration::hours(2));
        acts::workshop(&mut week).await;
        week.stage.pass(Duration::hours(20));
        acts::forgotten_note(&mut week).await;
        week.stage.pass(Duration::hours(1));
        acts::fixer_in_the_developer(&mut week).await;
        week.stage.pass(Duration::hours(1));
        acts::two_bath_shift(&mut week).await;
        acts::film(&mut week).await;
        week.stage.pass(Duration::hours(2));
        acts::residual_silver(&mut week).await;
        week.stage.pass(Duration::hours(20));
        acts::power_cut(&mut week).await;
        acts::cold_water(&mut week).await;
    });
}
