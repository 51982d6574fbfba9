//! The whole book as a file: what it holds for whom, and that an outsider can check it.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;

use serde_json::Value;
use wetside::book::filter::Reader;
use wetside::book::{checkpoints, files};
use wetside::kinds::KINDS;
use wetside::logbook::{SeenBy, reading};
use wetside::rights::Role;

use super::bench::ENTRIES;
use super::helpers::Library;
use super::reading::all_of;

/// What the script for outsiders says of a file; whether it is content.
fn checked(path: &Path, key: &str) -> (bool, String) {
    let checked = Command::new("python3")
        .arg(concat!(env!("CARGO_MANIFEST_DIR"), "/deploy/verify-book"))
        .args(["--key", key])
        .arg(path)
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&checked.stdout);
    let errors = String::from_utf8_lossy(&checked.stderr);
    (checked.status.success(), format!("{said}{errors}"))
}

impl Library {
    async fn taken_by(&self, reader: Reader) -> String {
        let scope = self.scope(reader.person);
        let file = files::whole_for(&self.app, scope, reader).await;
        all_of(file.unwrap()).await
    }

    fn as_treasurer(&self) -> Reader {
        Reader::new(self.member, Role::Treasurer)
    }
}

#[tokio::test]
async fn the_book_taken_away_is_whole_and_an_outsider_can_check_it() {
    let library = Library::open().await;
    for _ in 0..520 {
        library.write_more().await;
    }
    let sealed = checkpoints::seal(&library.app, library.room).await.unwrap();
    library.write_more().await;
    let text = library.taken_by(library.as_steward()).await;
    let path = library.vault.data.join("book.jsonl");
    let file = std::fs::File::create(&path).unwrap();
    let entries = reading::write_out(&library.owner, &library.vault, library.room, file)
        .await
        .unwrap();
    assert_eq!(entries, ENTRIES + 521);
    assert_eq!(text, std::fs::read_to_string(&path).unwrap());
    let kinds: Vec<String> = text
        .lines()
        .map(|line| serde_json::from_str::<Value>(line).unwrap()["line"].to_string())
        .collect();
    assert_eq!(kinds.len(), usize::try_from(entries).unwrap() + 2);
    assert_eq!(
        (kinds[0].as_str(), kinds[kinds.len() - 1].as_str()),
        ("\"header\"", "\"checkpoint\"")
    );
    let key = data_encoding::HEXLOWER.encode(&sealed.public_key);
    let (is_content, said) = checked(&path, &key);
    assert!(is_content && !said.contains("not shown"), "{said}");
}

/// A line that says where an entry stands, and nothing else.
fn is_a_place(line: &Value) {
    let fields = line.as_object().unwrap().keys().map(String::as_str);
    let fields: BTreeSet<&str> = fields.collect();
    let place = ["hash", "line", "prev", "room", "seq", "version"];
    assert_eq!(fields, BTreeSet::from(place));
}

/// The treasurer here is a person that the incidents are not about.
#[tokio::test]
async fn what_is_not_shown_is_a_place_in_the_chain_and_an_outsider_can_still_check_it() {
    let library = Library::open().await;
    for _ in 0..520 {
        library.write_more().await;
    }
    let sealed = checkpoints::seal(&library.app, library.room).await.unwrap();
    let stranger = Reader {
        person: uuid::Uuid::from_u128(7),
        ..library.as_treasurer()
    };
    let text = library.taken_by(stranger).await;
    let lines: Vec<Value> = text
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    let own = KINDS
        .iter()
        .filter(|kind| kind.seen_by == SeenBy::SubjectAndStewards);
    for kind in own {
        assert!(
            !text.contains(&format!("\"{}\"", kind.name)),
            "{}",
            kind.name
        );
    }
    let withheld: Vec<&Value> = lines
        .iter()
        .filter(|line| line["line"] == "withheld")
        .collect();
    assert!(withheld.len() >= 5, "{}", withheld.len());
    withheld.iter().for_each(|line| is_a_place(line));
    let path = library.vault.data.join("treasurer.jsonl");
    std::fs::write(&path, &text).unwrap();
    let key = data_encoding::HEXLOWER.encode(&sealed.public_key);
    let (is_content, said) = checked(&path, &key);
    assert!(is_content, "{said}");
    let says = format!("{} of them are not shown in this file", withheld.len());
    assert!(said.contains(&says), "{said}");

    // A hash that somebody changed, and one that was taken out.
    let of_one = serde_json::to_string(&withheld[1]["hash"]).unwrap();
    let other = format!("\"{}\"", "0".repeat(64));
    let line = text
        .lines()
        .find(|line| line.contains(&of_one) && line.contains("withheld"));
    let line = line.unwrap();
    for spoilt in [
        text.replace(line, &line.replace(&of_one, &other)),
        text.replace(&format!("{line}\n"), ""),
    ] {
        assert_ne!(spoilt, text);
        std::fs::write(&path, spoilt).unwrap();
        let (is_content, said) = checked(&path, &key);
        assert!(!is_content, "{said}");
    }

    // The one whom they are about is shown their own.
    let own = library.taken_by(library.as_treasurer()).await;
    assert!(own.contains("\"incident_reported\""));
}
