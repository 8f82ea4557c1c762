"""Checks -> docs/checks.md, the reference page. Written by `cellarslate write-docs`, checked by a test."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from types import ModuleType

import webapp.kinds
from webapp.book import handed, intake
from webapp.book.asked import Asked, asked_by, asked_in
from webapp.book.before.limits import COMMON_PRACTICE, Limit
from webapp.book.checks import ALWAYS, CHECKS, short
from webapp.book.fold import evaluate
from webapp.book.limits import ALL, BY_SUBJECT, SUBJECTS
from webapp.book.periods import notices, warnings
from webapp.book.record import soundness
from webapp.kinds import figures, read
from webapp.kinds.spec import Rule

HEAD = """# Cross-checks

Made from the checks in `webapp/book/checks/` by `cellarslate write-docs`; do not edit by hand. What a gauger compares,
what speaks up in the book, and above which limit. Every limit is a default: a distiller sets another for one vessel,
product or sort of vessel, or for the site (Desk → Settings → Limits of the checks). *Refuse*: put aside, with what
to do. *Stop*: in the book, but it moves no stock until answered. *Ask*: wants an answer. *Note*: shown.

A check sees one entry as read and the book just before it, so the same entries ask the same questions in any order of
arrival. Of checks that suggest the same slip of a figure, one speaks; where a check has a reason of its own about a
field, the plain question about its range gives way. A figure that looks swapped, slipped by a point or read in the
other scale comes with the likely one beside it, where that fits the history better. ‹Names› stand where a sentence has
figures, vessels and times.

## Of one entry by itself

Asked of every kind, on the phone and in the book. What is usual and possible for a field is its kind's
([kinds.md](kinds.md)), unless the house has set its own.
"""
ASIDE = """## What the book takes for no entry

Put aside as it came, and told to the phone. The phone keeps it until a person decides.
"""
STRANGERS = """## Of any entry in the book

What the registry does not know, what came twice, and what was taken of a vessel that did not have it.
"""
WHOLE_TIMES = """## Of a whole time

What only the figures of a quarter or a season can tell is worked out from the flows. It stands above the queries, or
beside the period, until the period is closed. These are no queries in the strict sense: no single entry is their cause,
a late entry changes the figure, and an answer would hide a figure that has since grown. Closing the period is what says
that somebody has seen them.
"""
INSTRUMENTS = """## How a reading is put right by its instrument

A reading that names its instrument is put right by the correction that was in force when it was read: the table of the
certificate (Desk → Instruments → Change), moved by what the last check before the reading found. The record keeps what
the instrument showed; the figures worked out have the correction, and the entry's page shows both. A check that comes
late, or is amended, works the readings concerned out anew. Phones have the corrections in force now, so the live figure
is the book's.
"""
MEASURED = """## How well they see

