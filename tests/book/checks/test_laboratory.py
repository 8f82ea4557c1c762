"""Certificates against the limits of the law, item by item as in tests/trade/reference, and what is said of them."""

from __future__ import annotations

from typing import Any

import pytest

from tests.book.checks.ledger import Ledger, codes
from tests.trade.reference_files import read_json
from webapp.book.checks.laboratory import category_of, lab_limits, limit_for

CATEGORIES = read_json("legal_limits.json")["eu_2019_787"]["categories"]
LAB = read_json("lab_limits.json")
PAPER = {"laboratory": "Laboratory One", "document": "26-0415", "taken_on": "2026-08-25"}


def rows(substance: str, category: str) -> list[Any]:
    return [row for row in lab_limits() if (row["substance"], row["category"]) == (substance, category)]


@pytest.mark.parametrize("key", CATEGORIES)
def test_each_category_of_the_eu_regulation(key: str) -> None:
    # Regulation (EU) 2019/787, Annex I, as read in a stored copy.
    number, name = key.split("_", 1)
    law = CATEGORIES[key]
    methanol = law.get("methanol_max_g_per_hL_pa") or law.get("methanol_max_g_per_hL_pa_by_fruit", {}).get("default")
    general = [row["value"] for row in rows("methanol", name) if "fruits" not in row]
    assert general == ([methanol] if methanol else [])
    least = law.get("volatile_substances_min_g_per_hL_pa")
    assert [row["value"] for row in rows("volatile_substances", name)] == ([least] if least else [])
    acid = law.get("hcn_max_g_per_hL_pa_stone_fruit")
    assert [row["value"] for row in rows("hydrocyanic_acid", name)] == ([acid] if acid else [])
    for row in lab_limits():
        if row["category"] == name and row["sort"] == "limit":
            assert row["source"].endswith(f"category {number}")


@pytest.mark.parametrize("most", ["1200", "1350"])
def test_each_fruit_of_the_eu_regulation(most: str) -> None:
    for fruit in CATEGORIES["9_fruit_spirit"]["methanol_max_g_per_hL_pa_by_fruit"][most]:
        what = fruit.replace(" (not Williams)", "")
        assert limit_for("methanol", f"{what} spirit", "EU")["value"] == float(most), fruit


@pytest.mark.parametrize(
    ("what", "most"),
    [("cherry", 1000), ("Williams pears", 1350), ("pear and Williams pear", 1200), ("apple and cherry", 1000),
     ("", 1000),
     ("pineapple", 1000), ("grape marc", 1000), ("plum marc", 1500), ("wine spirit", 200), ("cider spirit", 1000)],
)
def test_of_several_fruits_the_lowest_limit_holds(what: str, most: float) -> None:
    row = limit_for("methanol", what, "EU")
    assert row is not None and row["value"] == most


def test_stone_fruit_alone_has_limits_of_hydrocyanic_acid_and_ethyl_carbamate() -> None:
    for what in ("plum", "sour cherry", "apricot", "apple and mirabelle"):
        assert limit_for("hydrocyanic_acid", what, "EU")["value"] == 7
        target = limit_for("ethyl_carbamate", what, "EU")
        # J. Food Prot. 84(12) 2021, table 1: 1000 ug/kg, in the Recommendation 1 mg/L.
        most = LAB["ethyl_carbamate_eu"]["ug_kg"] / 1000
        assert (target["value"], target["unit"], target["sort"]) == (most, "mg_L", "target")
    for what in ("apple", "quince", "rye"):
        assert limit_for("hydrocyanic_acid", what, "EU") is None
        assert limit_for("ethyl_carbamate", what, "EU") is None


def test_brandy_in_the_us() -> None:
    # FDA Compliance Policy Guide 510.200.
    for what in ("apple", "grape"):
        row = limit_for("methanol", what, "US")
        assert (row["value"], row["unit"]) == (LAB["us_brandy"]["max_pct_vol"], "pct_methanol")
    assert limit_for("methanol", "rye", "US") is None and category_of("rye", "US") == "whisky"


def certified(what: str = "plum", **values: str) -> list[Any]:
    site = {"units": values.pop("units")} if "units" in values else {}
    book = Ledger(**site)
    book.enter("gauge", "T3", "2026-08-25 07:00", volume="285", temp="20", strength="45.0", purpose="opening",
               what=what)
    return book.enter("lab_certificate", "T3", "2026-09-05 07:00", **PAPER, **values)


