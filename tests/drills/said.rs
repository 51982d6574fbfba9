//! What the server says to the database for one note, as the database logged it,
//! and what the script says that the bench compares it with.

use std::collections::BTreeSet;

use super::client::Client;
use super::world::World;
use crate::harness::new_key;

/// A statement without its values: its verb, and the tables it names.
pub(crate) type Bones = (String, BTreeSet<String>);

fn bones(statement: &str) -> Bones {
    let words: Vec<&str> = statement
        .split(|letter: char| !letter.is_ascii_alphanumeric() && letter != '_')
        .filter(|word| !word.is_empty())
        .collect();
    let verb = words.first().map(|verb| verb.to_lowercase());
    let names = words
        .windows(2)
        .filter(|pair| ["from", "into", "update", "join"].contains(&pair[0]))
        .map(|pair| pair[1].to_owned())
        // What only the script needs, what is no table, what only locks.
        .filter(|name| !["bench_room", "unnest", "set", "of", "left"].contains(&name.as_str()));
    (verb.unwrap_or_default(), names.collect())
}

/// From the lock on the head on, the transaction that notes: log lines that
/// begin with a moment, the process and what was executed.
fn captured(log: &str) -> Vec<Bones> {
    let mut statements: Vec<(String, String)> = Vec::new();
    for line in log.lines() {
        let said = line.split_once("] LOG:  ");
        let told = said.and_then(|(before, what)| {
            let process = before.rsplit_once('[')?.1;
            let is_one = what.starts_with("execute ") || what.starts_with("statement: ");
            is_one.then(|| {
                what.split_once(": ")
                    .map(|(_, text)| (process.to_owned(), text.to_owned()))
            })?
        });
        match (told, statements.last_mut()) {
            (Some(told), _) => statements.push(told),
            (None, Some((_, last))) if said.is_none() && !line.contains("] DETAIL:  ") => {
                last.push(' ');
                last.push_str(line);
            }
            _ => {}
        }
    }
    let locks = |text: &str| {
        text.starts_with("select") && text.contains("from head") && text.contains("for update")
    };
    let at = statements.iter().position(|(_, text)| locks(text)).unwrap();
    let process = statements[at].0.clone();
    let own = statements[at..]
        .iter()
        .filter(|(other, _)| *other == process);
    let mut noted: Vec<Bones> = own.map(|(_, text)| bones(text)).collect();
    let end = noted.iter().position(|(verb, _)| verb == "commit").unwrap();
    noted.truncate(end + 1);
    noted
}

/// What the script says from the lock on the head on.
fn scripted() -> Vec<Bones> {
    let script = include_str!("../../deploy/bench.d/note.sql");
    let (_, body) = script.split_once("\\endpipeline").unwrap();
    let body = body.replace("\\gset", ";");
    let statements = body.split(';').filter(|text| !text.trim().is_empty());
    statements.map(bones).collect()
}

/// What the script says, and what the server was logged to say, for one note that
/// shares its transaction with no other. The figures mean something only where it
/// is the same: the same statements over the same tables in the same order.
pub(crate) async fn scripted_and_logged() -> [Vec<Bones>; 2] {
    let world = World::new(1, 1).await;
    let settings = world.cluster().join("postgresql.auto.conf");
    let mut text = std::fs::read_to_string(&settings).unwrap();
    text.push_str("log_statement = 'all'\n");
    std::fs::write(&settings, text).unwrap();
    let server = world.serve().await;
    let log = world.data().join("postgres.log");
    let before = std::fs::metadata(&log).unwrap().len();
    let mut client = Client::new(world.port);
    let answer = client.note(&world.writers[0], &new_key()).await.unwrap();
    assert_eq!(answer.status, 303);
    server.stop().await;
    let bytes = std::fs::read(&log).unwrap();
    let log = String::from_utf8_lossy(&bytes[usize::try_from(before).unwrap()..]).into_owned();
    [scripted(), captured(&log)]
}

#[test]
fn the_script_says_what_the_server_says_for_one_note() {
    super::on_runtime(async {
        let [scripted, logged] = scripted_and_logged().await;
        assert_eq!(scripted, logged);
    });
}
