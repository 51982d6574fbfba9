//! Ingredients: copied from section 3 of a sheet, row by row.

use axum::http::StatusCode;
use serde_json::json;
use wetside::rights::Role;

use super::{Desk, beside, sentence};
use crate::api::room::{ALL, Room};
use crate::harness::{Answer, Form, scenario};

/// What a sheet could list: invented contents of substances by their chemical names.
const SHEET: [[&str; 5]; 5] = [
    [
        "Potassium carbonate",
        "584-08-7",
        "5",
        "10",
        "H315 H319 H335",
    ],
    [
        "Hydroquinone",
        "123-31-9",
        "1",
        "5",
        "H302, H317, H318, H341, H351, H400",
    ],
    ["Sodium hydroxide", "1310-73-2", "", "0.5", "H314"],
    ["Potassium bromide", "7758-02-3", "0.1", "1", "H319"],
    ["A wetting agent", "", "", "", ""],
];

const NAMES: [&str; 5] = ["name", "cas", "least", "most", "hazard_codes"];

/// The form with these rows in place of its first ones.
fn filled(mut form: Form, rows: &[[&str; 5]]) -> Form {
    for (at, name) in NAMES.iter().enumerate() {
        let mut values = rows.iter().map(|row| row[at]);
        for (field, value) in &mut form.fields {
            if field == name
                && let Some(typed) = values.next()
            {
                *value = typed.to_owned();
            }
        }
    }
    form
}

async fn developer(desk: &mut Desk) -> Answer {
    let page = desk.open("/products").await;
    desk.follow(&page, "Neutral paper developer").await
}

fn listed(page: &Answer) -> Vec<String> {
    page.page().all("table.rows tbody tr")
}

fn concerns(page: &Answer) -> String {
    page.page().first(".concerns").unwrap()
}

#[test]
fn a_sheet_of_five_ingredients_is_entered_on_one_form() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        assert_eq!(
            concerns(&page),
            "What is in it is unknown, so treat it as hazardous in every way: as a sensitiser, \
             as corrosive and as poisonous. The supplier’s data sheet decides."
        );
        let page = desk.follow(&page, "Enter ingredients from the sheet").await;
        let form = page.page().form("Keep the list").unwrap();
        let form = filled(form, &SHEET).with("step", "keep");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let rows = listed(&page);
        assert_eq!(rows.len(), 5, "{rows:?}");
        assert!(
            rows[1].starts_with("HydroquinoneCAS 123-31-91 % to 5 %"),
            "{rows:?}"
        );
        assert!(rows[2].contains("up to 0.5 %"), "{rows:?}");
        assert!(rows[4].ends_with("not givenNone entered"), "{rows:?}");
        assert_eq!(
            concerns(&page),
            "At any content: treat it as a sensitiser (an allergy builds up over many small \
             splashes), corrosive, something that damages eyes for good, poisonous and something \
             that may cause cancer, change genes or harm the unborn. Nobody has said that its \
             list of ingredients is complete, so treat it as hazardous in every other way too. \
             The supplier’s data sheet decides."
        );
        // Sent twice by mistake, it is one version.
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        assert!(page.page().main().contains("version 2 "));
    });
}

#[test]
fn what_is_wrong_stands_beside_its_row_and_nothing_is_lost() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Enter ingredients from the sheet").await;
        let rows = [
            SHEET[0],
            ["", "123-31-8", "5", "1", "H31"],
            // Left blank in between.
            [""; 5],
            ["Water", "7732-18-5", "101", "", ""],
        ];
        let form = page.page().form("Keep the list").unwrap();
        let form = filled(form, &rows).with("step", "keep");
        let refused = desk.browser.submit(&form).await.expect(422);
        let mut wrong = beside(&refused);
        wrong.sort();
        assert_eq!(
            wrong,
            [
                "row-2-cas",
                "row-2-codes",
                "row-2-most",
                "row-2-name",
                "row-4-least"
            ]
        );
        let said = sentence(&refused, "row-2-cas");
        assert!(said.contains("last digit"), "{said}");
        let again = refused.page().form("Keep the list").unwrap();
        let typed = |name: &str| -> Vec<String> {
            let fields = again.fields.iter().filter(|(field, _)| field == name);
            fields.map(|(_, value)| value.clone()).collect()
        };
        assert_eq!(typed("name")[..4], ["Potassium carbonate", "", "", "Water"]);
        assert_eq!(typed("cas")[1], "123-31-8");
        // More rows keep what is there.
        let more = again.clone().with("step", "more");
        let longer = desk.browser.submit(&more).await.expect(200);
        let longer = longer.page().form("Keep the list").unwrap();
        assert_eq!(longer.fields.len(), again.fields.len() + 5 * NAMES.len());
        let mended = filled(again, &SHEET[..2]).with("step", "keep");
        let mended = filled_nothing_after(mended, 2);
        let page = desk.browser.submit_and_follow(&mended).await.expect(200);
        assert_eq!(listed(&page).len(), 2);
    });
}

