"""The trace: what a bottle, cask or run was made of, and where a load of fruit went. Page and search."""

from __future__ import annotations

from flask import Response, abort, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.cellar.tastings import load_set_out
from webapp.book.goods import goods
from webapp.book.lineage import certificates, lineage, search
from webapp.book.lineage.lineage import Node, Trace
from webapp.desk.blueprint import bp
from webapp.desk.tasting.traced import of_trace
from webapp.desk.trace import files as trace_files
from webapp.desk.trace.lists import LISTED_MOST, back_links, bottlings, made_name, sections, standing_spirit
from webapp.desk.trace.picture import draw, percent
from webapp.words.desk import say

PAGE_STEPS_MOST = 15_000  # flows looked at on the way back for the page, within a second; the files go further
bp.add_app_template_filter(percent, "percent")


@bp.get("/trace")
@needs("floor")
def trace_search_page() -> ResponseReturnValue:
    """Show the search for a subject to trace; a single answer is shown at once."""
    text = request.args.get("q", "").strip()
    hits = search.search(current.book, text)
    if len(hits) == 1:
        return redirect(url_for("desk.trace_page", key=hits[0].key))
    return render_template("desk/trace/search.html", text=text, hits=hits, most=search.HITS_MOST)


@bp.get("/trace/<key>")
@needs("floor")
def trace_page(key: str) -> ResponseReturnValue:
    """Show a trace both ways: pictures, and the same facts as lists."""
    found = lineage.find_subject(current.book, key)
    if found is None:
        return render_template("desk/trace/search.html", text=key[:60], hits=[], most=0), 404
    made = lineage.trace_subject(current.book, found, back_most=PAGE_STEPS_MOST)
    subject = made.nodes[made.subject.node]
    back, on = back_links(made), made.spread.links
    tested = certificates.of_trace(certificates.find_certificates(current.book), made)
    return render_template(
        "desk/trace/trace.html",
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
        removals=removals_of(made),
        standing=standing_spirit(made),
        gone=sorted(((made_name(made, name), ul) for name, ul in made.spread.gone_ul.items()), key=lambda g: -g[1]),
        most=LISTED_MOST,
        tested=tested,
        untested=certificates.untested(tested),
        tasted=of_trace(load_set_out(current.book), made),
    )


def find_trace(key: str) -> Trace:
    """Return the whole trace of what a key names; 404 where the book has nothing of that name."""
    subject = lineage.find_subject(current.book, key)
    if subject is None:
        abort(404, say("desk-trace-the_book_has_nothing_to"))
    return lineage.trace_subject(current.book, subject)


def _title(node: Node) -> str:
    return say("desk-trace-trace_of", name=node.name)


def removals_of(made: Trace) -> list[dict[str, object]]:
    """Return the removals of all its bottlings, each line with its batch and lot mark."""
    nodes = [made.nodes[f"b:{entry}"] for entry in made.spread.bottled]
    nodes += [made.nodes[made.subject.node]] if made.subject.sort == "bottling" else []
    facts = {node.key: {name: node.facts.get(name) or "" for name in ("batch", "lot_mark")} for node in nodes}
    return [line | facts[line["bottling"]] for line in goods.removals(current.book, facts)]


@bp.get("/trace/<key>.json")
@needs("floor")
def trace_json(key: str) -> Response:
    """Send the whole trace: nodes, links with litres of pure alcohol, leaves, bottlings, standing, gone."""
    made = find_trace(key)
    return trace_files.json_file(made, trace_files.as_json(made, removals_of(made)))


@bp.get("/trace/<key>.csv")
@needs("floor")
def trace_csv(key: str) -> Response:
    """Send the recall list, what stands where and what was lost (`on`), and what it was made of (`back`)."""
    made = find_trace(key)
    return trace_files.csv_file(made, trace_files.HEADS, trace_files.rows(made, removals_of(made)))
