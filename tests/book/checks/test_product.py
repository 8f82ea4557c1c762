"""Limits of a category, against the legal texts as tests/trade/reference/legal_limits.json has them, item by item."""

import pytest

from tests.book.checks.ledger import Ledger, codes, only
from tests.trade.reference_files import read_json
from webapp.book.checks.product_limits import categories_of, limit_sentence, limits, limits_of
from webapp.words import sentence

LAW = read_json("legal_limits.json")
US = {"units": "us"}


def figure(place, category, limit):
    return next(r for r in limits() if (r["place"], r["category"], r["limit"]) == (place, category, limit))


@pytest.mark.parametrize("key", LAW["eu_2019_787"]["categories"])
def test_categories_of_the_eu_regulation(key):
    # Regulation (EU) 2019/787, Annex I, as read in a stored copy.
    number, name = key.split("_", 1)
    law = LAW["eu_2019_787"]["categories"][key]
    row = figure("EU", name, "bottled")
    assert row["value"] == law["min_abv"]
    assert row["source"].endswith(f"category {number}")
    if "max_distillation_abv_below" in law:
        assert figure("EU", name, "distilled")["value"] == law["max_distillation_abv_below"]


def test_ages_of_the_eu_regulation():
    law = LAW["eu_2019_787"]["categories"]
    assert figure("EU", "whisky", "aged")["value"] == law["2_whisky"]["ageing"]["years"]
    months = {("container_L_below" in one): one["months"] for one in law["5_brandy_weinbrand"]["ageing"]}
    assert figure("EU", "brandy_weinbrand", "aged")["value"] * 12 == months[False]
    assert figure("EU", "brandy_weinbrand", "aged_small")["value"] * 12 == months[True]


def test_limits_of_the_us_rules():
    # 27 CFR 5.142, 5.143, 5.145; the whisky figures from memory, and marked so.
    law = LAW["us_27cfr5"]
    assert figure("US", "brandy", "distilled")["value"] == law["brandy_5.145"]["distilled_below_abv"]
    assert figure("US", "brandy", "bottled")["value"] == law["brandy_5.145"]["bottled_at_least_abv"]
    rye = law["whisky_5.143"]["bourbon"]  # the same two figures hold for rye
    assert figure("US", "rye_whisky", "distilled")["value"] * 2 == rye["distilled_max_proof"]
    assert figure("US", "rye_whisky", "barrelled")["value"] * 2 == rye["barrel_entry_max_proof"]
    assert not figure("US", "rye_whisky", "barrelled")["read"]


def test_each_limit_says_its_source_and_how_it_was_read():
    for row in limits():
        assert len(row["source"]) > 10
        assert isinstance(row["read"], bool)
        assert row["on"] >= "2026-01-01"
        said = sentence(limit_sentence(row))
        assert row["source"] in said
        assert row["read"] or "from memory" in said
        assert "{" not in said


def test_a_name_finds_its_likeliest_category():
    assert categories_of("plum (late yellow)", "EU") == ("fruit_spirit",)
    assert categories_of("rye", "US")[0] == "rye_whisky"
    assert categories_of("grape marc", "EU") == ("grape_marc_spirit",)
    assert {row["category"] for row in limits_of("quince", US)} == {"brandy"}


def gauged(label, what="plum", **site):
    book = Ledger(**site)
    book.enter("gauge", "T3", "2026-08-25 07:00", volume="285", temp="20", strength="45.0", purpose="opening",
               what=what)
    return book.enter("bottling_gauge", "T3", "2026-08-25 07:30", batch="K-26-03", volume="285.0", temp="20",
                      strength=label, label_strength=label)


def test_a_label_under_the_floor_is_noted_by_place():
    assert "bottled_low" not in codes(gauged("37.5"))
    query = next(one for one in gauged("37.0") if one.code == "bottled_low")
    assert query.weight == "note"
    assert query.words == (
        "37.0 % on the label. Fruit spirit in the EU is bottled at 37.5 % vol or more (Regulation (EU) 2019/787, "
        "Annex I, category 9). A note, not legal advice: look at the text in force, and ask who knows it."
    )
    in_the_us = next(one for one in gauged("38.0", units="us") if one.code == "bottled_low")
    assert in_the_us.words.startswith(
        "38.0 % on the label. Brandy in the US is bottled at 40 % vol or more, 80 proof (27 CFR 5.145)."
    )
    assert "bottled_low" not in codes(gauged("40.0", units="us"))


def filled(strength, what="rye", **site):
    book = Ledger(**site)
    book.enter("gauge", "T1", "2026-02-03 07:00", volume="400", temp="20", strength=strength, purpose="opening",
               what=what)
    return book.enter("cask_fill", "C1", "2026-02-03 08:00", gross="230", tare="50", strength=strength, temp="20",
                      from_vessel="T1", use="new", lot="L-05", soaked="no", place="CELL-A1")


def test_rye_too_strong_for_the_cask_is_noted_in_the_us_alone():
    query = only(filled("63.0", units="us"), "barrelled_high")
    assert query.weight == "note"
    assert "62.5 % vol or less, 125 proof" in query.words
    assert "barrelled_high" not in codes(filled("62.5", units="us"))
    assert "barrelled_high" not in codes(filled("63.0", what="plum", units="us"))
    assert "barrelled_high" not in codes(filled("63.0"))


@pytest.mark.parametrize(
    ("what", "eu", "us"),
    [
        ("Plum spirit", ("fruit_spirit",), ("brandy",)), ("wine spirit", ("wine_spirit", "brandy_weinbrand"),
                                                          ("grape_brandy", "brandy")),
        ("Grape brandy", ("wine_spirit", "brandy_weinbrand"), ("grape_brandy", "brandy")),
        ("grape marc", ("grape_marc_spirit",), ("grape_brandy", "brandy")),
        ("MARC", ("grape_marc_spirit",), ("grape_brandy", "brandy")), ("rye", ("whisky",), ("rye_whisky", "whisky")),
        ("honey", ("honey_spirit",), ("brandy",)), ("cider", ("cider_perry_spirit",), ("brandy",)),
        ("perry", ("cider_perry_spirit",), ("brandy",)), ("raspberry geist", ("geist",), ("brandy",)),
        ("macerated cherry", ("macerated_fruit_spirit",), ("brandy",)),
    ],
)
def test_a_name_is_sold_as_its_likeliest_category(what: str, eu: tuple[str, ...], us: tuple[str, ...]):
    """Names of the categories: Regulation (EU) 2019/787, Annex I, and 27 CFR 5.143 and 5.145; which name is likeliest
    sold as which: common practice, no source."""
    assert categories_of(what, "EU") == eu
    assert categories_of(what, "US") == us
