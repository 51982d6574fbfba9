//! Without scripts: everything of an evening, in a browser that runs none.

use super::chromium::Chromium;
use super::site::Site;
use super::tab::Tab;
use crate::access::house::House;
use crate::harness::{PASSWORD, scenario};

#[test]
fn an_evening_without_scripts() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let (stage, chromium) = (&house.stage, Chromium::start());
        let site = Site::open(&stage.installation).await;
        let tab = chromium.without_scripts(&site.origin()).await;
        tab.size(360, 740).await;
        tab.open(&stage.at("/board")).await;
        let name = stage.cast.trained.name.replace(' ', ".");
        tab.write("Log-in name", &name).await;
        tab.write("Password", PASSWORD).await;
        tab.go("Log in").await;
        assert_eq!(tab.text("h1").await, "Is the bench good?");

        tab.go("Note sheets").await;
        // The keys beside a count come by the script alone.
        assert!(!tab.has("[data-step]:not([hidden])").await, "a script ran");
        tab.tap("RC").await;
        tab.tap("8×10 in").await;
        tab.write("How many sheets", "6").await;
        tab.go("Note them").await;
        assert_eq!(tab.text("h1").await, "Noted");
        let noted = tab.text(".noted-what").await;
        assert!(noted.starts_with("6 sheets, 8×10 in, RC"), "{noted}");
        tab.go("Undo until").await;
        tab.go("Undo the note").await;
        assert_eq!(tab.text("h1").await, "This note was undone");

        tab.go("To the board").await;
        mix(&tab).await;
        tab.go("Log out").await;
        assert_eq!(tab.text("h1").await, "Log in");
    });
}

async fn mix(tab: &Tab) {
    tab.go("Mix into this tray").await;
    tab.tap("Neutral paper developer 1+9").await;
    tab.write("Volume", "1").await;
    tab.go("Show what to pour").await;
    assert!(tab.text(".worksheet").await.contains("900 ml"));
    tab.go("It stands in the tray").await;
    assert_eq!(tab.text("h1").await, "Mixed");
    tab.go("To the board").await;
    assert!(!tab.has(".verdict-nothing").await);
}
