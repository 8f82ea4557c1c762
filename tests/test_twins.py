"""Figures and lists that stand in the phone's JavaScript and in the book's Python are the same.

The phone has to work where there is no book, so it carries them. Sums and readings are held equal by their vectors
(tests/trade, tests/kinds), a run by tests/browser/test_run_overlay.py; what is a plain constant is held here.
"""

from __future__ import annotations

import ast
import json
import re
from pathlib import Path
from typing import Any

import pytest

import webapp.kinds
from webapp.book import cards, intake, take_back
from webapp.book.cellar import casks
from webapp.book.checks import run as run_checks
from webapp.book.limits import ALL
from webapp.desk.cellar.rules import DUE
from webapp.floor import body
from webapp.kinds import read
from webapp.kinds.effects import plan, run
from webapp.trade import bottling, caskloss

STATIC = Path(__file__).parents[1] / "static"


def source(name: str) -> str:
    """Return the text of a module of the phone."""
    return (STATIC / name).read_text(encoding="utf-8")


def constant(name: str, called: str) -> Any:
    """Return a constant of a module: a number or its product, a list, or an object of plain values."""
    found = re.search(rf"^(?:export )?const {called} = (.+?);(?: *//[^\n]*)?$", source(name), re.MULTILINE | re.DOTALL)
    assert found, f"{name} has no {called}"
    text = found[1]
    if text.startswith("{"):
        return json.loads(re.sub(r",\s*}", "}", re.sub(r"(\w+):", r'"\1":', text)))
    if text.startswith("["):
        return ast.literal_eval(text)
    factors = [float(factor.replace("_", "")) for factor in text.split(" * ")]
    return factors[0] * (factors[1] if len(factors) > 1 else 1)


def limit(name: str) -> float:
    """Return the limit of a check as it is declared."""
    return ALL[name].default


# Limits that the phone looks at before an entry is logged.
LOOKED_AT = (
    "slope_pct", "fall_pct", "fall_min", "fast_per_day", "held_off_pct", "warm_c",
    "vapour_off_c", "flow_pct", "flow_least_l", "stillage_pct", "reduce_pct", "dip_pct",
    "small_l", "loss_noise_pct", "drift_pct", "drift_pct_year", "label_pct",
)

# Where it stands on the phone, what it is called, and what it is in the book.
TWINS = [
    ("jobs/run/second.js", "BELOW_PCT", run_checks.MOST_BELOW),
    ("kinds/limits.js", "DECLARED", {name: limit(name) for name in LOOKED_AT}),
    ("jobs/cellar/like.js", "YEAR_S", casks.YEAR_S),
    ("jobs/cellar/due.js", "DUE", {name: default for name, _, _, default in DUE}),
    ("slate/takeback.js", "TAKE_BACK_H", take_back.TAKE_BACK_H),
    ("slate/handin.js", "ENTRIES_MAX", intake.BATCH_MOST),
    ("slate/overlay.js", "RUN_KEEPS", list(run.KEPT)),
    ("slate/overlay.js", "LATE_MS", run.LATE_S * 1000),
    ("kinds/read.js", "TEXT_MAX", read.TEXT_MAX),
]


@pytest.mark.parametrize(("name", "called", "in_book"), TWINS, ids=lambda each: each if isinstance(each, str) else "")
def test_phone_and_book_have_one_figure(name: str, called: str, in_book: Any) -> None:
    assert constant(name, called) == in_book


def test_a_batch_of_the_phone_fits_into_the_book() -> None:
    """Well under it: a batch carries a head of its own, and letters outside of ASCII are counted the same way."""
    assert body.BYTES_MOST == intake.BYTES_MOST == 512 * 1024
    assert constant("slate/batch.js", "BYTES_MAX") <= 0.8 * intake.BYTES_MOST
    assert f"{cards.ROUND_MOST} cards each" in source("slate/cards.js")


def test_a_change_on_the_still_is_one_change_on_both_sides() -> None:
    """From such a step in plates or water on, a strength may rise."""
    text = " ".join(source("jobs/run/second.js").split())
    assert '[["plates", 0.5], ["cooling_temp", 2]]' in text
    steps = re.findall(r'\("(\w+)", \w+, ([\d.]+)\)', Path(run_checks.__file__).read_text("utf-8"))
    assert steps == [("plates", "0.5"), ("cooling_temp", "2.0")]


def test_receivers_that_a_run_sheet_offers_are_those_that_a_charge_takes() -> None:
    charge = webapp.kinds.get("charge")
    assert charge
    fields = [charge.field(name) for name in ("heads_to", "hearts_to", "tails_to")]
    taken = {sort for field in fields if field for sort in field.vessels}
    assert taken == set(constant("pages/run.js", "RECEIVER_SORTS"))


def test_a_fruit_has_one_name() -> None:
    """A pattern that catches its groups or does not takes the same letters away."""
    found = re.search(r"const FRACTIONS = /(.+)/;", source("jobs/run/wishes.js"))
    assert found
    assert found[1].replace("(?:", "(") == plan._FRACTIONS.pattern


def test_what_trade_takes_where_nobody_says_is_the_limit_of_the_check() -> None:
    """Trade lies below the book and cannot ask it; its own defaults and the limits are one figure."""
    defaults = caskloss.judge_loss.__kwdefaults__
    assert defaults == {name: limit(f"loss_{name}" if name == "noise_pct" else name) for name in defaults}
    assert limit("small_l") == caskloss.SMALL_L
    assert limit("label_pct") == bottling.STRENGTH_ALLOWED_PCT


def test_states_of_an_entry_on_the_phone_are_those_that_the_book_answers() -> None:
    assert constant("slate/queue.js", "SETTLED") == constant("slate/file.js", "STATES")[1:]
    told = (STATIC.parent / "webapp" / "book" / "intake.py").read_text("utf-8")
    for state in constant("slate/queue.js", "SETTLED"):
        assert f'"{state}"' in told, state
