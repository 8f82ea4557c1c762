"""The file for an inspector, run as a program on an export, and its own Ed25519 against another.

Sources: RFC 8032, 7.1 (vectors, typed from memory); signatures of random messages by `cryptography`.
"""

from __future__ import annotations

import importlib.util
import random
import subprocess
import sys
from datetime import UTC, datetime
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

from tests.book.conftest import fill_world, gauge, reading, send
from webapp import signed_heads
from webapp.backups import BOOK_NAME
from webapp.book.opening import open_book
from webapp.keeping.export import export_book

PROGRAM = Path(__file__).parents[2] / "docs" / "run" / "inspect_export.py"
_spec = importlib.util.spec_from_file_location("inspect_export", PROGRAM)
assert _spec and _spec.loader
program = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(program)

# Public key, message, signature: RFC 8032, 7.1, TEST 1 and TEST 2.
VECTORS = [
    ("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd"
     "25bf5f0595bbe24655141438e7a100b"),
    ("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
     "387b2eaeb4302aeeb00d291612bb0c00"),
]


@pytest.mark.parametrize(("public", "message", "signature"), VECTORS)
def test_signatures_are_checked_as_the_standard_says(public: str, message: str, signature: str) -> None:
    key, text, signed = (bytes.fromhex(one) for one in (public, message, signature))
    assert program.is_signed(key, text, signed)
    assert not program.is_signed(key, text + b"x", signed)
    # A second form of the same signature, S + L, which 5.1.7 refuses.
    s = int.from_bytes(signed[32:], "little") + program.ORDER
    assert not program.is_signed(key, text, signed[:32] + s.to_bytes(32, "little"))


def test_signatures_are_checked_as_another_library_makes_them() -> None:
    chance = random.Random(8032)
    for _ in range(8):
        key, text = Ed25519PrivateKey.from_private_bytes(chance.randbytes(32)), chance.randbytes(80)
        signed = bytearray(key.sign(text))
        assert program.is_signed(key.public_key().public_bytes_raw(), text, bytes(signed))
        signed[chance.randrange(64)] ^= 1 << chance.randrange(8)
        assert not program.is_signed(key.public_key().public_bytes_raw(), text, bytes(signed))


def run(*words: object) -> subprocess.CompletedProcess[str]:
    # Isolated and without site packages: an inspector has nothing of ours.
    command = [sys.executable, "-I", "-S", str(PROGRAM), *map(str, words)]
    return subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)


def test_an_export_is_held_to_heads_and_a_changed_one_is_found(tmp_path: Path) -> None:
    with open_book(tmp_path / BOOK_NAME) as book:
        fill_world(book)
        send(book, *[reading(seq=n) for n in range(1, 6)], gauge(seq=6, remark="Größe, žlutý\u2028ü"), {"id": "x"})
        signed = signed_heads.sign_heads(tmp_path, book, datetime(2026, 3, 1, tzinfo=UTC))
        signed_heads.add_to(tmp_path, signed)
        send(book, reading(seq=7))
    export_book(tmp_path / BOOK_NAME, tmp_path / "out")
    heads, out = tmp_path / signed_heads.SIDE_NAME, tmp_path / "out"
    done = run(out, heads, "--key", signed[0].key)
    assert done.returncode == 0 and "5 heads hold, 0 do not" in done.stdout, done.stdout + done.stderr
    assert run(out, heads, "--key", "0" * 64).returncode == 1
    whole = heads.read_text("ascii")
    heads.write_text(whole + whole[:70], "ascii")  # as a power cut leaves it
    done = run(out, heads)
    assert done.returncode == 1 and "5 heads hold, 1 do not" in done.stdout and "cannot be read" in done.stdout
    heads.write_text(whole, "ascii")
    path = out / "tables" / "entries.jsonl"
    lines = path.read_text("utf-8").rstrip("\n").split("\n")
    for changed in (
        [lines[0].replace('"device":"', '"device":"x'), *lines[1:]], lines[:2] + lines[3:], lines[:3],
        [lines[1], lines[0], *lines[2:]],
    ):
        assert changed != lines
        path.write_text("\n".join(changed) + "\n", "utf-8")
        done = run(out, heads)
        assert done.returncode == 1 and "4 heads hold, 1 do not" in done.stdout, done.stdout
    path.write_text("\n".join(lines) + "\n", "utf-8")
    heads.write_text(heads.read_text("ascii").replace('"size":', '"size":1'), "ascii")
    done = run(out, heads)
    assert done.returncode == 1 and done.stdout.count("the signature is not that of its key") == 5
