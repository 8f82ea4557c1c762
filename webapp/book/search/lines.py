"""What can be found, and under which words: one line for each thing that has a name, and the remarks of an entry.

Whatever is named here can be found by whoever may open the page that shows it (`ONLY_FOR`). What an entry's page does
not show to everybody is named in `LEFT_OUT`, and is found by nobody.
"""

from __future__ import annotations

import zlib
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from functools import cache

import webapp.kinds
from webapp.book.search.folding import index_words, squash
from webapp.kinds.entry import Entry

# In the order of the groups on the page; the number of each stands at the head of its ids.
SORTS = ("vessel", "fill", "run", "bottling", "load", "paper", "party", "person", "instrument")
ONLY_FOR = {"party": "office"}  # access of the page that shows it, where that is more than the floor's
# Fields whose text is no word for people, or that are found as something else already: ids, scores, plans as data.
LEFT_OUT = {
    ("answer", "entry"), ("answer", "query"), ("instrument_check", "instrument"), ("vat_plan", "wishes"),
    ("tasting_note", "house_scores"), ("tasting_session", "seal"), ("tasting_session", "glasses"),
    ("tasting_result", "key"), ("tasting_answer", "picked"), ("tasting_answer", "order"),
}
# The name of a paper is the first of these that was typed.
PAPERS = ("document", "serial", "papers", "permit_no")
# What the line of a fill or a bottling says already of the entry that made it.
_SAID_BY_FILLS = {
    "cask_fill": {"lot", "what"}, "gauge": {"what"}, "distilled_gauge": {"what"}, "bottling_gauge": {"batch"},
    "bottling_close": {"case_from", "case_to", "odd_case", "lot_mark"},
}
Facts = dict[str, str]
_PLACES = {character: n for n, character in enumerate("/0123456789abcdefghijklmnopqrstuvwxyz")}
ID_BITS, TIE_BITS = 54, 20
_ORDER_MOST = (1 << (ID_BITS - TIE_BITS)) - 1


@dataclass(frozen=True, slots=True)
class Line:
    """A thing that can be found: what it is called, what is said of it, and its words. `order`: higher comes first."""

    sort: str
    key: str
    name: str
    facts: Facts
    words: str
    order: int

    @property
    def id(self) -> int:
        """Where it stands among all: by sort, then by order. Another line may come to the same."""
        tie = zlib.crc32(self.key.encode()) & ((1 << TIE_BITS) - 1)
        return first_id(self.sort) + (self.order << TIE_BITS) + tie


def first_id(sort: str) -> int:
    """Return the lowest id of a sort."""
    return (SORTS.index(sort) + 1) << ID_BITS


def last_id(sort: str) -> int:
    """Return the highest id of a sort."""
    return first_id(sort) + (1 << ID_BITS) - 1


def make_line(sort: str, key: str, names: tuple[str, ...], facts: Mapping[str, object], order: int) -> Line | None:
    """Return a line called by the first of its names; None where it has none. Facts that are empty are left out."""
    said = {name: str(value) for name, value in facts.items() if value not in (None, "", 0)}
    called = [name for name in names if name]
    if not called:
        return None
    shown = [text for name, text in said.items() if name not in ("at", "until", "retired", "kind")]
    return Line(sort, key, called[0], said, index_words(*called, *shown), order)


def order_of_time(stamp: str) -> int:
    """Return the order of a time: the later, the higher. A time that cannot be read comes last."""
    with suppress(ValueError, OverflowError):
        return max(0, min(int(datetime.fromisoformat(stamp).timestamp()), _ORDER_MOST))
    return 0


def order_of_name(name: str) -> int:
    """Return the order of a name: the earlier in the alphabet, the higher."""
    code = 0
    for character in squash(name)[:5].ljust(5, "/"):  # the slash stands before the digits
        code = code << 6 | _PLACES.get(character, 63)
    return _ORDER_MOST - code


def line_of_entry(row_id: str, entry: Entry) -> Line | None:
    """Return the thing that an entry names: a run, a load of fruit or a paper; None where it names nothing."""
    kind, mark, said = entry["kind"], entry.get("mark") or "", _texts(entry)
    order = order_of_time(entry["read_at"])
    facts: dict[str, object] = {"mark": mark, "at": entry["read_at"]}
    if kind == "charge":
        return make_line("run", row_id, (said.get("run_name", ""),), facts, order)
    if kind == "fruit_intake":
        facts |= {"material": _raw(entry, "material"), "variety": said.get("variety"), "batch": said.get("batch")}
        return make_line("load", row_id, (said.get("grower_lot", ""), said.get("batch", "")), facts, order)
    if paper := next((said[name] for name in PAPERS if said.get(name)), ""):
        rest = {name: text for name, text in said.items() if text != paper}
        return make_line("paper", row_id, (paper,), {**rest, **facts, "kind": kind}, order)
    return None


def remarks_of(entry: Entry, line: Line | None) -> list[str]:
    """Return the free words of an entry, its remark first; `line`: the thing it names, whose words are found there."""
    kind = entry["kind"]
    texts = [entry.get("remark") or "", entry.get("reason") or ""]
    if line is None or line.sort != "paper":
        said = _SAID_BY_FILLS.get(kind, set()) | ({"run_name", "grower_lot", "batch", "variety"} if line else set())
        texts += [text for name, text in _texts(entry).items() if name not in said]
    return [text for text in texts if text]


def may_have_words(kind: str, body: str) -> bool:
    """Say whether an entry may have a word to be found by, without reading it as JSON.

    The body is canonical (record/log.py): its keys are sorted and no space stands between them.
    """
    if text_fields(kind):
        return True
    is_silent = '"remark":""' in body or '"remark":' not in body
    return not (is_silent and ('"reason":""' in body or '"reason":' not in body))


@cache
def text_fields(kind: str) -> tuple[str, ...]:
    """Return the names of the fields of a kind whose text can be found; none for a kind that is not known."""
    spec = webapp.kinds.get(kind)
    fields = spec.fields if spec else ()
    return tuple(field.name for field in fields if field.sort == "text" and (kind, field.name) not in LEFT_OUT)


def _texts(entry: Entry) -> dict[str, str]:
    return {name: text for name in text_fields(entry["kind"]) if (text := _raw(entry, name))}


def _raw(entry: Entry, name: str) -> str:
    """Return the text typed in a field; empty where there is none. A body of before a check may hold anything."""
    value = entry["values"].get(name)
    raw: object = value.get("raw") if isinstance(value, dict) else None
    return raw.strip() if isinstance(raw, str) else ""
