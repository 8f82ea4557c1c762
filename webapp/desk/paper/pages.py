"""The addresses of the papers that people sign. Each stands beside the page it prints, and asks for the same access."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from flask import Response, abort, request, url_for

from webapp.access import current, needs
from webapp.book.cellar import ferments
from webapp.book.fold import queries, row_reader
from webapp.book.fold.queries import CardQuestion, Question, SentQuestion
from webapp.book.goods import bottlings
from webapp.book.house import places, registry
from webapp.book.lineage import certificates
from webapp.book.periods.postings import Postings, load_postings
from webapp.book.record import log
from webapp.book.still import runs, wishes
from webapp.book.still.run_account import balance_of
from webapp.desk.blueprint import bp, said
from webapp.desk.cellar.pages import COUNTS
from webapp.desk.cellar.warehouse import rooms_of
from webapp.desk.entries.entries import still_words
from webapp.desk.goods.bottlings import batch_balance
from webapp.desk.paper.imprint import imprint_of
from webapp.desk.shown import fields_of, figures_of, line_of, typed_lines
from webapp.desk.trace.lists import back_links, sections, standing_spirit
from webapp.desk.trace.lists import bottlings as bottlings_in
from webapp.desk.trace.pages import find_trace, removals_of
from webapp.words.desk import say

# The printer is loaded with the first paper: it is large, and most pages never need it.

def _file(body: bytes, name: str) -> Response:
    kept = "".join(one if one.isalnum() or one in "-_" else "-" for one in name.lower())[:60]
    return Response(body, mimetype="application/pdf", headers={"Content-Disposition": f'inline; filename="{kept}.pdf"'})


def _open(asked: Iterable[CardQuestion | Question | SentQuestion]) -> list[tuple[str, str]]:
    """Return open questions as (weight, words)."""
    return [(str(one["weight"]), said(one)) for one in asked if not one.get("answer")]


def _asked_of(ids: Sequence[str]) -> list[tuple[str, str]]:
    """Return the open questions to these entries, in bulk; notes want no answer."""
    found = queries.still_open(current.book, list(dict.fromkeys(ids)), current.house)
    return [pair for one in ids for pair in _open(found.pop(one, ())) if pair[0] != "note"]


@bp.get("/cellar/count.pdf")
@needs("floor")
def count_pdf() -> Response:
    """Send a count sheet: of one room or of all, of one sort of vessel or of all. It has no figure of the book."""
    from webapp.desk.paper.count import count_paper

    sort, room = request.args.get("sort", ""), request.args.get("room")
    vessels = places.standing_vessels(current.book, (sort,) if sort in registry.SORTS else ())
    names = {area["id"]: area["name"] for area in current.site.get("areas") or [] if isinstance(area, dict)}
    known = () if sort else places.known_places(current.book)
    found = rooms_of(vessels, known, {}, names)
    wanted = [one for one in found if room is None or one.key == room]
    if not wanted:
        abort(404, say("paper-pages-nothing_has_a_place_there"))
    what = ", ".join(one.name or "other places" for one in wanted) + (f": {sort}" if sort else "")
    imprint = imprint_of(url_for("desk.map_page", room=room, sort=sort or None))
    return _file(count_paper(wanted, imprint, what=what), f"count-{room or 'all'}")


@bp.get("/entries/<entry_id>.pdf")
@needs("floor")
def entry_pdf(entry_id: str) -> Response:
    """Send the record of one entry: what was read, what follows, what it moved."""
    from webapp.desk.paper.record import record_paper

    family = log.load_family(current.book, entry_id)
    row = family["entry"]
    read = row_reader.read_all_as_folded(current.book, [row])[0] if row else None
    if row is None or read is None or row["kind"] == "answer":
        abort(404, say("paper-pages-the_book_has_no_such"))
    is_effective = family["effective"] == entry_id
    moved = load_postings(current.book, entry_id, row["order_key"]) if is_effective else Postings([], [])
    standing = "" if moved.lines else still_words(row["standing"], is_effective=is_effective)
    stands = places.stands_at(current.book, [row["mark"]])[row["mark"]] if row["mark"] else ""
    line = line_of(row, read) | {"stands": stands, "remark": row["entry"].get("remark") or ""}
    asked = _open(queries.for_entry(current.book, entry_id))
    body = record_paper(
        read.kind,
        line,
        fields_of(read),
        figures_of(read),
        moved,
        asked,
        imprint_of(url_for("desk.entry_page", entry_id=entry_id)),
        is_us=current.site.get("units") == "us",
        standing=standing,
    )
    return _file(body, f"record-{row['book_no']}")


@bp.get("/runs/<run_id>.pdf")
@needs("floor")
def run_pdf(run_id: str) -> Response:
    """Send the sheet of a run; one that is under way has room to go on."""
    from webapp.desk.paper.runs import run_paper

    run = runs.run(current.book, run_id)
    if run is None:
        abort(404, say("paper-pages-the_book_has_no_such2"))
    wish = wishes.wishes(current.book).get(wishes.fruit_of(run["what"]))
    lines = [run_id, *(one["entry"] for one in [*run["cuts"], *run["readings"]])]
    asked = _asked_of([*lines, *(one["entry"] for one in run["fractions"])])
    body = run_paper(
        run,
        balance_of(run, current.site),
        wishes.plan_for(wish, run["still"]),
        asked,
        imprint_of(url_for("desk.run_page", run_id=run_id)),
    )
    return _file(body, f"run-{run['name'] or run['started_at'][:10]}")


@bp.get("/cellar/ferments/<fill>.pdf")
@needs("floor")
def ferment_pdf(fill: str) -> Response:
    """Send the record of a ferment with its entries."""
    from webapp.desk.paper.batch import ferment_paper

    found = ferments.ferment(current.book, fill)
    if found is None:
        abort(404, say("paper-pages-the_book_has_no_such3"))
    rows = log.find_standing(current.book, found["mark"], found["since"], found["ended_at"] or "~")
    stands = places.stands_at(current.book, [found["mark"]])[found["mark"]] if not found["ended_at"] else ""
    body = ferment_paper(
        found,
        ferments.count_alcohol(current.book, found),
        COUNTS,
        typed_lines(rows),
        _asked_of([row["id"] for row in rows]),
        imprint_of(url_for("desk.ferment_page", fill=fill)),
        stands=stands,
    )
    return _file(body, f"ferment-{found['name'] or found['mark']}")


@bp.get("/bottlings.pdf")
@needs("floor")
def bottling_pdf() -> Response:
    """Send the record of a bottled batch with its entries."""
    from webapp.desk.paper.batch import bottling_paper

    name = request.args.get("batch", "").strip()[:80]
    found = bottlings.batch(current.book, name, current.site) if name else None
    if found is None:
        abort(404, say("paper-pages-the_book_has_no_batch"))
    ids = [one["entry"] for one in [*found["gauges"], *found["checks"]]]
    ids += [str(one.get("entry") or "") for one in found["closes"]]
    rows = sorted(log.get_all(current.book, [one for one in ids if one]).values(), key=lambda row: row["order_key"])
    body = bottling_paper(
        found,
        batch_balance(found),
        typed_lines(rows),
        _asked_of(ids),
        imprint_of(url_for("desk.bottling_page", batch=name)),
    )
    return _file(body, f"batch-{name}")


@bp.get("/trace/<key>.pdf")
@needs("floor")
def passport_pdf(key: str) -> Response:
    """Send the passport of a lot: its trace back to the fruit, its papers, where it went."""
    from webapp.desk.paper.passport import passport_paper

    made = find_trace(key)
    subject = made.nodes[made.subject.node]
    asked = _open(queries.for_card(current.book, subject.mark, house=current.house)) if subject.mark else []
    body = passport_paper(
        made,
        sections(made, back_links(made), made.lpa_ul, backward=True),
        bottlings_in(made),
        standing_spirit(made),
        removals_of(made),
        asked,
        imprint_of(url_for("desk.trace_page", key=key)),
        certificates.of_trace(certificates.find_certificates(current.book), made),
    )
    return _file(body, f"passport-{subject.name}")
