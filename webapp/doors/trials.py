"""What a visitor of the demo can try: five things, each one tap away, and where each of them leads."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from webapp.book import cards
from webapp.book.fold import queries
from webapp.book.record.store import Book
from webapp.book.still import runs
from webapp.demo.story import load
from webapp.trade.marks import make_mark
from webapp.words.desk import Later

SHEET_NAME = Later("door-trial-cask_list_csv")
FERMENTER, CASK = make_mark("F4"), make_mark("C047")


FALL = 0.002  # what a gravity may fall between two readings of a day, common practice, no source [SG]


def _no_figures(book: Book) -> dict[str, str]:
    return {}


def _next_reading(book: Book) -> dict[str, str]:
    """Return a temperature and a gravity that follow from the last reading: the demo reads on with the hours."""
    card = cards.card(book, FERMENTER)
    last = card["last"].get("ferment_reading", {}) if card else {}
    temp, gravity = (last[name]["value"] if name in last else None for name in ("temp", "gravity"))
    return {
        "temp": f"{temp:.1f}" if isinstance(temp, float) else "18.5",
        "gravity": f"{gravity - FALL:.3f}" if isinstance(gravity, float) else "1.038",
    }


@dataclass(frozen=True, slots=True)
class Trial:
    """One thing to try. `who`: the code of the person of the demo; `is_phone`: on the phone, else at the desk.

    `do` names in braces what `figures` takes from the book. `where` returns the path of its page, or nothing
    where this book has none any more.
    """

    key: str
    title: str
    minutes: int
    do: str
    look: str
    who: str
    where: Callable[[Book], str]
    is_phone: bool = False
    is_cut: bool = False  # the signal is cut before the page opens
    figures: Callable[[Book], dict[str, str]] = _no_figures

    def told(self, book: Book) -> str:
        """Return what to do, with the figures of today."""
        return self.do.format(**self.figures(book))


def _reading(book: Book) -> str:
    return f"/m/{FERMENTER}/log/ferment_reading"


def open_run(book: Book) -> runs.KnownRun | None:
    """Return the newest run that has not ended, or None."""
    return next((run for run in runs.runs(book, limit=5) if not run["ended_at"]), None)


def _run(book: Book) -> str:
    found = open_run(book)
    return f"/m/{found['still'] if found else make_mark('S1')}/run"


def _question(book: Book) -> str:
    found = queries.open_queries(book, limit=1)
    return f"/desk/entries/{found[0]['entry']}" if found else ""


def _cask(book: Book) -> str:
    return f"/desk/trace/{CASK}"


def _sheet(book: Book) -> str:
    return "/desk/sheets/look"


TRIALS = (
    Trial(
        "reading", Later("door-trial-log_without_signal"), 1,
        "F4 ferments pears. The signal is cut before its form opens: type {temp} and {gravity}, and log it.",
        Later("door-trial-it_says_at_once_where"),
        "NS", _reading, is_phone=True, is_cut=True, figures=_next_reading,
    ),
    Trial(
        "run", Later("door-trial-keep_a_still_run"), 2,
        Later("door-trial-s1_is_in_its_hearts"),
        Later("door-trial-the_true_strength_stands_there"),
        "BT", _run, is_phone=True,
    ),
    Trial(
        "question", Later("door-trial-answer_a_question"), 1,
        Later("door-trial-a_cask_gained_pure_alcohol"),
        Later("door-trial-the_likely_figure_is_offered"),
        "IM", _question,
    ),
    Trial(
        "trace", Later("door-trial-trace_a_cask_to_its"), 1,
        Later("door-trial-c_047_was_filled_a"),
        Later("door-trial-the_picture_says_how_much"),
        "IM", _cask,
    ),
    Trial(
        "sheet", Later("door-trial-take_a_sheet_in"), 2,
        Later("door-trial-six_casks_in_somebodys_old"),
        Later("door-trial-which_cells_it_stops_at"),
        "OL", _sheet,
    ),
)
BY_KEY = {trial.key: trial for trial in TRIALS}


@dataclass(frozen=True, slots=True)
class Person:
    """A person of the demo, as the doors name them."""

    code: str
    name: str
    role: str
    pin: str


def person(code: str) -> Person | None:
    """Return a person of the demo, or None where the story has none of that code."""
    row = next((one for one in load("people") if one["code"] == code), None)
    return Person(row["code"], row["name"], row["roles"][0], row["pin"]) if row else None
