"""The trace: what a bottle, cask or run was made of, and where a load of fruit went. Page, search and files."""

from __future__ import annotations

import csv
import io
import json
from collections import defaultdict
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

from flask import Response, abort, redirect, render_template, request, url_for

from webapp.access import current, needs
from webapp.book import goods, lineage, trace_search
from webapp.book.lineage import Node, Trace
from webapp.desk import bp
from webapp.desk.trace_picture import COLUMN, SORTS, Links, draw, percent, with_vats
from webapp.kinds.as_data import cell

PAGE_STEPS_MOST = 15_000  # flows looked at on the way back for the page, within a second; the files go further
LISTED_MOST = 60  # of one sort on the page; the files have all
PARTS_MOST = 12
TITLES = {
    "fruit": "Fruit", "opening": "From before this book", "received": "Received in bulk",
    "found": "Not on record", "no_fruit": "No fruit on record",
    "rest": "Not followed", "ferment": "Ferments", "run": "Runs", "receiver": "Receivers", "can": "Cans",
    "still": "Stills", "tank": "Tanks", "cask": "Casks", "vat": "Vats", "way": "Between sites",
    "bottling": "Bottlings", "gone": "Gone",
}  # fmt: skip
HEADS = ("way", "sort", "name", "detail", "mark", "at", "batch", "lot_mark", "case_from", "case_to", "odd_case",
         "bottles", "bottle_l", "share_pct", "pure_alcohol_l", "entry")  # fmt: skip
_PAPER = ("document", "to_whom")
bp.add_app_template_filter(percent, "percent")


@bp.get("/trace")
@needs("floor")
def trace_search_page() -> Any:
    """Find what to trace; a single answer is shown at once."""
    text = request.args.get("q", "").strip()
    hits = trace_search.search(current.book, text)
    if len(hits) == 1:
        return redirect(url_for("desk.trace_page", key=hits[0].key))
    return render_template("desk/trace_search.html", text=text, hits=hits, most=trace_search.HITS_MOST)


@bp.get("/trace/<key>")
@needs("floor")
def trace_page(key: str) -> Any:
    """Show a trace both ways: pictures, and the same facts as lists."""
    found = lineage.find_subject(current.book, key)
    if found is None:
        return render_template("desk/trace_search.html", text=key[:60], hits=[], most=0), 404
    made = lineage.trace(current.book, found, back_most=PAGE_STEPS_MOST)
    subject = made.nodes[made.subject.node]
    back, on = back_links(made), made.spread.links
    return render_template(
        "desk/trace.html",
        made=made,
        subject=subject,
        title=_title(subject),
        back=sections(made, back, made.lpa_ul, backward=True),
        on=sections(made, on, made.spread.started_ul, backward=False),
        pictures={
            way: [(name, draw(made.nodes, links, total, tall=name == "tall")) for name in ("wide", "tall")]
            for way, links, total in (("back", back, made.lpa_ul), ("on", on, made.spread.started_ul))
        },
        bottlings=bottlings(made),
        removals=_removals(made),
        standing=standing(made),
        gone=sorted(((made_name(made, name), ul) for name, ul in made.spread.gone_ul.items()), key=lambda g: -g[1]),
        most=LISTED_MOST,
    )


def _trace(key: str) -> Trace:
    subject = lineage.find_subject(current.book, key)
    if subject is None:
        abort(404, "The book has nothing to trace by that name. Look for it with the search on the trace page.")
    return lineage.trace(current.book, subject)


def _title(node: Node) -> str:
    return f"Trace of {node.name}"


def made_name(made: Trace, gone: str) -> str:
    """Return what an outside account is called."""
    node = made.nodes.get(f"g:{gone}")
    return node.name if node else {"bottled": "in bottles"}.get(gone, gone.replace("_", " "))


def back_links(made: Trace) -> Links:
    """Return the links of the origin in pure alcohol. [uL] A fill without alcohol yet: in shares of a million."""
    whole = made.lpa_ul or 1e6
    return {pair: share * whole for pair, share in made.origin.links.items()}


def sections(made: Trace, links: Links, total: float, *, backward: bool) -> list[dict[str, Any]]:
    """Return the nodes of a direction by sort, each with its share, amount and the parts it came from."""
    total = total or (1e6 if backward else 0.0)
    into: dict[str, dict[str, float]] = defaultdict(dict)
    out: dict[str, dict[str, float]] = defaultdict(dict)
    for (source, target), weight in links.items():
        into[target][source] = out[source][target] = weight
    sorts = with_vats(made.nodes, links)
    found: dict[str, list[dict[str, Any]]] = defaultdict(list)
    for node in {*into, *out}:
        if node == made.subject.node:
            continue
        weight = max(sum(into[node].values()), sum(out[node].values()))
        parts = sorted(into[node].items(), key=lambda item: (-item[1], item[0]))
        found[sorts[node]].append({
            "node": made.nodes[node], "lpa_ul": weight if made.lpa_ul or not backward else 0.0,
            "share_pct": min(100 * weight / total, 100.0) if total else 0.0,
            "parts": [(made.nodes[part], 100 * ul / total if total else 0.0) for part, ul in parts[:PARTS_MOST]],
            "more": max(len(parts) - PARTS_MOST, 0),
        })  # fmt: skip
    order = sorted(found, key=lambda sort: (COLUMN[sort], SORTS.index(sort)), reverse=backward)
    return [
        {"title": TITLES[sort], "lines": sorted(found[sort], key=lambda line: (-line["share_pct"], line["node"].id))}
        for sort in order
    ]


