"""One entry against the fold before it: what it reads as, what is asked, what it does. Pure but for the log line."""

from __future__ import annotations

import logging
from collections.abc import Iterable
from dataclasses import dataclass, field, replace

import webapp.kinds
from webapp.book import checks
from webapp.book.before.corrections import corrections_for
from webapp.book.before.limits import scopes_of
from webapp.book.before.reading_context import context_for
from webapp.book.before.view import BookView, Query
from webapp.book.checks.clock import device_state
from webapp.book.checks.moves import emptied
from webapp.book.checks.neat import round_state
from webapp.book.checks.short import shortfalls
from webapp.book.fold.families import AFTER_STRIKE, Plan
from webapp.book.fold.registry_rows import Known
from webapp.book.record.upcast import stored_mark
from webapp.kinds.entry import Entry
from webapp.kinds.key import Key, vessel_key
from webapp.kinds.meant import BY_RANGE
from webapp.kinds.message import Declared, Message, message
from webapp.kinds.read import Read, label, read_entry
from webapp.kinds.rows import VesselRow
from webapp.kinds.spec import NOTHING, Effect, Kind
from webapp.kinds.stock import list_unbalanced
from webapp.kinds.view import View

_log = logging.getLogger("cellarslate.book")
FAULT = "not_worked_out"
EMPTY_CODES = {"source_empty", "vessel_empty", "emptied_vessel", "fraction_twice", "move_gain"}


@dataclass(slots=True)
class Outcome:
    """What came of one entry: questions with their answers, new states and flows, and every key it touched."""

    standing: str  # entered, stopped, struck
    questions: list[tuple[str, Query, str]] = field(default_factory=list)  # name, query, id of the answer
    effect: Effect = NOTHING
    keys: frozenset[Key] = frozenset()


def evaluate(plan: Plan, view: BookView, known: Known) -> Outcome:
    """Return the outcome of this entry. A fault of ours in it becomes a stop query, and never loses its batch."""
    if plan.struck:
        return Outcome("struck", _name_questions(plan, _after_strike(plan)))
    kind = webapp.kinds.get(plan.entry["kind"])
    try:
        if kind is None:
            raise LookupError(plan.entry["kind"])
        read = read_at_its_place(kind, plan.entry, view, known)
        view = view.within(scopes_of(read, view))
        asked = [*_ask_about_clash(plan), *ask_questions(read, view)]
        questions = _name_questions(plan, asked)
        stopped = any(query.weight == "stop" and not answer for _, query, answer in questions)
        answered = frozenset(query.code for _, query, answer in questions if answer)
        read = replace(read, answered=answered) if answered else read
        effect = kind.effect(read, view) if kind.effect and not stopped else NOTHING
        if wrong := list_unbalanced(effect, view):
            raise ArithmeticError(f"stock changed by other than flows: {', '.join(wrong)}")
        spoken = {query.code for _, query, _ in questions}
        if not spoken & EMPTY_CODES:  # a check has said already that nothing is there
            questions = _name_questions(plan, [*asked, *shortfalls(effect, read, view)])
        phone = device_state(read, view)  # however its figures are: this is how its phone's clock stood
        if phone:
            effect = Effect({**effect.states, **phone}, effect.flows)
        effect = with_notes(effect, read, view)
    except Exception:
        _log.exception("entry %s could not be worked out", plan.id)
        fault = Query(FAULT, "stop", "", message(FAULT))
        keys = view.reads | {vessel_key(plan.entry["mark"])}
        return Outcome("stopped", _name_questions(plan, [fault]), NOTHING, frozenset(keys))
    keys = view.reads | set(effect.states)
    if plan.entry["mark"]:
        keys.add(vessel_key(plan.entry['mark']))
    return Outcome("stopped" if stopped else "entered", questions, effect, frozenset(keys))


def with_notes(effect: Effect, read: Read, view: View) -> Effect:
    """Return the effect with what checks keep of it beside: which entry emptied a vessel, and a person's round."""
    return Effect({**effect.states, **emptied(effect, read, view), **round_state(read, view)}, effect.flows)


def read_at_its_place(kind: Kind, entry: Entry, view: View, known: Known) -> Read:
    """Return the entry as read with what the book knew of its vessel and its instruments before it."""
    mark = entry["mark"]
    row = view.vessel(mark) if mark else None
    state = view.state(mark) if mark else None
    context = context_for(kind, row, state, known.limits())
    context["corrections"] = corrections_for(kind, entry, view.instrument, view.get)
    return read_entry(kind, entry, context)


def ask_questions(read: Read, view: View) -> list[Query]:
    """Return every question to an entry."""
    # A body that intake would refuse today may stand in an old book: it is asked about, not lost.
    refused = [problem for problem in read.problems if problem.weight == "refuse"]
    unreadable = [Query(p.code, "stop", p.field, p.message) for p in refused]
    row = view.vessel(read.mark) if read.mark else None
    return [*unreadable, *_ask_about_strangers(read, view, row), *checks.questions(read, view)]


def _ask_about_strangers(read: Read, view: View, row: VesselRow | None) -> Iterable[Query]:
    """Ask about what the registry does not know: the vessel, a vessel named in a field, the person."""
    if read.mark and row is None:
        yield _unknown_vessel(read.mark, "")
    elif row and read.kind.vessels and row["sort"] not in read.kind.vessels:
        title = Declared(("title", read.kind.name))
        said = message("wrong_sort", vessel=row["name"], sort=vessel_sort(row["sort"]), kind=title)
        yield Query("wrong_sort", "ask", "", said)
    for spec in read.kind.fields:
        other = read.text(spec.name) if spec.sort == "mark" else None
        if not other:
            continue
        named = view.vessel(stored_mark(other) or other)
        if named is None:
            yield _unknown_vessel(other, spec.name)
        elif spec.vessels and named["sort"] not in spec.vessels:
            sort = vessel_sort(named["sort"])
            said = message("wrong_sort-field", label=label(read.kind, spec), vessel=named["name"], sort=sort)
            yield Query(f"wrong_sort_{spec.name}", "ask", spec.name, said)
    code = read.entry.get("person") or ""
    if view.person(code) is None:
        yield Query("unknown_person", "ask", "", message("unknown_person", code=code[:20]))


def vessel_sort(sort: str) -> Message:
    """Return the word for a sort of vessel, as a parameter of a message."""
    return message(f"sort-{sort}")


def _unknown_vessel(mark: str, field_name: str) -> Query:
    code = f"unknown_vessel_{field_name}" if field_name else "unknown_vessel"
    return Query(code, "stop", field_name, message("unknown_vessel", mark=mark[:20]))


def _ask_about_clash(plan: Plan) -> list[Query]:
    return [Query("clash", "ask", "", message("clash"))] if plan.clashed else []


def _after_strike(plan: Plan) -> list[Query]:
    return [Query(AFTER_STRIKE, "ask", "", message(AFTER_STRIKE))] if plan.amended_after_strike else []


def _name_questions(plan: Plan, queries: Iterable[Query]) -> list[tuple[str, Query, str]]:
    """Give each question a name of its own within the entry: its code, with the field where a code comes twice."""
    named: dict[str, tuple[str, Query, str]] = {}
    for query in queries:
        by_field = query.code in BY_RANGE or query.code in named
        name = f"{query.code}:{query.field}" if by_field and query.field else query.code
        if name not in named:
            named[name] = (name, query, plan.answer_to(name, query.code))
    return list(named.values())
