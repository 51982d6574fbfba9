//! What ten years in the book do to drawing a board: a room with one day behind it
//! beside one with years of the same.

use sqlx::{AssertSqlSafe, Connection};
use wetside::database::cluster::{Cluster, DATABASE, StartOptions};

use super::client::{Client, request};
use super::load::pull;
use super::notes::Noted;
use super::others::Other;
use super::plan::Plan;
use super::table::{Goal, Table, median, ratio};
use super::world::World;

/// Notes of the day that both rooms begin with.
const DAY: usize = 20;

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, table: &mut Table) {
    let world = World::new(2, 2).await;
    let server = world.serve().await;
    let mut noted = Noted::default();
    let mut client = Client::new(world.port);
    for _ in 0..DAY {
        for writer in &world.writers {
            noted.one(&mut client, writer).await;
        }
    }
    server.stop().await;
    let cluster = Cluster::start(&world.folders(), &StartOptions::default())
        .await
        .unwrap();
    fill(plan, &world, 1).await;
    let drawing = Other::drawing(&world.data()).await;
    let board = |room: usize| {
        let writer = &world.writers[room];
        let path = format!("/rooms/{}/board", writer.slug);
        request(drawing.port, &path, Some(&writer.session))
    };
    let (mut day, mut years) = (Vec::new(), Vec::new());
    for _ in 0..plan.rounds {
        day.push(pull(drawing.port, board(0), plan.time).await);
        years.push(pull(drawing.port, board(1), plan.time).await);
    }
    drop(drawing);
    cluster.stop().await;
    let mut say = |what: String, figures: &[f64]| {
        table.say(&what, format!("{:.0} a second", median(figures.to_vec())));
    };
    say("Boards drawn, a day behind them".to_owned(), &day);
    say(
        format!("Boards drawn, {} days behind them", plan.days),
        &years,
    );
    let what = "Drawing a board after years, to after a day";
    table.ratio(what, ratio(&day, &years), Goal::AtMost(1.2));
}

/// Puts days behind a room as its owner: this database is of no other use.
async fn fill(plan: &Plan, world: &World, room: usize) {
    let mut db = world.owner(DATABASE).await;
    let slug = &world.writers[room].slug;
    let years = include_str!("../../deploy/bench.d/years.sql")
        .replace("SLUG", slug)
        .replace("DAYS", &plan.days.to_string());
    sqlx::raw_sql(AssertSqlSafe(years))
        .execute(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
}
