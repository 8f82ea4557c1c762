"""What the phone is asked for the record of its answers: a part of what the tests of agreement ask, over all of it."""

from __future__ import annotations

import json
from collections import defaultdict
from typing import Any

from tests.trade import test_still_agreement as still
from tests.trade.agreement_cases import FAMILIES
from tests.trade.book_answers import answer_sum
from tests.trade.cask_truths import warehouse
from tests.trade.ferment_truths import ending, made, of_the_demo
from tests.trade.phone_record import Case
from tests.trade.refusal_words import said
from webapp.trade import caskloss

FIGURES, REFUSALS = 24, 16  # of each function


def sums_asked() -> list[Case]:
    """Calls of each sum: figures spread over its whole range, and each sort of refusal."""
    by_name: dict[str, list[Case]] = defaultdict(list)
    for cases in FAMILIES.values():
        for name, *given in cases():
            by_name[name if name != "compute" else f"compute {given[0]}"].append([name, *given])
    found = []
    for cases_of_one in by_name.values():
        figures, refusals = [], {}
        for case in cases_of_one:
            answer = said(answer_sum(case))
            if isinstance(answer, dict):
                refusals.setdefault(_without_figures(answer), []).append(case)
            else:
                figures.append(case)
        found += _spread(figures, FIGURES)
        # Of each sort of refusal the first and the last: a sentence's figures stand at both ends of a range.
        found += _spread([case for some in refusals.values() for case in _spread(some, 3)], REFUSALS)
    return found


def still_asked() -> list[Case]:
    """Calls of the still's model, and forecasts of cuts."""
    return [*_spread(still.cases(), 260), *_spread(still.forecasts(), 26)]


def cellar_asked() -> list[Case]:
    """Forecasts of ferments, and what casks lose."""
    found: list[Case] = []
    for one in [*of_the_demo(), *made(4, seed=3)]:
        counts = range(0, len(one.days) + 1, 3)
        found += [["forecastEnd", one.days[:n], one.gravities[:n], one.usual_end, {"isGrain": one.is_grain}]
                  for n in counts]
    sharp = ending("sharp", 1, seed=5)[0]
    found += [["forecastEnd", sharp.days[:n], sharp.gravities[:n], sharp.usual_end, {"isGrain": False, "past": past}]
              for n in (5, 8) for past in ([0.1, 0.1, 0.1, 0.7], [0.7, 0.1, 0.1, 0.1])]
    found += [["forecastEnd", [0, 2, 1], [1.06, 1.05, 1.04], 1.0, {"isGrain": False}],
              ["forecastEnd", [0, 1], [1.06, 0.4], 1.0, {"isGrain": False}]]
    casks = warehouse(5)[:24]
    rates = [rate["lpa_pct_year"] for cask in casks if (rate := caskloss.loss_rates(cask.gauges)["fill"])]
    for n, cask in enumerate(casks):
        groups = [rates[: n % 9], rates[n % 7 : n % 7 + n % 4]]
        found += [
            ["lossRates", cask.gauges], ["usualOf", groups, cask.capacity_l], ["usualOf", groups, cask.capacity_l, 300],
            ["judgeLoss", n - 3.0, n / 2 - 2.0, 0.3 + n / 9, 5.0, 60.0, 60.0 - n / 6],
        ]
    return found


def _without_figures(answer: dict[str, Any]) -> str:
    return "".join(letter for letter in json.dumps(answer) if not letter.isdigit())


def _spread(cases: list[Any], most: int) -> list[Any]:
    """Return as many of a list, evenly from its first to its last."""
    if len(cases) <= most:
        return list(cases)
    return [cases[round(i * (len(cases) - 1) / (most - 1))] for i in range(most)]
