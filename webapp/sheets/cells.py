"""One cell under its column: a figure with its unit, a day, a choice, a text; or a sentence about what it is not."""

from __future__ import annotations

import re
from calendar import monthrange
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, date, datetime

from webapp.kinds.message import Message, Month, message
from webapp.kinds.reasons import reason_of
from webapp.sheets.heads import plain
from webapp.sheets.reading import Cell
from webapp.sheets.targets import Column
from webapp.sheets.unitwords import CENTILITRE, unit_of_house, unit_written
from webapp.trade import units
from webapp.trade.errors import NotANumber, OutOfDomain

YES = frozenset(("yes", "y", "x", "true", "1", "ja", "oui"))
NO = frozenset(("no", "n", "false", "0", "nein", "non"))
MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
DAY_FIRST, MONTH_FIRST = "dmy", "mdy"
_FIGURE = re.compile(r"([-+\u2212]?[\d.,' \u00a0\u2009\u202f]*\d[.,]?)\s*(\D*)\Z")
_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ]00:00(?::00)?)?\Z")
_NAMED = re.compile(r"(\d{1,2})[. ]*\s*([A-Za-z]{3,9})[., ]*\s*(\d{4})\Z")
_MONTH_NAMED = re.compile(r"([A-Za-z]{3,9})[. ]+(\d{1,2})(?:st|nd|rd|th)?[, ]+(\d{4})\Z")
_DIGITS = re.compile(r"(\d{1,2})\s*([./-])\s*(\d{1,2})\s*[./-]\s*(\d{4}|\d{2})\Z")
_ERROR = re.compile(r"#[A-Z/0!?]+[!?A]?\Z")


class BadCell(Exception):
    """What stands in a cell is not what its column holds; `said` is the sentence, `offers` are texts that it may be."""

    def __init__(self, said: Message, offers: tuple[str, ...] = ()) -> None:
        super().__init__(said.id)
        self.said = said
        self.offers = offers


@dataclass(frozen=True, slots=True)
class Said:
    """What a cell says: as an entry would have it, and its unit; value is the figure in the canonical unit."""

    raw: str
    unit: str = ""
    value: float | None = None

    @property
    def shown(self) -> str:
        """The figure or text with its unit."""
        return f"{self.raw} {units.symbol(self.unit)}".strip() if self.unit else self.raw


def read_cell(column: Column, cell: Cell, *, unit: str = "", is_us: bool = False, order: str = "") -> Said | None:
    """Return the value of a cell, or None where it is empty. Raises BadCell with a sentence.

    unit: as its head names it. is_us: whether the house measures in US units. order: of day and month in digits.
    """
    if cell == "" or (isinstance(cell, str) and cell in ("-", "\u2013", "n/a")):
        return None
    if isinstance(cell, str) and (_ERROR.fullmatch(cell) or cell.startswith("=")):
        raise BadCell(message("sheet-formula_cell", typed=cell[:40]))
    if column.sort == "number":
        return _number(column, cell, unit, is_us)
    if column.sort == "date":
        return Said(_day(cell, order))
    text = _text(cell)
    if column.sort == "choice":
        return Said(_choice(column, text))
    if column.sort == "yes_no":
        return Said(_yes_no(text))
    return Said(text)


def _text(cell: Cell) -> str:
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, float):
        return f"{cell:.10g}"
    return str(cell)


def _number(column: Column, cell: Cell, unit: str, is_us: bool) -> Said:
    text = _text(cell)
    found = _FIGURE.match(text)
    if isinstance(cell, bool | date) or not found:
        raise BadCell(message("sheet-no_number", typed=text[:40]))
    figure, behind = found[1].strip(), found[2].strip()
    own = unit_written(behind, column.units) if behind else ""
    if behind and not own:
        wanted = " or ".join(filter(None, map(units.symbol, column.units)))
        raise BadCell(message("sheet-no_unit", typed=text[:40], units=wanted or "none"))
    try:
        value = units.parse_number(figure)
    except NotANumber as error:
        raise BadCell(message("sheet-bad_number", typed=text[:40], reason=reason_of(error))) from error
    used = own or unit or unit_of_house(column.units, is_us=is_us)
    if used == CENTILITRE:
        figure, used, value = f"{value * 10:.10g}", "mL", value * 10
    try:
        return Said(figure.replace("\u2212", "-"), used, float(units.to_canonical(value, used)))
    except OutOfDomain as error:
        raise BadCell(message("sheet-bad_number", typed=text[:40], reason=reason_of(error))) from error


