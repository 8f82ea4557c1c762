"""Keys for other tools: which there are, what each reads, when it was last used; made once, ended at once."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, current_app, flash, make_response, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import asked_again
from webapp.access.journal import note
from webapp.book.house import reading_keys
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import ReadersForm
from webapp.words.desk import say


@bp.route("/readers", methods=["GET", "POST"])
@needs("office")
def readers_page() -> ResponseReturnValue:
    """List the keys; make one, which is shown this once."""
    form, folder, now = ReadersForm(), current_app.config["DATA_DIR"], datetime.now(UTC)
    if request.method == "POST" and form.validate():
        if asked := asked_again():
            return asked
        try:
            return _made(form, now)
        except BookError as error:
            form.name.errors = [str(error)]
    known = [(key, key.until < now.isoformat()) for key in reading_keys.keys(folder)]
    page = render_template("desk/house/readers.html", form=form, keys=known, key=None)
    return page, 422 if request.method == "POST" else 200


def _is_number(text: str) -> bool:
    return text.isascii() and text.isdecimal() and len(text) <= 12


def _made(form: ReadersForm, now: datetime) -> ResponseReturnValue:
    assert current.person
    name, scopes = str(form.name.data), list(form.scopes.data or ())
    folder = current_app.config["DATA_DIR"]
    key = reading_keys.make_key(folder, name, scopes, int(form.days.data), current.person["code"], now)
    note("reading_key", about=f"made: {name}, {' '.join(scopes)}")
    calendar = url_for("readers.due_calendar", key=key, _external=True) if "calendar" in scopes else None
    shown = make_response(render_template("desk/house/readers.html", form=form, keys=[], key=key, calendar=calendar))
    shown.headers["Cache-Control"] = "no-store"
    return shown


@bp.post("/readers/<no>/end")
@needs("office")
def end_reading_key(no: str) -> ResponseReturnValue:
    """End a key at once."""
    name = reading_keys.end_key(current_app.config["DATA_DIR"], int(no)) if _is_number(no) else None
    if name is None:
        abort(404, say("desk-readers-no_such"))
    note("reading_key", about=f"ended: {name}")
    flash(say("desk-readers-ended", name=name), "entered")
    return redirect(url_for("desk.readers_page"))
