"""A check that one vessel has answered alike again and again offers a limit of that vessel's own."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import floor
from typing import TypedDict

from webapp.book.before.limits import LIMITS
from webapp.book.fold.queries import Question
from webapp.book.record.store import Book

ALIKE_LEAST = 5
# A limit so many times the declared one would end the check: nodding is no reason for it. Common practice, no source.
WIDEST = 3.0
STEP = 0.1  # figures in sentences are rounded to it
# By the sentence that asks: the limit it is asked by, and the figure in it that is held against that limit.
OFFERED = {
    "dip_sum": ("dip_pct", "share"), "blend_sum": ("blend_pct", "share"), "move_gain": ("move_gain_pct", "share"),
    "run_balance": ("run_loss_pct", "share"), "run_balance-gain": ("run_gain_pct", "share"),
    "filter_loss": ("filter_loss_pct", "share"), "filter_gain": ("filter_gain_pct", "share"),
    "bottling_balance": ("bottling_loss_pct", "share"), "bottling_gain": ("bottling_gain_pct", "share"),
    "flow_sum": ("flow_pct", "off"), "dip_flow": ("flow_pct", "off"), "source_strength": ("source_off_pct", "off"),
    "held_strength": ("held_off_pct", "off"), "reduce_target": ("reduce_pct", "off"),
}


@dataclass(frozen=True, slots=True)
class OwnLimit:
    """A limit offered to one vessel: its name, the value that would have let all of them stand, and their number."""

    mark: str
    name: str
    value: float
    times: int


class _Answered(TypedDict):
    mark: str
    message: str


def own_limits(book: Book, asked: Iterable[Question]) -> dict[str, OwnLimit]:
    """Return by the id of an open question the limit that its check offers its vessel; only after ALIKE_LEAST answers.

    Answers are alike that let the same sentence stand on the same vessel.
    """
    wanted = {one["id"]: (one["mark"], _id_of(one["message"])) for one in asked if one["mark"]}
    wanted = {name: key for name, key in wanted.items() if key[1] in OFFERED}
    if not wanted:
        return {}
    marks, sentences = (json.dumps(sorted({key[n] for key in wanted.values()})) for n in (0, 1))
    rows = book.rows(
        _Answered,
        "SELECT mark, message FROM queries WHERE answer <> '' AND mark IN (SELECT value FROM json_each(?)) "
        "AND json_extract(message, '$.id') IN (SELECT value FROM json_each(?))",
        (marks, sentences),
    )
    found: dict[tuple[str, str], list[float]] = {}
    for row in rows:
        said = json.loads(row["message"])
        figure = _figure_of(said, OFFERED[said["id"]][1])
        if figure is not None:
            found.setdefault((row["mark"], said["id"]), []).append(figure)
    offers = {key: offer for key, figures in found.items() if (offer := _offer(key, figures))}
    return {name: offers[key] for name, key in wanted.items() if key in offers}


def _offer(key: tuple[str, str], figures: list[float]) -> OwnLimit | None:
    mark, id_ = key
    name = OFFERED[id_][0]
    value = round((floor(max(figures) / STEP + 1e-6) + 1) * STEP, 1)
    if len(figures) < ALIKE_LEAST or value > WIDEST * LIMITS[name].default:
        return None
    return OwnLimit(mark, name, value, len(figures))


def _id_of(said: object) -> str:
    return str(said.get("id")) if isinstance(said, Mapping) else ""


def _figure_of(said: Mapping[str, Mapping[str, object]], name: str) -> float | None:
    """Return a figure of a sentence as it is kept, in its metric unit."""
    figure = said["params"].get(name)
    try:
        return float(str(figure["figure"]).replace(",", "")) if isinstance(figure, Mapping) else None
    except (KeyError, ValueError):
        return None
