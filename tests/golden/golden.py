#!/usr/bin/env python3
"""Works out the golden values anew and compares them with the files here.

The arithmetic is that of deploy/verify-book and of this file, none of it the
program's. With --write it writes entries.json and checkpoint.json instead.
"""

import hashlib
import hmac
import importlib.machinery
import importlib.util
import json
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
sys.dont_write_bytecode = True
loader = importlib.machinery.SourceFileLoader(
    "verify_book", str(HERE.parent.parent / "deploy" / "verify-book")
)
book = importlib.util.module_from_spec(importlib.util.spec_from_loader("verify_book", loader))
loader.exec_module(book)

ROOM = "0193a1b2-c3d4-7e5f-8a6b-7c8d9e0f1a2b"
PERSON = "0193a1b2-0000-7000-8000-00000000beef"
PLAIN = {
    "room": ROOM,
    "seq": 2,
    "prev": "11" * 32,
    "kind": "pass",
    "actor": PERSON,
    "key": "000102030405060708090a0b0c0d0e0f",
    "fingerprint": "22" * 32,
    "happened_at_us": 1795600800000000,
    "recorded_at_us": 1795600801234567,
    "payload_hex": '{"sheets":6}'.encode().hex(),
    "payload_repeat": 1,
}
CASES = [
    ("plain", {}),
    ("first", {"seq": 1, "prev": "00" * 32, "kind": "demo"}),
    ("no actor", {"actor": None}),
    ("no key", {"key": None}),
    ("neither actor nor key", {"actor": None, "key": None}),
    ("actor that is all zeros", {"actor": "00000000-0000-0000-0000-000000000000"}),
    ("key that is all zeros", {"key": "00" * 16}),
    ("empty payload", {"payload_hex": ""}),
    ("not ASCII", {"kind": "Bräunung – 調色", "payload_hex": '{"name":"Zoë 🎞"}'.encode().hex()}),
    ("payload that is not UTF-8", {"payload_hex": "ff00fe7b7d"}),
    ("payload with NUL, quotes and line feeds", {"payload_hex": b'\x00"\\\n\r\t{}'.hex()}),
    ("payload of 300 bytes", {"payload_hex": "61", "payload_repeat": 300}),
    ("payload of 70000 bytes", {"payload_hex": "c3a4", "payload_repeat": 35000}),
    ("empty kind", {"kind": ""}),
    ("kind longer, payload shorter by the same letters", {"kind": "pass{", "payload_hex": b'"sheets":6}'.hex()}),
    ("largest numbers", {"seq": 2**63 - 1, "happened_at_us": 2**63 - 1, "recorded_at_us": 2**63 - 1}),
    ("smallest numbers", {"seq": -(2**63), "happened_at_us": -(2**63), "recorded_at_us": -(2**63)}),
    ("before 1970", {"happened_at_us": -1, "recorded_at_us": 0}),
    ("all ones", {"prev": "ff" * 32, "fingerprint": "ff" * 32, "key": "ff" * 16}),
]


def entry_of(case):
    """A case as the verifier reads an entry."""
    return {
        "room": book.uuid(case["room"]),
        "seq": case["seq"],
        "prev": bytes.fromhex(case["prev"]),
        "kind": case["kind"],
        "actor": case["actor"] and book.uuid(case["actor"]),
        "key": case["key"] and bytes.fromhex(case["key"]),
        "fingerprint": bytes.fromhex(case["fingerprint"]),
        "happened_at_us": case["happened_at_us"],
        "recorded_at_us": case["recorded_at_us"],
        "payload": bytes.fromhex(case["payload_hex"]) * case["payload_repeat"],
    }


def hkdf(secret, salt, info, length):
    """RFC 5869 with SHA-256."""
    prk = hmac.new(salt or bytes(32), secret, hashlib.sha256).digest()
    block, output, count = b"", b"", 0
    while len(output) < length:
        count += 1
        block = hmac.new(prk, block + info + bytes([count]), hashlib.sha256).digest()
        output += block
    return output[:length]


def encoded(point):
    """The 32 bytes of a point, RFC 8032 section 5.1.2."""
    inverse = pow(point[2], -1, book.P)
    x, y = point[0] * inverse % book.P, point[1] * inverse % book.P
    return (y | (x & 1) << 255).to_bytes(32, "little")


