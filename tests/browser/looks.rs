//! Every page in every display: nobody is kept out, nothing scrolls sideways or
//! covers something else, and in Safelight nothing is lit but red.

use std::collections::BTreeSet;

use serde_json::json;
use sqlx::Executor;

use super::pages::{self, Shown, Who};
use super::walk::{Walk, not_red};
use crate::access::house::House;
use crate::harness::scenario_alone;

#[test]
fn day() {
    scenario_alone(async |stage| {
        let mut walk = Walk::begin(House::furnish(stage).await, "day").await;
        for page in pages::all(&walk.house, &walk.site).await {
            walk.open(&page).await;
            walk.axe(&page).await;
            let is_bench = walk
                .tab
                .has("body.bench, body.board, body.screen-door")
                .await;
            walk.layout(&page, 320, is_bench).await;
            walk.layout(&page, 768, false).await;
            walk.layout(&page, 1920, false).await;
        }
        used_up(&mut walk).await;
        walk.end();
    });
}

#[test]
fn dim() {
    scenario_alone(async |stage| {
        let mut walk = Walk::begin(House::furnish(stage).await, "dim").await;
        for page in pages::all(&walk.house, &walk.site).await {
            walk.open(&page).await;
            walk.axe(&page).await;
        }
        used_up(&mut walk).await;
        walk.end();
    });
}

#[test]
fn safelight() {
    scenario_alone(async |stage| {
        let mut walk = Walk::begin(House::furnish(stage).await, "safelight").await;
        let mut known = BTreeSet::new();
        for page in pages::all(&walk.house, &walk.site).await {
            walk.open(&page).await;
            walk.axe(&page).await;
            walk.red(&page, 360).await;
            walk.red_states(&page, &mut known).await;
            walk.red(&page, 1920).await;
        }
        assert!(known.len() > 40, "{known:#?}");
        autofilled(&mut walk).await;
        reckoning(&mut walk).await;
        let page = used_up(&mut walk).await;
        walk.red(&page, 360).await;
        walk.red(&page, 1920).await;
        broken(&mut walk).await;
        walk.end();
    });
}

/// The board with a tray that is used up and struck through.
async fn used_up(walk: &mut Walk) -> Shown {
    let house = &walk.house;
    let noted = house
        .stage
        .note(&house.stage.cast.member, &house.bench, 0, 160);
    noted.await.unwrap();
    let page = Shown::to(Who::Member, house.stage.at("/board"));
    walk.open(&page).await;
    // Another server wrote it: the open board takes it.
    let is_shown = "return document.querySelector('.verdict-word').innerText === 'Replace'";
    walk.tab.until("the tray is used up", is_shown).await;
    walk.axe(&page).await;
    page
}

/// A field that the browser filled in by itself.
async fn autofilled(walk: &mut Walk) {
    let page = Shown::to(Who::Nobody, "/log-in");
    walk.open(&page).await;
    walk.tab.own("DOM.enable", json!({})).await;
    walk.tab.own("CSS.enable", json!({})).await;
    let root = walk.tab.own("DOM.getDocument", json!({})).await["root"]["nodeId"].clone();
    let which = json!({"nodeId": root, "selector": "input[type=password]"});
    let field = walk.tab.own("DOM.querySelector", which).await["nodeId"].clone();
    let state = json!({"nodeId": field, "forcedPseudoClasses": ["autofill", "-webkit-autofill"]});
    walk.tab.own("CSS.forcePseudoState", state).await;
    let shadow =
        "return getComputedStyle(document.querySelector('input[type=password]')).boxShadow";
    let shadow = walk.tab.run(shadow, vec![]).await;
    assert!(
        shadow.as_str().unwrap().contains("inset"),
        "{shadow}: the rule for autofill"
    );
    walk.red(&page, 360).await;
}

/// A worksheet while its figures are reckoned anew.
async fn reckoning(walk: &mut Walk) {
    let page = Shown::to(
        Who::Steward,
        walk.house.page_path("/rooms/{room}/mixes/{mix}/top-up"),
    );
    walk.open(&page).await;
    let held = "for (const sheet of document.querySelectorAll('[data-live]')) {
        sheet.classList.add('is-old');
        sheet.setAttribute('aria-busy', 'true');
    }
    return document.querySelectorAll('[data-live]').length";
    assert_eq!(walk.tab.run(held, vec![]).await, json!(1));
    walk.red(&page, 360).await;
}

/// Our own fault: a table that the program reads is not there.
async fn broken(walk: &mut Walk) {
    let page = Shown::to(Who::Steward, walk.house.stage.at("/papers"));
    let mut db = walk.house.stage.installation.db().await;
    db.execute("alter table sheet_size rename to away")
        .await
        .unwrap();
    walk.open(&page).await;
    assert_eq!(walk.tab.text(".trouble-number").await, "500");
    walk.axe(&page).await;
    walk.red(&page, 360).await;
    db.execute("alter table away rename to sheet_size")
        .await
        .unwrap();
}

/// The judges see what is wrong with a page that has one of every fault.
#[test]
fn faults_are_found() {
    scenario_alone(async |stage| {
        let mut walk = Walk::begin(House::furnish(stage).await, "safelight").await;
        let page = Shown::to(Who::Steward, walk.house.stage.at("/sheets/new"));
        walk.open(&page).await;
        walk.red(&page, 360).await;
        walk.axe(&page).await;
        assert_eq!(walk.found, Vec::<String>::new());
        let tint = "document.querySelector('h1').style.cssText = 'color: #f00002'";
        walk.tab.run(tint, vec![]).await;
        assert!(not_red(&walk.tab.whole_picture().await).is_some());
        let spoil = "
            const main = document.querySelector('main');
            const add = (html) => main.insertAdjacentHTML('beforeend', html);
            add('<p id=wide>wide</p><button id=small>far too small</button><p id=over>covers it</p><input id=nameless>');
            const style = (id, text) => { document.getElementById(id).style.cssText = text; };
            style('wide', 'width: 900px; color: #800000; background: #000');
            style('small', 'width: 20px; height: 20px; overflow: hidden; color: #800000; background: #000');
            style('over', 'position: relative; top: -30px; margin: 0');";
        walk.tab.run(spoil, vec![]).await;
        walk.axe(&page).await;
        walk.layout(&page, 320, true).await;
        let said = walk.found.join("\n");
        for fault in [
            "wrong label",
            "wrong color-contrast",
            "px wide, by p",
            "overlap by",
            "\"far too small\" is 20 × 20 px",
        ] {
            assert!(said.contains(fault), "{fault}: {said}");
        }
    });
}