/// The form with everything after so many rows emptied.
fn filled_nothing_after(mut form: Form, rows: usize) -> Form {
    for name in NAMES {
        let fields = form.fields.iter_mut();
        let after = fields.filter(|(field, _)| field == name).skip(rows);
        after.for_each(|(_, value)| value.clear());
    }
    form
}

#[test]
fn a_complete_list_says_what_it_shows_and_survives_other_changes() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Enter ingredients from the sheet").await;
        let form = page.page().form("Keep the list").unwrap();
        let form = filled(form, &SHEET[3..4]);
        let form = form.with("is_complete", "yes").with("step", "keep");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let said = concerns(&page);
        assert!(
            !said.contains("harmless") && said.contains("That says nothing for it"),
            "{said}"
        );
        assert!(
            said.ends_with("The supplier’s data sheet decides."),
            "{said}"
        );
        let page = desk.follow(&page, "Change the product").await;
        let fields = [("Name", "Larch developer")];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        assert_eq!(listed(&page).len(), 1);
        assert_eq!(concerns(&page), said);
        // Emptied, an ingredient is taken out.
        let page = desk.follow(&page, "Enter ingredients from the sheet").await;
        let form = page.page().form("Keep the list").unwrap();
        assert_eq!(form.value("is_complete"), Some("yes"));
        let form = filled_nothing_after(form, 0).with("step", "keep");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        assert!(listed(&page).is_empty());
    });
}

#[test]
fn a_member_reads_the_ingredients_and_changes_none() {
    scenario(async |stage| {
        let mut steward = Desk::steward(&stage).await;
        let page = developer(&mut steward).await;
        let mut member = Desk::of(&stage, &stage.cast.member).await;
        let read = member.browser.get(&page.path).await.expect(200);
        assert!(concerns(&read).contains("unknown"));
        assert!(!read.page().main().contains("Enter ingredients"));
        let form = format!("{}/ingredients", page.path);
        member.browser.get(&form).await.expect(403);
        member.browser.post(&form, &[]).await.expect(403);
    });
}

#[tokio::test]
async fn ingredients_are_set_and_read_as_json() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let product = room.id_of("/products", "Ammonium rapid fixer").await;
    let path = format!("/products/{product}/ingredients");
    let read = room.get(&member, &path).await.body;
    assert_eq!(read["data"]["concerns"], json!(["unknown_composition"]));
    let list = json!({
        "ingredients": [
            { "name": "Ammonium thiosulfate", "cas": "7783-18-8", "least_millionths": 500_000 },
            { "name": "Acetic acid", "cas": "64-19-7", "most_millionths": 50_000,
              "hazard_codes": ["H226", "H314"] },
        ],
        "composition_is_known": true,
    });
    room.put(&member, &path, &list)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    let put = room.put(&room.steward, &path, &list).await;
    assert_eq!(put.status, StatusCode::OK, "{}", put.body);
    let read = room.get(&member, &path).await.body;
    assert_eq!(read["data"]["concerns"], json!(["corrosive", "eye_damage"]));
    assert_eq!(read["data"]["ingredients"][1]["most_millionths"], 50_000);
    let wrong = json!({
        "ingredients": [
            { "name": "Water" },
            { "name": "", "cas": "64-19-8", "least_millionths": 2, "most_millionths": 1 },
        ],
    });
    let refused = room.put(&room.steward, &path, &wrong).await;
    let mut fields = refused.fields();
    fields.sort_unstable();
    assert_eq!(
        fields,
        [
            "ingredients[1].cas",
            "ingredients[1].most_millionths",
            "ingredients[1].name",
        ]
    );
}
