"""Hits in words, each with the page that it leads to."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from flask import url_for

import webapp.kinds
from webapp.access import current
from webapp.book.search.finding import Found, Hit, Said
from webapp.book.search.folding import Part, Wanted, cut_out, mark_hits
from webapp.desk.blueprint import local_time
from webapp.kinds.spec import Kind
from webapp.words.desk import Later, say
from webapp.words.kindwords import kind_in
from webapp.words.language import language

# The words over each group, in the order of the page.
GROUPS = {
    "vessel": Later("desk-common-vessels"), "fill": Later("desk-search-batches_and_lots"),
    "run": Later("desk-common-runs"), "bottling": Later("desk-search-bottlings"),
    "load": Later("desk-search-fruit_taken_in"), "paper": Later("desk-search-papers"),
    "party": Later("desk-common-customers_and_growers"), "person": Later("desk-common-people"),
    "instrument": Later("desk-common-instruments"), "entry": Later("desk-search-entries_and_remarks"),
}
CONTEXT_MOST, CONTEXT_TYPING = 160, 48  # characters of one line of context: on the page, under the box
_STATES = {
    "struck": "struck", "amended": Later("desk-search-put_right_since"),
    "stopped": Later("desk-search-waits_for_an_answer"),
}
_NOT_SAID = ("at", "until", "retired", "kind", "mark")


@dataclass(frozen=True, slots=True)
class Shown:
    """One line: where it leads, its name and its context in parts, and what stands at the end. `mark`: of a vessel."""

    href: str
    name: list[Part]
    context: list[Part]
    end: str
    state: str = ""
    mark: str = ""


@dataclass(frozen=True, slots=True)
class Group:
    """The lines of a sort; `has_more`: there are more than these."""

    sort: str
    words: str
    lines: list[Shown]
    has_more: bool


def list_groups(found: Found, wanted: Wanted, context_most: int = CONTEXT_MOST) -> list[Group]:
    """Return the hits by sort, in the order of GROUPS, each with so many characters of context."""
    lines = {sort: [_shown(hit, wanted, context_most) for hit in hits] for sort, hits in found.hits.items()}
    lines["entry"] = [_said(one, wanted, context_most) for one in found.said]
    return [Group(sort, words, lines[sort], sort in found.more) for sort, words in GROUPS.items() if lines.get(sort)]


def _shown(hit: Hit, wanted: Wanted, most: int) -> Shown:
    context = cut_out(", ".join(_context(hit)), wanted.beginnings, most)
    return Shown(
        _address(hit), mark_hits(hit.name, wanted.beginnings), mark_hits(context, wanted.beginnings), _end(hit),
        _STATES.get(hit.state, ""), hit.key if hit.sort == "vessel" else "",
    )


def _kind_read(name: str) -> Kind | None:
    kind = webapp.kinds.get(name)
    return kind_in(kind, language()) if kind else None


def _said(one: Said, wanted: Wanted, most: int) -> Shown:
    row = one.row
    kind = _kind_read(row["kind"])
    context = cut_out(" / ".join(one.texts), wanted.beginnings, most)
    parts = mark_hits(row["mark"], wanted.beginnings) if row["mark"] else []
    between = [Part(": " if context else "", False)] if parts else []
    name = kind.title if kind else row["kind"]
    return Shown(
        url_for("desk.entry_page", entry_id=row["id"]), [Part(name, False)],
        [*parts, *between, *mark_hits(context, wanted.beginnings)],
        say("desk-search-no", day=local_time(row['read_at'])[:10], person=row['person'], number=row['book_no']),
        _STATES.get(row["standing"] or "", ""),
    )


def _address(hit: Hit) -> str:
    if hit.sort == "vessel":
        return url_for("desk.vessel_page", mark=hit.key)
    if hit.sort in ("fill", "bottling"):
        return url_for("desk.trace_page", key=hit.key)
    if hit.sort == "run" and hit.state == "entered":
        return url_for("desk.run_page", run_id=hit.root)
    if hit.sort == "load" and hit.state == "entered":
        return url_for("desk.trace_page", key=f"load-{hit.root}")
    if hit.sort == "party":
        return url_for("desk.parties_page")
    if hit.sort == "person":
        if current.may("office"):
            return url_for("desk.person_edit", code=hit.key)
        return url_for("desk.entries_page", person=hit.key)
    if hit.sort == "instrument":
        return url_for("desk.instrument_page", instrument_id=hit.key)
    return url_for("desk.entry_page", entry_id=hit.key)


def _context(hit: Hit) -> Iterator[str]:
    """Yield what stands beside the name, in words."""
    facts = hit.facts
    mark = facts.get("mark", "")
    if hit.sort == "fill":
        yield from (text for text in (facts.get("what"), _after("lot", facts.get("lot")), _after("in", mark)) if text)
        return
    if hit.sort == "run":
        yield _after("on", mark)
        return
    kind = _kind_read(facts.get("kind", ""))
    if kind:
        yield kind.title
    before = ""
    for name, text in facts.items():
        if name in _NOT_SAID or name == "case_to" or text.casefold() in before:
            continue
        before += f"{text.casefold()}, "  # a title often says the wood already
        if name == "case_from":
            yield _after("cases", text) + (
                f" {say('desk-search-to2', last=facts['case_to'])}" if facts.get("case_to") else ""
            )
        elif name in ("batch", "lot", "lot_mark"):
            yield _after(name.replace("_", " "), text)
        else:
            yield text
    if mark:
        yield _after("from" if hit.sort == "bottling" else "into" if hit.sort == "load" else "at", mark)


def _after(word: str, text: str | None) -> str:
    return f"{word} {text}" if text else ""


def _end(hit: Hit) -> str:
    facts = hit.facts
    if facts.get("retired"):
        return say("desk-search-out_of_use")
    since = local_time(facts.get("at"))[:10]
    if hit.sort == "fill":
        return say("desk-search-to", since=since, until=local_time(facts['until'])[:10]) if facts.get("until") else say(
            "desk-search-since", since=since,
        )
    return since