def test_three_verdicts_in_words() -> None:
    under, near, over = (certified(methanol=value) for value in ("1000", "1150", "1201"))
    assert [(q.code, q.weight, q.field) for q in (*under, *near, *over)] == [
        ("lab_under", "note", "methanol"), ("lab_not_safely", "ask", "methanol"), ("lab_over", "ask", "methanol"),
    ]
    assert near[0].words == (
        "Methanol 1150 g/hL p.a. is not safely under the limit of 1200 for fruit spirit in the EU (Regulation (EU) "
        "2019/787, Annex I, category 9): another laboratory may find as much as 1267. Have it tested again before you "
        "rely on it. The certificate of an accredited laboratory and your local law decide, not this book."
    )
    assert "Do not bottle or sell on it" in over[0].words
    for query in (*under, *near, *over):
        assert "safe to" not in query.words and "ok" not in query.words.lower().split()


def test_what_the_certificate_is_unsure_of_counts_where_it_is_wider() -> None:
    # 3.9 to 6.2 % between laboratories for methanol: Regulation (EC) No 2870/2000, Annex III.2, table 11.
    assert codes(certified(methanol="1050", methanol_plus_minus="10")) == ["lab_under"]
    assert codes(certified(methanol="1050", methanol_plus_minus="200", coverage="two")) == ["lab_not_safely"]
    assert codes(certified(methanol="1050", methanol_plus_minus="150", coverage="two")) == ["lab_under"]
    assert codes(certified(methanol="1050", methanol_plus_minus="150")) == ["lab_not_safely"]  # it does not say k = 2
    assert codes(certified(methanol="1050", methanol_plus_minus="10 pct")) == ["lab_not_safely"]


def test_a_result_by_litre_needs_the_strength() -> None:
    assert codes(certified(methanol="5400 mg_L")) == ["lab_not_safely"]  # 45 % in the tank: 1200 g/hL exactly
    assert codes(certified(methanol="5400 mg_L", strength="40.0")) == ["lab_off", "lab_over"]  # 1350 g/hL
    book = Ledger()
    asked = book.enter("lab_certificate", "", "2026-09-05 07:00", **PAPER, spirit="plum", methanol="5400 mg_L")
    assert [(q.code, q.field) for q in asked] == [("lab_strength", "strength")]


def test_not_found_is_never_nothing() -> None:
    assert codes(certified(hydrocyanic_acid_below="0.5")) == ["lab_under"]
    # A method that begins near or above the limit proves nothing.
    assert codes(certified(hydrocyanic_acid_below="6.9")) == ["lab_not_safely"]
    assert codes(certified(hydrocyanic_acid_below="20")) == ["lab_not_safely"]
    assert codes(certified(volatile_substances_below="50")) == ["lab_over"]
    assert codes(certified(volatile_substances_below="250")) == ["lab_not_safely"]


def test_volatile_substances_have_a_floor() -> None:
    assert codes(certified(volatile_substances="190")) == ["lab_over"]
    assert codes(certified(volatile_substances="205")) == ["lab_not_safely"]
    query = certified(volatile_substances="250")[0]
    assert query.code == "lab_under" and "as little as 227" in query.words


def test_each_result_is_said_by_itself_and_what_has_no_limit_is_not() -> None:
    asked = certified(methanol="1150", hydrocyanic_acid="8", ethyl_carbamate="900 ug_L", copper="3 mg_L",
                      acetaldehyde="30")
    assert [(q.code, q.field) for q in asked] == [
        ("lab_not_safely", "methanol"), ("lab_over", "hydrocyanic_acid"), ("lab_not_safely", "ethyl_carbamate"),
    ]
    assert "target of 1 " in asked[2].words


def test_us_methanol_is_by_volume_of_the_drink() -> None:
    # 0.35 % vol at 45 % vol is 615.8 g/hL: worked out, density of methanol from memory.
    over = certified(what="apple", units="us", methanol="620 g_hL_pa")
    assert codes(over) == ["lab_over"]
    assert "figure that is acted on, of 0.35 for brandy in the US" in over[0].words
    assert codes(certified(what="apple", units="us", methanol="0.2 pct_methanol")) == ["lab_under"]


def test_the_name_on_the_certificate_goes_before_what_the_vessel_holds() -> None:
    assert codes(certified(what="cherry", methanol="1150")) == ["lab_over"]
    assert codes(certified(what="cherry", spirit="Williams pear spirit", methanol="1150")) == ["lab_under"]


@pytest.mark.parametrize(("substance", "figure", "is_asked"), [
    ("methanol", "20", False), ("methanol", "14.70", True), ("volatile_substances", "2000", False),
    ("volatile_substances", "4320", True), ("ethyl_carbamate", "4.9", False), ("ethyl_carbamate", "18", True),
])
def test_results_such_as_no_spirit_has_are_looked_at(substance: str, figure: str, is_asked: bool) -> None:
    """Common practice, no source."""
    unit = "mg_L" if substance == "ethyl_carbamate" else "g_hL_pa"
    asked = certified("grape", **{substance: f"{figure} {unit}"}, strength="40")
    assert ("lab_far" in [one.code for one in asked]) is is_asked
