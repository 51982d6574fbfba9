//! Products of every form, fixers in their places, silver of papers and what a
//! room judges its baths by, through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};

use super::room::Room;

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

fn product(name: &str, kind: &str) -> Value {
    json!({
        "name": name, "kind": kind, "groups": [], "oxidises": false,
        "depth_reference_tenths_mm": 80, "dilutions": [],
    })
}

fn with(mut value: Value, more: &Value) -> Value {
    for (name, field) in more.as_object().unwrap() {
        value[name] = field.clone();
    }
    value
}

#[tokio::test]
async fn a_product_keeps_every_figure_it_is_set_with() {
    let room = Room::open().await;
    let class = room.id_of("/papers/classes", "FB").await;
    let fixer = with(
        product("Two-bath fixer", "fixer"),
        &json!({
            "form": "powder", "packet_makes_ul": 3_800_000, "packets_may_be_divided": true,
            "stock_full_life_s": 8_640_000, "stock_part_life_s": 2_592_000,
            "longest_life_s": 604_800, "coldest_tenths_celsius": 160,
            "warmest_tenths_celsius": 240, "water_warmest_tenths_celsius": 500,
            "time_points": [
                { "seconds": 300, "tenths_celsius": 180 },
                { "seconds": 200, "tenths_celsius": 240 },
            ],
            "figures_basis": "the sheet of May",
            "dilutions": [{
                "parts_thousandths": 3_000, "tray_life_s": 86_400, "covered_life_s": 172_800,
                "bottle_life_s": 604_800, "part_bottle_life_s": 259_200,
                "life_basis": "the sheet of May", "film_rolls_per_litre_thousandths": 12_000,
                "silver_limit_single_mg_per_litre": 500, "silver_limit_first_mg_per_litre": 2_000,
                "silver_limit_second_mg_per_litre": 400, "figures_basis": "the sheet of May",
                "capacities": [
                    { "paper_class_id": class, "place": "single",
                      "sheets_per_litre_thousandths": 20_000, "basis": "the sheet of May" },
                    { "paper_class_id": class, "place": "second",
                      "sheets_per_litre_thousandths": 400_000, "basis": "the sheet of May" },
                ],
            }],
        }),
    );
    let id = room.post(&room.steward, "/products", &fixer).await.made();
    let path = format!("/products/{id}");
    let mut read = room.get(&room.steward, &path).await.body["data"].clone();
    assert_eq!(read["stop_acid"], Value::Null);
    read["dilutions"][0].as_object_mut().unwrap().remove("id");
    for (name, figure) in fixer.as_object().unwrap() {
        let shown = &read[name];
        match name.as_str() {
            "dilutions" => {
                for (name, figure) in figure[0].as_object().unwrap() {
                    assert_eq!(shown[0][name], *figure, "{name}");
                }
            }
            _ => assert_eq!(shown, figure, "{name}"),
        }
    }
}

#[tokio::test]
async fn figures_of_another_form_or_kind_are_named_where_they_stand() {
    let room = Room::open().await;
    let class = room.id_of("/papers/classes", "FB").await;
    let odd = with(
        product("Odd developer", "developer"),
        &json!({
            "kit_parts_thousandths": [1_000, 1_000], "packet_makes_ul": 1_000_000,
            "stop_acid": "acetic", "coldest_tenths_celsius": 900,
            "time_points": [{ "seconds": 90, "tenths_celsius": 200 }],
        }),
    );
    let wrong = room.post(&room.steward, "/products", &odd).await;
    wrong.assert_error(INVALID, "invalid");
    assert_eq!(
        wrong.fields(),
        [
            "kit_parts_thousandths",
            "packet_makes_ul",
            "coldest_tenths_celsius",
            "time_points",
            "stop_acid",
        ]
    );
    let placed = with(
        product("Placed toner", "toner"),
        &json!({ "dilutions": [{
            "parts_thousandths": 9_000, "tray_life_s": 86_400, "bottle_life_s": 86_400,
            "part_bottle_life_s": 90_000, "life_basis": "from memory",
            "silver_limit_first_mg_per_litre": 2_000, "acid_mmol_per_litre": 200,
            "capacities": [
                { "paper_class_id": class, "place": "first",
                  "sheets_per_litre_thousandths": 20_000, "basis": "from memory" },
            ],
        }]}),
    );
    let wrong = room.post(&room.steward, "/products", &placed).await;
    wrong.assert_error(INVALID, "invalid");
    assert_eq!(
        wrong.fields(),
        [
            "dilutions[0].part_bottle_life_s",
            "dilutions[0].silver_limit_first_mg_per_litre",
            "dilutions[0].capacities",
            "dilutions[0].acid_mmol_per_litre",
        ]
    );
}

