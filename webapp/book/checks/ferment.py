"""Checks of a ferment against its own past: risen, stuck, ended, hot, fast, or read in the other scale."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from webapp.book.before.limits import Limit, declare, end_gravity, is_grain, limit
from webapp.book.before.view import Query, hours_before, seconds_between
from webapp.book.checks.words import DAY_S, figure, figure_text, like_typed, time_span, typed, when
from webapp.kinds.expected import Expected
from webapp.kinds.message import Figure, Param, message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, RECENT, figure_in
from webapp.kinds.view import View
from webapp.trade import units

LIMITS = declare(
    Limit("gravity_rise", 0.001, "SG", "A gravity may seem to rise by"),
    Limit("stuck_hours", 48, "h", "A ferment that has not moved for"),
    Limit("stuck_fall", 0.001, "SG", "A ferment that moves falls in that time by"),
    Limit("stuck_above_end", 0.006, "SG", "Not finished while above its expected end by"),
    Limit("ended_span_h", 40, "h", "Three equal gravities span at least"),
    Limit("ended_equal", 0.0005, "SG", "Gravities are equal within"),
    Limit("hot_fruit_c", 24, "°C", "A fruit mash is too hot above"),
    Limit("hot_grain_c", 35, "°C", "A grain mash is too hot above"),
    Limit("fast_per_day", 0.020, "SG", "A fruit mash ferments too fast above, a day"),
    Limit("sense_low_c", 45, "°C", "A mash typed in °C may be °F from"),
    Limit("sense_low_f", 4, "°F", "A mash typed in °F may be °C from"),
    Limit("sense_high_f", 35, "°F", "A mash typed in °F may be °C up to"),
)

ROUND_H = 3  # a round of readings comes this much earlier or later
SHORTEST_DAYS = 0.4  # what a ferment does in less is judged as if it had had so long
FITS_C = 4.0  # how near to the last temperature a guess must lie to be said to fit


class _Gravity(NamedTuple):
    at: str
    gravity: float


def gravities(read: Read, view: View, most: int = RECENT) -> list[_Gravity]:
    """The last readings with a gravity since this fill began, oldest first; fruit that came later began the fall anew.
    """
    recent, held = view.state(read.mark)["recent"], view.state(read.mark)["holds"]
    since = held["since"] if held else ""
    fruit = recent.get("fruit_intake", ())
    since = max(since, fruit[-1]["at"]) if fruit else since
    found: list[_Gravity] = []
    for line in reversed(recent.get("ferment_reading", ())):
        if len(found) == most or line["at"] < since:
            break
        if isinstance(gravity := line["values"].get("gravity"), (float, int)):
            found.append(_Gravity(line["at"], gravity))
    found.reverse()
    return found


def _material(read: Read, view: View) -> tuple[str, str]:
    held = view.state(read.mark)["holds"] or NO_FILL
    return held["material"] or "", held["what"] or ""


def gravity_rose(read: Read, view: View) -> Iterable[Query]:
    """A gravity above the last one."""
    now, lines = read.number("gravity"), gravities(read, view, 1)
    if now is None or not lines:
        return
    last = lines[-1].gravity
    if now > last + limit("gravity_rise", view) + 1e-9:
        at, before = when(lines[-1].at, read, view), like_typed(read, "gravity", last)
        said = message("ferment_gravity_rose", gravity=typed(read, "gravity"), last=before, at=at)
        expects = Expected("gravity", last - 0.02, last + limit("gravity_rise", view), last)
        yield Query("ferment_gravity_rose", "ask", "gravity", said, (expects,))


def stuck(read: Read, view: View) -> Iterable[Query]:
    """Hardly a fall in two days, and well above where this fruit ends."""
    now = read.number("gravity")
    hours = limit("stuck_hours", view)
    lines = gravities(read, view)
    long_ago = hours_before(view.at, hours - ROUND_H)
    older = [line for line in lines if line.at <= long_ago]
    if now is None or not older:
        return
    then, end = older[-1], end_gravity(*_material(read, view))
    window = [line.gravity for line in lines[len(older) - 1 :]] + [now]
    fell = then.gravity - now
    stands = max(window) - min(window) < limit("stuck_fall", view) - 1e-9
    if stands and now > end + limit("stuck_above_end", view) + 1e-9:
        moved = "none" if abs(fell) < 1e-9 else Figure(figure_text(abs(fell), 4).rstrip("0"), "SG")
        said = message(
            "ferment_stuck", gravity=typed(read, "gravity"), moved=moved,
            apart=Figure(f"{seconds_between(then.at, view.at) / 3600:.0f}", "h"), above=figure(now - end, 3, "SG"),
            end=figure(end, 3, "SG"), what=_material(read, view)[0] or "none",
            mash=typed(read, "temp") if read.number("temp") is not None else "none",
        )
        yield Query("ferment_stuck", "ask", "gravity", said)


def ended(read: Read, view: View) -> Iterable[Query]:
    """Three equal gravities near the expected end: said once."""
    now, lines = read.number("gravity"), gravities(read, view, 3)
    if now is None:
        return
    series = [*lines, _Gravity(view.at, now)]
    if not _at_rest(series, view) or _at_rest(series[:-1], view):
        return
    end = end_gravity(*_material(read, view))
    if now <= end + limit("stuck_above_end", view):
        seconds = seconds_between(series[-3].at, view.at)
        said = message("ferment_ended", gravity=typed(read, "gravity"), within=time_span(seconds))
        yield Query("ferment_ended", "note", "gravity", said)


def _at_rest(series: list[_Gravity], view: View) -> bool:
    last = series[-3:]
    if len(last) < 3 or seconds_between(last[0].at, last[-1].at) < limit("ended_span_h", view) * 3600:
        return False
    gravities = [one.gravity for one in last]
    return max(gravities) - min(gravities) < limit("ended_equal", view) - 1e-9


def heat(read: Read, view: View) -> Iterable[Query]:
    """Too hot for the yeast, or too fast for the fruit."""
    grain = is_grain(" ".join(_material(read, view)))
    temp, hot = read.number("temp"), limit("hot_grain_c" if grain else "hot_fruit_c", view)
    if temp is not None and hot < temp < limit("sense_low_c", view):
        said = message(
            "ferment_heat", temp=typed(read, "temp"), most=like_typed(read, "temp", hot),
            what="grain" if grain else "fruit",
        )
        yield Query("ferment_heat", "ask", "temp", said)
    now, lines = read.number("gravity"), gravities(read, view, 1)
    if now is None or not lines or grain:
        return
    last, days = lines[-1].gravity, seconds_between(lines[-1].at, view.at) / DAY_S
    most = limit("fast_per_day", view) * max(days, SHORTEST_DAYS)
    if last - now > most + 1e-9:
        fell: dict[str, Param] = {"fell": figure(last - now, 3, "SG"), "since": when(lines[-1].at, read, view)}
        if days >= SHORTEST_DAYS:
            much = figure(limit("fast_per_day", view), 3, "SG")
            fell |= {"a_day": figure((last - now) / days, 3, "SG"), "much": much}
        said = message("ferment_fast" if days >= SHORTEST_DAYS else "ferment_fast-soon", **fell)
        yield Query("ferment_fast", "ask", "gravity", said, (Expected("gravity", last - most, last, last),))


def temp_sense(read: Read, view: View) -> Iterable[Query]:
    """degF typed as degC, or the other way round."""
    value, raw = read.number("temp"), read.raw("temp")
    if value is None:
        return
    number, unit = units.parse_number(raw["raw"]), raw["unit"]
    if unit == "degC" and number >= limit("sense_low_c", view):
        other, meant = "degF", (number - 32) / 1.8
    elif unit == "degF" and limit("sense_low_f", view) <= number <= limit("sense_high_f", view):
        other, meant = "degC", number
    else:
        return
    if not 0 <= meant <= limit("hot_grain_c", view) + 5:
        return
    celsius, as_typed = figure(meant, 1, "degC"), typed(read, "temp")
    temps = ((line["at"], figure_in(line["values"], "temp")) for line in view.recent(read.mark, "ferment_reading"))
    last = [(at, temp) for at, temp in temps if temp is not None]
    fits: dict[str, Param] = {"near": "none", "at": "none"}
    if last and abs(last[-1][1] - meant) <= FITS_C:
        fits = {"near": figure(last[-1][1], 1, "degC"), "at": when(last[-1][0], read, view)}
    if other == "degF":
        other_scale = Figure(as_typed.text, "degF")
        said = message("ferment_temp_sense", temp=as_typed, meant=celsius, other=other_scale, **fits)
    else:
        cold = figure(float(value), 1, "degC")
        said = message("ferment_temp_sense-cold", temp=as_typed, cold=cold, meant=celsius, **fits)
    near = {meant, *(temp for _, temp in last[-1:])}
    yield Query("ferment_temp_sense", "ask", "temp", said,
                tuple(Expected("temp", one - FITS_C, one + FITS_C, one) for one in sorted(near)))
