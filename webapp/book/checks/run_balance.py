"""The account of a run in pure alcohol: what was charged against what its receivers got, once all of them are gauged.

Stillage that nobody has read counts with a usual strength, and the sentence says so. A stripping run has one fraction
and is held against what low wines usually carry over.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import sqrt
from statistics import median, quantiles
from typing import TypedDict

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.instruments import dipped_off_by, off_by
from webapp.book.checks.words import figure, rounded, when
from webapp.kinds.expected import Expected
from webapp.kinds.key import run_key
from webapp.kinds.message import Declared, Figure, Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.run_state import Fraction, Run
from webapp.kinds.state import NO_FILL, text_in
from webapp.kinds.view import View
from webapp.trade.uncertainty import COVERAGE, standard_from_interval

LIMITS = declare(
    Limit("stillage_pct", 0.2, "% vol", "Stillage that nobody has read counts as"),
    Limit("run_loss_low_pct", 0.5, "%", "A run usually leaves unaccounted for, from"),
    Limit("run_loss_high_pct", 2.0, "%", "A run usually leaves unaccounted for, to"),
    Limit("run_loss_pct", 3.0, "%", "A run is asked about above"),
    Limit("run_gain_pct", 0.5, "%", "A run is asked about where it gained"),
    Limit("run_noise_l", 0.25, "L", "Less pure alcohol than this is not asked about"),
    Limit("strip_low_pct", 97.0, "%", "Low wines carry of the wash at least"),
    Limit("strip_high_pct", 100.5, "%", "Low wines carry of the wash at most"),
)

WASH_STEP_PCT = 0.1  # to which the strength of a wash is written down
# Two readings of one wash in one laboratory differ by more in 1 of 20: OIV-MA-AS312-01A, repeatability, from memory.
WASH_REPEATS_PCT = 0.10
REPEATS = 2.8  # standard deviations between two results: ISO 5725-6, from memory
FEINTS_NEAR = 0.05  # feints that a run has are those that stand there, within this part; common practice, no source
LIKE_LEAST = 4  # fewer runs before it are no custom of the house


@dataclass(frozen=True, slots=True)
class Account:
    """A run's pure alcohol: charged, in receivers, in stillage, and whether the stillage was read. [L at 20 degC]"""

    charged: float
    received: float
    stillage: float
    is_read: bool

    @property
    def missing(self) -> float:
        """What is not accounted for; negative where more came out than went in. [L]"""
        return self.charged - self.received - self.stillage

    @property
    def missing_pct(self) -> float:
        """The same as a share of the charge. [%]"""
        return self.missing / self.charged * 100


def run_of(read: Read, view: View) -> tuple[str, Run | None]:
    """Return the run that a fraction gauge speaks of, the last on its still, with its id; ("", None) without one."""
    runs = view.state(read.text("still") or "")["runs"]
    return (runs[-1], view.get(run_key(runs[-1]))) if runs else ("", None)


class Part(TypedDict):
    """A fraction as the account of its run needs it."""

    fraction: str | None
    receiver: str
    lpa_l: float
    volume_l: float


def part_of(read: Read) -> Part | None:
    """Return the part of its run that this gauge measures, remnant taken off, as the run's state will keep it; None if
    unknown.
    """
    lpa, volume = read.figures.get("lpa"), read.figures.get("volume_20")
    if lpa is None or volume is None:
        return None
    lpa_l = max(lpa - (read.figures.get("remnant_lpa") or 0.0), 0.0)
    volume_l = max(volume - (read.number("remnant") or 0.0), 0.0)
    return {"fraction": read.text("fraction"), "receiver": read.mark, "lpa_l": lpa_l, "volume_l": volume_l}


def account_of(run: Run, parts: Sequence[Part | Fraction], view: View) -> Account | None:
    """Return the account of a run whose fractions these are; None while one is still to be gauged."""
    charged = run["charge"]["lpa_l"] or 0.0
    named = {part["fraction"] for part in parts}
    if charged <= 0 or not expected(run) <= named:
        return None
    received = sum(part["lpa_l"] for part in parts if part["fraction"] != "stillage")
    if "stillage" in named:
        stillage = sum(part["lpa_l"] for part in parts if part["fraction"] == "stillage")
        return Account(charged, received, stillage, is_read=True)
    over = sum(part["volume_l"] for part in parts)
    left_l = max((run["charge"]["volume_l"] or 0.0) - over, 0.0)
    return Account(charged, received, left_l * limit("stillage_pct", view) / 100, is_read=False)


