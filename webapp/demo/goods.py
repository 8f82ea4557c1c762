"""Removals of bottles: released, sent in bond, poured for guests."""

from __future__ import annotations

from typing import Any

from webapp.demo.story import Draft, day, load


def drafts() -> list[Draft]:
    """Return the removals of demo_data/goods.json, in order."""
    told = load("goods")
    return [_removal(told["lot_mark"], line) for line in told["removals"]]


def _removal(lot_mark: str, line: dict[str, Any]) -> Draft:
    values: dict[str, str | tuple[str, ...]] = {"batch": lot_mark, "why": line["why"]}
    if line.get("cases"):
        first, last = line["cases"]
        values |= {"cases": (f"{last - first + 1}", "count"), "case_from": f"{first}", "case_to": f"{last}"}
    else:
        values |= {"bottles": (f"{line['bottles']}", "count"), "case_from": line["of_case"]}
    values |= {name: line[name] for name in ("document", "to_whom") if line.get(name)}
    return Draft(day(*line["on"].split(" ")), "dispatch", "", line["person"], values, key=f"out:{line['on']}")
