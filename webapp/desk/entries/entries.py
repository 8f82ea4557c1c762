"""Every entry, with filters, one page each, and the files that leave the house."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator, Mapping, Sequence
from datetime import UTC, datetime
from typing import Protocol

from flask import Response, abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from werkzeug.datastructures import MultiDict

import webapp.kinds
from webapp.access import current, needs
from webapp.access.again import fresh
from webapp.book import intake
from webapp.book.fold import queries, row_reader
from webapp.book.house import devices, phone_keys, places, registry
from webapp.book.lineage import lineage
from webapp.book.periods.periods import litres, proof_gallons
from webapp.book.periods.postings import Postings, load_postings
from webapp.book.record import log
from webapp.book.record.rows import Family, Logged, Wanted
from webapp.book.record.signing import name_of_key
from webapp.book.record.store import Book
from webapp.book.record.way import read_way
from webapp.desk.blueprint import bp, local_time
from webapp.desk.entries.offer import accounts_beside, find_offers
from webapp.desk.forms import AnswerForm
from webapp.desk.shown import entry_line, entry_lines, fields_of, figures_of, line_of
from webapp.kinds import as_data, as_form
from webapp.kinds.as_form import KindForm
from webapp.kinds.entry import Entry
from webapp.kinds.read import Read
from webapp.kinds.spec import Kind
from webapp.kinds.uncertainty import uncertain_as_read
from webapp.words.desk import say
from webapp.words.kindwords import kind_in
from webapp.words.language import language

PAGE = 100
BOOK_NO_MOST = 2**53 - 1
FILTERS = ("kind", "mark", "person", "device", "since", "until")


class PostedForm(KindForm, Protocol):
    """The form of a kind as it was sent."""

    def validate(self) -> bool: ...


def _filters() -> Wanted:
    said = {name: request.args.get(name, "").strip() or None for name in FILTERS}
    for day in (said["since"], said["until"]):
        if day:
            try:
                datetime.fromisoformat(day)
            except ValueError:
                abort(400, say("desk-entry-is_no_day_pick_one", day=day[:20]))
    return {
        "kind": said["kind"], "mark": said["mark"], "person": said["person"], "device": said["device"],
        "since": said["since"], "until": said["until"],
    }


@bp.get("/entries")
@needs("floor")
def entries_page() -> ResponseReturnValue:
    """Show entries, newest first, a page at a time."""
    wanted = _filters()
    before = min(request.args.get("before", 0, type=int), BOOK_NO_MOST) or None
    rows = log.find_entries(current.book, **wanted, limit=PAGE + 1, before=before)
    more = rows[PAGE - 1]["book_no"] if len(rows) > PAGE else None
    states = queries.queries_by_entry(current.book, [row["id"] for row in rows[:PAGE]])
    return render_template(
        "desk/entries/entries.html",
        lines=entry_lines(current.book, rows[:PAGE]),
        states=states,
        wanted=wanted,
        more=more,
        kinds=[kind_in(kind, language()) for kind in webapp.kinds.ALL],
        phones=_phones(),
    )


@bp.get("/entries/<entry_id>")
@needs("floor")
def entry_page(entry_id: str) -> ResponseReturnValue:
    """Show one entry as read and as computed, what it amends, what amended it, its queries and answers."""
    family = log.load_family(current.book, entry_id)
    row = family["entry"]
    if row is None:
        abort(404, say("desk-entry-the_book_has_no_such"))
    story = sorted([*family["members"], *family["answers"]], key=lambda row: row["book_no"])
    is_effective = family["effective"] == entry_id
    asked = queries.for_entry(current.book, entry_id, current.house)
    offers = find_offers(row["entry"], asked, row["kind"]) if is_effective else []
    offer = offers[min(max(request.args.get("offer", 0, type=int), 0), len(offers) - 1)] if offers else None
    # What is offered is read with what the book knew at the same place, in the same statements.
    supposed = [offer.row(row)] if offer else []
    reads = row_reader.read_all_as_folded(current.book, [*story, *supposed])
    offered_read = reads.pop() if offer else None
    read = next(read for one, read in zip(story, reads, strict=True) if one["id"] == entry_id)
    uncertain = uncertain_as_read(read) if read else {}
    moved = load_postings(current.book, entry_id, row["order_key"]) if is_effective else Postings([], [])
    return render_template(
        "desk/entries/entry.html",
        postings=moved, still=still_words(row["standing"], is_effective=is_effective), litres=litres,
        proof_gallons=proof_gallons, is_us=current.site.get("units") == "us",
        row=line_of(row, read),
        body=row["entry"],
        read=read,
        fields=fields_of(read) if read else [],
        figures=figures_of(read, uncertain) if read else [], is_uncertain=bool(uncertain),
        offer=offer, offers=offers, offered=_figures_by_label(offered_read),
        accounts=accounts_beside(row, asked, offer, moved) if offer else None,
        family=[line_of(*pair) for pair in zip(story, reads, strict=True)] if len(story) > 1 else [],
        phone=(phones := _phones()).get(row["device"]),
        **_who_signed(row, phones),
        stands=places.stands_at(current.book, [row["mark"]]).get(row["mark"], "") if row["mark"] else "",
        asked=asked,
        form=AnswerForm(),
        traces=[subject.key for subject in _subjects(family)][:1],
    )


def _figures_by_label(read: Read | None) -> dict[str, dict[str, str]]:
    found = figures_of(read, uncertain_as_read(read)) if read else []
    return {one["label"]: one for one in found}


def still_words(standing: str | None, *, is_effective: bool) -> str:
    """Return why an entry moves no stock, in words."""
    if standing == "stopped":
        return say("desk-entry-nothing_moves_until_the_question")
    if standing == "struck":
        return say("desk-entry-it_is_struck_it_moves")
    return say("desk-entry-it_moves_no_spirit") if is_effective else say("desk-entry-another_entry_stands_in_its")


def _subjects(family: Family) -> list[lineage.Subject]:
    """Return the subjects of a trace that an entry's family leads to, where it has effect."""
    effective = next((row for row in family["members"] if row["id"] == family["effective"]), None)
    if effective is None or effective["standing"] != "entered":
        return []
    return lineage.subjects_of(current.book, family["root"], effective["id"])


