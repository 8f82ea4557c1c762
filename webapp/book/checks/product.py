"""Notes from published law on a category of spirit, beside the entry: nothing is asked, nothing is stopped."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.view import Query
from webapp.book.checks.product_limits import bottled_at_least, limit_sentence, limits_of
from webapp.book.checks.words import figure, strength_field
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View

SOURCES = dict.fromkeys(("bottled_low", "barrelled_high"), "the law it names; each in product_limits.json")


def bottled_low(read: Read, view: View) -> Iterable[Query]:
    """A label strength below what the likeliest category of this spirit is bottled at."""
    label = read.number("label_strength")
    held = view.state(read.mark)["holds"]
    if label is None or not held:
        return
    least = bottled_at_least(held["what"], view.site())
    if least and label < least["value"] - 1e-9:
        said = message("bottled_low", label=figure(label, 1, "pct_vol"), law=limit_sentence(least))
        yield Query("bottled_low", "note", "label_strength", said)


def barrelled_high(read: Read, view: View) -> Iterable[Query]:
    """A cask filled stronger than its likeliest category may be."""
    now = read.figures.get("true_strength")
    source = view.state(read.text("from_vessel") or "")["holds"] or NO_FILL
    what = str(read.text("what") or source["what"] or "")
    if now is None or not what:
        return
    for row in limits_of(what, view.site()):
        if row["limit"] == "barrelled" and now > row["value"] + 0.05:
            said = message("barrelled_high", strength=figure(now, 1, "pct_vol"), law=limit_sentence(row))
            yield Query("barrelled_high", "note", strength_field(read), said)
