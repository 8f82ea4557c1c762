"""Why the sums refuse a figure, as a message: the sums raise codes and figures, and know no catalogue.

Twin of static/kinds/reasons.js.
"""

from __future__ import annotations

from webapp.kinds.message import Figure, Message, Param, Range, message
from webapp.trade.datafiles import load_data
from webapp.trade.errors import OUTSIDE, NotANumber, OutOfDomain
from webapp.trade.numeric import brief


def reason_of(error: OutOfDomain | NotANumber) -> Message:
    """Return the message that says why the sums refuse a figure, and what to do next."""
    if isinstance(error, NotANumber):
        return message(f"number-{error.code}")
    if error.code != OUTSIDE:
        return message(f"reason-{error.code}", **{name: Figure(*shown) for name, shown in error.figures.items()})
    what, advice = message(f"measured-{error.what}"), message(f"advice-{error.advice}")
    low, high = (None if end is None else brief(end) for end in (error.low, error.high))
    if error.unit in load_data("units"):
        figure, possible = Figure(brief(error.value), error.unit), Range(low, high, error.unit)
        return message("reason-outside", what=what, figure=figure, possible=possible, advice=advice)
    # Not every unit of a sum is one that is read on an instrument: the catalogue has the words for the others.
    unit: Param = message(f"measure-{error.unit}") if error.unit else ""
    figure, possible = Figure(brief(error.value)), Range(low, high)
    return message("reason-outside_in_words", what=what, figure=figure, unit=unit, possible=possible, advice=advice)