def _who_signed(row: Logged, phones: Mapping[str, str]) -> dict[str, str]:
    """Return whose signature an entry bears and which phone brought it, in words."""
    carrier = read_way(row["via"]).carrier
    brought = phones.get(carrier, carrier)
    if row["device"] == devices.DESK:
        return {"signature": say("desk-entry-none_it_was_entered_at"), "brought": ""}
    if key := phone_keys.signer_of(current.book, row["entry"]):
        return {"signature": say(
            "desk-entry-of_and_it_holds", phones=phones.get(key['device'], key['device']),
        ), "brought": brought}
    if name_of_key(row["entry"]):
        return {"signature": say("desk-entry-with_a_key_that_the"), "brought": brought}
    return {"signature": say("desk-entry-none_the_phone_or_its"), "brought": brought}


def _phones() -> dict[str, str]:
    return {phone["id"]: phone["name"] for phone in devices.devices(current.book)}


@bp.route("/entries/<entry_id>/amend", methods=["GET", "POST"])
@needs("distiller")
def amend(entry_id: str) -> ResponseReturnValue:
    """Show the entry's own form filled in; what is sent becomes a new entry that amends it, with the reason."""
    row = log.load_entry(current.book, entry_id)
    kind = webapp.kinds.get(row["kind"]) if row else None
    if row is None or kind is None or kind.name == "answer":
        abort(404, say("desk-entry-there_is_no_such_entry"))
    kind = kind_in(kind, language())
    body = row["entry"]
    form: PostedForm = as_form.form_class(kind)()
    problems: Sequence[Mapping[str, object]] = []
    reason = request.form.get("reason", "").strip()
    if request.method == "GET":
        _fill(form, body, request.args)
    elif form.validate() and reason:
        result = _enter(row, body, form, reason)
        if result["settled"] != "refused":
            flash(say("desk-entry-amended_the_original_stays_legible"), "entered")
            return redirect(url_for("desk.entry_page", entry_id=result["id"]))
        problems = result["problems"]
    elif not reason:
        problems = [{"field": "reason", "words": say("desk-entry-say_why_it_is_amended")}]
    return render_template(
        "desk/entries/amend.html", form=form, kind=kind, row=entry_line(current.book, row), problems=problems,
        reason=reason, places=_offer_places(form),
    ), 200 if request.method == "GET" else 422


