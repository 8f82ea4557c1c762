"""A thousand pictures slow neither the start of a phone nor its hand-in, nor the book's: ratios within one run."""

from __future__ import annotations

import time
from pathlib import Path

import pytest

from tests.book.conftest import F1, entry, fill_world, send
from tests.browser.floor_house import Floor, far_floor
from webapp.book.enclosures import listed, shelf
from webapp.book.opening import open_book
from webapp.book.record.store import Book

__all__ = ["far_floor"]
pytestmark = pytest.mark.bench
PICTURES = 1_000
BATCH = 200


def seconds_of_a_batch(book: Book, begin: int) -> float:
    """Return the processor time of one hand-in of a full batch. [s]"""
    batch = [entry("shift_note", F1, seq=begin + n, text="look") for n in range(BATCH)]
    begun = time.process_time()
    send(book, *batch)
    return time.process_time() - begun


def lay_pictures(book: Book) -> None:
    """Let the book have a thousand pictures of one vessel; of their files, only the names."""
    for part in range(PICTURES // 100):
        names = [f"{part * 100 + n:064x}" for n in range(100)]
        send(book, *(entry("shift_note", F1, seq=100_000 + part * 100 + n, text="look") | {"enclosed": [name]}
                     for n, name in enumerate(names)))
        with book.write() as database:
            database.conn.executemany(
                "INSERT INTO enclosures VALUES (?, 'image/jpeg', 300000, '2025-09-24T12:00:00Z', 'phone')",
                [(name,) for name in names],
            )


def test_a_hand_in_costs_the_same_with_a_thousand_pictures_in_the_book(tmp_path: Path) -> None:
    with open_book(tmp_path / "book.sqlite") as book:
        fill_world(book)
        for n in range(3):
            seconds_of_a_batch(book, 1 + n * BATCH)
        before = min(seconds_of_a_batch(book, 1_000 + n * BATCH) for n in range(5))
        lay_pictures(book)
        after = min(seconds_of_a_batch(book, 10_000 + n * BATCH) for n in range(5))
        began = time.process_time()
        assert len(listed.of_marks(book, [F1])) == listed.LISTED_MOST
        looked = time.process_time() - began
        began = time.process_time()
        assert not shelf.how_much(book, f"{7:064x}").is_whole
        placed = time.process_time() - began
    print(f"batch of {BATCH}: {before:.3f} s, with {PICTURES} pictures {after:.3f} s, ratio {after / before:.2f}; "
          f"list of a vessel {looked * 1000:.1f} ms, place of one {placed * 1000:.1f} ms")
    assert after / before < 1.2
    assert looked < 0.05


_LAY = """async (count) => {
  const { write, BYTES, ENCLOSURES, META } = await import("/static/slate/db.js");
  const bytes = new Uint8Array(100_000);
  for (let at = 0; at < bytes.length; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
  for (let from = 0; from < count; from += 50) {
    await write([ENCLOSURES, BYTES, META], async (tx) => {
      for (let n = from; n < from + 50; n++) {
        const sha256 = n.toString(16).padStart(64, "0");
        tx.objectStore(ENCLOSURES).put({ sha256, type: "image/jpeg", size: bytes.length, state: "waiting",
          made_at: new Date().toISOString(), had_at: null, words: "" });
        tx.objectStore(BYTES).put(bytes, sha256);
      }
      tx.objectStore(META).put(true, "enclosing");
    });
  }
}"""
_LOG = """async (count) => {
  const { log } = await import("/static/slate/queue.js");
  const begun = performance.now();
  for (let n = 0; n < count; n++) {
    await log({ kind: "shift_note", kind_version: 1, mark: "", person: "NS", values: { text: { raw: "look" } } });
  }
  return performance.now() - begun;
}"""


def seconds_to_start(floor: Floor) -> float:
    """Return the time from opening a page until its script has finished drawing it. [s]"""
    begun = time.monotonic()
    floor.open("/today")
    return time.monotonic() - begun


def test_a_phone_starts_and_logs_as_fast_with_a_thousand_pictures_that_wait(far_floor: Floor) -> None:
    floor = far_floor
    for _ in range(2):
        seconds_to_start(floor)
    start = min(seconds_to_start(floor) for _ in range(5))
    logged = min(floor.page.evaluate(_LOG, 20) for _ in range(3))
    floor.page.evaluate(_LAY, PICTURES)
    start_after = min(seconds_to_start(floor) for _ in range(5))
    logged_after = min(floor.page.evaluate(_LOG, 20) for _ in range(3))
    print(f"start {start * 1000:.0f} ms, with {PICTURES} pictures of 100 KB waiting {start_after * 1000:.0f} ms, ratio "
          f"{start_after / start:.2f}; 20 entries logged {logged:.0f} ms and {logged_after:.0f} ms, ratio "
          f"{logged_after / logged:.2f}")
    assert start_after / start < 1.3
    assert logged_after / logged < 1.3
