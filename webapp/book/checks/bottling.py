"""Bottling: the tank against bottles, heel and line; the label against the tank; cases against bottles."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.product_limits import place_of
from webapp.book.checks.words import figure, rounded
from webapp.kinds.expected import Expected
from webapp.kinds.message import Param, message
from webapp.kinds.read import Read
from webapp.kinds.rows import SiteSettings
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View
from webapp.trade.bottling import eu_fill_allowed_pct, us_fill_allowed_pct

LIMITS = declare(
    Limit("bottling_loss_pct", 1.5, "%", "A bottling loses at most"),
    Limit("bottling_gain_pct", 0.3, "%", "A bottling may seem to gain"),
    Limit("fill_mean_pct", 0.2, "%", "The average of a bottle check may be under the label by"),
    Limit(
        "label_pct", 0.3, "% vol", "Strength off the label",
        "Regulation (EU) 1169/2011, Annex XII: spirits within 0.3 of the label",
    ),
)
SOURCES = dict.fromkeys(("fill_off", "fill_mean"), "27 CFR 19.356; Directive 76/211/EEC, Annex I, from memory")


def _count(read: Read, name: str) -> int:
    value = read.number(name)
    return max(round(value), 0) if value is not None and abs(value) < 1e9 else 0


def bottling_balance(read: Read, view: View) -> Iterable[Query]:
    """An emptied tank against what came out of it, at the strength of the tank."""
    held = view.state(read.mark)["holds"]
    size, loss = read.number("bottle_size") or 0.0, read.number("loss") or 0.0
    if not held or held["mash"] or not held["lpa_ul"] or size <= 0:
        return
    strength, had = held["strength_pct"] or 0.0, held["lpa_ul"] / 1e6
    filled = (_count(read, "filled") - _count(read, "reworked")) * size
    out = (filled + loss) * strength / 100
    short, pct = had - out, (had - out) / had * 100
    is_empty = read.text("tank_empty") == "yes"
    expects = _bottles(read, had / strength * 100 - loss if strength else 0.0, size, view)
    sums: dict[str, Param] = {
        "tank": rounded(had, 1, "LPA"), "bottles": rounded(filled * strength / 100, 1, "LPA"),
        "line": rounded(loss * strength / 100, 1, "LPA"), "off": rounded(abs(short), 1, "LPA"),
        "share": rounded(abs(pct), 1, "pct"),
    }
    if is_empty and pct > limit("bottling_loss_pct", view):
        yield Query("bottling_balance", "ask", "filled", message("bottling_balance", **sums), expects)
    elif pct < -limit("bottling_gain_pct", view):
        yield Query("bottling_gain", "ask", "filled", message("bottling_gain", **sums), expects)
    label = held.get("label_strength_pct")
    if label and abs(strength - label) > limit("label_pct", view) + 1e-6:
        said = message(
            "label_strength", tank=rounded(strength, 1, "pct_vol"), label=figure(label, 1, "pct_vol"),
            off=rounded(abs(strength - label), 1, "pct_vol"), side="above" if strength > label else "below",
            by_label=rounded(filled * label / 100, 1, "LPA"), by_tank=rounded(filled * strength / 100, 1, "LPA"),
        )
        yield Query("label_strength", "ask", "", said)


def _bottles(read: Read, litres: float, size: float, view: View) -> tuple[Expected, ...]:
    """Return how many bottles of this size the tank was expected to fill. litres: in it, without heel and line [L]"""
    most = (litres * (1 + limit("bottling_gain_pct", view) / 100)) / size + _count(read, "reworked")
    least = (litres * (1 - limit("bottling_loss_pct", view) / 100)) / size + _count(read, "reworked")
    return (Expected("filled", least, most, most),) if most > 0 else ()


def label_gauge(read: Read, view: View) -> Iterable[Query]:
    """The tank gauge against the label before the first bottle is filled."""
    now, label = read.figures.get("true_strength"), read.number("label_strength")
    if now is not None and label is not None and abs(now - label) > limit("label_pct", view) + 1e-6:
        said = message(
            "label_strength-before", tank=rounded(now, 1, "pct_vol"), label=figure(label, 1, "pct_vol"),
            off=rounded(abs(now - label), 1, "pct_vol"), most=figure(limit("label_pct", view), 1, "pct_vol"),
        )
        most = limit("label_pct", view)
        yield Query("label_strength", "ask", "label_strength", said,
                    (Expected("true_strength", label - most, label + most, label),
                     Expected("label_strength", now - most, now + most, now)))


def bottle_off(read: Read, view: View) -> Iterable[Query]:
    """Bottles off the line whose strength is not the label's."""
    held = view.state(read.mark)["holds"] or NO_FILL
    now = read.number("strength_found")
    label = read.number("label_strength") or held.get("label_strength_pct")
    if now is not None and label and abs(now - label) > limit("label_pct", view) + 1e-6:
        found = figure(now, 1, "pct_vol")
        said = message("label_strength-bottles", found=found, label=figure(label, 1, "pct_vol"))
        most = limit("label_pct", view)
        yield Query("label_strength", "ask", "strength_found", said,
                    (Expected("strength_found", label - most, label + most, label),))


