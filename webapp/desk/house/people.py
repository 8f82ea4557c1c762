"""People: who logs, under which code, and who may answer."""

from __future__ import annotations

from datetime import UTC, datetime

from flask import abort, current_app, flash, make_response, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from webapp.access import current, needs
from webapp.access.again import asked_again, fresh
from webapp.access.guard import end_session
from webapp.access.journal import note
from webapp.book.house import invitations, people, signed_in
from webapp.book.record.errors import BookError
from webapp.desk.blueprint import bp
from webapp.desk.forms import PersonForm
from webapp.labels.qr import qr_picture
from webapp.words.desk import say


@bp.get("/people")
@needs("office")
def people_page() -> ResponseReturnValue:
    """List the people of the house."""
    open_ones = invitations.open_invitations(current_app.config["DATA_DIR"], datetime.now(UTC))
    return render_template("desk/house/people.html", people=people.people(current.book), invited=open_ones)


@bp.route("/people/new", methods=["GET", "POST"])
@bp.route("/people/<code>", methods=["GET", "POST"])
@needs("office")
def person_edit(code: str | None = None) -> ResponseReturnValue:
    """Add a person, or change one. Nobody is ever taken out: old entries keep their hand.

    Giving the office role wants the password of whoever gives it.
    """
    row = people.person(current.book, code) if code else None
    if code and row is None:
        abort(404, say("desk-people-there_is_no_such_person"))
    shown = {**row, "roles": ", ".join(row["roles"]), "pin": ""} if row else {}
    form = PersonForm(data=shown)
    if row:
        form.code.data = row["code"]
    if request.method == "POST" and form.validate():
        gives_office = form.access.data == "office" and (row is None or row["access"] != "office" or row["retired"])
        if gives_office and (asked := asked_again()):
            return asked
        words = _keep(form, row)
        if words is None:
            flash(say("desk-people-kept"), "entered")
            return redirect(url_for("desk.people_page"))
        form.access.errors = [words]
    folder, now = current_app.config["DATA_DIR"], datetime.now(UTC)
    n_open = len(signed_in.listed(folder, row["code"], now)) if row else 0
    until = invitations.open_invitations(folder, now).get(row["code"]) if row else None
    page = render_template("desk/house/person_edit.html", form=form, row=row, n_open=n_open, until=until)
    return page, 422 if request.method == "POST" else 200


@bp.post("/people/<code>/invite")
@needs("office")
@fresh
def invite(code: str) -> ResponseReturnValue:
    """Make an invitation and show it, this once."""
    assert current.person
    folder = current_app.config["DATA_DIR"]
    try:
        token = invitations.invite(current.book, folder, code, current.person["code"], datetime.now(UTC))
    except BookError as error:
        abort(404, str(error))
    row = people.person(current.book, code)
    assert row
    note("invited", about=row["code"])
    address = url_for("access.invitation", token=token, _external=True)
    days = invitations.GOOD_FOR.days
    shown = make_response(render_template(
        "desk/house/invited.html", row=row, address=address, picture=qr_picture(address), days=days,
    ))
    shown.headers["Cache-Control"] = "no-store"
    return shown


@bp.post("/people/<code>/end-sessions")
@needs("office")
def end_sessions(code: str) -> ResponseReturnValue:
    """End every session of a person, as after a lost computer."""
    row = people.person(current.book, code)
    if row is None:
        abort(404, say("desk-people-there_is_no_such_person"))
    found = signed_in.listed(current_app.config["DATA_DIR"], row["code"], datetime.now(UTC))
    for one in found:
        end_session(one["sha256"])
    note("session_ended", about=f"{len(found)} of {row['code']}")
    flash(say("desk-people-ended", count=len(found)), "entered")
    return redirect(url_for("desk.people_page"))


def _keep(form: PersonForm, row: people.Person | None) -> str | None:
    assert current.person
    code = row["code"] if row else str(form.code.data).upper()
    if not row and people.person(current.book, code):
        return say("desk-people-there_is_a_already_pick", code=code)
    keeps_office = form.access.data == "office" and not form.retired.data
    others = [
        p for p in people.people(current.book) if p["code"] != code and p["access"] == "office" and not p["retired"]
    ]
    if row and not keeps_office and not others:
        return say("desk-people-somebody_must_keep_the_office")
    roles = [role.strip() for role in (form.roles.data or "").split(",") if role.strip()]
    kept = {
        "code": code,
        "name": form.name.data,
        "roles": roles,
        "access": form.access.data,
        "retired": bool(form.retired.data),
    }
    people.put_person(current.book, kept, by=current.person["code"])
    if form.pin.data:
        people.set_pin(current.book, code, str(form.pin.data), by=current.person["code"])
    note("person", about=f"{code}: {_said(row, kept)}")
    return None


def _said(row: people.Person | None, kept: dict[str, object]) -> str:
    """Return in words what a person may do from now on, as the journal of access keeps it."""
    said = ["new" if row is None else "changed", f"may {kept['access']}"]
    said += ["has left"] * bool(kept["retired"])
    return ", ".join(said)
