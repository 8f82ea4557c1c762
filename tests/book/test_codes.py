"""Codes to type: their check character by ISO/IEC 7064, their life, and that one grant is for one phone."""

import re
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from webapp.book.house import codes, devices
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError

NOW = datetime(2026, 11, 29, 8, 0, tzinfo=UTC)
MINUTE = timedelta(minutes=1)


@pytest.mark.parametrize(
    ("base", "alphabet", "check"),
    [
        # ISO/IEC 7064, MOD 11,10: the standard's own example 0794 with check 5 (from memory).
        ("0794", "0123456789", "5"),
        # MOD 37,36: the Global Release Identifier of the IFPI's handbook, A1-2425G-ABC1234002-M.
        ("A12425GABC1234002", "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ", "M"),
    ],
)
def test_the_sum_is_the_hybrid_system_of_the_standard(base: str, alphabet: str, check: str) -> None:
    assert codes.check_character(base, alphabet) == check


def test_the_alphabet_fits_the_standard_and_the_eye() -> None:
    size = len(codes.ALPHABET)
    assert size == len(set(codes.ALPHABET)) == 30
    assert all((size + 1) % n for n in range(2, size)), "its successor is a prime"
    assert not set("0O1ILU") & set(codes.ALPHABET)


@given(st.text(codes.ALPHABET, min_size=7, max_size=7), st.integers(0, 7), st.sampled_from(codes.ALPHABET))
def test_every_wrong_character_is_found(base: str, at: int, other: str) -> None:
    code = base + codes.check_character(base, codes.ALPHABET)
    wrong = code[:at] + other + code[at + 1 :]
    if wrong == code:
        assert codes.parse_code(wrong) == code
    else:
        with pytest.raises(codes.BadCode):
            codes.parse_code(wrong)


def test_nearly_every_swap_of_neighbours_is_found() -> None:
    """Counted over pairs at each place of one code; the system promises nearly all, not all."""
    missed = told = 0
    for first in codes.ALPHABET:
        for second in codes.ALPHABET:
            if first == second:
                continue
            base = f"7K{first}{second}P4R"
            swapped = f"7K{second}{first}P4R"
            told += 1
            missed += codes.check_character(base, codes.ALPHABET) == codes.check_character(swapped, codes.ALPHABET)
    assert missed / told < 0.01


@pytest.mark.parametrize("dress", ["{}", " {} ", "{0:.4}-{1}", "{0:.4} {1}", "{0:.4}\u2011{1}"])
def test_a_code_is_read_in_either_case_with_hyphen_or_spaces(dress: str) -> None:
    code = codes.make_code()
    for text in (code, code.lower()):
        assert codes.parse_code(dress.format(text, text[4:])) == code


@pytest.mark.parametrize(
    ("text", "says"),
    [("7KMQ-2XN0", "No code has 0 in it"), ("7kmq-2xnl", "No code has L in it"), ("7KMQ-2XN", "this has 7"),
     ("7KMQ-2XNé", "letters and digits"), ("", "this has 0")],
)
def test_what_cannot_be_a_code_is_told_by_what_to_look_at(text: str, says: str) -> None:
    with pytest.raises(codes.BadCode, match=re.escape(says)):
        codes.parse_code(text)


def test_codes_are_drawn_anew_and_are_never_kept_as_they_are(tmp_path: Path) -> None:
    with open_book(tmp_path / "book.sqlite") as book:
        grants = [devices.new_grant(book, "JK", "PH-2", NOW) for _ in range(50)]
        assert len({grant.code for grant in grants}) == 50
        kept = str(book.query("SELECT * FROM tokens"))
        assert not any(grant.code in kept or grant.token in kept for grant in grants)


def test_a_typed_code_lets_one_phone_in_for_fifteen_minutes(tmp_path: Path) -> None:
    with open_book(tmp_path / "book.sqlite") as book:
        grant = devices.new_grant(book, "JK", "PH-2", NOW)
        with pytest.raises(BookError, match="older than 15 minutes"):
            devices.enrol_device(book, grant.code, "", NOW + 16 * MINUTE)
        device, _ = devices.enrol_device(book, codes.show_code(grant.code).lower(), "", NOW + 14 * MINUTE)
        assert (device["name"], device["enrolled_by"]) == ("PH-2", "JK")
        for again in (grant.code, grant.token):
            with pytest.raises(BookError, match="used already"):
                devices.enrol_device(book, again, "", NOW + 14 * MINUTE)


def test_the_qr_of_a_grant_uses_its_typed_code_up_and_no_other(tmp_path: Path) -> None:
    with open_book(tmp_path / "book.sqlite") as book:
        grant, other = (devices.new_grant(book, "JK", "PH-2", NOW) for _ in range(2))
        devices.enrol_device(book, grant.token, "", NOW + MINUTE)
        with pytest.raises(BookError, match="used already"):
            devices.enrol_device(book, grant.code, "", NOW + MINUTE)
        devices.enrol_device(book, other.code, "", NOW + MINUTE)


def test_a_hash_of_a_typed_code_is_no_token(tmp_path: Path) -> None:
    """What is kept of a code is found by a code alone: the text that it is hashed from opens nothing."""
    with open_book(tmp_path / "book.sqlite") as book:
        grant = devices.new_grant(book, "JK", "PH-2", NOW)
        with pytest.raises(BookError):
            devices.enrol_device(book, f"typed {grant.code} and some more words", "", NOW)
        with pytest.raises(BookError):
            devices.enrol_device(book, f"typed {grant.code}", "", NOW)


@given(st.binary(min_size=32, max_size=32))
def test_groups_for_the_eye_are_four_of_four_and_follow_from_all_that_they_show(digest: bytes) -> None:
    groups = codes.groups_of(digest)
    assert re.fullmatch(rf"([{codes.ALPHABET}]{{4}} ){{3}}[{codes.ALPHABET}]{{4}}", groups)
    # Read back by another way: the groups are the lowest sixteen digits of the number in base 30.
    number = sum(codes.ALPHABET.index(one) * 30**n for n, one in enumerate(groups.replace(" ", "")))
    assert number == int.from_bytes(digest, "big") % 30**16
