"""Pictures and papers that are added at the desk to an entry that exists, by an entry of their own."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import PurePath

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue
from werkzeug.datastructures import FileStorage

from webapp.access import current, needs
from webapp.book import intake
from webapp.book.enclosures import listed, shelf
from webapp.book.enclosures.content import BYTES_MOST, NO_SORT, Refused, Sort, sort_of_head, too_large, without_place
from webapp.book.house import registry
from webapp.book.lineage import lineage
from webapp.book.record import log
from webapp.book.record.enclosed import ADDED
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.kinds.as_schema import ENCLOSED_MOST
from webapp.words.desk import say

WHAT_MOST = 120
PICTURES_MOST = 24
TRACE_STEPS_MOST = 15_000  # as the page of a trace looks at
_NOT_FOR = ("answer", ADDED)


@bp.get("/enclosures/<of>/<key>")
@needs("floor")
def enclosures_page(of: str, key: str) -> ResponseReturnValue:
    """Show the pictures and papers of an entry, of a vessel, or of what a trace goes through."""
    book = current.book
    if of == "entry":
        family = log.load_family(book, key)
        found = listed.of_entries(book, [key, *(one["id"] for one in family["members"])])
        back = url_for("desk.entry_page", entry_id=key)
    elif of == "mark":
        found, back = listed.of_marks(book, [key], PICTURES_MOST), url_for("desk.vessel_page", mark=key)
    elif of == "trace" and (subject := lineage.find_subject(book, key)):
        made = lineage.trace_subject(book, subject, back_most=TRACE_STEPS_MOST)
        nodes = [node for node in made.nodes.values() if node.mark]
        found = listed.of_stays(book, [(node.mark, node.at, str(node.facts.get("ended_at") or "")) for node in nodes])
        back = url_for("desk.trace_page", key=key)
    else:
        abort(404, say("desk-enclosed-no_such_entry"))
    return render_template("desk/entries/enclosed.html", enclosed=found, of=of, back=back)


@bp.post("/enclosures")
@needs("floor")
def add_enclosures() -> ResponseReturnValue:
    """Take pictures and papers, and enter which entry they belong to. All of them, or none."""
    row = log.load_entry(current.book, request.form.get("entry", ""))
    if row is None or row["kind"] in _NOT_FOR:
        abort(404, say("desk-enclosed-no_such_entry"))
    back = redirect(url_for("desk.entry_page", entry_id=row["id"], _anchor="enclosed"))
    try:
        contents = dict(_read(file) for file in _chosen())
    except BookError as error:
        flash(str(error), "stop")
        return back
    assert current.person
    now, person = datetime.now(UTC), current.person
    what = request.form.get("what", "").strip()[:WHAT_MOST]
    result = intake.enter_page_entry(
        current.book, kind=ADDED, mark=row["mark"], person=person["code"], role=(person.get("roles") or [""])[0],
        values={"entry": {"raw": row["id"]}} | ({"what": {"raw": what}} if what else {}),
        read_at=now.astimezone(registry.zone(current.book)).isoformat(timespec="seconds"), now=now,
        enclosed=list(contents),
    )
    if result["settled"] == "refused":
        flash(" ".join(str(one["words"]) for one in result["problems"]), "stop")
        return back
    try:
        for name, content in contents.items():
            shelf.take_whole(current.book, name, content, via=f"page {person['code']}", now=now)
    except BookError as error:
        flash(str(error), "stop")
        return back
    flash(say("desk-enclosed-added", count=len(contents)), "entered")
    return back


def _chosen() -> Iterator[FileStorage]:
    files = [file for file in request.files.getlist("file") if file.filename]
    if not files:
        raise BookError(say("desk-enclosed-pick_one"))
    if len(files) > ENCLOSED_MOST:
        raise BookError(say("desk-enclosed-too_many", most=ENCLOSED_MOST))
    yield from files


def _read(file: FileStorage) -> tuple[str, bytes]:
    """Return the SHA-256 and the bytes of a file as it is kept: a picture is drawn anew, without its place."""
    content = file.stream.read(BYTES_MOST + 1)
    sort = sort_of_head(content[:64])
    try:
        if sort and len(content) > sort.bytes_most:
            raise Refused(too_large(sort))
        content = _kept(content, sort)
    except Refused as error:
        raise Refused(f"{PurePath(file.filename or '').name[:60]}: {error}") from error
    return hashlib.sha256(content).hexdigest(), content


def _kept(content: bytes, sort: Sort | None) -> bytes:
    if sort is None:
        raise Refused(NO_SORT)
    return without_place(content) if sort.type.startswith("image/") else content
