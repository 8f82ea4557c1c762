"""The registry: every kind of entry, listed by hand. A new kind is one file here and one line below."""

from __future__ import annotations

from webapp.kinds import (
    answer,
    cask_regauge,
    charge,
    cut,
    ferment_reading,
    fraction_gauge,
    fruit_intake,
    gauge,
    run_end,
    run_reading,
    shift_note,
)
from webapp.kinds.spec import Kind

ALL: list[Kind] = [
    fruit_intake.KIND,
    ferment_reading.KIND,
    charge.KIND,
    run_reading.KIND,
    cut.KIND,
    run_end.KIND,
    fraction_gauge.KIND,
    gauge.KIND,
    cask_regauge.KIND,
    shift_note.KIND,
    answer.KIND,
]


def by_name() -> dict[str, Kind]:
    """Return the kinds by name. [dict of Kind], any number; refuses two kinds of one name."""
    kinds = {kind.name: kind for kind in ALL}
    assert len(kinds) == len(ALL), "two kinds share a name"
    return kinds


def get(name: str) -> Kind | None:
    """Return the kind of that name, or None where the registry has none."""
    return next((kind for kind in ALL if kind.name == name), None)