def _offer_places(form: PostedForm) -> list[str]:
    """Let the boxes for a place offer the places that there are, and return those; none where there is no such box."""
    boxes = [form[spec.name] for spec in form.kind.fields if spec.is_place]
    for box in boxes:
        box.render_kw = {**(box.render_kw or {}), "list": "places"}
    return places.known_places(current.book) if boxes else []


def _fill(form: KindForm, body: Entry, suggested: MultiDict[str, str]) -> None:
    for name, value in body["values"].items():
        if name not in form:
            continue
        form[name].data = value.get("raw")
        if f"{name}_unit" in form:
            form[f"{name}_unit"].data = value.get("unit")
        if f"{name}_instrument" in form:
            form[f"{name}_instrument"].data = value.get("instrument")
    # A likely figure that was tapped in the list of queries: `?field=gravity&raw=1.034&unit=SG`, once for each box.
    fields = {spec.name for spec in form.kind.fields}
    for name, raw, unit in zip(*(suggested.getlist(each) for each in ("field", "raw", "unit")), strict=False):
        if name in form and name in fields:
            form[name].data = raw
            if f"{name}_unit" in form and unit:
                form[f"{name}_unit"].data = unit
    form.read_at.data = _minute(body["read_at"])
    form.remark.data = body.get("remark", "")


def _minute(read_at: str) -> str:
    return local_time(read_at).replace(" ", "T")


def _enter(row: Logged, body: Entry, form: KindForm, reason: str) -> intake.Result:
    assert current.person
    read_at = body["read_at"]
    if form.read_at.data and form.read_at.data != _minute(read_at):
        read_at = registry.at_house(current.book, form.read_at.data)
    return intake.enter_page_entry(
        current.book,
        kind=row["kind"],
        mark=row["mark"],
        values=as_form.entry_values(form),
        person=current.person["code"],
        role=(current.person.get("roles") or [""])[0],
        read_at=read_at,
        remark=form.remark.data or "",
        amends=row["id"],
        reason=reason,
        now=datetime.now(UTC),
    )


@bp.get("/entries.json")
@needs("floor")
@fresh
def entries_json() -> Response:
    """Send the filtered entries as JSON lines: each as handed in, with what the book added."""

    def json_lines() -> Iterator[str]:
        for row in log.walk_entries(current_book, **wanted):
            kept = {name: row[name] for name in ("book_no", "received_at", "skew_s", "digest", "via")}
            yield json.dumps({**row["entry"], "book": kept}, ensure_ascii=False) + "\n"

    current_book, wanted = current.book, _filters()
    name = f"cellarslate-entries-{datetime.now(UTC):%Y-%m-%d}.jsonl"
    return Response(json_lines(), mimetype="application/jsonl", headers=_attached(name))


@bp.get("/entries.csv")
@needs("floor")
@fresh
def entries_csv() -> Response:
    """Send the filtered entries of one kind as CSV: as read, canonical, computed, side by side."""
    wanted = _filters()
    kind = webapp.kinds.get(wanted["kind"] or "")
    if kind is None:
        abort(400, say("desk-entry-pick_one_kind_first_each"))
    name = f"cellarslate-{kind.name}-{datetime.now(UTC):%Y-%m-%d}.csv"
    return Response(csv_lines(current.book, kind, wanted), mimetype="text/csv", headers=_attached(name))


def csv_lines(book: Book, kind: Kind, wanted: Wanted) -> Iterator[str]:
    """Yield the wanted entries of a kind as lines of CSV, under their heads; a page of them is in memory at a time."""
    # The byte order mark makes office programs read it as UTF-8.
    yield "\ufeff" + _csv_line(as_data.csv_heads(kind))
    for rows in log.walk_pages(book, **wanted):
        asked = queries.queries_by_entry(book, [row["id"] for row in rows])
        for row, read in zip(rows, row_reader.read_all_as_folded(book, rows), strict=True):
            assert read
            codes = [query["code"] for query in asked.get(row["id"], [])]
            yield _csv_line(as_data.csv_row(kind, read, {**row, "queries": " ".join(codes)}))


def _csv_line(cells: list[str]) -> str:
    out = io.StringIO()
    csv.writer(out).writerow(cells)
    return out.getvalue()


def _attached(name: str) -> dict[str, str]:
    return {"Content-Disposition": f'attachment; filename="{name}"'}
