"""Names of places: their order against the library natsort, and the phone's twin.

The patterns are common practice, no source.
"""

import json
import random
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from natsort import natsort_keygen, ns

from tests.labels.browser import launch, serve, watch
from webapp.trade.placenames import LINES, UPRIGHT, read_place, room_of, sort_key

VECTORS = json.loads((Path(__file__).parents[1] / "vectors" / "placenames.json").read_text("utf-8"))
WORDS = ("CELL", "Loft", "Rickhouse B", "W", "A", "Keller", "row", "tier", "K")


@pytest.mark.parametrize(("name", "room", "row", "position"), VECTORS["read"])
def test_room_row_and_position_are_taken_from_a_name(name: str, room: str, row: str, position: str) -> None:
    spot = read_place(name)
    assert (spot.room, spot.row, spot.position) == (room, row, position)
    assert room_of(name) == room


def test_places_stand_in_the_order_that_people_count_in() -> None:
    shuffled = random.Random(4).sample(VECTORS["order"], len(VECTORS["order"]))
    assert sorted(shuffled, key=sort_key) == VECTORS["order"]


@given(st.lists(st.lists(st.one_of(st.sampled_from(WORDS), st.integers(0, 10**20).map(str)), max_size=5), max_size=12))
def test_the_order_is_that_of_natsort(names: list[list[str]]) -> None:
    """Words and whole numbers with blanks between them, capitals alike (natsort 8.4, IGNORECASE)."""
    said = [" ".join(name) for name in names]
    theirs = natsort_keygen(alg=ns.IGNORECASE)
    assert [one.casefold() for one in sorted(said, key=sort_key)] == [
        one.casefold() for one in sorted(said, key=theirs)
    ]


def test_tiers_lie_one_above_another_and_rows_do_not() -> None:
    assert read_place("Rickhouse B row 12 tier 3").is_upright and read_place("R12-T3").is_upright
    assert not read_place("CELL-A1").is_upright and not read_place("Bay 3 row 2").is_upright
    spot = read_place("Shed level 2 bay 7")
    assert (spot.room, spot.row_word, spot.row, spot.position_word, spot.position) == ("Shed", "level", "2", "bay", "7")
    assert not set(LINES) & set(UPRIGHT)


IN_BROWSER = """async (names) => {
  const { readPlace, roomOf, inOrder } = await import("/static/trade/placenames.js");
  return [names.map((name) => readPlace(name)), names.map(roomOf), [...names].sort(inOrder)];
}"""


def made_up_names(count: int) -> list[str]:
    pick = random.Random(7)
    parts = (*WORDS, *LINES, *UPRIGHT, "1", "02", "113", "é", "Ω", "x")
    return [
        "".join(pick.choice(parts) + pick.choice(["", " ", "-", "/", ", ", "  "]) for _ in range(pick.randrange(1, 6)))
        for _ in range(count)
    ]


@pytest.mark.browser
def test_the_phone_reads_names_alike(playwright: Any) -> None:
    names = [*(name for name, *_ in VECTORS["read"]), *made_up_names(2000)]
    with serve({"/blank": ("text/html", b"<!doctype html><title>places</title>")}) as origin:
        browser = launch(playwright)
        page = browser.new_page()
        faults = watch(page, origin)
        page.goto(origin + "/blank")
        spots, rooms, _ = page.evaluate(IN_BROWSER, names)
        *_, order = page.evaluate(IN_BROWSER, random.Random(5).sample(VECTORS["order"], len(VECTORS["order"])))
        browser.close()
    for name, spot, room in zip(names, spots, rooms, strict=True):
        ours = read_place(name)
        assert (spot["room"], spot["row"], spot["position"]) == (ours.room, ours.row, ours.position), name
        assert room == ours.room, name
    assert order == VECTORS["order"]
    assert faults == []
