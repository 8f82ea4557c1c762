"""How a vessel is dipped: what the office typed is kept, or a sentence says what to do; a dip in the book is litres.

The tables are made up for these tests; the shell's correction is that of Czech decree 141/1997, annex 1.
"""

from __future__ import annotations

import json

import pytest

from tests.book.conftest import C1, T1, entry, send
from tests.book.told import Told, start
from webapp.book.cards import card
from webapp.book.fold.queries import for_entry
from webapp.book.house import registry
from webapp.book.house.dip_tables import cask_typed, table_typed
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.trade.dipping import volume_of_cask

LINES = "dip;litres\n0;0\n10;40\n20;80\n30;120\n40;160\n50;200\n60;240\n"


def typed(text: str = LINES, **more: object) -> str:
    said: dict[str, object] = {"length": "cm", "volume": "L", "of": "dip", "shell_c": 20.0, "per_c": 36e-6,
                               "tilt_mm": 0.0, "capacity_l": None, **more}
    return table_typed(text, **said)  # type: ignore[arg-type]


def test_a_table_is_kept_in_centimetres_and_litres() -> None:
    kept = json.loads(typed())
    assert kept["points"][0] == [0, 0] and kept["points"][-1] == [60, 240] and len(kept["points"]) == 7
    for text in ("0\t0\n100\t0,4\n200\t0,8\n", "0 0\n100 0.4\n200 0.8", "mm,hL\n0,0\n100,0.4\n200,0.8\n\n"):
        made = json.loads(typed(text, length="mm", volume="hL", tilt_mm=-3.0))
        assert [pytest.approx(point) for point in made["points"]] == [[0, 0], [10, 40], [20, 80]]
        assert made["tilt_cm"] == pytest.approx(-0.3)
    gallons = json.loads(typed("0;0\n10;10\n", length="in", volume="gal"))
    assert gallons["points"][1] == [pytest.approx(25.4), pytest.approx(37.85411784)]  # inch and US gallon by definition
    ullage = json.loads(typed("0;240\n30;120\n60;0", of="ullage"))
    assert ullage["of"] == "ullage"


@pytest.mark.parametrize(
    ("text", "more", "says"),
    [
        ("", {}, "two lines at least"),
        ("0;0\nten;40\n", {}, "Line 2, “ten;40”, is not a dip and a volume."),
        ("0;0\n10;40;1\n", {}, "Type two figures, apart by a semicolon."),
        ("0;0\n10;40\n10;41\n", {}, "At 10 cm the table goes back or stands twice."),
        ("0;0\n20;80\n10;40\n", {}, "sort them"),
        ("0;0\n10;40\n20;35\n", {}, "At 20 cm the litres fall, and a dip is measured from the bottom."),
        ("0;80\n10;40\n20;0\n", {}, "say that the table is by ullage"),
        ("0;0\n10;40\n20;80\n", {"of": "ullage"}, "say that the table is by dip"),
        ("-1;0\n10;40\n", {}, "No dip and no volume lies below nothing."),
        ("0;40\n10;40\n", {}, "All lines have the same litres."),
        (LINES.replace("30;120\n", "").replace("20;80\n", "").replace("40;160\n", ""), {},
         "Between 10 and 50 cm lines are missing"),
        (LINES.replace("30;120", "30;110").replace("40;160", "40;165"), {}, ""),
        (LINES.replace("30;120\n40;160\n50;200\n60;240", "30;1200\n40;1240\n50;1280\n60;1320"), {},
         "Up to 30 cm the table gains 112 L a centimetre, and 4 beside it."),
        (LINES, {"capacity_l": 2400.0}, "The table ends at 240 L, and the vessel holds 2400 L."),
        (LINES, {"length": "mm"}, "By this table the vessel is 6 cm deep and holds 240 L."),
        ("0;0\n600;240\n", {}, "Choose the unit of its first column: it says cm."),
        (LINES, {"shell_c": 60.0}, "The temperature of the shell [°C] lies between -20 and 40."),
        (LINES, {"per_c": 1.0}, "The expansion of the shell"),
        (LINES, {"tilt_mm": 201.0}, "The tilt [mm]"),
        (LINES, {"volume": "pint"}, "Say in which units"),
    ],
)
def test_what_is_wrong_with_a_table_is_said_with_what_to_do(text: str, more: dict[str, object], says: str) -> None:
    if not says:  # uneven, as a tank with a manhole is, and no slip
        assert typed(text, **more)
        return
    with pytest.raises(BookError) as refused:
        typed(text, **more)
    assert says in str(refused.value)


