"""Limits of published law on a category of spirit: ceilings, floors, ages. Notes, never legal advice."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import TypedDict

from webapp.book.before.limits import is_grain
from webapp.kinds.message import Figure, Message, Span, message
from webapp.kinds.rows import SiteSettings

DATA = Path(__file__).with_name("product_limits.json")
CAUTION = message("law-caution")
GRAPE = ("grape", "wine", "marc")


class LawLimit(TypedDict):
    """A limit of the law: where it holds and for which category, what it limits, its figure, and where it stands.

    What the law calls the spirit, and what it notes beside, are the ends of messages: `law-spirit-`, `law-note-`.
    """

    place: str
    category: str
    called: str
    limit: str
    sense: str
    value: float
    unit: str
    source: str
    read: bool
    on: str
    note: str | None


@cache
def limits() -> tuple[LawLimit, ...]:
    """Return every limit."""
    return tuple(json.loads(DATA.read_text(encoding="utf-8"))["limits"])


def place_of(site: SiteSettings) -> str:
    """Return the law under which the house most likely bottles. "EU" or "US"."""
    return "US" if site.get("units") == "us" else "EU"


def categories_of(what: str, place: str) -> tuple[str, ...]:
    """Return the categories that a spirit of this name would most likely be sold as, the likeliest first."""
    name = what.lower()
    if is_grain(name):
        return ("rye_whisky", "whisky") if place == "US" and "rye" in name else ("whisky",)
    if any(word in name for word in GRAPE):
        if place == "US":
            return ("grape_brandy", "brandy")
        return ("grape_marc_spirit",) if "marc" in name else ("wine_spirit", "brandy_weinbrand")
    if place == "US":
        return ("brandy",)
    for word, category in (("honey", "honey_spirit"), ("cider", "cider_perry_spirit"), ("perry", "cider_perry_spirit"),
                           ("geist", "geist"), ("macerat", "macerated_fruit_spirit")):
        if word in name:
            return (category,)
    return ("fruit_spirit",)


def limits_of(what: str, site: SiteSettings) -> list[LawLimit]:
    """Return the limits that a spirit of this name most likely falls under in the house's place."""
    place = place_of(site)
    wanted = categories_of(what, place)
    found = [row for row in limits() if row["place"] == place and row["category"] in wanted]
    return sorted(found, key=lambda row: wanted.index(row["category"]))


def bottled_at_least(what: str, site: SiteSettings) -> LawLimit | None:
    """Return the limit of what this spirit may be bottled at, or None where none is known."""
    return next((row for row in limits_of(what, site) if row["limit"] == "bottled"), None)


def limit_sentence(row: LawLimit) -> Message:
    """Return a limit as a sentence with its source: "Fruit spirit in the EU is distilled below 86 % vol (...)."."""
    is_strength = row["unit"] == "pct_vol"
    id_ = f"law-{row['limit']}-{row['sense']}" if is_strength else "law-aged"
    value = Figure(f"{row['value']:g}", "pct_vol") if is_strength else _span(row["value"])
    return message(
        id_, called=message(f"law-spirit-{row['called']}"), place=row["place"], value=value,
        note=message(f"law-note-{row['note']}") if row.get("note") else "none",
        source=row["source"], known="read" if row["read"] else "memory",
    )


def _span(years: float) -> Span:
    return Span(((round(years * 12), "months"),)) if years < 1 else Span(((round(years), "years"),))
