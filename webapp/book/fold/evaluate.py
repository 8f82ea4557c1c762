"""One entry against the fold before it: what it reads as, what is asked, what it does. Pure but for the log line."""

from __future__ import annotations

import logging
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

import webapp.kinds
from webapp.book import checks
from webapp.book.before.corrections import corrections_for
from webapp.book.before.reading_context import context_for
from webapp.book.before.view import Query, View
from webapp.book.checks.clock import device_state
from webapp.book.checks.moves import emptied
from webapp.book.checks.neat import round_state
from webapp.book.checks.short import shortfalls
from webapp.book.fold.families import AFTER_STRIKE, Plan
from webapp.book.fold.registry_rows import Known
from webapp.book.record.upcast import stored_mark
from webapp.kinds.read import Read, read_entry
from webapp.kinds.spec import NOTHING, Effect, Kind
from webapp.kinds.stock import unbalanced

_log = logging.getLogger("cellarslate.book")
FAULT = "not_worked_out"
EMPTY_CODES = {"source_empty", "vessel_empty", "emptied_vessel", "fraction_twice", "move_gain"}


@dataclass(slots=True)
class Outcome:
    """What came of one entry: questions with their answers, new states and flows, and every key it touched."""

    standing: str  # entered, stopped, struck
    questions: list[tuple[str, Query, str]] = field(default_factory=list)  # name, query, id of the answer
    effect: Effect = NOTHING
    keys: frozenset[str] = frozenset()


def evaluate(plan: Plan, view: View, known: Known) -> Outcome:
    """Return what this entry comes to. A fault of ours in it is a stop query, never the loss of its batch."""
    if plan.struck:
        return Outcome("struck", _name(plan, _after_strike(plan)))
    kind = webapp.kinds.get(plan.entry["kind"])
    try:
        if kind is None:
            raise LookupError(plan.entry["kind"])
        read, queries = ask(kind, plan.entry, view, known)
        asked = [*_clash(plan), *queries]
        questions = _name(plan, asked)
        stopped = any(query.weight == "stop" and not answer for _, query, answer in questions)
        view.answered = frozenset(query.code for _, query, answer in questions if answer)
        effect = kind.effect(read, view) if kind.effect and not stopped else NOTHING
        if wrong := unbalanced(effect, view):
            raise ArithmeticError(f"stock changed by other than flows: {', '.join(wrong)}")
        spoken = {query.code for _, query, _ in questions}
        if not spoken & EMPTY_CODES:  # a check has said already that nothing is there
            questions = _name(plan, [*asked, *shortfalls(effect, view)])
        phone = device_state(read, view)  # however its figures are: this is how its phone's clock stood
        if phone:
            effect = Effect({**effect.states, **{key: dict(state) for key, state in phone.items()}}, effect.flows)
        effect = with_notes(effect, read, view)
    except Exception:
        _log.exception("entry %s could not be worked out", plan.id)
        words = (
            "The book could not work this entry out. It is kept as it came; report this to whoever keeps the program."
        )
        view.reads.add(f"v:{plan.entry['mark']}")
        return Outcome("stopped", _name(plan, [Query(FAULT, "stop", "", words)]), NOTHING, frozenset(view.reads))
    keys = view.reads | set(effect.states)
    if plan.entry["mark"]:
        keys.add(f"v:{plan.entry['mark']}")
    return Outcome("stopped" if stopped else "entered", questions, effect, frozenset(keys))


def with_notes(effect: Effect, read: Read, view: View) -> Effect:
    """Return the effect with what checks keep of it beside: which entry emptied a vessel, and a person's round."""
    return Effect({**effect.states, **emptied(effect, read, view), **round_state(read, view)}, effect.flows)


def ask(kind: Kind, entry: Mapping[str, Any], view: View, known: Known) -> tuple[Read, list[Query]]:
    """Return the entry as read, and every question to it."""
    mark = entry["mark"]
    row = view.vessel(mark) if mark else None
    state = view.state(mark) if mark else None
    context = context_for(kind, row, state, known.limits())
    context["corrections"] = corrections_for(kind, entry, view.instrument, view.get)
    read = read_entry(kind, entry, context)
    # A body that intake would refuse today may stand in an old book: it is asked about, not lost.
    unreadable = [Query(p.code, "stop", p.field, p.words, p.suggestions) for p in read.problems if p.weight == "refuse"]
    return read, [*unreadable, *_strangers(read, view, row), *checks.questions(read, view)]


def _strangers(read: Read, view: View, row: Mapping[str, Any] | None) -> Iterable[Query]:
    """Ask about what the registry does not know: the vessel, a vessel named in a field, the person."""
    if read.mark and row is None:
        yield _unknown_vessel(read.mark, "")
    elif row and read.kind.vessels and row["sort"] not in read.kind.vessels:
        words = f"{row['name']} is a {row['sort']}; {read.kind.title.lower()} is not logged there. Right vessel?"
        yield Query("wrong_sort", "ask", "", words)
    for spec in read.kind.fields:
        other = read.values.get(spec.name) if spec.sort == "mark" else None
        if not other:
            continue
        named = view.vessel(stored_mark(other) or other)
        if named is None:
            yield _unknown_vessel(other, spec.name)
        elif spec.vessels and named["sort"] not in spec.vessels:
            words = f"{spec.label}: {named['name']} is a {named['sort']}. Right vessel?"
            yield Query(f"wrong_sort_{spec.name}", "ask", spec.name, words)
    code = read.entry.get("person") or ""
    if view.person(code) is None:
        yield Query(
            "unknown_person", "ask", "", f"The book knows nobody with the code {code[:20]}. Add them, or amend."
        )


def _unknown_vessel(mark: str, field_name: str) -> Query:
    words = f"No vessel {mark[:20]} is in the book. Add it, or amend the entry."
    return Query(f"unknown_vessel_{field_name}" if field_name else "unknown_vessel", "stop", field_name, words)


def _clash(plan: Plan) -> list[Query]:
    if not plan.clashed:
        return []
    words = (
        "Another body came under the id of this entry and was put aside. Compare the two; amend this or let it stand."
    )
    return [Query("clash", "ask", "", words)]


def _after_strike(plan: Plan) -> list[Query]:
    if not plan.amended_after_strike:
        return []
    words = "It amends an entry that was struck before. It counts for nothing unless you say that it stands."
    return [Query(AFTER_STRIKE, "ask", "", words)]


def _name(plan: Plan, queries: Iterable[Query]) -> list[tuple[str, Query, str]]:
    """Give each question a name of its own within the entry: its code, with the field where a code comes twice."""
    named: dict[str, tuple[str, Query, str]] = {}
    for query in queries:
        by_field = query.code in checks.RANGE_CODES or query.code in named
        name = f"{query.code}:{query.field}" if by_field and query.field else query.code
        if name not in named:
            named[name] = (name, query, plan.answer_to(name, query.code))
    return list(named.values())