Clean seasons of random houses, told with the noise of instruments, and slips of people put into them one at a time
(`tests/slips/`): what is asked at once, when the entry comes; by the next gauge of a vessel concerned; at all, within
the entries that follow. Slips no larger than what instruments and hands do by themselves stand apart: nothing can
see them. Litres are of pure alcohol. Measured by `python -m tests --bench -s tests/slips`, which writes what
stands between the marks.
"""
BEGIN, END = "<!-- measured: begin -->", "<!-- measured: end -->"


def checks_page(before: str = "") -> str:
    """Return the reference page as Markdown text.

    before: the page as it stands, whose measured part is kept: it follows from a measurement, not from the checks.
    """
    parts = [HEAD, *_codes(asked_in(read, figures)), "", *_rules(), ""]
    for subject, files in SUBJECTS.items():
        parts += [f"## {subject}", "", *_checks(files), *_limits(BY_SUBJECT[subject])]
    parts += [STRANGERS, *_codes(asked_in(evaluate, short)), "", *_limits_named(asked_in(short))]
    parts += [ASIDE, *_codes(asked_in(intake, handed, soundness)), "", WHOLE_TIMES, *_whole_times(), "", INSTRUMENTS]
    parts += [MEASURED, BEGIN, *measured_part(before), END]
    return "\n".join(parts).rstrip() + "\n"


def measured_part(page: str) -> list[str]:
    """Return what stands between the marks of the measured part, as one text; none where there is none."""
    _, _, rest = page.partition(BEGIN + "\n")
    inside, mark, _ = rest.partition("\n" + END)
    return [inside] if mark else []


def _checks(files: Sequence[ModuleType]) -> Iterator[str]:
    for name, check in CHECKS.items():
        file = next((file for file in files if file.__name__ == check.__module__), None)
        if file is None:
            continue
        asked = asked_by(check)
        yield f"### `{name}`"
        yield ""
        yield f"{_cell(_said(check))} Asked of: {_kinds(name)}."
        yield ""
        yield from _codes(asked, getattr(file, "SOURCES", {}))
        yield ""
        yield from _limits_named(asked)


def _codes(asked: Asked, sources: dict[str, str] | None = None) -> Iterator[str]:
    """Yield the table of what is asked; without sources, where the rules are the book's own."""
    yield f"| query | weight | what it says |{'' if sources is None else ' source |'}"
    yield f"| --- | --- | --- |{'' if sources is None else ' --- |'}"
    has_source = any(ALL[name].source != COMMON_PRACTICE for name in asked.limits)
    for code, weights in asked.weights.items():
        said = " *or* ".join(_cell(one) for one in asked.sentences(code)) or "its own reason"
        line = f"| `{code}` | {', '.join(sorted(weights))} | {said} |"
        if sources is not None:
            line += f" {sources.get(code) or ('as its limits' if has_source else COMMON_PRACTICE)} |"
        yield line


def _limits_named(asked: Asked) -> Iterator[str]:
    if asked.limits:
        names = (one.name for group in BY_SUBJECT.values() for one in group if one.name in asked.limits)
        yield f"Limits: {', '.join(f'`{name}`' for name in names)}."
        yield ""


def _limits(limits: Sequence[Limit]) -> Iterator[str]:
    if not limits:
        return
    yield "| limit | default | what it means | source |"
    yield "| --- | --- | --- | --- |"
    for one in limits:
        yield f"| `{one.name}` | {one.default:g}{f' {one.unit}' if one.unit else ''} | {one.words} | {one.source} |"
    yield ""


def _rules() -> Iterator[str]:
    yield "Between the fields of an entry:"
    yield ""
    yield "| query | weight | kind | what it says |"
    yield "| --- | --- | --- | --- |"
    found: dict[Rule, list[str]] = {}
    for kind in webapp.kinds.ALL:
        for rule in kind.rules:
            found.setdefault(rule, []).append(kind.title)
    for rule, kinds in sorted(found.items(), key=lambda one: one[0].code):
        words = rule.words.replace("{", "‹").replace("}", "›")
        yield f"| `{rule.code}` | {rule.weight} | {', '.join(kinds)} | {_cell(words)} |"


def _whole_times() -> Iterator[str]:
    yield "| what | weight | what is compared | source |"
    yield "| --- | --- | --- | --- |"
    for file in (warnings, notices):
        for function in (each for each in vars(file).values() if getattr(each, "__module__", "") == file.__name__):
            if not callable(function) or isinstance(function, type):
                continue
            for code, weights in asked_by(function).weights.items() if function.__doc__ else ():
                if function.__name__ not in ("warnings", "notices", "load_whole"):
                    source = warnings.SOURCES.get(code, COMMON_PRACTICE)
                    yield f"| `{code}` | {', '.join(weights)} | {_cell(_said(function))} | {source} |"


def _kinds(check: str) -> str:
    if check in ALWAYS:
        return "every kind"
    of = [kind.title for kind in webapp.kinds.ALL if check in kind.checks]
    others = [kind.title for kind in webapp.kinds.ALL if check not in kind.checks]
    return ", ".join(of) if len(of) < len(others) else f"every kind but {', '.join(others)}"


def _said(function: Callable[..., object]) -> str:
    return " ".join((function.__doc__ or "").split())


def _cell(words: str) -> str:
    return " ".join(words.replace("|", "\\|").split())
