"""Moving in by spreadsheet: a file or a pasted text is looked over, put in when a person says so, and taken back."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

from flask import Response, abort, current_app, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.book.record import evidence
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.sheets.asked import told_of
from webapp.sheets.entering import Stamp
from webapp.sheets.judge import look_over
from webapp.sheets.lookover import Look, Part, Row
from webapp.sheets.putting import put_in, take_back
from webapp.sheets.reading import NoSheet
from webapp.sheets.targets import ALL, BY_NAME
from webapp.sheets.templates import csv_template, workbook_template
from webapp.sheets.waiting import keep_waiting, load_waiting
from webapp.words import sentence
from webapp.words.desk import Later, say
from webapp.words.language import language
from webapp.words.local import listed

FIRST = 12  # rows of one table that are shown at once
SHOWN_MOST = 200
FAULTS_MOST = 40
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
GONE = Later("desk-sheets-this_sheet_was_not_kept")


@bp.route("/sheets", methods=["GET", "POST"])
@needs("office")
def sheets_page() -> ResponseReturnValue:
    """Take a sheet and show it looked over; or list the templates, and what was put in from sheets."""
    if request.method == "GET":
        return _start("")
    file = request.files.get("file")
    text = request.form.get("text", "")
    name, content = (file.filename or "sheet", file.read()) if file and file.filename else ("pasted.csv", text.encode())
    try:
        return _looked_over(name, content)
    except NoSheet as error:
        return _start(sentence(error.said, language())), 422


@bp.post("/sheets/look")
@needs("office")
def sheet_look() -> ResponseReturnValue:
    """Look over a sheet again as a person has told, or put what fits in the book."""
    content = load_waiting(_data_dir(), request.form.get("sheet", ""))
    name = request.form.get("name", "sheet")[:200]
    if content is None:
        return _start(GONE), 422
    try:
        if request.form.get("do") != "put":
            return _looked_over(name, content)
        expected = request.form.get("expected", type=int)
        no, _ = put_in(
            current.book, name, content, told_of(request.form), _stamp(), current.site, expected=expected
        )
    except (NoSheet, BookError) as error:
        flash(sentence(error.said, language()) if isinstance(error, NoSheet) else str(error), "stop")
        return _looked_over(name, content)
    if no is None:
        flash(say("desk-sheets-nothing_in_this_sheet_is"), "entered")
        return redirect(url_for("desk.sheets_page"))
    return redirect(url_for("desk.sheet_page", no=no))


@bp.get("/sheets/<no>")
@needs("office")
def sheet_page(no: str) -> ResponseReturnValue:
    """Show what one sheet has put in the book, row by row."""
    taking = evidence.load_taking(current.book, _number(no))
    if taking is None:
        abort(404, say("desk-sheets-there_is_no_such_sheet"))
    rows = [{**row, "what": BY_NAME[row["target"]].one, "many": BY_NAME[row["target"]].many} for row in taking["rows"]]
    counts = [(target.title, sum(row["target"] == target.name for row in rows)) for target in ALL]
    return render_template(
        "desk/sheets/taken.html", taking=taking, rows=rows, counts=[one for one in counts if one[1]],
    )


@bp.post("/sheets/<no>/take-back")
@needs("office")
def sheet_take_back(no: str) -> ResponseReturnValue:
    """Strike all that one sheet has put in the book."""
    reason = request.form.get("reason", "").strip()[:300] or say("desk-sheets-the_whole_sheet_was_taken")
    try:
        stays = take_back(current.book, _number(no), _stamp(), reason)
    except BookError as error:
        flash(str(error), "stop")
        return redirect(url_for("desk.sheets_page"))
    flash(say("desk-sheets-taken_back_every_line_stays"), "entered")
    if stays:
        flash(say("desk-sheets-in_use_stay_the_book", join=', '.join(stays[:20])), "ask")
    return redirect(url_for("desk.sheet_page", no=no))


@bp.get("/sheets/<no>/file")
@needs("office")
def sheet_file(no: str) -> ResponseReturnValue:
    """Give a sheet as it came."""
    taking = evidence.load_taking(current.book, _number(no))
    content = evidence.load_content(current.book, taking["sha256"]) if taking else None
    if taking is None or content is None:
        abort(404, say("desk-sheets-there_is_no_such_sheet"))
    return _download(content, "application/octet-stream", f"sheet-{no}{Path(taking['name']).suffix[:6] or '.csv'}")


@bp.get("/sheets/template/<name>")
@needs("office")
def sheet_template(name: str) -> ResponseReturnValue:
    """Give a template: one sort of sheet as CSV, or all of them as a workbook."""
    is_us = current.site.get("units") == "us"
    if name == "all.xlsx":
        return _download(workbook_template(is_us=is_us), XLSX, "moving-in.xlsx")
    target = BY_NAME.get(name.removesuffix(".csv"))
    if target is None:
        abort(404, say("desk-sheets-there_is_no_such_template"))
    text = csv_template(target, is_us=is_us).encode("utf-8-sig")
    return _download(text, "text/csv; charset=utf-8", f"{target.name}.csv")


def _number(text: str) -> int:
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else 0


def _download(content: bytes, mimetype: str, name: str) -> Response:
    safe = "".join(c if c.isascii() and (c.isalnum() or c in ".-_") else "-" for c in name)
    return Response(content, mimetype=mimetype, headers={"Content-Disposition": f'attachment; filename="{safe}"'})


def _data_dir() -> Path:
    return Path(current_app.config["DATA_DIR"])


def _stamp() -> Stamp:
    assert current.person
    roles = current.person.get("roles") or [""]
    return Stamp(current.person["code"], roles[0], datetime.now(UTC))


def _start(wrong: str) -> str:
    return render_template(
        "desk/sheets/start.html", wrong=wrong, targets=ALL, takings=evidence.load_takings(current.book),
    )


def _looked_over(name: str, content: bytes) -> str:
    look = look_over(current.book, name, content, told_of(request.form), _stamp(), current.site)
    sha = keep_waiting(_data_dir(), content)
    wrong = [(part, row, fault) for part in look.parts for row in part.rows for fault in row.faults]
    order = {"stop": 0, "ask": 1, "note": 2}
    wrong.sort(key=lambda one: order.get(one[2].weight, 3))
    return render_template(
        "desk/sheets/look.html", look=look, parts=sorted(look.parts, key=_is_whole), sheet=sha, targets=ALL,
        wrong=wrong[:FAULTS_MOST], more=len(wrong) - FAULTS_MOST, first=_first, rest=_rest, put=_put_words(look),
        alcohol=_alcohol(look), sentence=sentence, head_of=_head_of,
    )


def _is_whole(part: Part) -> bool:
    """Return whether all of a table fits: what does not is shown first."""
    return not part.faults and not part.count("stop", "ask")


def _first(part: Part) -> list[Row]:
    """Return the rows of a table that the page shows at once: the first ones, and those that do not simply fit."""
    odd = [row for row in part.rows if row.state not in ("new", "known")][:SHOWN_MOST]
    plain = [row for row in part.rows if row.state in ("new", "known")]
    return sorted([*odd, *plain[: max(FIRST - len(odd), 3)]], key=lambda row: row.number)


def _rest(part: Part) -> list[Row]:
    """Return the rows of a table that are shown when somebody asks for them."""
    shown = {row.number for row in _first(part)}
    return [row for row in part.rows if row.number not in shown]


def _head_of(part: Part, column: str) -> str:
    head = part.heads.of(column) if part.heads else None
    return head.text if head else ""


def _put_words(look: Look) -> str:
    """Return the rows that would go in, in words: 42 vessels and 6 people."""
    words = []
    for target in ALL:
        many = sum(part.count("new", "ask") for part in look.parts if part.heads and part.heads.target is target)
        if many:
            named = target.one if many == 1 else target.many
            words.append(say("desk-sheets-openings", many=many, what=named) if target.kind else f"{many} {named}")
    return listed(words) if words else ""


def _alcohol(look: Look) -> list[tuple[str, float]]:
    """Return the pure alcohol that would come in, by kind of spirit, the most first. [L]"""
    sums: dict[str, float] = {}
    for _, row in look.fitting:
        if row.lpa_l:
            sums[row.raw("spirit")] = sums.get(row.raw("spirit"), 0.0) + row.lpa_l
    return sorted(sums.items(), key=lambda one: -one[1])
