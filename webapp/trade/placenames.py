"""Names of places, whatever pattern a house uses for them: their order, and the room, row and position in a name.

`CELL-A1`, `W1-1`, `A/3/2`, `Loft 4` and `Rickhouse B row 12 tier 3` are all read. Twin of static/trade/placenames.js.
Source: common practice, no source; the order is held against the library natsort by a test.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

_WORD = re.compile(r"[0-9]+|[^\W\d_]+")
_DIGITS = "0123456789"
_APART = " -/\\.,:;_·|#"
# What a house calls its lines of places, and what it calls those that lie one above another.
LINES = ("row", "bay", "rack", "aisle", "lane", "stack", "line", "col", "column", "pos", "position", "place", "slot")
UPRIGHT = ("tier", "level", "shelf", "layer")
_NAMED = frozenset((*LINES, *UPRIGHT))
_TIER = "t"  # R12-T3
_SHORT = 2  # letters that name a row; a longer word names a room


@dataclass(frozen=True, slots=True)
class Spot:
    """Where a place lies: its room, its row and its position in the row; each may be empty.

    `row_word` and `position_word` are what the name itself calls them, such as tier. Rows of an upright spot lie one
    above another, the first at the foot.
    """

    room: str
    row: str = ""
    position: str = ""
    row_word: str = ""
    position_word: str = ""
    is_upright: bool = False


@dataclass(frozen=True, slots=True)
class _Part:
    text: str
    start: int
    end: int

    @property
    def is_number(self) -> bool:
        return self.text[0] in _DIGITS


def sort_key(name: str) -> str:
    """Return the key by which places stand in the order that people count in: `A2` before `A10` before `B1`.

    Parameters
    ----------
    name : str
        The name of a place; any text. [text]

    Returns
    -------
    key : str
        A text to compare by. Letters count alike in capitals and small; marks and spaces between do not count. [text]

    Source
    ------
    Common practice, no source; held against the library natsort.
    """
    # A number is led by how many digits it has, so that texts compare as numbers do.
    return " ".join(_counted(one) if one[0] in _DIGITS else one for one in _WORD.findall(name.casefold()))


def _counted(number: str) -> str:
    bare = number.lstrip("0") or "0"
    return f"{len(bare):03}{bare}"


@lru_cache(maxsize=20_000)
def read_place(name: str) -> Spot:
    """Return the room, row and position that a place's name says; a name without a number is a room as a whole.

    Parameters
    ----------
    name : str
        The name of a place; any text. [text]

    Returns
    -------
    spot : Spot
        The last number is the position. What stands before it is the row, where it is a number, a letter or two, or is
        called one (row, bay, tier); all that stands before that is the room. [texts]

    Source
    ------
    Common practice, no source.
    """
    name = " ".join(name.split())
    parts = [_Part(one.group(), one.start(), one.end()) for one in _WORD.finditer(name)]
    position, position_word, rest = _take(parts, is_first=True)
    if not position:
        return Spot(name)
    row, row_word, before = _take(rest, is_first=False)
    if row and len(rest) == 1 and row[0] not in _DIGITS and not _is_joined(name, rest[0], parts[1]):
        row, before = "", rest  # "A/3" is the third place of A, "A3" stands in row A
    taken = parts[len(before)].start if row else parts[len(rest)].start
    room = name[:taken].strip(_APART)
    if position_word in (*UPRIGHT, _TIER) and row:
        return Spot(room, position, row, position_word, row_word, is_upright=True)
    return Spot(room, row, position, row_word, position_word, row_word in (*UPRIGHT, _TIER) and bool(row))


def _take(parts: list[_Part], *, is_first: bool) -> tuple[str, str, list[_Part]]:
    """Return the last part as a position or row, the word for it, and the parts before both; no text where it is none.
    """
    if not parts:
        return "", "", parts
    last, rest = parts[-1], parts[:-1]
    word = rest[-1].text.casefold() if rest else ""
    if word in _NAMED:
        return last.text.upper(), word, rest[:-1]
    if not last.is_number:
        is_row = not is_first and len(last.text) <= _SHORT and last.text.casefold() not in _NAMED
        return (last.text.upper(), "", rest) if is_row else ("", "", parts)
    # In R12-T3 the T stands for a word: a letter joined to its number, with a number before it.
    if len(rest) > 1 and len(word) == 1 and rest[-1].end == last.start and rest[-2].is_number:
        return last.text, word, rest[:-1]
    return last.text, "", rest


def _is_joined(name: str, one: _Part, other: _Part) -> bool:
    return len(one.text) == 1 and name[one.end : other.start] == ""


def room_of(name: str) -> str:
    """Return the room that a place's name says: `CELL` of `CELL-A1`. Empty where it says none.

    Parameters
    ----------
    name : str
        The name of a place; any text. [text]

    Returns
    -------
    room : str
        The room. [text]

    Source
    ------
    Common practice, no source.
    """
    return read_place(name).room
