//! Books spoilt row by row, as somebody with the database could.

use uuid::Uuid;
use wetside::logbook::chain::{Head, Walk};

use super::books::{Book, MINUTE_US, ROOM, Row, SECOND_US, both_name, script, signer};

const SEALED: [i64; 3] = [4, 8, 12];

type Change = fn(&mut Row);

fn sound() -> Book {
    Book::sound(ROOM, 12, &SEALED)
}

#[test]
fn a_sound_book_is_sound() {
    let (ours, theirs) = both_name("sealed to the end", &sound(), &[]);
    assert_eq!(
        ours.said,
        "sealed up to 12 by checkpoint of 2026-11-25T10:12:01.000000Z"
    );
    assert!(
        theirs
            .said
            .contains("Sealed up to 12 by checkpoint of 2026-11-25T10:12:01.000000Z.")
    );

    let (ours, theirs) = both_name("sealed in part", &Book::sound(ROOM, 12, &[4, 8]), &[]);
    assert!(
        ours.said.ends_with("; 9..12 rest on this database alone"),
        "{}",
        ours.said
    );
    assert!(
        theirs.said.contains("; 9..12 rest on this file alone."),
        "{}",
        theirs.said
    );

    let (ours, theirs) = both_name("not sealed", &Book::sound(ROOM, 12, &[]), &[]);
    assert_eq!(ours.said, "not sealed; 1..12 rest on this database alone");
    assert!(
        theirs
            .said
            .contains("Nothing is sealed: 1..12 rest on this file alone.")
    );

    both_name("empty", &Book::sound(ROOM, 0, &[]), &[]);
    both_name("long", &Book::sound(ROOM, 300, &[1, 255, 256, 300]), &[]);
}

/// Every column of every kind of row, one value changed.
#[test]
fn a_changed_value_names_its_row() {
    let changes: [(&str, Change); 19] = [
        ("room", |row| row.room = Uuid::from_u128(7)),
        ("version", |row| row.version = 2),
        ("prev", |row| row.prev[0] ^= 1),
        ("hash", |row| row.hash[31] ^= 1),
        ("hash of no length", |row| row.hash.clear()),
        ("kind", |row| row.kind.push('s')),
        ("kind, another writing", |row| {
            row.kind.make_ascii_uppercase()
        }),
        ("actor, another", |row| row.actor = Some(Uuid::from_u128(7))),
        ("actor, the other way", |row| {
            row.actor = row.actor.xor(Some(Uuid::nil()))
        }),
        ("key, another", |row| row.key = Some(vec![0xee; 16])),
        ("key, the other way", |row| {
            row.key = row.key.take().xor(Some(vec![0; 16]))
        }),
        ("key, shorter", |row| row.key = Some(vec![1; 15])),
        ("fingerprint", |row| row.fingerprint[9] ^= 0x80),
        ("fingerprint, shorter", |row| row.fingerprint.truncate(31)),
        ("happened, a microsecond", |row| row.happened_at_us -= 1),
        ("happened, a day", |row| {
            row.happened_at_us += 1440 * MINUTE_US
        }),
        ("recorded, forward", |row| {
            row.recorded_at_us += 1440 * MINUTE_US
        }),
        ("recorded, back", |row| {
            row.recorded_at_us -= 1440 * MINUTE_US
        }),
        ("payload", |row| row.payload.push(b' ')),
    ];
    for (what, change) in changes {
        for seq in [1, 6, 11] {
            let mut book = sound();
            change(book.at(seq));
            assert_ne!(book.rows, sound().rows, "{what} of {seq} is as before");
            let what = format!("{what} of {seq}");
            let (ours, _) = both_name(&what, &book, &[seq]);
            let sealed = ours.sealing.and_then(|sealing| sealing.sealed);
            let below = SEALED.into_iter().rfind(|sealed| *sealed < seq);
            assert_eq!(sealed.map(|(seq, _)| seq), below, "{what}");
        }
    }
}

