"""The units that the house reads in: what is said to it, never what is kept."""

from __future__ import annotations

import json

from webapp.book.record.store import Book
from webapp.words.houseunits import METRIC, House, house_of


def house_units(book: Book) -> House:
    """Return the units of the house, by the site's settings."""
    found = book.query("SELECT value FROM site WHERE name = 'units'")
    return house_of(json.loads(found[0]["value"])) if found else METRIC