#[tokio::test]
async fn a_class_says_what_is_known_of_its_silver() {
    let room = Room::open().await;
    // Invented figures.
    let silver = json!({
        "least_mg_per_m2": 500, "usual_mg_per_m2": 1_200, "most_mg_per_m2": 1_600,
        "least_kept_ppb": 200_000_000, "usual_kept_ppb": 330_000_000,
        "most_kept_ppb": 500_000_000, "basis": "weighed",
    });
    let class = json!({
        "name": "Warm FB", "silver": silver, "carry_over_ul_per_m2": 150_000,
    });
    let id = room
        .post(&room.steward, "/papers/classes", &class)
        .await
        .made();
    let path = format!("/papers/classes/{id}");
    let read = room.get(&room.steward, &path).await.body["data"].clone();
    assert_eq!(
        (&read["silver"], &read["carry_over_ul_per_m2"]),
        (&silver, &json!(150_000))
    );
    let mut wrong = class.clone();
    wrong["silver"]["least_mg_per_m2"] = json!(0);
    wrong["silver"]["most_kept_ppb"] = json!(300_000_000);
    wrong["silver"]["basis"] = json!(" ");
    wrong["carry_over_ul_per_m2"] = json!(5);
    let answer = room.put(&room.steward, &path, &wrong).await;
    answer.assert_error(INVALID, "invalid");
    assert_eq!(
        answer.fields(),
        [
            "silver.least_mg_per_m2",
            "silver.least_kept_ppb",
            "silver.basis",
            "carry_over_ul_per_m2",
        ]
    );
    let bare = json!({ "name": "Warm FB" });
    room.put(&room.steward, &path, &bare).await;
    let read = room.get(&room.steward, &path).await.body["data"].clone();
    assert_eq!(read["silver"], Value::Null);
}

#[tokio::test]
async fn what_baths_are_judged_by_is_a_setting() {
    let room = Room::open().await;
    let mut body = room.get(&room.steward, "/settings").await.body["data"].clone();
    body.as_object_mut().unwrap().remove("seq");
    // Three shifts and a tenth: from memory.
    assert_eq!(body["fixer_shifts"], 3);
    assert_eq!(body["second_bath_ppb"], 100_000_000);
    assert_eq!(body["alkali_meq_per_litre"], Value::Null);
    body["is_unheated"] = json!(true);
    body["alkali_meq_per_litre"] = json!(400);
    body["silver_mg_per_roll"] = json!(200);
    body["film_kept_ppb"] = json!(300_000_000);
    let set = room.put(&room.steward, "/settings", &body).await;
    assert_eq!(set.status, StatusCode::OK, "{}", set.body);
    let mut read = room.get(&room.steward, "/settings").await.body["data"].clone();
    read.as_object_mut().unwrap().remove("seq");
    assert_eq!(read, body);
    let wrong = with(
        body,
        &json!({ "fixer_shifts": -1, "second_bath_ppb": 900_000_000, "film_kept_ppb": -1 }),
    );
    let answer = room.put(&room.steward, "/settings", &wrong).await;
    answer.assert_error(INVALID, "invalid");
    assert_eq!(
        answer.fields(),
        ["fixer_shifts", "second_bath_ppb", "film_kept_ppb"]
    );
}