def test_a_cask_is_kept_by_its_three_dimensions() -> None:
    made = json.loads(cask_typed(690, 560, 890, unit="mm", lies=True, of="dip"))
    assert made == {"bung_cm": 69, "head_cm": 56, "length_cm": 89, "lies": True, "of": "dip"}
    for sizes, says in (((56, 69, 89), "swap the two"), ((None, 56, 89), "Type all three"),
                        ((690, 560, 890), "Look at the unit")):
        with pytest.raises(BookError) as refused:
            cask_typed(*sizes, unit="cm", lies=True, of="dip")
        assert says in str(refused.value)


@pytest.fixture
def told(book: Book) -> Told:
    return start(book)


def test_a_dip_in_the_book_is_the_litres_of_the_table(told: Told, book: Book) -> None:
    registry.put_vessel(book, {"mark": T1, "dips": typed()}, by="JK")
    told.say("gauge", T1, dip="45 cm", temp="20 degC", strength="60 pct_vol", purpose="opening", what="plum")
    assert told.holds(T1)["volume_l"] == pytest.approx(180.0)
    made = card(book, T1)
    assert made is not None and json.loads(str(made["context"]["dips"]))["points"][1] == [10, 40]
    # A table that is put right is counted with at once, at every dip that stands in the book.
    registry.put_vessel(book, {"mark": T1, "dips": typed(tilt_mm=-50.0)}, by="JK")
    assert told.holds(T1)["volume_l"] == pytest.approx(160.0)
    # Other columns of the vessel leave its table alone.
    registry.put_vessel(book, {"mark": T1, "title": "Tank one"}, by="JK")
    assert told.holds(T1)["volume_l"] == pytest.approx(160.0)


DISTILLED = {
    "sample_volume": "200 mL", "sample_temp": "20 degC", "distillate_volume": "200 mL", "distillate_temp": "20 degC",
    "distillate_glass": "40 pct_glass", "glass": "30 pct_glass",
}


@pytest.mark.parametrize(("kind", "more"), [
    ("distilled_gauge", DISTILLED),
    ("bottling_gauge", {"strength": "40 pct_vol", "batch": "K-1", "label_strength": "40 pct_vol"}),
])
def test_a_tank_is_dipped_as_it_is_bottled_and_where_sugar_hides_its_strength(
    told: Told, book: Book, kind: str, more: dict[str, str]
) -> None:
    registry.put_vessel(book, {"mark": T1, "dips": typed()}, by="JK")
    told.say("gauge", T1, dip="45 cm", temp="20 degC", strength="40 pct_vol", purpose="opening", what="plum")
    told.say(kind, T1, dip="40 cm", temp="20 degC", **more)
    assert told.holds(T1)["volume_l"] == pytest.approx(160.0)


def test_a_dip_in_a_vessel_without_a_table_moves_nothing_and_says_why(told: Told, book: Book) -> None:
    dipped = entry("gauge", T1, seq=1, dip="45 cm", temp="20 degC", strength="60 pct_vol", purpose="opening")
    send(book, dipped)
    asked = for_entry(book, dipped["id"])
    assert [(one["code"], one["weight"], one["field"]) for one in asked] == [("outside_tables", "stop", "dip")]
    assert "The book has no table for this vessel. Type its litres" in asked[0]["words"]
    assert told.flows(dipped["id"]) == []


def test_a_cask_is_estimated_by_its_dimensions(told: Told, book: Book) -> None:
    dips = cask_typed(69, 56, 89, unit="cm", lies=True, of="dip")
    registry.put_vessel(book, {"mark": C1, "dips": dips}, by="JK")
    told.say("gauge", C1, dip="34.5 cm", temp="20 degC", strength="60 pct_vol", purpose="opening", what="plum")
    full = volume_of_cask(69, 56, 89, 69, lies=True)
    assert told.holds(C1)["volume_l"] == pytest.approx(full / 2, abs=1e-3)