def bottlings(made: Trace) -> list[dict[str, Any]]:
    """Return the recall list: every bottling that holds a part, the newest first."""
    lines = [
        {"node": made.nodes[f"b:{entry}"], "share_pct": 100 * share, "lpa_ul": ul}
        for entry, (share, ul) in made.spread.bottled.items()
    ]
    return sorted(lines, key=lambda line: (line["node"].at, line["node"].id), reverse=True)


def _removals(made: Trace) -> list[dict[str, Any]]:
    """Return where the cases of all its bottlings went, each line with its batch and lot mark."""
    nodes = [made.nodes[f"b:{entry}"] for entry in made.spread.bottled]
    nodes += [made.nodes[made.subject.node]] if made.subject.sort == "bottling" else []
    facts = {node.key: {name: node.facts.get(name) or "" for name in ("batch", "lot_mark")} for node in nodes}
    return [line | facts[line["bottling"]] for line in goods.removals(current.book, facts)]


def standing(made: Trace) -> list[dict[str, Any]]:
    """Return what stands somewhere now, the most first; fruit that has made no alcohol yet comes last."""
    lines = [
        {"node": made.nodes[f"f:{fill}"], "share_pct": 100 * share, "lpa_ul": ul}
        for fill, (share, ul) in made.spread.standing.items()
    ]
    lines += [
        {"node": made.nodes[f"f:{fill}"], "share_pct": 100 * share, "lpa_ul": None}
        for fill, share in made.spread.mash.items()
    ]
    return sorted(lines, key=lambda line: (-(line["lpa_ul"] or 0.0), line["node"].id))


@bp.get("/trace/<key>.json")
@needs("floor")
def trace_json(key: str) -> Response:
    """Send the whole trace: nodes, links with litres of pure alcohol, leaves, bottlings, standing, gone."""
    made = _trace(key)
    spread = made.spread
    whole = {
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
            "removals": [
                {name: line[name] for name in ("entry", "at", "why", "bottles", "case_from", "case_to", *_PAPER)}
                for line in _removals(made)
            ],
            "mash": spread.mash,
            "gone_l": {name: _litres(ul) for name, ul in spread.gone_ul.items()},
        },
    }  # fmt: skip
    text = json.dumps(whole, ensure_ascii=False, indent=1, sort_keys=True)
    return Response(text, mimetype="application/json", headers=_attached(made, "json"))


def _public(node: Node) -> dict[str, Any]:
    return {"id": node.id, "sort": node.sort, "name": node.name, "detail": node.words, "mark": node.mark,
            "at": node.at, "entry": node.entry}  # fmt: skip


@bp.get("/trace/<key>.csv")
@needs("floor")
def trace_csv(key: str) -> Response:
    """Send the recall list, what stands where and what was lost (`on`), and what it was made of (`back`)."""
    made = _trace(key)
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(HEADS)
    for row in _rows(made):
        writer.writerow([cell(row.get(head)) for head in HEADS])
    # The byte order mark makes office programs read it as UTF-8.
    return Response("\ufeff" + out.getvalue(), mimetype="text/csv", headers=_attached(made, "csv"))


def _rows(made: Trace) -> Iterator[dict[str, Any]]:
    for line in [*bottlings(made), *standing(made)]:
        yield {"way": "on", **_row(line["node"], line["share_pct"], line["lpa_ul"])}
    for line in _removals(made):
        about = {name: line[name] for name in ("at", "batch", "lot_mark", "case_from", "case_to", "bottles", "entry")}
        paper = ", ".join(line[name] for name in _PAPER if line[name])
        yield {"way": "on", "sort": "removal", "name": line["happened"], "detail": paper, **about}
    for name, ul in sorted(made.spread.gone_ul.items()):
        if name != "bottled":
            yield {"way": "on", "sort": "gone", "name": made_name(made, name), "pure_alcohol_l": _litres(ul)}
    for section in sections(made, back_links(made), made.lpa_ul, backward=True):
        for line in section["lines"]:
            yield {"way": "back", **_row(line["node"], line["share_pct"], line["lpa_ul"])}


def _row(node: Node, share_pct: float, lpa_ul: float | None) -> dict[str, Any]:
    facts = {name: node.facts.get(name) for name in ("batch", "lot_mark", "case_from", "case_to", "odd_case")}
    return {
        "sort": node.sort, "name": node.name, "detail": node.words, "mark": node.mark, "at": node.at, **facts,
        "bottles": node.facts.get("good"), "bottle_l": node.facts.get("size_l"), "share_pct": share_pct,
        "pure_alcohol_l": None if lpa_ul is None else _litres(lpa_ul), "entry": node.entry or node.key,
    }  # fmt: skip


def _litres(lpa_ul: float) -> float:
    return round(lpa_ul / 1e6, 6)


def _attached(made: Trace, ending: str) -> dict[str, str]:
    name = "".join(c if c.isascii() and c.isalnum() else "-" for c in made.nodes[made.subject.node].name)[:40]
    stamp = f"{datetime.now(UTC):%Y-%m-%d}"
    return {"Content-Disposition": f'attachment; filename="cellarslate-trace-{name}-{stamp}.{ending}"'}
