"""The run as it was read: which readings count, and what had run off by each.

``static/trade/still/track.js`` is the same, step for step.
"""

from collections.abc import Sequence
from math import sqrt
from typing import NamedTuple, NotRequired, TypedDict

from webapp.trade.batch import stream_moles

RISE_PCT = 2.0  # a stream may seem to rise by this much between two readings; more is a slip or another setting
SLIPS_MOST = 2
SMOOTHED, ROOT_RANGE = 3, (0.05, 90.0)  # flows; their roots [L/h]
DIP_SHARE = (0.6, 1.6)  # of what the flow says; beyond, flow after the last dip is taken as read


class ChargeRead(TypedDict, total=False):
    """What a run was charged with. [L at 20 degC]"""

    volume_l: float | None
    lpa_l: float | None


class StreamRead(TypedDict):
    """A reading of the stream. [min since the first drop, % vol, L/h or None]"""

    minutes: float
    strength_pct: float
    flow_l_h: NotRequired[float | None]


class Dip(TypedDict):
    """What had run off by a minute, by the dip of the receiver. [min, L since the first drop]"""

    minutes: float
    volume_l: float


class Change(TypedDict):
    """Heat, cooling water or plates were changed. [min since the first drop, plates in work from then on or None]"""

    minutes: float
    plates: NotRequired[float | None]


class StillRead(TypedDict, total=False):
    """The still of a run: plates in use at the first drop, its height. [1, m]"""

    plates: float | None
    height_m: float


class RunRead(TypedDict):
    """A run as the forecasts of its cuts take it (cutdue.forecast_cut)."""

    readings: list[StreamRead]
    charge: NotRequired[ChargeRead]
    collected: NotRequired[list[Dip]]
    changes: NotRequired[list[Change]]
    still: NotRequired[StillRead]
    receiver_since: NotRequired[float]
    cut_pct: NotRequired[float]


class Track(NamedTuple):
    """The readings that count. [min, % vol, L, L, mol, mol, L/h], all since the first drop.

    The flow at a reading is None if nobody read it; ``correction`` is what dips make of flows, as a factor.
    """

    minutes: list[float]
    strengths: list[float]
    litres: list[float]
    lpas: list[float]
    ethanol_mol: list[float]
    water_mol: list[float]
    flows_l_h: list[float | None]
    correction: float
    places: list[int]
    left_out: list[int]
    since: int  # the first reading of these that was read under the still's present setting
    root_flows: list[float]  # of the flow at each reading, smoothed
    settings: list[int]  # how many changes of heat, water or plates were told by each reading
    told: int  # and in all
    stands: list[tuple[float, float]]  # plates in work from so many litres on, where that was told

    @property
    def leaps(self) -> list[int]:
        """The readings at which the drift may leap; their number itself, where the still was changed since."""
        after = [*self.settings, self.told]
        return [k for k in range(1, len(after)) if after[k] > after[k - 1] or (k == self.since and k < len(after) - 1)]


def track(run: RunRead, usual_flow_l_h: float | None) -> Track | None:
    """Return the readings that count with what had run off by each; None if nothing tells how much."""
    readings = run["readings"]
    changes = sorted(run.get("changes") or [], key=lambda change: change["minutes"])
    told = [sum(change["minutes"] <= r["minutes"] for change in changes) for r in readings]
    kept, left_out, since = tidy([float(r["strength_pct"]) for r in readings], told)
    times = [float(one["minutes"]) for one in [*readings, *changes]]
    litres, correction = _litres(times, readings, run.get("collected") or [], usual_flow_l_h)
    if litres is None:
        return None
    stands = [
        (off, float(plates))
        for change, off in zip(changes, litres[len(readings) :], strict=True)
        if (plates := change.get("plates")) is not None
    ]
    found = Track([], [], [], [], [], [], [], correction, kept, left_out, since, [], [told[i] for i in kept],
                  len(changes), stands)
    before_l = before_pct = lpa = ethanol = water = 0.0
    for i in kept:
        strength = float(readings[i]["strength_pct"])
        mean = (before_pct + strength) / 2 if found.minutes else strength
        passed = litres[i] - before_l
        more = stream_moles(passed, mean)
        lpa, ethanol, water = lpa + passed * mean / 100.0, ethanol + more[0], water + more[1]
        flow = readings[i].get("flow_l_h")
        found.minutes.append(float(readings[i]["minutes"]))
        found.strengths.append(strength)
        found.litres.append(litres[i])
        found.lpas.append(lpa)
        found.ethanol_mol.append(ethanol)
        found.water_mol.append(water)
        found.flows_l_h.append(float(flow) if flow is not None else None)
        before_l, before_pct = litres[i], strength
    return found._replace(root_flows=_root_flows(found))


def _root_flows(found: Track) -> list[float]:
    """Return the root of the flow until each reading: the middle one of three that were read, or of all, by litres."""
    read = [(i, flow * found.correction) for i, flow in enumerate(found.flows_l_h) if flow]
    if not read:
        passed_h = max(found.minutes[-1] - found.minutes[0], 1.0) / 60.0
        return [_root((found.litres[-1] - found.litres[0]) / passed_h)] * len(found.minutes)
    roots = []
    for j, (i, _) in enumerate(read):
        begin = max(0, min(j - 1, len(read) - SMOOTHED))
        near = [flow for k, flow in read[begin : begin + SMOOTHED] if found.settings[k] == found.settings[i]]
        roots.append(_root(middle(near)))
    there, k = [], 0
    for i in range(len(found.minutes)):
        while k < len(read) - 1 and read[k][0] < i:
            k += 1
        there.append(roots[k])
    return there


