"""Pictures, papers and voice notes over the API: how they come, in pieces, and how they are seen again.

They are never served as anything that can run: with their type by content, fenced in by a policy of their own.
"""

from __future__ import annotations

import re
from datetime import UTC, datetime
from io import BytesIO

from flask import Response, abort, jsonify, request, send_file
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.errors import error_answer
from webapp.book.enclosures import listed, shelf
from webapp.book.enclosures.content import SORTS, Refused
from webapp.book.record.errors import BookError
from webapp.floor import bp
from webapp.trade.marks import BadMark, parse_mark

MARKER = "cellarslate"
# Nothing in it may load, run, or speak to anybody; a page that it is opened as has no origin.
FENCE = "default-src 'none'; sandbox; frame-ancestors 'none'; img-src 'self'; media-src 'self'"
_RANGE = re.compile(r"bytes (\d{1,10})-(\d{1,10})/(\d{1,10})\Z", re.ASCII)
_NOT_HERE = "This picture has not come yet, or is not here any more. The phone that took it may still hold it."


@bp.get("/api/enclosures/<name>")
@needs("floor")
def enclosure(name: str) -> ResponseReturnValue:
    """Send a file. A picture may be looked at; a paper or a voice note is handed out as a file."""
    file = shelf.find_file(current.book, name)
    path = shelf.find_path(current.book, name) if file else None
    if file is None or path is None:
        abort(404, _NOT_HERE)
    sort = SORTS[file["type"]]
    answer = send_file(
        path.resolve(), mimetype=sort.type, as_attachment=not sort.type.startswith("image/"),
        download_name=f"{name[:12]}.{sort.ending}", etag=False, conditional=True,
    )
    return _fenced(answer)


@bp.get("/api/enclosures/<name>/thumb")
@needs("floor")
def thumb(name: str) -> ResponseReturnValue:
    """Send a small picture of a picture."""
    made = shelf.thumb_of(current.book, name)
    if made is None:
        abort(404, _NOT_HERE)
    return _fenced(send_file(BytesIO(made), mimetype="image/jpeg", download_name=f"{name[:12]}.jpg", etag=False))


@bp.get("/api/enclosures/<name>/place")
@needs("floor")
def place(name: str) -> ResponseReturnValue:
    """Say how much of a file is here, so that its sender goes on from there."""
    try:
        return _said(shelf.how_much(current.book, name))
    except BookError as error:
        return error_answer(404, str(error))


@bp.put("/api/enclosures/<name>")
@needs("floor")
def take(name: str) -> ResponseReturnValue:
    """Take a piece of a file, as its Content-Range says, and say how much is here."""
    found = _RANGE.match(request.headers.get("Content-Range", ""))
    piece = request.get_data(cache=False)
    if not shelf.is_digest(name) or not found:
        return error_answer(
            404 if not shelf.is_digest(name) else 400,
            "Name the file by its SHA-256, and send a piece of it with Content-Range: bytes FIRST-LAST/ALL.",
        )
    first, last, total = (int(figure) for figure in found.groups())
    if last - first + 1 != len(piece):
        return error_answer(400, "The piece is not as long as its Content-Range says. Send it again.")
    device, person = current.device, current.person
    via = f"phone {device['id']}" if device else f"page {person['code'] if person else ''}"
    try:
        here = shelf.take_piece(current.book, name, first, total, piece, via=via, now=datetime.now(UTC))
    except shelf.NotNamed as error:
        return error_answer(404, str(error))
    except shelf.Spoilt as error:
        return error_answer(409, str(error))
    except Refused as error:
        return error_answer(422, str(error))
    except BookError as error:
        answer = error_answer(503, str(error))
        answer.headers["Retry-After"] = "60"
        return answer
    return _said(here)


@bp.get("/api/enclosures")
@needs("floor")
def enclosures_of() -> ResponseReturnValue:
    """List the enclosures of a vessel (`mark`) or of an entry (`entry`), those alone whose files have come."""
    entry, mark = request.args.get("entry", ""), request.args.get("mark", "")
    try:
        found = listed.of_entries(current.book, [entry]) if entry else listed.of_marks(current.book, [parse_mark(mark)])
    except BadMark:
        return error_answer(400, "Name a vessel by its `mark`, or an `entry` by its id.")
    return jsonify({"marker": MARKER, "ok": True, "enclosed": [one for one in found if one["type"]]})


def _said(here: shelf.Here) -> Response:
    return jsonify({"marker": MARKER, "ok": True, "has": here.has, "is_whole": here.is_whole})


def _fenced(answer: Response) -> Response:
    answer.headers["Content-Security-Policy"] = FENCE
    answer.headers["X-Content-Type-Options"] = "nosniff"
    answer.headers["Cache-Control"] = "no-store"
    return answer
