"""Blind tastings: the list of them, what a phone needs of those that are not opened, and what an opened one found."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypedDict

from webapp.book.fold.states import load_newest, load_newest_of
from webapp.book.record import log
from webapp.book.record.rows import Logged
from webapp.book.record.store import Book
from webapp.kinds.key import tasting_key
from webapp.kinds.state import Vessel
from webapp.kinds.tasting_state import Sample, Serving, Tasting, TastingAnswer
from webapp.kinds.tasting_texts import read_key, read_samples
from webapp.trade import ranking as orders
from webapp.trade import sensory

LIST_MOST = 60
ON_PHONES_MOST = 8
ALPHA = {"5": 0.05, "1": 0.01}
BETA = 0.2  # what so many answers would have found, they find four times in five


class TastingOnPhone(TypedDict):
    """A blind tasting as phones get it: codes alone. What they hold, and of which samples, no phone is told."""

    name: str
    question: str
    method: str
    sets: list[Serving]
    answered: list[list[str | int]]  # [person, set]


class SetOut(TypedDict):
    """A blind tasting as it was set out: its name, its question, when, and of which samples."""

    name: str
    question: str
    at: str
    samples: list[Sample]


@dataclass(frozen=True, slots=True)
class Judged:
    """An answer with what its glasses held: the letters from left to right, and whether it was right."""

    answer: TastingAnswer
    codes: list[str]
    letters: str
    named: str  # letter of the glass that was named, or all letters in the order they were put in
    is_right: bool | None  # None in a ranking


@dataclass(frozen=True, slots=True)
class Told:
    """What an opened tasting found. Counts of answers; `ranking` in place of the rest where samples were ranked."""

    judged: list[Judged]
    people: int
    right: int = 0
    named: str = ""  # of a pair: the letter named more often
    p: float = 1.0
    needed: int | None = None
    is_found: bool = False
    share: float | None = None  # of the answers: the least that would have been found
    ranking: orders.Ranking | None = None
    apart: tuple[tuple[str, str], ...] = ()  # letters of pairs that differ, the one put first before the other

    @property
    def answers(self) -> int:
        """How many answers count."""
        return len(self.judged)


def load_tasting(book: Book, name: str) -> Tasting | None:
    """Return a blind tasting by its name, or None."""
    return load_newest(book, tasting_key(name))


def load_tastings(book: Book, limit: int = LIST_MOST) -> list[Tasting]:
    """Return the blind tastings, newest first."""
    rows = log.find_entries(book, kind="tasting_session", limit=limit)
    names = [_raw(row, "name") for row in rows]
    found = load_newest_of(book, dict.fromkeys(map(tasting_key, names)))
    return sorted((one for one in found.values() if one), key=lambda one: one["at"], reverse=True)


def names_of(vessel: Vessel) -> list[str]:
    """Return the names of the tastings that a vessel was a sample of, newest first."""
    lines = vessel["recent"].get("tasting_session", [])
    return list(dict.fromkeys(str(line["values"].get("name") or "") for line in reversed(lines)))


def load_set_out(book: Book) -> list[SetOut]:
    """Return the tastings as they were set out, newest first: one look into the log, for pages about their samples."""
    found: list[SetOut] = []
    for row in log.find_entries(book, kind="tasting_session", limit=LIST_MOST):
        if row["standing"] == "entered":
            samples, _ = read_samples(_raw(row, "samples"))
            at = row["order_key"][:19] + "Z"
            found.append({"name": _raw(row, "name"), "question": _raw(row, "question"), "at": at, "samples": samples})
    return found


def of_run(book: Book, name: str) -> list[SetOut]:
    """Return the tastings that a run was a sample of, newest first."""
    wanted = name.strip().casefold()
    return [one for one in load_set_out(book) if any(
        sample["sort"] == "run" and sample["name"].casefold() == wanted for sample in one["samples"])] if wanted else []


def _raw(row: Logged, name: str) -> str:
    return str((row["entry"]["values"].get(name) or {}).get("raw") or "").strip()


def for_phones(book: Book) -> list[TastingOnPhone]:
    """Return the tastings that are not opened, with the codes of each taster and which sets are answered."""
    waiting = [one for one in load_tastings(book, 2 * ON_PHONES_MOST) if "opened" not in one][:ON_PHONES_MOST]
    return [
        {"name": one["name"], "question": one["question"], "method": one["method"], "sets": one["servings"],
         "answered": [[answer["person"], answer["set_no"]] for answer in one["answers"]]}
        for one in waiting
    ]


def tell(tasting: Tasting) -> Told | None:
    """Return what an opened tasting found, or None where it is not opened or nobody has answered."""
    judged = _judge(tasting)
    if not judged:
        return None
    alpha = ALPHA.get(tasting["alpha_pct"], 0.05)
    people = len({one.answer["person"] for one in judged})
    if tasting["method"] == "ranking":
        return _tell_ranking(tasting, judged, people, alpha)
    method, many = tasting["method"], len(judged)
    right = sum(bool(one.is_right) for one in judged)
    named = ""
    if method.startswith("pair"):
        named = "A" if 2 * right >= many or method == "pair" else "B"
        right = right if named == "A" else many - right
    p = sensory.guessing_p(right, many, method)
    return Told(
        judged, people, right, named, p, sensory.critical_number(many, method, alpha), p <= alpha,
        sensory.least_share_found(many, method, alpha, BETA),
    )


def _tell_ranking(tasting: Tasting, judged: list[Judged], people: int, alpha: float) -> Told:
    letters = [one["letter"] for one in tasting["samples"]]
    ranks = [[float(one.named.index(letter) + 1) for letter in letters] for one in judged]
    ranking = orders.compare_ranks(ranks, alpha)
    is_found = ranking.p <= alpha
    apart = [(letters[a], letters[b]) for a, b in orders.pairs_apart(ranking.sums, ranking.lsd)] if is_found else []
    return Told(judged, people, p=ranking.p, is_found=is_found, ranking=ranking, apart=tuple(apart))


def letters_of(tasting: Tasting, key: str) -> list[tuple[Serving, str]]:
    """Return each set of glasses with the letters of its key; none where the key is not of these sets."""
    words = read_key(key, tasting["method"], tasting["samples"], tasting["servings"]) or []
    return list(zip(tasting["servings"], words, strict=bool(words)))


def _judge(tasting: Tasting) -> list[Judged]:
    if "opened" not in tasting:
        return []
    known = {(one["person"], one["set_no"]): (one["codes"], word)
             for one, word in letters_of(tasting, tasting["opened"]["key"])}
    answers = [one for one in tasting["answers"] if (one["person"], one["set_no"]) in known]
    return [_judged(tasting["method"], one, *known[one["person"], one["set_no"]]) for one in answers]


def _judged(method: str, answer: TastingAnswer, codes: Sequence[str], word: str) -> Judged:
    behind = dict(zip(codes, word[-len(codes) :], strict=True))
    if method == "ranking":
        named = "".join(behind[code] for code in answer["order"])
        return Judged(answer, list(codes), word, named, None)
    named = behind[answer["picked"]]
    right = word[0] if method == "duo_trio" else "A" if method.startswith("pair") else _odd(word)
    return Judged(answer, list(codes), word, named, named == right)


def _odd(word: str) -> str:
    return next((letter for letter in word if word.count(letter) == 1), "")