def _choice(column: Column, text: str) -> str:
    said = plain(text)
    for value, words in column.choices:
        if said == value or any(said == plain(word) for word in words):
            return value
    known = ", ".join(words[0] for _, words in column.choices)
    raise BadCell(message("sheet-no_choice", typed=text[:40], choices=known))


def _yes_no(text: str) -> str:
    said = text.strip().lower()
    if said in YES | NO:
        return "yes" if said in YES else "no"
    raise BadCell(message("sheet-no_choice", typed=text[:40], choices="yes, no"))


def _day(cell: Cell, order: str) -> str:
    if isinstance(cell, datetime):
        return cell.date().isoformat()
    if isinstance(cell, date):
        return cell.isoformat()
    if not isinstance(cell, str):
        raise BadCell(message("sheet-no_date", typed=_text(cell)[:40]))
    text = cell.strip()
    if found := _ISO.fullmatch(text):
        return _made(int(found[1]), int(found[2]), int(found[3]), text)
    for pattern, (day, month_, year) in ((_NAMED, (1, 2, 3)), (_MONTH_NAMED, (2, 1, 3))):
        found = pattern.fullmatch(text)
        if found and found[month_].lower()[:3] in MONTHS:
            return _made(int(found[year]), MONTHS.index(found[month_].lower()[:3]) + 1, int(found[day]), text)
    found = _DIGITS.fullmatch(text)
    if not found:
        raise BadCell(message("sheet-no_date", typed=text[:40]))
    one, other, year = int(found[1]), int(found[3]), int(found[4])
    if len(found[4]) == 2:
        year += 2000 if year <= datetime.now(UTC).year % 100 else 1900
    if found[2] == "." or order == DAY_FIRST:
        return _made(year, other, one, text)
    if order == MONTH_FIRST:
        return _made(year, one, other, text)
    if one > 12 or other > 12 or one == other:
        return _made(year, *((other, one) if one > 12 else (one, other)), text)
    raise BadCell(message("sheet-which_order", typed=text[:40]))


def _made(year: int, month_: int, day: int, text: str) -> str:
    if not 1 <= month_ <= 12 or not 1900 <= year <= 2100:
        raise BadCell(message("sheet-no_date", typed=text[:40]))
    last = monthrange(year, month_)[1]
    if not 1 <= day <= last:
        offers = [_day_words(year, month_, last)] if day > last else []
        before = (year, month_ - 1) if month_ > 1 else (year - 1, 12)
        if last < day <= monthrange(*before)[1]:
            offers.insert(0, _day_words(*before, day))
        raise BadCell(message("sheet-no_such_day", month=Month(f"{year:04}-{month_:02}"), last=last), tuple(offers))
    return f"{year:04}-{month_:02}-{day:02}"


def _day_words(year: int, month_: int, day: int) -> str:
    return f"{day} {MONTHS[month_ - 1].capitalize()} {year}"


def day_order(cells: Iterable[Cell]) -> str:
    """Return the order of day and month in a column of dates in digits: `dmy`, `mdy`, or `?` where a person must say.

    An empty text where no cell has a day in digits with strokes.
    """
    pairs = [
        (int(found[1]), int(found[3])) for cell in cells
        if isinstance(cell, str) and (found := _DIGITS.fullmatch(cell.strip())) and found[2] != "."
    ]
    if not pairs:
        return ""
    day_first = any(one > 12 for one, _ in pairs)
    month_first = any(other > 12 for _, other in pairs)
    if day_first != month_first:
        return DAY_FIRST if day_first else MONTH_FIRST
    return "?" if not day_first and any(one != other for one, other in pairs) else ""
