//! How many boards a second somebody who is logged in gets, kept and drawn each time,
//! beside the same bytes from the framework alone and from `nginx`.

use std::path::Path;

use super::client::request;
use super::load::{page, pull};
use super::others::Other;
use super::plan::Plan;
use super::table::{Goal, Table, median, ratio};
use super::world::World;

/// Boards a second.
#[derive(Debug, Default)]
struct Figures {
    kept: Vec<f64>,
    drawn: Vec<f64>,
    bare: Vec<f64>,
    nginx: Vec<f64>,
}

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table) {
    let server = world.serve().await;
    let writer = &world.writers[0];
    let path = format!("/rooms/{}/board", writer.slug);
    let board = |port| request(port, &path, Some(&writer.session));
    let bytes = page(world.port, &board(world.port)).await;
    let file = world.file("board.html");
    std::fs::write(&file, &bytes).unwrap();
    let drawing = Other::drawing(&world.data()).await;
    let bare = Other::bare(&file).await;
    let nginx = Other::nginx(file.parent().unwrap()).await;
    let plain = |port| request(port, "/board.html", None);
    let alike = page(nginx.port, &plain(nginx.port)).await;
    assert!(alike == bytes && page(bare.port, &plain(bare.port)).await == bytes);
    let mut figures = Figures::default();
    for _ in 0..plan.rounds {
        let speed = pull(world.port, board(world.port), plan.time).await;
        figures.kept.push(speed);
        let speed = pull(bare.port, plain(bare.port), plan.time).await;
        figures.bare.push(speed);
        let speed = pull(nginx.port, plain(nginx.port), plan.time).await;
        figures.nginx.push(speed);
        let speed = pull(drawing.port, board(drawing.port), plan.time).await;
        figures.drawn.push(speed);
    }
    drop((drawing, bare, nginx));
    server.stop().await;
    std::fs::remove_file(Path::new(&file)).unwrap();
    figures.fill(table, bytes.len());
}

impl Figures {
    fn fill(&self, table: &mut Table, bytes: usize) {
        let mut say = |what: &str, figures: &[f64]| {
            let what = format!("{what}, {bytes} bytes");
            table.say(&what, format!("{:.0} a second", median(figures.to_vec())));
        };
        say("Boards kept, logged in", &self.kept);
        say("Boards drawn each time", &self.drawn);
        say("Bare route", &self.bare);
        say("nginx, a file", &self.nginx);
        let mut to = |what: &str, of: &[f64], to: &[f64], goal: f64| {
            table.ratio(what, ratio(of, to), Goal::AtLeast(goal));
        };
        to("Kept board to bare route", &self.kept, &self.bare, 0.8);
        to("Kept board to nginx", &self.kept, &self.nginx, 1.0);
        to("Drawn board to bare route", &self.drawn, &self.bare, 0.1);
    }
}
