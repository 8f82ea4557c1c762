"""What the fold keeps of a blind tasting. Part of state.py, whose rules hold here."""

from __future__ import annotations

from typing import NotRequired, TypedDict


class Sample(TypedDict):
    """What stands behind a letter: a vessel's mark, the name of a run or of a batch, and words about it."""

    letter: str
    sort: str  # vessel, run or batch
    name: str
    words: str


class Serving(TypedDict):
    """The glasses of one answer: who tastes them, which of this person's sets it is, and the codes from left to right.
    """

    person: str
    set_no: int
    codes: list[str]


class TastingAnswer(TypedDict):
    """One answer: the code that was named, or the codes in order; how sure, and what gave it away."""

    entry: str
    at: str
    person: str
    set_no: int
    picked: str
    order: list[str]
    sure: str
    gave_away: str


class Opened(TypedDict):
    """The opening of a tasting: the letters behind the codes, by whom and when."""

    entry: str
    at: str
    person: str
    key: str
    decision: str


class Tasting(TypedDict):
    """A blind tasting, key `t:`. Which code holds which sample is in `opened` alone; before that only its seal is here.
    """

    entry: str
    at: str
    person: str
    name: str
    question: str
    method: str
    alpha_pct: str
    samples: list[Sample]
    servings: list[Serving]
    seal: str
    answers: list[TastingAnswer]
    opened: NotRequired[Opened]
