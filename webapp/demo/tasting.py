"""Two blind tastings of the year: one that was opened, and one whose glasses wait. Codes are drawn by a fixed seed."""

from __future__ import annotations

from datetime import timedelta
from random import Random

from webapp.book.cellar.tasting_draw import draw_tasting, keep_key
from webapp.book.record.store import Book
from webapp.demo.story import Draft, day, load
from webapp.demo.told import TastingTold
from webapp.kinds.tasting_state import Serving
from webapp.kinds.tasting_texts import glasses_text, read_samples, seal_of

SURE = ("quite", "fairly", "guessing")
GAVE = ("nose", "wood", "finish", "mouth")


def drafts() -> list[Draft]:
    """Return the tastings with their answers, and the opening of the first."""
    return [draft for told in _told() for draft in _drafts(told)]


def keep_keys(book: Book) -> None:
    """Put the keys aside that the entries of the tastings are sealed with. Doing it twice changes nothing."""
    for told in _told():
        keep_key(book, _drawn(told)[1])


def _told() -> list[TastingTold]:
    found: list[TastingTold] = load("tastings")
    return found


def _drawn(told: TastingTold) -> tuple[list[Serving], str]:
    count = len(read_samples(told["samples"])[0])
    return draw_tasting(told["method"], count, told["tasters"], told["sets"], Random(told["name"]))  # noqa: S311


def _drafts(told: TastingTold) -> list[Draft]:
    begun = day(*told["on"].split(" "))
    servings, key = _drawn(told)
    made = [Draft(begun, "tasting_session", "", "IM", {
        "name": told["name"], "question": told["question"], "method": told["method"], "alpha": "5",
        "samples": told["samples"], "reduced_to": (f"{told['reduced_to']}", "pct_vol"),
        "poured_by": told["poured_by"], "glasses": glasses_text(servings), "seal": seal_of(key),
    }, phone="Office")]
    marks = dict(zip(told["tasters"], told["answers"].split(), strict=True))
    for serving, word in zip(servings, key.split(), strict=False):
        number = serving["set_no"]
        mark = marks[serving["person"]][number - 1]
        if mark == "-":
            continue
        # Three sets in a sitting, a day apart; two minutes between sets.
        at = begun + timedelta(days=(number - 1) // 3, minutes=70 + 4 * ((number - 1) % 3))
        at += timedelta(seconds=20 * told["tasters"].index(serving["person"]))
        made.append(Draft(at, "tasting_answer", "", serving["person"], {
            "session": told["name"], "set_no": (str(number), "count"), "sure": SURE[number % 3 if mark == "r" else 2],
            "gave_away": GAVE[number % len(GAVE)],
            **_said(told["method"], serving["codes"], word, is_right=mark == "r"),
        }))
    if told["opened"]:
        values = {"session": told["name"], "key": key, "decision": told["decision"]}
        made.append(Draft(day(*told["opened"].split(" ")), "tasting_result", "", "IM", values, phone="Office"))
    return made


def _said(method: str, codes: list[str], word: str, *, is_right: bool) -> dict[str, str]:
    """Return the glass of a triangle that is named, right or not, or the glasses of a ranking in order of letters."""
    behind = dict(zip(codes, word, strict=True))
    if method == "ranking":
        return {"order": " ".join(sorted(codes, key=lambda code: behind[code]))}
    return {"picked": next(code for code in codes if (word.count(behind[code]) == 1) == is_right)}