#[test]
fn a_changed_number_names_both() {
    let mut book = sound();
    book.at(6).seq = 9000;
    both_name("higher", &book, &[6, 9000]);
    let mut book = sound();
    book.at(6).seq = 3;
    both_name("lower", &book, &[3, 6]);
    let mut book = sound();
    book.at(6).seq = 5;
    both_name("twice", &book, &[5, 6]);
}

#[test]
fn a_missing_row_is_named() {
    for seq in [1, 2, 6, 8, 11, 12] {
        let mut book = sound();
        book.rows.retain(|row| row.seq != seq);
        both_name(&format!("without {seq}"), &book, &[seq]);
    }
    let mut book = Book::sound(ROOM, 12, &[]);
    book.rows.retain(|row| !(3..=9).contains(&row.seq));
    let (ours, theirs) = both_name("without seven", &book, &[3]);
    assert!(ours.said.contains("up to entry 9"), "{}", ours.said);
    assert!(theirs.said.contains("up to entry 9"), "{}", theirs.said);
}

/// What only a checkpoint can tell: without one, nobody can know.
#[test]
fn a_lost_end_is_known_by_the_checkpoint_alone() {
    let mut book = Book::sound(ROOM, 12, &[8]);
    book.rows.pop();
    let (ours, _) = both_name("last, behind the checkpoint", &book, &[]);
    assert!(ours.said.contains("9..11 rest"), "{}", ours.said);
    book.rows.truncate(7);
    both_name("last, sealed", &book, &[8]);
}

#[test]
fn swapped_neighbours_are_named() {
    let mut book = sound();
    book.rows.swap(5, 6);
    both_name("lines", &book, &[6]);
    let mut book = sound();
    book.rows.swap(5, 6);
    (book.rows[5].seq, book.rows[6].seq) = (6, 7);
    both_name("contents", &book, &[6, 7]);
}

#[test]
fn a_row_twice_or_from_elsewhere_is_named() {
    let mut book = sound();
    let again = book.rows[5].clone();
    book.rows.insert(6, again);
    both_name("twice", &book, &[6]);

    let mut book = sound();
    book.rows[5] = Book::sound(Uuid::from_u128(9), 12, &[]).rows[5].clone();
    both_name("of another room", &book, &[6]);
}

/// One row made whole again by itself: the next does not continue it.
#[test]
fn a_row_with_a_new_hash_breaks_the_next() {
    let mut book = sound();
    book.at(6).payload.push(b' ');
    book.at(6).rehash();
    both_name("one row", &book, &[7]);
}

/// The whole tail made anew: a sound chain, and not the one that was signed.
#[test]
fn a_new_tail_is_caught_by_the_checkpoints_alone() {
    let mut book = sound();
    book.at(6).payload.push(b' ');
    book.rehash_from(6);
    let (ours, theirs) = both_name("new tail", &book, &[8, 12]);
    assert!(
        ours.said.contains("after entry 4, was rewritten"),
        "{}",
        ours.said
    );
    assert!(
        theirs.said.contains("after entry 4, was rewritten"),
        "{}",
        theirs.said
    );
    assert!(ours.said.ends_with("sealed up to 4 by checkpoint of 2026-11-25T10:04:01.000000Z; 5..12 rest on this database alone"));

    let mut book = Book::sound(ROOM, 12, &[4]);
    book.at(6).payload.push(b' ');
    book.rehash_from(6);
    both_name("new tail behind the last checkpoint", &book, &[]);
}

