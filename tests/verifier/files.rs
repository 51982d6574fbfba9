//! The key file and the checkpoints' files: made whole, closed to others, read
//! with suspicion.

use std::collections::BTreeSet;
use std::fs::{self, Permissions};
use std::io::Write;
use std::os::unix::fs::PermissionsExt;
use std::thread;

use wetside::logbook::chain::Head;
use wetside::logbook::checkpoint::{self, Refusal, Shelf, append, read};
use wetside::logbook::keys::{self, Key, KeyError, Purpose};

use super::books::{Book, Folder, ROOM, signer};

fn mode(path: &std::path::Path) -> u32 {
    fs::metadata(path).unwrap().permissions().mode() & 0o777
}

#[test]
fn a_key_is_made_once_and_kept() {
    let folder = Folder::new();
    let path = keys::path(&folder.path().join("data"), None);
    assert!(matches!(Key::read(&path), Err(KeyError::Absent { .. })));
    let first = Key::read_or_create(&path).unwrap();
    let again = Key::read_or_create(&path).unwrap();
    assert_eq!(
        first.derive(Purpose::Checkpoint),
        again.derive(Purpose::Checkpoint)
    );
    assert_eq!(mode(&path), 0o600);
    assert_eq!(mode(path.parent().unwrap()), 0o700);
    let line = fs::read_to_string(&path).unwrap();
    assert_eq!(line.len(), 65);
    assert!(!format!("{first:?}").contains(&line[..4]));
    let left: Vec<_> = fs::read_dir(path.parent().unwrap()).unwrap().collect();
    assert_eq!(left.len(), 1, "a draft was left behind");

    let other = Key::read_or_create(&folder.path().join("other")).unwrap();
    assert_ne!(
        first.derive(Purpose::Checkpoint),
        other.derive(Purpose::Checkpoint)
    );
}

#[test]
fn a_named_key_file_is_used() {
    let folder = Folder::new();
    let named = folder.path().join("elsewhere");
    assert_eq!(keys::path(folder.path(), Some(&named)), named);
    fs::write(&named, format!("{}\n", "0f".repeat(32))).unwrap();
    fs::set_permissions(&named, Permissions::from_mode(0o400)).unwrap();
    let key = Key::read_or_create(&named).unwrap();
    let same = Key::from_bytes([0x0f; 32]);
    assert_eq!(
        key.derive(Purpose::Checkpoint),
        same.derive(Purpose::Checkpoint)
    );
}

#[test]
fn many_at_once_get_one_key() {
    let folder = Folder::new();
    let path = folder.path().join("key");
    let derived: BTreeSet<_> = thread::scope(|scope| {
        let threads: Vec<_> = (0..16)
            .map(|_| {
                scope.spawn(|| {
                    Key::read_or_create(&path)
                        .unwrap()
                        .derive(Purpose::Checkpoint)
                })
            })
            .collect();
        threads.into_iter().map(|one| one.join().unwrap()).collect()
    });
    assert_eq!(derived.len(), 1);
}

#[test]
fn a_key_others_can_read_is_refused() {
    let folder = Folder::new();
    let path = folder.path().join("key");
    Key::read_or_create(&path).unwrap();
    for open in [0o640, 0o604, 0o620, 0o602, 0o610, 0o666] {
        fs::set_permissions(&path, Permissions::from_mode(open)).unwrap();
        let refused = Key::read_or_create(&path).unwrap_err();
        assert!(matches!(refused, KeyError::Open { mode, .. } if mode == open));
        assert!(refused.to_string().contains("chmod 600"));
    }
}

#[test]
fn what_is_no_key_is_refused_and_left_alone() {
    let folder = Folder::new();
    for (name, text) in [
        ("empty", String::new()),
        ("short", "ab".repeat(31)),
        ("long", "ab".repeat(33)),
        ("upper", "AB".repeat(32)),
        ("two lines", format!("{}\n\n", "ab".repeat(32))),
        ("word", "x".repeat(64)),
    ] {
        let path = folder.path().join(name);
        fs::write(&path, &text).unwrap();
        fs::set_permissions(&path, Permissions::from_mode(0o600)).unwrap();
        let refused = Key::read_or_create(&path).unwrap_err();
        assert!(
            matches!(refused, KeyError::NoKey { .. }),
            "{name}: {refused}"
        );
        assert_eq!(fs::read_to_string(&path).unwrap(), text);
    }
    let refused = Key::read_or_create(folder.path()).unwrap_err();
    assert!(matches!(refused, KeyError::NoKey { .. }), "{refused}");
}

