//! How many notes a second, beside the same statements and beside the least that
//! a numbered line can cost.

use super::notes::{Noted, in_one_room, over_rooms, press};
use super::plan::Plan;
use super::said::scripted_and_logged;
use super::script::Script;
use super::table::{Goal, Table, median, ratio};
use super::world::World;

/// Notes a second, by what was measured.
#[derive(Debug, Default)]
struct Figures {
    many_rooms: Vec<f64>,
    one_room_16: Vec<f64>,
    one_room_64: Vec<f64>,
    same_many: Vec<f64>,
    same_one: Vec<f64>,
    floor_many: Vec<f64>,
    floor_one: Vec<f64>,
}

/// The scripts, over all rooms and in one.
#[derive(Debug)]
struct Scripts {
    same_many: Script,
    same_one: Script,
    floor_many: Script,
    floor_one: Script,
}

/// Measures, and says so in the table.
pub(crate) async fn measure(plan: &Plan, world: &World, table: &mut Table, noted: &mut Noted) {
    let [scripted, logged] = scripted_and_logged().await;
    assert_eq!(scripted, logged, "void: the script says something else");
    let server = world.serve().await;
    let scripts = Scripts {
        same_many: Script::same(world, plan, plan.rooms),
        same_one: Script::same(world, plan, 1),
        floor_many: Script::floor(world, plan, plan.rooms),
        floor_one: Script::floor(world, plan, 1),
    };
    let mut figures = Figures::default();
    for _ in 0..plan.rounds {
        round(world, plan, &scripts, &mut figures, noted).await;
    }
    server.stop().await;
    figures.fill(table, &scripts);
}

/// Each measured once, the program and the scripts by turns.
async fn round(
    world: &World,
    plan: &Plan,
    scripts: &Scripts,
    figures: &mut Figures,
    noted: &mut Noted,
) {
    let time = plan.time;
    let speed = press(world, over_rooms(world, plan.rooms, 16), time, noted).await;
    figures.many_rooms.push(speed);
    figures.same_many.push(scripts.same_many.run(world, time));
    figures.floor_many.push(scripts.floor_many.run(world, time));
    let speed = press(world, in_one_room(world, 16), time, noted).await;
    figures.one_room_16.push(speed);
    figures.same_one.push(scripts.same_one.run(world, time));
    let speed = press(world, in_one_room(world, 64), time, noted).await;
    figures.one_room_64.push(speed);
    figures.floor_one.push(scripts.floor_one.run(world, time));
}

impl Figures {
    fn fill(&self, table: &mut Table, scripts: &Scripts) {
        let mut say = |what: &str, figures: &[f64]| {
            table.say(what, format!("{:.0} a second", median(figures.to_vec())));
        };
        say("Notes, 16 people over all rooms", &self.many_rooms);
        say("Notes, 16 people in one room", &self.one_room_16);
        say("Notes, 64 people in one room", &self.one_room_64);
        let mut script = |name: &str, script: &Script, figures: &[f64]| {
            say(&format!("{name}, {} clients", script.clients), figures);
        };
        let (same, floor) = ("Same statements", "Floor");
        let many = |name: &str| format!("{name}, all rooms");
        let one = |name: &str| format!("{name}, one room");
        script(&many(same), &scripts.same_many, &self.same_many);
        script(&one(same), &scripts.same_one, &self.same_one);
        script(&many(floor), &scripts.floor_many, &self.floor_many);
        script(&one(floor), &scripts.floor_one, &self.floor_one);
        self.fill_ratios(table);
    }

    fn fill_ratios(&self, table: &mut Table) {
        let (many, one_16, one_64) = (&self.many_rooms, &self.one_room_16, &self.one_room_64);
        let goals = [
            ("same, all rooms, 16 people", many, &self.same_many, 1.2),
            ("same, one room, 16 people", one_16, &self.same_one, 5.0),
            ("same, one room, 64 people", one_64, &self.same_one, 10.0),
            ("floor, all rooms, 16 people", many, &self.floor_many, 0.35),
            ("floor, one room, 16 people", one_16, &self.floor_one, 2.0),
            ("floor, one room, 64 people", one_64, &self.floor_one, 2.0),
        ];
        for (what, of, to, goal) in goals {
            let what = format!("Notes to {what}");
            table.ratio(&what, ratio(of, to), Goal::AtLeast(goal));
        }
    }
}
