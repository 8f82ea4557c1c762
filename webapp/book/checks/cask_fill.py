"""A cask at both ends of a fill: empty weight, what the wood kept, and where its strength goes by its place."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.cask import past_gauges, past_of, usual_drift
from webapp.book.checks.instruments import apart
from webapp.book.checks.words import (
    DAY_S,
    YEAR_DAYS,
    figure,
    like_typed,
    month,
    rounded,
    strength_field,
    typed,
    when,
)
from webapp.kinds.amount import weighed_amount
from webapp.kinds.effects.other import place_of
from webapp.kinds.expected import Expected
from webapp.kinds.message import Figure, Param, message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.state import NO_FILL, Fill
from webapp.kinds.stock import unit_weighed
from webapp.kinds.view import View

LIMITS = declare(
    Limit("damp_rh_pct", 75, "% RH", "A place is damp above"),
    Limit("dry_rh_pct", 60, "% RH", "A place is dry below"),
    Limit("drift_days", 180, "days", "Days between two gauges for a drift"),
    Limit("drift_wrong_pct", 0.3, "% vol", "Strength may drift the wrong way, a year, by"),
    Limit("drift_noise_pct", 0.2, "% vol", "What a glass alone may pretend of a drift"),
    Limit("tare_off_pct", 5, "%", "Empty weight off the listed one"),
    Limit("soak_low_kg", 3, "kg", "The wood of a 200 L cask keeps at least"),
    Limit("soak_high_kg", 8, "kg", "The wood of a 200 L cask keeps at most"),
    Limit("soak_spare_kg", 1.0, "kg", "What two weighings may pretend"),
)

LEAST_LOST_PCT = 3.0  # that a cask may have lost without a word; common practice, no source
SIZE_L = 200.0  # of the cask whose soakage is known


def soak_kg(capacity_l: float | None, kg: float) -> float:
    """Return the spirit that a cask's wood soaks up, by its surface, from that of a 200 L cask. [kg], 0 or more"""
    surface: float = ((capacity_l or SIZE_L) / SIZE_L) ** (2 / 3)
    return kg * surface


def tare_off(read: Read, view: View) -> Iterable[Query]:
    """The empty weight before a fill against the cask's listed one; wood that was used has drunk."""
    row, tare = view.vessel(read.mark) or NO_ROW, read.number("tare")
    listed = row.get("tare_kg")
    if tare is None or not listed or listed <= 0:
        return
    odd = listed * limit("tare_off_pct", view) / 100
    drunk = soak_kg(row.get("capacity_l"), limit("soak_high_kg", view)) if row.get("use") != "new" else 0.0
    if not listed - odd <= tare <= listed + odd + drunk:
        should = like_typed(read, "tare", listed)
        said = message("tare_off", cask=row["name"], tare=typed(read, "tare"), listed=should)
        yield Query("tare_off", "ask", "tare", said, (Expected("tare", listed - odd, listed + odd, listed),))


def soakage(read: Read, view: View) -> Iterable[Query]:
    """The emptied cask against its old tare: below it cannot be, far above it something is still in it."""
    row, held = view.vessel(read.mark) or NO_ROW, view.state(read.mark)["holds"] or NO_FILL
    tare, empty = held.get("tare_kg") or row.get("tare_kg"), read.number("empty")
    if not tare or empty is None:
        return
    low, high = (soak_kg(row.get("capacity_l"), limit(name, view)) for name in ("soak_low_kg", "soak_high_kg"))
    spare, kept = limit("soak_spare_kg", view), empty - tare
    told: dict[str, Param] = {
        "empty": typed(read, "empty"), "tare": like_typed(read, "empty", tare), "low": rounded(low, 0, "kg"),
        "high": rounded(high, 0, "kg"),
    }
    if kept < -0.5 * spare:
        said = message("soakage-light", **told)
        yield Query("soakage", "ask", "empty", said, (Expected("empty", tare, tare + high),))
    elif kept > high + spare:
        said = message("soakage", kept=rounded(kept, 1, "kg"), **told)
        yield Query("soakage", "ask", "empty", said, (Expected("empty", tare, tare + high),))


