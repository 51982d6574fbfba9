//! The file itself: what an export looks like, and files spoilt as text.

use serde_json::Value;

use super::books::{Book, Found, ROOM, script, signer};

fn sound() -> String {
    Book::sound(ROOM, 12, &[4, 12]).export()
}

fn checked(text: &str) -> Found {
    script(text.as_bytes(), &[signer(1).public_key()])
}

/// Replaces once in the line of an entry.
fn in_entry(seq: i64, from: &str, to: &str) -> String {
    let mark = format!("\"seq\":{seq},\"version\"");
    let lines = sound();
    let lines = lines.lines().map(|line| {
        if !line.contains(&mark) {
            return format!("{line}\n");
        }
        assert!(line.contains(from), "no {from} in {line}");
        format!("{}\n", line.replacen(from, to, 1))
    });
    lines.collect()
}

#[test]
fn an_export_holds_what_was_stored() {
    let book = Book::sound(ROOM, 12, &[4, 12]);
    let text = book.export();
    let lines: Vec<Value> = text
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    assert_eq!(lines.len(), 1 + 12 + 2);
    assert_eq!(
        text.lines().next().unwrap(),
        format!(
            "{{\"line\":\"header\",\"format\":\"wetside.book\",\"version\":1,\"room\":\"{ROOM}\",\"demo\":false}}"
        )
    );
    for (line, row) in lines[1..13].iter().zip(&book.rows) {
        assert_eq!(line["seq"], row.seq);
        assert_eq!(line["kind"], row.kind.as_str());
        assert_eq!(line["happened_at_us"], row.happened_at_us);
        assert_eq!(line["recorded_at_us"], row.recorded_at_us);
        match std::str::from_utf8(&row.payload) {
            Ok(payload) => assert_eq!(line["payload"], payload),
            Err(_) => assert_eq!(line["payload_base64"], "/wB7"),
        }
    }
    assert_eq!(lines[13]["line"], "checkpoint");
    assert_eq!(lines[13]["at"], "2026-11-25T10:04:01.000000Z");
}

#[test]
fn the_demo_is_named() {
    let mut book = Book::sound(ROOM, 3, &[]);
    book.at(1).kind = "demo".into();
    book.rehash_from(1);
    book.demo = true;
    let found = checked(&book.export());
    assert!(found.good, "{}", found.said);
    assert!(found.said.contains("This is a demo room"), "{}", found.said);
    book.demo = false;
    let found = checked(&book.export());
    assert!(found.named.contains(&1), "{}", found.said);
}

#[test]
fn fields_nobody_vouches_for_are_named() {
    let changes = [
        (
            "one too many",
            "\"version\"",
            "\"n\\u001b[2Jote\":\"paid\",\"version\"",
        ),
        ("one twice", "\"version\"", "\"kind\":\"pass\",\"version\""),
        ("one missing", "\"version\":1,", ""),
        ("a fraction", "\"version\":1,", "\"version\":1.0,"),
        (
            "a word for a number",
            "\"version\":1,",
            "\"version\":\"1\",",
        ),
        ("true for one", "\"version\":1,", "\"version\":true,"),
        ("not a number", "\"version\":1,", "\"version\":NaN,"),
        ("half a letter", "\"kind\":\"", "\"kind\":\"\\ud800"),
        (
            "upper case digits",
            "\"fingerprint\":\"07",
            "\"fingerprint\":\"0A",
        ),
        ("neither", "\"line\":\"entry\"", "\"line\":\"remark\""),
        ("no object", "{", "["),
    ];
    for (what, from, to) in changes {
        let found = checked(&in_entry(7, from, to));
        assert!(!found.good, "{what}: {}", found.said);
        assert!(found.named.contains(&7), "{what}: {}", found.said);
        assert!(!found.said.contains('\u{1b}'), "{what}: {:?}", found.said);
        assert!(
            found.named.iter().all(|seq| *seq == 7),
            "{what}: {}",
            found.said
        );
    }
}

#[test]
fn files_that_are_no_book_are_refused() {
    for (what, text) in [
        ("empty", String::new()),
        (
            "no header",
            sound()
                .lines()
                .skip(1)
                .map(|line| format!("{line}\n"))
                .collect(),
        ),
        (
            "another format",
            sound().replacen("wetside.book", "wetside.look", 1),
        ),
        (
            "a later format",
            sound().replacen("\"version\":1,\"room\"", "\"version\":2,\"room\"", 1),
        ),
        ("another room", sound().replacen("0193a1b2", "0193a1b3", 1)),
        ("cut off", sound().trim_end().to_owned()),
        (
            "a second header",
            sound() + sound().split_inclusive('\n').next().unwrap(),
        ),
        (
            "an entry at the end",
            sound() + sound().split_inclusive('\n').nth(12).unwrap(),
        ),
        ("noise", "\u{0}\u{1}\n".repeat(3)),
    ] {
        let found = checked(&text);
        assert!(!found.good, "{what}: {}", found.said);
    }
    let deep = sound() + &"[".repeat(100_000) + "\n";
    assert!(!checked(&deep).good);
}

#[test]
fn every_field_of_a_checkpoint_is_signed() {
    let text = sound();
    let last = text.lines().last().unwrap();
    let line: Value = serde_json::from_str(last).unwrap();
    for field in ["room", "hash", "at", "public_key", "signature"] {
        let value = line[field].as_str().unwrap();
        let place = if field == "at" { 18 } else { 1 };
        let digit = if value.as_bytes()[place] == b'1' {
            "2"
        } else {
            "1"
        };
        let mut changed = value.to_owned();
        changed.replace_range(place..=place, digit);
        let found = script(
            text.replace(last, &last.replace(value, &changed))
                .as_bytes(),
            &[],
        );
        assert!(!found.good, "{field}: {}", found.said);
        assert!(found.named.contains(&12), "{field}: {}", found.said);
    }
    let found = checked(&text.replace(last, &last.replace("\"seq\":12", "\"seq\":11")));
    assert!(found.named.contains(&11), "{}", found.said);
}

#[test]
fn more_than_one_key_is_told_apart() {
    let mut book = Book::sound(ROOM, 12, &[4]);
    book.seal(12, 1, &signer(2));
    let text = book.export();
    let both = [signer(1).public_key(), signer(2).public_key()];
    assert!(!script(text.as_bytes(), &[]).good);
    assert!(!script(text.as_bytes(), &both[..1]).good);
    let found = script(text.as_bytes(), &both);
    assert!(found.good, "{}", found.said);
    assert!(found.said.contains("Sealed up to 12"), "{}", found.said);
}

/// Without a key the script says what it cannot know.
#[test]
fn without_a_key_the_script_says_so() {
    let found = script(sound().as_bytes(), &[]);
    assert!(found.good, "{}", found.said);
    assert!(found.said.contains("ask the room"), "{}", found.said);
}

/// One bit anywhere in the file, spread over its whole length.
#[test]
fn no_flipped_bit_goes_unseen() {
    let text = sound().into_bytes();
    let rounds = 64;
    for round in 0..rounds {
        let place = round * text.len() / rounds + round % 7;
        let mut spoilt = text.clone();
        spoilt[place] ^= 1 << (round % 8);
        let found = script(&spoilt, &[signer(1).public_key()]);
        assert!(
            !found.good,
            "bit {} of byte {place}: {}",
            round % 8,
            found.said
        );
    }
}
