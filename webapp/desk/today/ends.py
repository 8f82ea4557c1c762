"""Small pictures of the day's page as geometry: the ends of ferments, and a figure beside those before it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from webapp.book.today.asked import Slip
from webapp.book.today.standing import Standing
from webapp.desk.today import clock
from webapp.desk.today.dayline import Scale
from webapp.words import local
from webapp.words.desk import say

ENDS_MOST, ENDS_DAYS = 6, 14.0
TICK_PCT = 26.0  # a day's name nearer to the first is left out
SLIP_WIDE, SLIP_HIGH = 104.0, 48.0


@dataclass(frozen=True, slots=True)
class End:
    """The end of a ferment on the line of days. [%], None where there is no interval; words: 1 to 2 Dec."""

    mark: str
    fill: str
    name: str
    what: str
    low: float | None
    high: float | None
    at: float | None
    words: str
    lead: str


def ends_line(ends: Sequence[Standing], now_s: float) -> tuple[list[tuple[float, str]], list[End]]:
    """Return the days of the line and the ends on it: those of ferments with a forecast, the nearest first."""
    shown = list(ends)[:ENDS_MOST]
    running = [one.end_s for one in shown if one.end_state == "running"]
    last = max((end.get("high", end["at"]) for end in running), default=now_s)
    until = min(max(last, now_s + 3 * 86_400), now_s + ENDS_DAYS * 86_400)
    scale = Scale(now_s, until)
    step = 1 if until - now_s < 5 * 86_400 else 2 if until - now_s < 9 * 86_400 else 4
    midnight = clock.at_house(now_s).replace(hour=0, minute=0, second=0, microsecond=0)
    days = [midnight + timedelta(days=n) for n in range(step, int(ENDS_DAYS) + 1, step)]
    ticks = [(0.0, say("desk-due-now"))]
    ticks += [(scale(day.timestamp()), local.weekday(day)) for day in days if day.timestamp() <= until]
    apart = [tick for n, tick in enumerate(ticks) if not n or TICK_PCT <= tick[0] <= 100 - TICK_PCT / 3]
    return apart, [_end(one, scale) for one in shown]


def _end(one: Standing, scale: Scale) -> End:
    assert one.holds
    at, fill, what = one.end_s["at"], one.holds.fill, one.holds.what
    if one.end_state == "ended":
        since = say("desk-ends-since", day=clock.day(at))
        return End(one.mark, fill, one.shown, what, None, None, None, since, say("desk-common-ended"))
    low, high = one.end_s["low"], one.end_s["high"]
    first, last = clock.at_house(low), clock.at_house(high)
    begun = f"{first.day}" if first.month == last.month else local.day_of_month(first)
    until = local.day_of_month(last)
    span = until if first.date() == last.date() else say("desk-line-span", low=begun, high=until)
    return End(one.mark, fill, one.shown, what, scale(low), scale(high), scale(at), span,
               local.weekday(clock.at_house(at)))


@dataclass(frozen=True, slots=True)
class SlipPicture:
    """A figure beside those before it, in a box of SLIP_WIDE by SLIP_HIGH: places of the line, of typed and offered."""

    before: str
    last: tuple[float, float] | None
    typed: tuple[float, float]
    offered: tuple[float, float] | None


def slip_picture(slip: Slip) -> SlipPicture:
    """Return the picture of a slip: the figures before evenly apart, then what was typed and what is offered."""
    values = [*(point.value for point in slip.before), slip.typed]
    values += [] if slip.offered is None else [slip.offered]
    low, high = min(values), max(values)
    pad, end, line_end = 8.0, SLIP_WIDE - 14, SLIP_WIDE - 40

    def y(value: float) -> float:
        return SLIP_HIGH / 2 if high == low else pad + (high - value) / (high - low) * (SLIP_HIGH - 2 * pad)

    steps = max(len(slip.before) - 1, 1)
    points = [(2 + n / steps * (line_end - 2), y(point.value)) for n, point in enumerate(slip.before)]
    if len(points) == 1:
        points = [(2.0, points[0][1]), (line_end, points[0][1])]
    return SlipPicture(
        " ".join(f"{x:.1f},{at:.1f}" for x, at in points), points[-1] if points else None, (end, y(slip.typed)),
        (end, y(slip.offered)) if slip.offered is not None else None,
    )
