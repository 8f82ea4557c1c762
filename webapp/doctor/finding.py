"""One finding of the check-up."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Weight(Enum):
    """How much a finding matters."""

    WELL = "well"
    LOOK = "look"
    BAD = "bad"


@dataclass(frozen=True)
class Finding:
    """What was looked at, what was found, and what to do; `step` is empty where all is well."""

    about: str
    weight: Weight
    words: str
    step: str = ""


def well(about: str, words: str) -> Finding:
    """Return a finding that asks for nothing."""
    return Finding(about, Weight.WELL, words)


def look(about: str, words: str, step: str) -> Finding:
    """Return a finding that a person should look at when there is time."""
    return Finding(about, Weight.LOOK, words, step)


def bad(about: str, words: str, step: str) -> Finding:
    """Return a finding that keeps phones away, or puts what they hand in at risk."""
    return Finding(about, Weight.BAD, words, step)
