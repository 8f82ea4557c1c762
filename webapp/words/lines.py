"""The line of an entry in the units of a house: what was typed as it was typed, what was worked out in the house's."""

from __future__ import annotations

import re

from webapp.kinds.as_data import summary
from webapp.kinds.read import Read
from webapp.trade import units
from webapp.words.houseunits import METRIC, US, House, text_in, unit_in

_NAMED = re.compile(r"\{(\w+)\}")


def shown_in(read: Read, name: str, house: House = METRIC) -> str:
    """Return a field as typed with its unit, or a figure in the units of the house."""
    if house == US and not read.raw(name).get("raw"):
        for figure in read.kind.figures:
            if figure.name == name and name in read.figures:
                text = text_in(f"{read.figures[name]:.{figure.decimals}f}", figure.unit, house)
                return f"{text} {units.symbol(unit_in(figure.unit, house))}"
    return read.shown(name)


def summary_in(read: Read, house: House = METRIC) -> str:
    """Return the one line that a list shows of an entry."""
    if house != US or not read.kind.summary:
        return summary(read)
    filled = _NAMED.sub(lambda match: shown_in(read, match[1], house), read.kind.summary)
    return re.sub("(, | at )\u2013$", "", filled)  # "heat on", not "heat on, –"


def label_in(label: str, unit: str, house: House) -> str:
    """Return the label of a figure: where it names the temperature of its unit, that of the house's."""
    return label.replace("20 °C", "60 °F" if unit == "pct_vol" else "68 °F") if house == US else label
