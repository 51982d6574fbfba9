//! What happens in the week, act by act.

use time::Duration;

use super::people::Week;

const DEVELOPER: &str = "Neutral paper developer 1+9";
const FIXER: &str = "Ammonium rapid fixer 1+4";
const STOP: &str = "Acetic stop bath 1+19";

/// The steward sets the room up; something stands in two trays already.
pub(super) async fn opening(week: &mut Week) {
    for product in [
        "Neutral paper developer",
        "Acetic stop bath",
        "Ammonium rapid fixer",
    ] {
        let page = week.steward.opens("/products").await;
        let page = week.steward.follows(&page, product).await;
        let page = week.steward.follows(&page, "Change the product").await;
        let form = page.form("Keep the change").unwrap();
        let form = form.fill("Date of the data sheet", "2026-03-02");
        week.steward.sends(&form).await;
    }
    film_figure(week).await;
    for (name, step) in [
        ("Developer", "developer"),
        ("Stop", "stop_bath"),
        ("First fixer", "first_fixer"),
        ("Second fixer", "second_fixer"),
    ] {
        let bench = week.steward.opens("/bench").await;
        let page = week.steward.follows(&bench, "Add ").await;
        let form = page.form("Add the tray").unwrap();
        let form = form
            .fill("Name", name)
            .with("step", step)
            .fill("Long edge", "300")
            .fill("Short edge", "250")
            .fill("Floor to rim", "65");
        week.steward.sends(&form).await;
    }
    what_stood_there(week).await;
    fresh_baths(week).await;
}

/// A litre nobody can name, and a stop bath nobody knows the age of.
async fn what_stood_there(week: &mut Week) {
    week.says("Developer", "Nothing recorded", "look before you pour")
        .await;

    let page = week
        .member
        .at_tray("Second fixer", "Liquid stands here, and nobody knows")
        .await;
    let form = page.form("Report it").unwrap().fill("About how much", "1");
    week.member.sends(&form).await;
    week.says("Second fixer", "Unknown", "call a steward").await;
    week.steward
        .discards(
            "Second fixer",
            "Unknown, one litre",
            "Used up, too old, or needed no more",
        )
        .await;

    let page = week
        .steward
        .at_tray("Stop", "A known mix stood here already")
        .await;
    let form = page.form("Enter it").unwrap();
    let form = form
        .choose(STOP)
        .fill("About how much", "2")
        .fill("Used of its capacity, by guess", "10")
        .fill("Used of its life, by guess", "5");
    week.steward.sends(&form).await;
    week.says("Stop", "Test first", "is a guess").await;
}

async fn fresh_baths(week: &mut Week) {
    week.trained.mixes("Developer", DEVELOPER, "1").await;
    week.trained.mixes("First fixer", FIXER, "2").await;
    week.trained.mixes("Second fixer", FIXER, "2").await;
    week.says("Developer", "Ready", "0 % of its capacity used")
        .await;
    week.says("Second fixer", "Ready", "0 % of its capacity used")
        .await;
}

/// A litre of this fixer takes twenty rolls. Invented for this room.
async fn film_figure(week: &mut Week) {
    let page = week.steward.opens("/products").await;
    let page = week.steward.follows(&page, "Ammonium rapid fixer").await;
    let page = week.steward.follows(&page, "Change 1+4").await;
    let form = page.form("Keep the change").unwrap();
    week.steward
        .sends(&form.fill("Rolls of film in a litre", "20"))
        .await;
}

/// A litre at 1+9 takes a hundred sheets on RC: common practice, no source.
pub(super) async fn workshop(week: &mut Week) {
    week.member.notes(85).await;
    week.says("Developer", "Test first", "85 % of its capacity used")
        .await;
    week.trained
        .checks("Developer", "Test print", &[("outcome", "good")])
        .await;
    week.says("Developer", "Ready", "The test print passed")
        .await;
    // A passed test is good for an hour.
    week.stage.pass(Duration::minutes(61));
    week.says("Developer", "Test first", "85 % of its capacity used")
        .await;
    week.trained.notes(15).await;
    week.says("Developer", "Replace", "100 % of its capacity used")
        .await;
    week.trained
        .discards(
            "Developer",
            "Used developer",
            "Used up, too old, or needed no more",
        )
        .await;
    week.trained.mixes("Developer", DEVELOPER, "1").await;
    week.says("Developer", "Ready", "0 % of its capacity used")
        .await;
}

