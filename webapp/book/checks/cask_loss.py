"""What a cask loses a year, against its neighbours where there are enough of them, else against plain bounds.

A 50 L cask at 6 % a year is healthy, a 225 L cask at 6 % leaks: so a loss is held against casks of the same size class,
of the same area, wood and use as far as there are such. They are looked at only where a loss is high for its size.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from statistics import median, quantiles

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View, seconds_between
from webapp.book.checks.cask import Past, past_gauges, past_of, told_moved, usual_drift
from webapp.book.checks.words import DAY_S, YEAR_DAYS, month, plain
from webapp.kinds.read import Read

MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median


def cask_loss(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol lost a year since the last gauge that is long enough ago."""
    past, lpa, now = past_gauges(read, view), read.figures.get("lpa"), read.figures.get("true_strength")
    last = _long_ago(past, view.at, view)
    if last is None or lpa is None or now is None:
        return
    years = _years(last.at, view.at)
    rate = (last.lpa - lpa) / last.lpa * 100 / years
    vessel = view.vessel(read.mark) or {}
    is_small = 0 < (vessel.get("capacity_l") or 0) < limit("small_l", view)
    more = limit("loss_noise_pct", view) / years
    if "new" in str(vessel.get("use") or "") and _years(past[0].at, view.at) < 1.2:
        more += limit("loss_new_pct", view)
    if rate <= limit("loss_look_small_pct" if is_small else "loss_look_large_pct", view) + more:
        return
    others = _neighbours(read, view)
    most, told = _bound(others, is_small, view)
    if rate <= most + more:
        return
    if abs(now - last.strength) <= usual_drift(last, view):
        drift = (now - last.strength) / years
        end = f"Its strength is usual ({drift:+.1f} points a year): a leak? Look at hoops, heads, bung and the floor."
    else:
        net = read.figures.get("net")
        if net is None or last.net is None or (last.net - net) / last.net * 100 / years <= most + more:
            return  # the weight is usual: the odd strength is asked about by itself
        end = "Its strength is odd too: is it the right cask? Weigh and read it again."
    first, whole = past[0], ""
    fill_years = _years(first.at, view.at)
    if fill_years > years and first.lpa > 0:
        whole = f" ({(first.lpa - lpa) / first.lpa * 100 / fill_years:.0f} % a year since its fill)"
    words = (
        f"{rate:.0f} % a year lost since {month(last.at, read)}{whole}: {plain(last.lpa, 1)} L of pure alcohol "
        f"then{told_moved(last)}, {plain(lpa, 1)} L now. {told} {end}"
    )
    yield Query("cask_loss", "ask", "gross", words)


def _bound(others: Sequence[float], is_small: bool, view: View) -> tuple[float, str]:
    """Return the loss a year that is still believed, and what is said of the others. [% a year]"""
    if len(others) < limit("loss_neighbours", view):
        usual = "5 to 8" if is_small else "2 to 4"
        return limit("loss_small_pct" if is_small else "loss_large_pct", view), f"Casks of this size lose {usual} %."
    middle = median(others)
    spread = MAD_TO_SPREAD * median(abs(rate - middle) for rate in others)
    most = middle + limit("loss_spread", view) * max(spread, limit("loss_spread_least_pct", view))
    quarters = quantiles(others, n=4, method="inclusive")
    low, high = round(quarters[0]), round(quarters[2])
    told = f"{low} to {high} %" if low != high else f"about {low} %"
    return most, f"Of the {len(others)} casks most like it, most lost {told}."


def _neighbours(read: Read, view: View) -> list[float]:
    """Return the losses a year of the casks most like this one, between their last two gauges. [% a year]"""
    rates = []
    for row in view.neighbours(read.mark):
        past = past_of(row["mark"], view)
        last = past[-1] if past else None
        before = _long_ago(past, last.at, view) if last else None
        if last and before:
            rates.append((before.lpa - last.lpa) / before.lpa * 100 / _years(before.at, last.at))
    return rates


def _long_ago(past: Sequence[Past], at: str, view: View) -> Past | None:
    """Return the newest gauge that is long enough before a time for a rate, or None."""
    least_s = limit("loss_days", view) * DAY_S
    return next((one for one in reversed(past) if seconds_between(one.at, at) >= least_s), None)


def _years(earlier: str, later: str) -> float:
    return seconds_between(earlier, later) / DAY_S / YEAR_DAYS