/// Checkpoints made for the new tail: with another key, or with none.
#[test]
fn forged_checkpoints_do_not_count() {
    let mut forged = sound();
    forged.at(6).payload.push(b' ');
    forged.rehash_from(6);
    forged.checkpoints.clear();
    for seq in SEALED {
        forged.seal(seq, SECOND_US, &signer(2));
    }
    let ours = [signer(1).public_key()];
    let found = script(forged.export().as_bytes(), &ours);
    assert_eq!(Vec::from_iter(found.named), SEALED, "{}", found.said);
    assert!(
        found.said.contains("signed with another key"),
        "{}",
        found.said
    );
    assert!(found.said.contains("Nothing is sealed"), "{}", found.said);

    // Claiming our key does not make it our signature.
    for checkpoint in &mut forged.checkpoints {
        checkpoint.public_key = signer(1).public_key();
    }
    let found = script(forged.export().as_bytes(), &[]);
    assert_eq!(Vec::from_iter(found.named), SEALED, "{}", found.said);
    assert!(found.said.contains("forged"), "{}", found.said);

    // A key of small order and the signature that is good for every message.
    let mut neutral = [0; 32];
    neutral[0] = 1;
    for checkpoint in &mut forged.checkpoints {
        checkpoint.public_key = neutral;
        checkpoint.signature = [0; 64];
        checkpoint.signature[0] = 1;
        assert!(!checkpoint.is_signed());
    }
    let found = script(forged.export().as_bytes(), &[]);
    assert_eq!(Vec::from_iter(found.named), SEALED, "{}", found.said);
}

#[test]
fn clocks_that_ran_backwards_are_named() {
    let mut book = Book::sound(ROOM, 12, &[]);
    book.at(6).recorded_at_us -= MINUTE_US;
    book.rehash_from(6);
    both_name("the same moment", &book, &[]);
    book.at(6).recorded_at_us -= 1;
    book.rehash_from(6);
    both_name("a microsecond back", &book, &[6]);

    let mut book = Book::sound(ROOM, 12, &[]);
    book.at(6).happened_at_us = book.at(6).recorded_at_us + 2 * MINUTE_US;
    book.rehash_from(6);
    both_name("two minutes early", &book, &[]);
    book.at(6).happened_at_us += 1;
    book.rehash_from(6);
    both_name("more than two minutes early", &book, &[6]);
}

/// Entries written behind a checkpoint with a time before it: somebody set a clock.
#[test]
fn times_set_back_behind_a_checkpoint_are_named() {
    let mut book = Book::sound(ROOM, 12, &[]);
    book.seal(4, 5 * MINUTE_US, &signer(1));
    both_name("clock set back", &book, &[5, 6]);
    book.checkpoints.clear();
    book.seal(4, 3 * MINUTE_US, &signer(1));
    both_name("two minutes are allowed", &book, &[]);
}

#[test]
fn extreme_times_are_walked_without_harm() {
    for (happened, recorded, expected) in [
        (i64::MIN, i64::MIN, vec![]),
        (i64::MAX, i64::MAX, vec![]),
        (i64::MAX, i64::MIN, vec![1]),
        (i64::MIN, i64::MAX, vec![]),
    ] {
        let mut book = Book::sound(ROOM, 1, &[]);
        book.at(1).happened_at_us = happened;
        book.at(1).recorded_at_us = recorded;
        book.rehash_from(1);
        both_name(&format!("{happened} {recorded}"), &book, &expected);
    }
}

/// The database's own note of the end, against the rows.
#[test]
fn another_noted_end_is_named() {
    let book = Book::sound(ROOM, 12, &[]);
    let head = |seq: usize, flip: u8| {
        let mut hash: [u8; 32] = book.rows[seq - 1].hash.clone().try_into().unwrap();
        hash[0] ^= flip;
        Head {
            seq: i64::try_from(seq).unwrap(),
            hash,
        }
    };
    for (rows, noted, expected) in [
        (12, head(12, 0), None),
        (12, head(12, 1), Some(12)),
        (12, head(9, 0), Some(10)),
        (9, head(12, 0), Some(10)),
        (0, head(12, 0), Some(1)),
        (0, Head::EMPTY, None),
    ] {
        let mut walk = Walk::new(ROOM);
        for row in &book.rows[..rows] {
            assert_eq!(walk.feed(&row.stored()), []);
        }
        let named = walk.compare(noted).map(|broken| broken.seq);
        assert_eq!(named, expected, "{rows} rows, {noted:?}");
        assert_eq!(walk.first_broken(), expected);
    }
}
