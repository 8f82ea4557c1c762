"""What the sums raise when an input cannot be used: codes and figures. The sentence is made where it is read."""

from collections.abc import Mapping
from typing import NamedTuple

# The code of a figure outside its range; every other code has figures and a sentence of its own.
OUTSIDE = "outside"


class Shown(NamedTuple):
    """A figure as a refusal shows it: settled digits, and a key of data/units.json or nothing."""

    digits: str
    unit: str = ""


class OutOfDomain(ValueError):
    """An input lies outside the range for which its source gives figures.

    Carries ``what`` (the code of the input), ``value``, ``low`` and ``high`` (the range; None when open), and ``code``,
    which says why. Where that is OUTSIDE, ``unit`` is a key of data/units.json or the code of a unit in words, and
    ``advice`` the code of what to do next. Otherwise ``figures`` holds what stands in the sentence of that code.
    """

    def __init__(
        self, what: str, value: float, low: float | None, high: float | None, code: str, *,
        unit: str = "", advice: str = "", figures: Mapping[str, Shown] | None = None,
    ) -> None:
        super().__init__(f"{what} {value}, from {low} to {high} {unit}: {code} {advice}".rstrip())
        self.what = what
        self.value = value
        self.low = low
        self.high = high
        self.code = code
        self.unit = unit
        self.advice = advice
        self.figures = dict(figures or {})


class NotANumber(ValueError):
    """A typed text is no number. Carries ``code``, which says why."""

    def __init__(self, code: str) -> None:
        super().__init__(code)
        self.code = code
