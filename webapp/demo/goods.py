"""Removals of bottles: released, sent in bond, poured for guests."""

from __future__ import annotations

from webapp.demo.story import Draft, day, load
from webapp.demo.told import Removed


def drafts() -> list[Draft]:
    """Return the removals of demo_data/goods.json, in order."""
    told = load("goods")
    return [_removal(told["lot_mark"], line) for line in told["removals"]]


def _removal(lot_mark: str, line: Removed) -> Draft:
    values: dict[str, str | tuple[str, ...]] = {"batch": lot_mark, "why": line["why"]}
    if cases := line.get("cases"):
        first, last = cases
        values |= {"cases": (f"{last - first + 1}", "count"), "case_from": f"{first}", "case_to": f"{last}"}
    else:
        values |= {"bottles": (f"{line['bottles']}", "count"), "case_from": line["of_case"]}
    if document := line.get("document"):
        values["document"] = document
    if to_whom := line.get("to_whom"):
        values["to_whom"] = to_whom
    return Draft(day(*line["on"].split(" ")), "dispatch", "", line["person"], values, key=f"out:{line['on']}")
