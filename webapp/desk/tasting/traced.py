"""Which blind tastings had a sample of what a trace is about."""

from __future__ import annotations

from collections.abc import Sequence

from webapp.book.cellar.tastings import SetOut
from webapp.book.lineage.lineage import Node, Trace
from webapp.kinds.effects.tasting import sample_mark
from webapp.kinds.tasting_state import Sample


def of_trace(found: Sequence[SetOut], made: Trace) -> list[SetOut]:
    """Return those whose samples are part of a trace: its runs, its batches, and its vessels while they held that."""
    return [one for one in found if any(_is_in(node, sample, one["at"]) for node in made.nodes.values()
                                        for sample in one["samples"])]


def _is_in(node: Node, sample: Sample, at: str) -> bool:
    name = sample["name"].casefold()
    if sample["sort"] == "batch":
        return name in {str(node.facts.get(fact) or "").casefold() for fact in ("batch", "lot_mark")}
    if sample["sort"] == "run":
        return node.sort == "run" and node.name.casefold() == name
    until = str(node.facts.get("ended_at") or "") or "~"
    return node.id[:2] == "f:" and node.mark == sample_mark(sample["name"]) and node.at <= at <= until