def fill_off(read: Read, view: View) -> Iterable[Query]:
    """Fill against what the law of the place allows for this size: in the US each bottle either way, in the EU each
    bottle under its label, and the average."""
    size_ml = (read.number("bottle_size") or 0.0) * 1000.0
    mean = read.number("fill_found")
    least, most = read.number("fill_least"), read.number("fill_most")
    if mean is None or not 5.0 <= size_ml <= 10_000.0:
        return
    least, most = mean if least is None else least, mean if most is None else most
    allowed, is_us = fill_allowed_pct(size_ml, view.site())
    low, high = 100.0 - allowed, 100.0 + allowed if is_us else None
    place = "US" if is_us else "EU"
    if least < low - 1e-6:
        said = message("fill_off-least", found=figure(least, 1, "pct"), least=figure(low, 1, "pct"), place=place)
        at = _fill_field(read, "fill_least")
        yield Query("fill_off", "ask", at, said, (Expected(at, low, mean, mean),) if mean >= low else ())
    elif high is not None and most > high + 1e-6:
        said = message("fill_off-most", found=figure(most, 1, "pct"), most=figure(high, 1, "pct"), place=place)
        at = _fill_field(read, "fill_most")
        yield Query("fill_off", "ask", at, said, (Expected(at, mean, high, mean),) if mean <= high else ())
    elif not is_us and mean < 100.0 - limit("fill_mean_pct", view) - 1e-6:
        yield Query("fill_mean", "note", "fill_found", message("fill_mean", mean=figure(mean, 1, "pct")))


def fill_allowed_pct(size_ml: float, site: SiteSettings) -> tuple[float, bool]:
    """Return the allowed error of a bottle of this size [%], and whether US law applies.

    US law bounds both sides; elsewhere only too little is bounded.
    """
    is_us = place_of(site) == "US"
    return (us_fill_allowed_pct(size_ml) if is_us else eu_fill_allowed_pct(size_ml)), is_us


def _fill_field(read: Read, name: str) -> str:
    return name if name in read.values else "fill_found"


def case_count(read: Read, view: View) -> Iterable[Query]:
    """Case numbers against good bottles, where both ends are plain numbers."""
    per_case = _count(read, "per_case")
    good = _count(read, "filled") - _count(read, "broken") - _count(read, "reworked")
    first, last = _number(read.text("case_from")), _number(read.text("case_to"))
    if not per_case or first is None or last is None or last < first:
        return
    cases = last - first + 1
    rest = good - _count(read, "library") - cases * per_case
    most = per_case - 1 if read.text("odd_case") else 0
    if not 0 <= rest <= most:
        library = _count(read, "library")
        said = message(
            "case_count", cases=cases, per_case=per_case, in_cases=cases * per_case, library=library,
            together=cases * per_case + library, good=good, off=abs(rest), side="many" if rest > 0 else "few",
        )
        yield Query("case_count", "ask", "case_to", said, tuple(_with_cases(read, good, cases, rest, most)))


def _with_cases(read: Read, good: int, cases: int, rest: int, most: int) -> Iterable[Expected]:
    """Yield what each count would be if the case numbers are right. rest: bottles in no case; most: in an odd case"""
    for name, sign in (("filled", -1), ("broken", 1), ("reworked", 1), ("library", 1)):
        if name in read.values:
            low, high = sorted((_count(read, name) + sign * rest, _count(read, name) + sign * (rest - most)))
            yield Expected(name, float(low), float(high))
    each = (good - _count(read, "library")) / cases
    if each == round(each):
        yield Expected("per_case", each, each)


def _number(text: str | None) -> int | None:
    """Return the digits at the end of a case number, "K26-0159" or "159"; None without any."""
    digits = ""
    for char in reversed(str(text or "").strip()[:40]):
        if not (char.isascii() and char.isdigit()):
            break
        digits = char + digits
    return int(digits[-9:]) if digits else None
