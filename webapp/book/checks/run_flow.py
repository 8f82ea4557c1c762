"""What flowed over the safe against what the receiver got, and the share of hearts against the runs before."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from statistics import median

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.run_balance import Part, fraction_name, like_runs, part_of, run_of
from webapp.book.checks.words import figure, like_typed, rounded, typed
from webapp.kinds.cut import CHANGES
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.run_state import Fraction, Run, RunLine
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View

LIMITS = declare(
    Limit("flow_pct", 7, "%", "Flow times minutes off the receiver by"),
    Limit("flow_least_l", 5, "L", "Flow is summed for at least"),
    Limit("flow_spread_pct", 6, "%", "Least spread that is taken of flows since the last cut or change"),
    Limit("hearts_spread", 2, "", "Hearts share: spreads about the last runs"),
    Limit("hearts_spread_least_pct", 2.5, "%", "Hearts share: least spread that is taken"),
    Limit("hearts_runs", 4, "", "Hearts share: runs needed"),
)

SPANS = {"heads": ("first_drop", "heads_cut"), "hearts": ("heads_cut", "hearts_cut"), "tails": ("hearts_cut", "")}
WIDEST_GAP_S = 45 * 60  # readings farther apart say little of what ran between them
MAD_TO_SPREAD = 1.4826
FLOWS, FLOWS_LEAST = 6, 2  # readings that a flow is held against, at most and at least
NEW_FLOW = frozenset(("first_drop", "heads_cut", "hearts_cut", *CHANGES))
ROUGH = 2.0  # times off that even one reading of the flow can tell; common practice, no source


def flow_sum(read: Read, view: View) -> Iterable[Query]:
    """Flow times minutes against the receiver: finds a late cut, or a receiver that was not changed."""
    _, run = run_of(read, view)
    part = part_of(read)
    if run is None or part is None or part["volume_l"] < limit("flow_least_l", view):
        return
    flowed, got, most = _flowed_l(run, str(part["fraction"])), part["volume_l"], limit("flow_pct", view)
    if flowed is None:
        flowed, most = _flowed_roughly_l(run, str(part["fraction"])), (ROUGH - 1) * 100
        if flowed is None or got / ROUGH <= flowed <= got * ROUGH:
            return
    off = (flowed - got) / got * 100
    if abs(off) > min(most, 50):
        said = message(
            "flow_sum", flowed=rounded(flowed, 1, "L"), fraction=fraction_name(str(part["fraction"])),
            got=rounded(got, 1, "L"), off=rounded(abs(off), 0, "pct"), side="more" if off > 0 else "less",
            most=figure(most, 0, "pct"),
        )
        there, wide = flowed + (read.number("remnant") or 0.0), flowed * most / 100
        yield Query("flow_sum", "ask", "volume" if "volume" in read.values else "net_weight", said,
                    (Expected("volume_20", there - wide, there + wide, there),))


def flow_jump(read: Read, view: View) -> Iterable[Query]:
    """A flow far from the others since the last cut or change: middle and spread are medians."""
    run, now = view.run_on(read.mark), read.number("flow")
    if run is None or not now:
        return
    since = max((cut["at"] for cut in run["cuts"] if cut.get("event") in NEW_FLOW), default="")
    flows = [flow for line in run["readings"] if line["at"] > since and (flow := line.get("flow"))][-FLOWS:]
    if len(flows) < FLOWS_LEAST or read.text("event") in NEW_FLOW:
        return
    middle = median(flows)
    spread = max(MAD_TO_SPREAD * median(abs(flow - middle) for flow in flows),
                 middle * limit("flow_spread_pct", view) / 100)
    wide = limit("alike_spread", view) * spread
    if abs(now - middle) > wide:
        said = message("flow_jump", flow=typed(read, "flow"), usual=like_typed(read, "flow", round(middle, 1)),
                       readings=len(flows))
        yield Query("flow_jump", "ask", "flow", said, (Expected("flow", middle - wide, middle + wide, middle),))


def dip_flow(read: Read, view: View) -> Iterable[Query]:
    """A dip of the open receiver against what has flowed since it was opened."""
    run, dip = view.run_on(read.mark), read.number("dip")
    if run is None or dip is None or not run["receiver"]:
        return
    held = view.state(run["receiver"])["holds"] or NO_FILL
    got = dip - (held["volume_l"] or 0.0)
    opened = [cut["at"] for cut in run["cuts"] if cut.get("event") == "first_drop" or cut.get("receiver")]
    now: RunLine = {"entry": read.entry["id"], "at": view.at, "true_strength": None}
    if (flow := read.number("flow")) is not None:
        now["flow"] = flow
    flowed = flowed_between(run, max(opened, default=None), view.at, now)
    least, most = limit("flow_least_l", view), limit("flow_pct", view)
    if flowed is None or max(flowed, got) < least:
        return
    off = (flowed - got) / max(got, least) * 100
    if abs(off) > most:
        said = message(
            "dip_flow", flowed=rounded(flowed, 1, "L"), dipped=rounded(got, 1, "L"), off=rounded(abs(off), 0, "pct"),
            side="less" if off > 0 else "more", most=figure(most, 0, "pct"),
        )
        yield Query("dip_flow", "ask", "dip", said)


def _flowed_l(run: Run, fraction: str) -> float | None:
    """Return the volume that flowed during a fraction by trapezoids over the readings; None where they are few. [L]"""
    if fraction not in SPANS:
        return None
    at = {cut.get("event"): cut["at"] for cut in run["cuts"]}
    first, last = (at.get(event) if event else run["ended_at"] for event in SPANS[fraction])
    return flowed_between(run, first, last)


def _flowed_roughly_l(run: Run, fraction: str) -> float | None:
    """Return the volume that flowed during a fraction of which there are one or two readings; None without any. [L]"""
    at = {cut.get("event"): cut["at"] for cut in run["cuts"]}
    first, last = (at.get(event) if event else run["ended_at"] for event in SPANS.get(fraction, ("none", "none")))
    if not first or not last or first >= last:
        return None
    lines = [*run["readings"], *run["cuts"], *([run["end"]] if run.get("end") else [])]
    flows = [flow for line in lines if first <= line["at"] <= last and (flow := line.get("flow"))]
    seconds = seconds_between(first, last)
    return median(flows) * seconds / 3600 if flows and seconds <= WIDEST_GAP_S else None


def flowed_between(run: Run, first: str | None, last: str | None, *more: RunLine) -> float | None:
    """Return the volume that flowed between two times by trapezoids over the readings; None where they are few. [L]"""
    if not first or not last or first >= last:
        return None
    end = [run["end"]] if run.get("end") else []
    lines = sorted([*run["readings"], *run["cuts"], *end, *more], key=lambda line: line["at"])
    flows = {line["at"]: flow for line in lines if first <= line["at"] <= last and (flow := line.get("flow"))}
    times = sorted(flows)
    if len(times) < 3:
        return None
    points = [(first, flows[times[0]]), *((time, flows[time]) for time in times), (last, flows[times[-1]])]
    spans = [(seconds_between(one, two), (a + b) / 2) for (one, a), (two, b) in pairwise(points)]
    if max(seconds for seconds, _ in spans) > WIDEST_GAP_S:
        return None
    return sum(seconds / 3600 * flow for seconds, flow in spans)


def hearts_share(read: Read, view: View) -> Iterable[Query]:
    """Hearts as a share of the charge, against the last runs of the same spirit on this still."""
    _, run = run_of(read, view)
    part = part_of(read)
    if run is None or part is None or part["fraction"] != "hearts":
        return
    now = _share(run, [*run["fractions"], part])
    alike = [other for other in like_runs(run, view) if other["what"] == run["what"]][:5]
    shares = [share for other in alike if (share := _share(other, other["fractions"])) is not None]
    if now is None or len(shares) < limit("hearts_runs", view):
        return
    middle = median(shares)
    spread = MAD_TO_SPREAD * median(abs(share - middle) for share in shares)
    most = limit("hearts_spread", view) * max(spread, limit("hearts_spread_least_pct", view))
    if abs(now - middle) > most:
        said = message(
            "hearts_share", now=rounded(now, 0, "pct"), low=rounded(min(shares), 0, "pct"),
            high=rounded(max(shares), 0, "pct"), runs=len(shares), what=run["what"] or "none",
        )
        yield Query("hearts_share", "note", "", said)


def _share(run: Run, parts: Sequence[Part | Fraction]) -> float | None:
    charged = run["charge"]["lpa_l"] or 0.0
    hearts = sum(part["lpa_l"] for part in parts if part["fraction"] == "hearts")
    return hearts / charged * 100 if charged > 0 and hearts > 0 else None
