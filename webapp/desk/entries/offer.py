"""The likely figure of an open question beside what was typed: what is computed, and what it does to the accounts."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass

import webapp.kinds
from webapp.access import current
from webapp.book.fold.queries import Question
from webapp.book.fold.supposing import Supposing
from webapp.book.periods.postings import Posting, Postings, moved_by, postings_of
from webapp.book.record.rows import Logged
from webapp.kinds.entry import Entry
from webapp.kinds.expected import Box
from webapp.kinds.meant import with_boxes
from webapp.trade import units


@dataclass(frozen=True, slots=True)
class Offer:
    """A figure that may have been meant: its field, as it would be typed, and the entry with it."""

    number: int
    field: str
    raw: str
    unit: str
    entry: Entry

    @property
    def words(self) -> str:
        """The figure with its sign: 59.7 % vol."""
        return f"{self.raw} {units.symbol(self.unit)}".strip()

    def row(self, row: Logged) -> Logged:
        """Return the entry's row as if this had been typed."""
        return {**row, "entry": self.entry, "body": json.dumps(self.entry)}


@dataclass(frozen=True, slots=True)
class Beside:
    """A movement as typed and with the offer; None where it is not among those. [uL of pure alcohol]"""

    line: Posting
    typed_ul: int | None
    offered_ul: int | None


@dataclass(frozen=True, slots=True)
class Held:
    """What a vessel, a run or a bottling would hold after the entry. [uL of pure alcohol]"""

    name: str
    mark: str
    before_ul: int
    typed_ul: int
    offered_ul: int


@dataclass(frozen=True, slots=True)
class Accounts:
    """Both outcomes, line by line; `is_stopped` where the offer would be stopped too."""

    lines: list[Beside]
    held: list[Held]
    is_stopped: bool


def find_offers(entry: Entry, asked: Sequence[Question], kind_name: str) -> list[Offer]:
    """Return the figures that the open questions to an entry offer, each once, those of the heaviest question first."""
    kind = webapp.kinds.get(kind_name)
    fields = {spec.name for spec in kind.fields} if kind else set()
    found: dict[tuple[str, str, str], Offer] = {}
    for question in asked:
        if question["answer"]:
            continue
        for one in question.get("suggestions", []):
            said = one["field"], one["raw"], one["unit"]
            if one["field"] in fields and said not in found:
                boxes = Box(*said), *(Box(**box) for box in one.get("also", ()))
                found[said] = Offer(len(found), *said, with_boxes(entry, boxes))
    return list(found.values())


def accounts_beside(row: Logged, asked: Sequence[Question], offer: Offer, typed: Postings) -> Accounts:
    """Return the effects of the entry as typed and with the offer.

    typed: what it does. What a stop holds back is shown as it would go if the figure stood.
    """
    supposing = Supposing(current.book, row, asked)
    if row["standing"] == "stopped":
        stands = supposing.outcome(row["entry"], is_all_answered=True)
        typed = postings_of(current.book, moved_by(stands.effect), row["order_key"])
    outcome = supposing.outcome(offer.entry)
    offered = postings_of(current.book, moved_by(outcome.effect), row["order_key"])
    return Accounts(_lines(typed, offered), _held(typed, offered), outcome.standing == "stopped")


def _lines(typed: Postings, offered: Postings) -> list[Beside]:
    """Return the movements of both; those that are among both stand in one line."""
    found: dict[tuple[str, ...], Beside] = {}
    for number, postings in enumerate((typed, offered)):
        for line in postings.lines:
            key = line.source, line.target, line.account, line.reason
            was = found.get(key) or Beside(line, None, None)
            own = was.offered_ul if number else was.typed_ul
            summed = (own or 0) + line.lpa_ul
            found[key] = Beside(line, was.typed_ul, summed) if number else Beside(line, summed, was.offered_ul)
    return list(found.values())


def _held(typed: Postings, offered: Postings) -> list[Held]:
    after = [{(one.name, one.mark): one for one in postings.balances} for postings in (typed, offered)]
    names = list(dict.fromkeys([*after[0], *after[1]]))
    made = []
    for name in names:
        before = next(one[name].before_ul for one in after if name in one)
        then = [one[name].after_ul if name in one else before for one in after]
        made.append(Held(*name, before, *then))
    return made