def signed(secret, message):
    """Public key and signature, RFC 8032 sections 5.1.5 and 5.1.6."""
    digest = hashlib.sha512(secret).digest()
    scalar = int.from_bytes(digest[:32], "little") & (2**254 - 8) | 2**254
    public = encoded(book.times(scalar, book.BASE))
    nonce = int.from_bytes(hashlib.sha512(digest[32:] + message).digest(), "little") % book.ORDER
    commitment = encoded(book.times(nonce, book.BASE))
    challenge = int.from_bytes(hashlib.sha512(commitment + public + message).digest(), "little")
    answer = (nonce + challenge * scalar) % book.ORDER
    return public, commitment + answer.to_bytes(32, "little")


def entries():
    """The cases with their hashes."""
    cases = []
    for name, changed in CASES:
        case = {"name": name, **PLAIN, **changed}
        case["hash"] = book.entry_hash(entry_of(case)).hex()
        cases.append(case)
    return cases


def checkpoints():
    """From the bytes of a key file to a signature."""
    cases = []
    for key, seq, at, at_us in [
        (bytes(range(32)), 412, "2026-11-25T04:00:00.000000Z", 1795579200000000),
        (bytes(32), 0, "1970-01-01T00:00:00.000000Z", 0),
        (b"\xff" * 32, 2**63 - 1, "9998-12-31T23:59:59.999999Z", 253370764799999999),
    ]:
        assert book.time_us(at) == at_us, at
        mark = {"room": book.uuid(ROOM), "seq": seq, "hash": bytes(32) if seq == 0 else b"\x5a" * 32, "at_us": at_us}
        secret = hkdf(key, b"", b"wetside checkpoint ed25519 1", 32)
        message = book.checkpoint_message(mark)
        public, signature = signed(secret, message)
        assert book.is_signed(public, message, signature)
        cases.append(
            {
                "key": key.hex(),
                "derived": secret.hex(),
                "room": ROOM,
                "seq": seq,
                "hash": mark["hash"].hex(),
                "at": at,
                "at_us": at_us,
                "message": message.hex(),
                "public_key": public.hex(),
                "signature": signature.hex(),
            }
        )
    return cases


def published():
    """Checks this arithmetic against the published values."""
    known = json.loads((HERE / "published.json").read_text())
    for case in known["sha256"]["cases"]:
        assert hashlib.sha256(case["text"].encode() * case["repeat"]).hexdigest() == case["hash"], case
    for case in known["hkdf_sha256"]["cases"]:
        ikm, salt, info, okm = (bytes.fromhex(case[name]) for name in ("ikm", "salt", "info", "okm"))
        assert hkdf(ikm, salt, info, len(okm)) == okm, case
    for case in known["ed25519"]["cases"]:
        secret, public, message, signature = (
            bytes.fromhex(case[name]) for name in ("secret", "public", "message", "signature")
        )
        assert signed(secret, message) == (public, signature), case
        assert book.is_signed(public, message, signature), case
        refused(public, message, signature)


def refused(public, message, signature):
    """What is not a good signature is not taken for one."""
    for place in range(0, 64 * 8, 37):
        changed = bytearray(signature)
        changed[place // 8] ^= 1 << place % 8
        assert not book.is_signed(public, message, bytes(changed)), place
    assert not book.is_signed(public, message + b"\0", signature)
    scalar = int.from_bytes(signature[32:], "little") + book.ORDER
    assert not book.is_signed(public, message, signature[:32] + scalar.to_bytes(32, "little"))
    neutral = encoded(book.NEUTRAL)
    assert not book.is_signed(neutral, message, neutral + bytes(32))
    assert not book.is_signed((book.P + 1).to_bytes(32, "little"), message, neutral + bytes(32))


def main():
    published()
    wrong = []
    for name, values in [("entries.json", entries()), ("checkpoint.json", checkpoints())]:
        text = json.dumps({"cases": values}, indent=2, ensure_ascii=False) + "\n"
        if sys.argv[1:] == ["--write"]:
            (HERE / name).write_text(text, encoding="utf-8")
        elif (HERE / name).read_text(encoding="utf-8") != text:
            wrong.append(name)
    for name in wrong:
        print(f"{name} does not hold what this script works out")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