def is_stripping(run: Run) -> bool:
    """Return whether a run has no cuts: all that runs over is low wines."""
    return not any(cut.get("event") in ("heads_cut", "hearts_cut") for cut in run["cuts"])


def expected(run: Run) -> set[str]:
    """Return the fractions that a run has by its cuts."""
    if is_stripping(run):
        return {"low_wines"}
    events = {cut.get("event") for cut in run["cuts"]}
    return {"hearts", "tails"} | ({"heads"} if "heads_cut" in events else set())


def run_balance(read: Read, view: View) -> Iterable[Query]:
    """What was charged and is nowhere, or came from nowhere: asked once, by the gauge that completes the run."""
    _, run = run_of(read, view)
    part = part_of(read)
    if run is None or part is None:
        return
    before = account_of(run, run["fractions"], view)
    now = account_of(run, [*run["fractions"], part], view)
    if now is None or (before and _is_odd(before, run, view)) or not _is_odd(now, run, view):
        return
    if _beyond_usual(now, run, view) <= _off_by(read, view, run):
        return
    code = "strip_balance" if is_stripping(run) else "run_balance"
    yield Query(code, "ask", "", _said(now, run, view), _expected_of(now, run, read, view))


def _beyond_usual(account: Account, run: Run, view: View) -> float:
    """Return how far a run is off what such a run usually leaves behind, either way. [L]"""
    if account.missing <= 0 or is_stripping(run):
        return abs(account.missing)
    return account.missing - account.charged * limit("run_loss_high_pct", view) / 100


def _off_by(read: Read, view: View, run: Run) -> float:
    """Return the uncertainty of the balance by the dips and glasses of its parts. Of the strength of a wash its last
    digit counts, and what one laboratory finds of one wash twice: what it is off beyond that is what is asked. [L]
    """
    charge = run["charge"]
    parts = [(part["volume_l"], part["lpa_l"]) for part in run["fractions"]]
    parts.append((charge["volume_l"] or 0.0, charge["lpa_l"] or 0.0))
    # Nothing is below nothing: of stillage hardly more is open than what was found in it.
    square = min(off_by(read, view, "lpa"), read.figures.get("lpa") or 0.0) ** 2
    wash_l = charge["wash_l"] or 0.0
    wash_pct = sqrt(standard_from_interval(WASH_STEP_PCT) ** 2 + (WASH_REPEATS_PCT / REPEATS) ** 2)
    square += (COVERAGE * wash_pct / 100 * wash_l) ** 2
    for n, (volume, lpa) in enumerate(parts):
        square += dipped_off_by(volume, lpa, is_read=n < len(parts) - 1) ** 2
    return sqrt(square)


def _expected_of(account: Account, run: Run, read: Read, view: View) -> tuple[Expected, ...]:
    """Return the pure alcohol of this gauge with which the run would come out as such runs do. [L]"""
    lpa, charged = read.figures.get("lpa"), account.charged / 100
    if lpa is None or is_stripping(run):
        return ()
    low, high = limit("run_loss_low_pct", view) * charged, limit("run_loss_high_pct", view) * charged
    most, gain = limit("run_loss_pct", view) * charged, limit("run_gain_pct", view) * charged
    whole = lpa + account.missing
    return (Expected("lpa", max(whole - most, 0.0), whole + gain, whole - (low + high) / 2),)


def _is_odd(account: Account, run: Run, view: View) -> bool:
    if abs(account.missing) <= limit("run_noise_l", view):
        return False
    if is_stripping(run):
        carried = account.received / account.charged * 100
        return not limit("strip_low_pct", view) <= carried <= limit("strip_high_pct", view)
    return not -limit("run_gain_pct", view) <= account.missing_pct <= limit("run_loss_pct", view)


def _said(account: Account, run: Run, view: View) -> Message:
    code = "strip_balance" if is_stripping(run) else "run_balance"
    sums: dict[str, Param] = {
        "out": rounded(account.received + account.stillage, 1, "LPA"), "in": rounded(account.charged, 1, "LPA"),
        "off": rounded(abs(account.missing), 1, "LPA"), "share": rounded(abs(account.missing_pct), 1, "pct"),
        "stillage": "read" if account.is_read else figure(limit("stillage_pct", view), 1, "pct_vol"),
    }
    if account.missing < 0:
        return message(f"{code}-gain", **sums)
    if is_stripping(run):
        carried = rounded(account.received / account.charged * 100, 1, "pct")
        low, high = figure(limit("strip_low_pct", view), 0, "pct"), figure(99.5, 1, "pct")
        return message(code, **sums, carried=carried, low=low, high=high)
    low, high = _usual(run, view)
    return message(code, **sums, low=low, high=high)


