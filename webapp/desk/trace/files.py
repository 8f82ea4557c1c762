"""A trace as files: all of it as JSON, the lists as CSV. The same for one site and for several."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import UTC, datetime
from typing import Any

from flask import Response

from webapp.book.lineage.lineage import Node, Trace
from webapp.desk.trace.lists import back_links, bottlings, made_name, sections, standing_spirit
from webapp.kinds.as_data import safe_cell

HEADS = ("way", "sort", "name", "detail", "mark", "at", "batch", "lot_mark", "case_from", "case_to", "odd_case",
         "bottles", "bottle_l", "share_pct", "pure_alcohol_l", "entry")
_PAPER = ("document", "to_whom")
_OUT = ("entry", "at", "why", "bottles", "case_from", "case_to", *_PAPER)
Removals = Sequence[Mapping[str, Any]]


def as_json(made: Trace, removals: Removals) -> dict[str, object]:
    """Return the whole trace as plain data: nodes, links with litres of pure alcohol, leaves, bottlings, and so on."""
    spread = made.spread
    return {
        "subject": {"sort": made.subject.sort, "id": made.subject.id, "node": made.subject.node},
        "pure_alcohol_l": _litres(made.lpa_ul),
        "assumption": "every fill and run well mixed; alcohol of a ferment shared over its loads by mass",
        "nodes": [_public(made.nodes[node]) for node in sorted(made.nodes)],
        "back": {
            "links": [{"from": a, "to": b, "share": share} for (a, b), share in sorted(made.origin.links.items())],
            "leaves": made.origin.leaves,
        },
        "on": {
            "started_l": _litres(spread.started_ul), "found_l": _litres(spread.found_ul), "whole": spread.is_whole,
            "links": [
                {"from": a, "to": b, "pure_alcohol_l": _litres(ul)} for (a, b), ul in sorted(spread.links.items())
            ],
            "bottlings": {e: {"share": s, "pure_alcohol_l": _litres(ul)} for e, (s, ul) in spread.bottled.items()},
            "standing": {f: {"share": s, "pure_alcohol_l": _litres(ul)} for f, (s, ul) in spread.standing.items()},
            "removals": [{name: line[name] for name in (*_OUT, "site") if name in line} for line in removals],
            "mash": spread.mash,
            "gone_l": {name: _litres(ul) for name, ul in spread.gone_ul.items()},
        },
    }


def json_file(made: Trace, whole: Mapping[str, object]) -> Response:
    """Return it as a file."""
    text = json.dumps(whole, ensure_ascii=False, indent=1, sort_keys=True)
    return Response(text, mimetype="application/json", headers=_attached(made, "json"))


def csv_file(made: Trace, heads: Sequence[str], lines: Iterable[Mapping[str, object]]) -> Response:
    """Return rows as a file under these heads, no cell of which a spreadsheet takes for a formula."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(heads)
    for line in lines:
        writer.writerow([safe_cell(line.get(head)) for head in heads])
    # The byte order mark makes office programs read it as UTF-8.
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv", headers=_attached(made, "csv"))


def rows(made: Trace, removals: Removals) -> Iterator[dict[str, object]]:
    """Yield the recall list, what stands where and what was lost (`on`), then what it was made of (`back`).

    `node` is that of the trace, where the row is one.
    """
    for line in [*bottlings(made), *standing_spirit(made)]:
        yield {"way": "on", **_row(line["node"], line["share_pct"], line["lpa_ul"])}
    for left in removals:
        names = ("at", "batch", "lot_mark", "case_from", "case_to", "bottles", "entry", "site")
        about = {name: left[name] for name in names if name in left}
        paper = ", ".join(left[name] for name in _PAPER if left[name])
        yield {"way": "on", "sort": "removal", "name": left["happened"], "detail": paper, **about}
    for name, ul in sorted(made.spread.gone_ul.items()):
        if name != "bottled":
            yield {"way": "on", "sort": "gone", "name": made_name(made, name), "pure_alcohol_l": _litres(ul)}
    for section in sections(made, back_links(made), made.lpa_ul, backward=True):
        for line in section["lines"]:
            yield {"way": "back", **_row(line["node"], line["share_pct"], line["lpa_ul"])}


def _row(node: Node, share_pct: float, lpa_ul: float | None) -> dict[str, object]:
    facts = {name: node.facts.get(name) for name in ("batch", "lot_mark", "case_from", "case_to", "odd_case")}
    return {
        "node": node.id, "sort": node.sort, "name": node.name, "detail": node.words, "mark": node.mark, "at": node.at,
        **facts, "bottles": node.facts.get("good"), "bottle_l": node.facts.get("size_l"), "share_pct": share_pct,
        "pure_alcohol_l": None if lpa_ul is None else _litres(lpa_ul), "entry": node.entry or node.key,
    }


def _public(node: Node) -> dict[str, object]:
    return {"id": node.id, "sort": node.sort, "name": node.name, "detail": node.words, "mark": node.mark,
            "at": node.at, "entry": node.entry}


def _litres(lpa_ul: float) -> float:
    return round(lpa_ul / 1e6, 6)


def _attached(made: Trace, ending: str) -> dict[str, str]:
    name = "".join(c if c.isascii() and c.isalnum() else "-" for c in made.nodes[made.subject.node].name)[:40]
    stamp = f"{datetime.now(UTC):%Y-%m-%d}"
    return {"Content-Disposition": f'attachment; filename="cellarslate-trace-{name}-{stamp}.{ending}"'}
