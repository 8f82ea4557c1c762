"""A run as the phone lays it over its card agrees with the book's fold of the same entries, in a real browser.

The phone shows a run before the book has it (static/slate/overlay.js); the book folds it (webapp/kinds/effects/run.py).
Each story is told to both: to the phone as entries that wait, to the book as a hand-in.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.book.conftest import F1, NOW, R1, R2, R3, S1, charge, entry, fill_world, fruit, send
from tests.labels.browser import serve
from webapp.book.cards import card
from webapp.book.opening import open_book
from webapp.kinds.as_data import kinds_data
from webapp.trade.datafiles import DATA_FOLDER

pytestmark = pytest.mark.browser

PAGE = b"<!doctype html><html lang=en><meta charset=utf-8><title>runs</title>"
OVERLAY = """async ([card, waiting]) => {
  const { loadKinds } = await import("/static/kinds/kinds.js");
  const { loadTable1 } = await import("/static/trade/datafiles.js");
  const { withWaiting } = await import("/static/slate/overlay.js");
  await loadKinds();
  await (await import("/static/words/catalogue.js")).loadLater();
  await loadTable1();
  const { run, past_runs } = withWaiting(card, waiting);
  return { run, past_runs };
}"""
Entry = dict[str, Any]
# What the fermenter and the receiver held is on other cards than the still's; the ledger's sums are the book's alone.
BOOK_ALONE = {"what", "batch", "material", "lpa_ul", "volume_ml", "mass_g", "remnant_l", "goes_to", "yield"}
PHONE_ALONE = {"waiting"}
# A fraction on the phone carries its whole gauge; the book keeps what it came to.
OF_THE_GAUGE = {"temp", "glass", "true_strength"}


def at(minutes: float) -> datetime:
    """A time of the run, from its charge on."""
    return NOW - timedelta(hours=8) + timedelta(minutes=minutes)


def read(minutes: float, seq: int, **more: Any) -> Entry:
    """A reading of the still."""
    return entry("run_reading", S1, at(minutes), seq=seq, kind_version=2, **more)


def cut(minutes: float, seq: int, event: str, receiver: str = "", late_min: float = 0, **more: Any) -> Entry:
    """A cut or an event of the run, logged so much later than it was made."""
    to = {"receiver": receiver} if receiver else {}
    return entry("cut", S1, at(minutes), seq=seq, typed_at=at(minutes + late_min), event=event, **to, **more)


def end(minutes: float, seq: int, **more: Any) -> Entry:
    """The end of the run."""
    return entry("run_end", S1, at(minutes), seq=seq, **more)


def part(minutes: float, seq: int, receiver: str, fraction: str, litres: str, strength: str, **more: Any) -> Entry:
    """A gauge of what a receiver got."""
    return entry(
        "fraction_gauge", receiver, at(minutes), seq=seq, still=S1, fraction=fraction, volume=f"{litres} L",
        temp="20 degC", strength=f"{strength} pct_vol", goes_to="stays", **more,
    )


WHOLE = [
    charge(read_at=at(0), seq=2, run_name="14"),
    cut(40, 3, "first_drop"),
    read(45, 4, glass="78.2 pct_glass", temp="17 degC", flow="9 L_h", vapour_temp="80.1 degC", plates="3 count"),
    cut(60, 5, "heads_cut", R2, glass="75.5 pct_glass", temp="18 degC", reason="nose", nose="clean"),
    read(90, 6, strength="71.0 pct_vol", cooling_temp="40 degC"),
    cut(130, 7, "hearts_cut", R3, late_min=12, strength="55.1 pct_vol", because="the bell rang"),
    read(150, 8, strength="40.0 pct_vol"),
    end(180, 9, reason="strength", strength="18.5 pct_vol", vapour_temp="97.5 degC"),
    part(200, 10, R1, "heads", "4.0", "77.0"),
    part(205, 11, R2, "hearts", "30.0", "66.0", remnant="2.0 L", remnant_strength="60 pct_vol"),
    part(210, 12, R3, "tails", "20", "30"),
]
STRIPPING = [
    entry("charge", S1, at(0), seq=2, from_vessel=F1, wash="450 L", wash_strength="6.0 pct_vol", hearts_to=R2,
          feints="20 L", feints_strength="25 pct_vol"),
    read(40, 3, dip="12 L"),
    read(70, 4, dip="31.5 L", strength="44 pct_vol"),
    end(120, 5, reason="time"),
    part(130, 6, R2, "low_wines", "95", "27.0"),
]
STORIES = {
    "charged": WHOLE[:1],
    "heads run": WHOLE[:3],
    "hearts run": WHOLE[:5],
    "a cut logged late": WHOLE[:6],
    "a cut logged two minutes late, which is the tap and its words": [*WHOLE[:5], cut(130, 7, "hearts_cut", R3, 2)],
    "a cut logged three minutes late": [*WHOLE[:5], cut(130, 7, "hearts_cut", R3, 3, because="hands full")],
    "ended": WHOLE[:8],
    "gauged": WHOLE,
    "in another order": [*WHOLE[:1], *reversed(WHOLE[1:8]), *WHOLE[8:]],
    "stripping, with dips": STRIPPING,
    "two runs": [
        *WHOLE[:8], entry("charge", S1, at(240), seq=20, from_vessel=F1, wash="300 L", wash_strength="6 pct_vol",
                          heads_to=R1, hearts_to=R2, tails_to=R3),
        read(280, 21, strength="70 pct_vol"),
    ],
}


@pytest.fixture(scope="module")
def page(browser: Any) -> Iterator[Any]:
    data = {f"/data/{path.name}": ("application/json", path.read_bytes()) for path in DATA_FOLDER.glob("*.json")}
    data["/data/kinds.json"] = ("application/json", json.dumps(kinds_data()).encode())
    with serve({**data, "/runs": ("text/html", PAGE)}) as origin:
        opened = browser.new_page()
        opened.goto(f"{origin}/runs")
        yield opened
        opened.close()


def _plain(found: Any) -> Any:
    """Return what both tell: times as times, figures to nine digits, none of what only one of them can know."""
    if isinstance(found, dict):
        left_out = BOOK_ALONE | PHONE_ALONE
        return {k: _plain(v) for k, v in found.items() if k not in left_out and v is not None and v != ""}
    if isinstance(found, list):
        return [_plain(each) for each in found]
    if isinstance(found, str) and found[:2] == "20" and "T" in found:
        return datetime.fromisoformat(found).timestamp()
    return float(f"{found:.9g}") if isinstance(found, int | float) and not isinstance(found, bool) else found


def _apart(book: Any, phone: Any, where: str = "") -> list[str]:
    """Return every place where the two differ."""
    if isinstance(book, dict) and isinstance(phone, dict):
        return [d for key in sorted({*book, *phone}) for d in _apart(book.get(key), phone.get(key), f"{where}.{key}")]
    if isinstance(book, list) and isinstance(phone, list) and len(book) == len(phone):
        return [d for n, pair in enumerate(zip(book, phone, strict=True)) for d in _apart(*pair, f"{where}[{n}]")]
    return [] if book == phone else [f"{where}: book {book!r}, phone {phone!r}"]


@pytest.mark.parametrize("name", STORIES)
def test_phone_and_book_tell_one_run(name: str, page: Any, tmp_path: Path) -> None:
    story = STORIES[name]
    with open_book(tmp_path / "book.db") as book:
        fill_world(book)
        send(book, fruit(F1, read_at=at(-600)))
        before = card(book, S1)
        answer = send(book, *story)
        after = card(book, S1)
    assert before and after
    assert [one for one in answer["results"] if one["settled"] not in ("entered", "queried")] == []
    assert not [query for query in after["queries"] if query["weight"] == "stop"]
    shown = page.evaluate(OVERLAY, [before, story])
    for fraction in (each for run in [*shown["past_runs"], shown["run"]] if run for each in run["fractions"]):
        for extra in OF_THE_GAUGE:
            fraction.pop(extra, None)
    told = {"run": after["run"], "past_runs": after["past_runs"]}
    assert _apart(_plain(told), _plain(shown)) == []