def _root(flow_l_h: float) -> float:
    return min(max(sqrt(max(flow_l_h, 0.0)), ROOT_RANGE[0]), ROOT_RANGE[1])


def middle(values: list[float]) -> float:
    """Return the middle value, or the mean of the two in the middle."""
    ordered, half = sorted(values), len(values) // 2
    return ordered[half] if len(ordered) % 2 else (ordered[half - 1] + ordered[half]) / 2


def tidy(strengths: Sequence[float], told: Sequence[int] | None = None) -> tuple[list[int], list[int], int]:
    """Return (readings that count, readings taken for slips, the first since the stream last rose for good).

    The stream of a pot only falls. Where it rises from one reading to the next, one of the two is a slip if without it
    nothing rises there; if both must stay, the distiller changed heat or water. What was told of such changes (how
    many, by each reading) explains a rise.
    """
    settings = told or [0] * len(strengths)
    kept, left_out = list(range(len(strengths))), list[int]()
    while len(left_out) < SLIPS_MOST:
        slip = _slip([(settings[i], strengths[i]) for i in kept])
        if slip is None:
            break
        left_out.append(kept.pop(slip))
    since = 0
    for k in range(1, len(kept)):
        if strengths[kept[k]] - strengths[kept[k - 1]] > RISE_PCT:
            since = k
    return kept, sorted(left_out), since


def _slip(values: list[tuple[int, float]]) -> int | None:
    """Return the place of the reading that makes the stream rise, if one alone does."""
    if len(values) < 3:
        return None
    before = _rises(values)
    for k in range(1, len(values)):
        if not _is_rise(values[k - 1], values[k]):
            continue
        least, found = 0.0, None
        for place in (k - 1, k):
            if _rises(values[:place] + values[place + 1 :]) >= before:
                continue
            off = _departure([strength for _, strength in values], place, k - 1, k)
            if found is None or off > least:
                least, found = off, place
        if found is not None:
            return found
    return None


def _is_rise(before: tuple[int, float], after: tuple[int, float]) -> bool:
    """Whether the stream rises from one reading to the next under the same setting, as far as was told."""
    return before[0] == after[0] and after[1] - before[1] > RISE_PCT


def _rises(values: list[tuple[int, float]]) -> int:
    return sum(_is_rise(values[k - 1], values[k]) for k in range(1, len(values)))


def _departure(values: list[float], place: int, first: int, second: int) -> float:
    """Return how far a reading is off the line through its two nearest others, the rising pair left out."""
    others = [i for i in range(len(values)) if i not in (first, second)]
    others.sort(key=lambda i: (abs(i - place), i))
    if len(others) < 2:
        return abs(values[place] - values[others[0]])
    a, b = others[0], others[1]
    return abs(values[place] - (values[a] + (values[b] - values[a]) * (place - a) / (b - a)))


def _litres(
    times: list[float], readings: Sequence[StreamRead], dips: Sequence[Dip], usual_flow_l_h: float | None
) -> tuple[list[float] | None, float]:
    """Return the litres off by each minute, by flow, by dips or as usual; and what dips make of flows."""
    flows = [(float(r["minutes"]), float(flow)) for r in readings if (flow := r.get("flow_l_h")) is not None]
    knots = [(0.0, 0.0)]
    for minute, volume_l in sorted((float(d["minutes"]), float(d["volume_l"])) for d in dips):
        if minute > knots[-1][0] and volume_l >= knots[-1][1]:  # what has run off never grows less
            knots.append((minute, volume_l))
    if not flows and len(knots) == 1:
        if not usual_flow_l_h:
            return None, 1.0
        flows = [(0.0, usual_flow_l_h)]
    by_flow = [_run_off(flows, minute) for minute in times]
    if len(knots) == 1:
        return by_flow, 1.0
    at_knots = [_run_off(flows, minute) for minute, _ in knots]
    litres = [_by_dips(times[i], by_flow[i], knots, at_knots) for i in range(len(times))]
    return litres, _share(knots[-1][1], at_knots[-1])


def _run_off(flows: list[tuple[float, float]], minute: float) -> float:
    """Return the litres off by a minute: straight lines between flows, level before the first and after the last."""
    if not flows or minute <= 0:
        return 0.0
    total, before, flow = 0.0, 0.0, flows[0][1]
    for at, value in flows:
        if at <= before:
            flow = value
            continue
        if at >= minute:
            there = flow + (value - flow) * (minute - before) / (at - before)
            return total + (flow + there) / 2 * (minute - before) / 60.0
        total += (flow + value) / 2 * (at - before) / 60.0
        before, flow = at, value
    return total + flow * (minute - before) / 60.0


def _share(dipped_l: float, by_flow_l: float) -> float:
    share = dipped_l / by_flow_l if by_flow_l > 0 else 1.0
    return share if DIP_SHARE[0] <= share <= DIP_SHARE[1] else 1.0


def _by_dips(minute: float, by_flow_l: float, knots: list[tuple[float, float]], at_knots: list[float]) -> float:
    """Return the litres off by a minute that agree with the dips; between them they run as the flow ran."""
    for i in range(1, len(knots)):
        (a, low), (b, high) = knots[i - 1], knots[i]
        if minute <= b:
            ran = at_knots[i] - at_knots[i - 1]
            share = (by_flow_l - at_knots[i - 1]) / ran if ran > 0 else (minute - a) / (b - a) if b > a else 1.0
            return low + (high - low) * share
    (a, low), (b, high) = knots[-2], knots[-1]
    if at_knots[-1] > 0:
        return high + (by_flow_l - at_knots[-1]) * _share(high, at_knots[-1])
    return high + (high - low) / (b - a) * (minute - b) if b > a else high