def cask_life(read: Read, view: View) -> Iterable[Query]:
    """A whole fill at its end: no more pure alcohol than the book has, and no more lost than wood and air take."""
    row, held = view.vessel(read.mark) or NO_ROW, view.state(read.mark)["holds"] or NO_FILL
    tare, gross = held.get("tare_kg") or row.get("tare_kg"), read.number("gross")
    strength, past = read.figures.get("true_strength"), past_of(read.mark, view)
    if not tare or gross is None or strength is None or not past or gross <= tare or not held.get("lpa_ul"):
        return
    now = weighed_amount(gross - tare, strength, unit_weighed(read)).lpa_ul / 1e6
    booked, last = held["lpa_ul"] / 1e6, past[-1]
    if now > booked * (1 + limit("cask_grew_pct", view) / 100):
        there, by_book = rounded(now, 1, "LPA"), rounded(booked, 1, "LPA")
        said = message("cask_grew-emptied", now=there, booked=by_book, since=when(last.at, read, view))
        yield Query("cask_grew", "ask", "gross", said, tuple(_as_booked(held, tare, 0.0, view)))
        return
    years = seconds_between(last.at, view.at) / DAY_S / YEAR_DAYS
    is_small = 0 < (row.get("capacity_l") or 0) < limit("small_l", view)
    a_year = limit("loss_small_pct" if is_small else "loss_large_pct", view)
    most = 100 * (1 - max(1 - a_year / 100, 0.0) ** years) + limit("loss_noise_pct", view)
    lost = (booked - now) / booked * 100
    if lost > most and booked - now > apart(read, view, "lpa"):
        said = message(
            "cask_life", booked=rounded(booked, 1, "LPA"), since=month(last.at, read), now=rounded(now, 1, "LPA"),
            gone=rounded(booked - now, 1, "LPA"), share=rounded(lost, 1, "pct"),
        )
        yield Query("cask_life", "ask", "gross", said, tuple(_as_booked(held, tare, most, view)))


def _as_booked(held: Fill, tare_kg: float, most_pct: float, view: View) -> Iterable[Expected]:
    """Yield the gross weight and the strength with which a cask holds what the book has. most_pct: lost at most [%]"""
    net, strength = held["mass_g"] / 1000.0, held["strength_pct"]
    least, grown = 1 - max(most_pct, LEAST_LOST_PCT) / 100, 1 + limit("cask_grew_pct", view) / 100
    yield Expected("gross", tare_kg + net * least, tare_kg + net * grown, tare_kg + net)
    if strength:
        drift = limit("drift_pct", view)
        yield Expected("true_strength", strength - drift, strength + drift, strength)


def cask_drift(read: Read, view: View) -> Iterable[Query]:
    """Strength that goes the wrong way for where the cask lies: down in a damp place, up in a dry one."""
    past, now = past_gauges(read, view), read.figures.get("true_strength")
    least_s = limit("drift_days", view) * DAY_S
    last = next((one for one in reversed(past) if seconds_between(one.at, view.at) >= least_s), None)
    if last is None or now is None or any(p.code == "raw_equals_corrected" for p in read.problems):
        return
    humidity = _humidity(place_of(view, read.mark), view)
    moved = now - last.strength
    if humidity is None or abs(moved) > usual_drift(last, view):  # an odd strength is asked about by itself
        return
    years = seconds_between(last.at, view.at) / DAY_S / YEAR_DAYS
    wrong = limit("drift_wrong_pct", view) * years + limit("drift_noise_pct", view)
    is_damp, is_dry = humidity > limit("damp_rh_pct", view), humidity < limit("dry_rh_pct", view)
    if (is_damp and moved > wrong) or (is_dry and moved < -wrong):
        said = message(
            "cask_drift", last=figure(last.strength, 1, "pct_vol"), now=rounded(now, 1, "pct_vol"),
            drift=Figure(f"{moved / years:+.1f}", "pct_vol"), place="damp" if is_damp else "dry",
            humidity=figure(humidity, 0, "pct"),
        )
        yield Query("cask_drift", "ask", strength_field(read), said)


def _humidity(place: str, view: View) -> float | None:
    """Return the humidity of the area that a place lies in, by the site's list of areas. [% RH] or None"""
    area = place.partition("-")[0]
    found = next((one for one in view.site().get("areas") or () if one.get("id") == area), None)
    humidity = found.get("humidity_pct") if found else None
    return float(humidity) if humidity is not None else None