def _usual(run: Run, view: View) -> tuple[Figure, Figure]:
    """Return the usual unaccounted loss of this still, by its last runs if there are enough of them. [%]"""
    found = [now.missing_pct for other in like_runs(run, view) if (now := account_of(other, other["fractions"], view))]
    if len(found) < LIKE_LEAST:
        low, high = limit("run_loss_low_pct", view), limit("run_loss_high_pct", view)
        return figure(low, 1, "pct"), figure(high, 0, "pct")
    low, _, high = quantiles(found, n=4, method="inclusive")
    return rounded(low, 1, "pct"), rounded(high, 1, "pct")


def fraction_name(fraction: str) -> Declared:
    """Return the word for a fraction of a run, as a parameter of a message."""
    return Declared(("choice", "fraction_gauge", "fraction", fraction))


def like_runs(run: Run, view: View) -> list[Run]:
    """Return the runs before this one on its still that are of its sort, newest first, at most eleven."""
    ids = view.state(run["still"])["runs"]
    found = [other for run_id in reversed(ids) if (other := view.get(run_key(run_id))) and other is not run]
    return [other for other in found if is_stripping(other) == is_stripping(run)]


def run_drift(read: Read, view: View) -> Iterable[Query]:
    """Run after run above what is usual, though none of them by itself is worth a question."""
    _, run = run_of(read, view)
    part = part_of(read)
    now = account_of(run, [*run["fractions"], part], view) if run and part else None
    high = limit("run_loss_high_pct", view)
    if run is None or now is None or now.missing_pct <= high or _is_odd(now, run, view) or is_stripping(run):
        return
    if account_of(run, run["fractions"], view):
        return  # told already when the last fraction came
    last = [
        found.missing_pct for other in like_runs(run, view)[:LIKE_LEAST]
        if (found := account_of(other, other["fractions"], view))
    ]
    if len(last) == LIKE_LEAST and median(last) > high:
        said = message(
            "run_drift", now=rounded(now.missing_pct, 1, "pct"), middle=rounded(median(last), 1, "pct"),
            runs=LIKE_LEAST, high=figure(high, 0, "pct"),
        )
        yield Query("run_drift", "note", "", said)


def fraction_again(read: Read, view: View) -> Iterable[Query]:
    """One fraction of one run gauged twice into the same receiver."""
    _, run = run_of(read, view)
    name = read.text("fraction")
    for line in run["fractions"] if run else ():
        if line["fraction"] == name and line["receiver"] == read.mark:
            said = message(
                "fraction_again", fraction=fraction_name(str(name)), run=(run["name"] if run else "") or "none",
                at=when(line["at"], read, view), pure=rounded(line["lpa_l"], 1, "LPA"),
            )
            yield Query("fraction_again", "ask", "fraction", said)
            return


def fraction_twice(read: Read, view: View) -> Iterable[Query]:
    """Feints that another run has had already."""
    source, feints = read.text("feints_from") or "", read.figures.get("feints_lpa") or 0.0
    if not source or feints <= 0:
        return
    held = view.state(source)["holds"] or NO_FILL
    if (held["lpa_l"] or 0.0) > feints / 2:
        return
    row = view.vessel(source)
    name = row["name"] if row else source
    gauged = max((line["at"] for line in view.recent(source, "fraction_gauge")), default="")
    for line in reversed(view.recent(read.mark, "charge")):
        if line["values"].get("feints_from") == source and line["at"] > gauged:
            other, at = text_in(line["values"], "run_name") or "none", when(line["at"], read, view)
            said = message("fraction_twice", vessel=name, run=other, at=at)
            yield Query("fraction_twice", "ask", "feints_from", said)
            return
    there = held["lpa_l"] or 0.0
    booked = rounded(there, 1, "LPA")
    said = message("fraction_twice-short", feints=rounded(feints, 1, "LPA"), vessel=name, booked=booked)
    most = there * FEINTS_NEAR
    yield Query("fraction_twice", "ask", "feints_from", said,
                (Expected("feints_lpa", there - most, there + most, there),) if there else ())
