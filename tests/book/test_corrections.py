"""A reading has the correction that was in force when it was read, whenever anybody heard of it."""

from __future__ import annotations

import itertools
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import NOW, T1, entry, fill_world, gauge, send
from webapp.book import cards
from webapp.book.fold import fold, row_reader
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

HOUR = timedelta(hours=1)


def probe(hours: int, add: str, **more: Any) -> dict[str, Any]:
    """TH-2 in ice, so many hours before now."""
    found = str(-float(add) + 0.0)
    return entry("instrument_check", read_at=NOW - hours * HOUR, instrument="TH-2", against="ice", expected="0 plain",
                 found=f"{found} plain", correction=f"{add} plain", result="good", in_use="yes", **more)


def warm(hours: int, **more: Any) -> dict[str, Any]:
    """100 L at 62 % vol, read at 18.0 degC on TH-2."""
    one = gauge(T1, "100", "62", read_at=NOW - hours * HOUR, **more)
    one["values"]["temp"] = {"raw": "18.0", "unit": "degC", "instrument": "TH-2"}
    return one


def temps(book: Book) -> list[float]:
    return [line["values"]["temp"] for line in fold.load_state(book, f"v:{T1}")["recent"]["gauge"]]


def put_probe(book: Book, **more: Any) -> None:
    registry.put_instrument(book, {"id": "TH-2", "sort": "thermometer", "unit": "degC", **more}, "JK")


def test_each_reading_has_the_correction_of_its_time(book: Book) -> None:
    put_probe(book)
    send(book, warm(9, seq=1), probe(8, "-0.4", seq=2), warm(7, seq=3), probe(6, "0", seq=4), warm(5, seq=5))
    assert temps(book) == pytest.approx([18.0, 17.6, 18.0])
    row = log.load_entry(book, fold.load_state(book, f"v:{T1}")["recent"]["gauge"][1]["entry"])
    assert row
    read = row_reader.read_as_folded(book, row)
    assert read
    assert (read.shown("temp"), read.corrected) == ("18.0 °C", {"temp": pytest.approx(-0.4)})
    # Warmer by 0.4 degC than it is: the litres at 20 degC would be too few. About 0.09 % a degree at 62 % vol.
    warmer, right = (line["figures"]["volume_20"] for line in fold.load_state(book, f"v:{T1}")["recent"]["gauge"][:2])
    assert right - warmer == pytest.approx(0.4 * 0.09, abs=0.01)


def test_the_order_of_arrival_does_not_matter(tmp_path: Path) -> None:
    story = [warm(9, seq=1), probe(8, "-0.4", seq=2), warm(7, seq=3), probe(6, "0.2", seq=4), warm(5, seq=5)]
    dumps = set()
    for n, order in enumerate(itertools.permutations(story)):
        if n % 7:
            continue
        with open_book(tmp_path / f"{n}.db") as book:
            fill_world(book)
            put_probe(book)
            for one in order:
                send(book, one)
            assert temps(book) == pytest.approx([18.0, 17.6, 18.2])
            dumps.add(fold.dump(book))
    assert len(dumps) == 1


def test_an_amended_check_puts_its_readings_right(book: Book) -> None:
    put_probe(book)
    check = probe(8, "-0.4", seq=2)
    send(book, check, warm(7, seq=3))
    assert temps(book) == pytest.approx([17.6])
    send(book, probe(8, "-0.1", seq=4, amends=check["id"], because="misread"))
    assert temps(book) == pytest.approx([17.9])
    kept = fold.dump(book)
    fold.rebuild(book)
    assert fold.dump(book) == kept


def test_a_certificates_table_and_its_words(book: Book) -> None:
    send(book, warm(7, seq=1))
    put_probe(book, corrections="40: 0.2; 0: -0.1\n20: 0,0")
    assert temps(book) == pytest.approx([18.0 - 0.01])  # a tenth of the way from 20 to 0
    put_probe(book, title="a probe")
    assert temps(book) == pytest.approx([17.99])  # another column changed: the table stays
    for wrong in ("20", "a: 1", "0: 1; 0: 2", "; ".join(f"{n}: 0" for n in range(41))):
        with pytest.raises(BookError):
            put_probe(book, corrections=wrong)
    put_probe(book, corrections="")
    assert temps(book) == pytest.approx([18.0])


def test_phones_get_the_correction_in_force_now(book: Book) -> None:
    put_probe(book)
    assert [one["correction"] for one in cards.cards_since(book, 0)["instruments"]] == [None]
    send(book, probe(8, "-0.4", seq=1))
    sent = cards.cards_since(book, 0)["instruments"][0]["correction"]
    assert sent == {"unit": "degC", "table": [], "offset": pytest.approx(-0.4)}
