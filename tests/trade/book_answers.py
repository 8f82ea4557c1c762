"""What the book answers to a call that the phone is asked too: a figure, or what is refused and why."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from tests.trade.agreement_cases import PAIRS
from webapp.kinds.message import to_json
from webapp.kinds.reasons import reason_of
from webapp.trade import batch, caskloss, cutdue, ferment, sums, vle
from webapp.trade.errors import NotANumber, OutOfDomain

STILL_PAIRS: dict[str, Callable[..., Any]] = {
    "moleFractionFromStrength": vle.mole_fraction_from_strength,
    "vapourMoleFraction": vle.vapour_mole_fraction,
    "molesIn": batch.moles_in,
    "streamMoles": batch.stream_moles,
    "forecastCut": cutdue.forecast_cut,
}
CELLAR_PAIRS: dict[str, Callable[..., Any]] = {
    "forecastEnd": lambda days, gravities, end, o: ferment.forecast_end(
        days, gravities, end, is_grain=o["isGrain"], past=o.get("past")),
    "lossRates": caskloss.loss_rates,
    "usualOf": caskloss.usual_of,
    "yearShare": caskloss.year_share,
    "judgeLoss": lambda *given: caskloss.judge_loss(*given),
}


def answer_sum(case: Any) -> Any:
    """Return what a sum answers."""
    name, *arguments = case
    arguments = [float(x) if type(x) is int and name not in {"formatNumber"} else x for x in arguments]
    if name == "compute":
        arguments[1] = {k: sums.Quantity(**v) if isinstance(v, dict) else v for k, v in arguments[1].items()}
    try:
        found = PAIRS[name](*arguments)
        return "NaN" if found != found else found
    except NotANumber as error:
        return {"reason": to_json(reason_of(error))}
    except OutOfDomain as error:
        return _refusal(error)


def answer_still(case: Any) -> Any:
    """Return what the still's model answers."""
    return _answer(STILL_PAIRS, case)


def answer_cellar(case: Any) -> Any:
    """Return what the forecasts of the cellar answer."""
    return _answer(CELLAR_PAIRS, case)


def _answer(pairs: dict[str, Callable[..., Any]], case: Any) -> Any:
    name, *given = case
    try:
        return pairs[name](*given)
    except OutOfDomain as error:
        return _refusal(error)


def _refusal(error: OutOfDomain) -> dict[str, Any]:
    return {"refused": error.what, "reason": to_json(reason_of(error))}
