"""Opening stock: nothing that the book has already, and no past that cannot be.

Wood gives no alcohol: a cask never holds more than at its fill. Nothing lies in wood before its fruit was picked.
"""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.cask import drift_in
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.product_limits import place_of
from webapp.book.checks.words import (
    DAY_S,
    YEAR_DAYS,
    figure,
    like_typed,
    local_text,
    rounded,
    strength_field,
    typed,
    when,
)
from webapp.kinds.effects.goods import bottles_in
from webapp.kinds.expected import Expected
from webapp.kinds.key import bottling_key, name_key
from webapp.kinds.message import Day, message
from webapp.kinds.read import Read
from webapp.kinds.state import Fill
from webapp.kinds.stock import spirit_read
from webapp.kinds.view import View

LIMITS = declare(
    Limit("opening_off_pct", 1.0, "%", "Opening stock off what the book has in the vessel already"),
    Limit("cask_weak_pct", 37.5, "% vol", "Spirit in a cask is taken in with at least",
          "Regulation (EU) 2019/787, Annex I, fruit spirit: bottled at 37.5 % vol at least"),
    Limit("cask_weak_us_pct", 40.0, "% vol", "In the US with at least", "27 CFR 5.145: bottled at 80 proof at least"),
    Limit("opening_years", 60, "years", "Opening stock filled longer ago is asked about"),
)

MOST_IN_WOOD_PCT, USUAL_IN_WOOD_PCT = 75.0, 60.0  # common practice, no source
QUANTITIES = ("gross", "net_weight", "volume")
DAYS = ("filled_on", "aged_since", "bottled_on")


def opening_stock(read: Read, view: View) -> Iterable[Query]:
    """A vessel that the book fills already, or an entry without any quantity for an empty one."""
    held = view.state(read.mark)["holds"]
    has_amount = read.figures.get("lpa") is not None
    if not held:
        if not any(read.raw(name) for name in QUANTITIES):
            said = message("opening_nothing", vessel=vessel_name(read.mark, view))
            yield Query("opening_nothing", "stop", "volume", said)
        return
    if _is_seen(held):
        said = message("opening_seen", vessel=vessel_name(read.mark, view), at=when(held["since"], read, view))
        yield Query("opening_seen", "stop", "", said)
        return
    booked, now = held["lpa_ul"] / 1e6, spirit_read(read).lpa_ul / 1e6
    if has_amount and abs(now - booked) > booked * limit("opening_off_pct", view) / 100:
        said = message(
            "opening_again", vessel=vessel_name(read.mark, view), booked=rounded(booked, 2, "LPA"),
            said=rounded(now, 2, "LPA"),
        )
        yield Query("opening_again", "ask", "", said)


def opening_weak(read: Read, view: View) -> Iterable[Query]:
    """A cask of spirit weaker than any is bottled: wood holds what is to be reduced yet."""
    now, row = read.figures.get("true_strength"), view.vessel(read.mark)
    least = limit("cask_weak_us_pct" if place_of(view.site()) == "US" else "cask_weak_pct", view)
    if now is None or not row or row["sort"] != "cask" or now >= least:
        return
    said = message("opening_weak", now=figure(now, 1, "pct_vol"), least=figure(least, 1, "pct_vol"))
    yield Query("opening_weak", "ask", strength_field(read), said,
                (Expected("true_strength", least, MOST_IN_WOOD_PCT, USUAL_IN_WOOD_PCT),))


def _is_seen(held: Fill) -> bool:
    """Whether the present fill has a past in this book: its cask fill, or the ferment it came from."""
    return held["mash"] or (bool(held.get("aged_since")) and held.get("by_papers") is None)


def opening_past(read: Read, view: View) -> Iterable[Query]:
    """A past that cannot be: days to come, wood before its fruit, more pure alcohol than at the fill."""
    yield from _days(read, view)
    filled, harvest = read.text("filled_on"), read.number("harvest")
    first = min(day for day in (filled, read.text("aged_since"), "9999") if day)
    if harvest is not None and int(first[:4]) < harvest:
        at = "filled_on" if first == filled else "aged_since"
        said = message("opening_before_fruit", day=Day(first), harvest=figure(harvest, 0))
        yield Query("opening_before_fruit", "stop", at, said)
    yield from _drift(read, view, filled)
    now, then = read.figures.get("lpa"), read.figures.get("fill_lpa")
    if now is not None and then is not None and now > then * (1 + limit("cask_grew_pct", view) / 100):
        said = message("opening_grew", now=rounded(now, 1, "LPA"), then=rounded(then, 1, "LPA"))
        at = "filled_lpa" if "filled_lpa" in read.values else "filled_volume"
        yield Query("opening_grew", "ask", at, said)
    if "tare" not in read.values and "gross" in read.values and read.context.get("tare_kg") is None:
        yield Query("opening_no_tare", "stop", "tare", message("opening_no_tare", gross=typed(read, "gross")))
    row, volume = view.vessel(read.mark), read.number("filled_volume")
    if row and row["capacity_l"] and volume is not None:
        brim = row["capacity_l"] * (limit("cask_brim", view) if row["sort"] == "cask" else 1.0)
        if volume > brim:
            said = message("opening_overfilled", filled=typed(read, "filled_volume"), vessel=row["name"],
                           holds=like_typed(read, "filled_volume", brim))
            yield Query("opening_overfilled", "ask", "filled_volume", said)


def _drift(read: Read, view: View, filled: str | None) -> Iterable[Query]:
    """A strength far from that at the fill, for the years between: digits swapped, or the papers of another cask."""
    now, then = read.figures.get("true_strength"), read.number("filled_strength")
    if now is None or then is None or not filled:
        return
    years = max(seconds_between(f"{filled}T12:00:00Z", view.at) / DAY_S / YEAR_DAYS, 0.0)
    odd = drift_in(years, view)
    if abs(now - then) > odd:
        at = strength_field(read)
        said = message("opening_drift", now=figure(now, 1, "pct_vol"), then=typed(read, "filled_strength"),
                       at=Day(filled))
        low = max(then - odd, 0.0)
        yield Query("opening_drift", "ask", at, said, (Expected("true_strength", low, then + odd, then),))


def _days(read: Read, view: View) -> Iterable[Query]:
    today = local_text(view.at, read)[:10]
    for name in DAYS:
        day = read.text(name)
        if not day:
            continue
        if day > today:
            said = message("opening_to_come", day=Day(day), read=Day(today))
            yield Query("opening_to_come", "stop", name, said)
        elif int(today[:4]) - int(day[:4]) > limit("opening_years", view):
            said = message("opening_long_ago", day=Day(day), years=int(today[:4]) - int(day[:4]))
            yield Query("opening_long_ago", "ask", name, said)


def opening_goods(read: Read, view: View) -> Iterable[Query]:
    """Bottles under a batch or lot mark that the book has bottles of already; a day to come."""
    yield from _days(read, view)
    batch = read.text("batch") or ""
    named = view.get(name_key(batch))
    for root in named["bottlings"] if named else ():
        one = view.get(bottling_key(root))
        if one and one["case_from"] == read.text("case_from"):
            said = message("opening_goods_again", batch=batch, bottles=bottles_in(read), there=one["on_hand"],
                           at=when(one["at"], read, view))
            yield Query("opening_goods_again", "ask", "batch", said)
            return
