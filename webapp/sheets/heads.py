"""Which column of a sheet is which: by the words over it, in any order, with the unit that stands there."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from webapp.kinds.message import Message, message
from webapp.sheets.reading import Cell, Table
from webapp.sheets.targets import ALL, BY_NAME, Column, Target, labels
from webapp.sheets.unitwords import unit_in

ROWS_LOOKED_AT = 12
LEFT_OUT = "-"  # somebody has said that a column is none of ours
_ASIDE = re.compile(r"\bat (20|60)\b|@ ?(20|60)\b|°[cf]?")
_BRACKETS = re.compile(r"[(\[]([^)\]]*)[)\]]")


@dataclass(slots=True)
class Head:
    """One head: where it stands, its words, the column that it was taken for, and the unit that it names."""

    at: int
    text: str
    column: Column | None = None
    unit: str = ""


@dataclass(slots=True)
class Heads:
    """The heads of a table: what its rows are, in which row the heads stand, and what does not fit."""

    target: Target
    row: int
    heads: list[Head]
    faults: list[Message] = field(default_factory=list)

    def of(self, name: str) -> Head | None:
        """Return the head of a column, or None."""
        return next((head for head in self.heads if head.column and head.column.name == name), None)

    @property
    def taken(self) -> list[Head]:
        """The heads that were taken for a column."""
        return [head for head in self.heads if head.column]


def find_heads(table: Table, *, target: str = "", told: Mapping[int, str] | None = None) -> Heads | None:
    """Return the heads of a table, or None where no row of it looks like heads.

    target: what its rows are, where somebody has said so. told: by place of a column, the name of what it is.
    """
    targets = [BY_NAME[target]] if target in BY_NAME else list(ALL)
    best: tuple[int, Heads] | None = None
    for row, cells in enumerate(table.rows[:ROWS_LOOKED_AT]):
        for one in targets:
            made = _match(one, row, cells, told or {})
            score = _score(made, table.name)
            if len(made.taken) >= min(2, len(table.rows[row])) and (best is None or score > best[0]):
                best = score, made
    if best is None:
        return None
    made = best[1]
    _find_faults(made, table)
    return made


def _score(made: Heads, name: str) -> int:
    needed = [column for column in made.target.columns if column.required]
    have = sum(made.of(column.name) is not None for column in needed)
    called = plain(name) in (plain(made.target.title), made.target.name)
    return len(made.taken) + 2 * have - (len(needed) - have) + 4 * called


def _match(target: Target, row: int, cells: Sequence[Cell], told: Mapping[int, str]) -> Heads:
    heads = [Head(at, str(cell)) for at, cell in enumerate(cells) if isinstance(cell, str) and cell]
    made = Heads(target, row, heads)
    taken: set[str] = set()
    for head in heads:
        if head.at in told:
            head.column = target.column(told[head.at])
            taken |= {head.column.name} if head.column else set()
    rest = [head for head in heads if head.at not in told]
    # What is called exactly as its label comes first; then the others, each for the first column that is free.
    for is_exact in (True, False):
        for head in rest:
            if head.column is None:
                fitting = [one for one in target.columns if _is_called(head.text, one, is_exact=is_exact)]
                free = next((one for one in fitting if one.name not in taken), None)
                if free is None and fitting and not is_exact:
                    made.faults.append(_two_columns(made, fitting[0], head))
                elif free:
                    head.column = free
                    taken.add(free.name)
    for head in heads:
        head.unit = unit_in(head.text, head.column.units) if head.column else ""
    return made


def _two_columns(made: Heads, column: Column, head: Head) -> Message:
    first = made.of(column.name)
    return message("sheet-two_columns", one=first.text if first else "", other=head.text, label=column.label)


def _is_called(text: str, column: Column, *, is_exact: bool) -> bool:
    called = {plain(text), plain(_BRACKETS.sub(" ", text)), _without_unit(text)}
    if is_exact:
        return plain(column.label) in called
    return any(plain(word) in called for word in column.words)


def _without_unit(text: str) -> str:
    words = plain(_BRACKETS.sub(" ", text)).split()
    while len(words) > 1 and unit_in(words[-1], None):
        words.pop()
    return " ".join(words)


def plain(text: str) -> str:
    """Return words as they are compared: small letters and digits, one blank between."""
    return " ".join(re.sub(r"[^a-z0-9]+", " ", _ASIDE.sub(" ", text.lower())).split())


def _find_faults(made: Heads, table: Table) -> None:
    wide = [at for row, at, last in table.merged if row == made.row and last > at]
    if wide:
        made.faults.insert(0, message("sheet-merged", row=made.row + 1))
    missing = [column for column in made.target.columns if column.required and made.of(column.name) is None]
    if missing:
        made.faults.append(message("sheet-no_column", labels=labels(missing), many=len(missing)))
