//! Golden values: the hash of entries and the signature of checkpoints, worked
//! out by `golden.py` without any code of the program, and what the standards
//! publish for the functions beneath.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use std::path::Path;
use std::process::Command;

use data_encoding::HEXLOWER;
use ed25519_dalek::{Signature, Signer as _, SigningKey};
use hkdf::Hkdf;
use serde_json::Value;
use sha2::{Digest, Sha256};
use wetside::logbook::chain::{Head, Link, hash};
use wetside::logbook::checkpoint::{Checkpoint, Signer, message, time_text};
use wetside::logbook::keys::{Key, Purpose};

const ENTRIES: &str = include_str!("entries.json");
const CHECKPOINT: &str = include_str!("checkpoint.json");
const PUBLISHED: &str = include_str!("published.json");

fn cases(text: &str, of: Option<&str>) -> Vec<Value> {
    let file: Value = serde_json::from_str(text).unwrap();
    let holder = of.map_or(&file, |name| &file[name]);
    let cases = holder["cases"].as_array().unwrap().clone();
    assert!(cases.len() >= 3, "too few cases to mean anything");
    cases
}

fn bytes(value: &Value) -> Vec<u8> {
    HEXLOWER.decode(value.as_str().unwrap().as_bytes()).unwrap()
}

fn sized<const N: usize>(value: &Value) -> [u8; N] {
    bytes(value).try_into().unwrap()
}

fn number(value: &Value) -> i64 {
    value.as_i64().unwrap()
}

#[test]
fn entries_hash_as_worked_out_outside() {
    let cases = cases(ENTRIES, None);
    for case in &cases {
        let payload = bytes(&case["payload_hex"])
            .repeat(usize::try_from(number(&case["payload_repeat"])).unwrap());
        let link = Link {
            room: case["room"].as_str().unwrap().parse().unwrap(),
            seq: number(&case["seq"]),
            prev: sized(&case["prev"]),
            kind: case["kind"].as_str().unwrap(),
            actor: case["actor"].as_str().map(|id| id.parse().unwrap()),
            key: (!case["key"].is_null()).then(|| sized(&case["key"])),
            fingerprint: sized(&case["fingerprint"]),
            happened_at_us: number(&case["happened_at_us"]),
            recorded_at_us: number(&case["recorded_at_us"]),
            payload: &payload,
        };
        assert_eq!(
            HEXLOWER.encode(&hash(&link)),
            case["hash"],
            "{}",
            case["name"]
        );
    }
    let mut hashes: Vec<_> = cases.iter().map(|case| case["hash"].as_str()).collect();
    hashes.sort_unstable();
    hashes.dedup();
    assert_eq!(
        hashes.len(),
        cases.len(),
        "two different entries have one hash"
    );
}

#[test]
fn checkpoints_are_signed_as_worked_out_outside() {
    for case in cases(CHECKPOINT, None) {
        let key = Key::from_bytes(sized(&case["key"]));
        assert_eq!(
            HEXLOWER.encode(&key.derive(Purpose::Checkpoint)),
            case["derived"]
        );
        let head = Head {
            seq: number(&case["seq"]),
            hash: sized(&case["hash"]),
        };
        let room = case["room"].as_str().unwrap().parse().unwrap();
        let at_us = number(&case["at_us"]);
        assert_eq!(
            HEXLOWER.encode(&message(room, head, at_us)),
            case["message"]
        );
        assert_eq!(time_text(at_us).unwrap(), case["at"]);
        let expected = Checkpoint {
            room,
            seq: head.seq,
            hash: head.hash,
            at_us,
            public_key: sized(&case["public_key"]),
            signature: sized(&case["signature"]),
        };
        assert_eq!(Signer::new(&key).sign(room, head, at_us).unwrap(), expected);
        assert!(expected.is_signed());
    }
}

/// Source: FIPS 180, see `published.json`.
#[test]
fn sha256_as_published() {
    for case in cases(PUBLISHED, Some("sha256")) {
        let repeat = usize::try_from(number(&case["repeat"])).unwrap();
        let text = case["text"].as_str().unwrap().repeat(repeat);
        assert_eq!(HEXLOWER.encode(&Sha256::digest(text)), case["hash"]);
    }
}

/// Source: RFC 5869, appendix A, see `published.json`.
#[test]
fn hkdf_as_published() {
    for case in cases(PUBLISHED, Some("hkdf_sha256")) {
        let expected = bytes(&case["okm"]);
        let mut derived = vec![0; expected.len()];
        Hkdf::<Sha256>::new(Some(&bytes(&case["salt"])), &bytes(&case["ikm"]))
            .expand(&bytes(&case["info"]), &mut derived)
            .unwrap();
        assert_eq!(derived, expected);
    }
}

/// Source: RFC 8032, section 7.1, see `published.json`.
#[test]
fn ed25519_as_published() {
    for case in cases(PUBLISHED, Some("ed25519")) {
        let key = SigningKey::from_bytes(&sized(&case["secret"]));
        assert_eq!(
            HEXLOWER.encode(key.verifying_key().as_bytes()),
            case["public"]
        );
        let message = bytes(&case["message"]);
        let signature = key.sign(&message);
        assert_eq!(HEXLOWER.encode(&signature.to_bytes()), case["signature"]);
        let verified = key.verifying_key().verify_strict(&message, &signature);
        assert!(verified.is_ok());
        let mut changed = signature.to_bytes();
        changed[7] ^= 1;
        let refused = key
            .verifying_key()
            .verify_strict(&message, &Signature::from_bytes(&changed));
        assert!(refused.is_err());
    }
}

/// The files here are what `golden.py` works out, and its own arithmetic gives
/// the published values and refuses what is no good signature.
#[test]
fn the_script_works_out_the_same() {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden/golden.py");
    let run = Command::new("python3").arg(script).output().unwrap();
    assert!(
        run.status.success(),
        "{}{}",
        String::from_utf8_lossy(&run.stdout),
        String::from_utf8_lossy(&run.stderr)
    );
}
