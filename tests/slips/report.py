"""What was measured, as tables for docs/checks.md: by sort of slip, by figure, by check."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Sequence
from functools import partial
from itertools import pairwise

from tests.slips.judge import Clean, Found
from tests.slips.slips import SORTS
from webapp.book.asked import asked_by
from webapp.book.checks import CHECKS

BLIND = (
    "What cannot be seen, and why: figures that nothing else in the book speaks of (rinse water, scores, rot, how many "
    "samples, the temperature of fruit, of a cask, and of spirit that is typed as corrected); a load of fruit, which "
    "may be large or small, with its tare, its sugar and its kind, until the ferment is closed; a figure off by less "
    "than instruments and hands are; the clock time of a single entry; and a slip in the first of two figures that "
    "must agree, until the second comes: what is taken into the book as opening stock, the first load of a fermenter, "
    "a fill, the first tank or account that a spirit goes to. A step that nobody wrote is seen at once where the next "
    "one needs it (a ferment closed, water measured, a tank gauged for bottling, parts of a run in the order of the "
    "house), else when its vessel is gauged: a cask never taken in, a fill, a top-up; a cut is missed by the one after "
    "it, the end of a run by its tails. A vessel of the same sort and size that holds nearly the same is that vessel "
    "as far as figures go. A figure that is left out is asked for; which it was nobody can offer, nor what was meant "
    "where a whole line was copied."
)
WORTH_L = 1.0
LEAST_CASES = 5  # fewer say nothing

Test = Callable[[Found], object]


def share(found: Sequence[Found], test: Test) -> float:
    """Return the share of slips for which a test holds. [%], 0 where there are none"""
    return 100.0 * sum(1 for one in found if test(one)) / len(found) if found else 0.0


def weighed(found: Sequence[Found], test: Test) -> float:
    """Return the same share, each slip weighed by the pure alcohol it moves. [%]"""
    whole = sum(one.slip.stake_l for one in found)
    return 100.0 * sum(one.slip.stake_l for one in found if test(one)) / whole if whole else 0.0


def at_once(one: Found) -> object:
    """Whether the book asked when the entry came."""
    return one.at_once


def by_gauge(one: Found) -> object:
    """Whether it asked by the next gauge of a vessel concerned."""
    return one.at_once or one.by_gauge


def at_all(one: Found) -> object:
    """Whether it asked within the entries that followed."""
    return one.all_codes


def told(found: Iterable[Found]) -> list[Found]:
    """Return the slips of people, without figures moved on purpose."""
    return [one for one in found if one.slip.sort != "step"]


def visible(found: Iterable[Found]) -> list[Found]:
    """Return those that are larger than what instruments and hands do by themselves."""
    return [one for one in told(found) if not one.slip.is_small]


def beyond(found: Iterable[Found]) -> list[Found]:
    """Return those that move what follows from them by more than the combined uncertainty of its instruments, k = 2."""
    return [one for one in visible(found) if not one.slip.is_within]


def worth(found: Iterable[Found]) -> list[Found]:
    """Return those that move more pure alcohol than a litre."""
    return [one for one in told(found) if one.slip.stake_l > WORTH_L]


def with_right_figure(found: Iterable[Found]) -> list[Found]:
    """Return those that were asked about at once and where one figure was meant instead."""
    return [one for one in visible(found) if one.at_once and one.slip.right]


def false_asks(clean: Iterable[Clean]) -> float:
    """Return the questions to entries that were right, for each 100 of them."""
    seasons = list(clean)
    return 100.0 * sum(len(one.asks) for one in seasons) / max(sum(one.entries for one in seasons), 1)


def page(found: Sequence[Found], clean: Sequence[Clean], seeds: str) -> str:
    """Return what was measured as Markdown."""
    false = Counter(name.partition(":")[0] for one in clean for name in one.asks)
    usual = ", ".join(f"`{name}` {many}" for name, many in false.most_common(6)) or "none"
    parts = [
        f"{len(told(found))} slips in {len(clean)} seasons of {sum(one.entries for one in clean)} entries ({seeds}). "
        f"False asks: {false_asks(clean):.2f} for each 100 entries that were right ({usual}).", "",
        *_by_sort(found), "", *_by_figure(found), "", *_by_check(found), "",
    ]
    return "\n".join(parts)


def short(found: Sequence[Found], clean: Sequence[Clean], seeds: str) -> str:
    """Return the sums of what was measured, in one paragraph."""
    some, dear, figures, larger = visible(found), worth(visible(found)), with_right_figure(found), beyond(found)
    offered = share(figures, lambda one: one.is_offered)
    return (
        f"{len(told(found))} slips in {len(clean)} seasons of {sum(one.entries for one in clean)} entries ({seeds}): "
        f"{share(some, at_once):.0f} % asked about at once, {share(some, at_all):.0f} % at all, "
        f"{weighed(some, at_all):.0f} % by litres; of those worth more than 1 L {share(dear, by_gauge):.0f} % by the "
        f"next gauge; the right figure offered in {offered:.0f} % of {len(figures)}; "
        f"false asks {false_asks(clean):.2f} for each 100 entries. Of the {len(larger)} that are larger than the "
        f"combined uncertainty (k = 2) {share(larger, at_once):.0f} % at once, and of those worth more than 1 L "
        f"{share(worth(larger), by_gauge):.0f} % by the next gauge."
    )


def _by_sort(found: Sequence[Found]) -> Iterable[str]:
    yield ("| slip | as in | number | at once, % | by the next gauge, % | at all, % | worth > 1 L: number "
           "| by the next gauge, % | at all by litres, % | right figure offered, % |")
    yield "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |"
    groups = [(sort, words, [one for one in visible(found) if one.slip.sort == sort])
              for sort, (_, words, _) in SORTS.items()]
    for sort, words, some in [*groups, ("all", "", visible(found))]:
        dear, figures = worth(some), with_right_figure(some)
        offered = f"{share(figures, lambda one: one.is_offered):.0f} of {len(figures)}" if figures else ""
        yield (f"| {sort} | {words} | {len(some)} | {share(some, at_once):.0f} | {share(some, by_gauge):.0f} "
               f"| {share(some, at_all):.0f} | {len(dear)} | {share(dear, by_gauge):.0f} "
               f"| {weighed(some, at_all):.0f} | {offered} |")
    some = beyond(found)
    yield (f"| larger than the combined uncertainty (k = 2) | | {len(some)} | {share(some, at_once):.0f} "
           f"| {share(some, by_gauge):.0f} | {share(some, at_all):.0f} | {len(worth(some))} "
           f"| {share(worth(some), by_gauge):.0f} | {weighed(some, at_all):.0f} | |")
    small = [one for one in told(found) if one.slip.is_small]
    yield (f"| no larger than instruments and hands do | | {len(small)} | {share(small, at_once):.0f} "
           f"| {share(small, by_gauge):.0f} | {share(small, at_all):.0f} | | | | |")


def _half(some: Iterable[Found], test: Test) -> tuple[float | None, float]:
    """Return the smallest step from which on half are seen, and the largest share seen at any step. [%]"""
    by_step: dict[float, list[Found]] = defaultdict(list)
    for one in some:
        by_step[one.step].append(one)
    steps = sorted(by_step)
    # Each step with the one above it: there are not many cases of one step.
    groups = [(step, by_step[step] + by_step.get(above, [])) for step, above in pairwise([*steps, 0.0])]
    shares = [(step, share(group, test)) for step, group in groups if len(group) >= LEAST_CASES]
    half = None
    for step, seen in reversed(shares):
        if seen < 50:
            break
        half = step
    return half, max((seen for _, seen in shares), default=0.0)


def _steps(found: Sequence[Found]) -> dict[tuple[str, str], list[Found]]:
    groups: dict[tuple[str, str], list[Found]] = defaultdict(list)
    for one in found:
        if one.slip.sort == "step" and one.slip.said:
            groups[one.slip.said.entry["kind"], one.slip.field].append(one)
    return groups


def _step_said(step: float, some: Sequence[Found]) -> str:
    unit = some[0].slip.right["unit"] if some[0].slip.right else ""
    if unit in ("pct_vol", "proof", "pct_glass"):
        return f"{step:g} % vol"
    if unit == "proof_glass":
        return f"{step:g} proof"
    if unit in ("degC", "degF"):
        return f"{step:g} °C"
    if unit in ("SG", "degOe", "degP"):
        return f"{step:g} SG"
    return f"{step * 100:g} %"


def _by_figure(found: Sequence[Found]) -> Iterable[str]:
    yield "How far a figure must be off until half of such entries are asked about at once:"
    yield ""
    yield "| kind | field: from |"
    yield "| --- | --- |"
    lines: dict[str, list[str]] = defaultdict(list)
    for (kind, name), some in sorted(_steps(found).items()):
        half, _ = _half(some, at_once)
        if half is not None:
            lines[kind].append(f"{name} {_step_said(half, some)}")
    for kind, fields in lines.items():
        yield f"| `{kind}` | {'; '.join(fields)} |"


def _asked_by(code: str, one: Found) -> bool:
    return code in one.at_once


def _by_check(found: Sequence[Found]) -> Iterable[str]:
    yield "What each question sees: slips that it asked about, and from where on it asks about half of one figure."
    yield ""
    yield "| query | slips | where it sees best | half from |"
    yield "| --- | --- | --- | --- |"
    many = Counter(code for one in told(found) for code in one.all_codes | one.notes)
    best: dict[str, tuple[float, str, str]] = {}
    for (kind, name), some in _steps(found).items():
        for code in {code for one in some for code in one.at_once}:
            half, most = _half(some, partial(_asked_by, code))
            if half is not None and most > best.get(code, (0.0, "", ""))[0]:
                best[code] = (most, f"{kind}.{name}", _step_said(half, some))
    for code, number in many.most_common():
        _, where, half_said = best.get(code, (0.0, "", ""))
        yield f"| `{code}` | {number} | {where} | {half_said} |"
    yield ""
    yield BLIND
    silent = sorted(name for name, check in CHECKS.items() if not asked_by(check).weights.keys() & many.keys())
    yield ""
    yield f"Checks whose questions came up for no slip: {', '.join(f'`{name}`' for name in silent) or 'none'}."
