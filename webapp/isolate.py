"""Texts that run from right to left, or say that they do: kept as typed, and shown so that they turn only themselves.

A mark of writing direction in a remark would else turn around the line that it stands in: figures, names, and what a
person is about to agree to.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from markupsafe import Markup

if TYPE_CHECKING:
    from flask import Flask

FIRST_STRONG, POP_ISOLATE = "\u2068", "\u2069"
_ISOLATES = "\u2066\u2067\u2068"
# Marks of direction, and letters and figures that run from right to left. [Unicode 16.0, UAX #9; blocks by range]
_TURNS = re.compile(
    "[\u202a-\u202e\u2066-\u2069\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefe\U00010800-\U00010fff\U0001e800-\U0001efff]"
)
# What a card shows and nothing looks up by: names of batches and lots stay as they are, since forms offer them again.
_SHOWN = ("title", "summary", "words", "note", "text", "remark")


class AsTyped(str):
    """A text that goes back into a box of a form, to the letter."""


def isolate(value: object) -> object:
    """Return a text closed off from what stands beside it; everything else, and markup of our own, as it is."""
    if type(value) is not str or not _TURNS.search(value):
        return value
    return f"{FIRST_STRONG}{_balanced(value)}{POP_ISOLATE}"


def isolate_shown(value: object) -> object:
    """Return a structure of a card with the texts that are only shown closed off."""
    if isinstance(value, dict):
        return {k: isolate(v) if k in _SHOWN else isolate_shown(v) for k, v in value.items()}
    if isinstance(value, list):
        return [isolate_shown(one) for one in value]
    return value


def _balanced(text: str) -> str:
    """Return the text with every isolate closed, and none closed that it did not open: that would be ours."""
    opened, kept = 0, []
    for char in text:
        if char in _ISOLATES:
            opened += 1
        elif char == POP_ISOLATE:
            if not opened:
                continue
            opened -= 1
        kept.append(char)
    # Embeddings end with the isolate they stand in (UAX #9, X6a); only isolates need closing.
    return "".join(kept) + POP_ISOLATE * opened


def init_app(app: Flask) -> None:
    """Close off every text that a template writes; `| as_typed` keeps one for a box to the letter."""
    app.jinja_env.finalize = lambda value: value if isinstance(value, Markup) else isolate(value)
    app.jinja_env.filters["as_typed"] = AsTyped