#[test]
fn checkpoints_are_kept_and_read_again() {
    let folder = Folder::new();
    let ours = signer(1).public_key();
    assert_eq!(read(folder.path(), ROOM, &ours).unwrap(), Shelf::default());
    let book = Book::sound(ROOM, 12, &[4, 8, 12]);
    for one in &book.checkpoints {
        append(folder.path(), one).unwrap();
    }
    let shelf = read(folder.path(), ROOM, &ours).unwrap();
    assert_eq!(shelf.checkpoints, book.checkpoints);
    assert_eq!(shelf.refused, []);
    let path = checkpoint::path(folder.path(), ROOM);
    assert_eq!(
        path,
        folder.path().join(format!("checkpoints/{ROOM}.jsonl"))
    );
    assert_eq!(mode(&path), 0o600);
    assert_eq!(mode(path.parent().unwrap()), 0o700);
}

#[test]
fn lines_that_do_not_count_are_named() {
    let folder = Folder::new();
    let mut book = Book::sound(ROOM, 12, &[4, 8, 12]);
    book.seal(2, 1, &signer(2));
    book.checkpoints[1].at_us += 1;
    for one in &book.checkpoints {
        append(folder.path(), one).unwrap();
    }
    let path = checkpoint::path(folder.path(), ROOM);
    let lines = fs::read_to_string(&path).unwrap();
    let first = lines.lines().next().unwrap();
    let more = [
        first.replace("\"seq\":4", "\"seq\":4,\"seq\":4"),
        first.replace(".000000Z", "Z"),
        first.replace("0193a1b2", "0193a1b3"),
        first.replace("{\"room\"", "{\"by\":\"us\",\"room\""),
    ];
    fs::write(&path, format!("{lines}{}\n", more.join("\n"))).unwrap();
    let shelf = read(folder.path(), ROOM, &signer(1).public_key()).unwrap();
    assert_eq!(
        shelf.checkpoints,
        [book.checkpoints[0], book.checkpoints[2]]
    );
    let refused: Vec<_> = shelf
        .refused
        .iter()
        .map(|one| (one.line, one.seq, one.why))
        .collect();
    assert_eq!(
        refused,
        [
            (2, Some(8), Refusal::BadSignature),
            (4, Some(2), Refusal::OtherKey),
            (5, None, Refusal::Unreadable),
            (6, None, Refusal::Unreadable),
            (7, Some(4), Refusal::OtherRoom),
            (8, None, Refusal::Unreadable),
        ]
    );
}

/// A crash in the middle of a line neither spoils the file nor is believed.
#[test]
fn an_unfinished_line_is_dropped() {
    let folder = Folder::new();
    let book = Book::sound(ROOM, 12, &[4, 8]);
    append(folder.path(), &book.checkpoints[0]).unwrap();
    let path = checkpoint::path(folder.path(), ROOM);
    let mut file = fs::OpenOptions::new().append(true).open(&path).unwrap();
    file.write_all(b"{\"room\":\"0193").unwrap();
    let ours = signer(1).public_key();
    assert_eq!(
        read(folder.path(), ROOM, &ours).unwrap().checkpoints.len(),
        1
    );
    append(folder.path(), &book.checkpoints[1]).unwrap();
    let shelf = read(folder.path(), ROOM, &ours).unwrap();
    assert_eq!(shelf.checkpoints, book.checkpoints);
    assert_eq!(shelf.refused, []);
}

#[test]
fn many_checkpoints_at_once_are_all_kept() {
    let folder = Folder::new();
    let book = Book::sound(ROOM, 24, &Vec::from_iter(1..=24));
    thread::scope(|scope| {
        for one in &book.checkpoints {
            scope.spawn(|| append(folder.path(), one).unwrap());
        }
    });
    let shelf = read(folder.path(), ROOM, &signer(1).public_key()).unwrap();
    let kept: BTreeSet<_> = shelf.checkpoints.iter().map(|one| one.seq).collect();
    assert_eq!(kept, BTreeSet::from_iter(1..=24));
    assert_eq!(shelf.refused, []);
}

#[test]
fn a_time_without_a_four_digit_year_is_refused() {
    for at_us in [i64::MIN, i64::MAX, -62_167_219_200_000_001] {
        assert!(signer(1).sign(ROOM, Head::EMPTY, at_us).is_err(), "{at_us}");
    }
    assert!(signer(1).sign(ROOM, Head::EMPTY, 0).is_ok());
}
