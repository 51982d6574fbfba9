//! People who note sheets, and what was sent and answered.

use std::collections::BTreeSet;
use std::time::{Duration, Instant};

use tokio::task::JoinSet;
use wetside::database::cluster::DATABASE;
use wetside::logbook::Key;

use super::audit::Audit;
use super::client::Client;
use super::world::{World, Writer};
use crate::harness::new_key;

/// What was sent and answered in the rooms.
#[derive(Debug, Default)]
pub(crate) struct Noted {
    sent: BTreeSet<Key>,
    answered: BTreeSet<Key>,
}

impl Noted {
    /// One note of this person, which must be answered with its page.
    pub(crate) async fn one(&mut self, client: &mut Client, writer: &Writer) -> i64 {
        let key = new_key();
        self.sent.insert(key);
        let seq = note(client, writer, &key).await;
        self.answered.insert(key);
        seq
    }

    /// A note that was sent and answered by other means.
    pub(crate) fn know(&mut self, key: Key) {
        self.sent.insert(key);
        self.answered.insert(key);
    }

    pub(crate) fn and(&mut self, other: Self) {
        self.sent.extend(other.sent);
        self.answered.extend(other.answered);
    }

    /// The notes so far.
    pub(crate) fn count(&self) -> usize {
        self.answered.len()
    }

    /// Every answered note is in the books once and the books verify, or every
    /// figure is void.
    pub(crate) async fn check(&self, world: &World) {
        let server = world.serve().await;
        let mut db = world.owner(DATABASE).await;
        let there: Vec<Vec<u8>> = sqlx::query_scalar("select key from entry where kind = 'noted'")
            .fetch_all(&mut db)
            .await
            .unwrap();
        drop(db);
        server.stop().await;
        let there: Vec<Key> = there
            .into_iter()
            .map(|key| key.try_into().unwrap())
            .collect();
        let audit = Audit::of(&self.sent, &self.answered, &there);
        assert!(audit.is_clean(), "void: {audit:?}");
        let (is_clean, said) = world.verify();
        assert!(is_clean, "void: {said}");
        println!(
            "{} answered notes: all in the books, once, and the books verify",
            audit.kept
        );
    }
}

async fn note(client: &mut Client, writer: &Writer, key: &Key) -> i64 {
    let answer = client.note(writer, key).await.unwrap();
    let place = answer.location.unwrap_or_default();
    let seq = place.rsplit_once("/sheets/").map(|(_, seq)| seq.parse());
    match (answer.status, seq) {
        (303, Some(Ok(seq))) => seq,
        (status, _) => panic!("{status} {place}"),
    }
}

/// So many people note for so long; answers notes a second.
pub(crate) async fn press(
    world: &World,
    people: Vec<Vec<Writer>>,
    time: Duration,
    noted: &mut Noted,
) -> f64 {
    let (port, began) = (world.port, Instant::now());
    let mut clients = JoinSet::new();
    for rooms in people {
        clients.spawn(async move {
            let (mut client, mut mine) = (Client::new(port), Noted::default());
            for writer in rooms.iter().cycle() {
                if began.elapsed() >= time {
                    break;
                }
                mine.one(&mut client, writer).await;
            }
            mine
        });
    }
    let mut all = Noted::default();
    while let Some(ended) = clients.join_next().await {
        all.and(ended.unwrap());
    }
    let speed = all.count() as f64 / began.elapsed().as_secs_f64();
    noted.and(all);
    speed
}

/// So many people, each with a room of their own or several by turns.
pub(crate) fn over_rooms(world: &World, rooms: usize, people: usize) -> Vec<Vec<Writer>> {
    let mut each = vec![Vec::new(); people];
    for (place, writer) in world.writers[..rooms].iter().enumerate() {
        each[place % people].push(writer.clone());
    }
    each.retain(|rooms| !rooms.is_empty());
    each
}

/// So many people in the first room.
pub(crate) fn in_one_room(world: &World, people: usize) -> Vec<Vec<Writer>> {
    let first = &world.writers[0].slug;
    let there = world.writers.iter().filter(|writer| writer.slug == *first);
    let each: Vec<Vec<Writer>> = there
        .take(people)
        .map(|writer| vec![writer.clone()])
        .collect();
    assert_eq!(each.len(), people, "too few people in the room");
    each
}