/// Next day. The developer died of age long before its capacity was used.
pub(super) async fn forgotten_note(week: &mut Week) {
    week.says("Developer", "Replace", "of its life used").await;
    week.trained
        .discards(
            "Developer",
            "Used developer",
            "Used up, too old, or needed no more",
        )
        .await;
    week.trained.mixes("Developer", DEVELOPER, "1").await;
    let page = week.member.opens("/sheets/new").await;
    let form = page.form("Note them").unwrap();
    let form = form
        .with("sheets", "12")
        .with("when", "earlier")
        .with("day", "2026-11-25")
        .with("time", "17:30");
    let noted = week.member.sends(&form).await;
    // Twelve sheets at a hundred a litre wear the bath that stood there then.
    let said = noted.main();
    assert!(
        said.contains("Neutral paper developer, 120 ml used up"),
        "{said}"
    );
    week.says("Developer", "Ready", "0 % of its capacity used")
        .await;
}

pub(super) async fn fixer_in_the_developer(week: &mut Week) {
    let page = week
        .member
        .at_tray("Developer", "Something came into it")
        .await;
    let form = page.form("Flag it").unwrap().with("groups", "fixer");
    week.member.sends(&form).await;
    week.says("Developer", "Replace", "Contamination was reported")
        .await;
    week.trained
        .discards("Developer", "Splashed developer", "Something came into it")
        .await;
    week.trained.mixes("Developer", DEVELOPER, "1").await;
    week.says("Developer", "Ready", "0 % of its capacity used")
        .await;
}

pub(super) async fn power_cut(week: &mut Week) {
    week.says("Developer", "Replace", "of its life used").await;
    week.trained
        .discards(
            "Developer",
            "Used developer",
            "Used up, too old, or needed no more",
        )
        .await;
    week.trained.mixes("Developer", DEVELOPER, "1").await;
    let page = week.member.opens("/outages").await;
    let form = page.form("It is off").unwrap().with("what", "power");
    week.member.sends(&form).await;
    let board = week.trained.opens("/board").await;
    let banner = board.all("body").join(" ");
    assert!(banner.contains("power"), "{banner}");
    assert!(banner.to_lowercase().contains("leave"), "{banner}");
    // Ages run on.
    week.stage.pass(Duration::hours(2));
    week.says("Developer", "Ready", "% of its life").await;
    let page = week.member.opens("/outages").await;
    let form = page.form("The power is on again").unwrap();
    week.member.sends(&form).await;
}

/// The starter developer works from 18 to 22 °C: from memory.
pub(super) async fn cold_water(week: &mut Week) {
    week.member
        .checks("Developer", "Temperature", &[("temperature", "16")])
        .await;
    week.says(
        "Developer",
        "Test first",
        "It was 16 °C at the last reading",
    )
    .await;
    week.member
        .checks("Developer", "Temperature", &[("temperature", "20")])
        .await;
    week.says(
        "Developer",
        "Ready",
        "of its life used, 0 % of its capacity",
    )
    .await;
}

/// A litre of this fixer as the first of two takes eighty sheets on RC: from memory.
pub(super) async fn two_bath_shift(week: &mut Week) {
    week.member.notes(60).await;
    // 85 + 15 + 12 + 60 of 160 in two litres; a tenth of that in the second.
    week.says("First fixer", "Replace", "% of its capacity used")
        .await;
    week.says("Second fixer", "Ready", "10 % of its capacity")
        .await;
    let page = week
        .trained
        .at_tray("First fixer", "Move the second bath up")
        .await;
    let form = page.form("The second bath stands in First fixer").unwrap();
    let form = form
        .with("collected", "")
        .with("container", "Used fixer")
        .with("confirmed", "yes");
    week.trained.sends(&form).await;
    week.says("First fixer", "Ready", "10 % of its capacity")
        .await;
    week.says("Second fixer", "Nothing recorded", "look before you pour")
        .await;
    week.trained.mixes("Second fixer", FIXER, "2").await;
    week.says("Second fixer", "Ready", "0 % of its capacity used")
        .await;
}

/// Four rolls of forty that two litres take.
pub(super) async fn film(week: &mut Week) {
    let page = week.member.opens("/sheets/film").await;
    let form = page.form("Note them").unwrap().with("rolls", "4");
    week.member.sends(&form).await;
    week.says("First fixer", "Ready", "20 % of its capacity")
        .await;
}

pub(super) async fn residual_silver(week: &mut Week) {
    week.trained
        .checks(
            "Second fixer",
            "Spot test for residual silver",
            &[("outcome", "bad")],
        )
        .await;
    week.says(
        "Second fixer",
        "Replace",
        "The test for residual silver failed",
    )
    .await;
    let told = week.member.opens("/notices").await.main();
    assert!(told.contains("note") && told.contains("again"), "{told}");
    // Nobody else's prints went through it since.
    let told = week.trained.opens("/notices").await.main();
    assert!(!told.contains("residual"), "{told}");
}
