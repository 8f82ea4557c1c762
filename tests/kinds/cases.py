"""Seeded entries of every kind: plain ones, odd ones and broken ones, the same on every run."""

from __future__ import annotations

import random
from typing import Any

from webapp.kinds.spec import Field, Kind

SEED = 20250924
FILLED = 40
TABLE = '{"points":[[0,0],[10.5,100],[400,3000]],"of":"dip","shell_c":15,"per_c":48e-6,"tilt_cm":-0.4}'
CASK = '{"bung_cm":300,"head_cm":256,"length_cm":389,"lies":true,"of":"ullage"}'
DIPPED: tuple[dict[str, Any], ...] = ({"dips": TABLE}, {"dips": None, "cask_dips": CASK}, {"dips": ""}, {})
ODD_TEXTS = (
    "", " ", "abc", "1,2,3", "1.234,5", "1e9", "1e999", "NaN", "Infinity", "--3", "-0", "0", "0,0", "+4.5", ".5", "5.",
    "14,6", "1 234,5", "\u22123.5", "999999999999999", "1234567890.5", "12345678901234567", "９", "½", "<b>1</b>",
    "1; DROP TABLE", "\u202e12", "🥃", "\ufeff7", "7\u00a0", "\u00a07", "\t8\n", "x" * 2100, "🥃" * 1500,
)
ODD_DATES = ("2025-09-24", "2025-02-29", "2024-02-29", "2025-13-01", "0000-01-01", "20250924", "24.9.2025", "2025-9-4")
MARKS = ("F3-8", "R2-F", "S1-Z")


def entries(kind: Kind, count: int) -> list[tuple[dict[str, Any], dict[str, Any]]]:
    """Return `count` pairs of entry and context, one more of an entry that holds what is required, and no more, and
    some of entries with every box filled in as is usual.
    """
    rng = random.Random(f"{SEED}:{kind.name}")
    made = [(_entry(rng, kind), _context(rng, kind)) for _ in range(count)]
    filled = random.Random(f"{SEED}:{kind.name}:filled")
    return [*made, (_barren(rng, kind), {}), *((_filled(filled, kind), DIPPED[n % 4]) for n in range(FILLED))]


def _filled(rng: random.Random, kind: Kind) -> dict[str, Any]:
    values = {}
    for spec in kind.fields:
        low, high = spec.usual
        is_usual = spec.sort == "number" and low is not None and high is not None
        raw = f"{rng.uniform(low or 0.0, high or 0.0):.3f}" if is_usual else _raw(rng, spec, 0.0)
        values[spec.name] = {"raw": raw, **({"unit": spec.units[0]} if spec.units else {})}
    return {"kind": kind.name, "mark": rng.choice(MARKS) if kind.needs_mark else "", "values": values}


def _barren(rng: random.Random, kind: Kind) -> dict[str, Any]:
    values = {}
    for spec in kind.fields:
        if spec.required:
            values[spec.name] = {"raw": _raw(rng, spec, 0.0), **({"unit": spec.units[0]} if spec.units else {})}
    return {"kind": kind.name, "mark": rng.choice(MARKS) if kind.needs_mark else "", "values": values}


def _entry(rng: random.Random, kind: Kind) -> dict[str, Any]:
    oddness = rng.choice((0.0, 0.0, 0.1, 0.3))
    values = {}
    for spec in kind.fields:
        if rng.random() < (0.05 if spec.required else 0.35):
            continue
        value: dict[str, Any] = {"raw": _raw(rng, spec, oddness)}
        if spec.units:
            value["unit"] = rng.choice(spec.units) if rng.random() > 0.02 else "furlong"
            if rng.random() < 0.3:
                value["instrument"] = rng.choice(("TH-2", " AH-1 ", "SC-9"))
        values[spec.name] = value
    return {"kind": kind.name, "mark": rng.choice(MARKS) if kind.needs_mark else "", "values": values}


def _raw(rng: random.Random, spec: Field, oddness: float) -> str:
    if rng.random() < oddness:
        return rng.choice(ODD_TEXTS)
    if spec.sort == "number":
        return _number(rng, spec)
    if spec.sort == "choice":
        return rng.choice([value for value, _ in spec.choices])
    if spec.sort == "yes_no":
        return rng.choice(("yes", "no", "maybe"))
    if spec.sort == "date":
        return rng.choice(ODD_DATES)
    if spec.sort == "mark":
        return rng.choice(MARKS)
    return rng.choice(("plum", "Zwetschge, süß", "  kept as typed  ", "a {gravity} b"))


def _number(rng: random.Random, spec: Field) -> str:
    low, high = spec.possible if rng.random() < 0.4 else spec.usual
    low = -10.0 if low is None else low
    high = low + 500 if high is None else high
    reach = (high - low) * rng.choice((0.0, 0.0, 0.2, 3.0))
    text = f"{rng.uniform(low - reach, high + reach):.{rng.choice((0, 1, 2, 3))}f}"
    return text.replace(".", ",") if rng.random() < 0.3 else text


def _correction(rng: random.Random) -> dict[str, Any]:
    shown = sorted({round(rng.uniform(-5, 100), 1) for _ in range(rng.choice((0, 1, 3)))})
    unit = rng.choice(("", "degC", "degF", "pct_glass", "proof_glass", "kg", "lb", "L", "SG", "no unit"))
    table = [[each, round(rng.uniform(-0.5, 0.5), 2)] for each in shown]
    return {"unit": unit, "offset": rng.choice((0.0, -0.3, 0.05)), "table": table}


def _context(rng: random.Random, kind: Kind) -> dict[str, Any]:
    numbers = [spec for spec in kind.fields if spec.sort == "number"]
    context: dict[str, Any] = {
        "og": rng.choice((None, 1.052, 1.0805)),
        "tare_kg": rng.choice((None, 48.5)),
        "last": {spec.name: round(rng.uniform(0.9, 40.0), 3) for spec in numbers if rng.random() < 0.5},
        "limits": {},
    }
    if rng.random() < 0.5:
        context["corrections"] = {name: _correction(rng) for name in ("TH-2", "AH-1") if rng.random() < 0.7}
    for spec in numbers:
        if rng.random() < 0.2:
            middle = rng.uniform(0.5, 60)
            context["limits"][spec.name] = {"usual": [middle, middle * 1.3], "possible": rng.choice((None, [0, 1e4]))}
    return context
