"""What a cask loses a year, against its neighbours where there are enough of them, else against plain bounds.

A 50 L cask at 6 % a year is healthy, a 225 L cask at 6 % leaks: so a loss is held against casks of the same size class,
of the same area, wood and use as far as there are such. They are looked at only where a loss is high for its size.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from statistics import median, quantiles

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.cask import Past, past_gauges, past_of, told_moved, usual_drift
from webapp.book.checks.instruments import apart
from webapp.book.checks.words import DAY_S, YEAR_DAYS, figure, month
from webapp.kinds.expected import Expected
from webapp.kinds.message import Figure, Message, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.view import View
from webapp.trade.caskloss import share_lost

LIMITS = declare(
    Limit("loss_look_small_pct", 9, "%", "Small casks: a loss a year is looked at above"),
    Limit("loss_look_large_pct", 4.5, "%", "Large casks: a loss a year is looked at above"),
    Limit("loss_spread", 2.5, "", "Spreads above the middle of its neighbours"),
    Limit("loss_spread_least_pct", 0.8, "%", "Least spread that is taken"),
    Limit("loss_neighbours", 4, "", "Neighbours needed"),
    Limit("loss_days", 60, "days", "Days between two gauges for a loss rate"),
    Limit("loss_noise_pct", 1.0, "%", "What scale and glass alone may pretend"),
    Limit("loss_small_pct", 20, "%", "Without neighbours: small casks lose at most, a year"),
    Limit("loss_large_pct", 12, "%", "Without neighbours: large casks lose at most, a year"),
    Limit("loss_new_pct", 5, "%", "New wood drinks more in its first year, by"),
    Limit("small_l", 100, "L", "A cask is small below"),
)

USUALLY_KEPT = 0.97  # of its pure alcohol a cask keeps so much a year; common practice, no source
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median


def cask_loss(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol lost a year since the last gauge that is long enough ago."""
    past, lpa, now = past_gauges(read, view), read.figures.get("lpa"), read.figures.get("true_strength")
    last = _long_ago(past, view.at, view)
    if last is None or last.lpa <= 0 or lpa is None or now is None:
        return
    years = _years(last.at, view.at)
    rate = share_lost(last.lpa, lpa, years)
    vessel = view.vessel(read.mark) or NO_ROW
    is_small = 0 < (vessel.get("capacity_l") or 0) < limit("small_l", view)
    more = limit("loss_noise_pct", view) / years
    if "new" in str(vessel.get("use") or "") and _years(past[0].at, view.at) < 1.2:
        more += limit("loss_new_pct", view)
    if rate <= limit("loss_look_small_pct" if is_small else "loss_look_large_pct", view) + more:
        return
    if last.lpa - lpa <= apart(read, view, "lpa"):
        return
    others = _neighbours(read, view)
    most, told = _bound(others, is_small, view)
    if rate <= most + more:
        return
    if abs(now - last.strength) <= usual_drift(last, view):
        drift = (now - last.strength) / years
        end = message("lost-leak", drift=Figure(f"{drift:+.1f}", "pct_vol"))
    else:
        net = read.figures.get("net")
        if net is None or not last.net or share_lost(last.net, net, years) <= most + more:
            return  # the weight is usual: the odd strength is asked about by itself
        end = message("lost-odd_too")
    first, fill_years = past[0], _years(past[0].at, view.at)
    whole: Figure | str = "none"
    if fill_years > years and first.lpa > 0:
        whole = Figure(f"{share_lost(first.lpa, lpa, fill_years):.0f}", "pct")
    said = message(
        "cask_loss", rate=Figure(f"{rate:.0f}", "pct"), since=month(last.at, read), whole=whole,
        then=figure(last.lpa, 1, "LPA"), now=figure(lpa, 1, "LPA"), others=told, end=end, **told_moved(last),
    )
    kept = last.lpa * max(1 - (most + more) / 100, 0.0) ** years
    grown = last.lpa * (1 + limit("cask_grew_pct", view) / 100)
    yield Query("cask_loss", "ask", "gross", said, (Expected("lpa", kept, grown, last.lpa * USUALLY_KEPT**years),))


def _bound(others: Sequence[float], is_small: bool, view: View) -> tuple[float, Message]:
    """Return the largest believable loss a year, and the phrase about the other casks. [% a year]"""
    if len(others) < limit("loss_neighbours", view):
        most = limit("loss_small_pct" if is_small else "loss_large_pct", view)
        return most, message("lost-by_size", size="small" if is_small else "large")
    middle = median(others)
    spread = MAD_TO_SPREAD * median(abs(rate - middle) for rate in others)
    most = middle + limit("loss_spread", view) * max(spread, limit("loss_spread_least_pct", view))
    quarters = quantiles(others, n=4, method="inclusive")
    low, high = round(quarters[0]), round(quarters[2])
    lost = figure(low, 0, "pct")
    if low == high:
        return most, message("lost-by_all", casks=len(others), lost=lost)
    return most, message("lost-by_others", casks=len(others), low=lost, high=figure(high, 0, "pct"))


def _neighbours(read: Read, view: View) -> list[float]:
    """Return the losses a year of the casks most like this one, between their last two gauges. [% a year]"""
    rates = []
    for row in view.neighbours(read.mark):
        past = past_of(row["mark"], view)
        last = past[-1] if past else None
        before = _long_ago(past, last.at, view) if last else None
        if last and before and before.lpa > 0:
            rates.append(share_lost(before.lpa, last.lpa, _years(before.at, last.at)))
    return rates


def _long_ago(past: Sequence[Past], at: str, view: View) -> Past | None:
    """Return the newest gauge that is long enough before a time for a rate, or None."""
    least_s = limit("loss_days", view) * DAY_S
    return next((one for one in reversed(past) if seconds_between(one.at, at) >= least_s), None)


def _years(earlier: str, later: str) -> float:
    return seconds_between(earlier, later) / DAY_S / YEAR_DAYS
